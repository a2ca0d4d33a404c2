#include "calc/works/pit_zones.hpp"

#include "calc/require.hpp"
#include "calc/works/excavation.hpp"

namespace undercroft::calc {

namespace {

struct Pit {
    Length base_length;
    Length base_width;
    Length depth;
    Batter batter;
};

/// What fills the pit up to a height, above the ground too.
Volume filled_to(const Pit& pit, Length height) {
    const Volume between_walls =
        pit_volume(pit.base_length, pit.base_width, std::min(height, pit.depth), pit.batter);
    if (height <= pit.depth) return between_walls;
    return between_walls +
           pit_area(pit.base_length, pit.base_width, pit.depth, pit.batter) * (height - pit.depth);
}

}  // namespace

Volume pit_zone(Length base_length, Length base_width, Length depth, Batter batter, Length from_height,
                Length to_height) {
    require_not_negative("depth", depth);
    require_not_negative("from height", from_height);
    require(to_height >= from_height, shown("to height", to_height), " must be at least the ",
            shown("from height", from_height));
    const Pit pit{base_length, base_width, depth, batter};
    return filled_to(pit, to_height) - filled_to(pit, from_height);
}

Volume shored_pit_volume(Length base_length, Length base_width, Length depth, Length working_space) {
    require_positive("base length", base_length);
    require_positive("base width", base_width);
    require_not_negative("working space", working_space);
    return pit_volume(base_length + 2.0 * working_space, base_width + 2.0 * working_space, depth, batter(0));
}

}  // namespace undercroft::calc
