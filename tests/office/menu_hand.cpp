#include "tests/office/menu_hand.hpp"

#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>
#include <cppuhelper/implbase1.hxx>
#include <rtl/ref.hxx>

#include "sheets/builder/cell_text.hpp"
#include "tests/office/main_thread.hpp"

namespace undercroft::tests {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

class Listener final : public cppu::WeakImplHelper1<css::frame::XDispatchResultListener> {
public:
    void SAL_CALL dispatchFinished(const css::frame::DispatchResultEvent& told) override {
        rtl::OUString words;
        told.Result >>= words;
        said = sheets::to_utf8(words);
    }
    void SAL_CALL disposing(const css::lang::EventObject&) override {}

    std::string said = "nothing was told";
};

Reference<css::document::XUndoManager> undo_of(const sheets::Document& document) {
    return Reference<css::document::XUndoManagerSupplier>(document.model(), UNO_QUERY_THROW)
        ->getUndoManager();
}

Reference<css::frame::XController> view_of(const sheets::Document& document) {
    return Reference<css::frame::XModel>(document.model(), UNO_QUERY_THROW)->getCurrentController();
}

}  // namespace

MenuHand::MenuHand(const sheets::Office& office, const sheets::Document& document)
    : office_(office), document_(document) {
    css::uno::Sequence<Any> arguments(1);
    arguments.getArray()[0] <<= view_of(document)->getFrame();
    commands_.set(office.context()->getServiceManager()->createInstanceWithArgumentsAndContext(
                      "undercroft.addin.Commands", arguments, office.context()),
                  UNO_QUERY_THROW);
}

void MenuHand::select(const std::string& sheet, const std::string& cells) const {
    const Reference<css::frame::XController> view = view_of(document_);
    Reference<css::sheet::XSpreadsheetView>(view, UNO_QUERY_THROW)->setActiveSheet(document_.sheet(sheet));
    Reference<css::view::XSelectionSupplier>(view, UNO_QUERY_THROW)
        ->select(Any(document_.sheet(sheet)->getCellRangeByName(sheets::to_ustring(cells))));
}

std::string MenuHand::pick(const std::string& command) const {
    const rtl::Reference<Listener> listener(new Listener);
    css::util::URL url;
    url.Complete = sheets::to_ustring("undercroft:" + command);
    in_main_thread(office_, [&] { commands_->dispatchWithNotification(url, {}, listener.get()); });
    return listener->said;
}

std::string MenuHand::selected() const {
    const Reference<css::view::XSelectionSupplier> view(view_of(document_), UNO_QUERY_THROW);
    const css::table::CellRangeAddress at =
        Reference<css::sheet::XCellRangeAddressable>(view->getSelection(), UNO_QUERY_THROW)
            ->getRangeAddress();
    return document_.sheet_names().at(static_cast<std::size_t>(at.Sheet)) + "." +
           sheets::cell_text(at.StartRow, at.StartColumn);
}

void MenuHand::undo() const {
    in_main_thread(office_, [&] { undo_of(document_)->undo(); });
}

std::string MenuHand::undoes() const {
    return sheets::to_utf8(undo_of(document_)->getCurrentUndoActionTitle());
}

}  // namespace undercroft::tests
