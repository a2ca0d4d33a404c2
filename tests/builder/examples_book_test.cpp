// The small sheets to copy from, as text and as cells.
#include "sheets/builder/examples_book.hpp"

#include <algorithm>

#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Catch::Contains;

namespace {

const char* const small_sheet =
    "sheet Small | A small one | It shows little.\n"
    "head What | Value | Unit\n"
    "row Depth | 305 // 12 | mm // in\n"
    "row Share | 38%\n"
    "row Volume | =UC.PIT.VOLUME(\"30 m\"; B5:C5; $B$5; C7) | m3\n"
    "blank\n"
    "row Enough | verdict=UC.ATLEAST(B7:C7; \"1 m3\")\n"
    "row Table | {=UC.STAGE.STORAGE(B5)} 3x2\n"
    "fill 2\n"
    "chart Held | B10:B12 | C10:C12 | Depth | Held\n"
    "note Copy it.\n";

SheetGrid made(System system = System::si) {
    const WorkbookGrid book = examples_book({read_example_sheet(small_sheet)}, system);
    REQUIRE(book.sheets.size() == 2);
    return book.sheets.back();
}

const SheetCell& at(const SheetGrid& sheet, int row, int column) {
    CAPTURE(row, column);
    REQUIRE(sheet.cells.count({row - 1, column}) == 1);
    return sheet.cells.at({row - 1, column});
}

}  // namespace

TEST_CASE("a formula as typed becomes the one that files hold") {
    CHECK(stored_typed_formula("UC.CONVERT(B5:C5; D$4)") == "UNDERCROFT.UC.CONVERT([.B5:.C5]; [.D$4])");
    CHECK(stored_typed_formula("SUM($A$1:$B$22)*2") == "SUM([.$A$1:.$B$22])*2");
    CHECK(stored_typed_formula("UC.SUM(\"B5\"; LOG10(A1))") == "UNDERCROFT.UC.SUM(\"B5\"; LOG10([.A1]))");
    CHECK(stored_typed_formula("TRUE()+E1") == "TRUE()+[.E1]");
}

TEST_CASE("labels stand on the left, typed values and results with their units, the formula beside them") {
    const SheetGrid sheet = made();
    CHECK(sheet.name == "Small");
    CHECK_FALSE(sheet.protect);
    CHECK(at(sheet, 1, 0).text == "A small one");
    CHECK(at(sheet, 2, 0).text == "It shows little.");
    const char* heads[] = {"What", "Value", "Unit", "", "", "", "Formula"};
    for (int c = 0; c <= 6; ++c) CHECK(at(sheet, 4, c).text == heads[c]);
    CHECK(at(sheet, 4, 6).style == "Heading");
    CHECK(at(sheet, 4, 5).style == "HeadingRight");
    CHECK(sheet.row_heights_cm.at(8) == Approx(0.5));              // one line of formula
    CHECK(sheet.row_heights_cm.at(9) == Approx(2 * 0.36 + 0.12));  // it tells how a table is entered too
    CHECK(at(sheet, 5, 0).style == "Description");
    CHECK(at(sheet, 5, 1).number == 305);
    CHECK(at(sheet, 5, 1).style == "Entry");
    CHECK(at(sheet, 5, 2).style == "UnitEntry");
    CHECK(at(sheet, 6, 1).number == Approx(0.38));
    CHECK(at(sheet, 6, 1).style == "ShareEntry");
    CHECK(at(sheet, 7, 1).text == "of:=UNDERCROFT.UC.PITVOLUME(\"30 m\"; [.B5:.C5]; [.$B$5]; [.C7])");
    CHECK(at(sheet, 7, 2).style == "UnitResult");
    CHECK(at(sheet, 7, 6).text == "=UC.PIT.VOLUME(\"30 m\"; B5:C5; $B$5; C7)");
    CHECK(at(sheet, 9, 1).style == "Verdict");
    CHECK(sheet.checks == std::vector<std::pair<int, int>>{{8, 1}});
    CHECK(at(sheet, 10, 1).matrix_rows == 3);
    CHECK(at(sheet, 10, 1).matrix_columns == 2);
    CHECK_THAT(at(sheet, 10, 6).text, Contains("{=UC.STAGE.STORAGE(B5)}") && Contains("Ctrl+Shift+Enter"));
    CHECK(at(sheet, 12, 2).style == "TableNumber");
    const auto note = std::find_if(sheet.cells.begin(), sheet.cells.end(),
                                   [](const auto& cell) { return cell.second.text == "Copy it."; });
    REQUIRE(note != sheet.cells.end());
    CHECK(note->first.second == 0);
    CHECK(note->second.columns == 6);  // up to the formulas
    REQUIRE(sheet.charts.size() == 1);
    CHECK(sheet.charts.front().series.front().x == "Small.B10:Small.B12");
    CHECK(made(System::us).cells.at({4, 1}).number == 12);
    CHECK(made(System::us).cells.at({4, 2}).text == "in");
}

TEST_CASE("the list of the examples leads to each") {
    const WorkbookGrid book = examples_book({read_example_sheet(small_sheet)}, System::us);
    CHECK(book.name == "examples-us");
    CHECK(book.paper == "letter");
    CHECK(book.sheets.front().cells.at({4, 0}).text == "of:=HYPERLINK(\"#Small\";\"Small\")");
    CHECK_THAT(flat_document(book), !Contains("table:protected"));
}

TEST_CASE("a line of an example that cannot be read is told with its number") {
    const auto mistake = [](const std::string& lines) {
        try {
            (void)examples_book({read_example_sheet("sheet S | T | U\nhead A\n" + lines + "\n")}, System::si);
        } catch (const std::exception& error) {
            return std::string(error.what());
        }
        return std::string();
    };
    CHECK_THAT(mistake("rwo A | 1"), Contains("line 3") && Contains("'rwo' is no line of an example"));
    CHECK_THAT(mistake("fill none"), Contains("fill ROWS"));
    CHECK_THAT(mistake("row T | {=UC.X(B5)} 3"), Contains("line 3") && Contains("ROWSxCOLUMNS"));
    CHECK_THAT(mistake("row T | odd=UC.X(B5)"), Contains("'odd' is no look of a formula"));
    CHECK_THAT(mistake("row A | 1 | 2 | 3 | 4 | 5 | 6"), Contains("more cells than columns"));
    CHECK_THAT(mistake("chart Held | B1"), Contains("wanted: chart"));
    CHECK_THROWS_WITH(read_example_sheet("row A\n"), Contains("wanted first: sheet"));
}

}  // namespace undercroft::tests
