// Several outlets together.
#include "calc/water/rating.hpp"

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
                    outlets.push_back(weir(level, random.between(1, 3), random.whole(0, 2)));
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
    CHECK_THROWS_MATCHES(rate(weir(0, 0.3, 2)), Refused, refuses_domain("at most 6 L/n (0.9 m)"));
    CHECK_THROWS_MATCHES(outlet_rating({orifice(0, 0.1)}, m(0), count(2)), Refused,
                         refuses_domain("depth (0 m)"));
    CHECK_THROWS_MATCHES(outlet_rating({orifice(0, 0.1)}, m(1), count(0)), Refused,
                         refuses_domain("steps (0"));
    CHECK_NOTHROW(outlet_rating({orifice(0, 0.1)}, m(1), count(10000)));
    CHECK_THROWS_MATCHES(outlet_rating({orifice(0, 0.1)}, m(1), count(10001)), Refused,
                         refuses_domain("at most 10000"));
}

}  // namespace undercroft::tests
