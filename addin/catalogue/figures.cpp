// One figure of many: sum, greatest, least, product, and what stands between the rows of a table.
#include "addin/catalogue/arithmetic.hpp"
#include "calc/arithmetic.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::Interpolation> {
    static constexpr std::string_view kind = "a method";
    static constexpr Choice<calc::Interpolation> list[] = {
        {"linear", calc::Interpolation::linear},
        {"log", calc::Interpolation::logarithmic},
        {"monotone", calc::Interpolation::monotone},
    };
};

namespace {

constexpr const char* figures_says = "One column, its unit in the first row; or two columns: number, unit";

}  // namespace

Function sum_entry() {
    return function("UC.SUM", [](Figures range) { return calc::sum(range.rows); })
        .role(Role::gathers)
        .says(
            "Sum of rows of number and unit in mixed units of one dimension, or of a column with its unit in "
            "the "
            "first row; rows without a number are passed over, text is refused")
        .also_called("add up, total of a column, mixed units, schedule total")
        .related({"UC.TOTAL", "UC.LARGEST", "UC.SMALLEST"})
        .to_try("UC.SUM({305;\"mm\"|12;\"in\"|0.5;\"m\"}; \"m\")")
        .to_try("UC.SUM({\"ft\"|10|12.5|8}; \"ft\")")
        .refuses("UC.SUM({305;\"mm\"|12;\"kg\"}; \"m\")")
        .equation("S = q1 + q2 + ...")
        .source("common practice")
        .takes("range", "q",
               "Two columns: number, and its unit beside it; or one column of a table with its unit row")
        .within(any_dimension)
        .gives("S", "The sum")
        .wants_unit("unit", "Unit of the sum")
        .example("UC.SUM({1;\"ft\"|1;\"in\"|\"\";\"\"|25.4;\"mm\"}; \"mm\")", "355.6", "1e-12 rel",
                 Origin::published, yard);
}

Function largest_entry() {
    return function("UC.LARGEST", [](Figures range) { return calc::largest(range.rows); })
        .role(Role::gathers)
        .says(
            "The largest figure of a column of a table with its unit row, or of rows of number and unit; "
            "blank "
            "rows are passed over")
        .also_called("maximum, peak of a column, max")
        .related({"UC.SMALLEST", "UC.LARGEST.AT", "UC.SUM"})
        .to_try("UC.LARGEST({\"L/s\"|12|48|31}; \"L/s\")")
        .to_try("UC.LARGEST({305;\"mm\"|14;\"in\"}; \"in\")")
        .equation("x = max(q1, q2, ...)")
        .source("common practice")
        .takes("range", "q", figures_says)
        .within(any_dimension)
        .gives("x", "The largest")
        .wants_unit()
        .example("UC.LARGEST({\"L/s\"|12|15|9}; \"m3/h\")", "54", "1e-12 rel", Origin::mathematics, "15 L/s");
}

Function smallest_entry() {
    return function("UC.SMALLEST", [](Figures range) { return calc::smallest(range.rows); })
        .role(Role::gathers)
        .says(
            "The smallest figure of a column of a table with its unit row, or of rows of number and unit; "
            "blank "
            "rows are passed over")
        .also_called("minimum, least of a column, min")
        .related({"UC.LARGEST", "UC.SUM"})
        .to_try("UC.SMALLEST({\"m\"|1.2|0.75|0.9}; \"mm\")")
        .to_try("UC.SMALLEST({305;\"mm\"|14;\"in\"}; \"in\")")
        .equation("x = min(q1, q2, ...)")
        .source("common practice")
        .takes("range", "q", figures_says)
        .within(any_dimension)
        .gives("x", "The smallest")
        .wants_unit()
        .example("UC.SMALLEST({45;\"mm/h\"|3.8;\"cm/h\"|4.1e-5;\"m/s\"}; \"mm/h\")", "38", "1e-12 rel",
                 Origin::mathematics, "the lowest of three soakage tests");
}

Function at_largest_entry() {
    return function("UC.LARGEST.AT",
                    [](Figures range, Figures other) { return calc::at_largest(range.rows, other.rows); })
        .role(Role::picks)
        .says("The figure of another column in the row where a column is largest, such as the time of a peak")
        .also_called("time of peak, where the maximum is, argmax")
        .related({"UC.LARGEST", "UC.LOOKUP"})
        .to_try("UC.LARGEST.AT({\"L/s\"|12|48|31}; {\"min\"|10|20|30}; \"min\")")
        .to_try("UC.LARGEST.AT({\"cfs\"|0.5|1.7|1.1}; {\"min\"|10|20|30}; \"h\")")
        .equation("y of the row where x = max(x1, x2, ...)")
        .source("common practice")
        .takes("range", "x", "The column to search: with its unit in the first row, or number and unit")
        .within(any_dimension)
        .takes("other", "y", "The column to read, of the same rows")
        .within(any_dimension)
        .gives("y", "The figure in that row")
        .wants_unit()
        .example("UC.LARGEST.AT({\"L/s\"|12|15|9}; {\"min\"|10|20|30}; \"s\")", "1200", "1e-12 rel",
                 Origin::mathematics, "the largest is in the row of 20 min");
}

Function product_of_many_entry() {
    return function("UC.PRODUCT.OF", [](Factors factors) { return calc::product(factors.rows); })
        .role(Role::multiplies)
        .says(
            "Product of any number of quantities, one below the other; a number without a unit is a pure "
            "number, rows without a number are passed over")
        .related({"UC.PRODUCT", "UC.QUOTIENT", "UC.SUM"})
        .also_called("multiply a column, product of a list, factors multiplied")
        .equation("p = q1 q2 q3 ...")
        .source("common practice")
        .takes("factors", "q", "Two columns: number, and its unit beside it, 1 or % for a pure number")
        .within(any_dimension)
        .gives("p", "The product")
        .wants_unit("unit", "Unit of the product")
        .example("UC.PRODUCT.OF({30;\"m\"|12;\"m\"|305;\"mm\"|40;\"%\"}; \"m3\")", "43.92", "1e-12 rel",
                 Origin::mathematics, "30 x 12 x 0.305 x 0.4");
}

Function lookup_entry() {
    return function("UC.LOOKUP", [](std::vector<std::tuple<Quantity, Quantity>> table, Quantity x,
                                    calc::Interpolation method) { return calc::lookup(table, x, method); })
        .role(Role::picks)
        .says("Value interpolated in a table of two columns; never extrapolated")
        .also_called("interpolate, read a table or curve, vlookup, storage at a depth")
        .related({"UC.LARGEST.AT", "UC.STAGE.STORAGE"})
        .to_try("UC.LOOKUP({\"m\";\"m3\"|0;0|0.5;120|1;260|1.5;380}; \"0.8 m\")")
        .to_try("UC.LOOKUP({\"ft\";\"ft3\"|0;0|1.5;4000|3;9000|5;14000}; \"2 ft\"; ; \"ft3\")")
        .refuses("UC.LOOKUP({\"m\";\"m3\"|0;0|0.5;120|1;260|1.5;380}; 0.8)")
        .refuses("UC.LOOKUP({\"m\";\"m3\"|0;0|0.5;120|1;260|1.5;380}; \"2 m\")")
        .equation("y = f(x) between the rows: linear, linear in logarithms, or monotone cubic")
        .source("Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980), for the monotone cubic")
        .takes("table", "x, y", "Two columns; the first rises from row to row; a first row may hold units")
        .within({any_dimension, any_dimension})
        .takes("x", "x", "Where to look")
        .within(any_dimension)
        .takes("method", "f", "linear, log or monotone", u"linear")
        .gives("y", "The value at x")
        .example("UC.LOOKUP({10;100|60;25}; 30; \"log\")", "42.7413865179", "1e-10", Origin::mathematics,
                 "a power law is interpolated exactly: y = 100 (x/10)^-0.7737")
        .example("UC.LOOKUP({\"cm/h\";\"cm\"|0;0|2;10}; \"0.5 cm/h\"; \"linear\"; \"mm\")", "25", "1e-12 rel",
                 Origin::mathematics, "straight line")
        .example("UC.LOOKUP({0;0|1;1|2;8|3;27}; 2; \"monotone\")", "8", "1e-12 rel", Origin::mathematics,
                 "a point of the table is met exactly");
}

}  // namespace undercroft::addin
