#include "addin/uno/counted_columns.hpp"

#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>

#include <algorithm>

#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr sal_Int32 heading_row = first_counted_row - 1;
constexpr std::string_view each_sheet_has = "Assumed";

AnyRows data_of(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 first_column, sal_Int32 first_row,
                sal_Int32 last_column, sal_Int32 last_row) {
    return Reference<css::sheet::XCellRangeData>(
               sheet->getCellRangeByPosition(first_column, first_row, last_column, last_row), UNO_QUERY_THROW)
        ->getDataArray();
}

}  // namespace

CountedColumns::CountedColumns(const Reference<css::sheet::XSpreadsheet>& sheet) : sheet_(sheet) {
    const Reference<css::sheet::XSheetCellCursor> cursor = sheet->createCursor();
    Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(false);
    const css::table::CellRangeAddress end =
        Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
    if (end.EndRow < first_counted_row) return;
    const AnyRows heading = data_of(sheet, 0, heading_row, end.EndColumn, heading_row);
    for (const css::uno::Any& head : heading[0]) {
        rtl::OUString text;
        head >>= text;
        heads_.push_back(to_string(text));
    }
    if (std::find(heads_.begin(), heads_.end(), each_sheet_has) != heads_.end()) last_row_ = end.EndRow;
}

std::vector<bool> CountedColumns::counted(std::string_view head) const {
    const auto found = std::find(heads_.begin(), heads_.end(), head);
    if (found == heads_.end() || !are_there()) return {};
    const auto column = static_cast<sal_Int32>(found - heads_.begin());
    std::vector<bool> counted;
    for (const css::uno::Sequence<css::uno::Any>& row :
         data_of(sheet_, column, first_counted_row, column, last_row_)) {
        double count = 0;
        counted.push_back((row[0] >>= count) && count > 0);
    }
    return counted;
}

}  // namespace undercroft::addin
