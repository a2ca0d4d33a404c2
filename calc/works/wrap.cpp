#include "calc/works/wrap.hpp"

#include "calc/works/excavation.hpp"

namespace undercroft::calc {

namespace {

void require_wrap(Length base_length, Length base_width, Length height, Batter batter, Faces faces) {
    require_positive("base length", base_length);
    require_positive("base width", base_width);
    require_not_negative("height", height);
    require_not_negative("batter", batter);
    require(faces.base || faces.walls || faces.top, "faces must name at least one of base, walls, top");
}

void require_laps(const WrapLaps& laps) {
    require_not_negative("lap at base", laps.at_base);
    require_not_negative("lap at top", laps.at_top);
}

}  // namespace

SheetFaces wrap_faces(Length base_length, Length base_width, Length height, Batter batter, Faces faces,
                      const WrapLaps& laps) {
    require_wrap(base_length, base_width, height, batter, faces);
    require_laps(laps);
    const Length top_length = pit_side(base_length, height, batter);
    const Length top_width = pit_side(base_width, height, batter);
    SheetFaces sheets;
    if (faces.base) sheets.emplace_back(base_length, base_width);
    if (faces.walls) {
        require_positive("height", height);
        const Length high = pit_slant(height, batter) + laps.at_base + laps.at_top;
        for (const Length& edge : {top_length, top_length, top_width, top_width})
            sheets.emplace_back(edge + laps.at_base, high);
    }
    if (faces.top) sheets.emplace_back(top_length, top_width);
    return sheets;
}

Area lapped_wrap_area(Length base_length, Length base_width, Length height, Batter batter, Faces faces,
                      const WrapLaps& laps) {
    require_laps(laps);
    const Area area = wrap_area(base_length, base_width, height, batter, faces, laps.at_top);
    return faces.walls ? area + 2.0 * (base_length + base_width) * laps.at_base : area;
}

Length wrap_seams(Length base_length, Length base_width, Length height, Batter batter, Faces faces) {
    require_wrap(base_length, base_width, height, batter, faces);
    if (!faces.walls) return zero;
    const Length run = horizontal_run(batter, height);
    Length seams = 4.0 * sqrt(height * height + 2.0 * (run * run));
    if (faces.base) seams += 2.0 * (base_length + base_width);
    if (faces.top) seams += 2.0 * (base_length + base_width + 4.0 * run);
    return seams;
}

}  // namespace undercroft::calc
