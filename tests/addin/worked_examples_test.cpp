// The file of worked examples against the core, and the rule that every function has one.
#include <algorithm>
#include <map>

#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/evaluate.hpp"
#include "tests/addin/desk.hpp"
#include "tests/support/files.hpp"
#include "tests/support/near.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

using namespace addin;

TEST_CASE("every worked example comes out as published", "[published]") {
    const FormulaDesk desk;
    for (const sheets::WorkedExample& example : worked_examples().rows) {
        CAPTURE(example.line, example.formula, example.text, example.source);
        FormulaValue value;
        CHECK_NOTHROW(value = desk.value_of(parse_formula(example.formula)));
        if (example.number) {
            CHECK(value.number() != nullptr);
            if (value.number() == nullptr) continue;
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
    for (const sheets::WorkedExample& example : worked_examples().rows)
        walk(parse_formula(example.formula), [&uses](const Node& node) {
            if (node.kind == NodeKind::call) ++uses[node.text];
        });
    for (const Group& group : catalogue()) {
        if (group.title == "For the checker") continue;  // these explain; they compute nothing
        for (const Function& function : group.functions) {
            CAPTURE(function.name);
            CHECK(uses[function.name] > 0);
        }
    }
}

TEST_CASE("each worked example names its own source") {
    for (const sheets::WorkedExample& example : worked_examples().rows) {
        CAPTURE(example.line, example.formula, example.source);
        CHECK(example.source.size() > 2);
        CHECK(lower_case(example.source).find("shared check") == std::string::npos);
    }
}

TEST_CASE("the readme says how many worked examples are published, mathematics and from memory") {
    std::map<std::string, int> of;
    for (const sheets::WorkedExample& example : worked_examples().rows) ++of[example.tag];
    const auto count = [&](const std::string& tag) { return std::to_string(of[tag]); };
    const std::string said = "Of its " + std::to_string(worked_examples().rows.size()) +
                             " worked examples " + count("published") + " are published figures, " +
                             count("math") + " mathematics, " + count("from memory") +
                             " from memory and recomputed, " + count("common practice") +
                             " common practice.";
    std::string readme = file_text("README.md");
    std::replace(readme.begin(), readme.end(), '\n', ' ');  // wherever its lines break
    CHECK_THAT(readme, Catch::Contains(said));
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
