/// \file without_links.hpp
/// A flat workbook without what it shows of other files.
#pragma once

#include <filesystem>

namespace undercroft::sheets {

/// Takes every link out of a flat workbook but those that wait for a click: the office draws a linked picture
/// of this machine into a PDF, whatever its settings say. \throws std::runtime_error when the file cannot be
/// read or written
void take_links_out(const std::filesystem::path& flat);

}  // namespace undercroft::sheets
