// Arguments that came after a release stand behind the unit, so that no formula of before changes its
// meaning.
#include "addin/catalogue/catalogue.hpp"
#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

TEST_CASE("behind the unit of a number") {
    const FormulaDesk desk;
    CHECK(desk.number("UC.PIT.VOLUME(40; 12; 2.6; \"0H:1V\"; \"m3\")") == Approx(1248));
    CHECK(desk.number("UC.PIT.VOLUME(40; 12; 2.6; \"0H:1V\"; \"L\"; 0.005)") == Approx(1200000));
    CHECK(desk.number("UC.PIT.VOLUME(40; 12; 2.6; \"0H:1V\"; ; \"0.5 %\")") == Approx(1200));
    CHECK_THAT(refusal_of("UC.PIT.VOLUME(40; 12; 2.6; \"0H:1V\"; ; 5)"),
               refuses_domain("fall: 5 is unusual"));
    CHECK_THAT(refusal_of("UC.PIT.VOLUME(40; 12; 2.6; \"0H:1V\"; \"kg\"; 0.005)"),
               refuses_value("unit: 'kg' is a unit of a mass"));
    CHECK_THAT(refusal_of("UC.PIT.VOLUME(40; 12; 2.6; \"0H:1V\"; \"ft3\"; 0.005)"),
               refuses_value("base length: has no unit, and the result is asked for in feet"));
    CHECK_THAT(refusal_of("UC.WRAP.AREA(\"100 ft\"; \"40 ft\"; \"5 ft\"; \"1H:1V\"; ; ; ; 0.5)"),
               refuses_value("lap at base: has no unit, and another argument is in feet"));
}

TEST_CASE("behind the units and the height of a table") {
    const FormulaDesk desk;
    const std::string bed =
        "20; 10; \"0H:1V\"; 0.2; \"0 m\"; 0.4; \"ellipse\"; 1.2; 0.8; \"0 m\"; \"m;L;L;L;m2\"; 8";
    const std::string level = "UC.STAGE.STORAGE(1; " + bed + ")";
    const std::string falling = "UC.STAGE.STORAGE(1; " + bed + "; 0.005)";
    // The last row, full at 1 m: on a fall there are two more, at the high end, and the wedge is less.
    CHECK(desk.number("INDEX(" + level + "; 4; 4)") == Approx(80000));
    CHECK(desk.number("INDEX(" + falling + "; 6; 4)") == Approx(76000));
    CHECK_THAT(refusal_of("UC.STAGE.STORAGE(1; " + bed + "; 12)"), refuses_domain("fall: 12 is unusual"));
}

TEST_CASE("how the result came about tells each argument by its own name and place") {
    const addin::Function& volume = *addin::find_function("UC.PIT.VOLUME");
    const std::u16string_view vertical = u"0H:1V";
    const std::vector<addin::Cell> cells = {40.0, 12.0, 2.6, vertical, std::u16string_view(u"m3"), 0.005};
    const addin::Derivation derivation = volume.derive(cells);
    REQUIRE(derivation.steps.size() == 5);
    CHECK(derivation.steps[3].argument == "batter");
    CHECK(derivation.steps[4].argument == "fall");
    CHECK(derivation.steps[4].symbol == "s");
    CHECK(derivation.steps[4].given == "0.005");
    CHECK(derivation.result == "V = 1200 m3");
    CHECK(volume.parameters[4].name == "unit");
    CHECK(volume.parameters[5].name == "fall");
}

}  // namespace undercroft::tests
