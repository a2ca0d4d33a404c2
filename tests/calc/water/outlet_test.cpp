// Orifices and weirs.
#include "calc/water/outlet.hpp"

#include <gsl/gsl_sf_ellint.h>

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

WeirCoefficient si(double value) {
    return WeirCoefficient::from_value(value);
}
/// ft^0.5/s
WeirCoefficient us(double value) {
    return si(value * std::sqrt(0.3048));
}

}  // namespace

TEST_CASE("orifice constants of HEC-22, and a textbook orifice", "[published]") {
    // FHWA HEC-22: Q = K D^2 sqrt(h), K = 3.78 in feet and 2.09 in metres for C = 0.60 (from memory).
    CHECK_THAT(orifice_flow(ft(1), ft(1), share(0.6)), is_within(cfs(3.78), cfs(0.005)));
    CHECK_THAT(orifice_flow(m(1), m(1), share(0.6)), is_within(m3_per_s(2.09), m3_per_s(0.005)));
    // Choudhary and Om Prakash, Fluid Mechanics, Ex. 6.7 (inputs and formula seen; g = 9.81 there): 0.85 L/s.
    CHECK_THAT(orifice_flow(m(0.020), m(1), share(0.61082886)), is_near(m3_per_s(0.85e-3), 2e-4));
}

TEST_CASE("the diameter of an orifice is the inverse of its flow") {
    Random random;
    for (int i = 0; i < 500; ++i) {
        const Length diameter = m(random.between(0.005, 1.5));
        const Length head = diameter * random.between(0.5, 10);
        const Share c = share(random.between(0.3, 1));
        const Flow flow = orifice_flow(diameter, head, c);
        REQUIRE_THAT(orifice_diameter(flow, head, c), is_near(diameter, 1e-13));
        REQUIRE_THAT(orifice_flow(diameter, 4.0 * head, c), is_near(Flow(2.0 * flow), 1e-13));
    }
    // A part-full orifice has another law: 0.1 m wide, full from 0.05 m above its centre.
    CHECK_NOTHROW(orifice_flow(m(0.1), m(0.05), share(0.6)));
    CHECK_THROWS_MATCHES(orifice_flow(m(0.1), m(0.0499), share(0.6)), Refused,
                         refuses_domain("head (0.0499 m) must be at least half of the diameter (0.05 m)"));
    CHECK_THROWS_MATCHES(orifice_flow(m(0.1), m(0), share(0.6)), Refused, refuses_domain("UC.OUTLET.RATING"));
    CHECK_THROWS_MATCHES(
        orifice_diameter(m3_per_s(0.1), m(0.02), share(0.6)), Refused,
        refuses_domain("head (0.02 m) must be at least half of the diameter that the flow needs"));
}

TEST_CASE("a part-full orifice is the sum of its strips (GSL QAGS, and GSL's elliptic integrals)") {
    // Strips dz of width 2 sqrt(z (D - z)), each under its own head h - z. In closed form Q(h)/Q(D) is
    // (1 - k^2 + k^4) E - (1 - k^2)(1 - k^2/2) K with k^2 = h/D: Bos, Discharge Measurement Structures
    // (1989), sec. 5.4 (from memory), halved so that it is 1 at the crown.
    const double diameter = 0.3;
    const Flow at_crown = orifice_flow(m(diameter), m(diameter / 2), share(0.6));
    const auto strips = [diameter](double h) {
        return integral([=](double z) { return 2 * std::sqrt(z * (diameter - z) * (h - z)); }, 0, h, 1e-9);
    };
    for (const double filled : {0.02, 0.1, 0.25, 0.5, 0.75, 0.9, 0.99, 0.999}) {
        CAPTURE(filled);
        const Flow flow = part_full_orifice_flow(m(diameter), m(filled * diameter), share(0.6));
        CHECK_THAT(flow, is_near(Flow(strips(filled * diameter) / strips(diameter) * at_crown), 1e-8));
        const double k2 = filled;
        const double e = gsl_sf_ellint_Ecomp(std::sqrt(k2), GSL_PREC_DOUBLE);
        const double k = gsl_sf_ellint_Kcomp(std::sqrt(k2), GSL_PREC_DOUBLE);
        const double closed = (1 - k2 + k2 * k2) * e - (1 - k2) * (1 - k2 / 2) * k;
        CHECK_THAT(flow, is_near(Flow(closed * at_crown), 1e-10));
    }
}

TEST_CASE("an orifice that fills up passes ever more, without a jump at its crown") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const Length diameter = m(random.between(0.02, 1));
        const auto flow = [&](double filled) {
            return part_full_orifice_flow(diameter, filled * diameter, share(0.6));
        };
        Flow before = m3_per_s(0);
        CHECK(flow(0) == before);
        for (double filled = 0.01; filled < 3; filled += 0.01) {
            REQUIRE(flow(filled) > before);
            before = flow(filled);
        }
        REQUIRE_THAT(flow(1 - 1e-12), is_near(flow(1), 1e-10));
        REQUIRE_THAT(flow(2.5), is_near(orifice_flow(diameter, 2.0 * diameter, share(0.6))));
    }
}

TEST_CASE("weirs of HEC-22, TR-55 and a textbook", "[published]") {
    // FHWA HEC-22: 1.84 SI and 3.33 US, with contractions L - 0.1 n h (from memory).
    CHECK_THAT(weir_flow(m(1), m(1), si(1.84), count(0)), is_near(m3_per_s(1.84)));
    CHECK_THAT(weir_flow(ft(10), ft(1), us(3.33), count(2)), is_near(cfs(3.33 * 9.8)));
    CHECK(us(3.33).value() == Approx(1.84).margin(0.005));
    // USDA TR-55 (1986), Examples 6-1 and 6-2 (from memory), 3.2 US: crests of 4.1 ft and 2.3 ft.
    CHECK_THAT(weir_flow(ft(4.133427), ft(5.7), us(3.2), count(0)), is_near(cfs(180), 1e-6));
    CHECK_THAT(weir_flow(ft(2.287527), ft(3.6), us(3.2), count(0)), is_near(cfs(50), 1e-6));
    CHECK_THAT(weir_flow(ft(2.3), ft(5.7), us(3.2), count(0)), is_within(cfs(100.159), cfs(0.0005)));
    CHECK_THAT(weir_flow(ft(8.215066), ft(2.1), us(3.2), count(0)), is_near(cfs(80), 1e-6));
    // Cengel and Cimbala, Fluid Mechanics, Example 13-10: suppressed weir of 5 m, H = 0.9 m, Cwd = 0.73255
    // (inputs seen, 9.24 m3/s from memory); C = Cwd 2/3 sqrt(2 g), g = 9.81.
    const WeirCoefficient rehbock = si(0.73255 * 2 / 3 * std::sqrt(2 * 9.81));
    CHECK_THAT(weir_flow(m(5), m(0.9), rehbock, count(0)), is_within(m3_per_s(9.24), m3_per_s(0.006)));
    CHECK_THAT(weir_flow(m(5), m(0.9), rehbock, count(0)), is_near(m3_per_s(9.2348380), 1e-7));
}

TEST_CASE("V-notch weirs", "[published]") {
    // FHWA HEC-22: 1.38 SI and 2.5 US times tan(theta/2) h^2.5 (from memory).
    CHECK_THAT(notch_flow(degrees(90), m(1), si(1.38)), is_near(m3_per_s(1.38)));
    CHECK_THAT(notch_flow(degrees(60), ft(1), us(2.5)), is_near(cfs(2.5 / std::sqrt(3.0))));
    CHECK(us(2.5).value() == Approx(1.38).margin(0.005));
    // USBR Water Measurement Manual, 90-degree notch: 0.4463 ft3/s at 0.5 ft by 2.49 h^2.48 (from memory).
    CHECK_THAT(notch_flow(degrees(90), ft(0.5), us(2.5)), is_near(cfs(0.4463186), 0.012));
}

TEST_CASE("weirs in limits: no head, contractions that take no more than they give") {
    CHECK(weir_flow(m(1), m(0), si(1.84), count(2)) == m3_per_s(0));
    CHECK(notch_flow(degrees(90), m(0), si(1.38)) == m3_per_s(0));
    Flow before = m3_per_s(0);
    for (double head = 0.01; head <= 1; head += 0.01) {
        const Flow flow = weir_flow(m(3), m(head), si(1.84), count(2));
        REQUIRE(flow > before);
        REQUIRE(flow < weir_flow(m(3), m(head), si(1.84), count(0)));
        before = flow;
    }
    // Francis's range, h <= L/3: with contractions only, to the last digit, in another unit too.
    CHECK_NOTHROW(weir_flow(m(3), m(1), si(1.84), count(2)));
    CHECK_NOTHROW(weir_flow(ft(3), ft(1) * (1 + 1e-12), si(1.84), count(1)));
    CHECK_NOTHROW(weir_flow(m(3), m(30), si(1.84), count(0)));
    for (const double n : {1., 2.})
        CHECK_THROWS_MATCHES(
            weir_flow(m(3), m(1.01), si(1.84), count(n)), Refused,
            refuses_domain("head (1.01 m) must be at most a third of the crest length (1 m)"));
    CHECK_THROWS_MATCHES(weir_flow(m(0.15), m(0.2), si(1.84), count(2)), Refused,
                         refuses_domain("the kind contracted, holds there"));
}

TEST_CASE("trapezoidal weirs: Cipolletti's, and the shapes between a crest and a notch", "[published]") {
    // USBR Water Measurement Manual, 3rd ed. (2001), ch. 7: Q = 3.367 L h^1.5 (from memory).
    CHECK_THAT(trapezoidal_weir_flow(ft(2), ft(0.5), share(0.25), us(3.367), count(2)),
               is_near(cfs(3.367 * 2 * std::pow(0.5, 1.5))));
    CHECK_THAT(trapezoidal_weir_flow(ft(4), ft(1), share(0.25), cipolletti_crest, count(2)),
               is_near(cfs(13.468), 1e-4));
    // Sides upright: Francis's weir.
    CHECK_THAT(trapezoidal_weir_flow(m(3), m(0.6), share(0), si(1.84), count(2)),
               is_near(weir_flow(m(3), m(0.6), si(1.84), count(2))));
    // A second formulation: the strips one by one, each sqrt(2 g y) deep below the surface.
    const double head = 0.4, slope = 0.6, crest = 1.5, c = 1.84;
    const auto strips = [&](double y) { return (crest + 2 * slope * (head - y)) * std::sqrt(y); };
    const double sum = integral(strips, 0, head, 1e-9);
    CHECK_THAT(trapezoidal_weir_flow(m(crest), m(head), share(slope), si(c), count(0)),
               is_near(m3_per_s(1.5 * c * sum), 1e-8));
}

TEST_CASE("trapezoidal weirs that are none are refused") {
    const auto flow = [](Length crest, Length head, double slope, double c, double n) {
        return trapezoidal_weir_flow(crest, head, share(slope), si(c), count(n));
    };
    CHECK(flow(m(1), m(0), 0.25, 1.86, 2) == m3_per_s(0));
    CHECK_NOTHROW(flow(m(3), m(1), 5, 1.86, 2));
    CHECK_THROWS_MATCHES(flow(m(0), m(1), 0.25, 1.86, 2), Refused, refuses_domain("crest length (0 m)"));
    CHECK_THROWS_MATCHES(flow(m(1), m(-0.1), 0.25, 1.86, 2), Refused, refuses_domain("head (-0.1 m)"));
    CHECK_THROWS_MATCHES(flow(m(3), m(1.01), 0.25, 1.86, 2), Refused,
                         refuses_domain("must be at most a third of the crest length (1 m)"));
    CHECK_THROWS_MATCHES(flow(m(3), m(1), 5.1, 1.86, 2), Refused,
                         refuses_domain("side slope (5.1) must be from 0 to 5"));
    CHECK_THROWS_MATCHES(flow(m(3), m(1), -0.1, 1.86, 2), Refused, refuses_domain("side slope (-0.1)"));
    CHECK_THROWS_MATCHES(flow(m(3), m(1), 0.25, 0, 2), Refused, refuses_domain("coefficient (0"));
    CHECK_THROWS_MATCHES(flow(m(3), m(1), 0.25, 1.86, 3), Refused,
                         refuses_domain("end contractions (3 each) must be 0, 1 or 2"));
}

TEST_CASE("outlets that are none are refused") {
    CHECK_THROWS_MATCHES(orifice_flow(m(0), m(1), share(0.6)), Refused, refuses_domain("diameter (0 m)"));
    CHECK_THROWS_MATCHES(orifice_flow(m(0.1), m(-1), share(0.6)), Refused, refuses_domain("head (-1 m)"));
    CHECK_THROWS_MATCHES(orifice_flow(m(0.1), m(1), share(60)), Refused, refuses_domain("coefficient (60)"));
    CHECK_THROWS_MATCHES(orifice_diameter(m3_per_s(0), m(1), share(0.6)), Refused, refuses_domain("flow (0"));
    CHECK_THROWS_MATCHES(orifice_diameter(m3_per_s(1), m(0), share(0.6)), Refused,
                         refuses_domain("head (0 m)"));
    CHECK_THROWS_MATCHES(part_full_orifice_flow(m(0.1), m(-0.1), share(0.6)), Refused,
                         refuses_domain("depth (-0.1 m)"));
    CHECK_THROWS_MATCHES(part_full_orifice_flow(m(0.1), m(0.05), share(0)), Refused,
                         refuses_domain("coefficient (0)"));
    CHECK_THROWS_MATCHES(weir_flow(m(0), m(1), si(1.84), count(0)), Refused, refuses_domain("crest length"));
    CHECK_THROWS_MATCHES(weir_flow(m(1), m(1), si(1.84), count(1.5)), Refused,
                         refuses_domain("end contractions (1.5 each) must be a whole number"));
    CHECK_THROWS_MATCHES(weir_flow(m(1), m(1), si(0), count(0)), Refused, refuses_domain("coefficient (0"));
    CHECK_THROWS_MATCHES(notch_flow(degrees(180), m(1), si(1.38)), Refused,
                         refuses_domain("less than 180 deg"));
    CHECK_THROWS_MATCHES(notch_flow(degrees(0), m(1), si(1.38)), Refused, refuses_domain("angle (0 deg)"));
}

}  // namespace undercroft::tests
