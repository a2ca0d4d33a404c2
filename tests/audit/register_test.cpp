// The register of inputs: what is an input, what is said of it, and which are worth a look.
#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

using audit::InputState;
using audit::RegisterLine;

/// A sheet with heads, a column for the mark of who confirmed, and the columns beyond the page.
BookMaker bed_inputs() {
    BookMaker maker;
    maker.sheet("Bed").protect();
    const std::vector<std::pair<const char*, const char*>> heads = {
        {"A1", "Ref"},     {"B1", "Description"},
        {"C1", "Symbol"},  {"D1", "Value"},
        {"E1", "Unit"},    {"F1", "Note or source"},
        {"G1", "ok"},      {"H1", "Reason; blank where no cell shows an error"},
        {"I1", "Unusual"}, {"J1", "Assumed"},
        {"K1", "State"},   {"L1", "Usual from"},
        {"M1", "Usual to"}};
    for (const auto& [cell, head] : heads) maker.put(cell, head);
    const auto input = [&](int row, const char* label, const char* symbol, double value, const char* unit) {
        const std::string at = std::to_string(row);
        maker.put("A" + at, "Be" + at).put("B" + at, label).put("C" + at, symbol);
        maker.put("D" + at, value).style("D" + at, "Entry", false);
        maker.put("E" + at, unit).style("E" + at, "UnitEntry", false);
        maker.formula("F" + at, "=K" + at, "Survey");
        maker.formula("I" + at, "=0*D" + at, 0.0).formula("J" + at, "=0*D" + at, 0.0);
        maker.put("L" + at, 1.0).put("M" + at, 50.0);
    };
    input(2, "Length", "L", 10, "m");
    input(3, "Width", "W", 5, "m");
    maker.put("B4", "Area").formula("D4", "=UC.PRODUCT(D2:E2;D3:E3;E4)", 50.0).put("E4", "m2");
    return maker;
}

const RegisterLine* line_for(const Report& report, const std::string& cells) {
    for (const RegisterLine& line : report.inputs)
        if (line.cells == cells) return &line;
    return nullptr;
}

Report against(const BookMaker& workbook, const BookMaker& from) {
    const audit::Book book = workbook.made();
    const audit::Book other = from.made();
    return audit::audit_workbook({.book = book, .against = &other});
}

}  // namespace

TEST_CASE("an input stands in the register with all that its row says of it") {
    const Report report = audited(bed_inputs());
    REQUIRE(report.inputs.size() == 2);  // no unit, no result, nothing beyond the page
    const RegisterLine& length = report.inputs[0];
    CHECK(length.cells == "Bed.D2");
    CHECK(length.reference == "Be2");
    CHECK(length.label == "Length");
    CHECK(length.symbol == "L");
    CHECK(length.value_and_unit() == "10 m");
    CHECK(length.usual == "1 to 50");
    CHECK(length.note == "Survey");
    CHECK((length.state == InputState::unknown));
    CHECK(length.remark.empty());
    CHECK_FALSE(length.in_template);
}

TEST_CASE("an input is assumed, confirmed or given") {
    BookMaker maker = bed_inputs();
    maker.formula("J2", "=1*1", 1.0).formula("F2", "=K2", "assumed; Survey");
    maker.put("G3", "x").style("G3", "Mark", false);
    const Report report = audited(maker);
    REQUIRE(report.inputs.size() == 2);
    CHECK((line_for(report, "Bed.D2")->state == InputState::assumed));
    CHECK(line_for(report, "Bed.D2")->note == "Survey");
    CHECK((line_for(report, "Bed.D3")->state == InputState::confirmed));
    BookMaker filled = bed_inputs();
    filled.put("D2", 12.0);
    const Report compared = against(filled, bed_inputs());
    CHECK((line_for(compared, "Bed.D2")->state == InputState::given));
    CHECK(line_for(compared, "Bed.D2")->in_template == "10 m");
    CHECK((line_for(compared, "Bed.D3")->state == InputState::assumed));
}

TEST_CASE("what is worth a look stands first: unusual, a changed unit, a slip") {
    BookMaker maker = bed_inputs();
    maker.put("D3", 127.0).formula("I3", "=1*1", 1.0);  // 25.4 times the template's
    const Report unusual = against(maker, bed_inputs());
    CHECK(unusual.inputs[0].cells == "Bed.D3");
    CHECK(unusual.inputs[0].remark == "unusual; 25.4 times the template's");
    BookMaker unit = bed_inputs();
    unit.put("E3", "ft");
    const Report changed = against(unit, bed_inputs());
    CHECK(changed.inputs[0].cells == "Bed.D3");
    CHECK(changed.inputs[0].remark == "the unit is another than the template's, and the number is the same");
    CHECK(changed.inputs[0].in_template == "5 m");
    BookMaker design = bed_inputs();
    design.put("D3", 50.0);  // ten times is a design
    CHECK(line_for(against(design, bed_inputs()), "Bed.D3")->remark.empty());
    unit.put("G3", "x").style("G3", "Mark", false);  // somebody stands behind it
    CHECK(line_for(against(unit, bed_inputs()), "Bed.D3")->remark.empty());
}

TEST_CASE("in a loose sheet inputs are the typed cells that formulas use") {
    BookMaker maker;
    maker.sheet("Tank").row(2, "Length", 40, "m").row(3, "Width", 12, "m").row(4, "Spare", 7, "m");
    maker.row(5, "Area", "=C2*C3", 480, "m2").put("A7", "Revision").put("C7", 3.0);
    const Report report = audited(maker);
    REQUIRE(report.inputs.size() == 2);
    CHECK(line_for(report, "Tank.C2")->label == "Length");
    CHECK(line_for(report, "Tank.C2")->value_and_unit() == "40 m");
    CHECK((line_for(report, "Tank.C2")->state == InputState::unknown));
}

TEST_CASE("what is usual of an argument of our functions is usual of the cell that gives it") {
    BookMaker maker;
    maker.sheet("Pit").row(2, "Depth", 305, "m").row(3, "Length", 12, "m").row(4, "Width", 6, "m");
    maker.row(5, "Volume", "=UC.PIT.VOLUME(C3:D3;C4:D4;C2:D2;\"1H:1V\";D5)", 100, "m3");
    const Report report = audited(maker);
    REQUIRE(report.inputs.size() == 3);
    CHECK(report.inputs[0].cells == "Pit.C2");
    CHECK(report.inputs[0].remark == "unusual");
    CHECK_FALSE(report.inputs[0].usual.empty());
    CHECK(line_for(report, "Pit.C3")->remark.empty());
}

TEST_CASE("the column of a table is one line, and what is unlike its others a second") {
    const auto table = [](double odd) {
        BookMaker maker;
        maker.sheet("Pipes").put("A1", "Run").put("B1", "Diameter").put("C1", "Length");
        const double diameters[] = {300, 375, odd, 300, 450};
        for (int row = 2; row <= 6; ++row) {
            const std::string at = std::to_string(row);
            maker.put("A" + at, "R" + at).put("B" + at, diameters[row - 2]).put("C" + at, 20.0 + 30 * row);
            maker.formula("D" + at, "=B" + at + "*C" + at, 1.0);
        }
        return audited(maker);
    };
    const Report good = table(375);
    REQUIRE(good.inputs.size() == 2);
    CHECK(good.inputs[0].cells == "Pipes.B2:B6");
    CHECK(good.inputs[0].label == "Diameter");
    CHECK(good.inputs[0].value == "300; 375; 375; 300; 450");
    const Report bad = table(0.375);
    REQUIRE(bad.inputs.size() == 3);
    CHECK(bad.inputs[0].cells == "Pipes.B4");
    CHECK(bad.inputs[0].remark == "about one 1000th of the others of its column, which are 300 to 450");
    CHECK(table(15).inputs[0].remark == "about one 25.4th of the others of its column, which are 300 to 450");
    CHECK(table(600).inputs.size() == 2);
}

TEST_CASE("a list of dates is one line, days that stand alone are lines of their own") {
    const auto holidays = [](int many) {
        BookMaker maker;
        maker.sheet("Days").put("A1", "Day off").put("B1", "Date");
        for (int row = 2; row < 2 + many; ++row) {
            const std::string at = std::to_string(row);
            maker.put("A" + at, "Holiday").put("B" + at, 46300.0 + row);
            maker.shown_as("B" + at, {.shown_as = audit::ShownAs::date});
        }
        maker.put("A9", "Ends").formula("B9", "=NETWORKDAYS(B2;B3;B2:B7)", 1.0);
        return audited(maker);
    };
    const Report list = holidays(6);
    REQUIRE(list.inputs.size() == 1);
    CHECK(list.inputs[0].cells == "Days.B2:B7");
    CHECK(holidays(2).inputs.size() == 2);
}

TEST_CASE("an input that is another one since it was signed says what it was") {
    const audit::Book book = bed_inputs().made();
    audit::SignedState state;
    for (const RegisterLine& line : audit::audit_workbook({.book = book}).inputs)
        state.inputs[line.key] = line.value_and_unit();
    const auto since = [&](const BookMaker& maker) {
        const audit::Book now = maker.made();
        return audit::audit_workbook({.book = now, .at_signing = &state});
    };
    for (const RegisterLine& line : since(bed_inputs()).inputs) CHECK_FALSE(line.when_signed);
    BookMaker changed = bed_inputs();
    changed.put("D3", 6.0);
    CHECK(line_for(since(changed), "Bed.D3")->when_signed == "5 m");
    CHECK_FALSE(line_for(since(changed), "Bed.D2")->when_signed);
}

}  // namespace undercroft::tests
