// What a failed comparison of quantities prints.
#include "tests/support/near.hpp"

#include "tests/support/amounts.hpp"

namespace undercroft::tests {

TEST_CASE("a failed comparison prints enough digits to see the difference") {
    CHECK(is_near(m(0.3), 1e-12).describe() == "is within 3e-13 of 0.3 (SI), 0.3 m");
    CHECK(is_within(mm(0.0123), mm(1e-6)).describe() == "is within 1e-09 of 1.23e-05 (SI), 1.23e-05 m");
    CHECK(Catch::Detail::stringify(m(1.0000000000000002)) == "1.0000000000000002 (SI), 1 m");
    CHECK(Catch::Detail::stringify(Share(0.1) + Share(0.2)) == "0.30000000000000004 (SI), 0.3");
}

}  // namespace undercroft::tests
