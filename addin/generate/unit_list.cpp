#include "addin/generate/unit_list.hpp"

#include <cstdio>

#include "units/unit.hpp"

namespace undercroft::addin {

namespace {

/// "a length" to "length"
std::string without_article(std::string name) {
    for (const char* article : {"a ", "an "})
        if (name.starts_with(article)) return name.substr(std::string(article).size());
    return name;
}

std::string size_of(const UnitRow& unit) {
    char number[32];
    std::snprintf(number, sizeof number, "%.10g", unit.scale.to_coherent(1));
    const std::string in = si_unit_text(unit.dimension);
    return in == "1" ? number : number + (" " + in);
}

}  // namespace

std::vector<ListedUnit> listed_units() {
    std::vector<ListedUnit> listed;
    for (const UnitRow& unit : unit_table()) {
        std::string also;
        for (const char c : unit.also) also += c == '|' ? std::string(", ") : std::string(1, c);
        listed.push_back(
            {std::string(unit.symbol), also, without_article(name_of(unit.dimension)), size_of(unit)});
    }
    return listed;
}

std::vector<ListedDimension> listed_dimensions() {
    std::vector<ListedDimension> listed;
    for (const NamedDimension& dimension : named_dimensions())
        listed.push_back({without_article(std::string(dimension.name)), std::string(dimension.default_unit),
                          std::string(dimension.examples)});
    return listed;
}

}  // namespace undercroft::addin
