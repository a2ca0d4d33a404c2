#include "calc/water/soakaway.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/local_rain.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::SoakageFailure> {
    static constexpr std::string_view kind = "a consequence";
    static constexpr Choice<calc::SoakageFailure> list[] = {
        {"none|no damage", calc::SoakageFailure::none},
        {"minor|minor damage", calc::SoakageFailure::minor},
        {"major|damage to buildings", calc::SoakageFailure::major},
    };
};

namespace {

constexpr const char* digest =
    "BRE Digest 365, Soakaway design, as engineers print it (a consultant's calculation in public planning "
    "papers was "
    "read, the Digest was not)";
constexpr const char* soakaway_caution =
    "Keep clear of foundations and of the highest groundwater. The base is left out, as it silts up. Local "
    "codes and a "
    "licensed engineer govern";
constexpr const char* trench =
    "a consultant's calculation of 2017 in public planning papers: 690 m2, 8.5e-6 m/s, a trench of 23 m x 5 "
    "m, 0.8 m "
    "effective depth";

Entry& takes_walls(Entry& entry) {
    return entry.takes("perimeter", "P", "Perimeter of the walls")
        .within(usual::soaking_perimeter)
        .takes("effective depth", "d", "Depth from the base to where the drain comes in")
        .within(usual::soakage_depth);
}

Entry& takes_soakaway(Entry& entry) {
    entry.source(digest)
        .caution(soakaway_caution)
        .takes("rain", "t_d, i", "Two columns: duration and mean intensity")
        .within({usual::table_duration, usual::table_intensity})
        .takes("drained area", "A", "Area that drains to the soakaway, times its runoff coefficient")
        .within(usual::drained_area);
    return takes_walls(entry)
        .takes("rate", "f", "Soakage rate from the test; 0 mm/h for none")
        .within(usual::soakage_rate.or_zero())
        .takes("safety factor", "F", "What the tested rate is divided by; UC.SOAK.FACTOR", 1.0)
        .within(usual::safety_factor);
}

Function soak_factor_entry() {
    constexpr const char* table =
        "CIRIA C753, The SuDS Manual (2015), Table 25.2, as quoted in a public low-impact-development guide";
    return function("UC.SOAK.FACTOR", &calc::soakage_factor)
        .says("Safety factor on a tested soakage rate, by the area drained and what a failure does")
        .related({"UC.SOAK.RATE", "UC.SOAK.DEPTH", "UC.SOAK.STORAGE", "UC.SOAK.FLOW"})
        .also_called("infiltration factor of safety, consequence of failure, design infiltration rate, CIRIA")
        .equation("up to 100 m2 1.5, 2, 10; to 1000 m2 1.5, 3, 10; above 1.5, 5, 10 for none, minor, major")
        .source(
            "CIRIA C753, The SuDS Manual (2015), Table 25.2: the rows to 1000 m2 read in a public guide, "
            "that above from "
            "memory")
        .caution("The row above 1000 m2 is from memory: check it before relying on it. Local codes govern")
        .takes("drained area", "A", "Area that drains to the bed")
        .within(usual::drained_area)
        .takes("consequence", "consequence",
               "none (no damage or inconvenience), minor (to external areas) or major (damage to buildings, "
               "flooded roads)")
        .gives("F", "Safety factor")
        .example("UC.SOAK.FACTOR(\"500 m2\"; \"minor\")", "3", "exact", Origin::published, table)
        .example("UC.SOAK.FACTOR(\"80 m2\"; \"major\")", "10", "exact", Origin::published, table)
        .example("UC.SOAK.FACTOR(6550; \"minor\")", "5", "exact", Origin::from_memory,
                 "CIRIA C753, The SuDS Manual (2015), Table 25.2, last row");
}

Function walls_entry() {
    auto walls = function("UC.SOAK.WALLS", &calc::soakaway_walls);
    walls
        .says(
            "Walls that soak in the design of BRE Digest 365: those to half of the effective depth, without "
            "the base")
        .related({"UC.SOAK.STORAGE", "UC.SOAK.HALFTIME", "UC.SOAK.FLOW"})
        .also_called("side wall area, percolation area, infiltration surface, as50, BRE 365")
        .equation("a_s50 = P d/2")
        .source(digest)
        .caution(soakaway_caution);
    return takes_walls(walls)
        .gives("a_s50", "Wall area")
        .example("UC.SOAK.WALLS(\"56 m\"; \"0.8 m\")", "22.4", "1e-9 rel", Origin::mathematics,
                 "2 (23 + 5) 0.8/2, the trench of a consultant's calculation of 2017");
}

Function storage_entry() {
    auto storage = function("UC.SOAK.STORAGE", [](calc::RainTable rain, Area drained_area, Length perimeter,
                                                  Length effective_depth, Speed rate, Share safety_factor) {
        return calc::soakaway_storage(rain, drained_area, perimeter, effective_depth, rate, safety_factor);
    });
    storage
        .says(
            "Storage that a soakaway needs by walls to half depth: the greatest inflow less outflow over all "
            "durations of "
            "the rain table, also between its rows")
        .related({"UC.SOAK.DURATIONS", "UC.SOAK.WALLS", "UC.SOAK.HALFTIME", "UC.SOAK.FACTOR", "UC.RAIN.PICK"})
        .also_called("soakaway size, required storage, infiltration trench, dry well, percolation pit")
        .equation("S = max over t_d of A i t_d - a_s50 f t_d/F");
    return takes_soakaway(storage)
        .gives("S", "Storage required")
        .example(
            "UC.SOAK.STORAGE({\"min\";\"mm/h\"|10;76.14|30;39.68|60;24.8}; \"690 m2\"; \"56 m\"; \"0.8 m\"; "
            "\"8.5e-6 m/s\"; 1)",
            "16.42656", "1e-6 rel", Origin::mathematics,
            "690 m2 x 24.8 mm less 22.4 m2 x 8.5e-6 m/s x 60 min, the last row")
        .example("UC.SOAK.STORAGE({10;76.14|60;24.8}; 690; \"56 m\"; \"0.8 m\"; 30.6)", "16.42656",
                 "1e-6 rel", Origin::mathematics, "8.5e-6 m/s is 30.6 mm/h");
}

Function soak_durations_entry() {
    auto durations = function("UC.SOAK.DURATIONS", [](calc::RainTable rain, Area drained_area,
                                                      Length perimeter, Length effective_depth, Speed rate,
                                                      Share safety_factor) {
        return calc::soakaway_durations(rain, drained_area, perimeter, effective_depth, rate, safety_factor);
    });
    durations
        .says(
            "The same for each duration of the rain table, with a row added at the governing duration where "
            "it falls "
            "between two")
        .related({"UC.SOAK.STORAGE", "UC.SOAK.HALFTIME", "UC.RAIN.PICK"})
        .also_called("soakaway storm durations, critical duration table, storage by duration")
        .equation("S = A i t_d - a_s50 f t_d/F");
    return takes_soakaway(durations)
        .gives_columns("Storage by duration", {{"duration", "t_d"},
                                               {"intensity", "i"},
                                               {"inflow", "A i t_d"},
                                               {"outflow", "a_s50 f t_d/F"},
                                               {"stored", "S"}})
        .found_to(half_of_the_digits, {"duration", "intensity", "inflow", "outflow"})
        .examples(
            "INDEX(UC.SOAK.DURATIONS({\"min\";\"mm/h\"|10;76.14|30;39.68|60;24.8|240;8.845|600;4.296}; \"690 "
            "m2\"; \"56 "
            "m\"; \"0.8 m\"; \"8.5e-6 m/s\"; 1); {}; 3)",
            "0.01", Origin::published, trench,
            {{"2", "8.75"}, {"3", "13.69"}, {"4", "17.11"}, {"5", "24.41"}, {"7", "29.64"}})
        .example(
            "INDEX(UC.SOAK.DURATIONS({10;76.14|60;24.8|600;4.296}; 690; \"56 m\"; \"0.8 m\"; 30.6); 2; 5)",
            "8.64186", "1e-6 rel", Origin::mathematics,
            "690 m2 x 12.69 mm less 22.4 m2 x 8.5e-6 m/s x 10 min");
}

Function half_time_entry() {
    auto half = function("UC.SOAK.HALFTIME", &calc::soakaway_half_time);
    half.says(
            "Time until half of what a soakaway holds is gone, by walls to half depth: at most 24 h in BRE "
            "Digest 365")
        .related({"UC.SOAK.STORAGE", "UC.SOAK.WALLS", "UC.SOAK.TIME", "UC.ATMOST"})
        .also_called("half emptying time, drain-down, drawdown time, half drain time")
        .equation("t = 0.5 S F/(a_s50 f)")
        .source(digest)
        .caution(soakaway_caution)
        .takes("stored volume", "S", "Volume held at the start")
        .within(usual::soaking_volume);
    return takes_walls(half)
        .takes("rate", "f", "Soakage rate from the test")
        .within(usual::soakage_rate)
        .takes("safety factor", "F", "What the tested rate is divided by; UC.SOAK.FACTOR", 1.0)
        .within(usual::safety_factor)
        .gives("t", "Time to half")
        .example("UC.SOAK.HALFTIME(\"22.788 m3\"; \"56 m\"; \"0.8 m\"; \"8.5e-6 m/s\"; 1; \"h\")",
                 "16.6228992", "1e-7 rel", Origin::mathematics, "0.5 x 22.788 m3/(22.4 m2 x 8.5e-6 m/s)");
}

}  // namespace

std::vector<Function> soakaway_functions() {
    return {soak_factor_entry(), walls_entry(), storage_entry(), soak_durations_entry(), half_time_entry()};
}

}  // namespace undercroft::addin
