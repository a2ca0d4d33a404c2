// The search of beds through the catalogue: each bed has the numbers of the single functions.
#include <cmath>
#include <map>
#include <vector>

#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

namespace {

using Parts = std::map<std::string, std::string>;

/// The arguments by name; a test changes some.
Parts yard() {
    return {{"space", "{38;16;46;24;0.6;0.32;0.32;0.25}"},
            {"shapes", "{\"ellipse\"|\"parabola\"}"},
            {"kinds", "{0.81;0.42;0.88;\"0.12 m\";2.25;2.15;0.08|1.04;0.71;1.13;\"0.15 m\";1.915;1.86;0.08}"},
            {"supplies",
             "{0.15;16;0.6;2.4;140;60;\"150 AUD/each\";\"128 AUD/each\"|"
             "0.17;28;0.75;2.5;130;60;\"245 AUD/each\";\"204 AUD/each\"}"},
            {"stone steps", "{0.15;0.6;0.05|0.16;0.31;0.05}"},
            {"layers", "{\"initial\";0.3;19|\"general\";0.55;19|\"pavement\";0.15;23}"},
            {"levels", "{60.4;60.55;60.5;60.6;57.1;0.5}"},
            {"storage", "\"190 m3\""},
            {"ground", "{8;\"33 deg\";18.5;3;160;1.15;1.2}"},
            {"materials", "{0.38;1610;0.015;100;4.5;0.45;940}"},
            {"earthworks", "{0.5;12;1350;20000;0.95;1920;0.07}"},
            {"rates",
             "{\"pit\";0;\"\";\"8 AUD/m3\"|\"bedding stone\";0.05;\"20 t\";\"58 AUD/t\"|"
             "\"embedment stone\";0.05;\"20 t\";\"60 AUD/t\"|\"bedding laid\";0;\"\";\"10 AUD/m3\"|"
             "\"embedment laid\";0;\"\";\"14 AUD/m3\"|\"slopes\";0;\"\";\"2 AUD/m2\"|"
             "\"formation\";0;\"\";\"2.1 AUD/m2\"|\"spoil loads\";0;\"\";\"240 AUD/each\"|"
             "\"spoil away\";0;\"\";\"14 AUD/m3\"|\"initial backfill\";0.1;\"1 t\";\"17 AUD/t\"|"
             "\"general backfill\";0.1;\"1 t\";\"8 AUD/t\"|\"fill laid\";0;\"\";\"9 AUD/m3\"|"
             "\"pavement\";0;\"\";\"300 AUD/m3\"|\"fabric rolls\";0;\"1 each\";\"890 AUD/each\"|"
             "\"fabric laid\";0;\"\";\"1.1 AUD/m2\"|\"units set\";0;\"\";\"18 AUD/each\"|"
             "\"ports\";0;\"\";\"155 AUD/each\"|\"rows\";0;\"\";\"4 AUD/m\"}"},
            {"choices", "{\"W80\";\"flexible\";\"sand\";\"1H:1V\";8;20;20}"},
            {"counts", "{2;20;1|4;30;1}"}};
}

std::string search(const Parts& parts) {
    std::string formula = "UC.BED.OPTIONS(";
    for (const char* name : {"space", "shapes", "kinds", "supplies", "stone steps", "layers", "levels",
                             "storage", "ground", "materials", "earthworks", "rates", "choices", "counts"})
        formula += (formula.back() == '(' ? "" : ";") + parts.at(name);
    return formula + ")";
}
std::string with(const std::string& name, const std::string& text) {
    Parts parts = yard();
    parts.at(name) = text;
    return search(parts);
}

using Rows = std::vector<std::vector<double>>;

/// The numbers of a table under its units; no number where a cell is blank.
Rows rows_of(const FormulaDesk& desk, const std::string& formula) {
    const addin::FormulaValue value = desk.value(formula);
    const addin::Cell cell = value.cell();
    const addin::Grid& grid = *std::get<const addin::Grid*>(cell);
    Rows rows;
    for (std::size_t r = 1; r < grid.rows(); ++r) {
        rows.emplace_back();
        for (std::size_t c = 0; c < grid.columns(); ++c) {
            const addin::Scalar scalar = grid.at(r, c);
            const double* number = std::get_if<double>(&scalar);
            rows.back().push_back(number == nullptr ? std::nan("") : *number);
        }
    }
    return rows;
}

/// `UC.X(a;b;c)` of numbers and texts.
class Call {
public:
    explicit Call(const std::string& name) : text_(name + "(") {}
    Call& operator()(const std::string& argument) {
        text_ += (text_.back() == '(' ? "" : ";") + argument;
        return *this;
    }
    Call& operator()(double argument, const char* unit = "m") {
        return (*this)("\"" + exact_text(argument) + " " + unit + "\"");
    }
    [[nodiscard]] double on(const FormulaDesk& desk) const { return desk.number(text_ + ")"); }

private:
    std::string text_;
};

void require_near(double found, double wanted) {
    REQUIRE(found == Approx(wanted).epsilon(1e-9));
}

/// One bed by the single functions, in the rows of the sheets.
void require_single_functions(const FormulaDesk& desk, const std::vector<double>& bed) {
    const bool high = bed[0] == 2;
    const double span = high ? 1.04 : 0.81;
    const double rise = high ? 0.71 : 0.42;
    const double foot = high ? 1.13 : 0.88;
    const double one_foot = high ? 0.15 : 0.12;
    const double end = high ? 1.915 : 2.25;
    const double middle = high ? 1.86 : 2.15;
    const double gap = high ? 0.17 : 0.15;
    const std::string shape = high ? "\"parabola\"" : "\"ellipse\"";
    const std::string z = "\"1H:1V\"";
    const double rows = bed[2];
    const double units = bed[3];
    const double base = bed[4];
    const double cover = bed[5];
    const double height = base + rise + cover;
    const double row = Call("UC.ROW.LENGTH")(units, "each")(end)(middle)(0.08).on(desk);
    const double length = Call("UC.BED.LENGTH")(row)(0.32).on(desk);
    const double width = Call("UC.BED.WIDTH")(rows, "each")(foot)(gap)(0.32).on(desk);
    require_near(bed[6], length);
    require_near(bed[7], width);

    const std::string layers = "{\"cover\";" + exact_text(cover) + ";" + exact_text(1610 * 9.80665e-3) +
                               "|\"initial\";0.3;19|\"general\";0.55;19|\"pavement\";0.15;23}";
    const double over_crown =
        Call("UC.LAYERS.DEPTH")(layers)(std::string("\"cover\""))(std::string("\"pavement\"")).on(desk);
    const double depth = base + rise + over_crown;
    require_near(bed[8], depth);
    const double pit_depth = depth - 0.15;

    const auto bed_call = [&](const char* name, double at, const char* unit) {
        return Call(name)(at, unit)(length)(width)(z)(base)(cover)(0.38, "1")(shape)(span)(rise)(rows * row)
            .on(desk);
    };
    const double plastic = 0.38 * rows * units * (high ? 28 : 16) / 940;
    const double storage = bed_call("UC.BED.VOLUME", height - 0.25, "m") - plastic;
    require_near(bed[9], storage);
    if (!std::isnan(bed[10])) require_near(bed[10], bed_call("UC.BED.DEPTH", 190, "m3"));

    const auto pit_call = [&](const char* name) { return Call(name)(length)(width)(pit_depth)(z).on(desk); };
    const double pit = pit_call("UC.PIT.VOLUME");
    require_near(bed[11], pit);
    const auto zone = [&](double from, double to) {
        return Call("UC.PIT.ZONE")(length)(width)(pit_depth)(z)(from)(to).on(desk);
    };
    const double chambers = Call("UC.ARCH.AREA")(shape)(span)(rise)(rise).on(desk) * rows * row;
    const double bedding = zone(0, base);
    const double beside = zone(0, height) - bedding - chambers;
    const auto mass = [&](double volume) {
        return Call("UC.STONE.ORDER")(volume, "m3")(1610, "kg/m3")(1.5, "%")(0, "%")("\"kg\"").on(desk);
    };
    require_near(bed[12], mass(bedding) + mass(beside));

    const double initial = zone(height, height + 0.3);
    const double fill = zone(height, height + 0.85);
    const auto spoil = [&](const char* name) {
        return Call(name)(pit, "m3")(50, "%")(fill, "m3")("\"sand\"").on(desk);
    };
    const double import = spoil("UC.FILL.IMPORT");
    const double away =
        Call("UC.SPOIL.CONVERT")(spoil("UC.SPOIL.CARTED"), "m3")("\"sand\"")("\"bank\"")("\"loose\"")
            .on(desk);
    const double loads = Call("UC.SPOIL.LOADS")(away, "m3")(12, "m3")(1350, "kg/m3")(20, "t").on(desk);
    const auto bought = [&](double volume) {
        return Call("UC.FILL.MASS")(volume, "m3")(95, "%")(1920, "kg/m3")(7, "%")("")("\"kg\"").on(desk);
    };
    const auto wrap = [&](const char* name) {
        return "UC.WRAP." + std::string(name) + "(\"" + exact_text(length) + " m\";\"" + exact_text(width) +
               " m\";\"" + exact_text(height) + " m\";\"1H:1V\";\"base walls top\";\"0.45 m\";";
    };
    const double fabric = desk.number(wrap("AREA") + ";\"0.45 m\")");
    const double rolls =
        desk.number("UC.PANELS.ROLLS(" + wrap("FACES") + "\"0.45 m\");\"100 m\";\"4.5 m\";\"0.45 m\")");
    const double ports = Call("UC.BED.PORTS")(rows, "each")(units, "each")(8, "each").on(desk);
    const auto packs = [&](double kilograms, double waste, double pack_in_t) {
        return Call("UC.ORDER")(kilograms, "kg")(waste, "1")(pack_in_t, "t")("\"t\"").on(desk);
    };
    const double ends = high ? 245 : 150;
    const double middles = high ? 204 : 128;
    const double cost = 2 * rows * ends + (units - 2) * rows * middles + 8 * pit +
                        58 * packs(mass(bedding), 0.05, 20) + 60 * packs(mass(beside), 0.05, 20) +
                        10 * bedding + 14 * beside + 2 * pit_call("UC.PIT.WALLS") + 2.1 * length * width +
                        240 * loads + 14 * away + 17 * packs(bought(std::min(import, initial)), 0.1, 1) +
                        8 * packs(bought(import - std::min(import, initial)), 0.1, 1) + 9 * fill +
                        300 * zone(height + 0.85, height + 1) + 890 * rolls + 1.1 * fabric +
                        18 * rows * units + 155 * ports + 4 * rows * row;
    require_near(bed[13], cost);
    require_near(bed[14], cost / storage);

    const double fill_load =
        Call("UC.LOAD.FILL")("UC.LAYERS.STACK(" + layers + ";\"cover\";\"pavement\")").on(desk) +
        0.05 * 19;  // where the surface is highest
    const double counted = Call("UC.COVER.DEPTH")(cover + 0.85)(0.15)("\"flexible\"").on(desk) - 0.05;
    const double wheels = Call("UC.LOAD.VEHICLE")("\"W80\"")(counted)(1.15, "1")(1.2, "1")("TRUE()").on(desk);
    const double under = Call("UC.FOOT.SUBGRADE")(fill_load + wheels, "kPa")(
                             foot)(gap)(one_foot)(rise)(1610 * 9.80665e-3, "kN/m3")(base)
                             .on(desk);
    const double strip = Call("UC.FOOT.STRIP")(one_foot)(base)(gap).on(desk);
    const double weight = 60.55 - depth - 57.1 < strip ? 18.5 - 9.80665 : 18.5;
    const double bears = std::min(
        160.0, Call("UC.BEARING.CAPACITY")(8, "kPa")(33, "deg")(weight, "kN/m3")(0)(strip)("")("\"Vesic\"")
                       .on(desk) /
                   3);
    const auto side = [&](double base_side) {
        return Call("UC.PIT.SIDE")(base_side)(pit_depth)(z).on(desk) + 1.2;
    };
    const bool across = bed[1] == 1;
    const std::vector<double> ratios = {0,
                                        190 / storage,
                                        (high ? 0.75 : 0.6) / counted,
                                        (over_crown + 0.05) / (high ? 2.5 : 2.4),
                                        (fill_load + wheels) / (high ? 130 : 140),
                                        fill_load / 60,
                                        under / bears,
                                        depth / (60.55 - 57.1 - 0.5),
                                        side(length) / (across ? 24 : 46),
                                        side(width) / (across ? 46 : 24)};
    require_near(bed[16], *std::max_element(ratios.begin(), ratios.end()));
    if (bed[15] > 0)
        require_near(ratios[static_cast<std::size_t>(bed[15])], bed[16]);
    else
        REQUIRE(bed[16] <= 1 + 1e-9);
}

}  // namespace

TEST_CASE("the beds of a search have the numbers that the single functions give") {
    const FormulaDesk desk;
    std::size_t held = 0;
    for (const std::vector<double>& bed : rows_of(desk, search(yard()))) {
        require_single_functions(desk, bed);
        ++held;
    }
    // Beds picked anywhere in the ranges, each alone.
    Random random;
    for (int i = 0; i < 60; ++i) {
        Parts parts = yard();
        const auto one = [](double value) { return exact_text(value) + ";" + exact_text(value) + ";"; };
        parts.at("counts") = "{" + one(random.whole(2, 9)) + "1|" + one(random.whole(4, 17)) + "1}";
        parts.at("stone steps") =
            "{" + one(0.01 * random.whole(15, 60)) + "0.05|" + one(0.01 * random.whole(16, 31)) + "0.05}";
        for (const std::vector<double>& bed : rows_of(desk, search(parts))) {
            require_single_functions(desk, bed);
            ++held;
        }
    }
    CHECK(held > 100);
}

TEST_CASE("those that pass stand first, the cheapest on top, then the nearest to passing") {
    const FormulaDesk desk;
    const Rows beds = rows_of(desk, search(yard()));
    REQUIRE(beds.size() == 40);
    for (std::size_t i = 1; i < beds.size(); ++i) {
        if (i < 20) {
            CHECK(beds[i][15] == 0);
            CHECK(beds[i][13] >= beds[i - 1][13]);
        } else {
            CHECK(beds[i][15] > 0);
            if (i > 20) CHECK(beds[i][16] >= beds[i - 1][16]);
        }
    }
}

TEST_CASE("a search of beds that is not whole is refused with what is missing") {
    const auto says = [](const std::string& formula, const char* part) {
        INFO(formula);
        CHECK_THAT(refusal_of(formula).what(), Catch::Contains(part));
    };
    says(with("supplies",
              "{0.15;16;0.6;2.4;140;60;\"150 AUD/each\";\"\"|"
              "0.17;28;0.75;2.5;130;60;\"245 AUD/each\";\"204 AUD/each\"}"),
         "supplies: unit kind 1 has no rate of its middle unit, so no bed of it has a cost");
    says(with("supplies", "{0.15;16;0.6;2.4;140;60;\"150 AUD/each\";\"128 AUD/each\"}"),
         "supplies: has 1 rows of values; one is wanted for each row of the shapes");
    says(with("rates", "{\"pit\";0;\"\";\"8 USD/m3\"}"), "two currencies, AUD and USD");
    says(with("rates", "{\"pit\";0;\"\";\"8 AUD/t\"}"), "rate 1: ");
    says(with("stone steps", "{0.6;0.15;0.05|0.16;0.31;0.05}"), "is a range of nothing");
    says(with("stone steps", "{0.15;0.6;0.05}"), "stone steps: has 1 rows of values; two are wanted");
    says(with("stone steps", "{0.15;0.6;\"0 m\"|0.16;0.31;0.05}"), "step");
    says(with("stone steps", "{0.15;0.6;\"0.5 mm\"|0.16;0.31;\"0.5 mm\"}"),
         "beds fit, and at most 1000000 are searched");
    says(with("levels", "{60.4;60.55;60.5;60.6;60.3;0.5}"), "no bed stays dry");
    says(with("space", "{\"3 m\";\"1.5 m\";46;24;0.6;0.32;0.32;0.25}"), "no bed fits");
    says(with("layers", "{\"base stone\";0.3;19}"), "the layers are those over the stone");
    says(with("choices", "{\"EN 124 D400\";\"flexible\";\"sand\";\"1H:1V\"}"), "test load");
    says(with("counts", "{2;20;1}"), "counts: has 1 rows of values; two are wanted");
}

}  // namespace undercroft::tests
