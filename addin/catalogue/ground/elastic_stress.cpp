#include "calc/ground/elastic_stress.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::RectanglePoint> {
    static constexpr std::string_view kind = "a point of the rectangle";
    static constexpr Choice<calc::RectanglePoint> list[] = {
        {"centre|center", calc::RectanglePoint::centre},
        {"corner", calc::RectanglePoint::corner},
    };
};

namespace {

constexpr const char* elastic_only =
    "Uniform elastic ground is assumed; no impact, no load factors. Local codes and a licensed engineer "
    "govern";
constexpr const char* raft_as_point =
    "problem after Taylor (1948) in a worked sheet: a raft of 30 m x 12 m at 150 kPa as one load, its middle "
    "and points beside it";
constexpr const char* influence_table =
    "influence table of a textbook on numerical methods, problem 20.27, as reprinted: m and n";
constexpr const char* corner_of_unit_depth =
    "UC.LOAD.RECTANGLE(\"1 kPa\"; \"{} m\"; \"{} m\"; \"1 m\"; \"corner\")";

Function point_entry() {
    return function("UC.LOAD.POINT", &calc::stress_under_point)
        .says("Vertical stress in the ground under a point load, or beside it")
        .also_called(
            "Boussinesq, concentrated load, vertical stress, influence factor, pressure bulb, outrigger")
        .related({"UC.LOAD.CIRCLE", "UC.LOAD.RECTANGLE", "UC.LOAD.PLANT"})
        .to_try("UC.LOAD.POINT(\"100 kN\"; \"1.5 m\"; \"1 m\")")
        .to_try("UC.LOAD.POINT(\"16 kip\"; \"4 ft\"; ; \"psf\")")
        .refuses("UC.LOAD.POINT(\"100 kg\"; \"1.5 m\")")
        .sketch(Sketch::point)
        .equation("sigma = 3 Q/(2 pi z^2) (1 + (r/z)^2)^-2.5")
        .source("Boussinesq (1885)")
        .example("UC.LOAD.POINT(\"100 kN\"; \"2 m\")", "11.9366", "5e-5", Origin::mathematics,
                 "300/(2 pi 2^2)")
        .examples("UC.LOAD.POINT(\"1 kN\"; \"1 m\"; \"{} m\")", "5e-5", Origin::published,
                  "influence factors of Boussinesq as textbooks table them: r/z",
                  {{"0", "0.4775"}, {"0.5", "0.2733"}, {"1", "0.0844"}})
        .example("UC.LOAD.POINT(\"1 kN\"; \"1 m\"; \"2 m\")", "0.0085", "5e-5", Origin::from_memory,
                 "the same table, r/z = 2")
        .examples("UC.LOAD.POINT(\"54000 kN\"; \"20 m\"; \"{} m\")", "0.006", Origin::published,
                  raft_as_point, {{"0", "64.46"}, {"15", "21.12"}, {"6", "51.96"}, {"26.925824", "4.86"}})
        .example("UC.LOAD.POINT(\"22.5 kN\"; \"15 m\"; ; \"N/m2\")", "47.75", "0.01", Origin::published,
                 "Venkatramaiah, Geotechnical Engineering, Example 10.1")
        .caution(elastic_only)
        .takes("load", "Q", "Point load")
        .within(usual::patch_load)
        .takes("depth", "z", "Depth below the load")
        .within(usual::depth_below_load)
        .takes("offset", "r", "Distance from under the load", 0.0)
        .within(usual::offset_from_load)
        .gives("sigma", "Vertical stress");
}

Function circle_entry() {
    return function("UC.LOAD.CIRCLE", &calc::stress_under_circle)
        .says("Vertical stress in the ground under the centre of a loaded circle")
        .also_called("round footing, tank, plate bearing, flexible circular load")
        .related({"UC.LOAD.RECTANGLE", "UC.LOAD.POINT"})
        .to_try("UC.LOAD.CIRCLE(\"300 kPa\"; \"0.5 m\"; \"1 m\")")
        .to_try("UC.LOAD.CIRCLE(\"100 psi\"; \"6 in\"; \"2 ft\"; \"psf\")")
        .sketch(Sketch::point)
        .equation("sigma = q (1 - (1 + (R/z)^2)^-1.5)")
        .source("Boussinesq (1885), integrated over the circle; Spangler (1951) tabulates it")
        .example("UC.LOAD.CIRCLE(\"100 kPa\"; \"1 m\"; \"1 m\")", "64.6447", "5e-5", Origin::mathematics,
                 "100 (1 - 2^-1.5)")
        .examples("UC.LOAD.CIRCLE(\"1 kPa\"; \"1 m\"; \"{} m\")", "6e-4", Origin::published,
                  "Venkatramaiah, Geotechnical Engineering, Table 10.5, after Spangler (1951): z/R",
                  {{"0.5", "0.911"},
                   {"1", "0.646"},
                   {"1.5", "0.424"},
                   {"2", "0.284"},
                   {"2.5", "0.2"},
                   {"3", "0.146"},
                   {"4", "0.087"},
                   {"5", "0.057"},
                   {"10", "0.015"}})
        .example("UC.LOAD.CIRCLE(\"3 ksf\"; \"2 ft\"; \"4 ft\"; \"ksf\")", "0.853375", "5e-7",
                 Origin::mathematics, "3 (1 - 1.25^-1.5)")
        .caution(elastic_only)
        .takes("pressure", "q", "Pressure on the circle")
        .within(usual::contact_pressure)
        .takes("radius", "R", "Radius of the circle")
        .within(usual::patch_radius)
        .takes("depth", "z", "Depth below the circle")
        .within(usual::depth_below_load.or_zero())
        .gives("sigma", "Vertical stress");
}

Function load_rectangle_entry() {
    return function("UC.LOAD.RECTANGLE", &calc::stress_under_rectangle)
        .says("Vertical stress in the ground under the centre or a corner of a loaded rectangle")
        .also_called("Newmark, Fadum, Steinbrenner, footing, crane mat, track, stress increase")
        .related({"UC.LOAD.SPREAD", "UC.LOAD.PLANT", "UC.LOAD.CIRCLE"})
        .to_try("UC.LOAD.RECTANGLE(\"100 kPa\"; \"2 m\"; \"1 m\"; \"0.75 m\")")
        .to_try("UC.LOAD.RECTANGLE(\"100 kPa\"; \"2 m\"; \"1 m\"; \"0.75 m\"; \"corner\")")
        .to_try("UC.LOAD.RECTANGLE(\"2 ksf\"; \"8 ft\"; \"4 ft\"; \"3 ft\"; ; \"psf\")")
        .refuses("UC.LOAD.RECTANGLE(\"100 kPa\"; \"2 m\"; \"1 m\"; \"0.75 m\"; \"edge\")")
        .sketch(Sketch::point)
        .equation(
            "corner sigma = q/(2 pi) (atan(L W/(z R)) + L W z/R (1/(L^2 + z^2) + 1/(W^2 + z^2))), R^2 = "
            "L^2 + W^2 + z^2; centre = 4 corners of L/2 x W/2")
        .source("Newmark, University of Illinois Circular 24 (1935), in the form of Holl (1940)")
        .example("UC.LOAD.RECTANGLE(\"100 kPa\"; \"2 m\"; \"2 m\"; \"1 m\")", "70.0886", "5e-4 rel",
                 Origin::mathematics, "four corners of m = n = 1: 4 x 0.175222")
        .examples(corner_of_unit_depth, "6e-6", Origin::published, influence_table,
                  {{"0.1", "1.2", "0.02926"}, {"0.1", "1.4", "0.03007"}, {"0.1", "1.6", "0.03058"},
                   {"0.2", "1.2", "0.05733"}, {"0.2", "1.4", "0.05894"}, {"0.2", "1.6", "0.05994"},
                   {"0.3", "1.2", "0.08323"}, {"0.3", "1.4", "0.08561"}, {"0.3", "1.6", "0.08709"},
                   {"0.4", "1.2", "0.10631"}, {"0.4", "1.4", "0.10941"}, {"0.4", "1.6", "0.11135"},
                   {"0.5", "1.2", "0.12626"}, {"0.5", "1.4", "0.13003"}, {"0.5", "1.6", "0.13241"},
                   {"0.6", "1.2", "0.14309"}, {"0.6", "1.6", "0.15027"}, {"0.7", "1.2", "0.15703"},
                   {"0.7", "1.4", "0.16199"}, {"0.7", "1.6", "0.16515"}, {"0.8", "1.2", "0.16843"},
                   {"0.8", "1.6", "0.17739"}})
        .examples(corner_of_unit_depth, "6e-5", Origin::published,
                  "Venkatramaiah, Geotechnical Engineering, Example 10.8: m and n",
                  {{"1", "1.5", "0.1936"}, {"0.5", "3", "0.1368"}, {"0.5", "1", "0.1202"}})
        .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"1.5 m\"; \"3 m\"; \"1 m\"; \"corner\")", "0.229", "1e-3",
                 Origin::published,
                 "Venkatramaiah, Geotechnical Engineering, Example 10.8, whose area II is 0.35 % high")
        .examples(corner_of_unit_depth, "6e-5", Origin::from_memory,
                  "Newmark (1935), the table as in common textbooks: m and n",
                  {{"1", "1", "0.1752"}, {"0.5", "0.5", "0.084"}, {"2", "2", "0.2325"}, {"1", "2", "0.1999"}})
        .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"2.0833 m\"; \"0.75 m\"; \"1 m\"; \"corner\")", "0.176",
                 "1.5e-3", Origin::published,
                 "soil mechanics textbook (Eurocode edition), a square of 4.5 m: read from a chart")
        .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"0.5833 m\"; \"0.75 m\"; \"1 m\"; \"corner\")", "0.122",
                 "4e-3", Origin::published, "the same textbook and square: read from a chart")
        .example("UC.LOAD.RECTANGLE(\"1 kPa\"; \"2000 m\"; \"2000 m\"; \"1 m\"; \"corner\")", "0.25", "1e-7",
                 Origin::mathematics, "limit of a wide area: a quarter")
        .example("UC.LOAD.RECTANGLE(\"2 ksf\"; \"10 ft\"; \"10 ft\"; \"5 ft\"; \"centre\"; \"ksf\")",
                 "1.401772", "5e-4 rel", Origin::mathematics, "four corners of m = n = 1: 2 x 4 x 0.175222")
        .caution(elastic_only)
        .takes("pressure", "q", "Pressure on the rectangle")
        .within(usual::contact_pressure)
        .takes("length", "L", "Length of the rectangle")
        .within(usual::patch_side)
        .takes("width", "W", "Width of the rectangle")
        .within(usual::patch_side)
        .takes("depth", "z", "Depth below the rectangle")
        .within(usual::depth_below_load.or_zero())
        .takes("at", "at", "centre, where the stress is greatest, or corner", u"centre")
        .gives("sigma", "Vertical stress");
}

}  // namespace

std::vector<Function> elastic_stress_functions() {
    return {point_entry(), circle_entry(), load_rectangle_entry()};
}

}  // namespace undercroft::addin
