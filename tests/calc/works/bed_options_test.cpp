// The search of beds: against plain arithmetic, by bounds against one by one, and what it refuses.
#include "tests/calc/works/bed_options_job.hpp"

#include <algorithm>
#include <numbers>

#include "calc/bed/bed.hpp"
#include "calc/works/excavation.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// A bed as plain numbers in m, kN and AUD.
struct PlainBed {
    std::vector<double> place;  // kind, rows, units, base, cover
    double storage;
    double ratio;
    double cost;
};

double prism(double l, double w, double z, double d) {
    return l * w * d + (l + w) * z * d * d + 4.0 / 3 * z * z * d * d * d;
}

/// Every bed by formulas written anew here, for the rates of pit, stone and setting alone.
std::vector<PlainBed> plain_beds(const OptionsJob& job) {
    const OptionsSite& s = job.site;
    const auto in_m = [](Length x) { return x.value(); };
    const double z = s.batter.value();
    const double n = s.porosity.value();
    const double stone = 1600 * 9.80665e-3;  // kN/m3
    std::vector<PlainBed> beds;
    for (std::size_t k = 0; k < job.kinds.size(); ++k) {
        const ChamberKind& u = job.kinds[k].unit;
        const double span = in_m(u.arch.span);
        const double rise = in_m(u.arch.rise);
        const double over = in_m(u.over_feet);
        for (int r = 1; r <= 60; ++r)
            for (int c = 2; c <= 60; ++c) {
                const double row = 2 * 2.0 + (c - 2) * 1.9 - (c - 1) * 0.08;
                const double l = row + 0.6;
                const double w = r * over + (r - 1) * 0.15 + 0.64;
                const double hair = 1e-9;
                const bool along = l <= in_m(s.length) + hair && w <= in_m(s.width) + hair;
                const bool across = l <= in_m(s.width) + hair && w <= in_m(s.length) + hair;
                if (!along && !across) continue;
                for (int i = 0; i < 4; ++i)
                    for (int j = 0; j < 3; ++j) {
                        const double base = 0.15 + 0.15 * i;
                        const double cover = 0.15 + 0.075 * j;
                        const double general = in_m(std::get<1>(s.over_stone[1]));
                        const double fill_over = 0.3 + general;
                        const double height = base + rise + cover;
                        const double deep = height + fill_over + 0.25;
                        const double pit = deep - 0.1;
                        double ratio = 0;
                        const auto check = [&](double demand, double capacity) {
                            ratio =
                                std::max(ratio, capacity <= 0 ? 1000 : std::min(1000.0, demand / capacity));
                        };
                        const double least = cover + fill_over - 0.05;
                        check(0.75, least);
                        check(cover + fill_over + 0.25 + 0.1, in_m(u.greatest_cover));
                        const double fill = cover * stone + fill_over * 19 + 0.25 * 22 + 0.1 * 19;
                        check(fill, 60);
                        if (least < 0.6) {
                            check(1000, 1);
                        } else {
                            const double impact = 0.33 * std::max(0.0, 1 - 0.125 * least / 0.3048);
                            const double wheel =
                                1.2 * 80 * (1 + impact) / ((0.25 + 1.15 * least) * (0.40 + 1.15 * least));
                            check(fill + wheel, 130);
                            const double shared = std::min(base, 0.15);
                            const double under =
                                (fill + wheel) * std::max(1.0, (over + shared) / (0.3 + base + shared)) +
                                stone * (rise + base);
                            const double strip = base < 0.15 ? 0.15 + base : 0.3 + 0.15 + base;
                            const double water = s.ground.groundwater.value();
                            const double gamma = 100.1 - deep - water < strip ? 18 - 9.80665 : 18.0;
                            const double phi = 33 * std::numbers::pi / 180;
                            const double nq = std::exp(std::numbers::pi * std::tan(phi)) *
                                              std::pow(std::tan(std::numbers::pi / 4 + phi / 2), 2);
                            const double nc = (nq - 1) / std::tan(phi);
                            const double ng = 2 * (nq + 1) * std::tan(phi);
                            const double bears = (5 * nc + 0.5 * gamma * strip * ng) / 3;
                            check(under, std::min(bears, s.ground.presumptive.value() / 1e3));
                        }
                        check(deep, 100.1 - s.ground.groundwater.value() - 0.5);
                        const double level = height - 0.1;
                        const double t = std::clamp((level - base) / rise, 0.0, 1.0);
                        const double in_arch = span / 2 * rise * (t * std::sqrt(1 - t * t) + std::asin(t));
                        const double chambers = in_arch * row * r;
                        const double storage =
                            n * (prism(l, w, z, level) - chambers) + chambers - n * r * c * 28 / 950;
                        check(s.storage_wanted.value(), storage);
                        const auto pit_ratio = [&](double length, double width) {
                            return std::max((l + 2 * z * pit + 1.2) / length,
                                            (w + 2 * z * pit + 1.2) / width);
                        };
                        const double lies_along = pit_ratio(in_m(s.ground_length), in_m(s.ground_width));
                        const double lies_across = pit_ratio(in_m(s.ground_width), in_m(s.ground_length));
                        check(
                            !along ? lies_across : (!across ? lies_along : std::min(lies_along, lies_across)),
                            1);
                        const double whole = std::numbers::pi / 4 * span * rise * row * r;
                        const auto loads = [](double volume) {
                            return 20 * std::ceil(volume * 1.6 * 1.01 * 1.05 / 20 - 1e-9);
                        };
                        const double bedding = prism(l, w, z, base);
                        const double beside = prism(l, w, z, height) - bedding - whole;
                        const double cost = 2 * r * 260 + (c - 2) * r * job.kinds[k].middle_rate.value +
                                            prism(l, w, z, pit) * job.rates[0].rate.value +
                                            loads(bedding) * job.rates[1].rate.value * 1e3 +
                                            loads(beside) * job.rates[2].rate.value * 1e3 +
                                            r * c * job.rates[3].rate.value;
                        beds.push_back({{static_cast<double>(k) + 1.0, 1.0 * r, 1.0 * c, base, cover},
                                        storage,
                                        ratio,
                                        cost});
                    }
            }
    }
    return beds;
}

std::vector<double> place_of(const BedOption& o) {
    return {o.kind.value(), o.rows.value(), o.units.value(), o.base_stone.value(), o.cover_stone.value()};
}

bool same_place(const std::vector<double>& a, const std::vector<double>& b) {
    return std::equal(a.begin(), a.end(), b.begin(),
                      [](double x, double y) { return std::abs(x - y) < 1e-9; });
}

void require_same(const std::vector<BedOption>& found, const std::vector<PlainBed>& wanted,
                  const std::vector<std::size_t>& order) {
    REQUIRE(found.size() == order.size());
    for (std::size_t i = 0; i < found.size(); ++i) {
        const PlainBed& plain = wanted[order[i]];
        // Beds of one cost or ratio but for rounding may stand in another order.
        if (!same_place(place_of(found[i]), plain.place)) {
            REQUIRE((std::abs(found[i].cost.value() / plain.cost - 1) < 1e-9 ||
                     std::abs(found[i].worst.ratio / plain.ratio - 1) < 1e-9));
            continue;
        }
        REQUIRE(found[i].storage.value() == Approx(plain.storage).epsilon(1e-9));
        REQUIRE(found[i].worst.ratio == Approx(plain.ratio).epsilon(1e-9));
        REQUIRE(found[i].cost.value() == Approx(plain.cost).epsilon(1e-9));
    }
}

void require_same(const std::vector<BedOption>& a, const std::vector<BedOption>& b, std::size_t most) {
    REQUIRE(a.size() == std::min(most, b.size()));
    for (std::size_t i = 0; i < a.size(); ++i) {
        REQUIRE(place_of(a[i]) == place_of(b[i]));
        REQUIRE(a[i].cost == b[i].cost);
        REQUIRE(a[i].worst.ratio == b[i].worst.ratio);
        REQUIRE(a[i].across == b[i].across);
    }
}

constexpr Kept all{1'000'000, 1'000'000};

}  // namespace

TEST_CASE("every bed of a space has the storage, the worst ratio and the cost of plain arithmetic") {
    Random random;
    std::size_t passing = 0;
    std::size_t failing = 0;
    for (int site = 0; site < 60; ++site) {
        OptionsJob job = site == 0 ? options_job() : random_job(random);
        job.rates.resize(4);
        const std::vector<PlainBed> plain = plain_beds(job);
        std::vector<std::size_t> passes;
        std::vector<std::size_t> fails;
        for (std::size_t i = 0; i < plain.size(); ++i)
            (plain[i].ratio <= 1 + 1e-9 ? passes : fails).push_back(i);
        std::stable_sort(passes.begin(), passes.end(),
                         [&](std::size_t a, std::size_t b) { return plain[a].cost < plain[b].cost; });
        std::stable_sort(fails.begin(), fails.end(),
                         [&](std::size_t a, std::size_t b) { return plain[a].ratio < plain[b].ratio; });
        const Options options = bed_options(job, all, Pruning::none);
        REQUIRE(options.candidates.value() == static_cast<double>(plain.size()));
        REQUIRE(options.passed.value() == static_cast<double>(passes.size()));
        require_same(options.passing, plain, passes);
        require_same(options.failing, plain, fails);
        passing += passes.size();
        failing += fails.size();
    }
    CHECK(passing > 500);
    CHECK(failing > 500);
}

TEST_CASE("bounds lose none of the best: on 1000 sites the same beds as one by one") {
    Random random;
    std::size_t passing = 0;
    for (int site = 0; site < 1000; ++site) {
        const OptionsJob job = random_job(random);
        const Options every = bed_options(job, all, Pruning::none);
        const Options few = bed_options(job, {20, 10});
        REQUIRE(few.candidates == every.candidates);
        REQUIRE(few.passed == every.passed);
        require_same(few.passing, every.passing, 20);
        require_same(few.failing, every.failing, 10);
        passing += few.passing.size();
    }
    CHECK(passing > 2000);
}

TEST_CASE("a bed is told with the numbers of the single functions") {
    const OptionsJob job = options_job();
    const Options options = bed_options(job, {20, 10});
    REQUIRE(options.passing.size() == 20);
    CHECK(options.currency == Dimension::of_currency({'A', 'U', 'D'}));
    for (const BedOption& o : options.passing) {
        const ChamberKind& u = job.kinds[static_cast<std::size_t>(o.kind.value()) - 1].unit;
        const Length row = row_length(o.units, u.end_unit, u.middle_unit, u.joint_overlap);
        const Bed bed{o.length,      o.width,    job.site.batter, o.base_stone,
                      o.cover_stone, share(0.4), u.arch,          o.rows.value() * row};
        CHECK_THAT(bed_volume(o.water_depth.value(), bed), is_near(job.site.storage_wanted, 1e-9));
        CHECK_THAT(o.pit, is_near(pit_volume(o.length, o.width, o.bed_depth - m(0.1), batter(1))));
        CHECK_THAT(o.all_units, is_near(count(o.rows.value() * o.units.value())));
        const SheetFaces faces = wrap_faces(o.length, o.width, o.base_stone + u.arch.rise + o.cover_stone,
                                            batter(1), {true, true, true}, {m(0.45), m(0.45)});
        CHECK_THAT(o.fabric_rolls, is_near(rolls_of(cut_list(faces, job.site.roll))));
        CHECK(o.passes);
    }
    for (const BedOption& o : options.failing) {
        CHECK(!o.passes);
        CHECK(o.worst.ratio > 1);
    }
}

TEST_CASE("the least number of rolls is never more than the cut list's") {
    Random random;
    for (int i = 0; i < 2000; ++i) {
        const Bed bed{m(random.between(3, 60)),
                      m(random.between(2, 30)),
                      batter(random.between(0, 1.5)),
                      m(0.2),
                      m(0.2),
                      share(0.4),
                      {Shape::ellipse, m(1), m(0.7)},
                      m(1)};
        const Length height = m(random.between(0.5, 3));
        const SheetRoll roll{m(random.between(20, 100)), m(random.between(2, 6)), m(random.between(0.1, 0.6)),
                             m(3)};
        const Area net = lapped_wrap_area(bed.length, bed.width, height, bed.batter, {true, true, true},
                                          {roll.lap, roll.lap});
        REQUIRE(least_fabric_rolls(net, roll) <= fabric_rolls(bed, height, roll));
    }
}

TEST_CASE("each check decides where its limit is passed, and no other") {
    const auto only = [](const auto& change) {
        OptionsJob job = options_job();
        job.kinds.resize(1);
        job.site.storage_wanted = m3(1);
        job.site.ground.presumptive = Pressure::from_value(300e3);
        job.site.ground.friction = degrees(38);
        job.rows = job.units = {count(3), count(3), count(1)};
        job.base_stone = {m(0.3), m(0.3), m(1)};
        job.cover_stone = {m(0.15), m(0.15), m(1)};
        change(job);
        const Options options = bed_options(job, {1, 1});
        REQUIRE(options.candidates == count(1));
        return options.passing.empty() ? options.failing.front().worst.check : OptionCheck::none;
    };
    CHECK(only([](OptionsJob&) {}) == OptionCheck::none);
    CHECK(only([](OptionsJob& job) { job.site.storage_wanted = m3(500); }) == OptionCheck::storage);
    CHECK(only([](OptionsJob& job) { job.kinds[0].unit.least_cover = m(1.1); }) == OptionCheck::least_cover);
    CHECK(only([](OptionsJob& job) { std::get<1>(job.site.over_stone[1]) = m(0.1); }) ==
          OptionCheck::least_cover);
    CHECK(only([](OptionsJob& job) { job.kinds[0].unit.greatest_cover = m(1.1); }) ==
          OptionCheck::greatest_cover);
    CHECK(only([](OptionsJob& job) { job.kinds[0].unit.crown_limit = Pressure::from_value(50e3); }) ==
          OptionCheck::crown_pressure);
    CHECK(only([](OptionsJob& job) { job.kinds[0].unit.long_limit = Pressure::from_value(20e3); }) ==
          OptionCheck::long_pressure);
    CHECK(only([](OptionsJob& job) { job.site.ground.presumptive = Pressure::from_value(70e3); }) ==
          OptionCheck::subgrade);
    CHECK(only([](OptionsJob& job) { job.site.ground.groundwater = m(97.6); }) == OptionCheck::groundwater);
    CHECK(only([](OptionsJob& job) {
              job.site.width = m(5);
              job.site.ground_length = m(11);
          }) == OptionCheck::pit_length);
    CHECK(only([](OptionsJob& job) {
              job.site.ground_length = m(14.5);
              job.site.ground_width = m(9.5);
              job.site.width = m(5);
          }) == OptionCheck::pit_width);
}

TEST_CASE("rows run across the space where the bed fits so alone") {
    OptionsJob job = options_job();
    job.site.length = m(4);
    job.site.ground_length = m(10);
    job.site.storage_wanted = m3(5);
    job.units = {count(4), count(4), count(1)};
    const Options options = bed_options(job, {5, 5});
    REQUIRE(!options.passing.empty());
    for (const BedOption& option : options.passing) CHECK(option.across);
}

TEST_CASE("a search that cannot be made is refused before anything is computed") {
    const auto refused = [](const auto& change, const char* because) {
        OptionsJob job = options_job();
        change(job);
        try {
            (void)bed_options(job, {20, 10});
        } catch (const Refused& refusal) {
            CHECK_THAT(refusal.what(), Catch::Contains(because));
            return;
        }
        FAIL("not refused");
    };
    refused([](OptionsJob& job) { job.base_stone.to = m(0.1); },
            "base stone: a range from 0.15 m to 0.1 m is a range of nothing");
    refused([](OptionsJob& job) { job.cover_stone.step = m(0); }, "cover stone: step (0 m) must be above 0");
    refused([](OptionsJob& job) { job.rows.step = count(0); }, "rows: step");
    refused([](OptionsJob& job) { job.units.from = count(1); }, "units in a row (1");
    refused([](OptionsJob& job) { job.base_stone.step = job.cover_stone.step = m(0.0005); },
            "beds fit, and at most 1000000 are searched: widen the steps");
    refused([](OptionsJob& job) { job.site.length = job.site.width = m(2); }, "no bed fits");
    refused([](OptionsJob& job) { job.kinds.clear(); }, "there is no kind of unit");
    refused([](OptionsJob& job) { job.kinds[1].end_rate = rate_of("90 USD/each"); },
            "two currencies, AUD and USD");
    refused([](OptionsJob& job) { job.kinds[1].middle_rate = Quantity::bare(90); },
            "unit kind 2: the rate needs a currency");
    refused([](OptionsJob& job) { job.rates[0].rate = rate_of("7 AUD/t"); }, "rate 1: ");
    refused([](OptionsJob& job) { job.site.ground.groundwater = m(99.7); }, "no bed stays dry");
    refused([](OptionsJob& job) { job.site.ground.ground = m(90); }, "on existing ground or above");
    refused([](OptionsJob& job) { job.site.not_counted = m(3); }, "leaves nothing of a bed");
    refused([](OptionsJob& job) { job.site.storage_wanted = m3(0); }, "storage wanted");
    refused([](OptionsJob& job) { job.site.traffic.vehicle = LoadClass::en124_d400; }, "unit kind 1");
    refused([](OptionsJob& job) { job.site.ground.lowest_surface = m(101); }, "above its highest");
    refused([](OptionsJob& job) { job.kinds[0].unit.over_feet = m(1); }, "unit kind 1: span");
    refused([](OptionsJob& job) { std::get<0>(job.site.over_stone[0]) = LayerPart::base_stone; },
            "the layers are those over the stone");
}

}  // namespace undercroft::tests
