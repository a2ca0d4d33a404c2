#include "addin/generate/pasted_cells.hpp"

#include <algorithm>

#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/formula.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

/// The cells that an argument of a formula stands for: an array written out, or a published table.
TextRows cells_of_argument(std::string_view formula, const Node& argument) {
    TextRows cells;
    if (argument.kind == NodeKind::name) {
        for (const ExampleTable& table : example_tables())
            if (table.name == argument.text) return table.rows;
    }
    if (argument.kind != NodeKind::array) return cells;
    for (const Node& row : argument.children) {
        auto& made = cells.emplace_back();
        for (const Node& item : row.children)
            made.push_back(item.kind == NodeKind::text ? item.text
                                                       : std::string(text_of_node(formula, item)));
    }
    return cells;
}

std::size_t width(const TextRows& rows) {
    std::size_t widest = 0;
    for (const auto& row : rows) widest = std::max(widest, row.size());
    return widest;
}

std::string address(std::size_t column, std::size_t row) {
    return std::string(1, static_cast<char>('A' + column)) + std::to_string(row);
}

void put_beside(TextRows& all, const TextRows& cells, std::size_t column) {
    if (all.size() < cells.size()) all.resize(cells.size());
    for (std::size_t r = 0; r < cells.size(); ++r) {
        all[r].resize(column);
        all[r].insert(all[r].end(), cells[r].begin(), cells[r].end());
    }
}

}  // namespace

void paste_tables(ShownResult& shown) {
    const std::string formula = shown.formula.substr(1);
    const Node call = parse_formula(formula);
    if (call.kind != NodeKind::call) return;
    std::string arguments;
    std::size_t column = 0;
    for (std::size_t i = 0; i < call.children.size(); ++i) {
        const Node& argument = call.children[i];
        if (i > 0) arguments += "; ";
        const TextRows cells = cells_of_argument(formula, argument);
        if (cells.empty()) {
            arguments += text_of_node(formula, argument);
            continue;
        }
        put_beside(shown.cells, cells, column);
        arguments += address(column, 1) + ":" + address(column + width(cells) - 1, cells.size());
        column += width(cells) + 1;
    }
    if (shown.cells.empty()) return;
    const std::size_t columns = width(shown.cells);
    for (auto& row : shown.cells) row.resize(columns);
    shown.formula = "=" + call.text + "(" + arguments + ")";
}

}  // namespace undercroft::addin
