#include "addin/audit/book/shown_number.hpp"

#include <array>
#include <charconv>
#include <chrono>
#include <cmath>

#include "units/text.hpp"

namespace undercroft::audit {

namespace {

using std::chrono::floor;
using std::chrono::seconds;
using std::chrono::sys_days;
using std::chrono::sys_time;
using std::chrono::year_month_day;

constexpr double seconds_of_day = 86400;
constexpr double farthest_day = 1e7;
constexpr int first_year = 1583;
constexpr int last_year = 9999;

/// Day 0 of a workbook, whose parts are written without leading zeros.
sys_days day_zero(std::string_view null_date) {
    constexpr sys_days usual = std::chrono::year{1899} / std::chrono::December / 30;
    std::array<int, 3> parts{};
    const char* at = null_date.data();
    const char* const end = at + null_date.size();
    for (int& part : parts) {
        if (&part != parts.data() && (at == end || *at++ != '-')) return usual;
        const auto [next, error] = std::from_chars(at, end, part);
        if (error != std::errc()) return usual;
        at = next;
    }
    const year_month_day day{std::chrono::year{parts[0]}, std::chrono::month(static_cast<unsigned>(parts[1])),
                             std::chrono::day(static_cast<unsigned>(parts[2]))};
    return at == end && day.ok() ? sys_days{day} : usual;
}

std::string two_digits(long number) {
    return (number < 10 ? "0" : "") + std::to_string(number);
}

}  // namespace

std::optional<std::string> day_text(double number, std::string_view null_date, bool with_time) {
    if (!(std::abs(number) < farthest_day)) return std::nullopt;
    // To the second, since no fraction of a day is exactly a time.
    const sys_time<seconds> moment = day_zero(null_date) + seconds(std::llround(number * seconds_of_day));
    const sys_days midnight = floor<std::chrono::days>(moment);
    const year_month_day day{midnight};
    const int year = static_cast<int>(day.year());
    if (year < first_year || year > last_year) return std::nullopt;
    std::string text = std::to_string(year) + "-" + two_digits(unsigned(day.month())) + "-" +
                       two_digits(unsigned(day.day()));
    if (!with_time) return text;
    const std::chrono::hh_mm_ss time{moment - midnight};
    text += " " + two_digits(time.hours().count()) + ":" + two_digits(time.minutes().count());
    return time.seconds().count() == 0 ? text : text + ":" + two_digits(time.seconds().count());
}

bool shows_day(const Book& book, const Spot& at) {
    return book.format_of(at).number.shown_as == ShownAs::date;
}

std::optional<std::string> day_text(const Book& book, const Spot& at, double number) {
    if (!shows_day(book, at)) return std::nullopt;
    return day_text(number, book.null_date, book.format_of(at).number.shows_time);
}

std::string exact_at(const Book& book, const Spot& at, double number) {
    return day_text(book, at, number).value_or(exact_text(number));
}

std::string number_words(const Book& book, const Spot& at, double number) {
    const std::optional<std::string> day = day_text(book, at, number);
    return day ? "the date " + *day : "the number " + exact_text(number);
}

std::string rounded_at(const Book& book, const Spot& at, double number) {
    return day_text(book, at, number).value_or(rounded_text(number));
}

std::pair<std::string, std::string> exact_at_both(const NumberAt& one, const NumberAt& other) {
    std::pair texts(exact_at(one.book, one.at, one.number), exact_at(other.book, other.at, other.number));
    if (texts.first == texts.second) texts = {exact_text(one.number), exact_text(other.number)};
    return texts;
}

}  // namespace undercroft::audit
