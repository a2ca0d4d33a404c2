// Where the printed pages of a sheet begin.
#include "sheets/builder/pages.hpp"

#include <numeric>

#include "sheets/builder/files.hpp"
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using pugi::xml_document;

namespace {

std::string lines(const std::string& line, int times) {
    std::string all;
    for (int i = 0; i < times; ++i) all += line + "\n";
    return all;
}

std::string results(const std::string& stem, int times) {
    std::string all;
    for (int i = 1; i <= times; ++i)
        all += "result " + stem + "_" + std::to_string(i) + " | R |  | m | \"1 m\" |\n";
    return all;
}

std::vector<int> begins(const std::string& text, System system = System::si) {
    return sheet_of(text, system).page_breaks;
}

}  // namespace

TEST_CASE("a sheet of one page is not parted, a longer one as seldom as can be") {
    CHECK(begins(lines("remark Short", 5)).empty());
    // 26.1 cm at a scale of 88 %: some seventy rows of 0.40 cm.
    CHECK(begins(results("a", 55)).empty());
    CHECK(begins(results("a", 70)).size() == 1);
    CHECK(begins(results("a", 150)).size() == 2);
    CHECK(begins("unprinted\n" + results("a", 150)).empty());
    CHECK(begins(results("a", 50) + "unprinted\n" + results("b", 50)).empty());
    CHECK(begins("wide\n" + results("a", 60)).size() == 1);
}

TEST_CASE("a page begins with a section where that costs no page") {
    // Forty rows fill two thirds; thirty more do not fit, and their section begins the second page.
    CHECK(begins(results("a", 40) + "section S\n" + results("b", 30)) == std::vector{first_row + 41});
    CHECK(begins("section R\n" + results("a", 39) + "section S\n" + results("b", 30)) ==
          std::vector{first_row + 42});
    // Where the last section alone would be a thin page, the one before it goes with it.
    const auto thin =
        begins(results("a", 48) + "section S\n" + results("b", 20) + "section T\n" + results("c", 4));
    REQUIRE(thin.size() == 1);
    CHECK(thin.front() == first_row + 49);
}

TEST_CASE("no title ends a page, no chart or short list is parted, a long list is") {
    const std::string chart = "chart c_c | C | t_t | x, y | X | Y\n";
    for (int above = 40; above < 62; ++above) {
        CAPTURE(above);
        const std::string first = results("a", above);
        const SheetGrid titled = sheet_of(first + "section S\nremark On it\n" + results("b", 30));
        for (const int row : titled.page_breaks) {
            CHECK(row != first_row + above + 2);
            CHECK(row != first_row + above + 3);
        }
        const SheetGrid drawn =
            sheet_of(first + "table t_t | T | 7 | x; y | UC.T(1; @)\n" + chart + results("b", 20));
        REQUIRE(drawn.charts.size() == 1);
        for (const int row : drawn.page_breaks)
            CHECK_FALSE((drawn.charts.front().row < row && row <= drawn.charts.front().end_row));
        const SheetGrid listed = sheet_of(first + "list l_l | L | x\n" + lines(": a", 8) + results("b", 20));
        for (const int row : listed.page_breaks)
            CHECK_FALSE((first_row + above < row && row < first_row + above + 11));
    }
    CHECK(begins("list l_l | L | x\n" + lines(": a", 100)).size() == 1);
}

TEST_CASE("a page has for cells what its style leaves") {
    for (const bool letter : {false, true})
        for (const bool wide : {false, true}) {
            CAPTURE(letter, wide);
            const xml_document document =
                parsed(workbook_of({"sheet Pit | P\n"}, letter ? System::us : System::si));
            const std::string layout =
                std::string("//style:page-layout[@style:name='Layout") + (wide ? "Wide']" : "Upright']");
            const auto size = [&](const std::string& path, const char* attribute) {
                return document.select_node((layout + path).c_str())
                    .node()
                    .attribute(attribute)
                    .as_double();  // cm
            };
            const std::string own = "/style:page-layout-properties";
            CHECK(printable(letter, wide).width_cm ==
                  Approx(size(own, "fo:page-width") - size(own, "fo:margin-left") -
                         size(own, "fo:margin-right")));
            double bands = 0;
            for (const std::string part : {"header", "footer"}) {
                const std::string band = "/style:" + part + "-style/style:header-footer-properties";
                bands += size(band, "fo:min-height") +
                         size(band, part == "header" ? "fo:margin-bottom" : "fo:margin-top");
            }
            CHECK(printable(letter, wide).height_cm ==
                  Approx(size(own, "fo:page-height") - size(own, "fo:margin-top") -
                         size(own, "fo:margin-bottom") - bands));
        }
}

TEST_CASE("what is printed of each page fits it, on either paper, upright and wide") {
    for (const System system : {System::si, System::us})
        for (const bool wide : {false, true}) {
            const SheetGrid grid = sheet_of((wide ? "wide\n" : "") + results("a", 300), system);
            const Printable page = printable(system == System::us, wide);
            const double width = std::accumulate(grid.column_widths_cm.begin(),
                                                 grid.column_widths_cm.begin() + grid.print_columns, 0.0);
            const double scale = page.width_cm / width;
            REQUIRE_FALSE(grid.page_breaks.empty());
            int from = 0;
            for (const int to : grid.page_breaks) {
                const double height = (to - from) * grid.row_cm * scale;  // of the head's rows as well
                CHECK(height < page.height_cm);
                if (from > 0) CHECK(height > 0.9 * page.height_cm - grid.head_rows * grid.row_cm);
                from = to - grid.head_rows;
            }
        }
}

TEST_CASE("the sequence stands on one page of either paper") {
    const std::filesystem::path folder = std::filesystem::path(PROJECT_FOLDER) / "sheets" / "text";
    const std::vector<Sheet> sheets = read_sheets(folder);
    int seen = 0;
    for (const WorkbookText& workbook : read_workbooks_of(folder))
        for (const System system : {System::si, System::us})
            for (const SheetGrid& sheet : compose(workbook, sheets, system).sheets)
                if (sheet.name == "Sequence") {
                    CAPTURE(sheet.name, system == System::us);
                    CHECK(sheet.page_breaks.empty());
                    ++seen;
                }
    CHECK(seen == 2);
}

}  // namespace undercroft::tests
