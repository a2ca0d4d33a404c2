// Several outlets together.
#include "calc/water/rating.hpp"

#include "calc/water/contracted_weir.hpp"
#include "calc/water/opening.hpp"
#include "calc/water/outfall.hpp"
#include "calc/water/outlet.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

using Row = OutletTable::value_type;

Row orifice(double level, double diameter, std::optional<Count> how_many = {}) {
    return {OutletKind::orifice, m(level), as_quantity(m(diameter)), {}, how_many, {}};
}
Row weir(double level, double crest, double contractions) {
    return {OutletKind::weir, m(level), as_quantity(m(crest)), {}, {}, as_quantity(count(contractions))};
}
Row pump(double level, double flow) {
    return {OutletKind::pump, m(level), as_quantity(m3_per_s(flow)), {}, {}, {}};
}
Row soakage(double level, double base, double rate, double perimeter) {
    return {OutletKind::soakage,         m(level), as_quantity(m2(base)),
            as_quantity(mm_per_h(rate)), {},       as_quantity(m(perimeter))};
}
Row notch(double level, double angle) {
    return {OutletKind::notch, m(level), Quantity::bare(angle), {}, {}, {}};
}

std::optional<Flow> flow_at(const RatingTable& rating, double depth) {
    for (const auto& [d, q] : rating)
        if (std::abs(d.value() - depth) < 1e-12) return q;
    return std::nullopt;
}

}  // namespace

TEST_CASE("a rating is the sum of its outlets, each by its own law above its own level") {
    const RatingTable rating = outlet_rating({orifice(0.05, 0.15, count(2)), weir(0.6, 1.2, 2),
                                              notch(0.4, 90), pump(0.3, 0.01), soakage(0, 200, 36, 60)},
                                             m(1), count(20));
    for (const auto& [d, q] : rating) {
        const auto above = [depth = d](double level) { return std::max(depth - m(level), m(0)); };
        const double wet = std::min(1.0, d.value() / 0.001);
        const double running = std::min(1.0, above(0.3).value() / 0.001);
        const Flow expected = 2.0 * part_full_orifice_flow(m(0.15), above(0.05), share(0.6)) +
                              weir_flow(m(1.2), above(0.6), WeirCoefficient::from_value(1.84), count(2)) +
                              notch_flow(degrees(90), above(0.4), WeirCoefficient::from_value(1.38)) +
                              running * m3_per_s(0.01) + wet * mm_per_h(36) * (m2(200) + m(60) * d);
        CAPTURE(d.value());
        CHECK_THAT(q, is_within(expected, m3_per_s(1e-9)));
    }
    // Rows of their own at every start and change of law.
    for (const double kink : {0.05, 0.2, 0.6, 0.4, 0.3, 0.301, 0.0, 0.001, 1.0})
        CHECK(flow_at(rating, kink).has_value());
    CHECK(flow_at(rating, 0.3).value() < flow_at(rating, 0.301).value() - m3_per_s(0.009));
}

TEST_CASE("a rating starts at 0, rises, and its rows stand apart") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        OutletTable outlets;
        const int n = random.whole(1, 5);
        for (int k = 0; k < n; ++k) {
            const double level = random.whole(0, 1) * random.between(0, 1.5);
            switch (random.whole(0, 4)) {
                case 0:
                    outlets.push_back(orifice(level, random.between(0.02, 0.5)));
                    break;
                case 1:
                    outlets.push_back(weir(level, random.between(1, 3), 0));
                    break;
                case 2:
                    outlets.push_back(notch(level, random.between(20, 120)));
                    break;
                case 3:
                    outlets.push_back(pump(level, random.between(0.001, 0.1)));
                    break;
                default:
                    outlets.push_back(soakage(level, random.between(0, 500), random.between(1, 200), 40));
            }
        }
        const RatingTable rating =
            outlet_rating(outlets, m(random.between(0.5, 2)), count(random.whole(1, 50)));
        REQUIRE(std::get<0>(rating.front()) == m(0));
        REQUIRE(std::get<1>(rating.front()) == m3_per_s(0));
        for (std::size_t r = 1; r < rating.size(); ++r) {
            REQUIRE(std::get<0>(rating[r]) > std::get<0>(rating[r - 1]));
            REQUIRE(std::get<1>(rating[r]) >= std::get<1>(rating[r - 1]));
        }
    }
}

TEST_CASE("bare sizes and coefficients are read in the default unit of what the kind wants") {
    const auto bare = [](OutletKind kind, double size, std::optional<Quantity> coefficient = {}) {
        const OutletTable outlets = {{kind, m(0), Quantity::bare(size), coefficient, {}, {}}};
        return std::get<1>(outlet_rating(outlets, m(1), count(1)).back());
    };
    CHECK_THAT(bare(OutletKind::orifice, 0.1), is_near(orifice_flow(m(0.1), m(0.95), share(0.6))));
    CHECK_THAT(bare(OutletKind::orifice, 0.1, Quantity::bare(0.8)),
               is_near(orifice_flow(m(0.1), m(0.95), share(0.8))));
    CHECK_THAT(bare(OutletKind::weir, 2), is_near(m3_per_s(3.68)));
    CHECK_THAT(bare(OutletKind::notch, 90), is_near(m3_per_s(1.38)));
    CHECK_THAT(bare(OutletKind::pump, 12), is_near(m3_per_s(0.012)));                          // L/s
    CHECK_THAT(bare(OutletKind::soakage, 100, Quantity::bare(36)), is_near(m3_per_s(0.001)));  // m2, mm/h
}

TEST_CASE("an outlet above the depth adds nothing, and none of a kind adds nothing") {
    CHECK(std::get<1>(outlet_rating({orifice(2, 0.1)}, m(1), count(4)).back()) == m3_per_s(0));
    CHECK(std::get<1>(outlet_rating({orifice(0, 0.1, count(0))}, m(1), count(4)).back()) == m3_per_s(0));
    CHECK(outlet_rating({orifice(2, 0.1)}, m(1), count(4)).size() == 5);
}

TEST_CASE("outlets that do not fit their kind are refused with their row") {
    const auto rate = [](const Row& row) { return outlet_rating({orifice(0, 0.1), row}, m(1), count(2)); };
    const Quantity mass = as_quantity(Mass::from_value(5));
    const Quantity metre_quantity = as_quantity(m(1));
    using Kind = OutletKind;
    CHECK_THROWS_MATCHES(rate({Kind::orifice, m(0), mass, {}, {}, {}}), Refused,
                         refuses_value("outlet 2: size (5 kg) is a mass; a length is wanted"));
    CHECK_THROWS_MATCHES(rate({Kind::notch, m(0), metre_quantity, {}, {}, {}}), Refused,
                         refuses_value("an angle is wanted"));
    CHECK_THROWS_MATCHES(rate({Kind::soakage, m(0), as_quantity(m2(1)), {}, {}, {}}), Refused,
                         refuses_value("the soakage rate is missing"));
    CHECK_THROWS_MATCHES(
        rate({Kind::soakage, m(0), as_quantity(m2(-1)), as_quantity(Speed::from_value(1e-5)), {}, {}}),
        Refused, refuses_domain("size (-1 m2) must be 0 or more"));
    CHECK_THROWS_MATCHES(rate({Kind::pump, m(0), Quantity::bare(5), Quantity::bare(0.6), {}, {}}), Refused,
                         refuses_value("coefficient (0.6) has no meaning here"));
    CHECK_THROWS_MATCHES(rate({Kind::orifice, m(0), metre_quantity, {}, {}, Quantity::bare(2)}), Refused,
                         refuses_value("sides (2) has no meaning here"));
    CHECK_THROWS_MATCHES(rate(orifice(-0.1, 0.1)), Refused, refuses_domain("outlet 2: level (-0.1 m)"));
    CHECK_THROWS_MATCHES(rate(orifice(0, 0)), Refused, refuses_domain("diameter (0 m) must be above 0"));
    CHECK_THROWS_MATCHES(rate(orifice(5, 0)), Refused, refuses_domain("diameter (0 m)"));  // also when dry
    CHECK_THROWS_MATCHES(rate(orifice(0, 0.1, count(1.5))), Refused, refuses_domain("count (1.5 each)"));
    CHECK_THROWS_MATCHES(rate(pump(0, 0)), Refused, refuses_domain("size (0 L/s) must be above 0"));
    CHECK_THROWS_MATCHES(
        rate(weir(0, 0.3, 2)), Refused,
        refuses_domain("outlet 2: head (1 m) must be at most a third of the crest length (0.1 m)"));
    CHECK_THROWS_MATCHES(outlet_rating({orifice(0, 0.1)}, m(0), count(2)), Refused,
                         refuses_domain("depth (0 m)"));
    CHECK_THROWS_MATCHES(outlet_rating({orifice(0, 0.1)}, m(1), count(0)), Refused,
                         refuses_domain("steps (0"));
    CHECK_NOTHROW(outlet_rating({orifice(0, 0.1)}, m(1), count(10000)));
    CHECK_THROWS_MATCHES(outlet_rating({orifice(0, 0.1)}, m(1), count(10001)), Refused,
                         refuses_domain("at most 10000"));
}

namespace {

Row rectangle(double level, double width, double height) {
    return {OutletKind::rectangle, m(level), as_quantity(m(width)), {}, {}, as_quantity(m(height))};
}
Row contracted(double level, double crest, double channel) {
    return {OutletKind::contracted, m(level), as_quantity(m(crest)), {}, {}, as_quantity(m(channel))};
}
Row riser(double level, double diameter) {
    return {OutletKind::riser, m(level), as_quantity(m(diameter)), {}, {}, {}};
}

double straight_between(const RatingTable& rating, double depth) {
    for (std::size_t i = 1; i < rating.size(); ++i) {
        const auto& [d1, q1] = rating[i - 1];
        const auto& [d2, q2] = rating[i];
        if (m(depth) > d2) continue;
        return (q1 + (m(depth) - d1) / (d2 - d1) * (q2 - q1)).value();
    }
    return -1;
}

}  // namespace

TEST_CASE("rectangular openings, contracted weirs and risers have their own laws above their levels") {
    const RatingTable rating = outlet_rating(
        {rectangle(0.1, 0.2, 0.05), contracted(0.5, 0.3, 1.2), riser(0.6, 0.25)}, m(1.2), count(24));
    const WeirCoefficient rim = WeirCoefficient::from_value(1.84);
    for (const auto& [depth, flow] : rating) {
        const auto above = [d = depth](double level) { return std::max(d - m(level), m(0)); };
        Flow expected = rectangular_orifice_flow(m(0.2), m(0.05), above(0.1), share(0.6), m(0)) +
                        riser_flow(m(0.25), above(0.6), rim, share(0.6), m(0));
        // Below its least head, 30 mm, the contracted weir goes with h^1.5 to nothing.
        const Length head = std::max(above(0.5), m(0.03));
        expected += contracted_weir_flow(m(0.3), head, m(1.2), m(0.5)) * std::pow(above(0.5) / head, 1.5);
        CAPTURE(depth.value());
        CHECK_THAT(flow, is_within(expected, m3_per_s(1e-12)));
    }
    for (const double kink : {0.1, 0.15, 0.5, 0.53, 0.6}) CHECK(flow_at(rating, kink).has_value());
    CHECK(flow_at(rating, 0.6 + 0.6 * 0.25 * std::sqrt(2 * 9.80665) / (4 * 1.84)).has_value());
    // Without a channel's width the weir is contracted all the way.
    const Row wide = {OutletKind::contracted, m(0.5), as_quantity(m(0.3)), {}, {}, {}};
    CHECK_THAT(std::get<1>(outlet_rating({wide}, m(1), count(1)).back()),
               is_near(contracted_weir_flow(m(0.3), m(0.5), m(100), m(0.5))));
    using Kind = OutletKind;
    const auto rate = [](const Row& row) { return outlet_rating({row}, m(1), count(2)); };
    CHECK_THROWS_MATCHES(rate({Kind::rectangle, m(0), as_quantity(m(1)), {}, {}, {}}), Refused,
                         refuses_value("sides: the height of the opening is missing"));
    CHECK_THROWS_MATCHES(rate(rectangle(0, 1, 0)), Refused, refuses_domain("height (0 m)"));
    CHECK_THROWS_MATCHES(rate({Kind::contracted, m(0.5), as_quantity(m(1)), Quantity::bare(2), {}, {}}),
                         Refused, refuses_value("coefficient (2) has no meaning here"));
    CHECK_THROWS_MATCHES(rate(contracted(0.05, 1, 2)), Refused, refuses_domain("crest height (0.05 m)"));
    CHECK_THROWS_MATCHES(rate(contracted(0.3, 1, 2)), Refused,
                         refuses_domain("at most twice the crest height"));
    CHECK_THROWS_MATCHES(rate(contracted(5, 1, 0.5)), Refused,
                         refuses_domain("channel width (0.5 m)"));  // also dry
    CHECK_THROWS_MATCHES(rate({Kind::riser, m(5), as_quantity(m(1)), Quantity::bare(0), {}, {}}), Refused,
                         refuses_domain("weir coefficient"));
    CHECK_THROWS_MATCHES(rate(riser(0.5, 0)), Refused, refuses_domain("diameter (0 m)"));
}

TEST_CASE("with a tolerance straight lines between the rows keep to the law") {
    const OutletTable outlets = {orifice(0.05, 0.15), weir(0.6, 1.2, 0), pump(0.3, 0.01),
                                 soakage(0, 200, 36, 60)};
    const RatingTable exact = outlet_rating(outlets, m(1.2), count(10000));
    std::size_t rows_before = 0;
    for (const double tolerance : {0.05, 0.01, 0.002}) {
        const RatingTable rating = outlet_rating(outlets, m(1.2), count(20), share(tolerance));
        REQUIRE(rating.size() > rows_before);
        rows_before = rating.size();
        for (const auto& [depth, flow] : exact) {
            CAPTURE(tolerance, depth.value());
            // Spans of 2 mm are not divided: an orifice and a weir are 0.1 L/s off where they start.
            const double most = tolerance * flow.value() + 1e-4;
            REQUIRE(straight_between(rating, depth.value()) == Approx(flow.value()).margin(most).epsilon(0));
        }
    }
    CHECK(outlet_rating(outlets, m(1.2), count(20), share(0.002)).size() < 100);
    CHECK(outlet_rating(outlets, m(1.2), count(20)).size() < 31);  // fits where it always did
    CHECK_THROWS_MATCHES(outlet_rating(outlets, m(1), count(20), share(0)), Refused,
                         refuses_domain("tolerance (0) must be from 0.01 % to 10 %"));
    CHECK_THROWS_MATCHES(outlet_rating(outlets, m(1), count(20), share(0.2)), Refused,
                         refuses_domain("tolerance"));
    CHECK_THROWS_MATCHES(outlet_rating({weir(999.6, 1, 0)}, m(1000), count(10000), share(1e-4)), Refused,
                         refuses_domain("more than 10000 rows"));
}

TEST_CASE("against a tailwater nothing flows below it, and less above") {
    const OutletTable outlets = {orifice(0, 0.15), weir(0.6, 1.2, 0), pump(0.3, 0.01)};
    const Downstream tailwater = {m(0.5), {}};
    const RatingTable free = outlet_rating(outlets, m(1.2), count(24));
    const RatingTable drowned = outlet_rating(outlets, m(1.2), count(24), {}, tailwater);
    for (const auto& [depth, flow] : drowned) {
        const double d = depth.value();
        const double pumped = d > 0.3005 ? 0.01 : 0.0;
        CAPTURE(d);
        if (d <= 0.5)
            CHECK(flow.value() == Approx(pumped).margin(1e-12));
        else
            CHECK(flow.value() ==
                  Approx(pumped + 0.6 * M_PI / 4 * 0.15 * 0.15 * std::sqrt(2 * 9.80665 * (d - 0.5)) +
                         1.84 * 1.2 * std::pow(std::max(d - 0.6, 0.0), 1.5))
                      .epsilon(1e-9));
        CHECK(flow.value() <= straight_between(free, d) * (1 + 1e-9) + 1e-12);
    }
    CHECK(flow_at(drowned, 0.5).has_value());
    // A tailwater below all outlets changes nothing.
    CHECK(outlet_rating({weir(0.6, 1.2, 0)}, m(1.2), count(12), {}, {m(0.6), {}}) ==
          outlet_rating({weir(0.6, 1.2, 0)}, m(1.2), count(12)));
    CHECK_THROWS_MATCHES(outlet_rating(outlets, m(1), count(2), {}, {m(INFINITY), {}}), Refused,
                         refuses_domain("tailwater"));
    CHECK_NOTHROW(outlet_rating(outlets, m(1), count(2), {}, {m(1), {}}));
    CHECK_THROWS_MATCHES(outlet_rating(outlets, m(1), count(2), {}, {m(1.01), {}}), Refused,
                         refuses_domain("tailwater (1.01 m) must be at most the depth that is rated (1 m)"));
}

TEST_CASE("outlets and the outfall pipe behind them are in series") {
    // Two drowned orifices: Q = C sqrt(2 g d)/sqrt(1/a1^2 + 1/a2^2); the lower one as a table of what it
    // passes.
    const double a1 = M_PI / 4 * 0.1 * 0.1;
    const double a2 = M_PI / 4 * 0.12 * 0.12;
    RatingTable lower;
    for (int i = 0; i <= 4000; ++i)
        lower.emplace_back(m(2.0 * i / 4000), m3_per_s(0.6 * a2 * std::sqrt(2 * 9.80665 * 2.0 * i / 4000)));
    const OutletTable outlets = {orifice(0, 0.1), soakage(0, 100, 36, 0)};
    for (const auto& [depth, flow] : outlet_rating(outlets, m(2), count(10), {}, {{}, lower})) {
        if (depth < m(0.3)) continue;
        const double series =
            0.6 * std::sqrt(2 * 9.80665 * depth.value()) / std::sqrt(1 / (a1 * a1) + 1 / (a2 * a2));
        CAPTURE(depth.value());
        CHECK(flow.value() == Approx(series + 0.001).epsilon(2e-4));
    }
    // A pipe that takes all at once changes nothing, one that takes nothing leaves the soakage.
    const RatingTable ample = {{m(0), m3_per_s(0)}, {m(0.001), m3_per_s(10)}, {m(2), m3_per_s(10)}};
    const RatingTable shut = {{m(0), m3_per_s(0)}, {m(2), m3_per_s(0)}};
    const RatingTable free = outlet_rating(outlets, m(2), count(10));
    const RatingTable with_ample = outlet_rating(outlets, m(2), count(10), {}, {{}, ample});
    for (std::size_t i = 0; i < free.size(); ++i)
        CHECK(std::get<1>(with_ample[i]).value() == Approx(std::get<1>(free[i]).value()).epsilon(2e-3));
    for (const auto& [depth, flow] : outlet_rating(outlets, m(2), count(10), {}, {{}, shut}))
        if (depth > m(0.001)) CHECK(flow.value() == Approx(0.001).epsilon(1e-5));
    // Never more than either.
    const RatingTable pipe = outfall_rating(m(2), count(40), m(0), m(0.1), m(20), gradient(0.005),
                                            share(0.012), PipeInlet::square_edge, {}, {});
    for (const auto& [depth, flow] : outlet_rating({orifice(0, 0.2)}, m(2), count(10), {}, {{}, pipe})) {
        CHECK(flow.value() <= straight_between(pipe, depth.value()) * (1 + 1e-9));
        CHECK(flow <= part_full_orifice_flow(m(0.2), depth, share(0.6)) * (1 + 1e-9));
    }
    const auto rate = [&](const RatingTable& outfall) {
        return outlet_rating(outlets, m(2), count(2), {}, {{}, outfall});
    };
    CHECK_THROWS_MATCHES(rate({{m(0), m3_per_s(0)}, {m(1), m3_per_s(1)}}), Refused,
                         refuses_domain("the outfall (0 m to 1 m) must reach from 0 to the depth (2 m)"));
    CHECK_THROWS_MATCHES(rate({{m(0), m3_per_s(1)}, {m(2), m3_per_s(0)}}), Refused,
                         refuses_domain("the flow of the outfall must not fall"));
    CHECK_THROWS_MATCHES(rate({{m(0), m3_per_s(1)}}), Refused,
                         refuses_domain("the outfall needs at least two rows"));
}

TEST_CASE("two ratings together are their sum, the other from its own level") {
    const RatingTable one = {{m(0), m3_per_s(0)}, {m(1), m3_per_s(0.1)}};
    const RatingTable control = {{m(0), m3_per_s(0)}, {m(0.3), m3_per_s(0.005)}, {m(1.5), m3_per_s(0.006)}};
    const RatingTable sum = rating_sum(one, control, m(0.2));
    REQUIRE(sum.size() == 4);  // 0, 0.2, 0.5, 1
    for (const auto& [depth, flow] : sum) {
        const double d = depth.value();
        const double own = d <= 0.2   ? 0
                           : d <= 0.5 ? (d - 0.2) / 0.3 * 0.005
                                      : 0.005 + (d - 0.5) / 1.2 * 0.001;
        CHECK(flow.value() == Approx(0.1 * d + own).epsilon(1e-12));
    }
    CHECK_THAT(std::get<1>(rating_sum(one, control, m(0)).back()),
               is_near(m3_per_s(0.1 + 0.005 + 0.7 / 1.2 * 0.001)));
    // Steady from its first row on: reached over the switching rise below it.
    const RatingTable steady = {{m(0), m3_per_s(0.01)}, {m(2), m3_per_s(0.01)}};
    const RatingTable with_steady = rating_sum(one, steady, m(0.4));
    CHECK(straight_between(with_steady, 0.398) == Approx(0.0398));
    CHECK(straight_between(with_steady, 0.4) == Approx(0.05));
    CHECK_THROWS_MATCHES(rating_sum(one, {{m(0), m3_per_s(0)}, {m(0.7), m3_per_s(1)}}, m(0.2)), Refused,
                         refuses_domain("the other rating ends at 0.9 m, below the top of the rating (1 m)"));
    CHECK_THROWS_MATCHES(rating_sum({one[0]}, control, m(0)), Refused,
                         refuses_domain("the rating needs at least two rows"));
    CHECK_THROWS_MATCHES(rating_sum(one, {control[1], control[0]}, m(0)), Refused,
                         refuses_domain("other rating: depth (0 m) must be above that of the row before"));
    CHECK_THROWS_MATCHES(rating_sum({{m(0), m3_per_s(0)}, {m(1), m3_per_s(-1)}}, control, m(0)), Refused,
                         refuses_domain("flow (-1000 L/s)"));
}

}  // namespace undercroft::tests
