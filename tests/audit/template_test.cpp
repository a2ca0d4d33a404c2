// A workbook laid over its template, in words and at its bounds.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

BookMaker bed_template() {
    BookMaker maker;
    maker.sheet("Bed").protect().put("A1", "Description").put("C1", "Value").put("D1", "Unit");
    maker.row(2, "Length", 10, "m").row(3, "Width", 5, "m").row(4, "Depth", 300, "mm");
    for (const char* cell : {"C2", "C3", "C4"}) maker.style(cell, "Entry", false);
    for (const char* cell : {"D2", "D3", "D4"}) maker.style(cell, "UnitEntry", false);
    maker.row(5, "Area", "=UC.PRODUCT(C2:D2;C3:D3;D5)", 50, "m2");
    maker.put("A6", "Rows").put("C6", 8.0);  // fixed
    maker.name("bed_length", "$Bed.$C$2:$D$2").name("bed_area", "$Bed.$C$5");
    maker.book().properties = {
        {"Undercroft template", "bed"}, {"Undercroft units", "SI"}, {"Undercroft template version", "0.1.0"}};
    return maker;
}

Report against(const BookMaker& workbook, const BookMaker& from = bed_template()) {
    const audit::Book book = workbook.made();
    const audit::Book other = from.made();
    return audit::audit_workbook({.book = book, .against = &other});
}

/// What the only finding of that kind says, with its severity.
std::string only(const Report& report, FindingKind kind) {
    std::string said;
    for (const audit::ReportFinding& finding : report.findings)
        if (finding.kind == kind) {
            CHECK(said.empty());
            said = std::string(audit::text_of(finding.severity)) + " " + finding.cells + ": " + finding.says;
        }
    return said;
}

std::string changed(const BookMaker& workbook) {
    return only(against(workbook), FindingKind::template_changed);
}

std::string rows(const BookMaker& workbook, const BookMaker& from = bed_template()) {
    return only(against(workbook, from), FindingKind::template_rows);
}

}  // namespace

TEST_CASE("the template itself, and what was done to it in numbers") {
    const Report same = against(bed_template());
    CHECK(count_of(same, FindingKind::template_changed) == 0);
    CHECK(same.drift == std::vector<std::string>{
                            "made from: bed SI 0.1.0", "compared with: bed SI 0.1.0",
                            "1 formulas as in the template", "0 formulas changed",
                            "0 inputs filled in or changed", "3 inputs as in the template", "0 rows added",
                            "0 rows missing", "0 units changed to another of the same kind"});
    BookMaker filled = bed_template();
    filled.put("C2", 12.0).put("D4", "cm");
    CHECK(against(filled).drift ==
          std::vector<std::string>{
              "made from: bed SI 0.1.0", "compared with: bed SI 0.1.0", "1 formulas as in the template",
              "0 formulas changed", "1 inputs filled in or changed", "2 inputs as in the template",
              "0 rows added", "0 rows missing", "1 units changed to another of the same kind",
              "unit in Bed.D4: mm to cm"});
}

TEST_CASE("which template it is") {
    BookMaker other = bed_template();
    other.book().properties["Undercroft template"] = "takeoff";
    CHECK(changed(other) ==
          "error : the workbook says that it was made from takeoff SI 0.1.0, and it was compared with bed SI "
          "0.1.0; "
          "compare it with its own template.");
    BookMaker system = bed_template();
    system.book().properties["Undercroft units"] = "US";
    CHECK(changed(system).starts_with("error : the workbook says that it was made from bed US 0.1.0"));
    BookMaker version = bed_template();
    version.book().properties["Undercroft template version"] = "0.2.0";
    CHECK(changed(version) ==
          "warning : the workbook was made from version 0.2.0 of the template, and it was compared with "
          "0.1.0; what is "
          "told below may have changed in the template.");
    BookMaker nameless = bed_template();
    nameless.book().properties.clear();
    const Report report = against(nameless);
    CHECK(count_of(report, FindingKind::template_changed) == 0);
    CHECK(report.drift.front() == "made from: a workbook that does not say its template");
}

TEST_CASE("sheets: missing, added, not protected any more") {
    BookMaker more = bed_template();
    more.sheet("Notes").put("A1", "new").sheet("Audit").put("A1", audit::audit_sheet_title);
    CHECK(rows(more) == "warning : the sheet Notes is not in the template; read all of it.");
    CHECK(rows(bed_template(), more) ==
          "error : the sheet Notes of the template is missing; begin again from the template.");
    BookMaker open = bed_template();
    open.raw().is_protected = false;
    CHECK(only(against(open), FindingKind::template_changed) ==
          "warning : the sheet Bed is not protected any more; protect it (Tools > Protect Sheet).");
    BookMaker never = bed_template();
    never.raw().is_protected = false;
    CHECK(count_of(against(bed_template(), never), FindingKind::template_changed) == 0);
}

TEST_CASE("rows: missing and added, one or several, with their labels") {
    BookMaker shorter;
    shorter.sheet("Bed").protect().put("A1", "Description").put("C1", "Value").put("D1", "Unit");
    shorter.row(2, "Length", 10, "m").style("C2", "Entry", false).style("D2", "UnitEntry", false);
    shorter.put("A3", "Rows").put("C3", 8.0);
    shorter.book().properties = bed_template().book().properties;
    const Report gone = against(shorter);
    CHECK(only(gone, FindingKind::template_rows) ==
          "error : rows 3 to 5 of the template's sheet Bed (Width) are missing; put them back, or say in a "
          "note why they "
          "are not needed.");
    CHECK(gone.drift[7] == "3 rows missing");
    const Report more = against(bed_template(), shorter);
    CHECK(only(more, FindingKind::template_rows) ==
          "warning Bed.A3:A5: rows 3 to 5 (Width) are not in the template; read the formulas.");
    CHECK(more.drift[6] == "3 rows added");
    BookMaker one = bed_template();
    one.put("A7", "A remark");
    CHECK(rows(one) == "warning Bed.A7: row 7 (A remark) is not in the template; read what is there.");
    CHECK(rows(bed_template(), one) ==
          "error : row 7 of the template's sheet Bed (A remark) is missing; put it back, or say in a note "
          "why it is not "
          "needed.");
}

TEST_CASE("rows into which only an array formula of a row above reaches are not told as added") {
    BookMaker reaching = bed_template();
    reaching.array("F4:G9", "=A1:B6*2", 2.0);
    const Report report = against(reaching);
    CHECK(count_of(report, FindingKind::template_rows) == 0);
    CHECK(report.drift[6] == "0 rows added");
    CHECK(report.drift[7] == "0 rows missing");
}

TEST_CASE("cells with a formula in the template") {
    BookMaker number = bed_template();
    number.put("C5", 51.5);
    CHECK(only(against(number), FindingKind::typed_over) ==
          "error Bed.C5: the number 51.5 stands where the template computes =UC.PRODUCT(C2:D2;C3:D3;D5); put "
          "the formula "
          "back.");
    BookMaker text = bed_template();
    text.put("C5", "fifty");
    CHECK(only(against(text), FindingKind::typed_over).starts_with("error Bed.C5: a text stands where"));
    BookMaker nothing = bed_template();
    nothing.erase("C5");
    CHECK(only(against(nothing), FindingKind::typed_over).starts_with("error Bed.C5: nothing stands where"));
    BookMaker other = bed_template();
    other.formula("C5", "=UC.PRODUCT(C2:D2;C2:D2;D5)", 50.0);
    CHECK(changed(other) ==
          "error Bed.C5: the formula is not that of the template, which is =UC.PRODUCT(C2:D2;C3:D3;D5); put "
          "it back, or "
          "say in a note why it is different.");
    CHECK(against(other).drift[3] == "1 formulas changed");
    BookMaker more = bed_template();
    more.formula("E2", "=C2*2", 20.0);
    CHECK(changed(more) == "warning Bed.E2: the template has no formula here; read it, or delete it.");
    BookMaker far = bed_template();
    far.formula("E9", "=C2*2", 20.0);  // in a row of its own, which is told as such
    CHECK(count_of(against(far), FindingKind::template_changed) == 0);
    CHECK(count_of(against(far), FindingKind::template_rows) == 1);
    BookMaker broken = bed_template();
    broken.formula("C5", "=UC.PRODUCT(", Error{508});
    CHECK(count_of(against(broken), FindingKind::template_changed) == 1);
    CHECK(count_of(against(broken, broken), FindingKind::template_changed) == 0);
}

TEST_CASE("array formulas are compared as a whole, and by their size") {
    BookMaker table = bed_template();
    table.array("F2:G4", "=A1:B3*2", 2.0);
    CHECK(against(table, table).findings.size() == against(bed_template()).findings.size());
    CHECK(against(table, table).drift[2] == "2 formulas as in the template");
    BookMaker wider = bed_template();
    wider.array("F2:H4", "=A1:B3*2", 2.0);
    CHECK(count_of(against(wider, table), FindingKind::template_changed) == 1);
    BookMaker longer = bed_template();
    longer.array("F2:G5", "=A1:B3*2", 2.0);
    CHECK(count_of(against(longer, table), FindingKind::template_changed) == 1);
    BookMaker part = bed_template();
    part.put("G3", 5.0);
    CHECK(count_of(against(part, table), FindingKind::typed_over) == 1);  // F2, where it begins
}

TEST_CASE("cells that the template fixes, and those that are for filling in") {
    BookMaker fixed = bed_template();
    fixed.put("C6", 9.0);
    CHECK(changed(fixed) == "error Bed.C6: the template fixes the number 8 here; put it back.");
    fixed.erase("C6");
    CHECK(changed(fixed).starts_with("error Bed.C6: the template fixes the number 8 here"));
    fixed.formula("C6", "=8", 8.0);
    CHECK(changed(fixed).starts_with("error Bed.C6: the template fixes the number 8 here"));
    BookMaker label = bed_template();
    label.put("A3", "Breadth");
    CHECK(changed(label) == "note Bed.A3: the text of the template was \"Width\"; is the change meant?");
    BookMaker computed = bed_template();
    computed.formula("C2", "=C3*2", 10.0);
    CHECK(changed(computed) ==
          "note Bed.C2: an input is computed by a formula; read it, or type the number.");
    BookMaker open = bed_template();  // nothing is fixed on a sheet that is not protected
    open.raw().is_protected = false;
    BookMaker open_changed = open;
    open_changed.put("C6", 9.0);
    CHECK(count_of(against(open_changed, open), FindingKind::template_changed) == 0);
}

TEST_CASE("units may become others of the same kind") {
    const auto unit = [](const std::string& text) {
        BookMaker maker = bed_template();
        if (text.empty())
            maker.erase("D4");
        else
            maker.put("D4", text);
        return changed(maker);
    };
    CHECK(unit("mm").empty());
    CHECK(unit("ft").empty());
    CHECK(
        unit("kg") ==
        "warning Bed.D4: the template's unit here was mm, and 'kg' is no unit of the same kind; correct it.");
    CHECK(unit("deep") ==
          "warning Bed.D4: the template's unit here was mm, and 'deep' is no unit of the same kind; correct "
          "it.");
    CHECK(unit("") ==
          "warning Bed.D4: the template's unit here was mm, and nothing is no unit of the same kind; correct "
          "it.");
    BookMaker ratio = bed_template();
    ratio.put("D3", "1").style("D3", "UnitEntry", false);
    BookMaker as_number = ratio;
    as_number.put("D3", 1.0).style("D3", "UnitEntry", false);  // Calc makes a number of it
    CHECK(count_of(against(as_number, ratio), FindingKind::template_changed) == 0);
    as_number.put("D3", 2.0).style("D3", "UnitEntry", false);
    CHECK(count_of(against(as_number, ratio), FindingKind::template_changed) == 1);
}

TEST_CASE("names: gone, or standing for other cells") {
    BookMaker gone = bed_template();
    gone.book().names.erase(gone.book().names.begin());
    CHECK(changed(gone) ==
          "error : the name bed_length of the template is gone; define it again for Bed.C2:D2.");
    BookMaker elsewhere = bed_template();
    elsewhere.book().names[1].content = "$Bed.$C$4";
    CHECK(changed(elsewhere) ==
          "error : the name bed_area stands for Bed.C4, in the template for Bed.C5; correct it in Sheet > "
          "Named Ranges > "
          "Manage.");
    BookMaker expression = bed_template();
    expression.book().names[1].content = "$Bed.$C$4*2";
    CHECK(changed(expression)
              .starts_with("error : the name bed_area stands for nothing, in the template for Bed.C5"));
    BookMaker lost = bed_template();
    lost.book().names[1].content = "$Nowhere.$C$4";
    CHECK(changed(lost).starts_with("error : the name bed_area stands for nothing"));
}

TEST_CASE("names of the template that stand for no cells are not compared") {
    BookMaker from = bed_template();
    from.name("twice", "$Bed.$C$2*2").name("broken", ")(");
    BookMaker workbook = bed_template();
    workbook.name("twice", "$Bed.$C$2*3");
    CHECK(count_of(against(workbook, from), FindingKind::template_changed) == 0);
}

TEST_CASE("a name follows its row, and so do the references of a formula") {
    BookMaker moved;
    moved.sheet("Bed").protect().put("A1", "Description").put("C1", "Value").put("D1", "Unit");
    moved.row(2, "Site", 1, "m").row(3, "Length", 10, "m").row(4, "Width", 5, "m").row(5, "Depth", 300, "mm");
    for (const char* cell : {"C3", "C4", "C5"}) moved.style(cell, "Entry", false);
    for (const char* cell : {"D3", "D4", "D5"}) moved.style(cell, "UnitEntry", false);
    moved.row(6, "Area", "=UC.PRODUCT(C3:D3;C4:D4;D6)", 50, "m2").put("A7", "Rows").put("C7", 8.0);
    moved.name("bed_length", "$Bed.$C$3:$D$3").name("bed_area", "$Bed.$C$6");
    moved.book().properties = bed_template().book().properties;
    const Report report = against(moved);
    CHECK(count_of(report, FindingKind::template_changed) == 0);
    CHECK(only(report, FindingKind::template_rows)
              .starts_with("warning Bed.A2: row 2 (Site) is not in the template"));
    moved.book().names[0].content = "$Bed.$C$2:$D$2";  // left behind
    CHECK(count_of(against(moved), FindingKind::template_changed) == 1);
}

TEST_CASE("rows may be renamed, as many as before or of the same shape") {
    BookMaker renamed = bed_template();
    renamed.put("A3", "Breadth").put("A4", "Height");
    CHECK(count_of(against(renamed), FindingKind::template_rows) == 0);
    CHECK(count_of(against(renamed), FindingKind::template_changed) == 2);  // the two labels
    BookMaker both = bed_template();  // one renamed, and one more behind it, without styles
    both.put("A6", "Lines").put("A7", "New").put("C7", 3.0);
    const Report report = against(both);
    CHECK(count_of(report, FindingKind::template_rows) == 1);
}

}  // namespace undercroft::tests
