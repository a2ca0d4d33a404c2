// The same job in other units gives the same answer: every worked example, its quantities written in units of
// another system.
#include <map>

#include "tests/addin/desk.hpp"
#include "tests/support/near.hpp"
#include "units/text.hpp"
#include "units/unit.hpp"

namespace undercroft::tests {

using namespace addin;

namespace {

const std::map<std::string, std::vector<const char*>>& other_units() {
    static const std::map<std::string, std::vector<const char*>> units = [] {
        std::map<std::string, std::vector<const char*>> made;
        for (const char* unit :
             {"ft",      "in",   "km",     "ft2",   "acre",   "ha",     "ft3",      "US gal", "acre-ft",
              "s",       "h",    "d",      "ft3/s", "m3/h",   "US gpm", "in/h",     "m/s",    "ft/d",
              "lb",      "t",    "lbf",    "kip",   "psf",    "psi",    "MPa",      "lb/ft3", "t/m3",
              "lbf/ft3", "N/m3", "lbf/ft", "N/m",   "oz/yd2", "kg/m2",  "ft^0.5/s", "rad"})
            made[parse_unit(unit).dimension.text()].push_back(unit);
        return made;
    }();
    return units;
}

/// The quantity of a text in another unit of its dimension, or the text itself where there is none.
std::string rewritten(const std::string& text, std::size_t turn) {
    Quantity quantity;
    try {
        quantity = parse_quantity(text);
    } catch (const Refused&) {
        return text;  // a word, or a unit
    }
    const auto units = other_units().find(quantity.dimension.text());
    if (quantity.form != Quantity::Form::with_unit || units == other_units().end()) return text;
    const std::string unit = units->second[turn % units->second.size()];
    return exact_text(number_in(quantity, parse_unit(unit))) + " " + unit;
}

/// How many quantities of a formula were written in another unit.
int rewrite(Node& node, std::size_t turn) {
    int changed = 0;
    if (node.kind == Node::Kind::text) {
        const std::string other = rewritten(node.text, turn);
        changed += other != node.text ? 1 : 0;
        node.text = other;
    }
    for (Node& child : node.children) changed += rewrite(child, turn);
    return changed;
}

}  // namespace

TEST_CASE("quantities in other units give the same answers") {
    const FormulaDesk desk;
    int compared = 0;
    for (const sheets::WorkedExample& example : worked_examples().rows) {
        if (!example.number) continue;
        const Node plain = parse_formula(example.formula);
        const double expected = *desk.value_of(plain).number();
        for (std::size_t turn = 0; turn < 3; ++turn) {
            Node other = plain;
            if (rewrite(other, turn) == 0) break;
            CAPTURE(example.formula, turn);
            const double answer = *desk.value_of(other).number();
            CHECK(std::abs(answer - expected) <= 1e-12 * std::abs(expected) + 1e-300);
            ++compared;
        }
    }
    CHECK(compared > 900);
}

}  // namespace undercroft::tests
