#include "addin/uno/commands.hpp"

#include <com/sun/star/awt/MessageBoxButtons.hpp>
#include <com/sun/star/awt/Toolkit.hpp>
#include <com/sun/star/awt/XMessageBoxFactory.hpp>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/deployment/PackageInformationProvider.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/DispatchResultState.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XNotifyingDispatch.hpp>
#include <com/sun/star/lang/XInitialization.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/system/SystemShellExecute.hpp>
#include <com/sun/star/system/SystemShellExecuteFlags.hpp>
#include <com/sun/star/ucb/SimpleFileAccess.hpp>
#include <com/sun/star/ui/dialogs/ExecutableDialogResults.hpp>
#include <com/sun/star/ui/dialogs/FilePicker.hpp>
#include <com/sun/star/ui/dialogs/TemplateDescription.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>
#include <cppuhelper/implbase4.hxx>
#include <cppuhelper/supportsservice.hxx>

#include "addin/catalogue/catalogue.hpp"
#include "addin/uno/audit_document.hpp"
#include "addin/uno/confirm_inputs.hpp"
#include "addin/uno/enter_bed.hpp"
#include "addin/uno/list_rows.hpp"
#include "addin/uno/marshal.hpp"
#include "addin/uno/one_change.hpp"
#include "addin/uno/open_items.hpp"

namespace undercroft::addin {

namespace {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

constexpr const char* scheme = "undercroft:";
constexpr const char* new_workbook = "new/";

class Commands final
    : public cppu::WeakImplHelper4<css::frame::XDispatchProvider, css::frame::XNotifyingDispatch,
                                   css::lang::XInitialization, css::lang::XServiceInfo> {
public:
    explicit Commands(const Reference<css::uno::XComponentContext>& context) : context_(context) {}

    void SAL_CALL initialize(const css::uno::Sequence<css::uno::Any>& arguments) override {
        if (arguments.getLength() > 0) arguments[0] >>= frame_;
    }

    Reference<css::frame::XDispatch> SAL_CALL queryDispatch(const css::util::URL& url, const rtl::OUString&,
                                                            sal_Int32) override {
        if (url.Complete.startsWith(to_oustring(scheme))) return this;
        return {};
    }
    css::uno::Sequence<Reference<css::frame::XDispatch>> SAL_CALL
    queryDispatches(const css::uno::Sequence<css::frame::DispatchDescriptor>& requests) override {
        css::uno::Sequence<Reference<css::frame::XDispatch>> dispatches(requests.getLength());
        for (sal_Int32 i = 0; i < requests.getLength(); ++i)
            dispatches.getArray()[i] =
                queryDispatch(requests[i].FeatureURL, requests[i].FrameName, requests[i].SearchFlags);
        return dispatches;
    }

    void SAL_CALL dispatch(const css::util::URL& url,
                           const css::uno::Sequence<css::beans::PropertyValue>&) override {
        const Outcome outcome = outcome_of(url);
        if (!outcome.words.empty()) show(outcome);
    }
    /// What would be said in a box is told to the one who asks: nobody clicks it away for a program.
    void SAL_CALL
    dispatchWithNotification(const css::util::URL& url, const css::uno::Sequence<css::beans::PropertyValue>&,
                             const Reference<css::frame::XDispatchResultListener>& listener) override {
        const Outcome outcome = outcome_of(url);
        if (!listener.is()) return;
        css::frame::DispatchResultEvent told;
        told.State = outcome.done ? css::frame::DispatchResultState::SUCCESS
                                  : css::frame::DispatchResultState::FAILURE;
        told.Result <<= to_oustring(outcome.words);
        listener->dispatchFinished(told);
    }
    void SAL_CALL addStatusListener(const Reference<css::frame::XStatusListener>&,
                                    const css::util::URL&) override {}
    void SAL_CALL removeStatusListener(const Reference<css::frame::XStatusListener>&,
                                       const css::util::URL&) override {}

    rtl::OUString SAL_CALL getImplementationName() override { return to_oustring(commands_name); }
    sal_Bool SAL_CALL supportsService(const rtl::OUString& name) override {
        return cppu::supportsService(this, name);
    }
    css::uno::Sequence<rtl::OUString> SAL_CALL getSupportedServiceNames() override {
        css::uno::Sequence<rtl::OUString> names(1);
        names.getArray()[0] = "com.sun.star.frame.ProtocolHandler";
        return names;
    }

private:
    /// What there is to say of a command, if anything.
    struct Outcome {
        bool done = true;
        std::string title;
        std::string words;
    };

    Outcome outcome_of(const css::util::URL& url) {
        try {
            return run(to_string(url.Complete).substr(std::string(scheme).size()));
        } catch (const NotDone& refused) {
            return {false, "Undercroft", refused.what()};
        } catch (const css::uno::Exception& error) {
            return {false, "This did not work", to_string(error.Message)};
        } catch (const std::exception& error) {
            return {false, "This did not work", error.what()};
        }
    }

    Outcome run(const std::string& command) {
        if (command.starts_with(new_workbook))
            open_template(command.substr(std::string(new_workbook).size()));
        else if (command == "audit")
            audit();
        else if (command == "compare")
            compare();
        else if (command == "add-row")
            go_to(add_row(document(), cursor()));
        else if (command == "remove-row")
            remove_row(document(), cursor());
        else if (command == "next-open")
            go_to_next_open();
        else if (command == "confirm")
            confirm_selected();
        else if (command == "enter-bed")
            return {true, "The bed is entered", enter_bed(context_, document(), cursor())};
        else if (command == "functions")
            open_reference();
        else if (command == "about")
            return {true, "About Undercroft", about()};
        else
            throw NotDone("There is no command '" + command + "'.");
        return {};
    }

    [[nodiscard]] rtl::OUString package_folder() const {
        return css::deployment::PackageInformationProvider::get(context_)->getPackageLocation(
            "undercroft.addin");
    }

    void open_template(const std::string& name) {
        css::uno::Sequence<css::beans::PropertyValue> how(1);
        how.getArray()[0].Name = "AsTemplate";
        how.getArray()[0].Value <<= true;
        const bool is_plain =
            !name.empty() && name.find_first_not_of("abcdefghijklmnopqrstuvwxyz-") == std::string::npos;
        const Reference<css::ucb::XSimpleFileAccess> files(css::ucb::SimpleFileAccess::create(context_),
                                                           UNO_QUERY_THROW);
        const rtl::OUString url =
            package_folder() + "/template/Undercroft/" + to_oustring(name) + to_oustring(".ots");
        if (!is_plain || !files->exists(url)) throw NotDone("There is no template '" + name + "'.");
        const Reference<css::document::XDocumentPropertiesSupplier> made(
            css::frame::Desktop::create(context_)->loadComponentFromURL(url, "_blank", 0, how),
            UNO_QUERY_THROW);
        // Else the office would ask, after each update of the extension, whether to take over changed styles.
        made->getDocumentProperties()->setTemplateURL({});
        made->getDocumentProperties()->setTemplateName({});
    }

    /// Audits the workbook of this window and shows the sheet Audit.
    void audit(const rtl::OUString& since = {}) {
        AuditWanted wanted;
        wanted.since = since;
        const Reference<css::frame::XController> controller = this->controller();
        wanted.document.set(controller->getModel(), UNO_QUERY);
        if (!Reference<css::util::XModifiable>(wanted.document, UNO_QUERY_THROW)->isModified())
            wanted.file = controller->getModel()->getURL();
        (void)audit_document(context_, wanted);
        const Reference<css::sheet::XSpreadsheetView> view(controller, UNO_QUERY_THROW);
        const Reference<css::container::XNameAccess> sheets(wanted.document->getSheets(), UNO_QUERY_THROW);
        view->setActiveSheet(Reference<css::sheet::XSpreadsheet>(
            sheets->getByName(to_oustring(audit::audit_sheet_name)), UNO_QUERY_THROW));
    }

    /// Audits it against an earlier revision, which is asked for.
    void compare() {
        const Reference<css::ui::dialogs::XFilePicker3> picker = css::ui::dialogs::FilePicker::createWithMode(
            context_, css::ui::dialogs::TemplateDescription::FILEOPEN_SIMPLE);
        picker->setTitle("The earlier revision");
        picker->appendFilter("Spreadsheets", "*.ods;*.fods;*.ots;*.xlsx");
        if (picker->execute() != css::ui::dialogs::ExecutableDialogResults::OK) return;
        const auto files = picker->getSelectedFiles();
        if (files.hasElements()) audit(files[0]);
    }

    /// Confirms the inputs of the selected rows, in a workbook made from a template of ours.
    void confirm_selected() {
        const Reference<css::view::XSelectionSupplier> selection(controller(), UNO_QUERY_THROW);
        if (confirm_rows(document(), selection->getSelection()) == 0)
            throw NotDone(
                "No selected row has an input that stands as assumed. In a workbook made from a template, "
                "select the rows, or with Ctrl+A the whole sheet.");
    }

    void go_to_next_open() {
        const auto item = next_open_item(document(), cursor());
        if (!item)
            throw NotDone("No check fails in this workbook, and nothing is to give, impossible or assumed.");
        go_to(item->cell);
    }

    void open_reference() {
        css::system::SystemShellExecute::create(context_)->execute(
            package_folder() + "/functions.html", {}, css::system::SystemShellExecuteFlags::URIS_ONLY);
    }

    static std::string about() {
        return "Undercroft " + version() + ": " + std::to_string(all_functions().size()) +
               " unit-safe functions for calc sheets of buried stormwater storage.\n\nThe sheets do not "
               "replace the judgement of a licensed engineer, the instructions of the supplier of the "
               "product used, or the law. Local codes govern.";
    }

    /// The window's view of a spreadsheet.
    [[nodiscard]] Reference<css::frame::XController> controller() const {
        Reference<css::frame::XController> controller(frame_.is() ? frame_->getController() : nullptr);
        if (!controller.is() ||
            !Reference<css::sheet::XSpreadsheetDocument>(controller->getModel(), UNO_QUERY).is())
            throw NotDone("There is no spreadsheet in this window.");
        return controller;
    }
    [[nodiscard]] Reference<css::frame::XModel> document() const { return controller()->getModel(); }

    /// The last row that is selected, and the first column.
    [[nodiscard]] css::table::CellAddress cursor() const {
        const Reference<css::sheet::XCellRangeAddressable> selected(
            Reference<css::view::XSelectionSupplier>(controller(), UNO_QUERY_THROW)->getSelection(),
            UNO_QUERY);
        if (!selected.is()) throw NotDone("Select one cell first.");
        const css::table::CellRangeAddress range = selected->getRangeAddress();
        return {range.Sheet, range.StartColumn, range.EndRow};
    }
    void go_to(const css::table::CellAddress& cell) const {
        const Reference<css::frame::XController> view = controller();
        const Reference<css::container::XIndexAccess> sheets(
            Reference<css::sheet::XSpreadsheetDocument>(document(), UNO_QUERY_THROW)->getSheets(),
            UNO_QUERY_THROW);
        const Reference<css::sheet::XSpreadsheet> sheet(sheets->getByIndex(cell.Sheet), UNO_QUERY_THROW);
        Reference<css::sheet::XSpreadsheetView>(view, UNO_QUERY_THROW)->setActiveSheet(sheet);
        Reference<css::view::XSelectionSupplier>(view, UNO_QUERY_THROW)
            ->select(css::uno::Any(sheet->getCellByPosition(cell.Column, cell.Row)));
    }

    void show(const Outcome& outcome) {
        if (!frame_.is()) return;
        const Reference<css::awt::XMessageBoxFactory> factory(css::awt::Toolkit::create(context_), UNO_QUERY);
        const Reference<css::awt::XWindowPeer> parent(frame_->getContainerWindow(), UNO_QUERY);
        if (!factory.is() || !parent.is()) return;
        factory
            ->createMessageBox(parent, css::awt::MessageBoxType_INFOBOX,
                               css::awt::MessageBoxButtons::BUTTONS_OK, to_oustring(outcome.title),
                               to_oustring(outcome.words))
            ->execute();
    }

    Reference<css::uno::XComponentContext> context_;
    Reference<css::frame::XFrame> frame_;
};

}  // namespace

css::uno::XInterface* make_commands(const css::uno::Reference<css::uno::XComponentContext>& context) {
    return cppu::acquire(new Commands(context));
}

}  // namespace undercroft::addin
