// Rain as agencies publish it.
#include "calc/water/published_rain.hpp"

#include "calc/water/hyetograph.hpp"
#include "tests/support/amounts.hpp"
#include "tests/support/csv.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace calc;

namespace {

const Share one = share(1);

/// A CSV file as a spreadsheet takes it in: numbers are numbers, the rest is text.
PublishedTable pasted(const std::string& file, bool percent_becomes_fraction = false) {
    PublishedTable table;
    std::istringstream lines(file_text("tests/data/" + file));
    for (std::string line; std::getline(lines, line);) {
        std::vector<PublishedCell> row;
        for (std::string cell : csv_cells(line)) {
            char* end = nullptr;
            const double number = std::strtod(cell.c_str(), &end);
            if (cell.empty())
                row.emplace_back();
            else if (*end == '\0')
                row.emplace_back(number);
            else if (percent_becomes_fraction && std::string(end) == "%")
                row.emplace_back(number / 100);
            else
                row.emplace_back(cell);
        }
        table.push_back(row);
    }
    return table;
}

RainTable pick(const PublishedTable& table, const char* frequency, const char* unit, Share factor = one) {
    return published_rain(table, frequency_of(frequency), parse_unit(unit), factor);
}

Length depth_of(const RainTable& rain, double minute) {
    return rain_depth(rain, minutes(minute));
}

}  // namespace

TEST_CASE("frequencies are read as what they are") {
    const auto years = [](double n) { return Frequency{Rarity::recurrence, n}; };
    const auto chance = [](double p) { return Frequency{Rarity::exceedance, p}; };
    for (const char* text : {"10 years", "10 y", "10-year", " 10 yr ", "10 years ARI", "ARI 10", "0.1EY"})
        CHECK(frequency_of(text) == years(10));
    for (const char* text :
         {"10 %", "10%", "10 % AEP", "AEP 10 %", "1 in 10", "1/10", "1:10", "1 in 10 AEP", "1 in 10 years"})
        CHECK(frequency_of(text).number == Approx(chance(0.1).number).epsilon(1e-15));
    for (const char* text : {"10", "", "ten years", "10 mm", "AEP", "1 in", "1 in 1", "0 years", "0 %",
                             "100 %", "10 % ARI", "10 years AEP", "2 in 10", "AEP 10 ARI"})
        CHECK_FALSE(frequency_in(text).has_value());
    CHECK_THROWS_MATCHES(frequency_of("10"), Refused,
                         refuses_value("'10' is no frequency: write it as 10 years"));
    CHECK(text_of(years(10)) == "10 years");
    CHECK(text_of(chance(0.632)) == "63.2 % AEP");
}

TEST_CASE("a chance in a year is not so many years", "[published]") {
    // Bureau of Meteorology, IFD: 50 % AEP is 1.44 years, 20 % 4.48, 10 % 9.49; 63.2 % is 1 year (1 - 1/e).
    CHECK(years_between(frequency_of("50 %")) == Approx(1.44).margin(0.005));
    CHECK(years_between(frequency_of("20 %")) == Approx(4.48).margin(0.005));
    CHECK(years_between(frequency_of("10 %")) == Approx(9.49).margin(0.005));
    CHECK(years_between(frequency_of("1 %")) == Approx(99.5).margin(0.005));
    CHECK(years_between(frequency_of("63.2120558829 %")) == Approx(1).epsilon(1e-9));
    CHECK(years_between(frequency_of("10 years")) == 10);
}

TEST_CASE("NOAA Atlas 14 as downloaded: depths in inches by years", "[published]") {
    // Fort Myers FL, Volume 9 (US Government work): values of the table, and depths between its rows (math).
    const PublishedTable table = pasted("rain-noaa-atlas-14.csv");
    const RainTable hundred = pick(table, "100 years", "in");
    REQUIRE(hundred.size() == 19);
    CHECK_THAT(depth_of(hundred, 5), is_near(inches(1.15)));
    CHECK_THAT(depth_of(hundred, 60), is_near(inches(4.38)));
    CHECK_THAT(depth_of(hundred, 24 * 60), is_near(inches(12.1)));
    CHECK_THAT(depth_of(hundred, 60 * 24 * 60), is_near(inches(36.6)));
    CHECK_THAT(depth_of(pick(table, "1 year", "in"), 10), is_near(inches(0.810)));
    CHECK_THAT(depth_of(pick(table, "1000 years", "in"), 60 * 24 * 60), is_near(inches(41.5)));
    CHECK_THAT(depth_of(hundred, 20), is_near(inches(2.500992727), 1e-9));
    CHECK_THAT(depth_of(hundred, 45), is_near(inches(3.899297851), 1e-9));
    CHECK_THAT(depth_of(hundred, 90), is_near(inches(4.982712880), 1e-9));
    CHECK_THAT(rain_intensity(hundred, minutes(20)), is_near(Speed(inches(7.502978181) / hours(1)), 1e-9));
    CHECK_THAT(depth_of(pick(table, "100 years", "in", share(1.2)), 20), is_near(inches(3.001191273), 1e-9));
    CHECK(published_frequencies(table).size() == 10);
    CHECK(published_frequencies(table).front() == Frequency{Rarity::recurrence, 1});
    // Only the first of the blocks that a download with confidence limits holds.
    PublishedTable with_limits = table;
    with_limits.push_back({"by duration for ARI (years):", 1.0, 2.0});
    with_limits.push_back({"5-min:", 9.0, 9.0});
    CHECK(pick(with_limits, "100 years", "in") == hundred);
    // 10 % is 9.49 years: no column of this table.
    CHECK_THROWS_MATCHES(pick(table, "10 %", "in"), Refused,
                         has_no_answer("no column of 10 % AEP: it has 1 year, 2 years, 5 years, 10 years"));
    CHECK_THROWS_MATCHES(pick(table, "10 %", "in"), Refused,
                         has_no_answer("the nearest, 10 years, is 9.51626 % AEP"));
    CHECK_THROWS_MATCHES(pick(table, "30 years", "in"), Refused, has_no_answer("no column of 30 years"));
    CHECK_THROWS_MATCHES(pick(table, "100 years", "in/h"), Refused, refuses_domain("are these depths?"));
}

TEST_CASE("the Bureau of Meteorology's IFD as downloaded: depths in mm by chance in a year", "[published]") {
    // Station 117002A, Copyright Commonwealth of Australia 2016 Bureau of Meteorology (CC BY): values, and
    // depths between rows (math). A spreadsheet makes fractions of the percentages.
    for (const bool fractions : {false, true}) {
        CAPTURE(fractions);
        const PublishedTable table = pasted("rain-bom-ifd.csv", fractions);
        const RainTable ten = pick(table, "10 %", "mm");
        REQUIRE(ten.size() == 18);
        CHECK_THAT(depth_of(ten, 60), is_near(mm(74.8)));
        CHECK_THAT(depth_of(ten, 10080), is_near(mm(522)));
        CHECK_THAT(depth_of(ten, 75), is_near(mm(83.371940810), 1e-9));
        CHECK_THAT(depth_of(pick(table, "1 %", "mm"), 150), is_near(mm(179.407712311), 1e-9));
        CHECK_THAT(depth_of(pick(table, "1 in 200", "mm"), 90), is_near(mm(153)));
        CHECK_THAT(depth_of(pick(table, "63.2 %", "mm"), 60), is_near(mm(40.4)));
        // Years only where they are what the column says: 1.44 and 4.48, as the Bureau prints, but not 2, 5
        // or 10.
        CHECK(pick(table, "1.44 years", "mm") == pick(table, "50 %", "mm"));
        CHECK(pick(table, "4.48 years", "mm") == pick(table, "20 %", "mm"));
        CHECK(pick(table, "99.5 years", "mm") == pick(table, "1 %", "mm"));
        CHECK(pick(table, "1 year", "mm") == pick(table, "63.2 %", "mm"));
        for (const char* years : {"2 years", "5 years", "10 years", "100 years"})
            CHECK_THROWS_MATCHES(pick(table, years, "mm"), Refused,
                                 has_no_answer("no column of " + std::string(years)));
        CHECK_THROWS_MATCHES(pick(table, "10 years", "mm"), Refused,
                             has_no_answer("the nearest, 10 % AEP, is 9.49122 years"));
    }
}

TEST_CASE(
    "a table typed by hand: durations by a heading's unit, intensities, frequencies that say what they are") {
    const PublishedTable typed = {
        {"Duration (h)", "2 years", "10 years"}, {0.5, 40.0, 60.0}, {1.0, 25.0, 38.0}, {24.0, 2.5, 4.0}};
    const RainTable ten = pick(typed, "10 years", "mm/h");
    CHECK_THAT(rain_intensity(ten, minutes(30)), is_near(mm_per_h(60)));
    CHECK_THAT(rain_intensity(ten, hours(24)), is_near(mm_per_h(4)));
    CHECK_THAT(rain_intensity(pick(typed, "10 years", "in/h", share(1.4)), hours(1)),
               is_near(Speed(25.4 * 1.4 * mm_per_h(38))));
    // Minutes where nothing is said; days; text for numbers.
    const PublishedTable mixed = {{std::monostate{}, "AEP", std::monostate{}},
                                  {std::monostate{}, "50", "1"},
                                  {10.0, " 8.5", 12.0},
                                  {"1 hour", "20", 31.0},
                                  {"2-day", 60.0, "90.5"}};
    CHECK_THAT(depth_of(pick(mixed, "50 %", "mm"), 10), is_near(mm(8.5)));
    CHECK_THAT(depth_of(pick(mixed, "1 %", "mm"), 2880), is_near(mm(90.5)));
    const PublishedTable periods = {
        {"Return period, years", 30.0, 100.0}, {"15 min", 20.0, 30.0}, {"30 min", 25.0, 36.0}};
    CHECK_THAT(depth_of(pick(periods, "30 years", "mm"), 15), is_near(mm(20)));
}

TEST_CASE("rain tables that cannot be read are refused") {
    const auto table = [](std::vector<std::vector<PublishedCell>> rows) { return rows; };
    const PublishedTable good = {{"years", 2.0, 10.0}, {"5 min", 8.0, 12.0}, {"1 h", 20.0, 31.0}};
    CHECK_NOTHROW(pick(good, "2 years", "mm"));
    CHECK_THROWS_MATCHES(pick(good, "2 years", "kg"), Refused,
                         refuses_value("the unit of the rain table must be that of a depth"));
    CHECK_THROWS_MATCHES(pick(good, "2 years", "mm", share(0)), Refused, refuses_domain("factor (0)"));
    CHECK_THROWS_MATCHES(pick({}, "2 years", "mm"), Refused,
                         refuses_value("no row that begins with a duration"));
    CHECK_THROWS_MATCHES(pick(table({{"years", 2.0}, {"storm", 8.0}}), "2 years", "mm"), Refused,
                         refuses_value("no row that begins with a duration"));
    CHECK_THROWS_MATCHES(pick(table({{"5 min", 8.0}, {"10 min", 9.0}}), "2 years", "mm"), Refused,
                         refuses_value("no row of frequencies above its durations"));
    CHECK_THROWS_MATCHES(pick(table({{"rain", 2.0}, {"5 min", 8.0}, {"10 min", 9.0}}), "2 years", "mm"),
                         Refused, refuses_value("do not say what they are: head them with years or with %"));
    CHECK_THROWS_MATCHES(pick(table({good[0], good[1], {"1 h", "n/a", 31.0}}), "2 years", "mm"), Refused,
                         refuses_value("row 3 of the rain table has no number for 2 years"));
    CHECK_THROWS_MATCHES(pick(table({good[0], good[2], {"5 min", 25.0, 33.0}}), "2 years", "mm"), Refused,
                         refuses_domain("must be longer"));
    CHECK_THROWS_MATCHES(pick(table({good[0], good[1], {"1 h", 7.0, 31.0}}), "2 years", "mm"), Refused,
                         refuses_domain("row 3 of the rain table has less depth than the shorter duration "
                                        "before: are these intensities?"));
    CHECK_THROWS_MATCHES(pick(table({good[0], good[1]}), "2 years", "mm"), Refused,
                         refuses_domain("at least two rows"));
}

}  // namespace undercroft::tests
