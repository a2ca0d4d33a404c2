#include "addin/generate/example_desk.hpp"

#include "addin/catalogue/catalogue.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

ExampleDesk::ExampleDesk() {
    for (const ExampleTable& table : example_tables()) {
        std::vector<std::vector<OwnedGrid::Item>> rows;
        for (const std::vector<std::string>& cells : table.rows) {
            auto& row = rows.emplace_back();
            for (const std::string& cell : cells) {
                std::string_view rest = cell;
                const std::optional<double> number = take_number(rest);
                if (number && rest.empty())
                    row.emplace_back(*number);
                else
                    row.emplace_back(to_utf16(cell));
            }
        }
        tables_.emplace(table.name, FormulaValue(std::move(rows)));
    }
}

FormulaValue ExampleDesk::value_of_name(const Node& node) const {
    const auto table = tables_.find(node.text);
    return table == tables_.end() ? Evaluator::value_of_name(node) : table->second;
}

}  // namespace undercroft::addin
