// A workbook against an earlier one of the same job.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

using audit::Change;
using audit::Revision;
using audit::RevisionLine;

BookMaker bed() {
    BookMaker maker;
    maker.sheet("Bed").put("A1", "Description").put("B1", "Symbol").put("C1", "Value").put("D1", "Unit");
    maker.row(2, "Length of the bed", 40, "m").row(3, "Width of the bed", 12, "m");
    maker.row(4, "Depth of the bed", 500, "mm").row(5, "Area wanted", 470, "m2");
    maker.row(6, "Area of the bed", "=C2*C3", 480, "m2");
    maker.put("A7", "The area is enough").formula("C7", "=C6>=C5", 1.0);
    maker.name("bed_length", "$Bed.$C$2:$D$2");
    return maker;
}

Revision since(const BookMaker& then, const BookMaker& now) {
    const audit::Book book = now.made();
    const audit::Book earlier = then.made();
    const Report report =
        audit::audit_workbook({.book = book, .earlier = &earlier, .earlier_name = "bed-A.ods"});
    REQUIRE(report.revision);
    return *report.revision;
}

const RevisionLine& only(const Revision& revision, Change change) {
    REQUIRE(revision.count(change) == 1);
    return *std::find_if(revision.lines.begin(), revision.lines.end(),
                         [&](const RevisionLine& line) { return line.change == change; });
}

}  // namespace

TEST_CASE("nothing changed") {
    CHECK(since(bed(), bed()).lines.empty());
    CHECK(since(bed(), bed()).summary() == "Nothing is another than in the earlier revision.");
}

TEST_CASE("an input, the results that follow, and a verdict that turned") {
    BookMaker now = bed();
    now.put("C3", 11.0).formula("C6", "=C2*C3", 440.0).formula("C7", "=C6>=C5", 0.0);
    const Revision revision = since(bed(), now);
    CHECK(revision.lines.size() == 3);
    CHECK((revision.lines[0].change == Change::verdict));
    CHECK(only(revision, Change::verdict).was == "PASS");
    CHECK(only(revision, Change::verdict).is == "FAIL");
    const RevisionLine& input = only(revision, Change::input);
    CHECK(input.cells == "Bed.C3");
    CHECK(input.label == "Width of the bed");
    CHECK(input.was == "12 m");
    CHECK(input.is == "11 m");
    CHECK(input.says == "-8.33 %");
    const RevisionLine& result = only(revision, Change::result);
    CHECK(result.was == "480 m2");
    CHECK(result.is == "440 m2");
    CHECK(result.says == "-8.33 %");
    CHECK(revision.summary() == "Others than in the earlier revision: 1 verdict, 1 input and 1 result.");
}

TEST_CASE("a unit, with its number or without") {
    BookMaker stayed = bed();
    stayed.put("D4", "in");
    CHECK(only(since(bed(), stayed), Change::unit).was == "mm");
    CHECK(only(since(bed(), stayed), Change::unit).is == "in");
    CHECK(only(since(bed(), stayed), Change::unit).says == "the number stayed");
    BookMaker both = bed();
    both.put("D4", "cm").put("C4", 50.0);
    CHECK(only(since(bed(), both), Change::unit).says == "the number too");
    CHECK(only(since(bed(), both), Change::input).says == "0 %");
    BookMaker result = bed();
    result.put("D6", "cm2").formula("C6", "=C2*C3*10000", 4800000.0);
    CHECK(since(bed(), result).count(Change::result) == 0);  // the same area
}

TEST_CASE("formulas, names and settings") {
    BookMaker now = bed();
    now.formula("C6", "=C2*C3*1", 480.0).name("bed_width", "$Bed.$C$3");
    now.book().rounds_to_shown = true;
    now.raw().hidden = true;
    const Revision revision = since(bed(), now);
    CHECK(only(revision, Change::formula).was == "=C2*C3");
    CHECK(only(revision, Change::formula).is == "=C2*C3*1");
    CHECK(only(revision, Change::name).cells == "bed_width");
    CHECK(revision.count(Change::setting) == 2);
    BookMaker typed = bed();
    typed.put("C6", 480.0);
    CHECK(only(since(bed(), typed), Change::formula).says == "typed over");
    CHECK(only(since(typed, bed()), Change::formula).says == "computed now");
    CHECK(only(since(now, bed()), Change::name).says == "deleted");
}

TEST_CASE("rows inserted and deleted are told as that, and nothing that only moved along") {
    BookMaker now;
    now.sheet("Bed").put("A1", "Description").put("B1", "Symbol").put("C1", "Value").put("D1", "Unit");
    now.row(2, "Length of the bed", 40, "m")
        .row(3, "Fall of the ground", 1, "%")
        .row(4, "Width of the bed", 12, "m");
    now.row(5, "Depth of the bed", 500, "mm").row(6, "Area wanted", 470, "m2");
    now.row(7, "Area of the bed", "=C2*C4", 480, "m2");
    now.put("A8", "The area is enough").formula("C8", "=C7>=C6", 1.0).name("bed_length", "$Bed.$C$2:$D$2");
    const Revision inserted = since(bed(), now);
    CHECK(inserted.lines.size() == 1);
    CHECK(only(inserted, Change::row).is == "row 3");
    CHECK(only(inserted, Change::row).says == "inserted");
    CHECK(only(inserted, Change::row).label == "Fall of the ground");
    const Revision deleted = since(now, bed());
    CHECK(deleted.lines.size() == 1);
    CHECK(only(deleted, Change::row).was == "row 3");
    CHECK(only(deleted, Change::row).says == "deleted");
}

TEST_CASE("a row that moved is told as that") {
    BookMaker now;
    now.sheet("Bed").put("A1", "Description").put("B1", "Symbol").put("C1", "Value").put("D1", "Unit");
    now.row(2, "Depth of the bed", 500, "mm").row(3, "Length of the bed", 40, "m");
    now.row(4, "Width of the bed", 12, "m").row(5, "Area wanted", 470, "m2");
    now.row(6, "Area of the bed", "=C3*C4", 480, "m2");
    now.put("A7", "The area is enough").formula("C7", "=C6>=C5", 1.0).name("bed_length", "$Bed.$C$3:$D$3");
    const Revision moved = since(bed(), now);
    CHECK(only(moved, Change::row).was == "row 4");
    CHECK(only(moved, Change::row).is == "row 2");
    CHECK(only(moved, Change::row).says == "moved");
    CHECK(moved.lines.size() == 1);
}

TEST_CASE("a sheet that was renamed is compared, one that is new or gone is named") {
    BookMaker now = bed();
    now.book().sheets[0].name = "Bed 1";
    now.book().names[0].content = "$'Bed 1'.$C$2:$D$2";
    now.put("C3", 13.0);
    const Revision renamed = since(bed(), now);
    CHECK(only(renamed, Change::sheet).was == "Bed");
    CHECK(only(renamed, Change::sheet).is == "Bed 1");
    CHECK(only(renamed, Change::sheet).says == "renamed");
    CHECK(only(renamed, Change::input).was == "12 m");
    BookMaker more = bed();
    more.sheet("Flow").put("A1", "Inflow").put("B1", 3.0);
    CHECK(only(since(bed(), more), Change::sheet).says == "inserted");
    CHECK(only(since(more, bed()), Change::sheet).says == "deleted");
}

}  // namespace undercroft::tests
