#include "calc/ground/clay_bearing.hpp"

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cstdint>
#include <numbers>

#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

constexpr double cohesion_factor = 2 + std::numbers::pi;

void require_length(const std::optional<Length>& length, Length width) {
    if (length)
        require(*length >= width * (1 - limit_tolerance), shown("length", *length), " must be at least the ",
                shown("width", width), "; leave it out for a long strip");
}

/// B/L, 0 for a strip.
double slenderness(Length width, const std::optional<Length>& length) {
    return length ? static_cast<double>(width / *length) : 0;
}

double depth_factor_of(DepthFactor depth_factor, Length depth, Length width) {
    switch (depth_factor) {
        case DepthFactor::none:
            return 1;
        case DepthFactor::skempton:
            return std::min(1.5, 1 + 0.2 * static_cast<double>(depth / width));
    }
    refuse_value("unknown depth factor");
}

}  // namespace

Pressure undrained_bearing(const ClayFooting& footing, DepthFactor depth_factor) {
    require_positive("width", footing.width);
    require_length(footing.length, footing.width);
    require_not_negative("depth", footing.depth);
    require_positive("strength", footing.strength);
    require_positive("unit weight", footing.unit_weight);
    const double shape = 1 + 0.2 * slenderness(footing.width, footing.length);
    return cohesion_factor * shape * depth_factor_of(depth_factor, footing.depth, footing.width) *
               footing.strength +
           footing.unit_weight * footing.depth;
}

Pressure layered_bearing(const ClayFooting& footing, Length layer, DepthFactor depth_factor) {
    const Pressure on_clay = undrained_bearing(footing, depth_factor);
    require_not_negative("layer", layer);
    double spread = (footing.width + layer) / footing.width;
    if (footing.length) spread *= static_cast<double>((*footing.length + layer) / *footing.length);
    return on_clay * spread;
}

Length replacement_depth(const ReplacedGround& g) {
    require_positive("pressure", g.pressure);
    require_positive("width", g.width);
    require_length(g.length, g.width);
    require_positive("strength", g.strength);
    require(g.safety >= share(1) && std::isfinite(g.safety.value()), shown("safety", g.safety),
            " must be at least 1");
    require_not_negative("added weight", g.added_weight);
    const auto excess = [&](double depth) {
        const Length d = Length::from_value(depth);
        const Length wide = g.width + d;
        double spread = g.width / wide;
        if (g.length) spread *= static_cast<double>(*g.length / (*g.length + d));
        const double shape = g.length ? 1 + 0.2 * slenderness(wide, *g.length + d) : 1;
        const Pressure allowed = cohesion_factor * shape * g.strength / g.safety;
        return (g.pressure * spread + g.added_weight * d - allowed).value();
    };
    if (excess(0) <= slack(g.pressure.value(), g.pressure.value())) return Length::from_value(0);
    // Falls while the spread gains, rises where the stone's weight overtakes.
    constexpr double deepest = 20;
    const auto [at, least] = boost::math::tools::brent_find_minima(excess, 0.0, deepest, 40);
    if (least > 0)
        no_answer(
            "no depth of replacement to 20 m does: the clay (" + shown("strength", g.strength) +
            ") is too soft for the " + shown("pressure", g.pressure) +
            ", or the stone's own weight overtakes what its spread gains; lighten the load or strengthen the "
            "ground");
    std::uintmax_t iterations = 200;
    const boost::math::tools::eps_tolerance<double> tolerance(50);
    const auto [low, high] = boost::math::tools::toms748_solve(excess, 0.0, at, tolerance, iterations);
    return Length::from_value(high);
}

}  // namespace undercroft::calc
