/// \file confirm_inputs.hpp
/// Confirms that inputs which still hold the value of the template are right for the job.
#pragma once

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/uno/Any.hxx>

namespace undercroft::addin {

/// Types an x into the cell for it on each selected row that has one.
/// \param selection a cell, a range, or several
/// \return how many rows have such a cell
int confirm_rows(const com::sun::star::uno::Reference<com::sun::star::frame::XModel>& document,
                 const com::sun::star::uno::Any& selection);

}  // namespace undercroft::addin
