#include "calc/works/takeoff.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/choices.hpp"
#include "addin/catalogue/choices_ground.hpp"
#include "addin/catalogue/entry.hpp"
#include "calc/ground/fabric.hpp"
#include "calc/works/lifting.hpp"
#include "calc/works/sheet_goods.hpp"
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
        .takes("width", "W", "Width to cover, across the strips")
        .takes("roll length", "Lr", "Length of a roll")
        .takes("roll width", "Wr", "Width of a roll")
        .takes("lap", "lap", "Overlap at sides and ends")
        .takes("waste", "w", "Share added for cutting and damage", 0.0);
}

constexpr const char* rolls_equation =
    "strips s = ceil((W - lap)/(Wr - lap)); strips laid one after the other, each join one lap more; N = "
    "ceil(rolls used (1 + w))";

Function opening_entry() {
    return function("UC.FABRIC.OPENING", &calc::fabric_opening)
        .says("Largest opening O95 of a separation fabric beside soil of size d85; at most 0.60 mm")
        .equation("O95 = min(B d85, 0.60 mm)")
        .source(
            "FHWA NHI-07-092 (2008), chapter 2, filter criterion for steady flow; AASHTO M 288, separation: "
            "0.60 mm (both from memory)")
        .example("UC.FABRIC.OPENING(\"0.30 mm\"; UC.FABRIC.FACTOR(5); \"mm\")", "0.48", "1e-9 rel",
                 Origin::from_memory, "FHWA NHI-07-092, chapter 2: D85 = 0.30 mm, Cu = 5, B = 1.6")
        .caution(
            "Where more than half of the soil passes 0.075 mm, B is 1 (woven) or 1.8 (non-woven) and the "
            "opening at most 0.3 mm. The flow is steady: where it turns, as in a bed that fills and empties, "
            "0.5 is usual (from memory). Permeability and strength are checks of their own. Local codes and "
            "a "
            "licensed engineer govern")
        .takes("d85", "d85", "Size that 85 % of the soil passes, from UC.GRADING.SIZE")
        .takes("factor", "B", "Factor of the criterion, from UC.FABRIC.FACTOR; at most 2", 1.0)
        .gives("O95", "Largest opening");
}

Function handling_entry() {
    return function("UC.HANDLING.LIMIT",
                    [](Length horizontal, Length vertical, Length travel, Angle asymmetry,
                       Count lifts_per_minute, Time duration, calc::Coupling coupling) {
                        return calc::handling_limit(
                            {horizontal, vertical, travel, asymmetry, lifts_per_minute, duration, coupling});
                    })
        .says(
            "Recommended weight limit for lifting by hand, as a mass; 0 where the lift is beyond the "
            "method's "
            "reach")
        .equation(
            "RWL = 23 kg HM VM DM AM FM CM; HM = 25 cm/H, VM = 1 - 0.003 |V - 75 cm|, DM = 0.82 + 4.5 cm/D, "
            "AM = 1 - 0.0032 A")
        .source(
            "NIOSH publication 94-110 (1994, rev. 2021), metric form; FM by Table 5, CM by Table 7 (tables "
            "from memory)")
        .example("UC.HANDLING.LIMIT(\"25 cm\"; \"75 cm\"; \"25 cm\"; \"0 deg\"; 0.2; \"30 min\"; \"good\")",
                 "23", "1e-9 rel", Origin::published, "NIOSH 94-110 (rev. 2021): the load constant")
        .example("UC.HANDLING.LIMIT(\"50 cm\"; \"75 cm\"; \"25 cm\"; \"0 deg\"; 0.2; \"30 min\"; \"good\")",
                 "11.5", "1e-9 rel", Origin::published, "NIOSH 94-110: horizontal multiplier 0.50 at 50 cm")
        .example("UC.HANDLING.LIMIT(\"25 cm\"; \"30 cm\"; \"25 cm\"; \"0 deg\"; 0.2; \"30 min\"; \"good\")",
                 "20.01", "0.12", Origin::published,
                 "NIOSH 94-110: vertical multiplier 0.87 at 30 cm (0.865 before rounding)")
        .example("UC.HANDLING.LIMIT(\"25 cm\"; \"75 cm\"; \"25 cm\"; \"0 deg\"; 10; \"30 min\"; \"good\")",
                 "10.35", "1e-9 rel", Origin::from_memory,
                 "NIOSH 94-110, Table 5: 0.45 for 10 lifts a minute in less than an hour")
        .example("UC.HANDLING.LIMIT(\"40 cm\"; \"70 cm\"; \"60 cm\"; \"30 deg\"; 1; \"90 min\"; \"fair\")",
                 "9.577272", "1e-6 rel", Origin::mathematics,
                 "shared checks, ground 12: 9.794937 kg with a frequency multiplier of 0.90, here 0.88")
        .caution(
            "For one person; of a team each carries less well: of two, two thirds of the sum is usual (from "
            "memory). A "
            "load that is set down with care is limited at the end of the lift as well. Two-handed lifts by "
            "a healthy adult on good footing, with recovery as the method asks; local "
            "codes govern. Its form in inches and pounds differs by up to 4 %")
        .takes("horizontal", "H", "Hands in front of the ankles; less than 25 cm counts as 25 cm")
        .takes("vertical", "V", "Hands above the floor where the lift starts, and, once more, where it ends")
        .takes("travel", "D", "Distance up or down; less than 25 cm counts as 25 cm")
        .takes("asymmetry", "A", "Turn of the body, in deg")
        .takes("lifts per minute", "F", "Number of lifts in a minute")
        .takes("duration", "T", "Time spent lifting, such as 2 h; at most 8 h")
        .takes("coupling", "coupling", "good, fair or poor grip")
        .gives("RWL", "Recommended limit");
}

}  // namespace

Group takeoff_functions() {
    auto rolls = function("UC.ROLLS", &calc::rolls);
    rolls.says("Whole rolls to cover a rectangle in strips with laps at sides and ends")
        .equation(rolls_equation)
        .source("common practice")
        .example("UC.ROLLS(\"60 m\"; \"30 m\"; \"60 m\"; \"4.5 m\"; \"450 mm\")", "8", "exact",
                 Origin::mathematics, "shared checks, GTX-R1: 29.55/4.05 rounded up")
        .example("UC.ROLLS(\"60 m\"; \"8.55 m\"; \"60 m\"; \"4.5 m\"; \"450 mm\")", "2", "exact",
                 Origin::mathematics, "shared checks, GTX-R3: the exact fit is not one strip more");
    takes_rolls(rolls).gives("N", "Rolls");

    auto rolls_area = function("UC.ROLLS.AREA", &calc::rolls_area);
    rolls_area.says("Area of the whole rolls bought to cover a rectangle")
        .equation("A = N Lr Wr; N as UC.ROLLS")
        .source("common practice")
        .example("UC.ROLLS.AREA(\"60 m\"; \"30 m\"; \"60 m\"; \"4.5 m\"; \"450 mm\")", "2160", "1e-12 rel",
                 Origin::mathematics, "shared checks, GTX-R2");
    takes_rolls(rolls_area).gives("A", "Area bought");

    return {
        "Sheet goods and takeoff",
        {
            function("UC.WRAP.AREA", &calc::wrap_area)
                .says("Net area of fabric or liner around a bed with sloping walls")
                .equation("A = L W [base] + h sqrt(1 + z^2) (2 L + 2 W + 4 z h) [walls] + (L + 2 z h)(W + 2 "
                          "z h) [top] + 2 (L + W + 4 z h) lap")
                .source("elementary geometry; common practice")
                .example("UC.WRAP.AREA(\"30 m\"; \"12 m\"; \"1.5 m\"; 0; \"base walls top\"; \"0 m\")", "846",
                         "1e-12 rel", Origin::mathematics, "box of 30 x 12 x 1.5 m")
                .example("UC.WRAP.AREA(\"20 m\"; \"10 m\"; \"3 m\"; \"0.75H:1V\"; \"walls top\"; \"1 m\")",
                         "692", "1e-12 rel", Origin::mathematics,
                         "walls 258.75 m2, top 24.5 m x 14.5 m = 355.25 m2, lap 1 m along 78 m")
                .takes("base length", "L", "Length of the bed at its base")
                .takes("base width", "W", "Width of the bed at its base")
                .takes("height", "h", "Height that is wrapped")
                .takes("batter", "z", "Slope of the walls; 0 for vertical walls")
                .takes("faces", "faces", "Any of base, walls, top", u"base walls top")
                .takes("lap at top", "lap", "Width laid over along the upper edge", 0.0)
                .gives("A", "Net area"),
            rolls,
            rolls_area,
            function("UC.LINER.MASS", &calc::liner_mass)
                .says("Mass of a sheet of liner")
                .equation("M = A t rho")
                .source("mass balance")
                .example("UC.LINER.MASS(\"1 m2\"; \"1.5 mm\"; \"940 kg/m3\"; \"g\")", "1410", "1e-12 rel",
                         Origin::mathematics, "shared checks, GTX-M1")
                .example("UC.LINER.MASS(\"1 m2\"; \"40 mil\"; \"0.94 g/cm3\"; \"g\")", "955.04", "1e-12 rel",
                         Origin::mathematics, "shared checks, GTX-M2")
                .takes("area", "A", "Area of the sheet")
                .takes("thickness", "t", "Thickness of the sheet")
                .takes("density", "rho", "Density of the material")
                .gives("M", "Mass"),
            function("UC.LINER.SEAMS", &calc::liner_seams)
                .says("Length of seam between panels laid side by side")
                .equation("s = (ceil((W - lap)/(Wr - lap)) - 1) L")
                .source("common practice")
                .example("UC.LINER.SEAMS(\"60 m\"; \"30 m\"; \"4.5 m\"; \"450 mm\")", "420", "1e-12 rel",
                         Origin::mathematics, "eight panels, seven seams")
                .takes("length", "L", "Length to cover, along the panels")
                .takes("width", "W", "Width to cover, across the panels")
                .takes("roll width", "Wr", "Width of a panel")
                .takes("lap", "lap", "Overlap that is welded", 0.0)
                .gives("s", "Length of seam"),
            function("UC.ORDER", &calc::order)
                .says("Quantity to order: net plus waste, rounded up to whole packs, loads or pieces")
                .equation("q = ceil(net (1 + w)/pack) pack")
                .source("common practice")
                .example("UC.ORDER(\"118 t\"; \"5 %\"; \"32 t\"; \"t\")", "128", "1e-12 rel",
                         Origin::common_practice, "123.9 t is four loads of 32 t")
                .example("UC.ORDER(\"8.55 m\"; 0; \"4.275 m\"; \"m\")", "8.55", "1e-12 rel",
                         Origin::common_practice, "two packs to the last digit stay two")
                .takes("net", "net", "Net quantity")
                .takes("waste", "w", "Share added for cutting, spillage and settlement", 0.0)
                .takes("pack", "pack", "Quantity in one pack, load or piece; left out, nothing is rounded")
                .gives("q", "Quantity to order"),
            function("UC.COST", &calc::cost)
                .role(Role::multiplies)
                .says("Cost of a quantity at a rate in money per unit; two currencies never mix")
                .equation("c = q rate")
                .source("common practice; currencies by ISO 4217")
                .example("UC.COST(\"128 t\"; \"62.5 AUD/t\"; \"AUD\")", "8000", "1e-12 rel",
                         Origin::mathematics, "quantity times rate")
                .takes("quantity", "q", "Quantity, with its unit")
                .takes("rate", "rate", "Money per unit, such as 85 beside AUD/t")
                .gives("c", "Cost")
                .unit_named("currency", "ISO 4217 code that the result must be in"),
            function("UC.CREW.TIME", &calc::crew_time)
                .says("Time for crews to do a quantity of work")
                .equation("t = q/(r n)")
                .source("common practice")
                .example("UC.CREW.TIME(\"91 each\"; \"13 each/h\"; 2; \"h\")", "3.5", "1e-12 rel",
                         Origin::common_practice, "two crews")
                .takes("units", "q", "Quantity of work")
                .takes("output rate", "r", "Output of one crew, such as 12 beside each/h")
                .takes("crews", "n", "Crews at work", 1.0)
                .gives("t", "Time"),
            opening_entry(),
            function("UC.FABRIC.FACTOR", &calc::fabric_factor)
                .says("Factor B of the filter criterion, for soils of which half or less passes 0.075 mm")
                .equation("B = 1 for Cu <= 2 and Cu >= 8; 0.5 Cu from 2 to 4; 8/Cu from 4 to 8")
                .source("FHWA NHI-07-092 (2008), chapter 2 (from memory)")
                .examples("UC.FABRIC.FACTOR({})", "5e-5", Origin::from_memory,
                          "FHWA NHI-07-092, chapter 2: Cu =",
                          {{"1.5", "1"},
                           {"2", "1"},
                           {"3", "1.5"},
                           {"4", "2"},
                           {"5", "1.6"},
                           {"6", "1.3333"},
                           {"8", "1"},
                           {"10", "1"}})
                .caution(
                    "For finer soils B is 1 (woven) or 1.8 (non-woven) whatever the uniformity. Local codes "
                    "and a licensed engineer govern")
                .takes("uniformity", "Cu",
                       "Coefficient of uniformity of the soil, from UC.GRADING.UNIFORMITY")
                .gives("B", "Factor of the criterion"),
            handling_entry(),
        }};
}

}  // namespace undercroft::addin
