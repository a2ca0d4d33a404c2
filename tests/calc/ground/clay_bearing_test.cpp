// Bearing of clay, of stone on clay, and the depth to which soft ground is replaced.
#include "calc/ground/clay_bearing.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// USACE EM 1110-1-1905 (2025), App. B: 7 x 7 ft, 2 ft deep.
ClayFooting usace(double strength_ksf, double unit_weight_kcf) {
    return {ft(7), ft(7), ft(2), ksf(strength_ksf), pcf(1000 * unit_weight_kcf)};
}

ReplacedGround strip(double strength_kpa, double added) {
    return {kpa(150), m(1), {}, kpa(strength_kpa), share(3), kn_per_m3(added)};
}

}  // namespace

TEST_CASE("undrained bearing is that of the manual's example", "[published]") {
    // USACE EM 1110-1-1905 (31 July 2025), Example B-4, as quoted in the validation file of a public
    // engineering library: su 0.85 ksf, 0.113 kcf: 5.78 ksf, and 5.47 by FHWA, without a depth factor.
    const ClayFooting b4 = usace(0.85, 0.113);
    CHECK_THAT(undrained_bearing(b4, DepthFactor::skempton), is_within(ksf(5.78), ksf(0.03)));
    CHECK_THAT(undrained_bearing(b4, DepthFactor::none), is_within(ksf(5.47), ksf(0.01)));
    CHECK_THAT(undrained_bearing(b4, DepthFactor::skempton), is_within(ksf(5.770106), ksf(5e-6)));
    // math: 50 kPa, 2 x 2 m, 1 m deep at 18 kN/m3.
    CHECK_THAT(undrained_bearing({m(2), m(2), m(1), kpa(50), kn_per_m3(18)}, DepthFactor::skempton),
               is_within(kpa(357.345115), kpa(1e-6)));
    // A strip on the ground bears 2 + pi times its strength.
    CHECK_THAT(undrained_bearing({m(2), {}, m(0), kpa(10), kn_per_m3(18)}, DepthFactor::skempton),
               is_near(kpa(51.41592653589793)));
    // The depth factor ends at 1.5.
    CHECK_THAT(undrained_bearing({m(1), {}, m(4), kpa(10), kn_per_m3(18)}, DepthFactor::skempton),
               is_near(kpa(51.41592653589793 * 1.5 + 72)));
}

TEST_CASE("a layer of sand over clay bears as in the manual's example", "[published]") {
    // USACE EM 1110-1-1905 (31 July 2025), Example B-3 with eq. 5-17, as quoted there: 6 ft of sand over clay
    // of 0.5 ksf at 0.135 kcf: 12.21 ksf, and 11.56 without a depth factor; the load of 2.14 ksf spreads to
    // a 3.45th.
    const ClayFooting b3 = usace(0.5, 0.135);
    CHECK_THAT(layered_bearing(b3, ft(6), DepthFactor::skempton), is_within(ksf(12.21), ksf(0.05)));
    CHECK_THAT(layered_bearing(b3, ft(6), DepthFactor::none), is_within(ksf(11.56), ksf(0.05)));
    CHECK_THAT(layered_bearing(b3, ft(6), DepthFactor::none) / undrained_bearing(b3, DepthFactor::none),
               is_within(share(3.45), share(0.005)));
    CHECK(layered_bearing(b3, ft(0), DepthFactor::none) == undrained_bearing(b3, DepthFactor::none));
    ClayFooting long_strip = b3;
    long_strip.length = {};
    CHECK_THAT(layered_bearing(long_strip, ft(7), DepthFactor::none),
               is_near(2.0 * undrained_bearing(long_strip, DepthFactor::none)));
}

TEST_CASE("the depth of replacement by hand") {
    // math: q B L/((B + d)(L + d)) + dg d = (2 + pi) sc su/F, 150 kPa, F 3.
    CHECK_THAT(replacement_depth({kpa(150), m(2), m(2), kpa(25), share(3), kn_per_m3(0)}),
               is_within(m(1.416599443), m(1e-3)));
    CHECK_THAT(replacement_depth(strip(40, 0)), is_within(m(1.188715953), m(1e-3)));
    CHECK_THAT(replacement_depth(strip(40, 3)), is_within(m(1.323296099), m(1e-3)));
    CHECK_THROWS_MATCHES(replacement_depth(strip(20, 3)), Refused,
                         has_no_answer("the stone's own weight overtakes what its spread gains"));
    CHECK(replacement_depth(strip(100, 3)) == m(0));
}

TEST_CASE("the depth of replacement makes the equation hold, and less does not") {
    Random random;
    int answered = 0;
    for (int i = 0; i < 500; ++i) {
        const Length width = m(random.between(0.3, 3));
        const bool is_strip = random.whole(0, 1) == 1;
        const ReplacedGround ground{kpa(random.between(50, 300)),
                                    width,
                                    is_strip ? std::optional<Length>() : width * random.between(1, 5),
                                    kpa(random.between(15, 100)),
                                    share(random.between(1, 3)),
                                    kn_per_m3(random.between(0, 5))};
        const auto presses = [&](Length d) {
            const double b = (ground.width + d).value();
            const double l = is_strip ? 1 : (*ground.length + d).value();
            const double whole = is_strip ? ground.width.value() : (ground.width * *ground.length).value();
            const double shape = is_strip ? 1 : 1 + 0.2 * b / l;
            return ground.pressure.value() * whole / (b * l) + (ground.added_weight * d).value() -
                   5.141592653589793 * shape * ground.strength.value() / number(ground.safety);
        };
        CAPTURE(i);
        try {
            const Length depth = replacement_depth(ground);
            ++answered;
            if (depth == m(0))
                REQUIRE(presses(depth) <= 1e-6);
            else {
                REQUIRE(presses(depth) == Approx(0).margin(1e-3));
                REQUIRE(presses(depth * 0.99) > 0);
            }
        } catch (const Refused&) {
            for (double d = 0; d <= 20; d += 0.05) REQUIRE(presses(m(d)) > -1e-3);
        }
    }
    CHECK(answered > 200);
}

TEST_CASE("clay without strength, and foundations that are none, are refused") {
    const auto with = [](auto change) {
        ClayFooting footing{m(2), m(3), m(1), kpa(50), kn_per_m3(18)};
        change(footing);
        return layered_bearing(footing, m(1), DepthFactor::skempton);
    };
    CHECK_NOTHROW(with([](ClayFooting&) {}));
    CHECK_THROWS_MATCHES(with([](ClayFooting& f) { f.width = m(0); }), Refused, refuses_domain("width"));
    CHECK_THROWS_MATCHES(with([](ClayFooting& f) { f.length = m(1); }), Refused,
                         refuses_domain("for a long strip"));
    CHECK_THROWS_MATCHES(with([](ClayFooting& f) { f.depth = m(-1); }), Refused, refuses_domain("depth"));
    CHECK_THROWS_MATCHES(with([](ClayFooting& f) { f.strength = kpa(0); }), Refused,
                         refuses_domain("strength"));
    CHECK_THROWS_MATCHES(with([](ClayFooting& f) { f.unit_weight = kn_per_m3(0); }), Refused,
                         refuses_domain("unit weight"));
    CHECK_THROWS_MATCHES(
        layered_bearing({m(2), m(3), m(1), kpa(50), kn_per_m3(18)}, m(-1), DepthFactor::none), Refused,
        refuses_domain("layer"));
    const auto replaced = [](auto change) {
        ReplacedGround ground = strip(40, 3);
        change(ground);
        return replacement_depth(ground);
    };
    CHECK_THROWS_MATCHES(replaced([](ReplacedGround& g) { g.pressure = kpa(0); }), Refused,
                         refuses_domain("pressure"));
    CHECK_THROWS_MATCHES(replaced([](ReplacedGround& g) { g.width = m(0); }), Refused,
                         refuses_domain("width"));
    CHECK_THROWS_MATCHES(replaced([](ReplacedGround& g) { g.length = m(0.5); }), Refused,
                         refuses_domain("length"));
    CHECK_THROWS_MATCHES(replaced([](ReplacedGround& g) { g.strength = kpa(0); }), Refused,
                         refuses_domain("strength"));
    CHECK_THROWS_MATCHES(replaced([](ReplacedGround& g) { g.safety = share(0.9); }), Refused,
                         refuses_domain("safety"));
    CHECK_THROWS_MATCHES(replaced([](ReplacedGround& g) { g.added_weight = kn_per_m3(-1); }), Refused,
                         refuses_domain("added weight"));
}

}  // namespace undercroft::tests
