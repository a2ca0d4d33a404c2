#include "addin/generate/example_call.hpp"

#include <algorithm>

#include "addin/catalogue/catalogue.hpp"
#include "addin/generate/guide.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

std::string written_array(const WrittenRows& rows) {
    std::string text;
    for (const auto& row : rows) text += (text.empty() ? "" : "|") + joined(row, ";");
    return "{" + text + "}";
}

bool has_unit_row(const WrittenRows& rows) {
    const auto is_unit = [](const std::string& cell) {
        return cell.size() > 2 && cell.front() == '"' && !is_digit(cell[1]) && cell[1] != '-' &&
               cell[1] != '+';
    };
    return !rows.empty() && std::all_of(rows.front().begin(), rows.front().end(), is_unit);
}

ExampleCall::ExampleCall(const Function& function) {
    for (const std::string& formula : formulas_to_try(function)) {
        call_ = parse_formula(formula);
        if (call_.kind != NodeKind::call || call_.text != function.name) continue;
        formula_ = formula;
        return;
    }
}

WrittenRows ExampleCall::table(std::size_t argument) const {
    WrittenRows rows;
    if (!stands(argument)) return rows;
    const Node& given = call_.children[argument];
    for (const ExampleTable& published : example_tables()) {
        if (given.kind != NodeKind::name || published.name != given.text) continue;
        for (const auto& row : published.rows) {
            auto& made = rows.emplace_back();
            for (const std::string& cell : row) {
                std::string_view rest = cell;
                const bool is_number = take_number(rest) && rest.empty();
                made.push_back(is_number ? cell : '"' + cell + '"');
            }
        }
    }
    if (given.kind != NodeKind::array) return rows;
    for (const Node& row : call_.children[argument].children) {
        auto& made = rows.emplace_back();
        for (const Node& item : row.children) made.emplace_back(text_of_node(formula_, item));
    }
    return rows;
}

std::string ExampleCall::with(const std::map<std::size_t, std::string>& changed) const {
    std::size_t arguments = call_.children.size();
    if (!changed.empty()) arguments = std::max(arguments, changed.rbegin()->first + 1);
    std::vector<std::string> texts(arguments);
    for (std::size_t i = 0; i < arguments; ++i) {
        const auto other = changed.find(i);
        if (other != changed.end())
            texts[i] = other->second;
        else if (i < call_.children.size())
            texts[i] = text_of_node(formula_, call_.children[i]);
    }
    return call_.text + "(" + joined(texts, "; ") + ")";
}

}  // namespace undercroft::addin
