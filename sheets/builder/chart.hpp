/// \file chart.hpp
/// A chart of the sheet's numbers as an embedded OpenDocument chart.
#pragma once

#include <pugixml.hpp>

#include "sheets/builder/grid.hpp"

namespace undercroft::sheets {

/// Adds the chart's document below `draw:object`.
void add_chart_document(pugi::xml_node object, const Chart& chart);

}  // namespace undercroft::sheets
