// What the entries of ground, works and units themselves refuse, and tables of one that go into the next.
#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

namespace {

constexpr const char* planes = "{0;0;100|40;0;100|0;12;100}; {0;0;102|40;0;102|0;12;102}";

std::string units(const std::string& kinds, const std::string& rest) {
    return "UC.BED.UNITS(\"0.6 m\"; 10; 5; \"0H:1V\"; 0.2; 0.2; 0.4; " + kinds + rest + ")";
}

/// Ten units of 0.3 m3 and two of 0.2 m3 at 0.4 m, in place of an ellipse 0.8 m high.
std::string tested(const std::string& name, const std::string& first, const std::string& rest) {
    return "UC." + name + "(" + first + "; 10; 5; \"0H:1V\"; 0.2; 0.2; 0.4; \"ellipse\"; 1.2; 0.8; 10" +
           rest + ")";
}

}  // namespace

TEST_CASE("what no vehicle, ground or team does is answered by no number, but by the reason") {
    const auto says = [](const char* formula, const char* part) {
        INFO(formula);
        const Refused refused = refusal_of(formula);
        CHECK(refused.cause() == Cause::no_answer);
        CHECK_THAT(refused.what(), Catch::Contains(part));
    };
    says("UC.LOAD.VEHICLE(\"AS 3996 D\"; 1)", "test load on the cover, not a wheel");
    says("UC.LOAD.CLASS(\"HL-93\")", "");
    says("UC.BASE.NEEDED(150; 1.3; 0.15; 0.15; 0.75; 16; 60)", "no thickness of base stone does");
    says("UC.BASE.REPLACED(150; 1; 10; 3; \"5 kN/m3\")", "no depth of replacement");
    says("UC.PLANT.COVER({250;\"1 m\";\"1 m\";0;0}; 20; 20)", "");
    says("UC.PIT.BATTER(\"B\"; \"7 m\"; 0.5)", "");
    says("UC.HANDLING.TEAM(0.4; 0.7; \"0 deg\"; 0.4; 0.2; \"0 deg\"; 1; 60; \"fair\"; \"4 each\")",
         "no share is published for a team of more than three");
}

TEST_CASE("slips of units in what the new entries take are refused by name", "[slips]") {
    const std::pair<const char*, const char*> slips[] = {
        {"UC.LOAD.VEHICLE(\"HL-93\"; 600)", "cover: 600 m is unusual"},
        {"UC.LOAD.VEHICLE(\"HL-93\"; 0.6; ; 120)", "presence: 120 is unusual"},
        {"UC.BASE.NEEDED(53; 1310; 0.15; 0.15; 0.75; 16; 150)", "span: 1310 m is unusual"},
        {"UC.BASE.NEEDED(53; 1.31; 0.15; 0.15; 0.75; 1610; 150)", "stone unit weight: 1610 kN/m3 is unusual"},
        {"UC.UPLIFT.BED(\"30 m\"; \"12 m\"; 1; {\"1.2 m\";1570}; 1.1)",
         "layers: row 1, column 2: 1570 kN/m3 is unusual"},
        {"UC.UPLIFT.BED(\"30 m\"; \"12 m\"; 1; {\"1.2 m\";15.7}; 1100)", "water height: 1100 m is unusual"},
        {"UC.PIT.BATTER(\"B\"; 3; 400)", "water above formation: 400 m is unusual"},
        {"UC.LIFTS.PLAN({300;18;0.15}; {50;1;1;0;0})", "layers: row 1, column 1: 300 m is unusual"},
        {"UC.HANDLING.TEAM(40; 0.7; 0; 0.5; 0.1; 30; 1; 90; \"fair\"; 2)", "reach at start: 40 m is unusual"},
        {"UC.POROSITY.BUILT(655.8; 412.5; 2650)", "mass: 655.8 kg is unusual"},
        {"UC.FILL.MASS(100; 95; 1920)", "degree: 95 is unusual"},
        {"UC.SPOIL.KEPT(1193; 55; 421; 0.9)", "fit share: 55 is unusual"},
        {"UC.BEARING.UNDRAINED(40000; 1; 18)", "strength: 40000 kPa is unusual"},
        {"UC.SETTLEMENT.ELASTIC(150; 2; 2; 10)", "modulus: 10 kPa is unusual"},
        {"UC.SETTLEMENT.DEGREE(0.01; 365; 2)", "time: 365 min is unusual"},
        {"UC.FABRIC.PSI(0.3; 0.002)", "permeability: 0.3 mm/h is unusual"},
        {"UC.SETOUT.DISTANCE(350000.1; 800; 500; 800)", "east 1: 350000.1 m is unusual"},
        {"UC.COVER.LEAST({0;0;335|40;0;335|0;12;335}; {0;0;100|40;0;100|0;12;100}; 40; 12)",
         "upper: at x 0 m, y 0 m it is 235 m over the formation, more than any pit"},
        {"UC.PIT.PLANES(40; 12; \"0H:1V\"; {0;0;100|12;0;100|0;4;100}; {0;0;102|40;0;102|0;12;102})",
         "formation: the corners lie from 0 m to 12 m along the length, but the base from 0 m to 40 m"},
        {"UC.LEVEL.FALL({0;0;100|0.04;0;100.4|0;12;100})", "corners: the plane falls by"},
        {"UC.LEVEL.PLANE({0;0;100|40;0;100|0;12;100}; \"400 m\"; 6)",
         "x (400 m) is farther from the corners"},
    };
    for (const auto& [formula, says] : slips) {
        INFO(formula);
        CHECK_THAT(refusal_of(formula), refuses_domain(says));
    }
}

TEST_CASE("planes that are none, or that meet, are refused") {
    CHECK_THAT(refusal_of("UC.LEVEL.PLANE({0;0;100|40;0;100|40;12;101|0;12;100}; 20; 6)"),
               refuses_domain("depart from a plane"));
    CHECK_THAT(refusal_of("UC.LEVEL.PLANE({0;0;100|20;0;100|40;0;100}; 20; 6)"), refuses_domain("line"));
    CHECK_THAT(refusal_of("UC.COVER.LEAST({0;0;102|40;0;99|0;12;102}; {0;0;100|40;0;100|0;12;100}; 40; 12)"),
               refuses_domain("above the lower"));
    CHECK_THAT(
        refusal_of("UC.SETOUT.PIT({100;200;3|400;500;6}; 40; 12; \"0H:1V\"; " + std::string(planes) + ")"),
        refuses_value("the grid is one row"));
}

TEST_CASE("kinds of units say how many they are, plastic and headers come whole") {
    const std::string kind = "{10;0;0|\"\";0.8;0.5}";
    const FormulaDesk desk;
    CHECK(desk.number(units(kind, "")) == Approx(13.5));
    CHECK_THAT(refusal_of(units("{\"\";0.1;0|10;0.8;0.5}", "")),
               refuses_value("how many there are of the first kind"));
    CHECK_THAT(refusal_of(units(kind, "; ; 500")),
               refuses_value("plastic mass and plastic density go together"));
    CHECK_THAT(refusal_of(units(kind, "; ; ; ; 2; 0.4")), refuses_value("header invert go together"));
    CHECK_THAT(refusal_of(units("{10;0;0|\"\";0.8;0.5|2;0.5;0.2}", "")), refuses_domain("two rows"));
}

TEST_CASE("a tested table goes before the section, and says what it lacks") {
    const std::string table = "{0;0;0|0.4;0.3;0.2|0.8;0.5;0.3}";
    const FormulaDesk desk;
    const auto volume = [&](const std::string& rest) { return tested("BED.VOLUME", "\"0.6 m\"", rest); };
    const double by_section = desk.number(volume(""));
    CHECK(desk.number(volume("; ; ; ; {10|2}")) == by_section);
    CHECK(desk.number(volume("; ; ; \"\"; {10|2}")) == by_section);
    // math: 10 x 0.3 + 2 x 0.2 = 3.4 m3 in 0.4 of 30 m3 of stone.
    CHECK(desk.number(volume("; ; ; " + table + "; {10|2}")) == Approx(3.4 + 0.4 * 26.6));
    CHECK(desk.number(volume("; ; ; " + table + "; {12}")) == Approx(3.6 + 0.4 * 26.4));
    CHECK(desk.number(volume("; ; ; " + table + "; {0|12}")) == Approx(2.4 + 0.4 * 27.6));
    // A unit beside each quantity, and no unit of a kind whose column is blank.
    CHECK(desk.number(volume(
              "; ; ; {0;\"m\";0;\"m3\";\"\";\"m3\";\"\";\"m3\"|80;\"cm\";500;\"L\";\"\";\"m3\";\"\";\"m3\"}; "
              "{10|0}")) == Approx(2.5 + 0.4 * 27.5));
    CHECK(desk.number(tested("BED.DEPTH", "14.04", "; ; ; " + table + "; {10|2}")) == Approx(0.6));
    // On a fall of 2 % the base rises by 0.2 m: 0.6 m is the mean of 0.6 m to 0.4 m deep, straight in
    // between.
    CHECK(desk.number(volume("; ; \"2 %\"; " + table + "; {10|2}")) ==
          Approx((3.4 + 1.7) / 2 + 0.4 * (25 - (3.4 + 1.7) / 2)));
    CHECK_THAT(refusal_of(volume("; ; ; " + table)), refuses_value("tested comes with numbers"));
    CHECK_THAT(refusal_of(volume("; ; ; " + table + "; {10|2|1}")),
               refuses_value("no volume of kind 3 at the depth of 0 m"));
    CHECK_THAT(refusal_of(volume("; ; ; " + table + "; {1|1|1|1}")), refuses_value("at most three kinds"));
    CHECK_THAT(refusal_of(volume("; ; ; " + table + "; {0|0}")), refuses_value("no unit of any kind"));
    CHECK_THAT(refusal_of(volume("; ; ; " + table + "; {1.5}")), refuses_domain("number of units"));
    CHECK_THAT(refusal_of(volume("; ; ; {\"\";\"m\";\"\";\"m3\";\"\";\"m3\";\"\";\"m3\"}; {10|2}")),
               refuses_value("the table is blank"));
    CHECK_THAT(refusal_of(volume("; ; ; {0;0;0|0.4;0.3;0.2|0.8;0.5;0.1}; {10|2}")),
               refuses_domain("the table of kind 2 has volumes that fall: 0.1 m3 after 0.2 m3"));
    CHECK_THAT(refusal_of(volume("; ; ; {0;0|0.8;0.5|0.4;0.5}; {10}")),
               refuses_domain("has depths that do not rise: 0.4 m after 0.8 m"));
    CHECK_THAT(refusal_of(volume("; ; ; {0;0|1.1;0.5}; {10}")), refuses_domain("above the top of the stone"));
    CHECK_THAT(refusal_of(volume("; ; ; {0;0|0.8;500}; {10}")), refuses_domain("500 m3 is unusual"));
}

TEST_CASE("what one function gives the next takes") {
    const FormulaDesk desk;
    const std::string faces = "UC.WRAP.FACES(\"20 m\"; \"10 m\"; \"3 m\"; \"0.75H:1V\"; \"base top\")";
    CHECK(desk.number("UC.PANELS.ROLLS(" + faces + "; 50; 5; 0.5)") == 3);
    CHECK(desk.number("UC.SOIL.ACCEPTED(UC.SOIL.GROUP(100; 80; 58; 30; 10))") == 0);
    // The water decides both the soil and the batter.
    CHECK(desk.number("UC.PIT.BATTER(UC.PIT.SOIL(\"A\"; 0.5); 3)") ==
          desk.number("UC.PIT.BATTER(\"A\"; 3; 0.5)"));
}

}  // namespace undercroft::tests
