/// \file styles.hpp
/// The look of a calc sheet: the cell styles, by name. Colour carries a meaning that the text carries too.
#pragma once

#include <pugixml.hpp>

namespace undercroft::sheets {

/// Adds the number formats and cell styles to `office:styles`.
void add_styles(pugi::xml_node styles);

/// Adds the page styles `Upright` and `Wide` to automatic and master styles.
void add_page_styles(pugi::xml_node automatic, pugi::xml_node master, bool letter);

}  // namespace undercroft::sheets
