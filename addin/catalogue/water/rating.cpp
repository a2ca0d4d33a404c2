#include "calc/water/rating.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/outlets_slot.hpp"

namespace undercroft::addin {

namespace {

constexpr Range by_kind = any_number(
    "by the kind of the outlet: its size, coefficient and sides are as usual in UC.ORIFICE.FLOW, "
    "UC.WEIR.FLOW, UC.WEIR.NOTCH, UC.ORIFICE.DIAMETER (the flow of a pump), UC.SOAK.FLOW, "
    "UC.ORIFICE.RECTANGLE, UC.WEIR.CONTRACTED and UC.RISER.FLOW");

Entry& rated(Entry& entry) {
    return entry.gives_columns("Rating", {{"depth", "d"}, {"flow", "Q"}});
}

Function outlet_rating_entry() {
    auto rating = function("UC.OUTLET.RATING", [](Outlets outlets, Length depth, Count steps,
                                                  std::optional<Share> tolerance,
                                                  std::optional<Length> tailwater,
                                                  std::optional<calc::RatingTable> outfall) {
        return calc::outlet_rating(outlets.rows, depth, steps, tolerance, {tailwater, std::move(outfall)});
    });
    rating
        .says(
            "Flow of several outlets together at every depth of the bed, with rows added where an outlet "
            "starts or changes its law")
        .also_called("stage-discharge, rating curve, outlet structure, control manhole, discharge table")
        .related({"UC.ORIFICE.FLOW", "UC.WEIR.FLOW", "UC.ROUTE.POOL", "UC.DRAIN.TIME"})
        .sketch(Sketch::outlet_head)
        .equation(
            "sum over outlets of count x its law of the depth above its level: orifice C_d A sqrt(2 "
            "g h), part full a weir of its own lower edge; weir; notch; pump steady; soakage q (A_b + P h); "
            "rectangle, contracted (below 0.03 m as h^1.5) and riser as UC.ORIFICE.RECTANGLE, "
            "UC.WEIR.CONTRACTED "
            "and UC.RISER.FLOW; drowned as UC.ORIFICE.DROWNED and UC.WEIR.DROWNED")
        .source(
            "FHWA HEC-22; Bos, Discharge Measurement Structures (1989), sec. 5.4, for the part-full "
            "orifice (from memory); soakage common practice")
        .caution(
            "Free outfall unless a tailwater or an outfall is given. Sides: of a weir its end contractions, "
            "of "
            "soakage the perimeter, of a rectangle its height (needed), of a contracted weir the width of "
            "its channel, "
            "of a riser the coefficient of its opening; a contracted weir stands as high above its floor as "
            "its level "
            "says. The rate of soakage is that in design, its safety factor taken off. Pump and soakage "
            "reach their "
            "flow over 1 mm above their level, so that a straight table can hold the step")
        .takes(
            "outlets", "outlets",
            "Rows of kind (orifice, weir, notch, pump, soakage, rectangle, contracted, riser), level, size "
            "(diameter, crest, width, angle, flow, base area), [coefficient, soakage rate], [count 1], "
            "[sides]; or 10 columns: units beside level, size, coefficient, sides")
        .within({any_number("a word"), usual::table_depth, by_kind, by_kind, usual::equal_outlets, by_kind})
        .takes("depth", "d", "Depth up to which to rate")
        .within(usual::rated_depth)
        .takes("steps", "N_s", "Number of equal steps")
        .within(usual::steps)
        .takes("tolerance", "epsilon",
               "Given: more rows, until straight lines between them are within that share of the flow")
        .within(usual::rating_tolerance)
        .added_later()
        .takes("tailwater", "d_t",
               "Level of the water below, above the base of the bed; left out, or below all outlets, free")
        .within(usual::tailwater)
        .added_later()
        .takes("outfall", "d, Q",
               "Two columns: depth and flow of the pipe that carries the water away, such as "
               "UC.OUTFALL.RATING gives: "
               "the chamber below the outlets rises until both agree")
        .within({usual::table_depth, usual::table_flow})
        .added_later();
    return rated(rating)
        .example("INDEX(UC.OUTLET.RATING({\"orifice\";\"0 m\";\"150 mm\"}; \"1 m\"; 10; \"m;L/s\"); 13; 2)",
                 "45.161655", "1e-6 rel", Origin::mathematics,
                 "0.6 x pi/4 x 0.15^2 x sqrt(2 g 0.925), last row")
        .example("INDEX(UC.OUTLET.RATING({\"weir\";\"0.5 m\";\"1 m\"}; \"1 m\"; 2; \"m;m3/s\"); 4; 2)",
                 "0.650538", "1e-6 rel", Origin::mathematics, "1.84 x 0.5^1.5")
        .example(
            "INDEX(UC.OUTLET.RATING({\"soakage\";\"0 m\";\"100 m2\";\"36 mm/h\";\"1 each\";\"40 m\"}; \"1 "
            "m\"; 1; "
            "\"m;L/s\"); 4; 2)",
            "1.4", "1e-12 rel", Origin::mathematics, "36 mm/h over 100 m2 of base and 40 m2 of wall")
        .example(
            "INDEX(UC.OUTLET.RATING({\"rectangle\";\"0 m\";\"300 mm\";0.6;1;\"200 mm\"}; \"0.9 m\"; 1; "
            "\"m;L/s\"); 4; "
            "2)",
            "142.50797", "1e-7 rel", Origin::mathematics, "0.6 x 2/3 x 0.3 sqrt(2 g) (0.9^1.5 - 0.7^1.5)")
        .example(
            "INDEX(UC.OUTLET.RATING({\"contracted\";\"0.4 m\";\"0.8 m\";\"\";1;\"1 m\"}; \"0.6 m\"; 1; "
            "\"m;L/s\"); 5; 2)",
            "132.376258", "0.3 %", Origin::from_memory,
            "ISO 1438: C_e = 0.596 + 0.045 h/P at L/B = 0.8, crest 0.4 m above the floor, h = 0.2 m")
        .example("INDEX(UC.OUTLET.RATING({\"riser\";\"0.5 m\";\"0.6 m\"}; \"0.7 m\"; 1; \"m;m3/s\"); 4; 2)",
                 "0.310215819", "1e-8 rel", Origin::mathematics, "1.84 pi 0.6 m x 0.2^1.5: the rim is a weir")
        .example(
            "INDEX(UC.OUTLET.RATING({\"orifice\";\"0 m\";\"150 mm\"}; 1; 2; \"m;L/s\"; ; ; 0.5); 5; "
            "2)-UC.ORIFICE.DROWNED(0.15; "
            "1; 0.6; 0.5)",
            "0", "1e-9", Origin::mathematics, "against a tailwater of 0.5 m, last row");
}

Function rating_sum_entry() {
    auto sum = function("UC.RATING.SUM", [](calc::RatingTable rating, calc::RatingTable other, Length level) {
        return calc::rating_sum(rating, other, level);
    });
    sum.says(
           "Two ratings together, such as that of outlets and the supplier's own table of a flow control: "
           "flows "
           "added at the depths of both")
        .related({"UC.OUTLET.RATING", "UC.OUTFALL.RATING", "UC.ROUTE.POOL", "UC.DRAIN.TIME"})
        .also_called(
            "combined outlets, stage-discharge, vortex control with an overflow, composite rating curve")
        .equation("Q(d) = Q_1(d) + Q_2(d - z), d within the depths of the first")
        .source("common practice")
        .caution("A supplier's table holds for the unit and the head it was tested at: check both")
        .takes("rating", "d, Q_1", "Two columns: depth and flow, such as UC.OUTLET.RATING gives")
        .within({usual::table_depth, usual::table_flow})
        .takes("other rating", "d, Q_2",
               "Two columns: depth and flow that are added; below its first row none")
        .within({usual::table_depth, usual::table_flow})
        .takes("level", "z", "Level above the base of the bed from which the depths of the other are counted",
               0.0)
        .within(usual::table_depth);
    return rated(sum)
        .example(
            "INDEX(UC.RATING.SUM({\"m\";\"L/s\"|0;0|1;8|2;12}; {\"m\";\"L/s\"|0;0|2;6}; \"0 m\"; \"m;L/s\"); "
            "4; 2)",
            "18", "1e-12 rel", Origin::mathematics, "12 and 6 L/s at 2 m")
        .example("INDEX(UC.RATING.SUM({0;0|1;8|2;12}; {0;0|2;6}; 0.5); 3; 2)", "4", "1e-12 rel",
                 Origin::mathematics, "4 L/s at 0.5 m, where the other begins");
}

}  // namespace

std::vector<Function> rating_functions() {
    return {outlet_rating_entry(), rating_sum_entry()};
}

}  // namespace undercroft::addin
