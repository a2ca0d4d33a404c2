#include "calc/ground/earth_pressure.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::EarthState> {
    static constexpr std::string_view kind = "a state";
    static constexpr Choice<calc::EarthState> list[] = {
        {"active", calc::EarthState::active},
        {"passive", calc::EarthState::passive},
        {"rest|at rest", calc::EarthState::rest},
    };
};

namespace {

Function earth_coefficient_entry() {
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
        .also_called("Ka, Kp, K0, Rankine, Coulomb, Jaky, lateral earth pressure")
        .related({"UC.EARTH.THRUST", "UC.SIDEFILL.WIDTH"})
        .to_try("UC.EARTH.COEFFICIENT(\"active\"; \"32 deg\")")
        .to_try("UC.EARTH.COEFFICIENT(\"rest\"; \"40 deg\")")
        .to_try("UC.EARTH.COEFFICIENT(\"active\"; \"32 deg\"; \"20 deg\")")
        .refuses("UC.EARTH.COEFFICIENT(\"active\"; \"32 deg\"; ; ; \"1V:1H\")")
        .sketch(Sketch::wall)
        .equation(
            "Rankine K = cos beta (cos beta -+ r)/(cos beta +- r), r = sqrt(cos^2 beta - cos^2 phi); Coulomb "
            "K_a = sin^2(alpha + phi)/(sin^2 alpha sin(alpha - delta)(1 + sqrt(sin(phi + delta) sin(phi - "
            "beta)/(sin(alpha - delta) sin(alpha + beta))))^2), K_p = cos^2 phi/(cos delta (1 - sqrt(sin(phi "
            "+ delta) sin phi/cos delta))^2); K_0 = 1 - sin phi")
        .source(
            "Rankine (1857), thrust parallel to the ground; Coulomb (1776); Jaky (1944); Bowles, Foundation "
            "Analysis and Design, 5th ed. (1996), chapter 11")
        .example("UC.EARTH.COEFFICIENT(\"rest\"; \"30 deg\")", "0.5", "1e-12 rel", Origin::mathematics,
                 "Jaky, 1 - sin phi")
        .example("UC.EARTH.COEFFICIENT(\"passive\"; \"30 deg\")", "3", "1e-12 rel", Origin::mathematics,
                 "Rankine, tan^2(45 deg + phi/2)")
        .examples(
            "UC.EARTH.COEFFICIENT(\"active\"; \"{} deg\"; ; \"90 deg\"; \"{} deg\")", "6e-5",
            Origin::published,
            "Rankine, after Bowles, Foundation Analysis and Design, 5th ed., as a help page on hydraulic "
            "engineering tables it",
            {{"26", "0", "0.3905"},  {"30", "0", "0.3333"},  {"32", "0", "0.3073"},  {"36", "0", "0.2596"},
             {"40", "0", "0.2174"},  {"42", "0", "0.1982"},  {"26", "10", "0.4134"}, {"30", "10", "0.3495"},
             {"32", "10", "0.321"},  {"36", "10", "0.2696"}, {"40", "10", "0.2247"}, {"42", "10", "0.2044"},
             {"26", "20", "0.5152"}, {"30", "20", "0.4142"}, {"32", "20", "0.3739"}, {"36", "20", "0.306"},
             {"40", "20", "0.2504"}, {"42", "20", "0.2262"}, {"30", "30", "0.866"},  {"32", "30", "0.5741"},
             {"36", "30", "0.4105"}, {"40", "30", "0.3151"}, {"42", "30", "0.2784"}})
        .examples("UC.EARTH.COEFFICIENT(\"active\"; \"30 deg\"; \"{} deg\")", "0.0001", Origin::from_memory,
                  "Coulomb, a vertical wall and level ground, as Das and Bowles table it",
                  {{"0", "0.3333"}, {"5", "0.3189"}, {"10", "0.3085"}, {"15", "0.3014"}, {"20", "0.2973"}})
        .caution(
            "Coulomb passive is refused above a wall friction of a third of the friction angle and on rising "
            "ground, where it overstates the resistance. Rest is that of normally consolidated ground: "
            "compacted fill pushes harder. Local codes and a licensed engineer govern")
        .takes("state", "state", "active, passive or rest")
        .takes("friction angle", "phi", "Angle of internal friction, 0 to 50 deg")
        .within(usual::friction_angle_or_none)
        .takes("wall friction", "delta", "Friction angle between wall and ground; left out, Rankine")
        .within(usual::wall_friction)
        .takes(
            "wall angle", "alpha",
            "Back of the wall from the horizontal; below 90 deg the ground rests on the back, above 90 deg "
            "the wall leans into the ground",
            u"90 deg")
        .within(usual::wall_angle)
        .takes("slope", "beta", "Slope of the ground behind the wall, such as 1V:3H or 10 deg; 0 is level",
               0.0)
        .within(usual::backfill_slope)
        .gives("K", "Coefficient of earth pressure");
}

Function earth_thrust_entry() {
    return function("UC.EARTH.THRUST", &calc::earth_thrust)
        .says("Thrust of earth, surcharge and groundwater on a length of wall")
        .also_called("retaining wall, shoring, lateral force, active thrust, surcharge")
        .related({"UC.EARTH.COEFFICIENT"})
        .to_try("UC.EARTH.THRUST(0.3073; \"19 kN/m3\"; \"3 m\"; \"10 kPa\")")
        .to_try("UC.EARTH.THRUST(0.3073; \"120 lbf/ft3\"; \"10 ft\"; \"250 psf\"; ; \"lbf/ft\")")
        .refuses("UC.EARTH.THRUST(0.3073; \"20 kN/m3\"; \"3 m\"; ; \"4 m\")")
        .sketch(Sketch::wall)
        .equation("P = K (gamma H^2/2 + q H - gamma_w h_w^2/2) + gamma_w h_w^2/2, gamma_w = 9.80665 kN/m3")
        .source("elementary statics; effective weight below the water (Terzaghi 1943)")
        .example("UC.EARTH.THRUST(UC.EARTH.COEFFICIENT(\"active\"; \"30 deg\"); \"17.3 kN/m3\"; \"7.32 m\")",
                 "154.496", "5e-4", Origin::mathematics,
                 "inputs of a problem after Murthy, recomputed: 17.3 x 7.32^2/6")
        .example(
            "UC.EARTH.THRUST(UC.EARTH.COEFFICIENT(\"active\"; \"20 deg\"); \"20 kN/m3\"; \"6 m\"; \"50 "
            "kPa\")",
            "323.592", "5e-4", Origin::mathematics,
            "inputs of a soil mechanics textbook (Eurocode edition), chapter 6, recomputed: 0.490291 "
            "(360 + 300)")
        .example("UC.EARTH.THRUST(3; \"18 kN/m3\"; \"2 m\")", "108", "1e-9 rel", Origin::mathematics,
                 "passive: 3 x 18 x 2^2/2")
        .example("UC.EARTH.THRUST(UC.EARTH.COEFFICIENT(\"active\"; \"30 deg\"); \"18 kN/m3\"; \"5 m\")", "75",
                 "1e-9 rel", Origin::mathematics, "18 x 5^2/6")
        .caution(
            "Without cohesion. With Rankine's coefficient the thrust is parallel to the ground, with "
            "Coulomb's at the wall friction. Local codes and a licensed engineer govern")
        .takes("coefficient", "K", "Coefficient of earth pressure")
        .within(usual::earth_coefficient)
        .takes("unit weight", "gamma", "Unit weight of the ground, saturated where it is under water")
        .within(usual::unit_weight)
        .takes("height", "H", "Height of the wall")
        .within(usual::wall_height)
        .takes("surcharge", "q", "Pressure on the ground behind the wall", 0.0)
        .within(usual::surcharge)
        .takes("water depth", "h_w", "Depth of groundwater above the foot of the wall", 0.0)
        .within(usual::water_depth)
        .gives("P", "Thrust per length of wall");
}

Function passive_entry() {
    return function("UC.EARTH.PASSIVE", &calc::passive_coefficient)
        .says(
            "Coefficient of passive earth pressure on a vertical wall with friction, level ground: its "
            "horizontal "
            "part, which does not overstate the resistance")
        .related({"UC.EARTH.COEFFICIENT", "UC.EARTH.THRUST", "UC.SIDEFILL.WIDTH"})
        .also_called("passive resistance, Kp, Coulomb, log spiral, toe resistance")
        .equation(
            "K_ph = cos delta/(1 - sin phi) (cos delta + sqrt(sin^2 phi - sin^2 delta)) exp((asin(sin "
            "delta/sin "
            "phi) + delta) tan phi)")
        .source("Lancellotta (2002), Geotechnique 52; EN 1997-1:2004, Annex C (both from memory; they agree)")
        .example("UC.EARTH.PASSIVE(\"30 deg\"; \"15 deg\")", "4.2877", "5e-5", Origin::from_memory,
                 "EN 1997-1:2004, Annex C")
        .example("UC.EARTH.PASSIVE(\"30 deg\")", "3", "1e-9 rel", Origin::mathematics,
                 "without wall friction Rankine's, tan^2(45 deg + phi/2)")
        .caution(
            "Passive resistance needs movement, and the ground in front must stay. Local codes and a "
            "licensed "
            "engineer govern")
        .takes("friction angle", "phi", "Angle of internal friction, to 50 deg")
        .within(usual::friction_angle)
        .takes("wall friction", "delta", "Friction angle between wall and ground, at most that of the ground",
               0.0)
        .within(usual::wall_friction)
        .gives("K_ph", "Coefficient of passive pressure");
}

}  // namespace

std::vector<Function> earth_pressure_functions() {
    return {earth_coefficient_entry(), passive_entry(), earth_thrust_entry()};
}

}  // namespace undercroft::addin
