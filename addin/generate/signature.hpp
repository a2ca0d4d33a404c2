/// \file signature.hpp
/// How functions and arguments are written in the registration and the references.
#pragma once

#include <string>

#include "addin/catalogue/function.hpp"

namespace undercroft::addin {

/// The argument's name with its default unit: `depth [m]`.
[[nodiscard]] std::string label(const Parameter& parameter);
/// What is said of the argument, whether it may be left out, and what is usual of a bare number.
[[nodiscard]] std::string argument_help(const Parameter& parameter);
/// `UC.LIFTS(thickness [m]; greatest lift [m])`
[[nodiscard]] std::string signature(const Function& function);

}  // namespace undercroft::addin
