// Parts of formulas computed without an office.
#include <catch2/catch.hpp>

#include "addin/formula/evaluate.hpp"
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
                                                          {"={1;\"m\"}", "1 m"}}) {
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
             {"=1~2", "the operator ~" + here},
             {"=UC.WHY(A1)", "UC.WHY inside another function" + here},
             {"=UC.PIT.VOLUME(1;2;3;4;5;6;7)", "UC.PIT.VOLUME takes at most 6 arguments, 7 are given"}}) {
        CAPTURE(formula);
        CHECK(computed(formula) == why);
    }
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
