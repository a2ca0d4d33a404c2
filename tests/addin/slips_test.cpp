// Everyday slips of units, typed into a sheet of one's own: each is refused with what mends it, or right.
#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

namespace {

struct Slip {
    const char* formula;
    const char* says;  ///< part of the sentence
};

}  // namespace

TEST_CASE("a number in another unit than the default one is refused, and told the unit it was read in",
          "[slips]") {
    const Slip slips[] = {
        {"UC.ARCH.AREA(\"ellipse\"; 1200; 750; 300)",
         "span: 1200 m is unusual; usual is 0.2 m to 5 m: if another "
         "unit is meant, write it"},
        {"UC.BED.LENGTH(28.9; 305)", "end margin: 305 m is unusual"},
        {"UC.BED.WIDTH(7; 1.3; 6; 0.3)",
         "row gap: 6 m is unusual; usual is 0.05 m to 1 m, or 0 for none: if it is "
         "meant, or another unit, write the unit"},
        {"UC.BED.VOLUME(1; 30; 12; \"0H:1V\"; 150; 150; 0.4; \"ellipse\"; 1.2; 0.75; 100)",
         "base stone: 150 m"},
        {"UC.BED.VOLUME(1; 30; 12; 45; 0.2; 0.2; 0.4; \"ellipse\"; 1.2; 0.75; 100)",
         "batter: 45 is unusual; usual is 0.25 to 3, or 0 for none: if another unit is meant, write it"},
        {"UC.BED.VOLUME(1; 30; 12; 1; 0.2; 0.2; 40; \"ellipse\"; 1.2; 0.75; 100)",
         "porosity: 40 is unusual; usual is 0.2 to 0.55: if another unit is meant, write it"},
        {"UC.BED.VOLUME(1; 30; 12; 1; 0.2; 0.2; \"0.4 %\"; \"ellipse\"; 1.2; 0.75; 100)",
         "porosity: \"0.4 %\" is beyond what is possible, 5 % to 80 %"},
        {"UC.RUNOFF.PEAK(0.85; 50; 1.2)", "area: 1.2 m2 is unusual"},
        {"UC.RUNOFF.PEAK(0.85; 2; 12000)", "intensity: 2 mm/h is unusual"},
        {"UC.RUNOFF.PEAK(85; 50; 12000)", "coefficient: 85 is unusual"},
        {"UC.RUNOFF.DEPTH(80; 4;; \"in\")", "rain depth: 4 m is unusual"},
        {"UC.RUNOFF.DEPTH(80; 100)", "rain depth: 100 m is unusual"},
        {"UC.PIPE.FLOW(0.3; 200; 0.013)", "slope: 200 is unusual"},
        {"UC.PIPE.FLOW(0.3; 0.5; 0.013)",
         "slope: 0.5 is unusual; usual is 0.001 to 0.1: if it is meant, write 50 %"},
        {"UC.PIPE.FLOW(0.3; 0.005; 1.3)", "roughness: 1.3 is unusual"},
        {"UC.PIPE.FLOW(0.3; 0.005; 13)", "roughness: 13 is unusual"},
        {"UC.PIPE.FLOW(0.3; 0.005; 130)", "roughness: 130 is unusual"},
        {"UC.PIPE.FLOW(12; 0.005; 0.013)", "diameter: 12 m is unusual"},
        {"UC.SOAK.FLOW(100; 20; 1E-5)", "rate: 1e-05 mm/h is unusual"},
        {"UC.SOAK.FLOW(100; 20; 36; 150)", "safety factor: 150 is unusual"},
        {"UC.WEIR.FLOW(1.2; 0.15; 3.33)", "coefficient: 3.33 m^0.5/s is unusual"},
        {"UC.WEIR.NOTCH(90; 0.15; 2.5)", "coefficient: 2.5 m^0.5/s is unusual"},
        {"UC.WEIR.NOTCH(1.57; 0.15)", "angle: 1.57 deg is unusual"},
        {"UC.ORIFICE.FLOW(150; 1)", "diameter: 150 m is unusual"},
        {"UC.TIME.KIRPICH(0.3; 0.01)", "length: 0.3 m is unusual"},
        {"UC.TIME.KIRPICH(\"300 m\"; 1.5)", "slope: 1.5 is unusual"},
        {"UC.RAIN.INTENSITY({0.25;100|1;40|24;5}; 60)", "rain: row 1, column 1: 0.25 min is unusual"},
        {"UC.RAIN.INTENSITY({5;4.8|60;1.4|1440;0.13}; 60)", "rain: row 2, column 2: 1.4 mm/h is unusual"},
        {"UC.HYDROGRAPH.RATIONAL(0.6; 20000; 40; 0.5; 10; 5)", "duration: 0.5 min is unusual"},
        {"UC.OUTLET.RATING({\"orifice\";0;150}; 1; 10)", "outlets: row 1, column 3: 150 m is unusual"},
        {"UC.OUTLET.RATING({\"weir\";0.5;1.2;3.33}; 1; 10)",
         "outlets: row 1, column 4: 3.33 m^0.5/s is unusual"},
        {"UC.DRAIN.TIME({0;0|2.5;8000|5;16600}; {0;0|2.5;0.4|5;0.6}; 3)",
         "storage: row 2, column 2: 8000 m3 is unusual"},
        {"UC.DRAIN.TIME({0;0|1.5;2000|3;4600}; {0;0|1.5;0.4|3;0.6}; 2)",
         "rating: row 2, column 2: 0.4 L/s is unusual"},
        {"UC.SOAK.RATE(375; 2.5; 56)", "volume: 375 m3 is unusual"},
        {"UC.SOAK.RATE(0.375; 2.5; 3360)", "time: 3360 min is unusual"},
        {"UC.PUMP.TIME(360; 0.025)", "pumping: 0.025 L/s is unusual"},
    };
    for (const Slip& slip : slips) {
        INFO(slip.formula);
        CHECK_THAT(refusal_of(slip.formula).what(), Catch::Contains(slip.says));
    }
}

TEST_CASE("units of two systems do not mix with bare numbers", "[slips]") {
    const Slip slips[] = {
        {"UC.WEIR.FLOW(\"4 ft\"; \"0.5 ft\"; 1.84;; \"cfs\")",
         "coefficient: has no unit, and another argument is in feet, pounds or the like: write the unit of "
         "each"},
        {"UC.BED.LENGTH(\"100 ft\"; 0.3)", "end margin: has no unit, and another argument"},
        {"UC.BED.LENGTH(100; 0.3; \"ft\")", "row length: has no unit, and the result is asked for in feet"},
        {"UC.STAGE.STORAGE(10; 20; 10; \"0H:1V\"; 0.2; 0.2; 0.4; \"ellipse\"; 1.2; 0.6; 100; "
         "\"ft;ft3;ft3;ft3;ft2\")",
         "length: has no unit, and the result is asked for in feet"},
        {"UC.DRAIN.TIME({\"ft\";\"ft3\"|0;0|3;9000}; {0;0|1;20}; \"2 ft\"; \"1 ft\")", "rating: has no unit"},
    };
    for (const Slip& slip : slips) {
        INFO(slip.formula);
        CHECK_THAT(refusal_of(slip.formula), refuses_value(slip.says));
    }
    const FormulaDesk desk;
    // What has no system may stand bare: counts, shares, slopes, times, angles, and nothing.
    CHECK(desk.number("UC.PIPE.FLOW(\"12 in\"; 0.01; 0.013;; \"ft3/s\")") > 3);
    CHECK(desk.number("UC.WEIR.FLOW(\"4 ft\"; \"6 in\";; 2; \"cfs\")") > 4);
    CHECK(desk.number("UC.WEIR.NOTCH(90; \"1 ft\";; \"cfs\")") > 2);
    CHECK(desk.number("UC.SOAK.RATE(\"13 ft3\"; \"27 ft2\"; 56; \"in/h\")") > 0);
    CHECK(desk.number("UC.PUMP.TIME(\"9000 ft3\"; \"1 cfs\"; 0; \"h\")") == Approx(2.5));
    CHECK(desk.number("UC.BED.LENGTH(28.9; 0.3; \"mm\")") == Approx(29500));
}

TEST_CASE("beside a quantity no bare number, and none changes its unit", "[slips]") {
    const Slip slips[] = {
        {"UC.ATLEAST(UC.CONVERT(\"200 mm\"; \"mm\"); \"12 in\")",
         "value: 200 has no unit, and the limit has one"},
        {"UC.WITHIN(\"0.34 m\"; \"0.3 m\"; 5%)", "tolerance: 0.05 has no unit"},
        {"UC.TOTAL(5; \"3 ft\"; \"ft\")", "a: 5 has no unit"},
        {"UC.DIFFERENCE(\"3 ft\"; 1; \"ft\")", "b: 1 has no unit"},
        {"UC.LOOKUP({0;0|2;100}; \"1.5 ft\")", "first column of the table: 0 has no unit"},
        {"UC.ORDER(103; 5%; \"20 t\"; \"t\")", "net: 103 has no unit, and the pack has one"},
        {"UC.COST(100; \"85 AUD/t\")", "quantity: 100 has no unit"},
        {"UC.SUM({1;\"ft\"|5;\"%\"}; \"ft\")", "a length is wanted"},
        {"UC.LARGEST({\"3 ft\"|5}; \"ft\")", "figure: 5 has no unit"},
        {"UC.CONVERT(305; \"mm\")", "the result 305 has no unit, and a length is asked for: write the unit"},
        {"UC.TOTAL(5; 3; \"ft\")", "the result 8 has no unit"},
        {"UC.LARGEST({12|15|9}; \"m3/h\")", "the result 15 has no unit"},
        {"UC.CONVERT(305; \"m\")", "the result 305 has no unit"},
        {"UC.TOTAL(5; 3; \"m\")", "the result 8 has no unit"},
        {"UC.PRODUCT(9.81; \"1590 kg/m3\")", "unit: is left out"},
        {"UC.PRODUCT(9.81; \"1590 kg/m3\"; \"kN/m3\")", "a unit weight is wanted"},
        {"UC.QUOTIENT(230; \"2 m3\"; \"1\")", "a number or share is wanted"},
        {"UC.QUANTITY(\"305 mm\"; \"m\")", "number: 0.305 m has a unit already"},
        {"UC.QUANTITY(305; \"furlong\")", "unit: "},
    };
    for (const Slip& slip : slips) {
        INFO(slip.formula);
        CHECK_THAT(refusal_of(slip.formula), refuses_value(slip.says));
    }
    const FormulaDesk desk;
    CHECK(desk.number("UC.PRODUCT(2; \"3 m\"; \"m\")") == 6);
    CHECK(desk.number("UC.TOTAL(5; 3; \"each\")") == 8);
    CHECK(desk.number("UC.CONVERT(0.4; \"%\")") == Approx(40));
    CHECK(desk.number("UC.ATLEAST(UC.QUANTITY(UC.CONVERT(\"200 mm\"; \"mm\"); \"mm\"); \"12 in\")") == 0);
    CHECK(to_utf8(*desk.value("UC.QUANTITY(0.1 + 0.2; \"ft3/s\")").text()) == "0.30000000000000004 ft3/s");
}

TEST_CASE("0 without a unit stands for a blank cell: refused where that is no default", "[slips]") {
    const Slip slips[] = {
        {"UC.BED.VOLUME(0; 30; 12; 1; 0.2; 0.2; 0.4; \"ellipse\"; 1.2; 0.75; 100)",
         "depth: 0 has no unit; a blank cell arrives as 0: where none is meant, write 0 m"},
        {"UC.BED.VOLUME(1; 0; 12; 1; 0.2; 0.2; 0.4; \"ellipse\"; 1.2; 0.75; 100)",
         "length: 0 is not possible, and a blank cell arrives as 0; usual is 3 m to 150 m"},
        {"UC.BED.VOLUME(1; 30; 12; 0; 0.2; 0.2; 0.4; \"ellipse\"; 1.2; 0.75; 100)", "write 0H:1V"},
        {"UC.PIPE.FLOW(0.3; 0.005; 0.013; 0)", "depth: 0 has no unit"},
        {"UC.RUNOFF.DEPTH(80; 0.1; 0)",
         "abstraction ratio: 0 has no unit; a blank cell arrives as 0: where none is "
         "meant, write 0 %"},
        {"UC.STORAGE.REQUIRED({10;100|60;30}; 0.8; 9000; 0)", "release: 0 has no unit"},
        {"UC.DRAW.PORTS(1; 1.3; 0.15; 13; 0; 2.4; 2.3; 0.1)",
         "interval: 0 has no unit; a blank cell arrives as 0: "
         "where none is meant, write 0 each"},
        {"UC.SOAK.TIME(\"1 m\"; 0.4; 60; \"34 m\"; 36; 1; 0)", "fraction: 0 has no unit"},
        {"UC.ATMOST(0; \"48 h\")", "value: 0 has no unit"},
        {"UC.DIFFERENCE(\"3 m\"; 0; \"m\")", "b: 0 has no unit"},
        {"UC.PRODUCT(0; \"3 m\"; \"m\")", "a: 0 has no unit"},
        {"UC.QUANTITY(0; \"m\")", "number: 0 has no unit"},
    };
    for (const Slip& slip : slips) {
        INFO(slip.formula);
        CHECK_THAT(refusal_of(slip.formula), refuses_domain(slip.says));
    }
    const FormulaDesk desk;
    // Where 0 is the default, and in a table, whose blank cells are seen as such, it is taken.
    CHECK(desk.number("UC.BED.PORTS(7; 13; 0)") == 14);
    CHECK(desk.number("UC.WEIR.FLOW(1; 0.2; ; 0)") > 0);
    CHECK(desk.number("UC.DRAIN.TIME({0;0|1;50}; {0;5|1;5}; 1; 0)") > 0);
    CHECK(desk.number("UC.BED.VOLUME(\"0 m\"; 30; 12; 1; 0.2; 0.2; 0.4; \"ellipse\"; 1.2; 0.75; 100)") == 0);
}

TEST_CASE("a cell that shows a percentage is not read beside % as a hundredth of it", "[slips]") {
    const Slip slips[] = {
        {"UC.STONE.MASS(100; {0.38;\"%\"}; 2650; \"t\")",
         "porosity: 0.38 % is far below what is usual, 0.2 to 0.55: a cell that shows 38 % holds 0.38: give "
         "it "
         "alone, without % beside it; if 0.38 % is meant, write it as one text"},
        {"UC.PIPE.FLOW(0.3; {0.005;\"%\"}; 0.013)", "slope: 0.005 % is far below what is usual"},
        {"UC.RUNOFF.PEAK({0.85;\"%\"}; 50; 1200)", "a cell that shows 85 % holds 0.85"},
        {"UC.ORDER(\"103 t\"; {0.05;\"%\"}; \"20 t\"; \"t\")", "a cell that shows 5 % holds 0.05"},
    };
    for (const Slip& slip : slips) {
        INFO(slip.formula);
        CHECK_THAT(refusal_of(slip.formula), refuses_domain(slip.says));
    }
    const FormulaDesk desk;
    // Flat, but built; and as a text it cannot be a cell's format.
    CHECK(desk.number("UC.PIPE.FLOW(0.3; {0.05;\"%\"}; 0.013)") ==
          Approx(desk.number("UC.PIPE.FLOW(0.3; \"0.05 %\"; 0.013)")));
    CHECK(desk.number("UC.PIPE.FLOW(0.3; \"0.005 %\"; 0.013)") > 0);
    CHECK(desk.number("UC.ORDER(\"103 t\"; {0.5;\"%\"}; \"20 t\"; \"t\")") == 120);
}

}  // namespace undercroft::tests
