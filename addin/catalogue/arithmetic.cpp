#include "calc/arithmetic.hpp"
#include "addin/catalogue/arithmetic.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

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

}  // namespace

Group arithmetic_functions() {
    return {
        "Units and checks",
        {convert_entry(), dimension_entry(), quantity_entry(), sum_entry(), largest_entry(), smallest_entry(),
         at_largest_entry(), product_entry(), product_of_many_entry(), quotient_entry(), difference_entry(),
         total_entry(), at_least_entry(), at_most_entry(), within_entry(), lookup_entry(), pick_entry()}};
}

}  // namespace undercroft::addin
