#include "calc/works/sheet_goods.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

/// The faces named in a text: any of base, walls, top.
template <>
struct Slot<calc::Faces> {
    static calc::Faces read(const Cell& cell, const Terms&) {
        const std::string text = lower_case(read_text(cell, [] { return kind_text(type()); }));
        calc::Faces faces;
        std::size_t start = 0;
        while (start < text.size()) {
            const std::size_t end = std::min(text.find_first_of(" ,;+", start), text.size());
            const std::string word = text.substr(start, end - start);
            if (word == "base")
                faces.base = true;
            else if (word == "walls")
                faces.walls = true;
            else if (word == "top")
                faces.top = true;
            else if (!word.empty())
                refuse_choice(word, "a face", "one or more of base, walls, top");
            start = end + 1;
        }
        return faces;
    }
    static ValueType type() {
        return {.shape = Shape::words, .list = "base, walls, top", .words = {"base", "walls", "top"}};
    }
    static Reading reading(const calc::Faces& faces) {
        return {
            std::string(faces.base ? "base " : "") + (faces.walls ? "walls " : "") + (faces.top ? "top" : ""),
            {}};
    }
};

namespace {

Entry& takes_rolls(Entry& entry) {
    return entry.takes("length", "L", "Length to cover, along the strips")
        .within(usual::plan_length)
        .takes("width", "W", "Width to cover, across the strips")
        .within(usual::plan_width)
        .takes("roll length", "L_r", "Length of a roll")
        .within(usual::roll_length)
        .takes("roll width", "W_r", "Width of a roll")
        .within(usual::roll_width)
        .takes("lap", "lap", "Overlap at sides and ends")
        .within(usual::lap.or_zero())
        .takes("waste", "w", "Share added for cutting and damage", 0.0)
        .within(usual::waste);
}

std::vector<Function> roll_functions() {
    auto rolls = function("UC.ROLLS", &calc::rolls);
    rolls.says("Whole rolls to cover a rectangle in strips with laps at sides and ends")
        .equation(
            "strips n = ceil((W - lap)/(W_r - lap)); strips laid one after the other, each join one lap "
            "more; N = ceil(rolls used (1 + w))")
        .source("common practice")
        .example("UC.ROLLS(\"60 m\"; \"30 m\"; \"60 m\"; \"4.5 m\"; \"450 mm\")", "8", "exact",
                 Origin::mathematics, "29.55/4.05 rounded up: eight strips, each of a whole roll")
        .example("UC.ROLLS(\"60 m\"; \"8.55 m\"; \"60 m\"; \"4.5 m\"; \"450 mm\")", "2", "exact",
                 Origin::mathematics, "8.1/4.05: the exact fit is not one strip more");
    takes_rolls(rolls).gives("N", "Rolls");

    auto area = function("UC.ROLLS.AREA", &calc::rolls_area);
    area.says("Area of the whole rolls bought to cover a rectangle")
        .equation("A = N L_r W_r; N as UC.ROLLS")
        .source("common practice")
        .example("UC.ROLLS.AREA(\"60 m\"; \"30 m\"; \"60 m\"; \"4.5 m\"; \"450 mm\")", "2160", "1e-12 rel",
                 Origin::mathematics, "eight rolls of 60 m x 4.5 m");
    takes_rolls(area).gives("A", "Area bought");

    return {rolls, area};
}

std::vector<Function> liner_functions() {
    return {
        function("UC.LINER.MASS", &calc::liner_mass)
            .says("Mass of a sheet of liner")
            .equation("M = A t rho")
            .source("mass balance")
            .example("UC.LINER.MASS(\"600 m2\"; \"1.5 mm\"; \"940 kg/m3\")", "846", "1e-12 rel",
                     Origin::mathematics, "0.9 m3 of 940 kg/m3")
            .example("UC.LINER.MASS(\"1 m2\"; \"1.5 mm\"; \"940 kg/m3\"; \"g\")", "1410", "1e-12 rel",
                     Origin::mathematics, "mass per area: 0.0015 x 940")
            .example("UC.LINER.MASS(\"1 m2\"; \"40 mil\"; \"0.94 g/cm3\"; \"g\")", "955.04", "1e-12 rel",
                     Origin::mathematics, "mass per area: 0.001016 x 940")
            .example("UC.LINER.MASS(\"5000 ft2\"; \"60 mil\"; \"58.7 lb/ft3\"; \"lb\")", "1467.5", "1e-9 rel",
                     Origin::mathematics, "25 ft3 of 58.7 lb/ft3")
            .takes("area", "A", "Area of the sheet")
            .within(usual::sheet_area.or_zero())
            .takes("thickness", "t", "Thickness of the sheet")
            .within(usual::liner_thickness)
            .takes("density", "rho", "Density of the material")
            .within(usual::liner_density)
            .gives("M", "Mass"),
        function("UC.LINER.SEAMS", &calc::liner_seams)
            .says("Length of seam between panels laid side by side")
            .equation("l_s = (n - 1) L, n = ceil((W - lap)/(W_r - lap))")
            .source("common practice")
            .example("UC.LINER.SEAMS(\"60 m\"; \"30 m\"; \"4.5 m\"; \"450 mm\")", "420", "1e-12 rel",
                     Origin::mathematics, "eight panels, seven seams")
            .takes("length", "L", "Length to cover, along the panels")
            .within(usual::plan_length)
            .takes("width", "W", "Width to cover, across the panels")
            .within(usual::plan_width)
            .takes("roll width", "W_r", "Width of a panel")
            .within(usual::roll_width)
            .takes("lap", "lap", "Overlap that is welded", 0.0)
            .within(usual::lap.or_zero())
            .gives("l_s", "Length of seam"),
    };
}

Function wrap_entry() {
    return function("UC.WRAP.AREA", &calc::wrap_area)
        .says("Net area of fabric or liner around a bed with sloping walls")
        .equation(
            "A = L W [base] + h sqrt(1 + z^2) (2 L + 2 W + 4 z h) [walls] + (L + 2 z h)(W + 2 "
            "z h) [top] + 2 (L + W + 4 z h) lap")
        .source("elementary geometry; common practice")
        .example("UC.WRAP.AREA(\"20 m\"; \"10 m\"; \"3 m\"; \"0.75H:1V\"; \"walls top\"; \"1 m\")", "692",
                 "1e-12 rel", Origin::mathematics,
                 "walls 258.75 m2, top 24.5 m x 14.5 m = 355.25 m2, lap 1 m along 78 m")
        .example("UC.WRAP.AREA(\"30 m\"; \"12 m\"; \"1.5 m\"; \"0H:1V\")", "846", "1e-12 rel",
                 Origin::mathematics, "box of 30 m x 12 m x 1.5 m")
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
        .gives("A", "Net area");
}

}  // namespace

std::vector<Function> sheet_goods_functions() {
    std::vector<Function> all = {wrap_entry()};
    for (const auto& entries : {roll_functions(), liner_functions()})
        all.insert(all.end(), entries.begin(), entries.end());
    return all;
}

}  // namespace undercroft::addin
