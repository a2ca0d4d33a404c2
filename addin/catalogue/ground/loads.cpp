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
        .example(
            "UC.LOAD.WHEEL(\"16 kip\"; \"10 in\"; \"20 in\"; \"2 ft\"; 1.15; \"6 ft\"; 1; \"4 ft\"; \"ksf\")",
            "1.605936", "5e-7", Origin::mathematics,
            "shared checks, ground 2: AASHTO LRFD 3.6.1.2.6, one wheel, IM 24.75 %")
        .example(
            "UC.LOAD.WHEEL(\"16 kip\"; \"10 in\"; \"20 in\"; \"2 ft\"; 1.0; \"6 ft\"; 1; \"4 ft\"; \"ksf\")",
            "1.921283", "5e-7", Origin::mathematics, "shared checks, ground 2: the same with the factor 1.00")
        .example("UC.LOAD.WHEEL(\"16 kip\"; \"10 in\"; \"20 in\"; \"5 ft\"; 1.15; \"6 ft\"; 1; ; \"ksf\")",
                 "0.407126", "5e-7", Origin::mathematics,
                 "shared checks, ground 2: two wheels overlapping, IM 12.375 %")
        .example(
            "UC.LOAD.WHEEL(\"12.5 kip\"; \"10 in\"; \"20 in\"; \"4 ft\"; 1.15; \"6 ft\"; 0; \"4 ft\"; "
            "\"ksf\")",
            "0.43209", "5e-6", Origin::mathematics, "ground tables 2a: tandem, four wheels overlapping, P/A")
        .example(
            "UC.LOAD.WHEEL(\"12.5 kip\"; \"10 in\"; \"20 in\"; \"3 ft\"; 1.15; \"6 ft\"; 0; \"4 ft\"; "
            "\"ksf\")",
            "0.58986", "5e-6", Origin::mathematics, "ground tables 2a: tandem, two axles overlapping, P/A")
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
        .example("UC.FOOT.PRESSURE(\"20 kPa\"; \"1300 mm\"; \"150 mm\"; \"150 mm\"; \"0.001 mm\")", "86.666",
                 "1e-3 rel", Origin::mathematics, "without base stone two feet of 150 mm carry 1300 mm")
        .example("UC.FOOT.PRESSURE(\"20 kPa\"; \"1300 mm\"; \"150 mm\"; \"150 mm\"; \"2 m\")", "20",
                 "1e-12 rel", Origin::mathematics, "deep stone evens it out")
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
        .example("UC.LOAD.PLANT({\"kip\";\"in\";\"in\";\"m\";\"m\"|16;10;20;0;0}; \"2 ft\"; \"ksf\")",
                 "1.62067", "5e-6", Origin::mathematics,
                 "11.52 ksf on 10 in x 20 in: four corners of m = 0.2083, n = 0.4167, I = 0.035171")
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
            .example("UC.LOAD.POINT(\"1 kN\"; \"1 m\")", "0.4775", "5e-5", Origin::published,
                     "textbook influence factors for the point load, r/z = 0; shared checks, ground 1a")
            .example("UC.LOAD.POINT(\"1 kN\"; \"1 m\"; \"0.5 m\")", "0.2733", "5e-5", Origin::published,
                     "the same, r/z = 0.5")
            .example("UC.LOAD.POINT(\"1 kN\"; \"1 m\"; \"1 m\")", "0.0844", "5e-5", Origin::published,
                     "the same, r/z = 1")
            .example("UC.LOAD.POINT(\"1 kN\"; \"1 m\"; \"2 m\")", "0.0085", "5e-5", Origin::from_memory,
                     "the same, r/z = 2")
            .example("UC.LOAD.POINT(\"54000 kN\"; \"20 m\")", "64.46", "0.006", Origin::published,
                     "problem after Taylor (1948), worked sheet on a public document site: raft as one load")
            .example("UC.LOAD.POINT(\"54000 kN\"; \"20 m\"; \"15 m\")", "21.12", "0.006", Origin::published,
                     "the same, 15 m off")
            .example("UC.LOAD.POINT(\"54000 kN\"; \"20 m\"; \"6 m\")", "51.96", "0.006", Origin::published,
                     "the same, 6 m off")
            .example("UC.LOAD.POINT(\"54000 kN\"; \"20 m\"; \"26.925824 m\")", "4.86", "0.006",
                     Origin::published, "the same, 10 m and 25 m off")
            .example("UC.LOAD.POINT(\"22.5 kN\"; \"15 m\"; 0; \"N/m2\")", "47.75", "0.01", Origin::published,
                     "Venkatramaiah, Geotechnical Engineering, Example 10.1")
            .caution(elastic_only)
            .takes("load", "Q", "Point load")
            .takes("depth", "z", "Depth below the load")
            .takes("offset", "r", "Distance from under the load", 0.0)
            .gives("s", "Vertical stress"),
        function("UC.LOAD.CIRCLE", &calc::stress_under_circle)
            .says("Vertical stress in the ground under the centre of a loaded circle")
            .equation("s = q (1 - (1 + (R/z)^2)^-1.5)")
            .source("Boussinesq (1885), integrated over the circle; Spangler (1951) tabulates it")
            .examples("UC.LOAD.CIRCLE(\"1 kPa\"; \"1 m\"; \"{} m\")", "6e-4", Origin::published,
                      "Venkatramaiah, Geotechnical Engineering, Table 10.5, after Spangler (1951): z/R =",
                      {{"0.5", "0.911"},
                       {"1", "0.646"},
                       {"1.5", "0.424"},
                       {"2", "0.284"},
                       {"2.5", "0.2"},
                       {"3", "0.146"},
                       {"4", "0.087"},
                       {"5", "0.057"},
                       {"10", "0.015"}})
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
            .examples(
                "UC.LOAD.RECTANGLE(\"1 kPa\"; \"{} m\"; \"{} m\"; \"1 m\"; \"corner\")", "6e-6",
                Origin::published,
                "influence table, numerical-methods textbook problem P20.27, reprinted on a public page: m =",
                {{"0.1", "1.2", "0.02926"}, {"0.1", "1.4", "0.03007"}, {"0.1", "1.6", "0.03058"},
                 {"0.2", "1.2", "0.05733"}, {"0.2", "1.4", "0.05894"}, {"0.2", "1.6", "0.05994"},
                 {"0.3", "1.2", "0.08323"}, {"0.3", "1.4", "0.08561"}, {"0.3", "1.6", "0.08709"},
                 {"0.4", "1.2", "0.10631"}, {"0.4", "1.4", "0.10941"}, {"0.4", "1.6", "0.11135"},
                 {"0.5", "1.2", "0.12626"}, {"0.5", "1.4", "0.13003"}, {"0.5", "1.6", "0.13241"},
                 {"0.6", "1.2", "0.14309"}, {"0.6", "1.6", "0.15027"}, {"0.7", "1.2", "0.15703"},
                 {"0.7", "1.4", "0.16199"}, {"0.7", "1.6", "0.16515"}, {"0.8", "1.2", "0.16843"},
                 {"0.8", "1.6", "0.17739"}})
            .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"1 m\"; \"1.5 m\"; \"1 m\"; \"corner\")", "0.1936",
                     "6e-5", Origin::published,
                     "Venkatramaiah, Geotechnical Engineering, Ex. 10.8, p. 384: m = 1, n = 1.5")
            .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"1.5 m\"; \"3 m\"; \"1 m\"; \"corner\")", "0.229", "1e-3",
                     Origin::published,
                     "Venkatramaiah, Geotechnical Engineering, Ex. 10.8, p. 384: m = 1.5, n = 3")
            .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"0.5 m\"; \"3 m\"; \"1 m\"; \"corner\")", "0.1368",
                     "6e-5", Origin::published,
                     "Venkatramaiah, Geotechnical Engineering, Ex. 10.8, p. 384: m = 0.5, n = 3")
            .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"0.5 m\"; \"1 m\"; \"1 m\"; \"corner\")", "0.1202",
                     "6e-5", Origin::published,
                     "Venkatramaiah, Geotechnical Engineering, Ex. 10.8, p. 384: m = 0.5, n = 1")
            .examples(
                "UC.LOAD.RECTANGLE(\"1 kPa\"; \"{} m\"; \"{} m\"; \"1 m\"; \"corner\")", "6e-5",
                Origin::from_memory, "Newmark (1935), table as in common textbooks: m =",
                {{"1", "1", "0.1752"}, {"0.5", "0.5", "0.084"}, {"2", "2", "0.2325"}, {"1", "2", "0.1999"}})
            .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"2.0833 m\"; \"0.75 m\"; \"1 m\"; \"corner\")", "0.176",
                     "1.5e-3", Origin::published,
                     "textbook (Eurocode edition): 4.5 m square, chart readings: m = 2.0833, n = 0.75")
            .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"0.5833 m\"; \"0.75 m\"; \"1 m\"; \"corner\")", "0.122",
                     "4e-3", Origin::published,
                     "textbook (Eurocode edition): 4.5 m square, chart readings: m = 0.5833, n = 0.75")
            .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"2000 m\"; \"2000 m\"; \"1 m\"; \"corner\")", "0.25",
                     "1e-7", Origin::mathematics,
                     "limit of a wide area: a quarter; shared checks, STR-RECEX-4")
            .example("UC.LOAD.RECTANGLE(\"100 kPa\"; \"2 m\"; \"2 m\"; \"1 m\")", "70.0886", "5e-4 rel",
                     Origin::mathematics, "four corners of m = n = 1: 4 x 0.175222")
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
            .example("UC.LOAD.SPREAD(\"27907.5 kN\"; \"15.25 m\"; \"6.1 m\"; \"4.58 m\")", "131.65", "0.1 %",
                     Origin::published,
                     "homework answer page, low authority: 300 kPa on 6.1 m x 15.25 m; arithmetic checked, "
                     "STR-21-1")
            .example("UC.LOAD.SPREAD(\"100 kN\"; \"1 m\"; \"1 m\"; \"2 m\"; \"60 deg\")", "9.13061",
                     "1e-5 rel", Origin::mathematics,
                     "Municipal Code of Chicago 13-132-060(b)(2): a side of 1 m grows to 3.309401 m")
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
            .example("UC.LOAD.CLASS(\"AASHTO truck\"; ; \"kip\")", "16", "exact", Origin::from_memory,
                     "AASHTO LRFD 3.6.1.2.2, wheel of the design truck")
            .example("UC.LOAD.CLASS(\"AASHTO tandem\"; ; \"kip\")", "12.5", "exact", Origin::from_memory,
                     "AASHTO LRFD 3.6.1.2.3, wheel of the design tandem")
            .example("UC.LOAD.CLASS(\"AS 3996 D\"; \"ultimate\"; \"kN\")", "210", "exact",
                     Origin::from_memory, "AS 3996:2006, Table 3.1")
            .example("UC.LOAD.CLASS(\"EN 124 D400\"; ; \"kN\")", "400", "exact", Origin::from_memory,
                     "EN 124: the class is its test load in kN")
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
            .example("UC.LOAD.FILL({\"m\";\"kN/m3\"|0.3;18|0.45;20|0.25;23})", "20.15", "1e-12 rel",
                     Origin::mathematics, "5.4 + 9.0 + 5.75 kPa")
            .caution(engineer_governs)
            .takes("layers", "t, g", "Two columns: thickness, unit weight")
            .gives("p", "Pressure"),
        foot_entry(),
    };
}

}  // namespace undercroft::addin
