// Workbooks that nobody would make on purpose: no crash, no hang, and an answer with a reason.
#include "tests/audit/audited.hpp"
#include "tests/support/large_book.hpp"
#include "tests/support/processor_time.hpp"

namespace undercroft::tests {

namespace {

std::string nested(const std::string& open, const std::string& close, int times) {
    std::string text;
    for (int i = 0; i < times; ++i) text += open;
    text += "1";
    for (int i = 0; i < times; ++i) text += close;
    return text;
}

double seconds_for(const audit::Book& book) {
    return processor_seconds([&] { (void)audit::audit_workbook({.book = book}); });
}

}  // namespace

TEST_CASE("formulas that are none, or that no one knows, are answered with a reason") {
    for (const std::string formula : {"=",
                                      "==",
                                      "=(",
                                      "=)",
                                      "=1+",
                                      "=SUM(",
                                      "=\"",
                                      "='",
                                      "=#REF!",
                                      "=#REF!+A1",
                                      "=A1:",
                                      "=:A1",
                                      "={1;2",
                                      "=@A1",
                                      "=[1]Sheet1!A1",
                                      "=SUMME(A1;A2)",
                                      "=СУММ(A1)",
                                      "=合計(A1)",
                                      "=A1048577",
                                      "=XFE1",
                                      "=Nowhere.A1",
                                      "=$Nowhere.A1:B2",
                                      "=UC.PIT.VOLUME()",
                                      "=UC.PIT.VOLUME(;;;;;;;;;)",
                                      "=UC.SUM(A1:XFD1048576)",
                                      "=SUM(A:A)",
                                      "=SUM(1:1048576)",
                                      "=UC.NO.SUCH(A1)",
                                      "=-+-+-A1",
                                      "=A1%%%%",
                                      "=1E999",
                                      "=\xff\xfe",
                                      "=A1~B1",
                                      "=A1!B1",
                                      "=IF(;;)",
                                      "=VLOOKUP(A1)",
                                      "=UC.CONVERT(A1:B1;\"no unit\")",
                                      "=UC.SUM(UC.SUM(UC.SUM(A1:B2)))"}) {
        CAPTURE(formula);
        BookMaker maker;
        maker.put("A1", 2.0).put("B1", "m").put("A2", 3.0).put("B2", "m");
        maker.formula("D4", formula, Error{508}).put("E4", "m3");
        maker.formula("D6", formula, 5.0);
        const Report report = audited(maker);
        CHECK(report.counts.formulas == 2);
        for (const audit::SheetMap& sheet : report.map)
            for (const audit::MapLine& line : sheet.lines) CHECK_FALSE(line.reason.empty());
        CHECK_FALSE(audit::csv_text(report).empty());
    }
}

TEST_CASE("deep nesting is followed or refused, and never too deep") {
    for (const int depth : {50, 190, 1000, 20000}) {
        CAPTURE(depth);
        BookMaker maker;
        maker.formula("A1", "=" + nested("(", ")", depth), 1.0);
        maker.formula("A2", "=" + nested("IF(1;", ";0)", depth), 1.0);
        maker.formula("A3", "=" + nested("-", "", depth), -1.0);
        maker.formula("A4", "=" + nested("UC.PRODUCT(2;", ")", depth), 1.0);
        maker.formula("A5", "=" + nested("1+", "", depth), 1.0);
        CHECK(audited(maker).counts.formulas == 5);
    }
}

TEST_CASE("names that mean themselves, each other, or nothing") {
    BookMaker maker;
    maker.put("A1", 1.0);
    maker.name("self", "self+1")
        .name("one", "two*2")
        .name("two", "one/2")
        .name("broken", "=)(")
        .name("gone", "#REF!");
    maker.name("far", "$Nowhere.$A$1").name("both", "both+both+both+both");
    int row = 2;
    for (const char* name : {"self", "one", "two", "broken", "gone", "far", "both", "unknown"})
        maker.formula("A" + std::to_string(row++), std::string("=") + name + "*2", 1.0);
    const Report report = audited(maker);
    CHECK(report.counts.units_that_are(UnitVerdict::cannot_tell) == 8);
}

TEST_CASE("thousands of names") {
    BookMaker maker;
    maker.sheet("Sheet");
    for (int i = 0; i < 5000; ++i) {
        maker.name("name_" + std::to_string(i), "$Sheet.$A$" + std::to_string(i + 1));
        maker.put("A" + std::to_string(i + 1), 1.0 * i);
        maker.formula("C" + std::to_string(i + 1), "=name_" + std::to_string(i) + "*2", 2.0 * i);
    }
    CHECK(audited(maker).counts.formulas == 5000);
}

TEST_CASE("large array formulas, also those whose area is not filled") {
    BookMaker maker;
    maker.put("A1", 1.0).array("C1:L3000", "=A1:A3000*2", 2.0);
    CHECK(audited(maker).counts.formulas == 1);
    BookMaker odd;
    odd.formula("A1", "=B1*2", 1.0);
    odd.raw().arrays.push_back({0, 0, 0, 1048575, 16383});
    audit::Book book = odd.made();
    book.sheets[0].cells[0].array = 0;
    CHECK(audit::audit_workbook({.book = book}).counts.formulas == 1);
}

TEST_CASE("long chains of errors and of clocks") {
    BookMaker maker;
    maker.sheet("Sheet").formula("A1", "=1/0", Error{532}).formula("B1", "=NOW()", 1.0);
    maker.formula("D3000", "=NOW()", 1.0);
    for (int row = 2; row <= 3000; ++row) {
        const std::string above = std::to_string(row - 1);
        maker.formula("A" + std::to_string(row), "=A" + above + "+1", Error{532});
        maker.formula("B" + std::to_string(row), "=B" + above + "+1", 1.0);
        maker.formula("C" + std::to_string(row), "=SUM(A$1:A$3000)", Error{532});
        maker.formula("D" + above, "=D" + std::to_string(row) + "+1", 1.0);
    }
    const audit::Book book = maker.made();
    audit::StoredValues stored;
    for (int row = 0; row < 3000; ++row)
        for (const int column : {1, 3}) stored.add("Sheet", row, column, {7.0, false});
    const Report report = audit::audit_workbook({.book = book, .stored = &stored});
    CHECK(count_of(report, FindingKind::error) == 1);
    CHECK(count_of(report, FindingKind::stale) == 0);
}

TEST_CASE("four times the formulas take about four times as long", "[timing]") {
    const double small = seconds_for(large_book(10000));
    const double large = seconds_for(large_book(40000));
    CHECK(large < 12 * small + 0.5);
    CHECK(large < 10);
}

TEST_CASE("many formulas that are all different, each with a mistake", "[timing]") {
    const auto book = [](std::int32_t formulas) {
        audit::Book made = large_book(formulas);
        int number = 2;
        for (audit::BookSheet& sheet : made.sheets)
            for (audit::BookCell& cell : sheet.cells)
                if (cell.is_formula()) cell.formula += "*" + std::to_string(++number);
        made.index();
        return made;
    };
    const double small = seconds_for(book(5000));
    const double large = seconds_for(book(20000));
    CHECK(large < 12 * small + 0.5);
    CHECK(large < 10);
}

TEST_CASE("a large workbook of like formulas has no finding") {
    const Report report = audit::audit_workbook({.book = large_book(8000)});
    INFO(audit::console_text(report));
    CHECK(report.findings.empty());
    CHECK(report.counts.distinct < 20);
}

}  // namespace undercroft::tests
