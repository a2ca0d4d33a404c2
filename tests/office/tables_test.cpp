// Tables out of one function into the next, in array formulas and nested.
#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {
const char* bed =
    "\"20 m\";\"10 m\";\"0H:1V\";\"250 mm\";\"250 mm\";\"40 %\";\"rectangle\";\"1 m\";\"500 mm\";\"200 m\"";
}

TEST_CASE("a stage-storage table starts with its unit row and goes as it is into a lookup") {
    Desk desk;
    desk.put_array("A1:E12", std::string("=UC.STAGE.STORAGE(8;") + bed + ";\"mm;L\";11)");
    CHECK(desk.text("A1") == "mm");
    CHECK(desk.text("B1") == "L");
    CHECK(desk.text("D1") == "m3");
    CHECK(desk.number("A2") == 0);
    CHECK(desk.number("A10") == Approx(1000).epsilon(1e-12));
    CHECK(desk.number("D10") == Approx(140).epsilon(1e-12));
    CHECK(desk.text("A11").empty());  // 8 steps meet both kinks: two rows are made up with blanks
    CHECK(desk.error("A12") == 0);
    desk.put("G1", "=UC.LOOKUP(A1:B12;\"0.5 m\";;\"m3\")");
    CHECK(desk.number("G1") == Approx(50).epsilon(1e-12));
    desk.put("G2", "=UC.LOOKUP(A1:B12;\"1.01 m\")");
    CHECK(desk.error("G2") == not_available);
    CHECK_THAT(desk.why("G2"), Catch::Contains("nothing is extrapolated"));
}

TEST_CASE("a table that is higher than what is asked for says how high it is") {
    Desk desk;
    desk.put("A1", std::string("=UC.STAGE.STORAGE(8;") + bed + ";;5)");
    CHECK(desk.error("A1") == num_error);
    CHECK_THAT(desk.why("A1"), Catch::Contains("the table has 9 rows of values; 5 are asked for"));
}

TEST_CASE("a table nested in another function needs no cells of its own") {
    Desk desk;
    desk.put("A1", std::string("=INDEX(UC.STAGE.STORAGE(4;") + bed + ");3;4)");
    CHECK(desk.number("A1") == Approx(20).epsilon(1e-12));
}

TEST_CASE("the catalogue lists itself in cells") {
    Desk desk;
    desk.put_array("A1:D6", "=UC.CATALOGUE()");
    CHECK(desk.text("A1") == "function");
    CHECK(desk.text("A2") == "UC.CONVERT");
    desk.put("F1", "=UC.SOURCE(\"uc.pit.batter\")")
        .put("F2", "=UC.SOURCE(\"nothing\")")
        .put("F3", "=UC.VERSION()");
    CHECK_THAT(desk.text("F1"), Catch::Contains("29 CFR 1926") && Catch::Contains("licensed engineer"));
    CHECK(desk.error("F2") == not_available);
    CHECK_FALSE(desk.text("F3").empty());
}

TEST_CASE("a grid of spot levels may carry a unit row") {
    Desk desk;
    desk.put("A1", "ft").put("B1", "ft").put("A2", 10).put("B2", 10).put("A3", 10).put("B3", 10);
    desk.put("D1", "=UC.PIT.GRID(A1:B3;\"10 m\";\"10 m\";\"5 ft\";\"m3\")")
        .put("D2", "=UC.PIT.GRID(A2:B3;\"10 m\";\"10 m\";5;\"m3\")");
    CHECK(desk.number("D1") == Approx(100 * 5 * 0.3048).epsilon(1e-13));
    CHECK(desk.number("D2") == Approx(500).epsilon(1e-13));
    desk.put("B3", "");
    CHECK(desk.error("D1") == value_error);
    CHECK_THAT(desk.why("D1"), Catch::Contains("row 3, column 2: the cell is blank"));
}

}  // namespace undercroft::tests
