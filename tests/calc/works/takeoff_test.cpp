// Stone, sheets, orders, cost, time.
#include "calc/works/takeoff.hpp"
#include "calc/ground/stone.hpp"
#include "calc/works/excavation.hpp"
#include "calc/works/sheet_goods.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {
Density per_m3(double value) {
    return Density::from_value(value);
}
double coherent(const Quantity& quantity) {
    return quantity.value;
}
}  // namespace

TEST_CASE("porosity and mass of stone close on the mass of its particles", "[published]") {
    // ASTM C29 relation.
    CHECK_THAT(stone_porosity(per_m3(1600), per_m3(2650)), is_within(share(0.396226), share(5e-7)));
    Random random;
    for (int i = 0; i < 500; ++i) {
        const Density particles = per_m3(random.between(2200, 3000));
        const Density bulk = random.between(0.4, 0.9) * particles;
        const Volume volume = Volume::from_value(random.between(1, 1000));
        const Share porosity = stone_porosity(bulk, particles);
        // The particles and the bulk weigh the same.
        REQUIRE(stone_mass(volume, porosity, particles).value() ==
                Approx((volume * bulk).value()).epsilon(1e-12));
    }
    CHECK_THROWS_MATCHES(stone_porosity(per_m3(2650), per_m3(1600)), Refused,
                         refuses_domain("less than the particle density"));
    CHECK_THROWS_MATCHES(stone_mass(Volume::from_value(1), share(1), per_m3(2650)), Refused,
                         refuses_domain("porosity"));
}

TEST_CASE("lifts are enough, and one fewer is not") {
    Random random;
    for (int i = 0; i < 1000; ++i) {
        const double thickness = random.between(0.05, 5);
        const double lift = random.between(0.05, 0.6);
        const double n = number(lifts(m(thickness), m(lift)));
        REQUIRE(n * lift >= thickness * (1 - 1e-8));
        REQUIRE((n - 1) * lift < thickness);
    }
    for (int n = 1; n <= 50; ++n) CHECK(number(lifts(m(n * 0.15), m(0.15))) == n);  // exact multiples
}

TEST_CASE("a wrap is the sum of its faces") {
    Random random;
    for (int i = 0; i < 200; ++i) {
        const Length length = m(random.between(5, 60));
        const Length width = m(random.between(3, 30));
        const Length height = m(random.between(0.3, 3));
        const Batter z = batter(random.between(0, 2));
        const Length none = m(0);
        const Area whole = wrap_area(length, width, height, z, {true, true, true}, none);
        const Area parts = wrap_area(length, width, height, z, {true, false, false}, none) +
                           wrap_area(length, width, height, z, {false, true, false}, none) +
                           wrap_area(length, width, height, z, {false, false, true}, none);
        REQUIRE(whole.value() == Approx(parts.value()).epsilon(1e-12));
        const Area lap = wrap_area(length, width, height, z, {true, true, true}, m(0.5)) - whole;
        const Length girth = 2.0 * (pit_side(length, height, z) + pit_side(width, height, z));
        REQUIRE(lap.value() == Approx((girth * m(0.5)).value()).epsilon(1e-10));
    }
    CHECK_THROWS_MATCHES(wrap_area(m(1), m(1), m(1), batter(0), {}, m(0)), Refused,
                         refuses_domain("at least one"));
}

TEST_CASE("strips by the rule of the page, and never fewer rolls than the area needs", "[published]") {
    // Computed by hand: strips = ceil((W - overlap)/(roll width - overlap)).
    CHECK(number(rolls(m(60), m(30), m(60), m(4.5), m(0.45), share(0))) == 8);
    CHECK(number(rolls(m(60), m(8.55), m(60), m(4.5), m(0.45), share(0))) == 2);
    Random random;
    for (int i = 0; i < 500; ++i) {
        const Length length = m(random.between(2, 120));
        const Length width = m(random.between(1, 60));
        const Length roll_length = m(random.between(20, 150));
        const Length roll_width = m(random.between(2, 6));
        const Length lap = m(random.between(0, 0.6));
        const double n = number(rolls(length, width, roll_length, roll_width, lap, share(0)));
        REQUIRE(n * (roll_length * roll_width).value() >= (length * width).value() * (1 - 1e-9));
        REQUIRE(number(rolls(length, width, roll_length, roll_width, lap, share(0.1))) >= n);
        REQUIRE(number(rolls(length, width + m(1), roll_length, roll_width, lap, share(0))) >= n);
        REQUIRE(rolls_area(length, width, roll_length, roll_width, lap, share(0)).value() ==
                Approx(n * (roll_length * roll_width).value()).epsilon(1e-12));
    }
}

TEST_CASE("each join within a strip costs one lap") {
    // One strip of 100 m from rolls of 30 m with laps of 1 m: 30 + 29 + 29 = 88 m, so a fourth roll.
    // Two strips a little shorter than a roll take two rolls: the short rest of the first is no beginning.
    CHECK(number(rolls(m(9.95), m(4), m(10), m(2), m(0), share(0))) == 2);
    CHECK(number(rolls(m(9.95), m(3.7), m(10), m(2), m(0.3), share(0))) == 2);
    CHECK(number(rolls(m(9.7), m(3.7), m(10), m(2), m(0.3), share(0))) == 2);
    CHECK(number(rolls(m(88), m(2), m(30), m(2), m(1), share(0))) == 3);
    CHECK(number(rolls(m(88.1), m(2), m(30), m(2), m(1), share(0))) == 4);
    // The rest of a roll goes on in the next strip: two strips of 40 m from rolls of 50 m, no laps, are two
    // rolls.
    CHECK(number(rolls(m(40), m(4), m(50), m(2), m(0), share(0))) == 2);
    CHECK(number(rolls(m(40), m(5), m(50), m(2), m(0), share(0))) == 3);
    CHECK_THROWS_MATCHES(rolls(m(10), m(5), m(50), m(2), m(2), share(0)), Refused,
                         refuses_domain("less than the roll width"));
    CHECK_THROWS_MATCHES(rolls(m(1e9), m(5), m(1), m(2), m(0), share(0)), Refused,
                         refuses_domain("a million rolls"));
    CHECK_THROWS_MATCHES(rolls(m(10), m(5), m(50), m(2), m(0), share(-0.1)), Refused,
                         refuses_domain("waste"));
}

TEST_CASE("mass and seams of a liner", "[published]") {
    // Thickness times density, by hand.
    CHECK_THAT(liner_mass(Area::from_value(1), m(0.0015), per_m3(940)), is_near(Mass::from_value(1.41)));
    CHECK_THAT(liner_mass(Area::from_value(1), m(0.001016), per_m3(940)), is_near(Mass::from_value(0.95504)));
    CHECK(liner_seams(m(60), m(4), m(4.5), m(0.1)).value() == 0);
    CHECK(liner_seams(m(60), m(30), m(4.5), m(0.45)).value() == 420);
}

TEST_CASE("an order covers the net and its waste with as few packs as do") {
    Random random;
    for (int i = 0; i < 1000; ++i) {
        const Quantity net = parse_quantity(std::to_string(random.between(0.1, 900)) + " t");
        const Quantity pack = parse_quantity(std::to_string(random.between(0.1, 40)) + " t");
        const Share waste = share(random.between(0, 0.3));
        const double ordered = coherent(order(net, waste, pack));
        const double needed = net.value * (1 + number(waste));
        REQUIRE(ordered >= needed * (1 - 1e-8));
        REQUIRE(ordered - pack.value < needed);
    }
    CHECK(coherent(order(parse_quantity("30 t"), share(0), parse_quantity("10 t"))) == 30000);
    CHECK(coherent(order(parse_quantity("30 t"), share(0.1), std::nullopt)) == Approx(33000));
    CHECK(order(Quantity::bare(7), share(0), Quantity::bare(3)).value == 9);
    CHECK(order(Quantity::bare(7), share(0), parse_quantity("3 each")).value == 9);
    CHECK_THROWS_MATCHES(order(Quantity::bare(103), share(0.05), parse_quantity("20 t")), Refused,
                         refuses_value("net: 103 has no unit"));
    CHECK_THROWS_MATCHES(order(parse_quantity("103 t"), share(0.05), Quantity::bare(20)), Refused,
                         refuses_value("pack: 20 has no unit"));
    CHECK_THROWS_AS(order(parse_quantity("30 t"), share(0), parse_quantity("10 m3")), Refused);
    CHECK_THROWS_MATCHES(order(parse_quantity("30 t"), share(0), parse_quantity("0 t")), Refused,
                         refuses_domain("pack"));
}

TEST_CASE("money stays in its currency") {
    const Quantity amount = cost(parse_quantity("128 t"), parse_quantity("62.5 AUD/t"));
    CHECK(amount.value == Approx(8000).epsilon(1e-14));
    CHECK(amount.dimension == parse_unit("AUD").dimension);
    CHECK(cost(parse_quantity("128 t"), parse_quantity("0.0625 AUD/kg")).value ==
          Approx(8000).epsilon(1e-14));
    CHECK(cost(parse_quantity("7 each"), parse_quantity("10 AUD/each")).value == 70);
    CHECK(cost(Quantity::bare(7), parse_quantity("10 AUD/each")).value == 70);
    CHECK_THROWS_MATCHES(cost(Quantity::bare(100), parse_quantity("85 AUD/t")), Refused,
                         refuses_value("quantity: 100 has no unit, and the unit of the rate has one"));
    CHECK_THROWS_MATCHES(cost(parse_quantity("128 t"), parse_quantity("62.5 AUD/m3")), Refused,
                         refuses_value("a volume is wanted"));
    CHECK_THROWS_MATCHES(cost(parse_quantity("128 t"), Quantity::bare(5)), Refused,
                         refuses_value("currency"));
    CHECK_THROWS_MATCHES(cost(parse_quantity("128 t"), parse_quantity("5 kg")), Refused,
                         refuses_value("currency"));
    CHECK_THROWS_MATCHES(cost(parse_quantity("128 t"), parse_quantity("5 t/AUD")), Refused,
                         refuses_value("money per unit"));
}

TEST_CASE("crews share the work") {
    CHECK_THAT(crew_time(Quantity::bare(91), parse_quantity("13 each/h"), count(1)),
               is_near(Time::from_value(7 * 3600.0)));
    CHECK_THROWS_MATCHES(crew_time(Quantity::bare(120), parse_quantity("40 m3/d"), count(1)), Refused,
                         refuses_value("units: 120 has no unit"));
    CHECK_THAT(crew_time(parse_quantity("91 each"), parse_quantity("13 each/h"), count(2)),
               is_near(Time::from_value(3.5 * 3600)));
    CHECK_THAT(crew_time(parse_quantity("120 m3"), parse_quantity("40 m3/d"), count(1)),
               is_near(Time::from_value(3 * 86400.0)));
    CHECK_THROWS_MATCHES(crew_time(parse_quantity("91 each"), Quantity::bare(13), count(1)), Refused,
                         refuses_value("output rate needs a unit"));
    CHECK_THROWS_MATCHES(crew_time(parse_quantity("91 kg"), parse_quantity("13 each/h"), count(1)), Refused,
                         refuses_value("a count is wanted"));
    CHECK_THROWS_MATCHES(crew_time(parse_quantity("91 each"), parse_quantity("13 each/h"), count(0)), Refused,
                         refuses_domain("crews"));
}

}  // namespace undercroft::tests
