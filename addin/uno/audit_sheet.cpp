#include "addin/uno/audit_sheet.hpp"

#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/table/BorderLine2.hpp>
#include <com/sun/star/table/CellVertJustify2.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/table/XTableColumns.hpp>
#include <com/sun/star/table/XTableRows.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/CellProtection.hpp>

#include <algorithm>

#include "addin/catalogue/catalogue.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr const char* sign_title = "Sign-off";
constexpr const char* sign_columns[] = {
    "Checker",  "Date", "State", "", "Fingerprint (SHA-256) of all formulas, inputs and units",
    "By sheet", ""};
enum SignColumn : sal_Int32 { checker = 0, date = 1, state = 2, whole = 4, by_sheet = 5 };
constexpr sal_Int32 columns = 7;
constexpr sal_Int32 widths[columns] = {3500, 4700, 3600, 2900, 8600, 6600, 6000};  // 0.01 mm
constexpr std::size_t digits_by_sheet = 16;
constexpr std::size_t longest_text = 32000;

constexpr sal_Int32 ink = 0x263238;
constexpr sal_Int32 band = 0xCFD8DC;
constexpr sal_Int32 head = 0x37474F;
constexpr sal_Int32 paper = 0xFFFFFF;
constexpr sal_Int32 bad = 0xFBD5D0;
constexpr sal_Int32 fair = 0xFFF0C9;
constexpr sal_Int32 good = 0xDCEFDC;
constexpr sal_Int32 entry = 0xFFF8DC;

Reference<css::sheet::XSpreadsheet> audit_sheet_of(
    const Reference<css::sheet::XSpreadsheetDocument>& document) {
    const rtl::OUString name = to_oustring(audit::audit_sheet_name);
    const Reference<css::container::XNameAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
    if (!sheets->hasByName(name)) return {};
    return Reference<css::sheet::XSpreadsheet>(sheets->getByName(name), UNO_QUERY);
}

/// "Site 0123456789abcdef; Storage ..."
std::string text_by_sheet(const audit::Fingerprint& fingerprint) {
    std::string text;
    for (const auto& [name, digest] : fingerprint.sheets)
        text += (text.empty() ? "" : "; ") + name + " " + digest.substr(0, digits_by_sheet);
    return text;
}

std::vector<std::pair<std::string, std::string>> sheets_of_text(const std::string& text) {
    std::vector<std::pair<std::string, std::string>> sheets;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find("; ", at), text.size());
        const std::size_t gap = text.rfind(' ', end - 1);
        if (gap != std::string::npos && gap > at)
            sheets.emplace_back(text.substr(at, gap - at), text.substr(gap + 1, end - gap - 1));
        at = end + 2;
    }
    return sheets;
}

/// The page is put together as rows first, and written at once.
class Page {
public:
    struct Link {
        sal_Int32 row;
        sal_Int32 column;
        std::string target;
        std::string shown;
    };
    struct Look {
        sal_Int32 row;
        sal_Int32 first_column;
        sal_Int32 last_column;
        sal_Int32 back;
        bool bold = false;
        sal_Int32 fore = ink;
        float size = 0;
        bool is_entry = false;
    };

    void line(const std::vector<std::string>& texts) {
        css::uno::Sequence<Any> row(columns);
        for (sal_Int32 i = 0; i < columns; ++i)
            row.getArray()[i] <<=
                i < static_cast<sal_Int32>(texts.size())
                    ? to_oustring(
                          std::string_view(texts[static_cast<std::size_t>(i)]).substr(0, longest_text))
                    : rtl::OUString();
        rows_.push_back(std::move(row));
    }
    void link(sal_Int32 column, const std::string& target, const std::string& shown) {
        links_.push_back({last(), column, target, shown});
    }
    void look(Look look) {
        look.row = last();
        looks_.push_back(look);
    }
    void table_row() { table_rows_.push_back(last()); }
    void title(const std::string& text) {
        line({text});
        look({0, 0, columns - 1, -1, true, ink, 15});
    }
    void section(const std::string& text) {
        line({});
        line({text});
        look({0, 0, columns - 1, head, true, paper, 11});
    }
    void heads(const std::vector<std::string>& texts) {
        line(texts);
        look({0, 0, columns - 1, band, true});
    }
    [[nodiscard]] sal_Int32 last() const { return static_cast<sal_Int32>(rows_.size()) - 1; }

    void write(const Reference<css::sheet::XSpreadsheet>& sheet) const {
        css::uno::Sequence<css::uno::Sequence<Any>> all(static_cast<sal_Int32>(rows_.size()));
        std::copy(rows_.begin(), rows_.end(), all.getArray());
        const Reference<css::table::XCellRange> range =
            sheet->getCellRangeByPosition(0, 0, columns - 1, last());
        const Reference<css::beans::XPropertySet> whole(range, UNO_QUERY_THROW);
        whole->setPropertyValue("NumberFormat", Any(text_format_));
        whole->setPropertyValue("IsTextWrapped", Any(true));
        whole->setPropertyValue("VertJustify", Any(css::table::CellVertJustify2::TOP));
        whole->setPropertyValue("CharHeight", Any(9.0F));
        whole->setPropertyValue("CharColor", Any(ink));
        Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->setDataArray(all);
        for (const Link& link : links_) write_link(sheet, link);
        for (const Look& look : looks_) dress(sheet, look);
        for (std::size_t i = 0; i < table_rows_.size();) {
            std::size_t end = i + 1;
            while (end < table_rows_.size() && table_rows_[end] == table_rows_[end - 1] + 1) ++end;
            rule(sheet, table_rows_[i], table_rows_[end - 1]);
            i = end;
        }
    }

    void text_format(sal_Int32 format) { text_format_ = format; }

private:
    static std::string quoted(std::string text) {
        for (std::size_t at = 0; (at = text.find('"', at)) != std::string::npos; at += 2)
            text.insert(at, 1, '"');
        return '"' + text + '"';
    }
    static void write_link(const Reference<css::sheet::XSpreadsheet>& sheet, const Link& link) {
        const Reference<css::table::XCell> cell = sheet->getCellByPosition(link.column, link.row);
        Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)
            ->setPropertyValue("NumberFormat", Any(sal_Int32(0)));
        cell->setFormula(
            to_oustring("=HYPERLINK(" + quoted("#" + link.target) + ";" + quoted(link.shown) + ")"));
    }
    static void dress(const Reference<css::sheet::XSpreadsheet>& sheet, const Look& look) {
        const Reference<css::beans::XPropertySet> cells(
            sheet->getCellRangeByPosition(look.first_column, look.row, look.last_column, look.row),
            UNO_QUERY_THROW);
        if (look.back >= 0) cells->setPropertyValue("CellBackColor", Any(look.back));
        if (look.bold) cells->setPropertyValue("CharWeight", Any(css::awt::FontWeight::BOLD));
        if (look.fore != ink) cells->setPropertyValue("CharColor", Any(look.fore));
        if (look.size > 0) {
            cells->setPropertyValue("CharHeight", Any(look.size));
            cells->setPropertyValue("IsTextWrapped", Any(false));
        }
        if (look.is_entry)
            cells->setPropertyValue("CellProtection",
                                    Any(css::util::CellProtection(false, false, false, false)));
    }

    /// A fine line under each of these rows.
    static void rule(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 first, sal_Int32 last) {
        css::table::BorderLine2 line;
        line.Color = band;
        line.OuterLineWidth = 9;  // 0.01 mm
        line.LineWidth = 9;
        const Reference<css::beans::XPropertySet> cells(
            sheet->getCellRangeByPosition(0, first, columns - 1, last), UNO_QUERY_THROW);
        cells->setPropertyValue("BottomBorder2", Any(line));
        cells->setPropertyValue("TopBorder2", Any(line));
    }

    std::vector<css::uno::Sequence<Any>> rows_;
    std::vector<sal_Int32> table_rows_;
    std::vector<Link> links_;
    std::vector<Look> looks_;
    sal_Int32 text_format_ = 0;
};

class SheetComposer {
public:
    SheetComposer(const audit::Report& report, const std::vector<audit::Signature>& signatures)
        : report_(report), signatures_(signatures) {}

    Page page() {
        page_.title(audit::audit_sheet_title);
        verdict();
        summary();
        sign_off();
        drift();
        findings();
        map();
        return std::move(page_);
    }

private:
    void verdict() {
        page_.line({report_.verdict});
        const audit::ReportCounts& counts = report_.counts;
        const sal_Int32 colour = counts.errors > 0 ? bad : counts.warnings + counts.notes > 0 ? fair : good;
        page_.look({0, 0, columns - 1, colour, true, ink, 12});
        page_.line(
            {"The audit reads formulas, units and values. It does not judge the design: a licensed engineer "
             "does, "
             "under local codes."});
        page_.look({0, 0, columns - 1, -1, false, ink, 9});
    }

    void count(const std::string& what, std::size_t number) { page_.line({what, std::to_string(number)}); }

    void summary() {
        const audit::ReportCounts& counts = report_.counts;
        page_.section("Summary");
        count("Formulas", counts.formulas);
        count("of which distinct", counts.distinct);
        count("with our functions", counts.with_own);
        count("Errors", counts.errors);
        count("Warnings", counts.warnings);
        count("Notes", counts.notes);
        for (const auto answer : {audit::UnitVerdict::consistent, audit::UnitVerdict::inconsistent,
                                  audit::UnitVerdict::cannot_tell, audit::UnitVerdict::not_given})
            count("Units: " + audit::text_of(answer), counts.units_that_are(answer));
        page_.line({"Functions", version()});
        for (const std::string& what : report_.not_checked) {
            page_.line({"Not checked: " + what});
            page_.look({0, 0, columns - 1, -1, false, ink, 9});
        }
    }

    void sign_off() {
        page_.section(sign_title);
        page_.heads({std::begin(sign_columns), std::end(sign_columns)});
        for (std::size_t i = 0; i < signatures_.size(); ++i) {
            const audit::Signature& signature = signatures_[i];
            const std::string now = i < report_.signatures.size() ? report_.signatures[i].state : "";
            page_.line({signature.checker, signature.date, now, "", signature.of.whole,
                        text_by_sheet(signature.of)});
            page_.table_row();
        }
        page_.line({"", "", "type a name and a date to sign", "", report_.fingerprint.whole,
                    text_by_sheet(report_.fingerprint)});
        page_.table_row();
        page_.look({0, checker, date, entry, false, ink, 0, true});
        page_.line(
            {"A signature stands for the fingerprint in its row. The next audit says whether the workbook "
             "still is what was signed."});
        page_.look({0, 0, columns - 1, -1, false, ink, 9});
    }

    void drift() {
        if (report_.drift.empty()) return;
        page_.section("Against the template");
        for (const std::string& line : report_.drift) {
            page_.line({line});
            page_.look({0, 0, columns - 1, -1, false, ink, 9});
        }
    }

    void findings() {
        page_.section("Findings");
        page_.heads({"Cell", "What it is", "Gravity", "Kind", "What is wrong, and what to do"});
        if (report_.findings.empty()) page_.line({"", "nothing was found"});
        for (const audit::ReportFinding& finding : report_.findings) {
            page_.line({finding.cells.empty() ? "the workbook" : "", finding.label,
                        std::string(audit::text_of(finding.severity)), finding.title, finding.says});
            page_.table_row();
            if (finding.first) page_.link(0, finding.target, finding.cells);
            const sal_Int32 colour = finding.severity == audit::Severity::error     ? bad
                                     : finding.severity == audit::Severity::warning ? fair
                                                                                    : paper;
            page_.look({0, 2, 2, colour, finding.severity == audit::Severity::error});
        }
    }

    void map() {
        for (const audit::SheetMap& sheet : report_.map) {
            page_.section("Formulas of " + sheet.name);
            page_.heads(
                {"Cells", "What it is", "Units", "Value", "Formula", "Rests on", "Equation, and its source"});
            for (const audit::MapLine& line : sheet.lines) {
                const std::string units = audit::text_of(line.verdict);
                page_.line({"", line.label, line.reason.empty() ? units : units + ": " + line.reason,
                            line.value + (line.unit.empty() ? "" : " " + line.unit), line.formula,
                            line.inputs, line.equation + (line.source.empty() ? "" : "\n" + line.source)});
                page_.table_row();
                page_.link(0, line.target, line.cells);
                if (line.verdict == audit::UnitVerdict::inconsistent) page_.look({0, 2, 2, bad, true});
            }
        }
    }

    const audit::Report& report_;
    const std::vector<audit::Signature>& signatures_;
    Page page_;
};

/// Landscape, as wide as one page.
void set_page(const Reference<css::sheet::XSpreadsheetDocument>& document,
              const Reference<css::sheet::XSpreadsheet>& sheet) {
    const rtl::OUString name = to_oustring(audit::audit_sheet_name);
    const Reference<css::style::XStyleFamiliesSupplier> supplier(document, UNO_QUERY_THROW);
    const Reference<css::container::XNameContainer> pages(
        supplier->getStyleFamilies()->getByName("PageStyles"), UNO_QUERY_THROW);
    if (!pages->hasByName(name)) {
        const Reference<css::lang::XMultiServiceFactory> factory(document, UNO_QUERY_THROW);
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
    Reference<css::beans::XPropertySet>(sheet, UNO_QUERY_THROW)->setPropertyValue("PageStyle", Any(name));
}

}  // namespace

std::vector<audit::Signature> read_signatures(const Reference<css::sheet::XSpreadsheetDocument>& document) {
    std::vector<audit::Signature> signatures;
    const Reference<css::sheet::XSpreadsheet> sheet = audit_sheet_of(document);
    if (!sheet.is()) return signatures;
    constexpr sal_Int32 search_rows = 500;
    const Reference<css::sheet::XCellRangeData> range(
        sheet->getCellRangeByPosition(0, 0, columns - 1, search_rows), UNO_QUERY_THROW);
    bool inside = false;
    sal_Int32 at = -1;
    for (const css::uno::Sequence<Any>& row : range->getDataArray()) {
        ++at;
        const auto text = [&](sal_Int32 column) {
            rtl::OUString held;
            if (row[column] >>= held) return to_string(held);
            // A number as the cell shows it: a date stays one.
            const Reference<css::text::XText> cell(sheet->getCellByPosition(column, at), UNO_QUERY_THROW);
            return to_string(cell->getString());
        };
        if (text(checker) == sign_columns[0] && text(date) == sign_columns[1]) {
            inside = true;
            continue;
        }
        if (!inside) continue;
        if (text(whole).empty()) break;
        if (!text(checker).empty())
            signatures.push_back({text(checker), text(date), {text(whole), sheets_of_text(text(by_sheet))}});
    }
    return signatures;
}

void write_audit_sheet(const Reference<css::sheet::XSpreadsheetDocument>& document,
                       const audit::Report& report) {
    const std::vector<audit::Signature> signatures = read_signatures(document);
    const rtl::OUString name = to_oustring(audit::audit_sheet_name);
    const Reference<css::sheet::XSpreadsheets> sheets = document->getSheets();
    if (audit_sheet_of(document).is()) sheets->removeByName(name);
    sheets->insertNewByName(name, static_cast<sal_Int16>(sheets->getElementNames().getLength()));
    const Reference<css::sheet::XSpreadsheet> sheet = audit_sheet_of(document);
    const Reference<css::table::XColumnRowRange> both(sheet, UNO_QUERY_THROW);
    for (sal_Int32 i = 0; i < columns; ++i)
        Reference<css::beans::XPropertySet>(both->getColumns()->getByIndex(i), UNO_QUERY_THROW)
            ->setPropertyValue("Width", Any(widths[i]));
    Page page = SheetComposer(report, signatures).page();
    page.write(sheet);
    Reference<css::beans::XPropertySet>(
        Reference<css::table::XColumnRowRange>(sheet->getCellRangeByPosition(0, 0, 0, page.last()),
                                               UNO_QUERY_THROW)
            ->getRows(),
        UNO_QUERY_THROW)
        ->setPropertyValue("OptimalHeight", Any(true));
    set_page(document, sheet);
}

}  // namespace undercroft::addin
