#include "addin/uno/open_items.hpp"

#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <algorithm>
#include <map>

#include "addin/uno/counted_columns.hpp"
#include "addin/uno/one_change.hpp"
#include "addin/uno/page_cells.hpp"

namespace undercroft::addin {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

/// What keeps a workbook from being ready for checking, gravest first.
constexpr const char* kinds[] = {"Fails", "To give", "Impossible", "Not listed", "Assumed"};

/// The rows of a sheet with something open, each with the gravest of it.
std::map<sal_Int32, std::string> open_rows(const CountedColumns& columns) {
    std::map<sal_Int32, std::string> open;
    for (const char* kind : kinds) {
        const std::vector<bool> counted = columns.counted(kind);
        for (std::size_t i = 0; i < counted.size(); ++i)
            if (counted[i]) open.emplace(first_counted_row + static_cast<sal_Int32>(i), kind);
    }
    return open;
}

/// The cell of a row to look at: the verdict that fails, the entry that is blank, else the first entry.
sal_Int32 column_to_look_at(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 row,
                            const std::string& kind) {
    const std::vector<PageCell> cells = page_cells(sheet, row);
    const auto first = [&](const auto& fits) {
        const auto found = std::find_if(cells.begin(), cells.end(), fits);
        return found == cells.end() ? -1 : static_cast<sal_Int32>(found - cells.begin());
    };
    sal_Int32 column = -1;
    if (kind == "Fails")
        column = first([](const PageCell& cell) { return cell.style == "Verdict"; });
    else if (kind == "To give")
        column = first(
            [](const PageCell& cell) { return cell.is_entry() && cell.holds == PageCell::Holds::nothing; });
    if (column < 0) column = first([](const PageCell& cell) { return cell.is_entry(); });
    return std::max<sal_Int32>(column, 0);
}

}  // namespace

std::optional<OpenItem> next_open_item(const Reference<css::frame::XModel>& document,
                                       const css::table::CellAddress& cursor) {
    const Reference<css::container::XIndexAccess> sheets(
        Reference<css::sheet::XSpreadsheetDocument>(document, UNO_QUERY_THROW)->getSheets(), UNO_QUERY_THROW);
    const sal_Int32 count = sheets->getCount();
    bool any_counts = false;
    for (sal_Int32 step = 0; step <= count; ++step) {
        const sal_Int32 index = (cursor.Sheet + step) % count;
        const Reference<css::sheet::XSpreadsheet> sheet(sheets->getByIndex(index), UNO_QUERY_THROW);
        const CountedColumns columns(sheet);
        any_counts = any_counts || columns.are_there();
        for (const auto& [row, kind] : open_rows(columns)) {
            if (step == 0 && row <= cursor.Row) continue;
            return OpenItem{{static_cast<sal_Int16>(index), column_to_look_at(sheet, row, kind), row}, kind};
        }
    }
    if (!any_counts)
        throw NotDone(
            "The sheets of this workbook do not count what is open: it is not made from a template.");
    return std::nullopt;
}

}  // namespace undercroft::addin
