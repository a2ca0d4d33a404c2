/// \file accepted_soils.hpp
/// Whether a soil is of a group that the contract accepts as fill.
#pragma once

#include <string>

namespace undercroft::calc {

/// Whether a group of AASHTO M 145 is in a list of accepted ones, such as "A-1 A-2-4 A-2-5 A-3": parted by
/// blanks, commas or semicolons; stand for all of their subgroups. The list is the
/// contract's or the supplier's: granular groups without plastic fines are common as initial backfill (common
/// practice). \throws Refused(value) for a group, or a name in the list, that is none; Refused(domain) for an
/// empty list.
[[nodiscard]] bool soil_accepted(const std::string& group, const std::string& accepted);

}  // namespace undercroft::calc
