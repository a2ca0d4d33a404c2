// The units that a unit cell offers.
#include "sheets/builder/unit_choices.hpp"

#include <set>

#include "tests/builder/made.hpp"
#include "units/unit.hpp"

namespace undercroft::tests {

using sheets::unit_choices;
using Words = std::vector<std::string>;

TEST_CASE("every unit is offered with others of its own dimension only, and none twice") {
    for (const UnitRow& row : unit_table()) {
        const std::string unit(row.symbol);
        CAPTURE(unit);
        const Words choices = unit_choices(unit);
        CHECK(std::set<std::string>(choices.begin(), choices.end()).size() == choices.size());
        CHECK(std::count(choices.begin(), choices.end(), unit) == 1);
        for (const std::string& choice : choices) {
            CAPTURE(choice);
            CHECK(parse_unit(choice).dimension == parse_unit(unit).dimension);
        }
    }
}

TEST_CASE("the usual units of each dimension of the trade are offered, in one order") {
    const Words heads = {"m",    "m2",  "m3",    "min",   "L/s",  "mm/h", "deg",  "kg",    "kN",
                         "kN/m", "kPa", "kg/m3", "kN/m3", "g/m2", "%",    "each", "each/h"};
    for (const std::string& head : heads) {
        CAPTURE(head);
        const Words choices = unit_choices(head);
        CHECK(choices.front() == head);
        for (const std::string& choice : choices) {
            CHECK(unit_choices(choice) == choices);  // whichever of them stands there
            CHECK(parse_unit(choice).dimension == parse_unit(head).dimension);
        }
    }
    CHECK(unit_choices("ft") == Words{"m", "mm", "cm", "ft", "in"});
    CHECK(unit_choices("each") == Words{"each"});
}

TEST_CASE("a unit that is not usual stands first, and one of no usual dimension alone") {
    CHECK(unit_choices("mil") == Words{"mil", "m", "mm", "cm", "ft", "in"});
    CHECK(unit_choices("AUD/m3") == Words{"AUD/m3"});
    CHECK_THROWS_WITH(unit_choices("fathomish"), Catch::Contains("'fathomish' is no unit"));
}

}  // namespace undercroft::tests
