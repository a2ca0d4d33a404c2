// The cells of tables, grids and lists.
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;
using Wants = Validation::Wants;
using Words = std::vector<std::string>;

TEST_CASE("a table is one array formula over its units and values") {
    const SheetGrid sheet = sheet_of(
        "input a_b | A | | 1 m\ntable t_t | Stage | 3 | depth; total; area, format plain | UC.STAGE.T(a_b; "
        "@) | A note");
    CHECK(text_at(sheet, "A6") == "Pi2");
    CHECK(text_at(sheet, "B6") == "Stage");
    CHECK(cell_at(sheet, "B6").style == "TableTitle");
    CHECK(text_at(sheet, "I6") == "A note");
    CHECK(text_at(sheet, "B7") == "depth");
    CHECK(text_at(sheet, "D7") == "area");
    CHECK(cell_at(sheet, "B7").style == "TableHead");
    CHECK(formula_at(sheet, "B8") == "UNDERCROFT.UC.STAGET(a_b; 3)");
    CHECK(cell_at(sheet, "B8").matrix_rows == 4);
    CHECK(cell_at(sheet, "B8").matrix_columns == 3);
    CHECK(cell_at(sheet, "B8").style == "TableUnit");
    CHECK(cell_at(sheet, "D8").style == "TableUnit");
    CHECK(cell_at(sheet, "B9").style == "TableNumber");
    CHECK(cell_at(sheet, "D11").style == "TablePlain");
    CHECK_FALSE(sheet.cells.contains(place_of("E9")));
    CHECK_FALSE(sheet.cells.contains(place_of("B12")));
    CHECK(formula_at(sheet, "N8") == "IF(ISERROR([.B8]);UNDERCROFT.UC.WHY([.B8]);\"\")");
    CHECK_FALSE(sheet_of("table t_t | T | 1 | x | UC.T(@)").cells.contains(place_of("I5")));  // no note
    CHECK(formula_at(sheet_of("table t_t | T | 1 | x | UC.T(@) // UC.U(@)", System::us), "B7") ==
          "UNDERCROFT.UC.U(1)");
}

TEST_CASE("titles and notes of a table that need more lines get them") {
    const SheetGrid sheet =
        sheet_of("table t_t | T | 1 | " + std::string(30, 'x') + "; y | UC.T(@) | " + std::string(60, 'n'));
    CHECK(sheet.row_heights_cm.at(4) == Approx(2 * 0.33 + 0.03));
    CHECK(sheet.row_heights_cm.at(5) == Approx(3 * 0.33 + 0.03));  // 1.6 cm hold 11 small characters
}

TEST_CASE("a grid has units above, numbers and words below, all of them typed in") {
    const WorkbookGrid workbook =
        workbook_of({"sheet Pit | P\ngrid g_g | Rain | t, unit min; i, unit mm/h // in/h; Word\n: 5 ; 120 // "
                     "4.8 ; dry\n: - ; - ; "
                     "-\n"});
    const SheetGrid& sheet = workbook.sheets[0];
    CHECK(text_at(sheet, "B6") == "t");
    CHECK(cell_at(sheet, "B6").style == "TableHead");
    CHECK(cell_at(sheet, "D6").style == "TableHeadLeft");
    CHECK(text_at(sheet, "B7") == "min");
    CHECK(cell_at(sheet, "B7").style == "GridUnit");
    CHECK(validation_at(workbook, sheet, "B7").wants == Wants::unit);
    CHECK(cell_at(sheet, "D7").style == "GridUnit");
    CHECK(cell_at(sheet, "D7").type == Type::blank);
    CHECK(cell_at(sheet, "D7").validation.empty());
    CHECK(cell_at(sheet, "B8").number == 5);
    CHECK(cell_at(sheet, "B8").style == "GridEntry");
    CHECK(cell_at(sheet, "C8").number == 120);
    CHECK(text_at(sheet, "D8") == "dry");
    CHECK(cell_at(sheet, "D8").style == "GridText");
    CHECK(cell_at(sheet, "B9").type == Type::blank);
    CHECK(cell_at(sheet, "B9").style == "GridEntry");
    CHECK(cell_at(sheet, "D9").style == "GridEntry");  // for a number, until a text is typed
    CHECK(cell_at(sheet, "D9").type == Type::blank);
    CHECK(cell_at(sheet_of("grid g_g | R | i, unit mm/h // in/h\n: 120 // 4.8", System::us), "B8").number ==
          4.8);
    CHECK(
        mistake_of({"sheet Pit | P\ngrid g_g | R | i, unit nonsense\n"}).starts_with("sheet Pit, line 2: "));
}

namespace {
const std::string source = "input a_b | A | | 1 m\nresult r_r | R | | m | UC.R(a_b; @)\ntext t_t | T | | x\n";
}

TEST_CASE("a list's days are typed as days, and computed ones look like them") {
    const WorkbookGrid workbook =
        workbook_of({"sheet Pit | P\nlist l_l | Days | What, format entry; Day, format date, as day; Next, "
                     "format date, as "
                     "next := @day+1; Text; Bars, format bar := REPT(\"x\"; @next)\n"
                     ": Christmas ; 2026-12-25 ; x\n: - ; - ; -\n"});
    const SheetGrid& sheet = workbook.sheets[0];
    CHECK(cell_at(sheet, "C7").type == Type::number);
    CHECK(cell_at(sheet, "C7").number == 46381);
    CHECK(cell_at(sheet, "C7").style == "DayEntry");
    CHECK(validation_at(workbook, sheet, "C7").wants == Wants::day);
    CHECK(cell_at(sheet, "C8").type == Type::blank);
    CHECK(cell_at(sheet, "C8").style == "DayEntry");
    CHECK(formula_at(sheet, "D7") == "[.C7]+1");
    CHECK(cell_at(sheet, "D7").style == "NumberDay");
    CHECK(formula_at(sheet, "F7") == "REPT(\"x\"; [.D7])");
    CHECK(cell_at(sheet, "F7").style == "Bars");
    CHECK_THAT(mistake_of({"sheet Pit | P\nlist l_l | D | Day, format date; T\n: 2026-02-30 ; x\n"}),
               Catch::Contains("'2026-02-30' is no day"));
}

TEST_CASE("the head of a column is computed where its title is a formula") {
    const SheetGrid sheet = sheet_of(
        "words w_w | W | | \"a\"&\"b\"\nlist l_l | T | A; =w_w.value, span 3, format bar := REPT(\"x\"; 2); "
        "B\n: 1 ; "
        "2\n");
    CHECK(formula_at(sheet, "C7") == "[.G5]");
    CHECK(cell_at(sheet, "C7").style == "BarsHead");
    CHECK(cell_at(sheet, "C7").columns == 3);
    CHECK(text_at(sheet, "F7") == "B");
}

TEST_CASE("a list's typed cells: wording, entries, quantities, shares, numbers and choices") {
    const WorkbookGrid workbook =
        workbook_of({"sheet Pit | P\nlist l_l | Orders | Item, span 2; Net, span 3, unit m3 // yd3; Waste, "
                     "format share; N, format "
                     "number; By, format entry; State, pick open/done | Note\n"
                     ": Stone ; 12.5 m3 ; 5 % ; 4 ; me ; open\n"
                     ": - ; - ; 0 % ; - ; - ; done\n"
                     ": Sand ; - L ; 0 % ; 0.5 ; - ; open\n"});
    const SheetGrid& sheet = workbook.sheets[0];
    CHECK(text_at(sheet, "A5") == "Pi1");
    CHECK(text_at(sheet, "A7") == "Pi2");
    CHECK(text_at(sheet, "B6") == "Item");
    CHECK(cell_at(sheet, "B6").columns == 2);
    CHECK(cell_at(sheet, "B6").style == "TableHeadLeft");
    CHECK(text_at(sheet, "D6") == "Net");
    CHECK(cell_at(sheet, "D6").columns == 3);
    CHECK(cell_at(sheet, "D6").style == "TableHeadMiddle");
    CHECK(cell_at(sheet, "G6").style == "TableHead");      // a share
    CHECK(cell_at(sheet, "H6").style == "TableHead");  // a number without a unit
    CHECK(text_at(sheet, "I5") == "Note");

    CHECK(text_at(sheet, "B7") == "Stone");
    CHECK(cell_at(sheet, "B7").style == "ListText");
    CHECK(cell_at(sheet, "B7").columns == 2);
    CHECK(cell_at(sheet, "D7").number == 12.5);
    CHECK(cell_at(sheet, "D7").style == "Entry");
    CHECK(text_at(sheet, "E7") == "m3");
    CHECK(cell_at(sheet, "E7").style == "UnitEntry");
    CHECK(cell_at(sheet, "E7").columns == 2);
    CHECK(validation_at(workbook, sheet, "E7").wants == Wants::unit);
    CHECK(cell_at(sheet, "G7").number == 0.05);
    CHECK(cell_at(sheet, "G7").style == "ShareEntry");
    CHECK(cell_at(sheet, "H7").number == 4);
    CHECK(cell_at(sheet, "H7").style == "Entry");
    CHECK(text_at(sheet, "I7") == "me");
    CHECK(cell_at(sheet, "I7").style == "TextEntry");
    CHECK(cell_at(sheet, "I7").validation.empty());
    CHECK(cell_at(sheet, "J7").style == "TextEntry");
    CHECK(validation_at(workbook, sheet, "J7").choices == Words{"open", "done"});
    CHECK(validation_at(workbook, sheet, "J7").wants == Wants::choice);
    CHECK(validation_at(workbook, sheet, "J7").help_title == "State");

    CHECK(cell_at(sheet, "B8").type == Type::blank);
    CHECK(cell_at(sheet, "D8").type == Type::blank);
    CHECK(cell_at(sheet, "D8").style == "Entry");
    CHECK(text_at(sheet, "E8") == "m3");
    CHECK(cell_at(sheet, "H8").type == Type::blank);
    CHECK(cell_at(sheet, "H8").style == "Entry");
    CHECK(cell_at(sheet, "I8").type == Type::blank);
    CHECK(text_at(sheet, "E9") == "L");  // to be filled in, in another unit
    CHECK(cell_at(sheet, "D9").type == Type::blank);
    CHECK(cell_at(sheet, "H9").number == 0.5);
    CHECK_FALSE(sheet.cells.contains(place_of("N7")));  // nothing computed
}

TEST_CASE("a list of many computed columns tells the reasons of its numbers, none of its constants") {
    std::string columns = "No., format plain, as no; A, format text := UC.A(@no)";
    for (const char* c : {"b", "c", "d", "e", "f"})
        columns += std::string("; ") + c + ", format plain := UC.X(@no)";
    const auto reason = [](const std::string& list) {
        return formula_at(sheet_of("list l_l | L | " + list + "\n: =1"), "N7");
    };
    CHECK(reason("No., format plain, as no; A, format text := UC.A(@no)") ==
          "IF(ISERROR([.C7]);UNDERCROFT.UC.WHY([.C7]);\"\")");
    CHECK(reason(columns).find("[.C7]") != std::string::npos);
    const std::string many = reason(columns + "; g, format plain := UC.X(@no)");
    CHECK(many.find("[.C7]") == std::string::npos);
    for (const char* cell : {"[.D7]", "[.E7]", "[.F7]", "[.G7]", "[.H7]", "[.I7]"})
        CHECK(many.find(cell) != std::string::npos);
}

TEST_CASE("spans of a list's cells, and its rows as high as their texts") {
    const SheetGrid sheet = sheet_of(
        "list l_l | L | W, format share, span 2; N, format number, span 3; E, format entry, span 4\n: 5 % ; "
        "4 ; " +
        std::string(50, 'x') + "\n: 5 % ; - ; -");
    CHECK(cell_at(sheet, "B7").columns == 2);
    CHECK(cell_at(sheet, "D7").columns == 3);
    CHECK(cell_at(sheet, "D8").columns == 3);
    CHECK(cell_at(sheet, "G7").columns == 4);
    CHECK(sheet.row_heights_cm.at(6) == Approx(2 * 0.37 + 0.03));
    CHECK(sheet.row_heights_cm.at(7) == Approx(0.37 + 0.03));
}

TEST_CASE("a negative quantity is typed in, a mark with a unit is not") {
    const SheetGrid sheet = sheet_of("list l_l | L | x, unit m\n: -2 m\n: - ft");
    CHECK(cell_at(sheet, "B7").number == -2);
    CHECK(cell_at(sheet, "B8").type == Type::blank);
    CHECK(text_at(sheet, "C8") == "ft");
    CHECK(cell_at(sheet, "C7").columns == 1);
}

TEST_CASE("mistakes in the items of a list are told with the line of the item") {
    const auto mistake = [](const std::string& column, const std::string& cell) {
        return mistake_of({"sheet Pit | P\nlist l_l | L | x, " + column + "\n: " + cell + "\n"});
    };
    CHECK(mistake("unit m", "wide") == "sheet Pit, line 3: 'wide' is no number with a unit");
    CHECK(mistake("unit m", "5") == "sheet Pit, line 3: '5' has no unit");
    CHECK(mistake("format share", "5 m") == "sheet Pit, line 3: '5 m' is no share in %");
    CHECK(mistake("format share", "5") == "sheet Pit, line 3: '5' has no unit");
    CHECK(mistake("format number", "5 m") == "sheet Pit, line 3: '5 m' is no number");
    CHECK(mistake("unit m", "5 metre-ish").starts_with("sheet Pit, line 3: "));
    CHECK(mistake("unit m", "=no_key").starts_with("sheet Pit, line 3: 'no_key' is no key"));
    CHECK(mistake("format number", "5").empty());
}

TEST_CASE("a link to a quantity brings its unit along and looks like its source") {
    const SheetGrid sheet =
        sheet_of(source + "list l_l | L | x, unit m, span 3; y\n: =r_r ; =t_t\n: =a_b ; =r_r.value");
    CHECK(formula_at(sheet, "B10") == "[.G6]");
    CHECK(cell_at(sheet, "B10").style == "Link");
    CHECK(formula_at(sheet, "C10") == "[.H6]");
    CHECK(cell_at(sheet, "C10").style == "UnitLink");
    CHECK(cell_at(sheet, "C10").columns == 2);
    CHECK(cell_at(sheet, "B11").style == "LinkTyped");
    CHECK(formula_at(sheet, "E10") == "t_t");
    CHECK(formula_at(sheet, "E11") == "[.$G$6]");
    CHECK(formula_at(sheet, "N10") ==
          "IF(ISERROR([.B10]);UNDERCROFT.UC.WHY([.B10]);IF(ISERROR([.E10]);UNDERCROFT.UC.WHY([.E10]);\"\"))");
}

TEST_CASE("computed columns take cells of their item by name, and have looks of their own") {
    const WorkbookGrid workbook =
        workbook_of({"sheet Pit | P\nlist l_l | L | Net, span 2, unit m3, as net; N, format number, as n; "
                     "Order, span 3, unit "
                     "t, as order := UC.ORDER(@net; @n.value; @); Own, span 2, unit =@net.unit := "
                     "UC.OWN(@net.value; @net.unit; "
                     "@)\n: 5 m3 ; 2\n",
                     "sheet Bed | B\nlist m_m | L | x := UC.X(1); y, format text, span 2 := UC.Y(1); z, "
                     "format plain := UC.Z(1); v, "
                     "format verdict, span 2 := UC.V(1); s, format shown := UC.S(1); w, format verdict := "
                     "IF(1; 1; \"open\")\n:\n"});
    const SheetGrid& sheet = workbook.sheets[0];
    CHECK(formula_at(sheet, "E7") == "UNDERCROFT.UC.ORDER([.B7:.C7]; [.D7]; [.F7])");
    CHECK(cell_at(sheet, "E7").style == "Number");
    CHECK(cell_at(sheet, "E7").columns == 1);
    CHECK(text_at(sheet, "F7") == "t");
    CHECK(cell_at(sheet, "F7").style == "UnitResult");
    CHECK(cell_at(sheet, "F7").columns == 2);
    CHECK(validation_at(workbook, sheet, "F7").wants == Wants::unit);
    CHECK(formula_at(sheet, "H7") == "UNDERCROFT.UC.OWN([.B7]; [.C7]; [.I7])");
    CHECK(formula_at(sheet, "I7") == "[.C7]");
    CHECK(cell_at(sheet, "I7").style == "UnitLink");
    CHECK(cell_at(sheet, "I7").columns == 1);

    const SheetGrid& bed = workbook.sheets[1];
    CHECK(cell_at(bed, "B7").style == "Number");
    CHECK(cell_at(bed, "C7").style == "ListWords");
    CHECK(cell_at(bed, "C7").columns == 2);
    CHECK(cell_at(bed, "E7").style == "NumberPlain");
    CHECK(cell_at(bed, "F7").style == "Verdict");
    CHECK(cell_at(bed, "F7").columns == 2);
    CHECK(cell_at(bed, "H7").style == "Verdict");
    CHECK(cell_at(bed, "I7").style == "Verdict");
    using Cells = std::vector<std::pair<int, int>>;
    CHECK(bed.checks == Cells{{6, 5}, {6, 8}});  // what is shown is counted where it stands
    CHECK(helper_formula(bed, 7, Helper::fails) ==
          "IF(ISERROR([.F7]);0;([.F7]=0)*1)+IF(ISERROR([.I7]);0;([.I7]=0)*1)");
    CHECK(mistake_of({"sheet Pit | P\nlist l_l | L | x, as x := UC.X(@y)\n:\n"})
              .starts_with("sheet Pit, line 3: '@y' is no key"));
    CHECK(mistake_of({"sheet Pit | P\nlist l_l | L | n, as n, format number; x := UC.X(@n.unit)\n: 2\n"})
              .starts_with("sheet Pit, line 3: '@n.unit' is no key"));
}

TEST_CASE("a column of a table gives its unit by the cell above its values") {
    const SheetGrid sheet = sheet_of(
        "grid g_g | G | t, unit min, as t\n: 5\nwords w_w | W | | g_g_t.unit\nlist l_l | L | x, unit m, as "
        "x\n: 1 m\nwords v_v | V | | l_l_x.unit");
    CHECK(formula_at(sheet, "G10") == "[.B7]");
    CHECK(formula_at(sheet, "G15") == "[.C13]");
    CHECK_FALSE(
        mistake_of({"sheet Pit | P\ngrid g_g | G | t, as t\nwords w_w | W | | g_g_t.value\n"}).empty());
}

}  // namespace undercroft::tests
