// Everyday slips of units in loads, soils, stone, excavation and takeoff, typed into a sheet of one's own:
// each is refused, by the name of the argument and with the unit that its number was read in.
#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

namespace {

struct GroundSlip {
    const char* formula;
    const char* says;  ///< part of the sentence
};

void check_all(std::initializer_list<GroundSlip> slips) {
    for (const GroundSlip& slip : slips) {
        CAPTURE(slip.formula);
        CHECK_THAT(refusal_of(slip.formula), refuses_domain(slip.says));
    }
}

}  // namespace

TEST_CASE("slips of units in loads on the ground are refused", "[slips]") {
    check_all({
        {"UC.LOAD.POINT(72; 750)", "depth: 750 m is unusual"},
        {"UC.LOAD.POINT(16; 2.5)", "load: 16 kN is unusual"},
        {"UC.LOAD.POINT(72000; 1)", "load: 72000 kN is unusual"},
        {"UC.LOAD.CIRCLE(0.3; 0.5; 1)", "pressure: 0.3 kPa is unusual"},
        {"UC.LOAD.CIRCLE(300; 500; 1)", "radius: 500 m is unusual"},
        {"UC.LOAD.RECTANGLE(3000; 2; 1; 1)", "pressure: 3000 kPa is unusual"},
        {"UC.LOAD.RECTANGLE(100; 10; 20; 2)", "length: 10 m is unusual"},
        {"UC.LOAD.SPREAD(80; 250; 400; 0.75)", "length: 250 m is unusual"},
        {"UC.LOAD.SPREAD(80; 0.25; 0.4; 0.75; 2)", "spread: 2 is unusual"},
        {"UC.LOAD.SPREAD(80; 0.25; 0.4; 0.75; \"2H:1V\")", "is beyond what is possible"},
        {"UC.LOAD.WHEEL(72; 250; 510; 750)", "tyre length: 250 m is unusual"},
        {"UC.LOAD.WHEEL(16; 10; 20; 2.5)", "wheel load: 16 kN is unusual"},
        {"UC.LOAD.WHEEL(72; 0.25; 0.51; 750)", "cover: 750 m is unusual"},
        {"UC.LOAD.WHEEL(72; 0.25; 0.51; 0.75; 1.15; 6)", "wheel spacing: 6 m is unusual"},
        {"UC.LOAD.WHEEL(72; 0.25; 0.51; 0.75; 115)", "distribution factor: 115 is unusual"},
        {"UC.LOAD.PLANT({25;100;1200;0;0}; 0.45)", "patches: row 1, column 2: 100 m is unusual"},
        {"UC.LOAD.PLANT({25000;0.2;1.2;0;0}; 0.45)", "patches: row 1, column 1: 25000 kN is unusual"},
        {"UC.LOAD.FILL({300;18|450;20})", "layers: row 1, column 1: 300 m is unusual"},
        {"UC.LOAD.FILL({0.3;1800|0.45;2000})", "layers: row 1, column 2: 1800 kN/m3 is unusual"},
        {"UC.LOAD.FILL({1;120|1.5;110})", "layers: row 1, column 2: 120 kN/m3 is unusual"},
        {"UC.FOOT.PRESSURE(80; 1300; 150; 150; 225)", "span: 1300 m is unusual"},
        {"UC.FOOT.PRESSURE(80; 1.3; 0.15; 150; 0.2)", "foot width: 150 m is unusual"},
    });
}

TEST_CASE("a bare number that is as usual in another unit is refused where safety rests on it", "[slips]") {
    check_all({
        {"UC.LOAD.WHEEL(72; 0.25; 0.51; 2)",
         "cover: 2 has no unit, and 2 m and 2 ft are both usual: write the unit"},
        {"UC.UPLIFT.FACTOR({600;0.65;15.6}; 500)", "weights: row 1, column 2: 0.65 has no unit"},
        {"UC.UPLIFT.BED(30; \"12 m\"; \"0H:1V\"; {\"m\";\"kN/m3\"|1.2;15.7}; \"2 m\")",
         "base length: 30 has no unit"},
        {"UC.SETTLEMENT.DEGREE(\"0.01 m2/d\"; 2000000; \"2 m\")",
         "and 2e+06 min and 2e+06 s are both usual"},
        {"UC.RAIN.REACHES({10;100|360;9}; 6)",
         "duration: 6 has no unit, and 6 min and 6 h are both usual: write the unit"},
    });
    // Where only the default unit can be meant, nothing is lost.
    const FormulaDesk desk;
    CHECK(desk.number("UC.RAIN.REACHES({10;100|360;9}; 30)") == 1);
    CHECK(desk.number("UC.LOAD.WHEEL(72; 0.25; 0.51; 0.75)") ==
          desk.number("UC.LOAD.WHEEL(72; 0.25; 0.51; \"0.75 m\")"));
}

TEST_CASE("slips of units in what the ground bears and pushes are refused", "[slips]") {
    check_all({
        {"UC.BEARING.CAPACITY(5; 0.56; 18; 0.5; 1)", "friction angle: 0.56 deg is unusual"},
        {"UC.BEARING.CAPACITY(5; 32; 1.8; 0.5; 1)", "unit weight: 1.8 kN/m3 is unusual"},
        {"UC.BEARING.CAPACITY(500; 32; 18; 0.5; 1)", "cohesion: 500 kPa is unusual"},
        {"UC.BEARING.CBR(12)", "penetration per blow: 12 m is unusual"},
        {"UC.BASE.THICKNESS(300; 150; 140)", "loaded width: 150 m is unusual"},
        {"UC.BASE.THICKNESS(300; 0.15; 3000)", "allowable: 3000 kPa is unusual"},
        {"UC.BASE.THICKNESS(300; 0.15; 3)", "allowable: 3 kPa is unusual"},
        {"UC.SIDEFILL.WIDTH(60; 750; 40)", "height: 750 m is unusual"},
        {"UC.SIDEFILL.WIDTH(60; 0.75; 800)", "allowable: 800 kPa is unusual"},
        {"UC.EARTH.COEFFICIENT(\"active\"; 0.56)", "friction angle: 0.56 deg is unusual"},
        {"UC.EARTH.COEFFICIENT(\"active\"; 32; ; 90; 10)", "slope: 10 is unusual"},
        {"UC.EARTH.THRUST(33; 19; 3)", "coefficient: 33 is unusual"},
        {"UC.EARTH.THRUST(0.33; 1900; 3)", "unit weight: 1900 kN/m3 is unusual"},
        {"UC.EARTH.THRUST(0.33; 19; 3; 250)", "surcharge: 250 kPa is unusual"},
        {"UC.UPLIFT.FACTOR({600;\"0.65 m\";15.6}; 500; 1000)", "water unit weight: 1000 kN/m3 is unusual"},
        {"UC.UPLIFT.FACTOR({600;650;15.6}; 500)", "weights: row 1, column 2: 650 m is unusual"},
        {"UC.UPLIFT.FILL(130; {600;0.65;15.6}; 500; 600; 19)", "factor: 130 is unusual"},
    });
}

TEST_CASE("slips of units in soil, stone and fill are refused", "[slips]") {
    check_all({
        {"UC.SOIL.GROUP(0.95; 0.85; 0.6; 30; 12)", "passing 2 mm: 0.95 % is unusual"},
        {"UC.SOIL.GROUP(95; 85; 60; 0.3; 0.12)", "liquid limit: 0.3 % is unusual"},
        {"UC.SOIL.INDEX(0.6; 30; 12)", "passing 0.075 mm: 0.6 % is unusual"},
        {"UC.GRADING.SIZE({63;100|37.5;52|12.5;2}; 60)", "grading: row 1, column 1: 63 m is unusual"},
        {"UC.GRADING.SIZE({\"mm\";\"%\"|63;100|37.5;52|12.5;2}; 0.6)", "percent: 0.6 % is unusual"},
        {"UC.GRADING.UNIFORMITY({2.5;100|1.5;52|0.5;2})", "grading: row 1, column 1: 2.5 m is unusual"},
        {"UC.GRADING.FITS({0.063;1|0.0375;0.52|0.0125;0.02}; \"No. 3\")",
         "grading: row 1, column 2: 1 % is unusual"},
        {"UC.STONE.POROSITY(1.59; 2.65)", "bulk density: 1.59 kg/m3 is unusual"},
        {"UC.STONE.POROSITY(99; 165)", "bulk density: 99 kg/m3 is unusual"},
        {"UC.STONE.MASS(213; 0.4; 2.65; \"t\")", "particle density: 2.65 kg/m3 is unusual"},
        {"UC.STONE.MASS(100; 38; 2650; \"t\")", "porosity: 38 is unusual"},
        {"UC.STONE.MASS(100; 0.0038; 2650; \"t\")", "porosity: 0.0038 is unusual"},
        {"UC.STONE.MASS(\"100 m3\"; \"0.4 %\"; \"2650 kg/m3\"; \"t\")", "is beyond what is possible"},
        {"UC.LIFTS(0.45; 150)", "greatest lift: 150 m is unusual"},
        {"UC.LIFTS(450; 0.15)", "thickness: 450 m is unusual"},
        {"UC.COMPACTION.DRY(2.05; 0.12)", "wet density: 2.05 kg/m3 is unusual"},
        {"UC.COMPACTION.DRY(2050; 12)", "moisture: 12 is unusual"},
        {"UC.COMPACTION.DEGREE(114; 120)", "dry density: 114 kg/m3 is unusual"},
        {"UC.FABRIC.OPENING(0.25; 1.6)", "d85: 0.25 m is unusual"},
    });
}

TEST_CASE("slips of units in excavation, spoil and takeoff are refused", "[slips]") {
    check_all({
        {"UC.PIT.VOLUME(45; 14; 2.2; 45)", "batter: 45 is unusual"},
        {"UC.PIT.VOLUME(45; 14; 2.2; 0.043055555555555555)", "batter: 0.043055555555555555 is unusual"},
        {"UC.PIT.VOLUME(45; 14; 2.2; 46115)", "batter: 46115 is unusual"},
        {"UC.PIT.VOLUME(45; 14; 2200; 1)", "depth: 2200 m is unusual"},
        {"UC.PIT.VOLUME(45000; 14000; 2200; 1)", "base length: 45000 m is unusual"},
        {"UC.PIT.BATTER(\"B\"; 10)", "depth: 10 m is unusual"},
        {"UC.PIT.GRID({100.2;100.4|100.1;100.3}; 10000; 10; 98)", "spacing x: 10000 m is unusual"},
        {"UC.SPOIL.VOLUME(639; 30)", "soil: 30 is unusual"},
        {"UC.SPOIL.VOLUME(639; 0.3)", "soil: 0.3 is unusual"},
        {"UC.SPOIL.LOADS(639; 10; 1.6; 14000)", "density: 1.6 kg/m3 is unusual"},
        {"UC.SPOIL.LOADS(639; 10; 1600; 14)", "payload: 14 kg is unusual"},
        {"UC.WRAP.AREA(45; 14; 1200; 1)", "height: 1200 m is unusual"},
        {"UC.WRAP.AREA(45; 14; 1.2; 1; \"walls\"; 300)", "lap at top: 300 m is unusual"},
        {"UC.ROLLS(45; 14; 100; 4.5; 450)", "lap: 450 m is unusual"},
        {"UC.ROLLS(45; 14; 100; 4.5; 0.45; 5)", "waste: 5 is unusual"},
        {"UC.ROLLS.AREA(45; 14; 100; 4.5; 0.45; 1.05)", "waste: 1.05 is unusual"},
        {"UC.ORDER(\"103 t\"; 5; \"20 t\"; \"t\")", "waste: 5 is unusual"},
        {"UC.LINER.MASS(800; 1.5; 940)", "thickness: 1.5 m is unusual"},
        {"UC.LINER.MASS(800; 0.0015; 0.94)", "density: 0.94 kg/m3 is unusual"},
        {"UC.LINER.SEAMS(45; 14; 6; 100)", "lap: 100 m is unusual"},
        {"UC.HANDLING.LIMIT(30; 75; 30; \"0 deg\"; 0.5; 120; \"fair\")", "horizontal: 30 m is unusual"},
        {"UC.HANDLING.LIMIT(0.3; 0.75; 0.3; \"0 deg\"; 0.5; 2; \"fair\")", "duration: 2 min is unusual"},
    });
}

TEST_CASE("what is written with its unit, or usual without one, is taken", "[slips]") {
    const FormulaDesk desk;
    CHECK(desk.value("UC.SOIL.GROUP(\"95 %\"; \"85 %\"; \"60 %\"; 30; 12)").text() != nullptr);
    CHECK(desk.number("UC.PIT.VOLUME(45; 14; 2.2; \"45 deg\")") ==
          Approx(desk.number("UC.PIT.VOLUME(45; 14; 2.2; 1)")).epsilon(1e-12));
    CHECK(desk.number("UC.STONE.MASS(100; 0.38; 2650; \"t\")") == Approx(164.3).epsilon(1e-12));
    CHECK(desk.number("UC.LIFTS(0.45; 0.15)") == 3);
    CHECK(desk.number("UC.SPOIL.LOADS(2125; 12; 1300; 20000)") == 178);
    CHECK(desk.number("UC.LINER.MASS(800; 0.0015; 940)") == Approx(1128).epsilon(1e-12));
}

}  // namespace undercroft::tests
