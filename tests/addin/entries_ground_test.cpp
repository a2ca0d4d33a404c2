// What the entries of ground, works and units themselves refuse, and tables of one that go into the next.
#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

namespace {

constexpr const char* planes = "{0;0;100|40;0;100|0;12;100}; {0;0;102|40;0;102|0;12;102}";

std::string units(const std::string& kinds, const std::string& rest) {
    return "UC.BED.UNITS(\"0.6 m\"; 10; 5; \"0H:1V\"; 0.2; 0.2; 0.4; " + kinds + rest + ")";
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
    says("UC.PLANT.COVER({250;1;1;0;0}; 20; 20)", "");
    says("UC.PIT.BATTER(\"B\"; \"7 m\"; 0.5)", "");
    says("UC.HANDLING.TEAM(0.4; 0.7; \"0 deg\"; 0.4; 0.2; \"0 deg\"; 1; 60; \"fair\"; \"4 each\")",
         "no share is published for a team of more than three");
}

TEST_CASE("planes that are none, or that meet, are refused") {
    CHECK_THAT(refusal_of("UC.LEVEL.PLANE({0;0;100|40;0;100|40;12;101|0;12;100}; 20; 6)"),
               refuses_domain("depart from a plane"));
    CHECK_THAT(refusal_of("UC.LEVEL.PLANE({0;0;100|20;0;100|40;0;100}; 20; 6)"), refuses_domain("line"));
    CHECK_THAT(refusal_of("UC.COVER.LEAST({0;0;102|40;0;99|0;12;102}; {0;0;100|40;0;100|0;12;100}; 40; 12)"),
               refuses_domain("above the lower"));
    CHECK_THAT(refusal_of("UC.SETOUT.PIT({1;2;3|4;5;6}; 40; 12; \"0H:1V\"; " + std::string(planes) + ")"),
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
