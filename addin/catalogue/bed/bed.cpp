#include "calc/bed/bed.hpp"
#include "addin/catalogue/bed/entries.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_bed.hpp"

namespace undercroft::addin {

namespace {

/// What a row is made of.
Entry& takes_units(Entry& entry) {
    return entry.takes("end unit", "E", "Laid length of an end unit, with its end wall")
        .within(usual::unit_length)
        .takes("middle unit", "M", "Laid length of a middle unit")
        .within(usual::unit_length)
        .takes("joint overlap", "o", "Length by which joined units overlap")
        .within(usual::joint_overlap);
}

/// What a row takes of the width.
Entry& takes_bed_rows(Entry& entry) {
    return entry.takes("span", "B_f", "Width of a chamber over its feet")
        .within(usual::width_over_feet)
        .takes("row gap", "g", "Clear width of stone between rows")
        .within(usual::row_gap)
        .takes("side margin", "m", "Stone beyond the outer rows, each side")
        .within(usual::bed_margin);
}

Function row_units_entry() {
    auto units = function("UC.ROW.UNITS", &calc::row_units);
    units.says("Units that fit in a row; the two end units carry the end walls; 0 when not even two fit")
        .also_called("number of chambers, how many fit, chambers per row")
        .related({"UC.ROW.LENGTH", "UC.BED.ROWS"})
        .to_try("UC.ROW.UNITS(\"44 m\"; \"2.4 m\"; \"2.3 m\"; \"100 mm\")")
        .to_try("UC.ROW.UNITS(\"148 ft\"; \"8 ft\"; \"7.5 ft\"; \"4 in\")")
        .refuses("UC.ROW.UNITS(44000; 2.4; 2.3; 0.1)")
        .sketch(Sketch::bed_plan)
        .equation("u = 2 + floor((l_a - 2 E + o)/(M - o))")
        .source("common practice")
        .takes("available length", "l_a", "Length that the row may take")
        .within(usual::plan_length);
    return takes_units(units)
        .gives("u", "Units in the row, end units included")
        .example("UC.ROW.UNITS(\"30 m\"; \"2.4 m\"; \"2.3 m\"; \"100 mm\")", "13", "exact",
                 Origin::mathematics, "two ends of 2.4 m, then 25.3 m for units of 2.2 m net");
}

Function row_length_entry() {
    auto length = function("UC.ROW.LENGTH", &calc::row_length);
    length.says("Installed length of a row of units")
        .also_called("installed length, length of a row of chambers")
        .related({"UC.ROW.UNITS", "UC.BED.LENGTH"})
        .to_try("UC.ROW.LENGTH(20; \"2.4 m\"; \"2.3 m\"; \"100 mm\")")
        .to_try("UC.ROW.LENGTH(\"20 each\"; \"8 ft\"; \"7.5 ft\"; \"4 in\"; \"ft\")")
        .sketch(Sketch::bed_plan)
        .equation("l = 2 E + (u - 2) M - (u - 1) o")
        .source("common practice")
        .takes("units", "u", "Units in the row, end units included; at least 2")
        .within(usual::units_in_row);
    return takes_units(length)
        .gives("l", "Length of the row")
        .example("UC.ROW.LENGTH(13; \"2.4 m\"; \"2.3 m\"; \"100 mm\")", "28.9", "1e-12 rel",
                 Origin::mathematics, "4.8 m + 11 x 2.3 m - 12 x 0.1 m");
}

Function bed_rows_entry() {
    auto rows = function("UC.BED.ROWS", &calc::bed_rows);
    rows.says("Rows that fit side by side")
        .also_called("number of rows, how many rows fit, rows side by side")
        .related({"UC.BED.WIDTH", "UC.ROW.UNITS"})
        .to_try("UC.BED.ROWS(\"14 m\"; \"1.3 m\"; \"150 mm\"; \"305 mm\")")
        .to_try("UC.BED.ROWS(\"46 ft\"; \"52 in\"; \"6 in\"; \"12 in\")")
        .sketch(Sketch::bed_section)
        .equation("r = floor((W_a - 2 m + g)/(B_f + g))")
        .source("common practice")
        .takes("available width", "W_a", "Width that the bed may take")
        .within(usual::plan_width);
    return takes_bed_rows(rows)
        .gives("r", "Rows")
        .example("UC.BED.ROWS(\"12 m\"; \"1.3 m\"; \"150 mm\"; \"305 mm\")", "7", "exact",
                 Origin::mathematics,
                 "7 x 1.3 m + 6 x 0.15 m + 2 x 0.305 m = 10.61 m; an eighth row needs 12.06 m");
}

Function bed_width_entry() {
    auto width = function("UC.BED.WIDTH", &calc::bed_width);
    width.says("Width of the bed for a number of rows")
        .also_called("footprint width, trench width, excavation width")
        .related({"UC.BED.ROWS", "UC.BED.LENGTH", "UC.SIDEFILL.WIDTH"})
        .to_try("UC.BED.WIDTH(9; \"1.3 m\"; \"150 mm\"; \"305 mm\")")
        .to_try("UC.BED.WIDTH(\"9 each\"; \"52 in\"; \"6 in\"; \"12 in\"; \"ft\")")
        .sketch(Sketch::bed_section)
        .equation("W = r B_f + (r - 1) g + 2 m")
        .source("common practice")
        .takes("rows", "r", "Rows of chambers")
        .within(usual::rows);
    return takes_bed_rows(width)
        .gives("W", "Width of the bed at its base")
        .example("UC.BED.WIDTH(7; \"1.3 m\"; \"150 mm\"; \"305 mm\")", "10.61", "1e-12 rel",
                 Origin::mathematics, "7 x 1.3 m + 6 x 0.15 m + 2 x 0.305 m");
}

Function bed_length_entry() {
    return function("UC.BED.LENGTH", &calc::bed_length)
        .says("Length of the bed for a length of row")
        .also_called("footprint length, trench length")
        .related({"UC.ROW.LENGTH", "UC.BED.WIDTH"})
        .to_try("UC.BED.LENGTH(\"44.3 m\"; \"305 mm\")")
        .to_try("UC.BED.LENGTH(\"147 ft\"; \"12 in\"; \"ft\")")
        .sketch(Sketch::bed_plan)
        .equation("L = l + 2 e")
        .source("common practice")
        .takes("row length", "l", "Installed length of a row")
        .within(usual::plan_length)
        .takes("end margin", "e", "Stone beyond the ends of the rows, each end")
        .within(usual::bed_margin)
        .gives("L", "Length of the bed at its base")
        .example("UC.BED.LENGTH(\"28.9 m\"; \"305 mm\")", "29.51", "1e-12 rel", Origin::mathematics,
                 "a margin at each end");
}

Function bed_ports_entry() {
    return function("UC.BED.PORTS", &calc::bed_ports)
        .says(
            "Inspection ports: at both ends of each row and, with an interval, at most that many units "
            "apart")
        .also_called("inspection ports, risers, access, cleanout")
        .related({"UC.ROW.UNITS", "UC.BED.ROWS"})
        .to_try("UC.BED.PORTS(9; 20)")
        .to_try("UC.BED.PORTS(9; 20; 10)")
        .sketch(Sketch::bed_plan)
        .equation("p = r (ceil((u - 1)/k) + 1); k = 0: two a row")
        .source("common practice")
        .takes("rows", "r", "Rows of chambers")
        .within(usual::rows)
        .takes("units", "u", "Units in a row")
        .within(usual::units_in_row)
        .takes("interval", "k", "Units from port to port; 0 for one at each end of a row", 0.0)
        .within(usual::port_interval)
        .gives("p", "Inspection ports")
        .example("UC.BED.PORTS(7; 13)", "14", "exact", Origin::common_practice, "one at each end of a row")
        .example("UC.BED.PORTS(7; 13; 4)", "28", "exact", Origin::mathematics,
                 "units 1, 5, 9 and 13 of each row");
}

}  // namespace

std::vector<Function> bed_functions() {
    return {row_units_entry(), row_length_entry(), bed_rows_entry(),
            bed_width_entry(), bed_length_entry(), bed_ports_entry()};
}

}  // namespace undercroft::addin
