/// \file mistakes.hpp
/// Mistakes to be planted in a workbook, as tests/data/seeded-mistakes.txt lists them. No office is needed.
#pragma once

#include <string>
#include <vector>

#include "addin/audit/book/book.hpp"
#include "addin/audit/findings/finding.hpp"

namespace undercroft::tests {

/// One thing done to the workbook.
struct Edit {
    enum class What { type, store, hide_row, hide_column, hide_sheet, insert_row, delete_row };
    What what = What::type;
    std::string cell;  ///< as the list writes it; of hide_sheet the sheet's name
    std::string text;  ///< of type and store; empty clears the cell
};

struct Mistake {
    int line = 0;
    std::vector<Edit> edits;
    std::string kind;      ///< as audit::word_of writes it
    std::string found_at;  ///< as the list writes it; empty for a finding about the whole workbook
    bool needs_calc = false;
    bool against_template = false;
    [[nodiscard]] bool edits_only_cells() const;
};

/// \throws std::runtime_error naming the line that cannot be read.
[[nodiscard]] std::vector<Mistake> read_mistakes(const std::string& text);

/// The cell that a list means: `Site.G7`, a defined name, `name.unit` to the right of it.
/// \throws std::runtime_error when the workbook has no such name or sheet.
[[nodiscard]] audit::Spot cell_meant(const audit::Book& book, const std::string& cell);

/// Types into a workbook. A formula keeps the value that the cell showed: nothing is computed anew.
void type_into(audit::Book& book, const audit::Spot& at, const std::string& text);

}  // namespace undercroft::tests
