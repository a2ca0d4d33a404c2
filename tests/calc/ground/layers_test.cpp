// One list of layers, from the base of the bed up, and what is taken from it.
#include "calc/ground/layers.hpp"

#include "calc/ground/fill_load.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

/// A car park's, by hand: 0.3 + 0.7 + 0.16 of stone and chambers, 0.3 + 0.5 + 0.24 of fill, 0.26 of pavement.
SiteLayers layers() {
    return {{LayerPart::base_stone, m(0.30), kn_per_m3(16), std::nullopt},
            {LayerPart::chambers, m(0.70), kn_per_m3(16), std::nullopt},
            {LayerPart::cover_stone, m(0.16), kn_per_m3(16), m(0.2)},
            {LayerPart::initial_backfill, m(0.30), kn_per_m3(19), m(0.15)},
            {LayerPart::general_backfill, m(0.50), kn_per_m3(18), m(0.15)},
            {LayerPart::general_backfill, m(0.24), kn_per_m3(20), m(0.15)},
            {LayerPart::subbase, m(0), kn_per_m3(21), std::nullopt},
            {LayerPart::pavement, m(0.26), kn_per_m3(23), std::nullopt}};
}

}  // namespace

TEST_CASE("layers of the list give depths and weights by part") {
    CHECK_THAT(layers_depth(layers(), LayerPart::base_stone, LayerPart::pavement), is_near(m(2.46)));
    CHECK_THAT(layers_depth(layers(), LayerPart::cover_stone, LayerPart::pavement), is_near(m(1.46)));
    CHECK_THAT(layers_depth(layers(), LayerPart::general_backfill, LayerPart::general_backfill),
               is_near(m(0.74)));
    CHECK(layers_depth(layers(), LayerPart::subbase, LayerPart::subbase).value() == 0);
    // 0.16 x 16 + 0.30 x 19 + 0.50 x 18 + 0.24 x 20 + 0.26 x 23
    CHECK_THAT(fill_load(layer_stack(layers(), LayerPart::cover_stone, LayerPart::pavement)),
               is_near(kpa(28.04)));
    // From the base on the bed is one layer, 0.30 + 0.70 + 0.16 m; the subbase of no thickness is none.
    const auto whole = layer_stack(layers(), LayerPart::base_stone, LayerPart::pavement);
    REQUIRE(whole.size() == 5);
    CHECK_THAT(std::get<0>(whole[0]), is_near(m(1.16)));
    CHECK_THAT(std::get<1>(whole[0]), is_near(kn_per_m3(16)));
    SiteLayers heavy = layers();
    std::get<2>(heavy[0]) = kn_per_m3(20);
    CHECK_THAT(std::get<1>(layer_stack(heavy, LayerPart::base_stone, LayerPart::pavement)[0]),
               is_near(kn_per_m3((0.30 * 20 + 0.86 * 16) / 1.16)));
}

TEST_CASE("each layer is laid in its own lifts") {
    // 1 of 0.16 m; 2 of 0.15 m; 4 of 0.125 m and 2 of 0.12 m
    CHECK(layer_lifts(layers(), LayerPart::cover_stone, LayerPart::cover_stone) == count(1));
    CHECK(layer_lifts(layers(), LayerPart::initial_backfill, LayerPart::initial_backfill) == count(2));
    CHECK(layer_lifts(layers(), LayerPart::general_backfill, LayerPart::general_backfill) == count(6));
    CHECK(layer_lifts(layers(), LayerPart::subbase, LayerPart::subbase) == count(0));
    const LiftLayers laid = laid_layers(layers(), LayerPart::cover_stone, LayerPart::general_backfill);
    REQUIRE(laid.size() == 4);
    CHECK_THAT(std::get<2>(laid[0]), is_near(m(0.2)));
}

TEST_CASE("every lift from the base to the surface, with the cover and fill over the crowns") {
    // 0.30 and 0.70 without a greatest lift are one each; 1 of 0.16, 2 of 0.15, 4 of 0.125, 2 of 0.12, 1 of
    // 0.26
    const LaidLifts plan = laid_lifts(layers());
    REQUIRE(plan.size() == 12);
    const auto is_lift = [&plan](std::size_t n, double layer, Length thickness, Length top, Length cover,
                                 Pressure fill) {
        const auto& [number, row, t, height, over, weight] = plan.at(n - 1);
        CHECK(number == count(static_cast<double>(n)));
        CHECK(row == count(layer));
        CHECK_THAT(t, is_near(thickness));
        CHECK_THAT(height, is_near(top));
        CHECK_THAT(over, is_near(cover));
        CHECK_THAT(weight, is_near(fill));
    };
    is_lift(1, 1, m(0.30), m(0.30), m(0), kpa(0));
    is_lift(2, 2, m(0.70), m(1.00), m(0), kpa(0));
    is_lift(3, 3, m(0.16), m(1.16), m(0.16), kpa(2.56));
    is_lift(4, 4, m(0.15), m(1.31), m(0.31), kpa(2.56 + 2.85));
    is_lift(9, 5, m(0.125), m(1.96), m(0.96), kpa(2.56 + 5.7 + 9.0));
    is_lift(12, 8, m(0.26), m(2.46), m(1.46), kpa(28.04));
}

TEST_CASE("lifts agree with the depths and weights of their layers, and are none thicker than allowed") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        SiteLayers list = layers();
        for (auto& [part, thickness, weight, lift] : list) {
            thickness = m(random.between(0.01, 2));
            lift = m(random.between(0.05, 0.6));
        }
        const LaidLifts plan = laid_lifts(list);
        const auto& [number, row, t, height, cover, fill] = plan.back();
        REQUIRE_THAT(height, is_near(layers_depth(list, LayerPart::base_stone, LayerPart::pavement)));
        REQUIRE_THAT(cover, is_near(layers_depth(list, LayerPart::cover_stone, LayerPart::pavement)));
        REQUIRE_THAT(fill,
                     is_near(fill_load(layer_stack(list, LayerPart::cover_stone, LayerPart::pavement))));
        REQUIRE(number == layer_lifts(list, LayerPart::base_stone, LayerPart::pavement));
        for (const auto& lift : plan)
            REQUIRE(std::get<2>(lift) <=
                    1.000001 * *std::get<3>(list[static_cast<std::size_t>(std::get<1>(lift).value()) - 1]));
    }
}

TEST_CASE("lifts of no layer, and more than 200 of them, are refused") {
    CHECK_THROWS_MATCHES(laid_lifts({}), Refused, refuses_domain("the list has no layer"));
    CHECK_THROWS_MATCHES(laid_lifts({{LayerPart::pavement, m(0), kn_per_m3(22), std::nullopt}}), Refused,
                         has_no_answer("no layer has a thickness"));
    const SiteLayers thin = {{LayerPart::general_backfill, m(2), kn_per_m3(19), m(0.01)}};
    CHECK(laid_lifts(thin).size() == 200);
    CHECK_THROWS_MATCHES(laid_lifts({{LayerPart::general_backfill, m(2.01), kn_per_m3(19), m(0.01)}}),
                         Refused, refuses_domain("more than 200 lifts"));
}

TEST_CASE("parts that touch add up, and a layer cut in two changes no depth") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        SiteLayers list = layers();
        for (auto& [part, thickness, weight, lift] : list) thickness = m(random.between(0.01, 2));
        const Length below = layers_depth(list, LayerPart::base_stone, LayerPart::cover_stone);
        const Length above = layers_depth(list, LayerPart::initial_backfill, LayerPart::pavement);
        const Length all = layers_depth(list, LayerPart::base_stone, LayerPart::pavement);
        REQUIRE_THAT(below + above, is_near(all));
        const std::size_t at = static_cast<std::size_t>(random.between(0, 7.99));
        auto half = list[at];
        std::get<1>(half) = 0.5 * std::get<1>(half);
        list[at] = half;
        list.insert(list.begin() + static_cast<std::ptrdiff_t>(at), half);
        REQUIRE_THAT(layers_depth(list, LayerPart::base_stone, LayerPart::pavement), is_near(all));
    }
}

TEST_CASE("a list out of order, or a layer that lacks what is asked of it, is refused") {
    const auto depth = [](const SiteLayers& list) {
        return layers_depth(list, LayerPart::base_stone, LayerPart::pavement);
    };
    SiteLayers list = layers();
    std::swap(list[3], list[7]);
    CHECK_THROWS_MATCHES(depth(list), Refused, refuses_domain("layer 5 belongs under the one before it"));
    CHECK_THROWS_MATCHES(depth({}), Refused, refuses_domain("the list has no layer"));
    list = layers();
    std::get<1>(list[0]) = m(-0.1);
    CHECK_THROWS_MATCHES(depth(list), Refused, refuses_domain("thickness"));
    list = layers();
    std::get<2>(list[7]) = kn_per_m3(0);
    CHECK_THROWS_MATCHES(depth(list), Refused, refuses_domain("unit weight"));
    CHECK_THROWS_MATCHES(layers_depth(layers(), LayerPart::pavement, LayerPart::base_stone), Refused,
                         refuses_domain("the highest part"));
    CHECK_THROWS_MATCHES(laid_layers(layers(), LayerPart::cover_stone, LayerPart::pavement), Refused,
                         refuses_domain("layer 8 has no greatest lift"));
    list = layers();
    std::get<3>(list[3]) = m(0);
    CHECK_THROWS_MATCHES(layer_lifts(list, LayerPart::cover_stone, LayerPart::general_backfill), Refused,
                         refuses_domain("greatest lift"));
    CHECK_THROWS_MATCHES(layer_stack(layers(), LayerPart::subbase, LayerPart::subbase), Refused,
                         has_no_answer("no layer of these parts has a thickness"));
}

}  // namespace undercroft::tests
