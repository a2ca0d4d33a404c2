/// \file chart.hpp
/// A chart of the sheet's numbers as an embedded OpenDocument chart.
#pragma once

#include "sheets/builder/grid.hpp"
#include "sheets/builder/xml.hpp"

namespace undercroft::sheets {

/// Adds the chart's document below `draw:object`.
void add_chart_document(xml_node object, const Chart& chart);

}  // namespace undercroft::sheets
