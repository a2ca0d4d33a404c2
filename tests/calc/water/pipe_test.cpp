// Pipes, full and part full.
#include "calc/water/pipe.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

const Share concrete = share(0.013);
const Gradient one_percent = gradient(0.01);

Flow full(Length diameter) {
    return pipe_flow(diameter, one_percent, concrete, std::nullopt);
}
double share_of_full(double filled) {
    return pipe_flow(m(1), one_percent, concrete, m(filled)) / full(m(1));
}

}  // namespace

TEST_CASE("a part-full pipe against the table of the circle", "[published]") {
    // Q/Qf (math; agrees with Chow, Open-Channel Hydraulics (1959), Table 2-2,
    // as tabulated on the web).
    struct Row {
        double filled, flow;
    };
    const Row rows[] = {{0.10, 0.0208778175}, {0.20, 0.0875713153}, {0.30, 0.195831188}, {0.40, 0.336987766},
                        {0.50, 0.5},          {0.60, 0.671840202},  {0.70, 0.837237659}, {0.80, 0.977466883},
                        {0.90, 1.06579734},   {1.00, 1.0}};
    for (const Row& row : rows) {
        CAPTURE(row.filled);
        CHECK(share_of_full(row.filled) == Approx(row.flow).epsilon(5.1e-9));
        if (row.filled < 0.9)
            CHECK_THAT(pipe_depth(row.flow * full(m(1)), m(1), one_percent, concrete),
                       is_within(m(row.filled), m(2e-9)));
    }
    CHECK(share_of_full(0.938181216) == Approx(1.075706129).epsilon(1e-9));
    CHECK_THAT(pipe_depth(full(m(1)), m(1), one_percent, concrete), is_within(m(0.8196294486), m(1e-10)));
}

TEST_CASE("full pipes in inches and in metres", "[published]") {
    // Qfull in ft3/s for n = 0.013, S = 0.01 with the coefficient 1.486 (math);
    // that with 0.463 (seen) differs by 0.04 %.
    struct Row {
        double inches, cfs_0463, cfs_1486;
    };
    for (const Row& row :
         {Row{12, 3.561538, 3.562805}, Row{15, 6.457499, 6.459795}, Row{18, 10.50061, 10.50434},
          Row{24, 22.61436, 22.6224}, Row{30, 41.00256, 41.01714}, Row{36, 66.67469, 66.69839}}) {
        CAPTURE(row.inches);
        CHECK_THAT(full(inches(row.inches)), is_near(cfs(row.cfs_0463), 5e-4));
        CHECK_THAT(full(inches(row.inches)), is_near(cfs(row.cfs_1486 * 1.485918577 / 1.486), 2e-6));
    }
    CHECK_THAT(full(m(0.30)), is_near(m3_per_s(0.09670075853), 1e-10));
    CHECK_THAT(pipe_flow(m(0.45), gradient(0.005), concrete, {}), is_near(m3_per_s(0.2016004855), 1e-9));
    CHECK_THAT(pipe_flow(m(0.60), gradient(0.002), concrete, {}), is_near(m3_per_s(0.27459431), 1e-8));
    // 1 / 0.3048^(1/3) = 1.485918577 is the constant that feet need (math): half full R = D/4.
    CHECK_THAT(pipe_flow(ft(4), one_percent, share(0.01), ft(2)),
               is_near(cfs(1.485918577 / 0.01 * 2 * std::acos(-1.0) * 0.1), 1e-9));
}

TEST_CASE("flow and depth of a pipe are each other's inverse up to the greatest flow") {
    Random random;
    for (int i = 0; i < 1000; ++i) {
        const Length diameter = m(random.between(0.1, 3));
        const Gradient slope = gradient(random.between(0.0005, 0.1));
        const Share n = share(random.between(0.009, 0.03));
        const Length depth = random.between(1e-4, 0.92) * diameter;
        const Flow flow = pipe_flow(diameter, slope, n, depth);
        REQUIRE_THAT(pipe_depth(flow, diameter, slope, n), is_near(depth, 1e-8));
        REQUIRE(pipe_depth(1.0001 * flow, diameter, slope, n) > depth);
    }
}

TEST_CASE("the greatest flow lies at 0.938 of the diameter, and beyond it is refused with its amount") {
    double greatest = 0;
    double at = 0;
    for (double filled = 0.9; filled <= 1; filled += 1e-6) {
        const double flow = share_of_full(filled);
        if (flow > greatest) {
            greatest = flow;
            at = filled;
        }
    }
    CHECK(at == Approx(0.938181216).margin(2e-6));
    CHECK_THAT(pipe_depth(greatest * full(m(1)), m(1), one_percent, concrete), is_within(m(at), m(2e-3)));
    CHECK_THROWS_MATCHES(pipe_depth(1.0758 * full(m(0.3)), m(0.3), one_percent, concrete), Refused,
                         refuses_domain("must be at most the greatest flow of the pipe (104.022 L/s"));
}

TEST_CASE("a pipe in limits: dry, and full without a jump") {
    CHECK(pipe_flow(m(1), one_percent, concrete, m(0)) == m3_per_s(0));
    CHECK(pipe_depth(m3_per_s(0), m(1), one_percent, concrete) == m(0));
    CHECK_THAT(pipe_flow(m(1), one_percent, concrete, m(1)), is_near(full(m(1))));
    CHECK_THAT(pipe_flow(ft(1), one_percent, concrete, inches(12)), is_near(full(ft(1))));
    CHECK_THAT(pipe_flow(m(1), gradient(0.04), concrete, m(0.4)),
               is_near(Flow(2.0 * pipe_flow(m(1), one_percent, concrete, m(0.4)))));
}

TEST_CASE("a pipe that is none is refused") {
    CHECK_THROWS_MATCHES(pipe_flow(m(0), one_percent, concrete, {}), Refused,
                         refuses_domain("diameter (0 m)"));
    CHECK_THROWS_MATCHES(pipe_flow(m(1), gradient(0), concrete, {}), Refused, refuses_domain("slope (0)"));
    CHECK_THROWS_MATCHES(pipe_flow(m(1), one_percent, share(0), {}), Refused,
                         refuses_domain("roughness (0)"));
    CHECK_THROWS_MATCHES(pipe_flow(m(1), one_percent, concrete, m(1.1)), Refused,
                         refuses_domain("depth (1.1 m) must be at most the diameter (1 m)"));
    CHECK_THROWS_MATCHES(pipe_depth(m3_per_s(-1), m(1), one_percent, concrete), Refused,
                         refuses_domain("flow"));
}

}  // namespace undercroft::tests
