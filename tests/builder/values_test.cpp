// The cells of rows of one line.
#include "sheets/builder/cell_writer.hpp"
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Wants = Validation::Wants;
using Words = std::vector<std::string>;

TEST_CASE("a computed day is a formula in one cell that looks like a day") {
    const SheetGrid sheet = sheet_of("day d_d | Starts | | DATE(2026; 11; 25) | As agreed");
    CHECK(formula_at(sheet, "G5") == "DATE(2026; 11; 25)");
    CHECK(cell_at(sheet, "G5").style == "NumberDay");
    CHECK(cell_at(sheet, "G5").columns == 1);
    CHECK(text_at(sheet, "I5") == "As agreed");
}

TEST_CASE("every row begins with a reference, a description, a symbol and a note") {
    const SheetGrid sheet =
        sheet_of("input a_b | Depth | d | 1.5 m | Survey\nremark R\ninput b_c | Width | | 2 m");
    CHECK(text_at(sheet, "A5") == "Pi1");
    CHECK(text_at(sheet, "B5") == "Depth");
    CHECK(cell_at(sheet, "B5").style == "Description");
    CHECK(cell_at(sheet, "B5").columns == 4);
    CHECK(text_at(sheet, "F5") == "d");
    CHECK(cell_at(sheet, "F5").style == "Symbol");
    CHECK(text_at(sheet, helper(5, Helper::kept_note)) == "Survey");
    CHECK(cell_at(sheet, "I5").style == "Note");
    CHECK(cell_at(sheet, "I5").columns == 4);
    CHECK(text_at(sheet, "A7") == "Pi2");  // a paragraph has none
    CHECK(cell_at(sheet, "F7").type == Type::blank);
    CHECK(cell_at(sheet, "N5").type == Type::blank);  // nothing computed: no reason
}

TEST_CASE("an input is a number and its unit, refused when typed below its least") {
    const WorkbookGrid workbook = workbook_of(
        {"sheet Pit | P\ninput a_b | Depth | d | 1500 mm // 5 ft | Survey\ninput f_f | Factor | F | "
         "1.5 1 >= 1\ninput base_level | Level | L | -2 m\n"});
    const SheetGrid& sheet = workbook.sheets[0];
    CHECK(cell_at(sheet, "G5").number == 1500);
    CHECK(cell_at(sheet, "G5").type == Type::number);
    CHECK(cell_at(sheet, "G5").style == "Entry");
    CHECK(text_at(sheet, "H5") == "mm");
    CHECK(cell_at(sheet, "H5").style == "UnitEntry");
    CHECK(validation_at(workbook, sheet, "H5").wants == Wants::unit);
    CHECK(validation_at(workbook, sheet, "H5").choices == Words{"m", "mm", "cm", "ft", "in"});
    const Validation depth = validation_at(workbook, sheet, "G5");
    CHECK(depth.wants == Wants::number);
    CHECK(depth.least == "0");
    CHECK(depth.help_title == "Depth");
    CHECK(depth.help == "A number; its unit stands to the right and can be picked from the list. Survey.");
    CHECK(depth.choices.empty());
    CHECK(validation_at(workbook, sheet, "G6").least == "1");
    CHECK(validation_at(workbook, sheet, "G6").help ==
          "A number; its unit stands to the right and can be picked from the list.");
    CHECK(validation_at(workbook, sheet, "G7").wants == Wants::anything);

    const WorkbookGrid ranges = workbook_of(
        {"sheet Pit | P\ninput a_b | Depth | d | 300 mm | usual 0.1..2 m, possible 0.01..10 | Survey\n"});
    const Validation range = validation_at(ranges, ranges.sheets[0], "G5");
    CHECK(range.least == helper_cell(5, Helper::least));
    CHECK(range.most == helper_cell(5, Helper::most));
    CHECK(range.base == "Pit.G5");
    CHECK(range.wanted == "10 to 10000 mm");
    CHECK(range.help ==
          "A number; its unit stands to the right and can be picked from the list. Usual: 100 to 2000 mm. "
          "Survey.");
    const SheetGrid us = sheet_of("input a_b | Depth | d | 1500 mm >= 300 // 5 ft >= 1", System::us);
    CHECK(cell_at(us, "G5").number == 5);
    CHECK(text_at(us, "H5") == "ft");
    CHECK(
        mistake_of({"sheet Pit | P\n\ninput a_b | A | | 1 metre-ish\n"}).starts_with("sheet Pit, line 3: "));
}

TEST_CASE("equal validations are one, a long title is cut") {
    const WorkbookGrid workbook = workbook_of(
        {"sheet Pit | P\ninput a_b | Depth | | 1 m\ninput c_d | Depth | | 2 m\ninput e_f | Depth | | 2 m >= "
         "1\ninput g_h | " +
         std::string(70, 'x') + " | | 2 m | N\n"});
    const SheetGrid& sheet = workbook.sheets[0];
    CHECK(cell_at(sheet, "H5").validation == cell_at(sheet, "H6").validation);
    CHECK(cell_at(sheet, "G5").validation == cell_at(sheet, "G6").validation);
    CHECK(cell_at(sheet, "G5").validation != cell_at(sheet, "G7").validation);
    CHECK(workbook.validations.size() == 4);
    CHECK(workbook.validations[0].name == "val1");
    CHECK(workbook.validations[3].name == "val4");
    CHECK(validation_at(workbook, sheet, "G8").help_title == std::string(60, 'x'));

    // Each part of a validation tells it from others.
    const WorkbookGrid apart =
        workbook_of({"sheet Pit | P\nchoice a_b | Kind | | a | a, b | N\nchoice c_d | Kind | | a | a, c | "
                     "N\nchoice e_f | Sort | | "
                     "a | a, b | N\nchoice g_h | Kind | | a | a, b | M\ntext i_j | Kind | | a | N\nchoice "
                     "k_l | Kind | | a | a, b | "
                     "N\n"});
    CHECK(apart.validations.size() == 5);
    CHECK(cell_at(apart.sheets[0], "G10").validation == "val1");
}

TEST_CASE("a text takes the place of its note where it has none; a choice is one of its list") {
    const WorkbookGrid workbook = workbook_of(
        {"sheet Pit | P\ntext job_name | Job | | New job // New work\ntext pit_batter | Slope | z | "
         "1H:1V | Vertical is 0H:1V\nchoice soil_type | Soil | | B | A, B, C\n"});
    const SheetGrid& sheet = workbook.sheets[0];
    CHECK(text_at(sheet, "G5") == "New job");
    CHECK(cell_at(sheet, "G5").style == "TextEntry");
    CHECK(cell_at(sheet, "G5").columns == 6);
    CHECK_FALSE(sheet.cells.contains(place_of("I5")));
    CHECK(cell_at(sheet, "G6").columns == 2);
    CHECK(text_at(sheet, helper(6, Helper::kept_note)) == "Vertical is 0H:1V");
    CHECK(validation_at(workbook, sheet, "G6").help == "Vertical is 0H:1V");
    CHECK(validation_at(workbook, sheet, "G6").help_title == "Slope");
    CHECK(validation_at(workbook, sheet, "G6").wants == Wants::anything);
    CHECK(text_at(sheet, "G7") == "B");
    CHECK(cell_at(sheet, "G7").columns == 2);
    CHECK(sheet.cells.contains(place_of("I7")));
    CHECK(validation_at(workbook, sheet, "G7").choices == Words{"A", "B", "C"});
    CHECK(validation_at(workbook, sheet, "G7").wants == Wants::choice);
    CHECK(text_at(sheet_of("text job_name | Job | | New job // New work", System::us), "G5") == "New work");
}

TEST_CASE("a result is a formula and its unit, with the reason beside it") {
    const SheetGrid sheet = sheet_of(
        "input a_b | A | | 1 m\nresult r_r | R | A_t | m2 // ft2 | UC.PIT.AREA(a_b; @) | L W\nresult n_n | N "
        "| | each | "
        "UC.N(a_b)\nresult s_s | S | | % | UC.S(a_b; @)\nresult u_u | U | | =a_b.unit | UC.U(a_b.value; "
        "a_b.unit)\n"
        "words w_w | W | | \"1 : \"&n_n.value | Scale");
    CHECK(formula_at(sheet, "G6") == "UNDERCROFT.UC.PITAREA(a_b; [.H6])");
    CHECK(cell_at(sheet, "G6").style == "Number");
    CHECK(text_at(sheet, "H6") == "m2");
    CHECK(cell_at(sheet, "H6").style == "UnitResult");
    CHECK_FALSE(cell_at(sheet, "H6").validation.empty());
    CHECK(formula_at(sheet, "N6") == "IF(ISERROR([.G6]);UNDERCROFT.UC.WHY([.G6]);\"\")");
    CHECK(cell_at(sheet, "N6").style == "Reason");
    CHECK(cell_at(sheet, "G7").style == "NumberCount");
    CHECK(cell_at(sheet, "H7").style == "UnitFixed");  // the formula does not take it
    CHECK(cell_at(sheet, "H7").validation.empty());
    CHECK(text_at(sheet, "H7") == "each");
    CHECK(cell_at(sheet, "G8").style == "NumberShare");
    CHECK(formula_at(sheet, "G9") == "UNDERCROFT.UC.U([.G5]; [.H5])");
    CHECK(formula_at(sheet, "H9") == "[.H5]");
    CHECK(cell_at(sheet, "H9").style == "UnitLink");
    CHECK(formula_at(sheet, "G10") == "\"1 : \"&[.G7]");
    CHECK(cell_at(sheet, "G10").style == "Words");
    CHECK(cell_at(sheet, "G10").columns == 2);
    CHECK_FALSE(formula_at(sheet, "N10").empty());
    CHECK(text_at(sheet_of("result r_r | R | | m2 // ft2 | UC.A(1; @)", System::us), "H5") == "ft2");
    CHECK(mistake_of({"sheet Pit | P\n\nresult r_r | R | | m | UC.A(no_key; @)\n"}) ==
          "sheet Pit, line 3: 'no_key' is no key of this workbook, in: UC.A(no_key; @)");
    CHECK(mistake_of({"sheet Pit | P\nresult r_r | R | | m | UC.A(r_r.size; @)\n"})
              .find("'r_r.size' is no key") != std::string::npos);
    CHECK(
        mistake_of({"sheet Pit | P\ntext t_t | T | | x\nwords r_r | R | | t_t.unit\n"}).find("'t_t.unit'") !=
        std::string::npos);
}

TEST_CASE("a given row shows what the other sheet has, by number and unit, and looks like it") {
    const WorkbookGrid workbook =
        workbook_of({"sheet Bed | B\nresult bed_length | L | | m | UC.A(1; @)\nresult bed_units | N | | each "
                     "| UC.N(1)\ninput "
                     "bed_gap | G | | 1 m\n",
                     "sheet Pit | P\ngiven bed_length | Length | L | 1 m | Note\ngiven bed_units | Units | N "
                     "| 1 each\ngiven "
                     "bed_gap | Gap | g | 1 m\ngiven pit_depth | Depth | D | 3 m // 10 ft | Survey\n"});
    const SheetGrid& pit = workbook.sheets[1];
    CHECK(formula_at(pit, "G5") == "[$Bed.$G$5]");
    CHECK(formula_at(pit, "H5") == "[$Bed.$H$5]");
    CHECK(cell_at(pit, "G5").style == "Link");
    CHECK(cell_at(pit, "H5").style == "UnitLink");
    CHECK(text_at(pit, "I5") == "from the sheet Bed");
    CHECK_FALSE(formula_at(pit, "N5").empty());
    CHECK(cell_at(pit, "G6").style == "LinkCount");
    CHECK(cell_at(pit, "G7").style == "LinkTyped");  // what was typed in shows as typed
    CHECK(cell_at(pit, "G8").number == 3);
    CHECK(cell_at(pit, "G8").style == "Entry");
    CHECK(text_at(pit, "H8") == "m");
    CHECK(text_at(pit, helper(8, Helper::kept_note)) == "Survey");
}

TEST_CASE("keys of another sheet are fixed references, of the same sheet relative ones") {
    const WorkbookGrid workbook =
        workbook_of({"sheet Bed | B\ninput bed_gap | G | | 1 m\n",
                     "sheet Pit | P\nwords w_w | W | | bed_gap.value&bed_gap.unit\n"});
    CHECK(formula_at(workbook.sheets[1], "G5") == "[$Bed.$G$5]&[$Bed.$H$5]");
}

TEST_CASE("headings and paragraphs") {
    const SheetGrid sheet = sheet_of("section Walls\nremark A remark\ncaution Care\nremark Next");
    for (const char* address : {"A6", "F6", "L6"}) CHECK(cell_at(sheet, address).style == "Section");
    CHECK(text_at(sheet, "A6") == "Walls");
    CHECK_FALSE(sheet.cells.contains(place_of("A5")));
    CHECK_FALSE(sheet.cells.contains(place_of("M6")));
    CHECK(text_at(sheet, "B7") == "A remark");
    CHECK(cell_at(sheet, "B7").style == "Remark");
    CHECK(cell_at(sheet, "B7").columns == 11);
    CHECK_FALSE(sheet.cells.contains(place_of("A7")));
    CHECK(cell_at(sheet, "B8").style == "Caution");
    CHECK(text_at(sheet, "A8") == "!");
    CHECK(cell_at(sheet, "A8").style == "CautionMark");
}

TEST_CASE("words and notes have a reading for each system of units") {
    const std::string text =
        "sheet Pit | P\ncaution From 1.2 m on // From 4 ft on\n"
        "input a_b | Lap | l | 300 mm // 12 in | usual 0.1..1 m | At least 300 mm // At least 12 in\n";
    const SheetGrid si = workbook_of({text}).sheets.front();
    const SheetGrid us = workbook_of({text}, System::us).sheets.front();
    CHECK(text_at(si, "B5") == "From 1.2 m on");
    CHECK(text_at(us, "B5") == "From 4 ft on");
    const auto kept = [](const SheetGrid& sheet) {
        return text_at(sheet, helper(6, sheets::Helper::kept_note));
    };
    CHECK(kept(si) == "At least 300 mm");
    CHECK(kept(us) == "At least 12 in");
}

TEST_CASE("a row is as high as its longest text asks for") {
    CHECK(lines_of_text("short", 4) == 1);
    CHECK(lines_of_text("", 4) == 1);
    // 4 columns of 1.8 cm less 0.2 cm; an x is half as wide as its size, 3 % more on a screen: 42.8 of them
    CHECK(lines_of_text(std::string(42, 'x'), 4) == 1);
    CHECK(lines_of_text(std::string(43, 'x'), 4) == 2);
    CHECK(lines_of_text(std::string(85, 'x'), 4) == 3);
    CHECK(lines_of_text(std::string(80, 'i'), 4) == 1);  // not half as wide
    CHECK(lines_of_text(std::string(30, 'x') + " " + std::string(20, 'x'), 4) == 2);
    CHECK(lines_of_text(std::string(22, 'x') + " " + std::string(22, 'x') + " " + std::string(22, 'x'), 4) ==
          3);
    // As Calc breaks them in a window.
    CHECK(lines_of_text("Buried stormwater storage: calculation sheets", 4) == 1);
    CHECK(lines_of_text("The pit: what must be dug, and where the spoil goes", 4) == 2);
    CHECK(lines_of_text(std::string(48, 'x'), 4, small_pt) == 1);
    CHECK(lines_of_text(std::string(49, 'x'), 4, small_pt) == 2);
    const auto height = [](const std::string& line) { return sheet_of(line).row_heights_cm.at(4); };
    CHECK(height("input a_b | Depth | d | 1 m | Survey") == Approx(0.37 + 0.03));
    CHECK(height("input a_b | " + std::string(50, 'x') + " | d | 1 m | Survey") == Approx(2 * 0.37 + 0.03));
    CHECK(height("input a_b | Depth | d | 1 m | " + std::string(90, 'x')) ==
          Approx(3 * 0.33 + 0.03));  // after "assumed; "
    CHECK(height("result a_b | Depth | d | m | UC.X(\"1 m\"; @) | " + std::string(90, 'x')) ==
          Approx(2 * 0.33 + 0.03));
    CHECK(height("remark " + std::string(130, 'x')) == Approx(2 * 0.37 + 0.03));
}

}  // namespace undercroft::tests
