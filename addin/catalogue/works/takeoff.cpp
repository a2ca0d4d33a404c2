#include "calc/works/takeoff.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"

namespace undercroft::addin {

namespace {

constexpr Range whatever_is_counted =
    any_number("tonnes, metres, rolls or pieces, of one screw or a whole bed: no number is unusual");

}  // namespace

std::vector<Function> order_functions() {
    return {
        function("UC.ORDER", &calc::order)
            .says("Quantity to order: net plus waste, rounded up to whole packs, loads or pieces")
            .also_called("quantity to order, allowance, wastage, packs, rounding up")
            .related({"UC.COST", "UC.STONE.MASS", "UC.ROLLS"})
            .to_try("UC.ORDER(\"103 t\"; \"5 %\"; \"20 t\"; \"t\")")
            .to_try("UC.ORDER(\"118 short ton\"; \"5 %\"; \"22 short ton\"; \"short ton\")")
            .to_try("UC.ORDER(\"180 each\"; ; \"12 each\"; \"each\")")
            .refuses("UC.ORDER(103; \"5 %\"; \"20 t\"; \"t\")")
            .equation("q = ceil(net (1 + w)/pack) pack")
            .source("common practice")
            .example("UC.ORDER(\"118 t\"; \"5 %\"; \"32 t\"; \"t\")", "128", "1e-12 rel",
                     Origin::common_practice, "123.9 t is four loads of 32 t")
            .example("UC.ORDER(\"8.55 m\"; 0; \"4.275 m\"; \"m\")", "8.55", "1e-12 rel",
                     Origin::common_practice, "two packs to the last digit stay two")
            .takes("net", "net", "Net quantity")
            .within(whatever_is_counted)
            .takes("waste", "w", "Share added for cutting, spillage and settlement", 0.0)
            .within(usual::waste)
            .takes("pack", "pack", "Quantity in one pack, load or piece; left out, nothing is rounded")
            .within(whatever_is_counted)
            .gives("q", "Quantity to order"),
        function("UC.COST", &calc::cost)
            .role(Role::multiplies)
            .says("Cost of a quantity at a rate in money per unit; two currencies never mix")
            .also_called("unit rate, price, BoQ, bill of quantities")
            .related({"UC.ORDER", "UC.CREW.TIME"})
            .to_try("UC.COST(\"120 t\"; \"58 AUD/t\")")
            .to_try("UC.COST(\"120 short ton\"; \"36 USD/short ton\"; \"USD\")")
            .refuses("UC.COST(100; \"85 AUD/t\")")
            .refuses("UC.COST(\"120 t\"; \"58 AUD/m3\")")
            .equation("c = q rate")
            .source("common practice; currencies by ISO 4217")
            .example("UC.COST(\"128 t\"; \"62.5 AUD/t\"; \"AUD\")", "8000", "1e-12 rel", Origin::mathematics,
                     "quantity times rate")
            .takes("quantity", "q", "Quantity, with its unit")
            .within(whatever_is_counted)
            .takes("rate", "rate", "Money per unit, such as 85 beside AUD/t")
            .within(any_number("prices go with the currency and the goods"))
            .gives("c", "Cost")
            .unit_named("currency", "ISO 4217 code that the result must be in"),
        function("UC.CREW.TIME", &calc::crew_time)
            .says("Time for crews to do a quantity of work")
            .also_called("man-hours, production rate, labour, duration")
            .related({"UC.COST", "UC.ORDER"})
            .to_try("UC.CREW.TIME(\"180 each\"; \"12 each/h\"; 2; \"h\")")
            .to_try("UC.CREW.TIME(\"400 yd3\"; \"50 yd3/h\"; ; \"h\")")
            .equation("T = N/(q_c N_c)")
            .source("common practice")
            .example("UC.CREW.TIME(\"91 each\"; \"13 each/h\"; 2; \"h\")", "3.5", "1e-12 rel",
                     Origin::common_practice, "two crews")
            .takes("units", "N", "Quantity of work")
            .within(whatever_is_counted)
            .takes("output rate", "q_c", "Output of one crew, such as 12 beside each/h")
            .within(
                any_number("a rate goes with what is counted: twelve units or forty cubic metres an hour"))
            .takes("crews", "N_c", "Crews at work", 1.0)
            .within(usual::crews)
            .gives("T", "Time"),
    };
}

}  // namespace undercroft::addin
