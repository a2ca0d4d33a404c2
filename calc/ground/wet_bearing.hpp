/// \file wet_bearing.hpp
/// Bearing capacity where groundwater stands near the base, and with the strength of the ground beside it.
#pragma once

#include <optional>

#include "calc/ground/bearing_factors.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Factors by which groundwater lessens the surcharge and the weight term.
struct WaterFactors {
    Share surcharge;  ///< C_wq
    Share weight;     ///< C_wg
};

/// C_wq = 0.5 + 0.5 Dw/D, C_wg = 0.5 + 0.5 Dw/(D + 1.5 B), at most 1; of a base at the ground (D = 0) C_wq
/// is 1. \param water_depth groundwater below the ground beside the foundation, not below its base. FHWA GEC
/// No. 6 (FHWA-SA-02-054), Table 5-3 and Appendix B, Example 1. \throws Refused(domain) for a depth below 0
/// or a width not above 0.
[[nodiscard]] WaterFactors water_factors(Length water_depth, Length depth, Length width);

/// A foundation in ground with friction.
struct DrainedFooting {
    Pressure cohesion;
    Angle friction_angle;
    UnitWeight unit_weight;  ///< total, above and below the base
    Length depth;            ///< of its base below the ground beside it
    Length width;
    std::optional<Length> length;       ///< none: a long strip
    std::optional<Length> water_depth;  ///< below the ground; none: none within 1.5 B of the base
    bool counts_depth =
        false;  ///< d_q of Hansen (1970), where the ground over the base is as strong as below it
};

/// Ultimate bearing pressure, gross: qu = sc c Nc + dq sq g D Nq C_wq + sg 0.5 g B Ng C_wg, with the factors
/// of Vesic (bearing.hpp) and dq = 1 + 2 tan p (1 - sin p)^2 atan(D/B), D/B counted to 1, or 1.
///
/// FHWA GEC No. 6 (FHWA-SA-02-054), eq. 5-1 and Appendix B, Example 1; dq after Hansen (1970) (from memory).
/// \throws Refused as bearing_capacity and water_factors.
[[nodiscard]] Pressure wet_bearing_capacity(const DrainedFooting& footing);

}  // namespace undercroft::calc
