/// \file parted.hpp
/// The parts of a line of the tests' own lists.
#pragma once

#include <string>
#include <vector>

#include "units/text.hpp"

namespace undercroft::tests {

/// The texts between `by`, without spaces around them.
inline std::vector<std::string> parted(const std::string& text, const std::string& by) {
    std::vector<std::string> parts;
    std::size_t at = 0;
    for (std::size_t next = 0; (next = text.find(by, at)) != std::string::npos; at = next + by.size())
        parts.push_back(trimmed(text.substr(at, next - at)));
    parts.push_back(trimmed(text.substr(at)));
    return parts;
}

}  // namespace undercroft::tests
