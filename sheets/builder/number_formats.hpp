/// \file number_formats.hpp
/// How numbers are shown: sensible digits, counts, shares, and verdicts in words.
#pragma once

#include "sheets/builder/xml.hpp"

namespace undercroft::sheets {

/// Adds the number formats to `office:styles`.
void add_number_formats(xml_node styles);

}  // namespace undercroft::sheets
