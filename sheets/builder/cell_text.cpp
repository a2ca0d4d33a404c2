#include "sheets/builder/cell_text.hpp"

namespace undercroft::sheets {

std::string cell_text(int row, int column, bool fixed) {
    std::string letters;
    for (int n = column + 1; n > 0; n = (n - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
    const std::string mark = fixed ? "$" : "";
    return mark + letters + mark + std::to_string(row + 1);
}

}  // namespace undercroft::sheets
