/// \file plain.hpp
/// The formulas of calc/ once more, on plain doubles in SI units, with the same checks: what the typed ones
/// are measured against.
#pragma once

#include <optional>
#include <vector>

namespace undercroft::bench::plain {

double pit_volume(double base_length, double base_width, double depth, double batter);
double pit_area(double base_length, double base_width, double height, double batter);
double pit_slant(double depth, double batter);
double pit_walls(double base_length, double base_width, double depth, double batter);
double liner_mass(double area, double thickness, double density);
double orifice_flow(double diameter, double head, double coefficient);
double weir_flow(double crest_length, double head, double coefficient, double end_contractions);
double notch_flow(double angle, double head, double coefficient);
double runoff_depth(double curve_number, double rain_depth, double abstraction_ratio);
double kirpich_time(double length, double slope);
double sheet_flow_time(double roughness, double length, double rain_depth, double slope);
double pipe_flow(double diameter, double slope, double roughness, std::optional<double> depth);
double stress_under_point(double load, double depth, double offset);
double stress_under_circle(double pressure, double radius, double depth);
double corner_influence(double x, double y, double depth);
double stress_under_rectangle(double pressure, double length, double width, double depth, bool corner);
double earth_thrust(double coefficient, double unit_weight, double height, double surcharge,
                    double water_depth);

struct Weight {
    double area;
    double thickness;
    double unit_weight;
};
double uplift_factor(const std::vector<Weight>& weights, double submerged_volume, double water_unit_weight);

struct Section {
    double chainage;
    double area;
};
double pit_sections(const std::vector<Section>& sections);

struct RoutedRow {
    double time;
    double inflow;
    double depth;
    double stored;
    double outflow;
};
struct HydrographRow {
    double time;
    double flow;
};
/// Level-pool routing by equal steps, as anybody would write it who knows that his pool empties slowly and
/// never spills: no check of what is given, no halving of steps.
std::vector<RoutedRow> route_pool(const std::vector<HydrographRow>& inflow, const std::vector<double>& depth,
                                  const std::vector<double>& stored, const std::vector<double>& outflow,
                                  double step, std::size_t steps);

}  // namespace undercroft::bench::plain
