#include "calc/water/graphical_peak.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/local_rain.hpp"
#include "addin/catalogue/water/storm_slot.hpp"
#include "calc/water/greenfield.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* graphical = "USDA TR-55 (1986), eq. 4-1, Tables 4-1, 4-2 and F-1";
constexpr const char* graphical_equation =
    "q_p = q_u A Q F_p; log q_u = C_0 + C_1 log t_c + C_2 (log t_c)^2 by type of rain and I_a/P, Q by the "
    "curve number";
constexpr const char* by_hand =
    "TR-55's coefficients, type II, q_u straight between the rows of I_a/P, computed apart";
constexpr const char* release_caution =
    "Which flow of the undeveloped site may be let out, at which frequencies, is the local authority's to "
    "name; its "
    "method governs";

Entry& takes_site(Entry& entry) {
    return entry.takes("area", "A", "Drained area")
        .within(usual::drained_area)
        .takes("rain depth", "P", "24-hour rain of the frequency")
        .within(usual::day_rain)
        .takes("curve number", "CN", "Curve number, 40 to 100")
        .within(usual::graphical_curve_number)
        .takes("time of concentration", "t_c", "Time of concentration, 0.1 h to 10 h")
        .within(usual::graphical_time)
        .takes("rain type", "type", "type I, IA, II or III, as the storm falls there")
        .takes("ponds", "ponds", "Share of ponds and swamps spread over the catchment, at most 5 %", 0.0)
        .within(usual::share_of_ponds);
}
Entry& takes_permitted(Entry& entry) {
    return entry.takes("permitted share", "s", "Of that flow, what the authority permits", 1.0)
        .within(usual::permitted_share)
        .gives("Q", "Permitted release");
}

Function runoff_graphical_entry() {
    auto peak = function("UC.RUNOFF.GRAPHICAL", &calc::graphical_peak);
    peak.says("Peak flow of a 24-hour storm by TR-55's graphical method")
        .related({"UC.CURVENUMBER.COMPOSITE", "UC.RUNOFF.DEPTH", "UC.RELEASE.NRCS", "UC.TIME.SHEET"})
        .also_called("TR-55 peak discharge, graphical peak, unit peak discharge, SCS peak flow, NRCS")
        .equation(graphical_equation)
        .source(graphical)
        .caution(nrcs_storms);
    return takes_site(peak)
        .gives("q_p", "Peak flow")
        .example(
            "UC.RUNOFF.GRAPHICAL(\"0.05 mi2\"; \"5 in\"; 80; \"0.3 h\"; \"type II\"; \"0 %\"; \"ft3/s\")",
            "97.794404", "0.1 %", Origin::mathematics, by_hand)
        .example("UC.RUNOFF.GRAPHICAL(\"0.4 mi2\"; \"3.6 in\"; 68; \"1.2 h\"; \"II\"; \"5 %\"; \"ft3/s\")",
                 "75.052968", "0.1 %", Origin::mathematics, by_hand)
        .example(
            "UC.RUNOFF.GRAPHICAL(20000; 0.1; 80; 18; \"II\")/UC.RUNOFF.GRAPHICAL(40000; 0.1; 80; 18; \"II\")",
            "0.5", "1e-12 rel", Origin::mathematics, "in proportion to the area");
}

Function composite_entry() {
    return function("UC.CURVENUMBER.COMPOSITE",
                    [](calc::Table<Area, Share> surfaces) { return calc::composite_curve_number(surfaces); })
        .says("Curve number of several surfaces together, weighted by area")
        .related({"UC.CURVENUMBER.URBAN", "UC.RUNOFF.DEPTH", "UC.RUNOFF.GRAPHICAL", "UC.HYDROGRAPH.STORM"})
        .also_called("weighted curve number, area-weighted CN, composite CN, mixed land use")
        .equation("CN = sum(A CN)/sum(A)")
        .source("USDA TR-55 (1986), ch. 2, which rounds it to a whole number")
        .caution("Where curve numbers differ much, add their runoff instead: a mean one underrates it")
        .takes("surfaces", "A, CN", "Two columns: area and curve number of each surface")
        .within({usual::surface_area, usual::curve_number})
        .gives("CN", "Curve number")
        .example("UC.CURVENUMBER.COMPOSITE({\"acre\";\"1\"|220;75|150;89|30;80})", "80.625", "1e-9 rel",
                 Origin::mathematics, "areas and curve numbers read in a public textbook example")
        .example("UC.CURVENUMBER.COMPOSITE({3000;61|7000;74})", "70.1", "1e-9 rel", Origin::mathematics,
                 "0.3 x 61 + 0.7 x 74");
}

Function urban_entry() {
    return function("UC.CURVENUMBER.URBAN", &calc::urban_curve_number)
        .says(
            "Curve number of pervious ground with an impervious share (CN 98), part of which may drain over "
            "the ground")
        .related({"UC.CURVENUMBER.COMPOSITE", "UC.RUNOFF.DEPTH", "UC.RUNOFF.GRAPHICAL"})
        .also_called(
            "impervious connected, unconnected impervious area, urban CN, composite CN with pavement")
        .equation("CN_p + P_imp (98 - CN_p)(1 - 0.5 R)")
        .source("USDA TR-55 (1986), figs. 2-3 and 2-4, equations read in an open package that names them")
        .takes("pervious curve number", "CN_p", "Curve number of the pervious ground, 1 to 98")
        .within(usual::pervious_curve_number)
        .takes("impervious", "P_imp", "Impervious share; 0 % for none")
        .within(usual::impervious_share)
        .takes("unconnected", "R",
               "Of it, the share that does not drain straight to a drain; for at most 30 % impervious", 0.0)
        .within(usual::share_of_whole)
        .gives("CN", "Curve number")
        .example("UC.CURVENUMBER.URBAN(61; \"20 %\"; \"75 %\")", "65.625", "1e-9 rel", Origin::mathematics,
                 "61 + 0.2 x 37 x 0.625")
        .example("UC.CURVENUMBER.URBAN(61; 0.38)", "75.06", "1e-9 rel", Origin::mathematics,
                 "61 + 0.38 x 37");
}

Function rational_release_entry() {
    auto release = function("UC.RELEASE.RATIONAL", [](calc::RainTable rain, Share coefficient, Area area,
                                                      Time time_of_concentration, Share permitted_share) {
        return calc::greenfield_rational(rain, coefficient, area, time_of_concentration, permitted_share);
    });
    release
        .says("Release of the undeveloped site by the rational method, or the share of it that is permitted")
        .related({"UC.STORAGE.REQUIRED", "UC.RELEASE.NRCS", "UC.RUNOFF.PEAK", "UC.RAIN.PICK",
                  "UC.ORIFICE.DIAMETER"})
        .also_called(
            "allowable discharge, permitted outflow, pre-development flow, consent to discharge, existing "
            "runoff")
        .equation("Q = s C i(t_c) A")
        .source("Chow, Maidment and Mays, Applied Hydrology (1988), sec. 15.1")
        .caution(release_caution)
        .takes("rain", "t_d, i", "Two columns: duration and mean intensity of one frequency")
        .within({usual::table_duration, usual::table_intensity})
        .takes("coefficient", "C", "Runoff coefficient of the site as it was")
        .within(usual::runoff_coefficient)
        .takes("area", "A", "Area of the site")
        .within(usual::drained_area)
        .takes("time of concentration", "t_c", "Time of concentration of the site as it was")
        .within(usual::concentration_time);
    return takes_permitted(release)
        .example("UC.RELEASE.RATIONAL(wenzel_like; 0.3; \"2 ha\"; \"10 min\"; 1)", "166.666666667",
                 "1e-9 rel", Origin::mathematics, "0.3 x 100 mm/h x 2 ha")
        .example("UC.RELEASE.RATIONAL({10;100|60;37.5}; 0.3; 20000; 10; \"50 %\")", "83.3333333333",
                 "1e-9 rel", Origin::mathematics, "half of it");
}

Function nrcs_release_entry() {
    auto release = function("UC.RELEASE.NRCS", &calc::greenfield_nrcs);
    release
        .says(
            "Release of the undeveloped site by TR-55's graphical method, or the share of it that is "
            "permitted")
        .related({"UC.STORAGE.REQUIRED", "UC.RELEASE.RATIONAL", "UC.RUNOFF.GRAPHICAL", "UC.ORIFICE.DIAMETER"})
        .also_called("allowable discharge, pre-development peak, permitted outflow, TR-55 predeveloped")
        .equation("Q = s q_p, q_p as UC.RUNOFF.GRAPHICAL")
        .source(graphical)
        .caution(release_caution);
    return takes_permitted(takes_site(release))
        .example("UC.RELEASE.NRCS(\"0.05 mi2\"; \"5 in\"; 80; \"0.3 h\"; \"type II\"; \"0 %\"; 1; \"ft3/s\")",
                 "97.794404", "0.1 %", Origin::mathematics, by_hand)
        .example(
            "UC.RELEASE.NRCS(20000; 0.1; 70; 18; \"II\"; ; 0.8)/UC.RUNOFF.GRAPHICAL(20000; 0.1; 70; 18; "
            "\"II\")",
            "0.8", "1e-12 rel", Origin::mathematics, "80 % of it");
}

}  // namespace

std::vector<Function> graphical_peak_functions() {
    return {runoff_graphical_entry(), composite_entry(), urban_entry()};
}

std::vector<Function> release_functions() {
    return {rational_release_entry(), nrcs_release_entry()};
}

}  // namespace undercroft::addin
