#include "calc/bed/storage.hpp"

#include <array>

#include "calc/bed/along_fall.hpp"
#include "calc/bed/prism.hpp"
#include "calc/solve.hpp"
#include "calc/water/stops.hpp"
#include "calc/works/excavation.hpp"

namespace undercroft::calc {

namespace {

/// Beyond any bed; a depth to be searched for stays a number below it.
constexpr Length highest_bed = 1e6 * metre;

BedPrism prism_of(const Bed& bed) {
    return {bed.length, bed.width, bed.batter, bed.top(), bed.fall};
}

void require_bed(const Bed& bed) {
    require_positive("length", bed.length);
    require_positive("width", bed.width);
    require_not_negative("batter", bed.batter);
    require_not_negative("base stone", bed.base_stone);
    require_not_negative("cover stone", bed.cover_stone);
    require_porosity("porosity", bed.porosity);
    require_arch(bed.arch);
    require_not_negative("chamber length", bed.chamber_length);
    require(bed.top() <= highest_bed, "base stone, rise and cover stone (", amount(bed.top()),
            " together) must be at most ", amount(highest_bed));
    const Area chambers = arch_widest(bed.arch) * bed.chamber_length;
    const Area plan = pit_area(bed.length, bed.width, bed.chamber_base(), bed.batter);
    require(is_at_most(chambers, plan), "the chambers (chamber length times their width: ", amount(chambers),
            ") must fit in the plan of the bed (", amount(plan), ")");
    require_fall(prism_of(bed));
}

Length checked_depth(const Bed& bed, Length depth) {
    require_not_negative("depth", depth);
    require(is_at_most(depth, bed.top()), shown("depth", depth), " must be at most the top of the stone (",
            amount(bed.top()), " above the base of the bed)");
    return std::min(depth, bed.top());
}

Volume in_chambers(const Bed& bed, Length depth) {
    const auto in_one_metre = [&](Length in_chamber) {
        return arch_area(bed.arch, std::clamp<Length>(in_chamber, zero, bed.arch.rise));
    };
    return mean_along_fall(in_one_metre, std::array<Length, 2>{zero, bed.arch.rise},
                           depth - bed.chamber_base(), rise_of_base(prism_of(bed))) *
           bed.chamber_length;
}

Volume in_stone(const Bed& bed, Length depth) {
    const Volume prism = prism_volume(prism_of(bed), depth);
    return number(bed.porosity) * (prism - in_chambers(bed, depth));
}

Volume held(const Bed& bed, Length depth) {
    return in_chambers(bed, depth) + in_stone(bed, depth);
}

}  // namespace

Volume bed_volume(Length depth, const Bed& bed) {
    require_bed(bed);
    return held(bed, checked_depth(bed, depth));
}

Length bed_depth(Volume volume, const Bed& bed) {
    require_bed(bed);
    require_not_negative("volume", volume);
    const Volume full = held(bed, bed.top());
    require(is_finite(full),
            "the bed's length, width, batter, rise or stone is too large for its volume to be a number");
    require(is_at_most(volume, full), shown("volume", volume), " must be at most what the bed holds (",
            amount(full), ")");
    if (volume >= full) return bed.top();
    if (volume == zero) return zero;
    const auto excess = [&](Length depth) { return held(bed, depth) - volume; };
    return root_between<Length>(excess, zero, bed.top());
}

StageStorage stage_storage(Count steps, const Bed& bed) {
    require_bed(bed);
    const double n = require_steps(steps);

    std::vector<Length> depths = equal_steps(bed.top(), n);
    const Length rise = rise_of_base(prism_of(bed));
    add_kinks(depths, {bed.chamber_base(), bed.crown(), rise, rise + bed.chamber_base()});

    StageStorage table;
    for (const Length& d : depths) {
        const Volume chambers = in_chambers(bed, d);
        const Volume stone = in_stone(bed, d);
        table.emplace_back(d, chambers, stone, chambers + stone, prism_area(prism_of(bed), d));
    }
    return table;
}

}  // namespace undercroft::calc
