/// \file page_styles.hpp
/// The pages of a calc sheet: paper, margins, header and footer.
#pragma once

#include "sheets/builder/xml.hpp"

namespace undercroft::sheets {

/// Adds the page styles `Upright` and `Wide` to automatic and master styles.
void add_page_styles(xml_node automatic, xml_node master, bool letter);

}  // namespace undercroft::sheets
