// Parts of formulas computed without an office.
#include "addin/formula/evaluate.hpp"
#include "tests/support/catch.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

using addin::Evaluator;
using addin::FormulaValue;
using addin::parse_formula;

namespace {

/// What a part comes to: a number, a text in quotes, a range by its rows, or why there is nothing.
std::string computed(const std::string& formula) {
    try {
        const FormulaValue value = Evaluator().value_of(parse_formula(formula));
        if (const double* number = value.number()) return exact_text(*number);
        if (const std::u16string* text = value.text()) return '"' + to_utf8(*text) + '"';
        return value.is_grid() ? addin::shown_as_given(value.cell()) : "nothing";
    } catch (const Refused& refused) {
        return refused.what();
    }
}

}  // namespace

TEST_CASE("literals and plain arithmetic") {
    for (const auto& [formula, result] :
         std::vector<std::pair<std::string, std::string>>{{"=5", "5"},
                                                          {"=\"305 mm\"", "\"305 mm\""},
                                                          {"=1+2", "3"},
                                                          {"=7-2", "5"},
                                                          {"=6*7", "42"},
                                                          {"=7/2", "3.5"},
                                                          {"=2^10", "1024"},
                                                          {"=-3", "-3"},
                                                          {"=+3", "3"},
                                                          {"=50%", "0.5"},
                                                          {"=1=1", "1"},
                                                          {"=1=2", "0"},
                                                          {"=1<>2", "1"},
                                                          {"=1<>1", "0"},
                                                          {"=1<2", "1"},
                                                          {"=2<2", "0"},
                                                          {"=3>2", "1"},
                                                          {"=2>2", "0"},
                                                          {"=2<=2", "1"},
                                                          {"=3<=2", "0"},
                                                          {"=2>=2", "1"},
                                                          {"=1>=2", "0"},
                                                          {"=\"a\"&\"b\"", "\"ab\""},
                                                          {"=\"No. \"&1.5", "\"No. 1.5\""},
                                                          {"={1;2|3;4}", "range of 2 x 2 cells"},
                                                          {"={1;\"m\"}", "1 m"},
                                                          {"=\"a\"=\"a\"", "1"},
                                                          {"=\"a\"=\"A\"", "0"},
                                                          {"=\"a\"<>\"b\"", "1"},
                                                          {"=\"a\"<\"b\"", "1"},
                                                          {"=\"b\">=\"a\"", "1"},
                                                          {"=1=\"1\"", "0"},
                                                          {"=2<\"1\"", "1"},
                                                          {"=\"1\"<2", "0"},
                                                          {"=TRUE()", "1"},
                                                          {"=FALSE()", "0"}}) {
        CAPTURE(formula);
        CHECK(computed(formula) == result);
    }
}

TEST_CASE("what cannot be computed says why") {
    const std::string here = " cannot be computed here: move the argument to a cell of its own";
    for (const auto& [formula, why] : std::vector<std::pair<std::string, std::string>>{
             {"=1/0", "the expression divides by zero"},
             {"=\"a\"+1", "a number is wanted in the expression, but there is \"a\""},
             {"=1*\"b\"", "a number is wanted in the expression, but there is \"b\""},
             {"=#REF!", "the formula holds #REF!"},
             {"=A1", "the cells A1" + here},
             {"=bed", "the name bed" + here},
             {"=SUM(1;2)", "the function SUM" + here},
             {"={1;2}&\"a\"", "a range joined to a text" + here},
             {"=1~2", "the operator ~ between ranges" + here},
             {"=UC.WHY(A1)", "UC.WHY inside another function" + here},
             {"=UC.PIT.VOLUME(1;2;3;4;5;6;7)", "UC.PIT.VOLUME takes at most 6 arguments, 7 are given"}}) {
        CAPTURE(formula);
        CHECK(computed(formula) == why);
    }
}

TEST_CASE("functions of Calc that choose take what Calc takes") {
    for (const auto& [formula, result] : std::vector<std::pair<std::string, std::string>>{
             {"=IF(1=1;5;6)", "5"},
             {"=IF(1=2;5;6)", "6"},
             {"=IF(1=2;5)", "0"},
             {"=IF(1=1;;6)", "0"},  // as LibreOffice 7.4.7
             {"=IF(1=2;5;)", "0"},
             {"=IF(1=1;5;1/0)", "5"},
             {"=IF(1=1;5;SUM(1;2))", "5"},
             {"=IF(1/0;5;6)", "the expression divides by zero"},
             {"=IFS(1=2;5;2=2;6;3=3;7)", "6"},
             {"=IFS(1=2;5)", "none of the conditions of IFS holds"},
             {"=SWITCH(\"b\";\"a\";1;\"b\";2;3)", "2"},
             {"=SWITCH(4;1;10;2;20;30)", "30"},
             {"=SWITCH(4;1;10;2;20)", "SWITCH finds none of its values equal"},
             {"=CHOOSE(2;10;20;30)", "20"},
             {"=CHOOSE(2.9;10;20;30)", "20"},
             {"=CHOOSE(4;10;20;30)", "CHOOSE is asked for value 4 of 3"},
             {"=IFERROR(1/0;7)", "7"},
             {"=IFERROR(3;7)", "3"},
             {"=IFERROR(SUM(1;2);7)",
              "the function SUM cannot be computed here: move the argument to a cell of its own"},
             {"=IFNA(1/0;7)", "the expression divides by zero"},
             {"=IFNA(UC.LOOKUP({0;0|1;1};5);7)", "7"},
             {"=INDEX({1;2|3;4};2;1)", "3"},
             {"=INDEX({1;2;3};2)", "2"},
             {"=INDEX({1|2|3};2)", "2"},
             {"=INDEX({1;2|3;4};3;1)", "INDEX asks for row 3, column 1 of a table of 2 rows and 2 columns"},
             {"=2*IF(1=1;CHOOSE(1;4;5);6)", "8"}}) {
        CAPTURE(formula);
        CHECK(computed(formula) == result);
    }
}

namespace {

/// Says which cells are asked for.
class Asked final : public addin::Evaluator {
public:
    mutable std::vector<addin::Branch> branches;

    [[nodiscard]] std::string taken(const std::string& formula) const {
        branches.clear();
        const addin::Node node = followed(addin::parse_formula(formula), branches);
        return node.kind == addin::NodeKind::reference ? node.reference.text() : node.text;
    }

protected:
    addin::FormulaValue value_of_reference(const addin::Node& node) const override {
        if (node.reference.text() == "C1") return addin::FormulaValue(2.0);
        if (node.reference.text() == "C2") return addin::FormulaValue(std::u16string(u"Site.D4"));
        return addin::FormulaValue::blank_cell();
    }
    std::optional<addin::CellReference> cells_of_name(const addin::Node& node) const override {
        if (node.text != "products") return std::nullopt;
        return addin::parse_formula("A1:C9").reference;
    }
};

}  // namespace

TEST_CASE("INDEX, OFFSET and INDIRECT are followed to the cells that Calc takes") {
    const Asked asked;
    for (const auto& [formula, cells] : std::vector<std::pair<std::string, std::string>>{
             {"=INDEX(A1:B9;3;2)", "B3"},      {"=INDEX(A1:B9;C1;1)", "A2"},
             {"=INDEX(A1:B9;0;2)", "B1:B9"},   {"=INDEX(A1:B9;3)", "A3:B3"},
             {"=INDEX(A1:A9;3)", "A3"},        {"=INDEX(A1:F1;3)", "C1"},
             {"=INDEX(B9:A1;3;2)", "B3"},      {"=INDEX(Site.A1:B9;3;2)", "Site.B3"},
             {"=INDEX(products;4;3)", "C4"},   {"=OFFSET(A1;3;2)", "C4"},
             {"=OFFSET(C4;-3;-2)", "A1"},      {"=OFFSET(A1:B1;3;0)", "A4:B4"},
             {"=OFFSET(A1;1;1;2;3)", "B2:D3"}, {"=OFFSET(products;1;0;1;1)", "A2"},
             {"=INDIRECT(\"B5\")", "B5"},      {"=INDIRECT(C2)", "Site.D4"},
             {"=INDIRECT(\"B\"&5)", "B5"},     {"=OFFSET(INDIRECT(\"B5\");1;0)", "B6"},
             {"=IF(C1>1;D1;D2)", "D1"},        {"=IF(A1=\"\";D1;D2)", "D1"},
             {"=IF(A1=0;D1;D2)", "D1"}}) {
        CAPTURE(formula);
        CHECK(asked.taken(formula) == cells);
    }
    CHECK(asked.taken("=IF(C1=2;INDEX(A1:A9;C1);0)") == "A2");
    REQUIRE(asked.branches.size() == 2);
    CHECK(asked.branches[0].says == "its condition holds");
    CHECK(asked.branches[1].says == "row 2 of A1:A9");
    for (const char* beyond : {"=INDEX(A1:B9;10;1)", "=INDEX(A1:B9;1;3)", "=OFFSET(A1;-1;0)",
                               "=OFFSET(A1;0;0;0)", "=INDIRECT(\"no reference\")", "=INDIRECT(\"1+1\")"}) {
        CAPTURE(beyond);
        CHECK_THROWS_AS(asked.taken(beyond), Refused);
    }
}

TEST_CASE("a blank cell is seen where it is referred to by itself") {
    const Asked asked;
    const auto why = [&asked](const std::string& formula) {
        try {
            (void)asked.value_of(addin::parse_formula(formula));
        } catch (const Refused& refused) {
            return std::string(refused.what());
        }
        return std::string("not refused");
    };
    CHECK(why("=UC.PIT.VOLUME(30;12;B7;1)") == "in UC.PIT.VOLUME: depth: the cell is blank (B7)");
    CHECK(why("=UC.PIPE.FLOW(0.3;0.01;0.013;B7)") ==
          "in UC.PIPE.FLOW: depth: the cell is blank (B7), which Calc hands over as 0: leave the argument "
          "out for "
          "its default, or write B7:B7");
    CHECK(why("=UC.PIT.VOLUME(30;12;1;1;B7)") == "not refused");  // the unit
    CHECK(why("=UC.CONVERT(\"1 m\";B7)") == "in UC.CONVERT: unit: the cell is blank (B7)");
}

TEST_CASE("calls of ours are computed, and what they refuse is told with the argument and the function") {
    CHECK(computed("=UC.CONVERT(\"1 ft\";\"mm\")") == "304.8");
    CHECK(computed("=UC.PRODUCT(\"2 m\";UC.PRODUCT(\"3 m\";\"4 m\";\"m2\")&\" m2\";\"m3\")") == "24");
    CHECK(computed("=UC.CONVERT(\"1 ft\";\"kg\")").starts_with("in UC.CONVERT: "));
    CHECK(computed("=UC.CONVERT(1/0;\"mm\")") == "quantity: the expression divides by zero");
    CHECK(computed("=UC.CONVERT(;\"mm\")") == "in UC.CONVERT: quantity: is left out");
    CHECK(computed("=UC.UNITS.OF.NOTHING(1)").find("cannot be computed here") != std::string::npos);
}

TEST_CASE("a value knows what it is, and hands itself over as a cell") {
    const FormulaValue nothing;
    CHECK(std::holds_alternative<std::monostate>(nothing.cell()));
    CHECK(nothing.number() == nullptr);
    CHECK(nothing.text() == nullptr);
    CHECK_FALSE(nothing.is_grid());
    const FormulaValue number(addin::Answer(2.5));
    REQUIRE(number.number() != nullptr);
    CHECK(std::get<double>(number.cell()) == 2.5);
    const FormulaValue text(addin::Answer(std::string("m")));
    REQUIRE(text.text() != nullptr);
    CHECK((std::get<std::u16string_view>(text.cell()) == u"m"));
    const FormulaValue table(addin::Answer(addin::ResultRows{{1.0, std::string("m")}, {2.0, {}}}));
    REQUIRE(table.is_grid());
    const addin::Grid& grid = *std::get<const addin::Grid*>(table.cell());
    CHECK(grid.rows() == 2);
    CHECK(grid.columns() == 2);
    CHECK(std::get<double>(grid.at(0, 0)) == 1);
    CHECK((std::get<std::u16string_view>(grid.at(0, 1)) == u"m"));
    CHECK(std::holds_alternative<std::monostate>(grid.at(1, 1)));
    CHECK(addin::cells_of({number, text, nothing}).size() == 3);
}

}  // namespace undercroft::tests
