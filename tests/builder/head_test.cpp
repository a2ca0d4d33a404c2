// The head of a sheet, which counts what is open.
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Catch::Contains;

TEST_CASE("the head counts each kind in its column, and lists the rows") {
    const SheetGrid sheet = sheet_of(
        "input a_b | A | | 1 m\nchoice k_k | K | | a | a, b\ncheck c_c | C | a_b >= a_b\ncheck d_d | D | = "
        "a_b.value\n");
    CHECK(text_at(sheet, "A1") == "A pit");
    CHECK(cell_at(sheet, "A1").style == "Title");
    CHECK(helper_formula(sheet, 7, Helper::fails) == "IF(ISERROR([.G7]);0;([.G7]=0)*1)");
    CHECK(helper_formula(sheet, 8, Helper::open) == "IF(ISERROR([.G8]);0;(LEFT([.G8];4)=\"open\")*1)");
    for (const Helper which : {Helper::fails, Helper::open, Helper::to_give, Helper::assumed}) {
        const std::string column = helper(5, which).substr(0, helper(5, which).size() - 1);
        CHECK(helper_formula(sheet, 3, which) == "SUM([." + column + "4:." + column + "9])");
        CHECK_THAT(helper_formula(sheet, 2, which),
                   Contains("COM.MICROSOFT.TEXTJOIN(\", \";1;IF([." + column + "4:." + column +
                            "9]=1;[.A4:.A9];\"\"))"));
        CHECK(cell_at(sheet, helper(2, which)).matrix_rows == 1);
    }
    CHECK(formula_at(sheet, "N3") == "SUMPRODUCT(ISERROR([.B4:.L9])*1)");
    CHECK_THAT(formula_at(sheet, "N1"), Contains("ISERROR(SEARCH(\"rests on\";[.N4:.N9]))"));
    CHECK_THAT(formula_at(sheet, "L3"), Contains("[.N1]+" + helper_cell(3, Helper::fails)));
    CHECK_THAT(formula_at(sheet, "L3"), !Contains(helper_cell(3, Helper::unusual)));  // odd, yet not open
    CHECK(cell_at(sheet, "L3").style == "OpenCount");
    CHECK(text_at(sheet, "K3") == "open here");
    const std::string words = helper_formula(sheet, 3, Helper::state);
    CHECK_THAT(helper_formula(sheet, 1, Helper::fails), Contains("&\" of 2 checks fail\""));
    CHECK_THAT(helper_formula(sheet, 1, Helper::to_give),
               Contains("\"to give: \"&" + helper_cell(3, Helper::to_give)));
    CHECK_THAT(words, Contains("IF([.O3:.U3]>0;[.O1:.U1];\"\")"));
    CHECK_THAT(helper_formula(sheet, 1, Helper::state), Contains("IF([.O3:.U3]>0;[.O2:.U2];\"\")"));
    for (const int row : {1, 3}) CHECK(cell_at(sheet, helper(row, Helper::state)).matrix_rows == 1);
    CHECK_THAT(words, Contains("of which begin here: \"&[.N1]"));
    // By the counts: a text that is empty is read as 0 from a file.
    CHECK(formula_at(sheet, "N2") == "IF(SUM([.N3:.U3])=0;\"No check of 2 fails, nothing is open\";" +
                                         helper_cell(3, Helper::state) + ")");
    CHECK(
        formula_at(sheet, "A3") ==
        "IF(OR(ISERROR(UNDERCROFT.UC.VERSION());NOW()=0);\"The Undercroft add-in is not installed here: the "
        "figures on this sheet are not computed and must not be used\";[.N2])");
    CHECK(cell_at(sheet, "A3").style == "State");
    CHECK(text_at(sheet, "N4") == "Reason; blank where no cell shows an error");
    CHECK(text_at(sheet, helper(4, Helper::fails)) == "Fails");
    CHECK(text_at(sheet, helper(4, Helper::usual_most)) == "Usual to");
}

TEST_CASE("a kind that a sheet has not is counted 0") {
    const SheetGrid none = sheet_of("remark R");
    CHECK_THAT(helper_formula(none, 3, Helper::fails), Catch::StartsWith("SUM("));
    CHECK_THAT(formula_at(none, "N2"), Contains("\"Nothing is open\""));
}

TEST_CASE("rows at the end that wait for a paste are not counted in") {
    const std::string grid = "input a_b | A | | 1 m\ngrid d_d | Days | Rain, unit mm, as r\n: 3\n: 0\n";
    const std::string column = helper(5, Helper::to_give).substr(0, helper(5, Helper::to_give).size() - 1);
    const auto counted = [&](const std::string& text) {
        return helper_formula(sheet_of(text), 3, Helper::to_give);
    };
    CHECK(counted(grid + "blank 36600\n") == "SUM([." + column + "4:." + column + "11])");
    CHECK(counted(grid) == "SUM([." + column + "4:." + column + "12])");
    CHECK(counted(grid + "blank 3\ninput b_b | B | | 1 m\n") == "SUM([." + column + "4:." + column + "16])");
}

TEST_CASE("the constants beside the page are hidden, the formulas are not") {
    const SheetGrid sheet = sheet_of("input a_b | A | | 1 m | usual 0.5..2 m | Note");
    REQUIRE(sheet.hidden_from > 0);
    for (const auto& [at, cell] : sheet.cells)
        if (at.second >= sheet.hidden_from) CHECK(cell.type != Type::formula);
    CHECK(sheet.hidden_from == place_of(helper(5, Helper::kept_number)).second);
}

TEST_CASE("the head names the job and the columns") {
    const WorkbookGrid workbook =
        workbook_of({"sheet Job | The job\ntext job_name | N | | n\ntext job_number | N | | n\ntext "
                     "job_revision | N | | n\n",
                     "sheet Pit | The pit\nremark R\n"});
    CHECK(formula_at(workbook.sheets[1], "A2") ==
          "[$Job.$G$5]&\"   No. \"&[$Job.$G$6]&\"   revision \"&[$Job.$G$7]");
    CHECK(cell_at(workbook.sheets[1], "A2").style == "JobLine");
    const SheetGrid alone = sheet_of("remark R");
    CHECK_FALSE(alone.cells.contains(place_of("A2")));
    const std::pair<const char*, const char*> heads[] = {
        {"A4", "Ref"},  {"B4", "Description"},    {"F4", "Symbol"}, {"G4", "Value"},
        {"H4", "Unit"}, {"I4", "Note or source"}, {"M4", "ok"}};
    for (const auto& [address, text] : heads) CHECK(text_at(alone, address) == text);
    for (const char* address : {"A4", "C4", "H4", "L4", "M4"})
        CHECK(cell_at(alone, address).style == "Heading");
    CHECK(cell_at(alone, "G4").style == "HeadingRight");
    CHECK(cell_at(alone, "N4").style == "ReasonHead");
}

}  // namespace undercroft::tests
