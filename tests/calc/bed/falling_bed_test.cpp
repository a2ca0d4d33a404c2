// A bed on a formation that falls along it.
#include "calc/bed/prism.hpp"
#include "calc/bed/storage.hpp"
#include "calc/works/excavation.hpp"
#include "calc/works/plane_pit.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// 40 x 12.17 m, 1.14 m of stone, chambers of half an ellipse 1.20 x 0.75 m, porosity 38 %.
Bed falling_car_park(double fall, double z = 0) {
    return {m(40),
            m(12.17),
            batter(z),
            m(0.23),
            m(0.16),
            share(0.38),
            {Shape::ellipse, m(1.2), m(0.75)},
            m(8 * 39.35),
            gradient(fall)};
}

Bed random_bed(Random& random, bool vertical) {
    Bed bed = falling_car_park(0);
    bed.length = m(random.between(10, 60));
    bed.width = m(random.between(5, 30));
    bed.batter = batter(vertical ? 0 : random.between(0.1, 1.5));
    bed.base_stone = m(random.between(0, 0.4));
    bed.cover_stone = m(random.between(0, 0.4));
    bed.porosity = share(random.between(0.3, 0.5));
    const double rise = random.between(0.3, 1.5);
    bed.arch.shape = static_cast<Shape>(random.whole(0, 3));
    bed.arch = {bed.arch.shape, m(rise * random.between(2, 3)), m(rise)};
    bed.chamber_length = bed.length * bed.width / bed.arch.span * random.between(0.2, 0.8);
    bed.fall = gradient(random.between(0, 0.9) * static_cast<double>(bed.top() / bed.length));
    return bed;
}

}  // namespace

TEST_CASE("without a fall the bed is the level one, to the last digit") {
    Bed level{
        m(40),       m(12.17), batter(1), m(0.23), m(0.16), share(0.38), {Shape::ellipse, m(1.2), m(0.75)},
        m(8 * 39.35)};
    CHECK(level.fall == gradient(0));
    const Bed falling = falling_car_park(0, 1);
    CHECK(stage_storage(count(50), level) == stage_storage(count(50), falling));
    // The closed form of the level bed, kept here as it was.
    const Length d = m(0.7);
    const Volume chambers = arch_area(level.arch, d - level.base_stone) * level.chamber_length;
    CHECK(bed_volume(d, falling) ==
          chambers + number(level.porosity) * (pit_volume(m(40), m(12.17), d, batter(1)) - chambers));
}

TEST_CASE("half a per cent along 40 m costs 5 % of the storage") {
    // By hand: up to the low end's top the bed loses a wedge of its cover stone: about -5.3 %.
    const Volume level = bed_volume(falling_car_park(0).top(), falling_car_park(0));
    const Volume falling = bed_volume(falling_car_park(0.005).top(), falling_car_park(0.005));
    CHECK(falling / level - 1 == Approx(-0.053).margin(0.003));
}

TEST_CASE("stone alone loses the wedge n L^2 W s/2 once its base is wet all over") {
    Bed bed = falling_car_park(0.005);
    bed.chamber_length = m(0);
    const Volume wedge = 0.38 * (m(40) * m(40) * m(12.17)) * 0.005 / 2.0;
    for (const double depth : {0.2, 0.5, 1.14}) {
        CAPTURE(depth);
        CHECK_THAT(bed_volume(m(depth), bed), is_near(0.38 * (m(40) * m(12.17) * m(depth)) - wedge, 1e-11));
    }
    // Before, the water is a wedge itself: n W d^2/(2 s).
    CHECK_THAT(bed_volume(m(0.1), bed), is_near(0.38 * (m(12.17) * m(0.1) * m(0.1)) / (2 * 0.005), 1e-11));
}

TEST_CASE("between vertical walls the falling bed is the mean of level ones along it (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 60; ++i) {
        const Bed bed = random_bed(random, true);
        Bed level = bed;
        level.fall = gradient(0);
        for (int j = 0; j < 5; ++j) {
            const double depth = random.between(0.01, 1) * bed.top().value();
            const double drop = bed.fall.value() * bed.length.value();
            const auto local = [&](double x) {
                return bed_volume(m(std::max(0.0, depth - x * drop)), level).value();
            };
            // Between the kinks, so that the reference is sharp.
            std::vector<double> cuts = {0, 1};
            for (const double kink : {0.0, bed.base_stone.value(), bed.crown().value()})
                if (drop > 0 && depth - kink > 0 && depth - kink < drop)
                    cuts.push_back((depth - kink) / drop);
            std::sort(cuts.begin(), cuts.end());
            double expected = 0;
            for (std::size_t k = 1; k < cuts.size(); ++k)
                expected += integral(local, cuts[k - 1], cuts[k], 1e-10);
            CAPTURE(i, depth, drop);
            REQUIRE_THAT(bed_volume(m(depth), bed), is_near(m3(expected), 1e-7));
        }
    }
}

TEST_CASE("depth and volume of a falling bed are inverses, and the table joins them") {
    Random random;
    for (int i = 0; i < 30; ++i) {
        const Bed bed = random_bed(random, i % 2 == 0);
        const StageStorage table = stage_storage(count(20), bed);
        Volume last = m3(-1);
        Area last_area = m2(0);
        for (const auto& [depth, chambers, stone, total, area] : table) {
            CAPTURE(i, depth.value());
            REQUIRE(total >= last);
            REQUIRE(total == chambers + stone);
            REQUIRE_THAT(bed_volume(depth, bed), is_near(total, 1e-13));
            REQUIRE_THAT(bed_volume(bed_depth(total, bed), bed), is_within(total, m3(1e-6)));
            REQUIRE(area >= last_area * (1 - 1e-12));
            last = total;
            last_area = area;
        }
        REQUIRE(std::get<0>(table.back()) == bed.top());
        Bed level = bed;
        level.fall = gradient(0);
        REQUIRE(bed_volume(bed.top(), bed) <= bed_volume(bed.top(), level) * (1 + 1e-12));
    }
}

TEST_CASE("the prism grows by its own surface (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 20; ++i) {
        const Bed bed = random_bed(random, false);
        const BedPrism prism{bed.length, bed.width, bed.batter, bed.top(), bed.fall};
        const double depth = bed.top().value() * random.between(0.3, 1);
        const double wet = std::min(depth, rise_of_base(prism).value());
        const auto area = [&](double d) { return prism_area(prism, m(d)).value(); };
        REQUIRE_THAT(prism_volume(prism, m(depth)),
                     is_near(m3(integral(area, 0, wet, 1e-9) + integral(area, wet, depth, 1e-9)), 1e-7));
        // And is the pit between its planes.
        const PlanePit pit = falling_pit(bed.length, bed.width, bed.top(), bed.batter, bed.fall);
        REQUIRE_THAT(prism_volume(prism, bed.top()), is_near(plane_pit_volume(pit), 1e-10));
    }
}

TEST_CASE("a fall that is too much for the bed is refused") {
    CHECK_THROWS_MATCHES(bed_volume(m(0.5), falling_car_park(-0.001)), Refused,
                         refuses_domain("fall (-0.001)"));
    CHECK_THROWS_MATCHES(
        bed_volume(m(0.5), falling_car_park(0.03)), Refused,
        refuses_domain("fall (0.03) lifts the high end of the base by 1.2 m, to the top of the stone"));
    CHECK_NOTHROW(bed_volume(m(0.5), falling_car_park(0.028)));
    CHECK_THROWS_MATCHES(stage_storage(count(10), falling_car_park(0.03)), Refused,
                         refuses_domain("no level water"));
    CHECK_THROWS_MATCHES(bed_volume(m(1.2), falling_car_park(0.005)), Refused,
                         refuses_domain("must be at most the top of the stone"));
}

}  // namespace undercroft::tests
