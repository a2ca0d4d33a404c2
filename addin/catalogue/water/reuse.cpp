#include "calc/water/reuse.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/date_slot.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/series_slot.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::ReuseRule> {
    static constexpr std::string_view kind = "a rule";
    static constexpr Choice<calc::ReuseRule> list[] = {
        {"after spillage", calc::ReuseRule::after_spillage},
        {"before spillage", calc::ReuseRule::before_spillage},
    };
};

template <>
struct Choices<calc::ReuseReliability> {
    static constexpr std::string_view kind = "a reliability";
    static constexpr Choice<calc::ReuseReliability> list[] = {
        {"volume", calc::ReuseReliability::volume},
        {"time", calc::ReuseReliability::time},
    };
};

namespace {

using Days = std::optional<std::chrono::year_month_day>;

constexpr const char* rules =
    "after spillage: Y = min(D, V[t-1]), V = min(V[t-1] + Q - Y, S - Y); before spillage: Y = min(D, V[t-1] "
    "+ Q), V = "
    "min(V[t-1] + Q - Y, S); Q = (P - first flush) A C";
constexpr const char* reuse_source =
    "Jenkins and others (1978) and Fewkes and Butler (2000), as quoted in trade papers (the papers "
    "themselves were not "
    "read)";
constexpr const char* reuse_caution =
    "Other equations go by the name of the first rule too. Years of daily rain of the place are wanted, dry "
    "ones among "
    "them. Water for reuse is to be treated and marked as local codes ask";
constexpr const char* eight_days =
    "eight days by hand: inflow 3 0 0 8 1 0 6 0, store 5, demand 2, 1 in store at first";

calc::ReuseSupply supply(Series<Length>&& rain, Area area, Share coefficient, Series<Volume>&& demand,
                         Length first_flush, Days first_day) {
    return {std::move(rain.values), area, coefficient, first_flush, std::move(demand.values), first_day};
}

Entry& takes_reuse_rain(Entry& entry) {
    return entry.equation(rules)
        .source(reuse_source)
        .caution(reuse_caution)
        .takes("rain", "P", "Rain of each day, one below the other")
        .within(usual::daily_rain)
        .in_order()
        .takes("area", "A", "Area whose rain is collected")
        .within(usual::collecting_area)
        .takes("coefficient", "C", "Of what falls, the share that reaches the store: runoff and filter")
        .within(usual::collected_share);
}
Entry& takes_store(Entry& entry) {
    return entry.takes("store", "S", "Volume of the store").within(usual::reuse_store);
}
Entry& takes_demand(Entry& entry) {
    return entry
        .takes("demand", "D",
               "Volume wanted a day: one for all days, twelve by month, or one for each day, one below the "
               "other")
        .within(usual::daily_demand)
        .in_order();
}
Entry& takes_rule(Entry& entry) {
    return entry.takes("rule", "rule", "after spillage or before spillage", u"after spillage")
        .takes("initial share", "v_0", "Share of the store that is full before the first day", 0.0)
        .within(usual::full_share)
        .takes("first flush", "P_f", "Of each day's rain, what is led past the store", 0.0)
        .within(usual::first_flush)
        .takes("first day", "day", "Date of the first day of rain, for a demand by month");
}

Function balance_entry() {
    auto balance = function("UC.REUSE.BALANCE", [](Series<Length> rain, Area area, Share coefficient,
                                                   Volume store, Series<Volume> demand, calc::ReuseRule rule,
                                                   Share initial, Length first_flush, Days first_day) {
        calc::Table<Volume, Volume, Volume, Volume, Volume> rows;
        for (const calc::ReuseDay& day : calc::reuse_balance(
                 supply(std::move(rain), area, coefficient, std::move(demand), first_flush, first_day), store,
                 rule, initial))
            rows.emplace_back(day.inflow, day.demand, day.yield, day.spill, day.stored);
        return rows;
    });
    balance
        .says(
            "Balance of a store of rain for reuse, day by day: inflow, demand, yield, spill, what is left in "
            "the "
            "evening")
        .related({"UC.REUSE.YIELD", "UC.REUSE.CURVE", "UC.REUSE.STORE"})
        .also_called(
            "rainwater harvesting, tank water balance, daily simulation, yield after spillage, behavioural "
            "model");
    return takes_rule(takes_demand(takes_store(takes_reuse_rain(balance))))
        .gives_columns("Daily balance",
                       {{"inflow", "Q"}, {"demand", "D"}, {"yield", "Y"}, {"spill", "Q_s"}, {"stored", "V"}})
        .examples(
            "INDEX(UC.REUSE.BALANCE({\"mm\"|3|0|0|8|1|0|6|0}; \"1000 m2\"; 1; \"5 m3\"; \"2 m3\"; \"{} "
            "spillage\"; \"20 %\"); "
            "{}; {})",
            "1e-9", Origin::mathematics, eight_days,
            {{"after", "5", "4", "3"},
             {"after", "6", "3", "2"},
             {"after", "8", "5", "4"},
             {"before", "5", "4", "1"},
             {"before", "9", "5", "3"}})
        .example("INDEX(UC.REUSE.BALANCE({0.003|0|0|0.008}; 1000; 1; 5; 2); 5; 5)", "5", "1e-9",
                 Origin::mathematics, "from empty: 3, 1, 0 and, filled by 8, the 5 that it holds");
}

Function yield_entry() {
    auto yield = function("UC.REUSE.YIELD", [](Series<Length> rain, Area area, Share coefficient,
                                               Volume store, Series<Volume> demand, calc::ReuseRule rule,
                                               Share initial, Length first_flush, Days first_day) {
        const calc::ReuseYield y = calc::reuse_yield(
            supply(std::move(rain), area, coefficient, std::move(demand), first_flush, first_day), store,
            rule, initial);
        return calc::Table<Volume, Volume, Volume, Volume, Volume, Volume, Share, Share>{
            {y.inflow, y.demand, y.yield, y.spill, y.at_start, y.at_end, y.volume_reliability,
             y.time_reliability}};
    });
    yield
        .says(
            "Totals of that balance: inflow, demand, yield, spill, store at start and end, reliability by "
            "volume "
            "and in time; one "
            "row")
        .related({"UC.REUSE.BALANCE", "UC.REUSE.CURVE", "UC.REUSE.STORE"})
        .also_called("rainwater harvesting yield, reliability, supply, tank efficiency, water saved");
    return takes_rule(takes_demand(takes_store(takes_reuse_rain(yield))))
        .gives_columns("Yield", {{"inflow", "Q"},
                                 {"demand", "D"},
                                 {"yield", "Y"},
                                 {"spill", "Q_s"},
                                 {"at start", "V_0"},
                                 {"at end", "V"},
                                 {"reliability by volume", "R_V"},
                                 {"reliability in time", "R_t"}})
        .examples(
            "INDEX(UC.REUSE.YIELD({\"mm\"|3|0|0|8|1|0|6|0}; \"1000 m2\"; 1; \"5 m3\"; \"2 m3\"; \"{} "
            "spillage\"; \"20 %\"); 2; "
            "{})",
            "1e-9", Origin::mathematics, eight_days,
            {{"after", "3", "11"},
             {"after", "4", "6"},
             {"before", "3", "14"},
             {"before", "4", "2"},
             {"after", "7", "0.6875"}})
        .example("INDEX(UC.REUSE.YIELD({0|0|0|0|0|0|0|0|0|0}; 1000; 1; 5; 1; ; 1); 2; 8)", "0.5", "1e-9",
                 Origin::published,
                 "the tests of an open package for tanks: no rain for ten days, a full store of five days' "
                 "demand: 50 %");
}

Function store_entry() {
    auto store = function(
        "UC.REUSE.STORE", [](Series<Length> rain, Area area, Share coefficient, Series<Volume> demand,
                             Share reliability, calc::ReuseReliability by, calc::ReuseRule rule,
                             Share initial, Length first_flush, Days first_day) {
            return calc::reuse_store(
                supply(std::move(rain), area, coefficient, std::move(demand), first_flush, first_day),
                reliability, by, rule, initial);
        });
    store.says("The smallest store that reaches a reliability; none where what falls in the day is enough")
        .related({"UC.REUSE.YIELD", "UC.REUSE.CURVE", "UC.REUSE.BALANCE"})
        .also_called("rainwater tank size, harvesting tank, cistern, required storage, reliability");
    takes_demand(takes_reuse_rain(store))
        .takes("reliability", "R", "Yield over demand, or days met in full over all days")
        .within(usual::reliability)
        .takes("by", "by", "volume or time", u"volume");
    return takes_rule(store)
        .gives("S", "Store")
        .found_to(1e-9)  // its yield hardly grows any more
        .example(
            "UC.REUSE.STORE({\"mm\"|3|0|0|8|1|0|6|0}; \"1000 m2\"; 1; \"2 m3\"; \"68.75 %\"; \"volume\"; "
            "\"after spillage\"; "
            "\"0 %\")",
            "6", "1e-6 rel", Origin::mathematics,
            "eight days by hand: of inflow 3 0 0 8 1 0 6 0 and demand 2 it yields 0 2 1 0 2 2 2 2 with 6 in "
            "store")
        .example("UC.REUSE.STORE({0.004|0|0.004|0}; 1000; 1; 2; 0.75; ; ; )", "4", "1e-6 rel",
                 Origin::mathematics,
                 "every second day 4 m3, the first day none of it in the morning: 0 2 2 2");
}

Function curve_entry() {
    auto curve =
        function("UC.REUSE.CURVE", [](Series<Length> rain, Area area, Share coefficient,
                                      Series<Volume> stores, Series<Volume> demand, calc::ReuseRule rule,
                                      Share initial, Length first_flush, Days first_day) {
            return calc::reuse_curve(
                supply(std::move(rain), area, coefficient, std::move(demand), first_flush, first_day),
                stores.values, rule, initial);
        });
    curve
        .says(
            "Yield, spill and both reliabilities for each of several stores: yield against store, as a curve")
        .related({"UC.REUSE.YIELD", "UC.REUSE.STORE", "UC.LOOKUP"})
        .also_called("storage-yield curve, tank size against yield, reliability curve, harvesting");
    takes_reuse_rain(curve)
        .takes("stores", "S", "Volumes of the stores that are tried, one below the other")
        .within(usual::reuse_store)
        .in_order();
    return takes_rule(takes_demand(curve))
        .gives_columns("Yield by store", {{"store", "S"},
                                          {"yield", "Y"},
                                          {"spill", "Q_s"},
                                          {"reliability by volume", "R_V"},
                                          {"reliability in time", "R_t"}})
        .example(
            "INDEX(UC.REUSE.CURVE({\"mm\"|3|0|0|8|1|0|6|0}; \"1000 m2\"; 1; {\"m3\"|3|5}; \"2 m3\"; \"after "
            "spillage\"; \"20 "
            "%\"); 3; 2)",
            "11", "1e-9", Origin::mathematics, eight_days)
        .example(
            "INDEX(UC.REUSE.CURVE({0.003|0|0|0.008|0.001|0|0.006|0}; 1000; 1; {5|10}; 2; \"before "
            "spillage\"; 0.2); 2; 3)",
            "2", "1e-9", Origin::mathematics, eight_days);
}

}  // namespace

std::vector<Function> reuse_functions() {
    return {balance_entry(), yield_entry(), store_entry(), curve_entry()};
}

}  // namespace undercroft::addin
