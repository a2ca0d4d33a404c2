/// \file example_desk.hpp
/// Formulas of the reference computed without a sheet, with the published tables by their names.
#pragma once

#include <map>
#include <string>

#include "addin/formula/evaluate.hpp"

namespace undercroft::addin {

/// Of Calc's functions it knows none.
class ExampleDesk final : public Evaluator {
public:
    ExampleDesk();

protected:
    [[nodiscard]] FormulaValue value_of_name(const Node& node) const override;

private:
    std::map<std::string, FormulaValue> tables_;
};

}  // namespace undercroft::addin
