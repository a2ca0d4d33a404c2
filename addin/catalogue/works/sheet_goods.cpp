#include "calc/works/sheet_goods.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"

namespace undercroft::addin {

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
        .also_called("geotextile rolls, overlap, number of rolls")
        .related({"UC.ROLLS.AREA", "UC.WRAP.AREA", "UC.ORDER"})
        .to_try("UC.ROLLS(\"45 m\"; \"14 m\"; \"100 m\"; \"4.5 m\"; \"450 mm\"; \"5 %\")")
        .to_try("UC.ROLLS(\"150 ft\"; \"46 ft\"; \"300 ft\"; \"15 ft\"; \"18 in\")")
        .refuses("UC.ROLLS(\"45 m\"; \"14 m\"; \"100 m\"; \"4.5 m\"; \"450 mm\"; 5)")
        .sketch(Sketch::lap)
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
        .also_called("coverage, roll area, fabric ordered")
        .related({"UC.ROLLS", "UC.WRAP.AREA"})
        .to_try("UC.ROLLS.AREA(\"45 m\"; \"14 m\"; \"100 m\"; \"4.5 m\"; \"450 mm\")")
        .to_try("UC.ROLLS.AREA(\"150 ft\"; \"46 ft\"; \"300 ft\"; \"15 ft\"; \"18 in\"; ; \"yd2\")")
        .sketch(Sketch::lap)
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
            .also_called("geomembrane, HDPE, weight of liner")
            .related({"UC.LINER.SEAMS", "UC.WRAP.AREA"})
            .to_try("UC.LINER.MASS(\"800 m2\"; \"1.5 mm\"; \"940 kg/m3\")")
            .to_try("UC.LINER.MASS(\"9000 ft2\"; \"60 mil\"; \"58.7 lb/ft3\"; \"lb\")")
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
            .also_called("welding, panels, seam length")
            .related({"UC.LINER.MASS", "UC.WRAP.AREA"})
            .to_try("UC.LINER.SEAMS(\"45 m\"; \"14 m\"; \"6 m\"; \"100 mm\")")
            .to_try("UC.LINER.SEAMS(\"150 ft\"; \"46 ft\"; \"20 ft\"; \"4 in\"; \"ft\")")
            .sketch(Sketch::lap)
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

}  // namespace

std::vector<Function> sheet_goods_functions() {
    std::vector<Function> all = roll_functions();
    for (const Function& entry : liner_functions()) all.push_back(entry);
    return all;
}

}  // namespace undercroft::addin
