#include "calc/water/contracted_weir.hpp"

#include <algorithm>
#include <cmath>

#include "calc/customary.hpp"
#include "calc/interpolate.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

const std::vector<double> width_ratios = {0.2, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0};  // L/B

/// Both coefficients of Ce in ft^0.5/s, and kb in mm, by L/B.
struct KindsvaterCarter {
    Curve<double, double> c1 = {width_ratios,
                                {-0.0087, 0.0317, 0.0612, 0.0995, 0.1602, 0.2376, 0.3447, 0.4000}};
    Curve<double, double> c2 = {width_ratios, {3.152, 3.164, 3.173, 3.178, 3.182, 3.189, 3.205, 3.220}};
    Curve<double, double> kb = {width_ratios, {2.4, 2.7, 3.1, 3.6, 4.1, 4.2, 3.7, -0.9}};
};

const KindsvaterCarter& by_width_ratio() {
    static const KindsvaterCarter table;
    return table;
}

bool below(Length value, Length limit) {
    return !is_at_least(value, limit);
}

}  // namespace

Flow contracted_weir_flow(Length crest_length, Length head, Length channel_width, Length crest_height) {
    require(is_finite(crest_length) && !below(crest_length, least_crest_length),
            shown("crest length", crest_length), " must be at least ", amount(least_crest_length));
    require(is_finite(channel_width) && !below(channel_width, crest_length),
            shown("channel width", channel_width), " must be at least the crest length (",
            amount(crest_length), ")");
    require(is_finite(crest_height) && !below(crest_height, least_crest_height),
            shown("crest height", crest_height), " must be at least ", amount(least_crest_height));
    require_not_negative("head", head);
    if (head == zero) return zero;
    require(!below(head, least_weir_head), shown("head", head), " must be at least ", amount(least_weir_head),
            ": below, the water clings to the weir");
    require(!below(greatest_head_per_crest_height * crest_height, head), shown("head", head),
            " must be at most twice the crest height (",
            amount(greatest_head_per_crest_height * crest_height), ")");
    const double ratio = std::clamp<double>(crest_length / channel_width, 0.2, 1.0);
    const KindsvaterCarter& table = by_width_ratio();
    const WeirCoefficient coefficient =
        (linear(table.c1, ratio) * static_cast<double>(head / crest_height) + linear(table.c2, ratio)) *
        (bu::sqrt(foot) / second);
    const Length effective_head = head + 0.003 * foot;
    return coefficient * (crest_length + linear(table.kb, ratio) * millimetre) * effective_head *
           sqrt(effective_head);
}

Flow drowned_weir_flow(Flow free_flow, Length head, Length tailwater_head, Share exponent) {
    require_not_negative("free flow", free_flow);
    require_positive("head", head);
    require(tailwater_head <= head, shown("tailwater head", tailwater_head), " must be at most the head (",
            amount(head), "): above, water would flow back");
    require(exponent >= share(1) && exponent <= share(3), shown("exponent", exponent),
            " must be from 1 to 3: 1.5 of a rectangular weir, 2.5 of a V-notch");
    if (tailwater_head <= zero) return free_flow;
    return free_flow * std::pow(1 - std::pow(tailwater_head / head, number(exponent)), 0.385);
}

}  // namespace undercroft::calc
