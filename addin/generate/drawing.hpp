/// \file drawing.hpp
/// A plain technical sketch: outlines, hatches of stone and water, dimension lines with their names.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace undercroft::addin {

using Point = std::pair<double, double>;  ///< x to the right, y down

class Drawing {
public:
    /// What an area is made of.
    enum class Fill { none, ground, stone, water, chamber, load };

    Drawing& line(Point from, Point to);
    Drawing& dashed(Point from, Point to);
    Drawing& outline(const std::vector<Point>& points, Fill fill);
    Drawing& box(double left, double top, double right, double bottom, Fill fill);
    /// Half an ellipse that stands on `y`.
    Drawing& arch(double middle, double y, double span, double rise, Fill fill = Fill::chamber);
    Drawing& circle(Point middle, double radius, Fill fill);
    /// The level of water, with its mark.
    Drawing& water_level(double from, double to, double y);
    Drawing& arrow(Point from, Point to);
    /// A distance between two points, its name in the middle: above a level one, to the right of an upright
    /// one.
    Drawing& dimension(Point from, Point to, const std::string& name);
    Drawing& label(Point at, const std::string& text, const char* anchor = "middle");

    [[nodiscard]] const std::string& content() const { return content_; }

private:
    std::string content_;
};

}  // namespace undercroft::addin
