/// \file bed_options_job.hpp
/// Sites for the search of beds: one by hand, and others at random.
#pragma once

#include "calc/works/bed_options.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

inline Quantity rate_of(const std::string& text) {
    return parse_quantity(text);
}

inline calc::PricedKind unit_kind(double span, double rise) {
    calc::PricedKind kind;
    kind.unit = {{calc::Shape::ellipse, m(span), m(rise)},
                 m(span + 0.09),
                 m(0.15),
                 m(2.0),
                 m(1.9),
                 m(0.08),
                 m(0.15),
                 28.0 * kilogram,
                 Density::from_value(950),
                 m(0.75),
                 m(2.5),
                 Pressure::from_value(130e3),
                 Pressure::from_value(60e3)};
    kind.end_rate = rate_of("260 AUD/each");
    kind.middle_rate = rate_of("210 AUD/each");
    return kind;
}

/// 14 m x 10 m, two kinds of unit, one wheel of 80 kN.
inline calc::OptionsJob options_job() {
    using namespace calc;
    OptionsJob job;
    OptionsSite& site = job.site;
    site.length = m(14);
    site.width = m(10);
    site.ground_length = m(21);
    site.ground_width = m(17);
    site.edge_strip = m(0.6);
    site.side_margin = m(0.32);
    site.end_margin = m(0.3);
    site.not_counted = m(0.1);
    site.batter = batter(1);
    site.porosity = share(0.4);
    site.storage_wanted = m3(60);
    site.port_interval = count(0);
    site.ground = {m(100),
                   m(100.1),
                   m(100.05),
                   m(100.2),
                   m(96.5),
                   m(0.5),
                   Pressure::from_value(5e3),
                   degrees(33),
                   UnitWeight::from_value(18e3),
                   share(3),
                   Pressure::from_value(160e3)};
    site.traffic = {LoadClass::as5100_w80, share(1.15), share(1.2), Surfacing::flexible};
    const UnitWeight fill = UnitWeight::from_value(19e3);
    site.over_stone = {{LayerPart::initial_backfill, m(0.3), fill, std::nullopt},
                       {LayerPart::general_backfill, m(0.5), fill, std::nullopt},
                       {LayerPart::pavement, m(0.25), UnitWeight::from_value(22e3), std::nullopt}};
    site.stone = {Density::from_value(1600), share(0.01)};
    site.earth = {SpoilSoil::loam,           share(0.6),      m3(12),
                  Density::from_value(1300), 20e3 * kilogram, share(0.95),
                  Density::from_value(1950), share(0.08)};
    site.roll = {m(100), m(4.5), m(0.45), m(3)};
    job.kinds = {unit_kind(1.07, 0.71), unit_kind(0.8, 0.5)};
    job.rates = {
        {CostItem::pit, share(0), std::nullopt, rate_of("7 AUD/m3")},
        {CostItem::bedding_stone, share(0.05), rate_of("20 t"), rate_of("58 AUD/t")},
        {CostItem::embedment_stone, share(0.05), rate_of("20 t"), rate_of("58 AUD/t")},
        {CostItem::units_set, share(0), std::nullopt, rate_of("18 AUD/each")},
        {CostItem::fabric_rolls, share(0), std::nullopt, rate_of("890 AUD/each")},
        {CostItem::spoil_loads, share(0), std::nullopt, rate_of("240 AUD/each")},
        {CostItem::initial_bought, share(0.1), rate_of("1 t"), rate_of("17 AUD/t")},
    };
    job.base_stone = {m(0.15), m(0.6), m(0.15)};
    job.cover_stone = {m(0.15), m(0.3), m(0.075)};
    job.rows = {count(1), count(1000), count(1)};
    job.units = {count(2), count(1000), count(1)};
    return job;
}

/// The same with other numbers, so that cover, ground, water, space or storage decides.
inline calc::OptionsJob random_job(Random& random) {
    calc::OptionsJob job = options_job();
    calc::OptionsSite& site = job.site;
    site.length = m(random.between(6, 16));
    site.width = m(random.between(4, 14));
    site.ground_length = site.length + m(random.between(2, 9));
    site.ground_width = site.width + m(random.between(2, 9));
    site.storage_wanted = m3(random.between(2, 90));
    site.batter = batter(random.between(0, 1.5));
    site.ground.groundwater = m(random.between(95, 98.3));
    site.ground.presumptive = Pressure::from_value(random.between(60e3, 300e3));
    std::get<1>(site.over_stone[1]) = m(random.between(0, 1.5));
    site.roll.length = m(random.between(20, 100));
    job.kinds[1] = unit_kind(random.between(0.5, 1.5), random.between(0.3, 1.2));
    for (calc::PricedKind& kind : job.kinds) {
        kind.unit.greatest_cover = m(random.between(1.2, 2.5));
        kind.middle_rate.value = random.between(100, 400);
    }
    for (calc::Rate& rate : job.rates) rate.rate.value *= random.between(0.3, 3);
    return job;
}

}  // namespace undercroft::tests
