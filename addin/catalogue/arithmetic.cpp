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

Function convert_entry() {
    return function("UC.CONVERT", [](Quantity quantity) { return quantity; })
        .role(Role::converts)
        .says("A quantity as a number in another unit")
        .also_called("unit conversion, change units, metric to imperial, feet to metres")
        .related({"UC.QUANTITY", "UC.DIMENSION", "UC.TOTAL"})
        .to_try("UC.CONVERT(\"12 ft 6 in\"; \"m\")")
        .to_try("UC.CONVERT(\"250 m3\"; \"ft3\")")
        .to_try("UC.CONVERT(\"0.5 %\"; \"1\")")
        .refuses("UC.CONVERT(\"1,305 mm\"; \"m\")")
        .refuses("UC.CONVERT(\"1 ton\"; \"kg\")")
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
        .also_called("dimensional analysis, check a unit, unit symbol")
        .related({"UC.CONVERT"})
        .to_try("UC.DIMENSION(\"m^0.5/s\")")
        .to_try("UC.DIMENSION(\"lbf/ft3\")")
        .refuses("UC.DIMENSION(\"mtr\")")
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
        .also_called("join number and unit, text of a quantity, unit in a heading, nested result")
        .related({"UC.CONVERT"})
        .to_try("UC.QUANTITY(305; \"mm\")")
        .to_try("UC.QUANTITY(UC.PIT.VOLUME(\"30 m\"; \"12 m\"; \"2 m\"; \"1H:1V\"; \"yd3\"); \"yd3\")")
        .refuses("UC.QUANTITY(\"305 mm\"; \"m\")")
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

constexpr const char* figures_says = "One column, its unit in the first row; or two columns: number, unit";

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

Function product_entry() {
    return function("UC.PRODUCT", [](Quantity a, Quantity b) { return calc::product(a, b); })
        .role(Role::multiplies)
        .says("Product of two quantities; a number without a unit is a pure number")
        .also_called("multiply, times, factor")
        .related({"UC.QUOTIENT", "UC.TOTAL"})
        .to_try("UC.PRODUCT(\"12 m\"; \"3.5 m\"; \"m2\")")
        .to_try("UC.PRODUCT(\"46 ft\"; \"150 ft\"; \"yd2\")")
        .to_try("UC.PRODUCT(\"20 kN/m3\"; \"0.6 m\"; \"kPa\")")
        .refuses("UC.PRODUCT(\"12 m\"; \"3.5 m\"; \"m3\")")
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
        .also_called("divide, ratio, per")
        .related({"UC.PRODUCT", "UC.DIFFERENCE"})
        .to_try("UC.QUOTIENT(\"250 m3\"; \"45 L/s\"; \"h\")")
        .to_try("UC.QUOTIENT(\"8800 ft3\"; \"1.6 cfs\"; \"h\")")
        .to_try("UC.QUOTIENT(\"313 kPa\"; 3; \"kPa\")")
        .refuses("UC.QUOTIENT(\"250 m3\"; \"0 m3/s\"; \"h\")")
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
        .also_called("subtract, minus, fall, clearance")
        .related({"UC.TOTAL", "UC.PRODUCT"})
        .to_try("UC.DIFFERENCE(\"100.20 m\"; \"97.85 m\"; \"mm\")")
        .to_try("UC.DIFFERENCE(\"3 ft\"; \"8 in\"; \"in\")")
        .refuses("UC.DIFFERENCE(\"3 ft\"; 1; \"ft\")")
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
        .also_called("add, plus, sum of two")
        .related({"UC.SUM", "UC.DIFFERENCE"})
        .to_try("UC.TOTAL(\"1.2 m\"; \"305 mm\"; \"m\")")
        .to_try("UC.TOTAL(\"3 ft\"; \"8 in\"; \"ft\")")
        .refuses("UC.TOTAL(5; \"3 ft\"; \"ft\")")
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

constexpr const char* verdict_says = "1 when it holds, else 0";

Function at_least_entry() {
    return function("UC.ATLEAST", [](Quantity value, Quantity limit) { return calc::at_least(value, limit); })
        .role(Role::compares)
        .says("Whether a value is at least a limit, whatever their units: 1 for TRUE, 0 for FALSE")
        .also_called("check a minimum, not less than, greater or equal, verdict")
        .related({"UC.ATMOST", "UC.WITHIN"})
        .to_try("UC.ATLEAST(\"305 mm\"; \"12 in\")")
        .to_try("UC.ATLEAST(\"250 m3\"; \"8000 ft3\")")
        .refuses("UC.ATLEAST(305; \"12 in\")")
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
        .also_called("check a maximum, not more than, less or equal, verdict")
        .related({"UC.ATLEAST", "UC.WITHIN"})
        .to_try("UC.ATMOST(\"36 h\"; \"48 h\")")
        .to_try("UC.ATMOST(\"2600 psf\"; \"130 kPa\")")
        .refuses("UC.ATMOST(0; \"48 h\")")
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
        .also_called("tolerance, as built, plus or minus, acceptance")
        .related({"UC.ATLEAST", "UC.ATMOST"})
        .to_try("UC.WITHIN(\"98.012 m\"; \"98.000 m\"; \"15 mm\")")
        .to_try("UC.WITHIN(\"0.34 m\"; \"0.3 m\"; \"5 %\")")
        .refuses("UC.WITHIN(\"0.34 m\"; 0.3; \"5 %\")")
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

}  // namespace

Group arithmetic_functions() {
    return {
        "Units and checks",
        {convert_entry(), dimension_entry(), quantity_entry(), sum_entry(), largest_entry(), smallest_entry(),
         at_largest_entry(), product_entry(), product_of_many_entry(), quotient_entry(), difference_entry(),
         total_entry(), at_least_entry(), at_most_entry(), within_entry(), lookup_entry(), pick_entry()}};
}

}  // namespace undercroft::addin
