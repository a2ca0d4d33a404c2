// The shapes in which a table argument may come.
#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

namespace {

const char* by_unit_row = "UC.LOAD.FILL({\"mm\";\"kN/m3\"|300;18|450;20})";

}  // namespace

TEST_CASE("a table gives the same by a unit row, by units beside the numbers, by texts, in default units") {
    const FormulaDesk desk;
    const double expected = 0.3 * 18 + 0.45 * 20;
    CHECK(desk.number(by_unit_row) == Approx(expected).epsilon(1e-14));
    CHECK(desk.number("UC.LOAD.FILL({300;\"mm\";18;\"kN/m3\"|0.45;\"m\";20;\"kN/m3\"})") ==
          Approx(expected).epsilon(1e-14));
    CHECK(desk.number("UC.LOAD.FILL({\"300 mm\";18|\"45 cm\";\"20 kN/m3\"})") ==
          Approx(expected).epsilon(1e-14));
    CHECK(desk.number("UC.LOAD.FILL({0.3;18|0.45;20})") == Approx(expected).epsilon(1e-14));
}

TEST_CASE("a row in which only units stand is passed over, a half-filled one is not") {
    const FormulaDesk desk;
    CHECK(desk.number("UC.LOAD.FILL({300;\"mm\";18;\"kN/m3\"|\"\";\"m\";\"\";\"kN/m3\"})") ==
          Approx(5.4).epsilon(1e-14));
    CHECK_THAT(refusal_of("UC.LOAD.FILL({300;\"mm\";18;\"kN/m3\"|0.1;\"m\";\"\";\"kN/m3\"})"),
               refuses_value("row 2, column 3"));
    CHECK_THAT(refusal_of("UC.LOAD.FILL({\"\";\"mm\";\"\";\"kN/m3\"})"), refuses_value("blank"));
}

TEST_CASE("a number whose unit cell is blank, or holds a number, is refused with its place") {
    CHECK_THAT(refusal_of("UC.LOAD.FILL({300;\"\";18;\"kN/m3\"})"), refuses_value("row 1, column 1"));
    CHECK_THAT(refusal_of("UC.LOAD.FILL({300;18;450;20})"),
               refuses_value("a unit is wanted beside the number"));
    CHECK_THAT(refusal_of("UC.LOAD.FILL({300;\"mm\";18;\"kPa\"})"), refuses_value("row 1, column 3"));
    CHECK_THAT(refusal_of("UC.LOAD.FILL({1;2;3})"), refuses_value("or 4 with a unit beside each quantity"));
}

TEST_CASE("outlets come in three to six columns, or in ten with units beside the numbers") {
    const FormulaDesk desk;
    const double plain =
        desk.number("INDEX(UC.OUTLET.RATING({\"weir\";\"0.5 m\";\"2 m\";1.84;2;1}; 1; 2); 4; 2)");
    const double paired = desk.number(
        "INDEX(UC.OUTLET.RATING({\"weir\";50;\"cm\";2000;\"mm\";1.84;\"m^0.5/s\";2;1;\"each\"}; 1; 2); 4; "
        "2)");
    CHECK(plain == Approx(paired).epsilon(1e-14));
    CHECK_THAT(refusal_of("UC.OUTLET.RATING({\"weir\";0.5;\"m\";1;\"m\"}; 1; 2)"),
               refuses_value("row 1, column 3"));
    CHECK_THAT(refusal_of("UC.OUTLET.RATING({\"weir\";0.5;1;1.84;2;1;7}; 1; 2)"), refuses_value("7 columns"));
    CHECK_THAT(refusal_of("UC.OUTLET.RATING({\"sluice\";0.5;1}; 1; 2)"),
               refuses_value("is not a kind of outlet"));
}

TEST_CASE("storage is taken with two columns or with the five of the stage-storage table") {
    const FormulaDesk desk;
    const std::string stage =
        "UC.STAGE.STORAGE(4; \"10 m\"; \"5 m\"; \"0H:1V\"; \"0.25 m\"; \"0.25 m\"; 0.4; \"rectangle\"; \"1 "
        "m\"; "
        "\"0.5 m\"; \"20 m\"; \"ft;ft3;ft3;ft3;ft2\")";
    const double five =
        desk.number("UC.DRAIN.TIME(" + stage + "; {\"m\";\"L/s\"|0;1|1;1}; \"1 m\"; \"0.5 m\")");
    // 0.5 m to 1 m: half of the crates' 10 m3 and the stone around and over them, at 1 L/s.
    const double volume = 0.5 * 10 * 5 * 0.4 + 0.25 * 20 * 0.6;
    CHECK(five == Approx(volume * 1000 / 60).epsilon(1e-9));
    CHECK_THAT(refusal_of("UC.DRAIN.TIME({0;0;0|1;1;1}; {0;1|1;1}; 1; 0.5)"), refuses_value("3 columns"));
}

TEST_CASE("rows in different units are compared with a tolerance: equal is neither above nor below") {
    const FormulaDesk desk;
    // A conversion leaves these a last digit apart, one way or the other.
    for (const char* same : {"3 cm/h", "8.333333333333333e-06 m/s", "1.1811023622047245 in/h"}) {
        const std::string rain = "{\"30 min\";\"30 mm/h\"|\"1 h\";\"" + std::string(same) + "\"}";
        CHECK(desk.number("UC.RAIN.INTENSITY(" + rain + "; 45)") == Approx(30).epsilon(1e-12));
    }
    for (const char* same : {"60 min", "3600 s", "0.041666666666666667 d", "0.0059523809523809521 wk"}) {
        const std::string rows = "{\"1 h\";40|\"" + std::string(same) + "\";20|\"2 h\";10}";
        CHECK_THAT(refusal_of("UC.RAIN.INTENSITY(" + rows + "; 90)"), refuses_domain("must be longer"));
        CHECK_THAT(refusal_of("UC.LOOKUP(" + rows + "; \"90 min\")"), refuses_domain("must rise"));
        CHECK_THAT(refusal_of("UC.ROUTE.DEPTH(" + rows + "; {0;0|1;100}; {0;0|1;1})"),
                   refuses_domain("later"));
    }
    for (const char* same :
         {"1 m", "39.370078740157481 in", "3.2808398950131235 ft", "1.0936132983377078 yd"}) {
        const std::string depth = "\"" + std::string(same) + "\"";
        CHECK(desk.number("UC.PIT.SEEPAGE(\"10 mm/h\"; \"1 m\"; " + depth + "; \"20 m\"; \"5 m\")") ==
              Approx(0).margin(1e-12));
        CHECK(desk.number("UC.DRAIN.TIME({\"m\";\"m3\"|0;0|2;10}; {\"m\";\"L/s\"|0;1|2;1}; \"1 m\"; " +
                          depth + ")") == Approx(0).margin(1e-9));
    }
}

TEST_CASE("a table is filled up as high as a century has days, and no higher") {
    const auto as_high_as = [](const std::string& rows) {
        return "UC.HYDROGRAPH.RATIONAL(0.85; \"1.2 ha\"; \"50 mm/h\"; \"30 min\"; \"10 min\"; \"5 min\"; ; " +
               rows + ")";
    };
    CHECK(FormulaDesk().number("INDEX(" + as_high_as("40000") + "; 3; 1)") == Approx(5));
    CHECK_THAT(refusal_of(as_high_as("40001")), refuses_domain("at most 40000 rows high"));
}

}  // namespace undercroft::tests
