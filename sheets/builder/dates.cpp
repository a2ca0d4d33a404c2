#include "sheets/builder/dates.hpp"

#include <charconv>
#include <chrono>

namespace undercroft::sheets {

namespace {

/// The whole number that a text is, and nothing else.
std::optional<int> digits_in(std::string_view text) {
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool whole = error == std::errc() && end == text.data() + text.size() && number >= 0;
    return whole ? std::optional(number) : std::nullopt;
}

}  // namespace

std::optional<double> day_in(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const std::optional<int> year = digits_in(text.substr(0, 4));
    const std::optional<int> month = digits_in(text.substr(5, 2));
    const std::optional<int> day = digits_in(text.substr(8, 2));
    if (!year || !month || !day) return std::nullopt;
    using namespace std::chrono;
    const year_month_day date{std::chrono::year{*year}, std::chrono::month(static_cast<unsigned>(*month)),
                              std::chrono::day(static_cast<unsigned>(*day))};
    if (!date.ok()) return std::nullopt;
    constexpr sys_days first = std::chrono::year{1899} / December / 30;
    return static_cast<double>((sys_days{date} - first).count());
}

}  // namespace undercroft::sheets
