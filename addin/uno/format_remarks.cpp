#include "addin/uno/format_remarks.hpp"

#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/table/CellContentType.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/text/XText.hpp>

#include "addin/audit/book/number_format.hpp"
#include "addin/uno/marshal.hpp"
#include "addin/uno/read_format.hpp"

namespace undercroft::addin {

using css::table::CellContentType_TEXT;
using css::uno::Reference;
using css::uno::UNO_QUERY;

namespace {

constexpr sal_Int32 farthest_label = 12;
constexpr sal_Int32 farthest_head = 60;

std::string text_of(const Reference<css::table::XCell>& cell) {
    const Reference<css::text::XText> text(cell, UNO_QUERY);
    return text.is() ? to_string(text->getString()) : std::string();
}

/// The longest text to the left, which describes the row.
std::string row_label(const Reference<css::table::XCellRange>& sheet, sal_Int32 column, sal_Int32 row) {
    std::string longest;
    for (sal_Int32 left = column - 1; left >= 0 && left >= column - farthest_label; --left) {
        const Reference<css::table::XCell> cell = sheet->getCellByPosition(left, row);
        const std::string text = cell->getType() == CellContentType_TEXT ? text_of(cell) : std::string();
        if (text.size() > longest.size()) longest = text;
    }
    return longest;
}

/// The nearest text above.
std::string column_head(const Reference<css::table::XCellRange>& sheet, sal_Int32 column, sal_Int32 row) {
    for (sal_Int32 above = row - 1; above >= 0 && above >= row - farthest_head; --above) {
        const Reference<css::table::XCell> cell = sheet->getCellByPosition(column, above);
        if (cell->getType() == CellContentType_TEXT) return text_of(cell);
    }
    return {};
}

}  // namespace

std::vector<std::string> format_remarks(const SheetValues& sheet, const Node& call,
                                        const Function& function) {
    std::vector<std::string> remarks;
    const Reference<css::util::XNumberFormats> formats = number_formats_of(sheet.document());
    for (std::size_t i = 0; i < call.children.size() && i < function.parameters.size(); ++i) {
        const Reference<css::table::XCellRange> range = sheet.range_of(call.children[i]);
        if (!range.is()) continue;
        const css::table::CellRangeAddress at =
            Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY)->getRangeAddress();
        const bool is_pair = at.EndRow == at.StartRow && at.EndColumn == at.StartColumn + 1;
        const bool is_cell = at.EndRow == at.StartRow && at.EndColumn == at.StartColumn;
        const Reference<css::table::XCell> cell = range->getCellByPosition(0, 0);
        if (!(is_pair || is_cell) || cell->getType() == CellContentType_TEXT ||
            cell->getType() == css::table::CellContentType_EMPTY)
            continue;
        audit::SeenNumber seen{
            cell_letters(at.StartColumn, at.StartRow), cell->getValue(),
            number_format_of(Reference<css::beans::XPropertySet>(cell, UNO_QUERY), formats)};
        if (is_pair) seen.unit_cell = text_of(range->getCellByPosition(1, 0));
        if (is_cell) {
            const Reference<css::table::XCellRange> all(
                Reference<css::sheet::XSheetCellRange>(range, UNO_QUERY)->getSpreadsheet(), UNO_QUERY);
            seen.row_label = row_label(all, at.StartColumn, at.StartRow);
            seen.column_head = column_head(all, at.StartColumn, at.StartRow);
        }
        const auto remark = is_pair ? audit::format_against_unit(seen)
                                    : audit::format_against_type(seen, function.parameters[i].type);
        if (remark) remarks.push_back(*remark);
    }
    return remarks;
}

}  // namespace undercroft::addin
