/// \file signed_state.hpp
/// What a workbook held when it was signed, as far as the Audit sheet keeps it: enough to tell later which
/// input is another one now, and which line of the map still is what somebody read.
#pragma once

#include <map>
#include <set>
#include <string>

namespace undercroft::audit {

struct SignedState {
    std::map<std::string, std::string> inputs;  ///< value and unit by key: `Site|Ground level|1`
    std::set<std::string> lines;                ///< marks of the lines of the map
    [[nodiscard]] bool is_empty() const { return inputs.empty() && lines.empty(); }
};

}  // namespace undercroft::audit
