/// \file template_match.hpp
/// A workbook laid over the template that it was made from: which sheet, row and cell is which.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "addin/audit/book/alignment.hpp"
#include "addin/audit/book/formulas.hpp"

namespace undercroft::audit {

/// What a workbook or template says it is.
struct Identity {
    std::string name;     ///< `storage`; empty where it says nothing
    std::string system;   ///< `SI`
    std::string version;  ///< `0.1.0`
    [[nodiscard]] std::string text() const;
};
[[nodiscard]] Identity identity_of(const Book& book);

/// How a sheet is known again.
enum class SheetsBy {
    name,
    name_or_rows,  ///< one that was renamed, by what is written in its rows
};

/// Sheets are known by their names, rows by what is written in them.
class TemplateMatch {
public:
    /// Both must live as long.
    TemplateMatch(const Book& workbook, const Book& from, SheetsBy sheets = SheetsBy::name);

    [[nodiscard]] const Book& workbook() const { return workbook_; }
    [[nodiscard]] const Book& from() const { return template_; }
    /// The workbook's sheet for a sheet of the template; -1 where it is missing.
    [[nodiscard]] std::int32_t sheet(std::int32_t template_sheet) const {
        return sheets_[static_cast<std::size_t>(template_sheet)];
    }
    [[nodiscard]] const Alignment& rows(std::int32_t template_sheet) const {
        return rows_[static_cast<std::size_t>(template_sheet)];
    }
    /// The template's cell that became this one of the workbook; nothing for one that was added.
    [[nodiscard]] std::optional<Spot> in_template(const Spot& of_workbook) const;
    /// The cells that a reference of the template means, as the workbook's formulas would name them; `?`
    /// where they are gone. The reference was read in a formula at `base` and stands at `at`.
    [[nodiscard]] std::string moved(const addin::CellReference& reference, const Spot& base,
                                    const Spot& at) const;

private:
    void match_renamed();

    const Book& workbook_;
    const Book& template_;
    std::vector<std::int32_t> sheets_;
    std::vector<Alignment> rows_;
    /// By sheet of the workbook: the template's sheet, and its row for each row.
    std::vector<std::int32_t> from_sheet_;
    std::vector<std::vector<std::int32_t>> from_row_;
};

/// Whether the cell holds a result of an array formula that begins in another cell.
[[nodiscard]] bool is_inside_array(const BookSheet& sheet, const BookCell& cell);

}  // namespace undercroft::audit
