/// \file unit_systems.hpp
/// Units of one dimension to choose from, in SI, in US customary units and in all that there are.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "units/unit.hpp"

namespace undercroft::tests {

enum class UnitSystem { si, us, mixed };

/// Units by the text of their dimension.
using UnitsOf = std::map<std::string, std::vector<std::string>>;

inline UnitsOf by_dimension(const std::vector<std::string>& units) {
    UnitsOf made;
    for (const std::string& unit : units) made[parse_unit(unit).dimension.text()].push_back(unit);
    return made;
}

inline const UnitsOf& us_units() {
    static const UnitsOf units = by_dimension(
        {"ft",     "in",       "yd",         "mi",      "ft2",       "in2",    "yd2",     "acre",
         "ft3",    "yd3",      "US gal",     "acre-ft", "acre-in",   "s",      "min",     "h",
         "d",      "ft3/s",    "US gpm",     "ft3/h",   "in/h",      "ft/d",   "fps",     "ft/min",
         "ft/s2",  "deg",      "lb",         "oz",      "short ton", "lbf",    "kip",     "lbf/ft",
         "kip/ft", "psf",      "psi",        "ksf",     "lb/ft3",    "lb/yd3", "lbf/ft3", "kip/ft3",
         "oz/yd2", "lb/ft2",   "ft^0.5/s",   "each",    "each/h",    "AUD/lb", "AUD/ft2", "AUD/yd3",
         "AUD/ft", "AUD/each", "s/ft^(1/3)", "AUD",     "each/min",  "ft2/s"});
    return units;
}

/// Every unit of the table, and products of them that the trade uses.
inline const UnitsOf& all_units() {
    static const UnitsOf units = [] {
        std::vector<std::string> texts;
        for (const UnitRow& row : unit_table())
            if (row.symbol != "%" && row.symbol != "‰" && row.symbol != "1") texts.emplace_back(row.symbol);
        for (const char* text :
             {"m2",       "mm2",      "cm2",     "ft2",    "in2",    "yd2",      "km2",    "m3",
              "mm3",      "ft3",      "in3",     "yd3",    "m3/s",   "L/s",      "m3/h",   "ML/d",
              "mm/h",     "cm/h",     "m/d",     "ft/d",   "in/h",   "m/s",      "m/s2",   "ft/s2",
              "kN/m",     "N/mm",     "kg/m3",   "t/m3",   "g/cm3",  "lb/ft3",   "lb/yd3", "kN/m3",
              "N/m3",     "lbf/ft3",  "lbf/in3", "g/m2",   "kg/m2",  "oz/yd2",   "lb/ft2", "m^0.5/s",
              "ft^0.5/s", "mm^0.5/s", "each/h",  "each/d", "AUD/t",  "AUD/kg",   "AUD/lb", "AUD/m2",
              "AUD/ha",   "AUD/m3",   "AUD/ft3", "AUD/m",  "AUD/ft", "AUD/each", "AUD"})
            texts.emplace_back(text);
        return by_dimension(texts);
    }();
    return units;
}

/// At least one unit, the coherent one when a system has none of its own.
inline std::vector<std::string> units_of(const Dimension& dimension, UnitSystem system) {
    const std::string si = si_unit_text(dimension);
    if (system == UnitSystem::si) return {si};
    const UnitsOf& units = system == UnitSystem::us ? us_units() : all_units();
    const auto found = units.find(dimension.text());
    return found == units.end() ? std::vector<std::string>{si} : found->second;
}

/// Those of them that belong to no system of feet and pounds; the coherent one when none does.
inline std::vector<std::string> without_customary(const std::vector<std::string>& units,
                                                  const Dimension& dimension) {
    std::vector<std::string> kept;
    for (const std::string& unit : units)
        if (!parse_unit(unit).customary) kept.push_back(unit);
    return kept.empty() ? std::vector<std::string>{si_unit_text(dimension)} : kept;
}

}  // namespace undercroft::tests
