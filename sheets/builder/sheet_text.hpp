/// \file sheet_text.hpp
/// A sheet as text: what a checker can read on paper. See sheets/text/README.md for the grammar.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sheets/builder/row.hpp"

namespace undercroft::sheets {

struct Sheet {
    std::string name;
    std::string title;
    bool wide = false;       ///< landscape, with more columns
    bool unprinted = false;  ///< kept from the printer
    std::vector<Row> rows;
};

/// Reads one sheet.
/// \throws TextMistake for what cannot be read, with its line.
[[nodiscard]] Sheet read_sheet(std::string_view text);

/// A workbook: the sheets it is made of.
struct WorkbookText {
    std::string name;  ///< of the file: `storage`
    std::string title;
    std::vector<std::string> sheets;
};

/// Reads the list of workbooks.
/// \throws TextMistake for what cannot be read, with its line.
[[nodiscard]] std::vector<WorkbookText> read_workbooks(std::string_view text);

}  // namespace undercroft::sheets
