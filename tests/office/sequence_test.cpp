// The sequence of the filled demo job: its days against Boost.DateTime, counted one by one over week-ends and
// holidays, what must be ordered by when, and the bars.
#include <boost/date_time/gregorian/gregorian.hpp>
#include <cmath>
#include <set>
#include <string>

#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {

namespace calendar = boost::gregorian;

constexpr int activities = 15;
constexpr int buys = 8;
constexpr int signs = 50;
const std::string full_sign = "█";
const std::string free_sign = "·";

class Sequence {
public:
    Sequence() : job_(the_office().open_copy(filled_job)) { job_.recalculate(); }

    [[nodiscard]] const sheets::Document& job() const { return job_; }
    [[nodiscard]] double value(const std::string& key, int row = 0) const {
        INFO(key << " of row " << row + 1);
        REQUIRE(job_.named(key, 0, row)->getError() == 0);
        return job_.named(key, 0, row)->getValue();
    }
    [[nodiscard]] std::string text(const std::string& key, int row = 0) const {
        return sheets::shown(job_.named(key, 0, row));
    }
    [[nodiscard]] calendar::date day(const std::string& key, int row = 0) const {
        return calendar::date(1899, 12, 30) + calendar::days(static_cast<int>(value(key, row)));
    }
    void type(const std::string& key, const std::string& content, int row = 0, int right = 0) const {
        job_.named(key, right, row)->setFormula(sheets::to_ustring(content));
        job_.recalculate();
    }
    void place_no_order() const {
        for (int row = 0; row < buys; ++row) job_.named("work_buy_placed", 0, row)->setFormula({});
        job_.recalculate();
    }

private:
    sheets::Document job_;
};

/// Working days, counted by stepping from day to day.
struct Site {
    std::set<int> off = {calendar::Saturday, calendar::Sunday};
    std::set<calendar::date> holidays = {calendar::date(2026, 11, 3),  calendar::date(2026, 12, 25),
                                         calendar::date(2026, 12, 28), calendar::date(2026, 12, 29),
                                         calendar::date(2026, 12, 30), calendar::date(2027, 1, 1)};

    [[nodiscard]] bool works(const calendar::date& day) const {
        return !off.contains(day.day_of_week()) && !holidays.contains(day);
    }
    /// The working day `count` of them on from one; `count` may be negative.
    [[nodiscard]] calendar::date on_from(calendar::date day, int count) const {
        const calendar::days step(count < 0 ? -1 : 1);
        for (int left = std::abs(count); left > 0;) {
            day += step;
            if (works(day)) --left;
        }
        return day;
    }
    [[nodiscard]] calendar::date first_from(const calendar::date& day) const {
        return on_from(day - calendar::days(1), 1);
    }
};

/// Every activity stands where stepping over the calendar puts it.
void check_days(const Sequence& sequence, const Site& site, const calendar::date& begin) {
    const calendar::date first = site.first_from(begin);
    int upto = 0;
    int taken = 0;
    for (int row = 0; row < activities; ++row) {
        INFO("activity " << row + 1);
        const int days = static_cast<int>(sequence.value("work_step_days", row));
        if (days == 0) {
            CHECK(sequence.text("work_step_start", row).empty());
            CHECK(sequence.text("work_step_end", row).empty());
            continue;
        }
        upto += days + static_cast<int>(sequence.value("work_step_lag", row));
        CHECK(sequence.day("work_step_end", row) == site.on_from(first, upto - 1));
        CHECK(sequence.day("work_step_start", row) == site.on_from(first, upto - days));
        taken = std::max(taken, upto);
    }
    CHECK(sequence.value("work_taken") == taken);
}

}  // namespace

TEST_CASE("activities take the days of their quantities, and run over the working days of the calendar",
          "[people]") {
    const Sequence sequence;
    for (int row = 0; row < activities; ++row) {
        INFO("activity " << row + 1);
        const double quantity = sequence.value("work_step_quantity", row);
        const double gang = sequence.value("work_step_output", row) * sequence.value("work_step_crews", row);
        CHECK(sequence.value("work_step_days", row) == std::ceil(quantity / gang * 1.15));
    }
    CHECK(sequence.value("work_step_quantity", 1) == Approx(sequence.value("pit_volume")));
    CHECK(sequence.value("work_step_quantity", 3) + sequence.value("work_step_quantity", 8) ==
          Approx(sequence.value("fabric_net")));
    check_days(sequence, {}, calendar::date(2026, 11, 2));
    // By hand, on a calendar of November 2026: Monday the 2nd, the holiday on the 3rd, five days of digging
    // from Wednesday the 4th over a week-end, two of rolling.
    CHECK(sequence.text("work_step_start", 0) == "2026-11-02");
    CHECK(sequence.text("work_step_start", 1) == "2026-11-04");
    CHECK(sequence.text("work_step_end", 1) == "2026-11-10");
    CHECK(sequence.text("work_step_end", 2) == "2026-11-12");
}

TEST_CASE("other weeks, another start, more crews and a lag move the days as the calendar has them",
          "[people]") {
    const Sequence sequence;
    Site site;
    sequence.type("work_week", "Monday to Saturday");
    site.off = {calendar::Sunday};
    check_days(sequence, site, calendar::date(2026, 11, 2));
    sequence.type("work_week", "every day");
    site.off = {};
    check_days(sequence, site, calendar::date(2026, 11, 2));
    sequence.type("work_week", "Sunday to Thursday");
    site.off = {calendar::Friday, calendar::Saturday};
    sequence.type("work_start", "'2026-12-18");  // a Friday; the works run over the holidays
    check_days(sequence, site, calendar::date(2026, 12, 18));
    CHECK(sequence.text("work_step_start", 0) == "2026-12-20");
    sequence.type("work_week", "Monday to Friday");
    sequence.type("work_start", "=DATE(2026;12;24)");  // as Calc keeps a date that is typed
    sequence.type("work_step_lag", "3", 2);
    sequence.type("work_step_crews", "2", 1);
    sequence.type("weather_share", "0");
    CHECK(sequence.value("work_step_days", 1) ==
          std::ceil(sequence.value("pit_volume") / (2 * sequence.value("work_step_output", 1))));
    check_days(sequence, {}, calendar::date(2026, 12, 24));
    CHECK(sequence.text("work_step_start", 1) == "2026-12-31");  // the 24th, then the shutdown
    sequence.type("work_week", "now and then");
    CHECK(sequence.job().named("work_step_start")->getError() != 0);
}

TEST_CASE("what is bought is ordered so long before the activity that uses it, on a working day",
          "[people]") {
    const Sequence sequence;
    const Site site;
    for (int row = 0; row < buys; ++row) {
        INFO("item " << row + 1);
        if (sequence.value("work_buy_quantity", row) == 0) {
            CHECK(sequence.text("work_buy_by", row).empty());
            CHECK(sequence.text("work_buy_verdict", row) == "not counted");
            continue;
        }
        const int step = static_cast<int>(sequence.value("work_buy_step", row));
        CHECK(sequence.day("work_buy_needed", row) == sequence.day("work_step_start", step - 1));
        const int weeks = static_cast<int>(sequence.value("work_buy_lead", row));
        const calendar::date wanted = sequence.day("work_buy_needed", row) - calendar::weeks(weeks);
        CHECK(sequence.day("work_buy_by", row) == site.on_from(wanted + calendar::days(1), -1));
        CHECK(sequence.text("work_buy_verdict", row) == "PASS");
    }
    // Units are needed on Wednesday 2026-11-18; ten days before is a Sunday.
    CHECK(sequence.text("work_buy_needed", 4) == "2026-11-18");
    CHECK(sequence.text("work_buy_by", 4) == "2026-10-07");
    sequence.type("work_buy_lead", "10", 4);
    sequence.type("work_buy_lead", "d", 4, 1);
    CHECK(sequence.text("work_buy_by", 4) == "2026-11-06");
    sequence.type("work_buy_lead", "m", 4, 1);
    CHECK(sequence.job().named("work_buy_by", 0, 4)->getError() == value_error);
}

TEST_CASE("an order that is not placed passes until its day is gone", "[people]") {
    const Sequence sequence;
    sequence.place_no_order();
    CHECK(sequence.text("work_buy_verdict", 4) == "open");  // the job was prepared on 2026-11-25
    CHECK(sequence.text("work_buy_verdict", 6) == "open");
    sequence.type("job_prepared_on", "'2026-10-07");
    CHECK(sequence.text("work_buy_verdict", 4) == "PASS");
    sequence.type("job_prepared_on", "'2026-10-08");
    CHECK(sequence.text("work_buy_verdict", 4) == "open");
    CHECK(sequence.text("work_buy_verdict", 6) == "PASS");
    sequence.type("job_prepared_on", "");
    CHECK(sequence.text("work_buy_verdict", 6) == "open");
    sequence.type("work_buy_placed", "Order 7", 6);
    CHECK(sequence.text("work_buy_verdict", 6) == "PASS");
}

TEST_CASE("without a start nothing has a day, and nothing is in error", "[people]") {
    const Sequence sequence;
    sequence.place_no_order();
    sequence.type("work_start", "");
    for (int row = 0; row < activities; ++row)
        for (const char* key : {"work_step_start", "work_step_end", "work_step_bar"}) {
            CHECK(sequence.job().named(key, 0, row)->getError() == 0);
            CHECK(sequence.text(key, row).empty());
        }
    CHECK(sequence.text("work_buy_by", 4).empty());
    CHECK(sequence.text("work_buy_verdict", 4) == "open");
    CHECK(sequence.text("work_in_time") == "open");
    sequence.type("work_start", "'2026-11-02");
    CHECK(sequence.text("work_in_time") == "PASS");
    sequence.type("work_wanted", "");
    CHECK(sequence.text("work_in_time") == "open");
    sequence.type("work_start", "'soon");
    CHECK(sequence.job().named("work_step_start")->getError() == value_error);
}

TEST_CASE("the output of a crew is of the kind of what it does", "[people]") {
    const Sequence sequence;
    const double days = sequence.value("work_step_days", 1);
    sequence.type("work_step_output", "523.18", 1);
    sequence.type("work_step_output", "yd3", 1, 1);
    CHECK(sequence.value("work_step_days", 1) == days);
    sequence.type("work_step_output", "m2", 1, 1);
    CHECK(sequence.job().named("work_step_days", 0, 1)->getError() == value_error);
}

TEST_CASE("bars stand over their days, from the first sign to the last", "[people]") {
    const Sequence sequence;
    const double from = sequence.value("work_step_start");
    double to = from;
    for (int row = 0; row < activities; ++row)
        if (sequence.value("work_step_days", row) > 0)
            to = std::max(to, sequence.value("work_step_end", row) + 1);
    const auto sign_at = [&](double day) { return std::lround((day - from) / (to - from) * signs); };
    for (int row = 0; row < activities; ++row) {
        INFO("activity " << row + 1);
        std::string wanted;
        if (sequence.value("work_step_days", row) > 0) {
            const long start = sign_at(sequence.value("work_step_start", row));
            const long end = std::max(start + 1, sign_at(sequence.value("work_step_end", row) + 1));
            for (long sign = 0; sign < end; ++sign) wanted += sign < start ? free_sign : full_sign;
        }
        CHECK(sequence.text("work_step_bar", row) == wanted);
    }
    const std::string axis = sequence.text("bar_axis");
    CHECK(axis.size() == signs);
    CHECK(axis.substr(0, 5) == "11-02");
    CHECK(axis.substr(10, 5) == "11-10");
}

}  // namespace undercroft::tests
