// What a fabric must hold back and let through, from gravel to clay.
#include "calc/ground/fabric_filter.hpp"

#include "calc/ground/fabric.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

constexpr auto woven = FabricKind::woven;
constexpr auto non_woven = FabricKind::non_woven;
constexpr auto steady = FabricFlow::steady;
constexpr auto reversing = FabricFlow::reversing;

}  // namespace

TEST_CASE("openings and permittivities by the fines of the soil are the published table", "[published]") {
    // AASHTO M 288, subsurface drainage, as quoted in UFGS 02373: below 15 %, to 50 %, above.
    struct Row {
        double fines, opening_mm, permittivity;
    };
    for (const Row& row : {Row{0, 0.43, 0.5}, Row{14.9, 0.43, 0.5}, Row{15, 0.25, 0.2}, Row{50, 0.25, 0.2},
                           Row{50.1, 0.22, 0.1}, Row{100, 0.22, 0.1}}) {
        CAPTURE(row.fines);
        CHECK_THAT(drainage_opening({row.fines}), is_near(mm(row.opening_mm)));
        CHECK_THAT(drainage_permittivity({row.fines}), is_near(Permittivity::from_value(row.permittivity)));
    }
    CHECK_THROWS_MATCHES(drainage_opening({101}), Refused, refuses_domain("passing 0.075 mm"));
    CHECK_THROWS_MATCHES(drainage_permittivity({-1}), Refused, refuses_domain("passing 0.075 mm"));
}

TEST_CASE("retention of sands, silts and clays is the criterion by hand") {
    // FHWA NHI-07-092, ch. 2 (from memory): D85 = 0.25 mm at Cu 1.5, 2.5 and 6; fine soils; reversing flow.
    CHECK_THAT(retaining_opening(mm(0.25), {8}, share(1.5), non_woven, steady), is_near(mm(0.25)));
    CHECK_THAT(retaining_opening(mm(0.25), {8}, share(2.5), non_woven, steady), is_near(mm(0.3125)));
    CHECK_THAT(retaining_opening(mm(0.25), {8}, share(6), woven, steady), is_near(mm(1.0 / 3)));
    CHECK_THAT(retaining_opening(mm(0.1), {80}, {}, woven, steady), is_near(mm(0.1)));
    CHECK_THAT(retaining_opening(mm(0.1), {80}, {}, non_woven, steady), is_near(mm(0.18)));
    CHECK_THAT(retaining_opening(mm(0.25), {51}, {}, non_woven, steady), is_near(mm(0.30)));  // not 0.45
    CHECK_THAT(retaining_opening(mm(0.4), {51}, {}, woven, steady), is_near(mm(0.30)));
    CHECK_THAT(retaining_opening(mm(5), {2}, share(3), woven, steady), is_near(mm(0.60)));
    CHECK_THAT(retaining_opening(mm(0.25), {8}, {}, woven, reversing), is_near(mm(0.125)));
    CHECK_THAT(retaining_opening(mm(0.25), {80}, {}, non_woven, reversing), is_near(mm(0.125)));
    CHECK_THAT(retaining_opening(mm(0.9), {80}, {}, non_woven, reversing), is_near(mm(0.30)));
    // Half passing is still a sand.
    CHECK_THAT(retention_factor({50}, share(3), non_woven, steady), is_near(share(1.5)));
    CHECK_THAT(retention_factor({50.01}, {}, non_woven, steady), is_near(share(1.8)));
}

TEST_CASE(
    "a fabric by the wider function holds back what the older one does, and reversing flow asks for more") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const Length d85 = mm(random.between(0.01, 70));
        const Share uniformity = share(random.between(1, 30));
        const Percent fines{random.between(0, 50)};
        const FabricKind kind = random.whole(0, 1) == 1 ? woven : non_woven;
        REQUIRE(retaining_opening(d85, fines, uniformity, kind, steady) ==
                fabric_opening(d85, fabric_factor(uniformity)));
        const Percent any{random.between(0, 100)};
        REQUIRE(retaining_opening(d85, any, uniformity, kind, reversing) <=
                retaining_opening(d85, any, uniformity, kind, steady));
    }
    CHECK_THROWS_MATCHES(retaining_opening(mm(0.2), {8}, {}, woven, steady), Refused,
                         refuses_value("the uniformity D60/D10 is needed"));
    CHECK_THROWS_MATCHES(retaining_opening(mm(0), {8}, share(2), woven, steady), Refused,
                         refuses_domain("d85"));
    CHECK_THROWS_MATCHES(retaining_opening(mm(76), {8}, share(2), woven, steady), Refused,
                         refuses_domain("75 mm"));
    CHECK_THROWS_MATCHES(retention_factor({101}, share(2), woven, steady), Refused, refuses_domain("100 %"));
}

TEST_CASE("permittivity and flow, by hand") {
    // math: 2 mm/s over 2 mm is 1 per s; 0.5 per s under 0.05 m on 1 m2 lets 0.025 m3/s through.
    CHECK_THAT(fabric_permittivity(m_per_s(2e-3), mm(2)), is_near(Permittivity::from_value(1)));
    CHECK_THAT(fabric_flow(Permittivity::from_value(0.5), m(0.05), m2(1)), is_near(m3_per_s(0.025)));
    CHECK_THAT(fabric_permeability_needed(m_per_s(1e-5), false), is_near(m_per_s(1e-5)));
    CHECK_THAT(fabric_permeability_needed(m_per_s(1e-5), true), is_near(m_per_s(1e-4)));
    CHECK_THROWS_MATCHES(fabric_permittivity(m_per_s(0), mm(2)), Refused, refuses_domain("permeability"));
    CHECK_THROWS_MATCHES(fabric_permittivity(m_per_s(1), mm(0)), Refused, refuses_domain("thickness"));
    CHECK_THROWS_MATCHES(fabric_flow(Permittivity::from_value(0), m(1), m2(1)), Refused,
                         refuses_domain("permittivity"));
    CHECK_THROWS_MATCHES(fabric_flow(Permittivity::from_value(1), m(-1), m2(1)), Refused,
                         refuses_domain("head"));
    CHECK_THROWS_MATCHES(fabric_flow(Permittivity::from_value(1), m(1), m2(0)), Refused,
                         refuses_domain("area"));
    CHECK_THROWS_MATCHES(fabric_permeability_needed(m_per_s(0), true), Refused,
                         refuses_domain("soil permeability"));
}

}  // namespace undercroft::tests
