// Risers, and the lengths of pipe that they are cut from.
#include "calc/works/pipe_lengths.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

TEST_CASE("pieces are cut whole from lengths of pipe") {
    // By hand: five pieces of 1.07 m come out of 6 m, so 32 pieces need 7 lengths, 42 m, not 36.
    CHECK(stock_lengths(count(32), m(1.07), m(6)) == count(7));
    CHECK(stock_lengths(count(30), m(1.07), m(6)) == count(6));
    CHECK(stock_lengths(count(31), m(1.07), m(6)) == count(7));
    CHECK(stock_lengths(count(12), m(1.5), m(6)) == count(3));  // four to the length, exactly
    CHECK(stock_lengths(count(12), ft(1.5), ft(6)) == count(3));
    CHECK(stock_lengths(count(0), m(1), m(6)) == count(0));
    CHECK(stock_lengths(count(3), m(6), m(6)) == count(3));
    // 7.5 m from 3 m: two whole lengths each, and halves.
    CHECK(stock_lengths(count(3), m(7.5), m(3)) == count(8));
    CHECK_THROWS_MATCHES(stock_lengths(count(2.5), m(1), m(6)), Refused, refuses_domain("pieces"));
    CHECK_THROWS_MATCHES(stock_lengths(count(2), m(0), m(6)), Refused, refuses_domain("piece (0 m)"));
    CHECK_THROWS_MATCHES(stock_lengths(count(2), m(1), m(0)), Refused, refuses_domain("stock (0 m)"));
    CHECK_THROWS_MATCHES(stock_lengths(count(1000), m(10000), m(1)), Refused,
                         refuses_domain("a million lengths"));
}

TEST_CASE("lengths bought hold the pieces, and one fewer does not") {
    Random random;
    for (int i = 0; i < 500; ++i) {
        const double n = random.whole(1, 60);
        const double piece = random.between(0.2, 15);
        const double stock = random.between(1, 7);
        const double bought = number(stock_lengths(count(n), m(piece), m(stock)));
        REQUIRE(bought * stock >= n * piece * (1 - 1e-12));
        if (piece <= stock) {
            const double each_holds = std::floor(stock / piece + 1e-9);
            REQUIRE(bought * each_holds >= n);
            REQUIRE((bought - 1) * each_holds < n);
        }
    }
}

TEST_CASE("a riser reaches from the crown to the cover") {
    CHECK_THAT(riser_length(m(101.40), m(100.33), m(0), m(0)), is_near(m(1.07), 1e-9));
    CHECK_THAT(riser_length(m(101.40), m(100.33), m(0.15), m(0.08)), is_near(m(1.00), 1e-9));
    CHECK_THROWS_MATCHES(riser_length(m(100), m(101), m(0), m(0)), Refused,
                         refuses_domain("must be longer than 0, but is -1 m"));
    CHECK_THROWS_MATCHES(riser_length(m(101), m(100), m(-0.1), m(0)), Refused, refuses_domain("recess"));
    CHECK_THROWS_MATCHES(riser_length(m(101), m(100), m(0), m(-0.1)), Refused, refuses_domain("socket"));
}

}  // namespace undercroft::tests
