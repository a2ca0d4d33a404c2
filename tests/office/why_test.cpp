// UC.WHY: the reason of an error, the derivation of a good cell, for every way to write an argument.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>

#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {
void name_range(const Desk& desk, const std::string& name, const std::string& content) {
    const css::uno::Reference<css::beans::XPropertySet> properties(desk.document().model(),
                                                                   css::uno::UNO_QUERY_THROW);
    const css::uno::Reference<css::sheet::XNamedRanges> names(properties->getPropertyValue("NamedRanges"),
                                                              css::uno::UNO_QUERY_THROW);
    names->addNewByName(sheets::to_ustring(name), sheets::to_ustring(content),
                        css::table::CellAddress(0, 0, 0), 0);
}
}  // namespace

TEST_CASE("a good cell says equation, symbols with values and cells, result and source") {
    Desk desk;
    desk.put("A1", 305).put("B1", "mm").put("C1", "=UC.PIT.VOLUME(30;\"12 m\";A1:B1;\"1.5H:1V\";\"m3\")");
    const std::string why = desk.why("C1");
    INFO(why);
    CHECK_THAT(why, Catch::Contains("V = L W d + (L + W) z d^2 + 4/3 z^2 d^3"));
    CHECK_THAT(why, Catch::Contains("L = 30 = 30 m (base length)"));
    CHECK_THAT(why, Catch::Contains("d = 305 mm = 0.305 m (depth, in A1:B1)"));
    CHECK_THAT(why, Catch::Contains("z = \"1.5H:1V\" = 1.5 (batter)"));
    CHECK_THAT(why, Catch::Contains("V = 115.746 m3"));
    CHECK_THAT(why, Catch::Contains("Source: prismoidal formula"));
}

TEST_CASE("names, nested calls, arithmetic and Calc's own functions are followed") {
    Desk desk;
    desk.put("A1", 305).put("B1", "mm").put("A2", 900);
    name_range(desk, "pit_depth", "$Sheet1.$A$1:$B$1");
    desk.put("C1", "=UC.PIT.VOLUME(SQRT(A2);UC.CONVERT(\"1200 cm\";\"m\");pit_depth;(1+2)/2)");
    CHECK(desk.number("C1") == Approx(115.745692875).epsilon(1e-12));
    const std::string why = desk.why("C1");
    INFO(why);
    CHECK_THAT(why, Catch::Contains("L = 30 "));
    CHECK_THAT(why, Catch::Contains("W = 12 "));
    CHECK_THAT(why, Catch::Contains("(depth, in pit_depth)"));
    CHECK_THAT(why, Catch::Contains("z = 1.5"));
    CHECK_THAT(why, Catch::Contains("V = 115.746 m3"));
}

TEST_CASE("an argument that cannot be followed says what to do") {
    Desk desk;
    desk.put("A1", 2).put("A2", 3).put(
        "C1", "=UC.LIFTS(SUM(UC.STAGE.STORAGE(2;20;10;\"0H:1V\";1;1;0.4;\"circle\";1;1;10));\"1 m\")");
    CHECK_THAT(desk.why("C1"),
               Catch::Contains("thickness") && Catch::Contains("move the argument to a cell of its own"));
}

TEST_CASE("a refusal inside a nested call, or inside an expression, is found") {
    Desk desk;
    desk.put("C1", "=UC.LIFTS(UC.CONVERT(\"5 kg\";\"m\");\"1 m\")");
    CHECK(desk.error("C1") != 0);
    CHECK_THAT(desk.why("C1"), Catch::Contains("thickness: in UC.CONVERT") && Catch::Contains("is a mass"));
    desk.put("C2", "=1+2*UC.LIFTS(\"5 kg\";\"1 m\")");
    CHECK_THAT(desk.why("C2"), Catch::Contains("thickness: \"5 kg\" is a mass"));
}

TEST_CASE("a cell on another sheet, a typed cell, a blank, and a cell of Calc's own") {
    Desk desk;
    desk.document().model()->getSheets()->insertNewByName("Site data", 1);
    desk.document().cell("Site data", "A1")->setFormula(sheets::to_ustring("=1/0"));
    desk.document().cell("Site data", "B1")->setFormula(sheets::to_ustring("m"));
    desk.put("C1", "=UC.LIFTS($'Site data'.A1:B1;\"1 m\")");
    CHECK_THAT(
        desk.why("C1"),
        Catch::Contains("rests on 'Site data'.A1, which shows #DIV/0!: the expression divides by zero"));
    desk.put("A1", 5).put("C2", "=A1+1").put("C3", "=SUM(C1;2)");
    CHECK_THAT(desk.why("A1"), Catch::Contains("typed number"));
    CHECK_THAT(desk.why("Y50"), Catch::Contains("blank"));
    CHECK_THAT(desk.why("C2"), Catch::Contains("computed by Calc"));
    CHECK_THAT(desk.why("C3"),
               Catch::StartsWith("rests on C1 and at last on 'Site data'.A1, which shows #DIV/0!: "));
}

TEST_CASE("an error is followed from cell to cell to where it begins") {
    Desk desk;
    desk.put("A1", 48).put("B1", "kg").put("A2", "=A1").put("B2", "=B1");
    desk.put("C1", "=UC.LIFTS(A2:B2;\"1 m\")")
        .put("C2", "=C1")
        .put("C3", "=2*C2")
        .put("C4", "=UC.LIFTS(C3;\"1 m\")");
    CHECK_THAT(desk.why("C1"), Catch::StartsWith("thickness: 48 kg is a mass"));
    CHECK_THAT(desk.why("C2"),
               Catch::StartsWith("rests on C1, which shows #VALUE!: thickness: 48 kg is a mass"));
    CHECK_THAT(desk.why("C4"),
               Catch::StartsWith("thickness: rests on C3 and at last on C1, which shows #VALUE!: "
                                 "thickness: 48 kg is a mass"));
    desk.put("D1", "=D2+1").put("D2", "=D1+1").put("D3", "=D2");
    CHECK_THAT(desk.why("D3"),
               Catch::StartsWith("rests on D2") && Catch::Contains("the formulas go in a circle"));
    CHECK_THAT(desk.why("D1"), Catch::Contains("circle"));
}

TEST_CASE("names that go in a circle end in a reason, and a sheet's own name is seen") {
    Desk desk;
    name_range(desk, "loop", "loop+1");
    name_range(desk, "there", "back*2");
    name_range(desk, "back", "there/2");
    desk.put("C1", "=UC.LIFTS(loop;\"1 m\")").put("C2", "=UC.LIFTS(there;\"1 m\")");
    CHECK_THAT(desk.why("C1"), Catch::Contains("the name 'loop' goes round in a circle"));
    CHECK_THAT(desk.why("C2"), Catch::Contains("goes round in a circle"));
    const css::uno::Reference<css::beans::XPropertySet> sheet(desk.document().sheet("Sheet1"),
                                                              css::uno::UNO_QUERY_THROW);
    const css::uno::Reference<css::sheet::XNamedRanges> own(sheet->getPropertyValue("NamedRanges"),
                                                            css::uno::UNO_QUERY_THROW);
    own->addNewByName("own_depth", "$Sheet1.$A$5:$B$5", css::table::CellAddress(0, 0, 0), 0);
    desk.put("A5", 305).put("B5", "mm").put("C3", "=UC.LIFTS(own_depth;\"6 in\")");
    CHECK_THAT(desk.why("C3"), Catch::Contains("305 mm = 0.305 m (thickness, in own_depth)"));
}

TEST_CASE("names that rest on names are each read once, and are followed as deep as they go") {
    Desk desk;
    desk.put("A1", 3).put("B1", "m");
    name_range(desk, "sum_0", "$Sheet1.$A$1");
    for (int i = 1; i <= 30; ++i) {  // eight uses each: 8 to the 30th, if they were not remembered
        std::string sum = "0";
        for (int k = 0; k < 8; ++k) sum += "+sum_" + std::to_string(i - 1) + "/8";
        name_range(desk, "sum_" + std::to_string(i), sum);
    }
    desk.put("C1", "=UC.LIFTS(sum_30;\"1 m\")").put("C2", "=UC.LIFTS(sum_12;\"1 m\")");
    CHECK_THAT(desk.why("C1"), Catch::Contains("the cell shows Err:512"));  // too deep for Calc
    CHECK_THAT(desk.why("C2"), !Catch::Contains("circle"));
    name_range(desk, "deep_0", "3");
    for (int i = 1; i <= 250; ++i)
        name_range(desk, "deep_" + std::to_string(i), "deep_" + std::to_string(i - 1) + "+0");
    desk.put("C3", "=UC.LIFTS(deep_250;\"1 m\")");
    CHECK_THAT(desk.why("C3"), Catch::Contains("200 deep") && !Catch::Contains("circle"));
}

TEST_CASE("a long chain of errors is followed over 200 cells, and the last of them goes on") {
    Desk desk;
    desk.put("A1", "=UC.LIFTS(\"5 kg\";\"1 m\")");
    for (int row = 2; row <= 450; ++row)
        desk.put("A" + std::to_string(row), "=A" + std::to_string(row - 1) + "+1");
    CHECK_THAT(desk.why("A100"), Catch::Contains("at last on A1") && Catch::Contains("kg"));
    CHECK_THAT(desk.why("A450"), Catch::StartsWith("rests on A449 and so on, 200 cells so far; UC.WHY(A25") &&
                                     Catch::EndsWith("follows it from there"));
}

TEST_CASE("a cell that shows an error is never explained as good") {
    Desk desk;
    desk.put("A1", "=uc_lifts(3)");  // #NAME?
    CHECK(desk.error("A1") == 525);
    CHECK_THAT(desk.why("A1"), Catch::Contains("UC_LIFTS gives an error") && !Catch::Contains("N = "));
}

TEST_CASE("a good cell is never given the reason of an error") {
    Desk desk;
    desk.put("A1", 1)
        .put("C1", "=IF(A1=1;5;UC.LIFTS(\"5 kg\";\"1 m\"))")
        .put("C2", "=IFERROR(UC.LIFTS(\"5 kg\";\"1 m\");7)");
    CHECK_THAT(desk.why("C1"),
               Catch::StartsWith("IF: its condition holds; 5 is taken. | C1 is computed by Calc"));
    CHECK_THAT(desk.why("C2"),
               Catch::StartsWith("IFERROR: its first part is an error (in UC.LIFTS: thickness: ") &&
                   Catch::Contains("; 7 is taken. | C2 is computed by Calc"));
    desk.put("C3", "=UC.LIFTS(SUM(INDEX(UC.CATALOGUE();1;1):A1);\"1 m\")");  // what only Calc can follow
    if (desk.error("C3") == 0)
        CHECK_THAT(desk.why("C3"),
                   Catch::StartsWith("C3 shows no error; how it came about cannot be derived"));
}

TEST_CASE("the derivation as a table") {
    Desk desk;
    desk.put("A1", 305).put("B1", "mm").put("C1", "=UC.LIFTS(A1:B1;\"6 in\")");
    desk.put_array("E1:J6", "=UC.STEPS(C1)");
    CHECK(desk.text("E1") == "symbol");
    CHECK(desk.text("E2") == "T");
    CHECK(desk.text("G2") == "305 mm");
    CHECK(desk.number("H2") == 0.305);
    CHECK(desk.text("I2") == "m");
    CHECK(desk.text("J2") == "A1:B1");
    CHECK(desk.number("H3") == Approx(0.1524).epsilon(1e-15));
    CHECK(desk.text("F4") == "result");
    CHECK(desk.text("G4") == "N = 3 each");  // 305 mm in lifts of 152.4 mm
    CHECK(desk.text("F5") == "equation");
    CHECK(desk.text("F6") == "source");
}

TEST_CASE("a cell inside a table that a function gives") {
    Desk desk;
    desk.put("A1", "m").put("B1", "m2").put("A2", 0.).put("B2", 10.).put("A3", 1.).put("B3", 10.);
    desk.put_array("D1:E4", "=UC.CATALOGUE()");
    CHECK_THAT(desk.why("E3"), Catch::Contains("The table fills D1:E4; in this cell: row 2, column 2 = "));
    desk.put_array("F10:F12", "=UC.VERSION()");
    CHECK_THAT(desk.why("F11"), Catch::Contains("The table fills F10:F12; it repeats one result"));
    desk.put_array(
        "G1:I7",
        "=UC.STAGE.STORAGE(4;\"10 m\";\"5 m\";\"0H:1V\";\"0.2 m\";\"0.2 m\";0.4;\"ellipse\";\"1 m\";"
        "\"0.6 m\";\"30 m\")");
    INFO(desk.why("H3"));
    CHECK_THAT(desk.why("H3"), Catch::Contains("The table fills G1:I7; in this cell: row 2, "));
    CHECK_THAT(desk.why("H3"), Catch::Contains(" = ") && Catch::Contains("Source: "));
    CHECK_THAT(desk.why("H1"), Catch::Contains("whose unit is "));
}

TEST_CASE("pairs by name and cells of other sheets are said where they stand") {
    Desk desk;
    const auto sheets = desk.document().model()->getSheets();
    sheets->insertNewByName("Site data", 1);
    desk.document().cell("Site data", "B3")->setValue(305);
    desk.document().cell("Site data", "C3")->setFormula("mm");
    desk.put("C1", "=UC.LIFTS($'Site data'.B3:C3;\"6 in\")");
    CHECK_THAT(desk.why("C1"), Catch::Contains("305 mm = 0.305 m") && Catch::Contains("'Site data'.B3:C3"));
}

TEST_CASE("UC.WHY follows when an input changes") {
    Desk desk;
    desk.put("A1", 1).put("C1", "=UC.LIFTS(A1;0.3)").put("D1", "=UC.WHY(C1)");
    CHECK_THAT(desk.text("D1"), Catch::Contains("N = 4"));
    desk.put("A1", 2);
    CHECK_THAT(desk.text("D1"), Catch::Contains("N = 7"));
    desk.put("A1", -2);
    CHECK_THAT(desk.text("D1"), Catch::Contains("thickness: -2 m is below 0"));
}

TEST_CASE("IF, IFS, SWITCH and CHOOSE are followed, and the branch taken is said") {
    Desk desk;
    desk.put("A1", 2).put("A2", 305).put("B2", "mm").put("A3", "deep");
    desk.put("C1", "=IF(A1>1;UC.LIFTS(A2:B2;\"6 in\");UC.LIFTS(\"5 kg\";\"1 m\"))");
    CHECK_THAT(desk.why("C1"), Catch::StartsWith("IF: its condition holds; ") &&
                                   Catch::Contains("is taken. | ") &&
                                   Catch::Contains("T = 305 mm = 0.305 m (thickness, in A2:B2)") &&
                                   Catch::Contains("N = 3 each"));
    desk.put("A1", 1);
    CHECK_THAT(desk.why("C1"), Catch::Contains("thickness: \"5 kg\" is a mass"));
    desk.put("C2", "=IFS(A1>1;1;A1=1;UC.LIFTS(1;0.3))");
    CHECK_THAT(desk.why("C2"),
               Catch::StartsWith("IFS: its 2nd condition holds; ") && Catch::Contains("N = 4"));
    desk.put("C3", "=SWITCH(A3;\"flat\";1;\"deep\";UC.LIFTS(1;0.3);3)");
    CHECK_THAT(desk.why("C3"),
               Catch::StartsWith("SWITCH: it is equal to the 2nd value; ") && Catch::Contains("N = 4"));
    desk.put("C4", "=CHOOSE(A1+1;1;UC.LIFTS(1;0.3))");
    CHECK_THAT(desk.why("C4"),
               Catch::StartsWith("CHOOSE: the 2nd value is asked for; ") && Catch::Contains("N = 4"));
    desk.put("C5", "=IF(A3=\"DEEP\";1;2)");  // as the document compares
    CHECK_THAT(desk.why("C5"), Catch::Contains(desk.number("C5") == 1 ? "; 1 is taken" : "; 2 is taken"));
    desk.put("C6", "=UC.LIFTS(IF(A1=1;A2:B2;9);\"6 in\")");
    CHECK(desk.number("C6") == 3);
    CHECK_THAT(desk.why("C6"), Catch::Contains("(thickness, in A2:B2)") && Catch::Contains("N = 3"));
}

TEST_CASE("INDEX, OFFSET and INDIRECT are followed to the cells that Calc takes") {
    Desk desk;
    desk.put("A1", 1).put("A2", 2).put("A3", 3).put("B1", "m").put("B2", "m").put("B3", "m").put("D1",
                                                                                                 "A3:B3");
    name_range(desk, "depths", "$Sheet1.$A$1:$B$3");
    const auto follows = [&desk](const std::string& argument, const std::string& from,
                                 const std::string& cells) {
        desk.put("C1", "=UC.LIFTS(" + argument + ";\"0.5 m\")");
        INFO(argument << " -> " << desk.why("C1"));
        CHECK(desk.error("C1") == 0);
        CHECK_THAT(desk.why("C1"),
                   Catch::StartsWith(from + ": ") && Catch::Contains("; " + cells + " is taken.") &&
                       Catch::Contains("in " + cells + ")") &&
                       Catch::Contains("N = " + std::to_string(static_cast<int>(desk.number("C1")))));
    };
    follows("INDEX(A1:B3;2;0)", "INDEX", "A2:B2");
    follows("INDEX(A1:A3;3)", "INDEX", "A3");
    follows("INDEX(depths;2;0)", "INDEX", "A2:B2");
    follows("OFFSET(A1:B1;A2;0)", "OFFSET", "A3:B3");
    follows("OFFSET(A1;1;0;1;2)", "OFFSET", "A2:B2");
    follows("INDIRECT(D1)", "INDIRECT", "A3:B3");
    follows("INDIRECT(\"A\"&A2)", "INDIRECT", "A2");
    desk.put("B2", "kg").put("C2", "=UC.LIFTS(INDEX(A1:B3;2;0);\"0.5 m\")");
    CHECK(desk.error("C2") == value_error);
    CHECK_THAT(desk.why("C2"), Catch::Contains("thickness: 2 kg is a mass"));
    desk.put("C3", "=INDEX(A1:B3;3;1)");
    CHECK(desk.why("C3") ==
          "INDEX: row 3, column 1 of A1:B3; A3 is taken. | C3 is computed by Calc, not by a "
          "function of this add-in: it shows what A3 shows");
}

TEST_CASE("an error that nobody explains is told by what it means") {
    Desk desk;
    desk.put_array("A1:B9",
                   "=UC.HYDROGRAPH.RATIONAL(0.9;\"1 ha\";\"50 mm/h\";\"20 min\";\"10 min\";\"10 min\")");
    REQUIRE(desk.error("A9") == not_available);  // beyond the table
    CHECK_THAT(desk.why("A9"), Catch::Contains("this cell lies outside what the function gives"));
    desk.put("C1", "=A9+1");
    CHECK(desk.why("C1") ==
          "rests on A9, which shows #N/A: it lies outside the table that UC.HYDROGRAPH.RATIONAL gives");
    desk.put("D1", "=NA()").put("D2", "=D1");
    CHECK_THAT(desk.why("D2"),
               Catch::StartsWith("rests on D1, which shows #N/A: ") && !Catch::EndsWith(": "));
}

TEST_CASE("a number joined to its unit is written as Calc writes it in the locale") {
    Desk desk;
    desk.put("A1", 1.5).put("C1", "=UC.LIFTS(A1&\" m\";\"0.5 m\")");
    const bool comma = desk.error("C1") != 0;
    CHECK_THAT(desk.why("C1"), Catch::Contains(comma ? "has a comma" : "\"1.5 m\""));
    CHECK_FALSE((comma && desk.why("C1").find("N = 3") != std::string::npos));
    desk.put("C2", "=UC.LIFTS(UC.QUANTITY(A1;\"m\");\"0.5 m\")");
    CHECK(desk.number("C2") == 3);
}

TEST_CASE("a value in another file shows the way") {
    Desk desk;
    desk.put("C1", "=UC.LIFTS('file:///nowhere/other.ods'#$Sheet1.A1;\"1 m\")");
    CHECK_THAT(desk.why("C1"),
               Catch::Contains("is in another file") && Catch::Contains("into a cell of this workbook"));
}

namespace {

/// Depths and their units in A1:B4, the same ten times as large on the sheet Other, and names for some.
void fill_with_depths(Desk& desk) {
    desk.document().model()->getSheets()->insertNewByName("Other", 1);
    for (int row = 1; row <= 4; ++row) {
        const std::string at = std::to_string(row);
        desk.put("A" + at, row).put("B" + at, "m");
        desk.document().cell("Other", "A" + at)->setValue(10 * row);
        desk.document().cell("Other", "B" + at)->setFormula("m");
    }
    desk.put("E1", 2).put("E2", "A3:B3").put("E4", 0.0);
    name_range(desk, "depths", "$Sheet1.$A$1:$B$3");
    name_range(desk, "one", "$Sheet1.$A$2:$B$2");
    name_range(desk, "moving", "OFFSET($Sheet1.$A$1;1;0;1;2)");
}

}  // namespace

TEST_CASE("what is chosen in odd ways is followed as Calc does") {
    Desk desk;
    fill_with_depths(desk);
    const auto takes = [&desk](const std::string& argument, const std::string& cells) {
        desk.put("G1", "=UC.LIFTS(" + argument + ";\"0.5 m\")");
        const std::string why = desk.why("G1");
        INFO(argument << " -> " << why);
        CHECK(desk.error("G1") == 0);
        CHECK_THAT(
            why, Catch::Contains("; " + cells + " is taken. | N = ") &&
                     Catch::Contains("(thickness, in " + cells + ")") &&
                     Catch::Contains("N = " + std::to_string(static_cast<int>(desk.number("G1"))) + " each"));
    };
    takes("INDEX(A2:B2;0)", "A2:B2");
    takes("INDEX(A2:B2;0;0)", "A2:B2");
    takes("INDEX(A2:B2;1)", "A2");
    takes("INDEX(A1:B3;2.9;1)", "A2");
    takes("INDEX(IF(E1=2;A1:B3;A2:B4);2;0)", "A2:B2");
    takes("INDEX(OFFSET(A1;0;0;3;2);2;0)", "A2:B2");
    takes("INDEX(INDIRECT(\"A1:B3\");3;0)", "A3:B3");
    takes("INDEX(A1:B3;MATCH(2;A1:A3;0);0)", "A2:B2");
    takes("INDEX(moving;1;1)", "A2");
    takes("INDEX($Other.A1:B3;2;0)", "Other.A2:B2");
    takes("OFFSET(A1:B1;E1;0;1;2)", "A3:B3");
    takes("OFFSET(A3:B3;-1;)", "A2:B2");
    takes("OFFSET(A1;1.9;0;1;2)", "A2:B2");
    takes("OFFSET(one;1;0)", "A3:B3");
    takes("OFFSET(moving;1;0)", "A3:B3");
    takes("OFFSET(INDEX(A1:B3;2;0);1;0)", "A3:B3");
    takes("INDIRECT(\"ONE\")", "ONE");
    takes("INDIRECT(E2)", "A3:B3");
    takes("INDIRECT(\"R2C1:R2C2\";0)", "A2:B2");
    takes("INDIRECT(\"R[1]C[-6]\";FALSE())", "A2");
    takes("INDIRECT(\"Other!R2C1:R2C2\";0)", "Other.A2:B2");
    takes("INDIRECT(\"$Other.$A$2:$B$2\")", "Other.A2:B2");
    takes("INDIRECT(ADDRESS(2;1))", "A2");
    takes("CHOOSE(2.7;A1:B1;A2:B2)", "A2:B2");
    takes("CHOOSE(\"2\";A1:B1;A2:B2)", "A2:B2");
    takes("CHOOSE(2;1/0;A2:B2)", "A2:B2");
    takes("IF(E1=2;IF(E1>1;A2:B2;A1:B1);A3:B3)", "A2:B2");
    takes("IF(TRUE();OFFSET(A1;CHOOSE(2;0;1);0;1;2);INDIRECT(\"zz\"))", "A2:B2");
    takes("IFNA(VLOOKUP(9;A1:B3;1;0);A2:B2)", "A2:B2");
    takes("IFERROR(INDEX(A1:B3;9;0);A2:B2)", "A2:B2");
    takes("A2:INDEX(A1:B3;2;2)", "A2:B2");
}

TEST_CASE("a choice that Calc refuses is refused, and the reason says what was asked for") {
    Desk desk;
    fill_with_depths(desk);
    const auto says = [&desk](const std::string& argument, const std::string& reason) {
        desk.put("G1", "=UC.LIFTS(" + argument + ";\"0.5 m\")");
        INFO(argument);
        CHECK(desk.error("G1") != 0);
        CHECK_THAT(desk.why("G1"), Catch::Contains(reason));
    };
    says("INDEX(A1:A3;4)", "INDEX asks for row 4 of A1:A3, which has 3 rows and 1 column");
    says("INDEX(A1:B3;2;3)", "INDEX asks for row 2, column 3 of A1:B3");
    says("INDEX(A1:B3;0;1)", "a range of 3 x 1 cells is no quantity");
    says("CHOOSE(3;A1:B1;A2:B2)", "CHOOSE is asked for value 3 of 2");
    says("CHOOSE(0;A1:B1)", "CHOOSE is asked for value 0 of 1");
    says("CHOOSE(1;;A2:B2)", "thickness: is left out");
    says("OFFSET(A1:B1;-1;0)", "OFFSET: it leaves the sheet");
    says("OFFSET(A1;1;0;0;2)", "OFFSET: a range of no rows or no columns is asked for");
    says("INDIRECT(\"nothing here\")", "INDIRECT: \"nothing here\" is no reference");
    says("INDIRECT(\"moving\")", "\"moving\" is no reference, nor a name that stands for cells");
    says("INDIRECT(\"A2\";0)", "INDIRECT: \"A2\" is no reference by numbers of row and column");
    says("IF(E1=2;;A2:B2)", "thickness: 0 is not possible");
    says("IF(E4;A2:B2)", "thickness: 0 is not possible");
}

TEST_CASE("where Calc goes a way that is not followed, no other number is explained") {
    Desk desk;
    fill_with_depths(desk);
    for (const char* argument : {"IFERROR(A2:B2;5)", "INDEX((A1:B3~A2:B4);2;0;2)"}) {
        desk.put("G1", std::string("=UC.LIFTS(") + argument + ";\"0.5 m\")");
        INFO(argument);
        CHECK(desk.error("G1") == 0);
        CHECK_THAT(desk.why("G1"),
                   Catch::StartsWith("G1 shows no error; how it came about cannot be derived"));
    }
    desk.put("G2", "=UC.CONVERT(UC.QUANTITY(RAND()+1;\"m\");\"mm\")");  // each time another number
    CHECK_THAT(desk.why("G2"),
               Catch::StartsWith("G2 shows ") && Catch::Contains(", and its formula followed here gives "));
}

}  // namespace undercroft::tests
