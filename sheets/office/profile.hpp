/// \file profile.hpp
/// The settings of the office's private profile.
#pragma once

#include <string>

namespace undercroft::sheets {

/// No link of a file is followed, no macro runs, and numbers are English, whatever the machine is set to.
[[nodiscard]] std::string profile_settings();

}  // namespace undercroft::sheets
