// Vehicles of the bridge code on the top of a buried structure, and the cover that counts.
#include "calc/ground/vehicle_load.hpp"

#include "calc/ground/wheel_load.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Pressure load(LoadClass vehicle, double cover_in_metres, double presence = 1.2) {
    return vehicle_load(vehicle, m(cover_in_metres), share(1.15), share(presence), true);
}

}  // namespace

TEST_CASE("factors of multiple presence are the published ones", "[published]") {
    // AASHTO LRFD, Table 3.6.1.1.2-1, in two public reproductions.
    CHECK(multiple_presence(count(1)) == share(1.20));
    CHECK(multiple_presence(count(2)) == share(1.00));
    CHECK(multiple_presence(count(3)) == share(0.85));
    CHECK(multiple_presence(count(4)) == share(0.65));
    CHECK(multiple_presence(count(9)) == share(0.65));
    CHECK_THROWS_MATCHES(multiple_presence(count(0)), Refused, refuses_domain("lanes"));
    CHECK_THROWS_MATCHES(multiple_presence(count(1.5)), Refused, refuses_domain("whole number"));
}

TEST_CASE("truck and tandem press as the article's arithmetic says, with one lane's factor") {
    // AASHTO LRFD 3.6.1.2.6 in feet and kips (math): p = P (1 + IM) m/(w l), f 1.15, m 1.2.
    struct Row {
        double cover_mm, truck, tandem;
    };
    const Row rows[] = {{600, 94.309, 73.679},
                        {1000, 43.831, 36.655},
                        {1500, 23.948, 23.155},
                        {2000, 15.280, 16.160},
                        {3000, 7.969, 9.368}};
    for (const Row& row : rows) {
        CAPTURE(row.cover_mm);
        const double cover = row.cover_mm / 1000;
        CHECK_THAT(load(LoadClass::aashto_truck_wheel, cover), is_within(kpa(row.truck), kpa(0.001)));
        CHECK_THAT(load(LoadClass::aashto_tandem_wheel, cover), is_within(kpa(row.tandem), kpa(0.001)));
        CHECK(load(LoadClass::aashto_hl93, cover) == std::max(load(LoadClass::aashto_truck_wheel, cover),
                                                              load(LoadClass::aashto_tandem_wheel, cover)));
        CHECK_THAT(load(LoadClass::aashto_hl93, cover, 1),
                   is_near(load(LoadClass::aashto_hl93, cover) / 1.2));
    }
}

TEST_CASE("the tandem overtakes the truck where their patches say so") {
    // math: 16/(l + f H) = 2 x 12.5/(l + 4 ft + f H) with l = 10/12 ft: f H = 113/18 ft.
    const double overtaken = 113.0 / 18 / 1.15 * 0.3048;
    CHECK(overtaken == Approx(1.663884).margin(1e-6));
    CHECK_THAT(load(LoadClass::aashto_truck_wheel, overtaken),
               is_near(load(LoadClass::aashto_tandem_wheel, overtaken), 1e-9));
    CHECK(load(LoadClass::aashto_truck_wheel, overtaken - 0.01) >
          load(LoadClass::aashto_tandem_wheel, overtaken - 0.01));
    CHECK(load(LoadClass::aashto_truck_wheel, overtaken + 0.01) <
          load(LoadClass::aashto_tandem_wheel, overtaken + 0.01));
    // A tandem that keeps the truck's axle spacing presses 8.9 % less at 1.07 m and 26 % less at 2 m: the
    // spacing belongs to the vehicle.
    const auto far_axles = [](double cover) {
        return 1.2 *
               wheel_load({kips(12.5), 10.0 * inch, 20.0 * inch, ft(6), ft(14)}, m(cover), share(1.15), true);
    };
    CHECK(far_axles(1.07) / load(LoadClass::aashto_tandem_wheel, 1.07) == Approx(1 - 0.089).margin(0.0005));
    CHECK(far_axles(2) / load(LoadClass::aashto_tandem_wheel, 2) == Approx(1 - 0.26).margin(0.005));
}

TEST_CASE("more cover never presses more, and the worse of both is never below either") {
    Random random;
    for (int i = 0; i < 500; ++i) {
        const double cover = random.between(0.61, 6);
        for (const LoadClass vehicle : {LoadClass::aashto_hl93, LoadClass::aashto_truck_wheel,
                                        LoadClass::aashto_tandem_wheel, LoadClass::as5100_w80}) {
            REQUIRE(load(vehicle, cover + 0.01) < load(vehicle, cover));
            if (vehicle != LoadClass::as5100_w80)
                REQUIRE(load(vehicle, cover) <= load(LoadClass::aashto_hl93, cover));
        }
    }
    // AS 5100.2 (from memory): 80 kN on 0.25 m x 0.40 m, one wheel.
    CHECK_THAT(vehicle_load(LoadClass::as5100_w80, m(1), share(1), share(1), false),
               is_near(kn(80) / (m(1.25) * m(1.40))));
}

TEST_CASE("the test load of a cover is no vehicle") {
    for (const LoadClass cover : {LoadClass::en124_a15, LoadClass::en124_d400, LoadClass::en124_f900,
                                  LoadClass::as3996_a, LoadClass::as3996_d, LoadClass::as3996_g})
        CHECK_THROWS_MATCHES(load(cover, 1), Refused,
                             has_no_answer("is a test load on the cover, not a wheel: it has no tyre"));
    CHECK_THROWS_MATCHES(load(LoadClass::aashto_hl93, 1, 1.3), Refused, refuses_domain("from 0.65 to 1.2"));
    CHECK_THROWS_MATCHES(load(LoadClass::aashto_hl93, 1, 0), Refused, refuses_domain("presence (0)"));
    CHECK_THROWS_MATCHES(load(LoadClass::aashto_hl93, 0.5), Refused,
                         refuses_domain("at least 2 ft (600 mm)"));
}

TEST_CASE("cover counts to the underside of flexible and the top of rigid pavement") {
    CHECK(counted_cover(m(0.8), m(0), Surfacing::none) == m(0.8));
    CHECK(counted_cover(m(0.8), m(0.25), Surfacing::flexible) == m(0.8));
    CHECK_THAT(counted_cover(m(0.8), m(0.25), Surfacing::rigid), is_near(m(1.05)));
    CHECK_THROWS_MATCHES(counted_cover(m(-0.1), m(0), Surfacing::none), Refused,
                         refuses_domain("fill depth"));
    CHECK_THROWS_MATCHES(counted_cover(m(0.8), m(0.2), Surfacing::none), Refused,
                         refuses_domain("must be 0 where there is no pavement"));
    CHECK_THROWS_MATCHES(counted_cover(m(0.8), m(0), Surfacing::rigid), Refused,
                         refuses_domain("pavement (0 m)"));
}

}  // namespace undercroft::tests
