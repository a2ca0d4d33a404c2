#include "calc/bed/storage.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/choices.hpp"
#include "addin/catalogue/entry.hpp"
#include "calc/water/required_storage.hpp"

namespace undercroft::addin {

namespace {

/// The arguments that describe a bed, said once for the functions that take them.
Entry& takes_bed(Entry& entry) {
    return entry.takes("length", "L", "Length of the bed at its base")
        .takes("width", "W", "Width of the bed at its base")
        .takes("batter", "z", "Slope of the bed's walls; 0 for vertical walls")
        .takes("base stone", "b", "Stone under the chambers")
        .takes("cover stone", "c", "Stone over the crowns")
        .takes("porosity", "n", "Porosity of the stone")
        .takes("shape", "shape", "Cross-section: ellipse, parabola, segment, rectangle or circle")
        .takes("span", "B", "Inside width of a chamber at its base")
        .takes("rise", "H", "Inside height of a chamber")
        .takes("chamber length", "l", "Length of all chambers together");
}

calc::Bed bed(Length length, Length width, Batter batter, Length base_stone, Length cover_stone,
              Share porosity, calc::Shape shape, Length span, Length rise, Length chamber_length) {
    return {length, width, batter, base_stone, cover_stone, porosity, {shape, span, rise}, chamber_length};
}

constexpr const char* held_equation =
    "V = n (P - C) + C; P = L W d + (L + W) z d^2 + 4/3 z^2 d^3; C = l A(d - b), A the chamber's area below "
    "that depth";

constexpr const char* required_source =
    "modified rational method; with a time of concentration FAA AC 150/5320-5 (from memory) and Guo, J. "
    "Water "
    "Resour. Plan. Manage. 125 (1999)";
constexpr const char* required_caution =
    "No longer rain than the table holds is tried: where its last row governs, the table is too short. Rain, "
    "frequency, release and method are the local authority's to name; a licensed engineer governs";

/// The arguments of the storage that a permitted release makes necessary.
Entry& takes_release(Entry& entry) {
    return entry.takes("rain", "t, i", "Two columns: duration and mean intensity of one frequency")
        .takes("coefficient", "C", "Runoff coefficient")
        .takes("area", "A", "Drained area")
        .takes("release", "Q", "Permitted release")
        .takes(
            "time of concentration", "tc",
            "Given: the release is averaged over the limbs, k = 0.5 (1 + tc/td) for td > tc. Left out: k = "
            "1, constant from the start");
}

std::vector<Function> required_entries() {
    auto required =
        function("UC.STORAGE.REQUIRED", [](calc::RainTable rain, Share coefficient, Area area, Flow release,
                                           std::optional<Time> time_of_concentration) {
            return calc::storage_required(rain, coefficient, area, release, time_of_concentration);
        });
    required
        .says(
            "Storage required for a permitted release: the largest shortfall over all durations in the rain "
            "table's range, also between its rows")
        .equation("V = max over td of C i(td) A td - k Q td")
        .source(required_source)
        .example("UC.STORAGE.REQUIRED(wenzel_like; 0.7; \"2 ha\"; \"50 L/s\")", "350.121969", "0.5 %",
                 Origin::mathematics,
                 "shared checks, water 4c: 60 (sqrt(K) - sqrt(Qa b))^2; the table's log-log chords lie a "
                 "little off the curve")
        .example("UC.STORAGE.REQUIRED({10;100|100;10}; 0.5; \"1 ha\"; \"20 L/s\")", "71.3333333333",
                 "1e-9 rel", Origin::mathematics,
                 "intensity x duration is constant, so the shortest duration governs: 83.333 m3 in, 12 m3 "
                 "released")
        .example("UC.STORAGE.REQUIRED({10;100|100;10}; 0.5; \"1 ha\"; \"20 L/s\"; \"5 min\")",
                 "74.3333333333", "1e-9 rel", Origin::from_memory,
                 "FAA AC 150/5320-5: released 0.5 (1 + 5/10) of 12 m3")
        .caution(required_caution);
    takes_release(required).gives("V", "Storage required");

    auto durations =
        function("UC.STORAGE.DURATIONS", [](calc::RainTable rain, Share coefficient, Area area, Flow release,
                                            std::optional<Time> time_of_concentration) {
            return calc::storage_durations(rain, coefficient, area, release, time_of_concentration);
        });
    durations
        .says(
            "The same for each duration of the rain table, with a row added at the governing duration where "
            "it falls between two")
        .equation("stored = C i(td) A td - k Q td")
        .source(required_source)
        .example("INDEX(UC.STORAGE.DURATIONS({10;120|30;60|60;36}; 0.5; \"1 ha\"; \"20 L/s\"); 3; 5)", "114",
                 "1e-9 rel", Origin::mathematics, "0.5 x 60 mm/h x 1 ha x 30 min = 150 m3 in, 36 m3 released")
        .caution(required_caution);
    takes_release(durations).gives_columns("Storage by duration", {{"duration", "td"},
                                                                   {"intensity", "i"},
                                                                   {"inflow", "C i A td"},
                                                                   {"released", "k Q td"},
                                                                   {"stored", "V"}});
    return {required, durations};
}

}  // namespace

Group storage_functions() {
    auto volume =
        function("UC.BED.VOLUME", [](Length depth, Length length, Length width, Batter batter,
                                     Length base_stone, Length cover_stone, Share porosity, calc::Shape shape,
                                     Length span, Length rise, Length chamber_length) {
            return calc::bed_volume(depth, bed(length, width, batter, base_stone, cover_stone, porosity,
                                               shape, span, rise, chamber_length));
        });
    volume.says("Water held by the bed below a depth above its base, in chambers and stone")
        .equation(held_equation)
        .source("geometry of the bed; common practice")
        .example(
            "UC.BED.VOLUME(\"1 m\"; \"20 m\"; \"10 m\"; \"2H:1V\"; \"200 mm\"; \"50 mm\"; \"40 %\"; "
            "\"ellipse\"; \"1.2 m\"; \"750 mm\"; \"0 m\")",
            "106.133333333333", "1e-11 rel", Origin::mathematics,
            "0.4 of the prismoid 265.3333 m3 of shared checks, water 10f, no chambers")
        .example(
            "UC.BED.VOLUME(\"1 m\"; \"20 m\"; \"10 m\"; \"0H:1V\"; \"200 mm\"; \"50 mm\"; \"40 %\"; "
            "\"ellipse\"; \"1.2 m\"; \"750 mm\"; \"100 m\")",
            "122.41150082346", "1e-11 rel", Origin::mathematics,
            "0.4 x 200 m3 + 0.6 x 100 m x 0.7068583470577 m2 of shared checks, water 10b")
        .example(
            "UC.BED.VOLUME(\"1 m\"; \"20 m\"; \"10 m\"; \"0H:1V\"; \"250 mm\"; \"250 mm\"; \"40 %\"; "
            "\"rectangle\"; \"1 m\"; \"500 mm\"; \"200 m\")",
            "140", "1e-11 rel", Origin::mathematics, "stone 0.4 x 100 m3 over and under, crates 100 m3 full")
        .example(
            "UC.BED.VOLUME(UC.BED.DEPTH(\"90 m3\"; \"20 m\"; \"10 m\"; \"0H:1V\"; \"200 mm\"; \"50 mm\"; "
            "\"40 %\"; \"ellipse\"; \"1.2 m\"; \"750 mm\"; \"100 m\"); \"20 m\"; \"10 m\"; \"0H:1V\"; \"200 "
            "mm\"; \"50 mm\"; \"40 %\"; \"ellipse\"; \"1.2 m\"; \"750 mm\"; \"100 m\")",
            "90", "1e-11 rel", Origin::mathematics, "there and back")
        .takes("depth", "d", "Depth of water above the base of the bed");
    takes_bed(volume).gives("V", "Volume held");

    auto depth =
        function("UC.BED.DEPTH", [](Volume held, Length length, Length width, Batter batter,
                                    Length base_stone, Length cover_stone, Share porosity, calc::Shape shape,
                                    Length span, Length rise, Length chamber_length) {
            return calc::bed_depth(held, bed(length, width, batter, base_stone, cover_stone, porosity, shape,
                                             span, rise, chamber_length));
        });
    depth.says("Depth of water above the base of the bed for a volume held: the inverse of UC.BED.VOLUME")
        .equation("d where V(d) = V; root by TOMS 748 (Boost.Math)")
        .source("geometry of the bed; common practice")
        .example(
            "UC.BED.DEPTH(\"106.133333333333333 m3\"; \"20 m\"; \"10 m\"; \"2H:1V\"; \"200 mm\"; \"50 mm\"; "
            "\"40 %\"; \"ellipse\"; \"1.2 m\"; \"750 mm\"; \"0 m\")",
            "1", "1e-11 rel", Origin::mathematics, "the inverse of the first row")
        .takes("volume", "V", "Volume of water held");
    takes_bed(depth).gives("d", "Depth of water");

    auto table =
        function("UC.STAGE.STORAGE", [](Count steps, Length length, Length width, Batter batter,
                                        Length base_stone, Length cover_stone, Share porosity,
                                        calc::Shape shape, Length span, Length rise, Length chamber_length) {
            return calc::stage_storage(steps, bed(length, width, batter, base_stone, cover_stone, porosity,
                                                  shape, span, rise, chamber_length));
        });
    table
        .says(
            "Stage-storage table in equal steps from the base to the top of the stone, with rows added at "
            "the base and crown of the chambers where they fall between: steps + 1 to steps + 3 rows of "
            "values")
        .equation(held_equation)
        .source("geometry of the bed; common practice")
        .example(
            "INDEX(UC.STAGE.STORAGE(10; \"20 m\"; \"10 m\"; 0; \"250 mm\"; \"250 mm\"; \"40 %\"; "
            "\"rectangle\"; \"1 m\"; \"500 mm\"; \"200 m\"); 14; 4)",
            "140", "1e-11 rel", Origin::mathematics, "last row, total: stone 0.4 x 100 m3, crates 100 m3")
        .takes("steps", "N", "Number of equal steps");
    takes_bed(table).gives_columns("Stage-storage table", {{"depth", "d"},
                                                           {"in chambers", "C"},
                                                           {"in stone", "n (P - C)"},
                                                           {"total", "V"},
                                                           {"plan area", "A"}});

    Group group{"Storage", {volume, depth, table}};
    for (Function& entry : required_entries()) group.functions.push_back(std::move(entry));
    return group;
}

}  // namespace undercroft::addin
