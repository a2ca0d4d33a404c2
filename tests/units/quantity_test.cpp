// What people type, and what becomes of it.
#include <clocale>

#include "tests/support/near.hpp"
#include "units/quantity.hpp"
#include "units/text.hpp"
#include "units/unit_memory.hpp"

namespace undercroft::tests {

namespace {
template <class Q>
double read(const char* text) {
    return as<Q>(parse_quantity(text)).value();
}
}  // namespace

TEST_CASE("a length is read in every spelling of it") {
    for (const char* text : {"305 mm", "305mm", " 305  mm ", "0.305 m", "30.5 cm", "305 millimetres",
                             "305\u00A0mm", "+305 mm", ".305 m", "3.05e2 mm"}) {
        CAPTURE(text);
        CHECK(read<Length>(text) == Approx(0.305).epsilon(1e-15));
    }
    CHECK(read<Length>("305 mm") == 0.305);  // the nearest double, not its neighbour
    CHECK(read<Length>("-305 mm") == -0.305);
    CHECK(read<Length>("−305 mm") == -0.305);
}

TEST_CASE("feet and inches add up to one length") {
    const double expected = 12.5 * 0.3048;
    for (const char* text : {"12 ft 6 in", "12' 6\"", "12'-6\"", "12′6″", "12 feet 6 inches", "12’6”"}) {
        CAPTURE(text);
        CHECK(read<Length>(text) == Approx(expected).epsilon(1e-15));
    }
    CHECK(read<Length>("5'-6 1/2\"") == Approx(66.5 * 0.0254).epsilon(1e-15));
    CHECK(read<Length>("3/4 in") == Approx(0.01905).epsilon(1e-15));
    CHECK(read<Length>("-12 ft 6 in") == Approx(-expected).epsilon(1e-15));
    CHECK(read<Time>("1 h 30 min") == 5400);
    CHECK(read<Mass>("1 lb 8 oz") == Approx(0.680388555).epsilon(1e-15));
}

TEST_CASE("compound units are read in all their forms") {
    CHECK(read<UnitWeight>("18 kN/m3") == 18000);
    CHECK(read<UnitWeight>("18 kN/m^3") == 18000);
    CHECK(read<UnitWeight>("18 kN/m³") == 18000);
    CHECK(read<UnitWeight>("18 kN m-3") == 18000);
    CHECK(read<UnitWeight>("18 kN·m⁻³") == 18000);
    CHECK(read<Flow>("12 L/s") == 0.012);
    CHECK(read<Flow>("3 cfs") == read<Flow>("3 ft3/s"));
    CHECK(read<Volume>("1.5 acre-ft") == Approx(1850.22275632128).epsilon(1e-15));
    CHECK(read<MassPerArea>("8 oz/yd2") == Approx(0.27124598).epsilon(1e-8));
    CHECK(read<Area>("5 sq ft") == read<Area>("5 ft2"));
    CHECK(read<Volume>("3 cubic yards") == read<Volume>("3 cy"));
    CHECK(read<Length>("6 in.") == 0.1524);
    CHECK(read<Length>("5 ft. 6 in.") == read<Length>("5 ft 6 in"));
    CHECK(read<Length>("250 LF") == read<Length>("250 ft"));
    CHECK(read<Area>("5 sq.ft") == read<Area>("5 ft2"));
    CHECK(read<Area>("5 sq. ft.") == read<Area>("5 ft2"));
    CHECK(read<Volume>("3 cu.yd.") == read<Volume>("3 cy"));
    CHECK(parse_unit("in./h").scale.to_coherent(1) == parse_unit("in/h").scale.to_coherent(1));
    CHECK(parse_unit("kN.m").dimension == parse_unit("kN m").dimension);
    CHECK(parse_unit("ft.lbf").dimension == parse_unit("kN m").dimension);
    CHECK(read<Flow>("12 lps") == 0.012);
    CHECK(read<Flow>("3 cumecs") == 3);
    CHECK(parse_unit("m^0.5/s").dimension.text() == "L^(1/2) T-1");
    CHECK(parse_unit("m^(1/3)/s").dimension.text() == "L^(1/3) T-1");
    CHECK(parse_unit("kg/(m s2)").dimension == dimension_of<Pressure>());
    CHECK(parse_unit("AUD/t").dimension.text() == "M-1 AUD");
}

TEST_CASE("shares, slopes and angles") {
    CHECK(read<Share>("40 %") == 0.4);
    CHECK(read<Share>("40%") == 0.4);
    CHECK(read<Batter>("1.5H:1V") == 1.5);
    CHECK(read<Batter>("1.5h:1v") == 1.5);
    CHECK(read<Batter>("1 1/2H:1V") == 1.5);
    CHECK(read<Batter>("1V:3H") == 3);
    CHECK(read<Batter>("0H:1V") == 0);
    CHECK(read<Batter>("90 deg") == 0);
    CHECK(read<Batter>("45 deg") == Approx(1).epsilon(1e-15));
    CHECK(read<Gradient>("1V:40H") == 0.025);
    CHECK(read<Gradient>("2.5 %") == 0.025);
    CHECK(read<Gradient>("45 deg") == Approx(1).epsilon(1e-15));
    CHECK(read<Gradient>("1 in 200") == 0.005);
    CHECK(read<Gradient>("1 in 12.5") == 0.08);
    CHECK(read<Batter>("1 in 3") == 3);
    CHECK(parse_quantity("1 in 200").dimension == Dimension::of(Base::gradient));
    CHECK_THROWS_AS(read<Batter>("0 in 3"), Refused);
    CHECK_THROWS_AS(read<Batter>("3 in 0"), Refused);
    CHECK(read<Batter>("1:1") == 1);
    CHECK(read<Gradient>("1:1") == 1);
    CHECK_THROWS_AS(read<Length>("1 in 40"), Refused);
    CHECK(read<Angle>("34 deg") == Approx(0.5934119456780721).epsilon(1e-15));
    CHECK(read<Angle>("34°") == read<Angle>("34 deg"));
}

TEST_CASE("a bare number takes the default unit of the dimension wanted") {
    CHECK(as<Length>(Quantity::bare(2)).value() == 2);
    CHECK(as<Time>(Quantity::bare(2)).value() == 120);
    CHECK(as<Flow>(Quantity::bare(2)).value() == 0.002);
    CHECK(as<Speed>(Quantity::bare(36)).value() == Approx(1e-5).epsilon(1e-15));
    CHECK(as<Pressure>(Quantity::bare(150)).value() == 150000);
    CHECK(as<Batter>(Quantity::bare(1.5)).value() == 1.5);
    CHECK(as<Gradient>(Quantity::bare(0.01)).value() == 0.01);
    CHECK(as<Angle>(Quantity::bare(180)).value() == Approx(3.141592653589793).epsilon(1e-15));
    CHECK(as<Share>(Quantity::bare(0.4)).value() == 0.4);
    CHECK(as<MassPerArea>(Quantity::bare(270)).value() == 0.27);
}

TEST_CASE("what cannot be meant is refused with what to type instead") {
    const std::pair<const char*, const char*> refusals[] = {
        {"305", "only a number"},
        {"", "empty"},
        {"mm", "unit without a number"},
        {"foo", "no quantity"},
        {"1,5 m", "type 1.5 m for a decimal, or 15 m"},
        {"1,000 mm", "without a mark between thousands"},
        {"5 gal", "US gal or imp gal"},
        {"3 ton", "t (tonne), short ton or long ton"},
        {"110 pcf", "lb/ft3 (a density) or lbf/ft3 (a unit weight)"},
        {"1:2", "2H:1V or 1H:2V"},
        {"0 in 40", "no rise"},
        {"1 in 2 ft", "from the larger unit to the smaller"},
        {"1'305 mm", "type 1305 mm, or write ft for feet"},
        {"12\u2019500 m3", "mark between thousands, or feet"},
        {"1'305'000 mm", "mark between thousands, or feet"},
        {"1`305 mm", "a unit name is wanted"},
        {"1\u00B4305 mm", "is no unit known here"},
        {"5 im", "'im' is no unit known here"},
        {"5 KPA", "did you mean kPa?"},
        {"5 Mm", "did you mean mm?"},
        {"5 feets", "did you mean feet?"},
        {"85 $", "ISO code"},
        {"85 aud", "did you mean AUD?"},
        {"1 kg/m s", "parentheses"},
        {"1 kg/m/s", "parentheses"},
        {"6 in 2 ft", "from the larger unit to the smaller"},
        {"12 ft 6 kg", "from the larger unit to the smaller"},
        {"1e400 m", "no quantity"},
        {"5 m\u200F", "U+200F"},
        {"5 m^0.33", "power"},
        {"5 (m", "')' is missing"},
        {"1V:0H:2", "no slope"},
        {"3/0 in", "divides by zero"},
        {"٥ m", "no quantity"},
        {"５ m", "no quantity"},
    };
    for (const auto& [text, says] : refusals) {
        CAPTURE(text);
        CHECK_THROWS_MATCHES(parse_quantity(text), Refused, refuses_value(says));
    }
}

TEST_CASE("a dimension is not taken for another") {
    CHECK_THROWS_MATCHES(as<Length>(parse_quantity("5 kg")), Refused,
                         refuses_value("is a mass; a length is wanted"));
    CHECK_THROWS_MATCHES(as<UnitWeight>(parse_quantity("1800 kg/m3")), Refused,
                         refuses_value("a mass is not a force"));
    CHECK_THROWS_MATCHES(as<Density>(parse_quantity("18 kN/m3")), Refused,
                         refuses_value("a force is not a mass"));
    CHECK_THROWS_MATCHES(as<Count>(parse_quantity("40 %")), Refused, refuses_value("a count is wanted"));
    CHECK_THROWS_MATCHES(as<Share>(parse_quantity("12 each")), Refused, refuses_value("is a count"));
    CHECK_THROWS_MATCHES(as<Batter>(parse_quantity("66 %")), Refused, refuses_value("rise per run"));
    CHECK_THROWS_MATCHES(as<Gradient>(parse_quantity("0H:1V")), Refused, refuses_domain("vertical"));
    CHECK_THROWS_MATCHES(parse_unit("AUD").dimension.times(parse_unit("NZD").dimension), Refused,
                         refuses_value("two currencies do not mix"));
    CHECK_THROWS_MATCHES(in_dimension(parse_quantity("5 AUD"), parse_unit("NZD").dimension), Refused,
                         refuses_value("two currencies do not mix"));
    CHECK(parse_unit("AUD/AUD").dimension.is_number());
}

TEST_CASE("the dimension of a C++ type is the dimension of its default unit") {
    CHECK(dimension_of<Flow>() == parse_unit("L/s").dimension);
    CHECK(dimension_of<UnitWeight>() == parse_unit("kN/m3").dimension);
    CHECK(dimension_of<LineLoad>() == parse_unit("kN/m").dimension);
    CHECK(dimension_of<MassPerArea>() == parse_unit("g/m2").dimension);
    CHECK(dimension_of<Share>().is_number());
    for (const NamedDimension& named : named_dimensions()) {
        CAPTURE(named.name);
        if (named.default_unit != run_per_rise && !named.default_unit.empty() && named.name != "a gradient")
            CHECK(parse_unit(named.default_unit).dimension == named.dimension);
        if (named.si_unit != "1" && !named.si_unit.empty())
            CHECK(parse_unit(named.si_unit).scale.to_coherent(1) == 1);
    }
}

TEST_CASE("a value goes out in the unit it came in, to the last bit or the one before") {
    Random random;
    const char* units[] = {"mm",      "in",     "ft",   "acre-ft", "cfs", "kPa", "psf",
                           "lbf/ft3", "oz/yd2", "in/h", "L/s",     "deg", "%"};
    for (const char* unit : units) {
        const Unit parsed = parse_unit(unit);
        for (int i = 0; i < 1000; ++i) {
            const double value = random.between(1e-3, 1e4);
            CAPTURE(unit, value);
            REQUIRE(parsed.scale.from_coherent(parsed.scale.to_coherent(value)) ==
                    Approx(value).epsilon(4e-16).margin(0));
        }
    }
}

TEST_CASE("the memory of unit texts gives what reading gives, however often and whatever else was read") {
    Random random;
    const std::vector<UnitRow>& table = unit_table();
    for (int i = 0; i < 20000; ++i) {
        const auto& row =
            table[static_cast<std::size_t>(random.whole(0, static_cast<int>(table.size()) - 1))];
        const auto& below =
            table[static_cast<std::size_t>(random.whole(0, static_cast<int>(table.size()) - 1))];
        if (below.symbol == "1" || row.symbol == "1") continue;
        const std::string text = std::string(row.symbol) + "/(" + std::string(below.symbol) + ")";
        const Unit remembered = remembered_unit(to_utf16(text));
        const Unit read = parse_unit(text);
        REQUIRE(remembered.scale.to_coherent(1) == read.scale.to_coherent(1));
        REQUIRE(remembered.dimension == read.dimension);
    }
    CHECK_THROWS_AS(remembered_unit(u"furlong"), Refused);
    CHECK_THROWS_AS(remembered_unit(u"furlong"), Refused);
    CHECK_THROWS_AS(remembered_unit(u""), Refused);
}

TEST_CASE("numbers do not depend on the locale") {
    std::string_view text = "1.5 m";
    CHECK(take_number(text) == 1.5);
    CHECK(text == " m");
    CHECK(exact_text(0.1) == "0.1");
    CHECK(rounded_text(115.745692875) == "115.746");
    const char* before = std::setlocale(LC_ALL, nullptr);
    if (std::setlocale(LC_ALL, "de_DE.UTF-8") != nullptr) CHECK(parse_quantity("1.5 m").value == 1.5);
    std::setlocale(LC_ALL, before);
}

TEST_CASE("a power or a factor that cannot be kept is refused, and never comes back as another") {
    // 129 lengths multiplied would be one length again in eight bits of sixths.
    CHECK_THROWS_MATCHES(parse_quantity("5 m20 m20 m20 m20 m20 m20 m9"), Refused, refuses_value("power"));
    CHECK_THROWS_MATCHES(parse_unit("m20 m"), Refused, refuses_value("power"));
    CHECK(parse_unit("m20").dimension == Dimension::of(Base::length, 20));
    CHECK_THROWS_MATCHES(parse_quantity("5 m %^1000"), Refused, refuses_value("too large or too small"));
    CHECK_THROWS_MATCHES(parse_unit("%^-1000"), Refused, refuses_value("too large or too small"));
    CHECK_THROWS_MATCHES(number_in(parse_quantity("5 m20"), parse_unit("kg")), Refused,
                         refuses_value("a mass is wanted"));
}

}  // namespace undercroft::tests
