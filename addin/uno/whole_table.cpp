#include "addin/uno/whole_table.hpp"

#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/table/CellContentType.hpp>
#include <com/sun/star/table/XCell.hpp>

#include <algorithm>

#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/cut_table.hpp"
#include "addin/uno/marshal.hpp"
#include "addin/uno/sheet_values.hpp"

namespace undercroft::addin {

using css::table::CellRangeAddress;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using CellRange = Reference<css::table::XCellRange>;

namespace {

CellRangeAddress address_of(const Reference<css::uno::XInterface>& range) {
    return Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY)->getRangeAddress();
}

/// The array formula over the cell, or the cell itself.
CellRangeAddress array_at(const Reference<css::sheet::XSpreadsheet>& sheet, const CellRange& cell,
                          bool is_array) {
    if (!is_array) return address_of(cell);
    const Reference<css::sheet::XSheetCellCursor> cursor =
        sheet->createCursorByRange(Reference<css::sheet::XSheetCellRange>(cell, UNO_QUERY));
    cursor->collapseToCurrentArray();
    return address_of(cursor);
}

bool is_blank_row(const Reference<css::sheet::XSpreadsheet>& sheet, const CellRangeAddress& at,
                  sal_Int32 row) {
    for (sal_Int32 column = at.StartColumn; column <= at.EndColumn; ++column)
        if (sheet->getCellByPosition(column, row)->getType() != css::table::CellContentType_EMPTY)
            return false;
    return true;
}

/// A table that is typed, or computed row by row.
Extent extent_of_rows(const Reference<css::sheet::XSpreadsheet>& sheet, const CellRangeAddress& at) {
    const sal_Int32 below = at.EndRow + 1;
    const std::string shown = std::to_string(below - at.StartRow) + " rows, ";
    if (below >= most_rows || is_blank_row(sheet, at, below))
        return {true, shown + "and the row below them is blank"};
    return {false, shown + "and row " + std::to_string(below + 1) + " below them goes on"};
}

}  // namespace

Extent extent_of(const Reference<css::uno::XComponentContext>& context,
                 const Reference<css::beans::XPropertySet>& document, const CellRange& range) {
    const Reference<css::sheet::XSpreadsheet> sheet =
        Reference<css::sheet::XSheetCellRange>(range, UNO_QUERY)->getSpreadsheet();
    const CellRangeAddress at = address_of(range);
    const CellRange first = range->getCellRangeByPosition(0, 0, 0, 0);
    const Reference<css::table::XCell> cell = first->getCellByPosition(0, 0);
    const std::string formula = to_string(cell->getFormula());
    const bool is_array = formula.starts_with("{=");
    if (cell->getType() != css::table::CellContentType_FORMULA) return extent_of_rows(sheet, at);

    CellRange blamed;
    constexpr std::int64_t most = 10 * Effort::for_one_cell;  // the cell's own value rests on it
    Effort effort(most);
    const SheetValues values(context, document, sheet, blamed, effort);
    const std::optional<std::size_t> rows = rows_of_table(values, parse_formula(formula));
    if (!rows) return extent_of_rows(sheet, at);
    const CellRangeAddress array = array_at(sheet, first, is_array);
    const auto end = std::min(at.EndRow, array.EndRow);
    const auto shown = static_cast<std::size_t>(end - array.StartRow);  // the first row holds the units
    return {shown >= *rows, extent_text(*rows, shown)};
}

}  // namespace undercroft::addin
