// Where each row stands, and where the cells of each key are.
#include "sheets/builder/layout.hpp"

#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;

TEST_CASE("addresses of cells") {
    CHECK(cell_text(0, 0) == "A1");
    CHECK(cell_text(11, 25) == "Z12");
    CHECK(cell_text(0, 26) == "AA1");
    CHECK(cell_text(0, 701) == "ZZ1");
    CHECK(cell_text(0, 702) == "AAA1");
    CHECK(cell_text(6, 27, true) == "$AB$7");
}

TEST_CASE("a value is one cell, a quantity two, and each has a name") {
    const WorkbookGrid workbook = workbook_of(
        {"sheet Pit | P\ntext job_name | J | | x\ninput a_b | A | | 1 m\nresult r_r | R | | m | UC.A(a_b; "
         "@)\ncheck c_c | C | a_b >= r_r\nwords w_w | W | | UC.VERSION()\nchoice k_k | K | | a | a, b\n"});
    CHECK(address_of(workbook, "job_name") == "$Pit.$G$5");
    CHECK(address_of(workbook, "a_b") == "$Pit.$G$6:.$H$6");
    CHECK(address_of(workbook, "r_r") == "$Pit.$G$7:.$H$7");
    CHECK(address_of(workbook, "c_c") == "$Pit.$G$8");
    CHECK(address_of(workbook, "w_w") == "$Pit.$G$9");
    CHECK(address_of(workbook, "k_k") == "$Pit.$G$10");
    CHECK(address_of(workbook, "pit_open") == "$Pit.$L$3");
    CHECK(workbook.sheets[0].rows == 10);
}

TEST_CASE("each kind of row takes its rows of the sheet") {
    const auto rows = [](const std::string& lines) { return sheet_of(lines).rows - first_row; };
    const std::string table = "table t_t | T | 7 | x; y | UC.T(1; @)\n";
    CHECK(rows("remark R") == 1);
    CHECK(rows("section S") == 2);
    CHECK(rows("unprinted") == 0);
    CHECK(rows(table) == 2 + 1 + 7 + 1);
    CHECK(rows("grid g_g | G | x, unit m\n: 1\n: 2\n: 3") == 2 + 1 + 3 + 1);
    CHECK(rows("list l_l | L | x\n: a\n: b") == 2 + 2 + 1);
    CHECK(rows(table + "chart c_c | C | t_t | x, y | X | Y") == 11 + 20);
    CHECK(rows(table + "beside c_c | C | t_t | x, y | X | Y") == 11);
    CHECK(rows(table + "picture p_p | P | 0 100 -20 52 | pit t_t") == 11 + 27);
    CHECK(rows("check c_c | C | = 1\nsummary") == 1 + 5);  // heads, a sheet, the sum; heads, a sheet
    CHECK(rows("check c_c | C | = 1\ncheck d_d | D | = 1\ndashboard") == 2 + 1 + 2);
    CHECK(rows("list l_l | L | v, format verdict, as v := UC.V(1)\n:\ndashboard") == 4 + 1 + 1);
    const WorkbookGrid three =
        workbook_of({"sheet Job | J\nsummary\nremark R\ndashboard\n", "sheet Pit | P\ncheck c_c | C | = 1\n",
                     "sheet Bed | B\ncheck d_d | C | = 1\ncheck e_e | C | = 1\n"});
    CHECK(three.sheets[0].rows - first_row == 9 + 1 + 4);
    CHECK(Layout::picture_rows({0, 1, 0, 2}) ==
          9);  // 30 mm of picture, title and legend in rows of 4 mm, and two
}

TEST_CASE("a table, a grid and a list are ranges, their named columns too") {
    const WorkbookGrid workbook =
        workbook_of({"sheet Pit | P\n"
                     "table stage_table | T | 3 | depth; total, as total | UC.T(1; @)\n"
                     "grid rain_table | G | t, unit min, as t; i, unit mm/h // in/h\n: 5 ; 1\n: 9 ; 2\n"
                     "list zone_sum | L | Zone, span 3; Volume, span 2, unit m3, as volume; Count, format "
                     "number, as count\n"
                     ": a ; 1 m3 ; 2\n: b ; 1 m3 ; 3\n"});
    // title 5, heads 6, units 7, values 8 to 10, space 11
    CHECK(address_of(workbook, "stage_table") == "$Pit.$B$7:.$C$10");
    CHECK(address_of(workbook, "stage_table_total") == "$Pit.$C$7:.$C$10");
    CHECK(address_of(workbook, "stage_table_depth").empty());
    // title 12, heads 13, units 14, values 15 and 16
    CHECK(address_of(workbook, "rain_table") == "$Pit.$B$14:.$C$16");
    CHECK(address_of(workbook, "rain_table_t") == "$Pit.$B$14:.$B$16");
    // title 18, heads 19, items 20 and 21: the wording in B to D is not part of it
    CHECK(address_of(workbook, "zone_sum") == "$Pit.$E$20:.$G$21");
    CHECK(address_of(workbook, "zone_sum_volume") == "$Pit.$E$20:.$F$21");
    CHECK(address_of(workbook, "zone_sum_count") == "$Pit.$G$20:.$G$21");
}

TEST_CASE("a wide sheet has more columns") {
    const WorkbookGrid wide = workbook_of({"sheet Pit | P\nwide\nremark R\n"});
    CHECK(address_of(wide, "pit_open") == "$Pit.$R$3");
    CHECK(wide.sheets[0].print_columns == 19);
    CHECK(wide.sheets[0].wide);
    CHECK(wide.sheets[0].column_widths_cm.size() == 18 + 1 + 1 + helper_columns);
    CHECK(cell_at(wide.sheets[0], "B5").columns == 17);
    const WorkbookGrid upright = workbook_of({"sheet Pit | P\nremark R\n"});
    CHECK(upright.sheets[0].print_columns == 13);
    CHECK_FALSE(upright.sheets[0].wide);
    CHECK(upright.sheets[0].head_rows == 4);
    const std::vector<double>& widths = upright.sheets[0].column_widths_cm;
    REQUIRE(widths.size() == 12 + 1 + 1 + helper_columns);
    CHECK(widths[0] == 0.94);
    CHECK(widths[1] == column_cm);
    CHECK(widths[11] == column_cm);
    CHECK(widths[12] == 0.5);
    CHECK(widths[13] == 11);
    CHECK(widths[14] == column_cm);
}

TEST_CASE("a column's key that is another row's is refused") {
    CHECK(mistake_of({"sheet Pit | P\ninput rain_table_t | A | | 1 m\ngrid rain_table | G | t, as t\n"}) ==
          "sheet Pit: the key rain_table_t stands twice");
}

TEST_CASE("what the workbook says of itself follows the system of units") {
    const WorkbookGrid si = workbook_of({"sheet Pit | P\nremark R\n"});
    const WorkbookGrid us = workbook_of({"sheet Pit | P\nremark R\n"}, System::us);
    CHECK(si.name == "small");
    CHECK(si.title == "A small job");
    CHECK(si.paper == "a4");
    CHECK(us.name == "small-us");
    CHECK(us.title == "A small job (US customary units)");
    CHECK(us.paper == "letter");
    const auto property = [](const WorkbookGrid& workbook, const std::string& name) {
        for (const auto& [key, value] : workbook.properties)
            if (key == name) return value;
        return std::string();
    };
    CHECK(property(si, "Undercroft template") == "small");
    CHECK(property(us, "Undercroft template") == "small");
    CHECK(property(si, "Undercroft units") == "SI");
    CHECK(property(us, "Undercroft units") == "US");
    CHECK(property(si, "Undercroft template version").size() >= 5);
    CHECK(property(si, "Undercroft functions") == property(si, "Undercroft template version"));
    CHECK(si.sheets[0].printed);
    CHECK_FALSE(sheet_of("unprinted\nremark R").printed);
    CHECK(sheet_of("remark R\nremark R").printed_rows == 0);
    const SheetGrid part = sheet_of("remark R\nremark R\nunprinted\nremark R");
    CHECK(part.printed);
    CHECK(part.printed_rows == first_row + 2);
    CHECK(part.rows == first_row + 3);
}

}  // namespace undercroft::tests
