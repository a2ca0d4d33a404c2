#include "addin/uno/page_cells.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/util/CellProtection.hpp>

#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

std::string style_of(const Reference<css::table::XCell>& cell) {
    rtl::OUString style;
    Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)->getPropertyValue("CellStyle") >>= style;
    return to_string(style);
}

namespace {

constexpr sal_Int32 page_edge = 40;  // no page has more columns

PageCell page_cell(const Reference<css::table::XCell>& cell) {
    PageCell made;
    switch (cell->getType()) {
        case css::table::CellContentType_VALUE:
            made.holds = PageCell::Holds::number;
            break;
        case css::table::CellContentType_TEXT:
            made.holds = PageCell::Holds::text;
            break;
        case css::table::CellContentType_FORMULA:
            made.holds = PageCell::Holds::formula;
            break;
        default:
            break;
    }
    made.style = style_of(cell);
    css::util::CellProtection protection;
    Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)->getPropertyValue("CellProtection") >>=
        protection;
    made.is_locked = protection.IsLocked;
    return made;
}

}  // namespace

std::vector<PageCell> page_cells(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 row) {
    std::vector<PageCell> cells;
    for (sal_Int32 column = 0; column <= page_edge; ++column) {
        PageCell cell = page_cell(sheet->getCellByPosition(column, row));
        if (cell.style == "Reason" || cell.style == "Kept" || cell.style == "OpenCount") break;
        cells.push_back(std::move(cell));
        if (cells.back().is_mark()) break;
    }
    return cells;
}

}  // namespace undercroft::addin
