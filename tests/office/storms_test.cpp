// Several storms in one bed: each further one fills it as it does where it is the design storm.
#include <algorithm>
#include <array>

#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {

/// What the lists say of one storm, from the top: 0 is the design storm.
std::array<double, 8> answers(const sheets::Document& document, int storm) {
    std::array<double, 8> found{};
    std::size_t at = 0;
    for (const char* column :
         {"storm_fill_duration", "storm_fill_depth", "storm_fill_freeboard", "storm_fill_soakage",
          "storm_hold_spilled", "storm_hold_outflow", "storm_hold_drain", "storm_hold_permitted"})
        found.at(at++) = document.named(column, 0, storm)->getValue();
    return found;
}

}  // namespace

TEST_CASE("a further storm fills the bed to the last digits as it does where it is the design storm",
          "[people]") {
    const sheets::Document document = the_office().open_copy(filled_job);
    const std::array<double, 8> further = answers(document, 1);
    const double empty = document.named("storm_verdict_empty")->getValue();
    REQUIRE(further[1] > 0.1);
    REQUIRE(answers(document, 0)[1] > further[1]);
    document.named("rain_frequency")->setFormula("2 years");
    document.named("rain_factor")->setValue(1.1);
    document.named("release_rate")->setValue(20);
    document.recalculate();
    CHECK(document.named("empty_time")->getValue() == Approx(empty).epsilon(1e-12));
    const std::array<double, 8> design = answers(document, 0);
    for (std::size_t i = 0; i < design.size(); ++i) {
        CAPTURE(i);
        CHECK(design.at(i) == Approx(further.at(i)).epsilon(1e-12).margin(1e-12));
    }
    // Milder than the other further storm, which now governs by its name.
    CHECK(sheets::shown(document.named("storm_is_design")) == "FAIL");
    CHECK(sheets::shown(document.named("storm_governs")) == "10 years");
}

TEST_CASE("a further storm that is no column of the table is refused in its own rows", "[people]") {
    const sheets::Document document = the_office().open_copy(filled_job);
    document.named("storm_list_frequency", 0, 1)->setFormula("10 %");
    document.recalculate();
    CHECK(document.named("storm_fill_depth", 0, 2)->getError() != 0);
    CHECK(document.named("storm_verdict_verdict", 0, 1)->getError() != 0);
    CHECK(document.named("storm_is_design")->getError() != 0);
    CHECK(document.named("storm_fill_depth", 0, 1)->getError() == 0);
    CHECK(document.named("peak_depth")->getError() == 0);
}

TEST_CASE("blocked by nothing and by all, and a second storm on an empty bed, are what stands elsewhere",
          "[people]") {
    const sheets::Document document = the_office().open_copy(filled_job);
    const auto value = [&](const char* key) { return document.named(key)->getValue(); };
    const auto set = [&](const char* key, double share) {
        document.named(key)->setValue(share);
        document.recalculate();
    };
    const double depth = value("peak_depth");
    const double half_blocked = value("part_depth");
    const double second = value("second_depth");
    CHECK(half_blocked > depth);
    CHECK(half_blocked < value("blocked_depth"));
    CHECK(second > depth);
    CHECK(value("second_volume") == Approx(value("peak_stored") / 2).epsilon(1e-12));
    // Half of the water: a bed of that depth holds it, and it takes less time than to empty.
    CHECK(value("storm_half_half") == Approx(value("peak_stored") / 2).epsilon(1e-12));
    CHECK(value("second_start") == Approx(value("storm_half_depth")).epsilon(1e-9));
    CHECK(value("storm_half_time") > 0);
    CHECK(value("storm_half_time") < value("empty_time"));
    set("blocked_share", 0);
    CHECK(value("part_depth") == Approx(depth).epsilon(1e-6));
    CHECK(value("part_outflow") == Approx(value("peak_outflow")).epsilon(1e-6));
    set("blocked_share", 100);
    CHECK(value("part_depth") == Approx(value("blocked_depth")).epsilon(1e-6));
    CHECK(value("part_spilled") == Approx(value("blocked_spilled")).epsilon(1e-6).margin(1e-9));
    set("second_share", 0);
    CHECK(value("second_depth") == Approx(depth).epsilon(1e-6));
    set("second_share", 100);
    CHECK(value("second_start") ==
          Approx(depth).epsilon(1e-3));  // the stage table is straight between its rows
    CHECK(value("second_depth") > second);
}

TEST_CASE("one thing worse by a share is what the sheets say where it is typed so", "[people]") {
    const sheets::Document document = the_office().open_copy(filled_job);
    const auto value = [&](const char* key, int row = 0) { return document.named(key, 0, row)->getValue(); };
    // What the row says, then typed where it belongs, then put back.
    const auto typed = [&](int row, const char* key, double factor, int rows) {
        CAPTURE(key);
        const double depth = value("worse_list_depth", row);
        const double held = value("worse_list_held", row);
        const double outflow = value("worse_list_outflow", row);
        CHECK(depth > 1.001 * value("peak_depth"));
        for (int i = 0; i < rows; ++i) document.named(key, 0, i)->setValue(value(key, i) * factor);
        document.recalculate();
        CHECK(value("peak_depth") == Approx(depth).epsilon(1e-9));
        CHECK(value("peak_stored") + value("peak_spilled") == Approx(held).epsilon(1e-9));
        CHECK(value("peak_outflow") == Approx(outflow).epsilon(1e-9));
        CHECK(value("worse_list_depth", 5) == value("peak_depth"));
        for (int i = 0; i < rows; ++i) document.named(key, 0, i)->setValue(value(key, i) / factor);
        document.recalculate();
    };
    for (int row = 0; row < 5; ++row) document.named("worse_list_share", 0, row)->setValue(5);
    document.recalculate();
    typed(0, "surface_list_c", 1.05, 3);  // at most 0.9975: none is cut off at 1
    typed(1, "rain_factor", 1.05, 1);
    typed(2, "stone_porosity", 0.95, 1);
    // The one orifice passes as much less as its coefficient is smaller.
    document.named("outlet_list_coefficient")->setValue(0.6);
    document.recalculate();
    typed(4, "outlet_list_coefficient", 0.95, 1);
    // Soakage is told of where it counts: as if its rate in design were that much lower.
    CHECK(sheets::shown(document.named("worse_list_depth", 0, 3)).empty());
    document.named("soak_counted")->setFormula("yes");
    document.recalculate();
    typed(3, "soak_factor", 1 / 0.95, 1);
}

TEST_CASE("a 24-hour storm of the NRCS lasts a day, and is drawn as it is routed", "[people]") {
    const sheets::Document document = the_office().open_copy(filled_job);
    const auto value = [&](const char* key, int row = 0) { return document.named(key, 0, row)->getValue(); };
    const double block = value("peak_depth");
    double before = 0;
    for (const char* type : {"type IA", "type I", "type II"}) {  // each steeper than the one before
        CAPTURE(type);
        document.named("storm_shape")->setFormula(sheets::to_ustring(type));
        document.recalculate();
        CHECK(value("storm_duration") == 1440);
        CHECK(sheets::shown(document.named("nested_long")) == "PASS");
        CHECK(sheets::shown(document.named("storm_inside")) == "not counted");
        CHECK(value("peak_inflow") > before);
        before = value("peak_inflow");
        double drawn = 0;
        double rain = 0;
        for (int row = 1; row < 300; ++row) {
            drawn = std::max(drawn, value("inflow_table_flow", row));
            rain = std::max(rain, value("nested_rain_time", row));
        }
        CHECK(rain == Approx(1440).epsilon(1e-9));
        CHECK(drawn == Approx(value("peak_inflow")).epsilon(1e-9));
    }
    CHECK(value("peak_depth") != block);
    document.named("storm_shape")->setFormula("type V");
    document.recalculate();
    CHECK(document.named("peak_depth")->getError() != 0);
}

}  // namespace undercroft::tests
