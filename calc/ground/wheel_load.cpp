#include "calc/ground/wheel_load.hpp"

#include "calc/customary.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

/// 2 ft, printed as 600 mm in the editions in SI units (from memory).
constexpr Length least_spread_cover = 600.0 * millimetre;

/// One side of the patch at depth, and how many tyres stand on it.
struct Side {
    Length length;
    double tyres;
};

Side side_at_depth(Length tyre, std::optional<Length> spacing, Length cover, Share factor) {
    const Length alone = tyre + factor * cover;
    if (!spacing || cover < interaction_depth(*spacing, tyre, factor)) return {alone, 1};
    return {alone + *spacing, 2};
}

void require_apart(const char* name, std::optional<Length> spacing, const char* tyre_name, Length tyre) {
    if (spacing && !(*spacing > tyre))
        refuse_domain(shown(name, *spacing) + " must be above the " + shown(tyre_name, tyre) +
                      ": leave it out where there is no second one");
}

}  // namespace

Share dynamic_allowance(Length cover) {
    require_not_negative("cover", cover);
    return share(std::max(0.0, 0.33 * (1 - 0.125 * static_cast<double>(cover / foot))));
}

Length interaction_depth(Length spacing, Length tyre, Share distribution_factor) {
    return (spacing - tyre) / distribution_factor;
}

Pressure wheel_load(const Wheel& wheel, Length cover, Share distribution_factor, bool impact) {
    require_positive("wheel load", wheel.load);
    require_positive("tyre length", wheel.tyre_length);
    require_positive("tyre width", wheel.tyre_width);
    require_apart("wheel spacing", wheel.wheel_spacing, "tyre width", wheel.tyre_width);
    require_apart("axle spacing", wheel.axle_spacing, "tyre length", wheel.tyre_length);
    require(distribution_factor >= share(1 - limit_tolerance) &&
                distribution_factor <= share(1.75 + limit_tolerance),
            shown("distribution factor", distribution_factor),
            " must be from 1 to 1.75, the range of the editions of AASHTO LRFD");
    require(is_at_least(cover, least_spread_cover), shown("cover", cover),
            " must be at least 2 ft (600 mm): under less, AASHTO LRFD does not spread wheels through "
            "the fill, and a licensed engineer chooses the distribution");
    const Side along = side_at_depth(wheel.tyre_length, wheel.axle_spacing, cover, distribution_factor);
    const Side across = side_at_depth(wheel.tyre_width, wheel.wheel_spacing, cover, distribution_factor);
    const Share allowance = impact ? dynamic_allowance(cover) : share(0);
    return along.tyres * across.tyres * wheel.load * (1.0 + allowance) / (along.length * across.length);
}

}  // namespace undercroft::calc
