#include "calc/arithmetic.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/entry.hpp"
#include "units/text.hpp"

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

/// A unit, and how it was written.
struct WrittenUnit {
    std::string text;
    Unit unit;
};

template <>
struct Slot<WrittenUnit> {
    static WrittenUnit read(const Cell& cell, const Terms&) {
        const std::string text = read_text(cell, [] { return std::string("a unit such as m3"); });
        return {text, parse_unit(text)};
    }
    static ValueType type() { return Slot<Unit>::type(); }
    static Reading reading(const WrittenUnit& value) { return Slot<Unit>::reading(value.unit); }
};

namespace {

/// "305 mm", with every digit.
std::string quantity_text(const Quantity& number, const WrittenUnit& unit) {
    if (number.form != Quantity::Form::bare)
        refuse_value("number: " + text_of(number) + " has a unit already; a number alone is wanted");
    return exact_text(number.value) + " " + unit.text;
}

constexpr Range any_dimension =
    any_number("of whatever dimension; beside a quantity with a unit a bare number is refused");
constexpr const char* yard = "International yard and pound agreement (1959): 1 in = 25.4 mm";

// --- one quantity --------------------------------------------------------------------------------------

Function convert_entry() {
    return function("UC.CONVERT", [](Quantity quantity) { return quantity; })
        .role(Role::converts)
        .says("A quantity as a number in another unit")
        .equation("x = q / unit")
        .source("SI Brochure, 9th ed. (2019); NIST Handbook 44 (2023), appendix C")
        .takes("quantity", "q", "The quantity to convert")
        .within(any_dimension)
        .gives("x", "The number in that unit")
        .wants_unit("unit", "Unit wanted")
        .example("UC.CONVERT(\"8 oz/yd2\"; \"g/m2\")", "271.246", "0.0005", Origin::mathematics,
                 "8 x 28.349523125 g / 0.83612736 m2, recomputed")
        .example("UC.CONVERT(\"1073 kg/m3\"; \"lb/yd3\")", "1808", "1", Origin::published,
                 "Plant and materials density appendix (DOI 10.1201/b12981-45): clay, dry")
        .example("UC.CONVERT(\"2596 kg/m3\"; \"lb/yd3\")", "4375", "1", Origin::published,
                 "Plant and materials density appendix (DOI 10.1201/b12981-45): limestone, solid")
        .example("UC.CONVERT(\"1 ft3/s\"; \"m3/s\")", "0.02831685", "5e-9", Origin::published,
                 "NIST SP 811 (2008), appendix B.8: cubic foot per second")
        .example("UC.CONVERT(\"1 lbf/ft2\"; \"Pa\")", "47.88026", "5e-6", Origin::published,
                 "NIST SP 811 (2008), appendix B.8: pound-force per square foot");
}

Function dimension_entry() {
    return function("UC.DIMENSION", [](Unit unit) { return unit.dimension.text(); })
        .says("The dimension of a unit: L length, M mass, T time, A angle, N count")
        .equation("dim(unit)")
        .source("ISO 80000-1:2009, dimension of a quantity")
        .takes("unit", "u", "The unit, such as kN/m3")
        .gives("", "The dimension, such as L-2 M T-2")
        .example("UC.DIMENSION(\"kN/m3\")", "L-2 M T-2", "exact", Origin::mathematics,
                 "1 N = 1 kg m/s2 (SI Brochure), over m3");
}

Function quantity_entry() {
    return function("UC.QUANTITY",
                    [](Quantity number, WrittenUnit unit) { return quantity_text(number, unit); })
        .role(Role::writes)
        .says(
            "A number and its unit as the text of a quantity, with every digit: for a unit that stands in a "
            "heading, and for the result of a function inside another one")
        .equation("number unit")
        .source("common practice")
        .takes("number", "x", "The number, without a unit")
        .within(any_number("in the unit beside it"))
        .takes("unit", "u", "Its unit, such as mm")
        .gives("", "The quantity as text, such as 305 mm")
        .example("UC.QUANTITY(305; \"mm\")", "305 mm", "exact", Origin::mathematics,
                 "number and unit side by side")
        .example(
            "UC.TOTAL(UC.QUANTITY(UC.PIT.SIDE(\"10 ft\"; \"3 ft\"; \"1H:1V\"; \"ft\"); \"ft\"); \"6 in\"; "
            "\"ft\")",
            "16.5", "1e-12 rel", Origin::mathematics, "10 ft + 2 x 3 ft + 0.5 ft: a result keeps its unit");
}

// --- many figures --------------------------------------------------------------------------------------

constexpr const char* figures_says = "One column, its unit in the first row; or two columns: number, unit";

Function sum_entry() {
    return function("UC.SUM", [](Figures range) { return calc::sum(range.rows); })
        .role(Role::gathers)
        .says(
            "Sum of rows of number and unit in mixed units of one dimension, or of a column with its unit in "
            "the "
            "first row; rows without a number are passed over, text is refused")
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

// --- two quantities -------------------------------------------------------------------------------------

Function product_entry() {
    return function("UC.PRODUCT", [](Quantity a, Quantity b) { return calc::product(a, b); })
        .role(Role::multiplies)
        .says("Product of two quantities; a number without a unit is a pure number")
        .equation("p = a b")
        .source("common practice")
        .takes("a", "a", "First factor")
        .within(any_dimension)
        .takes("b", "b", "Second factor")
        .within(any_dimension)
        .gives("p", "The product")
        .wants_unit()
        .example("UC.PRODUCT(\"0.4 m\"; \"30 m2\"; \"m3\")", "12", "1e-12 rel", Origin::mathematics,
                 "length times area is a volume")
        .example("UC.PRODUCT(\"12 each\"; \"2.5 m\"; \"m\")", "30", "1e-12 rel", Origin::mathematics,
                 "twelve things of 2.5 m");
}

Function product_of_many_entry() {
    return function("UC.PRODUCT.OF", [](Factors factors) { return calc::product(factors.rows); })
        .role(Role::multiplies)
        .says(
            "Product of any number of quantities, one below the other; a number without a unit is a pure "
            "number, rows without a number are passed over")
        .equation("p = q1 q2 q3 ...")
        .source("common practice")
        .takes("factors", "q", "Two columns: number, and its unit beside it, 1 or % for a pure number")
        .within(any_dimension)
        .gives("p", "The product")
        .wants_unit("unit", "Unit of the product")
        .example("UC.PRODUCT.OF({30;\"m\"|12;\"m\"|305;\"mm\"|40;\"%\"}; \"m3\")", "43.92", "1e-12 rel",
                 Origin::mathematics, "30 x 12 x 0.305 x 0.4");
}

Function quotient_entry() {
    return function("UC.QUOTIENT", [](Quantity a, Quantity b) { return calc::quotient(a, b); })
        .role(Role::multiplies)
        .says("Quotient of two quantities; a number without a unit is a pure number")
        .equation("r = a / b")
        .source("common practice")
        .takes("a", "a", "What is divided")
        .within(any_dimension)
        .takes("b", "b", "What it is divided by")
        .within(any_dimension)
        .gives("r", "The quotient")
        .wants_unit()
        .example("UC.QUOTIENT(\"21780 ft2\"; \"1 acre\"; \"%\")", "50", "1e-12 rel", Origin::published,
                 "NIST Handbook 44 (2023), appendix C: 1 acre = 43560 ft2");
}

Function difference_entry() {
    return function("UC.DIFFERENCE", [](Quantity a, Quantity b) { return calc::difference(a, b); })
        .role(Role::adds)
        .says("Difference of two quantities of one dimension, in any units")
        .equation("d = a - b")
        .source("common practice")
        .takes("a", "a", "From what is subtracted")
        .within(any_dimension)
        .takes("b", "b", "What is subtracted")
        .within(any_dimension)
        .gives("d", "The difference")
        .wants_unit()
        .example("UC.DIFFERENCE(\"101.500 m\"; \"998 mm\"; \"m\")", "100.502", "1e-12 rel",
                 Origin::mathematics, "levels in two units");
}

Function total_entry() {
    return function("UC.TOTAL", [](Quantity a, Quantity b) { return calc::total(a, b); })
        .role(Role::adds)
        .says("Total of two quantities of one dimension, in any units")
        .equation("t = a + b")
        .source("common practice")
        .takes("a", "a", "First quantity")
        .within(any_dimension)
        .takes("b", "b", "Second quantity")
        .within(any_dimension)
        .gives("t", "The total")
        .wants_unit()
        .example("UC.TOTAL(\"1 ft\"; \"25.4 mm\"; \"in\")", "13", "1e-12 rel", Origin::published, yard);
}

// --- verdicts -------------------------------------------------------------------------------------------

constexpr const char* verdict_says = "1 when it holds, else 0";

Function at_least_entry() {
    return function("UC.ATLEAST", [](Quantity value, Quantity limit) { return calc::at_least(value, limit); })
        .role(Role::compares)
        .says("Whether a value is at least a limit, whatever their units: 1 for TRUE, 0 for FALSE")
        .equation("x >= limit, relative tolerance 1e-9")
        .source("common practice")
        .takes("value", "x", "The value to check")
        .within(any_dimension)
        .takes("limit", "limit", "The least that it may be")
        .within(any_dimension)
        .gives("", verdict_says)
        .example("UC.ATLEAST(\"12 in\"; \"304.8 mm\")", "1", "exact", Origin::published, yard);
}

Function at_most_entry() {
    return function("UC.ATMOST", [](Quantity value, Quantity limit) { return calc::at_most(value, limit); })
        .role(Role::compares)
        .says("Whether a value is at most a limit, whatever their units: 1 for TRUE, 0 for FALSE")
        .equation("x <= limit, relative tolerance 1e-9")
        .source("common practice")
        .takes("value", "x", "The value to check")
        .within(any_dimension)
        .takes("limit", "limit", "The most that it may be")
        .within(any_dimension)
        .gives("", verdict_says)
        .example("UC.ATMOST(\"12 in\"; \"304.8 mm\")", "1", "exact", Origin::published, yard);
}

Function within_entry() {
    return function("UC.WITHIN", [](Quantity value, Quantity target,
                                    Quantity tolerance) { return calc::within(value, target, tolerance); })
        .role(Role::compares)
        .says("Whether a value is within a tolerance of its target: 1 for TRUE, 0 for FALSE")
        .equation("|x - x0| <= t")
        .source("common practice")
        .takes("value", "x", "The value to check, such as an as-built level")
        .within(any_dimension)
        .takes("target", "x0", "The design value")
        .within(any_dimension)
        .takes("tolerance", "t",
               "Deviation allowed; in % it is a share of the target, or percentage points of a pure number")
        .within(any_dimension)
        .or_share()
        .gives("", verdict_says)
        .example("UC.WITHIN(\"100.013 m\"; \"100 m\"; \"15 mm\")", "1", "exact", Origin::mathematics,
                 "13 mm off, 15 mm allowed");
}

Function lookup_entry() {
    return function("UC.LOOKUP", [](std::vector<std::tuple<Quantity, Quantity>> table, Quantity x,
                                    calc::Interpolation method) { return calc::lookup(table, x, method); })
        .role(Role::picks)
        .says("Value interpolated in a table of two columns; never extrapolated")
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

}  // namespace

Group arithmetic_functions() {
    return {
        "Units and checks",
        {convert_entry(), dimension_entry(), quantity_entry(), sum_entry(), largest_entry(), smallest_entry(),
         at_largest_entry(), product_entry(), product_of_many_entry(), quotient_entry(), difference_entry(),
         total_entry(), at_least_entry(), at_most_entry(), within_entry(), lookup_entry(), pick_entry()}};
}

}  // namespace undercroft::addin
