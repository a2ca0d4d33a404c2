// The table of checks: which formulas are checks, their numbers, and what they rest on.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

using audit::CheckLine;
using audit::CheckVerdict;
using audit::RestsOn;

/// Demand 60 and capacity 80 kPa, both typed, and a check of the two.
BookMaker stresses(const std::string& formula, const Shown& shown = 1.0) {
    BookMaker maker;
    maker.sheet("Loads").put("A1", "Description").put("B1", "Symbol").put("C1", "Value").put("D1", "Unit");
    maker.put("E1", "Note");
    maker.row(2, "Stress", 60, "kPa").row(3, "Limit", 0.08, "MPa").row(4, "Area", 2, "m2");
    maker.put("A5", "The ground carries it").formula("C5", formula, shown).put("E5", "Site report, table 3");
    return maker;
}

CheckLine only_check(const BookMaker& maker) {
    const Report report = audited(maker);
    REQUIRE(report.checks.size() == 1);
    return report.checks[0];
}

}  // namespace

TEST_CASE("a check has its demand, capacity, ratio and source") {
    for (const char* formula :
         {"=UC.ATMOST(C2:D2;C3:D3)", "=UC.ATLEAST(C3:D3;C2:D2)", "=NOT(UC.ATMOST(C3:D3;C2:D2))*1", "=C2<=C3",
          "=C3>=C2", "=IF(C3>=C2;\"OK\";\"NOT OK\")", "=IF(C2>C3;\"FAIL\";\"PASS\")",
          "=IF(C4=0;\"open: limit not given\";UC.ATMOST(C2:D2;C3:D3))", "=IF(C2<=C3;1;0)"}) {
        CAPTURE(formula);
        const CheckLine line = only_check(stresses(formula));
        CHECK(line.target == "Loads.C5");
        CHECK(line.label == "The ground carries it");
        CHECK((line.verdict == CheckVerdict::passes));
        CHECK(line.demand == Approx(60));
        CHECK(line.capacity == Approx(80));
        CHECK(line.unit == "kPa");
        CHECK(line.ratio == Approx(0.75));
        CHECK(line.source == "Site report, table 3");
        CHECK((line.rests == RestsOn::inputs));
    }
}

TEST_CASE("a verdict is a number or a word, and those that fail stand first") {
    CHECK((only_check(stresses("=C2<=C3", 0.0)).verdict == CheckVerdict::fails));
    CHECK((only_check(stresses("=IF(C3>=C2;\"OK\";\"NOT OK\")", "NOT OK")).verdict == CheckVerdict::fails));
    CHECK(
        (only_check(stresses("=IF(C3>=C2;\"OK\";\"No good!\")", "No good!")).verdict == CheckVerdict::fails));
    CHECK((only_check(stresses("=C2<=C3", Error{502})).verdict == CheckVerdict::error));
    const CheckLine open =
        only_check(stresses("=IF(C4=0;\"open: no limit\";UC.ATMOST(C2:D2;C3:D3))", "open: no limit"));
    CHECK((open.verdict == CheckVerdict::open));
    CHECK(open.shown == "open: no limit");
    BookMaker two = stresses("=C2<=C3");
    two.formula("C6", "=C4>=2", 0.0);
    const Report report = audited(two);
    REQUIRE(report.checks.size() == 2);
    CHECK(report.checks[0].target == "Loads.C6");
}

TEST_CASE("a check says when it rests on one side only, or on nothing") {
    CHECK((only_check(stresses("=C2<=80")).rests == RestsOn::one_side));
    CHECK((only_check(stresses("=60<=80")).rests == RestsOn::nothing));
    CHECK((only_check(stresses("=AND(C2<=80;C4>1)")).rests == RestsOn::inputs));
    BookMaker computed = stresses("=C6<=C7");
    computed.formula("C6", "=2*30", 60.0).formula("C7", "=C8+1", 80.0).formula("C8", "=79", 79.0);
    CHECK((only_check(computed).rests == RestsOn::nothing));
    computed.formula("C8", "=C3*1000-1", 79.0);
    CHECK((only_check(computed).rests == RestsOn::one_side));
}

TEST_CASE("what is no check is not in the table") {
    for (const char* formula :
         {"=C2*C3", "=IF(C2>C3;C2;C3)", "=IF(C2>C3;\"deep\";\"shallow\")", "=C2", "=MAX(C2;C3)"}) {
        CAPTURE(formula);
        CHECK(audited(stresses(formula, 60.0)).checks.empty());
    }
    BookMaker link = stresses("=C2<=C3");
    link.formula("C7", "=C5", 1.0);  // it only shows a check
    CHECK(audited(link).checks.size() == 1);
}

TEST_CASE("the same check down a column is one line with its worst") {
    BookMaker maker;
    maker.sheet("Runs").put("A1", "Run").put("B1", "Flow").put("C1", "Full").put("D1", "Check");
    for (int row = 2; row <= 6; ++row) {
        const std::string at = std::to_string(row);
        maker.put("A" + at, "Run " + at).put("B" + at, 10.0 * row).put("C" + at, 55.0);
        maker.formula("D" + at, "=B" + at + "<=C" + at, row == 6 ? 0.0 : 1.0);
    }
    const CheckLine line = only_check(maker);
    CHECK(line.cells == "Runs.D2:D6");
    CHECK(line.count == 5);
    CHECK(line.target == "Runs.D6");
    CHECK((line.verdict == CheckVerdict::fails));
    CHECK(line.ratio == Approx(60.0 / 55));
}

}  // namespace undercroft::tests
