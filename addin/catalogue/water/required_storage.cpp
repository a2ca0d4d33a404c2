#include "calc/water/required_storage.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* required_source =
    "modified rational method; with a time of concentration FAA AC 150/5320-5 (from memory) and Guo, J. "
    "Water "
    "Resour. Plan. Manage. 125 (1999)";
constexpr const char* required_caution =
    "No longer rain than the table holds is tried: where its last row governs, the table is too short. Rain, "
    "frequency, release and method are the local authority's to name; a licensed engineer governs";

/// The arguments of the storage that a permitted release makes necessary.
Entry& takes_release(Entry& entry) {
    return entry.source(required_source)
        .caution(required_caution)
        .takes("rain", "t_d, i", "Two columns: duration and mean intensity of one frequency")
        .within({usual::table_duration, usual::table_intensity})
        .takes("coefficient", "C", "Runoff coefficient")
        .within(usual::runoff_coefficient)
        .takes("area", "A", "Drained area")
        .within(usual::drained_area)
        .takes("release", "Q", "Permitted release; 0 L/s for none")
        .within(usual::release)
        .takes("time of concentration", "t_c",
               "Given: the release is averaged over the limbs, k = 0.5 (1 + t_c/t_d) for t_d > t_c. Left "
               "out: k = "
               "1, constant from the start")
        .within(usual::concentration_time);
}

Function required_entry() {
    auto required =
        function("UC.STORAGE.REQUIRED", [](calc::RainTable rain, Share coefficient, Area area, Flow release,
                                           std::optional<Time> time_of_concentration) {
            return calc::storage_required(rain, coefficient, area, release, time_of_concentration);
        });
    required
        .says(
            "Storage required for a permitted release: the largest shortfall over all durations in the rain "
            "table's range, also between its rows")
        .also_called(
            "detention volume, attenuation, sizing, modified rational method, required volume, tank size")
        .related({"UC.STORAGE.DURATIONS", "UC.BED.VOLUME", "UC.RUNOFF.PEAK"})
        .to_try(
            "UC.STORAGE.REQUIRED({\"min\";\"mm/h\"|10;120|30;70|60;45|120;28}; 0.85; \"6000 m2\"; \"15 "
            "L/s\")")
        .to_try(
            "UC.STORAGE.REQUIRED({\"min\";\"in/h\"|10;4.7|30;2.8|60;1.8|120;1.1}; 0.85; \"1.5 acre\"; \"0.5 "
            "cfs\"; ; \"ft3\")")
        .refuses(
            "UC.STORAGE.REQUIRED({\"min\";\"mm/h\"|10;120|30;70|60;45|120;28}; 85; \"6000 m2\"; \"15 L/s\")")
        .equation("V = max over t_d of C i(t_d) A t_d - k Q t_d");
    return takes_release(required)
        .gives("V", "Storage required")
        .example(
            "UC.STORAGE.REQUIRED(wenzel_like; 0.7; \"2 ha\"; \"50 L/s\")", "350.121969", "0.5 %",
            Origin::mathematics,
            "60 (sqrt(K) - sqrt(Q b))^2 for i = a/(t_d + b) and K = C A a; the table's log-log chords lie "
            "a little off the curve")
        .example("UC.STORAGE.REQUIRED({10;100|100;10}; 0.5; \"1 ha\"; \"20 L/s\")", "71.3333333333",
                 "1e-9 rel", Origin::mathematics,
                 "intensity x duration is constant, so the shortest duration governs: 83.333 m3 in, 12 m3 "
                 "released")
        .example("UC.STORAGE.REQUIRED({10;100|100;10}; 0.5; \"1 ha\"; \"20 L/s\"; \"5 min\")",
                 "74.3333333333", "1e-9 rel", Origin::from_memory,
                 "FAA AC 150/5320-5: released 0.5 (1 + 5/10) of 12 m3");
}

Function storage_durations_entry() {
    auto durations =
        function("UC.STORAGE.DURATIONS", [](calc::RainTable rain, Share coefficient, Area area, Flow release,
                                            std::optional<Time> time_of_concentration) {
            return calc::storage_durations(rain, coefficient, area, release, time_of_concentration);
        });
    durations
        .says(
            "The same for each duration of the rain table, with a row added at the governing duration where "
            "it falls between two")
        .also_called("critical duration, storage by duration, modified rational table")
        .related({"UC.STORAGE.REQUIRED", "UC.RAIN.INTENSITY"})
        .to_try(
            "UC.STORAGE.DURATIONS({\"min\";\"mm/h\"|10;120|30;70|60;45|120;28}; 0.85; \"6000 m2\"; "
            "\"15 L/s\")")
        .to_try(
            "UC.STORAGE.DURATIONS({\"min\";\"in/h\"|10;4.7|30;2.8|60;1.8|120;1.1}; 0.85; \"1.5 acre\"; "
            "\"0.5 cfs\"; ; \"min;in/h;ft3;ft3;ft3\")")
        .equation("stored = C i(t_d) A t_d - k Q t_d");
    return takes_release(durations)
        .gives_columns("Storage by duration", {{"duration", "t_d"},
                                               {"intensity", "i"},
                                               {"inflow", "C i A t_d"},
                                               {"released", "k Q t_d"},
                                               {"stored", "V"}})
        .found_to(half_of_the_digits, {"duration", "intensity", "inflow", "released"})
        .example("INDEX(UC.STORAGE.DURATIONS({10;120|30;60|60;36}; 0.5; \"1 ha\"; \"20 L/s\"); 3; 5)", "114",
                 "1e-9 rel", Origin::mathematics,
                 "0.5 x 60 mm/h x 1 ha x 30 min = 150 m3 in, 36 m3 released");
}

}  // namespace

std::vector<Function> required_storage_functions() {
    return {required_entry(), storage_durations_entry()};
}

}  // namespace undercroft::addin
