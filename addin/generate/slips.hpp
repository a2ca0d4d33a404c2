/// \file slips.hpp
/// What a person gives an argument that it does not take.
#pragma once

#include <string>
#include <vector>

#include "addin/generate/example_call.hpp"

namespace undercroft::addin {

/// What stands in the place of an argument, as the text of a formula: another dimension, a unit that there is
/// not, numbers without a unit that are unusual, quantities beyond what is possible and at its ends, another
/// word, a table that is turned round, too wide, cut or none.
[[nodiscard]] std::vector<std::string> slips_of(const Parameter& parameter, const WrittenRows& table);

/// A call in which one argument has no unit beside another one in feet; empty where no two can be.
[[nodiscard]] std::string mixed_call(const Function& function, const ExampleCall& call);

}  // namespace undercroft::addin
