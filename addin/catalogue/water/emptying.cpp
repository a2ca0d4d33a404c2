#include "calc/water/emptying.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/pool_tables.hpp"

namespace undercroft::addin {

std::vector<Function> emptying_functions() {
    auto time = function("UC.DRAIN.TIME", [](calc::StorageTable storage, calc::RatingTable rating,
                                             Length from_depth, Length to_depth) {
        return calc::drain_time(storage, rating, from_depth, to_depth);
    });
    time.says("Time in which a bed drains from one depth to another, without inflow")
        .also_called("drawdown, drain-down, emptying time, half-empty time, half drain")
        .related({"UC.OUTLET.RATING", "UC.SOAK.TIME", "UC.PUMP.TIME"})
        .to_try(
            "UC.DRAIN.TIME({\"m\";\"m3\"|0;0|0.5;120|1;260|1.5;380}; {\"m\";\"L/s\"|0;0|0.5;20|1;30|1.5;38}; "
            "\"1.5 m\"; \"0.1 m\"; \"h\")")
        .to_try(
            "UC.DRAIN.TIME({\"ft\";\"ft3\"|0;0|1.5;4000|3;9000|5;14000}; "
            "{\"ft\";\"cfs\"|0;0|1.5;0.7|3;1|5;1.3}; \"5 ft\"; \"0.5 ft\"; \"h\")")
        .equation(
            "t = integral of dS/Q, S and Q straight between the rows; down to no flow Q ~ x^m with m at most "
            "1/2")
        .source(
            "Chow, Maidment and Mays, Applied Hydrology (1988), sec. 8.2: dS/dt = -Q; last span common "
            "practice")
        .caution(
            "The last centimetres above an orifice or a weir take ever longer, in theory for ever: drain to "
            "a depth that counts as empty, some way above the outlet, from a rating with several rows below "
            "it");
    takes_pool(time)
        .takes("from depth", "d_1", "Depth at the start")
        .within(usual::rated_depth.or_zero())
        .takes("to depth", "d_2", "Depth at the end", 0.0)
        .within(usual::rest_depth)
        .gives("t", "Emptying time")
        .example("UC.DRAIN.TIME({0;0|1;50|2;100}; {0;0|1;5|2;10}; \"2 m\"; \"1 m\"; \"s\")", "6931.471806",
                 "1e-9 rel", Origin::mathematics, "linear reservoir: K ln 2 with K = 100 m3 / 0.01 m3/s")
        .example(
            "UC.DRAIN.TIME({0;0|2;100}; {0;0|2;37.5851034321}; \"2 m\"; 0; \"s\")", "5321.25714012",
            "1e-10 rel", Origin::mathematics,
            "tank of 50 m2 through an orifice of 0.01 m2, C_d = 0.6, g = 9.81 m/s2, from 2 m: closed form");
    return {time};
}

}  // namespace undercroft::addin
