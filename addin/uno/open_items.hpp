/// \file open_items.hpp
/// What is still to be done in a workbook made from a template, cell by cell.
#pragma once

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/table/CellAddress.hpp>

#include <optional>
#include <string>

namespace undercroft::addin {

struct OpenItem {
    com::sun::star::table::CellAddress cell;
    std::string what;  ///< `Fails`, `To give`, `Impossible`, `Not listed` or `Assumed`
};

/// The next one behind this cell, row by row and sheet by sheet, from the first again behind the last.
/// \return nothing where there is none in the whole workbook.
/// \throws NotDone in a workbook whose sheets do not count what is open.
[[nodiscard]] std::optional<OpenItem> next_open_item(
    const com::sun::star::uno::Reference<com::sun::star::frame::XModel>& document,
    const com::sun::star::table::CellAddress& cursor);

}  // namespace undercroft::addin
