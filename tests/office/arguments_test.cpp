// What Calc hands over - numbers, texts, pairs, blanks, errors, nothing - and what the cell shows for it.
#include "tests/office/desk.hpp"

namespace undercroft::tests {

TEST_CASE("a pair's unit cell is live, not decoration") {
    Desk desk;
    desk.put("A1", 305).put("B1", "mm").put("C1", "=UC.CONVERT(A1:B1;\"m\")");
    CHECK(desk.number("C1") == 0.305);
    desk.put("B1", "in");
    CHECK(desk.number("C1") == Approx(305 * 0.0254).epsilon(1e-15));
    desk.put("B1", "kg");
    CHECK(desk.error("C1") == value_error);
    CHECK_THAT(desk.why("C1"), Catch::Contains("305 kg is a mass; a length is wanted") ||
                                   Catch::Contains("is a mass; a length is wanted"));
}

TEST_CASE("a number, a text and a pair of cells are the same quantity") {
    Desk desk;
    desk.put("A1", 500).put("B1", "mm");
    desk.put("C1", "=UC.PIT.VOLUME(20;10;A1:B1;2)")
        .put("C2", "=UC.PIT.VOLUME(20;10;\"500 mm\";2)")
        .put("C3", "=UC.PIT.VOLUME(20;10;0.5;\"2H:1V\")");
    CHECK(desk.number("C1") == Approx(115.6666666666667).epsilon(1e-14));
    CHECK(desk.number("C2") == desk.number("C1"));
    CHECK(desk.number("C3") == desk.number("C1"));
    desk.put("A2", "500 mm").put("C4", "=UC.PIT.VOLUME(20;10;A2;2)");
    CHECK(desk.number("C4") == desk.number("C1"));
}

TEST_CASE("a blank single cell arrives as 0, and UC.WHY sees that it is blank") {
    Desk desk;
    desk.put("C1", "=UC.PIT.VOLUME(A1;10;1;\"0H:1V\")");
    CHECK(desk.error("C1") == num_error);
    CHECK(desk.why("C1") == "base length: the cell is blank (A1)");
    desk.put("A1", 0.0);
    CHECK_THAT(desk.why("C1"),
               Catch::Contains("base length: 0 is not possible, and a blank cell arrives as 0"));
}

TEST_CASE("a required argument that is a blank cell is refused by its name") {
    Desk desk;
    const auto says = [&desk](const std::string& formula, const std::string& sentence) {
        desk.put("C1", formula);
        INFO(formula);
        CHECK(desk.error("C1") != 0);
        CHECK_THAT(desk.why("C1"), Catch::StartsWith(sentence));
    };
    says("=UC.PIT.VOLUME(30;12;A1;\"1H:1V\")", "depth: the cell is blank (A1)");
    says("=UC.PIT.VOLUME(30;12;A1:A1;\"1H:1V\")", "depth: the cell is blank");
    says("=UC.PIT.VOLUME(30;12;A1:B1;\"1H:1V\")", "depth: the cell of the number is blank");
    says("=UC.ATMOST(A1;\"48 h\")", "value: the cell is blank (A1)");
    says("=UC.QUANTITY(A1;\"mm\")", "number: the cell is blank (A1)");
    says("=UC.CONVERT(\"1 m\";A1)", "unit: the cell is blank (A1)");
    says("=2*UC.LIFTS(A1;\"1 m\")", "thickness: the cell is blank (A1)");
    says("=UC.LIFTS(UC.CONVERT(A1;\"m\");\"1 m\")",
         "thickness: in UC.CONVERT: quantity: the cell is blank (A1)");
}

TEST_CASE("an optional argument that is a blank cell is the default wherever Calc lets it be seen") {
    Desk desk;
    desk.put("B1", "%");
    const auto same = [&desk](const std::string& blank, const std::string& left_out) {
        desk.put("C1", "=" + blank).put("C2", "=" + left_out);
        INFO(blank);
        CHECK(desk.error("C1") == 0);
        CHECK(desk.number("C1") == desk.number("C2"));
    };
    same("UC.BED.PORTS(7;13;A1)", "UC.BED.PORTS(7;13)");
    same("UC.RUNOFF.DEPTH(80;\"4 in\";A1:A1)", "UC.RUNOFF.DEPTH(80;\"4 in\")");
    same("UC.RUNOFF.DEPTH(80;\"4 in\";A1:B1)", "UC.RUNOFF.DEPTH(80;\"4 in\")");
    same("UC.LOAD.WHEEL(72;0.25;0.51;0.75;1.15;;A1:A1)", "UC.LOAD.WHEEL(72;0.25;0.51;0.75;1.15)");
    same("UC.PIT.VOLUME(30;12;1;1;A1)", "UC.PIT.VOLUME(30;12;1;1)");
    same("UC.LOOKUP({0;0|1;1};0.5;A1)", "UC.LOOKUP({0;0|1;1};0.5)");
    // A single cell arrives as 0, which may be meant: it is taken for neither, and UC.WHY sees which.
    const auto says = [&desk](const std::string& formula, const std::string& sentence) {
        desk.put("C1", "=" + formula);
        INFO(formula);
        CHECK(desk.error("C1") != 0);
        CHECK(desk.why("C1") == sentence);
    };
    says("UC.RUNOFF.DEPTH(80;\"4 in\";A1)",
         "abstraction ratio: the cell is blank (A1), which Calc hands over as 0: leave the argument out for "
         "its "
         "default, 0.2, or write A1:A1");
    says(
        "UC.LOAD.WHEEL(72;0.25;0.51;0.75;1.15;;A1)",
        "impact: the cell is blank (A1), which Calc hands over as 0: leave the argument out for its default, "
        "TRUE, or write A1:A1");
    says("UC.PIPE.FLOW(0.3;0.01;0.013;A1)",
         "depth: the cell is blank (A1), which Calc hands over as 0: leave the argument out for its default, "
         "or "
         "write A1:A1");
    desk.put("A1", 0.0);
    CHECK_THAT(desk.why("C1"), Catch::StartsWith("depth: 0 has no unit"));
}

TEST_CASE("an everyday slip of units shows an error and its reason") {
    Desk desk;
    desk.put("A1", 305).put("C1", "=UC.PIT.VOLUME(30;12;A1;\"1H:1V\")");
    CHECK(desk.error("C1") == num_error);
    CHECK_THAT(desk.why("C1"), Catch::Contains("depth: 305 m is unusual; usual is"));
    desk.put("B1", "mm").put("C2", "=UC.PIT.VOLUME(30;12;UC.QUANTITY(A1;B1);\"1H:1V\")");
    CHECK(desk.number("C2") == Approx(30 * 12 * 0.305 + 42 * 0.305 * 0.305 + 4 / 3.0 * std::pow(0.305, 3)));
    desk.put("C3", "=UC.BED.LENGTH(\"100 ft\";0.3)");
    CHECK(desk.error("C3") == value_error);
    CHECK_THAT(desk.why("C3"), Catch::Contains("end margin: has no unit, and another argument is in feet"));
    desk.put("C4", "=UC.TOTAL(UC.PRODUCT(2;\"3 ft\";\"ft\");\"1 ft\";\"ft\")");
    CHECK_THAT(desk.why("C4"),
               Catch::Contains("a: 6 has no unit, and the b has one: write the unit of both"));
}

TEST_CASE("a blank in a pair is seen as blank and refused") {
    Desk desk;
    desk.put("B1", "mm").put("C1", "=UC.PIT.VOLUME(A1:B1;10;1;\"0H:1V\")");
    CHECK(desk.error("C1") == value_error);
    CHECK_THAT(desk.why("C1"), Catch::Contains("base length: the cell of the number is blank"));
    desk.put("A2", 5).put("C2", "=UC.PIT.VOLUME(A2:B2;10;1;\"0H:1V\")");
    CHECK(desk.error("C2") == value_error);
    CHECK_THAT(desk.why("C2"), Catch::Contains("blank unit cell"));
}

TEST_CASE("text where a number is wanted") {
    Desk desk;
    desk.put("A1", "abc")
        .put("B1", "m")
        .put("C1", "=UC.PIT.VOLUME(A1:B1;10;1;\"0H:1V\")")
        .put("C2", "=UC.PIT.VOLUME(A1;10;1;\"0H:1V\")");
    CHECK(desk.error("C1") == value_error);
    CHECK_THAT(desk.why("C1"), Catch::Contains("'abc' is text where a number is wanted"));
    CHECK(desk.error("C2") == value_error);
    CHECK_THAT(desk.why("C2"), Catch::Contains("'abc' is no quantity"));
    desk.put("C3", "=UC.PIT.VOLUME(\"12\";10;1;\"0H:1V\")");
    CHECK(desk.error("C3") == value_error);
    CHECK_THAT(desk.why("C3"), Catch::Contains("only a number"));
    desk.put("C4", "=UC.PIT.VOLUME(\"1,5 m\";10;1;\"0H:1V\")");
    CHECK_THAT(desk.why("C4"), Catch::Contains("type 1.5 m for a decimal"));
}

TEST_CASE("an error in an argument stays an error, and the reason names its cell") {
    Desk desk;
    desk.put("A1", "=1/0")
        .put("B1", "m")
        .put("C1", "=UC.PIT.VOLUME(A1;10;1;\"0H:1V\")")
        .put("C2", "=UC.PIT.VOLUME(A1:B1;10;1;\"0H:1V\")");
    CHECK(desk.error("C1") == 532);
    CHECK(desk.error("C2") == parameter_list_error);
    CHECK_THAT(desk.why("C2"), Catch::Contains("rests on A1, which shows #DIV/0!"));
}

TEST_CASE("an argument left out takes its default, or is asked for") {
    Desk desk;
    desk.put("C1", "=UC.BED.PORTS(7;13)").put("C2", "=UC.BED.PORTS(7;13;)").put("C3", "=UC.BED.PORTS(7)");
    CHECK(desk.number("C1") == 14);
    CHECK(desk.number("C2") == 14);
    CHECK(desk.error("C3") == value_error);
    CHECK_THAT(desk.why("C3"), Catch::Contains("units: is left out"));
    desk.put("C4", "=UC.ORDER(10;;3)");
    CHECK(desk.number("C4") == 12);
}

TEST_CASE("each cause has its own error") {
    Desk desk;
    desk.put("C1", "=UC.PIT.VOLUME(\"5 kg\";10;1;\"0H:1V\")")
        .put("C2", "=UC.PIT.VOLUME(-5;10;1;\"0H:1V\")")
        .put("C3", "=UC.PIT.BATTER(\"B\";\"25 ft\")")
        .put("C4", "=UC.STONE.POROSITY(2700;2650)");
    CHECK(desk.error("C1") == value_error);
    CHECK(desk.error("C2") == num_error);
    CHECK(desk.error("C3") == not_available);
    CHECK(desk.error("C4") == num_error);
    CHECK_THAT(desk.why("C3"), Catch::Contains("licensed engineer"));
    desk.put("D1", "=ISERROR(C1)")
        .put("D2", "=ISNA(C3)")
        .put("D3", "=SUM(C1:C4)")
        .put("D4", "=ERROR.TYPE(C1)");
    CHECK(desk.number("D1") == 1);
    CHECK(desk.number("D2") == 1);
    CHECK(desk.error("D3") != 0);  // no sum passes over an error
    CHECK(desk.number("D4") == 3);
}

TEST_CASE("a verdict is the number 1 or 0") {
    Desk desk;
    desk.put("C1", "=UC.ATLEAST(\"1 m\";\"99 cm\")")
        .put("C2", "=UC.ATMOST(\"1 m\";\"99 cm\")")
        .put("C3", "=IF(UC.ATLEAST(2;1);\"yes\";\"no\")");
    CHECK(desk.number("C1") == 1);
    CHECK(desk.number("C2") == 0);
    CHECK(desk.error("C2") == 0);
    CHECK(desk.text("C3") == "yes");
}

TEST_CASE("a function returned into Calc's own arithmetic is a number") {
    Desk desk;
    desk.put("C1", "=2*UC.CONVERT(\"1 ft\";\"mm\")+0.4");
    CHECK(desk.number("C1") == Approx(610).epsilon(1e-14));
}

TEST_CASE("TRUE, a 1 x 1 range, a column instead of a row, a range too large") {
    Desk desk;
    desk.put("A1", "=TRUE()").put("C1", "=UC.LIFTS(A1;\"1 m\")");
    CHECK(desk.number("C1") == 1);  // Calc hands TRUE over as the number 1
    desk.put("A2", 3).put("C2", "=UC.LIFTS(A2:A2;\"1 m\")");
    CHECK(desk.number("C2") == 3);
    desk.put("A3", 3).put("A4", "m").put("C3", "=UC.LIFTS(A3:A4;\"1 m\")");
    CHECK(desk.error("C3") == value_error);
    CHECK_THAT(desk.why("C3"), Catch::Contains("side by side"));
    desk.put("C4", "=UC.LIFTS(E1:J50;\"1 m\")");
    CHECK(desk.error("C4") == value_error);
}

}  // namespace undercroft::tests
