#include "addin/uno/audit_sheet.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XHeaderFooterContent.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/table/XTableColumns.hpp>
#include <com/sun/star/table/XTableRows.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/text/XTextContent.hpp>

#include <algorithm>

#include "addin/catalogue/catalogue.hpp"
#include "addin/uno/audit_page.hpp"
#include "addin/uno/audit_record.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr sal_Int32 widths[shown_columns] = {3500, 4700, 3600, 2900, 8600, 6600, 6000};  // 0.01 mm
constexpr std::size_t digits_by_sheet = 16;

/// "Site 0123456789abcdef; Storage ..."
std::string text_by_sheet(const audit::Fingerprint& fingerprint) {
    std::string text;
    for (const auto& [name, digest] : fingerprint.sheets)
        text += (text.empty() ? "" : "; ") + name + " " + digest.substr(0, digits_by_sheet);
    return text;
}

class SheetComposer {
public:
    SheetComposer(const audit::Report& report, const AuditRecord& record)
        : report_(report), record_(record) {}

    /// The last row that is printed.
    [[nodiscard]] sal_Int32 printed() const { return printed_; }

    AuditPage page() {
        page_.title(audit::audit_sheet_title);
        verdict();
        summary();
        sign_off();
        inputs();
        checks();
        findings();
        revision();
        drift();
        map(false);
        map(true);
        page_.keep_signed(records_of(record_.at_signing));
        return std::move(page_);
    }

private:
    void verdict() {
        page_.line({report_.verdict});
        const audit::ReportCounts& counts = report_.counts;
        const sal_Int32 colour = counts.errors > 0                    ? look::bad
                                 : counts.warnings + counts.notes > 0 ? look::fair
                                                                      : look::good;
        page_.dress({0, 0, shown_columns - 1, colour, true, look::ink, 12});
        page_.line(
            {"The audit reads formulas, units and values. It does not judge the design: a licensed engineer "
             "does, "
             "under local codes."});
        page_.dress({0, 0, shown_columns - 1, -1, false, look::ink, 9});
    }

    void count(const std::string& what, std::size_t number) { page_.line({what, std::to_string(number)}); }

    void summary() {
        const audit::ReportCounts& counts = report_.counts;
        page_.section("Summary");
        if (!report_.job.empty()) page_.line({"Job", report_.job});
        count("Formulas", counts.formulas);
        count("of which distinct", counts.distinct);
        count("with our functions", counts.with_own);
        count("Errors", counts.errors);
        count("Warnings", counts.warnings);
        count("Notes", counts.notes);
        if (counts.accepted > 0) count("Accepted findings", counts.accepted);
        for (const auto answer : {audit::UnitVerdict::consistent, audit::UnitVerdict::inconsistent,
                                  audit::UnitVerdict::cannot_tell, audit::UnitVerdict::not_given})
            count("Units: " + audit::text_of(answer), counts.units_that_are(answer));
        page_.line({"Functions", version()});
        for (const std::string& what : report_.not_checked) {
            page_.line({"Not checked: " + what});
            page_.dress({0, 0, shown_columns - 1, -1, false, look::ink, 9});
        }
    }

    void sign_off() {
        page_.section("Sign-off");
        page_.heads({std::begin(sign_columns), std::end(sign_columns)});
        for (std::size_t i = 0; i < record_.signatures.size(); ++i) {
            const audit::Signature& signature = record_.signatures[i];
            const std::string now = i < report_.signatures.size() ? report_.signatures[i].state : "";
            page_.line({signature.checker, signature.date, now, "", signature.of.whole,
                        text_by_sheet(signature.of)});
            page_.record(audit::text_of_parts(signature.of));
            page_.table_row();
        }
        page_.line({"", "", "type a name and a date to sign", "", report_.fingerprint.whole,
                    text_by_sheet(report_.fingerprint)});
        page_.record(audit::text_of_parts(report_.fingerprint));
        page_.table_row();
        page_.dress({0, checker, date, look::entry, false, look::ink, 0, true});
        page_.line(
            {"A signature stands for the fingerprint in its row. The next audit says whether the workbook "
             "still is what was signed."});
        page_.dress({0, 0, shown_columns - 1, -1, false, look::ink, 9});
    }

    void drift() {
        if (report_.drift.empty()) return;
        page_.section("Against the template");
        for (const std::string& line : report_.drift) {
            page_.line({line});
            page_.dress({0, 0, shown_columns - 1, -1, false, look::ink, 9});
        }
    }

    static std::string shown(const std::optional<double>& number) {
        return number ? rounded_text(*number) : std::string();
    }

    void inputs() {
        if (report_.inputs.empty()) return;
        page_.section("Register of inputs");
        page_.heads(
            {"Cell", "What it is", "Value", "Template", "Worth a look, or changed", "Usual; note", "State"});
        for (const audit::RegisterLine& input : report_.inputs) {
            std::string remark = input.remark;
            if (input.when_signed)
                remark += (remark.empty() ? "" : "; ") + (input.when_signed->empty()
                                                              ? std::string("new since it was signed")
                                                              : "when signed " + *input.when_signed);
            const std::string name = input.symbol.empty() ? input.label : input.label + ", " + input.symbol;
            const std::string note = input.usual.empty() || input.note.empty()
                                         ? input.usual + input.note
                                         : input.usual + "; " + input.note;
            page_.line({"", input.reference.empty() ? name : input.reference + " " + name,
                        input.value_and_unit(), input.in_template.value_or(""), remark, note,
                        std::string(text_of(input.state))});
            page_.table_row();
            page_.record(std::string(input_record) + input.key + "\t" + input.value_and_unit());
            page_.link(0, input.target, input.cells);
            if (input.gravity > 0) page_.dress({0, 4, 4, look::fair});
        }
    }

    void checks() {
        if (report_.checks.empty()) return;
        page_.section("Checks");
        page_.heads({"Cell", "Check", "Verdict", "Ratio", "Demand and capacity", "Source", "Rests on"});
        for (const audit::CheckLine& check : report_.checks) {
            const std::string unit = check.unit.empty() ? std::string() : " " + check.unit;
            const std::string both = check.demand && check.capacity
                                         ? shown(check.demand) + unit + " of " + shown(check.capacity) + unit
                                         : check.shown;
            page_.line({"", check.reference.empty() ? check.label : check.reference + " " + check.label,
                        std::string(text_of(check.verdict)), shown(check.ratio), both, check.source,
                        std::string(text_of(check.rests))});
            page_.table_row();
            page_.link(0, check.target, check.cells);
            if (check.verdict <= audit::CheckVerdict::error) page_.dress({0, 2, 2, look::bad, true});
            if (check.rests != audit::RestsOn::inputs) page_.dress({0, 6, 6, look::fair});
        }
    }

    void findings() {
        page_.section("Findings");
        page_.heads({std::begin(finding_columns), std::end(finding_columns)});
        if (report_.findings.empty()) page_.line({"", "nothing was found"});
        for (const audit::ReportFinding& finding : report_.findings) {
            const bool accepted = finding.accepted.has_value();
            const std::string by = !accepted ? std::string()
                                   : finding.accepted->date.empty()
                                       ? finding.accepted->name
                                       : finding.accepted->name + ", " + finding.accepted->date;
            page_.line({finding.cells.empty() ? "the workbook" : "", finding.label,
                        accepted ? "accepted" : std::string(audit::text_of(finding.severity)), finding.title,
                        finding.says, accepted ? finding.accepted->reason : "", by});
            page_.table_row();
            if (!finding.mark.empty()) page_.record(std::string(finding_record) + finding.mark);
            if (finding.first) page_.link(0, finding.target, finding.cells);
            const sal_Int32 colour = accepted                                       ? look::good
                                     : finding.severity == audit::Severity::error   ? look::bad
                                     : finding.severity == audit::Severity::warning ? look::fair
                                                                                    : look::paper;
            page_.dress({0, 2, 2, colour, !accepted && finding.severity == audit::Severity::error});
            if (!finding.mark.empty())
                page_.dress({0, reason, who_and_when, look::entry, false, look::ink, 0, true});
        }
        page_.line(
            {"To accept a finding, type why into its row, and a name and a date. It stays listed, and comes "
             "back when its "
             "cell or what that rests on changes."});
        page_.dress({0, 0, shown_columns - 1, -1, false, look::ink, 9});
    }

    void revision() {
        if (!report_.revision) return;
        page_.section("Since " + report_.earlier_name);
        page_.line({report_.revision->summary()});
        page_.dress({0, 0, shown_columns - 1, -1, true, look::ink, 9});
        page_.heads({"Cell", "What it is", "Kind", "Change", "Is", "Was"});
        for (const audit::RevisionLine& line : report_.revision->lines) {
            page_.line({line.first ? "" : line.cells, line.label, std::string(title_of(line.change)),
                        line.says, line.is, line.was});
            page_.table_row();
            if (line.first) page_.link(0, line.target, line.cells);
            if (line.change == audit::Change::verdict) page_.dress({0, 4, 4, look::fair, true});
        }
    }

    /// What computes first, sheet by sheet; links and counts behind all else.
    void map(bool links_and_counts) {
        for (const audit::SheetMap& sheet : report_.map) {
            bool has_head = false;
            for (const audit::MapLine& line : sheet.lines) {
                if ((line.is_link || line.is_helper) != links_and_counts) continue;
                if (!has_head) {
                    page_.section((links_and_counts ? "Links and counts of " : "Formulas of ") + sheet.name);
                    page_.heads({"Cells", "What it is", "Units", "Value", "Formula", "Rests on",
                                 "Equation, and its source"});
                    has_head = true;
                }
                map_line(line);
            }
            if (!links_and_counts && has_head) printed_ = page_.last();
        }
    }

    void map_line(const audit::MapLine& line) {
        const std::string units = audit::text_of(line.verdict);
        page_.line({"", line.ticked ? "\xE2\x9C\x93 " + line.label : line.label,
                    line.reason.empty() ? units : units + ": " + line.reason,
                    line.value + (line.unit.empty() ? "" : " " + line.unit), line.formula, line.inputs,
                    line.equation + (line.source.empty() ? "" : "\n" + line.source)});
        page_.table_row();
        page_.record(std::string(line_record) + line.mark);
        page_.link(0, line.target, line.cells);
        if (line.verdict == audit::UnitVerdict::inconsistent) page_.dress({0, 2, 2, look::bad, true});
    }

    const audit::Report& report_;
    const AuditRecord& record_;
    AuditPage page_;
    sal_Int32 printed_ = 0;
};

/// The job at the foot of each page, and `3 of 11`.
void number_pages(const Reference<css::lang::XMultiServiceFactory>& factory,
                  const Reference<css::beans::XPropertySet>& page, const std::string& job) {
    page->setPropertyValue("HeaderIsOn", Any(false));
    page->setPropertyValue("FooterIsOn", Any(true));
    const Reference<css::sheet::XHeaderFooterContent> foot(page->getPropertyValue("RightPageFooterContent"),
                                                           UNO_QUERY);
    if (!foot.is()) return;
    foot->getLeftText()->setString(to_oustring(job));
    foot->getCenterText()->setString(to_oustring(audit::audit_sheet_title));
    const Reference<css::text::XText> right = foot->getRightText();
    right->setString("");
    const auto add = [&](const char* field) {
        const Reference<css::text::XTextContent> made(
            factory->createInstance(rtl::OUString::createFromAscii(field)), UNO_QUERY_THROW);
        right->insertTextContent(right->getEnd(), made, false);
    };
    add("com.sun.star.text.TextField.PageNumber");
    right->insertString(right->getEnd(), " of ", false);
    add("com.sun.star.text.TextField.PageCount");
    page->setPropertyValue("RightPageFooterContent", Any(foot));
}

/// Landscape, as wide as one page.
void set_page(const Reference<css::sheet::XSpreadsheetDocument>& document,
              const Reference<css::sheet::XSpreadsheet>& sheet, const std::string& job) {
    const Reference<css::lang::XMultiServiceFactory> factory(document, UNO_QUERY_THROW);
    const rtl::OUString name = to_oustring(audit::audit_sheet_name);
    const Reference<css::style::XStyleFamiliesSupplier> supplier(document, UNO_QUERY_THROW);
    const Reference<css::container::XNameContainer> pages(
        supplier->getStyleFamilies()->getByName("PageStyles"), UNO_QUERY_THROW);
    if (!pages->hasByName(name)) {
        pages->insertByName(name, Any(factory->createInstance("com.sun.star.style.PageStyle")));
        const Reference<css::beans::XPropertySet> page(pages->getByName(name), UNO_QUERY_THROW);
        sal_Int32 width = 0;
        sal_Int32 height = 0;
        page->getPropertyValue("Width") >>= width;
        page->getPropertyValue("Height") >>= height;
        page->setPropertyValue("IsLandscape", Any(true));
        page->setPropertyValue("Width", Any(std::max(width, height)));
        page->setPropertyValue("Height", Any(std::min(width, height)));
        page->setPropertyValue("ScaleToPagesX", Any(sal_Int16(1)));
        page->setPropertyValue("ScaleToPagesY", Any(sal_Int16(0)));
    }
    number_pages(factory, Reference<css::beans::XPropertySet>(pages->getByName(name), UNO_QUERY_THROW), job);
    Reference<css::beans::XPropertySet>(sheet, UNO_QUERY_THROW)->setPropertyValue("PageStyle", Any(name));
}

/// The name that only our sheet knows.
void sign_as_ours(const Reference<css::sheet::XSpreadsheet>& sheet) {
    const Reference<css::beans::XPropertySet> properties(sheet, UNO_QUERY_THROW);
    Reference<css::sheet::XNamedRanges> names;
    properties->getPropertyValue("NamedRanges") >>= names;
    const rtl::OUString name = to_oustring(audit::audit_sheet_mark);
    if (names.is() && !names->hasByName(name))
        names->addNewByName(name, to_oustring("TRUE"), css::table::CellAddress(), 0);
}

/// Links and counts stay in the sheet, and off the paper.
void set_printed(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 last_row) {
    const Reference<css::sheet::XPrintAreas> areas(sheet, UNO_QUERY);
    if (!areas.is() || last_row <= 0) return;
    const css::table::CellRangeAddress whole_sheet =
        Reference<css::sheet::XCellRangeAddressable>(sheet, UNO_QUERY_THROW)->getRangeAddress();
    css::uno::Sequence<css::table::CellRangeAddress> printed(1);
    printed.getArray()[0] = {whole_sheet.Sheet, 0, 0, shown_columns - 1, last_row};
    areas->setPrintAreas(printed);
}

}  // namespace

void write_audit_sheet(const Reference<css::sheet::XSpreadsheetDocument>& document,
                       const audit::Report& report) {
    const AuditRecord record = read_audit_record(document);
    const rtl::OUString name = to_oustring(audit::audit_sheet_name);
    const Reference<css::sheet::XSpreadsheets> sheets = document->getSheets();
    if (audit_sheet_of(document).is()) sheets->removeByName(name);
    sheets->insertNewByName(name, static_cast<sal_Int16>(sheets->getElementNames().getLength()));
    const Reference<css::sheet::XSpreadsheet> sheet = audit_sheet_of(document);
    const Reference<css::table::XColumnRowRange> both(sheet, UNO_QUERY_THROW);
    for (sal_Int32 i = 0; i < audit_columns; ++i) {
        const Reference<css::beans::XPropertySet> column(both->getColumns()->getByIndex(i), UNO_QUERY_THROW);
        if (i < shown_columns)
            column->setPropertyValue("Width", Any(widths[i]));
        else
            column->setPropertyValue("IsVisible", Any(false));
    }
    SheetComposer composer(report, record);
    const AuditPage page = composer.page();
    page.write(sheet);
    sign_as_ours(sheet);
    Reference<css::beans::XPropertySet>(
        Reference<css::table::XColumnRowRange>(sheet->getCellRangeByPosition(0, 0, 0, page.last()),
                                               UNO_QUERY_THROW)
            ->getRows(),
        UNO_QUERY_THROW)
        ->setPropertyValue("OptimalHeight", Any(true));
    set_page(document, sheet, report.job);
    set_printed(sheet, composer.printed());
}

}  // namespace undercroft::addin
