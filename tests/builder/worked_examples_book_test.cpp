// The file of worked examples, and the workbook made of it.
#include "sheets/builder/worked_examples_book.hpp"

#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Catch::Contains;

namespace {
const char* const text =
    "table pond | Depth and volume | m ; m3 | 0 ; 0 | 2.5 ; 40\n"
    "table drain | Drain | 1 | 2\n"
    "## Units\n"
    "UC.SUM({1;\"ft\"|1;\"in\"}; \"mm\") | 330.2 | 0.05 | published | A source, section 2\n"
    "UC.DIMENSION(\"kN/m3\") | L-2 M T-2 | exact | math | Another source\n"
    "## Water\n"
    "UC.LOOKUP(pond; 1.25; drain) | -20 | 1 % | from memory | A third source\n";
}

TEST_CASE("worked examples are read with their sections, tolerances and tables") {
    const WorkedExamples examples = read_worked_examples(text);
    REQUIRE(examples.rows.size() == 3);
    CHECK(examples.rows[0].section == "Units");
    CHECK(examples.rows[0].line == 4);
    CHECK(examples.rows[0].formula == "UC.SUM({1;\"ft\"|1;\"in\"}; \"mm\")");
    CHECK(examples.rows[0].number == 330.2);
    CHECK(examples.rows[0].tolerance == 0.05);
    CHECK(examples.rows[0].tag == "published");
    CHECK(examples.rows[0].source == "A source, section 2");
    CHECK_FALSE(examples.rows[1].number.has_value());
    CHECK(examples.rows[1].text == "L-2 M T-2");
    CHECK(examples.rows[1].tolerance == 0);
    CHECK(examples.rows[2].section == "Water");
    CHECK(examples.rows[2].tolerance == Approx(0.2));
    REQUIRE(examples.tables.size() == 2);
    CHECK(examples.tables[0].name == "pond");
    CHECK(examples.tables[0].title == "Depth and volume");
    REQUIRE(examples.tables[0].rows.size() == 3);
    CHECK(examples.tables[0].rows[2][1] == "40");
    CHECK(read_worked_examples("UC.A(1) | -2 | 1e-3 rel | common practice | S\n").rows[0].tolerance ==
          Approx(2e-3));
    CHECK(read_worked_examples("UC.A(1) | 2 | exact | math | S\n").rows[0].tolerance == 0);
}

TEST_CASE("a worked example agrees within its tolerance, and not beyond") {
    const WorkedExample example = read_worked_examples("UC.A(1) | 20 | 0.5 | math | S\n").rows[0];
    CHECK(example.agrees(20.5));
    CHECK(example.agrees(19.5));
    CHECK_FALSE(example.agrees(20.51));
    CHECK_FALSE(example.agrees(19.49));
    const WorkedExample exact = read_worked_examples("UC.A(1) | 20 | exact | math | S\n").rows[0];
    CHECK(exact.agrees(20));
    CHECK(exact.agrees(20 + 1e-13));  // a last digit
    CHECK_FALSE(exact.agrees(20 + 1e-12));
    CHECK_FALSE(read_worked_examples("UC.A(1) | text | exact | math | S\n").rows[0].agrees(0));
}

TEST_CASE("mistakes in the file are told with their line") {
    const auto mistake = [](const std::string& line) {
        try {
            (void)read_worked_examples("\n" + line + "\n");
        } catch (const TextMistake& error) {
            return std::string(error.what());
        }
        return std::string();
    };
    CHECK(mistake("UC.A(1) | 2 | exact | math") == "line 2: five fields parted by '|' are wanted");
    CHECK(mistake("UC.A(1) | 2 | exact | math | S | more") == "line 2: five fields parted by '|' are wanted");
    CHECK(mistake("UC.A(1) | 2 | about | math | S") == "line 2: 'about' is no tolerance");
    CHECK(mistake("UC.A(1) | 2 | -1 | math | S") == "line 2: '-1' is no tolerance");
    CHECK(mistake("UC.A(1) | two | 1 | math | S") == "line 2: '1' is no tolerance");
    CHECK(mistake("UC.A(1) | 2 | 1 mm | math | S") == "line 2: 'mm' is no kind of tolerance");
    CHECK(mistake("UC.A(1) | 2 | 0 | math | S").empty());
    CHECK(mistake("UC.A(1) | 2 | 1 | hearsay | S") == "line 2: 'hearsay' is no tag");
    CHECK(mistake("UC.A(1) | 2 | 1 | math |") == "line 2: a source is wanted");
    CHECK(mistake("table pond | Title") == "line 2: a table wants a name, a title and rows");
    CHECK(mistake("table pond | Title | 1 ; 2 | 3") == "line 2: row 2 has another number of cells");
    for (const char* tag : {"published", "from memory", "math", "common practice"})
        CHECK(mistake(std::string("UC.A(1) | 2 | 1 | ") + tag + " | S").empty());
}

TEST_CASE("each worked example is a row: published value, ours, difference, verdict, source") {
    const WorkbookGrid workbook = worked_examples_book(read_worked_examples(text));
    CHECK(workbook.name == "worked-examples");
    CHECK(workbook.paper == "a4");
    const SheetGrid& sheet = sheet_named(workbook, "Examples");
    CHECK(sheet.wide);
    CHECK(sheet.print_columns == 9);
    CHECK(sheet.head_rows == 4);
    CHECK(sheet.column_widths_cm.size() == 9);
    CHECK(cell_at(sheet, "A1").style == "Title");
    CHECK(text_at(sheet, "C4") == "Published");
    CHECK(cell_at(sheet, "C4").style == "HeadingRight");
    CHECK(cell_at(sheet, "F4").style == "HeadingRight");
    CHECK(cell_at(sheet, "B4").style == "Heading");
    CHECK(cell_at(sheet, "G4").style == "Heading");
    CHECK(text_at(sheet, "I4") == "Source");
    // a row of space, the section, its examples
    CHECK(text_at(sheet, "A6") == "Units");
    CHECK(cell_at(sheet, "I6").style == "Section");
    CHECK(cell_at(sheet, "A7").number == 1);
    CHECK(text_at(sheet, "B7") == "UC.SUM({1;\"ft\"|1;\"in\"}; \"mm\")");
    CHECK(cell_at(sheet, "C7").number == 330.2);
    CHECK(formula_at(sheet, "D7") == "UNDERCROFT.UC.SUM({1;\"ft\"|1;\"in\"}; \"mm\")");
    CHECK(formula_at(sheet, "E7") == "[.D7]-[.C7]");
    CHECK(cell_at(sheet, "F7").number == 0.05);
    CHECK(formula_at(sheet, "G7") == "IF(ABS([.E7])<=[.F7]*(1+1E-9)+1E-14*ABS([.C7]);1;0)");
    CHECK(cell_at(sheet, "G7").style == "Verdict");
    CHECK(text_at(sheet, "H7") == "published");
    CHECK(text_at(sheet, "I7") == "A source, section 2");
    CHECK(text_at(sheet, "C8") == "L-2 M T-2");
    CHECK(formula_at(sheet, "G8") == "IF(EXACT([.D8];[.C8]);1;0)");
    CHECK_FALSE(sheet.cells.contains(place_of("E8")));
    CHECK(text_at(sheet, "A10") == "Water");
    CHECK(cell_at(sheet, "A11").number == 3);
    CHECK(formula_at(sheet, "D11") ==
          "UNDERCROFT.UC.LOOKUP([$Tables.$A$5:.$B$7]; 1.25; [$Tables.$D$5:.$D$6])");
    CHECK(formula_at(sheet, "A3") ==
          "IF(ISERROR(SUM([.G5:.G12]));\"A row shows an error\";SUM([.G5:.G12])&\" of 3 rows agree\")");
    CHECK(sheet.rows == 12);
    CHECK(sheet.checks.size() == 3);
    CHECK(sheet.row_heights_cm.at(6) == Approx(0.55));

    const SheetGrid& tables = sheet_named(workbook, "Tables");
    CHECK(text_at(tables, "A3") == "pond");
    CHECK(text_at(tables, "A4") == "Depth and volume");
    CHECK(text_at(tables, "A5") == "m");
    CHECK(cell_at(tables, "B7").number == 40);
    CHECK(cell_at(tables, "B7").style == "TableNumber");
    CHECK(text_at(tables, "D3") == "drain");
    CHECK(cell_at(tables, "D6").number == 2);
    CHECK(tables.rows == 7);
    CHECK(tables.head_rows == 1);
    CHECK(tables.column_widths_cm.size() == 5);
    CHECK(tables.print_columns == 5);
}

TEST_CASE("a long formula or source makes its row higher") {
    const auto height = [](std::size_t formula, std::size_t source) {
        const std::string line = "UC.A(\"" + std::string(formula - 8, 'x') + "\") | 1 | exact | math | " +
                                 std::string(source, 's') + "\n";
        return worked_examples_book(read_worked_examples("## S\n" + line)).sheets[0].row_heights_cm.at(6);
    };
    // 9.1 cm of the formula's column hold 66.9 characters of 0.136 cm, 7.9 cm of the source's 58.1
    CHECK(height(66, 5) == Approx(0.55));
    CHECK(height(67, 5) == Approx(0.95));
    CHECK(height(20, 58) == Approx(0.55));
    CHECK(height(20, 59) == Approx(0.95));
}

}  // namespace undercroft::tests
