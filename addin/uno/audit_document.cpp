#include "addin/uno/audit_document.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/deployment/PackageInformationProvider.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/ucb/SimpleFileAccess.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <com/sun/star/util/thePathSettings.hpp>

#include <future>
#include <optional>
#include <rtl/uri.hxx>

#include "addin/audit/book/book_json.hpp"
#include "addin/audit/book/template_match.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/uno/audit_record.hpp"
#include "addin/uno/audit_sheet.hpp"
#include "addin/uno/digest.hpp"
#include "addin/uno/kept_template.hpp"
#include "addin/uno/read_book.hpp"
#include "addin/uno/read_file.hpp"

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

css::beans::PropertyValue argument(const char* name, const Any& value) {
    css::beans::PropertyValue made;
    made.Name = rtl::OUString::createFromAscii(name);
    made.Value = value;
    return made;
}

/// A document that nobody sees: no macro runs in it and no link is followed.
class HiddenDocument {
public:
    HiddenDocument(const Reference<css::uno::XComponentContext>& context, const rtl::OUString& url) {
        css::uno::Sequence<css::beans::PropertyValue> how(4);
        how.getArray()[0] = argument("Hidden", Any(true));
        how.getArray()[1] = argument("ReadOnly", Any(true));
        how.getArray()[2] = argument("MacroExecutionMode", Any(sal_Int16(0)));
        how.getArray()[3] = argument("UpdateDocMode", Any(sal_Int16(0)));
        document_.set(css::frame::Desktop::create(context)->loadComponentFromURL(url, "_blank", 0, how),
                      UNO_QUERY);
        if (!document_.is()) throw css::uno::RuntimeException("cannot open " + url + " as a spreadsheet");
    }
    HiddenDocument(const HiddenDocument&) = delete;
    HiddenDocument& operator=(const HiddenDocument&) = delete;
    ~HiddenDocument() {
        try {
            if (const Reference<css::util::XCloseable> closeable(document_, UNO_QUERY); closeable.is())
                closeable->close(true);
        } catch (const css::uno::Exception&) {  // it is gone already
        }
    }
    [[nodiscard]] const Reference<css::sheet::XSpreadsheetDocument>& get() const { return document_; }

private:
    Reference<css::sheet::XSpreadsheetDocument> document_;
};

/// The template `name.ots` in one of these folders or in their folders.
rtl::OUString found_in(const Reference<css::ucb::XSimpleFileAccess>& files, const rtl::OUString& folder,
                       const rtl::OUString& name, int depth) {
    if (folder.isEmpty() || !files->exists(folder) || !files->isFolder(folder)) return {};
    for (const rtl::OUString& entry : files->getFolderContents(folder, true)) {
        if (entry.endsWith("/" + name)) return entry;
        if (depth > 0 && files->isFolder(entry))
            if (const rtl::OUString below = found_in(files, entry, name, depth - 1); !below.isEmpty())
                return below;
    }
    return {};
}

/// Where the template that a workbook was made from is: in a folder of templates of this office, or in the
/// package. Empty where it is in none.
rtl::OUString template_of(const Reference<css::uno::XComponentContext>& context, const audit::Book& book) {
    const audit::Identity identity = audit::identity_of(book);
    if (identity.name.empty() || identity.name.find_first_of("/\\%") != std::string::npos) return {};
    const rtl::OUString name = to_oustring(identity.name + (identity.system == "US" ? "-us" : "") + ".ots");
    const Reference<css::ucb::XSimpleFileAccess> files(css::ucb::SimpleFileAccess::create(context),
                                                       UNO_QUERY_THROW);
    const auto settings = css::util::thePathSettings::get(context);
    rtl::OUString paths;
    settings->getPropertyValue("Template") >>= paths;
    for (sal_Int32 at = 0; at >= 0;)
        if (const rtl::OUString found = found_in(files, paths.getToken(0, ';', at), name, 2);
            !found.isEmpty())
            return found;
    const rtl::OUString package =
        css::deployment::PackageInformationProvider::get(context)->getPackageLocation("undercroft.addin");
    return found_in(files, package + "/template", name, 1);
}

/// One step of the document's undo list.
class UndoStep {
public:
    explicit UndoStep(const Reference<css::uno::XInterface>& document) {
        if (const Reference<css::document::XUndoManagerSupplier> supplier(document, UNO_QUERY); supplier.is())
            manager_ = supplier->getUndoManager();
        if (manager_.is()) manager_->enterUndoContext("Audit this workbook");
    }
    UndoStep(const UndoStep&) = delete;
    UndoStep& operator=(const UndoStep&) = delete;
    ~UndoStep() {
        try {
            if (manager_.is()) manager_->leaveUndoContext();
        } catch (const css::uno::Exception&) {  // nothing was done that could be undone
        }
    }

private:
    Reference<css::document::XUndoManager> manager_;
};

/// What the file holds, read beside what the office does meanwhile.
class FileReading {
public:
    FileReading(const Reference<css::uno::XComponentContext>& context, const rtl::OUString& url) {
        if (!url.isEmpty())
            contents_ = std::async(std::launch::async, [context, url] { return read_file(context, url); });
    }

    /// \param shown the results of what is open: they count where the file cannot be read - encrypted, moved,
    /// deleted - or is not what is open.
    FileContents contents(audit::StoredValues shown) {
        FileContents read;
        if (!contents_.valid()) {
            read.not_read = "the workbook was changed since it was saved";
        } else {
            try {
                read = contents_.get();
            } catch (const css::uno::Exception&) {
                read.not_read = "the file cannot be read beside the office: it may be encrypted or moved";
            }
        }
        if (!read.not_read.empty()) read.stored = std::move(shown);
        return read;
    }

private:
    std::future<FileContents> contents_;
};

/// `bed A.ods` of `file:///jobs/bed%20A.ods`
std::string name_of_file(const rtl::OUString& url) {
    const rtl::OUString last = url.copy(url.lastIndexOf('/') + 1);
    return to_string(rtl::Uri::decode(last, rtl_UriDecodeWithCharset, RTL_TEXTENCODING_UTF8));
}

std::vector<std::string> not_checked(const FileContents& contents, bool has_template) {
    std::vector<std::string> lines;
    if (!contents.not_read.empty())
        lines.push_back(
            "whether the results in the file are those of its formulas, and what links, scripts and "
            "controls it brings beyond those that the office lists: " +
            contents.not_read);
    if (!has_template)
        lines.emplace_back(
            "whether formulas are those of a template: the workbook names none that is here, and none "
            "was given");
    return lines;
}

}  // namespace

std::string template_as_read(const Reference<css::uno::XComponentContext>& context,
                             const rtl::OUString& url) {
    const HiddenDocument document(context, url);
    return audit::json_of({office_words(context), digest_of_file(context, url), read_book(document.get())});
}

audit::Report audit_document(const Reference<css::uno::XComponentContext>& context,
                             const AuditWanted& wanted) {
    const AuditRecord record = read_audit_record(wanted.document);
    FileReading file(context, wanted.file);
    audit::StoredValues shown = read_results(wanted.document);

    Reference<css::sheet::XCalculatable>(wanted.document, UNO_QUERY_THROW)->calculateAll();

    const audit::Book book = read_book(wanted.document);
    const rtl::OUString url = wanted.against.isEmpty() ? template_of(context, book) : wanted.against;
    std::shared_ptr<const audit::Book> against;
    if (!url.isEmpty())
        against = kept_template(context, url, [&] { return read_book(HiddenDocument(context, url).get()); });
    std::optional<audit::Book> earlier;
    if (!wanted.since.isEmpty()) earlier = read_book(HiddenDocument(context, wanted.since).get());
    const FileContents contents = file.contents(std::move(shown));
    const audit::Report report =
        audit::audit_workbook({.book = book,
                               .stored = &contents.stored,
                               .against = against.get(),
                               .digest = office_digest(context),
                               .installed_version = version(),
                               .signatures = record.signatures,
                               .at_signing = record.at_signing.is_empty() ? nullptr : &record.at_signing,
                               .accepted = record.accepted,
                               .earlier = earlier ? &*earlier : nullptr,
                               .earlier_name = name_of_file(wanted.since),
                               .risks = &contents.risks,
                               .not_checked = not_checked(contents, against != nullptr)});
    if (wanted.writes_sheet) {
        const std::int32_t place = book.sheet_named(audit::audit_sheet_name);
        if (place >= 0 && !audit::is_audit_sheet(book.sheets[static_cast<std::size_t>(place)]))
            throw css::uno::RuntimeException(
                "the workbook has a sheet Audit of its own, which is not written over: "
                "give that sheet another name");
        const UndoStep step(wanted.document);
        write_audit_sheet(wanted.document, report);
    }
    return report;
}

}  // namespace undercroft::addin
