#include "addin/generate/drawing.hpp"

#include <cmath>

#include "addin/generate/writers.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

std::string number(double value) {
    return exact_text(std::round(value * 10) / 10);
}

std::string at(const char* x, const char* y, Point point) {
    return std::string(" ") + x + "=\"" + number(point.first) + "\" " + y + "=\"" + number(point.second) +
           "\"";
}

const char* class_of(Drawing::Fill fill) {
    switch (fill) {
        case Drawing::Fill::none:
            return "ink";
        case Drawing::Fill::ground:
            return "ink ground";
        case Drawing::Fill::stone:
            return "ink stone";
        case Drawing::Fill::water:
            return "ink water";
        case Drawing::Fill::chamber:
            return "ink chamber";
        case Drawing::Fill::load:
            return "ink load";
    }
    return "ink";
}

/// `l_t`: the letters behind the underscore lowered.
std::string lowered(const std::string& text) {
    std::string made;
    bool low = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == '_') {
            made += "<tspan dy=\"4\" font-size=\"10\">";
            low = true;
        } else if (low && text[i] == ' ') {
            made += "</tspan><tspan dy=\"-4\"> </tspan>";
            low = false;
        } else {
            made += xml_escaped(std::string(1, text[i]));
        }
    }
    return made + (low ? "</tspan>" : "");
}

}  // namespace

Drawing& Drawing::line(Point from, Point to) {
    content_ += "<line class=\"ink\"" + at("x1", "y1", from) + at("x2", "y2", to) + "/>\n";
    return *this;
}

Drawing& Drawing::dashed(Point from, Point to) {
    content_ += "<line class=\"ink dashed\"" + at("x1", "y1", from) + at("x2", "y2", to) + "/>\n";
    return *this;
}

Drawing& Drawing::outline(const std::vector<Point>& points, Fill fill) {
    content_ += std::string("<polygon class=\"") + class_of(fill) + "\" points=\"";
    for (std::size_t i = 0; i < points.size(); ++i)
        content_ += (i == 0 ? "" : " ") + number(points[i].first) + "," + number(points[i].second);
    content_ += "\"/>\n";
    return *this;
}

Drawing& Drawing::box(double left, double top, double right, double bottom, Fill fill) {
    return outline({{left, top}, {right, top}, {right, bottom}, {left, bottom}}, fill);
}

Drawing& Drawing::arch(double middle, double y, double span, double rise, Fill fill) {
    content_ += std::string("<path class=\"") + class_of(fill) + "\" d=\"M" + number(middle - span / 2) +
                " " + number(y) + " A" + number(span / 2) + " " + number(rise) + " 0 0 1 " +
                number(middle + span / 2) + " " + number(y) + " Z\"/>\n";
    return *this;
}

Drawing& Drawing::circle(Point middle, double radius, Fill fill) {
    content_ += std::string("<circle class=\"") + class_of(fill) + "\"" + at("cx", "cy", middle) + " r=\"" +
                number(radius) + "\"/>\n";
    return *this;
}

Drawing& Drawing::water_level(double from, double to, double y) {
    const double x = from + 14;
    content_ += "<line class=\"level\"" + at("x1", "y1", {from, y}) + at("x2", "y2", {to, y}) + "/>\n";
    content_ += "<path class=\"level\" d=\"M" + number(x - 5) + " " + number(y - 8) + " h10 l-5 8 z\"/>\n";
    return *this;
}

Drawing& Drawing::arrow(Point from, Point to) {
    const double angle = std::atan2(to.second - from.second, to.first - from.first);
    constexpr double head = 7;
    constexpr double half = 0.42;
    const auto barb = [&](double turn) {
        return Point{to.first - head * std::cos(angle + turn), to.second - head * std::sin(angle + turn)};
    };
    content_ += "<line class=\"measure\"" + at("x1", "y1", from) + at("x2", "y2", to) + "/>\n";
    const Point left = barb(half);
    const Point right = barb(-half);
    content_ += "<polygon class=\"tip\" points=\"" + number(to.first) + "," + number(to.second) + " " +
                number(left.first) + "," + number(left.second) + " " + number(right.first) + "," +
                number(right.second) + "\"/>\n";
    return *this;
}

Drawing& Drawing::dimension(Point from, Point to, const std::string& name) {
    const Point middle{(from.first + to.first) / 2, (from.second + to.second) / 2};
    const bool level = std::abs(to.first - from.first) > std::abs(to.second - from.second);
    const double length = std::hypot(to.first - from.first, to.second - from.second);
    if (length < 18) {  // too short for two arrows inside
        const double x = (to.first - from.first) / length * 12;
        const double y = (to.second - from.second) / length * 12;
        arrow({from.first - x, from.second - y}, from);
        arrow({to.first + x, to.second + y}, to);
    } else {
        arrow(middle, from);
        arrow(middle, to);
    }
    if (level) return label({middle.first, middle.second - 6}, name);
    return label({middle.first + 6, middle.second + 4}, name, "start");
}

Drawing& Drawing::label(Point point, const std::string& text, const char* anchor) {
    content_ +=
        "<text" + at("x", "y", point) + " text-anchor=\"" + anchor + "\">" + lowered(text) + "</text>\n";
    return *this;
}

}  // namespace undercroft::addin
