// Numbers of the filled demo jobs by hand: what is in the pores, what is dug, kept, bought and ordered, and
// the storm against water outside.
#include <algorithm>
#include <cmath>
#include <filesystem>

#include "sheets/office/set_points.hpp"
#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {

constexpr double standard_gravity = 9.80665;
using std::numbers::pi;

sheets::Document opened_job(const std::string& job) {
    return the_office().open_copy(std::string(JOBS_FOLDER) + "/" + job + "/whole-job.ods");
}

/// A pit or bed of base L x W whose walls lean 1H:1V.
double leaning(double length, double width, double height) {
    return length * width * height + (length + width) * height * height + 4.0 / 3 * std::pow(height, 3);
}

/// Of the same pit up to any height; above the ground it goes straight up.
double filled_to(double length, double width, double depth, double height) {
    const double top = (length + 2 * depth) * (width + 2 * depth);
    return leaning(length, width, std::min(height, depth)) + top * std::max(0.0, height - depth);
}

}  // namespace

TEST_CASE("what the plastic takes and what lies on the slopes, by hand", "[people]") {
    const sheets::Document job = opened_job("car-park");
    const auto value = [&](const char* key) { return job.named(key)->getValue(); };
    CHECK(value("plastic_taken") == Approx(0.38 * value("bed_units") * 28 / 950).epsilon(1e-12));
    const double length = value("bed_length");
    const double width = value("bed_width");
    constexpr double height = 0.34 + 0.71 + 0.16;
    CHECK(value("batter_stone") ==
          Approx(0.38 * (leaning(length, width, height) - length * width * height)).epsilon(1e-12));
    // Storage in the prism, in the chambers, and less the plastic: all of it up to the top of the stone.
    const double chambers = pi / 4 * 1.04 * 0.71 * value("chamber_length");
    CHECK(value("storage_full") ==
          Approx(0.38 * (leaning(length, width, height) - chambers) + chambers).epsilon(1e-12));
    job.named("least_freeboard")->setValue(0);
    job.named("overflow_list_level")->setValue(height);
    job.recalculate();
    CHECK(value("storage_provided") == Approx(value("storage_full") - value("plastic_taken")).epsilon(1e-12));
}

TEST_CASE("what is dug is kept or carted, and what is bought is weighed, by hand", "[people]") {
    const sheets::Document job = opened_job("car-park");
    const auto value = [&](const char* key, int row = 0) { return job.named(key, 0, row)->getValue(); };
    const double length = value("bed_length");
    const double width = value("bed_width");
    const double depth = 101.35 - (101.40 - (0.34 + 0.71 + 0.16 + 0.30 + 0.74 + 0.26));
    const auto to = [&](double height) { return filled_to(length, width, depth, height); };
    const double dug = to(depth);
    const double needed = to(1.21 + 0.30 + 0.74) - to(1.21);
    const double kept = std::min(0.55 * dug, needed / 0.9);  // US Army FM 5-434, Table 1-1: loam 1.25 and 0.9
    const double import = std::max(0.0, needed - 0.9 * kept);
    CHECK(value("spoil_reused") == Approx(kept).epsilon(1e-9));
    CHECK(value("fill_import") == Approx(import).margin(1e-6));
    CHECK(value("spoil_away") == Approx(1.25 * (dug - kept)).epsilon(1e-9));
    CHECK(value("spoil_loads") ==
          std::ceil(std::max(1.25 * (dug - kept) / 12, 1.25 * (dug - kept) * 1.3 / 20)));
    const double initial = std::min(import, to(1.51) - to(1.21));
    CHECK(value("initial_mass") == Approx(initial * 0.95 * 1.95 * 1.08).margin(1e-6));
    CHECK(value("general_mass") == Approx((import - initial) * 0.95 * 1.95 * 1.08).margin(1e-6));
    // Stone by its tested bulk density; one waste for the order, the deliveries and the record.
    const double moist = 1 + value("stone_moisture") / 100;
    CHECK(value("bedding_mass") == Approx(to(0.34) * 1.61 * moist).epsilon(1e-9));
    for (const double waste : {5., 13.}) {
        job.named("stone_waste")->setValue(waste);
        job.recalculate();
        const double order = 20 * std::ceil(to(0.34) * 1.61 * moist * (1 + waste / 100) / 20);
        CAPTURE(waste);
        CHECK(value("bedding_order") == Approx(order));
        CHECK(value("order_list_order", 2) == Approx(order));
        CHECK(value("delivery_book_ordered") == Approx(order));
        CHECK(value("delivery_list_loads") == Approx(order / 20));
    }
    // A riser from the crown to the cover, and as many whole pieces as a length of pipe gives.
    const double riser = 101.40 - (101.35 - depth + 0.34 + 0.71) - 0.15 + 0.10;
    CHECK(value("riser_each") == Approx(riser).epsilon(1e-9));
    CHECK(value("riser_lengths") == std::ceil(value("bed_ports") / std::floor(6 / riser)));
    CHECK(value("order_list_order", 10) == value("riser_lengths"));
    // No liner where there is none.
    CHECK(value("order_list_order", 7) == 0);
    CHECK(value("order_list_order", 8) == 0);
    CHECK(value("rolls_second") == 0);
}

TEST_CASE("a lined bed's liner, its boots and its second fabric are ordered", "[people]") {
    const sheets::Document job = opened_job("meadow-retention");
    const auto value = [&](const char* key, int row = 0) { return job.named(key, 0, row)->getValue(); };
    const double length = value("bed_length");
    const double width = value("bed_width");
    constexpr double height = 1.21;
    const double slant = height * std::sqrt(2);
    const double faces = length * width + 2 * slant * (length + width + 2 * height);
    const double laps = value("liner_net") - faces;
    CHECK(laps > 0);  // 0.1 m along the base and the rim
    CHECK(laps < 0.1 * 4 * (length + width + 4 * height) + 4 * 0.1 * slant + 1);
    CHECK(value("order_list_order", 7) == std::ceil(1.05 * value("liner_net")));
    CHECK(value("order_list_order", 8) == 3);
    CHECK(value("liner_weight") == Approx(value("liner_net") * 0.0015 * 940).epsilon(1e-9));
    CHECK(value("fabric_second") > faces);
    CHECK(value("order_list_order", 6) == value("rolls_first") + value("rolls_second"));
    CHECK(value("rolls_second") >= std::ceil(faces / (100 * 4.5)));
    // Seams along the base and up the corners are more than those within the faces.
    CHECK(value("liner_seams") > 2 * (length + width) + 4 * height);
}

TEST_CASE("water outside the outlets keeps the bed as full as itself, and slows them", "[people]") {
    const sheets::Document job = opened_job("car-park");
    const auto value = [&](const char* key) { return job.named(key)->getValue(); };
    const double free = value("peak_depth");
    CHECK(value("drain_floor") == 0);
    job.named("tailwater_depth")->setValue(0.6);
    job.recalculate();
    CHECK(value("drain_floor") == Approx(0.6));
    CHECK(value("peak_depth") > free);
    // A drowned orifice by the difference of the levels, and the weir of the overflow: L/s.
    const double depth = value("peak_depth");
    const double orifice = 0.6 * pi / 4 * 0.112 * 0.112 * std::sqrt(2 * standard_gravity * (depth - 0.6));
    const double weir = 1.84 * 1.2 * std::pow(std::max(0.0, depth - 1.05), 1.5);
    CHECK(value("peak_drain") == Approx(1000 * (orifice + weir)).epsilon(2e-3));
    CHECK(sheets::shown(job.named("storage_enough")) == "FAIL");
    // What stands below is kept, and not free for the storm: 0.34 m of stone, then stone and chambers.
    const double length = value("bed_length");
    const double width = value("bed_width");
    constexpr double a = 1.04 / 2;
    const double t = std::asin(0.26 / 0.71);
    const double chambers = 0.71 * a * (t + std::sin(t) * std::cos(t)) * value("chamber_length");
    CHECK(value("storage_kept") ==
          Approx(0.38 * (leaning(length, width, 0.6) - chambers) + chambers).epsilon(1e-9));
}

TEST_CASE("a nested storm of a day fills the bed deeper, and each table holds it", "[people]") {
    const sheets::Document job = opened_job("car-park");
    const auto value = [&](const char* key) { return job.named(key)->getValue(); };
    const double block = value("peak_depth");
    job.named("storm_shape")->setFormula("alternating");
    job.recalculate();
    CHECK(value("storm_duration") == Approx(1440));
    CHECK(value("peak_depth") > 1.05 * block);
    CHECK(sheets::shown(job.named("storm_inside")) == "not counted");
    CHECK(sheets::shown(job.named("nested_long")) == "PASS");
    for (const char* key : {"peak_drain", "blocked_depth", "empty_time", "route_step"})
        CHECK(job.named(key)->getError() == 0);
    // The inflow that is routed row by row comes to the depth of the search; all rain of the day comes in.
    double deepest = 0;
    double inflow = 0;
    double time_before = 0;
    double flow_before = 0;
    for (int row = 1; row <= 1200; ++row) {
        const auto cell = job.named("routed_table_depth", 0, row);
        if (cell->getError() != 0 || sheets::shown(cell).empty()) break;
        deepest = std::max(deepest, cell->getValue());
        const double time = job.named("routed_table_time", 0, row)->getValue();
        const double flow = job.named("routed_table_inflow", 0, row)->getValue();
        if (row > 1) inflow += (flow + flow_before) / 2 * (time - time_before) * 0.06;
        time_before = time;
        flow_before = flow;
    }
    CHECK(deepest == Approx(value("peak_depth")).epsilon(1e-6));
    const double reduced = 2150 * 0.95 + 5400 * 0.88 + 1300 * 0.25;
    CHECK(inflow == Approx(reduced * 0.0041 * 24).epsilon(1e-6));  // 4.1 mm/h for a day
}

TEST_CASE("a bed on a falling formation under a falling surface, by hand", "[people]") {
    const sheets::Document job = opened_job("car-park");
    const auto value = [&](const char* key, int row = 0) { return job.named(key, 0, row)->getValue(); };
    job.named("pit_batter")->setFormula("0H:1V");
    job.recalculate();
    const double length = value("bed_length");
    const double width = value("bed_width");
    const double all = length * width;
    const double level_volume = value("pit_volume");
    const double level_storage = value("storage_full");
    CHECK(level_volume == Approx(all * 2.46).epsilon(1e-12));
    CHECK(value("planes_count") == 0);

    job.named("bed_fall_given")->setValue(0.5);  // %
    const double surface[] = {101.30, 101.40, 101.50, 101.40};
    const double ground[] = {101.25, 101.45, 101.45, 101.25};
    for (int corner = 0; corner < 4; ++corner) {
        job.named("corner_level_surface_given", 0, corner)->setValue(surface[corner]);
        job.named("corner_level_ground_given", 0, corner)->setValue(ground[corner]);
    }
    job.recalculate();
    const double rise = 0.005 * length;
    const double low = 101.40 - 2.51 - rise / 2;
    const double high = low + rise;
    CHECK(value("formation_level") == Approx(low).epsilon(1e-12));
    CHECK(value("formation_high_level") == Approx(high).epsilon(1e-12));
    CHECK(value("pit_depth") == Approx(2.46).epsilon(1e-12));
    CHECK(value("surface_departs") == Approx(0).margin(1e-9));
    CHECK(value("ground_departs") == Approx(0).margin(1e-9));

    // Planes over a rectangle: the mean depth counts, whatever falls where.
    CHECK(value("pit_volume") == Approx(level_volume).epsilon(1e-9));
    CHECK(value("plane_deepest") == Approx(std::max(101.25 - low, 101.45 - high)).epsilon(1e-9));
    CHECK(value("deepest_wall") == Approx(101.52 - low).epsilon(1e-9));  // of the highest spot level
    CHECK(value("zone_bedding") == Approx(all * 0.34).epsilon(1e-9));
    CHECK(value("zone_initial") == Approx(all * 0.30).epsilon(1e-9));
    CHECK(value("zone_general") == Approx(all * 0.74).epsilon(1e-9));
    CHECK(value("zone_pavement") == Approx(all * 0.26).epsilon(1e-9));
    CHECK(value("pit_filled") == Approx(all * 2.51).epsilon(1e-9));
    CHECK(value("zones_total") == Approx(value("pit_filled")).epsilon(1e-9));
    CHECK(value("fill_needed") == Approx(all * 1.04).epsilon(1e-9));

    // Cover at the corners, crown 1.05 m over the formation, 260 mm of pavement that does not count.
    const double depths[] = {surface[0] - low - 1.05, surface[1] - high - 1.05, surface[2] - high - 1.05,
                             surface[3] - low - 1.05};
    const auto [least, greatest] = std::minmax_element(std::begin(depths), std::end(depths));
    CHECK(value("cover_least") == Approx(*least - 0.26).epsilon(1e-9));
    CHECK(value("cover_greatest") == Approx(*greatest).epsilon(1e-9));
    CHECK(value("fill_extra") == Approx(*greatest - 1.46).epsilon(1e-9));
    CHECK(value("riser_each") == Approx(*greatest - 0.15 + 0.10).epsilon(1e-9));

    // Water up to the top of the stone at the low end: the mean over strips of the depth there.
    const double to_chambers = value("chamber_length") / length;
    double held = 0;
    constexpr int strips = 20000;
    for (int strip = 0; strip < strips; ++strip) {
        const double depth = 1.21 - rise * (strip + 0.5) / strips;
        const double t = std::asin(std::clamp((depth - 0.34) / 0.71, 0.0, 1.0));
        const double chambers = 0.71 * 0.52 * (t + std::sin(t) * std::cos(t)) * to_chambers;
        held += (0.38 * (width * depth - chambers) + chambers) * length / strips;
    }
    CHECK(value("storage_full") == Approx(held).epsilon(1e-6));
    CHECK(value("storage_full") < 0.96 * level_storage);
    for (const char* key : {"peak_depth", "empty_time", "storage_required", "crown_demand", "riser_lengths"})
        CHECK(job.named(key)->getError() == 0);
}

TEST_CASE("points to set out by, on the site's grid, by hand", "[people]") {
    const sheets::Document job = opened_job("car-park");
    const auto value = [&](const char* key, int row = 0) { return job.named(key, 0, row)->getValue(); };
    job.named("site_grid_east")->setValue(500);
    job.named("site_grid_north")->setValue(800);
    job.named("site_grid_bearing")->setValue(30);
    job.named("further_point_name")->setFormula("Inlet, \"north\"");
    job.named("further_point_x")->setValue(10);
    job.named("further_point_y")->setValue(5);
    job.named("further_point_height")->setValue(0.5);
    job.recalculate();
    const double length = value("bed_length");
    const double width = value("bed_width");
    const auto east = [](double x, double y) { return 500 + x * 0.5 + y * std::sqrt(0.75); };
    const auto north = [](double x, double y) { return 800 + x * std::sqrt(0.75) - y * 0.5; };
    const double out = 2.46;  // 1H:1V, ground level
    const std::pair<double, double> corners[] = {{0, 0},
                                                 {length, 0},
                                                 {length, width},
                                                 {0, width},
                                                 {-out, -out},
                                                 {length + out, -out},
                                                 {length + out, width + out},
                                                 {-out, width + out}};
    for (int corner = 0; corner < 8; ++corner) {
        const auto [x, y] = corners[corner];
        CAPTURE(corner);
        CHECK(value("pit_corner_east", corner) == Approx(east(x, y)).epsilon(1e-12));
        CHECK(value("pit_corner_north", corner) == Approx(north(x, y)).epsilon(1e-12));
        CHECK(value("pit_corner_level", corner) == Approx(corner < 4 ? 98.89 : 101.35).epsilon(1e-12));
    }
    // The polygon closes round the same area, and both diagonals are alike.
    CHECK(value("base_shoelace") == Approx(value("base_cut")).epsilon(1e-9));
    CHECK(value("top_shoelace") == Approx(value("pit_top")).epsilon(1e-9));
    CHECK(value("side_ac") == Approx(std::hypot(length, width)).epsilon(1e-12));
    CHECK(value("side_bd") == Approx(value("side_ac")).epsilon(1e-12));
    CHECK(value("side_ab") + value("side_bc") == Approx(length + width).epsilon(1e-12));
    // The last row: its outer face is one margin from the edge.
    const int last = static_cast<int>(value("bed_rows")) - 1;
    const double middle = width - 0.32 - 1.13 / 2;
    CHECK(value("row_point_start_east", last) == Approx(east(0.32, middle)).epsilon(1e-12));
    CHECK(value("row_point_end_north", last) == Approx(north(length - 0.32, middle)).epsilon(1e-12));
    CHECK(value("row_point_start_level", last) == Approx(98.89 + 0.34).epsilon(1e-12));
    CHECK(sheets::shown(job.named("row_point_start_east", 0, last + 1)).empty());
    CHECK(value("further_point_east") == Approx(east(10, 5)).epsilon(1e-12));
    CHECK(value("further_point_level") == Approx(99.39).epsilon(1e-12));

    const sheets::NamedPoints points = sheets::set_points(job);
    CHECK(static_cast<double>(points.points.size()) == 8 + 2 * value("bed_rows") + value("bed_ports") + 1);
    CHECK(points.points.at(9).name == "row 1 end");
    CHECK(points.points.back().name == "Inlet, \"north\"");
    const std::string csv = sheets::points_as_csv(points);
    CHECK_THAT(csv, Catch::StartsWith("point,east m,north m,level m\npit base A,500.000,800.000,98.890\n"));
    CHECK_THAT(csv, Catch::Contains("\nInlet   north ,509.330,806.160,99.390\n"));
    // A name commands no program that opens the table.
    const sheets::NamedPoints named = {"m", {{"=WEBSERVICE(A1)", 1, 2, 3}}};
    CHECK(sheets::points_as_csv(named) ==
          "point,east m,north m,level m\n'=WEBSERVICE(A1),1.000,2.000,3.000\n");
}

TEST_CASE("clay below the base stone: what is replaced and what settles, by hand", "[people]") {
    const sheets::Document job = opened_job("car-park");
    const auto value = [&](const char* key) { return job.named(key)->getValue(); };
    job.named("soft_ground_strength")->setValue(60);
    job.named("soft_ground_factor")->setValue(3);
    job.named("soft_ground_depth")->setValue(0.3);
    job.named("soft_ground_allowed")->setValue(25);
    job.named("soil_weight")->setValue(16);
    const std::pair<const char*, double> clay[] = {
        {"thickness", 3}, {"e", 1}, {"cc", 0.3}, {"cr", 0.05}, {"before", 60}};
    for (const auto& [column, number] : clay)
        job.named(std::string("clay_layer_") + column)->setValue(number);
    job.recalculate();
    // One strip of 0.81 m through stone that is no lighter than the clay was.
    const double allowed = (2 + pi) * 60 / 3;
    CHECK(value("soft_allowed") == Approx(allowed).epsilon(1e-9));
    CHECK(value("bearing_strip") == Approx(2 * 0.15 + 0.17 + 0.34).epsilon(1e-12));
    const double depth = value("soft_needed");
    const double heavier = std::max(0.0, 1.61 * standard_gravity - 16);
    CHECK(value("subgrade_pressure") * 0.81 / (0.81 + depth) + heavier * depth ==
          Approx(allowed).epsilon(1e-6));
    CHECK(sheets::shown(job.named("soft_replaced")) == "PASS");
    // Long-term settlement: net pressure spread 2V:1H to the middle of the clay, 1.8 m down.
    const double net = value("bed_pressure") - 16 * 2.46;
    const double length = value("bed_length");
    const double width = value("bed_width");
    const double added = net * length * width / ((length + 1.8) * (width + 1.8));
    const double before = 16 * (2.46 + 1.8) - standard_gravity * (98.10 - 98.89 + 1.8);
    CHECK(before < 60);
    CHECK(before + added > 60);
    const double settlement =
        3.0 / 2 * (0.05 * std::log10(60 / before) + 0.3 * std::log10((before + added) / 60));
    CHECK(value("settlement_long") == Approx(1000 * settlement).epsilon(1e-9));
    // Clay so soft that even the mean pressure of the bed is too much for it: no depth does.
    job.named("soft_ground_strength")->setValue(45);
    job.recalculate();
    CHECK(sheets::shown(job.named("soft_needed")) == "none does");
    CHECK(sheets::shown(job.named("soft_replaced")) == "FAIL");
}

}  // namespace undercroft::tests
