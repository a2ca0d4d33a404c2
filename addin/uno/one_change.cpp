#include "addin/uno/one_change.hpp"

#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

/// \return whether the sheet was protected.
bool unprotect(const Reference<css::sheet::XSpreadsheet>& sheet) {
    const Reference<css::util::XProtectable> protects(sheet, UNO_QUERY_THROW);
    if (!protects->isProtected()) return false;
    try {
        protects->unprotect({});
    } catch (const css::lang::IllegalArgumentException&) {
        throw NotDone(
            "The sheet " + to_string(Reference<css::container::XNamed>(sheet, UNO_QUERY_THROW)->getName()) +
            " is protected with a password: take the protection off first (Tools > Protect Sheet).");
    }
    return true;
}

}  // namespace

OneChange::OneChange(const Reference<css::frame::XModel>& document,
                     const Reference<css::sheet::XSpreadsheet>& sheet, const std::string& title)
    : document_(document), sheet_(sheet), calculated_(document, UNO_QUERY_THROW) {
    const Reference<css::frame::XStorable> file(document, UNO_QUERY);
    if (file.is() && file->isReadonly())
        throw NotDone("The workbook is open to be read only: save it under another name first.");
    undo_ = Reference<css::document::XUndoManagerSupplier>(document, UNO_QUERY_THROW)->getUndoManager();
    undo_->enterUndoContext(to_oustring(title));
    try {
        was_protected_ = sheet.is() && unprotect(sheet);
    } catch (...) {
        undo_->leaveUndoContext();
        throw;
    }
    document_->lockControllers();
    was_calculated_ = calculated_->isAutomaticCalculationEnabled();
    calculated_->enableAutomaticCalculation(false);
}

void OneChange::finish() {
    if (is_finished_) return;
    is_finished_ = true;
    if (was_protected_) Reference<css::util::XProtectable>(sheet_, UNO_QUERY_THROW)->protect({});
    undo_->leaveUndoContext();
    calculated_->enableAutomaticCalculation(was_calculated_);
    document_->unlockControllers();
}

void OneChange::take_back() {
    finish();
    undo_->undo();
    undo_->clearRedo();
}

OneChange::~OneChange() {
    if (is_finished_) return;
    try {
        take_back();
    } catch (const css::uno::Exception&) {
        // The change stays half done, with a step to undo: nothing more can be done about it here.
        is_finished_ = true;
    }
}

}  // namespace undercroft::addin
