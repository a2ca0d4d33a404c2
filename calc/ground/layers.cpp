#include "calc/ground/layers.hpp"

#include "calc/ground/stone.hpp"

namespace undercroft::calc {

namespace {

std::string row_of(std::size_t row) {
    return "layer " + std::to_string(row + 1);
}

/// Those of the parts asked for, with their row in the list.
Table<std::size_t, SiteLayers::value_type> picked(const SiteLayers& layers, LayerPart lowest,
                                                  LayerPart highest) {
    require(!layers.empty(), "the list has no layer");
    require(lowest <= highest, "the highest part must not lie under the lowest");
    Table<std::size_t, SiteLayers::value_type> found;
    LayerPart below = layers.empty() ? lowest : std::get<0>(layers.front());
    for (std::size_t row = 0; row < layers.size(); ++row) {
        const auto& [part, thickness, unit_weight, lift] = layers[row];
        if (part < below)
            refuse_domain(row_of(row) + " belongs under the one before it: the list goes from the base up");
        below = part;
        require_not_negative("thickness", thickness);
        require_positive("unit weight", unit_weight);
        if (lift) require_positive("greatest lift", *lift);
        if (part >= lowest && part <= highest && thickness > zero) found.emplace_back(row, layers[row]);
    }
    return found;
}

LiftLayers laid(const SiteLayers& layers, LayerPart lowest, LayerPart highest) {
    LiftLayers found;
    for (const auto& [row, layer] : picked(layers, lowest, highest)) {
        const auto& [part, thickness, unit_weight, lift] = layer;
        if (!lift)
            refuse_domain(row_of(row) + " has no greatest lift: it must be given for what is laid in lifts");
        found.emplace_back(thickness, unit_weight, *lift);
    }
    return found;
}

}  // namespace

Length layers_depth(const SiteLayers& layers, LayerPart lowest, LayerPart highest) {
    Length depth = zero;
    for (const auto& [row, layer] : picked(layers, lowest, highest)) depth += std::get<1>(layer);
    return depth;
}

Table<Length, UnitWeight> layer_stack(const SiteLayers& layers, LayerPart lowest, LayerPart highest) {
    Table<Length, UnitWeight> stack;
    Length bed = zero;
    Pressure bed_weight = zero;
    for (const auto& [row, layer] : picked(layers, lowest, highest)) {
        const auto& [part, thickness, unit_weight, lift] = layer;
        if (lowest <= LayerPart::chambers && part <= LayerPart::cover_stone) {
            bed += thickness;
            bed_weight += thickness * unit_weight;
        } else {
            stack.emplace_back(thickness, unit_weight);
        }
    }
    if (bed > zero) stack.emplace(stack.begin(), bed, bed_weight / bed);
    if (stack.empty()) no_answer("no layer of these parts has a thickness");
    return stack;
}

LiftLayers laid_layers(const SiteLayers& layers, LayerPart lowest, LayerPart highest) {
    const LiftLayers found = laid(layers, lowest, highest);
    if (found.empty()) no_answer("no layer of these parts has a thickness");
    return found;
}

Count layer_lifts(const SiteLayers& layers, LayerPart lowest, LayerPart highest) {
    Count all = zero;
    for (const auto& [thickness, unit_weight, lift] : laid(layers, lowest, highest))
        all += lifts(thickness, lift);
    return all;
}

LaidLifts laid_lifts(const SiteLayers& layers) {
    LaidLifts plan;
    Length top = zero;
    Length cover = zero;
    Pressure fill = zero;
    for (const auto& [row, layer] : picked(layers, LayerPart::base_stone, LayerPart::pavement)) {
        const auto& [part, thickness, unit_weight, greatest_lift] = layer;
        const Count in_layer = greatest_lift ? lifts(thickness, *greatest_lift) : count(1);
        require(static_cast<double>(plan.size()) + number(in_layer) <= 200,
                "the list is laid in more than 200 lifts: check the units of thickness and greatest lift");
        const bool over_crowns = part > LayerPart::chambers;
        for (double i = 1; i <= number(in_layer); ++i) {
            const Length laid = thickness * (i / number(in_layer));
            plan.emplace_back(count(static_cast<double>(plan.size()) + 1),
                              count(static_cast<double>(row) + 1), thickness / number(in_layer), top + laid,
                              over_crowns ? cover + laid : Length(zero),
                              over_crowns ? fill + unit_weight * laid : Pressure(zero));
        }
        top += thickness;
        if (over_crowns) {
            cover += thickness;
            fill += unit_weight * thickness;
        }
    }
    if (plan.empty()) no_answer("no layer has a thickness");
    return plan;
}

}  // namespace undercroft::calc
