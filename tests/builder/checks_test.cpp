// Checks, and the rows that gather them.
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Catch::Contains;

TEST_CASE("a comparison computes a verdict from its two keys") {
    const SheetGrid sheet = sheet_of(
        "result a_b | A | a | m | UC.A(1; @)\nresult l_l | L | a_min | m | UC.L(1; @)\n"
        "check c_c | Wide | a_b >= l_l | 12\" at least\ncheck d_d | Narrow | a_b <= l_l\n"
        "check e_e | Above | a_b > l_l\ncheck f_f | Below | a_b < l_l\ncheck g_g | Done | a_b >= l_l else "
        "open");
    CHECK(formula_at(sheet, "G7") == "UNDERCROFT.UC.ATLEAST(a_b;l_l)");
    CHECK(cell_at(sheet, "G7").style == "Verdict");
    CHECK(cell_at(sheet, "G7").columns == 2);
    CHECK(text_at(sheet, "F7") == "a ≥ a_min");
    CHECK(cell_at(sheet, "F7").style == "Symbol");
    CHECK(cell_at(sheet, "I7").style == "Note");
    CHECK(cell_at(sheet, "I7").columns == 4);
    CHECK_FALSE(formula_at(sheet, "N7").empty());
    CHECK(formula_at(sheet, "G8") == "UNDERCROFT.UC.ATMOST(a_b;l_l)");
    CHECK(text_at(sheet, "F8") == "a ≤ a_min");
    CHECK(formula_at(sheet, "G9") == "NOT(UNDERCROFT.UC.ATMOST(a_b;l_l))*1");
    CHECK(text_at(sheet, "F9") == "a > a_min");
    CHECK(formula_at(sheet, "G10") == "NOT(UNDERCROFT.UC.ATLEAST(a_b;l_l))*1");
    CHECK(text_at(sheet, "F10") == "a < a_min");
    CHECK(formula_at(sheet, "G11") == "IF(UNDERCROFT.UC.ATLEAST(a_b;l_l)=1;1;\"open\")");
    CHECK(mistake_of({"sheet Pit | P\ninput a_b | A | a | 1 m\ncheck c_c | C | a_b >= no_key\n"}) ==
          "sheet Pit, line 3: 'no_key' is no key of this workbook");
    CHECK(mistake_of({"sheet Pit | P\ninput a_b | A | a | 1 m\ncheck c_c | C | a_b >= a_b if no_key\n"}) ==
          "sheet Pit, line 3: 'no_key' is no key of this workbook");
    CHECK(mistake_of(
              {"sheet Pit | P\ninput a_b | A | a | 1 m\ntext t_t | T | | x\ncheck c_c | C | t_t >= a_b\n"}) ==
          "sheet Pit, line 4: a check compares two numbers with units");
    CHECK_THAT(mistake_in("check c_c | C | a_b >= l_l else failed"), Contains("a check is open or fails"));
}

TEST_CASE("a limit that is typed in and is 0 or blank makes its check open, where 0 is no number there") {
    const auto verdict = [](const std::string& usual) {
        return formula_at(sheet_of("result a_b | A | | m | UC.A(1; @)\ninput l_l | L | | 1 m | " + usual +
                                   "\ncheck c_c | C | a_b >= l_l"),
                          "G7");
    };
    CHECK(verdict("usual 0.5..2 m") ==
          "IF([.G6]=0;\"open: limit not given\";UNDERCROFT.UC.ATLEAST(a_b;l_l))");
    CHECK(verdict("usual 0.5..2 m or 0") == "UNDERCROFT.UC.ATLEAST(a_b;l_l)");
}

TEST_CASE("a check counts where its condition is 1") {
    const SheetGrid sheet = sheet_of(
        "result a_b | A | | m | UC.A(1; @)\nresult l_l | L | | m | UC.L(1; @)\nresult k_k | K | | 1 | 0\n"
        "check c_c | C | a_b <= l_l if k_k");
    CHECK(formula_at(sheet, "G8") == "IF([.G7]=1;UNDERCROFT.UC.ATMOST(a_b;l_l);\"not counted\")");
    CHECK_THAT(helper_formula(sheet, 8, Helper::demand), Contains("IF([.G7]=1;UNDERCROFT.UC.CONVERT(a_b;"));
}

TEST_CASE("demand, capacity and ratio stand beside a check, in the unit of its limit") {
    const SheetGrid sheet = sheet_of(
        "result a_b | A | | mm | UC.A(1; @)\nresult l_l | L | | m | UC.L(1; @)\nresult x_level | X | | m | "
        "UC.X(1; @)\n"
        "check c_c | C | a_b >= l_l\ncheck d_d | D | a_b <= l_l\ncheck e_e | E | a_b >= x_level");
    CHECK(helper_formula(sheet, 8, Helper::check_unit) == "IF([.H6]&\"\"=\"1\";\"\";\" \"&[.H6])");
    const std::string unit = ";[.H6]&\"\");\"-\")";
    CHECK(helper_formula(sheet, 8, Helper::demand) == "IFERROR(UNDERCROFT.UC.CONVERT(l_l" + unit);
    CHECK(helper_formula(sheet, 8, Helper::capacity) == "IFERROR(UNDERCROFT.UC.CONVERT(a_b" + unit);
    CHECK_THAT(helper_formula(sheet, 9, Helper::demand), Contains("CONVERT(a_b;"));
    CHECK_THAT(helper_formula(sheet, 9, Helper::capacity), Contains("CONVERT(l_l;"));
    CHECK_THAT(helper_formula(sheet, 8, Helper::ratio),
               Contains(helper_cell(8, Helper::demand) + "/" + helper_cell(8, Helper::capacity)));
    // A level is above a datum: its ratio says nothing.
    CHECK(cell_at(sheet, helper(8, Helper::kept_number)).number == 0);
    CHECK(cell_at(sheet, helper(10, Helper::kept_number)).number == 2);
}

TEST_CASE("the symbols of a comparison stand where both sides have one") {
    const SheetGrid sheet = sheet_of(
        "input a_b | A | a | 1 m\ninput l_l | L | | 1 m\ncheck c_c | C | a_b >= l_l\ncheck d_d | D | l_l >= "
        "a_b");
    CHECK(cell_at(sheet, "F7").type == Type::blank);
    CHECK(cell_at(sheet, "F8").type == Type::blank);
}

TEST_CASE("a check by formula keeps its note") {
    const SheetGrid sheet =
        sheet_of("input a_b | A | | 1 m\ncheck c_c | C | = UC.WITHIN(a_b; a_b; \"1 m\") | Note");
    CHECK(formula_at(sheet, "G6") == " UNDERCROFT.UC.WITHIN(a_b; a_b; \"1 m\")");
    CHECK(text_at(sheet, "I6") == "Note");
    CHECK(cell_at(sheet, "G6").columns == 2);
    CHECK_FALSE(sheet.cells.contains(place_of(helper(6, Helper::demand))));
}

TEST_CASE(
    "a check by formula shows its numbers as far as there are two, and says words where there are none") {
    const char* keys = "result a_b | A | a | mm | UC.A(1; @)\nresult l_l | L | a_min | m | UC.L(1; @)\n";
    const std::string text =
        std::string(keys) +
        "check c_c | C | = IF(ISTEXT(l_l.value); 0; UC.ATLEAST(a_b; l_l)) shows a_b >= l_l "
        "says \"None is: \"&c_c.value | Note";
    const SheetGrid sheet = sheet_of(text);
    CHECK(formula_at(sheet, "G7") == " IF(ISTEXT([.G6]); 0; UNDERCROFT.UC.ATLEAST(a_b; l_l))");
    CHECK(text_at(sheet, "F7") == "a ≥ a_min");
    CHECK(helper_formula(sheet, 7, Helper::capacity) ==
          "IFERROR(IF([.G7]=\"not counted\";\"-\";UNDERCROFT.UC.CONVERT(a_b;[.H6]&\"\"));\"-\")");
    CHECK(helper_formula(sheet, 7, Helper::demand) ==
          "IFERROR(IF([.G7]=\"not counted\";\"-\";UNDERCROFT.UC.CONVERT(l_l;[.H6]&\"\"));\"-\")");
    const std::string words =
        "IF(ISERROR([.G7]);\"\";IF(ISTEXT([.G7]);[.G7];IFERROR(\"None is: \"&[.G7];\"\")))";
    CHECK(helper_formula(sheet, 7, Helper::check_words) == words);
    CHECK_THAT(helper_formula(sheet, 7, Helper::state), Contains(helper_cell(7, Helper::check_words)));
    CHECK_THAT(helper_formula(sheet, 7, Helper::state), Contains("FIXED("));
    CHECK_THAT(formula_at(sheet, "I7"), Contains(helper_cell(7, Helper::state)));

    const SheetGrid in_words =
        sheet_of("words g_g | G | | UC.G(1)\ncheck c_c | C | = UC.FITS(g_g) says \"No number: \"&g_g | Note");
    CHECK(formula_at(in_words, "G6") == " UNDERCROFT.UC.FITS(g_g)");
    CHECK(helper_formula(in_words, 6, Helper::state) ==
          "IF(ISERROR([.G6]);\"\";IF(ISTEXT([.G6]);[.G6];IFERROR(\"No number: \"&g_g;\"\")))");
    CHECK_FALSE(in_words.cells.contains(place_of(helper(6, Helper::demand))));
    CHECK(mistake_of({"sheet Pit | P\n" + std::string(keys) + "check c_c | C | = 1 shows a_b\n"}) ==
          "line 4: a check is A >= B, A <= B, A > B, A < B or = FORMULA");
    CHECK(mistake_of({"sheet Pit | P\n" + std::string(keys) + "check c_c | C | = 1 shows a_b >= no_key\n"}) ==
          "sheet Pit, line 4: 'no_key' is no key of this workbook");
    CHECK(mistake_of({"sheet Pit | P\n" + std::string(keys) + "check c_c | C | = 1 says no_key\n"}) ==
          "sheet Pit, line 4: 'no_key' is no key of this workbook, in: no_key");
}

TEST_CASE("a check leaves room for the values that it compares") {
    const auto height = [](const std::string& check) {
        return sheet_of("input a_b | A | | 1 m\ninput l_l | L | | 1 m\n" + check).row_heights_cm.at(6);
    };
    // 4 columns hold 48 small letters such as x; the values leave room for ten.
    CHECK(height("check c_c | C | a_b >= l_l | " + std::string(10, 'x')) == Approx(0.40));
    CHECK(height("check c_c | C | a_b >= l_l | " + std::string(11, 'x')) == Approx(2 * 0.33 + 0.03));
    CHECK(height("check c_c | C | = UC.X(a_b) | " + std::string(21, 'x')) == Approx(0.40));
    CHECK(height("check c_c | " + std::string(90, 'x') + " | a_b >= l_l") == Approx(3 * 0.37 + 0.03));
}

TEST_CASE("the summary counts each sheet by kind and adds up, and lists where it is") {
    const WorkbookGrid workbook = workbook_of(
        {"sheet Job | The job\nsummary\n",
         "sheet Pit | The pit\ninput a_b | A | a | 1 m\ncheck c_c | Deep enough | a_b >= a_b | Note\n"});
    const SheetGrid& job = workbook.sheets[0];
    CHECK(text_at(job, "F5") == "Fail");
    CHECK(text_at(job, "K5") == "Assumed");
    CHECK(text_at(job, "L5") == "Errors");
    CHECK(text_at(job, "B6") == "The job");
    CHECK(text_at(job, "B7") == "The pit");
    CHECK(cell_at(job, "B7").columns == 4);
    const auto in_pit = [](int row, Helper which) {
        return "[$Pit.$" + helper(row, which).substr(0, helper(row, which).find_first_of("0123456789")) +
               "$" + std::to_string(row) + "]";
    };
    CHECK(formula_at(job, "F7") == in_pit(3, Helper::fails));
    CHECK(formula_at(job, "I7") == in_pit(3, Helper::impossible) + "+" + in_pit(3, Helper::not_listed));
    CHECK(formula_at(job, "L7") == "[$Pit.$N$1]");
    CHECK(text_at(job, "B8") == "The whole workbook");
    CHECK(formula_at(job, "F8") == "SUM([.F6:.F7])");
    CHECK(job.whole_workbook_row == 7);
    CHECK(text_at(job, "F9") == "Rows, by the reference at their left edge");
    CHECK(cell_at(job, "F9").columns == 7);  // to the column of the errors
    CHECK(cell_at(job, "F11").columns == 7);
    CHECK(text_at(job, "B11") == "Pit");
    const std::string kept = helper(9, Helper::kept_number);
    const std::string room = "[.$" + kept.substr(0, kept.size() - 1) + "$9]";
    CHECK(formula_at(job, "F11") == "IF(SUMPRODUCT([$Pit.$O$3:.$U$3])=0;\"\";IF(LEN([$Pit.$V$1])<=" + room +
                                        ";[$Pit.$V$1];" + "LEFT([$Pit.$V$1];FIND(\",\";[$Pit.$V$1]&\",\";" +
                                        room + ")-1)&\" ... and more on the sheet\"))");
    CHECK(cell_at(job, helper(9, Helper::kept_number)).number == 160);
    CHECK_THAT(formula_at(job, "N2"),
               Contains("IF([.F8]+[.H8]+[.I8]+[.K8]+[.L8]>0;\"Not ready for checking\""));
    CHECK_THAT(helper_formula(job, 3, Helper::state), Contains("IF([.K8]>0;\"assumed: \"&[.K8];\"\")"));
}

TEST_CASE("the dashboard shows every check with its numbers, and how many items of a list pass") {
    const WorkbookGrid workbook = workbook_of(
        {"sheet Job | The job\ndashboard\n",
         "sheet Pit | The pit\ninput a_b | A | a | 1 m\ncheck c_c | Deep enough | a_b >= a_b | Note\n",
         "sheet Bed | The bed\ncheck e_e | Long enough | = 1\nlist l_l | Levels | n, unit m, as n; v, format "
         "verdict, "
         "as v := UC.ATLEAST(@n; @n)\n: 1 m\n: 2 m\n"});
    const SheetGrid& job = workbook.sheets[0];
    const char* heads[] = {"F5", "G5", "H5", "I5", "J5", "K5"};
    const char* texts[] = {"Sheet", "Demand", "Capacity", "Unit", "Ratio", "Verdict"};
    for (int i = 0; i < 6; ++i) CHECK(text_at(job, heads[i]) == texts[i]);
    CHECK(text_at(job, "A6") == "Jo1");
    CHECK(text_at(job, "B6") == "Deep enough");
    CHECK(text_at(job, "F6") == "Pit");
    CHECK_THAT(formula_at(job, "G6"), Catch::StartsWith("[$Pit."));
    CHECK(cell_at(job, "G6").style == "Number");
    CHECK(formula_at(job, "K6") == "[$Pit.$G$6]");
    CHECK(cell_at(job, "K6").style == "Verdict");
    CHECK(cell_at(job, "K6").columns == 2);
    CHECK(formula_at(job, "N6") == "IF(ISERROR([.K6]);UNDERCROFT.UC.WHY([.K6]);\"\")");
    CHECK(text_at(job, "B7") == "Long enough");
    CHECK(text_at(job, "G7") == "-");  // yes or no
    CHECK(text_at(job, "B8") == "Levels");
    CHECK(formula_at(job, "G8") == "ROWS(l_l_v)");
    CHECK(formula_at(job, "H8") == "COUNTIF(l_l_v;1)");
    CHECK(formula_at(job, "K8") == "IF(COUNTIF(l_l_v;0)>0;0;IF(COUNTIF(l_l_v;\"open\")>0;\"open\";1))");
    CHECK(job.checks.empty());  // they are counted where they stand
}

}  // namespace undercroft::tests
