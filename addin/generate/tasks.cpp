#include "addin/generate/tasks.hpp"

#include <set>

#include "addin/catalogue/catalogue.hpp"

namespace undercroft::addin {

namespace {

const std::vector<Task>& declared_tasks() {
    static const std::vector<Task> declared = {
        {"Change a unit, add up mixed units",
         {"UC.CONVERT", "UC.QUANTITY", "UC.SUM", "UC.TOTAL", "UC.DIFFERENCE", "UC.PRODUCT", "UC.QUOTIENT",
          "UC.DIMENSION"}},
        {"Check a value against a limit or a tolerance", {"UC.ATLEAST", "UC.ATMOST", "UC.WITHIN"}},
        {"Read a table: between its rows, its largest, the time of a peak",
         {"UC.LOOKUP", "UC.LARGEST", "UC.SMALLEST", "UC.LARGEST.AT"}},
        {"Find the rain and the runoff of a site", {"UC.RAIN.", "UC.RUNOFF.", "UC.TIME."}},
        {"Find the storage that is required", {"UC.STORAGE.", "UC.SOAK.DEPTH"}},
        {"Fit units and rows into the space there is",
         {"UC.ROW.", "UC.BED.ROWS", "UC.BED.WIDTH", "UC.BED.LENGTH", "UC.BED.PORTS", "UC.ARCH."}},
        {"Find the cheapest bed that fits and passes", {"UC.BED.OPTIONS"}},
        {"Find the storage that a bed has, at every depth",
         {"UC.BED.VOLUME", "UC.BED.DEPTH", "UC.STAGE.", "UC.BED.UNITS", "UC.BED.UNITDEPTH"}},
        {"Size an orifice, a weir or a pipe", {"UC.ORIFICE.", "UC.WEIR.", "UC.PIPE."}},
        {"Route a storm through the bed, find the highest water",
         {"UC.HYDROGRAPH.", "UC.OUTLET.", "UC.ROUTE."}},
        {"Find how long it takes to empty", {"UC.DRAIN.", "UC.SOAK.TIME", "UC.PUMP.TIME"}},
        {"Let it soak away", {"UC.SOAK.", "UC.PERMEABILITY."}},
        {"Keep the pit dry", {"UC.PIT.SEEPAGE", "UC.PIT.RADIUS", "UC.PIT.INFLUENCE", "UC.PUMP.TIME"}},
        {"Size the pit and measure what is dug",
         {"UC.PIT.VOLUME", "UC.PIT.AREA", "UC.PIT.WALLS", "UC.PIT.SIDE", "UC.PIT.SLANT", "UC.PIT.GRID",
          "UC.PIT.SECTIONS", "UC.PIT.BATTER", "UC.PIT.PLANES", "UC.PIT.FILLED", "UC.PIT.DEEPEST",
          "UC.PIT.FILL", "UC.PIT.SOIL", "UC.PIT.SHORED", "UC.PIT.ZONE", "UC.LEVEL."}},
        {"Set it out", {"UC.SETOUT.", "UC.AREA.POLYGON"}},
        {"Cart the spoil away, bring fill", {"UC.SPOIL.", "UC.FILL."}},
        {"Find the cover that traffic and plant need",
         {"UC.LOAD.CLASS", "UC.LOAD.WHEEL", "UC.LOAD.FILL", "UC.LAYERS.DEPTH", "UC.LAYERS.STACK",
          "UC.LOAD.PLANT", "UC.LOAD.SPREAD", "UC.LOAD.VEHICLE", "UC.LOAD.PRESENCE", "UC.COVER.",
          "UC.PLANT."}},
        {"Find the stress in the ground under a load",
         {"UC.LOAD.POINT", "UC.LOAD.CIRCLE", "UC.LOAD.RECTANGLE"}},
        {"Check that the ground bears it", {"UC.FOOT.", "UC.BEARING.", "UC.BASE."}},
        {"Find how much it settles", {"UC.SETTLEMENT."}},
        {"Check the trench wall", {"UC.EARTH.", "UC.SIDEFILL.WIDTH"}},
        {"Keep an empty bed from floating", {"UC.UPLIFT."}},
        {"Judge soil, stone, compaction and fabric",
         {"UC.SOIL.", "UC.GRADING.", "UC.STONE.POROSITY", "UC.POROSITY.", "UC.DENSITY.", "UC.LIFTS",
          "UC.LIFTS.", "UC.LAYERS.LAID", "UC.LAYERS.LIFTS", "UC.COMPACTION.", "UC.FABRIC."}},
        {"Order stone, fabric and liner, and price them",
         {"UC.STONE.MASS", "UC.STONE.ORDER", "UC.WRAP.", "UC.ROLLS", "UC.ROLLS.AREA", "UC.LINER.",
          "UC.PANELS", "UC.PANELS.", "UC.RISER.", "UC.ORDER", "UC.COST", "UC.CREW.TIME"}},
        {"Know who may carry it", {"UC.HANDLING."}},
        {"Draw it to scale", {"UC.DRAW."}},
        {"Understand a result or an error",
         {"UC.WHY", "UC.STEPS", "UC.SOURCE", "UC.CATALOGUE", "UC.VERSION"}},
    };
    return declared;
}

bool is_meant(const std::string& name, const std::string& by) {
    return by.ends_with(".") ? name.starts_with(by) : name == by;
}

}  // namespace

std::vector<Task> tasks() {
    std::vector<Task> all;
    std::set<std::string> named;
    for (const Task& declared : declared_tasks()) {
        Task& task = all.emplace_back(Task{declared.question, {}});
        for (const std::string& by : declared.functions)
            for (const Function& function : all_functions())
                if (is_meant(function.name, by)) {
                    task.functions.push_back(function.name);
                    named.insert(function.name);
                }
    }
    for (const Group& group : catalogue()) {
        Task rest{group.title + ": what else there is", {}};
        for (const Function& function : group.functions)
            if (!named.contains(function.name)) rest.functions.push_back(function.name);
        if (!rest.functions.empty()) all.push_back(std::move(rest));
    }
    return all;
}

}  // namespace undercroft::addin
