// Openings of a separation fabric.
#include "calc/ground/fabric.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

double factor(double uniformity) {
    return number(fabric_factor(share(uniformity)));
}

}  // namespace

TEST_CASE("factor and opening are those of the filter criterion", "[published]") {
    // FHWA NHI-07-092 (from memory): B by uniformity, and the greatest opening beside a soil of d85 = 0.30
    // mm.
    const double rows[][3] = {{1.5, 1, 0.30}, {2, 1, 0.30},      {3, 1.5, 0.45}, {4, 2, 0.60},
                              {5, 1.6, 0.48}, {6, 1.3333, 0.40}, {8, 1, 0.30},   {10, 1, 0.30}};
    for (const auto& [uniformity, b, opening] : rows) {
        CAPTURE(uniformity);
        CHECK(std::abs(factor(uniformity) - b) <= 5e-5);
        CHECK_THAT(fabric_opening(mm(0.30), fabric_factor(share(uniformity))), is_near(mm(opening), 1e-12));
    }
}

TEST_CASE("factor of the criterion is 1 at both ends and 2 between, without a jump") {
    for (int hundredths = 100; hundredths < 2000; ++hundredths) {
        const double uniformity = 0.01 * hundredths;
        CAPTURE(uniformity);
        REQUIRE(factor(uniformity) >= 1);
        REQUIRE(factor(uniformity) <= 2);
        REQUIRE(std::abs(factor(uniformity + 0.01) - factor(uniformity)) <= 0.0051);
        if (uniformity > 2 && uniformity < 3.98) REQUIRE(factor(uniformity + 0.01) > factor(uniformity));
        if (uniformity > 4 && uniformity < 7.98) REQUIRE(factor(uniformity + 0.01) < factor(uniformity));
    }
    CHECK(factor(1) == 1);
    CHECK(factor(1e6) == 1);
}

TEST_CASE("opening grows with the soil, up to what separation allows", "[published]") {
    // AASHTO M 288 (from memory): separation, O95 at most 0.60 mm.
    CHECK(fabric_opening(mm(0.59), share(1)) == mm(0.59));
    CHECK(fabric_opening(mm(0.61), share(1)) == mm(0.60));
    CHECK(fabric_opening(mm(75), share(2)) == mm(0.60));
    // Silts and clays: non-woven B = 1.8.
    CHECK_THAT(fabric_opening(mm(0.1), share(1.8)), is_near(mm(0.18)));
    for (int hundredths = 5; hundredths < 29; ++hundredths) {
        const double d85 = 0.01 * hundredths;
        REQUIRE(fabric_opening(mm(d85 + 0.01), share(1.5)) > fabric_opening(mm(d85), share(1.5)));
        REQUIRE(fabric_opening(mm(d85), share(1.6)) > fabric_opening(mm(d85), share(1.5)));
    }
    CHECK_THAT(fabric_opening(inches(0.01), share(2)), is_near(mm(0.508)));
}

TEST_CASE("soils and factors beyond the criterion are refused") {
    CHECK_THROWS_MATCHES(fabric_opening(mm(0), share(1)), Refused,
                         refuses_domain("d85 (0 m) must be above 0"));
    CHECK_NOTHROW(fabric_opening(mm(75) * (1 + 1e-12), share(1)));
    CHECK_THROWS_MATCHES(
        fabric_opening(mm(75.1), share(1)), Refused,
        refuses_domain("must be at most 75 mm, the coarsest soil of ASTM D2487: is it in mm?"));
    CHECK_THROWS_MATCHES(fabric_opening(mm(1), share(0)), Refused,
                         refuses_domain("factor (0) must be above 0"));
    CHECK_NOTHROW(fabric_opening(mm(1), share(2 + 1e-12)));
    CHECK_THROWS_MATCHES(fabric_opening(mm(1), share(2.01)), Refused,
                         refuses_domain("factor (2.01) must be at most 2, the greatest of the criterion"));
    CHECK_NOTHROW(factor(1 - 1e-12));
    CHECK_THROWS_MATCHES(factor(0.99), Refused,
                         refuses_domain("uniformity (0.99) must be at least 1: D60 is not finer than D10"));
    CHECK_THROWS_MATCHES(factor(INFINITY), Refused, refuses_domain("uniformity"));
}

}  // namespace undercroft::tests
