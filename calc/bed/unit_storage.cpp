#include "calc/bed/unit_storage.hpp"

#include <array>

#include "calc/bed/along_fall.hpp"
#include "calc/bed/prism.hpp"
#include "calc/solve.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

BedPrism prism_of(const UnitBed& bed) {
    return {bed.length, bed.width, bed.batter, bed.top(), bed.fall};
}

void require_table(std::size_t kind, const UnitTable& table) {
    const std::string of_kind = "the table of kind " + std::to_string(kind) + " ";
    require(table.size() >= 2, of_kind, "needs at least two rows: depth and volume");
    for (std::size_t i = 0; i < table.size(); ++i) {
        const auto& [depth, volume] = table[i];
        require_not_negative("depth", depth);
        require_not_negative("volume", volume);
        if (i == 0) {
            require(depth > zero || volume == zero, of_kind, "holds ", amount(volume),
                    " at depth 0, where a unit is empty");
            continue;
        }
        const auto& [depth_before, volume_before] = table[i - 1];
        require(is_above(depth, depth_before), of_kind, "has depths that do not rise: ", amount(depth),
                " after ", amount(depth_before));
        require(volume >= volume_before, of_kind, "has volumes that fall: ", amount(volume), " after ",
                amount(volume_before));
    }
}

/// What one unit holds at a depth over its base, and the integral of that from the base up to the depth.
struct InUnit {
    Volume held;
    decltype(Volume() * Length()) moment;
};

InUnit in_unit(const UnitTable& table, Length depth) {
    InUnit unit{};
    Length at = zero;
    const auto go_to = [&](Length next, Volume held_there) {
        unit.moment += (unit.held + held_there) / 2.0 * (next - at);
        unit.held = held_there;
        at = next;
    };
    if (depth <= zero) return unit;
    for (const auto& [row_depth, row_volume] : table) {
        if (depth < row_depth) {
            go_to(depth, unit.held + (row_volume - unit.held) * ((depth - at) / (row_depth - at)));
            return unit;
        }
        go_to(row_depth, row_volume);
    }
    go_to(depth, unit.held);
    return unit;
}

/// The mean along the fall, as mean_along_fall: exact, each piece of the table being straight.
Volume mean_in_unit(const UnitTable& table, Length depth, Length drop) {
    if (drop == zero) return in_unit(table, depth).held;
    return (in_unit(table, depth).moment - in_unit(table, depth - drop).moment) / drop;
}

Volume in_units(const UnitBed& bed, Length depth) {
    const Length drop = rise_of_base(prism_of(bed));
    Volume held = zero;
    for (const UnitKind& kind : bed.units)
        held += number(kind.number) * mean_in_unit(kind.table, depth - bed.base_stone, drop);
    return held;
}

Volume in_header(const UnitBed& bed, Length depth) {
    if (!bed.header) return zero;
    const Arch pipe{Shape::circle, bed.header->diameter, bed.header->diameter};
    const Area whole = arch_area(pipe);
    const auto filled = [&](Length d) {
        return bed.header->volume * (arch_area(pipe, std::clamp<Length>(d, zero, pipe.rise)) / whole);
    };
    return mean_along_fall(filled, std::array<Length, 2>{zero, pipe.rise}, depth - bed.header->invert,
                           rise_of_base(prism_of(bed)));
}

Volume in_plastic(const UnitBed& bed, Length depth) {
    if (!bed.plastic) return zero;
    const Volume whole = bed.plastic->mass / bed.plastic->density;
    const auto drowned = [&](Length d) {
        return whole * (std::clamp<Length>(d, zero, bed.rise()) / bed.rise());
    };
    return mean_along_fall(drowned, std::array<Length, 2>{zero, bed.rise()}, depth - bed.base_stone,
                           rise_of_base(prism_of(bed)));
}

struct Held {
    Volume in_units;
    Volume in_stone;
    [[nodiscard]] Volume total() const { return in_units + in_stone; }
};

Held held(const UnitBed& bed, Length depth) {
    const Volume hollow = in_units(bed, depth) + in_header(bed, depth);
    const Volume stone = prism_volume(prism_of(bed), depth) - hollow - in_plastic(bed, depth);
    return {hollow, number(bed.porosity) * stone};
}

void require_bed(const UnitBed& bed) {
    require_positive("length", bed.length);
    require_positive("width", bed.width);
    require_not_negative("batter", bed.batter);
    require_not_negative("base stone", bed.base_stone);
    require_not_negative("cover stone", bed.cover_stone);
    require_porosity("porosity", bed.porosity);
    require(!bed.units.empty() && bed.units.size() <= 4, "a bed has one to four kinds of units");
    for (std::size_t i = 0; i < bed.units.size(); ++i) {
        require_whole("number of units", bed.units[i].number, 1);
        require_table(i + 1, bed.units[i].table);
    }
    if (bed.plastic) {
        require_not_negative("plastic mass", bed.plastic->mass);
        require_positive("plastic density", bed.plastic->density);
    }
    if (bed.header) {
        require_not_negative("header volume", bed.header->volume);
        require_positive("header diameter", bed.header->diameter);
        require_not_negative("header invert", bed.header->invert);
        const Length crown = bed.header->invert + bed.header->diameter;
        require(is_at_most(crown, bed.top()), "the header must lie in the stone, but its crown (",
                amount(crown), ") is above the top of it (", amount(bed.top()), ")");
    }
    require_fall(prism_of(bed));
    const Volume filled = in_units(bed, bed.top()) + in_header(bed, bed.top()) + in_plastic(bed, bed.top());
    const Volume prism = prism_volume(prism_of(bed), bed.top());
    require(filled < prism, "units, header and plastic (", amount(filled), ") must fit in the bed (",
            amount(prism), ")");
}

}  // namespace

Length UnitBed::rise() const {
    Length tallest = zero;
    for (const UnitKind& kind : units)
        if (!kind.table.empty()) tallest = std::max(tallest, std::get<0>(kind.table.back()));
    return tallest;
}

UnitBed with_units(const Bed& bed, std::vector<UnitKind> units) {
    UnitBed made{bed.length,       bed.width, bed.batter, bed.base_stone, zero, bed.porosity,
                 std::move(units), {},        {},         bed.fall};
    made.cover_stone = bed.top() - made.crown();
    // A table in rounded inches may end a hair above a stone without cover.
    if (is_at_most(made.crown(), bed.top())) made.cover_stone = std::max<Length>(made.cover_stone, zero);
    require(made.cover_stone >= zero, "the units' table goes up to ", amount(made.rise()),
            " over their base, above the top of the stone (", amount(bed.top() - bed.base_stone), ")");
    return made;
}

Volume unit_bed_volume(Length depth, const UnitBed& bed) {
    require_bed(bed);
    require_not_negative("depth", depth);
    require(is_at_most(depth, bed.top()), shown("depth", depth), " must be at most the top of the stone (",
            amount(bed.top()), " above the base of the bed at its low end)");
    return held(bed, std::min(depth, bed.top())).total();
}

Length unit_bed_depth(Volume volume, const UnitBed& bed) {
    require_bed(bed);
    require_not_negative("volume", volume);
    const Volume full = held(bed, bed.top()).total();
    require(is_at_most(volume, full), shown("volume", volume), " must be at most what the bed holds (",
            amount(full), ")");
    if (volume >= full) return bed.top();
    if (volume == zero) return zero;
    const auto excess = [&](Length depth) { return held(bed, depth).total() - volume; };
    return root_between<Length>(excess, zero, bed.top());
}

StageStorage unit_stage_storage(Count steps, const UnitBed& bed) {
    require_bed(bed);
    const double n = require_steps(steps);
    const Length rise_along = rise_of_base(prism_of(bed));
    std::vector<Length> depths = equal_steps(bed.top(), n);
    add_kinks(depths, {bed.base_stone, bed.crown(), rise_along, rise_along + bed.base_stone});
    StageStorage table;
    for (const Length& d : depths) {
        const Held water = held(bed, d);
        table.emplace_back(d, water.in_units, water.in_stone, water.total(), prism_area(prism_of(bed), d));
    }
    return table;
}

}  // namespace undercroft::calc
