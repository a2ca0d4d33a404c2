// Sheets and lists of workbooks as text, whole.
#include <unistd.h>

#include <filesystem>

#include "sheets/builder/files.hpp"
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Words = std::vector<std::string>;

TEST_CASE("a sheet has a name, a title and its rows in their order") {
    const Sheet sheet = read_sheet(
        "# remark\nsheet Pit | What must be dug\nwide\nunprinted\nsection One\n\nwhen Flow\nremark "
        "Two\nsection "
        "Three\nalways\ncaution Four\n");
    CHECK(sheet.name == "Pit");
    CHECK(sheet.title == "What must be dug");
    CHECK(sheet.wide);
    CHECK(sheet.unprinted);
    REQUIRE(sheet.rows.size() == 4);
    CHECK(sheet.rows[0].line == 5);
    CHECK(sheet.rows[0].when.empty());
    CHECK(sheet.rows[1].line == 8);
    CHECK(sheet.rows[1].when == "Flow");
    CHECK(sheet.rows[2].when == "Flow");
    CHECK(sheet.rows[3].when.empty());
    const Sheet plain = read_sheet("sheet Pit | T\n");
    CHECK_FALSE(plain.wide);
    CHECK_FALSE(plain.unprinted);
    CHECK(plain.rows.empty());
    const Sheet part = read_sheet("sheet Pit | T\nremark One\nunprinted\nremark Two\n");
    CHECK_FALSE(part.unprinted);
    REQUIRE(part.rows.size() == 3);
    CHECK(part.rows[1].is<rows::Unprinted>());
}

TEST_CASE("a sheet without its name, or with two, is refused") {
    CHECK_THROWS_WITH(read_sheet(""), "line 1: wanted first: sheet NAME | TITLE");
    CHECK_THROWS_WITH(read_sheet("\nsection One\nsheet Pit | T\n"),
                      "line 2: wanted first: sheet NAME | TITLE");
    CHECK_THROWS_WITH(read_sheet("wide\n"), "line 1: wanted first: sheet NAME | TITLE");
    CHECK_THROWS_WITH(read_sheet("sheet Pit\n"), "line 1: wanted: sheet NAME | TITLE");
    CHECK_THROWS_WITH(read_sheet("sheet | T\n"), "line 1: wanted: sheet NAME | TITLE");
    CHECK_THROWS_WITH(read_sheet("sheet The pit | T\n"), "line 1: the name of a sheet is one word");
    CHECK_THROWS_WITH(read_sheet("sheet Pit | T\n\nsheet Bed | T\n"), "line 3: a file holds one sheet");
    CHECK(mistake_in("when") == "line 2: wanted: when SHEET");
}

TEST_CASE("the list of workbooks") {
    const auto workbooks =
        read_workbooks("# remark\nstorage | Storage of a bed | Job, Site, Storage\nall | All | Job\n");
    REQUIRE(workbooks.size() == 2);
    CHECK(workbooks[0].name == "storage");
    CHECK(workbooks[0].title == "Storage of a bed");
    CHECK(workbooks[0].sheets == Words{"Job", "Site", "Storage"});
    CHECK_THROWS_WITH(read_workbooks("\nstorage | Storage\n"), "line 2: wanted: NAME | TITLE | SHEET, SHEET");
    CHECK_THROWS_WITH(read_workbooks("a | b | c | d\n"), Catch::StartsWith("line 1: wanted"));
}

TEST_CASE("a folder of sheets is read in the order of its file names; a mistake names file and line") {
    namespace fs = std::filesystem;
    const fs::path folder = fs::temp_directory_path() / ("undercroft-sheets-" + std::to_string(::getpid()));
    fs::create_directories(folder);
    write_file(folder / "b.txt", "sheet Second | T\n");
    write_file(folder / "a.txt", "sheet First | T\n");
    write_file(folder / "README.md", "no sheet\n");
    write_file(folder / "workbooks.txt", "small | Small | First\n");
    const auto sheets = read_sheets(folder);
    REQUIRE(sheets.size() == 2);
    CHECK(sheets[0].name == "First");
    CHECK(sheets[1].name == "Second");
    CHECK(read_workbooks_of(folder).at(0).name == "small");
    CHECK(read_file(folder / "README.md") == "no sheet\n");
    write_file(folder / "b.txt", "sheet Second | T\nchapter\n");
    CHECK_THROWS_WITH(read_sheets(folder),
                      (folder / "b.txt").string() + ": line 2: 'chapter' is no kind of row");
    write_file(folder / "workbooks.txt", "small\n");
    CHECK_THROWS_WITH(read_workbooks_of(folder), Catch::Contains("workbooks.txt: line 1: wanted"));
    fs::remove_all(folder);
    CHECK_THROWS_WITH(read_file(folder / "a.txt"), "cannot read " + (folder / "a.txt").string());
    CHECK_THROWS_WITH(write_file(folder / "a.txt", "x"), "cannot write " + (folder / "a.txt").string());
}

}  // namespace undercroft::tests
