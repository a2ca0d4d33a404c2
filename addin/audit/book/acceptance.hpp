/// \file acceptance.hpp
/// A finding that somebody has accepted in the sheet.
#pragma once

#include <string>

namespace undercroft::audit {

struct Acceptance {
    std::string mark;  ///< of the finding with all that it rests on; another one is another finding
    std::string reason;
    std::string name;
    std::string date;  ///< as typed

    /// Without a reason and a name nothing is accepted.
    [[nodiscard]] bool is_whole() const { return !mark.empty() && !reason.empty() && !name.empty(); }
};

}  // namespace undercroft::audit
