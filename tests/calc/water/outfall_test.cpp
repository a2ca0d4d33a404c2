// The outfall pipe: inlet control, outlet control, and the water surface along it.
#include "calc/water/outfall.hpp"

#include "calc/water/circular_section.hpp"
#include "calc/water/pipe.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/ode.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

constexpr PipeInlet all_inlets[] = {PipeInlet::square_edge,       PipeInlet::groove_headwall,
                                    PipeInlet::groove_projecting, PipeInlet::metal_headwall,
                                    PipeInlet::metal_mitred,      PipeInlet::metal_projecting,
                                    PipeInlet::bevel_45,          PipeInlet::bevel_34};

/// Of the pipe of 0.45 m, 20 m long at 1 %, n 0.012, square edge.
OutfallHeads small_pipe(double flow, double tailwater) {
    return outfall_heads(m3_per_s(flow), m(0.45), m(20), gradient(0.01), share(0.012), PipeInlet::square_edge,
                         m(tailwater), {});
}

}  // namespace

TEST_CASE("inlet control of two 36-in pipes", "[published]") {
    // FHWA HDS-5, 2nd ed. (2001), ch. V, US example: corrugated, square edge in a headwall, S 0.05. HW/D
    // published from charts (3 %, 7 % above the chart's range) and recomputed from Table 9.
    struct Row {
        double flow, published, tolerance, recomputed;
    };
    for (const Row& row :
         {Row{51, 1.33, 0.03, 1.322625}, Row{72, 2.00, 0.03, 1.975728}, Row{87, 2.77, 0.07, 2.578800}}) {
        CAPTURE(row.flow);
        const Length head =
            inlet_control_headwater(cfs(row.flow), ft(3), gradient(0.05), PipeInlet::metal_headwall);
        CHECK_THAT(head, is_near(ft(3 * row.published), row.tolerance));
        CHECK_THAT(head, is_near(ft(3 * row.recomputed), 3e-5));  // g, Ku and dc rounded there
    }
}

TEST_CASE("outlet control of the same pipes", "[published]") {
    // The same example: n 0.024, L 200 ft, ke 0.5, no tailwater; the outlet's invert is 10 ft lower.
    // Published (read from charts) and recomputed headwater elevation less that of the inlet's invert, 878
    // ft; friction there with k = 29 and R^1.33, 0.6 % less than Manning's exact one.
    const OutfallHeads full = outfall_heads(cfs(87), ft(3), ft(200), gradient(0.05), share(0.024),
                                            PipeInlet::metal_headwall, m(0), {});
    CHECK_THAT(full.outlet_control, is_within(ft(886.0 - 878), ft(0.15)));
    CHECK_THAT(full.outlet_control, is_within(ft(885.9631 - 878), ft(0.006 * 15.05)));
    // Inlet control governs the two lower flows, as published; the pipe carries them part full.
    for (const double flow : {51., 72.}) {
        const OutfallHeads heads = outfall_heads(cfs(flow), ft(3), ft(200), gradient(0.05), share(0.024),
                                                 PipeInlet::metal_headwall, m(0), {});
        CAPTURE(flow);
        CHECK(heads.headwater == heads.inlet_control);
    }
    CHECK_THAT(critical_depth({ft(3)}, cfs(51)),
               is_near(ft(2.3230), 3e-4));  // printed there with rounded chart values
    CHECK_THAT(critical_depth({ft(3)}, cfs(72)), is_near(ft(2.6834), 3e-4));
    CHECK_THAT(critical_depth({ft(3)}, cfs(87)), is_near(ft(2.8265), 3e-4));
}

TEST_CASE("a pipe of 0.45 m between its limits") {
    // Recomputed (math) from HDS-5's equations: inlet and outlet control.
    CHECK_THAT(small_pipe(0.05, 0).inlet_control, is_within(m(0.2100), m(1e-4)));
    CHECK_THAT(small_pipe(0.25, 0).inlet_control, is_within(m(0.6218), m(1e-4)));
    CHECK_THAT(small_pipe(0.40, 0).inlet_control, is_within(m(1.1249), m(4e-4)));
    // Friction there with 19.63 and R^1.33, 0.8 % less than Manning's exact one.
    CHECK_THAT(small_pipe(0.25, 0.6).outlet_control, is_within(m(0.7191), m(1.2e-3)));
    CHECK_THAT(small_pipe(0.40, 0).outlet_control, is_within(m(1.0516), m(4e-3)));
    CHECK(small_pipe(0.25, 0.6).headwater == small_pipe(0.25, 0.6).outlet_control);
    CHECK(small_pipe(0.25, 0).headwater == small_pipe(0.25, 0).inlet_control);
    CHECK(small_pipe(0.40, 0).headwater == small_pipe(0.40, 0).inlet_control);
    // Part full and steep: the profile begins at critical depth, and both controls agree to 1 %.
    CHECK_THAT(small_pipe(0.05, 0).outlet_control, is_near(small_pipe(0.05, 0).inlet_control, 0.01));
    // HDS-5's own K M c Y of the coefficients example, p. 195 (published): submerged 0.0398 F^2 + 0.67 - 0.5
    // S.
    const Flow at_f_6 =
        6.0 * cfs(1) / (ft(1) * ft(1) * sqrt(ft(1))) * CircularSection{ft(2)}.area(ft(2)) * sqrt(ft(2));
    CHECK_THAT(inlet_control_headwater(at_f_6, ft(2), gradient(0.02), PipeInlet::square_edge),
               is_near(ft(2 * (0.0398 * 36 + 0.67 - 0.01)), 1e-9));
    CHECK_THAT(inlet_control_headwater(at_f_6, ft(2), gradient(0.02), PipeInlet::metal_mitred),
               is_near(ft(2 * (0.0463 * 36 + 0.75 + 0.014)), 1e-9));
}

TEST_CASE("critical depth has Froude's number 1") {
    Random random;
    for (int i = 0; i < 300; ++i) {
        const CircularSection pipe{m(random.between(0.1, 3))};
        const Length depth = random.between(0.01, 0.99) * pipe.diameter;
        const double b = pipe.surface_width(depth).value();
        const double a = pipe.area(depth).value();
        const Flow flow = m3_per_s(std::sqrt(9.80665 * a * a * a / b));
        REQUIRE_THAT(critical_depth(pipe, flow), is_near(depth, 1e-9));
    }
    CHECK(critical_depth({m(1)}, m3_per_s(0)) == m(0));
    CHECK(critical_depth({m(1)}, m3_per_s(1e3)) < m(1));
}

TEST_CASE("the water surface in a pipe follows dy/dx = (S0 - Sf)/(1 - Fr2) (GSL Runge-Kutta)") {
    struct Case {
        const char* name;
        double slope, length, flow, outlet_depth;
    };
    for (const Case& c :
         {Case{"falls over the outlet on a mild slope", 0.001, 30, 0.10, 0.33},
          Case{"backed up on a mild slope", 0.001, 30, 0.10, 0.58},
          Case{"backed up on a steep slope", 0.02, 12, 0.10, 0.50}, Case{"level", 0, 15, 0.08, 0.3}}) {
        INFO(c.name);
        const PipeReach pipe{m(0.6), m(c.length), gradient(c.slope), share(0.013)};
        const CircularSection section{pipe.diameter};
        REQUIRE(m(c.outlet_depth) > critical_depth(section, m3_per_s(c.flow)));
        const auto upstream = [&](double, double y) {
            const double a = section.area(m(y)).value();
            const double fr2 = c.flow * c.flow * section.surface_width(m(y)).value() / (9.80665 * a * a * a);
            const double radius = a / section.wetted_perimeter(m(y)).value();
            const double sf = std::pow(c.flow * 0.013 / (a * std::pow(radius, 2.0 / 3)), 2);
            return (sf - c.slope) / (1 - fr2);
        };
        const double expected = Ode(upstream, c.outlet_depth, 0).at(c.length);
        const PipeState found = state_at_inlet(pipe, m3_per_s(c.flow), m(c.outlet_depth));
        CHECK_THAT(found.depth, is_within(m(expected), m(5e-4)));
        CHECK_THAT(found.speed, is_near(Speed(m3_per_s(c.flow) / section.area(found.depth))));
    }
}

TEST_CASE("long pipes come to normal depth, full ones to a straight pressure line") {
    const PipeReach mild{m(0.6), m(5000), gradient(0.002), share(0.013)};
    const Flow flow = m3_per_s(0.15);
    const Length normal = pipe_depth(flow, m(0.6), gradient(0.002), share(0.013));
    for (const double outlet_depth : {0.0, 0.3, 0.59, 0.9, 2.0})
        CHECK_THAT(state_at_inlet(mild, flow, m(outlet_depth)).depth, is_near(normal, 2e-3));
    // Full: HEC-22 friction, (n Q/(0.3117 D^(8/3)))^2 (published constant 0.312).
    const PipeReach full{m(0.6), m(100), gradient(0.002), share(0.013)};
    const double friction = std::pow(0.4 * 0.013 / (0.311685 * std::pow(0.6, 8.0 / 3)), 2);
    CHECK_THAT(state_at_inlet(full, m3_per_s(0.4), m(0.8)).depth,
               is_near(m(0.8 + (friction - 0.002) * 100), 1e-5));
    CHECK_THAT(state_at_inlet(full, m3_per_s(0), m(0.8)).depth, is_near(m(0.6)));
    // A flow that the pipe carries only between two depths keeps the lower, however it is reached.
    const Flow between = 1.05 * pipe_flow(m(0.6), gradient(0.002), share(0.013), {});
    const Length lower = pipe_depth(between, m(0.6), gradient(0.002), share(0.013));
    CHECK_THAT(state_at_inlet(mild, between, m(0.55)).depth, is_near(lower, 2e-3));
    CHECK(state_at_inlet(mild, between, m(0.7)).depth > m(0.7));
}

TEST_CASE("headwater rises with flow and tailwater; the flow is its inverse") {
    Random random;
    for (int i = 0; i < 60; ++i) {
        const Length d = m(random.between(0.15, 1));
        const Length length = m(random.between(2, 80));
        const Gradient slope = gradient(random.whole(0, 2) * random.between(0, 0.02));
        const Share n = share(random.between(0.009, 0.024));
        const PipeInlet inlet = all_inlets[random.whole(0, 7)];
        const Length tailwater = random.between(-1, 3) * d;
        const auto heads = [&](Flow q, Length tw) {
            return outfall_heads(q, d, length, slope, n, inlet, tw, {});
        };
        const Flow unit = m3_per_s(std::sqrt(9.81 * std::pow(d.value(), 5)));
        Length before = m(0);
        for (double f = 0.01; f < 2; f += 0.01) {
            const Length head = heads(f * unit, tailwater).headwater;
            CAPTURE(i, f, static_cast<int>(inlet), slope.value());
            REQUIRE(head >= before * (1 - 1e-9));
            REQUIRE(heads(f * unit, tailwater + 0.1 * d).headwater >= head * (1 - 1e-9));
            before = head;
        }
        for (const double f : {0.3, 0.8, 1.5}) {
            const Length head = heads(f * unit, tailwater).headwater;
            const Flow back = outfall_flow(head, d, length, slope, n, inlet, tailwater, {});
            REQUIRE_THAT(heads(back, tailwater).headwater, is_near(head, 1e-9));
        }
        // Standing water: nothing flows.
        const Length still = std::max(tailwater - vertical_rise(slope, length), m(0));
        REQUIRE(outfall_flow(still, d, length, slope, n, inlet, tailwater, {}) == m3_per_s(0));
    }
}

TEST_CASE("the rating of an outfall pipe is its flow at each depth of the bed") {
    const auto rate = [](std::optional<Length> tailwater) {
        return outfall_rating(m(1.5), count(10), m(0.2), m(0.3), m(15), gradient(0.01), share(0.012),
                              PipeInlet::square_edge, tailwater, {});
    };
    const RatingTable free = rate({});
    CHECK(free.size() == 13);  // and at the invert and the crown
    for (const auto& [depth, flow] : free) {
        if (depth <= m(0.2)) {
            CHECK(flow == m3_per_s(0));
            continue;
        }
        CHECK_THAT(flow, is_near(outfall_flow(depth - m(0.2), m(0.3), m(15), gradient(0.01), share(0.012),
                                              PipeInlet::square_edge, m(0), {})));
    }
    // Tailwater at 0.9 m above the base: 0.85 m above the outlet's invert, which lies at 0.05 m.
    for (const auto& [depth, flow] : rate(m(0.9))) {
        if (depth <= m(0.9) * (1 + 1e-12))
            CHECK(flow.value() == Approx(0).margin(1e-9));
        else
            CHECK_THAT(flow, is_near(outfall_flow(depth - m(0.2), m(0.3), m(15), gradient(0.01), share(0.012),
                                                  PipeInlet::square_edge, m(0.85), {})));
    }
}

TEST_CASE("outfalls that are none are refused") {
    const auto heads = [](double q, double d, double l, double s, double n, std::optional<Share> ke = {}) {
        return outfall_heads(m3_per_s(q), m(d), m(l), gradient(s), share(n), PipeInlet::square_edge, m(0),
                             ke);
    };
    CHECK_NOTHROW(heads(0, 0.3, 10, 0, 0.013));
    CHECK_THROWS_MATCHES(heads(-1, 0.3, 10, 0, 0.013), Refused, refuses_domain("flow (-1000 L/s)"));
    CHECK_THROWS_MATCHES(heads(0.1, 0, 10, 0, 0.013), Refused, refuses_domain("diameter (0 m)"));
    CHECK_THROWS_MATCHES(heads(0.1, 0.3, 0, 0, 0.013), Refused, refuses_domain("length (0 m)"));
    CHECK_THROWS_MATCHES(heads(0.1, 0.3, 10, -0.01, 0.013), Refused, refuses_domain("slope (-0.01)"));
    CHECK_THROWS_MATCHES(heads(0.1, 0.3, 10, 0, 0), Refused, refuses_domain("roughness (0)"));
    CHECK_THROWS_MATCHES(heads(0.1, 0.3, 10, 0, 0.013, share(1.5)), Refused,
                         refuses_domain("entrance loss (1.5)"));
    CHECK_THROWS_MATCHES(
        outfall_flow(m(-1), m(0.3), m(10), gradient(0), share(0.013), PipeInlet::square_edge, m(0), {}),
        Refused, refuses_domain("headwater (-1 m)"));
    const auto rate = [](double depth, double steps, double level) {
        return outfall_rating(m(depth), count(steps), m(level), m(0.3), m(15), gradient(0.01), share(0.012),
                              PipeInlet::square_edge, {}, {});
    };
    CHECK_THROWS_MATCHES(rate(0, 10, 0), Refused, refuses_domain("depth (0 m)"));
    CHECK_THROWS_MATCHES(rate(1, 0.5, 0), Refused, refuses_domain("steps (0.5 each)"));
    CHECK_THROWS_MATCHES(rate(1, 1001, 0), Refused, refuses_domain("at most 1000"));
    CHECK_THROWS_MATCHES(rate(1, 10, -0.1), Refused, refuses_domain("level (-0.1 m)"));
}

}  // namespace undercroft::tests
