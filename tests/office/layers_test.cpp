// A layer added to the list of the sheet Site is in all that rests on it, by as much as a hand calculation
// gives.
#include <filesystem>
#include <map>

#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {

using Values = std::map<std::string, double>;

constexpr int spare_row = 5;  ///< of the list, between the general backfill and the pavement

sheets::Document opened(const std::string& name) {
    sheets::Document document = the_office().open(std::filesystem::path(TEMPLATES_FOLDER) / name);
    document.recalculate();
    return document;
}

double value(const sheets::Document& document, const std::string& key) {
    const auto cell = document.named(key);
    INFO(key);
    REQUIRE(cell->getError() == 0);
    return cell->getValue();
}

struct Layer {
    std::string name, part;
    double thickness;
    std::string unit;
    double weight;
    std::string weight_unit;
    double lift;
};

void add(const sheets::Document& document, const Layer& layer, int row = spare_row) {
    const auto text = [&](const std::string& key, const std::string& words, int right = 0) {
        document.named("site_layer_" + key, right, row)->setFormula(sheets::to_ustring(words));
    };
    text("name", layer.name);
    text("part", layer.part);
    document.named("site_layer_height", 0, row)->setValue(layer.thickness);
    text("height", layer.unit, 1);
    document.named("site_layer_weight", 0, row)->setValue(layer.weight);
    text("weight", layer.weight_unit, 1);
    document.named("site_layer_lift", 0, row)->setValue(layer.lift);
    text("lift", layer.unit, 1);
    document.recalculate();
}

}  // namespace

TEST_CASE("a layer added on Site is in cover, pit, loads, uplift, zones and formation", "[layers]") {
    const sheets::Document job = opened("whole-job.ots");
    job.named("bed_lined")->setFormula("yes");
    job.named("groundwater_level")->setValue(98.5);
    job.recalculate();
    Values before;
    for (const char* key :
         {"bed_depth", "formation_level", "pit_depth", "cover_depth", "cover_least", "cover_greatest",
          "fill_pressure", "lifts_all", "uplift_weight", "fill_needed", "storage_provided"})
        before[key] = value(job, key);
    // By hand: 0.340 + 0.710 + 0.152 + 0.300 + 0.700 + 0.250 = 2.452 m under 100.20 m.
    CHECK(before["bed_depth"] == Approx(2.452));
    CHECK(before["formation_level"] == Approx(97.748));
    CHECK(before["cover_depth"] == Approx(1.402));

    add(job, {"Capping", "general", 400, "mm", 20, "kN/m3", 200});
    CHECK(value(job, "bed_depth") == Approx(2.852));
    CHECK(value(job, "formation_level") == Approx(97.348));
    CHECK(value(job, "pit_depth") == Approx(2.652));
    CHECK(value(job, "cover_depth") == Approx(1.802));
    CHECK(value(job, "cover_least") == Approx(1.552));  // to the underside of the flexible pavement
    CHECK(value(job, "cover_greatest") == Approx(before["cover_greatest"] + 0.4));
    CHECK(value(job, "fill_pressure") == Approx(before["fill_pressure"] + 8.0));  // 0.4 m x 20 kN/m3
    CHECK(value(job, "lifts_all") == before["lifts_all"] + 2);
    CHECK(value(job, "plan_lifts") == before["lifts_all"] + 3);  // and one of cover stone
    // The prism over the base, in MN: 0.4 x 20 kN/m2 more, and 0.4 m more of it in water, to 98.50 m.
    const double plan = value(job, "bed_length") * value(job, "bed_width");
    const double weight = before["uplift_weight"] + plan * 8.0 / 1000;
    CHECK(value(job, "uplift_weight") == Approx(weight));
    CHECK(value(job, "uplift_force") == Approx(9.80665 * plan * 1.152 / 1000));
    CHECK(value(job, "uplift_factor") == Approx(weight / (9.80665 * plan * 1.152 / 1000)));
    // What fills the pit fills it still: V_5 of nothing, the general backfill the larger.
    CHECK(value(job, "zones_total") == Approx(value(job, "pit_filled")));
    CHECK(value(job, "zone_subbase") == 0);
    CHECK(value(job, "fill_needed") > before["fill_needed"] + 0.4 * plan);
    CHECK(value(job, "storage_provided") == Approx(before["storage_provided"]));

    add(job, {"Crushed rock", "subbase", 400, "mm", 20, "kN/m3", 200});
    CHECK(value(job, "bed_depth") == Approx(2.852));
    CHECK(value(job, "cover_least") == Approx(1.552));  // it counts as cover,
    CHECK(value(job, "fill_pressure") == Approx(before["fill_pressure"] + 8.0));
    CHECK(value(job, "lifts_all") == before["lifts_all"]);  // but is no backfill
    CHECK(value(job, "zone_subbase") > 0.4 * plan);
    CHECK(value(job, "zones_total") == Approx(value(job, "pit_filled")));

    // A layer that stands where it cannot lie, and one without a thickness, are never passed over.
    add(job, {"Capping", "cover", 400, "mm", 20, "kN/m3", 200});
    CHECK(job.named("formation_level")->getError() != 0);
    add(job, {"Capping", "general", 400, "mm", 20, "kN/m3", 200});
    job.named("site_layer_height", 0, spare_row)->setFormula("");
    job.recalculate();
    CHECK(job.named("formation_level")->getError() != 0);
    CHECK(job.named("cover_deep")->getError() != 0);
    CHECK_THAT(sheets::shown(job.cell("Site", "A3")), Catch::Contains("to give: 1"));
}

TEST_CASE("a layer added in US units, and in the workbooks of a part of the job", "[layers]") {
    const Layer sand{"Sand", "general", 16, "in", 125, "lbf/ft3", 8};
    for (const char* name : {"whole-job-us.ots", "excavation-us.ots", "takeoff-us.ots"}) {
        INFO(name);
        const sheets::Document job = opened(name);
        const double depth = value(job, "bed_depth");
        const double formation = value(job, "formation_level");
        const double pit = value(job, "pit_depth");
        const bool whole = std::string(name).starts_with("whole");
        const double pressure = whole ? value(job, "fill_pressure") : 0;
        add(job, sand);
        CHECK(value(job, "bed_depth") == Approx(depth + 16.0 / 12));
        CHECK(value(job, "formation_level") == Approx(formation - 16.0 / 12));
        CHECK(value(job, "pit_depth") == Approx(pit + 16.0 / 12));
        if (whole) CHECK(value(job, "fill_pressure") == Approx(pressure + 125 * 16.0 / 12));
    }
    const sheets::Document takeoff = opened("takeoff.ots");
    const double general = value(takeoff, "zone_general");
    add(takeoff, {"Capping", "general", 400, "mm", 20, "kN/m3", 200});
    CHECK(value(takeoff, "zone_general") > general);
    CHECK(value(takeoff, "zones_total") == Approx(value(takeoff, "pit_filled")));

    // A second layer of cover stone, between that and the initial backfill: both rows move up.
    const sheets::Document storage = opened("storage.ots");
    const double height = value(storage, "bed_height");
    const double full = value(storage, "storage_full");
    const double area = value(storage, "bed_length") * value(storage, "bed_width");
    add(storage, {"General backfill", "general", 700, "mm", 19, "kN/m3", 150});
    add(storage, {"Initial backfill", "initial", 300, "mm", 19, "kN/m3", 150}, 4);
    add(storage, {"More stone", "cover", 100, "mm", 15.6, "kN/m3", 200}, 3);
    CHECK(value(storage, "bed_height") == Approx(height + 0.1));
    CHECK(value(storage, "storage_full") > full + 0.4 * 0.1 * area);
}

}  // namespace undercroft::tests
