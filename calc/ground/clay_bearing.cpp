#include "calc/ground/clay_bearing.hpp"

#include <numbers>

#include "calc/require.hpp"
#include "calc/solve.hpp"

namespace undercroft::calc {

namespace {

constexpr double undrained_factor = 2 + std::numbers::pi;

void require_length(const std::optional<Length>& length, Length width) {
    if (length)
        require(is_at_least(*length, width), shown("length", *length), " must be at least the ",
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
    return undrained_factor * shape * depth_factor_of(depth_factor, footing.depth, footing.width) *
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
    require(g.safety >= share(1) && is_finite(g.safety), shown("safety", g.safety), " must be at least 1");
    require_not_negative("added weight", g.added_weight);
    const auto excess = [&](Length depth) -> Pressure {
        const Length wide = g.width + depth;
        double spread = g.width / wide;
        if (g.length) spread *= static_cast<double>(*g.length / (*g.length + depth));
        const double shape = g.length ? 1 + 0.2 * slenderness(wide, *g.length + depth) : 1;
        const Pressure allowed = undrained_factor * shape * g.strength / g.safety;
        return g.pressure * spread + g.added_weight * depth - allowed;
    };
    if (excess(zero) <= limit_tolerance * g.pressure) return zero;
    // Falls while the spread gains, rises where the stone's weight overtakes.
    constexpr Length deepest = 20.0 * metre;
    const auto [at, least] = minimum_between<Length>(excess, zero, deepest);
    if (least > zero)
        no_answer(
            "no depth of replacement to 20 m does: the clay (" + shown("strength", g.strength) +
            ") is too soft for the " + shown("pressure", g.pressure) +
            ", or the stone's own weight overtakes what its spread gains; lighten the load or strengthen "
            "the ground");
    return root_between<Length>(excess, zero, at);
}

}  // namespace undercroft::calc
