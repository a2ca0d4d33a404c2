/// \file whole_table.hpp
/// Whether a range holds all rows of its table: a range that is too short cuts the table off without a word.
#pragma once

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <string>

namespace css = com::sun::star;

namespace undercroft::addin {

struct Extent {
    bool is_whole = false;
    std::string says;  ///< "21 rows, 19 shown: ..."
};

/// Of a table that a function gives, its rows are counted anew; one that is typed is whole where the row
/// below it is blank. \throws Refused where the function that gives the table refuses its arguments.
[[nodiscard]] Extent extent_of(const css::uno::Reference<css::uno::XComponentContext>& context,
                               const css::uno::Reference<css::beans::XPropertySet>& document,
                               const css::uno::Reference<css::table::XCellRange>& range);

}  // namespace undercroft::addin
