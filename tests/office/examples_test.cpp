// The workbook of examples: every result against mathematics done here, and errors only where they are meant.
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <numbers>
#include <set>
#include <vector>

#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {

using std::numbers::pi;
constexpr double ft = 0.3048;
constexpr double g = 9.80665;

double prismoid(double length, double width, double depth, double run) {
    return length * width * depth + (length + width) * run * depth * depth +
           4.0 / 3 * run * run * std::pow(depth, 3);
}

/// One of the two workbooks, its cells by sheet and address.
class Examples {
public:
    explicit Examples(const char* name)
        : document_(the_office().open(std::filesystem::path(TEMPLATES_FOLDER) / name)) {
        document_.recalculate();
    }
    [[nodiscard]] const sheets::Document& document() const { return document_; }
    [[nodiscard]] double number(const char* sheet, const char* cell) const {
        INFO(sheet << "." << cell);
        CHECK(document_.cell(sheet, cell)->getError() == 0);
        return document_.cell(sheet, cell)->getValue();
    }
    void check(const char* sheet, const char* cell, double expected, double relative = 1e-9) const {
        INFO(sheet << "." << cell);
        CHECK(number(sheet, cell) == Approx(expected).epsilon(relative).margin(1e-12));
    }

private:
    sheets::Document document_;
};

/// Half an ellipse up to a height, by its closed form.
double half_ellipse(double span, double rise, double height) {
    const double y = std::clamp(height / rise, 0.0, 1.0);
    return span / 2 * rise * (y * std::sqrt(1 - y * y) + std::asin(y));
}

/// The bed of the examples, in one unit of length.
struct Bed {
    double length, width, base, porosity, span, rise, chambers;
    [[nodiscard]] double held(double depth) const {
        const double inside = chambers * half_ellipse(span, rise, std::max(0.0, depth - base));
        return porosity * (length * width * depth - inside) + inside;
    }
    [[nodiscard]] double depth(double volume) const {
        double low = 0;
        double high = base + 3 * rise;
        for (int i = 0; i < 200; ++i) (held((low + high) / 2) < volume ? low : high) = (low + high) / 2;
        return low;
    }
};

struct Curve {
    std::vector<double> x, y;
    /// Straight between the rows, on logarithmic scales or plain ones.
    [[nodiscard]] double at(double wanted, bool logarithmic) const {
        std::size_t i = 1;
        while (i + 1 < x.size() && wanted > x[i]) ++i;
        if (!logarithmic) return y[i - 1] + (y[i] - y[i - 1]) * (wanted - x[i - 1]) / (x[i] - x[i - 1]);
        const double slope = std::log(y[i] / y[i - 1]) / std::log(x[i] / x[i - 1]);
        return y[i - 1] * std::pow(wanted / x[i - 1], slope);
    }
};

/// The largest shortfall over all durations, found by trying a hundred thousand.
double storage(const Curve& rain, double coefficient, double area, double release, double per_minute) {
    double largest = 0;
    const double last = rain.x.back();
    for (int i = 0; i <= 100000; ++i) {
        const double t = rain.x.front() + (last - rain.x.front()) * i / 100000;
        largest =
            std::max(largest, coefficient * rain.at(t, true) * area * t * per_minute - release * 60 * t);
    }
    return largest;
}

/// Level-pool routing of a trapezoidal inflow by the same recursion, solved by halving.
struct Peak {
    double depth = 0, time = 0, outflow = 0;
};
Peak routed(double peak_inflow, const Curve& held, const Curve& flow, double top) {
    constexpr double step = 120;
    const auto inflow = [&](double t) {
        const double minutes = t / 60;
        if (minutes < 10) return peak_inflow * minutes / 10;
        if (minutes < 30) return peak_inflow;
        return minutes < 40 ? peak_inflow * (40 - minutes) / 10 : 0.0;
    };
    Peak peak;
    double depth = 0;
    for (double t = 0; t < 7200; t += step) {
        const double wanted =
            2 * held.at(depth, false) / step - flow.at(depth, false) + inflow(t) + inflow(t + step);
        double low = 0;
        double high = top;
        for (int i = 0; i < 200; ++i) {
            const double middle = (low + high) / 2;
            (2 * held.at(middle, false) / step + flow.at(middle, false) < wanted ? low : high) = middle;
        }
        depth = low;
        if (depth > peak.depth) peak = {depth, (t + step) / 60, flow.at(depth, false)};
    }
    return peak;
}

/// Time to fall through the segments, storage straight in each; flow straight too, and where it ends in none
/// as that of an orifice, which goes with the root of the depth.
double emptying(const Curve& held, const Curve& flow, double from, double to) {
    double time = 0;
    for (std::size_t i = held.x.size() - 1; i > 0; --i) {
        const double high = std::min(from, held.x[i]);
        const double low = std::max(to, held.x[i - 1]);
        if (high <= low) continue;
        const double volume = held.at(high, false) - held.at(low, false);
        const double fast = flow.at(high, false);
        if (flow.y[i - 1] == 0) {
            const double way = 2 * (std::sqrt(high) - std::sqrt(low)) * std::sqrt(held.x[i]);
            time += volume / (high - low) * way / flow.y[i];
            continue;
        }
        const double slow = flow.at(low, false);
        time += volume / (fast - slow) * std::log(fast / slow);
    }
    return time;
}

}  // namespace

TEST_CASE("the examples show an error only where one is meant, and print") {
    for (const char* name : {"examples.ots", "examples-us.ots"}) {
        CAPTURE(name);
        const Examples examples(name);
        std::set<std::string> wrong;
        for (const sheets::CellError& error : sheets::errors_of(examples.document())) {
            wrong.insert(error.cell);
            CHECK_FALSE(error.reason.empty());
        }
        CHECK(wrong == std::set<std::string>{"Percent.B14", "Errors.B5", "Errors.B8", "Errors.B11",
                                             "Errors.B14", "Errors.B17", "Errors.B20"});
        CHECK(examples.document().sheet_names().size() == 21);  // twenty, and their list
        const std::filesystem::path pdf = scratch(std::string(name) + ".pdf");
        examples.document().store(pdf);
        CHECK(std::filesystem::file_size(pdf) > 10000);
    }
}

TEST_CASE("the examples in SI come out as mathematics has it") {
    const Examples si("examples.ots");
    const double pit = prismoid(30, 12, 2.2, 1.5);
    for (const char* cell : {"B11", "B12", "B13", "B14"}) si.check("Quantity", cell, pit);
    si.check("Heads", "E6", prismoid(30, 12, 2.2, 1));
    si.check("Heads", "B10", prismoid(30, 12, 2.2, 1) + prismoid(24, 10, 1.9, 1) + prismoid(18, 8, 1.5, 1));
    si.check("Mixed", "B11", 0.225 + 30 * 0.0254 + 0.5 * ft + 0.3 + 0.25);
    si.check("Mixed", "B13", 1);
    si.check("Percent", "B12", 100 * 0.62 * 2.65);
    si.check("Percent", "B13", 100 * 0.62 * 2.65);
    si.check("Durations", "B12", 400 / 0.012 / 3600);
    si.check("Durations", "B13", 7.5);
    si.check("Durations", "B14", 400 / 0.012 / 3600 + 7.5);
    const Bed bed{45, 14, 0.225, 0.4, 1.07, 0.71, 350};
    si.check("Stage", "E30", bed.held(1.087));
    si.check("Stage", "C30", 350 * pi * 0.535 * 0.71 / 2);
    si.check("Depth", "B17", bed.depth(250));
    si.check("Depth", "B18", 250);
    si.check("Depth", "B19", bed.held(1.087));
    si.check("Depth", "B20", 1);
    si.check("Product", "B17", pi * 0.535 * 0.71 / 2);
    si.check("Product", "B18", pi * 0.535 * 0.71 / 2 * 1.9);
    si.check("Product", "B19", 180 * 0.029);
    const Curve rain{{10, 30, 60, 120, 360}, {120, 70, 45, 28, 12}};
    constexpr double mm_h = 1 / 60.0 / 1000;  // m a minute
    si.check("Rain", "B8", storage(rain, 0.85, 6000, 0.015, mm_h), 1e-6);
    si.check("Rain", "B9", 0.85 * 0.12 / 3600 * 6000 * 1000);
    si.check("Frequencies", "B17", si.number("Rain", "B8"));
    const double low = 0.6 * pi / 4 * 0.01 * std::sqrt(2 * g * 1.15);
    const double high = 0.6 * pi / 4 * 0.0225 * std::sqrt(2 * g * 0.625);
    const double weir = 1.84 * 1.2 * std::pow(0.2, 1.5);
    si.check("Outlets", "F5", 1000 * low);
    si.check("Outlets", "F6", 1000 * high);
    si.check("Outlets", "F7", 1000 * weir);
    si.check("Outlets", "B10", 1000 * (low + high + weir));
    si.check("Orifice", "B8", 1000 * std::sqrt(4 * 0.015 / (pi * 0.6 * std::sqrt(2 * g * 1.1))));
    si.check("Orifice", "B9", 15);
    const Curve held{{0, 0.4, 0.8, 1.2}, {0, 80, 190, 280}};
    const Curve flow{{0, 0.4, 0.8, 1.2}, {0, 0.0015, 0.0025, 0.0032}};
    si.check("Drain", "B8", emptying(held, flow, 1.2, 0.1) / 3600);
    const Peak peak = routed(0.85 * 0.07 / 3600 * 6000, {{0, 0.6, 1.2}, {0, 130, 280}},
                             {{0, 0.6, 1.2}, {0, 0.014, 0.022}}, 1.2);
    si.check("Storm", "B10", peak.depth, 1e-7);
    si.check("Storm", "B11", peak.time);
    si.check("Storm", "B12", 1000 * peak.outflow, 1e-7);
    si.check("Pit", "B14", prismoid(45, 14, 2.2, 1));
    si.check("Pit", "B15", 1.25 * prismoid(45, 14, 2.2, 1));  // US Army FM 5-434, Table 1-1: loam
    si.check("Pit", "B16", std::ceil(1.25 * prismoid(45, 14, 2.2, 1) / 12));
    si.check("Pit", "B17", 49.4 * 18.4);
    si.check("Stone", "B12", 213 * 0.6 * 2.65);
    si.check("Stone", "B13", 360);
    si.check("Stone", "B14", 18);
    si.check("Stone", "B15", 360 * 58);
    si.check("Fabric", "B13", 2 * 45 * 14 + 118 * 1.2 + 118 * 0.45);
    si.check("Fabric", "B14", 4);  // four strips of 45 m, two a roll, on base and top
    si.check("Fabric", "B16", 2);  // one strip of 118 m of rolls of 100 m
    si.check("Fabric", "B17", 6);
    si.check("Fabric", "B18", 0.27 * (2 * 45 * 14 + 118 * 1.2 + 118 * 0.45));
    const auto wheel = [](double cover) {
        const double impact = std::max(0.0, 0.33 * (1 - 0.125 * cover / ft));
        return 80 * (1 + impact) / ((0.25 + 1.15 * cover) * (0.5 + 1.15 * cover));
    };
    si.check("Cover", "C13", wheel(0.65));
    si.check("Cover", "C17", wheel(2.0));
    si.check("Cover", "E15", wheel(1.0) + 19);
    si.check("Cover", "F13", wheel(0.65) + 19 * 0.65 <= 75 ? 1 : 0);
    si.check("Cover", "F17", wheel(2.0) + 19 * 2.0 <= 75 ? 1 : 0);
    const Curve shorter{{10, 30, 60, 120}, {120, 70, 45, 28}};
    si.check("Scenarios", "C11", storage(shorter, 0.85, 6000, 0.005, mm_h), 1e-6);
    si.check("Scenarios", "C12", si.number("Scenarios", "B8"));
    si.check("Scenarios", "C14", storage(shorter, 0.85, 6000, 0.05, mm_h), 1e-6);
    si.check("Errors", "B7", prismoid(30, 12, 2.2, 1));
    si.check("Errors", "B10", pi * 0.535 * 0.71 / 2);
    si.check("Errors", "B13", 100 * 0.62 * 2.65);
    si.check("Errors", "B16", 8);
    si.check("Errors", "B19", 40000 * 0.45359237);
    si.check("Errors", "B22", 120 + 0.6 * 140);
}

TEST_CASE("the examples in US customary units come out as mathematics has it") {
    const Examples us("examples-us.ots");
    constexpr double yd3 = 27;      // ft3
    constexpr double gallon = 231;  // in3
    const double g_ft = g / ft;
    us.check("Quantity", "B11", prismoid(100, 40, 7, 1.5) / yd3);
    us.check("Quantity", "B12", prismoid(100, 40, 7, 1.5) / yd3);
    us.check("Quantity", "B13", prismoid(100, 40, 7, 1.5) * std::pow(ft, 3));
    us.check("Quantity", "B14", prismoid(100, 40, 7, 1.5) / yd3);
    us.check("Heads", "B10",
             (prismoid(100, 40, 7, 1) + prismoid(80, 32, 6, 1) + prismoid(60, 24, 5, 1)) / yd3);
    us.check("Mixed", "B11", 0.75 + 2.5 + 0.5 + 0.55 / ft);
    us.check("Percent", "B12", 130 * yd3 * 0.62 * 165 / 2000);
    us.check("Durations", "B12", 14000 * 1728 / gallon / 192 / 60);
    const Bed bed{150, 46, 0.75, 0.4, 3.5, 2.25, 1150};
    us.check("Stage", "E30", bed.held(3.5));
    us.check("Depth", "B17", bed.depth(8800));
    us.check("Depth", "B18", 8800);
    us.check("Depth", "B19", bed.held(3.5));
    us.check("Product", "B17", pi * 1.75 * 2.25 / 2);
    us.check("Product", "B19", 180 * 64 / 2000.0);
    const Curve rain{{10, 30, 60, 120, 360}, {4.8, 2.8, 1.8, 1.1, 0.5}};
    constexpr double in_h = 1 / 60.0 / 12;  // ft a minute
    us.check("Rain", "B8", storage(rain, 0.85, 1.5 * 43560, 0.5, in_h), 1e-6);
    us.check("Rain", "B9", 0.85 * 4.8 / 12 / 3600 * 1.5 * 43560);
    us.check("Frequencies", "B17", us.number("Rain", "B8"));
    us.check("Outlets", "F5", 0.6 * pi / 4 / 9 * std::sqrt(2 * g_ft * (4 - 1 / 6.0)));
    us.check("Outlets", "F6", 0.6 * pi / 4 / 4 * std::sqrt(2 * g_ft * (4 - 1.75)));
    us.check("Outlets", "F7", 1.84 / std::sqrt(ft) * 4 * std::pow(0.75, 1.5));
    us.check("Orifice", "B8", 12 * std::sqrt(4 * 0.5 / (pi * 0.6 * std::sqrt(2 * g_ft * 3.5))));
    const Curve held{{0, 1.5, 3, 4}, {0, 3000, 7000, 10000}};
    const Curve flow{{0, 1.5, 3, 4}, {0, 0.05, 0.09, 0.11}};
    us.check("Drain", "B8", emptying(held, flow, 4, 0.5) / 3600);
    const Peak peak = routed(0.85 * 2.8 / 12 / 3600 * 1.5 * 43560, {{0, 2, 4}, {0, 4600, 10000}},
                             {{0, 2, 4}, {0, 0.5, 0.8}}, 4);
    us.check("Storm", "B10", peak.depth, 1e-7);
    us.check("Storm", "B11", peak.time);
    us.check("Storm", "B12", peak.outflow, 1e-7);
    us.check("Pit", "B14", prismoid(150, 46, 7, 1) / yd3);
    us.check("Pit", "B15", 1.25 * prismoid(150, 46, 7, 1) / yd3);
    us.check("Pit", "B17", 164 * 60 / 9.0);
    us.check("Stone", "B12", 280 * yd3 * 165 * 0.6 / 2000);
    us.check("Stone", "B13", 396);
    us.check("Stone", "B15", 396 * 36);
    us.check("Fabric", "B13", (2 * 150 * 46 + 392 * 4 + 392 * 1.5) / 9);
    us.check("Fabric", "B17", 6);
    const auto wheel = [](double cover) {
        const double impact = std::max(0.0, 0.33 * (1 - 0.125 * cover));
        return 16000 * (1 + impact) / ((10 / 12.0 + 1.15 * cover) * (20 / 12.0 + 1.15 * cover));
    };
    us.check("Cover", "C13", wheel(2));
    us.check("Cover", "E17", wheel(6.5) + 6.5 * 120);
    const Curve shorter{{10, 30, 60, 120}, {4.8, 2.8, 1.8, 1.1}};
    us.check("Scenarios", "C14", storage(shorter, 0.85, 1.5 * 43560, 2, in_h), 1e-6);
    us.check("Scenarios", "C12", us.number("Scenarios", "B8"));
}

TEST_CASE("an example follows its unit cells, and its sheets are not protected") {
    const Examples si("examples.ots");
    si.document().cell("Quantity", "C7")->setFormula("cm");
    CHECK(si.document().cell("Quantity", "B11")->getValue() == Approx(prismoid(30, 12, 22, 1.5)));
    CHECK(si.document().cell("Quantity", "B14")->getValue() == Approx(prismoid(30, 12, 2.2, 1.5)));
    si.document().cell("Quantity", "C7")->setFormula("kg");
    CHECK(si.document().cell("Quantity", "B11")->getError() == value_error);
    si.document().cell("Frequencies", "B12")->setFormula("100 years");
    CHECK(si.document().cell("Frequencies", "B17")->getValue() > 1.4 * si.number("Rain", "B8"));
    si.document().cell("Product", "B10")->setFormula("High");
    CHECK(si.document().cell("Product", "B17")->getValue() == Approx(pi * 0.835 * 1.09 / 2));
    for (const std::string& name : si.document().sheet_names()) {
        const css::uno::Reference<css::util::XProtectable> sheet(si.document().sheet(name),
                                                                 css::uno::UNO_QUERY_THROW);
        CHECK_FALSE(sheet->isProtected());
    }
}

}  // namespace undercroft::tests
