#include "calc/bed/drawing.hpp"
#include "addin/catalogue/bed/entries.hpp"
#include "addin/catalogue/bed/shape.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_bed.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* section_source =
    "geometry of the bed; x across from the middle, y up from the base of the bed";
constexpr const char* plan_source = "geometry of the bed; the origin is the middle of the plan";
constexpr const char* batter_says = "Slope of the walls; 0H:1V for vertical walls";

Entry& takes_drawing_rows(Entry& entry) {
    return entry.takes("rows", "r", "Rows of chambers")
        .within(usual::rows)
        .takes("width", "B_f", "Width of a row, over the feet")
        .within(usual::width_over_feet)
        .takes("row gap", "g", "Clear width of stone between rows")
        .within(usual::row_gap);
}

Entry& takes_row_length(Entry& entry) {
    return entry.takes("row length", "l", "Installed length of a row").within(usual::plan_length);
}

Entry& takes_end_unit(Entry& entry) {
    return entry.takes("end unit", "E", "Laid length of an end unit").within(usual::unit_length);
}

Entry& drawn(Entry& entry) {
    return entry.takes("scale", "X", "Every length is divided by it; 1 draws in full size", 1.0)
        .within(usual::scale)
        .gives_columns("Points of the outline", {{"x", "x"}, {"y", "y"}});
}

Function scale_entry() {
    return function("UC.DRAW.SCALE", &calc::drawing_scale)
        .says(
            "Scale 1:X at which a drawing fits on paper: X = 1, 1.25, 1.5, 2, 2.5, 3, 4, 5 or 7.5 "
            "times a power of ten")
        .related({"UC.DRAW.BOX", "UC.DRAW.PIT", "UC.DRAW.ARCHES", "UC.DRAW.ROWS"})
        .also_called("scale of a drawing, fit to paper, drawing, chart of outlines")
        .equation("X >= max(w/w_p, h/h_p)")
        .source("ISO 5455:1979 for 1, 2 and 5 (from memory); the others as on scale rules (common practice)")
        .takes("width", "w", "Width of what is drawn")
        .within(usual::drawn_length)
        .takes("height", "h", "Height of what is drawn")
        .within(usual::drawn_height)
        .takes("paper width", "w_p", "Width of the paper")
        .within(usual::paper)
        .takes("paper height", "h_p", "Height of the paper")
        .within(usual::paper)
        .gives("X", "Denominator of the scale")
        .example("UC.DRAW.SCALE(\"14.4 m\"; \"2 m\"; \"170 mm\"; \"80 mm\")", "100", "exact",
                 Origin::from_memory, "ISO 5455:1979 has 1:100; 14.4 m on 170 mm needs 1:84.7")
        .example("UC.DRAW.SCALE(\"42 m\"; \"14 m\"; \"170 mm\"; \"80 mm\")", "250", "exact",
                 Origin::common_practice, "1:247 is needed; 1:250 is usual in building");
}

Function draw_pit_entry() {
    auto pit = function("UC.DRAW.PIT", &calc::drawn_pit);
    pit.says(
           "Outline of a pit in cross-section, or of the stone when closed along its top: points for a chart")
        .related({"UC.DRAW.SCALE", "UC.DRAW.LEVEL", "UC.DRAW.ARCHES", "UC.PIT.VOLUME"})
        .also_called("section of a pit, outline to scale, drawing, chart of outlines")
        .equation("(-W/2 - z d, d), (-W/2, 0), (W/2, 0), (W/2 + z d, d)")
        .source(section_source)
        .takes("base width", "W", "Width at the base")
        .within(usual::plan_width)
        .takes("depth", "d", "Depth of the pit, or height of the stone")
        .within(usual::pit_depth.or_zero())
        .takes("batter", "z", batter_says)
        .within(usual::batter)
        .takes("closed", "closed", "TRUE to close the outline along its top", 0.0);
    return drawn(pit).example(
        "INDEX(UC.DRAW.PIT(\"12 m\"; \"2 m\"; \"1H:1V\"; \"no\"; 100; \"mm;mm\"); 2; 1)", "-80", "1e-12 rel",
        Origin::mathematics, "half of 12 m and 2 m of batter, at 1:100");
}

Function draw_level_entry() {
    auto level = function("UC.DRAW.LEVEL", &calc::drawn_level);
    level.says("A level across the pit at a height above its base: two points for a chart")
        .related({"UC.DRAW.PIT", "UC.DRAW.SCALE", "UC.ROUTE.DEPTH"})
        .also_called("water line, layer line, drawing, chart of outlines")
        .equation("x = -+(W/2 + z h + o), y = h")
        .source(section_source)
        .takes("base width", "W", "Width at the base")
        .within(usual::plan_width)
        .takes("batter", "z", batter_says)
        .within(usual::batter)
        .takes("level", "h", "Height above the base")
        .within(usual::drawn_level)
        .takes("overhang", "o", "Length beyond the pit, each side", 0.0)
        .within(usual::overhang);
    return drawn(level).example(
        "INDEX(UC.DRAW.LEVEL(\"12 m\"; \"1H:1V\"; \"1 m\"; \"0 m\"; 100; \"mm;mm\"); 3; 1)", "70",
        "1e-12 rel", Origin::mathematics, "half of 12 m and 1 m of batter, at 1:100");
}

Function arches_entry() {
    auto arches = function("UC.DRAW.ARCHES", [](Count rows, Length width, Length row_gap, calc::Shape shape,
                                                Length span, Length rise, Length base_height, Share scale) {
        return calc::drawn_arches({rows, width, row_gap}, {shape, span, rise}, base_height, scale);
    });
    arches.says("The arches of all rows in cross-section: points for a chart, a blank row between arches")
        .related({"UC.DRAW.SCALE", "UC.DRAW.PIT", "UC.BED.WIDTH", "UC.ARCH.WIDTH"})
        .also_called("section of chambers, outline, drawing, chart of outlines")
        .equation("half width w(y)/2 at each height, as UC.ARCH.WIDTH")
        .source(section_source);
    takes_drawing_rows(arches)
        .takes("shape", "shape", shape_says)
        .takes("span", "B", span_says)
        .within(usual::chamber_span)
        .takes("rise", "H", rise_says)
        .within(usual::chamber_rise)
        .takes("base height", "b", "Height of the feet above the base of the bed")
        .within(usual::stone_layer);
    return drawn(arches).example(
        "INDEX(UC.DRAW.ARCHES(1; \"1.3 m\"; \"150 mm\"; \"ellipse\"; \"1.2 m\"; \"750 mm\"; \"200 mm\"); "
        "10; 2)",
        "0.95", "1e-12 rel", Origin::mathematics, "the crown: 0.2 m of base and 0.75 m of rise");
}

Function box_entry() {
    auto box = function("UC.DRAW.BOX", &calc::drawn_box);
    box.says("A rectangle around the middle of the plan: points for a chart")
        .related({"UC.DRAW.SCALE", "UC.DRAW.ROWS", "UC.BED.LENGTH", "UC.BED.WIDTH"})
        .also_called("plan outline, rectangle, drawing, chart of outlines")
        .equation("x = -+L/2, y = -+W/2")
        .source(plan_source)
        .takes("length", "L", "Length")
        .within(usual::plan_length)
        .takes("width", "W", "Width")
        .within(usual::plan_width);
    return drawn(box).example("INDEX(UC.DRAW.BOX(\"40 m\"; \"12 m\"; 250; \"mm;mm\"); 3; 1)", "80",
                              "1e-12 rel", Origin::mathematics, "half of 40 m at 1:250");
}

Function draw_rows_entry() {
    auto rows = function("UC.DRAW.ROWS",
                         [](Count row_count, Length width, Length row_gap, Length row_length, Share scale) {
                             return calc::drawn_rows({row_count, width, row_gap}, row_length, scale);
                         });
    rows.says("The rows in plan, each a rectangle: points for a chart, a blank row between them")
        .related({"UC.DRAW.SCALE", "UC.DRAW.BOX", "UC.DRAW.ENDS", "UC.DRAW.PORTS", "UC.BED.ROWS"})
        .also_called("plan of rows, drawing, chart of outlines")
        .equation("rectangles of l by B_f, g apart")
        .source(plan_source);
    return drawn(takes_row_length(takes_drawing_rows(rows)))
        .example("INDEX(UC.DRAW.ROWS(2; \"1.3 m\"; \"150 mm\"; \"28.9 m\"); 2; 2)", "-1.375", "1e-12 rel",
                 Origin::mathematics, "two rows of 1.3 m and a gap of 0.15 m are 2.75 m");
}

Function ends_entry() {
    auto ends = function("UC.DRAW.ENDS", [](Count row_count, Length width, Length row_gap, Length row_length,
                                            Length end_unit, Share scale) {
        return calc::drawn_ends({row_count, width, row_gap}, row_length, end_unit, scale);
    });
    ends.says("The joints behind the end units of each row in plan: points for a chart")
        .related({"UC.DRAW.ROWS", "UC.DRAW.PORTS", "UC.ROW.LENGTH"})
        .also_called("end caps in plan, drawing, chart of outlines")
        .equation("x = -+(l/2 - E)")
        .source(plan_source);
    return drawn(takes_end_unit(takes_row_length(takes_drawing_rows(ends))))
        .example("INDEX(UC.DRAW.ENDS(1; \"1.3 m\"; \"150 mm\"; \"28.9 m\"; \"2.4 m\"); 2; 1)", "-12.05",
                 "1e-12 rel", Origin::mathematics, "half of 28.9 m less an end unit");
}

Function draw_ports_entry() {
    auto ports = function("UC.DRAW.PORTS",
                          [](Count row_count, Length width, Length row_gap, Count units, Count interval,
                             Length end_unit, Length middle_unit, Length joint_overlap, Share scale) {
                              return calc::drawn_ports({row_count, width, row_gap}, units, interval, end_unit,
                                                       middle_unit, joint_overlap, scale);
                          });
    ports.says("The inspection ports in plan: points for a chart, a blank row between them")
        .related({"UC.DRAW.ROWS", "UC.DRAW.ENDS", "UC.BED.PORTS", "UC.SETOUT.PORTS"})
        .also_called("ports in plan, drawing, chart of outlines")
        .equation("middles of the units that UC.BED.PORTS counts")
        .source(plan_source);
    takes_drawing_rows(ports)
        .takes("units in row", "u", "Units in a row")
        .within(usual::units_in_row)
        .takes("interval", "k", "Units from port to port; 0 each for one at each end of a row")
        .within(usual::port_interval);
    takes_end_unit(ports)
        .takes("middle unit", "M", "Laid length of a middle unit")
        .within(usual::unit_length)
        .takes("joint overlap", "o", "Length by which joined units overlap")
        .within(usual::joint_overlap);
    return drawn(ports).example(
        "INDEX(UC.DRAW.PORTS(1; \"1.3 m\"; \"150 mm\"; 13; \"0 each\"; \"2.4 m\"; \"2.3 m\"; \"100 mm\"); 2; "
        "1)",
        "-13.25", "1e-12 rel", Origin::mathematics, "half of 28.9 m less half an end unit");
}

}  // namespace

std::vector<Function> drawing_functions() {
    return {scale_entry(), draw_pit_entry(),  draw_level_entry(), arches_entry(),
            box_entry(),   draw_rows_entry(), ends_entry(),       draw_ports_entry()};
}

}  // namespace undercroft::addin
