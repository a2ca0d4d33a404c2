// Formulas of the first release, their nested results written with their units.
#include "addin/formula/result_units.hpp"
#include "tests/addin/desk.hpp"

namespace undercroft::tests {

using addin::with_result_units;

TEST_CASE("a result that is handed to another function gets the unit that it was asked in") {
    const std::pair<const char*, const char*> cases[] = {
        {"=UC.DIFFERENCE(site_length;UC.PRODUCT(2;end_margin;\"m\");H9)",
         "=UC.DIFFERENCE(site_length;UC.QUANTITY(UC.PRODUCT(2;end_margin;\"m\");\"m\");H9)"},
        {"=UNDERCROFT.UC.TOTAL(UNDERCROFT.UC.PRODUCT(2;A1:B1;\"m\");UNDERCROFT.UC.PRODUCT(2;A2:B2;H1);H9)",
         "=UNDERCROFT.UC.TOTAL(UNDERCROFT.UC.QUANTITY(UNDERCROFT.UC.PRODUCT(2;A1:B1;\"m\");\"m\");"
         "UNDERCROFT.UC.QUANTITY(UNDERCROFT.UC.PRODUCT(2;A2:B2;H1);H1);H9)"},
        {"=UC.DIFFERENCE(UC.PIT.VOLUME(a;b;c;z);UC.PIT.VOLUME(a;b;d;z);H28)",
         "=UC.DIFFERENCE(UC.QUANTITY(UC.PIT.VOLUME(a;b;c;z);\"m3\");UC.QUANTITY(UC.PIT.VOLUME(a;b;d;z);"
         "\"m3\");H28)"},
        {"=UC.DRAIN.TIME(s;r;d;MIN(UC.CONVERT(d;\"m\");UC.TOTAL(f;e;\"m\"));H3)",
         "=UC.DRAIN.TIME(s;r;d;UC.QUANTITY(MIN(UC.CONVERT(d;\"m\");UC.TOTAL(f;e;\"m\"));\"m\");H3)"},
        {"=UC.CONVERT(IF(a=\"x\";UC.CONVERT(b;\"kPa\");IF(a=\"y\";UC.CONVERT(c;\"kPa\");NA()));H2)",
         "=UC.CONVERT(UC.QUANTITY(IF(a=\"x\";UC.CONVERT(b;\"kPa\");IF(a=\"y\";UC.CONVERT(c;\"kPa\");NA()));"
         "\"kPa\");H2)"},
        {"=UC.SOAK.FLOW(f;\"0 m2\";q;s;H4)*share", "=UC.SOAK.FLOW(f;\"0 m2\";q;s;H4)*share"},
        {"=UC.TOTAL( (UC.PRODUCT(2;a;\"m\")*3) ; b; H1)",
         "=UC.TOTAL( UC.QUANTITY((UC.PRODUCT(2;a;\"m\")*3);\"m\") ; b; H1)"},
        // What is no quantity with a unit stays as it is: counts, shares, units that differ, what has one
        // already.
        {"=UC.BED.WIDTH(UC.BED.ROWS(a;b;c;d);b;c;d;H1)", "=UC.BED.WIDTH(UC.BED.ROWS(a;b;c;d);b;c;d;H1)"},
        {"=UC.CONVERT(UC.STONE.POROSITY(a;b);H1)", "=UC.CONVERT(UC.STONE.POROSITY(a;b);H1)"},
        {"=UC.PRODUCT(h;UC.DIFFERENCE(1;s;\"1\");H1)", "=UC.PRODUCT(h;UC.DIFFERENCE(1;s;\"1\");H1)"},
        {"=UC.TOTAL(MAX(UC.CONVERT(a;\"m\");UC.CONVERT(b;\"ft\"));c;H1)",
         "=UC.TOTAL(MAX(UC.CONVERT(a;\"m\");UC.CONVERT(b;\"ft\"));c;H1)"},
        {"=UC.TOTAL(UC.QUANTITY(UC.PRODUCT(2;a;\"m\");\"m\");b;H1)",
         "=UC.TOTAL(UC.QUANTITY(UC.PRODUCT(2;a;\"m\");\"m\");b;H1)"},
        {"=SUM(A1:A9)", "=SUM(A1:A9)"},
        {"=UC.TOTAL(UC.CONVERT(a;\"m\")+UC.CONVERT(b;\"m\");c;H1)",
         "=UC.TOTAL(UC.QUANTITY(UC.CONVERT(a;\"m\")+UC.CONVERT(b;\"m\");\"m\");c;H1)"},
        {"=UC.TOTAL(UC.CONVERT(a;\"m\")-2;c;H1)", "=UC.TOTAL(UC.QUANTITY(UC.CONVERT(a;\"m\")-2;\"m\");c;H1)"},
        {"=UC.TOTAL(UC.CONVERT(a;\"m\")+UC.CONVERT(b;\"ft\");c;H1)",
         "=UC.TOTAL(UC.CONVERT(a;\"m\")+UC.CONVERT(b;\"ft\");c;H1)"},
        {"=UC.TOTAL(UC.CONVERT(a;\"m\")/2;c;H1)", "=UC.TOTAL(UC.QUANTITY(UC.CONVERT(a;\"m\")/2;\"m\");c;H1)"},
        {"=UC.TOTAL(2*UC.CONVERT(a;\"m\");c;H1)", "=UC.TOTAL(2*UC.CONVERT(a;\"m\");c;H1)"},
        {"=UC.TOTAL(UC.CONVERT(a;\"m\")/UC.CONVERT(b;\"m\");c;H1)",
         "=UC.TOTAL(UC.CONVERT(a;\"m\")/UC.CONVERT(b;\"m\");c;H1)"},
        {"=UC.TOTAL(UC.CONVERT(a;\"m\")^2;c;H1)", "=UC.TOTAL(UC.CONVERT(a;\"m\")^2;c;H1)"},
        {"=UC.TOTAL(UC.CONVERT(a;\"m\")&\" m\";c;H1)", "=UC.TOTAL(UC.CONVERT(a;\"m\")&\" m\";c;H1)"},
    };
    for (const auto& [before, after] : cases) {
        CHECK(with_result_units(before) == after);
        CHECK(with_result_units(after) == after);
    }
}

TEST_CASE("what was refused bare computes with its unit, as it did before, in either system") {
    const FormulaDesk desk;
    const std::string si = "UC.DIFFERENCE(\"45 m\"; UC.PRODUCT(2; \"305 mm\"; \"m\"); \"m\")";
    CHECK_THAT(refusal_of(si).what(), Catch::Contains("b: 0.61 has no unit"));
    CHECK(desk.number(with_result_units(si)) == Approx(44.39).epsilon(1e-14));
    const std::string us = "UC.DIFFERENCE(\"150 ft\"; UC.PRODUCT(2; \"12 in\"; \"m\"); \"ft\")";
    CHECK(desk.number(with_result_units(us)) == Approx(148).epsilon(1e-14));
}

}  // namespace undercroft::tests
