#include "addin/catalogue/water/date_slot.hpp"

#include <array>
#include <cmath>
#include <cstdio>

namespace undercroft::addin {

namespace {

using std::chrono::year_month_day;

constexpr std::chrono::sys_days day_0 = std::chrono::year(1899) / std::chrono::December / 30;
constexpr double longest = 146097;  // days: 400 years

bool is_iso_date(const std::string& text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
    for (const std::size_t i : {0, 1, 2, 3, 5, 6, 8, 9})
        if (text[i] < '0' || text[i] > '9') return false;
    return true;
}

[[noreturn]] void refuse_date(const Cell& cell) {
    refuse_value(shown_as_given(cell) + " is no date: give a cell with a date, or text such as 2012-01-01");
}

/// The number of a cell, alone or as a range of one.
std::optional<double> number_of(const Cell& cell) {
    if (const double* number = std::get_if<double>(&cell)) return *number;
    const Grid* const* grid = std::get_if<const Grid*>(&cell);
    if (grid == nullptr || (*grid)->rows() != 1 || (*grid)->columns() != 1) return std::nullopt;
    const Scalar scalar = (*grid)->at(0, 0);
    const double* number = std::get_if<double>(&scalar);
    return number == nullptr ? std::nullopt : std::optional(*number);
}

}  // namespace

year_month_day Slot<year_month_day>::read(const Cell& cell, const Terms&) {
    if (const std::optional<double> number = number_of(cell)) {
        if (!(*number >= 1 && *number <= longest) || *number != std::floor(*number)) refuse_date(cell);
        return {day_0 + std::chrono::days(static_cast<int>(*number))};
    }
    const std::string text = read_text(cell, [] { return std::string("a date"); });
    if (!is_iso_date(text)) refuse_date(cell);
    const year_month_day day{std::chrono::year(std::stoi(text.substr(0, 4))),
                             std::chrono::month(static_cast<unsigned>(std::stoi(text.substr(5, 2)))),
                             std::chrono::day(static_cast<unsigned>(std::stoi(text.substr(8, 2))))};
    if (!day.ok()) refuse_date(cell);
    return day;
}

Reading Slot<year_month_day>::reading(const year_month_day& day) {
    std::array<char, 32> text{};
    (void)std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(day.year()),
                        static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    return {std::string(text.data()), {}};
}

}  // namespace undercroft::addin
