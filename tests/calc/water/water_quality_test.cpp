// Water-quality volume, silt, and the release of the undeveloped site.
#include "calc/water/water_quality.hpp"

#include "calc/water/frequency_factor.hpp"
#include "calc/water/greenfield.hpp"
#include "calc/water/runoff.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Volume quality(Length rain, Area area, double impervious, Length least = m(0)) {
    return water_quality_volume(rain, area, share(impervious), share(0.05), share(0.9), least);
}
const Area acre = 43560.0 * ft(1) * ft(1);

Length silt(double load, double area, double kept, double density, double floor, double years) {
    return silt_depth(MassPerArea::from_value(load), m2(area), share(kept), Density::from_value(density),
                      m2(floor), share(years));
}

}  // namespace

TEST_CASE("water-quality volumes of the rules of two states", "[published]") {
    // Rv = 0.05 + 0.9 I, P 1 in: New Hampshire Env-Wq 1504.10; 0.2 in over the site at least: Maryland
    // manual, ch. 2. Recomputed: 10 ac of 40 % -> 14883 ft3; 25 mm, 1.5 ha, 60 % -> 221.25 m3; 25 mm, 1 ha,
    // 10 % -> 35 m3.
    CHECK_THAT(quality(inches(1), 10.0 * acre, 0.4), is_near(ft3(14883), 1e-9));
    CHECK_THAT(quality(mm(25), m2(1.5e4), 0.6), is_near(m3(221.25), 1e-12));
    CHECK_THAT(quality(mm(25), m2(1e4), 0.1), is_near(m3(35)));
    CHECK_THAT(quality(inches(1), acre, 0.1, inches(0.2)), is_near(Volume(inches(0.2) * acre)));
    CHECK_THAT(quality(inches(1), acre, 0.2, inches(0.2)), is_near(Volume(inches(0.23) * acre)));
    CHECK_THROWS_MATCHES(quality(m(0), acre, 0.5), Refused, refuses_domain("rain depth (0 m)"));
    CHECK_THROWS_MATCHES(quality(m(25), acre, 0.5), Refused, refuses_domain("is it in mm?"));
    CHECK_THROWS_MATCHES(quality(mm(25), m2(0), 0.5), Refused, refuses_domain("area (0 m2)"));
    CHECK_THROWS_MATCHES(quality(mm(25), acre, 1.5), Refused, refuses_domain("impervious share (1.5)"));
    CHECK_THROWS_MATCHES(quality(mm(25), acre, 0.5, m(-1)), Refused, refuses_domain("least depth (-1 m)"));
    CHECK_THROWS_MATCHES(water_quality_volume(mm(25), acre, share(1), share(0.2), share(0.9), m(0)), Refused,
                         refuses_domain("volumetric runoff coefficient (1.1)"));
}

TEST_CASE("silt grows by the year, and the years are its inverse") {
    // 60 g/m2 a year from 5000 m2, 80 % kept, 1200 kg/m3 on 20 m2: 10 mm a year (arithmetic).
    CHECK_THAT(silt(0.06, 5000, 0.8, 1200, 20, 1), is_near(mm(10)));
    CHECK_THAT(silt(0.06, 5000, 0.8, 1200, 20, 2.5), is_near(mm(25)));
    CHECK_THAT(silt_years(MassPerArea::from_value(0.06), m2(5000), share(0.8), Density::from_value(1200),
                          m2(20), mm(75)),
               is_near(share(7.5)));
    Random random;
    for (int i = 0; i < 100; ++i) {
        const double load = random.between(0.01, 0.2);
        const double years = random.between(0, 30);
        const Length depth = silt(load, 3000, 0.7, 1300, 30, years);
        REQUIRE_THAT(silt_years(MassPerArea::from_value(load), m2(3000), share(0.7),
                                Density::from_value(1300), m2(30), depth),
                     is_near(share(years), 1e-12));
    }
    CHECK_THROWS_MATCHES(silt(0, 1, 1, 1, 1, 1), Refused, refuses_domain("yearly load"));
    CHECK_THROWS_MATCHES(silt(1, 0, 1, 1, 1, 1), Refused, refuses_domain("drained area (0 m2)"));
    CHECK_THROWS_MATCHES(silt(1, 1, 1.2, 1, 1, 1), Refused, refuses_domain("share kept (1.2)"));
    CHECK_THROWS_MATCHES(silt(1, 1, 1, 0, 1, 1), Refused, refuses_domain("silt density"));
    CHECK_THROWS_MATCHES(silt(1, 1, 1, 1, 0, 1), Refused, refuses_domain("floor area (0 m2)"));
    CHECK_THROWS_MATCHES(silt(1, 1, 1, 1, 1, -1), Refused, refuses_domain("years (-1)"));
}

TEST_CASE("the release of the undeveloped site", "[published]") {
    // C i A with C 0.315, 50 mm/h, 17.55 ha: 0.767812500 m3/s (math).
    const RainTable rain = {{minutes(30), mm_per_h(50)}, {minutes(60), mm_per_h(30)}};
    CHECK_THAT(greenfield_rational(rain, share(0.315), m2(17.55e4), minutes(30), share(1)),
               is_near(m3_per_s(0.7678125)));
    CHECK_THAT(greenfield_rational(rain, share(0.315), m2(17.55e4), minutes(30), share(0.8)),
               is_near(m3_per_s(0.61425)));
    // USDA TR-55 (1986), Example 4-1: 345 ft3/s.
    const auto nrcs = [](double permitted) {
        return greenfield_nrcs(m2(0.39 * 1609.344 * 1609.344), inches(6), share(75), hours(1.53),
                               RainType::type_ii, share(0), share(permitted));
    };
    CHECK_THAT(nrcs(1), is_near(cfs(345), 0.01));
    CHECK_THAT(nrcs(0.5), is_near(Flow(nrcs(1) / 2.0)));
    CHECK_THROWS_MATCHES(nrcs(0), Refused, refuses_domain("permitted share (0)"));
    CHECK_THROWS_MATCHES(nrcs(1.1), Refused, refuses_domain("permitted share (1.1)"));
    CHECK_THROWS_MATCHES(greenfield_rational(rain, share(0), m2(1), minutes(30), share(1)), Refused,
                         refuses_domain("coefficient (0)"));
    CHECK_THROWS_MATCHES(greenfield_rational(rain, share(0.3), m2(1), minutes(10), share(1)), Refused,
                         has_no_answer("outside the rain table"));
}

}  // namespace undercroft::tests
