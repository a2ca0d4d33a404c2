#include "addin/uno/growing_list.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>

#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr std::string_view growth = "grows to ";
constexpr sal_Int32 heads = 3;  // title, headings and units stand above the first item

css::table::CellRangeAddress used_area(const Reference<css::sheet::XSpreadsheet>& sheet) {
    const Reference<css::sheet::XSheetCellCursor> cursor = sheet->createCursor();
    const Reference<css::sheet::XUsedAreaCursor> used(cursor, UNO_QUERY_THROW);
    used->gotoStartOfUsedArea(false);
    used->gotoEndOfUsedArea(true);
    return Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
}

/// Where a row says to how many rows its list grows.
struct Growth {
    sal_Int32 column = -1;
    rtl::OUString says;
};

Growth growth_in(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 row, sal_Int32 last_column) {
    const Reference<css::sheet::XCellRangeData> cells(sheet->getCellRangeByPosition(0, row, last_column, row),
                                                      UNO_QUERY_THROW);
    const css::uno::Sequence<css::uno::Any> data = cells->getDataArray()[0];
    for (sal_Int32 column = 0; column < data.getLength(); ++column) {
        rtl::OUString text;
        if ((data[column] >>= text) && text.startsWith(to_oustring(growth))) return {column, text};
    }
    return {};
}

/// Whether a row is title, headings or units of a table.
bool is_head(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 row) {
    const std::string style = style_of(sheet->getCellByPosition(1, row));
    return style.starts_with("Table") || style == "GridUnit";
}

}  // namespace

std::optional<GrowingList> growing_list_at(const Reference<css::frame::XModel>& document,
                                           sal_Int32 sheet_index, sal_Int32 row) {
    const Reference<css::container::XIndexAccess> sheets(
        Reference<css::sheet::XSpreadsheetDocument>(document, UNO_QUERY_THROW)->getSheets(), UNO_QUERY_THROW);
    GrowingList list;
    list.sheet.set(sheets->getByIndex(sheet_index), UNO_QUERY_THROW);
    list.sheet_index = sheet_index;
    const css::table::CellRangeAddress used = used_area(list.sheet);
    list.last_column = used.EndColumn;
    Growth found;
    const auto look_at = [&](sal_Int32 at) {
        if (found.column >= 0 || at < 0 || at > used.EndRow) return;
        found = growth_in(list.sheet, at, used.EndColumn);
        list.first_row = list.last_row = at;
    };
    look_at(row);
    look_at(row - 1);
    if (is_head(list.sheet, row))
        for (sal_Int32 below = 1; below <= heads; ++below) look_at(row + below);
    if (found.column < 0) return std::nullopt;
    const auto says_the_same = [&](sal_Int32 at) {
        if (at < 0 || at > used.EndRow) return false;
        const Reference<css::sheet::XCellRangeData> cell(
            list.sheet->getCellRangeByPosition(found.column, at, found.column, at), UNO_QUERY_THROW);
        rtl::OUString text;
        return (cell->getDataArray()[0][0] >>= text) && text == found.says;
    };
    while (says_the_same(list.first_row - 1)) --list.first_row;
    while (says_the_same(list.last_row + 1)) ++list.last_row;
    list.most = found.says.copy(static_cast<sal_Int32>(growth.size())).toInt32();
    return list;
}

}  // namespace undercroft::addin
