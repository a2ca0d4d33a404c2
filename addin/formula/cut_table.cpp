#include "addin/formula/cut_table.hpp"

#include <algorithm>

#include "addin/catalogue/catalogue.hpp"

namespace undercroft::addin {

namespace {

bool shows_nothing(const ResultItem& item) {
    const std::string* text = std::get_if<std::string>(&item);
    return std::holds_alternative<std::monostate>(item) || (text != nullptr && text->empty());
}

}  // namespace

std::optional<std::size_t> rows_of_table(const Evaluator& values, const Node& formula) {
    std::vector<Branch> branches;
    const Node taken = values.followed(formula, branches);
    const Function* function = taken.kind == NodeKind::call ? find_function(taken.text) : nullptr;
    if (function == nullptr || function->outcome.type.shape != Shape::table) return std::nullopt;
    return rows_given(*function, values.arguments(taken, *function));
}

std::size_t rows_given(const Function& function, const std::vector<FormulaValue>& values) {
    const Answer answer = function.call(cells_of(values));
    const auto& rows = std::get<ResultRows>(answer);
    std::size_t filled = rows.size();
    while (filled > 1 && std::all_of(rows[filled - 1].begin(), rows[filled - 1].end(), shows_nothing))
        --filled;
    return filled - 1;  // the first holds the units
}

std::string extent_text(std::size_t rows, std::size_t shown) {
    const std::string text =
        std::to_string(rows) + " rows, " + std::to_string(std::min(rows, shown)) + " shown";
    if (shown >= rows) return text;
    return text +
           ": the range is too short for the table. Delete it, and enter its formula in one cell with "
           "Ctrl+Shift+Enter: Calc spreads the whole table";
}

}  // namespace undercroft::addin
