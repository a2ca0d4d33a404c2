#include "addin/uno/audit_page.hpp"

#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/table/BorderLine2.hpp>
#include <com/sun/star/table/CellVertJustify2.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/util/CellProtection.hpp>

#include <algorithm>

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr std::size_t longest_text = 32000;

std::string quoted(std::string text) {
    for (std::size_t at = 0; (at = text.find('"', at)) != std::string::npos; at += 2) text.insert(at, 1, '"');
    return '"' + text + '"';
}
void write_link(const Reference<css::sheet::XSpreadsheet>& sheet, const AuditPage::Link& link) {
    const Reference<css::table::XCell> cell = sheet->getCellByPosition(link.column, link.row);
    Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)
        ->setPropertyValue("NumberFormat", Any(sal_Int32(0)));
    cell->setFormula(to_oustring("=HYPERLINK(" + quoted("#" + link.target) + ";" + quoted(link.shown) + ")"));
}
void put_on(const Reference<css::sheet::XSpreadsheet>& sheet, const AuditPage::Look& one) {
    const Reference<css::beans::XPropertySet> cells(
        sheet->getCellRangeByPosition(one.first_column, one.row, one.last_column, one.row), UNO_QUERY_THROW);
    if (one.back >= 0) cells->setPropertyValue("CellBackColor", Any(one.back));
    if (one.bold) cells->setPropertyValue("CharWeight", Any(css::awt::FontWeight::BOLD));
    if (one.fore != look::ink) cells->setPropertyValue("CharColor", Any(one.fore));
    if (one.size > 0) {
        cells->setPropertyValue("CharHeight", Any(one.size));
        cells->setPropertyValue("IsTextWrapped", Any(false));
    }
    if (one.is_entry)
        cells->setPropertyValue("CellProtection", Any(css::util::CellProtection(false, false, false, false)));
}

/// A fine line under each of these rows.
void rule(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 first, sal_Int32 last) {
    css::table::BorderLine2 line;
    line.Color = look::band;
    line.OuterLineWidth = 9;  // 0.01 mm
    line.LineWidth = 9;
    const Reference<css::beans::XPropertySet> cells(
        sheet->getCellRangeByPosition(0, first, shown_columns - 1, last), UNO_QUERY_THROW);
    cells->setPropertyValue("BottomBorder2", Any(line));
    cells->setPropertyValue("TopBorder2", Any(line));
}

}  // namespace

void AuditPage::line(const std::vector<std::string>& texts) {
    css::uno::Sequence<Any> row(audit_columns);
    for (sal_Int32 i = 0; i < audit_columns; ++i)
        row.getArray()[i] <<=
            i < static_cast<sal_Int32>(texts.size())
                ? to_oustring(std::string_view(texts[static_cast<std::size_t>(i)]).substr(0, longest_text))
                : rtl::OUString();
    rows_.push_back(std::move(row));
}

void AuditPage::put(sal_Int32 column, sal_Int32 row, const std::string& text) {
    rows_[static_cast<std::size_t>(row)].getArray()[column] <<=
        to_oustring(std::string_view(text).substr(0, longest_text));
}

void AuditPage::write(const Reference<css::sheet::XSpreadsheet>& sheet) const {
    css::uno::Sequence<css::uno::Sequence<Any>> all(static_cast<sal_Int32>(rows_.size()));
    std::copy(rows_.begin(), rows_.end(), all.getArray());
    const Reference<css::table::XCellRange> range =
        sheet->getCellRangeByPosition(0, 0, audit_columns - 1, last());
    const Reference<css::beans::XPropertySet> whole(range, UNO_QUERY_THROW);
    whole->setPropertyValue("NumberFormat", Any(sal_Int32(0)));
    Reference<css::beans::XPropertySet>(sheet->getCellRangeByPosition(0, 0, shown_columns - 1, last()),
                                        UNO_QUERY_THROW)
        ->setPropertyValue("IsTextWrapped", Any(true));
    whole->setPropertyValue("VertJustify", Any(css::table::CellVertJustify2::TOP));
    whole->setPropertyValue("CharHeight", Any(9.0F));
    whole->setPropertyValue("CharColor", Any(look::ink));
    Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->setDataArray(all);
    for (const Link& link : links_) write_link(sheet, link);
    for (const Look& one : looks_) put_on(sheet, one);
    for (std::size_t i = 0; i < table_rows_.size();) {
        std::size_t end = i + 1;
        while (end < table_rows_.size() && table_rows_[end] == table_rows_[end - 1] + 1) ++end;
        rule(sheet, table_rows_[i], table_rows_[end - 1]);
        i = end;
    }
}

}  // namespace undercroft::addin
