// Settlement, at once and in the long run.
#include "calc/ground/settlement.hpp"

#include "calc/ground/elastic_stress.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

constexpr auto centre = SettlementPoint::centre;
constexpr auto corner = SettlementPoint::corner;
constexpr auto rigid = SettlementPoint::rigid;

}  // namespace

TEST_CASE("influence factors of a flexible rectangle are the textbooks'", "[published]") {
    // Textbook table of centre influences (from memory): 1.12 square, 1.53 at 2.
    const auto influence = [](double m_) {
        return elastic_settlement(kpa(1), m(1), m(m_), kpa(1), share(0), centre) / m(1);
    };
    CHECK(influence(1) == Approx(1.12).margin(0.005));
    CHECK(influence(1) == Approx(1.122200).margin(5e-7));
    CHECK(influence(2) == Approx(1.53).margin(0.005));
    CHECK(influence(2) == Approx(1.531745).margin(5e-7));
    // 150 kPa on 2 m, E 10 MPa, v 0.3: 27.3 mm for an influence of 1 (public page).
    CHECK_THAT(elastic_settlement(kpa(150), m(2), m(2), kpa(10000), share(0.3), centre) / influence(1),
               is_near(mm(27.3), 1e-12));
    CHECK_THAT(elastic_settlement(kpa(150), m(2), m(2), kpa(10000), share(0.3), corner),
               is_near(elastic_settlement(kpa(150), m(2), m(2), kpa(10000), share(0.3), centre) / 2.0));
}

TEST_CASE("immediate settlement is the integral of the point load's (GSL QAGS)") {
    // Boussinesq: a point load settles the surface at a distance r by Q (1 - v^2)/(pi E r); over a rectangle
    // the corner's is the integral of it, here in polar coordinates about the corner.
    Random random;
    for (int i = 0; i < 50; ++i) {
        const double b = random.between(0.5, 5);
        const double l = random.between(b, 20);
        const double v = random.between(0, 0.5);
        const double split = std::atan2(b, l);
        const double half_pi = std::acos(0.0);
        const double path = integral([&](double a) { return l / std::cos(a); }, 0, split) +
                            integral([&](double a) { return b / std::sin(a); }, split, half_pi);
        const double expected = 100.0 * (1 - v * v) / (std::acos(-1.0) * 20000) * path;
        REQUIRE_THAT(elastic_settlement(kpa(100), m(b), m(l), kpa(20000), share(v), corner),
                     is_near(m(expected), 1e-9));
        const Length rigid_one = elastic_settlement(kpa(100), m(b), m(l), kpa(20000), share(v), rigid);
        REQUIRE(rigid_one < elastic_settlement(kpa(100), m(b), m(l), kpa(20000), share(v), centre));
        REQUIRE(rigid_one > elastic_settlement(kpa(100), m(b), m(l), kpa(20000), share(v), corner));
    }
}

TEST_CASE("a rigid rectangle has the published stiffness", "[published]") {
    // NIST GCR 12-917-21 (2012), Tables 2-2a and 2-2b, as recomputed in a public engineering library: 2 x 4
    // m, E 30000 kPa, v 0.3: 112311.39 kN/m, so 7.6217 mm under 856 kN.
    const Pressure pressure = kn(856) / (m(2) * m(4));
    const Length settled = elastic_settlement(pressure, m(2), m(4), kpa(30000), share(0.3), rigid);
    CHECK_THAT(kn(856) / settled, is_near(LineLoad::from_value(112311391.88856645), 1e-10));
    CHECK_THAT(settled, is_within(mm(7.621667), mm(5e-7)));
}

TEST_CASE("consolidation of a clay is the manual's example", "[published]") {
    // FHWA GEC No. 13 (2017), vol. 1, sec. 4.3.1: 15 ft of clay, Cc 0.25, e0 0.7, 432 psf before, 2500 psf
    // added: 1.83 ft.
    const ClayLayer clay{ft(15), share(0.7), share(0.25), share(0.05), psf(432), psf(432)};
    CHECK_THAT(consolidation_settlement(clay, psf(2500)), is_within(ft(1.83), ft(0.005)));
    CHECK_THAT(consolidation_settlement(clay, psf(2500)), is_within(ft(1.834589), ft(5e-7)));
    // Public page: 1 m, e0 1, Cc 0.3, 100 to 200 kPa: 0.045 m.
    CHECK_THAT(
        consolidation_settlement({m(1), share(1), share(0.3), share(0.03), kpa(100), kpa(100)}, kpa(100)),
        is_within(m(0.045), m(5e-4)));
}

TEST_CASE("clay that has borne more settles by its recompression as far as that, and goes on beyond") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const double before = random.between(20, 200);
        const double past = before * random.between(1, 4);
        const double added = random.between(0, 500);
        const double cc = random.between(0.1, 0.6);
        const double cr = cc * random.between(0.05, 1);
        const ClayLayer clay{m(random.between(0.5, 10)),
                             share(random.between(0.4, 2)),
                             share(cc),
                             share(cr),
                             kpa(before),
                             kpa(past)};
        const Length settled = consolidation_settlement(clay, kpa(added));
        // As the integral of strain over stress.
        const auto strain = [&](double stress) {
            return (stress < past ? cr : cc) / (std::log(10.0) * stress * (1 + number(clay.void_ratio)));
        };
        const double end = before + added;
        const double knee = std::clamp(past, before, end);
        const double expected =
            clay.thickness.value() * (integral(strain, before, knee) + integral(strain, knee, end));
        REQUIRE_THAT(settled, is_within(m(expected), m(1e-9)));
    }
    const ClayLayer clay{m(1), share(1), share(0.3), share(0.03), kpa(100), kpa(150)};
    CHECK(consolidation_settlement(clay, kpa(0)) == m(0));
}

TEST_CASE("the degree of consolidation is the published one", "[published]") {
    // Test file of a public library: cv 100 m2/yr, 1e4 s, path 0.5 m: 40.2 %. T = 0.197 and 0.848 for 50 and
    // 90 % (textbooks, from memory).
    using Coefficient = decltype(Area() / Time());
    const Coefficient one = m2(1) / s(1);
    CHECK(number(consolidation_degree(100.0 / (365.25 * 86400) * one, s(1e4), m(0.5))) ==
          Approx(0.402).margin(0.0005));
    CHECK(number(consolidation_degree(one, s(0.197), m(1))) == Approx(0.50).margin(0.0005));
    CHECK(number(consolidation_degree(one, s(0.848), m(1))) == Approx(0.90).margin(0.0005));
    CHECK(consolidation_degree(one, s(0), m(1)) == share(0));
    CHECK(number(consolidation_degree(one, s(50), m(1))) == Approx(1).epsilon(1e-12));
    // The parabola of early times joins the series without a step, and nothing ever turns back.
    CHECK(number(consolidation_degree(one, s(0.02 - 1e-9), m(1))) ==
          Approx(number(consolidation_degree(one, s(0.02), m(1)))).epsilon(1e-6));
    double last = 0;
    for (double t = 0.001; t < 3; t *= 1.05) {
        const double now = number(consolidation_degree(one, s(t), m(1)));
        REQUIRE(now > last);
        last = now;
    }
}

TEST_CASE("settlement of sand is the manual's example", "[published]") {
    // FHWA GEC No. 6 (FHWA-SA-02-054), App. B, Example 1: 21, 25, 28 and 30 mm, from layers rounded one by
    // one.
    const SandLayers layers = {{m(2.1), m(1.05), kpa(65.7), share(65)},
                               {m(4.7), m(4.45), kpa(132), share(120)},
                               {m(3.0), m(8.3), kpa(193), share(102)},
                               {m(3.0), m(11.3), kpa(222), share(110)}};
    const double rows[][3] = {{240, 21, 21.454}, {290, 25, 24.392}, {335, 28, 26.822}, {380, 30, 29.084}};
    for (const auto& [pressure, published, exact] : rows) {
        CAPTURE(pressure);
        const Length settled = sand_settlement(kpa(pressure), m(3), false, layers);
        CHECK_THAT(settled, is_within(mm(published), mm(1.4)));
        CHECK_THAT(settled, is_within(mm(exact), mm(5.1e-4)));
        CHECK(sand_settlement(kpa(pressure), m(3), true, layers) > settled);
    }
}

TEST_CASE("a bed lighter than the ground it replaces presses less than nothing") {
    // By hand: 35.6 kPa in place of 2 m at 18 kN/m3 leave -0.4 kPa.
    CHECK_THAT(net_pressure(kpa(35.6), kn_per_m3(18), m(2)), is_within(kpa(-0.4), kpa(1e-9)));
    CHECK_THROWS_MATCHES(net_pressure(kpa(-1), kn_per_m3(18), m(2)), Refused, refuses_domain("pressure"));
    CHECK_THROWS_MATCHES(net_pressure(kpa(1), kn_per_m3(0), m(2)), Refused, refuses_domain("unit weight"));
    CHECK_THROWS_MATCHES(net_pressure(kpa(1), kn_per_m3(18), m(-2)), Refused, refuses_domain("depth"));
}

TEST_CASE("ground that cannot be is refused by settlement") {
    CHECK_THROWS_MATCHES(elastic_settlement(kpa(0), m(1), m(1), kpa(1), share(0), centre), Refused,
                         refuses_domain("pressure"));
    CHECK_THROWS_MATCHES(elastic_settlement(kpa(1), m(0), m(1), kpa(1), share(0), centre), Refused,
                         refuses_domain("width"));
    CHECK_THROWS_MATCHES(elastic_settlement(kpa(1), m(2), m(1), kpa(1), share(0), centre), Refused,
                         refuses_domain("length"));
    CHECK_THROWS_MATCHES(elastic_settlement(kpa(1), m(1), m(1), kpa(0), share(0), centre), Refused,
                         refuses_domain("modulus"));
    CHECK_THROWS_MATCHES(elastic_settlement(kpa(1), m(1), m(1), kpa(1), share(0.51), centre), Refused,
                         refuses_domain("Poisson"));
    const auto with = [](auto change) {
        ClayLayer clay{m(1), share(1), share(0.3), share(0.03), kpa(100), kpa(150)};
        change(clay);
        return consolidation_settlement(clay, kpa(10));
    };
    CHECK_THROWS_MATCHES(with([](ClayLayer& c) { c.thickness = m(0); }), Refused,
                         refuses_domain("thickness"));
    CHECK_THROWS_MATCHES(with([](ClayLayer& c) { c.void_ratio = share(0); }), Refused,
                         refuses_domain("void ratio"));
    CHECK_THROWS_MATCHES(with([](ClayLayer& c) { c.compression = share(0); }), Refused,
                         refuses_domain("compression index"));
    CHECK_THROWS_MATCHES(with([](ClayLayer& c) { c.recompression = share(0.4); }), Refused,
                         refuses_domain("must be at most the compression index"));
    CHECK_THROWS_MATCHES(with([](ClayLayer& c) { c.effective_stress = kpa(0); }), Refused,
                         refuses_domain("effective stress"));
    CHECK_THROWS_MATCHES(with([](ClayLayer& c) { c.preconsolidation = kpa(90); }), Refused,
                         refuses_domain("the ground has borne that much"));
    CHECK_THROWS_MATCHES(
        consolidation_settlement({m(1), share(1), share(0.3), share(0.03), kpa(100), kpa(150)}, kpa(-1)),
        Refused, refuses_domain("added stress"));
    using Coefficient = decltype(Area() / Time());
    CHECK_THROWS_MATCHES(consolidation_degree(Coefficient::from_value(0), s(1), m(1)), Refused,
                         refuses_domain("coefficient"));
    CHECK_THROWS_MATCHES(consolidation_degree(Coefficient::from_value(1), s(-1), m(1)), Refused,
                         refuses_domain("time"));
    CHECK_THROWS_MATCHES(consolidation_degree(Coefficient::from_value(1), s(1), m(0)), Refused,
                         refuses_domain("drainage path"));
    CHECK_THROWS_MATCHES(sand_settlement(kpa(1), m(1), false, {}), Refused, refuses_domain("no layer"));
    CHECK_THROWS_MATCHES(sand_settlement(kpa(1), m(1), false, {{m(0), m(1), kpa(1), share(1)}}), Refused,
                         refuses_domain("thickness"));
    CHECK_THROWS_MATCHES(sand_settlement(kpa(1), m(1), false, {{m(1), m(-1), kpa(1), share(1)}}), Refused,
                         refuses_domain("depth"));
    CHECK_THROWS_MATCHES(sand_settlement(kpa(1), m(1), false, {{m(1), m(1), kpa(0), share(1)}}), Refused,
                         refuses_domain("stress"));
    CHECK_THROWS_MATCHES(sand_settlement(kpa(1), m(1), false, {{m(1), m(1), kpa(1), share(0)}}), Refused,
                         refuses_domain("index"));
    CHECK_THROWS_MATCHES(sand_settlement(kpa(0), m(1), false, {{m(1), m(1), kpa(1), share(1)}}), Refused,
                         refuses_domain("pressure"));
    CHECK_THROWS_MATCHES(sand_settlement(kpa(1), m(0), false, {{m(1), m(1), kpa(1), share(1)}}), Refused,
                         refuses_domain("width"));
}

}  // namespace undercroft::tests
