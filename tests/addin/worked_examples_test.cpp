// The file of worked examples against the core, and the rule that every function has one.
#include <map>

#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/evaluate.hpp"
#include "sheets/builder/worked_examples.hpp"
#include "tests/support/files.hpp"
#include "tests/support/near.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

using namespace addin;

namespace {

/// Computes formulas without a sheet; of Calc's functions it knows INDEX.
class Desk final : public Evaluator {
protected:
    FormulaValue value_of_foreign_call(const Node& node) const override {
        if (node.text != "INDEX" || node.children.size() != 3) return Evaluator::value_of_foreign_call(node);
        const FormulaValue table = value_of(node.children[0]);
        const FormulaValue row = value_of(node.children[1]);
        const FormulaValue column = value_of(node.children[2]);
        const Cell cell = table.cell();
        const Scalar item = std::get<const Grid*>(cell)->at(static_cast<std::size_t>(*row.number()) - 1,
                                                            static_cast<std::size_t>(*column.number()) - 1);
        if (const double* number = std::get_if<double>(&item)) return FormulaValue(*number);
        if (const auto* text = std::get_if<std::u16string_view>(&item))
            return FormulaValue(std::u16string(*text));
        return {};
    }
};

std::vector<sheets::WorkedExample> examples() {
    return sheets::read_worked_examples(file_text("sheets/worked-examples.txt"));
}

}  // namespace

TEST_CASE("every worked example comes out as published", "[published]") {
    const Desk desk;
    for (const sheets::WorkedExample& example : examples()) {
        CAPTURE(example.line, example.formula, example.text, example.source);
        FormulaValue value;
        REQUIRE_NOTHROW(value = desk.value_of(parse_formula(example.formula)));
        if (example.number) {
            REQUIRE(value.number() != nullptr);
            CAPTURE(*value.number());
            CHECK(example.agrees(*value.number()));
        } else {
            REQUIRE(value.text() != nullptr);
            CHECK(to_utf8(*value.text()) == example.text);
        }
    }
}

TEST_CASE("every function has a worked example") {
    std::map<std::string, int> uses;
    for (const sheets::WorkedExample& example : examples())
        walk(parse_formula(example.formula), [&uses](const Node& node) {
            if (node.kind == Node::Kind::call) ++uses[node.text];
        });
    for (const Group& group : catalogue()) {
        if (group.title == "For the checker") continue;  // these explain; they compute nothing
        for (const Function& function : group.functions) {
            CAPTURE(function.name);
            CHECK(uses[function.name] > 0);
        }
    }
}

TEST_CASE("a file of worked examples with a mistake is refused with its line") {
    CHECK_THROWS_WITH(sheets::read_worked_examples("\nUC.LIFTS(1;1) | 1 | exact | math\n"),
                      Catch::Contains("line 2") && Catch::Contains("five fields"));
    CHECK_THROWS_WITH(sheets::read_worked_examples("UC.LIFTS(1;1) | 1 | about | math | me\n"),
                      Catch::Contains("no tolerance"));
    CHECK_THROWS_WITH(sheets::read_worked_examples("UC.LIFTS(1;1) | 1 | exact | hearsay | me\n"),
                      Catch::Contains("no tag"));
}

}  // namespace undercroft::tests
