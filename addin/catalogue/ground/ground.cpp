#include "addin/catalogue/ground/ground.hpp"

#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/choices_ground.hpp"
#include "addin/catalogue/entry.hpp"
#include "calc/ground/bearing.hpp"
#include "calc/ground/dynamic_cone.hpp"
#include "calc/ground/load_spread.hpp"
#include "calc/ground/uplift.hpp"

namespace undercroft::addin {

namespace {

using WeightRows = std::vector<std::tuple<Area, Length, UnitWeight>>;

constexpr const char16_t* water = u"9.80665 kN/m3";
constexpr const char* uplift_source =
    "Convention: full weight of everything that resists, over the water displaced by the submerged volume; "
    "USACE ETL 1110-2-307 (1987), eq. 1, sets the terms otherwise. Required values: USACE EM 1110-2-2100 "
    "(2005), "
    "Table 3-4: 1.3 usual, 1.2 unusual, 1.1 extreme (from memory)";

Function capacity_entry() {
    return function("UC.BEARING.CAPACITY", &calc::bearing_capacity)
        .says(
            "Ultimate bearing pressure, gross, of ground under a strip or rectangle; without a factor of "
            "safety")
        .equation("qu = sc c Nc + sq g D Nq + sg 0.5 g B Ng; factors of the method; depth factors 1")
        .source(
            "Vesic (1973): Ng = 2 (Nq + 1) tan p, sc = 1 + B/L Nq/Nc, sq = 1 + B/L tan p, sg = 1 - 0.4 B/L; "
            "Meyerhof (1963): Ng = (Nq - 1) tan 1.4p, sc = 1 + 0.2 Kp B/L, sq = sg = 1 + 0.1 Kp B/L from 10 "
            "deg; Terzaghi (1943): sc = 1 + 0.3 B/L, sg = 1 - 0.2 B/L, Ng by Kumbhojkar (1993)")
        .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"10 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\")", "8.3",
                 "0.9 %", Origin::published,
                 "Look, Handbook of Geotechnical Investigation and Design Tables, Table 21.5: Nc")
        .example(
            "UC.DIFFERENCE(UC.BEARING.CAPACITY(\"1 kPa\"; \"10 deg\"; \"1 kN/m3\"; \"1 m\"; \"0.000002 m\"); "
            "UC.BEARING.CAPACITY(\"1 kPa\"; \"10 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\"); \"kPa\")",
            "2.47", "0.9 %", Origin::published, "Look, Table 21.5: Nq")
        .example("UC.BEARING.CAPACITY(\"0 kPa\"; \"10 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "1.22", "0.9 %",
                 Origin::published, "Look, Table 21.5: N gamma of Vesic")
        .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"20 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\")", "14.8",
                 "0.9 %", Origin::published,
                 "Look, Handbook of Geotechnical Investigation and Design Tables, Table 21.5: Nc")
        .example(
            "UC.DIFFERENCE(UC.BEARING.CAPACITY(\"1 kPa\"; \"20 deg\"; \"1 kN/m3\"; \"1 m\"; \"0.000002 m\"); "
            "UC.BEARING.CAPACITY(\"1 kPa\"; \"20 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\"); \"kPa\")",
            "6.4", "0.9 %", Origin::published, "Look, Table 21.5: Nq")
        .example("UC.BEARING.CAPACITY(\"0 kPa\"; \"20 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "5.4", "0.9 %",
                 Origin::published, "Look, Table 21.5: N gamma of Vesic")
        .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"25 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\")", "20.7",
                 "0.9 %", Origin::published,
                 "Look, Handbook of Geotechnical Investigation and Design Tables, Table 21.5: Nc")
        .example(
            "UC.DIFFERENCE(UC.BEARING.CAPACITY(\"1 kPa\"; \"25 deg\"; \"1 kN/m3\"; \"1 m\"; \"0.000002 m\"); "
            "UC.BEARING.CAPACITY(\"1 kPa\"; \"25 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\"); \"kPa\")",
            "10.7", "0.9 %", Origin::published, "Look, Table 21.5: Nq")
        .example("UC.BEARING.CAPACITY(\"0 kPa\"; \"25 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "10.9", "0.9 %",
                 Origin::published, "Look, Table 21.5: N gamma of Vesic")
        .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"30 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\")", "30.1",
                 "0.9 %", Origin::published,
                 "Look, Handbook of Geotechnical Investigation and Design Tables, Table 21.5: Nc")
        .example(
            "UC.DIFFERENCE(UC.BEARING.CAPACITY(\"1 kPa\"; \"30 deg\"; \"1 kN/m3\"; \"1 m\"; \"0.000002 m\"); "
            "UC.BEARING.CAPACITY(\"1 kPa\"; \"30 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\"); \"kPa\")",
            "18.4", "0.9 %", Origin::published, "Look, Table 21.5: Nq")
        .example("UC.BEARING.CAPACITY(\"0 kPa\"; \"30 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "22.4", "0.9 %",
                 Origin::published, "Look, Table 21.5: N gamma of Vesic")
        .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"32 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\")", "35.5",
                 "0.9 %", Origin::published,
                 "Look, Handbook of Geotechnical Investigation and Design Tables, Table 21.5: Nc")
        .example(
            "UC.DIFFERENCE(UC.BEARING.CAPACITY(\"1 kPa\"; \"32 deg\"; \"1 kN/m3\"; \"1 m\"; \"0.000002 m\"); "
            "UC.BEARING.CAPACITY(\"1 kPa\"; \"32 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\"); \"kPa\")",
            "23.2", "0.9 %", Origin::published, "Look, Table 21.5: Nq")
        .example("UC.BEARING.CAPACITY(\"0 kPa\"; \"32 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "30.2", "0.9 %",
                 Origin::published, "Look, Table 21.5: N gamma of Vesic")
        .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"35 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\")", "46.1",
                 "0.9 %", Origin::published,
                 "Look, Handbook of Geotechnical Investigation and Design Tables, Table 21.5: Nc")
        .example(
            "UC.DIFFERENCE(UC.BEARING.CAPACITY(\"1 kPa\"; \"35 deg\"; \"1 kN/m3\"; \"1 m\"; \"0.000002 m\"); "
            "UC.BEARING.CAPACITY(\"1 kPa\"; \"35 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\"); \"kPa\")",
            "33.3", "0.9 %", Origin::published, "Look, Table 21.5: Nq")
        .example("UC.BEARING.CAPACITY(\"0 kPa\"; \"35 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "48", "0.9 %",
                 Origin::published, "Look, Table 21.5: N gamma of Vesic")
        .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"40 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\")", "75",
                 "0.9 %", Origin::published,
                 "Look, Handbook of Geotechnical Investigation and Design Tables, Table 21.5: Nc")
        .example(
            "UC.DIFFERENCE(UC.BEARING.CAPACITY(\"1 kPa\"; \"40 deg\"; \"1 kN/m3\"; \"1 m\"; \"0.000002 m\"); "
            "UC.BEARING.CAPACITY(\"1 kPa\"; \"40 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\"); \"kPa\")",
            "64", "0.9 %", Origin::published, "Look, Table 21.5: Nq")
        .example("UC.BEARING.CAPACITY(\"0 kPa\"; \"40 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "109", "0.9 %",
                 Origin::published, "Look, Table 21.5: N gamma of Vesic")
        .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"45 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\")", "134",
                 "0.9 %", Origin::published,
                 "Look, Handbook of Geotechnical Investigation and Design Tables, Table 21.5: Nc")
        .example(
            "UC.DIFFERENCE(UC.BEARING.CAPACITY(\"1 kPa\"; \"45 deg\"; \"1 kN/m3\"; \"1 m\"; \"0.000002 m\"); "
            "UC.BEARING.CAPACITY(\"1 kPa\"; \"45 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\"); \"kPa\")",
            "135", "0.9 %", Origin::published, "Look, Table 21.5: Nq")
        .example("UC.BEARING.CAPACITY(\"0 kPa\"; \"45 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "272", "0.9 %",
                 Origin::published, "Look, Table 21.5: N gamma of Vesic")
        .example("UC.BEARING.CAPACITY(\"1 kPa\"; \"0 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\")", "5.14", "0.005",
                 Origin::from_memory, "Nc of undrained ground, 2 + pi")
        .example("UC.BEARING.CAPACITY(\"0 kPa\"; \"30 deg\"; \"1 kN/m3\"; \"0 m\"; \"2 m\"; ; \"Meyerhof\")",
                 "15.67", "0.005", Origin::from_memory, "Meyerhof: N gamma = (Nq - 1) tan 1.4 phi")
        .example(
            "UC.BEARING.CAPACITY(\"15.2 kPa\"; \"20 deg\"; \"17.8 kN/m3\"; \"1 m\"; \"1.5 m\"; \"1.5 m\"; "
            "\"Terzaghi\")",
            "521", "0.5 %", Origin::from_memory,
            "Das, Principles of Foundation Engineering, square-foundation example")
        .example(
            "UC.BEARING.CAPACITY(\"1 kPa\"; \"25 deg\"; \"1 kN/m3\"; \"0 m\"; \"0.000002 m\"; ; "
            "\"Terzaghi\")",
            "25.1", "0.5 %", Origin::published,
            "Indian engineering entrance examination (2019): Terzaghi's Nc")
        .caution(
            "Ultimate: divide by a factor of safety, and check settlement. General shear, central vertical "
            "load, groundwater deeper than B below the base. Local codes and a licensed engineer govern")
        .takes("cohesion", "c", "Cohesion of the ground; 0 where it has none")
        .takes("friction angle", "p", "Angle of internal friction, 0 to 45 deg")
        .takes("unit weight", "g", "Unit weight of the ground")
        .takes("depth", "D", "Depth of the base below the lowest ground beside it")
        .takes("width", "B", "Width of the base")
        .takes("length", "L", "Length of the base; left out, a long strip")
        .takes("method", "method", "Vesic, Meyerhof or Terzaghi", u"Vesic")
        .gives("qu", "Ultimate bearing pressure");
}

Function coefficient_entry() {
    return function(
               "UC.EARTH.COEFFICIENT",
               [](calc::EarthState state, Angle friction_angle, std::optional<Angle> wall_friction,
                  Angle wall_angle, Gradient slope) {
                   return calc::earth_coefficient(state, friction_angle, {wall_friction, wall_angle, slope});
               })
        .says(
            "Coefficient of earth pressure of ground without cohesion: Rankine without wall friction, "
            "Coulomb "
            "with it, Jaky at rest")
        .equation(
            "Rankine K = cos b (cos b -+ r)/(cos b +- r), r = sqrt(cos^2 b - cos^2 p); Coulomb Ka = sin^2(a "
            "+ p)/(sin^2 a sin(a - d)(1 + sqrt(sin(p + d) sin(p - b)/(sin(a - d) sin(a + b))))^2), Kp = "
            "cos^2 "
            "p/(cos d (1 - sqrt(sin(p + d) sin p/cos d))^2); K0 = 1 - sin p")
        .source(
            "Rankine (1857), thrust parallel to the ground; Coulomb (1776); Jaky (1944); Bowles, Foundation "
            "Analysis and Design, 5th ed. (1996), chapter 11")
        .example("UC.EARTH.COEFFICIENT(\"rest\"; \"30 deg\")", "0.5", "1e-12 rel", Origin::mathematics,
                 "Jaky, 1 - sin phi")
        .example("UC.EARTH.COEFFICIENT(\"passive\"; \"30 deg\")", "3", "1e-12 rel", Origin::mathematics,
                 "Rankine, tan^2(45 + phi/2)")
        .examples(
            "UC.EARTH.COEFFICIENT(\"active\"; \"{} deg\"; ; \"90 deg\"; \"{} deg\")", "6e-5",
            Origin::published,
            "Rankine, after Bowles, Foundation Analysis and Design, 5th ed., as in a Dutch "
            "hydraulic-engineering help page: slope",
            {{"26", "0", "0.3905"},  {"30", "0", "0.3333"},  {"32", "0", "0.3073"},  {"36", "0", "0.2596"},
             {"40", "0", "0.2174"},  {"42", "0", "0.1982"},  {"26", "10", "0.4134"}, {"30", "10", "0.3495"},
             {"32", "10", "0.321"},  {"36", "10", "0.2696"}, {"40", "10", "0.2247"}, {"42", "10", "0.2044"},
             {"26", "20", "0.5152"}, {"30", "20", "0.4142"}, {"32", "20", "0.3739"}, {"36", "20", "0.306"},
             {"40", "20", "0.2504"}, {"42", "20", "0.2262"}, {"30", "30", "0.866"},  {"32", "30", "0.5741"},
             {"36", "30", "0.4105"}, {"40", "30", "0.3151"}, {"42", "30", "0.2784"}})
        .examples("UC.EARTH.COEFFICIENT(\"active\"; \"30 deg\"; \"{} deg\")", "0.0001", Origin::from_memory,
                  "Coulomb, table of Das and Bowles: wall friction",
                  {{"0", "0.3333"}, {"5", "0.3189"}, {"10", "0.3085"}, {"15", "0.3014"}, {"20", "0.2973"}})
        .caution(
            "Coulomb passive is refused above a wall friction of a third of the friction angle and on rising "
            "ground, where it overstates the resistance. Rest is that of normally consolidated ground: "
            "compacted fill pushes harder. Local codes and a licensed engineer govern")
        .takes("state", "state", "active, passive or rest")
        .takes("friction angle", "p", "Angle of internal friction, 0 to 50 deg")
        .takes("wall friction", "d", "Friction angle between wall and ground; left out, Rankine")
        .takes(
            "wall angle", "a",
            "Back of the wall from the horizontal; below 90 deg the ground rests on the back, above 90 deg "
            "the wall leans into the ground",
            u"90 deg")
        .takes("slope", "b", "Slope of the ground behind the wall, such as 1V:3H or 10 deg; 0 is level", 0.0)
        .gives("K", "Coefficient of earth pressure");
}

Function fill_for_uplift_entry() {
    return function("UC.UPLIFT.FILL",
                    [](Share factor, WeightRows weights, Volume submerged_volume, Area plan_area,
                       UnitWeight unit_weight, UnitWeight water_unit_weight) {
                        return calc::uplift_fill(factor, weights, submerged_volume, plan_area, unit_weight,
                                                 water_unit_weight);
                    })
        .says(
            "Thickness of fill to be added so that a lined bed reaches a factor against flotation; 0 where "
            "nothing is missing")
        .equation("t = max(0, F gw V - sum A t g)/(Af gf)")
        .source(uplift_source)
        .example("UC.UPLIFT.FILL(1.2; {10;0.5;18}; \"10 m3\"; \"10 m2\"; \"18 kN/m3\"; \"10 kN/m3\")",
                 "0.166666666667", "1e-9 rel", Origin::mathematics, "(1.2 x 100 - 90)/(10 x 18)")
        .caution("The fill must lie above the groundwater. Local codes and a licensed engineer govern")
        .takes("factor", "F", "Factor against flotation to be reached, at least 1")
        .takes("weights", "A, t, g", "Three columns: plan area, thickness, unit weight of what is there")
        .takes("submerged volume", "V",
               "Volume below the groundwater of all that the weights count, wet cover too")
        .takes("plan area", "Af", "Plan area of the fill to be added")
        .takes("unit weight", "gf", "Unit weight of that fill")
        .takes("water unit weight", "gw", "Unit weight of the groundwater", water)
        .gives("t", "Thickness to be added");
}

}  // namespace

std::vector<Function> bearing_entries() {
    return {
        capacity_entry(),
        function("UC.BEARING.CBR", &calc::cone_cbr)
            .says("California bearing ratio in percent from the penetration per blow of a dynamic cone, 8-kg "
                  "hammer")
            .equation("general CBR = 292/d^1.12; CL below 10: 1/(0.017019 d)^2; CH: 1/(0.002871 d); d in mm")
            .source("ASTM D6951 (equations from memory)")
            .example("UC.BEARING.CBR(\"5 mm\")", "48.1434", "5e-5", Origin::from_memory,
                     "ASTM D6951, 292/DPI^1.12")
            .example("UC.BEARING.CBR(\"10 mm\")", "22.1505", "5e-5", Origin::from_memory, "ASTM D6951")
            .example("UC.BEARING.CBR(\"40 mm\")", "4.689", "5e-5", Origin::from_memory, "ASTM D6951")
            .example("UC.BEARING.CBR(\"20 mm\"; \"CL\")", "8.6312", "5e-5", Origin::from_memory,
                     "ASTM D6951, clay of low plasticity below CBR 10")
            .example("UC.BEARING.CBR(\"50 mm\"; \"CH\")", "6.9662", "5e-5", Origin::from_memory,
                     "ASTM D6951, clay of high plasticity")
            .caution(
                "A correlation, for layers that the cone went through. Local codes and a licensed engineer "
                "govern")
            .takes("penetration per blow", "d", "Penetration per blow, such as 20 mm")
            .takes("soil", "soil", "general; CL only where the CBR is below 10; CH", u"general")
            .gives("CBR", "California bearing ratio"),
        function("UC.BEARING.PRESUMPTIVE", &calc::presumptive_bearing)
            .says("Bearing pressure that a building code allows where the ground was not tested")
            .equation("table")
            .source("International Building Code (2012), Table 1806.2: 12000, 4000, 3000, 2000, 1500 lbf/ft2")
            .example("UC.BEARING.PRESUMPTIVE(\"gravel\"; \"psf\")", "3000", "1e-9 rel", Origin::published,
                     "International Building Code (2012), Table 1806.2, three independent reproductions")
            .example("UC.BEARING.PRESUMPTIVE(\"clay\"; \"psf\")", "1500", "1e-9 rel", Origin::published,
                     "International Building Code (2012), Table 1806.2")
            .caution(
                "Not for fill, mud, peat or organic soil, and no substitute for testing. Local codes and a "
                "licensed engineer govern")
            .takes("ground", "ground",
                   "crystalline bedrock, sedimentary rock, gravel (GW, GP), sand (SW, SP, SM, SC, GM, GC) or "
                   "clay "
                   "and silt (CL, ML, MH, CH)")
            .gives("qa", "Allowable bearing pressure"),
        function("UC.BASE.THICKNESS", &calc::base_thickness)
            .says("Base stone that brings the pressure under a long strip down to what the subgrade can bear")
            .equation("t = max(0, w (p/pa - 1)/(2 s))")
            .source("equilibrium of a strip that spreads to both sides; 2V:1H common practice")
            .example("UC.BASE.THICKNESS(\"150 kPa\"; \"0.3 m\"; \"100 kPa\")", "0.15", "1e-12 rel",
                     Origin::mathematics, "0.3 m x 150 kPa spread to 0.45 m at 2V:1H")
            .caution("A strip on its own: where strips of neighbouring rows meet in the stone, see "
                     "UC.FOOT.PRESSURE. Local codes and a licensed engineer govern")
            .takes("pressure", "p", "Pressure under the strip")
            .takes("loaded width", "w", "Width of the strip")
            .takes("allowable", "pa", "Pressure that the subgrade can bear")
            .takes("spread", "s", "Widening on each side; at most 1V:1H", u"2V:1H")
            .gives("t", "Thickness of base stone"),
        coefficient_entry(),
        function("UC.EARTH.THRUST", &calc::earth_thrust)
            .says("Thrust of earth, surcharge and groundwater on a length of wall")
            .equation("P = K (g H^2/2 + q H - gw hw^2/2) + gw hw^2/2, gw = 9.80665 kN/m3")
            .source("elementary statics; effective weight below the water (Terzaghi 1943)")
            .example(
                "UC.EARTH.THRUST(UC.EARTH.COEFFICIENT(\"active\"; \"30 deg\"); \"17.3 kN/m3\"; \"7.32 m\")",
                "154.496", "5e-4", Origin::mathematics, "textbook problem (inputs read), recomputed: LAT-EX1")
            .example("UC.EARTH.THRUST(UC.EARTH.COEFFICIENT(\"active\"; \"20 deg\"); \"20 kN/m3\"; \"6 m\"; "
                     "\"50 kPa\")",
                     "323.592", "5e-4", Origin::mathematics,
                     "textbook (Eurocode edition), chapter 6 (inputs read), recomputed: LAT-EX2")
            .example("UC.EARTH.THRUST(3; \"18 kN/m3\"; \"2 m\")", "108", "1e-9 rel", Origin::mathematics,
                     "passive, LAT-EX4")
            .example("UC.EARTH.THRUST(UC.EARTH.COEFFICIENT(\"active\"; \"30 deg\"); \"18 kN/m3\"; \"5 m\")",
                     "75", "1e-9 rel", Origin::mathematics, "shared checks, ground 4")
            .caution(
                "Without cohesion. With Rankine's coefficient the thrust is parallel to the ground, with "
                "Coulomb's at the wall friction. Local codes and a licensed engineer govern")
            .takes("coefficient", "K", "Coefficient of earth pressure")
            .takes("unit weight", "g", "Unit weight of the ground, saturated where it is under water")
            .takes("height", "H", "Height of the wall")
            .takes("surcharge", "q", "Pressure on the ground behind the wall", 0.0)
            .takes("water depth", "hw", "Depth of groundwater above the foot of the wall", 0.0)
            .gives("P", "Thrust per length of wall"),
        function("UC.SIDEFILL.WIDTH", &calc::side_fill_width)
            .says("Width of side fill that the push of a loaded bed needs before the wall of the trench can "
                  "take it: "
                  "the limit of excavation beyond the outer chambers")
            .equation("w = max(0, h (p/pa - 1)/(2 s))")
            .source("equilibrium of a push that spreads upward and downward; 2V:1H common practice")
            .example("UC.SIDEFILL.WIDTH(\"60 kPa\"; \"1.2 m\"; \"40 kPa\")", "0.6", "1e-12 rel",
                     Origin::mathematics, "a push over 1.2 m spread to 1.8 m at 2V:1H")
            .caution("Needs half of the widening as firm ground or base stone below and as cover above. "
                     "Local codes "
                     "and a licensed engineer govern")
            .takes("lateral pressure", "p", "Lateral pressure of the loaded bed on the side fill")
            .takes("height", "h", "Height over which it acts")
            .takes("allowable", "pa", "Lateral pressure that the wall of the trench can take")
            .takes("spread", "s", "Widening on each side; at most 1V:1H", u"2V:1H")
            .gives("w", "Width of side fill"),
        function("UC.UPLIFT.FACTOR",
                 [](WeightRows weights, Volume submerged_volume, UnitWeight water_unit_weight) {
                     return calc::uplift_factor(weights, submerged_volume, water_unit_weight);
                 })
            .says("Factor of safety of a lined bed against flotation, by full weights over displaced water")
            .equation("F = sum A t g/(gw V)")
            .source(uplift_source)
            .example("UC.UPLIFT.FACTOR({\"ft2\";\"ft\";\"lbf/ft3\"|340;1;150|384;1;110}; \"980 ft3\"; \"62.4 "
                     "lbf/ft3\")",
                     "1.52", "0.005", Origin::published,
                     "engineers' forum calculation, all inputs printed, FLT-3a: weights over all that is "
                     "displaced")
            .example("UC.UPLIFT.FACTOR({1;1;9.80665}; \"1 m3\")", "1", "1e-12 rel", Origin::mathematics,
                     "weight equal to the water displaced, FLT-5")
            .caution(
                "Other conventions give other factors for the same bed: say which is meant. Count no live "
                "load and no water inside. Local codes and a licensed engineer govern")
            .takes("weights", "A, t, g", "Three columns: plan area, thickness, unit weight")
            .takes("submerged volume", "V",
                   "Volume below the groundwater of all that the weights count, wet cover too")
            .takes("water unit weight", "gw", "Unit weight of the groundwater", water)
            .gives("F", "Factor against flotation"),
        fill_for_uplift_entry(),
    };
}

Group ground_functions() {
    Group group{"Ground and loads", load_entries()};
    for (Function& entry : bearing_entries()) group.functions.push_back(std::move(entry));
    return group;
}

}  // namespace undercroft::addin
