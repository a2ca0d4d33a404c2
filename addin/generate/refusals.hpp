/// \file refusals.hpp
/// What a function refuses, cause by cause. Each argument of a good call is given in turn what its
/// declaration rules out; which of that is refused, and how the refusal reads, comes from the call itself.
#pragma once

#include <string>
#include <vector>

#include "addin/generate/example_call.hpp"

namespace undercroft::addin {

struct ShownRefusal {
    std::string cause;                   ///< in a few words: "another dimension"
    std::string error;                   ///< as the cell shows it
    std::vector<std::string> arguments;  ///< all that are refused for this cause
    std::string formula;                 ///< of the first of them
    std::string reason;
};

/// \throws std::logic_error where a formula of the entry is said to be refused, and is not.
[[nodiscard]] std::vector<ShownRefusal> refusals_of(const Function& function, const ExampleCall& call);

}  // namespace undercroft::addin
