/// \file desk.hpp
/// Formulas computed without a sheet, with the tables of the worked examples by their names.
#pragma once

#include <map>
#include <string>

#include "addin/formula/evaluate.hpp"
#include "sheets/builder/worked_examples.hpp"
#include "tests/support/files.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

inline const sheets::WorkedExamples& worked_examples() {
    static const sheets::WorkedExamples examples =
        sheets::read_worked_examples(file_text("sheets/worked-examples.txt"));
    return examples;
}

class FormulaDesk final : public addin::Evaluator {
public:
    FormulaDesk() {
        using Item = addin::OwnedGrid::Item;
        for (const sheets::ExampleTable& table : worked_examples().tables) {
            std::vector<std::vector<Item>> rows;
            for (const std::vector<std::string>& cells : table.rows) {
                rows.emplace_back();
                for (const std::string& cell : cells) {
                    const std::optional<double> number = sheets::number_in(cell);
                    rows.back().push_back(number ? Item(*number) : Item(to_utf16(cell)));
                }
            }
            tables_.emplace(table.name, addin::FormulaValue(std::move(rows)));
        }
    }

    [[nodiscard]] addin::FormulaValue value(const std::string& formula) const {
        return value_of(addin::parse_formula(formula));
    }
    [[nodiscard]] double number(const std::string& formula) const {
        const addin::FormulaValue result = value(formula);
        INFO(formula);
        REQUIRE(result.number() != nullptr);
        return *result.number();
    }

protected:
    addin::FormulaValue value_of_name(const addin::Node& node) const override {
        const auto table = tables_.find(node.text);
        return table == tables_.end() ? Evaluator::value_of_name(node) : table->second;
    }

private:
    std::map<std::string, addin::FormulaValue> tables_;
};

/// The refusal of a formula that must be refused.
inline Refused refusal_of(const std::string& formula) {
    try {
        (void)FormulaDesk().value(formula);
    } catch (const Refused& refused) {
        return refused;
    }
    FAIL("not refused: " << formula);
    throw std::logic_error("unreachable");
}

}  // namespace undercroft::tests
