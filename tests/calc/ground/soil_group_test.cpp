// The AASHTO group of a soil and its group index.
#include "calc/ground/soil_group.hpp"

#include <algorithm>
#include <map>

#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

constexpr Plasticity np = Plasticity::non_plastic;

Consistency percent(int value) {
    return Percent{static_cast<double>(value)};
}

std::string group(double p10, double p40, double p200, const Consistency& liquid, const Consistency& index) {
    return soil_group({{p10}, {p40}, {p200}, liquid, index});
}
std::string group(double p10, double p40, double p200, double liquid, double index) {
    return group(p10, p40, p200, Percent{liquid}, Percent{index});
}

double group_index(double p200, double liquid, double index) {
    return number(soil_index({p200}, Percent{liquid}, Percent{index}));
}

/// A soil in whole percents; liquid limit and plasticity index 0 where it is non-plastic.
struct Soil {
    int p10, p40, p200, liquid, index;
};

/// AASHTO M 145, Table 1, one row a group (three independent reproductions): the most that passes 2.00, 0.425
/// and 0.075 mm, the least that passes 0.425 and 0.075 mm, and the ranges of liquid limit and plasticity
/// index.
struct Row {
    const char* group;
    int most_p10, most_p40, least_p40, most_p200, least_p200;
    int least_liquid, most_liquid, least_index, most_index;
};
constexpr int any = 1000;
constexpr Row table[] = {
    {"A-1-a", 50, 30, 0, 15, 0, 0, any, 0, 6},       {"A-1-b", any, 50, 0, 25, 0, 0, any, 0, 6},
    {"A-3", any, any, 51, 10, 0, 0, any, 0, 0},      {"A-2-4", any, any, 0, 35, 0, 0, 40, 0, 10},
    {"A-2-5", any, any, 0, 35, 0, 41, any, 0, 10},   {"A-2-6", any, any, 0, 35, 0, 0, 40, 11, any},
    {"A-2-7", any, any, 0, 35, 0, 41, any, 11, any}, {"A-4", any, any, 0, any, 36, 0, 40, 0, 10},
    {"A-5", any, any, 0, any, 36, 41, any, 0, 10},   {"A-6", any, any, 0, any, 36, 0, 40, 11, any},
    {"A-7", any, any, 0, any, 36, 41, any, 11, any},
};

bool fits(const Row& row, const Soil& soil) {
    return soil.p10 <= row.most_p10 && soil.p40 <= row.most_p40 && soil.p40 >= row.least_p40 &&
           soil.p200 <= row.most_p200 && soil.p200 >= row.least_p200 && soil.liquid >= row.least_liquid &&
           soil.liquid <= row.most_liquid && soil.index >= row.least_index && soil.index <= row.most_index;
}

/// The first row that fits; A-7 parted by PI <= LL - 30.
std::string by_table(const Soil& soil) {
    for (const Row& row : table) {
        if (!fits(row, soil)) continue;
        if (std::string(row.group) != "A-7") return row.group;
        return soil.index + 30 <= soil.liquid ? "A-7-5" : "A-7-6";
    }
    FAIL("no row fits");
    return {};
}

std::string by_calc(const Soil& soil) {
    if (soil.index > 0)
        return group(soil.p10, soil.p40, soil.p200, percent(soil.liquid), percent(soil.index));
    const Consistency liquid = soil.liquid > 0 ? percent(soil.liquid) : Consistency(np);
    return group(soil.p10, soil.p40, soil.p200, liquid, np);
}

/// Every pair of fine sieves in whole percents that fall, with the coarse sieve on both sides of its limit.
template <class Do>
void for_each_passing(const Do& do_with) {
    for (int p40 = 0; p40 <= 100; ++p40)
        for (int p200 = 0; p200 <= p40; ++p200)
            for (const int p10 : {p40, 50, 51, 100})
                if (p10 >= p40) do_with(p10, p40, p200);
}

}  // namespace

TEST_CASE("soils of published examples fall into their groups", "[published]") {
    // Worked examples after Das on a public page.
    CHECK(group(100, 80, 58, 30, 10) == "A-4");
    CHECK(group(74.28, 31.64, 0, np, np) == "A-1-b");
    CHECK(group(97.0, 59.4, 1.2, np, np) == "A-3");
    CHECK(group_index(58, 30, 10) == 3);  // 3.45
    // AASHTO M 145, examples of the group index.
    CHECK(group_index(55, 40, 25) == 10);
    CHECK(group_index(80, 90, 50) == 46);
    CHECK(group(100, 90, 80, 90, 50) == "A-7-5");
    CHECK(group(100, 90, 55, 40, 25) == "A-6");
    // Terms keep their signs: not 1, which each term cut off at 0 would give.
    CHECK(group_index(40, 20, 2) == 0);
}

TEST_CASE("every soil falls into the first group of the table that fits it, and into one only") {
    // The whole domain in whole percents: all pairs of fine sieves, and liquid limits and plasticity indices
    // on both sides of every limit of the table.
    const int liquids[] = {1, 12, 17, 39, 40, 41, 42, 60, 100};
    const int indices[] = {1, 5, 6, 7, 10, 11, 12, 29, 30, 31, 59, 70, 99};
    std::vector<std::pair<int, int>> limits = {{0, 0}, {40, 0}, {41, 0}};
    for (const int liquid : liquids)
        for (const int index : indices)
            if (index < liquid) limits.emplace_back(liquid, index);
    std::map<std::string, int> found;
    for_each_passing([&](int p10, int p40, int p200) {
        for (const auto& [liquid, index] : limits) {
            const Soil soil{p10, p40, p200, liquid, index};
            const std::string expected = by_table(soil);
            if (by_calc(soil) != expected)
                FAIL(by_calc(soil) << " for " << expected << ": " << p10 << " " << p40 << " " << p200
                                   << " LL " << liquid << " PI " << index);
            ++found[expected];
            // Behind the rows of the table shut each other out.
            const auto later = std::count_if(std::begin(table) + 3, std::end(table),
                                             [&](const Row& row) { return fits(row, soil); });
            if (later != 1) FAIL(later << " rows fit");
        }
    });
    CHECK(found.size() == 12);
    for (const auto& [name, soils] : found) {
        CAPTURE(name);
        CHECK(soils > 100);
    }
}

TEST_CASE("A-7-5 and A-7-6 are parted by the line PI = LL - 30, everywhere") {
    for (int liquid = 41; liquid <= 100; ++liquid)
        for (int index = 11; index < liquid; ++index)
            REQUIRE(by_calc({100, 100, 36, liquid, index}) == (index <= liquid - 30 ? "A-7-5" : "A-7-6"));
}

TEST_CASE("group index is that of the equation with the liquid limit gathered, at every whole percent") {
    // math: (F - 35)(0.2 + 0.005 (LL - 40)) = 0.005 LL (F - 35); in thousandths all is whole.
    for (int f = 0; f <= 100; ++f) {
        for (int liquid = 2; liquid <= 100; ++liquid) {
            for (int index = 1; index < liquid; ++index) {
                int thousandths = 10 * (f - 15) * (index - 10);
                if (f > 35)
                    thousandths += 5 * liquid * (f - 35);
                else if (index <= 10)
                    thousandths = 0;
                const int expected = thousandths <= 0 ? 0 : (thousandths + 500) / 1000;
                if (group_index(f, liquid, index) != expected)
                    FAIL(group_index(f, liquid, index)
                         << " for " << expected << ": F " << f << " LL " << liquid << " PI " << index);
            }
        }
    }
    SUCCEED();
}

TEST_CASE("group index grows with fines, liquid limit and plasticity, and is 0 without it") {
    // AASHTO M 145: the larger the index, the poorer the subgrade.
    for (int f = 36; f < 100; ++f)
        for (int liquid = 30; liquid < 100; ++liquid)
            for (int index = 11; index < 29; ++index) {
                const double here = group_index(f, liquid, index);
                REQUIRE(group_index(f + 1, liquid, index) >= here);
                REQUIRE(group_index(f, liquid + 1, index) >= here);
                REQUIRE(group_index(f, liquid, index + 1) >= here);
            }
    for (const double f : {0, 35, 36, 100}) {
        CHECK(soil_index({f}, np, np) == share(0));
        CHECK(soil_index({f}, percent(60), np) == share(0));
    }
}

TEST_CASE("percentages are rounded to whole ones first, halves up") {
    // Common practice, as the standard reports them.
    CHECK(group(60, 55, 35.49, 30, 5) == "A-2-4");
    CHECK(group(60, 55, 35.5, 30, 5) == "A-4");
    CHECK(group(50.49, 30.49, 15.49, 30, 6.49) == "A-1-a");
    CHECK(group(50.5, 30, 15, 30, 6) == "A-1-b");
    CHECK(group(50, 30.5, 15, 30, 6) == "A-1-b");
    CHECK(group(50, 30, 15.5, 30, 6) == "A-1-b");
    CHECK(group(50, 30, 15, 30, 6.5) == "A-2-4");
    CHECK(group(100, 90, 50, 40.49, 10.49) == "A-4");
    CHECK(group(100, 90, 50, 40.5, 10.49) == "A-5");
    CHECK(group(100, 90, 50, 40.49, 10.5) == "A-6");
    CHECK(group(100, 90, 50, 60, 30.4) == "A-7-5");
    CHECK(group(100, 90, 50, 60, 30.5) == "A-7-6");
    CHECK(group(100, 50.5, 10.49, np, np) == "A-3");
    CHECK(group(100, 50.49, 10, np, np) == "A-1-b");
    CHECK(group(100, 51, 10.5, np, np) == "A-2-4");
    // A half that binary fractions miss by a hair is a half.
    CHECK(group(60, 55, 35.5 - 1e-12, 30, 5) == "A-4");
    CHECK(group_index(54.6, 40.4, 24.5) == 10);
    // math: 0.005 LL (F - 35) = 0.5, 0.5 and 1.5.
    CHECK(group_index(36, 100, 10) == 1);
    CHECK(group_index(37, 50, 10) == 1);
    CHECK(group_index(38, 100, 10) == 2);
}

TEST_CASE("soils that no laboratory reports are refused") {
    CHECK_NOTHROW(group(100, 100, 100, 40, 10));
    CHECK_NOTHROW(group(100 * (1 + 1e-12), 0, 0, np, np));
    CHECK_THROWS_MATCHES(group(100.1, 50, 10, 40, 10), Refused,
                         refuses_domain("passing 2 mm (100.1 %) must be from 0 % to 100 %"));
    CHECK_THROWS_MATCHES(group(100, 101, 10, 40, 10), Refused, refuses_domain("passing 0.425 mm (101 %)"));
    CHECK_THROWS_MATCHES(group(100, 50, -1, 40, 10), Refused, refuses_domain("passing 0.075 mm (-1 %)"));
    CHECK_THROWS_MATCHES(group(40, 50, 10, 40, 10), Refused,
                         refuses_domain("must not rise towards the finer sieve"));
    CHECK_THROWS_MATCHES(group(60, 50, 51, 40, 10), Refused,
                         refuses_domain("must not rise towards the finer sieve"));
    CHECK_NOTHROW(group(50, 50, 50, 40, 10));
    CHECK_THROWS_MATCHES(
        group(60, 50, 40, 0, 10), Refused,
        refuses_domain("liquid limit (0 %) must be above 0, or NP for a soil that has none"));
    CHECK_NOTHROW(group(60, 50, 40, Percent{0.6}, np));
    CHECK_THROWS_MATCHES(group(60, 50, 40, INFINITY, 10), Refused, refuses_domain("liquid limit"));
    CHECK_THROWS_MATCHES(group(60, 50, 40, 40, 0.49), Refused,
                         refuses_domain("plasticity index (0.49 %) must be 1 % or more when rounded"));
    CHECK_NOTHROW(group(60, 50, 40, 40, 0.5));
    CHECK_THROWS_MATCHES(group(60, 50, 40, 40, 40), Refused,
                         refuses_domain("plasticity index (40 %) must be below the liquid limit (40 %)"));
    CHECK_THROWS_MATCHES(group(60, 50, 40, np, Percent{10}), Refused,
                         refuses_value("liquid limit NP goes with plasticity index NP, not with 10 %"));
    CHECK_THROWS_MATCHES(soil_index({101}, np, np), Refused, refuses_domain("passing 0.075 mm (101 %)"));
    CHECK_THROWS_MATCHES(soil_index({50}, Percent{0}, np), Refused, refuses_domain("liquid limit (0 %)"));
    CHECK_THROWS_MATCHES(soil_index({50}, np, Percent{5}), Refused, refuses_value("liquid limit NP"));
}

}  // namespace undercroft::tests
