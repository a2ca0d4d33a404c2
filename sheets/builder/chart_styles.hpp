/// \file chart_styles.hpp
/// The look of charts: lines told apart by colour and by dash, axes, frames.
#pragma once

#include "sheets/builder/grid.hpp"
#include "sheets/builder/xml.hpp"

namespace undercroft::sheets {

/// Adds the dashes of lines to the `office:styles` of a chart.
void add_dashes(xml_node styles);

/// Adds the styles of a chart to its `office:automatic-styles`, one for each of its series.
/// \throws std::runtime_error for a look that is not known.
void add_chart_styles(xml_node styles, const Chart& chart);

}  // namespace undercroft::sheets
