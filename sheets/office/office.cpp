#include "sheets/office/office.hpp"

#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/bridge/UnoUrlResolver.hpp>
#include <com/sun/star/bridge/XUnoUrlResolver.hpp>
#include <com/sun/star/connection/NoConnectException.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/lang/DisposedException.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/sheet/XViewFreezable.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <cppuhelper/bootstrap.hxx>
#include <rtl/bootstrap.hxx>

#include <chrono>
#include <cstdlib>
#include <map>
#include <stdexcept>
#include <thread>

#ifndef UNDERCROFT_PROGRAM
#error "the build defines UNDERCROFT_PROGRAM"
#endif

namespace undercroft::sheets {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

std::string to_utf8(const rtl::OUString& text) {
    const rtl::OString utf8 = rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8);
    return {utf8.getStr(), static_cast<std::size_t>(utf8.getLength())};
}

rtl::OUString to_ustring(const std::string& text) {
    return {text.c_str(), static_cast<sal_Int32>(text.size()), RTL_TEXTENCODING_UTF8};
}

rtl::OUString file_url(const std::filesystem::path& path) {
    std::string url = "file://";
    for (const char c : std::filesystem::absolute(path).string()) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                           std::string("/-_.~").find(c) != std::string::npos;
        static constexpr char digits[] = "0123456789ABCDEF";
        if (plain) {
            url += c;
        } else {
            url += '%';
            url += digits[(static_cast<unsigned char>(c) >> 4) & 15];
            url += digits[static_cast<unsigned char>(c) & 15];
        }
    }
    return to_ustring(url);
}

namespace {

css::beans::PropertyValue property(const char* name, const Any& value) {
    css::beans::PropertyValue made;
    made.Name = rtl::OUString::createFromAscii(name);
    made.Value = value;
    return made;
}

const char* filter_of(const std::string& ending) {
    static const std::map<std::string, const char*> filters = {{".ods", "calc8"},
                                                               {".ots", "calc8_template"},
                                                               {".fods", "OpenDocument Spreadsheet Flat XML"},
                                                               {".xlsx", "Calc MS Excel 2007 XML"},
                                                               {".pdf", "calc_pdf_Export"},
                                                               {".csv", "Text - txt - csv (StarCalc)"}};
    const auto filter = filters.find(ending);
    if (filter == filters.end()) throw std::runtime_error("cannot save a file that ends in " + ending);
    return filter->second;
}

}  // namespace

// --- a document -------------------------------------------------------------------------------------

Document::Document(Reference<css::sheet::XSpreadsheetDocument> document) : document_(std::move(document)) {}

Document::~Document() {
    try {
        if (const Reference<css::util::XCloseable> closeable(document_, UNO_QUERY); closeable.is())
            closeable->close(true);
    } catch (const css::uno::Exception&) {  // it is gone already
    }
}

Reference<css::sheet::XSpreadsheet> Document::sheet(const std::string& name) const {
    const Reference<css::container::XNameAccess> sheets(document_->getSheets(), UNO_QUERY_THROW);
    if (!sheets->hasByName(to_ustring(name))) throw std::runtime_error("there is no sheet " + name);
    return Reference<css::sheet::XSpreadsheet>(sheets->getByName(to_ustring(name)), UNO_QUERY_THROW);
}

std::vector<std::string> Document::sheet_names() const {
    std::vector<std::string> names;
    for (const rtl::OUString& name : document_->getSheets()->getElementNames())
        names.push_back(to_utf8(name));
    return names;
}

Reference<css::table::XCell> Document::cell(const std::string& sheet_name, const std::string& address) const {
    return sheet(sheet_name)->getCellRangeByName(to_ustring(address))->getCellByPosition(0, 0);
}

bool Document::has_name(const std::string& name) const {
    const Reference<css::beans::XPropertySet> properties(document_, UNO_QUERY_THROW);
    const Reference<css::container::XNameAccess> names(properties->getPropertyValue("NamedRanges"),
                                                       UNO_QUERY_THROW);
    return names->hasByName(to_ustring(name));
}

Reference<css::table::XCell> Document::named(const std::string& name, int columns_right,
                                             int rows_below) const {
    const Reference<css::beans::XPropertySet> properties(document_, UNO_QUERY_THROW);
    const Reference<css::container::XNameAccess> names(properties->getPropertyValue("NamedRanges"),
                                                       UNO_QUERY_THROW);
    if (!names->hasByName(to_ustring(name))) throw std::runtime_error("the workbook has no name " + name);
    const Reference<css::sheet::XCellRangeReferrer> range(names->getByName(to_ustring(name)),
                                                          UNO_QUERY_THROW);
    return range->getReferredCells()->getCellByPosition(columns_right, rows_below);
}

void Document::keep_rows_in_sight(int rows) const {
    const Reference<css::frame::XModel> model(document_, UNO_QUERY_THROW);
    const Reference<css::sheet::XSpreadsheetView> view(model->getCurrentController(), UNO_QUERY_THROW);
    const Reference<css::beans::XPropertySet> properties(view, UNO_QUERY_THROW);
    const Reference<css::sheet::XViewFreezable> freezable(view, UNO_QUERY_THROW);
    const std::vector<std::string> names = sheet_names();
    for (const std::string& name : names) {
        view->setActiveSheet(sheet(name));
        freezable->freezeAtPosition(0, rows);
        properties->setPropertyValue("ShowGrid", Any(false));
    }
    view->setActiveSheet(sheet(names.front()));
}

void Document::move_to_end(const std::string& sheet_name) const {
    const Reference<css::sheet::XSpreadsheets> sheets = document_->getSheets();
    const auto count = static_cast<sal_Int16>(sheets->getElementNames().getLength());
    if (sheets->hasByName(to_ustring(sheet_name))) sheets->moveByName(to_ustring(sheet_name), count);
}

void Document::recalculate() const {
    Reference<css::sheet::XCalculatable>(document_, UNO_QUERY_THROW)->calculateAll();
}

void Document::store(const std::filesystem::path& path) const {
    Sequence<css::beans::PropertyValue> how(2);
    how.getArray()[0] =
        property("FilterName", Any(rtl::OUString::createFromAscii(filter_of(path.extension().string()))));
    how.getArray()[1] = property("Overwrite", Any(true));
    try {
        Reference<css::frame::XStorable>(document_, UNO_QUERY_THROW)->storeToURL(file_url(path), how);
    } catch (const css::uno::Exception& error) {
        throw std::runtime_error("cannot save " + path.string() +
                                 " (is it open in another window?): " + to_utf8(error.Message));
    }
}

std::string shown(const Reference<css::table::XCell>& cell) {
    return to_utf8(Reference<css::text::XText>(cell, UNO_QUERY_THROW)->getString());
}

// --- the office -------------------------------------------------------------------------------------

namespace {

pid_t start(const std::vector<std::string>& arguments) {
    std::vector<char*> pointers;
    for (const std::string& argument : arguments) pointers.push_back(const_cast<char*>(argument.c_str()));
    pointers.push_back(nullptr);
    const pid_t process = fork();
    if (process == 0) {
        setpgid(0, 0);
        const bool quiet = std::freopen("/dev/null", "w", stdout) != nullptr &&
                           std::freopen("/dev/null", "w", stderr) != nullptr;
        if (quiet) execv(pointers[0], pointers.data());
        _exit(127);
    }
    if (process < 0) throw std::runtime_error("cannot start the office");
    return process;
}

}  // namespace

Office::Office(const std::filesystem::path& extensions, Screen screen, const std::filesystem::path& profile)
    : profile_(profile), keeps_profile_(!profile.empty()) {
    std::string folder = (std::filesystem::temp_directory_path() /
                          ("undercroft-office-" + std::to_string(getpid()) + "-XXXXXX"))
                             .string();
    if (!keeps_profile_) {
        if (mkdtemp(folder.data()) == nullptr)
            throw std::runtime_error("cannot make a folder for the office's profile");
        profile_ = folder;
    }
    const std::string pipe = "undercroft-" + std::to_string(getpid()) + "-" + profile_.filename().string();
    std::vector<std::string> command = {UNDERCROFT_PROGRAM "/soffice",
                                        "--norestore",
                                        "--nologo",
                                        "--nodefault",
                                        "--nolockcheck",
                                        "--accept=pipe,name=" + pipe + ";urp;",
                                        "-env:UserInstallation=" + to_utf8(file_url(profile_)),
                                        "-env:BUNDLED_EXTENSIONS=" + to_utf8(file_url(extensions))};
    if (screen == Screen::none) command.emplace_back("--headless");
    process_ = start(command);

    // The client must know the office's types as well as the office does, or the bridge between them breaks.
    rtl::Bootstrap::set("URE_MORE_TYPES", file_url(std::string(UNDERCROFT_PROGRAM) + "/types/offapi.rdb"));
    const Reference<css::uno::XComponentContext> local = cppu::defaultBootstrap_InitialComponentContext();
    const Reference<css::bridge::XUnoUrlResolver> resolver = css::bridge::UnoUrlResolver::create(local);
    const rtl::OUString url = to_ustring("uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext");
    const auto deadline = std::chrono::steady_clock::now() + std::chrono::seconds(60);
    while (!context_.is()) {
        try {
            context_.set(resolver->resolve(url), UNO_QUERY_THROW);
        } catch (const css::connection::NoConnectException&) {
            if (std::chrono::steady_clock::now() > deadline)
                throw std::runtime_error("the office does not answer");
            std::this_thread::sleep_for(std::chrono::milliseconds(10));
        }
    }
    desktop_ = css::frame::Desktop::create(context_);
}

Office::~Office() {
    try {
        if (desktop_.is()) desktop_->terminate();
    } catch (const css::uno::Exception&) {  // the bridge goes down with the office
    }
    desktop_.clear();
    context_.clear();
    for (int i = 0; i < 200; ++i) {
        if (waitpid(process_, nullptr, WNOHANG) != 0) {
            process_ = 0;
            break;
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(50));
    }
    if (process_ > 0) {
        kill(-process_, SIGKILL);
        waitpid(process_, nullptr, 0);
    }
    std::error_code ignored;
    if (!keeps_profile_) std::filesystem::remove_all(profile_, ignored);
}

Document Office::load(const rtl::OUString& url, bool as_template) const {
    // Not hidden, though there is no window: a hidden document loses its view, and with it the frozen
    // heading.
    // Without the last, a template becomes a new document and any other file is opened itself.
    Sequence<css::beans::PropertyValue> how(as_template ? 3 : 2);
    how.getArray()[0] = property("MacroExecutionMode", Any(sal_Int16(0)));  // never
    how.getArray()[1] = property("UpdateDocMode", Any(sal_Int16(0)));       // no link is followed
    if (as_template) how.getArray()[2] = property("AsTemplate", Any(true));
    const Reference<css::lang::XComponent> component = desktop_->loadComponentFromURL(url, "_blank", 0, how);
    const Reference<css::sheet::XSpreadsheetDocument> document(component, UNO_QUERY);
    if (!document.is()) throw std::runtime_error("cannot open " + to_utf8(url) + " as a spreadsheet");
    return Document(document);
}

namespace {

/// Else the office asks, whenever the workbook is opened, whether to take over the styles of the changed
/// template.
void forget_template(const Reference<css::uno::XInterface>& document) {
    const Reference<css::document::XDocumentPropertiesSupplier> supplier(document, UNO_QUERY_THROW);
    supplier->getDocumentProperties()->setTemplateURL({});
    supplier->getDocumentProperties()->setTemplateName({});
}

}  // namespace

Document Office::open(const std::filesystem::path& path) const {
    if (!std::filesystem::exists(path)) throw std::runtime_error("there is no file " + path.string());
    Document document = load(file_url(path));
    if (path.extension() == ".ots") forget_template(document.model());
    return document;
}

Document Office::open_copy(const std::filesystem::path& path) const {
    if (!std::filesystem::exists(path)) throw std::runtime_error("there is no file " + path.string());
    Document document = load(file_url(path), true);
    forget_template(document.model());
    return document;
}

Document Office::blank() const {
    return load("private:factory/scalc");
}

}  // namespace undercroft::sheets
