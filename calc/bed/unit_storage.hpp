/// \file unit_storage.hpp
/// Water held by a bed of units as their suppliers test them: by tables of depth and volume, of up to several
/// kinds.
#pragma once

#include <optional>
#include <vector>

#include "calc/bed/storage.hpp"

namespace undercroft::calc {

/// Depth over the base of a unit and the volume that one unit holds below it.
using UnitTable = Table<Length, Volume>;

/// Units of one kind, such as middle or end units, and what one of them holds.
struct UnitKind {
    Count number;
    UnitTable table;
};

/// Plastic that displaces stone: the mass of all units, and its density.
struct Plastic {
    Mass mass;
    Density density;
};

/// A header pipe or several in the stone: what they hold in all, their inside diameter, and their invert over
/// the base of the bed.
struct Header {
    Volume volume;
    Length diameter;
    Length invert;
};

/// A bed of units, as Bed but with the suppliers' tables in place of an ideal section.
struct UnitBed {
    Length length;
    Length width;
    Batter batter;
    Length base_stone;
    Length cover_stone;
    Share porosity;
    std::vector<UnitKind> units;
    std::optional<Plastic> plastic;
    std::optional<Header> header;
    Gradient fall;

    [[nodiscard]] Length rise() const;  ///< of the tallest kind: the last depth of its table
    [[nodiscard]] Length crown() const { return base_stone + rise(); }
    [[nodiscard]] Length top() const { return crown() + cover_stone; }
};

/// The bed of a section with units by their tables in place of that section, whose shape, span and length count
/// no more. It stays as high: what the tallest table ends short of the section's rise is stone over the units.
/// \throws Refused(domain) for a table that goes beyond the top of the stone.
[[nodiscard]] UnitBed with_units(const Bed& bed, std::vector<UnitKind> units);

/// Water held below `depth` above the base of the bed at its low end.
///
/// V(d) = C(d) + H(d) + n (P(d) - C(d) - H(d) - X(d)): P the prism of the bed (prism.hpp), C the sum of
/// number times table over the kinds, straight between the rows of a table and all of it above its last, H
/// the header by the circle's area, X the plastic, spread evenly over the height of the units, n the porosity
/// of the stone. Where the formation falls, units, header and plastic stand evenly along the bed. Geometry;
/// common practice. \throws Refused(domain) as bed_volume for the bed; for no kind, more than four, a number
/// that is not whole or 0, a table of fewer than two rows, that starts below 0, whose depths do not rise or
/// whose volumes fall or hold water at depth 0; a density or diameter not above 0, a header that does not lie
/// in the stone, or a bed smaller than what it holds.
[[nodiscard]] Volume unit_bed_volume(Length depth, const UnitBed& bed);

/// Depth of water for a volume held: the inverse of unit_bed_volume, by a bracketing root search
/// (Boost.Math). \throws Refused(domain) for a volume below 0 or beyond what the bed holds, and as
/// unit_bed_volume.
[[nodiscard]] Length unit_bed_depth(Volume volume, const UnitBed& bed);

/// The stage-storage table as stage_storage: depth, in units and header, in stone, total, plan area.
/// \throws Refused(domain) when steps is not a whole number from 1 to 10000, and as unit_bed_volume.
[[nodiscard]] StageStorage unit_stage_storage(Count steps, const UnitBed& bed);

}  // namespace undercroft::calc
