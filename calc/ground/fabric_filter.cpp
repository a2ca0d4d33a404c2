#include "calc/ground/fabric_filter.hpp"

#include "calc/customary.hpp"
#include "calc/ground/fabric.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

bool is_fine(Percent passing_0075_mm) {
    require_percentage("passing 0.075 mm", passing_0075_mm);
    return passing_0075_mm.value > 50 + same_percent;
}

/// One of three by the percentage passing 0.075 mm: below 15, to 50, above.
template <class Q>
Q by_fines(Percent passing_0075_mm, Q coarse, Q medium, Q fine) {
    if (is_fine(passing_0075_mm)) return fine;
    return passing_0075_mm.value < 15 - same_percent ? coarse : medium;
}

}  // namespace

Share retention_factor(Percent passing_0075_mm, std::optional<Share> uniformity, FabricKind kind,
                       FabricFlow flow) {
    const bool fine = is_fine(passing_0075_mm);
    if (flow == FabricFlow::reversing) return share(0.5);
    if (fine) return kind == FabricKind::woven ? share(1) : share(1.8);
    if (!uniformity)
        refuse_value(
            "the uniformity D60/D10 is needed for a soil of which half or less passes 0.075 mm: it decides "
            "the "
            "factor");
    return fabric_factor(*uniformity);
}

Length retaining_opening(Length d85, Percent passing_0075_mm, std::optional<Share> uniformity,
                         FabricKind kind, FabricFlow flow) {
    const Length opening = fabric_opening(d85, retention_factor(passing_0075_mm, uniformity, kind, flow));
    return is_fine(passing_0075_mm) ? std::min<Length>(opening, 0.30 * millimetre) : opening;
}

Length drainage_opening(Percent passing_0075_mm) {
    return by_fines<Length>(passing_0075_mm, 0.43 * millimetre, 0.25 * millimetre, 0.22 * millimetre);
}

Permittivity drainage_permittivity(Percent passing_0075_mm) {
    return by_fines<Permittivity>(passing_0075_mm, 0.5 / second, 0.2 / second, 0.1 / second);
}

Permittivity fabric_permittivity(Speed permeability, Length thickness) {
    require_positive("permeability", permeability);
    require_positive("thickness", thickness);
    return permeability / thickness;
}

Flow fabric_flow(Permittivity permittivity, Length head, Area area) {
    require_positive("permittivity", permittivity);
    require_not_negative("head", head);
    require_positive("area", area);
    return permittivity * head * area;
}

Speed fabric_permeability_needed(Speed soil_permeability, bool critical) {
    require_positive("soil permeability", soil_permeability);
    return (critical ? 10.0 : 1.0) * soil_permeability;
}

}  // namespace undercroft::calc
