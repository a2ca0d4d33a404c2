// The grammar of tables, grids, lists, charts and pictures, and of their columns.
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Catch::Contains;
using Words = std::vector<std::string>;
using Format = Column::Format;

TEST_CASE("a table has a height, columns with or without a name, and a formula") {
    const Row row =
        row_of("table stage_table | Stage | 23 | depth, as depth; total | UC.T(x_y; @) // UC.U(@) | Note");
    const auto& table = std::get<rows::Table>(row.kind);
    CHECK(row.description == "Stage");
    CHECK(row.note == "Note");
    CHECK(row.symbol.empty());
    CHECK(table.height == 23);
    REQUIRE(table.columns.size() == 2);
    CHECK(table.columns[0].title == "depth");
    CHECK(table.columns[0].name == "depth");
    CHECK(table.columns[1].name.empty());
    CHECK(table.columns[1].span == 1);
    CHECK(table.formula.us == "UC.U(@)");
    CHECK(columns_of(row) == &table.columns);

    for (const char* height : {"0", "-3", "2.5", "many", "", "10001"}) {
        CAPTURE(height);
        CHECK_THAT(mistake_in(std::string("table a_b | T | ") + height + " | x | UC.T(@)"),
                   Contains("is no height of a table"));
    }
    CHECK(mistake_in("table a_b | T | 1 | x | UC.T(@)").empty());
    CHECK(mistake_in("table a_b | T | 10000 | x | UC.T(@)").empty());
    CHECK(mistake_in("table a_b | T | 2 | x |") == "line 2: a formula is wanted");
    CHECK(mistake_in("table a_b | T | 2 | x, unit m | UC.T(@)") == "line 2: 'unit' is not as or format plain");
    CHECK(mistake_in("table a_b | T | 2 | x, span 2 | UC.T(@)") == "line 2: 'span' is not as or format plain");
    CHECK(mistake_in("table a_b | T | 2 | x, format share | UC.T(@)") == "line 2: 'format' is not as or format plain");
    CHECK(mistake_in("table a_b | T | 2 | x := UC.X(@) | UC.T(@)") ==
          "line 2: only the columns of a list are computed");
    CHECK_THAT(mistake_in("table a_b | T | 2 | x"), Contains("wanted: table KEY | TITLE | ROWS"));
}

TEST_CASE("a grid or a list of two rows or more grows to as many as are said") {
    const std::string list = "list l_l | L | What; How much, unit m\n: A ; 3 m\n: B ; -\n";
    const Sheet sheet = read_sheet("sheet Pit | A pit\n" + list + "grows 60\n");
    CHECK(std::get<rows::List>(sheet.rows.at(0).kind).most == 60);
    CHECK(std::get<rows::List>(read_sheet("sheet Pit | A pit\n" + list).rows.at(0).kind).most == 0);
    CHECK(mistake_in("grid d_d | Days | Rain, unit mm\n: 1\n: 2\ngrows 2").empty());
    for (const char* number : {"", "1", "2.5", "many", "1001"}) {
        CAPTURE(number);
        CHECK(mistake_in(list + "grows " + number) ==
              "line 5: '" + std::string(number) + "' is no number of rows to which two or more grow");
    }
    CHECK_THAT(mistake_in("list l_l | L | What\n: A\ngrows 9"), Contains("to which two or more grow"));
    CHECK(mistake_in("grows 9") == "line 2: what grows must stand under a grid or a list");
    CHECK(mistake_in("section S\ngrows 9") == "line 3: what grows must stand under a grid or a list");
}

TEST_CASE("blank rows to paste into stand under a grid, as many as are asked for") {
    const std::string head = "grid d_d | Days | Rain, unit mm; Word\n";
    const Sheet sheet = read_sheet("sheet Pit | A pit\n" + head + ": 3 ; -\nblank 36600\n");
    const auto& grid = std::get<rows::Grid>(sheet.rows.at(0).kind);
    REQUIRE(grid.items.size() == 36601);
    CHECK(grid.items[0].cells[0].si == "3");
    for (const std::size_t blank : {1U, 36600U})
        for (const DualText& cell : grid.items[blank].cells) CHECK((cell.si == "-" && cell.us == "-"));
    CHECK(grid.items[36600].cells.size() == 2);
    for (const char* number : {"", "0", "-1", "2.5", "many", "100001"}) {
        CAPTURE(number);
        CHECK(mistake_in(head + "blank " + number) ==
              "line 3: '" + std::string(number) + "' is no number of blank rows");
    }
    CHECK(mistake_in(head + "blank 100000").empty());
    CHECK(mistake_in("blank 3") == "line 2: blank rows must stand under a grid");
    CHECK(mistake_in("list l_l | L | What; How much\nblank 3") ==
          "line 3: blank rows must stand under a grid");
}

TEST_CASE("a grid has columns with units, and rows that are typed in") {
    const Sheet sheet = read_sheet(
        "sheet Pit | A pit\ngrid rain_table | Rain | Duration, unit min, as t; Intensity, unit mm/h // in/h; "
        "Word | "
        "Note\n: 5 ; 120 // 4.8 ; -\n: 10 ; 96 ; dry\n");
    REQUIRE(sheet.rows.size() == 1);
    const auto& grid = std::get<rows::Grid>(sheet.rows[0].kind);
    CHECK(sheet.rows[0].note == "Note");
    REQUIRE(grid.columns.size() == 3);
    CHECK(grid.columns[0].name == "t");
    CHECK(grid.columns[1].unit.us == "in/h");
    CHECK(grid.columns[1].is_pair(System::us));
    CHECK_FALSE(grid.columns[2].is_pair(System::si));
    REQUIRE(grid.items.size() == 2);
    CHECK(grid.items[0].line == 3);
    CHECK(grid.items[1].line == 4);
    CHECK(grid.items[0].cells[1].us == "4.8");
    CHECK(grid.items[1].cells[2].si == "dry");

    const std::string grid_line = "grid rain_table | Rain | Duration, unit min; Intensity\n";
    CHECK(mistake_in(grid_line + ": 5") == "line 3: 2 fields parted by ';' are wanted");
    CHECK(mistake_in(grid_line + ": 5 ; 6 ; 7") == "line 3: 2 fields parted by ';' are wanted");
    CHECK(mistake_in("grid a_b | T | x, span 2") == "line 2: 'span' is not unit, usual or as");
    CHECK(mistake_in("grid a_b | T | x, pick a/b") == "line 2: 'pick' is not unit, usual or as");
    CHECK_THAT(mistake_in("grid a_b | T"), Contains("wanted: grid KEY"));
    CHECK(mistake_in("section S\n: 5") == "line 3: an item must stand under a grid or a list");
    CHECK(mistake_in(": 5") == "line 2: an item must stand under a grid or a list");
}

TEST_CASE("a list has columns that are typed in or computed, with their looks") {
    const Sheet sheet = read_sheet(
        "sheet Pit | A pit\n"
        "list order_list | Orders | Item, span 3; Net, span 2, unit m3 // yd3, as net; Waste, format share, "
        "as "
        "waste; State, pick open/done/not used; Cost, unit AUD, as cost := UC.COST(@net; @) | Note\n"
        ": Stone ; =bed_volume ; 5 % ; open\n");
    const auto& list = std::get<rows::List>(sheet.rows[0].kind);
    CHECK(sheet.rows[0].note == "Note");
    REQUIRE(list.columns.size() == 5);
    CHECK(list.columns[0].span == 3);
    CHECK(list.columns[0].format == Format::standard);
    CHECK(list.columns[1].unit.us == "yd3");
    CHECK(list.columns[1].name == "net");
    CHECK(list.columns[2].format == Format::share);
    CHECK(list.columns[3].options == Words{"open", "done", "not used"});
    CHECK(list.columns[4].formula == "UC.COST(@net; @)");
    CHECK(list.columns[4].title == "Cost");
    CHECK_FALSE(list.columns[4].is_typed());
    CHECK(list.columns[0].is_typed());
    CHECK(typed_columns(list.columns) == 4);
    CHECK(width_of(list.columns) == 8);
    REQUIRE(list.items.size() == 1);
    CHECK(list.items[0].cells.size() == 4);

    const std::pair<const char*, Format> formats[] = {
        {"entry", Format::entry}, {"number", Format::number},   {"share", Format::share},
        {"text", Format::text},   {"verdict", Format::verdict}, {"shown", Format::shown},
        {"plain", Format::plain}};
    for (const auto& [word, format] : formats) {
        CAPTURE(word);
        CHECK(kind_of<rows::List>(std::string("list a_b | T | x, format ") + word).columns[0].format ==
              format);
    }
    CHECK_THAT(mistake_in("list a_b | T | x, format bold"), Contains("line 2: 'bold' is no format: entry"));
    for (const char* span : {"0", "13", "2.5", "wide", "2 m"}) {
        CAPTURE(span);
        CHECK_THAT(mistake_in(std::string("list a_b | T | x, span ") + span), Contains("is no span"));
    }
    CHECK(kind_of<rows::List>("list a_b | T | x, span 12").columns[0].span == 12);
    CHECK(kind_of<rows::List>("list a_b | T | x, span 1").columns[0].span == 1);
    CHECK(mistake_in("list a_b | T | x, wide 2") ==
          "line 2: 'wide' is not span, unit, usual, as, format or pick");
    CHECK(mistake_in("list a_b | T | x, span") == "line 2: nothing stands behind 'span'");
    CHECK(mistake_in("list a_b | T | x :=") == "line 2: no formula stands behind ':='");
    CHECK_THAT(mistake_in("list a_b"), Contains("wanted: list KEY"));
}

TEST_CASE("the wording at the left of a list is not part of what its key stands for") {
    const auto words = [](const char* columns) {
        return columns_of_words(kind_of<rows::List>(std::string("list a_b | T | ") + columns).columns);
    };
    CHECK(words("Item, span 3; More; Net, unit m, span 2") == 4);
    CHECK(words("Net, unit m; Item") == 0);
    CHECK(words("Item; State, pick a/b") == 1);
    CHECK(words("Item; Count, format number") == 1);
    CHECK(words("Item; Sum := UC.X(1)") == 1);
    CHECK(words("Item, span 3; More") == 0);  // nothing but wording
}

TEST_CASE("a chart draws columns of a table, below it or beside it") {
    const Row row = row_of(
        "chart rain_chart | Rain | rain_table | log Duration, log Intensity, right Depth, log right Level | "
        "t, min "
        "// t, minutes | i | d");
    const auto& chart = std::get<rows::Chart>(row.kind);
    CHECK(row.key == "rain_chart");
    CHECK(row.description == "Rain");
    CHECK(chart.table == "rain_table");
    CHECK(chart.x.column == "Duration");
    CHECK(chart.x.logarithmic);
    REQUIRE(chart.curves.size() == 3);
    CHECK(chart.curves[0].column == "Intensity");
    CHECK(chart.curves[0].logarithmic);
    CHECK_FALSE(chart.curves[0].on_right);
    CHECK(chart.curves[1].column == "Depth");
    CHECK(chart.curves[1].on_right);
    CHECK_FALSE(chart.curves[1].logarithmic);
    CHECK(chart.curves[2].column == "Level");
    CHECK(chart.curves[2].on_right);
    CHECK(chart.x_title.us == "t, minutes");
    CHECK(chart.y_title.si == "i");
    CHECK(chart.right_title.si == "d");
    CHECK_FALSE(chart.beside);
    CHECK(row.note.empty());

    const auto beside = kind_of<rows::Chart>("beside rain_chart | Rain | rain_table | x, y | X | Y");
    CHECK(beside.beside);
    CHECK(beside.right_title.si.empty());
    CHECK(mistake_in("chart a_b | T | t_t | x | X | Y") ==
          "line 2: a chart needs an x column and a y column");
    CHECK_THAT(mistake_in("chart a_b | T | t_t | x, y | X"), Contains("wanted: chart KEY"));
    CHECK_THAT(mistake_in("beside a_b | T | t_t | x, y | X"), Contains("wanted: beside KEY"));
}

TEST_CASE("a picture has the edges of its paper, and outlines with their looks") {
    const auto picture = kind_of<rows::Picture>(
        "picture plan_picture | Plan | -88 88.5 -42 43 | pit draw_pit, sheet draw_bed");
    CHECK(picture.paper.x_from == -88);
    CHECK(picture.paper.x_to == 88.5);
    CHECK(picture.paper.y_from == -42);
    CHECK(picture.paper.y_to == 43);
    REQUIRE(picture.outlines.size() == 2);
    CHECK(picture.outlines[1].look == "sheet");
    CHECK(picture.outlines[1].table == "draw_bed");
    for (const char* edges :
         {"1 2 3", "1 2 3 4 5", "2 1 3 4", "1 2 4 3", "1 1 3 4", "1 2 3 3", "x 1 2 3 4", "1 2 3 four", ""}) {
        CAPTURE(edges);
        CHECK_THAT(mistake_in(std::string("picture a_b | T | ") + edges + " | pit t_t"),
                   Contains("are no four edges of a paper"));
    }
    CHECK(mistake_in("picture a_b | T | 0 1 0 1 | pit") == "line 2: wanted: LOOK TABLE, not 'pit'");
    CHECK_THAT(mistake_in("picture a_b | T | 0 1 0 1"), Contains("wanted: picture KEY"));
    CHECK_THAT(mistake_in("picture a_b | T | 0 1 0 1 | pit t_t | more"), Contains("wanted: picture KEY"));
}

}  // namespace undercroft::tests
