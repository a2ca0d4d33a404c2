#include "tests/bench/plain.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace undercroft::bench::plain {

namespace {

constexpr double gravity = 9.80665;
constexpr double foot = 0.3048;
constexpr double inch = 0.0254;
constexpr double tolerance = 1e-9;

[[noreturn, gnu::cold, gnu::noinline]] void refuse(const char* name) {
    throw std::domain_error(name);
}
void must(bool holds, const char* name) {
    if (!holds) refuse(name);
}
void positive(const char* name, double value) {
    must(value > 0 && std::isfinite(value), name);
}
void not_negative(const char* name, double value) {
    must(value >= 0 && std::isfinite(value), name);
}
bool is_above(double a, double b) {
    return a - b > 1e-14 * std::max(std::abs(a), std::abs(b));
}
double whole(const char* name, double value) {
    must(std::isfinite(value) &&
             std::abs(value - std::round(value)) <= tolerance * std::max(1.0, std::abs(value)) &&
             value >= 0 && value <= 1e9,
         name);
    return std::round(value);
}

}  // namespace

double pit_volume(double base_length, double base_width, double depth, double batter) {
    positive("base length", base_length);
    positive("base width", base_width);
    not_negative("batter", batter);
    not_negative("depth", depth);
    const double run = batter * depth;
    return depth * (base_length * base_width + (base_length + base_width) * run + 4.0 / 3.0 * run * run);
}

double pit_area(double base_length, double base_width, double height, double batter) {
    positive("base length", base_length);
    positive("base width", base_width);
    not_negative("batter", batter);
    not_negative("height", height);
    const double run = batter * height;
    return (base_length + 2.0 * run) * (base_width + 2.0 * run);
}

double pit_slant(double depth, double batter) {
    not_negative("depth", depth);
    not_negative("batter", batter);
    const double run = batter * depth;
    return std::sqrt(depth * depth + run * run);
}

double pit_walls(double base_length, double base_width, double depth, double batter) {
    positive("base length", base_length);
    positive("base width", base_width);
    not_negative("batter", batter);
    not_negative("depth", depth);
    const double run = batter * depth;
    return pit_slant(depth, batter) * (2.0 * base_length + 2.0 * base_width + 4.0 * run);
}

double liner_mass(double area, double thickness, double density) {
    not_negative("area", area);
    positive("thickness", thickness);
    positive("density", density);
    return area * thickness * density;
}

double orifice_flow(double diameter, double head, double coefficient) {
    positive("diameter", diameter);
    not_negative("head", head);
    positive("coefficient", coefficient);
    must(coefficient >= 0 && coefficient <= 1, "coefficient");
    return coefficient * (std::numbers::pi / 4 * diameter * diameter) * std::sqrt(2.0 * gravity * head);
}

double weir_flow(double crest_length, double head, double coefficient, double end_contractions) {
    positive("crest length", crest_length);
    not_negative("head", head);
    positive("coefficient", coefficient);
    const double n = whole("end contractions", end_contractions);
    must(n * head <= 6.0 * crest_length, "head");
    return coefficient * (crest_length - 0.1 * n * head) * head * std::sqrt(head);
}

double notch_flow(double angle, double head, double coefficient) {
    positive("angle", angle);
    must(angle < 180 * std::numbers::pi / 180, "angle");
    not_negative("head", head);
    positive("coefficient", coefficient);
    return coefficient * std::tan(angle / 2.0) * head * head * std::sqrt(head);
}

double runoff_depth(double curve_number, double rain_depth, double abstraction_ratio) {
    must(curve_number >= 1 && curve_number <= 100, "curve number");
    not_negative("rain depth", rain_depth);
    must(abstraction_ratio >= 0 && abstraction_ratio <= 1, "abstraction ratio");
    const double retention = (1000.0 / curve_number - 10.0) * inch;
    const double effective = rain_depth - abstraction_ratio * retention;
    if (effective <= 0) return 0;
    return effective * effective / (effective + retention);
}

double kirpich_time(double length, double slope) {
    positive("length", length);
    positive("slope", slope);
    const double constant = 0.0078 * 60 / std::pow(foot, 0.77);
    return constant * std::pow(length, 0.77) * std::pow(slope, -0.385);
}

namespace {

double flow_at(double theta, double diameter, double slope, double roughness) {
    const double area = diameter * diameter / 8.0 * (theta - std::sin(theta));
    const double wetted = diameter / 2.0 * theta;
    return 1 / roughness * (area * std::pow(area / wetted, 2.0 / 3.0)) * std::sqrt(slope);
}

}  // namespace

double pipe_flow(double diameter, double slope, double roughness, std::optional<double> depth) {
    positive("diameter", diameter);
    positive("slope", slope);
    positive("roughness", roughness);
    if (!depth) return flow_at(2 * std::numbers::pi, diameter, slope, roughness);
    not_negative("depth", *depth);
    must(*depth <= diameter * (1 + tolerance), "depth");
    if (*depth == 0) return 0;
    const double filled = *depth / diameter;
    const double theta = filled >= 1 - 1e-14 ? 2 * std::numbers::pi : 4 * std::asin(std::sqrt(filled));
    return flow_at(theta, diameter, slope, roughness);
}

double stress_under_point(double load, double depth, double offset) {
    positive("load", load);
    positive("depth", depth);
    not_negative("offset", offset);
    const double ratio = offset / depth;
    return 3.0 * load / (2.0 * std::numbers::pi * depth * depth) * std::pow(1 + ratio * ratio, -2.5);
}

double sheet_flow_time(double roughness, double length, double rain_depth, double slope) {
    positive("roughness", roughness);
    positive("length", length);
    positive("rain depth", rain_depth);
    positive("slope", slope);
    must(length <= 300.0 * foot * (1 + tolerance), "length");
    const double constant = 0.007 * 3600 * std::sqrt(inch) / std::pow(foot, 0.8);
    return constant * std::pow(roughness * length, 0.8) / (std::sqrt(rain_depth) * std::pow(slope, 0.4));
}

double stress_under_circle(double pressure, double radius, double depth) {
    positive("pressure", pressure);
    positive("radius", radius);
    not_negative("depth", depth);
    const double ratio = radius / depth;
    return pressure * -std::expm1(-1.5 * std::log1p(ratio * ratio));
}

double corner_influence(double x, double y, double depth) {
    const double sign = (x < 0) != (y < 0) ? -1 : 1;
    const double a = std::abs(x);
    const double b = std::abs(y);
    const double z2 = depth * depth;
    const double distance = std::sqrt(a * a + b * b + z2);
    const double angle = std::atan2(a * b, depth * distance);
    const double beside = a * b * depth / distance * (1.0 / (a * a + z2) + 1.0 / (b * b + z2));
    return sign * (angle + beside) / (2 * std::numbers::pi);
}

double stress_under_rectangle(double pressure, double length, double width, double depth, bool corner) {
    positive("pressure", pressure);
    positive("length", length);
    positive("width", width);
    not_negative("depth", depth);
    if (corner) return pressure * corner_influence(length, width, depth);
    return pressure * 4.0 * corner_influence(length / 2.0, width / 2.0, depth);
}

double earth_thrust(double coefficient, double unit_weight, double height, double surcharge,
                    double water_depth) {
    constexpr double water_unit_weight = 1000 * gravity;
    positive("coefficient", coefficient);
    positive("unit weight", unit_weight);
    positive("height", height);
    not_negative("surcharge", surcharge);
    not_negative("water depth", water_depth);
    must(water_depth <= height * (1 + tolerance), "water depth");
    must(water_depth == 0 || unit_weight > water_unit_weight, "unit weight");
    const double water = 0.5 * water_unit_weight * water_depth * water_depth;
    return coefficient * (0.5 * unit_weight * height * height + surcharge * height - water) + water;
}

double uplift_factor(const std::vector<Weight>& weights, double submerged_volume, double water_unit_weight) {
    double total = 0;
    for (const auto& [area, thickness, unit_weight] : weights) {
        positive("plan area", area);
        not_negative("thickness", thickness);
        positive("unit weight", unit_weight);
        total += area * thickness * unit_weight;
    }
    positive("submerged volume", submerged_volume);
    positive("water unit weight", water_unit_weight);
    return total / (water_unit_weight * submerged_volume);
}

double pit_sections(const std::vector<Section>& sections) {
    must(sections.size() >= 2, "sections");
    for (std::size_t i = 0; i < sections.size(); ++i) {
        not_negative("area", sections[i].area);
        must(i == 0 || is_above(sections[i].chainage, sections[i - 1].chainage), "chainages");
    }
    double total = 0;
    for (std::size_t i = 1; i < sections.size(); ++i) {
        const auto& [chainage_1, area_1] = sections[i - 1];
        const auto& [chainage_2, area_2] = sections[i];
        total += (chainage_2 - chainage_1) * (area_1 + area_2) / 2.0;
    }
    return total;
}

std::vector<RoutedRow> route_pool(const std::vector<HydrographRow>& inflow, const std::vector<double>& depth,
                                  const std::vector<double>& stored, const std::vector<double>& outflow,
                                  double step, std::size_t steps) {
    std::vector<RoutedRow> rows;
    rows.reserve(steps + 1);
    std::vector<double> indication(depth.size());
    for (std::size_t i = 0; i < depth.size(); ++i) indication[i] = 2 * stored[i] / step + outflow[i];
    RoutedRow now{inflow.front().time, inflow.front().flow, depth.front(), stored.front(), outflow.front()};
    rows.push_back(now);
    std::size_t row = 0;    // of the inflow
    std::size_t place = 0;  // in the pool
    for (std::size_t n = 1; n <= steps; ++n) {
        const double time = inflow.front().time + static_cast<double>(n) * step;
        while (row + 2 < inflow.size() && inflow[row + 1].time < time) ++row;
        const double on =
            std::min(1.0, (time - inflow[row].time) / (inflow[row + 1].time - inflow[row].time));
        const double flow = inflow[row].flow + on * (inflow[row + 1].flow - inflow[row].flow);
        const double wanted = now.inflow + flow + 2 * now.stored / step - now.outflow;
        while (place + 2 < depth.size() && wanted > indication[place + 1]) ++place;
        while (place > 0 && wanted < indication[place]) --place;
        const double way = (wanted - indication[place]) / (indication[place + 1] - indication[place]);
        now = {time, flow, depth[place] + way * (depth[place + 1] - depth[place]),
               stored[place] + way * (stored[place + 1] - stored[place]),
               outflow[place] + way * (outflow[place + 1] - outflow[place])};
        rows.push_back(now);
    }
    return rows;
}

}  // namespace undercroft::bench::plain
