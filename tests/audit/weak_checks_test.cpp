// Checks that do not check: which are told, and which are left alone.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

BookMaker with_check(const std::string& formula, const Shown& shown = 1.0) {
    BookMaker maker;
    maker.sheet("S");
    maker.row(1, "Storage provided", 200, "m3")
        .row(2, "Storage required", 180, "m3")
        .row(3, "Velocity", 1.5, "m/s");
    maker.row(4, "Velocity allowed", 2, "m/s").row(5, "Least cover", 0.6, "m").row(6, "Cover", 0.7, "m");
    maker.row(7, "Slope of the wall", 1, "").row(8, "Steepest slope allowed", 1, "");
    maker.put("A9", "Check").formula("C9", formula, shown);
    return maker;
}

std::string weakness(const std::string& formula, const Shown& shown = 1.0) {
    const audit::ReportFinding* finding = nullptr;
    const Report report = audited(with_check(formula, shown));
    finding = found(report, FindingKind::weak_check, "C9");
    return finding == nullptr ? "" : finding->says;
}

}  // namespace

TEST_CASE("checks that cannot fail are told, whatever they are wrapped in") {
    for (const char* formula :
         {"=TRUE()", "=1=1", "=2>=1", "=C1>=C1", "=OR(C1>=C2;TRUE())", "=OR(C1>=C2;1=1)",
          "=IF(OR(C1>=C2;1=1);\"OK\";\"FAIL\")", "=MAX(1;UC.ATLEAST(C1:D1;C2:D2))",
          "=UC.ATLEAST(C1:D1;C1:D1)", "=IF(C1>=C2;\"OK\";\"OK\")", "=IF(C1>=C2;1;1)", "=NOT(C1<C1)",
          "=AND(TRUE();C1<=C1)", "=IFERROR(C1>=C2;TRUE())", "=IF(TRUE();\"OK\";\"FAIL\")",
          "=1*IF(C1>C2;C3;C3)"}) {
        CAPTURE(formula);
        CHECK_FALSE(weakness(formula).empty());
    }
    for (const char* formula :
         {"=C1>=C2", "=AND(C1>=C2;C3<=C4)", "=OR(C1>=C2;C3<=C4)", "=IF(C1>=C2;\"OK\";\"FAIL\")",
          "=IF(C1>=C2;C3;C4)", "=UC.ATLEAST(C1:D1;C2:D2)", "=IF(C1=0;\"open\";UC.ATLEAST(C1:D1;C2:D2))",
          "=IFERROR(C1>=C2;FALSE())", "=NOT(C1<C2)", "=MIN(1;UC.ATLEAST(C1:D1;C2:D2))", "=MAX(1;C1)", "=C1*1",
          "=IF(C1>C2;1;0)", "=\"OK\""}) {
        CAPTURE(formula);
        CHECK(weakness(formula).empty());
    }
}

TEST_CASE("a check is turned round where the labels say which side is the limit, and agree") {
    for (const char* formula :
         {"=C1<=C2", "=C2>=C1", "=C3>=C4", "=C4<C3", "=C6<=C5", "=IF(C1<C2;\"OK\";\"NOT OK\")",
          "=IF(C1>=C2;\"FAIL\";\"PASS\")", "=UC.ATLEAST(C2:D2;C1:D1)", "=UC.ATMOST(C6:D6;C5:D5)"}) {
        CAPTURE(formula);
        CHECK(weakness(formula).find("turned round") != std::string::npos);
    }
    for (const char* formula : {"=C1>=C2", "=C2<=C1", "=C3<=C4", "=C5<=C6", "=IF(C1<C2;\"NOT OK\";\"OK\")",
                                "=C3>=C6", "=C7>=C8", "=C1=C2", "=UC.ATMOST(C3:D3;C4:D4)"}) {
        CAPTURE(formula);
        CHECK(weakness(formula).empty());
    }
}

TEST_CASE("a limit that stands in the check alone is told; 0, 1 and 100 are no limits") {
    for (const char* formula :
         {"=C1>=180", "=IF(C3<=2.5;\"OK\";\"FAIL\")", "=UC.ATLEAST(C1:D1;\"180 m3\")"}) {
        CAPTURE(formula);
        CHECK(weakness(formula).find("in the formula alone") != std::string::npos);
    }
    for (const char* formula :
         {"=C1>=0", "=C3<=1", "=C1<=100", "=C1=5", "=IF(C1>5;C2;C3)", "=UC.ATLEAST(C1:D1;\"0 m3\")"}) {
        CAPTURE(formula);
        CHECK(weakness(formula).empty());
    }
}

TEST_CASE("a check that fails in words fails; other words are no verdict") {
    const auto fails = [](const std::string& formula, const std::string& shown) {
        return found(audited(with_check(formula, shown)), FindingKind::check_failed, "C9") != nullptr;
    };
    CHECK(fails("=IF(C1>=C2;\"OK\";\"NOT OK\")", "NOT OK"));
    CHECK(fails("=IF(C1>=C2;\"ok\";\"NG\")", "NG"));
    CHECK(fails("=IF(C1>=C2;\"Yes\";\"No\")", "No"));
    CHECK(fails("=IF(C1<C2;\"TOO SMALL\";\"OK\")", "TOO SMALL"));
    CHECK(fails("=IF(C1>=C2;\"OK\";\"LARGER\")", "LARGER"));  // what is not OK
    CHECK_FALSE(fails("=IF(C1>=C2;\"OK\";\"NOT OK\")", "OK"));
    CHECK_FALSE(fails("=IF(A1=\"lined\";\"yes\";\"no\")", "no"));  // the answer to a question
    CHECK_FALSE(fails("=IF(C1>=C2;\"counted\";\"not counted\")", "not counted"));
    CHECK_FALSE(fails("=IF(C1>=C2;\"large\";\"small\")", "small"));
}

}  // namespace undercroft::tests
