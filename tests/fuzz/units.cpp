#include <cmath>

#include "tests/fuzz/targets.hpp"
#include "units/quantity.hpp"
#include "units/text.hpp"
#include "units/unit_memory.hpp"

namespace undercroft::fuzz {

namespace {

bool is_same(const Unit& a, const Unit& b) {
    return a.dimension == b.dimension && a.scale.numerator == b.scale.numerator &&
           a.scale.denominator == b.scale.denominator && a.percent == b.percent;
}

void read_unit(std::string_view bytes) {
    Unit unit;
    try {
        unit = parse_unit(bytes);
    } catch (const Refused& refused) {
        promise_sentence(refused.what());
        return;
    }
    const double size = unit.scale.to_coherent(1);
    promise(std::isfinite(size) && size > 0, "a unit without a size");
    promise(is_same(unit, parse_unit(fold_spelling(bytes))), "a folded unit is another");
    const std::u16string wide = to_utf16(bytes);
    promise(is_same(remembered_unit(wide), unit), "a unit is remembered as another");
    promise(is_same(remembered_unit(wide), unit), "a unit is remembered as another the second time");
}

void read_quantity(std::string_view bytes) {
    Quantity quantity;
    try {
        quantity = parse_quantity(bytes);
    } catch (const Refused& refused) {
        promise_sentence(refused.what());
        return;
    }
    promise(std::isfinite(quantity.value), "a quantity that is not finite");
    promise(quantity.form != Quantity::Form::bare, "a text read as a bare number");
    const Quantity folded = parse_quantity(fold_spelling(bytes));
    promise(folded.value == quantity.value && folded.dimension == quantity.dimension,
            "a folded quantity is another");
    promise(!text_of(quantity).empty(), "a quantity without a text");
    // What is printed for a dimension is read back as that dimension.
    const std::string unit = si_unit_text(quantity.dimension);
    if (unit.find("  ") == std::string::npos && quantity.dimension.sixths(Base::batter) == 0 &&
        quantity.dimension.sixths(Base::gradient) == 0 && unit.size() <= 64)
        promise(parse_unit(unit).dimension == quantity.dimension, "a dimension's own unit is another's");
}

}  // namespace

void units(std::string_view bytes) {
    std::string folded;
    try {
        folded = fold_spelling(bytes);
        promise(fold_spelling(folded) == folded, "folded twice is another text");
    } catch (const Refused& refused) {
        promise_sentence(refused.what());
    }
    read_unit(bytes);
    read_quantity(bytes);
}

}  // namespace undercroft::fuzz
