#include "addin/catalogue/choices_ground.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/ground.hpp"
#include "calc/ground/fill_load.hpp"
#include "calc/ground/foot_pressure.hpp"
#include "calc/ground/load_spread.hpp"
#include "calc/ground/plant_load.hpp"
#include "calc/ground/wheel_load.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* engineer_governs = "Local codes and a licensed engineer govern";
constexpr const char* elastic_only =
    "Uniform elastic ground is assumed; no impact, no load factors. Local codes and a licensed engineer "
    "govern";

Function wheel_entry() {
    return function("UC.LOAD.WHEEL",
                    [](Force wheel_load, Length tyre_length, Length tyre_width, Length cover,
                       Share distribution_factor, std::optional<Length> wheel_spacing, bool impact,
                       std::optional<Length> axle_spacing) {
                        return calc::wheel_load(
                            {wheel_load, tyre_length, tyre_width, wheel_spacing, axle_spacing}, cover,
                            distribution_factor, impact);
                    })
        .says(
            "Live load of wheels on the top of a buried structure, spread through at least 2 ft of fill; "
            "wheels beside each other act together once their loads meet")
        .equation(
            "p = n P (1 + IM)/(l w); l = lt + f H, w = wt + f H, each plus its spacing from H = (s - t)/f "
            "on; IM = 0.33 (1 - 0.125 H/ft), at least 0")
        .source(
            "AASHTO LRFD Bridge Design Specifications, 3.6.1.2.6 and 3.6.2.2. The distribution factor "
            "depends on the edition: to 2012, 1.15 in select granular fill and 1.00 in other fill; since, "
            "1.15, and up to 1.75 over concrete pipe (from memory). The term 0.06 x inside span is left "
            "out, on the safe side")
        .caution(
            "Without multiple presence (1.2 for one lane), lane load and load factors. Refused under 2 ft "
            "of cover, where the standard does not spread wheels through fill. Local codes and a licensed "
            "engineer govern")
        .takes("wheel load", "P", "Load of one wheel, such as 16 kip")
        .takes("tyre length", "lt", "Length of the tyre's patch along the way, such as 10 in")
        .takes("tyre width", "wt", "Width of the tyre's patch, such as 20 in")
        .takes("cover", "H", "Depth of fill over the structure")
        .takes("distribution factor", "f", "Widening per depth of fill, by edition and fill", 1.15)
        .takes("wheel spacing", "sw", "Between the two wheels of an axle, such as 6 ft; left out, one wheel")
        .takes("impact", "IM", "TRUE with dynamic allowance", u"TRUE")
        .takes("axle spacing", "sa", "Between two axles of a tandem, such as 4 ft; left out, one axle")
        .gives("p", "Pressure on the structure");
}

Function foot_entry() {
    return function("UC.FOOT.PRESSURE", &calc::foot_pressure)
        .says(
            "Mean pressure on the subgrade where the spreads of feet meet under the base stone, from the "
            "load over a "
            "span and gap that goes to two feet and the column of stone between rows")
        .equation("p = q max(1, (S + c)/(2 b + t + c)), c = min(t, G); over a pitch the sum is q (S + G)")
        .source(
            "equilibrium of one pitch: feet carry the span, the gap's column its own load, both spread "
            "2V:1H (common practice); spreads that meet are taken together as in AASHTO LRFD 3.6.1.2.6")
        .caution(
            "Elastic peaks under a foot are 5 to 20 % higher, most under thin base stone. Weight of the "
            "stone beside and "
            "under the chambers is not in it: add it to the crown pressure "
            "or to the result. Rows on level ground, no weak layer below. Local codes and a licensed "
            "engineer govern")
        .takes("crown pressure", "q", "Pressure at crown level from fill and live load")
        .takes("span", "S", "Width of a chamber over its feet")
        .takes("row gap", "G", "Clear gap between the feet of neighbouring rows")
        .takes("foot width", "b", "Width of one foot, within the span")
        .takes("base stone", "t", "Thickness of the stone under the feet")
        .gives("p", "Pressure on the subgrade");
}

Function plant_entry() {
    return function("UC.LOAD.PLANT",
                    [](std::vector<std::tuple<Force, Length, Length, Length, Length>> patches, Length depth) {
                        return calc::plant_load(patches, depth);
                    })
        .says(
            "Greatest stress at a depth under plant that stands on tracks, drums or wheels, each a loaded "
            "patch; for the cover over a structure that plant may cross")
        .equation("s = sum over patches of P/(L W) times the four corner influences, at the worst point")
        .source("Boussinesq (1885); Newmark, University of Illinois Circular 24 (1935), superposed")
        .caution(
            "Static: for a vibrating drum add its centrifugal force to the load. Uniform elastic ground is "
            "assumed. Local codes and a licensed engineer govern")
        .takes("patches", "P, L, W, x, y",
               "Five columns: load, length along x, width along y, place x and y of the centre")
        .takes("depth", "z", "Depth below the patches, such as the cover")
        .gives("s", "Vertical stress");
}

}  // namespace

std::vector<Function> load_entries() {
    return {
        function("UC.LOAD.POINT", &calc::stress_under_point)
            .says("Vertical stress in the ground under a point load, or beside it")
            .equation("s = 3 Q/(2 pi z^2) (1 + (r/z)^2)^-2.5")
            .source("Boussinesq (1885)")
            .caution(elastic_only)
            .takes("load", "Q", "Point load")
            .takes("depth", "z", "Depth below the load")
            .takes("offset", "r", "Distance from under the load", 0.0)
            .gives("s", "Vertical stress"),
        function("UC.LOAD.CIRCLE", &calc::stress_under_circle)
            .says("Vertical stress in the ground under the centre of a loaded circle")
            .equation("s = q (1 - (1 + (R/z)^2)^-1.5)")
            .source("Boussinesq (1885), integrated over the circle; Spangler (1951) tabulates it")
            .caution(elastic_only)
            .takes("pressure", "q", "Pressure on the circle")
            .takes("radius", "R", "Radius of the circle")
            .takes("depth", "z", "Depth below the circle")
            .gives("s", "Vertical stress"),
        function("UC.LOAD.RECTANGLE", &calc::stress_under_rectangle)
            .says("Vertical stress in the ground under the centre or a corner of a loaded rectangle")
            .equation(
                "corner s = q/(2 pi) (atan(L W/(z R)) + L W z/R (1/(L^2 + z^2) + 1/(W^2 + z^2))), R^2 = "
                "L^2 + W^2 + z^2; centre = 4 corners of L/2 x W/2")
            .source("Newmark, University of Illinois Circular 24 (1935), in the form of Holl (1940)")
            .caution(elastic_only)
            .takes("pressure", "q", "Pressure on the rectangle")
            .takes("length", "L", "Length of the rectangle")
            .takes("width", "W", "Width of the rectangle")
            .takes("depth", "z", "Depth below the rectangle")
            .takes("at", "at", "centre, where the stress is greatest, or corner", u"centre")
            .gives("s", "Vertical stress"),
        function("UC.LOAD.SPREAD", &calc::spread_load)
            .says("Mean pressure of a load on a patch that widens with depth")
            .equation("p = P/((L + 2 s z)(W + 2 s z))")
            .source("common practice (2:1 method); Municipal Code of Chicago 13-132-060(b)(2) has 60 deg")
            .caution(engineer_governs)
            .takes("load", "P", "Load on the patch")
            .takes("length", "L", "Length of the patch")
            .takes("width", "W", "Width of the patch")
            .takes("depth", "z", "Depth below the patch")
            .takes("spread", "s", "Widening on each side, such as 2V:1H or 60 deg; at most 1V:1H", u"2V:1H")
            .gives("p", "Mean pressure"),
        wheel_entry(),
        plant_entry(),
        function("UC.LOAD.CLASS", &calc::class_load)
            .says("Load of a wheel or access cover by the class of its standard")
            .equation("table")
            .source(
                "AASHTO LRFD 3.6.1.2.2 and 3.6.1.2.3 (wheel = half an axle); AS 5100.2 (W80, from memory); "
                "AS 3996:2006, Table 3.1 (ultimate; serviceability on request); EN 124:2015 (test load)")
            .caution("An unfactored wheel, an ultimate load and a test load are not the same thing: use each "
                     "with its own standard. Local codes and a licensed engineer govern")
            .takes("load class", "class", "Such as AASHTO truck, AASHTO tandem, AS 3996 D or EN 124 D400")
            .takes("state", "state", "ultimate or serviceability, for AS 3996")
            .gives("P", "Load of the class"),
        function("UC.LOAD.FILL",
                 [](std::vector<std::tuple<Length, UnitWeight>> layers) { return calc::fill_load(layers); })
            .says("Pressure under layers of fill")
            .equation("p = sum t g")
            .source("elementary statics")
            .caution(engineer_governs)
            .takes("layers", "t, g", "Two columns: thickness, unit weight")
            .gives("p", "Pressure"),
        foot_entry(),
    };
}

}  // namespace undercroft::addin
