/// \file settlement.hpp
/// How far the ground settles under a bed: at once, and in the long run.
#pragma once

#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Net pressure on the formation: what the bed and its fill press less what the dug ground weighed there, q -
/// g D. Below 0 the bed is lighter than the ground it replaces: nothing settles, the formation heaves a
/// little. \throws Refused(domain) for a pressure or depth below 0, or a unit weight not above 0.
[[nodiscard]] Pressure net_pressure(Pressure pressure, UnitWeight ground_unit_weight, Length depth);

/// Where the immediate settlement of a loaded rectangle is wanted.
enum class SettlementPoint { centre, corner, rigid };

/// Immediate settlement of a loaded rectangle on an elastic half-space.
///
/// Flexible, s = q B (1 - v^2)/E I: at the centre I = 2/pi (m asinh(1/m) + asinh m), m = L/B, at a corner
/// half of it; integrals of Boussinesq's solution. Rigid, s = Q/Kz, Kz = G b/(1 - v) (3.1 (l/b)^0.75 + 1.6)
/// with half sides b, l and G = E/(2 (1 + v)): Pais and Kausel (1988), in NIST GCR 12-917-21 (2012), Table
/// 2-2a. \throws Refused(domain) for a pressure, width or modulus not above 0, a length less than the width,
/// or a Poisson ratio outside 0 to 0.5.
[[nodiscard]] Length elastic_settlement(Pressure pressure, Length width, Length length, Pressure modulus,
                                        Share poisson, SettlementPoint at);

/// A layer of clay that consolidates.
struct ClayLayer {
    Length thickness;
    Share void_ratio;           ///< e0
    Share compression;          ///< C_c
    Share recompression;        ///< C_r
    Pressure effective_stress;  ///< in its middle, before
    Pressure preconsolidation;  ///< greatest it has ever borne
};

/// Settlement of a layer by consolidation under a stress that is added in its middle.
///
///     s = H/(1 + e0) (C_r log(min(s1, sp)/s0) + C_c log(s1/max(s0, sp))), s1 = s0 + ds
///
/// the first as far as the preconsolidation stress, the second beyond it. FHWA GEC No. 13 (2017), vol. 1,
/// sec. 4.3.1; Terzaghi. \throws Refused(domain) for a thickness, void ratio, index or stress not above 0, a
/// stress that is added below 0, a recompression above the compression, or a preconsolidation below the
/// stress before.
[[nodiscard]] Length consolidation_settlement(const ClayLayer& layer, Pressure added);

/// Share of the consolidation that is over at a time: U = 1 - sum 8/(pi^2 (2k + 1)^2) exp(-(2k + 1)^2 pi^2
/// T/4), T = cv t/d^2, with the drainage path d: half the layer where it drains both ways. Terzaghi. \throws
/// Refused(domain) for a coefficient or path not above 0 or a time below 0.
[[nodiscard]] Share consolidation_degree(decltype(Area() / Time()) coefficient, Time time,
                                         Length drainage_path);

/// Layers of sand: thickness, depth of their middle below the base, effective stress there, and Hough's
/// bearing capacity index C'.
using SandLayers = Table<Length, Length, Pressure, Share>;

/// Settlement of sand under a square or a long strip by Hough (1959): sum of H/C' log((s0 + ds)/s0), the
/// pressure spread at 2V:1H, ds = q (B/(B + z))^2, of a strip q B/(B + z). FHWA GEC No. 6 (FHWA-SA-02-054),
/// App. B, Example 1. \throws Refused(domain) for no layer, or a thickness, stress, index, pressure or width
/// not above 0, or a depth below 0.
[[nodiscard]] Length sand_settlement(Pressure pressure, Length width, bool is_strip,
                                     const SandLayers& layers);

}  // namespace undercroft::calc
