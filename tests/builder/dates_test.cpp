// Days of the calendar in texts, and the number that Calc holds for them; held against Boost.DateTime.
#include "sheets/builder/dates.hpp"

#include <boost/date_time/gregorian/gregorian.hpp>

#include "tests/builder/made.hpp"

namespace undercroft::tests {

using sheets::day_in;

TEST_CASE("a day is the number that spreadsheets hold for it") {
    CHECK(day_in("1899-12-30") == 0.0);
    CHECK(day_in("1900-03-01") == 61.0);
    CHECK(day_in("2000-01-01") == 36526.0);
    CHECK(day_in("2026-11-25") == 46351.0);
}

TEST_CASE("each day of two centuries is as far from the first as a library of the calendar says") {
    namespace gregorian = boost::gregorian;
    const gregorian::date first(1899, 12, 30);
    for (gregorian::day_iterator day = gregorian::date(1900, 1, 1); *day < gregorian::date(2101, 1, 1); ++day)
        if (day_in(gregorian::to_iso_extended_string(*day)) != double((*day - first).days()))
            FAIL(gregorian::to_iso_extended_string(*day));
}

TEST_CASE("what is no day of the calendar is none") {
    for (const char* text :
         {"", "2026-02-30", "2100-02-29", "2026-13-01", "2026-00-10", "2026-11-00", "2026-1-25", "26-11-25",
          "2026/11/25", "2026-11-25 ", "25-11-2026", "2026-1a-25", "-026-11-25", "2026-+1-25", "Christmas"})
        CHECK_FALSE(day_in(text));
    CHECK(day_in("2096-02-29"));
}

}  // namespace undercroft::tests
