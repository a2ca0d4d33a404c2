#include "calc/ground/accepted_soils.hpp"

#include <algorithm>
#include <array>
#include <boost/algorithm/string.hpp>
#include <string_view>
#include <vector>

#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

// AASHTO M 145, Table 1.
constexpr std::array<std::string_view, 12> groups = {"A-1-a", "A-1-b", "A-3", "A-2-4", "A-2-5", "A-2-6",
                                                     "A-2-7", "A-4",   "A-5", "A-6",   "A-7-5", "A-7-6"};

bool is_separator(char c) {
    return std::string_view(" ,;\t\n").find(c) != std::string_view::npos;
}

/// The group's name or that of the family it belongs to, in any case.
bool belongs_to(std::string_view group, const std::string& name) {
    const bool is_family = name.size() == std::string_view("A-1").size();
    return boost::iequals(group, name) || (is_family && boost::istarts_with(group, name + "-"));
}

/// A name that nobody would read to its end is told by its length.
std::string quoted(const std::string& name) {
    constexpr std::size_t longest = 60;
    return name.size() <= longest ? "'" + name + "'"
                                  : "a name of " + std::to_string(name.size()) + " letters";
}

void require_group(const char* what, const std::string& name, bool family) {
    const bool known = std::any_of(groups.begin(), groups.end(), [&](std::string_view group) {
        return family ? belongs_to(group, name) : boost::iequals(group, name);
    });
    if (!known)
        refuse_value(
            std::string(what) + ": " + quoted(name) +
            " is no group of AASHTO M 145: A-1-a, A-1-b, A-3, A-2-4 to A-2-7, A-4, A-5, A-6, A-7-5, A-7-6");
}

}  // namespace

bool soil_accepted(const std::string& group, const std::string& accepted) {
    const std::string soil = boost::trim_copy(group);
    require_group("group", soil, false);
    std::vector<std::string> names;
    const std::string list = boost::trim_copy_if(accepted, is_separator);
    require(!list.empty(), "the list of accepted groups is empty");
    boost::split(names, list, is_separator, boost::token_compress_on);
    for (const std::string& name : names) require_group("accepted", name, true);
    return std::any_of(names.begin(), names.end(),
                       [&](const std::string& name) { return belongs_to(soil, name); });
}

}  // namespace undercroft::calc
