/// \file pages.hpp
/// Where the printed pages of a sheet begin.
#pragma once

#include "sheets/builder/layout.hpp"

namespace undercroft::sheets {

/// What a page has for cells, in cm: the paper without its margins and without the bands above and below.
struct Printable {
    double width_cm;
    double height_cm;
};

[[nodiscard]] Printable printable(bool letter, bool wide);

/// Writes into the grid, once its rows have their heights, the rows that begin a page: as few pages as hold
/// the sheet, then as few as can be that are less than a third full, then as few as can be that begin within
/// a section or a list, and the first ones fullest. No table of a dozen rows, chart or picture is parted, and
/// no title stands alone at the foot of a page.
void begin_pages(SheetGrid& grid, const Sheet& sheet, const Layout& layout, bool letter);

}  // namespace undercroft::sheets
