// Spoil kept against fill needed.
#include "calc/works/spoil_balance.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

constexpr double cubic_yard = 27 * 0.3048 * 0.3048 * 0.3048;
Volume yd3(double value) {
    return m3(cubic_yard * value);
}

}  // namespace

TEST_CASE("fill of a hotel's excavation comes from its own spoil, and the rest goes away", "[published]") {
    // Estimating textbook: 3000 bank yd3 dug, 817 compacted yd3 needed; 2800, 2295 and 3256 lb/yd3 in the
    // bank, loose and compacted: swell 22 %. The answers to keep, cart and load follow by mass balance
    // (math).
    const Share compacted = share(2800.0 / 3256);
    CHECK_THAT(spoil_kept(yd3(3000), share(1), yd3(817), compacted), is_within(yd3(950.054), yd3(5.1e-4)));
    CHECK(fill_imported(yd3(3000), share(1), yd3(817), compacted) == m3(0));
    const Volume away = spoil_carted(yd3(3000), share(1), yd3(817), compacted);
    CHECK_THAT(away, is_within(yd3(2049.946), yd3(5.1e-4)));
    const Share loose = share(2800.0 / 2295);
    CHECK_THAT(loose, is_within(share(1.22), share(5e-4)));
    const Volume trucked =
        spoil_converted(away, SpoilSoil::loam, SoilState::bank, SoilState::loose, loose, {});
    CHECK_THAT(trucked, is_within(yd3(2501.023), yd3(5.1e-4)));
    CHECK(spoil_loads(trucked, yd3(30), {}, {}) == count(84));
}

TEST_CASE("spoil that is fit is neither kept in excess nor bought again") {
    // A car park by hand: loam, 1193 m3 dug, 55 % fit, 421 m3 of fill: 656 m3 are fit, 468 are needed.
    CHECK_THAT(spoil_kept(m3(1193), share(0.55), m3(421), SpoilSoil::loam), is_within(m3(467.778), m3(5e-4)));
    CHECK(fill_imported(m3(1193), share(0.55), m3(421), SpoilSoil::loam) == m3(0));
    CHECK_THAT(spoil_carted(m3(1193), share(0.55), m3(421), SpoilSoil::loam),
               is_within(m3(725.222), m3(5e-4)));
    // With 20 % fit, 238.6 bank m3 are 214.74 compacted, and 206.26 must be bought.
    CHECK_THAT(fill_imported(m3(1193), share(0.20), m3(421), SpoilSoil::loam), is_near(m3(206.26), 1e-12));
}

TEST_CASE("what is dug is kept or carted, and what is needed is kept or bought") {
    Random random;
    for (int i = 0; i < 1000; ++i) {
        const Volume bank = m3(random.between(0, 3000));
        const Share fit = share(random.between(0, 1));
        const Volume need = m3(random.between(0, 3000));
        const std::variant<SpoilSoil, Share> soil =
            random.whole(0, 1) == 1 ? std::variant<SpoilSoil, Share>(share(random.between(0.7, 1.3)))
                                    : static_cast<SpoilSoil>(random.whole(0, 4));
        const Volume kept = spoil_kept(bank, fit, need, soil);
        const Volume placed = spoil_volume(kept, soil, SpoilState::compacted);
        const Volume bought = fill_imported(bank, fit, need, soil);
        const Volume carted = spoil_carted(bank, fit, need, soil);
        REQUIRE_THAT(kept + carted, is_within(bank, m3(1e-9)));
        REQUIRE_THAT(placed + bought, is_within(need, m3(1e-9)));
        REQUIRE(kept <= fit * bank + m3(1e-9));
        REQUIRE((bought == m3(0) || kept >= fit * bank - m3(1e-9)));
        REQUIRE(carted >= m3(-1e-9));
    }
}

TEST_CASE("volumes go through all states and back") {
    // US Army FM 5-434 (2000), Table 1-1 (from memory): clay 1.43 loose and 0.90 compacted; 0.63 compacted of
    // one loose.
    CHECK_THAT(spoil_converted(m3(1), SpoilSoil::clay, SoilState::bank, SoilState::loose, {}, {}),
               is_near(m3(1.43)));
    CHECK_THAT(spoil_converted(m3(1), SpoilSoil::clay, SoilState::loose, SoilState::compacted, {}, {}),
               is_within(m3(0.63), m3(0.005)));
    CHECK_THAT(spoil_converted(m3(1), SpoilSoil::clay, SoilState::compacted, SoilState::loose, {}, {}),
               is_within(m3(1.59), m3(0.005)));
    // Estimating textbook, 500 compacted yd3 at a shrinkage factor of 0.95: 526 bank yd3; with a swell of 15
    // %, 605.3.
    CHECK_THAT(
        spoil_converted(yd3(500), SpoilSoil::loam, SoilState::compacted, SoilState::bank, {}, share(0.95)),
        is_within(yd3(526), yd3(0.5)));
    CHECK_THAT(spoil_converted(yd3(500), SpoilSoil::loam, SoilState::compacted, SoilState::loose, share(1.15),
                               share(0.95)),
               is_within(yd3(605.263), yd3(5.1e-4)));
    constexpr SoilState states[] = {SoilState::bank, SoilState::loose, SoilState::compacted};
    for (const SpoilFactors& row : spoil_table())
        for (const SoilState from : states)
            for (const SoilState to : states) {
                const Volume there = spoil_converted(m3(7), row.soil, from, to, {}, {});
                CHECK_THAT(spoil_converted(there, row.soil, to, from, {}, {}), is_near(m3(7), 1e-12));
                if (from == to) CHECK(there == m3(7));
            }
}

TEST_CASE("the mass of fill to buy, by hand") {
    // math: 100 m3 at 95 % of 1.95 t/m3, 8 % of water, 10 % of waste.
    CHECK_THAT(fill_mass(m3(100), share(0.95), Density::from_value(1950), share(0.08), share(0.10)),
               is_near(Mass::from_value(100 * 0.95 * 1950 * 1.08 * 1.10)));
    const Density dry = Density::from_value(1950);
    CHECK_THROWS_MATCHES(fill_mass(m3(-1), share(1), dry, share(0), share(0)), Refused,
                         refuses_domain("compacted volume"));
    CHECK_THROWS_MATCHES(fill_mass(m3(1), share(95), dry, share(0), share(0)), Refused,
                         refuses_domain("so a degree of compaction of 95 % is 0.95"));
    CHECK_THROWS_MATCHES(fill_mass(m3(1), share(0), dry, share(0), share(0)), Refused,
                         refuses_domain("degree (0)"));
    CHECK_THROWS_MATCHES(fill_mass(m3(1), share(1), Density::from_value(0), share(0), share(0)), Refused,
                         refuses_domain("greatest dry density"));
    CHECK_THROWS_MATCHES(fill_mass(m3(1), share(1), dry, share(8), share(0)), Refused,
                         refuses_domain("moisture"));
    CHECK_THROWS_MATCHES(fill_mass(m3(1), share(1), dry, share(0), share(-0.1)), Refused,
                         refuses_domain("waste"));
}

TEST_CASE("shares and volumes that are none are refused by the balance") {
    CHECK_THROWS_MATCHES(spoil_kept(m3(-1), share(0.5), m3(1), SpoilSoil::sand), Refused,
                         refuses_domain("bank volume"));
    CHECK_THROWS_MATCHES(spoil_kept(m3(1), share(55), m3(1), SpoilSoil::sand), Refused,
                         refuses_domain("fit share"));
    CHECK_THROWS_MATCHES(fill_imported(m3(1), share(0.5), m3(-1), SpoilSoil::sand), Refused,
                         refuses_domain("fill needed"));
    CHECK_THROWS_MATCHES(spoil_carted(m3(1), share(0.5), m3(1), share(0)), Refused,
                         refuses_domain("soil factor"));
    CHECK_THROWS_MATCHES(
        spoil_converted(m3(1), SpoilSoil::sand, SoilState::bank, SoilState::loose, share(0.25), {}), Refused,
        refuses_domain("a swell of 25 % is 1.25"));
    CHECK_THROWS_MATCHES(spoil_converted(m3(-1), SpoilSoil::sand, SoilState::bank, SoilState::loose, {}, {}),
                         Refused, refuses_domain("volume (-1 m3)"));
}

}  // namespace undercroft::tests
