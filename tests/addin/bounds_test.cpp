// Bounds and branches of the functions that only a figure at their edge shows.
#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

TEST_CASE("storage must rise from each row to the next, not only over all") {
    CHECK_THAT(refusal_of("UC.ROUTE.DEPTH({0;0|10;0}; {0;0|1;10|2;5}; {0;0|2;1})"),
               refuses_domain("volume (5 m3)"));
    CHECK_THAT(refusal_of("UC.ROUTE.DEPTH({0;0|10;0}; {0;0|1;10|2;10}; {0;0|2;1})"),
               refuses_domain("volume"));
}

TEST_CASE("where the rating falls in its last span a long step gives what a short one gives, or is refused") {
    const FormulaDesk desk;
    const std::string pool = "{0;0|1;10|2;20}; {0;0|1;50|2;10}";  // m and m3; m and L/s
    const std::string rain = "{0;0|5;90|10;0}";                   // min and L/s
    const double fine = desk.number("UC.ROUTE.DEPTH(" + rain + "; " + pool + "; \"1 s\")");
    CHECK(fine > 1);  // the falling span is reached
    CHECK(desk.number("UC.ROUTE.DEPTH(" + rain + "; " + pool + "; \"0.5 min\")") ==
          Approx(fine).epsilon(2e-3));
    CHECK(desk.number("UC.ROUTE.DEPTH(" + rain + "; " + pool + ")") == Approx(fine).epsilon(2e-3));
    CHECK(desk.number("UC.ROUTE.DEPTH(" + rain + "; " + pool + "; \"5 min\")") == Approx(fine).epsilon(2e-3));
    CHECK_THAT(refusal_of("UC.ROUTE.POOL(" + rain + "; " + pool + "; \"5 min\")"),
               refuses_domain("the step is too long: the greatest depth would be 1.23923 m"));
}

TEST_CASE("loads are the more of those by volume and by mass, rounded up") {
    const FormulaDesk desk;
    // 16 t in loads of 5 t are four, though one truck has the room.
    CHECK(desk.number("UC.SPOIL.LOADS(10; \"100 m3\"; 1600; 5000)") == 4);
    CHECK(desk.number("UC.SPOIL.LOADS(10; \"100 m3\")") == 1);
    CHECK_THAT(refusal_of("UC.SPOIL.LOADS(10; \"100 m3\"; \"0 kg/m3\"; 5000)"), refuses_domain("density (0"));
    CHECK_THAT(refusal_of("UC.SPOIL.LOADS(10; \"100 m3\"; 1600; \"0 kg\")"), refuses_domain("payload (0"));
}

TEST_CASE("chambers that just fill the plan of a bed fit, whatever their shape") {
    const FormulaDesk desk;
    for (const char* arch : {"\"segment\"; 1; 0.48", "\"segment\"; 1; 0.5", "\"ellipse\"; 1; 0.7"})
        CHECK(desk.number("UC.BED.VOLUME(0.1; 20; 10; \"0H:1V\"; \"0 m\"; \"0 m\"; 0.4; " +
                          std::string(arch) + "; 200)") > 0);
    CHECK_THAT(
        refusal_of("UC.BED.VOLUME(0.1; 20; 10; \"0H:1V\"; \"0 m\"; \"0 m\"; 0.4; \"segment\"; 1; 0.55; "
                   "200)"),
        refuses_domain("must fit in the plan"));
    CHECK_NOTHROW(desk.value(
        "UC.STAGE.STORAGE(\"10000 each\"; 20; 10; \"0H:1V\"; 0.2; 0.2; 0.4; \"rectangle\"; 1; 0.5; 100)"));
    CHECK(desk.number(
              "UC.BED.VOLUME(1; 20; 10; \"0H:1V\"; \"30 m\"; \"0 m\"; 0.4; \"rectangle\"; 1; 1; \"1 m\")") ==
          Approx(80).epsilon(1e-12));
    CHECK_THAT(
        refusal_of(
            "UC.STAGE.STORAGE(\"10001 each\"; 20; 10; \"0H:1V\"; 0.2; 0.2; 0.4; \"rectangle\"; 1; 0.5; 100)"),
        refuses_domain("steps: \"10001 each\" is beyond what is possible, 1 to 10000"));
}

TEST_CASE("a pack without a unit is refused beside a net with one, and pure where both are") {
    const FormulaDesk desk;
    CHECK_THAT(refusal_of("UC.ORDER(\"10 min\"; \"0 %\"; 3; \"min\")"), refuses_value("pack: 3 has no unit"));
    CHECK_THAT(refusal_of("UC.ORDER(10; \"0 %\"; \"3 min\"; \"min\")"), refuses_value("net: 10 has no unit"));
    CHECK(desk.number("UC.ORDER(10; \"0 %\"; 3)") == Approx(12).epsilon(1e-12));
}

TEST_CASE("a refusal tells the bound itself") {
    CHECK_THAT(refusal_of("UC.WEIR.FLOW(1; \"7 m\"; 1.84; 1)"),
               refuses_domain("a third of the crest length (0.333333 m)"));
    CHECK_THAT(refusal_of("UC.WEIR.FLOW(1; 0.3; 1.84; \"24 each\")"),
               refuses_domain("end contractions (24 each) must be at most 20 each"));
    CHECK_THAT(refusal_of("UC.OUTLET.RATING({\"soakage\";0;10;36;1;\"-1 m\"}; 1; 2)"),
               refuses_domain("outlets: row 1, column 6: -1 m is below 0; possible is 0 m to 100 km"));
}

}  // namespace undercroft::tests
