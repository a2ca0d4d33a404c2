// Bad input of rain, outlets, routing and reuse as people type it: a sentence each, and nothing computed.
#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

namespace {

struct Bad {
    const char* formula;
    const char* says;  ///< part of the sentence
};

void check_all(std::initializer_list<Bad> list) {
    for (const Bad& bad : list) {
        CAPTURE(bad.formula);
        CHECK_THAT(refusal_of(bad.formula).what(), Catch::Contains(bad.says));
    }
}

}  // namespace

TEST_CASE(
    "rain that is none is refused: durations out of order, a frequency that is no column, another unit") {
    check_all({
        {"UC.RAIN.PICK({\"ARI (years)\";10|\"60-min:\";2|\"30-min:\";3}; \"10 years\"; \"mm\")",
         "duration (30 min) must be longer than that of the row before"},
        {"UC.RAIN.PICK({\"ARI (years)\";10|\"60-min:\";2|\"30-min:\";3}; \"10 years\"; \"mm/h\")",
         "row 3 of the rain table has more intensity than the shorter duration before"},
        {"UC.RAIN.PICK({\"ARI (years)\";10|\"60-min:\";20|\"30-min:\";20}; \"10 years\"; \"mm\")",
         "must be longer"},
        {"UC.RAIN.DEPTH({60;20|30;30}; 45)", "must be longer"},
        {"UC.ROUTE.GOVERNING({60;20|30;30}; 0.8; 20000; 10; {0;0|2;400}; {0;50|2;50})", "must be longer"},
        {"UC.RAIN.PICK(atlas_14; \"50 years\"; \"in\")",
         "the rain table has no column of 50 years: it has 2 years"},
        {"UC.RAIN.PICK(atlas_14; \"10 %\"; \"in\")", "the rain table has no column of 10 % AEP"},
        {"UC.RAIN.PICK(ifd; \"10 years\"; \"mm\")",
         "the rain table has no column of 10 years: it has 63.2 % AEP, 50 % AEP, 20 % AEP, 10 % AEP; the "
         "nearest, 10 % AEP, "
         "is 9.49"},
        {"UC.RAIN.PICK(atlas_14; 10; \"in\")", "frequency: '10' is no frequency: write it as 10 years"},
        {"UC.RAIN.PICK(atlas_14; \"10 years\"; \"in/h\")", "are these depths?"},
        {"UC.RAIN.PICK({\"ARI (years)\";10|\"30-min:\";60|\"60-min:\";40}; \"10 years\"; \"mm\")",
         "are these intensities?"},
        {"UC.RAIN.PICK(atlas_14; \"10 years\"; \"m2\")",
         "must be that of a depth (mm, in) or of an intensity"},
        {"UC.RAIN.PICK(atlas_14; \"10 years\"; \"in\"; 20)", "factor: 20 is unusual"},
        {"UC.RAIN.PICK({10;20|30;40}; \"10 years\"; \"in\")", "rain table: the rain table has no row"},
    });
}

TEST_CASE("a storm whose pattern is none is refused") {
    check_all({
        {"UC.RAIN.PATTERN(0.1; 60; 10; {\"min\";\"%\"|0;0|30;60|60;90})", "must end at 100 %"},
        {"UC.RAIN.PATTERN(0.1; 60; 10; {\"min\";\"%\"|0;0|30;60|60;55|90;100})", "must"},
        {"UC.RAIN.PATTERN(0.1; 60; 10; {\"min\";\"%\"|0;10|60;100})",
         "the pattern must begin with time 0 and 0 %"},
        {"UC.RAIN.PATTERN(0.1; 60; 10; \"alternating\")",
         "alternating blocks need a rain table, not one depth"},
        {"UC.RAIN.PATTERN(0.1; 60; 10; \"type II\")", "duration (60 min)"},
        {"UC.RAIN.STORM({10;100|60;25}; 60; 25; \"alternating\")", "must be a whole number of steps"},
        {"UC.RAIN.STORM({10;100|60;25}; 60; 10; \"type V\")", "is not a shape of storm"},
        {"UC.RAIN.STORM({10;100|60;25}; 120; 10)", "outside"},
    });
}

TEST_CASE("tailwater above the surface, and outlets that do not have what their kind needs, are refused") {
    check_all({
        {"UC.OUTLET.RATING({\"orifice\";0;0.15}; 1; 10; ; ; ; 1.2)",
         "tailwater (1.2 m) must be at most the depth that is rated (1 m): above, nothing flows out"},
        {"UC.ORIFICE.DROWNED(0.15; 1; 0.6; 1.2)", "tailwater (1.2 m) must be at most the water above (1 m)"},
        {"UC.ORIFICE.RECTANGLE(0.3; 0.2; 1; 0.6; 1.2)",
         "tailwater (1.2 m) must be at most the water above (1 m)"},
        {"UC.RISER.FLOW(0.6; 0.2; ; ; 0.3)", "tailwater (0.3 m) must be at most the water above (0.2 m)"},
        {"UC.WEIR.DROWNED(100; 0.2; 0.3)", "tailwater head (0.3 m) must be at most the head (0.2 m)"},
        {"UC.WEIR.CONTRACTED(0.8; 1; 1; 0.4)", "head (1 m) must be at most twice the crest height (0.8 m)"},
        {"UC.WEIR.CONTRACTED(1.2; 0.2; 1; 0.4)",
         "channel width (1 m) must be at least the crest length (1.2 m)"},
        {"UC.OUTLET.RATING({\"rectangle\";0;0.3}; 1; 10)", "sides: the height of the opening is missing"},
        {"UC.OUTLET.RATING({\"contracted\";0.05;0.8;\"\";1;1}; 1; 10)", "crest height (0.05 m)"},
        {"UC.OUTLET.RATING({\"riser\";0.5;600}; 1; 10)", "outlets: row 1, column 3: 600 m is unusual"},
        {"UC.OUTLET.RATING({\"orifice\";0;0.15}; 1; 10; ; ; 50%)", "tolerance: "},
        {"UC.OUTLET.RATING({\"orifice\";0;0.15}; 1; 10; ; ; ; ; {0;0|0.5;20})",
         "must reach from 0 to the depth (1 m)"},
        {"UC.OUTFALL.FLOW(\"1 m\"; 300; 20; 0.01; 0.013)", "diameter: 300 m is unusual"},
        {"UC.OUTFALL.FLOW(\"1 m\"; \"0.3 m\"; 20; 0.01; 0.013; \"bell\")", "is not an inlet of a pipe"},
        {"UC.PIPE.SIZE(0.6; {0.15|0.3|0.45})", "0.6 m"},
    });
}

TEST_CASE("a flood, a soakaway and a site that are none are refused") {
    check_all({
        {"UC.ROUTE.SPILL({0;0|20;300|60;0}; {0;0|1;300}; {0;0|1;50}; ; 1.5)", "initial depth (1.5 m)"},
        {"UC.ROUTE.SPILL({0;0|20;300|60;0}; {0;0|1;300}; {0;0|1;50}; ; ; {0.5;0|1;20})", "surface"},
        {"UC.ROUTE.MARKS({20;0|0;300|60;0}; {0;0|1;300}; {0;0|1;50})",
         "must be later than that of the row before"},
        {"UC.ROUTE.TAILWATER({0;20|60;20|61;0}; {0;0|2;100}; {\"orifice\";0;0.1}; {60;1|0;1})",
         "of the tailwater must be later than that of the row before"},
        {"UC.SOAK.FACTOR(500; \"some\")", "is not a consequence"},
        {"UC.SOAK.MOUND(\"0 m\"; \"0 m\"; 30; 10; 4; 40; 20; 4; \"10 d\")", "specific yield: 20 is unusual"},
        {"UC.SOAK.PONDING(30; 0.1; 0.3; 20)", "rain"},
        {"UC.RUNOFF.GRAPHICAL(20000; 0.1; 80; \"12 h\"; \"II\")", "time of concentration: "},
        {"UC.RUNOFF.GRAPHICAL(20000; 0.1; 80; 18; \"V\")", "is not a type of rain"},
        {"UC.CURVENUMBER.URBAN(61; 0.4; 0.5)", "30 %"},
        {"UC.QUALITY.VOLUME(25; 15000; 0.6)", "rain depth: 25 m is unusual"},
    });
}

TEST_CASE("reuse that is none is refused: demand below 0, a month without a date, rain below 0") {
    check_all({
        {"UC.REUSE.YIELD({0.003|0|0.008}; 1000; 1; 5; \"-2 m3\")",
         "demand: \"-2 m3\" is below 0; possible is"},
        {"UC.REUSE.YIELD({0.003|0|0.008}; 1000; 1; 5; 0)", "demand: 0 has no unit"},
        {"UC.REUSE.YIELD({0.003|0|0.008}; 1000; 1; 5; {1|2})", "the demand has 2 each values"},
        {"UC.REUSE.YIELD({0.003|0|0.008}; 1000; 1; 5; {1|2|3|4|5|6|7|8|9|10|11|12})",
         "a demand by month needs the date of the first day"},
        {"UC.REUSE.YIELD({0.003|0|0.008}; 1000; 1; 5; 1; ; ; ; \"2012-02-30\")",
         "first day: \"2012-02-30\" is no date"},
        {"UC.REUSE.YIELD({3|0|8}; 1000; 1; 5; 1)", "rain: row 1, column 1: 3 m is unusual"},
        {"UC.REUSE.YIELD({\"mm\"|3|-1|8}; 1000; 1; 5; 1)", "rain: row 3, column 1"},
        {"UC.REUSE.YIELD({\"mm\"|3|\"\"|8}; 1000; 1; 5; 1)", "rain: row 3, column 1: the cell is blank"},
        {"UC.REUSE.STORE({0.003|0|0|0}; 1000; 1; 2; 1)", "no store"},
        {"UC.REUSE.CURVE({0.003|0|0.008}; 1000; 1; {5|-1}; 2)", "stores: row 2, column 1"},
        {"UC.REUSE.BALANCE({0.003|0|0.008}; 1000; 1; 5; 2; \"spillage\")", "is not a rule"},
    });
}

TEST_CASE("a date is a day of Calc or a text, and a demand by month follows it") {
    const FormulaDesk desk;
    const std::string months = "{10|20|10|10|10|10|10|10|10|10|10|10}";
    const auto demand = [&](const std::string& day) {
        return desk.number("INDEX(UC.REUSE.YIELD({0|0|0|0}; 1000; 1; 5; " + months + "; ; ; ; " + day +
                           "); 2; 2)");
    };
    CHECK(demand("\"2012-01-30\"") == 60);  // two days of January, two of February
    CHECK(demand("40938") == 60);           // the same day in a cell
    CHECK(demand("\"2012-02-27\"") == 70);  // 2012 has a 29 February
    CHECK(demand("\"2013-02-27\"") == 60);
    CHECK_THAT(refusal_of("UC.REUSE.YIELD({0|0}; 1000; 1; 5; 1; ; ; ; 40938.5)"),
               refuses_value("is no date"));
}

TEST_CASE("what came after a release stands behind the unit, and moves nothing before it") {
    const FormulaDesk desk;
    const auto flow = [&](const std::string& more, int row) {
        return desk.number("INDEX(UC.OUTLET.RATING({\"orifice\";0;0.15}; 1; 2; \"m;L/s\"; 40" + more + "); " +
                           std::to_string(row) + "; 2)");
    };
    CHECK(flow("", 5) == Approx(45.161655).epsilon(1e-6));  // as released: 0, 0.15, 0.5 and 1 m
    CHECK(flow("; ; 0.4", 5) ==
          Approx(desk.number("UC.ORIFICE.DROWNED(0.15; 0.5; 0.6; 0.4)")).epsilon(1e-12));
    CHECK(flow("; 1%", 6) < flow("; ; 0.4", 6));  // more rows below
    CHECK(flow("; ; ; {0;0|1;10}", 5) < 10);
    // The frequency from a cell of a number and one of what it counts.
    CHECK(desk.number("UC.FREQUENCY.YEARS({10;\"years\"})") == 10);
    CHECK(desk.number("UC.FREQUENCY.YEARS({10;\"%\"})") == Approx(9.49).epsilon(1e-3));
}

}  // namespace undercroft::tests
