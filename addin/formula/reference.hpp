/// \file reference.hpp
/// The cells that a formula refers to, and how a cell, a column and a sheet are written.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace undercroft::addin {

/// One corner of a reference; columns and rows from 0.
struct CellAddress {
    std::int32_t column = 0;
    std::int32_t row = 0;
    bool column_fixed = false;  ///< `$A`
    bool row_fixed = false;     ///< `$1`
    friend bool operator==(const CellAddress&, const CellAddress&) = default;
};

/// Cells of a sheet, as a formula refers to them.
struct CellReference {
    std::string document;    ///< URL of another file; empty for this one
    std::string sheet;       ///< empty for the sheet of the formula
    std::string last_sheet;  ///< of `Site.A1:Storage.B2`, which spans sheets; else empty
    CellAddress first;
    CellAddress last;  ///< the same as `first` for a single cell
    bool is_range = false;
    bool whole_columns = false;  ///< `A:C`
    bool whole_rows = false;     ///< `1:3`

    /// `Site.B3`, `D4:E4`, without the dollar signs.
    [[nodiscard]] std::string text() const;
};

/// Columns and rows of the largest sheet that Calc can have.
inline constexpr std::int32_t most_columns = 16384;
inline constexpr std::int32_t most_rows = 1048576;

/// `A`, `AB`; columns from 0.
[[nodiscard]] std::string column_letters(std::int32_t column);

/// `B3`; column and row from 0.
[[nodiscard]] std::string cell_letters(std::int32_t column, std::int32_t row);

/// `Site.`, `'Site data'.`: a sheet's name as it stands in front of a cell.
[[nodiscard]] std::string sheet_prefix(std::string_view sheet);

}  // namespace undercroft::addin
