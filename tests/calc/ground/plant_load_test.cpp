// Stress under construction plant: tracks, drums and wheels as loaded patches.
#include "calc/ground/plant_load.hpp"

#include "calc/ground/elastic_stress.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"
#include "tests/support/point_loads.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Patches random_patches(Random& random, int patches) {
    Patches made;
    for (int i = 0; i < patches; ++i)
        made.emplace_back(kn(random.between(5, 100)), m(random.between(0.1, 3)), m(random.between(0.1, 1)),
                          m(random.between(-3, 3)), m(random.between(-3, 3)));
    return made;
}

}  // namespace

TEST_CASE("stress within and beside a loaded area is the published sum of corners", "[published]") {
    // Venkatramaiah, Ex. 10.8, p. 384: 450 kPa on 2 x 4 m, a point 0.5 m and 1 m inside, at 1 m depth. The
    // printed factors sum to 0.6796; recomputed 305.50 kPa.
    const Patches area = {{kn(450 * 8), m(4), m(2), m(0), m(0)}};
    const Pressure inside = stress_of_patches(area, m(1), m(1), m(0.5));
    CHECK_THAT(inside, is_near(kpa(450 * 0.6796), 0.002));
    CHECK_THAT(inside, is_within(kpa(305.50), kpa(0.005)));
    // Textbook (Eurocode edition): 4.5 m square, 200 kPa, 4 m from the centre, 3 m deep. Chart readings give
    // 21.6 kPa; recomputed 22.714 kPa.
    const Patches square = {{kn(200 * 4.5 * 4.5), m(4.5), m(4.5), m(0), m(0)}};
    const Pressure outside = stress_of_patches(square, m(3), m(4), m(0));
    CHECK_THAT(outside, is_near(kpa(21.6), 0.06));
    CHECK_THAT(outside, is_within(kpa(22.714), kpa(0.02)));
    // P20.27 (inputs published, answer recomputed): 100 t on 4.6 x 14 m, under the corner at 10 m.
    const Patches tonnes = {{kn(100), m(14), m(4.6), m(7), m(2.3)}};
    CHECK_THAT(stress_of_patches(tonnes, m(10), m(0), m(0)), is_within(kpa(0.189704), kpa(5e-7)));
}

TEST_CASE("stress anywhere under plant is the sum of the point loads of all patches (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 20; ++i) {
        const Patches patches = random_patches(random, random.whole(1, 4));
        const double z = random.between(0.4, 3);
        const double x = random.between(-4, 4);
        const double y = random.between(-4, 4);
        double expected = 0;
        for (const auto& [load, length, width, at_x, at_y] : patches) {
            const double left = at_x.value() - length.value() / 2 - x;
            const double near = at_y.value() - width.value() / 2 - y;
            expected += load.value() / (length * width).value() *
                        integrated_point_loads(left, left + length.value(), near, near + width.value(), z);
        }
        CAPTURE(i, x, y, z);
        CHECK(stress_of_patches(patches, m(z), m(x), m(y)).value() == Approx(expected).epsilon(1e-7));
    }
}

TEST_CASE("stress under a patch, over the whole plane, is its load (GSL QAGS)") {
    // x = z tan u and y = z tan v, out to 50 z; beyond it lies about (1/50)^3 of the load.
    const Patches patch = {{kn(30), m(2), m(0.5), m(0.1), m(-0.2)}};
    const double z = 2;
    const double far = std::atan(50.0);
    const auto line = [&](double u) {
        return integral(
            [&](double v) {
                return stress_of_patches(patch, m(z), m(z * std::tan(u)), m(z * std::tan(v))).value() /
                       std::pow(std::cos(v), 2);
            },
            -far, far, 1e-8);
    };
    const double total =
        integral([&](double u) { return z * z * line(u) / std::pow(std::cos(u), 2); }, -far, far, 1e-7);
    CHECK(total == Approx(30000).epsilon(2e-5));
}

TEST_CASE("stress under plant adds up, goes with the load, and moves with the plant") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const Patches one = random_patches(random, random.whole(1, 4));
        const Patches other = random_patches(random, random.whole(1, 4));
        Patches both = one;
        both.insert(both.end(), other.begin(), other.end());
        const Length z = m(random.between(0.1, 3));
        const Length x = m(random.between(-4, 4));
        const Length y = m(random.between(-4, 4));
        const Pressure sum = stress_of_patches(one, z, x, y) + stress_of_patches(other, z, x, y);
        REQUIRE(stress_of_patches(both, z, x, y).value() == Approx(sum.value()).epsilon(1e-11).margin(1e-9));
        Patches doubled = both;
        Patches moved = both;
        for (auto& patch : doubled) std::get<0>(patch) = 2.0 * std::get<0>(patch);
        for (auto& patch : moved) {
            std::get<3>(patch) += m(1.5);
            std::get<4>(patch) -= m(0.5);
        }
        REQUIRE(stress_of_patches(doubled, z, x, y).value() == Approx(2 * sum.value()).epsilon(1e-9));
        REQUIRE(stress_of_patches(moved, z, x + m(1.5), y - m(0.5)).value() ==
                Approx(sum.value()).epsilon(1e-9));
    }
}

TEST_CASE("the worst stress under one patch is under its centre, under two deep ones between them") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const Patches one = random_patches(random, 1);
        const auto& [load, length, width, x, y] = one.front();
        const Length depth = m(random.between(0.2, 4));
        REQUIRE(plant_load(one, depth).value() ==
                Approx(stress_under_rectangle(load / (length * width), length, width, depth,
                                              RectanglePoint::centre)
                           .value())
                    .epsilon(1e-9));
    }
    const Patches tracks = {{kn(100), m(3), m(0.6), m(0), m(-1)}, {kn(100), m(3), m(0.6), m(0), m(1)}};
    CHECK_THAT(plant_load(tracks, m(4)), is_near(stress_of_patches(tracks, m(4), m(0), m(0)), 1e-9));
    CHECK(plant_load(tracks, m(0.5)) > 1.5 * stress_of_patches(tracks, m(0.5), m(0), m(0)));
}

TEST_CASE("the worst stress under plant is nowhere exceeded, whatever the order of the patches") {
    Random random;
    for (int i = 0; i < 400; ++i) {
        Patches patches = random_patches(random, random.whole(1, 7));
        const Length depth = m(random.between(0.05, 3));
        const Pressure worst = plant_load(patches, depth);
        CAPTURE(i, patches.size(), depth.value());
        for (const auto& [load, length, width, x, y] : patches)
            REQUIRE(stress_of_patches(patches, depth, x, y) <= worst * (1 + 1e-9));
        for (int x = -30; x <= 30; ++x)
            for (int y = -30; y <= 30; ++y)
                if (stress_of_patches(patches, depth, m(0.1 * x), m(0.1 * y)) > worst * (1 + 1e-9))
                    FAIL("more stress at " << 0.1 * x << ", " << 0.1 * y);
        std::reverse(patches.begin(), patches.end());
        REQUIRE(plant_load(patches, depth).value() == Approx(worst.value()).epsilon(1e-6));
        REQUIRE(plant_load(patches, depth * 1.1) < worst);
    }
}

TEST_CASE("the worst stress is found at a small depth and far apart, too") {
    Patches far;
    for (int i = 0; i < 40; ++i)
        far.emplace_back(kn(10 + i % 7), m(0.5), m(0.25), m(100 * (i % 8)), m(90.0 * std::floor(i / 8.0)));
    CHECK_THAT(plant_load(far, m(0.001)), is_near(kpa(16 / 0.125), 1e-6));
    // 39 others, the nearest 90 m away, add next to nothing.
    CHECK_THAT(plant_load(far, m(1)),
               is_near(stress_under_rectangle(kpa(16 / 0.125), m(0.5), m(0.25), m(1), RectanglePoint::centre),
                       1e-7));
}

TEST_CASE("plant that is none is refused") {
    const Patches good = {{kn(10), m(1), m(0.5), m(0), m(0)}};
    CHECK_NOTHROW(plant_load(good, m(1)));
    CHECK_THROWS_MATCHES(plant_load(good, m(0)), Refused, refuses_domain("depth (0 m) must be above 0"));
    CHECK_THROWS_MATCHES(stress_of_patches(good, m(0), m(0), m(0)), Refused, refuses_domain("depth"));
    CHECK_THROWS_MATCHES(plant_load({{kn(0), m(1), m(1), m(0), m(0)}}, m(1)), Refused,
                         refuses_domain("load"));
    CHECK_THROWS_MATCHES(plant_load({{kn(1), m(0), m(1), m(0), m(0)}}, m(1)), Refused,
                         refuses_domain("length"));
    CHECK_THROWS_MATCHES(plant_load({{kn(1), m(1), m(0), m(0), m(0)}}, m(1)), Refused,
                         refuses_domain("width"));
    CHECK_NOTHROW(plant_load(Patches(40, good.front()), m(1)));
    CHECK_THROWS_MATCHES(plant_load(Patches(41, good.front()), m(1)), Refused,
                         refuses_domain("more than 40 patches"));
}

TEST_CASE("wheels that overlap press as the sum of both") {
    // Two twin tyres at one place are one of twice the load; pulled apart, the worst stress falls until each
    // stands alone.
    const auto twins = [](double apart) {
        return Patches{{kn(20), m(0.3), m(0.2), m(0), m(-apart / 2)},
                       {kn(20), m(0.3), m(0.2), m(0), m(apart / 2)}};
    };
    const Patches both = {{kn(40), m(0.3), m(0.2), m(0), m(0)}};
    const Patches one = {{kn(20), m(0.3), m(0.2), m(0), m(0)}};
    for (const double depth : {0.1, 0.3, 1.0}) {
        CAPTURE(depth);
        CHECK_THAT(plant_load(twins(0), m(depth)), is_near(plant_load(both, m(depth)), 1e-9));
        for (int tenths = 0; tenths < 20; ++tenths) {
            const double apart = 0.1 * tenths;
            CAPTURE(apart);
            REQUIRE(plant_load(twins(apart + 0.1), m(depth)) < plant_load(twins(apart), m(depth)));
            REQUIRE(plant_load(twins(apart), m(depth)) > plant_load(one, m(depth)));
        }
        CHECK_THAT(plant_load(twins(100), m(depth)), is_near(plant_load(one, m(depth)), 1e-5));
    }
    // Side by side they are one patch as wide as both.
    const Patches wide = {{kn(40), m(0.3), m(0.4), m(0), m(0)}};
    for (const double depth : {0.05, 0.2, 1.0})
        CHECK_THAT(plant_load(twins(0.2), m(depth)), is_near(plant_load(wide, m(depth)), 1e-9));
}

TEST_CASE("under two tracks the worst stress is the greatest along the line across them (GSL)") {
    // By symmetry it lies on that line, in front of neither end; the point loads there are summed by GSL.
    const Patches tracks = {{kn(100), m(3), m(0.6), m(0), m(-1)}, {kn(100), m(3), m(0.6), m(0), m(1)}};
    for (const double depth : {0.5, 1.0, 1.5, 3.0}) {
        double greatest = 0;
        for (int step = 0; step <= 65; ++step) {
            const double y = 0.02 * step;
            greatest = std::max(greatest, 100000 / (3 * 0.6) *
                                              (integrated_point_loads(-1.5, 1.5, -1.3 - y, -0.7 - y, depth) +
                                               integrated_point_loads(-1.5, 1.5, 0.7 - y, 1.3 - y, depth)));
        }
        CAPTURE(depth);
        const double worst = plant_load(tracks, m(depth)).value();
        CHECK(worst >= greatest * (1 - 1e-9));
        CHECK(worst <= greatest * (1 + 1e-3));
    }
}

}  // namespace undercroft::tests
