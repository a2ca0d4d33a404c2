#include "addin/catalogue/catalogue.hpp"

#include <unordered_map>

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
