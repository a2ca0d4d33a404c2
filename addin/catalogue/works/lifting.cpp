#include "calc/works/lifting.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::Coupling> {
    static constexpr std::string_view kind = "a coupling of hands and load";
    static constexpr Choice<calc::Coupling> list[] = {
        {"good", calc::Coupling::good},
        {"fair", calc::Coupling::fair},
        {"poor", calc::Coupling::poor},
    };
};

std::vector<Function> lifting_functions() {
    return {
        function("UC.HANDLING.LIMIT",
                 [](Length horizontal, Length vertical, Length travel, Angle asymmetry,
                    Count lifts_per_minute, Time duration, calc::Coupling coupling) {
                     return calc::handling_limit(
                         {horizontal, vertical, travel, asymmetry, lifts_per_minute, duration, coupling});
                 })
            .says("Recommended weight limit for lifting by hand, as a mass; 0 where the lift is beyond the "
                  "method's "
                  "reach")
            .equation("RWL = 23 kg HM VM DM AM FM CM; HM = 25 cm/H, VM = 1 - 0.003 |V - 75 cm|, DM = 0.82 + "
                      "4.5 cm/D, "
                      "AM = 1 - 0.0032 A")
            .source("NIOSH publication 94-110 (1994, rev. 2021), metric form; FM by Table 5, CM by Table 7 "
                    "(tables "
                    "from memory)")
            .example(
                "UC.HANDLING.LIMIT(\"25 cm\"; \"75 cm\"; \"25 cm\"; \"0 deg\"; 0.2; \"30 min\"; \"good\")",
                "23", "1e-9 rel", Origin::published, "NIOSH 94-110 (rev. 2021): the load constant")
            .example(
                "UC.HANDLING.LIMIT(\"50 cm\"; \"75 cm\"; \"25 cm\"; \"0 deg\"; 0.2; \"30 min\"; \"good\")",
                "11.5", "1e-9 rel", Origin::published, "NIOSH 94-110: horizontal multiplier 0.50 at 50 cm")
            .example(
                "UC.HANDLING.LIMIT(\"25 cm\"; \"30 cm\"; \"25 cm\"; \"0 deg\"; 0.2; \"30 min\"; \"good\")",
                "20.01", "0.12", Origin::published,
                "NIOSH 94-110: vertical multiplier 0.87 at 30 cm (0.865 before rounding)")
            .example(
                "UC.HANDLING.LIMIT(\"25 cm\"; \"75 cm\"; \"25 cm\"; \"0 deg\"; 10; \"30 min\"; \"good\")",
                "10.35", "1e-9 rel", Origin::from_memory,
                "NIOSH 94-110, Table 5: 0.45 for 10 lifts a minute in less than an hour")
            .example(
                "UC.HANDLING.LIMIT(\"40 cm\"; \"70 cm\"; \"60 cm\"; \"30 deg\"; 1; \"90 min\"; \"fair\")",
                "9.577272", "1e-6 rel", Origin::mathematics,
                "product of the multipliers 0.625, 0.985, 0.895, 0.904, 0.88 and 0.95")
            .caution("For one person; of a team each carries less well: of two, two thirds of the sum is "
                     "usual (from "
                     "memory). A "
                     "load that is set down with care is limited at the end of the lift as well. Two-handed "
                     "lifts by "
                     "a healthy adult on good footing, with recovery as the method asks; local "
                     "codes govern. Its form in inches and pounds differs by up to 4 %")
            .takes("horizontal", "H", "Hands in front of the ankles; less than 25 cm counts as 25 cm")
            .within(usual::reach)
            .takes("vertical", "V",
                   "Hands above the floor where the lift starts, and, once more, where it ends")
            .within(usual::hand_height)
            .takes("travel", "D", "Distance up or down; less than 25 cm counts as 25 cm")
            .within(usual::lift_travel)
            .takes("asymmetry", "A", "Turn of the body, in deg")
            .within(usual::turn)
            .takes("lifts per minute", "F", "Number of lifts in a minute")
            .within(usual::lifts_per_minute)
            .takes("duration", "T", "Time spent lifting, such as 2 h; at most 8 h")
            .within(usual::lifting_time)
            .takes("coupling", "coupling", "good, fair or poor grip")
            .gives("RWL", "Recommended limit"),
    };
}

}  // namespace undercroft::addin
