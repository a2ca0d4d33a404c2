/// \file clay_bearing.hpp
/// Bearing of clay by its undrained strength, and of a layer of stone laid on it.
#pragma once

#include <optional>

#include "units/types.hpp"

namespace undercroft::calc {

/// How the depth of a foundation counts: not at all (FHWA), or 1 + 0.2 D/B, at most 1.5 (USACE EM 1110-1-1905
/// (2025), ch. 5; Skempton 1951, from memory).
enum class DepthFactor { none, skempton };

/// A foundation on clay.
struct ClayFooting {
    Length width;
    std::optional<Length> length;  ///< none: a long strip
    Length depth;                  ///< of its base below the ground beside it
    Pressure strength;             ///< undrained shear strength of the clay
    UnitWeight unit_weight;        ///< of the ground beside it
};

/// Ultimate bearing pressure, gross, of saturated clay under undrained loading.
///
///     qu = (2 + pi) (1 + 0.2 B/L) d su + g D
///
/// USACE EM 1110-1-1905 (2025), ch. 5, as applied in a public engineering library; the manual prints Nc
/// = 5.14. \throws Refused(domain) for a strength, unit weight or width not above 0, a depth below 0, or a
/// length less than the width.
[[nodiscard]] Pressure undrained_bearing(const ClayFooting& footing, DepthFactor depth_factor);

/// Ultimate bearing pressure of a foundation on a layer of stone or sand of thickness H over clay: the load
/// spreads at 2V:1H to the clay, which fails under it.
///
///     qu = (Nc sc d su + g D) (B + H)(L + H)/(B L)
///
/// of a strip (B + H)/B. Shape and depth factors are those of the foundation itself. USACE EM 1110-1-1905
/// (2025), eq. 5-17 and Example B-3, as applied in a public engineering library. The layer's own strength is
/// a check apart. \throws Refused as undrained_bearing; Refused(domain) for a thickness below 0.
[[nodiscard]] Pressure layered_bearing(const ClayFooting& footing, Length layer, DepthFactor depth_factor);

/// Soft ground under base stone that is dug out and replaced by stone.
struct ReplacedGround {
    Pressure pressure;             ///< on the top of the replacement
    Length width;                  ///< on which it acts
    std::optional<Length> length;  ///< none: a long strip
    Pressure strength;             ///< undrained shear strength of the clay below
    Share safety;                  ///< factor of safety on it
    UnitWeight added_weight;       ///< unit weight of the stone less that of the clay it replaces
};

/// Depth of replacement that brings the pressure down to what the clay may bear, 0 where it bears it as it
/// is.
///
/// The load spreads at 2V:1H, the stone adds what it is heavier than the clay that it replaces:
///
///     q B L/((B + d)(L + d)) + dg d <= (2 + pi)(1 + 0.2 (B + d)/(L + d)) su/F
///
/// of a strip q B/(B + d) and B/L = 0. The spread of USACE EM 1110-1-1905 (2025), eq. 5-17. Depth is not
/// counted, on the safe side. \throws Refused(domain) for a pressure, width, length or strength not above 0,
/// a length less than the width, a safety below 1 or an added weight below 0; Refused(no_answer) where no
/// depth to 20 m does, because the stone's own weight overtakes what the spread gains.
[[nodiscard]] Length replacement_depth(const ReplacedGround& ground);

}  // namespace undercroft::calc
