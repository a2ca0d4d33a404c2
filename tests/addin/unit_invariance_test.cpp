// The same job in other units gives the same answer: every worked example, its quantities written in units of
// another system.
#include <algorithm>
#include <map>

#include "addin/catalogue/catalogue.hpp"
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

/// Feet and pounds are refused beside bare numbers.
enum class Units { all, metric };

std::vector<const char*> units_of(const Dimension& dimension, Units which) {
    const auto found = other_units().find(dimension.text());
    if (found == other_units().end()) return {};
    std::vector<const char*> units = found->second;
    if (which == Units::metric)
        std::erase_if(units, [](const char* unit) { return parse_unit(unit).customary; });
    return units;
}

/// The quantity of a text in another unit of its dimension, or the text itself where there is none.
std::string rewritten(const std::string& text, std::size_t turn, Units which) {
    Quantity quantity;
    try {
        quantity = parse_quantity(text);
    } catch (const Refused&) {
        return text;  // a word, or a unit
    }
    const std::vector<const char*> units = units_of(quantity.dimension, which);
    if (quantity.form != Quantity::Form::with_unit || units.empty()) return text;
    const std::string unit = units[turn % units.size()];
    return exact_text(number_in(quantity, parse_unit(unit))) + " " + unit;
}

/// How many quantities of a formula were written in another unit.
int rewrite(Node& node, std::size_t turn, Units which) {
    int changed = 0;
    if (node.kind == NodeKind::text) {
        const std::string other = rewritten(node.text, turn, which);
        changed += other != node.text ? 1 : 0;
        node.text = other;
    }
    for (Node& child : node.children) changed += rewrite(child, turn, which);
    return changed;
}

/// The answer in other units; in metric ones where bare numbers stand beside. None where nothing changed.
std::optional<double> answer_in_others(const FormulaDesk& desk, const Node& plain, std::size_t turn) {
    for (const Units which : {Units::all, Units::metric}) {
        Node other = plain;
        if (rewrite(other, turn, which) == 0) return std::nullopt;
        try {
            return *desk.value_of(other).number();
        } catch (const Refused& refused) {
            if (which == Units::metric || refused.refusal() != Refusal::mixed) throw;
        }
    }
    return std::nullopt;
}

}  // namespace

TEST_CASE("quantities in other units give the same answers") {
    const FormulaDesk desk;
    int compared = 0;
    for (const sheets::WorkedExample& example : worked_examples().rows) {
        if (!example.number) continue;
        const Node plain = parse_formula(example.formula);
        const double expected = *desk.value_of(plain).number();
        double digits = all_digits;
        walk(plain, [&](const Node& node) {
            const Function* function = node.kind == NodeKind::call ? find_function(node.text) : nullptr;
            if (function != nullptr) digits = std::max(digits, function->outcome.found_to);
        });
        for (std::size_t turn = 0; turn < 3; ++turn) {
            CAPTURE(example.formula, turn);
            const std::optional<double> answer = answer_in_others(desk, plain, turn);
            if (!answer) break;
            CHECK(std::abs(*answer - expected) <= digits * std::abs(expected) + 1e-300);
            ++compared;
        }
    }
    CHECK(compared > 900);
}

}  // namespace undercroft::tests
