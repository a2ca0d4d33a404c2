// Rows, beds and what they hold.
#include "calc/bed/storage.hpp"
#include "calc/bed/bed.hpp"
#include "calc/works/excavation.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Bed random_bed(Random& random) {
    constexpr Shape shapes[] = {Shape::ellipse, Shape::parabola, Shape::segment, Shape::rectangle,
                                Shape::circle};
    const Shape shape = shapes[random.whole(0, 4)];
    const double span = random.between(0.4, 2.0);
    const double rise = shape == Shape::circle ? span : span * random.between(0.3, 0.9);
    const double length = random.between(8, 80);
    const double width = random.between(4, 30);
    const double bulge =
        shape == Shape::segment && rise > span / 2 ? (span * span / 4 + rise * rise) / rise : span;
    const double chambers = random.between(0.2, 0.9) * length * width / bulge;
    return {m(length),
            m(width),
            batter(random.whole(0, 1) * random.between(0, 2)),
            m(random.between(0, 0.5)),
            m(random.between(0, 0.5)),
            share(random.between(0.2, 0.6)),
            {shape, m(span), m(rise)},
            m(chambers)};
}

}  // namespace

TEST_CASE("units that fit are those whose row is no longer than the space, and one more is too long") {
    Random random;
    for (int i = 0; i < 2000; ++i) {
        const Length end = m(random.between(1, 3));
        const Length middle = m(random.between(1, 3));
        const Length overlap = m(random.between(0, 0.3));
        const Length space = m(random.between(1, 100));
        const Count units = row_units(space, end, middle, overlap);
        if (number(units) == 0) {
            REQUIRE(row_length(count(2), end, middle, overlap) > space);
            continue;
        }
        REQUIRE(row_length(units, end, middle, overlap) <= space + m(1e-8));
        REQUIRE(row_length(units + count(1), end, middle, overlap) > space - m(1e-8));
        // A row that fits exactly is not one unit short.
        REQUIRE(number(row_units(row_length(units, end, middle, overlap), end, middle, overlap)) ==
                number(units));
    }
}

TEST_CASE("rows that fit are those whose bed is no wider than the space, and one more is too wide") {
    Random random;
    for (int i = 0; i < 2000; ++i) {
        const Length span = m(random.between(0.5, 2));
        const Length gap = m(random.between(0, 0.3));
        const Length margin = m(random.between(0, 0.6));
        const Length space = m(random.between(1.5, 50));
        const double rows = number(bed_rows(space, span, gap, margin));
        if (rows > 0) REQUIRE(bed_width(count(rows), span, gap, margin) <= space + m(1e-8));
        REQUIRE(bed_width(count(rows + 1), span, gap, margin) > space - m(1e-8));
        if (rows > 0)
            REQUIRE(number(bed_rows(bed_width(count(rows), span, gap, margin), span, gap, margin)) == rows);
    }
}

TEST_CASE("ports stand at both ends and no further apart than the interval") {
    for (int units = 1; units <= 40; ++units) {
        for (int interval = 1; interval <= 12; ++interval) {
            const double ports = number(bed_ports(count(1), count(units), count(interval)));
            REQUIRE((ports - 1) * interval >= units - 1);              // close enough
            REQUIRE((ports - 2) * interval < std::max(units - 1, 1));  // and none too many
        }
    }
    CHECK(number(bed_ports(count(7), count(13), count(0))) == 14);
    CHECK(number(bed_ports(count(7), count(1), count(0))) == 7);
}

TEST_CASE("the volume below a depth is the integral of the wet area (GSL QAGS)") {
    Random random;
    for (int i = 0; i < 60; ++i) {
        const Bed bed = random_bed(random);
        const double n = number(bed.porosity);
        const double depth = random.between(0.05, 1.0) * bed.top().value();
        const auto wet_area = [&](double y) {
            const double plan = pit_area(bed.length, bed.width, m(y), bed.batter).value();
            const double in_chamber = y - bed.base_stone.value();
            const bool beside = in_chamber >= 0 && in_chamber <= bed.arch.rise.value();
            const double chambers =
                beside ? arch_width(bed.arch, m(in_chamber)).value() * bed.chamber_length.value() : 0;
            return n * plan + (1 - n) * chambers;
        };
        CAPTURE(i, depth);
        const double kinks[] = {0, std::min(depth, bed.base_stone.value()),
                                std::min(depth, bed.crown().value()), depth};
        double expected = 0;
        for (int k = 0; k < 3; ++k)
            if (kinks[k + 1] > kinks[k]) expected += integral(wet_area, kinks[k], kinks[k + 1]);
        CHECK_THAT(bed_volume(m(depth), bed), is_near(m3(expected), 1e-8));
    }
}

TEST_CASE("volume and depth are each other's inverse") {
    Random random;
    for (int i = 0; i < 1000; ++i) {
        const Bed bed = random_bed(random);
        const Length depth = random.between(0.001, 1.0) * bed.top();
        const Length back = bed_depth(bed_volume(depth, bed), bed);
        REQUIRE(back.value() == Approx(depth.value()).epsilon(1e-9));
    }
    const Bed bed = random_bed(random);
    CHECK(bed_depth(m3(0), bed).value() == 0);
    CHECK(bed_depth(bed_volume(bed.top(), bed), bed) == bed.top());
}

TEST_CASE("a bed holds more the deeper, the more porous, and no more than its pit") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        Bed bed = random_bed(random);
        Volume before = m3(0);
        for (int step = 0; step <= 50; ++step) {
            const Volume now = bed_volume(bed.top() * (step / 50.0), bed);
            REQUIRE(now >= before);
            before = now;
        }
        REQUIRE(before < pit_volume(bed.length, bed.width, bed.top(), bed.batter));
        Bed denser = bed;
        denser.porosity = 0.9 * bed.porosity;
        REQUIRE(bed_volume(bed.top(), denser) < before);
    }
}

TEST_CASE("the stage-storage table adds up, meets both kinks and ends at the top") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        const Bed bed = random_bed(random);
        const StageStorage table = stage_storage(count(random.whole(1, 40)), bed);
        bool at_base = false;
        bool at_crown = false;
        for (std::size_t r = 0; r < table.size(); ++r) {
            const auto& [depth, chambers, stone, total, area] = table[r];
            REQUIRE(total.value() == Approx((chambers + stone).value()).epsilon(1e-14));
            REQUIRE(total.value() == Approx(bed_volume(depth, bed).value()).epsilon(1e-12).margin(1e-12));
            REQUIRE(area.value() ==
                    Approx(pit_area(bed.length, bed.width, depth, bed.batter).value()).epsilon(1e-14));
            if (r > 0) REQUIRE(depth > std::get<0>(table[r - 1]));
            at_base = at_base || std::abs((depth - bed.base_stone).value()) < 1e-9;
            at_crown = at_crown || std::abs((depth - bed.crown()).value()) < 1e-9;
        }
        REQUIRE(at_base);
        REQUIRE(at_crown);
        REQUIRE(std::get<0>(table.back()) == bed.top());
    }
    // A kink that falls on a step, to the last bit or not, is one row, not two.
    const Bed bed{m(20), m(10), batter(0), m(0.1 + 0.2), m(0.3), share(0.4), {Shape::ellipse, m(1.2), m(0.6)},
                  m(50)};
    CHECK(stage_storage(count(4), bed).size() == 5);
}

TEST_CASE("a bed that is none is refused") {
    const Bed good{m(20), m(10), batter(0), m(0.2), m(0.2), share(0.4), {Shape::ellipse, m(1.2), m(0.75)},
                   m(100)};
    const auto with = [&](auto change) {
        Bed bed = good;
        change(bed);
        return bed_volume(m(0.5), bed);
    };
    CHECK_NOTHROW(with([](Bed&) {}));
    CHECK_THROWS_MATCHES(with([](Bed& b) { b.length = m(0); }), Refused,
                         refuses_domain("length (0 m) must be above 0"));
    CHECK_THROWS_MATCHES(with([](Bed& b) { b.porosity = share(1.2); }), Refused,
                         refuses_domain("porosity (1.2)"));
    CHECK_THROWS_MATCHES(with([](Bed& b) { b.porosity = share(0); }), Refused,
                         refuses_domain("porosity (0)"));
    CHECK_THROWS_MATCHES(with([](Bed& b) { b.batter = batter(-1); }), Refused, refuses_domain("batter"));
    CHECK_THROWS_MATCHES(with([](Bed& b) { b.chamber_length = m(170); }), Refused,
                         refuses_domain("must fit in the plan of the bed"));
    CHECK_THROWS_MATCHES(bed_volume(m(1.2), good), Refused,
                         refuses_domain("at most the top of the stone (1.15 m"));
    CHECK_THROWS_MATCHES(bed_volume(m(-0.1), good), Refused, refuses_domain("depth (-0.1 m)"));
    CHECK_THROWS_MATCHES(bed_depth(m3(1e6), good), Refused, refuses_domain("at most what the bed holds"));
    CHECK_THROWS_MATCHES(stage_storage(count(2.5), good), Refused, refuses_domain("whole number"));
    CHECK_THROWS_MATCHES(stage_storage(count(20000), good), Refused, refuses_domain("at most 10000"));
    CHECK_THROWS_MATCHES(row_length(count(1), m(2), m(2), m(0)), Refused, refuses_domain("units"));
    CHECK_THROWS_MATCHES(row_units(m(10), m(2), m(2), m(2)), Refused, refuses_domain("shorter than a unit"));
}

TEST_CASE("a row or bed of units that are none is refused") {
    const auto length = [](double value) { return Length::from_value(value); };
    // A lap must be shorter than either unit.
    CHECK_THROWS_MATCHES(row_length(count(4), length(2), length(0.1), length(0.15)), Refused,
                         refuses_domain("joint overlap (0.15 m)"));
    CHECK_THROWS_MATCHES(row_length(count(4), length(0.1), length(2), length(0.15)), Refused,
                         refuses_domain("joint overlap (0.15 m)"));
    CHECK_THROWS_MATCHES(row_length(count(4), length(0), length(2), length(0)), Refused,
                         refuses_domain("end unit"));
    CHECK_THROWS_MATCHES(row_length(count(4), length(2), length(0), length(0)), Refused,
                         refuses_domain("middle unit"));
    CHECK_THROWS_MATCHES(row_length(count(4), length(2), length(2), length(-0.1)), Refused,
                         refuses_domain("joint overlap"));
    CHECK_THROWS_MATCHES(row_length(count(1), length(2), length(2), length(0)), Refused,
                         refuses_domain("units"));
    CHECK_THROWS_MATCHES(row_units(length(0), length(2), length(2), length(0)), Refused,
                         refuses_domain("available length"));
    CHECK_THROWS_MATCHES(bed_rows(length(0), length(1), length(0), length(0)), Refused,
                         refuses_domain("available width"));
    for (const double span : {0.0, -1.0}) {
        CHECK_THROWS_MATCHES(bed_rows(length(9), length(span), length(0.1), length(0)), Refused,
                             refuses_domain("span"));
        CHECK_THROWS_MATCHES(bed_width(count(2), length(span), length(0.1), length(0)), Refused,
                             refuses_domain("span"));
    }
    CHECK_THROWS_MATCHES(bed_rows(length(9), length(1), length(-0.1), length(0)), Refused,
                         refuses_domain("row gap"));
    CHECK_THROWS_MATCHES(bed_rows(length(9), length(1), length(0.1), length(-1)), Refused,
                         refuses_domain("side margin"));
    CHECK_THROWS_MATCHES(bed_width(count(2), length(1), length(-0.1), length(0)), Refused,
                         refuses_domain("row gap"));
    CHECK_THROWS_MATCHES(bed_width(count(2), length(1), length(0.1), length(-1)), Refused,
                         refuses_domain("side margin"));
    CHECK_THROWS_MATCHES(bed_width(count(0), length(1), length(0.1), length(0)), Refused,
                         refuses_domain("rows"));
    CHECK_THROWS_MATCHES(bed_length(length(0), length(0)), Refused, refuses_domain("row length"));
    CHECK_THROWS_MATCHES(bed_length(length(1), length(-1)), Refused, refuses_domain("end margin"));
    CHECK_THROWS_MATCHES(bed_ports(count(0), count(2), count(1)), Refused, refuses_domain("rows"));
    CHECK_THROWS_MATCHES(bed_ports(count(1), count(0), count(1)), Refused, refuses_domain("units"));
    CHECK_THROWS_MATCHES(bed_ports(count(1), count(2), count(-1)), Refused, refuses_domain("interval"));
}

}  // namespace undercroft::tests
