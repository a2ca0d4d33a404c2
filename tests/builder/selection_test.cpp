// Which rows stand in a workbook, and which of them link to another sheet.
#include "sheets/builder/selection.hpp"

#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Words = std::vector<std::string>;

namespace {

Selection selection_of(const std::vector<std::string>& texts, System system = System::si) {
    std::vector<Sheet> sheets;
    WorkbookText workbook{"small", "Small", {}};
    for (const std::string& text : texts) {
        sheets.push_back(read_sheet(text));
        workbook.sheets.push_back(sheets.back().name);
    }
    return {workbook, sheets, system};
}

/// What stands on a sheet: keys, and of rows without one their text.
Words rows_on(const Selection& selection, std::size_t sheet) {
    Words found;
    for (const Row& row : selection.sheets().at(sheet).rows)
        found.push_back(row.key.empty() ? row.description : row.key);
    return found;
}

}  // namespace

TEST_CASE("rows under `when` stand only where the workbook has that sheet") {
    const std::string job = "sheet Job | J\nwhen Flow\nremark flows\nalways\nremark always\n";
    CHECK(rows_on(selection_of({job}), 0) == Words{"always"});
    CHECK(rows_on(selection_of({job, "sheet Flow | F\n"}), 0) == Words{"flows", "always"});
}

TEST_CASE("of Site only the rows stand that others use, with what these use themselves") {
    const std::string site =
        "sheet Site | S\n"
        "section Ground\n"
        "remark Levels\n"
        "input ground_level | G | | 1 m\n"
        "input never_used | N | | 1 m\n"
        "section Empty\n"
        "remark Nothing below\n"
        "input also_unused | A | | 1 m\n"
        "section Derived\n"
        "result mean_level | M | | m | UC.TOTAL(deep_level; @)\n"
        "result deep_level | D | | m | UC.TOTAL(ground_level; @)\n"
        "check both_there | C | mean_level >= ground_level\n"
        "check one_there | C | mean_level >= never_used\n";
    const std::string pit = "sheet Pit | P\nresult pit_depth | P | | m | UC.TOTAL(mean_level; @)\n";
    CHECK(rows_on(selection_of({site, pit}), 0) ==
          Words{"Ground", "Levels", "ground_level", "Derived", "mean_level", "deep_level", "both_there"});
    CHECK(rows_on(selection_of({site}), 0).empty());
    CHECK(rows_on(selection_of({"sheet Place | S\ninput never_used | N | | 1 m\n"}), 0) ==
          Words{"never_used"});
}

TEST_CASE("a list of Site stands where another sheet uses one of its columns") {
    const std::string site =
        "sheet Site | S\n"
        "list site_layer | L | Layer, format entry; Thickness, span 2, unit m, as height\n: Stone ; 1 m\n"
        "list site_patch | P | Patch, format entry; Load, span 2, unit kN, as load\n: Plate ; 1 kN\n";
    const std::string pit = "sheet Pit | P\nresult pit_depth | P | | m | UC.SUM(site_layer_height; @)\n";
    CHECK(rows_on(selection_of({site, pit}), 0) == Words{"site_layer"});
}

TEST_CASE("each kind of row uses the keys that it is computed from") {
    const std::string site = "sheet Site | S\ninput used_key | G | | 1 m\n";
    const auto uses = [&](const std::string& line, System system = System::si) {
        const std::string table = "table some_table | T | 2 | x; y | UC.T(1; @)\n";
        return !rows_on(selection_of({site, "sheet Pit | P\n" + table + line + "\n"}, system), 0).empty();
    };
    CHECK(uses("result a_b | R | | m | UC.A(used_key; @)"));
    CHECK(uses("words a_b | W | | UC.A(used_key.value)"));
    CHECK(uses("check a_b | C | used_key >= some_table"));
    CHECK(uses("check a_b | C | some_table <= used_key"));
    CHECK(uses("check a_b | C | = UC.A(used_key)"));
    CHECK(uses("given used_key | G | | 1 m"));
    CHECK(uses("table a_b | T | 2 | x | UC.A(used_key; @)"));
    CHECK(uses("list a_b | L | x := UC.A(used_key)\n:"));
    CHECK(uses("list a_b | L | x, unit m\n: =used_key"));
    CHECK_FALSE(uses("list a_b | L | x\n: used_key"));
    CHECK_FALSE(uses("text a_b | T | | used_key"));
    CHECK_FALSE(uses("remark used_key"));
    CHECK(uses("result a_b | R | | m | UC.A(1; @) // UC.A(used_key; @)", System::us));
    CHECK_FALSE(uses("result a_b | R | | m | UC.A(1; @) // UC.A(used_key; @)", System::si));

    const std::string with_table = "sheet Site | S\ntable used_key | T | 2 | x; y | UC.T(1; @)\n";
    for (const char* row :
         {"chart c_c | C | used_key | x, y | X | Y", "picture p_p | P | 0 9 0 9 | pit used_key"}) {
        CAPTURE(row);
        CHECK(rows_on(selection_of({with_table, std::string("sheet Pit | P\n") + row + "\n"}), 0) ==
              Words{"used_key"});
    }
}

TEST_CASE("a given row links to what another sheet computes, else the first of them is the input") {
    const std::string bed = "sheet Bed | B\nresult bed_length | L | | m | UC.A(1; @)\n";
    const std::string pit = "sheet Pit | P\ngiven bed_length | L | | 1 m\ngiven bed_width | W | | 1 m\n";
    const std::string takeoff =
        "sheet Takeoff | T\ngiven bed_length | L | | 1 m\ngiven bed_width | W | | 1 m\n";
    const Selection whole = selection_of({bed, pit, takeoff});
    const Sheet& in_pit = whole.sheets()[1];
    const Sheet& in_takeoff = whole.sheets()[2];
    CHECK(whole.is_link(in_pit, in_pit.rows[0]));
    CHECK_FALSE(whole.defines(in_pit, in_pit.rows[0]));
    CHECK_FALSE(whole.is_link(in_pit, in_pit.rows[1]));
    CHECK(whole.defines(in_pit, in_pit.rows[1]));
    CHECK(whole.is_link(in_takeoff, in_takeoff.rows[1]));
    CHECK_FALSE(whole.defines(in_takeoff, in_takeoff.rows[1]));
    CHECK_FALSE(whole.is_link(whole.sheets()[0], whole.sheets()[0].rows[0]));
    CHECK(whole.defines(whole.sheets()[0], whole.sheets()[0].rows[0]));
}

TEST_CASE("charts, pictures and paragraphs have no place of their own") {
    const Selection selection =
        selection_of({"sheet Pit | P\ntable t_t | T | 2 | x; y | UC.T(1; @)\nchart c_c | C | t_t | x, y | X "
                      "| Y\npicture p_p | P | "
                      "0 9 0 9 | pit t_t\nremark R\n"});
    const Sheet& sheet = selection.sheets()[0];
    CHECK(selection.defines(sheet, sheet.rows[0]));
    CHECK_FALSE(selection.defines(sheet, sheet.rows[1]));
    CHECK_FALSE(selection.defines(sheet, sheet.rows[2]));
    CHECK_FALSE(selection.defines(sheet, sheet.rows[3]));
}

TEST_CASE(
    "a key that stands twice, a sheet that is not there and a formula that cannot be read are refused") {
    CHECK(mistake_of({"sheet Pit | P\ninput a_b | A | | 1 m\n", "sheet Bed | B\n\ntext a_b | A | | x\n"}) ==
          "sheet Bed, line 3: the key a_b stands twice");
    const std::vector<Sheet> none;
    CHECK_THROWS_WITH(Selection({"small", "Small", {"Pit"}}, none, System::si),
                      "workbook small: there is no sheet Pit");
    CHECK(mistake_of({"sheet Pit | P\nwords a_b | W | | \"open\n"}) ==
          "sheet Pit, line 2: a text is not closed in: \"open");
}

}  // namespace undercroft::tests
