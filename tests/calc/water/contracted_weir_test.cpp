// Weirs by Kindsvater and Carter, and drowned weirs.
#include "calc/water/contracted_weir.hpp"

#include "calc/water/outlet.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

TEST_CASE("suppressed and contracted weirs by Kindsvater and Carter", "[published]") {
    // Test suite of a general fluids library, after Kindsvater and Carter (1957): Ce = 0.602 + 0.075 h/P,
    // K_b = -1 mm, g = 9.80665: 0.6415603 m3/s. The US table used here prints 3.220 and 0.4000: 0.1 %.
    CHECK_THAT(contracted_weir_flow(m(2), m(0.3), m(2), m(0.4)), is_near(m3_per_s(0.6415603), 1e-3));
    // Recomputed from USBR Water Measurement Manual, ch. 7 (coefficients seen), kb = -0.003, 0.0142, 0.0139
    // ft.
    CHECK_THAT(contracted_weir_flow(ft(3), ft(0.8), ft(3), ft(2)), is_near(cfs(7.289147880), 2e-5));
    CHECK_THAT(contracted_weir_flow(ft(4), ft(1), ft(5), ft(2)), is_near(cfs(13.337967320), 2e-4));
    CHECK_THAT(contracted_weir_flow(ft(3), ft(0.75), ft(4), ft(1.5)), is_near(cfs(6.469192381), 2e-4));
    // ISO 1438's own coefficients (from memory) are another print of the same tests: within 0.3 %.
    CHECK_THAT(contracted_weir_flow(m(0.8), m(0.2), m(1), m(0.4)), is_near(m3_per_s(0.132376258), 3e-3));
    CHECK_THAT(contracted_weir_flow(m(0.4), m(0.2), m(1), m(0.4)), is_near(m3_per_s(0.063642508), 3e-3));
}

TEST_CASE("a narrow weir passes more than Francis says, a wide one the same") {
    // Kindsvater and Carter against 1.84 (L - 0.2 h) h^1.5: a crest of 0.15 m gives 32 % more at h = 0.20 m
    // (g = 9.81, chamber 1.2 m wide, P 0.72 m, math), one of 3 m within 5 % the same in Francis's range.
    const double narrow = 1.84 * (0.15 - 0.2 * 0.2) * std::pow(0.2, 1.5);
    CHECK(contracted_weir_flow(m(0.15), m(0.2), m(1.2), m(0.72)).value() / narrow ==
          Approx(1.32).margin(0.015));
    for (const double head : {0.1, 0.3, 0.5}) {
        const Flow francis = weir_flow(m(3), m(head), WeirCoefficient::from_value(1.84), count(2));
        CHECK_THAT(contracted_weir_flow(m(3), m(head), m(9), m(2)), is_near(francis, 0.05));
    }
}

TEST_CASE("the flow of such a weir grows with head, crest and channel's narrowing, and starts from nothing") {
    CHECK(contracted_weir_flow(m(1), m(0), m(2), m(1)) == m3_per_s(0));
    Random random;
    for (int i = 0; i < 300; ++i) {
        const double crest = random.between(0.15, 3);
        const double channel = crest * random.between(1, 6);
        const double height = random.between(0.1, 2);
        const double head = random.between(0.03, 2 * height / 1.01);
        const Flow flow = contracted_weir_flow(m(crest), m(std::max(head, 0.03)), m(channel), m(height));
        REQUIRE(contracted_weir_flow(m(crest), m(1.01 * std::max(head, 0.03)), m(channel), m(height)) > flow);
        REQUIRE(flow > m3_per_s(0));
    }
    // Below a fifth of the channel its width no longer counts.
    CHECK(contracted_weir_flow(m(0.2), m(0.2), m(1), m(0.5)) ==
          contracted_weir_flow(m(0.2), m(0.2), m(7), m(0.5)));
}

TEST_CASE("weirs outside the tests of Kindsvater and Carter are refused") {
    const auto flow = [](double l, double h, double b, double p) {
        return contracted_weir_flow(m(l), m(h), m(b), m(p));
    };
    CHECK_NOTHROW(flow(0.15, 0.03, 0.15, 0.1));
    CHECK_NOTHROW(flow(1, 0.2, 1, 0.1));
    CHECK_THROWS_MATCHES(flow(0.14, 0.1, 1, 1), Refused,
                         refuses_domain("crest length (0.14 m) must be at least 0.15 m"));
    CHECK_THROWS_MATCHES(flow(1, 0.1, 0.9, 1), Refused,
                         refuses_domain("channel width (0.9 m) must be at least the crest length (1 m)"));
    CHECK_THROWS_MATCHES(flow(1, 0.1, 2, 0.09), Refused,
                         refuses_domain("crest height (0.09 m) must be at least 0.1 m"));
    CHECK_THROWS_MATCHES(flow(1, 0.02, 2, 1), Refused,
                         refuses_domain("head (0.02 m) must be at least 0.03 m"));
    CHECK_THROWS_MATCHES(flow(1, -0.1, 2, 1), Refused, refuses_domain("head (-0.1 m)"));
    CHECK_THROWS_MATCHES(flow(1, 1.01, 2, 0.5), Refused,
                         refuses_domain("head (1.01 m) must be at most twice the crest height (1 m)"));
    CHECK_THROWS_MATCHES(flow(std::nan(""), 0.1, 2, 0.5), Refused, refuses_domain("crest length"));
}

TEST_CASE("a drowned weir by Villemonte", "[published]") {
    // FHWA HEC-22, 3rd ed. (2009), eq. 8-21 (1 - (H2/H1)^n)^0.385; the factors are that formula's (math).
    struct Row {
        double ratio, rectangular, notch;
    };
    for (const Row& row :
         {Row{0.1, 0.9877048, 0.9987813}, Row{0.3, 0.9332243, 0.9807258}, Row{0.5, 0.8453860, 0.9278426},
          Row{0.8, 0.6163070, 0.7210020}, Row{0.95, 0.3670941, 0.4425621}}) {
        CAPTURE(row.ratio);
        CHECK_THAT(drowned_weir_flow(m3_per_s(1), m(2), m(2 * row.ratio), share(1.5)),
                   is_near(m3_per_s(row.rectangular), 1e-6));
        CHECK_THAT(drowned_weir_flow(m3_per_s(1), m(2), m(2 * row.ratio), share(2.5)),
                   is_near(m3_per_s(row.notch), 1e-6));
    }
    CHECK(drowned_weir_flow(m3_per_s(1), m(2), m(2), share(1.5)) == m3_per_s(0));
    CHECK(drowned_weir_flow(m3_per_s(1), m(2), m(0), share(1.5)) == m3_per_s(1));
    CHECK(drowned_weir_flow(m3_per_s(1), m(2), m(-3), share(1.5)) == m3_per_s(1));
    CHECK_THROWS_MATCHES(drowned_weir_flow(m3_per_s(1), m(2), m(2.1), share(1.5)), Refused,
                         refuses_domain("tailwater head (2.1 m) must be at most the head (2 m)"));
    CHECK_THROWS_MATCHES(drowned_weir_flow(m3_per_s(1), m(0), m(0), share(1.5)), Refused,
                         refuses_domain("head (0 m)"));
    CHECK_THROWS_MATCHES(drowned_weir_flow(m3_per_s(-1), m(1), m(0), share(1.5)), Refused,
                         refuses_domain("free flow"));
    CHECK_THROWS_MATCHES(drowned_weir_flow(m3_per_s(1), m(1), m(0), share(0.5)), Refused,
                         refuses_domain("exponent (0.5)"));
}

}  // namespace undercroft::tests
