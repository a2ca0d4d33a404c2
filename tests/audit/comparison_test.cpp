// A workbook held against the template that it was made from.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

BookMaker plan() {
    BookMaker maker;
    maker.sheet("Bed").protect();
    maker.put("A1", "Description").put("C1", "Value").put("D1", "Unit");
    maker.row(2, "Length", 10, "m").row(3, "Width", 5, "m").row(4, "Depth", 300, "mm");
    for (const char* cell : {"C2", "C3", "C4"}) maker.style(cell, "Entry", false);
    for (const char* cell : {"D2", "D3", "D4"}) maker.style(cell, "UnitEntry", false);
    maker.row(5, "Area", "=UC.PRODUCT(C2:D2;C3:D3;D5)", 50, "m2");
    maker.row(6, "Volume", "=UC.PRODUCT(C5:D5;C4:D4;D6)", 15, "m3");
    maker.row(7, "Volume is enough", "=UC.ATLEAST(C6:D6;E7:F7)", 1, "").put("E7", 10.0).put("F7", "m3");
    maker.name("bed_length", "$Bed.$C$2:$D$2");
    maker.book().properties = {
        {"Undercroft template", "bed"}, {"Undercroft units", "SI"}, {"Undercroft template version", "0.1.0"}};
    return maker;
}

Report compared(const BookMaker& workbook, const BookMaker& from) {
    const audit::Book book = workbook.made();
    const audit::Book other = from.made();
    return audit::audit_workbook({.book = book, .against = &other});
}

bool tells(const Report& report, const std::string& line) {
    return std::find(report.drift.begin(), report.drift.end(), line) != report.drift.end();
}

}  // namespace

TEST_CASE("a workbook in which only inputs were filled in has no finding") {
    BookMaker filled = plan();
    filled.put("C2", 42.0).put("C3", 12.5).put("C4", 0.4).put("D4", "m");
    const Report report = compared(filled, plan());
    INFO(audit::console_text(report));
    CHECK(report.findings.empty());
    CHECK(tells(report, "made from: bed SI 0.1.0"));
    CHECK(tells(report, "3 formulas as in the template"));
    CHECK(tells(report, "0 formulas changed"));
    CHECK(tells(report, "3 inputs filled in or changed"));
    CHECK(tells(report, "unit in Bed.D4: mm to m"));
}

TEST_CASE("changed formulas, numbers over formulas and changed labels are told") {
    BookMaker changed = plan();
    changed.formula("C6", "=UC.PRODUCT(C5:D5;C3:D3;D6)", 15.0);
    CHECK((found(compared(changed, plan()), FindingKind::template_changed, "C6") != nullptr));
    BookMaker typed = plan();
    typed.put("C5", 51.0);
    const Report over = compared(typed, plan());
    CHECK((found(over, FindingKind::typed_over, "C5") != nullptr));
    CHECK(count_of(over, FindingKind::typed_over) == 1);
    BookMaker label = plan();
    label.put("A4", "Depth of stone");
    CHECK((found(compared(label, plan()), FindingKind::template_changed, "A4") != nullptr));
    BookMaker cleared = plan();
    cleared.erase("C7");
    CHECK((found(compared(cleared, plan()), FindingKind::typed_over, "C7") != nullptr));
}

TEST_CASE("a row added moves those below, which are still the template's") {
    BookMaker more = plan();
    more.erase("C7").erase("A7").erase("E7").erase("F7");
    more.row(4, "Slope", 1, "m").row(5, "Depth", 300, "mm");
    more.style("C5", "Entry", false).style("D5", "UnitEntry", false);
    more.row(6, "Area", "=UC.PRODUCT(C2:D2;C3:D3;D6)", 50, "m2");
    more.row(7, "Volume", "=UC.PRODUCT(C6:D6;C5:D5;D7)", 15, "m3");
    more.row(8, "Volume is enough", "=UC.ATLEAST(C7:D7;E8:F8)", 1, "").put("E8", 10.0).put("F8", "m3");
    const Report report = compared(more, plan());
    INFO(audit::console_text(report));
    CHECK(count_of(report, FindingKind::template_rows) == 1);
    CHECK((found(report, FindingKind::template_rows, "A4") != nullptr));
    CHECK(count_of(report, FindingKind::template_changed) == 0);
    CHECK(tells(report, "1 rows added"));
    const Report removed = compared(plan(), more);
    CHECK(count_of(removed, FindingKind::template_rows) == 1);
    CHECK(tells(removed, "1 rows missing"));
}

TEST_CASE("units of another kind, names, protection and sheets are told") {
    BookMaker unit = plan();
    unit.put("D4", "kg");
    CHECK((found(compared(unit, plan()), FindingKind::template_changed, "D4") != nullptr));
    BookMaker name = plan();
    name.book().names.clear();
    CHECK(count_of(compared(name, plan()), FindingKind::template_changed) == 1);
    BookMaker moved = plan();
    moved.book().names[0].content = "$Bed.$C$3:$D$3";
    CHECK(count_of(compared(moved, plan()), FindingKind::template_changed) == 1);
    BookMaker open = plan();
    open.raw().is_protected = false;
    CHECK(count_of(compared(open, plan()), FindingKind::template_changed) == 1);
    BookMaker sheet = plan();
    sheet.sheet("More").put("A1", "new");
    CHECK(count_of(compared(sheet, plan()), FindingKind::template_rows) == 1);
    CHECK(count_of(compared(plan(), sheet), FindingKind::template_rows) == 1);
}

TEST_CASE("another template, or another version of it, is told") {
    BookMaker other = plan();
    other.book().properties["Undercroft template"] = "takeoff";
    CHECK(compared(plan(), other).counts.errors == 1);
    BookMaker newer = plan();
    newer.book().properties["Undercroft template version"] = "0.2.0";
    CHECK(compared(plan(), newer).counts.warnings == 1);
}

}  // namespace undercroft::tests
