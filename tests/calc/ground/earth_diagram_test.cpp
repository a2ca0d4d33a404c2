// Pressure of earth and water down a wall.
#include "calc/ground/earth_diagram.hpp"

#include "calc/ground/earth_pressure.hpp"
#include "calc/water/water_weight.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

TEST_CASE("the diagram of a shoring manual's example", "[published]") {
    // Caltrans, Trenching and Shoring Manual, Example 7-2: 4 ft at 130 pcf and K 0.249, then 26 ft at 102.4
    // pcf and K 0.333, the last 20 ft under water at 62.4 pcf; stresses in psf, forces in lb/ft.
    const WallLayers layers = {{ft(4), pcf(130), share(0.249)}, {ft(26), pcf(102.4), share(0.333)}};
    const EarthDiagram diagram = earth_diagram(layers, psf(0), ft(10), pcf(62.4));
    REQUIRE(diagram.size() == 5);
    struct Row {
        double depth, earth, water;
    };
    const Row rows[] = {{0, 0, 0}, {4, 129.48, 0}, {4, 173.16, 0}, {10, 377.76, 0}, {30, 644.16, 1248}};
    for (std::size_t i = 0; i < diagram.size(); ++i) {
        CAPTURE(i);
        const auto& [depth, earth, water, both] = diagram[i];
        CHECK_THAT(depth, is_within(ft(rows[i].depth), ft(1e-9)));
        CHECK_THAT(earth, is_within(psf(rows[i].earth), psf(0.01)));
        CHECK_THAT(water, is_within(psf(rows[i].water), psf(0.01)));
        CHECK(both == earth + water);
    }
    const LineLoad printed = (258.96 + 1038.96 + 613.80 + 7555.20 + 2664.00 + 12480) * (pound_force / foot);
    CHECK_THAT(diagram_thrust(diagram), is_near(printed, 1e-5));
}

TEST_CASE("of one layer the area of the diagram is the thrust") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const Length height = m(random.between(1, 8));
        const UnitWeight ground = kn_per_m3(random.between(15, 22));
        const Share coefficient = share(random.between(0.2, 1));
        const Pressure surcharge = kpa(random.between(0, 30));
        const EarthDiagram dry =
            earth_diagram({{height, ground, coefficient}}, surcharge, height * 2.0, water_unit_weight);
        REQUIRE_THAT(diagram_thrust(dry),
                     is_near(earth_thrust(coefficient, ground, height, surcharge, m(0)), 1e-12));
        // The ground above the water keeps its weight in both.
        const Length water = height * random.between(0, 1);
        const EarthDiagram wet =
            earth_diagram({{height, ground, coefficient}}, surcharge, water, water_unit_weight);
        REQUIRE_THAT(diagram_thrust(wet),
                     is_near(earth_thrust(coefficient, ground, height, surcharge, height - water), 1e-12));
        // Cut in two at any depth, nothing changes.
        const Length cut = height * random.between(0.1, 0.9);
        const WallLayers two = {{cut, ground, coefficient}, {height - cut, ground, coefficient}};
        REQUIRE_THAT(diagram_thrust(earth_diagram(two, surcharge, water, water_unit_weight)),
                     is_near(diagram_thrust(wet), 1e-12));
    }
}

TEST_CASE("walls without ground are refused") {
    const auto diagram = [](const WallLayers& layers, double surcharge = 0, double water = 0,
                            double gamma = 9.8) {
        return earth_diagram(layers, kpa(surcharge), m(water), kn_per_m3(gamma));
    };
    CHECK_THROWS_MATCHES(diagram({}), Refused, refuses_domain("no layer"));
    CHECK_THROWS_MATCHES(diagram({{m(0), kn_per_m3(18), share(0.3)}}), Refused, refuses_domain("thickness"));
    CHECK_THROWS_MATCHES(diagram({{m(1), kn_per_m3(0), share(0.3)}}), Refused, refuses_domain("unit weight"));
    CHECK_THROWS_MATCHES(diagram({{m(1), kn_per_m3(18), share(0)}}), Refused, refuses_domain("coefficient"));
    CHECK_THROWS_MATCHES(diagram({{m(1), kn_per_m3(18), share(0.3)}}, -1), Refused,
                         refuses_domain("surcharge"));
    CHECK_THROWS_MATCHES(diagram({{m(1), kn_per_m3(18), share(0.3)}}, 0, -1), Refused,
                         refuses_domain("water depth"));
    CHECK_THROWS_MATCHES(diagram({{m(1), kn_per_m3(18), share(0.3)}}, 0, 0, 0), Refused,
                         refuses_domain("water unit weight"));
    CHECK_THROWS_MATCHES(diagram({{m(1), kn_per_m3(9), share(0.3)}}), Refused,
                         refuses_domain("where the ground is wet"));
    CHECK_NOTHROW(diagram({{m(1), kn_per_m3(9), share(0.3)}}, 0, 1));
}

}  // namespace undercroft::tests
