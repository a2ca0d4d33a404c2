#include "calc/water/graphical_peak.hpp"

#include <algorithm>
#include <cmath>
#include <span>

#include "calc/customary.hpp"
#include "calc/interpolate.hpp"
#include "calc/water/runoff.hpp"

namespace undercroft::calc {

namespace {

/// A row of Table F-1.
struct PeakRow {
    double ratio;  ///< Ia/P
    double c0, c1, c2;
};
constexpr PeakRow rows_of_type_i[] = {
    {0.10, 2.30550, -0.51429, -0.11750}, {0.20, 2.23537, -0.50387, -0.08929},
    {0.25, 2.18219, -0.48488, -0.06589}, {0.30, 2.10624, -0.45695, -0.02835},
    {0.35, 2.00303, -0.40769, 0.01983},  {0.40, 1.87733, -0.32274, 0.05754},
    {0.45, 1.76312, -0.15644, 0.00453},  {0.50, 1.67889, -0.06930, 0.0}};
constexpr PeakRow rows_of_type_ia[] = {{0.10, 2.03250, -0.31583, -0.13748},
                                       {0.20, 1.91978, -0.28215, -0.07020},
                                       {0.25, 1.83842, -0.25543, -0.02597},
                                       {0.30, 1.72657, -0.19826, 0.02633},
                                       {0.50, 1.63417, -0.09100, 0.0}};
constexpr PeakRow rows_of_type_ii[] = {
    {0.10, 2.55323, -0.61512, -0.16403}, {0.30, 2.46532, -0.62257, -0.11657},
    {0.35, 2.41896, -0.61594, -0.08820}, {0.40, 2.36409, -0.59857, -0.05621},
    {0.45, 2.29238, -0.57005, -0.02281}, {0.50, 2.20282, -0.51599, -0.01259}};
constexpr PeakRow rows_of_type_iii[] = {
    {0.10, 2.47317, -0.51848, -0.17083}, {0.30, 2.39628, -0.51202, -0.13245},
    {0.35, 2.35477, -0.49735, -0.11985}, {0.40, 2.30726, -0.46541, -0.11094},
    {0.45, 2.24876, -0.41314, -0.11508}, {0.50, 2.17772, -0.36803, -0.09525}};

std::span<const PeakRow> rows_of(RainType type) {
    switch (type) {
        case RainType::type_i:
            return rows_of_type_i;
        case RainType::type_ia:
            return rows_of_type_ia;
        case RainType::type_ii:
            return rows_of_type_ii;
        case RainType::type_iii:
            return rows_of_type_iii;
    }
    refuse_value("unknown type of rain");
}

const Area square_mile = 5280.0 * foot * (5280.0 * foot);

/// ft3/s per mi2 and in.
double unit_peak(RainType type, double ratio, double hours) {
    Curve<double, double> by_ratio;
    for (const PeakRow& row : rows_of(type)) {
        const double log = std::log10(hours);
        by_ratio.add(row.ratio, std::pow(10, row.c0 + row.c1 * log + row.c2 * log * log));
    }
    return linear(by_ratio, std::clamp(ratio, by_ratio.x.front(), by_ratio.x.back()));
}

double pond_factor(Share ponds) {
    require(ponds >= share(0) && is_at_most(ponds, share(0.05)), shown("share of ponds", ponds),
            " must be from 0 % to 5 %");
    static const Curve<double, double> table = {{0, 0.002, 0.01, 0.03, 0.05}, {1.00, 0.97, 0.87, 0.75, 0.72}};
    return linear(table, number(ponds));
}

void require_curve_number(Share curve_number, double least, double most) {
    require(curve_number >= share(least) && curve_number <= share(most), shown("curve number", curve_number),
            " must be from ", amount(share(least)), " to ", amount(share(most)));
}

}  // namespace

Flow graphical_peak(Area area, Length rain_depth, Share curve_number, Time time_of_concentration,
                    RainType type, Share ponds) {
    require_positive("area", area);
    require_positive("rain depth", rain_depth);
    require_curve_number(curve_number, 40, 100);
    const double hours = time_of_concentration / hour;
    require(is_at_least(hours, 0.1) && is_at_most(hours, 10.0),
            shown("time of concentration", time_of_concentration), " must be from 0.1 h (",
            amount(0.1 * hour), ") to 10 h (", amount(10.0 * hour), ")");
    const double reduced = pond_factor(ponds);
    const Length runoff = runoff_depth(curve_number, rain_depth, share(initial_abstraction_ratio));
    const Length abstraction = initial_abstraction_ratio * (1000.0 / number(curve_number) - 10.0) * inch;
    const double peak = unit_peak(type, abstraction / rain_depth, hours);
    const auto unit = foot * foot * foot / second / (square_mile * inch);
    return peak * reduced * unit * area * runoff;
}

Share composite_curve_number(const Table<Area, Share>& surfaces) {
    Area total = zero;
    Area weighted = zero;
    for (const auto& [area, curve_number] : surfaces) {
        require_not_negative("area", area);
        require_curve_number(curve_number, 1, 100);
        total += area;
        weighted += number(curve_number) * area;
    }
    require_positive("total of the areas", total);
    return weighted / total;
}

Share urban_curve_number(Share pervious_curve_number, Share impervious, Share unconnected) {
    require_curve_number(pervious_curve_number, 1, 98);
    require_share("impervious share", impervious);
    require_share("unconnected ratio", unconnected);
    require(unconnected == share(0) || is_at_most(impervious, share(0.3)),
            shown("impervious share", impervious), " must be at most 30 % where some of it is unconnected");
    const double pervious = number(pervious_curve_number);
    return share(pervious + number(impervious) * (98 - pervious) * (1 - 0.5 * number(unconnected)));
}

}  // namespace undercroft::calc
