#include "calc/works/wrap.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "addin/catalogue/works/faces_slot.hpp"

namespace undercroft::addin {

namespace {

Entry& takes_wrap_bed(Entry& entry, const char* height = "height") {
    return entry.takes("base length", "L", "Length of the bed at its base")
        .within(usual::plan_length)
        .takes("base width", "W", "Width of the bed at its base")
        .within(usual::plan_width)
        .takes(height, "h", "Height that is wrapped")
        .within(usual::bed_height.or_zero())
        .takes("batter", "z", "Slope of the walls; 0H:1V for vertical walls")
        .within(usual::batter)
        .takes("faces", "faces", "Any of base, walls, top", u"base walls top");
}

Function wrap_entry() {
    return function("UC.WRAP.AREA",
                    [](Length base_length, Length base_width, Length height, Batter batter, calc::Faces faces,
                       Length lap_at_top, Length lap_at_base) {
                        return calc::lapped_wrap_area(base_length, base_width, height, batter, faces,
                                                      {lap_at_base, lap_at_top});
                    })
        .says("Net area of fabric or liner around a bed with sloping walls")
        .also_called("geotextile, geomembrane, envelope, lining, fabric area")
        .related({"UC.ROLLS", "UC.LINER.MASS"})
        .to_try("UC.WRAP.AREA(\"45 m\"; \"14 m\"; \"1.2 m\"; \"1H:1V\"; \"base walls top\"; \"300 mm\")")
        .to_try("UC.WRAP.AREA(\"150 ft\"; \"46 ft\"; \"4 ft\"; \"1H:1V\"; \"base walls\"; \"1 ft\"; \"yd2\")")
        .refuses("UC.WRAP.AREA(\"45 m\"; \"14 m\"; \"1.2 m\"; \"1H:1V\"; \"floor\"; \"300 mm\")")
        .sketch(Sketch::lap)
        .equation(
            "A = L W [base] + h sqrt(1 + z^2) (2 L + 2 W + 4 z h) [walls] + (L + 2 z h)(W + 2 "
            "z h) [top] + 2 (L + W + 4 z h) lap + 2 (L + W) lap_b [walls]")
        .source("elementary geometry; common practice")
        .example("UC.WRAP.AREA(\"20 m\"; \"10 m\"; \"3 m\"; \"0.75H:1V\"; \"walls top\"; \"1 m\")", "692",
                 "1e-12 rel", Origin::mathematics,
                 "walls 258.75 m2, top 24.5 m x 14.5 m = 355.25 m2, lap 1 m along 78 m")
        .example("UC.WRAP.AREA(\"30 m\"; \"12 m\"; \"1.5 m\"; \"0H:1V\")", "846", "1e-12 rel",
                 Origin::mathematics, "box of 30 m x 12 m x 1.5 m")
        .example("UC.WRAP.AREA(\"30 m\"; \"12 m\"; \"1.5 m\"; \"0H:1V\"; ; ; \"m2\"; \"0.5 m\")", "888",
                 "1e-12 rel", Origin::mathematics, "the same box with a lap of 0.5 m along 84 m")
        .takes("base length", "L", "Length of the bed at its base")
        .within(usual::plan_length)
        .takes("base width", "W", "Width of the bed at its base")
        .within(usual::plan_width)
        .takes("height", "h", "Height that is wrapped")
        .within(usual::bed_height.or_zero())
        .takes("batter", "z", "Slope of the walls; 0 for vertical walls")
        .within(usual::batter)
        .takes("faces", "faces", "Any of base, walls, top", u"base walls top")
        .takes("lap at top", "lap", "Width laid over along the upper edge", 0.0)
        .within(usual::edge_lap)
        .takes("lap at base", "lap_b", "Width of the walls laid under or over the base", 0.0)
        .within(usual::edge_lap)
        .added_later()
        .gives("A", "Net area");
}

Function faces_entry() {
    auto rectangles = function("UC.WRAP.FACES", [](Length base_length, Length base_width, Length height,
                                                   Batter batter, calc::Faces faces, Length lap_at_top,
                                                   Length lap_at_base) {
        return calc::wrap_faces(base_length, base_width, height, batter, faces, {lap_at_base, lap_at_top});
    });
    rectangles
        .says(
            "Faces of a bed as rectangles to cut sheet for: base, two long and two short walls, top; the "
            "table "
            "that UC.PANELS takes")
        .related({"UC.PANELS", "UC.WRAP.AREA", "UC.PANELS.ROLLS"})
        .also_called("geotextile areas, geomembrane panels, envelope, fabric wrap, liner faces")
        .equation(
            "base L x W; walls (L + 2 z h + lap_b) x (h sqrt(1 + z^2) + lap_b + lap); top (L + 2 z h) x (W "
            "+ 2 z h)")
        .source("geometry; common practice")
        .example(
            "INDEX(UC.WRAP.FACES(\"20 m\"; \"10 m\"; \"3 m\"; \"0.75H:1V\"; ; \"0.5 m\"; \"0.25 m\"); 3; 2)",
            "4.5", "1e-9 rel", Origin::mathematics, "a wall's slant of 3.75 m and both laps")
        .example(
            "INDEX(UC.WRAP.FACES(\"100 ft\"; \"40 ft\"; \"5 ft\"; \"1H:1V\"; \"top\"; ; ; \"ft;ft\"); 2; 1)",
            "110", "1e-9 rel", Origin::mathematics, "100 ft and twice 5 ft");
    return takes_wrap_bed(rectangles, "wrapped height")
        .takes("lap at top", "lap", "Width of the walls laid over the top", 0.0)
        .within(usual::edge_lap)
        .takes("lap at base", "lap_b", "Width of the walls laid under or over the base", 0.0)
        .within(usual::edge_lap)
        .gives_columns("Faces, one a row", {{"length", "along the strips"}, {"width", "across them"}});
}

Function wrap_seams_entry() {
    auto seams = function("UC.WRAP.SEAMS", &calc::wrap_seams);
    seams
        .says(
            "Length of the seams between the faces of a wrapped bed: along the base, up the corners, along "
            "the top")
        .related({"UC.WRAP.AREA", "UC.LINER.SEAMS", "UC.PANELS.SEAMS"})
        .also_called("seam length, welds, liner joints, overlap at edges")
        .equation(
            "l = 2 (L + W) [base, walls] + 4 h sqrt(1 + 2 z^2) [walls] + 2 (L + W + 4 z h) [walls, top]")
        .source("geometry")
        .example("UC.WRAP.SEAMS(\"30 m\"; \"12 m\"; \"1.5 m\"; \"0H:1V\")", "174", "1e-12 rel",
                 Origin::mathematics, "twice 84 m and four corners of 1.5 m")
        .example("UC.WRAP.SEAMS(\"100 ft\"; \"40 ft\"; \"6 ft\"; \"2H:1V\"; \"base walls\"; \"ft\")", "352",
                 "1e-9 rel", Origin::mathematics, "280 ft and four corners of 6 x 3 ft");
    return takes_wrap_bed(seams).gives("l", "Length of seam");
}

}  // namespace

std::vector<Function> wrap_functions() {
    return {wrap_entry(), faces_entry(), wrap_seams_entry()};
}

}  // namespace undercroft::addin
