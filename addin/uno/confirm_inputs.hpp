/// \file confirm_inputs.hpp
/// Confirms that inputs which still hold the value of the template are right for the job.
#pragma once

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/uno/Any.hxx>

namespace undercroft::addin {

/// Types an x into the cell for it on each selected row whose entries stand as assumed: one step to undo.
/// \param selection a cell, a range, or several
/// \return how many rows are confirmed by it
/// \throws NotDone where the workbook is open to be read only
int confirm_rows(const com::sun::star::uno::Reference<com::sun::star::frame::XModel>& document,
                 const com::sun::star::uno::Any& selection);

}  // namespace undercroft::addin
