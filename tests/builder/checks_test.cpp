// Checks, the rows that gather them, and the head that counts what is open.
#include "sheets/builder/layout.hpp"
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Catch::Contains;

TEST_CASE("a comparison computes a verdict, and writes what it compared before its note") {
    const SheetGrid sheet = sheet_of(
        "input a_b | A | a | 1 m\ninput l_l | L | a_min | 1 m\ntext t_t | T | t | x\ncheck c_c | Wide | a_b "
        ">= l_l | "
        "12\" at least\ncheck d_d | Narrow | a_b <= l_l\ncheck e_e | Text | t_t >= l_l");
    CHECK(formula_at(sheet, "G8") == "UNDERCROFT.UC.ATLEAST(a_b;l_l)");
    CHECK(cell_at(sheet, "G8").style == "Verdict");
    CHECK(cell_at(sheet, "G8").columns == 2);
    CHECK(text_at(sheet, "F8") == "a ≥ a_min");
    CHECK(cell_at(sheet, "F8").style == "Symbol");
    CHECK(formula_at(sheet, "I8") ==
          "IFERROR(TEXT([.G5];\"0.###\")&\" \"&[.H5]&\" ≥ \"&TEXT([.G6];\"0.###\")&\" \"&[.H6]&\"; 12\"\" at "
          "least\";\"12\"\" at least\")");
    CHECK(cell_at(sheet, "I8").style == "Note");
    CHECK(cell_at(sheet, "I8").columns == 4);
    CHECK_FALSE(formula_at(sheet, "M8").empty());
    CHECK(formula_at(sheet, "G9") == "UNDERCROFT.UC.ATMOST(a_b;l_l)");
    CHECK(text_at(sheet, "F9") == "a ≤ a_min");
    CHECK(formula_at(sheet, "I9") ==
          "IFERROR(TEXT([.G5];\"0.###\")&\" \"&[.H5]&\" ≤ \"&TEXT([.G6];\"0.###\")&\" \"&[.H6];\"\")");
    CHECK(formula_at(sheet, "I10").starts_with("IFERROR(TEXT([.G7];\"0.###\")&\" ≥ \"&TEXT([.G6]"));
    CHECK(mistake_of({"sheet Pit | P\ninput a_b | A | a | 1 m\ncheck c_c | C | a_b >= no_key\n"}) ==
          "sheet Pit, line 3: 'no_key' is no key of this workbook");
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
    CHECK_FALSE(sheet.waits);
    CHECK(sheet_of("check c_c | C | = IF(1; 1; \"open\")").waits);
    CHECK_FALSE(sheet_of("check c_c | C | = IF(1; 1; \"opened\")").waits);
}

TEST_CASE("a check leaves room for the values that it compares") {
    const auto height = [](const std::string& check) {
        return sheet_of("input a_b | A | | 1 m\ninput l_l | L | | 1 m\n" + check).row_heights_cm.at(6);
    };
    // 4 columns hold 48 small characters; the values take 26 of them and "; ".
    CHECK(height("check c_c | C | a_b >= l_l | " + std::string(20, 'x')) == Approx(0.54));
    CHECK(height("check c_c | C | a_b >= l_l | " + std::string(21, 'x')) == Approx(0.98));
    CHECK(height("check c_c | C | = UC.X(a_b) | " + std::string(21, 'x')) == Approx(0.54));
    CHECK(height("check c_c | " + std::string(90, 'x') + " | a_b >= l_l") == Approx(3 * 0.44 + 0.1));
}

TEST_CASE("the summary counts each other sheet, the dashboard shows every check") {
    const WorkbookGrid workbook = workbook_of(
        {"sheet Job | The job\nsummary\ndashboard\n",
         "sheet Pit | The pit\ninput a_b | A | a | 1 m\ncheck c_c | Deep enough | a_b >= a_b | Note\n",
         "sheet Bed | The bed\ncheck d_d | Wide enough | = 1\ncheck e_e | Long enough | = 1\n"});
    const SheetGrid& job = workbook.sheets[0];
    CHECK(text_at(job, "A5") == "Jo1");
    CHECK(text_at(job, "B5") == "The pit");
    CHECK(cell_at(job, "B5").columns == 4);
    CHECK(formula_at(job, "G5") == "[$Pit.$L$3]");
    CHECK(cell_at(job, "G5").style == "Open");
    CHECK(cell_at(job, "G5").columns == 2);
    CHECK(text_at(job, "I5") == "failed and open checks, errors and wrong entries on the sheet Pit");
    CHECK(cell_at(job, "F5").style == "Symbol");
    CHECK(formula_at(job, "G6") == "[$Bed.$L$3]");
    CHECK(job.row_heights_cm.at(4) == Approx(2 * 0.44 + 0.1));  // its note takes two lines

    CHECK(text_at(job, "A7") == "Jo3");
    CHECK(text_at(job, "B7") == "Deep enough");
    CHECK(cell_at(job, "B7").columns == 4);
    CHECK(text_at(job, "F7") == "Pit");
    CHECK(formula_at(job, "G7") == "[$Pit.$G$6]");
    CHECK(cell_at(job, "G7").style == "Verdict");
    CHECK(cell_at(job, "G7").columns == 2);
    CHECK(formula_at(job, "I7") == "[$Pit.$I$6]");
    CHECK(cell_at(job, "I7").columns == 4);
    CHECK(formula_at(job, "M7") == "IF(ISERROR([.G7]);UNDERCROFT.UC.WHY([.G7]);\"\")");
    CHECK(job.row_heights_cm.contains(6));
    CHECK(text_at(job, "B8") == "Wide enough");
    CHECK(formula_at(job, "G9") == "[$Bed.$G$6]");
    CHECK(job.checks.empty());  // they are counted where they stand
}

TEST_CASE("the head counts errors, open checks and wrong entries, each in its column row by row") {
    const SheetGrid sheet = sheet_of(
        "input a_b | A | | 1 m\ninput f_f | F | | 2 1 >= 1\nchoice k_k | K | | a | a, b\ncheck c_c | C | a_b "
        ">= "
        "a_b\ncheck d_d | D | = f_f.value\n");
    CHECK(text_at(sheet, "A1") == "A pit");
    CHECK(cell_at(sheet, "A1").style == "Title");
    CHECK(formula_at(sheet, "N8") == "IF(ISERROR([.G8]);0;([.G8]<>1)*([.G8]<>\"not counted\"))");
    CHECK(formula_at(sheet, "N9") == "IF(ISERROR([.G9]);0;([.G9]<>1)*([.G9]<>\"not counted\"))");
    CHECK(formula_at(sheet, "O5") == "IF(ISERROR(SQRT([.G5]));1;0)");
    CHECK(formula_at(sheet, "P6") == "IF(ISERROR(SQRT([.G6]-1));1;0)");
    CHECK(formula_at(sheet, "Q7") == "IF(ISERROR(1/OR([.G7]=\"a\";[.G7]=\"b\"));1;0)");
    CHECK(formula_at(sheet, "M3") == "SUMPRODUCT(ISERROR([.B5:.L10])*1)");
    CHECK(formula_at(sheet, "N3") == "SUM([.N5:.N10])");
    CHECK(formula_at(sheet, "O3") == "SUM([.O5:.O10])");
    CHECK(formula_at(sheet, "P3") == "SUM([.P5:.P10])");
    CHECK(formula_at(sheet, "Q3") == "SUM([.Q5:.Q10])");
    CHECK(formula_at(sheet, "O2") == "[.O3]+[.P3]+[.Q3]");
    CHECK(formula_at(sheet, "L3") == "[.M3]+[.N3]+[.O2]");
    CHECK(cell_at(sheet, "L3").style == "OpenCount");
    CHECK(text_at(sheet, "K3") == "open");
    CHECK(formula_at(sheet, "N2") == "[.N3]&\" of 2 checks fail\"");
    CHECK(formula_at(sheet, "M2") ==
          "IF([.O2]>0;[.O2]&IF([.O2]=1;\" entry\";\" entries\")&\" cannot be right, marked in red\";"
          "IF([.M3]>0;[.M3]&IF([.M3]=1;\" cell shows\";\" cells show\")&\" an error: the reason stands to "
          "the right "
          "of the row\"&IF([.N3]>0;\"; \"&[.N2];\"\");IF([.N3]>0;[.N2];\"No check of 2 fails\")))");
    CHECK(
        formula_at(sheet, "A3") ==
        "IF(OR(ISERROR(UNDERCROFT.UC.VERSION());NOW()=0);\"The Undercroft add-in is not installed here: the "
        "figures on this sheet are not computed and must not be used\";[.M2])");
    CHECK(cell_at(sheet, "A3").style == "State");
    CHECK(text_at(sheet, "M4") == "Reason, where a cell shows an error");
    CHECK(text_at(sheet, "N4") == "Checks open");
    CHECK(text_at(sheet, "O4") == "Below 0");
    CHECK(text_at(sheet, "P4") == "Below least");
    CHECK(text_at(sheet, "Q4") == "Not listed");
}

TEST_CASE("a kind of count that a sheet has not is left out") {
    const SheetGrid none = sheet_of("remark R");
    CHECK(formula_at(none, "L3") == "[.M3]");
    CHECK(formula_at(none, "M2") ==
          "IF([.M3]>0;[.M3]&IF([.M3]=1;\" cell shows\";\" cells show\")&\" an error: the reason stands to "
          "the right "
          "of the row\";\"No cell shows an error\")");
    for (const char* address : {"N2", "N3", "N4", "O2", "O3", "P3", "Q3"}) {
        CAPTURE(address);
        CHECK_FALSE(none.cells.contains(place_of(address)));
    }
    const SheetGrid waits = sheet_of("check c_c | C | = IF(1; 1; \"open\")");
    CHECK(formula_at(waits, "N2") == "[.N3]&\" of 1 checks fail or are open\"");
    CHECK(formula_at(waits, "L3") == "[.M3]+[.N3]");
    CHECK_FALSE(waits.cells.contains(place_of("O2")));
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
    const std::pair<const char*, const char*> heads[] = {{"A4", "Ref"},    {"B4", "Description"},
                                                         {"F4", "Symbol"}, {"G4", "Value"},
                                                         {"H4", "Unit"},   {"I4", "Note or source"}};
    for (const auto& [address, text] : heads) CHECK(text_at(alone, address) == text);
    for (const char* address : {"A4", "C4", "H4", "L4"}) CHECK(cell_at(alone, address).style == "Heading");
    CHECK(cell_at(alone, "G4").style == "HeadingRight");
    CHECK(cell_at(alone, "M4").style == "ReasonHead");
}

}  // namespace undercroft::tests
