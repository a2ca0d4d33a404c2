#include "addin/catalogue/catalogue.hpp"

#include <unordered_map>

#include "addin/catalogue/bed/entries.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "units/text.hpp"

#ifndef UNDERCROFT_VERSION
#error "the build defines UNDERCROFT_VERSION"
#endif

namespace undercroft::addin {

namespace {

/// The functions of several topics under one title.
Group group(const char* title, std::initializer_list<std::vector<Function>> topics) {
    Group made{title, {}};
    for (const std::vector<Function>& topic : topics)
        made.functions.insert(made.functions.end(), topic.begin(), topic.end());
    return made;
}

}  // namespace

const std::vector<Group>& catalogue() {
    static const std::vector<Group> groups = {
        arithmetic_functions(),
        group("Chamber, row and bed", {arch_functions(), bed_functions()}),
        group("Storage", {storage_functions(), unit_storage_functions(), required_storage_functions()}),
        group("Rain and runoff", {rain_functions(), published_rain_functions(), storm_functions(),
                                  runoff_functions(), graphical_peak_functions(), release_functions(),
                                  concentration_functions(), flow_time_functions(), hydrograph_functions()}),
        group("Outlets, pipes, routing",
              {outlet_functions(), contracted_weir_functions(), opening_functions(), pipe_functions(),
               pipe_size_functions(), pipe_loss_functions(), outfall_functions(), rating_functions(),
               routing_functions(), spill_routing_functions(), governing_storm_functions(),
               emptying_functions()}),
        group("Soakage and groundwater",
              {soakage_functions(), soakaway_functions(), groundwater_functions(), mound_functions()}),
        group("Quality, upkeep and reuse", {water_quality_functions(), reuse_functions()}),
        group("Excavation and spoil",
              {excavation_functions(), trench_soil_functions(), pit_zone_functions(), plane_functions(),
               plane_pit_functions(), spot_grid_functions(), setting_out_functions(), spoil_functions(),
               spoil_balance_functions()}),
        group("Ground and loads",
              {elastic_stress_functions(), patch_spread_functions(),        wheel_load_functions(),
               vehicle_load_functions(),   plant_load_functions(),          lift_plan_functions(),
               load_class_functions(),     fill_load_functions(),           layer_functions(),
               foot_pressure_functions(),  base_stone_functions(),          bearing_functions(),
               wet_bearing_functions(),    clay_bearing_functions(),        settlement_functions(),
               dynamic_cone_functions(),   presumptive_bearing_functions(), strip_spread_functions(),
               earth_pressure_functions(), earth_diagram_functions(),       uplift_functions(),
               bed_uplift_functions()}),
        group("Soil, stone and fill", {soil_group_functions(), accepted_soil_functions(), grading_functions(),
                                       stone_functions(), compaction_functions()}),
        group("Sheet goods and takeoff",
              {wrap_functions(), sheet_goods_functions(), cut_list_functions(), pipe_length_functions(),
               order_functions(), fabric_functions(), fabric_filter_functions(), lifting_functions(),
               bed_option_functions()}),
        group("Drawing", {drawing_functions()}),
        checker_functions(),
    };
    return groups;
}

const std::vector<Function>& all_functions() {
    static std::vector<Function> functions = [] {
        std::vector<Function> all;
        for (const Group& group : catalogue())
            all.insert(all.end(), group.functions.begin(), group.functions.end());
        return all;
    }();
    return functions;
}

const Function* find_function(std::string_view name) {
    static const std::unordered_map<std::string, const Function*> by_name = [] {
        std::unordered_map<std::string, const Function*> names;
        const std::string prefix = lower_case(service_name) + ".";
        for (const Function& function : all_functions()) {
            names[lower_case(function.name)] = &function;
            names[prefix + lower_case(function.identifier)] = &function;
        }
        return names;
    }();
    const auto found = by_name.find(lower_case(name));
    return found == by_name.end() ? nullptr : found->second;
}

std::string version() {
    return UNDERCROFT_VERSION;
}

}  // namespace undercroft::addin
