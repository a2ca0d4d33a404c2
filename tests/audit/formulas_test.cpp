// Formulas that are not what they should be: typed over, unlike their neighbours, with numbers inside, in
// circles.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

/// A table of six beds: length in A, width in B, area computed in C.
BookMaker beds() {
    BookMaker maker;
    maker.sheet("Beds").put("A1", "Length").put("B1", "Width").put("C1", "Area");
    maker.put("A2", "m").put("B2", "m").put("C2", "m2");
    for (int row = 3; row <= 8; ++row) {
        const std::string at = std::to_string(row);
        maker.put("A" + at, 10.0 + row)
            .put("B" + at, 4.0 + row)
            .formula("C" + at, "=A" + at + "*B" + at, 60.0);
    }
    return maker;
}

}  // namespace

TEST_CASE("a table of like formulas has no finding, and is one line of the map") {
    const Report report = audited(beds());
    INFO(audit::console_text(report));
    CHECK(report.findings.empty());
    CHECK(report.counts.formulas == 6);
    CHECK(report.counts.distinct == 1);
    REQUIRE(report.map.size() == 1);
    REQUIRE(report.map[0].lines.size() == 1);
    CHECK(report.map[0].lines[0].cells == "Beds.C3:C8");
    CHECK(report.map[0].lines[0].unit == "m2");
    CHECK(report.map[0].lines[0].verdict == UnitVerdict::consistent);
}

TEST_CASE("a number typed among formulas is found, at either end where its row has their inputs") {
    BookMaker maker = beds();
    maker.put("C5", 61.0);
    CHECK((found(audited(maker), FindingKind::typed_over, "C5") != nullptr));
    CHECK(count_of(audited(maker), FindingKind::typed_over) == 1);
    BookMaker start = beds();
    start.put("C3", 61.0);  // its row has what the formulas below compute with
    CHECK((found(audited(start), FindingKind::typed_over, "C3") != nullptr));
    start.put("C3", 0.0);  // a sum that runs begins with 0
    CHECK(count_of(audited(start), FindingKind::typed_over) == 0);
    start.put("C3", 61.0).erase("A3");  // without that it may be where the column begins
    CHECK(count_of(audited(start), FindingKind::typed_over) == 0);
}

TEST_CASE("a number in a cell with the style of results is found") {
    BookMaker maker;
    maker.sheet("Sheet");
    for (int row = 1; row <= 9; row += 2) {
        const std::string at = "C" + std::to_string(row);
        maker.formula(at, "=A" + std::to_string(row) + "+1", 2.0).style(at, "Result");
        maker.put("A" + std::to_string(row), 1.0);
    }
    CHECK(count_of(audited(maker), FindingKind::typed_over) == 0);
    maker.put("C11", 5.0).style("C11", "Result");
    CHECK((found(audited(maker), FindingKind::typed_over, "C11") != nullptr));
    maker.style("C11", "Result", false);  // not locked: it is for typing
    CHECK(count_of(audited(maker), FindingKind::typed_over) == 0);
}

TEST_CASE("a formula that differs from those around it is found") {
    for (const auto& [cell, formula] : std::vector<std::pair<std::string, std::string>>{
             {"C5", "=A5*B4"}, {"C5", "=A5*$B$3"}, {"C6", "=A6+B6"}, {"C8", "=A8*B7"}, {"C3", "=A4*B3"}}) {
        CAPTURE(cell, formula);
        BookMaker maker = beds();
        maker.formula(cell, formula, 60.0);
        CHECK((found(audited(maker), FindingKind::neighbour, cell) != nullptr));
        CHECK(count_of(audited(maker), FindingKind::neighbour) == 1);
    }
    BookMaker three;
    for (int row = 1; row <= 3; ++row) {
        const std::string at = std::to_string(row);
        three.put("A" + at, 1.0).put("B" + at, 2.0).formula("C" + at, "=A" + at + "*B" + at, 2.0);
    }
    three.formula("C2", "=A1*B2", 2.0);
    CHECK((found(audited(three), FindingKind::neighbour, "C2") != nullptr));
}

TEST_CASE("unlike formulas that belong there are no finding") {
    BookMaker total = beds();
    total.formula("C9", "=SUM(C3:C8)", 360.0);  // a total under the column
    CHECK(audited(total).findings.empty());
    BookMaker list;  // a calc sheet: each row computes something else
    list.row(1, "a", 2, "m").row(2, "b", 3, "m").row(3, "area", "=C1*C2", 6, "m2");
    list.row(4, "sum", "=C1+C2", 5, "m").row(5, "half", "=C4/2", 2.5, "m");
    CHECK(count_of(audited(list), FindingKind::neighbour) == 0);
    BookMaker running = beds();  // begins with another formula
    for (int row = 3; row <= 8; ++row)
        running.formula("D" + std::to_string(row),
                        row == 3 ? "=C3+0" : "=D" + std::to_string(row - 1) + "+C" + std::to_string(row),
                        60.0);
    CHECK(count_of(audited(running), FindingKind::neighbour) == 0);
}

TEST_CASE("numbers hidden in formulas are found, the shape of a formula is not") {
    for (const std::string formula :
         {"=C2*1.1", "=C2+5", "=IF(C2>10;C2;C3)", "=MAX(C2;0.15)", "=C2*(1-0.4)",
          "=UC.PIT.VOLUME(C2:D2;C3:D3;0.3;\"1H:1V\";\"m3\")", "=-7.5*C2", "=50%*C2"}) {
        CAPTURE(formula);
        BookMaker maker = pit();
        maker.formula("C8", formula, 1.0);
        CHECK((found(audited(maker), FindingKind::bare_number, "C8") != nullptr));
    }
    // Shape, conversions and gravity too.
    for (const std::string formula :
         {"=C2*C4/1000", "=C2*9.81", "=C2/3600*10^6", "=C2/2", "=2*C2", "=C2^3", "=ROUND(C2;3)", "=IF(C2>0;1;0)", "=1-C2/C3", "=VLOOKUP(C2;C2:D5;2;0)",
          "=TEXT(C2;\"0.000\")", "=\"No. \"&12", "=UC.PIT.VOLUME(C2:D2;C3:D3;\"300 mm\";\"1H:1V\";\"m3\")",
          "=PI()*C2^2/4*0+C2*0", "=UC.DIFFERENCE(C2:D2;0;\"m\")"}) {
        CAPTURE(formula);
        BookMaker maker = pit();
        maker.formula("C8", formula, 1.0);
        CHECK((found(audited(maker), FindingKind::bare_number, "C8") == nullptr));
    }
}

TEST_CASE("circles are followed from the cells that Calc marks") {
    BookMaker maker;
    const Error circle{522};
    maker.formula("A1", "=B1+1", circle).formula("B1", "=C1", circle).formula("C1", "=A1*2", circle);
    maker.formula("D1", "=A1", circle);  // rests on it, and is in no circle
    const Report report = audited(maker);
    INFO(audit::console_text(report));
    CHECK(count_of(report, FindingKind::circular) == 1);
    for (const char* cell : {"A1", "B1", "C1"})
        CHECK((found(report, FindingKind::circular, cell) != nullptr));
    CHECK((found(report, FindingKind::circular, "D1") == nullptr));
}

TEST_CASE("circles that repetition hides are found too") {
    BookMaker maker;
    maker.formula("A1", "=B1/2+1", 2.0).formula("B1", "=SUM(A1:A3)", 2.0);
    maker.book().iterates = true;
    const Report report = audited(maker);
    CHECK((found(report, FindingKind::circular, "A1") != nullptr));
    CHECK(count_of(report, FindingKind::file) == 1);
}

TEST_CASE("an error is told once, where it comes from, with its reason") {
    BookMaker maker = pit();
    maker.put("C4", -305.0);
    maker.formula("C6", "=UC.PIT.VOLUME(C2:D2;C3:D3;C4:D4;\"1H:1V\";D6)", Error{503}).put("D6", "m3");
    maker.formula("C7", "=C6*2", Error{503}).formula("C8", "=C7+C6", Error{503});
    maker.formula("C9", "=IF(ISERROR(C8);0;1)", 0.0);
    const Report report = audited(maker);
    const audit::ReportFinding* finding = found(report, FindingKind::error, "C6");
    REQUIRE(finding != nullptr);
    INFO(finding->says);
    CHECK(count_of(report, FindingKind::error) == 1);
    CHECK(finding->says.find("UC.PIT.VOLUME") != std::string::npos);
    CHECK(finding->says.find("2 more") != std::string::npos);
}

TEST_CASE("checks that fail are found, verdicts that hold and numbers that are 0 are not") {
    BookMaker maker = pit();
    maker.formula("C6", "=UC.ATLEAST(C2:D2;C3:D3)", 0.0).put("A6", "Long enough");
    maker.formula("C7", "=C2>C3", 0.0).formula("C8", "=AND(C2>0;C3>0)", 0.0);
    maker.formula("C9", "=UC.ATMOST(C3:D3;C2:D2)", 1.0).formula("C10", "=C2-C2", 0.0);
    const Report report = audited(maker);
    for (const char* cell : {"C6", "C7", "C8"})
        CHECK((found(report, FindingKind::check_failed, cell) != nullptr));
    CHECK(count_of(report, FindingKind::check_failed) == 3);
    CHECK(found(report, FindingKind::check_failed, "C6")->says.find("Long enough") != std::string::npos);
}

}  // namespace undercroft::tests
