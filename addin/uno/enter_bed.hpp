/// \file enter_bed.hpp
/// A bed of the workbook of options becomes the inputs of a whole job: one step to undo.
#pragma once

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/table/CellAddress.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <string>

namespace undercroft::addin {

/// Enters the bed in whose row the cursor stands, in the table of beds or among those picked from it, in the
/// one other open workbook that has inputs for it: its unit, the space that its rows fill, its stone and its
/// overflow. A comment at each input says from where it comes.
/// \return what was entered, and what is left to its engineer
/// \throws NotDone where the cursor stands on no bed, no other workbook or more than one could take it, or one
/// of the inputs cannot be typed in.
[[nodiscard]] std::string enter_bed(
    const com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext>& context,
    const com::sun::star::uno::Reference<com::sun::star::frame::XModel>& options,
    const com::sun::star::table::CellAddress& cursor);

}  // namespace undercroft::addin
