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

template <>
struct Choices<calc::LiftingForm> {
    static constexpr std::string_view kind = "a form of the equation";
    static constexpr Choice<calc::LiftingForm> list[] = {
        {"metric", calc::LiftingForm::metric},
        {"inches|customary|US", calc::LiftingForm::customary},
    };
};

namespace {

constexpr const char* form_says = "metric, or inches: the constants of the two differ, results by up to 4 %";

/// One lift at its start.
Entry& takes_lift(Entry& entry) {
    return entry.takes("horizontal", "H", "Hands in front of the ankles; less than 25 cm counts as 25 cm")
        .within(usual::reach)
        .takes("vertical", "V", "Hands above the floor where the lift starts, and, once more, where it ends")
        .within(usual::hand_height)
        .takes("travel", "D", "Distance up or down; less than 25 cm counts as 25 cm")
        .within(usual::lift_travel)
        .takes("asymmetry", "A", "Turn of the body, in deg")
        .within(usual::body_turn)
        .takes("lifts per minute", "F", "Number of lifts in a minute")
        .within(usual::lifts_per_minute)
        .takes("duration", "T", "Time spent lifting, such as 2 h; at most 8 h")
        .within(usual::lifting_time)
        .takes("coupling", "coupling", "good, fair or poor grip");
}

Function limit_entry() {
    auto limit = function("UC.HANDLING.LIMIT", [](Length horizontal, Length vertical, Length travel,
                                                  Angle asymmetry, Count lifts_per_minute, Time duration,
                                                  calc::Coupling coupling, calc::LiftingForm form) {
        return calc::handling_limit(
            {horizontal, vertical, travel, asymmetry, lifts_per_minute, duration, coupling, form});
    });
    limit
        .says(
            "Recommended weight limit for lifting by hand, as a mass; 0 where the lift is beyond the "
            "method's "
            "reach")
        .also_called("NIOSH, RWL, lifting equation, manual handling, lifting index")
        .related({"UC.CREW.TIME"})
        .to_try("UC.HANDLING.LIMIT(\"30 cm\"; \"75 cm\"; \"30 cm\"; \"0 deg\"; 0.5; \"2 h\"; \"fair\")")
        .to_try(
            "UC.HANDLING.LIMIT(\"12 in\"; \"30 in\"; \"12 in\"; \"0 deg\"; 0.5; \"2 h\"; \"fair\"; \"lb\")")
        .refuses("UC.HANDLING.LIMIT(\"30 cm\"; \"75 cm\"; \"30 cm\"; \"0 deg\"; 0.5; 2; \"fair\")")
        .sketch(Sketch::lifting)
        .equation(
            "RWL = 23 kg HM VM DM AM FM CM; HM = 25 cm/H, VM = 1 - 0.003 |V - 75 cm|, DM = 0.82 + "
            "4.5 cm/D, "
            "AM = 1 - 0.0032 A")
        .source(
            "NIOSH publication 94-110 (1994, rev. 2021), metric form; FM by Table 5, CM by Table 7 "
            "(tables "
            "from memory)")
        .example("UC.HANDLING.LIMIT(\"25 cm\"; \"75 cm\"; \"25 cm\"; \"0 deg\"; 0.2; \"30 min\"; \"good\")",
                 "23", "1e-9 rel", Origin::published, "NIOSH 94-110 (rev. 2021): the load constant")
        .example("UC.HANDLING.LIMIT(\"50 cm\"; \"75 cm\"; \"25 cm\"; \"0 deg\"; 0.2; \"30 min\"; \"good\")",
                 "11.5", "1e-9 rel", Origin::published, "NIOSH 94-110: horizontal multiplier 0.50 at 50 cm")
        .example("UC.HANDLING.LIMIT(\"25 cm\"; \"30 cm\"; \"25 cm\"; \"0 deg\"; 0.2; \"30 min\"; \"good\")",
                 "20.01", "0.12", Origin::published,
                 "NIOSH 94-110: vertical multiplier 0.87 at 30 cm (0.865 before rounding)")
        .example("UC.HANDLING.LIMIT(\"25 cm\"; \"75 cm\"; \"25 cm\"; \"0 deg\"; 10; \"30 min\"; \"good\")",
                 "10.35", "1e-9 rel", Origin::from_memory,
                 "NIOSH 94-110, Table 5: 0.45 for 10 lifts a minute in less than an hour")
        .example("UC.HANDLING.LIMIT(\"40 cm\"; \"70 cm\"; \"60 cm\"; \"30 deg\"; 1; \"90 min\"; \"fair\")",
                 "9.577272", "1e-6 rel", Origin::mathematics,
                 "product of the multipliers 0.625, 0.985, 0.895, 0.904, 0.88 and 0.95")
        .example(
            "UC.HANDLING.LIMIT(\"10 in\"; \"30 in\"; \"10 in\"; \"0 deg\"; 0.2; \"30 min\"; \"good\"; "
            "\"lb\"; \"inches\")",
            "51", "1e-9 rel", Origin::published, "NIOSH 94-110 (rev. 2021): the load constant in pounds")
        .caution(
            "For one person: for a team, and for a load that is set down with care, see UC.HANDLING.TEAM. 0 "
            "says that nothing may be lifted so: UC.HANDLING.REACH tells why. Two-handed lifts by a healthy "
            "adult on good footing, with recovery as the method asks; local codes govern");
    takes_lift(limit);
    return limit.takes("form", "form", form_says, u"metric").added_later().gives("RWL", "Recommended limit");
}

Function reach_entry() {
    auto reach = function("UC.HANDLING.REACH", [](Length horizontal, Length vertical, Length travel,
                                                  Angle asymmetry, Count lifts_per_minute, Time duration,
                                                  calc::Coupling coupling, calc::LiftingForm form) {
        return calc::handling_reach(
            {horizontal, vertical, travel, asymmetry, lifts_per_minute, duration, coupling, form});
    });
    reach.says("Which reach of the lifting method a lift is beyond, in words: why UC.HANDLING.LIMIT is 0")
        .related({"UC.HANDLING.LIMIT", "UC.HANDLING.TEAM"})
        .also_called("manual handling, NIOSH lifting equation, horizontal reach, asymmetry, lifting limits")
        .equation("H to 25 in, V and D to 70 in, A to 135 deg, F to the end of Table 5")
        .source("NIOSH publication 94-110 (1994, rev. 2021), 1.3.1 to 1.3.3")
        .example("UC.HANDLING.REACH(\"40 cm\"; \"70 cm\"; \"60 cm\"; \"30 deg\"; 1; \"90 min\"; \"fair\")",
                 "within the method's reach", "exact", Origin::published,
                 "NIOSH 94-110, 1.3.1: within all limits")
        .example(
            "UC.HANDLING.REACH(\"70 cm\"; \"70 cm\"; \"60 cm\"; \"30 deg\"; 1; \"90 min\"; \"fair\")",
            "beyond the method's reach, so nothing may be lifted: hands in front of the ankles 0.7 m, at "
            "most 0.635 m (25 in)",
            "exact", Origin::published, "NIOSH 94-110, 1.3.1: hands at most 25 in in front of the ankles")
        .caution("Two-handed lifts by a healthy adult on good footing; local codes govern");
    takes_lift(reach);
    return reach.takes("form", "form", form_says, u"metric")
        .gives("reach", "What the lift is beyond, in words");
}

Function team_entry() {
    return function("UC.HANDLING.TEAM",
                    [](Length reach_at_start, Length height_at_start, Angle turn_at_start,
                       Length reach_at_end, Length height_at_end, Angle turn_at_end, Count lifts_per_minute,
                       Time duration, calc::Coupling coupling, Count persons, calc::LiftingForm form) {
                        return calc::team_limit({{reach_at_start, height_at_start, turn_at_start},
                                                 {reach_at_end, height_at_end, turn_at_end},
                                                 lifts_per_minute,
                                                 duration,
                                                 coupling,
                                                 persons,
                                                 form});
                    })
        .says(
            "Greatest mass of a unit that a team lifts and sets down with care, both ends of the lift "
            "counted; "
            "refused for more than three people")
        .related({"UC.HANDLING.LIMIT", "UC.HANDLING.REACH", "UC.ATMOST"})
        .also_called("team lift, two-person lift, manual handling, ergonomics, recommended weight limit")
        .equation(
            "M = n k min(RWL at the start, RWL at the end); k = 1, 2/3, 1/2 for one, two, three people; RWL "
            "as UC.HANDLING.LIMIT")
        .source(
            "NIOSH publication 94-110 (1994, rev. 2021): both ends where control is needed at the end; HSE "
            "L23 "
            "(2016), paragraphs 119 and 120: a team of two lifts two thirds of the sum, of three one half")
        .example(
            "UC.HANDLING.TEAM(\"10 in\"; \"22 in\"; \"0 deg\"; \"20 in\"; \"59 in\"; \"0 deg\"; 3; \"60 "
            "min\"; \"fair\"; 1; \"inches\"; \"lb\")",
            "15.2", "0.1", Origin::published,
            "NIOSH 94-110 (rev. 2021), example 4, as worked on public pages: the end governs")
        .example(
            "UC.HANDLING.TEAM(\"0.4 m\"; \"0.7 m\"; \"0 deg\"; \"0.5 m\"; \"0.1 m\"; \"30 deg\"; 1; \"90 "
            "min\"; \"fair\"; 2)",
            "8.348918", "5e-6", Origin::mathematics,
            "two thirds of twice 23 x 0.5 x 0.805 x 0.895 x 0.904 x 0.88 x 0.95 at the end")
        .caution(
            "Not for carrying more than a step or two, nor on slopes, kneeling or in restricted space; "
            "people "
            "get in each other's way. 0 says that nothing may be lifted so. Two-handed lifts by healthy "
            "adults on good footing, with recovery as the method asks; local codes govern")
        .takes("reach at start", "H_1", "Hands in front of the ankles where the lift starts")
        .within(usual::reach)
        .takes("height at start", "V_1", "Hands above the floor there")
        .within(usual::hand_height)
        .takes("turn at start", "A_1", "Turn of the body there, in deg")
        .within(usual::body_turn)
        .takes("reach at end", "H_2", "Hands in front of the ankles where the unit is set down")
        .within(usual::reach)
        .takes("height at end", "V_2", "Hands above the floor there")
        .within(usual::hand_height)
        .takes("turn at end", "A_2", "Turn of the body there, in deg")
        .within(usual::body_turn)
        .takes("lifts per minute", "F", "Number of lifts in a minute")
        .within(usual::lifts_per_minute)
        .takes("duration", "T", "Time spent lifting, such as 2 h; at most 8 h")
        .within(usual::lifting_time)
        .takes("coupling", "coupling", "good, fair or poor grip")
        .takes("persons", "n", "People who lift the unit together, at most three")
        .within(usual::persons)
        .takes("form", "form", form_says, u"metric")
        .gives("M", "Greatest mass of the unit");
}

}  // namespace

std::vector<Function> lifting_functions() {
    return {limit_entry(), reach_entry(), team_entry()};
}

}  // namespace undercroft::addin
