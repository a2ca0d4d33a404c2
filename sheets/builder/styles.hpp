/// \file styles.hpp
/// The look of a calc sheet: the cell styles, by name. Colour carries a meaning that the text carries too.
#pragma once

#include "sheets/builder/xml.hpp"

namespace undercroft::sheets {

/// Adds the number formats and cell styles to `office:styles`.
void add_styles(xml_node styles);

}  // namespace undercroft::sheets
