#include "addin/uno/confirm_inputs.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <algorithm>
#include <vector>

#include "addin/uno/counted_columns.hpp"
#include "addin/uno/one_change.hpp"
#include "addin/uno/page_cells.hpp"

namespace undercroft::addin {

namespace {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

std::vector<css::table::CellRangeAddress> addresses_of(const css::uno::Any& selection) {
    if (const Reference<css::sheet::XSheetCellRanges> several(selection, UNO_QUERY); several.is()) {
        const auto ranges = several->getRangeAddresses();
        return {ranges.begin(), ranges.end()};
    }
    const Reference<css::sheet::XCellRangeAddressable> one(selection, UNO_QUERY);
    if (one.is()) return {one->getRangeAddress()};
    return {};
}

/// The cells to confirm in, of the selected rows of which an entry stands as assumed.
std::vector<Reference<css::table::XCell>> marks_of(const Reference<css::container::XIndexAccess>& sheets,
                                                   const css::table::CellRangeAddress& selected) {
    const Reference<css::sheet::XSpreadsheet> sheet(sheets->getByIndex(selected.Sheet), UNO_QUERY_THROW);
    const std::vector<bool> assumed = CountedColumns(sheet).counted("Assumed");
    const sal_Int32 end = first_counted_row + static_cast<sal_Int32>(assumed.size());
    std::vector<Reference<css::table::XCell>> marks;
    for (sal_Int32 row = std::max(selected.StartRow, first_counted_row); row <= selected.EndRow && row < end;
         ++row) {
        if (!assumed[static_cast<std::size_t>(row - first_counted_row)]) continue;
        const std::vector<PageCell> cells = page_cells(sheet, row);
        if (!cells.empty() && cells.back().is_mark())
            marks.push_back(sheet->getCellByPosition(static_cast<sal_Int32>(cells.size()) - 1, row));
    }
    return marks;
}

}  // namespace

int confirm_rows(const Reference<css::frame::XModel>& document, const css::uno::Any& selection) {
    const Reference<css::container::XIndexAccess> sheets(
        Reference<css::sheet::XSpreadsheetDocument>(document, UNO_QUERY_THROW)->getSheets(), UNO_QUERY_THROW);
    std::vector<Reference<css::table::XCell>> marks;
    for (const css::table::CellRangeAddress& range : addresses_of(selection))
        for (const Reference<css::table::XCell>& mark : marks_of(sheets, range)) marks.push_back(mark);
    if (marks.empty()) return 0;
    OneChange change(document, {}, "Confirm inputs");
    for (const Reference<css::table::XCell>& mark : marks) mark->setFormula("x");
    change.finish();
    return static_cast<int>(marks.size());
}

}  // namespace undercroft::addin
