#include "addin/catalogue/catalogue.hpp"

#include "units/text.hpp"

#ifndef UNDERCROFT_VERSION
#error "the build defines UNDERCROFT_VERSION"
#endif

namespace undercroft::addin {

const std::vector<Group>& catalogue() {
    static const std::vector<Group> groups = {
        unit_functions(),   chamber_functions(), storage_functions(),    rain_functions(),
        outlet_functions(), soakage_functions(), excavation_functions(), ground_functions(),
        stone_functions(),  takeoff_functions(), drawing_functions(),    checker_functions(),
    };
    return groups;
}

const std::vector<Function>& all_functions() {
    static const std::vector<Function> functions = [] {
        std::vector<Function> all;
        for (const Group& group : catalogue())
            all.insert(all.end(), group.functions.begin(), group.functions.end());
        return all;
    }();
    return functions;
}

const Function* find_function(std::string_view name) {
    const std::string wanted = lower_case(name);
    const std::string prefix = lower_case(service_name) + ".";
    for (const Function& function : all_functions())
        if (lower_case(function.name) == wanted || prefix + lower_case(function.identifier) == wanted)
            return &function;
    return nullptr;
}

std::string version() {
    return UNDERCROFT_VERSION;
}

}  // namespace undercroft::addin
