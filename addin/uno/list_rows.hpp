/// \file list_rows.hpp
/// A row more, or one less, in a list of a workbook made from a template: one step to undo.
#pragma once

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/table/CellAddress.hpp>

namespace undercroft::addin {

/// Adds a row to the list that holds this cell: below its row, or above the last one where the template fixes
/// that. Formulas, units, choices and looks are those of its neighbours; what is typed in is blank. All that
/// looks at the list - names, formulas, charts, what is printed - looks at the new row too.
/// \return the first cell of the new row to be typed in
/// \throws NotDone where there is no such list, or it is full.
[[nodiscard]] com::sun::star::table::CellAddress add_row(
    const com::sun::star::uno::Reference<com::sun::star::frame::XModel>& document,
    const com::sun::star::table::CellAddress& cursor);

/// Takes the row of this cell out of its list.
/// \throws NotDone where there is no such list, the template fixes the row, two rows are all there are, or a
/// formula elsewhere looks at the row alone.
void remove_row(const com::sun::star::uno::Reference<com::sun::star::frame::XModel>& document,
                const com::sun::star::table::CellAddress& cursor);

}  // namespace undercroft::addin
