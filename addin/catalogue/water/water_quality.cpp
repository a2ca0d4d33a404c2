#include "calc/water/water_quality.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* arithmetic = "arithmetic, common practice";
constexpr const char* silt_caution =
    "Loads of solids differ tenfold between sites, and are worst while the ground around is bare: look after "
    "the first "
    "year, and clean by what is measured";

Function quality_volume_entry() {
    constexpr const char* rule =
        "New Hampshire Env-Wq 1504.10 (read): P 1 in, R_v = 0.05 + 0.9 I, recomputed";
    return function("UC.QUALITY.VOLUME", &calc::water_quality_volume)
        .says("Volume that is kept to clean the first of the runoff")
        .related({"UC.RUNOFF.DEPTH", "UC.BED.DEPTH", "UC.SILT.DEPTH"})
        .also_called("water quality volume, WQv, first flush, treatment volume, interception")
        .equation("V = max(P R_v A, P_0 A), R_v = a + b I")
        .source(
            "Schueler (1987), as in the Maryland Stormwater Design Manual, ch. 2, and New Hampshire Env-Wq "
            "1504.10 (both "
            "read)")
        .caution("Rain, intercept, slope and least depth differ by place: local practice governs")
        .takes("rain depth", "P", "Rain whose runoff is cleaned, such as 25 mm")
        .within(usual::quality_rain)
        .takes("area", "A", "Area that drains there")
        .within(usual::drained_area)
        .takes("impervious", "I", "Impervious share of it; 0 % for none")
        .within(usual::impervious_share)
        .takes("intercept", "a", "Runoff coefficient without impervious area", 0.05)
        .within(usual::quality_intercept)
        .takes("slope", "b", "What it grows by at 100 % impervious", 0.9)
        .within(usual::quality_slope)
        .takes("least depth", "P_0", "Least depth over the whole area; 0 m for none", 0.0)
        .within(usual::quality_least)
        .gives("V", "Water-quality volume")
        .example("UC.QUALITY.VOLUME(\"1 in\"; \"10 acre\"; \"40 %\"; 0.05; 0.9; \"0 in\"; \"ft3\")", "14883",
                 "0.5", Origin::mathematics, rule)
        .example("UC.QUALITY.VOLUME(\"25 mm\"; \"1 ha\"; \"10 %\")", "35", "1e-9 rel", Origin::mathematics,
                 rule)
        .example("UC.QUALITY.VOLUME(0.025; 15000; 0.6)", "221.25", "1e-9 rel", Origin::mathematics,
                 "25 mm x (0.05 + 0.54) x 1.5 ha");
}

Entry& takes_silt(Entry& entry) {
    return entry.source(arithmetic)
        .caution(silt_caution)
        .takes("yearly load", "L", "Mass of solids that a unit of drained area sheds in a year")
        .within(usual::silt_load)
        .takes("drained area", "A", "Drained area")
        .within(usual::drained_area)
        .takes("share kept", "e", "Share of it that settles in the bed or its silt row")
        .within(usual::share_kept)
        .takes("silt density", "rho", "Mass of settled silt over its volume")
        .within(usual::silt_density)
        .takes("floor area", "a", "Floor on which it settles")
        .within(usual::silt_floor);
}

Function silt_depth_entry() {
    auto depth = function("UC.SILT.DEPTH", &calc::silt_depth);
    depth.says("Depth of silt after some years")
        .related({"UC.SILT.YEARS", "UC.QUALITY.VOLUME", "UC.BED.DEPTH"})
        .also_called("sediment depth, accumulation, sludge, forebay")
        .equation("d = y L A e/(rho a)");
    return takes_silt(depth)
        .takes("years", "y", "Years since it was clean; 0 % for none")
        .within(usual::years_of_silt)
        .gives("d", "Depth of silt")
        .example("UC.SILT.DEPTH(\"60 g/m2\"; \"2 ha\"; \"80 %\"; \"1200 kg/m3\"; \"600 m2\"; 10; \"mm\")",
                 "13.3333333333", "1e-9 rel", Origin::mathematics,
                 "10 x 0.06 kg/m2 x 2 ha x 0.8/(1200 kg/m3 x 600 m2)")
        .example("UC.SILT.DEPTH(60; 20000; 0.8; 1200; 60; 5; \"mm\")", "66.6666666667", "1e-9 rel",
                 Origin::mathematics, "half of the time on a tenth of the floor");
}

Function silt_years_entry() {
    auto years = function("UC.SILT.YEARS", &calc::silt_years);
    years.says("Years until silt has grown to a depth, when it is to be cleaned")
        .related({"UC.SILT.DEPTH", "UC.QUALITY.VOLUME"})
        .also_called("cleaning interval, maintenance interval, desilting, jetting, sediment removal")
        .equation("y = d rho a/(L A e)");
    return takes_silt(years)
        .takes("depth", "d", "Depth of silt at which to clean; 0 m for none")
        .within(usual::silt_depth)
        .gives("y", "Years")
        .example("UC.SILT.YEARS(\"60 g/m2\"; \"2 ha\"; \"80 %\"; \"1200 kg/m3\"; \"60 m2\"; \"75 mm\")",
                 "5.625", "1e-9 rel", Origin::mathematics,
                 "75 mm x 1200 kg/m3 x 60 m2/(0.06 kg/m2 x 2 ha x 0.8)")
        .example("UC.SILT.YEARS(60; 20000; 0.8; 1200; 60; 0.0666666666667)", "5", "1e-9 rel",
                 Origin::mathematics, "the inverse of UC.SILT.DEPTH");
}

}  // namespace

std::vector<Function> water_quality_functions() {
    return {quality_volume_entry(), silt_depth_entry(), silt_years_entry()};
}

}  // namespace undercroft::addin
