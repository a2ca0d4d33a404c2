#include "calc/ground/settlement.hpp"

#include <cmath>
#include <numbers>

namespace undercroft::calc {

using std::numbers::pi;

namespace {

double log_ratio(Pressure above, Pressure below) {
    return std::log10(static_cast<double>(above / below));
}

}  // namespace

Pressure net_pressure(Pressure pressure, UnitWeight ground_unit_weight, Length depth) {
    require_not_negative("pressure", pressure);
    require_positive("unit weight", ground_unit_weight);
    require_not_negative("depth", depth);
    return pressure - ground_unit_weight * depth;
}

Length elastic_settlement(Pressure pressure, Length width, Length length, Pressure modulus, Share poisson,
                          SettlementPoint at) {
    require_positive("pressure", pressure);
    require_positive("width", width);
    require(is_at_least(length, width) && is_finite(length), shown("length", length),
            " must be at least the ", shown("width", width));
    require_positive("modulus", modulus);
    require(poisson >= share(0) && poisson <= share(0.5), shown("Poisson ratio", poisson),
            " must be from 0 to 0.5");
    const double m = length / width;
    const double v = number(poisson);
    if (at == SettlementPoint::rigid) {
        const Pressure shear = modulus / (2 * (1 + v));
        const auto stiffness = shear * (width / 2.0) / (1 - v) * (3.1 * std::pow(m, 0.75) + 1.6);
        return pressure * width * length / stiffness;
    }
    const double centre = 2 / pi * (m * std::asinh(1 / m) + std::asinh(m));
    const double influence = at == SettlementPoint::centre ? centre : centre / 2;
    return pressure / modulus * width * ((1 - v * v) * influence);
}

Length consolidation_settlement(const ClayLayer& layer, Pressure added) {
    require_positive("thickness", layer.thickness);
    require_positive("void ratio", layer.void_ratio);
    require_positive("compression index", layer.compression);
    require_positive("recompression index", layer.recompression);
    require(layer.recompression <= layer.compression, shown("recompression index", layer.recompression),
            " must be at most the ", shown("compression index", layer.compression));
    require_positive("effective stress", layer.effective_stress);
    require(is_at_least(layer.preconsolidation, layer.effective_stress) && is_finite(layer.preconsolidation),
            shown("preconsolidation stress", layer.preconsolidation), " must be at least the ",
            shown("effective stress", layer.effective_stress), ": the ground has borne that much");
    require_not_negative("added stress", added);
    const Pressure past = std::max(layer.preconsolidation, layer.effective_stress);
    const Pressure after = layer.effective_stress + added;
    double strain = number(layer.recompression) * log_ratio(std::min(after, past), layer.effective_stress);
    if (after > past) strain += number(layer.compression) * log_ratio(after, past);
    return layer.thickness * (strain / (1 + number(layer.void_ratio)));
}

Share consolidation_degree(decltype(Area() / Time()) coefficient, Time time, Length drainage_path) {
    require_positive("coefficient", coefficient);
    require_not_negative("time", time);
    require_positive("drainage path", drainage_path);
    const double t = coefficient * time / (drainage_path * drainage_path);
    // For small T the series converges slowly, and its beginning is the parabola: exact to 1e-12 below 0.02.
    if (t < 0.02) return share(2 * std::sqrt(t / pi));
    double left = 0;
    for (int k = 0; k < 100; ++k) {
        const double odd = 2 * k + 1;
        const double next = 8 / (pi * pi * odd * odd) * std::exp(-odd * odd * pi * pi * t / 4);
        left += next;
        if (next < 1e-17) break;
    }
    return share(1 - left);
}

Length sand_settlement(Pressure pressure, Length width, bool is_strip, const SandLayers& layers) {
    require_positive("pressure", pressure);
    require_positive("width", width);
    require(!layers.empty(), "there is no layer");
    Length settlement = zero;
    for (const auto& [thickness, depth, stress, index] : layers) {
        require_positive("thickness", thickness);
        require_not_negative("depth", depth);
        require_positive("effective stress", stress);
        require_positive("bearing capacity index", index);
        const double spread = width / (width + depth);
        const Pressure added = pressure * (is_strip ? spread : spread * spread);
        settlement += thickness * (log_ratio(stress + added, stress) / number(index));
    }
    return settlement;
}

}  // namespace undercroft::calc
