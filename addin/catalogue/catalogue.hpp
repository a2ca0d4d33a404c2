/// \file catalogue.hpp
/// All functions that Calc sees, by group.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "addin/catalogue/function.hpp"

namespace undercroft::addin {

struct Group {
    std::string title;
    std::vector<Function> functions;
};

/// Every function, in the order of the reference.
/// \throws std::logic_error for a broken entry.
[[nodiscard]] const std::vector<Group>& catalogue();

/// Published tables that the examples use by their names.
[[nodiscard]] const std::vector<ExampleTable>& example_tables();

/// The same functions in one list: a function's place in it is how its stub finds it.
[[nodiscard]] const std::vector<Function>& all_functions();

/// A function by its name in the sheet or in files, in any case; nullptr when there is none.
[[nodiscard]] const Function* find_function(std::string_view name);

/// The service under which files store the functions: `undercroft.UC`.
inline constexpr std::string_view service_name = "undercroft.UC";

/// Version of the functions, as in the package.
[[nodiscard]] std::string version();

// Groups of the rooms.
[[nodiscard]] Group arithmetic_functions();
[[nodiscard]] Group checker_functions();
/// A topic of its own among them.
[[nodiscard]] Function pick_entry();

}  // namespace undercroft::addin
