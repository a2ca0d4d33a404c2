/// \file tasks.hpp
/// The index by task: what a person wants to know, and the functions that answer it, in the order of the
/// work.
#pragma once

#include <string>
#include <vector>

namespace undercroft::addin {

struct Task {
    std::string question;
    std::vector<std::string> functions;  ///< a name that ends in `.` stands for all that begin with it
};

/// The tasks, each with the functions that there are; functions that no task names follow under the title of
/// their group.
[[nodiscard]] std::vector<Task> tasks();

}  // namespace undercroft::addin
