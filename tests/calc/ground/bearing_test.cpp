// What the ground bears: capacity of shallow foundations, presumed pressures, the dynamic cone.
#include "calc/ground/bearing.hpp"

#include <boost/math/tools/minima.hpp>

#include "calc/ground/dynamic_cone.hpp"
#include "calc/ground/presumptive_bearing.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/csv.hpp"
#include "tests/support/loads.hpp"
#include "tests/support/near.hpp"
#include "tests/support/quadrature.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

using std::numbers::pi;
constexpr BearingMethod methods[] = {BearingMethod::vesic, BearingMethod::meyerhof, BearingMethod::terzaghi};

BearingFactors factors(BearingMethod method, double degree) {
    return bearing_factors(method, degrees(degree));
}

/// A foundation in SI, to be changed one value at a time.
struct Ground {
    double cohesion = 10, friction = 25, unit_weight = 18, depth = 1, width = 1.5;
    std::optional<double> length = 2.5;

    [[nodiscard]] Pressure bears(BearingMethod method) const {
        return bearing_capacity(kpa(cohesion), degrees(friction), kn_per_m3(unit_weight), m(depth), m(width),
                                length ? std::optional(m(*length)) : std::nullopt, method);
    }
};

Ground random_ground(Random& random) {
    Ground ground{random.between(0, 50), random.between(0.1, 45), random.between(10, 25),
                  random.between(0, 3),  random.between(0.3, 5),  {}};
    if (random.whole(0, 3) > 0) ground.length = ground.width * random.between(1, 10);
    return ground;
}

struct Point {
    double x, y;
};
double cross(const Point& a, const Point& b) {
    return a.x * b.y - a.y * b.x;
}
/// Area times the distance of its middle to the right of `o`, of the triangle from `o` over `a` to `b`.
double moment_of_triangle(const Point& o, const Point& a, const Point& b) {
    return cross({a.x - o.x, a.y - o.y}, {b.x - o.x, b.y - o.y}) / 2 * (a.x + b.x - 2 * o.x) / 3;
}

/// Terzaghi, Theoretical Soil Mechanics (1943), art. 38 and 45: the strip's edge lies at 0, 0 (y down), half
/// its width and the ground's unit weight are 1. A wedge with faces at p pushes straight down on the ground
/// beside it, at a third of the face. That turns about a point on the edge of the outer Rankine zone, at t
/// beyond the strip's edge: down to the zone it slips along a logarithmic spiral. Weights and the zone's
/// Rankine pressure hold it. Sum of moments about that point.
double push_on_face(double p, double t) {
    const double slope = std::tan(p);
    const double zone = pi / 4 - p / 2;
    const Point turning{-t * std::cos(zone), -t * std::sin(zone)};
    const Point tip{-1, slope};
    const double first = std::hypot(tip.x - turning.x, tip.y - turning.y);
    const double start = std::atan2(tip.y - turning.y, tip.x - turning.x);
    const auto radius = [&](double angle) { return first * std::exp((start - angle) * slope); };
    const double last = radius(zone) - t;  // from the strip's edge to the end of the spiral
    const Point end{last * std::cos(zone), last * std::sin(zone)};

    const double sector = integral(
        [&](double angle) { return std::pow(radius(angle), 3) / 3 * std::cos(angle); }, zone, start, 1e-9);
    const double beside_edge = moment_of_triangle(turning, {0, 0}, tip);
    const double outer = end.x * end.y / 2 * (2 * end.x / 3 - turning.x);
    const double rankine = end.y * end.y / 2 * std::pow(std::tan(pi / 4 + p / 2), 2);
    const double held = sector - beside_edge + outer + rankine * (2 * end.y / 3 - turning.y);
    return held / (2.0 / 3 + turning.x);
}

/// N gamma of the turning point that needs the least push: 2 P = g b^2 tan p + B (0.5 g B Ng), B = 2 b.
double computed_weight_factor(double degree) {
    const double p = degrees(degree).value();
    // Beyond this the push would have no arm left.
    const double farthest = 2.0 / 3 / std::cos(pi / 4 - p / 2);
    const double push = boost::math::tools::brent_find_minima([&](double t) { return push_on_face(p, t); },
                                                              0.0, farthest * 0.999, 30)
                            .second;
    return push - std::tan(p) / 2;
}

}  // namespace

// Factors.

TEST_CASE("bearing factors are the handbook's table", "[published]") {
    // Look, Handbook of Geotechnical Investigation and Design Tables, Table 21.5; worst row off by 0.82 %.
    for (const CsvRow& row : csv_rows("tests/data/bearing-factors.csv", 36)) {
        const double degree = row.number("phi_deg");
        CAPTURE(degree);
        const BearingFactors n = factors(BearingMethod::vesic, degree);
        CHECK(n.cohesion == Approx(row.number("Nc_published")).epsilon(0.009));
        CHECK(n.surcharge == Approx(row.number("Nq_published")).epsilon(0.009));
        CHECK(n.weight == Approx(row.number("Ngamma_Vesic_published")).epsilon(0.009));
        CHECK(std::abs(n.cohesion - row.number("Nc_calc")) <= 5.1e-5);
        CHECK(std::abs(n.surcharge - row.number("Nq_calc")) <= 5.1e-5);
        CHECK(std::abs(n.weight - row.number("Ngamma_Vesic_calc")) <= 5.1e-5);
        // Meyerhof takes Prandtl's Nc and Nq as well. Hansen's 1.5 (Nq - 1) tan p lies close to his N gamma.
        const BearingFactors other = factors(BearingMethod::meyerhof, degree);
        CHECK(other.cohesion == n.cohesion);
        CHECK(other.surcharge == n.surcharge);
        CHECK(other.weight == Approx(row.number("Ngamma_Hansen_calc")).epsilon(0.31));
    }
}

TEST_CASE("N gamma of Vesic and of Meyerhof is the textbook's", "[published]") {
    // Vesic (1973); Meyerhof (1963): as in textbooks (from memory).
    const double rows[][5] = {{0, 5.14, 1.00, 0.00, 0.00},
                              {10, 8.35, 2.47, 1.22, 0.37},
                              {20, 14.83, 6.40, 5.39, 2.87},
                              {30, 30.14, 18.40, 22.40, 15.67},
                              {40, 75.31, 64.20, 109.41, 93.69}};
    for (const auto& [degree, nc, nq, vesic, meyerhof] : rows) {
        CAPTURE(degree);
        // The table prints 8.35 for 8.345.
        CHECK(std::abs(factors(BearingMethod::vesic, degree).cohesion - nc) <= 0.0052);
        CHECK(std::abs(factors(BearingMethod::vesic, degree).surcharge - nq) <= 0.005);
        CHECK(std::abs(factors(BearingMethod::vesic, degree).weight - vesic) <= 0.005);
        CHECK(std::abs(factors(BearingMethod::meyerhof, degree).weight - meyerhof) <= 0.005);
    }
}

TEST_CASE("Terzaghi's Nc and Nq are as published", "[published]") {
    struct Row {
        double degree, nc, nq, relative;
    };
    const Row rows[] = {
        {0, 5.7, 1.0, 0.003},
        // Das, Principles of Foundation Engineering, table of Terzaghi's factors (from memory).
        {20, 17.69, 7.44, 0.001},
        {30, 37.16, 22.46, 0.001},
        {35, 57.75, 41.44, 0.001},
        // An examination question (2019) on a public page; 17.27 deg is local shear at 25 deg.
        {25, 25.1, 12.7, 0.005},
        {17.27, 14.8, 5.6, 0.005},
    };
    for (const Row& row : rows) {
        CAPTURE(row.degree);
        const BearingFactors n = factors(BearingMethod::terzaghi, row.degree);
        CHECK(n.cohesion == Approx(row.nc).epsilon(row.relative));
        CHECK(n.surcharge == Approx(row.nq).epsilon(row.relative));
    }
}

TEST_CASE("Terzaghi's N gamma is that of his mechanism, least push over all turning points (Boost.Math)") {
    // Kumbhojkar (1993), all rows of the table.
    const std::vector<CsvRow> rows = csv_rows("tests/data/terzaghi-weight-factor.csv", 46);
    for (std::size_t degree = 0; degree < rows.size(); ++degree) {
        CAPTURE(degree);
        REQUIRE(rows[degree].number("phi_deg") == static_cast<double>(degree));
        CHECK(factors(BearingMethod::terzaghi, static_cast<double>(degree)).weight ==
              Approx(rows[degree].number("Ngamma")).epsilon(1e-13));
    }
    // math: every row within one of its last digit.
    for (int degree = 1; degree <= 45; ++degree) {
        CAPTURE(degree);
        CHECK(std::abs(factors(BearingMethod::terzaghi, degree).weight - computed_weight_factor(degree)) <=
              0.0075);
    }
    CHECK(factors(BearingMethod::terzaghi, 0).weight == 0);
    // Between the rows the interpolation follows the mechanism; the digits of the table show at few degrees.
    for (int whole = 10; whole < 45; ++whole) {
        const double degree = whole + 0.5;
        CAPTURE(degree);
        CHECK(factors(BearingMethod::terzaghi, degree).weight ==
              Approx(computed_weight_factor(degree)).epsilon(0.006));
    }
}

TEST_CASE("Terzaghi's own graphical N gamma lies about the computed one", "[published]") {
    // Terzaghi (1943), read off his chart (from memory); 9.7 at 25 deg in an examination question (2019), as
    // 3.2 at 17.27 deg. The chart is no more exact than this at few degrees.
    const double rows[][3] = {
        {17.27, 3.2, 0.45}, {20, 5.0, 0.28}, {25, 9.7, 0.15}, {30, 19.7, 0.03}, {35, 42.4, 0.08}};
    for (const auto& [degree, graphical, relative] : rows) {
        CAPTURE(degree);
        CHECK(factors(BearingMethod::terzaghi, degree).weight == Approx(graphical).epsilon(relative));
    }
}

TEST_CASE("bearing factors grow with friction from Prandtl's cohesion alone, without a jump") {
    CHECK(factors(BearingMethod::vesic, 0).cohesion == Approx(pi + 2).epsilon(1e-14));
    CHECK(factors(BearingMethod::terzaghi, 0).cohesion == Approx(1.5 * pi + 1).epsilon(1e-14));
    for (const BearingMethod method : methods) {
        CAPTURE(static_cast<int>(method));
        const BearingFactors none = factors(method, 0);
        CHECK(none.surcharge == Approx(1).epsilon(1e-14));
        CHECK(none.weight == 0);
        // On both sides of the slope below which the limit stands in.
        for (const double slight : {1e-7, 5e-6, 6e-6, 1e-4})
            CHECK(factors(method, slight).cohesion == Approx(none.cohesion).epsilon(1e-5));
        for (int i = 0; i < 450; ++i) {
            const BearingFactors less = factors(method, 0.1 * i);
            const BearingFactors more = factors(method, 0.1 * i + 0.1);
            CAPTURE(i);
            REQUIRE(more.cohesion > less.cohesion);
            REQUIRE(more.surcharge > less.surcharge);
            REQUIRE(more.weight > less.weight);
        }
        // Nc = (Nq - 1) cot p, the theorem of corresponding states (Caquot).
        for (int halves = 2; halves <= 90; ++halves) {
            const double degree = 0.5 * halves;
            const BearingFactors n = factors(method, degree);
            REQUIRE(n.cohesion * tangent(degrees(degree)) == Approx(n.surcharge - 1).epsilon(1e-12));
        }
    }
}

// Capacity.

TEST_CASE("bearing capacity of a square foundation is the published example", "[published]") {
    // Das, Principles of Foundation Engineering, square-foundation example (from memory): about 521 kPa.
    const Ground example{15.2, 20, 17.8, 1, 1.5, 1.5};
    CHECK_THAT(example.bears(BearingMethod::terzaghi), is_near(kpa(521), 0.005));
    CHECK_THAT(example.bears(BearingMethod::terzaghi), is_within(kpa(520.86), kpa(0.05)));
}

TEST_CASE("bearing capacity on clay is that of its cohesion, and of what stands beside it", "[published]") {
    // Prandtl (1920): 5.14 c under a strip; of a square Vesic 6.14 c, Meyerhof 6.17 c, Terzaghi 7.4 c.
    const Ground strip{40, 0, 18, 0, 2, {}};
    const Ground square{40, 0, 18, 0, 2, 2};
    struct Row {
        BearingMethod method;
        double strip, square;
    };
    for (const Row& row : {Row{BearingMethod::vesic, 5.14, 6.14}, Row{BearingMethod::meyerhof, 5.14, 6.17},
                           Row{BearingMethod::terzaghi, 5.71, 7.43}}) {
        CHECK_THAT(strip.bears(row.method), is_within(kpa(40 * row.strip), kpa(40 * 0.005)));
        CHECK_THAT(square.bears(row.method), is_within(kpa(40 * row.square), kpa(40 * 0.005)));
        Ground deeper = square;
        deeper.depth = 3;
        CHECK_THAT(deeper.bears(row.method) - square.bears(row.method), is_near(kpa(3 * 18)));
    }
}

TEST_CASE("bearing capacity of a strip is the sum of its three terms by hand") {
    Random random;
    for (int i = 0; i < 500; ++i) {
        Ground ground = random_ground(random);
        ground.length.reset();
        const BearingMethod method = methods[i % 3];
        const BearingFactors n = factors(method, ground.friction);
        const double by_hand = ground.cohesion * n.cohesion +
                               ground.unit_weight * ground.depth * n.surcharge +
                               ground.unit_weight * ground.width / 2 * n.weight;
        REQUIRE_THAT(ground.bears(method), is_near(kpa(by_hand)));
        // A strip is a rectangle without end.
        ground.length = 1e9 * ground.width;
        REQUIRE_THAT(ground.bears(method), is_near(kpa(by_hand), 1e-7));
    }
}

TEST_CASE("shape of the foundation counts as each author says") {
    // The three terms one by one: Vesic (1973), Meyerhof (1963); Terzaghi (1943): 1.3 c Nc, 1 and 0.4 g B Ng
    // for a square, straight from his strip to his square (common practice).
    Random random;
    for (int i = 0; i < 500; ++i) {
        const double degree = random.between(0.1, 45);
        const double k = random.between(0.1, 1);
        const double p = degree * pi / 180;
        const double kp = (1 + std::sin(p)) / (1 - std::sin(p));
        const double beside = degree < 10 ? 1 : 1 + 0.1 * k * kp;
        const BearingFactors n = factors(BearingMethod::vesic, degree);
        const double shapes[][3] = {
            {1 + k * n.surcharge / n.cohesion, 1 + k * std::sin(p) / std::cos(p), 1 - 0.4 * k},
            {1 + 0.2 * k * kp, beside, beside},
            {1 + 0.3 * k, 1, 1 - 0.2 * k}};
        for (const BearingMethod method : methods) {
            const auto ratio = [&](double cohesion, double depth) {
                const Ground rectangle{cohesion, degree, 20, depth, 2, 2 / k};
                const Ground strip{cohesion, degree, 20, depth, 2, {}};
                Ground rectangle_alone = rectangle;
                Ground strip_alone = strip;
                rectangle_alone.depth = strip_alone.depth = 0;
                rectangle_alone.cohesion = strip_alone.cohesion = 0;
                return (rectangle.bears(method) - rectangle_alone.bears(method)) /
                       (strip.bears(method) - strip_alone.bears(method));
            };
            const Ground rectangle{0, degree, 20, 0, 2, 2 / k};
            const Ground strip{0, degree, 20, 0, 2, {}};
            const auto& [of_cohesion, of_surcharge, of_weight] = shapes[static_cast<int>(method)];
            CAPTURE(degree, k, static_cast<int>(method));
            REQUIRE(ratio(1000, 0) == Approx(of_cohesion).epsilon(1e-9));
            REQUIRE(ratio(0, 100) == Approx(of_surcharge).epsilon(1e-9));
            REQUIRE(rectangle.bears(method) / strip.bears(method) == Approx(of_weight).epsilon(1e-9));
        }
    }
}

TEST_CASE("Meyerhof's shape factors of friction start at 10 deg, in whatever unit") {
    const Ground at{0, 10, 20, 1, 1, 1};
    Ground below = at;
    below.friction = 10 * (1 - 1e-6);
    CHECK(at.bears(BearingMethod::meyerhof) > 1.1 * below.bears(BearingMethod::meyerhof));
    Ground rounded = at;
    rounded.friction = 10 * (1 - 1e-12);
    CHECK_THAT(rounded.bears(BearingMethod::meyerhof), is_near(at.bears(BearingMethod::meyerhof), 1e-10));
}

TEST_CASE("ground bears more with cohesion, friction, weight, depth and width") {
    Random random;
    for (int i = 0; i < 900; ++i) {
        const Ground ground = random_ground(random);
        const BearingMethod method = methods[i % 3];
        const Pressure bears = ground.bears(method);
        const auto more = [&](auto change) {
            Ground changed = ground;
            change(changed);
            return changed.bears(method) > bears;
        };
        REQUIRE(more([](Ground& g) { g.cohesion += 1; }));
        REQUIRE(more([](Ground& g) { g.unit_weight += 1; }));
        REQUIRE(more([](Ground& g) { g.depth += 0.1; }));
        if (ground.friction < 44) REQUIRE(more([](Ground& g) { g.friction += 1; }));
        if (ground.friction > 1)
            REQUIRE(more([](Ground& g) {
                g.width *= 1.1;
                if (g.length) *g.length *= 1.1;
            }));
    }
}

TEST_CASE("bearing capacity is the same in feet and pounds") {
    const Pressure metric =
        bearing_capacity(kpa(15.2), degrees(20), kn_per_m3(17.8), m(1), m(1.5), m(2), BearingMethod::vesic);
    const double pcf_per_kn_m3 = 1000 / pcf(1).value();
    const Pressure customary =
        bearing_capacity(psf(15200 / psf(1).value()), Angle::from_value(pi / 9), pcf(17.8 * pcf_per_kn_m3),
                         ft(1 / 0.3048), inches(1.5 / 0.0254), ft(2 / 0.3048), BearingMethod::vesic);
    CHECK_THAT(customary, is_near(metric, 1e-12));
}

TEST_CASE("foundations that are none, or beyond the tables, are refused") {
    const auto with = [](auto change) {
        Ground ground;
        change(ground);
        return ground.bears(BearingMethod::vesic);
    };
    CHECK_NOTHROW(with([](Ground&) {}));
    CHECK_THROWS_MATCHES(with([](Ground& g) { g.cohesion = -1; }), Refused,
                         refuses_domain("cohesion (-1 kPa) must be 0 or more"));
    CHECK_THROWS_MATCHES(with([](Ground& g) { g.unit_weight = 0; }), Refused,
                         refuses_domain("unit weight (0 kN/m3) must be above 0"));
    CHECK_THROWS_MATCHES(with([](Ground& g) { g.depth = -0.1; }), Refused,
                         refuses_domain("depth (-0.1 m) must be 0 or more"));
    CHECK_THROWS_MATCHES(with([](Ground& g) { g.width = 0; }), Refused,
                         refuses_domain("width (0 m) must be above 0"));
    CHECK_THROWS_MATCHES(
        with([](Ground& g) { g.length = 1.49; }), Refused,
        refuses_domain("length (1.49 m) must be at least the width (1.5 m); leave it out for a long strip"));
    CHECK_THROWS_MATCHES(with([](Ground& g) { g.cohesion = g.friction = 0; }), Refused,
                         refuses_domain("ground without strength bears nothing"));
    CHECK_NOTHROW(with([](Ground& g) { g.cohesion = 0; }));
    CHECK_NOTHROW(with([](Ground& g) { g.friction = 0; }));
    // However slight the strength is.
    CHECK_NOTHROW(with([](Ground& g) { g.cohesion = 1e-6, g.friction = 0; }));
    CHECK_NOTHROW(with([](Ground& g) { g.depth = 0; }));
    // A square in two units: not longer than wide by the last digit.
    const Ground square{10, 25, 18, 1, 1.5, 1.5};
    Ground rounded = square;
    rounded.length = 1.5 * (1 - 1e-11);
    for (const BearingMethod method : methods)
        CHECK_THAT(rounded.bears(method), is_near(square.bears(method), 1e-15));
    for (const BearingMethod method : methods) {
        CHECK_NOTHROW(factors(method, 45 * (1 + 1e-12)));
        CHECK_THROWS_MATCHES(factors(method, 45.001), Refused,
                             refuses_domain("friction angle (45.001 deg) must be from 0 deg to 45 deg"));
        CHECK_THROWS_MATCHES(factors(method, -0.001), Refused,
                             refuses_domain("where the published factors end"));
    }
    CHECK_THROWS_MATCHES(Ground{}.bears(static_cast<BearingMethod>(9)), Refused,
                         refuses_value("unknown method"));
}

// Presumed pressures.

TEST_CASE("presumed bearing pressures are those of the code", "[published]") {
    // International Building Code (2012), Table 1806.2, three reproductions; kPa as recomputed beside it.
    struct Row {
        PresumptiveClass material;
        double psf, kpa;
    };
    const Row rows[] = {
        {PresumptiveClass::crystalline_bedrock, 12000, 574.56},
        {PresumptiveClass::foliated_rock, 4000, 191.52},
        {PresumptiveClass::gravel, 3000, 143.64},
        {PresumptiveClass::sand, 2000, 95.76},
        {PresumptiveClass::clay, 1500, 71.82},
    };
    REQUIRE(presumptive_table().size() == std::size(rows));
    for (std::size_t i = 0; i < std::size(rows); ++i) {
        CAPTURE(i);
        CHECK_THAT(presumptive_bearing(rows[i].material), is_near(psf(rows[i].psf)));
        CHECK_THAT(presumptive_bearing(rows[i].material), is_within(kpa(rows[i].kpa), kpa(0.0051)));
        CHECK(presumptive_table()[i].material == static_cast<PresumptiveClass>(i));
        CHECK(presumptive_table()[i].vertical == presumptive_bearing(rows[i].material));
        if (i > 0) CHECK(presumptive_table()[i].vertical < presumptive_table()[i - 1].vertical);
    }
    CHECK_THROWS_MATCHES(presumptive_bearing(static_cast<PresumptiveClass>(std::size(rows))), Refused,
                         refuses_value("unknown class of material"));
}

// Dynamic cone.

namespace {

double cbr(double millimetres, ConeSoil soil = ConeSoil::general) {
    return cone_cbr(millimetres * millimetre, soil).value;
}

}  // namespace

TEST_CASE("bearing ratio by the dynamic cone is that of the standard's equations", "[published]") {
    // ASTM D6951 (equations from memory), recomputed row by row (math); 0: the equation does not apply.
    const double rows[][4] = {
        {5, 48.1434, 0, 69.6621},       {10, 22.1505, 0, 34.8311},     {15, 14.0657, 0, 23.2207},
        {20, 10.1913, 8.6312, 17.4155}, {25, 7.9376, 5.5240, 13.9324}, {30, 6.4715, 3.8361, 11.6104},
        {40, 4.6890, 2.1578, 8.7078},   {50, 3.6520, 1.3810, 6.9662},  {60, 2.9775, 0.9590, 5.8052}};
    for (const auto& [d, general, cl, ch] : rows) {
        CAPTURE(d);
        CHECK(std::abs(cbr(d) - general) <= 5.1e-5);
        CHECK(std::abs(cbr(d, ConeSoil::ch) - ch) <= 5.1e-5);
        // The same standard's logarithmic form: log CBR = 2.465 - 1.12 log d.
        CHECK(cbr(d) == Approx(std::pow(10, 2.465 - 1.12 * std::log10(d))).epsilon(0.001));
        if (cl > 0)
            CHECK(std::abs(cbr(d, ConeSoil::cl) - cl) <= 5.1e-5);
        else
            CHECK_THROWS_MATCHES(cbr(d, ConeSoil::cl), Refused,
                                 has_no_answer("the equation for CL does not hold: use general"));
    }
    // Identity: 2 in are 50.8 mm.
    CHECK(cone_cbr(2.0 * inch, ConeSoil::general).value == Approx(cbr(50.8)).epsilon(1e-13));
}

TEST_CASE("the farther a blow drives the cone, the softer the ground") {
    for (const ConeSoil soil : {ConeSoil::general, ConeSoil::cl, ConeSoil::ch})
        for (int d = 19; d < 80; ++d) REQUIRE(cbr(d + 1, soil) < cbr(d, soil));
}

TEST_CASE("a cone in rock, in mud or in another unit gives no bearing ratio") {
    CHECK_THROWS_MATCHES(cbr(0), Refused, refuses_domain("penetration per blow (0 m) must be above 0"));
    CHECK_THROWS_MATCHES(cbr(-1), Refused, refuses_domain("penetration per blow"));
    // math: 292/d^1.12 is 100 at 2.6034 mm, 0.5 at 295.06 mm; 1/(0.002871 d) 100 at 3.4831 mm.
    CHECK(cbr(2.604) == Approx(100).epsilon(1e-3));
    CHECK_THROWS_MATCHES(cbr(2.603), Refused,
                         has_no_answer("gives a CBR above 100: the cone met stone or rock, not soil"));
    CHECK(cbr(3.484, ConeSoil::ch) < 100);
    CHECK_THROWS_MATCHES(cbr(3.483, ConeSoil::ch), Refused, has_no_answer("above 100"));
    CHECK(cbr(294) > 0.5);
    CHECK_THROWS_MATCHES(
        cbr(297), Refused,
        has_no_answer("gives a CBR below 0.5: too soft for this test (is the penetration in"));
    CHECK_THROWS_MATCHES(cone_cbr(m(20), ConeSoil::ch), Refused, has_no_answer("below 0.5"));
    // 1/(0.017019 d)^2 is 10 at 18.581 mm.
    CHECK(cbr(18.59, ConeSoil::cl) < 10);
    CHECK_THROWS_MATCHES(cbr(18.58, ConeSoil::cl), Refused, has_no_answer("gives a CBR of 10 or more"));
    CHECK_THROWS_MATCHES(cbr(20, static_cast<ConeSoil>(9)), Refused, refuses_value("unknown soil"));
}

}  // namespace undercroft::tests
