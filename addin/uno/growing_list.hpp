/// \file growing_list.hpp
/// The list of a sheet to which rows may be added: its rows say so beside the page, `grows to 60`.
#pragma once

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>

#include <optional>
#include <vector>

#include "addin/uno/page_cells.hpp"

namespace undercroft::addin {

struct GrowingList {
    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> sheet;
    sal_Int32 sheet_index = 0;
    sal_Int32 first_row = 0;
    sal_Int32 last_row = 0;
    sal_Int32 most = 0;         ///< rows
    sal_Int32 last_column = 0;  ///< that the sheet uses, beside the page too

    [[nodiscard]] sal_Int32 rows() const { return last_row - first_row + 1; }
    /// The cells of one of its rows, up to the right edge of the page.
    [[nodiscard]] std::vector<PageCell> cells(sal_Int32 row) const { return page_cells(sheet, row); }
};

/// The list that the row belongs to: to its items, its heads above them, or the blank row below them.
/// \return nothing where there is none.
[[nodiscard]] std::optional<GrowingList> growing_list_at(
    const com::sun::star::uno::Reference<com::sun::star::frame::XModel>& document, sal_Int32 sheet,
    sal_Int32 row);

}  // namespace undercroft::addin
