// Water in the ground: infiltration, permeability, dewatering.
#include "calc/water/groundwater.hpp"

#include "tests/support/amounts.hpp"
#include "tests/support/near.hpp"
#include "tests/support/ode.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

Speed cm_per_h(double value) {
    return mm_per_h(10 * value);
}

/// Rawls, Brakensiek and Miller (1983), J. Hydraulic Eng. 109(1), Table 2 (seen as a transcription of the
/// paper); the paper's 0.309 for clay loam is read as 0.390.
struct Texture {
    const char* name;
    double effective_porosity;
    double suction_cm;
    double conductivity_cm_per_h;
};
constexpr Texture textures[] = {{"sand", 0.417, 4.95, 11.78},       {"loamy sand", 0.401, 6.13, 2.99},
                                {"sandy loam", 0.412, 11.01, 1.09}, {"loam", 0.434, 8.89, 0.34},
                                {"silt loam", 0.486, 16.68, 0.65},  {"sandy clay loam", 0.330, 21.85, 0.15},
                                {"clay loam", 0.390, 20.88, 0.10},  {"silty clay loam", 0.432, 27.30, 0.10},
                                {"sandy clay", 0.321, 23.90, 0.06}, {"silty clay", 0.423, 29.22, 0.05},
                                {"clay", 0.385, 31.63, 0.03}};

}  // namespace

TEST_CASE("infiltration into silt loam", "[published]") {
    // Chow, Maidment and Mays (1988), Example 4.3.1 (from memory): 3.17 cm after an hour.
    const auto silt_loam = [](double deficit, double suction_cm, double t) {
        return green_ampt_infiltration(cm_per_h(0.65), m(suction_cm / 100), share(deficit), hours(t));
    };
    CHECK_THAT(silt_loam(0.3402, 16.7, 1), is_within(m(0.0317), m(5e-5)));
    CHECK_THAT(silt_loam(0.3402, 16.7, 1), is_within(m(0.03167214), m(5.1e-9)));
    // The same soil, psi dtheta = 5.678 cm, computed apart from this code (math).
    struct Row {
        double hours, cm;
    };
    for (const Row& row : {Row{0.25, 1.468861979}, Row{0.5, 2.143625795}, Row{1, 3.16641923},
                           Row{2, 4.753578369}, Row{3, 6.086213586}, Row{5, 8.409558845}}) {
        CAPTURE(row.hours);
        CHECK_THAT(silt_loam(0.34, 16.7, row.hours), is_near(m(row.cm / 100), 1e-9));
    }
    // Rain or Shine (Oklahoma State University), sec. 6.5: 2.5 cm ponded on 17 cm of suction; the front is at
    // 30 cm (F = 10.2 cm) after 6.190414 h (inputs seen, math).
    CHECK_THAT(silt_loam(0.34, 19.5, 6.190414), is_near(m(0.102), 1e-6));
}

TEST_CASE("infiltration satisfies its equation for every soil texture of Rawls et al. (1983)") {
    for (const Texture& texture : textures) {
        const Length soaked = m(texture.suction_cm / 100 * texture.effective_porosity);
        const Speed k = cm_per_h(texture.conductivity_cm_per_h);
        for (const double t : {1e-6, 1e-3, 0.1, 1.0, 10.0, 1000.0}) {
            const Length f = green_ampt_infiltration(k, m(texture.suction_cm / 100),
                                                     share(texture.effective_porosity), hours(t));
            const double ratio = f / soaked;
            CAPTURE(texture.name, t);
            // F = K t + N ln(1 + F/N); where ln(1 + x) - x loses digits its series tells.
            const double series = ratio * ratio / 2 - ratio * ratio * ratio / 3 + std::pow(ratio, 4) / 4;
            const double missing = ratio < 1e-3 ? series : ratio - std::log1p(ratio);
            CHECK(missing == Approx((k * hours(t) / soaked).value()).epsilon(1e-8));
        }
    }
}

TEST_CASE("infiltration satisfies its equation for any soil and time") {
    // F - N ln(1 + F/N) = K t; both terms are as large as F, so that what is left of it is known to 1e-15 F.
    Random random;
    for (int i = 0; i < 2000; ++i) {
        const Speed k = mm_per_h(std::pow(10, random.between(-3, 3)));
        const Length suction = m(std::pow(10, random.between(-3, 0.5)));
        const Share deficit = share(random.between(0.01, 1));
        const Time t = s(std::pow(10, random.between(0, 7)));
        const Length f = green_ampt_infiltration(k, suction, deficit, t);
        const Length n = suction * deficit;
        const Length left = f - n * std::log1p(static_cast<double>(f / n));
        CAPTURE(i, k.value(), n.value(), t.value());
        REQUIRE(f >= k * t);
        REQUIRE_THAT(left, is_within(Length(k * t), Length(1e-12 * k * t + 4e-15 * f)));
    }
}

TEST_CASE("infiltration follows its rate K (1 + N/F) (GSL Runge-Kutta)") {
    for (const Texture& texture : textures) {
        const double n = texture.suction_cm / 100 * texture.effective_porosity;
        const double k = texture.conductivity_cm_per_h / 3.6e5;
        const auto infiltration = [&](double t) {
            return green_ampt_infiltration(m_per_s(k), m(texture.suction_cm / 100),
                                           share(texture.effective_porosity), s(t))
                .value();
        };
        const auto rate = [=](double, double f) { return k * (1 + n / f); };
        Ode exact(rate, infiltration(60), 60);
        for (const double t : {600.0, 3600.0, 36000.0, 360000.0}) {
            CAPTURE(texture.name, t);
            CHECK(infiltration(t) == Approx(exact.at(t)).epsilon(1e-9));
        }
    }
}

TEST_CASE("infiltration in its limits: at once sqrt(2 N K t), at last K t, and without suction K t") {
    const auto f = [](double suction, double t) {
        return green_ampt_infiltration(mm_per_h(10), m(suction), share(0.3), s(t)).value();
    };
    const double k = 10 / 3.6e6;
    CHECK(f(0.1, 1e-9) == Approx(std::sqrt(2 * 0.03 * k * 1e-9)).epsilon(1e-6));
    CHECK(f(1e-6, 1e7) == Approx(k * 1e7).epsilon(1e-6));
    CHECK(f(0, 3600) == Approx(0.01).epsilon(1e-13));
    CHECK(f(0.1, 0) == 0);
    double before = 0;
    for (double t = 1; t < 1e6; t *= 1.5) {
        CHECK(f(0.1, t) > before);
        CHECK(f(0.2, t) > f(0.1, t));
        before = f(0.1, t);
    }
}

TEST_CASE("falling-head test", "[published]") {
    // Das, Principles of Geotechnical Engineering, falling-head example (from memory): 8.52e-4 in/s by 2.303
    // log10.
    const Area square_inch = m2(0.0254 * 0.0254);
    const Speed k = falling_head_permeability(0.06 * square_inch, inches(8), 1.6 * square_inch, s(180),
                                              inches(20), inches(12));
    const Speed inch_per_second = inches(1) / s(1);
    CHECK_THAT(k, is_within(Speed(8.52e-4 * inch_per_second), Speed(1e-6 * inch_per_second)));
    CHECK_THAT(k, is_near(Speed(8.513760e-4 * inch_per_second), 1e-7));
}

TEST_CASE("the head of that test falls as the permeability says (GSL Runge-Kutta)") {
    Random random;
    for (int i = 0; i < 20; ++i) {
        const double tube = random.between(1e-5, 1e-3);
        const double length = random.between(0.05, 0.5);
        const double area = random.between(1e-3, 0.05);
        const double start = random.between(0.5, 3);
        const double end = random.between(0.1, 0.9) * start;
        const double time = random.between(10, 1e5);
        const double k =
            falling_head_permeability(m2(tube), m(length), m2(area), s(time), m(start), m(end)).value();
        const auto fall = [=](double, double h) { return -k * h / length * area / tube; };
        CHECK(Ode(fall, start, 0).at(time) == Approx(end).epsilon(1e-8));
    }
}

TEST_CASE("seepage into a pit", "[published]") {
    // University geotechnical course exercise (inputs and formula seen): h =
    // 49.454806279 m at the well for Q = 0.2 m3/s (math).
    CHECK_THAT(pit_seepage(m_per_s(0.01), m(50), m(49.454806279), m(500), m(0.1)),
               is_near(m3_per_s(0.2), 1e-8));
    Random random;
    for (int i = 0; i < 100; ++i) {
        const Speed k = m_per_s(random.between(1e-6, 1e-3));
        const Length outside = m(random.between(2, 20));
        const Length inside = random.between(0.0, 0.9) * outside;
        const Length radius = m(random.between(2, 30));
        const Length influence = random.between(1.5, 50) * radius;
        const Flow q = pit_seepage(k, outside, inside, influence, radius);
        REQUIRE(q > m3_per_s(0));
        REQUIRE(pit_seepage(k, outside, inside, 2.0 * influence, radius) < q);
        REQUIRE(pit_seepage(k, outside, 0.5 * inside, influence, radius) >= q);
        REQUIRE_THAT(pit_seepage(2.0 * k, outside, inside, influence, radius), is_near(Flow(2.0 * q)));
        // What flows through every circle in between is the same: the two halves in series.
        const double way = random.between(0.1, 0.9);
        const Length ring = radius * std::pow(influence / radius, way);
        const Length level =
            m(std::sqrt((inside * inside + way * (outside * outside - inside * inside)).value()));
        REQUIRE_THAT(pit_seepage(k, level, inside, ring, radius), is_near(q, 1e-9));
    }
}

TEST_CASE("the water table rises from the pit to the influence radius as Darcy says (GSL Runge-Kutta)") {
    // Q = 2 pi r h k dh/dr.
    Random random;
    for (int i = 0; i < 60; ++i) {
        const double k = random.between(1e-6, 1e-3);
        const double outside = random.between(2, 20);
        const double inside = random.between(0.05, 0.95) * outside;
        const double radius = random.between(1, 30);
        const double influence = random.between(1.5, 100) * radius;
        const double q = pit_seepage(m_per_s(k), m(outside), m(inside), m(influence), m(radius)).value();
        const auto rise = [=](double r, double h) { return q / (2 * std::acos(-1.0) * r * h * k); };
        CAPTURE(i);
        REQUIRE(Ode(rise, inside, radius).at(influence) == Approx(outside).epsilon(1e-9));
    }
    CHECK(pit_seepage(m_per_s(1e-4), m(5), m(5), m(50), m(5)) == m3_per_s(0));
}

TEST_CASE("influence of pumping and radius of a pit", "[published]") {
    // Sichardt as in Punmia et al., Irrigation and Water Power Engineering, Ex. 5.6 (seen in code
    // that accompanies the book): k = 36 m/d, s = 4 m gives 244.948974 m.
    CHECK_THAT(influence_distance(m(36) / hours(24), m(4)), is_near(m(244.948974), 2e-9));
    CHECK(influence_distance(m_per_s(1e-4), m(0)) == m(0));
    CHECK_THAT(influence_distance(m_per_s(4e-4), m(3)),
               is_near(Length(6.0 * influence_distance(m_per_s(1e-4), m(1)))));
    // The circle is as large as the rectangle.
    for (const double width : {0.5, 3.0, 40.0}) {
        const double r = equivalent_radius(m(20), m(width)).value();
        CHECK(std::acos(-1.0) * r * r == Approx(20 * width).epsilon(1e-13));
        CHECK(equivalent_radius(m(width), m(20)).value() == Approx(r).epsilon(1e-15));
    }
}

TEST_CASE("time to pump a pit dry") {
    // math: 360 m3 at 25 L/s against 10 L/s are 6 h 40 min.
    CHECK_THAT(pump_time(m3(360), m3_per_s(0.025), m3_per_s(0.010)), is_near(s(24000)));
    CHECK_THAT(pump_time(m3(360), m3_per_s(0.025), m3_per_s(0)), is_near(s(14400)));
    CHECK_THROWS_MATCHES(pump_time(m3(360), m3_per_s(0.01), m3_per_s(0.01)), Refused,
                         has_no_answer("pumping (10 L/s) must exceed the inflow (10 L/s)"));
}

TEST_CASE("groundwater that none could be is refused") {
    CHECK_THROWS_MATCHES(green_ampt_infiltration(m_per_s(0), m(1), share(0.3), s(1)), Refused,
                         refuses_domain("conductivity (0 mm/h)"));
    CHECK_THROWS_MATCHES(green_ampt_infiltration(m_per_s(1), m(-1), share(0.3), s(1)), Refused,
                         refuses_domain("suction (-1 m)"));
    CHECK_THROWS_MATCHES(green_ampt_infiltration(m_per_s(1), m(1), share(30), s(1)), Refused,
                         refuses_domain("moisture deficit (30)"));
    CHECK_THROWS_MATCHES(green_ampt_infiltration(m_per_s(1), m(1), share(0.3), s(-1)), Refused,
                         refuses_domain("time ("));
    CHECK_THROWS_MATCHES(falling_head_permeability(m2(1), m(1), m2(1), s(1), m(1), m(1)), Refused,
                         refuses_domain("head start (1 m) must be above the head at the end (1 m)"));
    CHECK_THROWS_MATCHES(falling_head_permeability(m2(1), m(1), m2(1), s(1), m(1), m(0)), Refused,
                         refuses_domain("head end (0 m)"));
    CHECK_THROWS_MATCHES(pit_seepage(m_per_s(1e-4), m(4), m(5), m(50), m(5)), Refused,
                         refuses_domain("water depth outside (4 m)"));
    CHECK_THROWS_MATCHES(pit_seepage(m_per_s(1e-4), m(5), m(4), m(5), m(5)), Refused,
                         refuses_domain("influence radius (5 m) must reach beyond"));
    CHECK_THROWS_MATCHES(pit_seepage(m_per_s(0), m(5), m(4), m(50), m(5)), Refused,
                         refuses_domain("permeability (0 mm/h)"));
    CHECK_THROWS_MATCHES(equivalent_radius(m(0), m(5)), Refused, refuses_domain("length (0 m)"));
    CHECK_THROWS_MATCHES(equivalent_radius(m(5), m(0)), Refused, refuses_domain("width (0 m)"));
    CHECK_THROWS_MATCHES(influence_distance(m_per_s(0), m(1)), Refused, refuses_domain("permeability (0"));
    CHECK_THROWS_MATCHES(influence_distance(m_per_s(1e-4), m(-1)), Refused,
                         refuses_domain("drawdown (-1 m)"));
    CHECK_THROWS_MATCHES(pump_time(m3(0), m3_per_s(1), m3_per_s(0)), Refused,
                         refuses_domain("volume (0 m3)"));
    CHECK_THROWS_MATCHES(pump_time(m3(1), m3_per_s(1), m3_per_s(-1)), Refused, refuses_domain("inflow"));
}

TEST_CASE("each figure of a falling-head test must be above 0") {
    const auto permeability = [](int wrong, double value) {
        double figures[] = {1e-4, 0.1, 1e-2, 600, 0.8, 0.4};
        figures[wrong] = value;
        return falling_head_permeability(Area::from_value(figures[0]), Length::from_value(figures[1]),
                                         Area::from_value(figures[2]), Time::from_value(figures[3]),
                                         Length::from_value(figures[4]), Length::from_value(figures[5]));
    };
    CHECK(permeability(4, 0.8).value() == Approx(1e-4 * 0.1 / (1e-2 * 600) * std::log(2)).epsilon(1e-12));
    const char* names[] = {"tube area", "sample length", "sample area", "time", "head start", "head end"};
    for (int wrong = 0; wrong < 6; ++wrong)
        for (const double value : {0.0, -1.0})
            CHECK_THROWS_MATCHES(permeability(wrong, value), Refused, refuses_domain(names[wrong]));
}

}  // namespace undercroft::tests
