#include "calc/works/sheet_goods.hpp"

#include "calc/require.hpp"
#include "calc/works/excavation.hpp"

namespace undercroft::calc {

Area wrap_area(Length base_length, Length base_width, Length height, Batter batter, Faces faces,
               Length lap_at_top) {
    require_not_negative("height", height);
    require_not_negative("lap at top", lap_at_top);
    require(faces.base || faces.walls || faces.top, "faces must name at least one of base, walls, top");
    const Area walls = pit_walls(base_length, base_width, height, batter);
    const Area top = pit_area(base_length, base_width, height, batter);
    const Length run = horizontal_run(batter, height);
    Area area = 2.0 * (base_length + base_width + 4.0 * run) * lap_at_top;
    if (faces.base) area += base_length * base_width;
    if (faces.walls) area += walls;
    if (faces.top) area += top;
    return area;
}

namespace {

double strips(Length width, Length roll_width, Length lap) {
    require_positive("width", width);
    require_positive("roll width", roll_width);
    require_not_negative("lap", lap);
    require(lap < roll_width, shown("lap", lap), " must be less than the roll width (", amount(roll_width),
            ")");
    return std::max(1.0, whole_up((width - lap) / (roll_width - lap)));
}

/// Rolls used, the last one as the part of it that is used.
double rolls_used(double strip_count, Length strip_length, Length roll_length, Length lap) {
    const Length hair = whole_tolerance * roll_length;
    double opened = 0;
    Length left = zero;  // of the roll in hand
    for (double strip = 0; strip < strip_count; ++strip) {
        Length to_cover = strip_length;
        bool first_piece = true;
        while (to_cover > hair) {
            // A rest that is no longer than the lap covers nothing, at the start of a strip no more than
            // later.
            if (left <= lap + hair) {
                if (++opened > 1e6)
                    refuse_domain("more than a million rolls: check the units of length and roll length");
                left = roll_length;
            }
            const Length needed = first_piece ? to_cover : to_cover + lap;
            const Length piece = std::min(left, needed);
            left -= piece;
            to_cover -= first_piece ? piece : piece - lap;
            first_piece = false;
        }
    }
    return opened - static_cast<double>(left / roll_length);
}

}  // namespace

Count rolls(Length length, Length width, Length roll_length, Length roll_width, Length lap, Share waste) {
    require_positive("length", length);
    require_positive("roll length", roll_length);
    require_not_negative("waste", waste);
    const double strip_count = strips(width, roll_width, lap);
    require(lap < roll_length, shown("lap", lap), " must be less than the roll length (", amount(roll_length),
            ")");
    require(strip_count * static_cast<double>(length / roll_length) < 1e6,
            "more than a million rolls: check the units of the lengths");
    return count(whole_up(rolls_used(strip_count, length, roll_length, lap) * (1 + number(waste))));
}

Area rolls_area(Length length, Length width, Length roll_length, Length roll_width, Length lap, Share waste) {
    return number(rolls(length, width, roll_length, roll_width, lap, waste)) * roll_length * roll_width;
}

Mass liner_mass(Area area, Length thickness, Density density) {
    require_not_negative("area", area);
    require_positive("thickness", thickness);
    require_positive("density", density);
    return area * thickness * density;
}

Length liner_seams(Length length, Length width, Length roll_width, Length lap) {
    require_positive("length", length);
    return (strips(width, roll_width, lap) - 1) * length;
}

}  // namespace undercroft::calc
