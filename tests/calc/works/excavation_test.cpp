// Pits, grids, sections, batters, spoil.
#include "calc/works/excavation.hpp"
#include "calc/works/spoil.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/csv.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {
constexpr double foot = 0.3048;
}  // namespace

TEST_CASE("basin 20 x 10 m, side slope 2:1", "[published]") {
    // math: prismoidal = closed form; the mean of the end areas is another
    // number.
    struct Row {
        double depth, prismoidal, end_area;
    };
    const Row rows[] = {{0.5, 115.6666666667, 116.0}, {1, 265.3333333333, 268.0},    {1.5, 453.0, 462.0},
                        {2, 682.6666666667, 704.0},   {2.5, 958.3333333333, 1000.0}, {3, 1284.0, 1356.0}};
    for (const Row& row : rows) {
        CAPTURE(row.depth);
        CHECK_THAT(pit_volume(m(20), m(10), m(row.depth), batter(2)),
                   is_within(m3(row.prismoidal), m3(1e-9)));
        const Table<Length, Area> ends = {{m(0), pit_area(m(20), m(10), m(0), batter(2))},
                                          {m(row.depth), pit_area(m(20), m(10), m(row.depth), batter(2))}};
        CHECK_THAT(pit_sections(ends, SectionMethod::end_area), is_within(m3(row.end_area), m3(1e-9)));
        Table<Length, Area> three = ends;
        three.insert(three.begin() + 1,
                     {m(row.depth / 2), pit_area(m(20), m(10), m(row.depth / 2), batter(2))});
        CHECK_THAT(pit_sections(three, SectionMethod::prismoidal), is_within(m3(row.prismoidal), m3(1e-9)));
    }
}

TEST_CASE("pit with unequal batters: three sections and the prismoidal formula", "[published]") {
    // A problem on a public page (inputs seen), computed apart from this code: 30 x 25 m on top, 20 x 10 m at
    // the bottom, 3 m deep.
    const Table<Length, Area> sections = {{m(0), m2(200)}, {m(1.5), m2(25 * 17.5)}, {m(3), m2(750)}};
    CHECK_THAT(pit_sections(sections, SectionMethod::prismoidal), is_near(m3(1350)));
}

TEST_CASE("volume, area and walls of a pit are integrals of each other (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const Length length = m(random.between(2, 60));
        const Length width = m(random.between(2, 60));
        const Length depth = m(random.between(0.2, 6));
        const Batter z = batter(random.between(0, 3));
        const double volume =
            integral([&](double h) { return pit_area(length, width, m(h), z).value(); }, 0, depth.value());
        CHECK_THAT(pit_volume(length, width, depth, z), is_near(m3(volume), 1e-10));
        const double slope = std::sqrt(1 + z.value() * z.value());
        const double walls = integral(
            [&](double h) {
                return 2 * (pit_side(length, m(h), z) + pit_side(width, m(h), z)).value() * slope;
            },
            0, depth.value());
        CHECK_THAT(pit_walls(length, width, depth, z), is_near(m2(walls), 1e-10));
        CHECK_THAT(pit_side(length, depth, z) * pit_side(width, depth, z),
                   is_near(pit_area(length, width, depth, z)));
        CHECK_THAT(pit_slant(depth, z), is_near(m(depth.value() * slope)));
    }
}

TEST_CASE("a grid in full cut is the mean depth of its cells; a plane is cut exactly") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const int rows = random.whole(2, 6);
        const int columns = random.whole(2, 6);
        std::vector<std::vector<Length>> levels(static_cast<std::size_t>(rows));
        double expected = 0;
        for (auto& row : levels)
            for (int c = 0; c < columns; ++c) row.push_back(m(random.between(10, 12)));
        for (std::size_t r = 0; r + 1 < levels.size(); ++r)
            for (std::size_t c = 0; c + 1 < levels[r].size(); ++c)
                expected +=
                    (levels[r][c] + levels[r][c + 1] + levels[r + 1][c] + levels[r + 1][c + 1]).value() / 4 -
                    9;
        CHECK_THAT(pit_grid(levels, m(5), m(4), m(9)), is_near(m3(expected * 20)));
    }
    // A plane that falls through the formation: a wedge, whatever the grid.
    for (const int columns : {2, 3, 4, 7}) {
        std::vector<Length> row;
        row.reserve(static_cast<std::size_t>(columns));
        for (int c = 0; c < columns; ++c) row.push_back(m(1 - 3.0 * c / (columns - 1)));
        const Length spacing = m(12.0 / (columns - 1));
        CHECK_THAT(pit_grid({row, row}, spacing, m(5), m(0)), is_near(m3(0.5 * 1 * 4 * 5), 1e-12));
    }
    CHECK(pit_grid({{m(1), m(1)}, {m(1), m(1)}}, m(1), m(1), m(2)).value() == 0);  // fill is not counted
}

TEST_CASE("cut plus fill turned over is the whole, for any levels") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        std::vector<std::vector<Length>> levels(3, std::vector<Length>(4));
        std::vector<std::vector<Length>> mirrored = levels;
        double mean = 0;
        for (std::size_t r = 0; r < 3; ++r)
            for (std::size_t c = 0; c < 4; ++c) {
                levels[r][c] = m(random.between(-2, 2));
                mirrored[r][c] = -levels[r][c];
            }
        for (std::size_t r = 0; r < 2; ++r)
            for (std::size_t c = 0; c < 3; ++c)
                mean +=
                    (levels[r][c] + levels[r][c + 1] + levels[r + 1][c] + levels[r + 1][c + 1]).value() / 4;
        const Volume cut = pit_grid(levels, m(2), m(3), m(0));
        const Volume fill = pit_grid(mirrored, m(2), m(3), m(0));
        REQUIRE((cut - fill).value() == Approx(mean * 6).epsilon(1e-10).margin(1e-10));
        REQUIRE(cut.value() >= 0);
    }
}

TEST_CASE("steepest simple slopes", "[published]") {
    // US 29 CFR 1926 Subpart P, Appendix B, Table B-1 and footnote 2.
    CHECK(pit_batter(TrenchSoil::stable_rock, m(19 * foot)).value() == 0);
    CHECK(pit_batter(TrenchSoil::type_a, m(19 * foot)).value() == 0.75);
    CHECK(pit_batter(TrenchSoil::type_b, m(19 * foot)).value() == 1);
    CHECK(pit_batter(TrenchSoil::type_c, m(19 * foot)).value() == 1.5);
    CHECK(pit_batter(TrenchSoil::type_c, m(20 * foot)).value() == 1.5);  // on the limit
    CHECK(pit_batter(TrenchSoil::type_a_short_term, m(12 * foot)).value() == 0.5);
    // The angles printed beside the slopes: 53, 45 and 34 degrees, whole degrees.
    CHECK(std::round(std::atan(1 / 0.75) * 180 / std::numbers::pi) == 53);
    CHECK(std::round(std::atan(1 / 1.5) * 180 / std::numbers::pi) == 34);
    for (const TrenchSoil soil :
         {TrenchSoil::stable_rock, TrenchSoil::type_a, TrenchSoil::type_b, TrenchSoil::type_c})
        CHECK_THROWS_MATCHES(pit_batter(soil, m(20.1 * foot)), Refused, has_no_answer("licensed engineer"));
    CHECK_THROWS_MATCHES(pit_batter(TrenchSoil::type_a_short_term, m(12.1 * foot)), Refused,
                         has_no_answer("licensed engineer"));
    CHECK_THROWS_MATCHES(pit_batter(TrenchSoil::type_b, m(0)), Refused, refuses_domain("depth (0 m)"));
}

TEST_CASE("the three states of earth agree with each other to the rounding of the table", "[published]") {
    // US Army FM 5-434 (2000), Table 1-1, all its rows; how far they were seen stands in the file.
    const std::vector<std::pair<std::string, SpoilSoil>> soils = {
        {"sand", SpoilSoil::sand},
        {"loam (common earth)", SpoilSoil::loam},
        {"clay", SpoilSoil::clay},
        {"rock, blasted", SpoilSoil::rock},
        {"coral, comparable to lime rock", SpoilSoil::coral}};
    REQUIRE(spoil_table().size() == soils.size());
    const std::vector<CsvRow> rows = csv_rows("tests/data/spoil-factors.csv", soils.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const CsvRow& row = rows[i];
        const auto& [name, soil] = soils[i];
        CAPTURE(name);
        REQUIRE(row.text("material") == name);
        const double loose = spoil_volume(m3(1), soil, SpoilState::loose).value();
        const double compacted = spoil_volume(m3(1), soil, SpoilState::compacted).value();
        CHECK(loose == row.number("bank_to_loose"));
        CHECK(compacted == row.number("bank_to_compacted"));
        CHECK(1 / loose == Approx(row.number("loose_to_bank")).margin(0.0051).epsilon(0));
        CHECK(compacted / loose == Approx(row.number("loose_to_compacted")).margin(0.0051).epsilon(0));
        CHECK(1 / compacted == Approx(row.number("compacted_to_bank")).margin(0.0051).epsilon(0));
        CHECK(loose / compacted == Approx(row.number("compacted_to_loose")).margin(0.0051).epsilon(0));
        CHECK(spoil_table()[i].soil == soil);
    }
}

TEST_CASE("loads by volume or mass, whichever is more, and no load more than needed") {
    CHECK(number(spoil_loads(m3(100), m3(10), std::nullopt, std::nullopt)) == 10);
    CHECK(number(spoil_loads(m3(100.0001), m3(10), std::nullopt, std::nullopt)) == 11);
    CHECK(number(spoil_loads(m3(0), m3(10), std::nullopt, std::nullopt)) == 0);
    const Density heavy = Density::from_value(2000);
    CHECK(number(spoil_loads(m3(100), m3(10), heavy, Mass::from_value(10000))) == 20);
    CHECK(number(spoil_loads(m3(100), m3(10), heavy, Mass::from_value(40000))) == 10);
    CHECK_THROWS_MATCHES(spoil_loads(m3(1), m3(1), heavy, std::nullopt), Refused,
                         refuses_value("go together"));
    CHECK_THROWS_MATCHES(spoil_volume(m3(1), share(0.25), SpoilState::loose), Refused,
                         refuses_domain("a swell of 25 % is 1.25"));
    CHECK_THROWS_MATCHES(spoil_volume(m3(-1), SpoilSoil::clay, SpoilState::loose), Refused,
                         refuses_domain("bank volume"));
    CHECK(spoil_volume(m3(10), share(0.9), SpoilState::compacted).value() == 9);
}

TEST_CASE("sections and grids that are none are refused") {
    CHECK_THROWS_MATCHES(pit_sections({{m(0), m2(1)}}, SectionMethod::end_area), Refused,
                         refuses_domain("two sections"));
    CHECK_THROWS_MATCHES(pit_sections({{m(0), m2(1)}, {m(0), m2(1)}}, SectionMethod::end_area), Refused,
                         refuses_domain("must rise"));
    CHECK_THROWS_MATCHES(pit_sections({{m(0), m2(1)}, {m(1), m2(-1)}}, SectionMethod::end_area), Refused,
                         refuses_domain("area"));
    CHECK_THROWS_MATCHES(pit_sections({{m(0), m2(1)}, {m(1), m2(1)}}, SectionMethod::prismoidal), Refused,
                         refuses_domain("odd number"));
    CHECK_THROWS_MATCHES(
        pit_sections({{m(0), m2(1)}, {m(1), m2(1)}, {m(3), m2(1)}}, SectionMethod::prismoidal), Refused,
        refuses_domain("half-way"));
    CHECK_THROWS_MATCHES(pit_grid({{m(1), m(1)}}, m(1), m(1), m(0)), Refused,
                         refuses_value("two rows and two columns"));
    CHECK_THROWS_MATCHES(pit_grid({{m(1), m(1)}, {m(1)}}, m(1), m(1), m(0)), Refused,
                         refuses_value("rectangle"));
    CHECK_THROWS_MATCHES(pit_grid({{m(1), m(1)}, {m(1), m(1)}}, m(0), m(1), m(0)), Refused,
                         refuses_domain("spacing x"));
    CHECK_THROWS_MATCHES(pit_volume(m(1), m(1), m(-1), batter(0)), Refused, refuses_domain("depth (-1 m)"));
    CHECK_THROWS_MATCHES(pit_volume(m(1), m(1), m(1), batter(-1)), Refused, refuses_domain("batter"));
}

TEST_CASE("a slant or a side of what is no pit is refused") {
    const auto length = [](double value) { return Length::from_value(value); };
    CHECK_THROWS_MATCHES(pit_side(length(0), length(1), batter(1)), Refused,
                         refuses_domain("base side (0 m)"));
    CHECK_THROWS_MATCHES(pit_side(length(1), length(-1), batter(1)), Refused,
                         refuses_domain("height (-1 m)"));
    CHECK_THROWS_MATCHES(pit_side(length(1), length(1), batter(-1)), Refused, refuses_domain("batter (-1"));
    CHECK_THROWS_MATCHES(pit_slant(length(-1), batter(1)), Refused, refuses_domain("depth (-1 m)"));
    CHECK_THROWS_MATCHES(pit_slant(length(1), batter(-1)), Refused, refuses_domain("batter (-1"));
}

}  // namespace undercroft::tests
