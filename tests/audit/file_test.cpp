// The workbook as a whole: other files, the clock, hidden parts, kinds of files, stored results, versions.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

/// A sheet in which every input is used.
BookMaker area_book() {
    BookMaker maker;
    maker.sheet("Pit");
    maker.row(2, "Length", 40, "m").row(3, "Width", 12, "m").row(4, "Area", "=C2*C3", 480, "m2");
    return maker;
}

}  // namespace

TEST_CASE("values from other files and other programs are found") {
    for (const std::string formula :
         {"='file:///tmp/a.ods'#$Levels.B2", "=C2+'file:///tmp/a.ods'#$Levels.B2",
          "=WEBSERVICE(\"http://localhost/\")", "=DDE(\"soffice\";\"a.ods\";\"A1\")"}) {
        CAPTURE(formula);
        BookMaker maker = area_book();
        maker.formula("C5", formula, 1.0);
        CHECK((found(audited(maker), FindingKind::link, "C5") != nullptr));
    }
    BookMaker named = area_book();
    named.name("levels", "'file:///tmp/a.ods'#$Levels.$B$2");
    CHECK(count_of(audited(named), FindingKind::link) == 1);
    BookMaker listed = area_book();
    listed.book().links = {"file:///tmp/a.ods"};
    CHECK(count_of(audited(listed), FindingKind::link) == 1);
    CHECK(audited(area_book()).findings.empty());
}

TEST_CASE("values that change by themselves are found, a clock that is only compared with zero is not") {
    for (const std::string formula : {"=NOW()", "=TODAY()-C2", "=C2*(1+RAND()/100)", "=RANDBETWEEN(C2;C3)"}) {
        CAPTURE(formula);
        BookMaker maker = area_book();
        maker.formula("C5", formula, 1.0);
        CHECK((found(audited(maker), FindingKind::unsteady, "C5") != nullptr));
    }
    BookMaker maker = area_book();
    maker.formula("C5", "=IF(OR(ISERROR(C4);NOW()=0);\"error\";\"\")", "");
    CHECK(audited(maker).findings.empty());
}

TEST_CASE("values that change with the country are found, and not held against those stored") {
    for (const std::string formula : {"=TEXT(C2;\"0.00\")", "=TEXT(C2;\"#,##0\")", "=VALUE(\"1.5\")+C2",
                                      "=IF(C2>0;DATEVALUE(\"1/2/2026\");0)"}) {
        CAPTURE(formula);
        BookMaker maker = area_book();
        maker.formula("E5", formula, "12.00").formula("E6", "=E5", "12.00");
        const audit::Book book = maker.made();
        audit::StoredValues stored = audit::results_of(book);
        for (const int row : {4, 5}) stored.add("Pit", row, 4, {std::string("1.20"), false});
        const Report report = audit::audit_workbook({.book = book, .stored = &stored});
        CHECK(found(report, FindingKind::unsteady, "E5") != nullptr);
        CHECK(count_of(report, FindingKind::stale) == 0);
    }
    BookMaker steady = area_book();
    steady.formula("E5", "=TEXT(C2;\"000\")", "012").formula("E6", "=NUMBERVALUE(\"1.5\";\".\")", 1.5);
    CHECK(count_of(audited(steady), FindingKind::unsteady) == 0);
}

TEST_CASE("no reader of the table takes a text of the workbook for a formula, whatever parts its columns") {
    for (const std::string separator : {"", ";", "\t", "\n"}) {
        CAPTURE(separator);
        BookMaker maker = area_book();
        maker.row(5, separator + "=cmd|' /C calc'!A0" + separator + "@SUM(A1)", 2, "m");
        const std::string csv = audit::csv_text(audited(maker));
        CHECK(csv.find("=cmd") != std::string::npos);
        for (const char* opens : {",\"=", ";=", "\t=", "\n=", ",\"@", ";@", "\t@", "\n@"})
            CHECK(csv.find(opens) == std::string::npos);
    }
}

TEST_CASE("hidden formulas and inputs are found, hidden texts are not") {
    BookMaker row = area_book();
    row.raw().hidden_rows = {3};
    CHECK((found(audited(row), FindingKind::hidden, "C4") != nullptr));
    BookMaker column = area_book();
    column.raw().hidden_columns = {2};
    CHECK((found(audited(column), FindingKind::hidden, "C4") != nullptr));
    BookMaker sheet = area_book();
    sheet.raw().hidden = true;
    CHECK((found(audited(sheet), FindingKind::hidden, "C4") != nullptr));
    BookMaker input = area_book();
    input.raw().hidden_rows = {1};
    CHECK((found(audited(input), FindingKind::hidden, "C2") != nullptr));
    BookMaker heads = area_book();
    heads.raw().hidden_rows = {0};
    CHECK(audited(heads).findings.empty());
    BookMaker locked = area_book();  // what a protected sheet keeps for itself is no input
    locked.protect().raw().hidden_rows = {1};
    CHECK(count_of(audited(locked), FindingKind::hidden) == 0);
}

TEST_CASE("what a kind of file loses, and settings that change results") {
    BookMaker maker = area_book();
    maker.book().kind = audit::FileKind::excel_2007;
    CHECK(audited(maker).findings.empty());  // no function of ours in it
    maker.formula("C5", "=UC.PRODUCT(C2:D2;C3:D3;\"m2\")", 480.0);
    CHECK(count_of(audited(maker), FindingKind::file) == 1);
    maker.book().kind = audit::FileKind::excel_97;
    const Report old = audited(maker);
    CHECK(count_of(old, FindingKind::file) == 1);
    CHECK(old.counts.errors == 1);
    BookMaker settings = area_book();
    settings.book().iterates = settings.book().rounds_to_shown = true;
    settings.book().computes_by_itself = false;
    settings.book().has_macros = true;
    CHECK(count_of(audited(settings), FindingKind::file) == 3);
    CHECK(count_of(audited(settings), FindingKind::macros) == 1);
}

TEST_CASE("a stored result that is not the computed one is found") {
    BookMaker maker = area_book();
    maker.formula("C5", "=IF(C4>1;\"large\";\"small\")", "large").formula("C6", "=C4/0", Error{532});
    maker.formula("C7", "=\"\"", "");
    const audit::Book book = maker.made();
    const auto audit_with = [&](const std::string& cell, audit::StoredValue value) {
        audit::StoredValues stored = audit::results_of(book);
        const audit::Spot at = spot_of(cell);
        stored.add("Pit", at.row, at.column, std::move(value));
        return audit::audit_workbook({.book = book, .stored = &stored});
    };
    CHECK((found(audit_with("C4", {470.0, false}), FindingKind::stale, "C4") != nullptr));
    CHECK((found(audit_with("C4", {480.0 * (1 + 1e-6), false}), FindingKind::stale, "C4") != nullptr));
    CHECK((found(audit_with("C5", {std::string("small"), false}), FindingKind::stale, "C5") != nullptr));
    CHECK((found(audit_with("C6", {7.0, false}), FindingKind::stale, "C6") != nullptr));
    CHECK((found(audit_with("C4", {{}, true}), FindingKind::stale, "C4") != nullptr));
    CHECK(count_of(audit_with("C4", {480.0 * (1 + 1e-13), false}), FindingKind::stale) == 0);
    CHECK(count_of(audit_with("C7", {{}, false}), FindingKind::stale) == 0);
    CHECK(count_of(audit_with("C6", {{}, true}), FindingKind::stale) == 0);
}

TEST_CASE("results that rest on the clock may differ from those stored") {
    BookMaker maker = area_book();
    maker.formula("E2", "=E3", 2.0)
        .formula("E3", "=E4+1", 2.0)
        .formula("E4", "=RAND()", 1.0)
        .formula("E5", "=SUM(E2:E4)", 5.0);
    const audit::Book book = maker.made();
    audit::StoredValues stored = audit::results_of(book);
    for (int row = 1; row <= 4; ++row) stored.add("Pit", row, 4, {9.0, false});
    const Report report = audit::audit_workbook({.book = book, .stored = &stored});
    CHECK(count_of(report, FindingKind::stale) == 0);
    CHECK(count_of(report, FindingKind::unsteady) == 1);
}

TEST_CASE(
    "functions of another version are told by the cell that shows it, or by the workbook's properties") {
    BookMaker maker = area_book();
    maker.formula("C5", "=UC.VERSION()", "0.2.0");
    const audit::Book book = maker.made();
    audit::StoredValues stored = audit::results_of(book);
    const auto with = [&](const audit::Book& audited_book, const std::string& installed) {
        return count_of(
            audit::audit_workbook({.book = audited_book, .stored = &stored, .installed_version = installed}),
            FindingKind::version);
    };
    CHECK(with(book, "0.2.0") == 0);
    CHECK(with(book, "0.3.0") == 1);
    BookMaker other_texts = maker;  // other formulas that show a text, or cannot be read, tell no version
    other_texts.formula("C6", "=\"a\"", "a").formula("C7", "=SUM(", "b");
    const audit::Book more = other_texts.made();
    stored = audit::results_of(more);
    CHECK(with(more, "0.2.0") == 0);
    CHECK(with(more, "0.3.0") == 1);
    BookMaker by_property = area_book();
    by_property.book().properties["Undercroft functions"] = "0.1.0";
    CHECK(with(by_property.made(), "0.1.0") == 0);
    CHECK(with(by_property.made(), "0.3.0") == 1);
}

}  // namespace undercroft::tests
