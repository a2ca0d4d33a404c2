#include "sheets/builder/unit_choices.hpp"

#include <algorithm>
#include <stdexcept>

#include "units/refused.hpp"
#include "units/unit.hpp"

namespace undercroft::sheets {

namespace {

Unit read(const std::string& unit) {
    try {
        return parse_unit(unit);
    } catch (const Refused& refused) {
        throw std::runtime_error(refused.what());
    }
}

// What an office uses, by dimension; the tests check that each line is of one dimension.
constexpr const char* usual[][8] = {
    {"m", "mm", "cm", "ft", "in"},
    {"m2", "ha", "ft2", "yd2", "acre"},
    {"m3", "L", "ML", "ft3", "yd3", "acre-ft", "US gal"},
    {"min", "s", "h", "d"},
    {"L/s", "m3/s", "m3/h", "cfs", "US gpm"},
    {"mm/h", "m/s", "m/d", "in/h", "ft/d", "ft/s"},
    {"deg", "rad"},
    {"kg", "t", "lb", "short ton"},
    {"kN", "N", "kip", "lbf"},
    {"kN/m", "lbf/ft", "kip/ft"},
    {"kPa", "MPa", "psf", "ksf", "psi"},
    {"kg/m3", "t/m3", "lb/ft3"},
    {"kN/m3", "lbf/ft3"},
    {"g/m2", "kg/m2", "oz/yd2"},
    {"%", "1"},
    {"each"},
    {"each/h", "each/d"},
};

}  // namespace

std::vector<std::string> unit_choices(const std::string& unit) {
    const Dimension dimension = read(unit).dimension;
    std::vector<std::string> choices;
    for (const auto& row : usual) {
        if (!(read(row[0]).dimension == dimension)) continue;
        for (const char* choice : row)
            if (choice != nullptr) choices.emplace_back(choice);
    }
    if (std::find(choices.begin(), choices.end(), unit) == choices.end())
        choices.insert(choices.begin(), unit);
    return choices;
}

}  // namespace undercroft::sheets
