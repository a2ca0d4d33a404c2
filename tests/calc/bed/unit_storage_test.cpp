// Beds of units by their suppliers' tables.
#include "calc/bed/unit_storage.hpp"

#include "calc/works/excavation.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

const Arch ellipse{Shape::ellipse, m(1.2), m(0.75)};

/// Our own section as a supplier's table: one unit of a length, in n rows.
UnitTable table_of(const Arch& arch, double unit_length, int n) {
    UnitTable table;
    for (int i = 0; i <= n; ++i) {
        const Length depth = arch.rise * (static_cast<double>(i) / n);
        table.emplace_back(depth, arch_area(arch, depth) * m(unit_length));
    }
    return table;
}

/// 8 rows of 2 end and 16 middle units.
UnitBed car_park_units(double fall = 0, int table_rows = 75) {
    return {
        m(40),
        m(12.17),
        batter(1),
        m(0.23),
        m(0.16),
        share(0.38),
        {{count(128), table_of(ellipse, 2.17, table_rows)}, {count(16), table_of(ellipse, 2.3, table_rows)}},
        {},
        {},
        gradient(fall)};
}
Bed ideal(double fall = 0) {
    return {m(40),         m(12.17),    batter(1), m(0.23),
            m(0.16),       share(0.38), ellipse,   m(128 * 2.17 + 16 * 2.3),
            gradient(fall)};
}

}  // namespace

TEST_CASE("our own ellipse as a table has the ellipse's storage") {
    // At the rows of the table exactly; between them to the table's fineness.
    const UnitBed bed = car_park_units();
    for (int i = 0; i <= 75; ++i) {
        const Length depth = bed.base_stone + ellipse.rise * (i / 75.0);
        CAPTURE(i);
        CHECK_THAT(unit_bed_volume(depth, bed), is_near(bed_volume(depth, ideal()), 1e-12));
    }
    const UnitBed fine = car_park_units(0, 2000);
    for (double depth = 0.01; depth < 1.14; depth += 0.013)
        CHECK_THAT(unit_bed_volume(m(depth), fine), is_near(bed_volume(m(depth), ideal()), 1e-6));
    for (double depth = 0.01; depth < 1.14; depth += 0.053)
        CHECK_THAT(unit_bed_volume(m(depth), car_park_units(0.005, 2000)),
                   is_near(bed_volume(m(depth), ideal(0.005)), 1e-6));
}

TEST_CASE("the table of stages is that of the ideal section") {
    const StageStorage by_table = unit_stage_storage(count(10), car_park_units(0, 2000));
    const StageStorage by_section = stage_storage(count(10), ideal());
    REQUIRE(by_table.size() == by_section.size());
    for (std::size_t i = 0; i < by_table.size(); ++i) {
        CHECK_THAT(std::get<0>(by_table[i]), is_near(std::get<0>(by_section[i])));
        CHECK_THAT(std::get<1>(by_table[i]), is_within(std::get<1>(by_section[i]), m3(2e-4)));
        CHECK_THAT(std::get<3>(by_table[i]), is_within(std::get<3>(by_section[i]), m3(2e-4)));
        CHECK(std::get<4>(by_table[i]) == std::get<4>(by_section[i]));
    }
}

TEST_CASE("a bed of a section takes units by their tables in its place, and stays as high") {
    const std::vector<UnitKind> units = car_park_units(0.005, 2000).units;
    const UnitBed made = with_units(ideal(0.005), units);
    CHECK_THAT(made.top(), is_near(ideal().top()));
    CHECK_THAT(made.cover_stone, is_near(m(0.16)));
    for (double depth = 0.01; depth < 1.14; depth += 0.053)
        CHECK_THAT(unit_bed_volume(m(depth), made), is_near(bed_volume(m(depth), ideal(0.005)), 1e-6));
    // Units 0.05 m lower than the rise: as much more stone over them, and the same top.
    UnitTable lower = table_of({Shape::ellipse, m(1.2), m(0.7)}, 2.17, 70);
    const UnitBed low = with_units(ideal(), {{count(144), lower}});
    CHECK_THAT(low.cover_stone, is_near(m(0.21)));
    CHECK_THAT(low.top(), is_near(m(1.14)));
    // Units that stand in the cover stone are there; above it they are not.
    lower.back() = {m(0.9), std::get<1>(lower.back())};
    CHECK_THAT(with_units(ideal(), {{count(144), lower}}).cover_stone, is_near(m(0.01)));
    lower.back() = {m(0.92), std::get<1>(lower.back())};
    CHECK_THROWS_MATCHES(
        with_units(ideal(), {{count(144), lower}}), Refused,
        refuses_domain("goes up to 0.92 m over their base, above the top of the stone (0.91 m)"));
}

TEST_CASE("kinds of different height, a header and the plastic, by hand") {
    // math: 10 x 5 m in vertical walls, base stone 0.2, cover 0.2, porosity 0.4. Ten units of 0.5 m3 and 0.8
    // m, two of 0.3 m3 and 0.6 m: 5.6 m3; 95 kg of plastic at 950 kg/m3: 0.1 m3; a header of 0.4 m3.
    UnitBed bed{
        m(10),
        m(5),
        batter(0),
        m(0.2),
        m(0.2),
        share(0.4),
        {{count(10), {{m(0), m3(0)}, {m(0.8), m3(0.5)}}}, {count(2), {{m(0.3), m3(0.2)}, {m(0.6), m3(0.3)}}}},
        Plastic{Mass::from_value(95), Density::from_value(950)},
        Header{m3(0.4), m(0.4), m(0.3)},
        gradient(0)};
    CHECK_THAT(bed.rise(), is_near(m(0.8)));
    CHECK_THAT(bed.top(), is_near(m(1.2)));
    CHECK_THAT(unit_bed_volume(m(1.2), bed), is_near(m3(5.6 + 0.4 + 0.4 * (60 - 5.6 - 0.4 - 0.1))));
    // At 0.5 m: 0.3 m over the units' base: 10 x 0.5 x 3/8 + 2 x 0.2; half of the header; 3/8 of the plastic.
    const double hollow = 1.875 + 0.4 + 0.2;
    CHECK_THAT(unit_bed_volume(m(0.5), bed), is_near(m3(hollow + 0.4 * (25 - hollow - 0.0375))));
    CHECK_THAT(unit_bed_volume(m(0.1), bed), is_near(m3(0.4 * 5)));
    // Without what displaces stone there is more.
    bed.plastic = {};
    CHECK_THAT(unit_bed_volume(m(1.2), bed), is_near(m3(6 + 0.4 * 54)));
}

TEST_CASE("on a fall all of it is the mean along the bed (GSL QAGS)") {
    UnitBed bed{m(30),
                m(8),
                batter(0),
                m(0.2),
                m(0.3),
                share(0.4),
                {{count(40), {{m(0), m3(0)}, {m(0.3), m3(0.4)}, {m(0.8), m3(0.9)}}}},
                Plastic{Mass::from_value(1000), Density::from_value(950)},
                Header{m3(2), m(0.5), m(0.25)},
                gradient(0.02)};
    UnitBed level = bed;
    level.fall = gradient(0);
    for (double depth = 0.05; depth <= 1.3; depth += 0.05) {
        CAPTURE(depth);
        double expected = 0;
        constexpr int pieces = 600;
        for (int i = 0; i < pieces; ++i)
            expected +=
                unit_bed_volume(m(std::max(0.0, depth - 0.6 * (i + 0.5) / pieces)), level).value() / pieces;
        CHECK_THAT(unit_bed_volume(m(depth), bed), is_within(m3(expected), m3(0.002)));
    }
}

TEST_CASE("depth and volume of a bed of units are inverses") {
    Random random;
    for (const double fall : {0.0, 0.01}) {
        const UnitBed bed = car_park_units(fall);
        const Volume full = unit_bed_volume(bed.top(), bed);
        for (int i = 0; i < 30; ++i) {
            const Volume volume = full * random.between(0, 1);
            REQUIRE_THAT(unit_bed_volume(unit_bed_depth(volume, bed), bed), is_within(volume, m3(1e-7)));
        }
        CHECK(unit_bed_depth(m3(0), bed) == m(0));
        CHECK(unit_bed_depth(full, bed) == bed.top());
        CHECK_THROWS_MATCHES(unit_bed_depth(full * 1.001, bed), Refused,
                             refuses_domain("at most what the bed holds"));
        CHECK_THROWS_MATCHES(unit_bed_depth(m3(-1), bed), Refused, refuses_domain("volume (-1 m3)"));
        CHECK_THROWS_MATCHES(unit_bed_volume(m(-1), bed), Refused, refuses_domain("depth"));
        CHECK_THROWS_MATCHES(unit_bed_volume(m(1.2), bed), Refused,
                             refuses_domain("at most the top of the stone"));
    }
}

TEST_CASE("tables that are none, and beds that do not hold them, are refused") {
    const auto with = [](auto change) {
        UnitBed bed = car_park_units(0.005);
        change(bed);
        return unit_bed_volume(m(0.5), bed);
    };
    const auto with_table = [&](const UnitTable& table) {
        return with([&](UnitBed& b) { b.units[1].table = table; });
    };
    CHECK_NOTHROW(with([](UnitBed&) {}));
    CHECK_THROWS_MATCHES(with_table({{m(0), m3(0)}}), Refused,
                         refuses_domain("table of kind 2 needs at least two rows"));
    CHECK_THROWS_MATCHES(with_table({{m(0), m3(0.1)}, {m(1), m3(0.2)}}), Refused,
                         refuses_domain("where a unit is empty"));
    CHECK_THROWS_MATCHES(with_table({{m(0), m3(0)}, {m(0.5), m3(0.3)}, {m(0.5), m3(0.4)}}), Refused,
                         refuses_domain("depths that do not rise: 0.5 m after 0.5 m"));
    CHECK_THROWS_MATCHES(with_table({{m(0), m3(0)}, {m(0.5), m3(0.3)}, {m(0.6), m3(0.2)}}), Refused,
                         refuses_domain("volumes that fall: 0.2 m3 after 0.3 m3"));
    CHECK_THROWS_MATCHES(with_table({{m(-1), m3(0)}, {m(0.5), m3(0.3)}}), Refused,
                         refuses_domain("depth (-1 m)"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.units.clear(); }), Refused,
                         refuses_domain("one to four kinds"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.units.resize(5, b.units[0]); }), Refused,
                         refuses_domain("one to four kinds"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.units[0].number = count(2.5); }), Refused,
                         refuses_domain("number of units"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.units[0].number = count(2000); }), Refused,
                         refuses_domain("must fit in the bed"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) {
                             b.plastic = Plastic{Mass::from_value(1), Density::from_value(0)};
                         }),
                         Refused, refuses_domain("plastic density"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) {
                             b.plastic = Plastic{Mass::from_value(-1), Density::from_value(950)};
                         }),
                         Refused, refuses_domain("plastic mass"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) {
                             b.header = Header{m3(1), m(0.6), m(0.6)};
                         }),
                         Refused, refuses_domain("its crown (1.2 m) is above the top of it (1.14 m)"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) {
                             b.header = Header{m3(1), m(0), m(0.6)};
                         }),
                         Refused, refuses_domain("header diameter"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) {
                             b.header = Header{m3(-1), m(0.1), m(0.6)};
                         }),
                         Refused, refuses_domain("header volume"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) {
                             b.header = Header{m3(1), m(0.1), m(-1)};
                         }),
                         Refused, refuses_domain("header invert"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.porosity = share(0); }), Refused,
                         refuses_domain("porosity"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.length = m(0); }), Refused, refuses_domain("length"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.width = m(0); }), Refused, refuses_domain("width"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.batter = batter(-1); }), Refused, refuses_domain("batter"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.base_stone = m(-1); }), Refused,
                         refuses_domain("base stone"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.cover_stone = m(-1); }), Refused,
                         refuses_domain("cover stone"));
    CHECK_THROWS_MATCHES(with([](UnitBed& b) { b.fall = gradient(0.03); }), Refused,
                         refuses_domain("lifts the high end"));
    CHECK_THROWS_MATCHES(unit_stage_storage(count(0), car_park_units()), Refused, refuses_domain("steps"));
    CHECK_THROWS_MATCHES(unit_stage_storage(count(10001), car_park_units()), Refused,
                         refuses_domain("at most 10000"));
}

}  // namespace undercroft::tests
