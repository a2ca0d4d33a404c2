#include "calc/water/outlet.hpp"

#include <boost/math/quadrature/gauss.hpp>
#include <cmath>
#include <numbers>

#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

Area circle(Length diameter) {
    return std::numbers::pi / 4 * diameter * diameter;
}

/// Flow of a part-full orifice as a share of its flow at the crown; `filled` = h/D from 0 to 1.
///
/// With z = h sin^2(a) the strips' integral is 4 h^2 sqrt(D) I, I = integral from 0 to pi/2 of
/// sin^2(a) cos^2(a) sqrt(1 - h/D sin^2(a)) da, and I = 2/15 at the crown.
double part_full_share(double filled) {
    const auto strip = [filled](double a) {
        const double s = std::sin(a) * std::sin(a);
        return s * (1 - s) * std::sqrt(1 - filled * s);
    };
    const double integral =
        boost::math::quadrature::gauss<double, 30>::integrate(strip, 0.0, std::numbers::pi / 2);
    return filled * filled * integral * 15 / 2;
}

}  // namespace

Flow orifice_flow(Length diameter, Length head, Share coefficient) {
    require_positive("diameter", diameter);
    require_not_negative("head", head);
    require_coefficient(coefficient);
    require(!is_above(diameter, 2.0 * head), shown("head", head), " must be at least half of the diameter (",
            amount(diameter / 2.0), "): below, the orifice is part full, see UC.OUTLET.RATING");
    return coefficient * circle(diameter) * sqrt(2.0 * standard_gravity * head);
}

Length orifice_diameter(Flow flow, Length head, Share coefficient) {
    require_positive("flow", flow);
    require_positive("head", head);
    require_coefficient(coefficient);
    const Area opening = flow / (coefficient * sqrt(2.0 * standard_gravity * head));
    const Length diameter = sqrt(opening * 4.0 / std::numbers::pi);
    require(!is_above(diameter, 2.0 * head), shown("head", head),
            " must be at least half of the diameter that the flow needs (", amount(diameter / 2.0),
            "): below, the orifice is part full");
    return diameter;
}

Flow part_full_orifice_flow(Length diameter, Length depth, Share coefficient) {
    require_positive("diameter", diameter);
    require_not_negative("depth", depth);
    if (depth >= diameter) return orifice_flow(diameter, depth - diameter / 2.0, coefficient);
    return part_full_share(depth / diameter) * orifice_flow(diameter, diameter / 2.0, coefficient);
}

Flow weir_flow(Length crest_length, Length head, WeirCoefficient coefficient, Count end_contractions) {
    require_positive("crest length", crest_length);
    require_not_negative("head", head);
    require_positive("coefficient", coefficient);
    const double n = require_whole("end contractions", end_contractions);
    if (n > 0 && !is_at_most(head, Length(crest_length / 3.0)))
        refuse_because(shown("head", head), " must be at most a third of the crest length (",
                       amount(crest_length / 3.0),
                       ") where the weir is contracted: beyond, Francis's formula gives too little flow; "
                       "UC.WEIR.CONTRACTED, in a list of outlets the kind contracted, holds there");
    if (n * head > 6.0 * crest_length)
        refuse_because(shown("end contractions", end_contractions), " must be at most ",
                       amount(count(whole_down(6.0 * crest_length / head))),
                       ": more take more than the head gives");
    return coefficient * (crest_length - 0.1 * n * head) * head * sqrt(head);
}

Flow notch_flow(Angle angle, Length head, WeirCoefficient coefficient) {
    require_positive("angle", angle);
    require(angle < degrees(180), shown("angle", angle), " must be less than 180 deg");
    require_not_negative("head", head);
    require_positive("coefficient", coefficient);
    return coefficient * tangent(angle / 2.0) * head * head * sqrt(head);
}

Flow trapezoidal_weir_flow(Length crest_length, Length head, Share side_slope, WeirCoefficient coefficient,
                           Count end_contractions) {
    require_positive("crest length", crest_length);
    require_not_negative("head", head);
    require(side_slope >= share(0) && side_slope <= share(5), shown("side slope", side_slope),
            " must be from 0 to 5");
    require_positive("coefficient", coefficient);
    const double n = require_whole("end contractions", end_contractions);
    require(n <= 2, shown("end contractions", end_contractions), " must be 0, 1 or 2");
    require(is_at_most(head, Length(crest_length / 3.0)), shown("head", head),
            " must be at most a third of the crest length (", amount(crest_length / 3.0), ")");
    return coefficient * (crest_length + (0.8 * number(side_slope) - 0.1 * n) * head) * head * sqrt(head);
}

}  // namespace undercroft::calc
