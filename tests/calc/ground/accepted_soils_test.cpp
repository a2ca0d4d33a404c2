// Whether a soil is of a group that is accepted as fill.
#include "calc/ground/accepted_soils.hpp"

#include "calc/ground/soil_group.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {
const std::string granular = "A-1 A-2-4 A-2-5 A-3";
}  // namespace

TEST_CASE("a clayey gravel is not a granular fill, whatever its first letters are") {
    // AASHTO M 145 by hand: 80, 60 and 32 % passing, LL 62, PI 35 is A-2-7.
    const std::string clayey = soil_group({{80}, {60}, {32}, Percent{62}, Percent{35}});
    CHECK(clayey == "A-2-7");
    CHECK_FALSE(soil_accepted(clayey, granular));
    CHECK(soil_accepted(soil_group({{45}, {28}, {12}, Percent{20}, Percent{4}}), granular));
    CHECK(soil_accepted(soil_group({{90}, {60}, {8}, Plasticity::non_plastic, Plasticity::non_plastic}),
                        granular));
    CHECK(soil_accepted(soil_group({{80}, {50}, {30}, Percent{38}, Percent{9}}), granular));
    CHECK_FALSE(soil_accepted(soil_group({{100}, {80}, {58}, Percent{30}, Percent{10}}), granular));
}

TEST_CASE("a family stands for its subgroups, and a name for itself only") {
    CHECK(soil_accepted("A-1-b", "A-1"));
    CHECK(soil_accepted("A-2-7", "A-2"));
    CHECK(soil_accepted("A-7-5", "A-7"));
    CHECK_FALSE(soil_accepted("A-2-7", "A-2-6"));
    CHECK_FALSE(soil_accepted("A-4", "A-1, A-2; A-3"));
    CHECK(soil_accepted(" a-3 ", "A-1,A-3,"));
    CHECK(soil_accepted("A-6", "a-4;  a-6"));
}

TEST_CASE("names that are no groups, and an empty list, are refused") {
    CHECK_THROWS_MATCHES(soil_accepted("A-2", granular), Refused, refuses_value("group: 'A-2' is no group"));
    CHECK_THROWS_MATCHES(soil_accepted("SW", granular), Refused, refuses_value("group: 'SW'"));
    CHECK_THROWS_MATCHES(soil_accepted("A-3", "A-1 A-8"), Refused, refuses_value("accepted: 'A-8'"));
    CHECK_THROWS_MATCHES(soil_accepted("A-3", "A-"), Refused, refuses_value("accepted: 'A-'"));
    CHECK_THROWS_MATCHES(soil_accepted("A-3", "A"), Refused, refuses_value("accepted: 'A'"));
    CHECK_THROWS_MATCHES(soil_accepted("A-3", " ; "), Refused,
                         refuses_domain("list of accepted groups is empty"));
    CHECK_THROWS_MATCHES(soil_accepted("", granular), Refused, refuses_value("group: ''"));
}

}  // namespace undercroft::tests
