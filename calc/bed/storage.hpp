/// \file storage.hpp
/// Water held by a bed of chambers in stone, at every depth.
#pragma once

#include "calc/bed/arch.hpp"
#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// A bed: a prism of plan `length` x `width` at its base, walls at `batter`; base stone under the
/// chambers, cover stone over their crowns, and chambers of one section, `chamber_length` in all.
struct Bed {
    Length length;
    Length width;
    Batter batter;
    Length base_stone;
    Length cover_stone;
    Share porosity;
    Arch arch;
    Length chamber_length;
    /// Of the formation along the length; layers and chambers follow it, and depths are those at the low end.
    Gradient fall = zero;

    [[nodiscard]] Length chamber_base() const { return base_stone; }
    [[nodiscard]] Length crown() const { return base_stone + arch.rise; }
    [[nodiscard]] Length top() const { return base_stone + arch.rise + cover_stone; }
};

/// Water held below `depth` above the base of the bed.
///
/// V(d) = n (P(d) - C(d)) + C(d), with P the volume of the pit's prism below d
/// (L W d + (L + W) z d^2 + 4/3 z^2 d^3), C the inside volume of the chambers below d and n the porosity
/// of the stone. The plastic's own volume is neglected. Geometry; common practice.
/// On a formation that falls, P is the prism over it (prism.hpp) and the chambers, taken as spread evenly
/// along the bed, hold the mean of what they hold at the depths from one end to the other.
/// \throws Refused(domain) for a depth below 0 or above the top of the stone; a length or width of the bed
/// not above 0; a batter, base stone, cover stone or chamber length below 0; a porosity not between 0 and 1;
/// a bed higher than 1000 km; chambers that do not fit in the plan of the bed; and as require_arch and
/// require_fall.
[[nodiscard]] Volume bed_volume(Length depth, const Bed& bed);

/// Depth of water for a volume held: the inverse of bed_volume, by a bracketing root search
/// (Boost.Math, TOMS 748).
/// \throws Refused(domain) for a volume below 0 or beyond what the bed holds, a bed too large for a number,
/// and as bed_volume.
[[nodiscard]] Length bed_depth(Volume volume, const Bed& bed);

/// Depth, volume in chambers, volume in stone, total, and plan area of the bed at that depth.
using StageStorage = Table<Length, Volume, Volume, Volume, Area>;

/// The stage-storage table in `steps` equal steps from the base to the top of the stone, with rows added
/// at the base and the crown of the chambers, where the curve has kinks; on a formation that falls up to the
/// top of the stone at its low end, above which level water leaves the stone. \throws Refused(domain) when
/// steps is not a whole number from 1 to 10000, and as bed_volume.
[[nodiscard]] StageStorage stage_storage(Count steps, const Bed& bed);

}  // namespace undercroft::calc
