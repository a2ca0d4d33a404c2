#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/choices.hpp"
#include "addin/catalogue/entry.hpp"
#include "calc/arithmetic.hpp"

namespace undercroft::addin {

Group unit_functions() {
    return {
        "Units and checks",
        {
            function("UC.CONVERT", [](Quantity quantity) { return quantity; })
                .role(Role::converts)
                .says("A quantity as a number in another unit")
                .equation("x = q / unit")
                .source("SI Brochure, 9th ed. (2019); NIST Handbook 44 (2023), appendix C")
                .takes("quantity", "q", "The quantity to convert")
                .gives("x", "The number in that unit")
                .wants_unit("unit", "Unit wanted"),
            function("UC.DIMENSION", [](Unit unit) { return unit.dimension.text(); })
                .says("The dimension of a unit: L length, M mass, T time, A angle, N count")
                .equation("dim(unit)")
                .source("ISO 80000-1:2009, dimension of a quantity")
                .takes("unit", "u", "The unit, such as kN/m3")
                .gives("", "The dimension, such as L-2 M T-2"),
            function("UC.SUM", [](Figures range) { return calc::sum(range.rows); })
                .role(Role::gathers)
                .says(
                    "Sum of rows of number and unit in mixed units of one dimension, or of a column with its "
                    "unit in the first row; rows without a number are passed over, text is refused")
                .equation("S = q1 + q2 + ...")
                .source("common practice")
                .takes(
                    "range", "q",
                    "Two columns: number, and its unit beside it; or one column of a table with its unit row")
                .gives("S", "The sum")
                .wants_unit("unit", "Unit of the sum"),
            function("UC.LARGEST", [](Figures range) { return calc::largest(range.rows); })
                .role(Role::gathers)
                .says("The largest figure of a column of a table with its unit row, or of rows of number and "
                      "unit; blank rows are passed over")
                .equation("x = max(q1, q2, ...)")
                .source("common practice")
                .takes("range", "q", "One column, its unit in the first row; or two columns: number, unit")
                .gives("x", "The largest")
                .wants_unit(),
            function("UC.SMALLEST", [](Figures range) { return calc::smallest(range.rows); })
                .role(Role::gathers)
                .says(
                    "The smallest figure of a column of a table with its unit row, or of rows of number and "
                    "unit; blank rows are passed over")
                .equation("x = min(q1, q2, ...)")
                .source("common practice")
                .takes("range", "q", "One column, its unit in the first row; or two columns: number, unit")
                .gives("x", "The smallest")
                .wants_unit(),
            function("UC.LARGEST.AT",
                     [](Figures range, Figures other) { return calc::at_largest(range.rows, other.rows); })
                .role(Role::picks)
                .says(
                    "The figure of another column in the row where a column is largest, such as the time of "
                    "a peak")
                .equation("y of the row where x = max(x1, x2, ...)")
                .source("common practice")
                .takes("range", "x",
                       "The column to search: with its unit in the first row, or number and unit")
                .takes("other", "y", "The column to read, of the same rows")
                .gives("y", "The figure in that row")
                .wants_unit(),
            function("UC.PRODUCT", [](Quantity a, Quantity b) { return calc::product(a, b); })
                .role(Role::multiplies)
                .says("Product of two quantities; a number without a unit is a pure number")
                .equation("p = a b")
                .source("common practice")
                .takes("a", "a", "First factor")
                .takes("b", "b", "Second factor")
                .gives("p", "The product")
                .wants_unit(),
            function("UC.QUOTIENT", [](Quantity a, Quantity b) { return calc::quotient(a, b); })
                .role(Role::multiplies)
                .says("Quotient of two quantities; a number without a unit is a pure number")
                .equation("r = a / b")
                .source("common practice")
                .takes("a", "a", "What is divided")
                .takes("b", "b", "What it is divided by")
                .gives("r", "The quotient")
                .wants_unit(),
            function("UC.DIFFERENCE", [](Quantity a, Quantity b) { return calc::difference(a, b); })
                .role(Role::adds)
                .says("Difference of two quantities of one dimension, in any units")
                .equation("d = a - b")
                .source("common practice")
                .takes("a", "a", "From what is subtracted")
                .takes("b", "b", "What is subtracted")
                .gives("d", "The difference")
                .wants_unit(),
            function("UC.TOTAL", [](Quantity a, Quantity b) { return calc::total(a, b); })
                .role(Role::adds)
                .says("Total of two quantities of one dimension, in any units")
                .equation("t = a + b")
                .source("common practice")
                .takes("a", "a", "First quantity")
                .takes("b", "b", "Second quantity")
                .gives("t", "The total")
                .wants_unit(),
            function("UC.ATLEAST",
                     [](Quantity value, Quantity limit) { return calc::at_least(value, limit); })
                .role(Role::compares)
                .says("Whether a value is at least a limit, whatever their units: 1 for TRUE, 0 for FALSE")
                .equation("x >= limit, relative tolerance 1e-9")
                .source("common practice")
                .takes("value", "x", "The value to check")
                .takes("limit", "limit", "The least that it may be")
                .gives("", "1 when it holds, else 0"),
            function("UC.ATMOST", [](Quantity value, Quantity limit) { return calc::at_most(value, limit); })
                .role(Role::compares)
                .says("Whether a value is at most a limit, whatever their units: 1 for TRUE, 0 for FALSE")
                .equation("x <= limit, relative tolerance 1e-9")
                .source("common practice")
                .takes("value", "x", "The value to check")
                .takes("limit", "limit", "The most that it may be")
                .gives("", "1 when it holds, else 0"),
            function("UC.WITHIN", [](Quantity value, Quantity target,
                                     Quantity tolerance) { return calc::within(value, target, tolerance); })
                .role(Role::compares)
                .says("Whether a value is within a tolerance of its target: 1 for TRUE, 0 for FALSE")
                .equation("|x - x0| <= t")
                .source("common practice")
                .takes("value", "x", "The value to check, such as an as-built level")
                .takes("target", "x0", "The design value")
                .takes("tolerance", "t",
                       "Deviation allowed; in % it is a share of the target, or percentage points of a pure "
                       "number")
                .or_share()
                .gives("", "1 when it holds, else 0"),
            function("UC.LOOKUP", [](std::vector<std::tuple<Quantity, Quantity>> table, Quantity x,
                                     calc::Interpolation method) { return calc::lookup(table, x, method); })
                .role(Role::picks)
                .says("Value interpolated in a table of two columns; never extrapolated")
                .equation("y = f(x) between the rows: linear, linear in logarithms, or monotone cubic")
                .source("Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980), for the monotone cubic")
                .takes("table", "x, y",
                       "Two columns; the first rises from row to row; a first row may hold units")
                .takes("x", "x", "Where to look")
                .takes("method", "f", "linear, log or monotone", u"linear")
                .gives("y", "The value at x"),
        }};
}

}  // namespace undercroft::addin
