// A unit that people lift together, at both ends of the lift; and the form in inches and pounds.
#include "calc/works/lifting.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

constexpr double pound = 0.45359237;
Mass kilograms(double value) {
    return Mass::from_value(value);
}
Mass lb(double value) {
    return kilograms(pound * value);
}

TeamLift one_metric() {
    return {{cm(30), cm(75), degrees(0)},
            {cm(30), cm(45), degrees(0)},
            count(0.5),
            hours(2),
            Coupling::fair,
            count(1)};
}

/// 94-110, example 4, package inspection.
TeamLift packages() {
    return {{inches(10), inches(22), degrees(0)},
            {inches(20), inches(59), degrees(0)},
            count(3),
            hours(1),
            Coupling::fair,
            count(1),
            LiftingForm::customary};
}

}  // namespace

TEST_CASE("the lower limit of both ends counts, as in the published inspection of packages", "[published]") {
    // NIOSH 94-110 (rev. 2021), example 4, as transcribed: 34.9 lb at the origin with rounded
    // multipliers, 15.2 lb at the destination, where FM still takes the height at the start and CM that of
    // the end.
    const Lift origin{inches(10), inches(22), inches(37),     degrees(0),
                      count(3),   hours(1),   Coupling::fair, LiftingForm::customary};
    CHECK_THAT(handling_limit(origin), is_within(lb(34.9), lb(0.1)));
    CHECK_THAT(handling_limit(origin), is_within(lb(34.813562), lb(1e-6)));
    CHECK_THAT(team_limit(packages()), is_within(lb(15.2), lb(0.1)));
    CHECK_THAT(team_limit(packages()), is_within(lb(15.252862), lb(1e-6)));
}

TEST_CASE("on its limits the method still gives the published weights, in inches", "[published]") {
    // NIOSH 94-110 (rev. 2021), 1.3.1 to 1.3.3: HM .40 at 25 in, VM .70 at 70 in, DM .85 at 70 in.
    const Lift ideal{inches(10), inches(30), inches(10),     degrees(0),
                     count(0.2), hours(1),   Coupling::good, LiftingForm::customary};
    const auto limit = [&](auto change) {
        Lift lift = ideal;
        change(lift);
        return handling_limit(lift);
    };
    CHECK_THAT(limit([](Lift&) {}), is_near(lb(51)));
    CHECK_THAT(limit([](Lift& l) { l.horizontal = inches(25); }), is_near(lb(20.4)));
    CHECK_THAT(limit([](Lift& l) { l.vertical = inches(70); }), is_near(lb(35.7)));
    CHECK_THAT(limit([](Lift& l) { l.travel = inches(70); }), is_within(lb(43.131429), lb(1e-6)));
    CHECK_THAT(limit([](Lift& l) { l.asymmetry = degrees(135); }), is_near(lb(28.968)));
    CHECK(limit([](Lift& l) { l.horizontal = inches(25.0001); }) == kilograms(0));
    CHECK(limit([](Lift& l) { l.vertical = inches(70.0001); }) == kilograms(0));
    CHECK(limit([](Lift& l) { l.travel = inches(70.0001); }) == kilograms(0));
    // FM between rows: 2.4 a minute lies between .91 and .88.
    CHECK_THAT(limit([](Lift& l) { l.per_minute = count(2.4); }), is_near(lb(51 * 0.898), 1e-12));
    // Knuckles at 30 in: fair counts 0.95 below.
    CHECK_THAT(limit([](Lift& l) { l.coupling = Coupling::fair; }), is_near(lb(51)));
    CHECK_THAT(limit([](Lift& l) {
                   l.coupling = Coupling::fair;
                   l.vertical = inches(29.99);
               }),
               is_near(lb(51 * 0.95), 1e-4));
    CHECK_THROWS_MATCHES(limit([](Lift& l) { l.form = static_cast<LiftingForm>(9); }), Refused,
                         refuses_value("unknown form"));
}

TEST_CASE("setting a unit down low allows less than picking it up does") {
    // By hand, metric: 14.8 kg where it is set down at 0.45 m, 9.2 kg at 0.15 m with the hands 0.40 m away.
    CHECK_THAT(team_limit(one_metric()), is_within(kilograms(14.7867), kilograms(5e-5)));
    TeamLift low = one_metric();
    low.end = {cm(40), cm(15), degrees(0)};
    CHECK_THAT(team_limit(low), is_within(kilograms(9.2205), kilograms(5e-5)));
    low.persons = count(2);
    CHECK_THAT(team_limit(low), is_within(kilograms(2 * 9.2205 * 2 / 3), kilograms(1e-4)));
}

TEST_CASE("a team lifts less than the sum of its members", "[published]") {
    // HSE L23, paragraphs 119 and 120: two persons two thirds of the sum, three one half; two who manage 50
    // kg each manage 66 kg.
    const auto team = [](double persons) {
        TeamLift lift = one_metric();
        lift.persons = count(persons);
        return team_limit(lift);
    };
    const Mass one = team(1);
    CHECK_THAT(team(2), is_near(one * (4.0 / 3)));
    CHECK_THAT(team(2) / one * kilograms(50), is_within(kilograms(66), kilograms(0.7)));
    CHECK_THAT(team(3), is_near(one * 1.5));
    CHECK_THROWS_MATCHES(team(4), Refused, has_no_answer("more than three: lift it by plant"));
    CHECK_THROWS_MATCHES(team(0), Refused, refuses_domain("persons"));
    CHECK_THROWS_MATCHES(team(1.5), Refused, refuses_domain("whole number"));
}

TEST_CASE("a team's limit is one person's at the worse end") {
    Random random;
    for (int i = 0; i < 500; ++i) {
        const auto end = [&] {
            return LiftEnd{cm(random.between(10, 66)), cm(random.between(0, 180)),
                           degrees(random.between(0, 140))};
        };
        const auto form = static_cast<LiftingForm>(random.whole(0, 1));
        const TeamLift lift{end(),
                            end(),
                            count(random.between(0.1, 14)),
                            hours(random.between(0.1, 8)),
                            static_cast<Coupling>(random.whole(0, 2)),
                            count(1),
                            form};
        const Length travel = abs(lift.start.vertical - lift.end.vertical);
        const Mass at_start =
            handling_limit({lift.start.horizontal, lift.start.vertical, travel, lift.start.asymmetry,
                            lift.per_minute, lift.duration, lift.coupling, form});
        REQUIRE(team_limit(lift) <= at_start);
        REQUIRE(team_limit(lift) >= kilograms(0));
        TeamLift same = lift;
        same.end = lift.start;
        REQUIRE_THAT(team_limit(same), is_near(handling_limit({lift.start.horizontal, lift.start.vertical,
                                                               cm(0), lift.start.asymmetry, lift.per_minute,
                                                               lift.duration, lift.coupling, form})));
    }
}

TEST_CASE("a limit of 0 says which reach was passed") {
    const Lift fair{cm(30), cm(75), cm(30), degrees(0), count(1), hours(1), Coupling::fair};
    const auto reach = [&](auto change) {
        Lift lift = fair;
        change(lift);
        REQUIRE(handling_limit(lift) == kilograms(0));
        return handling_reach(lift);
    };
    using Catch::Contains;
    CHECK(handling_reach(fair) == "within the method's reach");
    CHECK_THAT(reach([](Lift& l) { l.horizontal = cm(70); }),
               Contains("hands in front of the ankles 0.7 m, at most 0.635 m (25 in)"));
    CHECK_THAT(reach([](Lift& l) { l.vertical = m(1.9); }),
               Contains("hands above the floor 1.9 m, at most 1.778 m (70 in)"));
    CHECK_THAT(reach([](Lift& l) { l.travel = m(1.9); }), Contains("travel up or down 1.9 m"));
    CHECK_THAT(reach([](Lift& l) { l.asymmetry = degrees(140); }),
               Contains("turn of the body 140 deg, at most 135 deg"));
    CHECK_THAT(reach([](Lift& l) { l.per_minute = count(16); }), Contains("16 each a minute is too often"));
    CHECK_THAT(reach([](Lift& l) {
                   l.per_minute = count(14);
                   l.duration = hours(8);
               }),
               Contains("too often for"));
    CHECK_THROWS_MATCHES(
        handling_reach({cm(0), cm(75), cm(30), degrees(0), count(1), hours(1), Coupling::fair}), Refused,
        refuses_domain("horizontal (0 m)"));
}

}  // namespace undercroft::tests
