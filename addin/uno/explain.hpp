/// \file explain.hpp
/// Why a cell shows what it shows: its formula is read from the sheet, its arguments are read as Calc
/// reads them, and the function is computed once more with the derivation written down.
#pragma once

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <optional>
#include <string>
#include <vector>

#include "addin/catalogue/function.hpp"

namespace css = com::sun::star;

namespace undercroft::addin {

struct Explanation {
    std::string text;                    ///< the answer of UC.WHY
    std::string reason;                  ///< why the cell shows an error, without the cell's name
    const Function* function = nullptr;  ///< the function that computed the cell, when it is one of ours
    Derivation derivation;               ///< of a good cell
    std::vector<std::string>
        places;  ///< where each argument was read; empty for one that stands in the formula
    bool good = false;
    std::optional<double> number;     ///< what the one call of ours that is the formula gives
    std::optional<std::size_t> rows;  ///< of values, where it gives a table
};

/// Explains one cell of a document. An error that comes from other cells is followed to the one where it
/// begins.
[[nodiscard]] Explanation explain(const css::uno::Reference<css::uno::XComponentContext>& context,
                                  const css::uno::Reference<css::beans::XPropertySet>& document,
                                  const css::uno::Reference<css::table::XCellRange>& cell);

/// The answer of UC.STEPS: symbol, argument, as given, in SI, unit, cell; then result, equation and source.
[[nodiscard]] ResultRows steps_table(const Explanation& explanation);

}  // namespace undercroft::addin
