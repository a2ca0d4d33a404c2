// Stone by its tested bulk density, and its porosity as built.
#include "calc/ground/stone.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Mass tonnes(double value) {
    return Mass::from_value(1000 * value);
}
Density density(double value) {
    return Density::from_value(value);
}

}  // namespace

TEST_CASE("stone is ordered by the density that was tested, not by the porosity that was hoped for") {
    // math: 412.5 m3 at 1540 kg/m3 are 635.25 t; at 40 % and 2650 kg/m3 655.875 t. They agree at n =
    // 0.418868.
    CHECK_THAT(stone_order_mass(m3(412.5), density(1540), share(0), share(0)), is_near(tonnes(635.25)));
    CHECK_THAT(stone_mass(m3(412.5), share(0.40), density(2650)), is_near(tonnes(655.875)));
    CHECK_THAT(stone_porosity(density(1540), density(2650)), is_within(share(0.418868), share(5e-7)));
    Random random;
    for (int i = 0; i < 300; ++i) {
        const Volume volume = m3(random.between(1, 2000));
        const Density bulk = density(random.between(1200, 1900));
        const Density grains = density(random.between(2400, 3000));
        const Mass ordered = stone_order_mass(volume, bulk, share(0), share(0));
        REQUIRE_THAT(ordered, is_near(stone_mass(volume, stone_porosity(bulk, grains), grains), 1e-12));
        REQUIRE_THAT(stone_order_mass(volume, bulk, share(0.04), share(0.05)),
                     is_near(ordered * 1.04 * 1.05));
        // What is ordered, and laid in that volume, has that density's porosity.
        REQUIRE_THAT(porosity_as_built(ordered * 1.04, volume, grains, share(0.04)),
                     is_near(stone_porosity(bulk, grains), 1e-12));
    }
}

TEST_CASE("porosity as built, by hand") {
    // math: 655.8 t in 412.5 m3 of grains at 2650 kg/m3.
    CHECK_THAT(porosity_as_built(tonnes(655.8), m3(412.5), density(2650), share(0)),
               is_within(share(0.400069), share(5e-7)));
    CHECK_THROWS_MATCHES(porosity_as_built(tonnes(2000), m3(412.5), density(2650), share(0)), Refused,
                         refuses_domain("is more stone than the volume (412.5 m3) holds"));
    CHECK_THROWS_MATCHES(porosity_as_built(tonnes(0), m3(1), density(2650), share(0)), Refused,
                         refuses_domain("mass"));
    CHECK_THROWS_MATCHES(porosity_as_built(tonnes(1), m3(0), density(2650), share(0)), Refused,
                         refuses_domain("volume"));
    CHECK_THROWS_MATCHES(porosity_as_built(tonnes(1), m3(1), density(0), share(0)), Refused,
                         refuses_domain("particle density"));
    CHECK_THROWS_MATCHES(porosity_as_built(tonnes(1), m3(1), density(2650), share(2)), Refused,
                         refuses_domain("moisture"));
    CHECK_THROWS_MATCHES(stone_order_mass(m3(-1), density(1), share(0), share(0)), Refused,
                         refuses_domain("volume"));
    CHECK_THROWS_MATCHES(stone_order_mass(m3(1), density(0), share(0), share(0)), Refused,
                         refuses_domain("bulk density"));
    CHECK_THROWS_MATCHES(stone_order_mass(m3(1), density(1), share(-1), share(0)), Refused,
                         refuses_domain("moisture"));
    CHECK_THROWS_MATCHES(stone_order_mass(m3(1), density(1), share(0), share(-1)), Refused,
                         refuses_domain("waste"));
}

}  // namespace undercroft::tests
