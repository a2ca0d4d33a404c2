/// \file sketches.hpp
/// The sketches of the reference, drawn as SVG that reads in light and in dark.
#pragma once

#include <string>
#include <vector>

#include "addin/catalogue/guidance.hpp"

namespace undercroft::addin {

/// Every sketch there is, without `none`.
[[nodiscard]] const std::vector<Sketch>& all_sketches();

/// `bed_section`: its file's name
[[nodiscard]] std::string sketch_name(Sketch sketch);
/// What it shows, for who cannot see it.
[[nodiscard]] std::string sketch_title(Sketch sketch);
/// The drawing inside a page, which brings `sketch_style()`.
[[nodiscard]] std::string sketch_svg(Sketch sketch);
/// The drawing as a file of its own.
[[nodiscard]] std::string sketch_file(Sketch sketch);
[[nodiscard]] std::string sketch_style();

}  // namespace undercroft::addin
