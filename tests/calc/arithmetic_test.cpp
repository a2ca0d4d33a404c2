// Arithmetic, comparison and lookup of quantities in whatever units.
#include <gsl/gsl_errno.h>
#include <gsl/gsl_interp.h>

#include "calc/arithmetic.hpp"
#include "calc/interpolate.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {
Quantity q(const char* text) {
    return parse_quantity(text);
}
}  // namespace

TEST_CASE("sums, totals and differences of mixed units") {
    CHECK(sum({q("1 ft"), q("1 in"), q("25.4 mm")}).value == Approx(0.3556).epsilon(1e-14));
    CHECK(total(q("1 m"), q("1 ft")).value == Approx(1.3048).epsilon(1e-14));
    CHECK(difference(q("1 m"), q("1 ft")).value == Approx(0.6952).epsilon(1e-14));
    CHECK(difference(Quantity::bare(1), Quantity::bare(0.25)).form == Quantity::Form::bare);
    CHECK_THROWS_MATCHES(sum({q("1 ft"), q("1 kg")}), Refused, refuses_value("a length is wanted"));
    CHECK_THROWS_MATCHES(sum({q("1 AUD"), q("1 NZD")}), Refused, refuses_value("two currencies"));
    CHECK_THROWS_MATCHES(sum({}), Refused, refuses_domain("nothing to sum"));
    CHECK_THROWS_MATCHES(total(q("1 m"), q("1 s")), Refused, refuses_value("a length is wanted"));
}

TEST_CASE("any number of factors, of whatever dimensions") {
    const Quantity volume = product({q("30 m"), q("12 m"), q("305 mm"), q("40 %"), Quantity::bare(2)});
    CHECK(volume.value == Approx(87.84).epsilon(1e-14));
    CHECK(volume.dimension == q("1 m3").dimension);
    CHECK(product({q("7 kg")}).value == 7);
    CHECK_THROWS_MATCHES(product(std::vector<Quantity>{}), Refused, refuses_domain("nothing to multiply"));
    CHECK_THROWS_MATCHES(product({q("1 AUD"), q("1 m"), q("1 NZD")}), Refused, refuses_value("currenc"));
}

TEST_CASE("a bare number beside a quantity is refused by its name, 0 as any other") {
    for (const double number : {0.0, 0.25, 305.0, -1.0}) {
        const Quantity bare = Quantity::bare(number);
        CHECK_THROWS_MATCHES(total(bare, q("3 ft")), Refused, refuses_value("a: "));
        CHECK_THROWS_MATCHES(difference(q("3 ft"), bare), Refused, refuses_value("b: "));
        CHECK_THROWS_MATCHES(at_least(bare, q("12 in")), Refused, refuses_value("value: "));
        CHECK_THROWS_MATCHES(at_most(q("12 in"), bare), Refused, refuses_value("limit: "));
        CHECK_THROWS_MATCHES(within(q("1 m"), bare, q("1 mm")), Refused, refuses_value("target: "));
        CHECK_THROWS_MATCHES(sum({q("1 m"), bare}), Refused, refuses_value("figure: "));
        CHECK_THROWS_MATCHES(largest({bare, q("1 m")}), Refused, refuses_value("first figure: "));
        CHECK_THROWS_MATCHES(smallest({q("5 %"), bare}), Refused, refuses_value("figure: "));
        CHECK_THROWS_MATCHES(
            lookup({{q("0 m"), q("0 m3")}, {q("9 m"), q("9 m3")}}, bare, Interpolation::linear), Refused,
            refuses_value("x: "));
        CHECK_THROWS_MATCHES(lookup({{Quantity::bare(0), q("0 m3")}, {Quantity::bare(9), q("9 m3")}},
                                    q("1 ft"), Interpolation::linear),
                             Refused, refuses_value("first column of the table: "));
        CHECK_THROWS_MATCHES(
            lookup({{q("0 m"), q("0 m3")}, {q("9 m"), bare}}, q("1 m"), Interpolation::linear), Refused,
            refuses_value("second column of the table: "));
    }
    CHECK_THROWS_MATCHES(
        within(q("0.34 m"), q("0.3 m"), Quantity::bare(0.05)), Refused,
        refuses_value("tolerance: 0.05 has no unit, and the target has one: write the unit of both"));
    CHECK_THROWS_MATCHES(at_least(Quantity::bare(97), q("95 %")), Refused,
                         refuses_value("the limit is in %"));
    // A count and a pure number can be read in one way only.
    CHECK(at_least(Quantity::bare(7), q("7 each")));
    CHECK(at_most(Quantity::bare(1.5), Quantity::of(1.5, Unit{})));
    CHECK(total(q("2 each"), Quantity::bare(3)).value == 5);
    CHECK(within(Quantity::bare(3), q("4 each"), Quantity::bare(1)));
}

TEST_CASE("products and quotients carry their dimension") {
    CHECK(product(q("2 m"), q("3 m")).dimension == dimension_of<Area>());
    CHECK(product(Quantity::bare(2), q("3 m")).dimension == dimension_of<Length>());
    CHECK(quotient(q("6 m3"), q("2 s")).dimension == dimension_of<Flow>());
    CHECK(quotient(q("6 m3"), q("2 m3")).value == 3);
    CHECK_THROWS_MATCHES(quotient(q("6 m3"), q("0 m3")), Refused, refuses_domain("divisor"));
    CHECK_THROWS_MATCHES(product(q("1 AUD"), q("1 NZD")), Refused, refuses_value("two currencies"));
}

TEST_CASE("a limit is met whatever the units, to the last digit but not beyond") {
    CHECK(at_least(q("12 in"), q("304.8 mm")));
    CHECK(at_most(q("12 in"), q("304.8 mm")));
    CHECK_FALSE(at_least(q("304.79 mm"), q("12 in")));
    CHECK_FALSE(at_most(q("304.81 mm"), q("12 in")));
    CHECK_THROWS_AS(at_least(q("1 m"), q("1 kg")), Refused);
    // 904 of these 10 000 do not come back from metres unchanged; each still meets its own limit.
    for (int i = 1; i <= 10000; ++i) {
        const Quantity feet = Quantity::of(i / 100.0, parse_unit("ft"));
        const Quantity metres = Quantity::of(i / 100.0 * 0.3048, parse_unit("m"));
        REQUIRE(at_least(metres, feet));
        REQUIRE(at_most(metres, feet));
    }
}

TEST_CASE("a tolerance in its own unit, in percent of the target, in percentage points") {
    CHECK(within(q("100.013 m"), q("100 m"), q("15 mm")));
    CHECK_FALSE(within(q("100.016 m"), q("100 m"), q("15 mm")));
    CHECK(within(q("105 m"), q("100 m"), q("5 %")));
    CHECK_FALSE(within(q("105.1 m"), q("100 m"), q("5 %")));
    CHECK(within(q("97 %"), q("95 %"), q("2 %")));
    CHECK_FALSE(within(q("97.1 %"), q("95 %"), q("2 %")));
    CHECK(within(Quantity::bare(0.97), Quantity::bare(0.95), q("2 %")));
    CHECK_THROWS_MATCHES(within(q("1 m"), q("1 m"), q("-1 mm")), Refused, refuses_domain("tolerance"));
    CHECK_THROWS_AS(within(q("1 m"), q("1 m"), q("1 kg")), Refused);
}

TEST_CASE("linear interpolation as GSL does it") {
    Random random;
    for (int i = 0; i < 50; ++i) {
        Curve<double, double> points;
        double x = 0;
        for (int n = 0; n < 8; ++n) {
            points.x.push_back(x += random.between(0.1, 2));
            points.y.push_back(random.between(-5, 5));
        }
        gsl_interp* reference = gsl_interp_alloc(gsl_interp_linear, points.x.size());
        gsl_interp_init(reference, points.x.data(), points.y.data(), points.x.size());
        for (int k = 0; k < 20; ++k) {
            const double at = random.between(points.x.front(), points.x.back());
            const double expected = gsl_interp_eval(reference, points.x.data(), points.y.data(), at, nullptr);
            CHECK(linear(points, at) == Approx(expected).epsilon(1e-12).margin(1e-12));
        }
        gsl_interp_free(reference);
        for (std::size_t n = 0; n < points.x.size(); ++n) CHECK(linear(points, points.x[n]) == points.y[n]);
    }
}

TEST_CASE("a power law is interpolated exactly in logarithms", "[published]") {
    // math, computed apart from this code.
    const Curve<double, double> rain{{10, 60}, {100, 25}};
    CHECK(log_log(rain, 30) == Approx(42.7413865179).epsilon(1e-12));
    Curve<double, double> power;
    for (const double x : {1.0, 2.0, 5.0, 20.0, 100.0}) {
        power.x.push_back(x);
        power.y.push_back(7 * std::pow(x, -0.63));
    }
    for (double x = 1; x < 100; x += 0.7)
        CHECK(log_log(power, x) == Approx(7 * std::pow(x, -0.63)).epsilon(1e-13));
}

TEST_CASE("the monotone curve stays between its points") {
    Random random;
    for (int i = 0; i < 100; ++i) {
        Curve<double, double> points;
        double x = 0;
        double y = 0;
        for (int n = 0; n < 7; ++n) {
            points.x.push_back(x += random.between(0.1, 2));
            points.y.push_back(y += random.between(0, 3));
        }
        double before = points.y.front();
        for (int k = 0; k <= 200; ++k) {
            const double at = points.x.front() + (points.x.back() - points.x.front()) * k / 200.0;
            const double now = monotone(points, std::min(at, points.x.back()));
            REQUIRE(now >= before - 1e-12);
            before = now;
        }
    }
}

TEST_CASE("a lookup answers inside its table only") {
    const std::vector<std::tuple<Quantity, Quantity>> table = {
        {q("0 mm"), q("0 m3")}, {q("1 m"), q("10 m3")}, {q("2 m"), q("15 m3")}};
    CHECK(lookup(table, q("500 mm"), Interpolation::linear).value == 5);
    CHECK(lookup(table, q("150 cm"), Interpolation::linear).value == 12.5);
    CHECK(lookup(table, q("2 m"), Interpolation::linear).value == 15);
    CHECK_THROWS_MATCHES(lookup(table, q("2.01 m"), Interpolation::linear), Refused,
                         has_no_answer("x (2.01 m) is outside the table (0 m to 2 m)"));
    CHECK_THROWS_MATCHES(lookup(table, q("-1 mm"), Interpolation::linear), Refused,
                         has_no_answer("outside the table"));
    CHECK_THROWS_MATCHES(lookup(table, q("1 kg"), Interpolation::linear), Refused,
                         refuses_value("a mass is wanted") || refuses_value("is a length"));
    CHECK_THROWS_MATCHES(lookup(table, q("1 m"), Interpolation::logarithmic), Refused,
                         refuses_domain("above 0"));
    CHECK_THROWS_MATCHES(lookup(table, q("1 m"), Interpolation::monotone), Refused,
                         refuses_domain("four rows"));
    const std::vector<std::tuple<Quantity, Quantity>> back = {{q("0 m"), q("0 m3")}, {q("0 m"), q("1 m3")}};
    CHECK_THROWS_MATCHES(lookup(back, q("0 m"), Interpolation::linear), Refused, refuses_domain("must rise"));
    CHECK_THROWS_MATCHES(lookup({{q("0 m"), q("0 m3")}}, q("0 m"), Interpolation::linear), Refused,
                         refuses_domain("two rows"));
}

TEST_CASE("the ends of a table belong to it, and logarithms name the row that has none") {
    const std::vector<std::tuple<Quantity, Quantity>> table = {{q("1 m"), q("4 m3")}, {q("3 m"), q("8 m3")}};
    CHECK(lookup(table, q("1 m"), Interpolation::linear).value == 4);
    CHECK(lookup(table, q("3 m"), Interpolation::linear).value == 8);
    CHECK(lookup(table, q("1 m"), Interpolation::logarithmic).value == Approx(4).epsilon(1e-14));
    // Either column alone forbids it, and so does the last row.
    for (const auto& [x, y] : {std::pair("0 m", "1 m3"), std::pair("0.5 m", "0 m3")})
        CHECK_THROWS_MATCHES(
            lookup({{q(x), q(y)}, {q("1 m"), q("4 m3")}}, q("1 m"), Interpolation::logarithmic), Refused,
            refuses_domain("row 1: the method log"));
    CHECK_THROWS_MATCHES(
        lookup({{q("1 m"), q("4 m3")}, {q("2 m"), q("0 m3")}}, q("1 m"), Interpolation::logarithmic), Refused,
        refuses_domain("row 2: the method log"));
}

TEST_CASE("a share looked up between percentages is a share like any other") {
    const auto metres = [](double value) { return Quantity::of(value, parse_unit("m")); };
    const auto percent = [](double value) { return Quantity::of(value, parse_unit("%")); };
    const Quantity found =
        lookup({{metres(1), percent(40)}, {metres(2), percent(60)}}, metres(1.5), Interpolation::linear);
    CHECK(found.value == Approx(0.5).epsilon(1e-14));
    CHECK(found.form == Quantity::Form::with_unit);
    CHECK(total(percent(40), percent(10)).form == Quantity::Form::with_unit);
}

}  // namespace undercroft::tests
