/// \file format_remarks.hpp
/// Arguments that are shown otherwise than they are read: percent beside %, times, units written by a number
/// format or a label.
#pragma once

#include <string>
#include <vector>

#include "addin/uno/sheet_values.hpp"

namespace undercroft::addin {

/// One sentence, without its full stop, for each argument of a call that is a cell or a pair of cells.
[[nodiscard]] std::vector<std::string> format_remarks(const SheetValues& sheet, const Node& call,
                                                      const Function& function);

}  // namespace undercroft::addin
