/// \file unit_list.hpp
/// All units in one table, and the unit in which a bare number of each dimension is read.
#pragma once

#include <string>
#include <vector>

namespace undercroft::addin {

struct ListedUnit {
    std::string symbol;
    std::string also;       ///< its other spellings
    std::string dimension;  ///< "length"
    std::string size;       ///< "0.3048 m"
};

struct ListedDimension {
    std::string name;
    std::string default_unit;
    std::string examples;
};

[[nodiscard]] std::vector<ListedUnit> listed_units();
[[nodiscard]] std::vector<ListedDimension> listed_dimensions();

}  // namespace undercroft::addin
