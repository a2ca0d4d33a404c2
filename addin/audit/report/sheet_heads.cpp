#include "addin/audit/report/sheet_heads.hpp"

#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// Rows from the top among which the heads of a sheet stand.
constexpr std::int32_t farthest_row = 20;
constexpr std::string_view reasons = "reason; blank";

bool is_row_of_heads(const std::map<std::string, std::int32_t, std::less<>>& columns) {
    const auto has = [&](std::string_view head) { return columns.find(head) != columns.end(); };
    return has("value") && (has("unit") || has("units") || has("symbol") || has("description"));
}

}  // namespace

SheetHeads::SheetHeads(const Book& book) : book_(book), sheets_(book.sheets.size()) {
    for (std::size_t s = 0; s < book.sheets.size(); ++s) {
        const std::vector<BookCell>& cells = book.sheets[s].cells;
        for (std::size_t i = 0; i < cells.size() && cells[i].row <= farthest_row;) {
            Heads heads;
            heads.row = cells[i].row;
            for (; i < cells.size() && cells[i].row == heads.row; ++i) {
                if (cells[i].is_formula() || cells[i].text() == nullptr) continue;
                const std::string head = lower_case(*cells[i].text());
                heads.columns.emplace(head, cells[i].column);
                if (head.starts_with(reasons)) heads.first_helper = cells[i].column;
            }
            if (!is_row_of_heads(heads.columns)) continue;
            sheets_[s] = std::move(heads);
            break;
        }
    }
}

std::int32_t SheetHeads::column(std::int32_t sheet, std::initializer_list<std::string_view> heads) const {
    const auto& columns = sheets_[static_cast<std::size_t>(sheet)].columns;
    for (const std::string_view head : heads)
        if (const auto found = columns.find(head); found != columns.end()) return found->second;
    return -1;
}

const BookCell* SheetHeads::cell(const Spot& in_row, std::initializer_list<std::string_view> heads) const {
    const std::int32_t found = column(in_row.sheet, heads);
    return found < 0 ? nullptr : book_.find({in_row.sheet, in_row.row, found});
}

}  // namespace undercroft::audit
