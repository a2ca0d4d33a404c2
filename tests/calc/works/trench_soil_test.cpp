// The soil type that counts for walls in groundwater.
#include "calc/works/trench_soil.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

TEST_CASE("soil in groundwater is type C, whatever it is when dry", "[published]") {
    // 29 CFR 1926 Subpart P, Appendix A (three reproductions): submerged or freely seeping soil is type C;
    // stable rock stays what it is.
    for (const TrenchSoil soil :
         {TrenchSoil::type_a, TrenchSoil::type_a_short_term, TrenchSoil::type_b, TrenchSoil::type_c}) {
        CHECK(soil_in_water(soil, m(0), Dewatering::none) == soil);
        CHECK(soil_in_water(soil, m(1.05), Dewatering::none) == TrenchSoil::type_c);
        CHECK(soil_in_water(soil, m(0.001), Dewatering::none) == TrenchSoil::type_c);
        CHECK(soil_in_water(soil, m(1.05), Dewatering::confirmed) == soil);
    }
    CHECK(soil_in_water(TrenchSoil::stable_rock, m(2), Dewatering::none) == TrenchSoil::stable_rock);
    // Levels that are the same but for their last digits leave no water above the formation.
    CHECK(soil_in_water(TrenchSoil::type_b, m(99.35 - (99.3 + 0.05)), Dewatering::none) ==
          TrenchSoil::type_b);
    CHECK(soil_in_water(TrenchSoil::type_b, m(1e-9), Dewatering::none) == TrenchSoil::type_b);
    CHECK_THROWS_MATCHES(soil_in_water(TrenchSoil::type_b, m(-0.1), Dewatering::none), Refused,
                         refuses_domain("water above formation (-0.1 m)"));
}

TEST_CASE("1H:1V does not stand in water, though it does in dry soil of type B", "[published]") {
    // 29 CFR 1926 Subpart P, Appendix B, Table B-1.
    CHECK(wet_pit_batter(TrenchSoil::type_b, m(2), m(0), Dewatering::none) == batter(1));
    CHECK(wet_pit_batter(TrenchSoil::type_b, m(2), m(1.05), Dewatering::none) == batter(1.5));
    CHECK(wet_pit_batter(TrenchSoil::type_b, m(2), m(1.05), Dewatering::confirmed) == batter(1));
    CHECK(wet_pit_batter(TrenchSoil::type_a_short_term, m(2), m(0.1), Dewatering::none) == batter(1.5));
    CHECK(wet_pit_batter(TrenchSoil::stable_rock, m(2), m(1), Dewatering::none) == batter(0));
    // Wet, the short-term limit of 12 ft is not the one that counts.
    CHECK(wet_pit_batter(TrenchSoil::type_a_short_term, m(5), m(0.1), Dewatering::none) == batter(1.5));
    CHECK_THROWS_MATCHES(wet_pit_batter(TrenchSoil::type_a_short_term, m(5), m(0), Dewatering::none), Refused,
                         has_no_answer("licensed engineer"));
}

TEST_CASE("the depths of the table hold in feet and in the metres printed beside them", "[published]") {
    // Appendix B: "20 feet (6.1 m)", "12 feet (3.67 m)".
    CHECK(pit_batter(TrenchSoil::type_b, m(6.1)) == batter(1));
    CHECK(pit_batter(TrenchSoil::type_b, ft(20)) == batter(1));
    CHECK_THROWS_MATCHES(pit_batter(TrenchSoil::type_b, m(6.11)), Refused, has_no_answer("beyond the 6.1 m"));
    CHECK(pit_batter(TrenchSoil::type_a_short_term, m(3.67)) == batter(0.5));
    CHECK(pit_batter(TrenchSoil::type_a_short_term, ft(12)) == batter(0.5));
    CHECK_THROWS_MATCHES(pit_batter(TrenchSoil::type_a_short_term, m(3.68)), Refused,
                         has_no_answer("3.67 m"));
}

}  // namespace undercroft::tests
