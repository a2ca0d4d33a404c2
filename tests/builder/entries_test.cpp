// What is watched of entries: to give, impossible, unusual, assumed.
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Catch::Contains;

TEST_CASE("an input says what is to give, impossible, unusual and assumed, and its note begins with it") {
    const SheetGrid sheet =
        sheet_of("input a_b | Depth | d | 300 mm // 12 in | usual 0.1..2 m, possible 0.01..10 | Survey");
    const auto cell = [](Helper which) { return helper_cell(5, which); };
    CHECK(helper_formula(sheet, 5, Helper::to_give) ==
          "IF(ISERROR(1/AND(LEN([.G5])>0;OR([.G5]<>0;" + cell(Helper::kept_number) + "=1)));1;0)");
    CHECK(cell_at(sheet, helper(5, Helper::kept_number)).number == 0);
    CHECK(text_at(sheet, helper(5, Helper::least_text)) == "0.01 m");
    CHECK(text_at(sheet, helper(5, Helper::usual_most_text)) == "2 m");
    CHECK(helper_formula(sheet, 5, Helper::least) ==
          "IFERROR(UNDERCROFT.UC.CONVERT(" + cell(Helper::least_text) + ";[.H5]&\"\");\"-\")");
    CHECK(helper_formula(sheet, 5, Helper::impossible) ==
          "IF(ISERROR(1/AND(OR([.G5]=0;AND([.G5]>=" + cell(Helper::least) + ";[.G5]<=" + cell(Helper::most) +
              "));ISERROR(FIND(LEFT(CELL(\"FORMAT\";[.G5]));\"PD\"))));1;0)");
    CHECK_THAT(helper_formula(sheet, 5, Helper::unusual), Contains("OR(" + cell(Helper::impossible) + "=1;"));
    CHECK(text_at(sheet, helper(5, Helper::usual_words)) == "100 to 2000 mm");
    CHECK(text_at(sheet, helper(5, Helper::possible_words)) ==
          "10 to 10000 mm, not shown as % or date (Ctrl+M)");
    const Sheet upright;
    const std::string value = "[." + cell_text(4, template_value_column(upright, 0)) + "]";
    const std::string unit = "[." + cell_text(4, template_unit_column(upright, 0)) + "]";
    CHECK(helper_formula(sheet, 5, Helper::assumed) ==
          "IF(ISERROR(1/AND([.M5]=\"\";[.G5]=" + value + ";[.H5]&\"\"=" + unit + "));0;1)");
    CHECK(cell_at(sheet, cell_text(4, template_value_column(upright, 0))).number == 300);
    CHECK(text_at(sheet, cell_text(4, template_unit_column(upright, 0))) == "mm");
    CHECK(cell_at(sheet, "M5").style == "Mark");
    CHECK(text_at(sheet, helper(5, Helper::kept_note)) == "Survey");
    CHECK_THAT(formula_at(sheet, "I5"), Contains(cell(Helper::kept_note)));
    CHECK(cell_at(sheet, "I5").columns == 4);

    const auto& marked = sheet.conditions.at(place_of("G5"));
    REQUIRE(marked.size() == 2);
    CHECK(marked[0].style == "EntryWrong");
    CHECK(marked[1].style == "EntryUnusual");
    CHECK(sheet.conditions.at(place_of("M5")).front().style == "MarkWanted");
    const SheetGrid us = sheet_of(
        "input a_b | Depth | d | 300 mm // 12 in | usual 0.1..2 m, possible 0.01..10 | Survey", System::us);
    CHECK(text_at(us, helper(5, Helper::usual_words)) == "3.94 to 78.7 in");
}

TEST_CASE("0 is a number where the text says so, and a share has ends in per cent") {
    const SheetGrid sheet = sheet_of(
        "input a_b | A | | 1 m | usual 0.5..2 m or 0\ninput f_f | F | | 1.5 1 | usual 1..4 1, possible "
        "1..10");
    CHECK(cell_at(sheet, helper(5, Helper::kept_number)).number == 1);
    CHECK(text_at(sheet, helper(5, Helper::usual_words)) == "0.5 to 2 m or 0");
    CHECK(text_at(sheet, helper(6, Helper::least_text)) == "100 %");
    CHECK(text_at(sheet, helper(6, Helper::usual_words)) == "1 to 4");
}

TEST_CASE("what is possible is twenty times as wide as what is usual where the text does not say") {
    Usual usual = usual_in("1..4 m");
    CHECK(usual.possible.low == Approx(0.05));
    CHECK(usual.possible.high == Approx(80));
    usual = usual_in("-10..10 m or 0");
    CHECK(usual.or_zero);
    CHECK(usual.possible.low == Approx(-200));
    CHECK(usual_in("any").any);
    CHECK_THROWS_WITH(usual_in("4..1 m"), Contains("is no range"));
    CHECK_THROWS_WITH(usual_in("1 m"), Contains("is no range"));
    CHECK_THROWS_WITH(range_words({1, 2}, usual, "kg"), Contains("two kinds"));
    CHECK_THAT(mistake_in("input a_b | A | | 1 m | usual 1..2 m, likely 3..4"),
               Contains("says nothing of what is usual"));
    CHECK_THAT(mistake_in("input a_b | A | | 1 m | usual any, possible 3..4"),
               Contains("says nothing of what is usual"));
    CHECK_THAT(mistake_of({"sheet Pit | P\ninput a_b | A | | 1 m | usual 1..2 kg\n"}),
               Contains("units of two kinds"));
}

TEST_CASE("a choice is one of its list; a text may be optional") {
    const SheetGrid sheet =
        sheet_of("choice k_k | K | | B | A, B | Note\ntext t_t | T | | x\ntext o_o | O | | | optional |");
    CHECK(helper_formula(sheet, 5, Helper::not_listed) ==
          "IF(ISERROR(1/OR(LEN([.G5])=0;[.G5]=\"A\";[.G5]=\"B\"));1;0)");
    CHECK_THAT(helper_formula(sheet, 5, Helper::assumed), Contains("[.M5]=\"\";[.G5]="));
    CHECK_FALSE(helper_formula(sheet, 6, Helper::to_give).empty());
    CHECK_FALSE(sheet.cells.contains(place_of(helper(7, Helper::to_give))));
    CHECK_FALSE(sheet.cells.contains(place_of("M7")));
    CHECK(sheet.conditions.at(place_of("G5")).front().style == "TextEntryWrong");
    // A text that takes the place of its note has its state beside the page.
    CHECK_THAT(formula_at(sheet, "N6"), Contains(helper_cell(6, Helper::state)));
}

TEST_CASE("a slope is read as a number; a text of the template that is blank is never assumed") {
    const SheetGrid sheet = sheet_of(
        "text p_p | Slope | z | 1H:1V | usual 0..3 1, possible 0..20 | Note\ntext t_t | T | | | Note");
    CHECK_THAT(helper_formula(sheet, 5, Helper::impossible),
               Contains("UNDERCROFT.UC.CONVERT([.G5];\"1\")<=UNDERCROFT.UC.CONVERT(\"2000 %\";\"1\")"));
    CHECK(helper_formula(sheet, 6, Helper::assumed).empty());
    CHECK_FALSE(helper_formula(sheet, 6, Helper::to_give).empty());
}

TEST_CASE("of an item every watched entry is wanted once one is filled in") {
    const SheetGrid sheet = sheet_of(
        "list l_l | L | Kind, pick a/b; Area, span 2, unit m2 // ft2, as area, usual 10..100 m2; C, format "
        "number, as c, "
        "usual 0.1..1, possible 0..1; Note, format entry\n: a ; 20 m2 ; 0.5 ; x\n: - ; - ; - ; -");
    const Sheet upright;
    const auto state = [&](int entry) {
        return formula_at(sheet, cell_text(6, entry_state_column(upright, entry)));
    };
    CHECK(state(0) == "IF(ISERROR(1/LEN([.B7]));\"g\";\"\")");
    CHECK_THAT(state(1),
               Catch::StartsWith("IF(ISERROR(1/AND(LEN([.C7])>0;[.C7]<>0));\"g\";IF(ISERROR(1/AND(OR([.C7]=0;"
                                 "AND([.C7]>=UNDERCROFT.UC.CONVERT(\"0.5 m2\";[.D7]&\"\");"));
    CHECK_THAT(state(2),
               Contains("IF(ISERROR(1/AND(OR([.E7]=0;AND([.E7]>=UNDERCROFT.UC.CONVERT(\"0 %\";\"1\");"));
    const auto range = [&](int first) {
        return "COUNTIF([." + cell_text(6, first) + ":." + cell_text(6, first + 2) + "];";
    };
    const std::string states = range(entry_state_column(upright, 0));
    CHECK_THAT(formula_at(sheet, cell_text(6, entry_oddity_column(upright, 1))),
               Contains("AND([.C7]>=UNDERCROFT.UC.CONVERT(\"10 m2\";[.D7]&\"\");"));
    CHECK(formula_at(sheet, cell_text(6, entry_oddity_column(upright, 0))) == "\"\"");
    CHECK(helper_formula(sheet, 7, Helper::to_give) ==
          "IF(ISERROR(1/NOT(AND(LEN([.B7])+LEN([.C7])+LEN([.E7])>0;" + states + "\"g\")>0)));1;0)");
    CHECK(helper_formula(sheet, 7, Helper::impossible) == "IF(ISERROR(1/NOT(" + states + "\"i\")>0));1;0)");
    CHECK(helper_formula(sheet, 7, Helper::unusual) ==
          "IF(ISERROR(1/OR(" + helper_cell(7, Helper::impossible) + "=1;NOT(" +
              range(entry_oddity_column(upright, 0)) + "\"u\")>0)));1;0)");
    CHECK(text_at(sheet, helper(7, Helper::usual_words)) == "Area 10 to 100 m2, C 0.1 to 1");
    CHECK_THAT(helper_formula(sheet, 7, Helper::assumed), Contains("LEN([.B7])+LEN([.C7])+LEN([.E7])>0"));
    CHECK(cell_at(sheet, "M7").style == "Mark");
    CHECK(sheet.conditions.at(place_of("C7")).front().style == "EntryWrong");
    CHECK_THAT(formula_at(sheet, "N7"), Contains(helper_cell(7, Helper::state)));
}

TEST_CASE("a row of a grid takes the units above all of them") {
    const SheetGrid sheet = sheet_of(
        "grid g_g | G | t, unit min, usual 5..60 min; i, unit mm/h, usual 2..300 mm/h\n: 5 ; 10\n: 10 ; 8");
    const Sheet upright;
    CHECK_THAT(formula_at(sheet, cell_text(8, entry_state_column(upright, 0))),
               Contains("CONVERT(\"0.25 min\";[.$B$7]&\"\")"));
    CHECK(text_at(sheet, "A9") == "Pi3");  // by which the head lists it
    CHECK(cell_at(sheet, "M8").style == "Mark");
    CHECK(sheet.conditions.at(place_of("C8")).front().style == "GridEntryWrong");
}

TEST_CASE("what a list computes with is never a blank shown as 0") {
    const WorkbookGrid workbook = workbook_of(
        {"sheet Site | S\ninput a_b | A | | 1 m | usual 0.5..2 m\ninput b_c | B | | 1 m | usual 0.5..2 m or "
         "0\n",
         "sheet Pit | P\nlist l_l | L | Layer; t, span 2, unit m, as t\n: a ; =a_b\n: b ; =b_c\n"});
    const SheetGrid& pit = workbook.sheets[1];
    CHECK(formula_at(pit, "C7") == "IF([$Site.$G$5]=0;NA();UNDERCROFT.UC.CONVERT(a_b;[.D7]))");
    CHECK(formula_at(pit, "C8") == "UNDERCROFT.UC.CONVERT(b_c;[.D8])");
    CHECK(formula_at(pit, "D7") == "[$Site.$H$5]");
}

}  // namespace undercroft::tests
