// Slips of units that pass and make a result look safer than it is: a capacity larger, a demand smaller. No
// verdict is made safer by one that a person can make; of the rest tests/HARDENING.md says which two readings
// are both usual, and their number falls only:
//   UNDERCROFT_RENEW=1 build/tests/addin_test "[slips]"
#include <cmath>
#include <fstream>
#include <set>
#include <sstream>

#include "tests/addin/slip_factors.hpp"
#include "units/text.hpp"
#include "units/unit.hpp"

namespace undercroft::tests {

using namespace addin;

namespace {

enum class Safer { neither, more, less };

/// What stands before and behind the bar in each line of a file.
std::map<std::string, std::string> lines_of(const std::string& file) {
    std::map<std::string, std::string> read;
    std::istringstream lines(file_text(file));
    for (std::string line; std::getline(lines, line);) {
        if (line.empty() || line.front() == '#') continue;
        const std::size_t bar = line.find(" | ");
        REQUIRE(bar != std::string::npos);
        read[line.substr(0, bar)] = line.substr(bar + 3);
    }
    return read;
}

/// As tests/data/safer-side.txt says it.
std::map<std::string, Safer> safer_sides() {
    std::map<std::string, Safer> sides;
    for (const auto& [name, side] : lines_of("tests/data/safer-side.txt")) {
        REQUIRE((side == "more" || side == "less"));
        REQUIRE(find_function(name) != nullptr);
        sides[name] = side == "more" ? Safer::more : Safer::less;
    }
    return sides;
}

/// Whether some unit of the dimension is so many times the default one: metres typed as feet, not as twelfths
/// of a metre. Units of more than one part, such as in/h, are made of those of the table.
bool is_ratio_of_units(double factor, const ValueType& type) {
    if (type.shape == Shape::percentage)
        return std::abs(factor - 0.01) < 1e-9 || std::abs(factor - 100) < 1e-9;
    const Dimension& dimension = type.dimension;
    if (dimension.is_number() || dimension == Dimension::of(Base::gradient))
        return std::abs(factor - 0.01) < 1e-9 || std::abs(factor - 100) < 1e-9;
    const double base = default_unit(dimension).scale.to_coherent(1);
    constexpr const char* made[] = {
        "in/h",    "ft/s",    "m/s",   "m/d",   "ft/d",   "cm/h",  "mm/min", "in/min",  "m3/h",    "m3/s",
        "ft3/s",   "gpm",     "L/min", "kg/m3", "t/m3",   "g/cm3", "lb/ft3", "kN/m3",   "lbf/ft3", "kPa",
        "lbf/ft2", "lbf/in2", "N/mm2", "kN/m",  "lbf/ft", "N/m",   "kgf/m3", "ft3/min", "ft3/h",   "acre ft"};
    const auto fits = [&](const Unit& unit) {
        return unit.dimension == dimension && std::abs(base / unit.scale.to_coherent(1) / factor - 1) < 0.02;
    };
    for (const char* text : made) {
        try {
            if (fits(parse_unit(text))) return true;
        } catch (const Refused&) {
            continue;
        }
    }
    return std::any_of(unit_table().begin(), unit_table().end(), [&](const auto& row) {
        try {
            return fits(parse_unit(std::string(row.symbol)));
        } catch (const Refused&) {
            return false;
        }
    });
}

bool looks_safer(Safer side, double right, double slipped) {
    constexpr double noticed = 1e-6;
    const double more = (slipped - right) / std::max(std::abs(right), 1e-12);
    return side == Safer::more ? more > noticed : side == Safer::less && more < -noticed;
}

/// The result in the default unit; nothing where it is no number.
std::optional<double> result_of(const NumberPlace& place, const std::vector<double>& numbers) {
    const Outcome outcome = outcome_of(place.function(), place.with_bare(numbers).cells());
    return outcome.number() == nullptr ? std::nullopt : std::optional(*outcome.number());
}

struct Found {
    int safer = 0;
    std::string lines;
    std::set<std::string> told;
};

void look_at(const NumberPlace& place, Safer side, Found& found) {
    const std::vector<double> numbers = place.numbers();
    if (numbers.empty() || is_nothing(numbers)) return;
    const auto right = result_of(place, numbers);
    if (!right) return;
    static const auto why = lines_of("tests/data/safer-slips.txt");
    std::string factors;
    for (const Factor& factor : factors_of_slips) {
        std::vector<double> slipped = numbers;
        for (double& number : slipped) number *= factor.by;
        const auto wrong = result_of(place, slipped);
        if (!wrong || !looks_safer(side, *right, *wrong)) continue;
        if (!is_ratio_of_units(factor.by, place.type())) continue;  // no such slip is made
        INFO(place.function().name << ", " << place.name() << " x " << factor.shown);
        // Both readings are usual, or any is: no range can tell them apart.
        for (const double number : slipped) CHECK_NOTHROW(place.limits().check_bare(number));
        const bool is_verdict = place.function().outcome.type.shape == Shape::verdict;
        CHECK(!is_verdict);
        ++found.safer;
        const auto [least, most] = std::minmax_element(numbers.begin(), numbers.end());
        const double number = std::abs(*least) > std::abs(*most) ? *least : *most;
        factors +=
            (factors.empty() ? "" : ", ") + rounded_text(number) + " and " + rounded_text(number * factor.by);
    }
    if (factors.empty()) return;
    const std::string named = place.function().name + ", " + place.name();
    INFO(named << " needs a line in tests/data/safer-slips.txt that says why it is taken");
    REQUIRE(why.contains(named));
    found.told.insert(named);
    found.lines += "| " + place.function().name + " | " + place.name() + " | " + factors + " | " +
                   why.at(named) + " |\n";
}

constexpr const char* list_head =
    "| function | argument | both are usual | why it is taken, and what is seen |\n|---|---|---|---|\n";

}  // namespace

TEST_CASE("a slip of units that makes a result look safer is refused, or both readings are usual",
          "[slips]") {
    const auto sides = safer_sides();
    Found found;
    for_each_number([&](const NumberPlace& place) {
        const auto side = sides.find(place.function().name);
        if (side != sides.end()) look_at(place, side->second, found);
    });
    for (const auto& [named, sentence] : lines_of("tests/data/safer-slips.txt")) {
        INFO(named << " passes no more: its line goes");
        CHECK(found.told.contains(named));
    }
    const MarkedTable table("safer slips");
    const std::string made =
        "In all " + std::to_string(found.safer) + " of them.\n\n" + list_head + found.lines;
    int before = 0;
    REQUIRE(std::sscanf(table.committed().c_str(), "In all %d", &before) == 1);
    CHECK(found.safer <= before);
    table.renew_or_compare(made);
}

TEST_CASE("no slip of units that somebody makes turns a verdict of no into one of yes", "[slips]") {
    const auto sides = safer_sides();
    for (const Function& function : all_functions()) {
        if (function.reads_cell() || function.outcome.type.shape != Shape::verdict) continue;
        CAPTURE(function.name);
        CHECK((sides.contains(function.name) && sides.at(function.name) == Safer::more));
        for (const Arguments& arguments : good_arguments().at(function.name))
            for_each_number_in(function, arguments, [](const NumberPlace& place) {
                Found found;
                look_at(place, Safer::more, found);
            });
    }
}

}  // namespace undercroft::tests
