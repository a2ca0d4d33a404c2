/// \file one_change.hpp
/// A change of a workbook of many steps that a person takes back in one.
#pragma once

#include <com/sun/star/document/XUndoManager.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>

#include <stdexcept>
#include <string>

namespace undercroft::addin {

/// What is asked for cannot be done here; the sentence says why.
class NotDone : public std::runtime_error {
public:
    using std::runtime_error::runtime_error;
};

/// While it lives all steps are one to undo, nothing is painted or computed, and the sheet, if it is
/// protected, is not.
class OneChange {
public:
    /// \param sheet nothing where only what is not protected is changed
    /// \throws NotDone where the workbook cannot be changed, or the sheet is protected with a password.
    OneChange(const com::sun::star::uno::Reference<com::sun::star::frame::XModel>& document,
              const com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet>& sheet,
              const std::string& title);
    OneChange(const OneChange&) = delete;
    OneChange& operator=(const OneChange&) = delete;
    ~OneChange();

    /// Ends it here: protects the sheet again and computes what has changed.
    void finish();
    /// Ends it and takes it back.
    void take_back();

private:
    com::sun::star::uno::Reference<com::sun::star::frame::XModel> document_;
    com::sun::star::uno::Reference<com::sun::star::sheet::XSpreadsheet> sheet_;
    com::sun::star::uno::Reference<com::sun::star::document::XUndoManager> undo_;
    com::sun::star::uno::Reference<com::sun::star::sheet::XCalculatable> calculated_;
    bool was_protected_ = false;
    bool was_calculated_ = false;
    bool is_finished_ = false;
};

}  // namespace undercroft::addin
