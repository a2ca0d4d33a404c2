#include "sheets/office/office.hpp"

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
#include <com/sun/star/packages/zip/ZipFileAccess.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/sheet/XViewFreezable.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/CellProtection.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>
#include <cppuhelper/bootstrap.hxx>
#include <rtl/bootstrap.hxx>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <map>
#include <stdexcept>

#include "sheets/office/profile.hpp"

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

/// nullptr where there is none in sight.
const char* filter_of(const std::string& ending) {
    static const std::map<std::string, const char*> filters = {{".ods", "calc8"},
                                                               {".ots", "calc8_template"},
                                                               {".fods", "OpenDocument Spreadsheet Flat XML"},
                                                               {".xlsx", "Calc MS Excel 2007 XML"},
                                                               {".pdf", "calc_pdf_Export"},
                                                               {".csv", "Text - txt - csv (StarCalc)"}};
    const auto filter = filters.find(ending);
    return filter == filters.end() ? nullptr : filter->second;
}

}  // namespace

bool has_ending(const std::filesystem::path& file, std::initializer_list<std::string_view> endings) {
    return std::find(endings.begin(), endings.end(), file.extension().string()) != endings.end();
}

bool can_be_saved(const std::filesystem::path& file) {
    return filter_of(file.extension().string()) != nullptr;
}

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

namespace {

Reference<css::table::XCellRange> range_named(const Reference<css::sheet::XSpreadsheetDocument>& document,
                                              const std::string& name) {
    const Reference<css::beans::XPropertySet> properties(document, UNO_QUERY_THROW);
    const Reference<css::container::XNameAccess> names(properties->getPropertyValue("NamedRanges"),
                                                       UNO_QUERY_THROW);
    if (!names->hasByName(to_ustring(name))) throw std::runtime_error("the workbook has no name " + name);
    const Reference<css::sheet::XCellRangeReferrer> range(names->getByName(to_ustring(name)),
                                                          UNO_QUERY_THROW);
    return range->getReferredCells();
}

/// The first cell below its heading that a person may type in, and that is no unit; the first of all where
/// there is none in sight.
Reference<css::table::XCell> first_typed_in(const Reference<css::sheet::XSpreadsheet>& sheet, int rows) {
    constexpr int rows_looked_at = 30;
    constexpr int columns_looked_at = 13;
    for (int row = rows; row < rows_looked_at; ++row)
        for (int column = 0; column < columns_looked_at; ++column) {
            const Reference<css::beans::XPropertySet> cell(sheet->getCellByPosition(column, row),
                                                           UNO_QUERY_THROW);
            css::util::CellProtection protection;
            cell->getPropertyValue("CellProtection") >>= protection;
            rtl::OUString style;
            cell->getPropertyValue("CellStyle") >>= style;
            if (!protection.IsLocked && !style.startsWith("Unit")) return {cell, UNO_QUERY_THROW};
        }
    return sheet->getCellByPosition(0, 0);
}

}  // namespace

Reference<css::table::XCell> Document::named(const std::string& name, int columns_right,
                                             int rows_below) const {
    return range_named(document_, name)->getCellByPosition(columns_right, rows_below);
}

int Document::rows_of(const std::string& name) const {
    const Reference<css::table::XColumnRowRange> range(range_named(document_, name), UNO_QUERY_THROW);
    return range->getRows()->getCount();
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
        Reference<css::view::XSelectionSupplier>(view, UNO_QUERY_THROW)
            ->select(Any(first_typed_in(sheet(name), rows)));
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
    const char* const filter = filter_of(path.extension().string());
    if (filter == nullptr)
        throw std::runtime_error("cannot save a file that ends in " + path.extension().string());
    Sequence<css::beans::PropertyValue> how(2);
    how.getArray()[0] = property("FilterName", Any(rtl::OUString::createFromAscii(filter)));
    how.getArray()[1] = property("Overwrite", Any(true));
    try {
        Reference<css::frame::XStorable>(document_, UNO_QUERY_THROW)->storeToURL(file_url(path), how);
    } catch (const css::lang::DisposedException&) {
        throw;
    } catch (const css::uno::Exception& error) {
        throw std::runtime_error(
            "cannot save " + path.string() +
            " (is the disk full, or is it open in another window?): " + to_utf8(error.Message));
    }
}

std::string shown(const Reference<css::table::XCell>& cell) {
    return to_utf8(Reference<css::text::XText>(cell, UNO_QUERY_THROW)->getString());
}

namespace {

std::string pipe_name() {
    static int offices = 0;
    return "undercroft-" + std::to_string(getpid()) + "-" + std::to_string(++offices);
}

/// The office with a profile of its own, or with the one that is given.
Start start_of(const std::filesystem::path& extensions, const Limits& limits, Office::Screen screen,
               const std::filesystem::path& profile, const std::string& pipe) {
    Start start;
    start.limits = limits;
    start.command = {
        UNDERCROFT_PROGRAM "/soffice.bin",
        "--norestore",
        "--nologo",
        "--nodefault",
        "--nolockcheck",
        "--accept=pipe,name=" + pipe + ";urp;",
        "-env:UserInstallation=" + (profile.empty() ? "file://{}/profile" : to_utf8(file_url(profile))),
        "-env:OSL_SOCKET_PATH={}",
        "-env:BUNDLED_EXTENSIONS=" + to_utf8(file_url(extensions))};
    if (screen == Office::Screen::none) start.command.emplace_back("--headless");
    if (profile.empty()) start.files["profile/user/registrymodifications.xcu"] = profile_settings();
    return start;
}

}  // namespace

Office::Office(const std::filesystem::path& extensions, const Limits& limits, Screen screen,
               const std::filesystem::path& profile)
    : limits_(limits) {
    const std::string pipe = pipe_name();
    keeper_ = std::make_unique<Keeper>(start_of(extensions, limits, screen, profile, pipe));

    // The client must know the office's types as well as the office does, or the bridge between them breaks.
    rtl::Bootstrap::set("URE_MORE_TYPES", file_url(std::string(UNDERCROFT_PROGRAM) + "/types/offapi.rdb"));
    rtl::Bootstrap::set("OSL_SOCKET_PATH", to_ustring(keeper_->folder().string()));
    const Reference<css::uno::XComponentContext> local = cppu::defaultBootstrap_InitialComponentContext();
    const Reference<css::bridge::XUnoUrlResolver> resolver = css::bridge::UnoUrlResolver::create(local);
    const rtl::OUString url = to_ustring("uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext");
    const auto deadline = std::chrono::steady_clock::now() + std::chrono::seconds(120);
    while (!context_.is()) {
        try {
            context_.set(resolver->resolve(url), UNO_QUERY_THROW);
        } catch (const css::connection::NoConnectException&) {
            if (keeper_->ending_within(std::chrono::milliseconds(10)))
                throw std::runtime_error("the office ended as soon as it was started");
            if (std::chrono::steady_clock::now() > deadline)
                throw std::runtime_error("the office does not answer");
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
    constexpr std::chrono::seconds patience(10);
    (void)keeper_->ending_within(patience);
}

bool Office::has_ended() const {
    return keeper_->ending_within(std::chrono::milliseconds(0)).has_value();
}

std::string Office::why_it_ended() const {
    const auto ending = keeper_->ending_within(std::chrono::seconds(2));
    if (!ending) return {};
    std::array<char, 160> text{};
    switch (*ending) {
        case Ending::by_itself:
            return "the office broke down";
        case Ending::out_of_time:
            std::snprintf(
                text.data(), text.size(),
                "the office was stopped: it was not done after %lld seconds (--seconds gives it more)",
                static_cast<long long>(limits_.time.count()));
            break;
        case Ending::out_of_memory:
            std::snprintf(
                text.data(), text.size(),
                "the office was stopped: it took more than %g GiB of memory (--memory gives it more)",
                limits_.memory);
            break;
    }
    return text.data();
}

namespace {

/// What is no file at all, or does not begin as a workbook does: the office would wait for it, or make a
/// sheet of any text.
void refuse_what_is_no_workbook(const std::filesystem::path& path) {
    if (!std::filesystem::exists(path)) throw std::runtime_error("there is no file " + path.string());
    if (!std::filesystem::is_regular_file(path)) throw std::runtime_error(path.string() + " is no file");
    std::ifstream file(path, std::ios::binary);
    std::array<char, 512> first{};
    file.read(first.data(), first.size());
    const std::string_view start(first.data(),
                                 static_cast<std::size_t>(std::max<std::streamsize>(file.gcount(), 0)));
    if (start.empty() && !std::ifstream(path)) throw std::runtime_error(path.string() + " cannot be read");
    if (start.empty()) throw std::runtime_error(path.string() + " is empty");
    const std::size_t mark = start.starts_with("\xEF\xBB\xBF") ? 3 : 0;
    const std::size_t sign = start.find_first_not_of(" \t\r\n", mark);
    const bool is_package = start.starts_with("PK");
    const bool is_binary = start.starts_with("\xD0\xCF\x11\xE0") || start[0] == '\x09';
    const bool is_xml = start.starts_with("\xFF\xFE<") || start.starts_with("\xFE\xFF") ||
                        (sign != std::string_view::npos && start[sign] == '<');
    if (!is_package && !is_binary && !is_xml)
        throw std::runtime_error(path.string() + " is no workbook: it does not begin like one");
}

}  // namespace

bool Office::is_encrypted(const std::filesystem::path& path) const {
    try {
        const auto file = css::packages::zip::ZipFileAccess::createWithURL(context_, file_url(path));
        const Reference<css::io::XInputStream> manifest(file->getByName("META-INF/manifest.xml"),
                                                        UNO_QUERY_THROW);
        constexpr sal_Int32 most = 1000000;
        Sequence<sal_Int8> bytes;
        manifest->readBytes(bytes, most);
        const std::string text(reinterpret_cast<const char*>(bytes.getConstArray()),
                               static_cast<std::size_t>(bytes.getLength()));
        return text.find("encryption-data") != std::string::npos;
    } catch (const css::uno::Exception&) {  // no such package
    }
    std::ifstream file(path, std::ios::binary);
    const std::string bytes((std::istreambuf_iterator<char>(file)), std::istreambuf_iterator<char>());
    std::string name;
    for (const char letter : std::string_view("EncryptedPackage")) name += {letter, '\0'};
    return bytes.starts_with("\xD0\xCF\x11\xE0") && bytes.find(name) != std::string::npos;
}

Document Office::load(const std::filesystem::path& path, const std::filesystem::path& stands_for) const {
    const rtl::OUString url = path.empty() ? rtl::OUString("private:factory/scalc") : file_url(path);
    // Not hidden, though there is no window: a hidden document loses its view, and with it the frozen
    // heading. Without the last two, a template becomes a new document and any other file is opened itself.
    Sequence<css::beans::PropertyValue> how(stands_for.empty() ? 2 : 4);
    how.getArray()[0] = property("MacroExecutionMode", Any(sal_Int16(0)));  // never
    how.getArray()[1] = property("UpdateDocMode", Any(sal_Int16(0)));       // no link is followed
    if (!stands_for.empty()) {
        how.getArray()[2] = property("AsTemplate", Any(false));
        how.getArray()[3] = property("DocumentBaseURL", Any(file_url(stands_for)));
    }
    const std::filesystem::path& meant = stands_for.empty() ? path : stands_for;
    std::string why = "cannot open " + meant.string() + " as a spreadsheet";
    try {
        const Reference<css::lang::XComponent> component =
            desktop_->loadComponentFromURL(url, "_blank", 0, how);
        const Reference<css::sheet::XSpreadsheetDocument> document(component, UNO_QUERY);
        if (document.is()) return Document(document);
        const Reference<css::util::XCloseable> other(component, UNO_QUERY);
        if (other.is()) other->close(true);
    } catch (const css::lang::DisposedException&) {
        throw;
    } catch (const css::uno::Exception& error) {
        if (!error.Message.isEmpty()) why += ": " + to_utf8(error.Message);
    }
    if (!path.empty() && is_encrypted(path))
        why = meant.string() + " is locked with a password: save a copy without it";
    throw std::runtime_error(why);
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
    refuse_what_is_no_workbook(path);
    Document document = load(path);
    if (path.extension() == ".ots") forget_template(document.model());
    return document;
}

Document Office::open_copy(const std::filesystem::path& path) const {
    refuse_what_is_no_workbook(path);
    // Not as a template: the office trusts the links of a document that has no place of its own. The copy
    // keeps the file's name, and its links are taken from where the file lies.
    static int copies = 0;
    const std::filesystem::path folder = keeper_->folder() / ("copy-" + std::to_string(++copies));
    std::filesystem::create_directory(folder);
    const std::filesystem::path copy = folder / path.filename();
    std::filesystem::copy_file(path, copy);
    std::filesystem::permissions(copy,
                                 std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);
    Document document = load(copy, path);
    forget_template(document.model());
    return document;
}

Document Office::blank() const {
    return load({});
}

}  // namespace undercroft::sheets
