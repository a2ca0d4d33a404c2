// Of several runs the one that stands for all.
#include "calc/ensemble.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

TEST_CASE("the run next above the mean represents an ensemble") {
    std::vector<Quantity> depths;
    for (const double depth : {0.71, 0.80, 0.66, 0.93, 0.77, 0.69, 0.85, 0.74, 0.62, 0.79})
        depths.push_back(as_quantity(m(depth)));
    CHECK(mean(depths).value == Approx(0.756));
    CHECK(next_above_mean(depths).value == Approx(0.77));
    CHECK(next_above_mean(depths).dimension == dimension_of<Length>());
    // One run, or all alike, stand for themselves; the last digit of the mean does not matter.
    CHECK(next_above_mean({as_quantity(m(0.1))}).value == 0.1);
    CHECK(next_above_mean(std::vector<Quantity>(10, as_quantity(m(0.1)))).value == 0.1);
    // In any units.
    CHECK(next_above_mean({as_quantity(ft(1)), as_quantity(m(1)), as_quantity(inches(30))}).value ==
          Approx(0.762));
    CHECK_THROWS_AS(mean({}), Refused);
    CHECK_THROWS_MATCHES(next_above_mean({as_quantity(m(1)), as_quantity(s(1))}), Refused, refuses_value(""));
}

}  // namespace undercroft::tests
