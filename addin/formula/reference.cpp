#include "addin/formula/reference.hpp"

#include <algorithm>

#include "addin/formula/cursor.hpp"

namespace undercroft::addin {

std::string column_letters(std::int32_t column) {
    std::string letters;
    for (std::int32_t n = column + 1; n > 0; n = (n - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
    return letters;
}

std::string cell_letters(std::int32_t column, std::int32_t row) {
    return column_letters(column) + std::to_string(row + 1);
}

std::string sheet_prefix(std::string_view sheet) {
    const bool plain = !sheet.empty() && !is_digit(sheet.front()) &&
                       std::all_of(sheet.begin(), sheet.end(), is_sheet_letter);
    if (plain) return std::string(sheet) + ".";
    std::string quoted = "'";
    for (const char c : sheet) quoted += c == '\'' ? std::string("''") : std::string(1, c);
    return quoted + "'.";
}

std::string CellReference::text() const {
    const auto corner = [this](const CellAddress& address) {
        if (whole_columns) return column_letters(address.column);
        if (whole_rows) return std::to_string(address.row + 1);
        return cell_letters(address.column, address.row);
    };
    const std::string file = document.empty() ? std::string() : "'" + document + "'#";
    const std::string where = sheet.empty() ? std::string() : sheet_prefix(sheet);
    const std::string to = last_sheet.empty() ? std::string() : sheet_prefix(last_sheet);
    return file + where + corner(first) + (is_range ? ":" + to + corner(last) : std::string());
}

}  // namespace undercroft::addin
