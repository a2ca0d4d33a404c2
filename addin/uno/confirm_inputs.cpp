#include "addin/uno/confirm_inputs.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/table/XCell.hpp>

#include <algorithm>
#include <vector>

namespace undercroft::addin {

namespace {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

constexpr const char* mark_style = "Mark";  // of the cells that the templates have for it
constexpr sal_Int32 farthest_column = 40;

std::vector<css::table::CellRangeAddress> addresses_of(const css::uno::Any& selection) {
    if (const Reference<css::sheet::XSheetCellRanges> several(selection, UNO_QUERY); several.is()) {
        const auto ranges = several->getRangeAddresses();
        return {ranges.begin(), ranges.end()};
    }
    const Reference<css::sheet::XCellRangeAddressable> one(selection, UNO_QUERY);
    if (one.is()) return {one->getRangeAddress()};
    return {};
}

/// The last row of the sheet that holds anything: a whole column may be selected.
sal_Int32 last_row_of(const Reference<css::sheet::XSpreadsheet>& sheet) {
    const Reference<css::sheet::XSheetCellCursor> cursor = sheet->createCursor();
    Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(false);
    return Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress().EndRow;
}

/// \return whether the row has a cell for the mark.
bool confirm_row(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 row) {
    for (sal_Int32 column = 0; column <= farthest_column; ++column) {
        const Reference<css::table::XCell> cell = sheet->getCellByPosition(column, row);
        rtl::OUString style;
        Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)->getPropertyValue("CellStyle") >>= style;
        if (!style.equalsAscii(mark_style)) continue;
        cell->setFormula("x");
        return true;
    }
    return false;
}

}  // namespace

int confirm_rows(const Reference<css::frame::XModel>& document, const css::uno::Any& selection) {
    const Reference<css::sheet::XSpreadsheetDocument> workbook(document, UNO_QUERY_THROW);
    const Reference<css::container::XIndexAccess> sheets(workbook->getSheets(), UNO_QUERY_THROW);
    int confirmed = 0;
    for (const css::table::CellRangeAddress& range : addresses_of(selection)) {
        const Reference<css::sheet::XSpreadsheet> sheet(sheets->getByIndex(range.Sheet), UNO_QUERY_THROW);
        const sal_Int32 last = std::min(range.EndRow, last_row_of(sheet));
        for (sal_Int32 row = range.StartRow; row <= last; ++row)
            if (confirm_row(sheet, row)) ++confirmed;
    }
    return confirmed;
}

}  // namespace undercroft::addin
