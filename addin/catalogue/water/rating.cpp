#include "calc/water/rating.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/outlets_slot.hpp"

namespace undercroft::addin {

namespace {

constexpr Range by_kind = any_number(
    "by the kind of the outlet: its size, coefficient and sides are as usual in UC.ORIFICE.FLOW, "
    "UC.WEIR.FLOW, "
    "UC.WEIR.NOTCH, UC.ORIFICE.DIAMETER (the flow of a pump) and UC.SOAK.FLOW");

}  // namespace

std::vector<Function> rating_functions() {
    return {
        function("UC.OUTLET.RATING",
                 [](Outlets outlets, Length depth, Count steps) {
                     return calc::outlet_rating(outlets.rows, depth, steps);
                 })
            .says(
                "Flow of several outlets together at every depth of the bed, with rows added where an outlet "
                "starts or changes its law")
            .also_called("stage-discharge, rating curve, outlet structure, control manhole, discharge table")
            .related({"UC.ORIFICE.FLOW", "UC.WEIR.FLOW", "UC.ROUTE.POOL", "UC.DRAIN.TIME"})
            .sketch(Sketch::outlet_head)
            .equation(
                "sum over outlets of count x its law of the depth above its level: orifice C_d A sqrt(2 "
                "g h), part "
                "full a weir of its own lower edge; weir; notch; pump steady; soakage q (A_b + P h)")
            .source("FHWA HEC-22; Bos, Discharge Measurement Structures (1989), sec. 5.4, for the part-full "
                    "orifice (from memory); soakage common practice")
            .caution(
                "Free outfall. The rate of soakage is that in design, its safety factor taken off. Pump and "
                "soakage reach their flow over 1 mm above their level, so that a straight table can hold the "
                "step")
            .takes("outlets", "outlets",
                   "Rows of kind (orifice, weir, notch, pump, soakage), level, size (diameter, crest, angle, "
                   "flow, "
                   "base area), [coefficient, soakage rate], [count 1], [sides: end contractions, "
                   "perimeter]; or "
                   "10 columns: units beside level, size, coefficient, sides")
            .within(
                {any_number("a word"), usual::table_depth, by_kind, by_kind, usual::equal_outlets, by_kind})
            .takes("depth", "d", "Depth up to which to rate")
            .within(usual::rated_depth)
            .takes("steps", "N_s", "Number of equal steps")
            .within(usual::steps)
            .gives_columns("Rating", {{"depth", "d"}, {"flow", "Q"}})
            .example(
                "INDEX(UC.OUTLET.RATING({\"orifice\";\"0 m\";\"150 mm\"}; \"1 m\"; 10; \"m;L/s\"); 13; 2)",
                "45.161655", "1e-6 rel", Origin::mathematics,
                "0.6 x pi/4 x 0.15^2 x sqrt(2 g 0.925), last row")
            .example("INDEX(UC.OUTLET.RATING({\"weir\";\"0.5 m\";\"1 m\"}; \"1 m\"; 2; \"m;m3/s\"); 4; 2)",
                     "0.650538", "1e-6 rel", Origin::mathematics, "1.84 x 0.5^1.5")
            .example("INDEX(UC.OUTLET.RATING({\"soakage\";\"0 m\";\"100 m2\";\"36 mm/h\";\"1 each\";\"40 "
                     "m\"}; \"1 "
                     "m\"; 1; \"m;L/s\"); 4; 2)",
                     "1.4", "1e-12 rel", Origin::mathematics,
                     "36 mm/h over 100 m2 of base and 40 m2 of wall"),
    };
}

}  // namespace undercroft::addin
