/// \file page_cells.hpp
/// The cells of a row of a sheet made by our builder, by what their styles say of them.
#pragma once

#include <com/sun/star/sheet/XSpreadsheet.hpp>

#include <string>
#include <vector>

namespace undercroft::addin {

/// A cell of one row of the page, as far as what may be done with it goes.
struct PageCell {
    enum class Holds { nothing, number, text, formula };
    Holds holds = Holds::nothing;
    std::string style;
    bool is_locked = true;

    /// Wording that the template fixes.
    [[nodiscard]] bool is_wording() const { return holds == Holds::text && is_locked && style == "ListText"; }
    /// The unit beside a number.
    [[nodiscard]] bool is_unit() const { return style.starts_with("Unit"); }
    /// A number that is that of another cell.
    [[nodiscard]] bool is_link() const { return holds == Holds::formula && style.starts_with("Link"); }
    /// Where the entries of the row are confirmed.
    [[nodiscard]] bool is_mark() const { return style == "Mark"; }
    /// What is typed in, the unit beside it left aside.
    [[nodiscard]] bool is_entry() const { return !is_locked && !is_unit() && !is_mark(); }
};

/// The cells of a row up to the right edge of the page, with that in which its entries are confirmed.
[[nodiscard]] std::vector<PageCell> page_cells(
    const com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet>& sheet, sal_Int32 row);

/// The name of the style of a cell.
[[nodiscard]] std::string style_of(const com::sun::star::uno::Reference<com::sun::star::table::XCell>& cell);

}  // namespace undercroft::addin
