/// \file reading.hpp
/// How an argument was understood, for the checker.
#pragma once

#include <string>
#include <variant>

namespace undercroft::addin {

/// "0.305" and "m"
struct Reading {
    std::variant<double, std::string> value;
    std::string unit;
};

}  // namespace undercroft::addin
