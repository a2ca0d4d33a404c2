#include "addin/uno/audit_page.hpp"

#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XSheetCellRangeContainer.hpp>
#include <com/sun/star/table/BorderLine2.hpp>
#include <com/sun/star/table/CellVertJustify2.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/table/XTableRows.hpp>
#include <com/sun/star/util/CellProtection.hpp>

#include <algorithm>

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr std::size_t longest_text = 32000;
constexpr float section_size = 10;
constexpr float title_size = 14;
constexpr sal_Int16 hair_width = 9;  // 0.01 mm
/// Title, heads and a first line.
constexpr sal_Int32 rows_kept_together = 3;

std::string quoted(std::string text) {
    for (std::size_t at = 0; (at = text.find('"', at)) != std::string::npos; at += 2) text.insert(at, 1, '"');
    return '"' + text + '"';
}

Reference<css::beans::XPropertySet> cells(const Reference<css::sheet::XSpreadsheet>& sheet,
                                          sal_Int32 first_column, sal_Int32 first_row, sal_Int32 last_column,
                                          sal_Int32 last_row) {
    return {sheet->getCellRangeByPosition(first_column, first_row, last_column, last_row), UNO_QUERY_THROW};
}

Reference<css::table::XTableRows> rows_of(const Reference<css::sheet::XSpreadsheet>& sheet) {
    return Reference<css::table::XColumnRowRange>(sheet, UNO_QUERY_THROW)->getRows();
}

/// Ranges that look alike are dressed at once: the office looks at the height of all rows with each of them.
void put_on(const Reference<css::beans::XPropertySet>& ranges, const AuditPage::Look& one) {
    if (one.back >= 0) ranges->setPropertyValue("CellBackColor", Any(one.back));
    if (one.bold) ranges->setPropertyValue("CharWeight", Any(css::awt::FontWeight::BOLD));
    if (one.fore != look::ink) ranges->setPropertyValue("CharColor", Any(one.fore));
    if (one.size > 0) ranges->setPropertyValue("CharHeight", Any(one.size));
    if (one.is_entry)
        ranges->setPropertyValue("CellProtection",
                                 Any(css::util::CellProtection(false, false, false, false)));
}

/// A fine line under each of these rows.
void rule(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 first, sal_Int32 last) {
    css::table::BorderLine2 line;
    line.Color = look::hair;
    line.OuterLineWidth = hair_width;
    line.LineWidth = hair_width;
    const auto range = cells(sheet, 0, first, shown_columns - 1, last);
    range->setPropertyValue("BottomBorder2", Any(line));
    range->setPropertyValue("TopBorder2", Any(line));
}

void set_row(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 row, const char* property,
             const Any& value) {
    Reference<css::beans::XPropertySet>(rows_of(sheet)->getByIndex(row), UNO_QUERY_THROW)
        ->setPropertyValue(rtl::OUString::createFromAscii(property), value);
}

}  // namespace

void AuditPage::add(const std::vector<Placed>& texts, sal_Int32 height) {
    css::uno::Sequence<Any> row(audit_columns);
    std::fill_n(row.getArray(), audit_columns, Any(rtl::OUString()));
    rows_.push_back(std::move(row));
    for (const auto& [column, text] : texts) put(column, last(), text);
    if (height != row_height) heights_.emplace_back(last(), height);
    used_ += height;
}

/// With the row that comes next.
void AuditPage::start_page() {
    if (!is_printed_) return;
    new_pages_.push_back(last() + 1);
    used_ = 0;
}

void AuditPage::line(const std::vector<Placed>& texts) {
    if (!has_room(row_height)) start_page();
    add(texts, row_height);
}

void AuditPage::title(const std::string& text) {
    add({{0, text}}, title_height);
    dress({0, 0, shown_columns - 1, -1, true, look::ink, title_size});
}

void AuditPage::verdict(const std::string& text, sal_Int32 colour) {
    add({{0, text}}, section_height);
    dress({0, 0, shown_columns - 1, colour, true, look::ink, section_size});
}

/// For a section that comes next: the blank row above it, its title, its heads and some rows must have room.
bool AuditPage::starts_page() const {
    return !has_room(2 * row_height + section_height + rows_kept_together * row_height);
}

std::size_t AuditPage::rows_of_section() const {
    const sal_Int32 above = starts_page() ? 0 : used_ + row_height;
    return static_cast<std::size_t>((paper_.height() - above - section_height) / row_height - 1);
}

void AuditPage::section(const std::string& text) {
    if (starts_page())
        start_page();
    add({{0, text}}, section_height);
    dress({0, 0, shown_columns - 1, look::head, true, look::paper, section_size});
}

void AuditPage::heads(const std::vector<Placed>& texts) {
    heads_ = texts;
    add_heads();
}

void AuditPage::add_heads() {
    add(heads_, row_height);
    dress({0, 0, source_column, look::band, true});
    tables_.push_back({last(), last()});
}

void AuditPage::row(const std::vector<Placed>& texts) {
    if (!has_room(row_height)) {
        start_page();
        add_heads();
    }
    add(texts, row_height);
    tables_.back().last = last();
}

void AuditPage::record(const std::string& text) {
    rtl::OUString before;
    rows_.back()[marks] >>= before;
    put(marks, last(), before.isEmpty() ? text : to_string(before).append(between_records) + text);
}

void AuditPage::keep_signed(const std::vector<std::string>& records) {
    while (rows_.size() < records.size()) line({});
    for (std::size_t i = 0; i < records.size(); ++i) put(at_signing, static_cast<sal_Int32>(i), records[i]);
}

void AuditPage::put(sal_Int32 column, sal_Int32 row, const std::string& text) {
    rows_[static_cast<std::size_t>(row)].getArray()[column] <<=
        to_oustring(std::string_view(text).substr(0, longest_text));
}

void AuditPage::write(const Reference<css::lang::XMultiServiceFactory>& document,
                      const Reference<css::sheet::XSpreadsheet>& sheet) const {
    css::uno::Sequence<css::uno::Sequence<Any>> all(static_cast<sal_Int32>(rows_.size()));
    std::copy(rows_.begin(), rows_.end(), all.getArray());
    const auto whole = cells(sheet, 0, 0, audit_columns - 1, last());
    whole->setPropertyValue("NumberFormat", Any(sal_Int32(0)));
    whole->setPropertyValue("IsTextWrapped", Any(false));
    whole->setPropertyValue("VertJustify", Any(css::table::CellVertJustify2::CENTER));
    whole->setPropertyValue("CharHeight", Any(look::text_size));
    whole->setPropertyValue("CharColor", Any(look::ink));
    whole->setPropertyValue("CellBackColor", Any(look::paper));  // the screen's documents may be dark
    Reference<css::beans::XPropertySet>(
        Reference<css::table::XColumnRowRange>(whole, UNO_QUERY_THROW)->getRows(), UNO_QUERY_THROW)
        ->setPropertyValue("Height", Any(row_height));
    Reference<css::sheet::XCellRangeData>(whole, UNO_QUERY_THROW)->setDataArray(all);
    write_links(sheet, cell_column);
    write_links(sheet, second_half);
    write_looks(document, sheet);
    for (const auto& [row, height] : heights_) set_row(sheet, row, "Height", Any(height));
    for (const sal_Int32 row : new_pages_) set_row(sheet, row, "IsStartOfNewPage", Any(true));
    for (const Span& table : tables_) rule(sheet, table.first, table.last);
}

void AuditPage::write_looks(const Reference<css::lang::XMultiServiceFactory>& document,
                            const Reference<css::sheet::XSpreadsheet>& sheet) const {
    const sal_Int16 place =
        Reference<css::sheet::XCellRangeAddressable>(sheet, UNO_QUERY_THROW)->getRangeAddress().Sheet;
    std::vector<std::pair<Look, std::vector<css::table::CellRangeAddress>>>
        alike;  // in their order on the page
    for (const Look& one : looks_) {
        auto same = std::find_if(alike.begin(), alike.end(),
                                 [&](const auto& known) { return known.first.is_like(one); });
        if (same == alike.end()) same = alike.insert(alike.end(), {one, {}});
        same->second.emplace_back(place, one.first_column, one.row, one.last_column, one.row);
    }
    for (const auto& [one, places] : alike) {
        const Reference<css::sheet::XSheetCellRangeContainer> ranges(
            document->createInstance("com.sun.star.sheet.SheetCellRanges"), UNO_QUERY_THROW);
        ranges->addRangeAddresses(css::uno::Sequence<css::table::CellRangeAddress>(
                                      places.data(), static_cast<sal_Int32>(places.size())),
                                  false);
        put_on(Reference<css::beans::XPropertySet>(ranges, UNO_QUERY_THROW), one);
    }
}

/// Those of rows that follow each other at once.
void AuditPage::write_links(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 column) const {
    std::vector<const Link*> here;
    for (const Link& link : links_)
        if (link.column == column) here.push_back(&link);
    for (std::size_t i = 0; i < here.size();) {
        std::size_t end = i + 1;
        while (end < here.size() && here[end]->row == here[end - 1]->row + 1) ++end;
        css::uno::Sequence<css::uno::Sequence<rtl::OUString>> formulas(static_cast<sal_Int32>(end - i));
        for (std::size_t k = i; k < end; ++k) {
            const rtl::OUString formula = to_oustring("=HYPERLINK(" + quoted("#" + here[k]->target) + ";" +
                                                      quoted(here[k]->shown) + ")");
            formulas.getArray()[k - i] = css::uno::Sequence<rtl::OUString>(&formula, 1);
        }
        Reference<css::sheet::XCellRangeFormula>(
            sheet->getCellRangeByPosition(column, here[i]->row, column, here[end - 1]->row), UNO_QUERY_THROW)
            ->setFormulaArray(formulas);
        i = end;
    }
}

}  // namespace undercroft::addin
