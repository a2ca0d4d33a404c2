/// \file counted_columns.hpp
/// The columns beside the page of a sheet in which its rows are counted: `Fails`, `To give`, `Assumed` ...
#pragma once

#include <com/sun/star/sheet/XSpreadsheet.hpp>

#include <string_view>
#include <vector>

namespace undercroft::addin {

/// The first row below the heads of a sheet.
inline constexpr sal_Int32 first_counted_row = 4;

class CountedColumns {
public:
    explicit CountedColumns(const com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet>& sheet);

    /// \return whether the sheet counts its rows at all.
    [[nodiscard]] bool are_there() const { return last_row_ >= first_counted_row; }
    [[nodiscard]] sal_Int32 last_row() const { return last_row_; }
    /// For each row from the first on, whether it counts under this head.
    [[nodiscard]] std::vector<bool> counted(std::string_view head) const;

private:
    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> sheet_;
    std::vector<std::string> heads_;
    sal_Int32 last_row_ = -1;
};

}  // namespace undercroft::addin
