// Days of the calendar, which a workbook keeps as numbers: a report says them as days wherever a cell shows
// one.
#include "addin/audit/book/shown_number.hpp"

#include <boost/date_time/gregorian/gregorian.hpp>

#include "tests/audit/audited.hpp"

namespace undercroft::tests {

namespace {

using audit::Book;
using audit::Change;
using audit::CheckLine;
using audit::day_text;
using audit::NumberFormat;
using audit::RegisterLine;
using audit::RevisionLine;
using audit::ShownAs;

const NumberFormat of_day{.shown_as = ShownAs::date};
const NumberFormat of_moment{.shown_as = ShownAs::date, .shows_time = true};
constexpr double half_past_two = 14.5 / 24;

/// A start that is typed, an end that is computed, days in the format or without one.
BookMaker programme(double start = 46328, const NumberFormat& format = of_day) {
    BookMaker maker;
    maker.sheet("Plan").put("A1", "Description").put("C1", "Value").put("D1", "Unit");
    maker.put("A2", "Work starts").put("C2", start).shown_as("C2", format);
    maker.put("A3", "It takes").put("C3", 10.0).put("D3", "d");
    maker.put("A4", "Work ends").formula("C4", "=C2+C3", start + 10).shown_as("C4", format);
    return maker;
}

Report report_on(const BookMaker& maker, const std::string& null_date = "1899-12-30") {
    Book book = maker.made();
    book.null_date = null_date;
    return audit::audit_workbook({.book = book});
}

const RegisterLine& input_at(const Report& report, const std::string& target) {
    const auto found = std::find_if(report.inputs.begin(), report.inputs.end(),
                                    [&](const RegisterLine& line) { return line.target == target; });
    REQUIRE(found != report.inputs.end());
    return *found;
}

std::vector<RevisionLine> changes(const BookMaker& then, const BookMaker& now, Change change) {
    const Book earlier = then.made();
    const Book book = now.made();
    const Report report = audit::audit_workbook({.book = book, .earlier = &earlier});
    std::vector<RevisionLine> lines;
    for (const RevisionLine& line : report.revision->lines)
        if (line.change == change) lines.push_back(line);
    return lines;
}

}  // namespace

TEST_CASE(
    "a number is the day that a library of the calendar counts, from each day 0 that a workbook may have") {
    namespace gregorian = boost::gregorian;
    for (const auto& [null_date, first] :
         {std::pair("1899-12-30", gregorian::date(1899, 12, 30)),
          std::pair("", gregorian::date(1899, 12, 30)), std::pair("1900-1-1", gregorian::date(1900, 1, 1)),
          std::pair("1904-1-1", gregorian::date(1904, 1, 1))})
        for (int number = -90000; number < 200000; number += 13)
            if (day_text(number, null_date) !=
                gregorian::to_iso_extended_string(first + gregorian::days(number)))
                FAIL(null_date << " " << number);
    CHECK(day_text(46328, "1899-12-30") == "2026-11-02");
    CHECK(day_text(44866, "1904-01-01") == "2026-11-02");
}

TEST_CASE("the time of day is said where it is shown, and rounded to the second") {
    CHECK(day_text(46328 + half_past_two, "1899-12-30", true) == "2026-11-02 14:30");
    CHECK(day_text(46328 + half_past_two, "1899-12-30") == "2026-11-02");
    CHECK(day_text(46328, "1899-12-30", true) == "2026-11-02 00:00");
    CHECK(day_text(46328 + 0.5 + 5.0 / 86400, "1899-12-30", true) == "2026-11-02 12:00:05");
    CHECK(day_text(46328.9999999, "1899-12-30", true) == "2026-11-03 00:00");
    CHECK(day_text(-0.25, "1904-1-1", true) == "1903-12-31 18:00");
}

TEST_CASE("what is no day of the years 1583 to 9999 stays a number") {
    for (const double number : {-115781.0, 2958466.0, 1e9, 1e300, -1e300, std::nan(""), HUGE_VAL}) {
        CAPTURE(number);
        CHECK_FALSE(day_text(number, "1899-12-30"));
    }
    CHECK(day_text(-115780, "1899-12-30") == "1583-01-01");
    CHECK(day_text(2958465, "1899-12-30") == "9999-12-31");
    for (const char* null_date : {"1904-13-1", "1904-1", "1904-1-1-1", "yesterday", "1904/1/1"})
        CHECK(day_text(46328, null_date) == "2026-11-02");  // as if nothing was said
}

TEST_CASE(
    "the register and the map say days where the cells show days, and numbers where they show numbers") {
    const Report days = report_on(programme());
    CHECK(input_at(days, "Plan.C2").value == "2026-11-02");
    CHECK(line_at(days, "C4")->value == "2026-11-12");
    CHECK_THAT(line_at(days, "C4")->inputs, Catch::Contains("C2 = 2026-11-02; C3 = 10 d"));
    const Report from_1904 = report_on(programme(), "1904-1-1");
    CHECK(input_at(from_1904, "Plan.C2").value == "2030-11-03");
    CHECK(line_at(from_1904, "C4")->value == "2030-11-13");
    const Report moments = report_on(programme(46328 + half_past_two, of_moment));
    CHECK(input_at(moments, "Plan.C2").value == "2026-11-02 14:30");
    const Report numbers = report_on(programme(46328, {}));
    CHECK(input_at(numbers, "Plan.C2").value == "46328");
    CHECK(line_at(numbers, "C4")->value == "46338");
    for (const std::string& text :
         {audit::console_text(days), audit::csv_text(days), audit::json_text(days)}) {
        CHECK_THAT(text, !Catch::Contains("46328") && Catch::Contains("2026-11-02"));
    }
}

TEST_CASE("a template's day is said as one, and held against the day by its number") {
    const auto value_there = [](const BookMaker& now, const BookMaker& from) {
        const Book book = now.made();
        const Book other = from.made();
        const Report report = audit::audit_workbook({.book = book, .against = &other});
        return input_at(report, "Plan.C2");
    };
    CHECK(value_there(programme(46331), programme()).in_template == "2026-11-02");
    CHECK((value_there(programme(46331), programme()).state == audit::InputState::given));
    CHECK((value_there(programme(46328, {}), programme()).state == audit::InputState::assumed));
    CHECK(value_there(programme(1824), programme()).remark.empty());  // 25.4 times is no slip of days
}

TEST_CASE("what a day was when it was signed, as this release and those before keep it") {
    const auto since = [](const BookMaker& now, const std::string& kept) {
        const Book book = now.made();
        audit::SignedState state = audit::signed_state(report_on(programme()));
        for (auto& [key, value] : state.inputs)
            if (value == "46328") value = kept;
        return input_at(audit::audit_workbook({.book = book, .at_signing = &state}), "Plan.C2").when_signed;
    };
    CHECK_FALSE(since(programme(), "46328"));
    CHECK(since(programme(46331), "46328") == "2026-11-02");
    CHECK(since(programme(46331, {}), "46328") == "46328");
    CHECK(since(programme(46328.25), "46328") == "46328");  // the same day, and another time of it
    CHECK(since(programme(), "to be agreed") == "to be agreed");
}

TEST_CASE("a column of days says all of them as days, now and when it was signed") {
    const auto holidays = [](double third) {
        BookMaker maker;
        maker.sheet("Days").put("A1", "Day off").put("B1", "Date");
        const double days[] = {46329, 46381, third, 46385};
        for (int row = 2; row <= 5; ++row) {
            const std::string at = "B" + std::to_string(row);
            maker.put(at, days[row - 2]).shown_as(at, of_day);
        }
        return maker.put("A9", "Ends").formula("B9", "=NETWORKDAYS(B2;B3;B2:B5)", 1.0);
    };
    audit::SignedState state = audit::signed_state(report_on(holidays(46384)));
    const Book book = holidays(46386).made();
    const RegisterLine line =
        input_at(audit::audit_workbook({.book = book, .at_signing = &state}), "Days.B2");
    CHECK(line.value == "2026-11-03; 2026-12-25; 2026-12-30; 2026-12-29");
    CHECK(line.when_signed == "2026-11-03; 2026-12-25; 2026-12-28; 2026-12-29");
    const Report typed_as_year = report_on(holidays(2026));
    CHECK(input_at(typed_as_year, "Days.B4").remark ==
          "far from the others of its column, which are 2026-11-03 to 2026-12-29");
    REQUIRE(found(typed_as_year, FindingKind::outlier, "B4") != nullptr);
    CHECK(found(typed_as_year, FindingKind::outlier, "B4")->says ==
          "1905-07-18 stands among days from 2026-11-03 to 2026-12-29: is it the day that is meant?");
}

TEST_CASE("an earlier revision's days: what they were, are, and how far they moved") {
    const auto lines = changes(programme(), programme(46331), Change::input);
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].was == "2026-11-02");
    CHECK(lines[0].is == "2026-11-05");
    CHECK(lines[0].says == "3 days later");
    const auto results = changes(programme(), programme(46327), Change::result);
    REQUIRE(results.size() == 1);
    CHECK(results[0].was == "2026-11-12");
    CHECK(results[0].is == "2026-11-11");
    CHECK(results[0].says == "1 day earlier");
    const auto times = changes(programme(), programme(46328.5), Change::input);
    REQUIRE(times.size() == 1);
    CHECK(times[0].was == "46328");
    CHECK(times[0].is == "46328.5");
    const auto format = changes(programme(), programme(46331, {}), Change::input);
    REQUIRE(format.size() == 1);
    CHECK(format[0].was == "2026-11-02");
    CHECK(format[0].is == "46331");
    CHECK(format[0].says.empty());
    const auto numbers = changes(programme(46328, {}), programme(46331, {}), Change::input);
    REQUIRE(numbers.size() == 1);
    CHECK(numbers[0].was == "46328");
}

TEST_CASE("days counted from another day are days of their own revision, and the setting is told") {
    BookMaker now = programme(46331);
    now.book().null_date = "1904-1-1";
    BookMaker then = programme();
    then.book().null_date = "1899-12-30";
    const auto lines = changes(then, now, Change::input);
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].was == "2026-11-02");
    CHECK(lines[0].is == "2030-11-06");
    CHECK(lines[0].says.empty());
    const auto settings = changes(then, now, Change::setting);
    REQUIRE(settings.size() == 1);
    CHECK(settings[0].was == "1899-12-30");
    CHECK(settings[0].is == "1904-1-1");
}

TEST_CASE("a check that holds days against each other says days, and no ratio of them") {
    const auto check = [](const std::string& formula) {
        BookMaker maker = programme();
        maker.put("A6", "To be done by").put("C6", 46350.0).shown_as("C6", of_day);
        maker.put("A7", "In time").formula("C7", formula, 1.0);
        const Report report = report_on(maker);
        REQUIRE(report.checks.size() == 1);
        return report.checks[0];
    };
    const CheckLine both = check("=C4<=C6");
    CHECK(both.demand_text == "2026-11-12");
    CHECK(both.capacity_text == "2026-11-24");
    CHECK_FALSE(both.ratio);
    CHECK(check("=C2+C3<=C6").demand_text == "2026-11-12");
    CHECK(check("=C2>=0").demand_text == "0");  // something is typed at all
    const CheckLine length = check("=C6-C2<=30");
    CHECK(length.demand_text == "22");
    CHECK(length.ratio == Approx(22.0 / 30));
    BookMaker maker = programme();
    maker.put("A7", "Short").formula("C7", "=C4<=C2", 0.0);
    const std::string json = audit::json_text(report_on(maker));
    CHECK_THAT(json, Catch::Contains(R"("demand":"2026-11-12","capacity":"2026-11-02")"));
}

TEST_CASE("of days down a column the latest is the worst") {
    BookMaker maker;
    maker.sheet("Orders").put("A1", "Item").put("B1", "Order by").put("C1", "Ordered").put("D1", "In time");
    for (int row = 2; row <= 6; ++row) {
        const std::string at = std::to_string(row);
        maker.put("A" + at, "Item " + at).put("B" + at, 46328.0 + 30 * row).shown_as("B" + at, of_day);
        maker.put("C" + at, 46328.0 + 25 * row + (row == 4 ? 6 : 0)).shown_as("C" + at, of_day);
        maker.formula("D" + at, "=C" + at + "<=B" + at, 1.0);
    }
    const Report report = report_on(maker);
    REQUIRE(report.checks.size() == 1);
    CHECK(report.checks[0].target == "Orders.D2");  // 10 days early, the others more
    CHECK(report.checks[0].demand_text == "2026-12-22");
    CHECK(report.checks[0].capacity_text == "2027-01-01");
}

TEST_CASE("findings name a typed day as a day") {
    BookMaker over = programme();
    for (const char* cell : {"C4", "C11", "C12", "C13", "C14"}) {
        over.formula(cell, "=C2+C3", 46338.0).style(cell, "Result").shown_as(cell, of_day);
    }
    over.put("C4", 46340.0);
    const Report typed_over = report_on(over);
    const audit::ReportFinding* typed = found(typed_over, FindingKind::typed_over, "C4");
    REQUIRE(typed != nullptr);
    CHECK_THAT(typed->says, Catch::StartsWith("the date 2026-11-14 is typed"));

    const Book book = programme().made();
    audit::StoredValues stored = audit::results_of(programme(46330).made());
    const Report stale = audit::audit_workbook({.book = book, .stored = &stored});
    REQUIRE(found(stale, FindingKind::stale, "C4") != nullptr);
    CHECK_THAT(found(stale, FindingKind::stale, "C4")->says,
               Catch::StartsWith("the file holds 2026-11-14, and the formula gives 2026-11-12"));
}

TEST_CASE("a time is typed in few digits, and the clock gives many") {
    const auto is_pasted = [](double number, const NumberFormat& format) {
        return found(report_on(programme(number, format)), FindingKind::typed_over, "C2") != nullptr;
    };
    CHECK_FALSE(is_pasted(46328 + 14.0 / 24 + 35.0 / 1440, of_moment));
    CHECK_FALSE(is_pasted(14.0 / 24 + 35.0 / 1440, {.shown_as = ShownAs::time}));
    CHECK(is_pasted(46328.607638123456, of_moment));
    CHECK(is_pasted(46328.607638123456, of_day));
    CHECK(is_pasted(14.0 / 24 + 35.0 / 1440, {}));
}

}  // namespace undercroft::tests
