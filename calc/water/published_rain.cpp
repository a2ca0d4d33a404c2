#include "calc/water/published_rain.hpp"

#include <algorithm>
#include <boost/algorithm/string/trim.hpp>
#include <cmath>
#include <optional>

#include "calc/customary.hpp"
#include "units/text.hpp"

namespace undercroft::calc {

namespace {

constexpr double as_printed = 0.003;  // 1.44 years for 1.4427

std::optional<Time> unit_of_time(std::string word) {
    boost::algorithm::trim_if(word, [](char c) { return c == ' ' || c == '-' || c == ':' || c == '.'; });
    for (const char* name : {"min", "mins", "minute", "minutes"})
        if (word == name) return minute;
    for (const char* name : {"h", "hr", "hrs", "hour", "hours"})
        if (word == name) return hour;
    for (const char* name : {"d", "day", "days"})
        if (word == name) return 24.0 * hour;
    return std::nullopt;
}

/// The unit of time that a heading names: "Duration (min)", "Duration, h".
Time unit_in_heading(const PublishedCell* heading) {
    const auto* text = heading == nullptr ? nullptr : std::get_if<std::string>(heading);
    if (text == nullptr) return minute;
    std::string word;
    for (const char c : lower_case(*text) + " ") {
        if (c >= 'a' && c <= 'z') {
            word += c;
            continue;
        }
        if (const auto unit = unit_of_time(word)) return *unit;
        word.clear();
    }
    return minute;
}

std::optional<double> number_in(const PublishedCell& cell) {
    if (const auto* number = std::get_if<double>(&cell)) return *number;
    const auto* text = std::get_if<std::string>(&cell);
    if (text == nullptr) return std::nullopt;
    const std::string trimmed = boost::algorithm::trim_copy(*text);
    std::string_view left = trimmed;
    const std::optional<double> number = take_number(left);
    return left.empty() ? number : std::nullopt;
}

std::optional<Time> duration_in(const PublishedCell& cell, Time unit_of_bare) {
    if (const auto number = number_in(cell)) return *number * unit_of_bare;
    const auto* text = std::get_if<std::string>(&cell);
    if (text == nullptr) return std::nullopt;
    const std::string lower = lower_case(boost::algorithm::trim_copy(*text));
    std::string_view left = lower;
    const std::optional<double> number = take_number(left);
    const std::optional<Time> unit = unit_of_time(std::string(left));
    if (!number || !unit) return std::nullopt;
    return *number * *unit;
}

/// Columns beside the first that say how much: a number or a frequency.
bool has_numbers(const std::vector<PublishedCell>& row) {
    if (row.size() < 2) return false;
    return std::any_of(row.begin() + 1, row.end(), [](const PublishedCell& cell) {
        const auto* text = std::get_if<std::string>(&cell);
        return number_in(cell).has_value() || (text != nullptr && frequency_in(*text).has_value());
    });
}

/// Where the heading row and the rows of data are.
struct Block {
    std::size_t head;
    std::size_t first;
    std::size_t end;
};

Block block_of(const PublishedTable& table) {
    const auto is_data = [&](std::size_t r) {
        return has_numbers(table[r]) && duration_in(table[r][0], minute).has_value();
    };
    std::size_t first = 0;
    while (first < table.size() && !is_data(first)) ++first;
    if (first == table.size())
        refuse_value("the rain table has no row that begins with a duration, such as 5-min or 24 h");
    std::size_t head = first;
    do {
        if (head == 0) refuse_value("the rain table has no row of frequencies above its durations");
        --head;
    } while (!has_numbers(table[head]));
    std::size_t end = first;
    while (end < table.size() && is_data(end)) ++end;
    return {head, first, end};
}

/// What bare numbers in the head row count, by the words in it and above.
std::optional<Rarity> stated_rarity(const PublishedTable& table, std::size_t head) {
    for (std::size_t r = head + 1; r-- > 0;) {
        std::string words;
        for (const PublishedCell& cell : table[r])
            if (const auto* text = std::get_if<std::string>(&cell)) words += lower_case(*text) + " ";
        if (words.find("aep") != std::string::npos || words.find("exceedance") != std::string::npos)
            return Rarity::exceedance;
        for (const char* word : {"ari", "return period", "recurrence", "year"})
            if (words.find(word) != std::string::npos) return Rarity::recurrence;
    }
    return std::nullopt;
}

struct Column {
    std::size_t place;
    Frequency frequency;
};

std::vector<Column> columns_of(const PublishedTable& table, const Block& block) {
    const std::vector<PublishedCell>& head = table[block.head];
    double largest_bare = 0;
    for (std::size_t c = 1; c < head.size(); ++c)
        if (const auto number = number_in(head[c])) largest_bare = std::max(largest_bare, *number);
    std::vector<Column> columns;
    for (std::size_t c = 1; c < head.size(); ++c) {
        const auto* text = std::get_if<std::string>(&head[c]);
        if (const auto number = number_in(head[c])) {
            const std::optional<Rarity> rarity = stated_rarity(table, block.head);
            if (!rarity)
                refuse_value(
                    "the frequencies of the rain table do not say what they are: head them with years or "
                    "with %");
            // Pasted percentages become fractions, typed ones stay above 1.
            const bool percent = *rarity == Rarity::exceedance && largest_bare > 1;
            columns.push_back({c, {*rarity, percent ? *number / 100 : *number}});
        } else if (text != nullptr) {
            if (const auto frequency = frequency_in(*text)) columns.push_back({c, *frequency});
        }
    }
    if (columns.empty()) refuse_value("the rain table has no row of frequencies above its durations");
    return columns;
}

bool matches(const Frequency& column, const Frequency& asked) {
    if (column.rarity == asked.rarity)
        return std::abs(column.number - asked.number) <= limit_tolerance * asked.number;
    return std::abs(years_between(column) / years_between(asked) - 1) <= as_printed;
}

[[noreturn]] void refuse_frequency(const std::vector<Column>& columns, const Frequency& asked) {
    std::string list;
    for (const Column& column : columns) list += (list.empty() ? "" : ", ") + text_of(column.frequency);
    const auto nearest =
        std::min_element(columns.begin(), columns.end(), [&](const Column& a, const Column& b) {
            const auto apart = [&](const Column& c) {
                return std::abs(std::log(years_between(c.frequency) / years_between(asked)));
            };
            return apart(a) < apart(b);
        });
    std::string nearest_years;
    if (nearest->frequency.rarity != asked.rarity)
        nearest_years = "; the nearest, " + text_of(nearest->frequency) + ", is " +
                        (asked.rarity == Rarity::recurrence
                             ? rounded_text(years_between(nearest->frequency)) + " years"
                             : rounded_text(-100 * std::expm1(-1 / nearest->frequency.number)) + " % AEP");
    no_answer("the rain table has no column of " + text_of(asked) + ": it has " + list + nearest_years);
}

/// The unit of depths is a length, that of intensities a speed.
bool holds_depths(const Unit& unit) {
    if (unit.dimension == dimension_of<Length>()) return true;
    if (unit.dimension == dimension_of<Speed>()) return false;
    refuse_value(
        "the unit of the rain table must be that of a depth (mm, in) or of an intensity (mm/h, in/h)");
}

}  // namespace

RainTable published_rain(const PublishedTable& published, const Frequency& frequency, const Unit& unit,
                         Share factor) {
    require_positive("factor", factor);
    const bool depths = holds_depths(unit);
    const Block block = block_of(published);
    const std::vector<Column> columns = columns_of(published, block);
    const auto column = std::find_if(columns.begin(), columns.end(),
                                     [&](const Column& c) { return matches(c.frequency, frequency); });
    if (column == columns.end()) refuse_frequency(columns, frequency);

    const Time unit_of_bare = unit_in_heading(&published[block.head][0]);
    RainTable rain;
    double before = 0;
    for (std::size_t r = block.first; r < block.end; ++r) {
        const Time duration = *duration_in(published[r][0], unit_of_bare);
        require_positive("duration", duration);
        const std::optional<double> value =
            column->place < published[r].size() ? number_in(published[r][column->place]) : std::nullopt;
        if (!value)
            refuse_value("row " + std::to_string(r + 1) + " of the rain table has no number for " +
                         text_of(column->frequency));
        if (!rain.empty() && depths && *value < before)
            refuse_domain(
                "row " + std::to_string(r + 1) +
                " of the rain table has less depth than the shorter duration before: are these intensities?");
        if (!rain.empty() && !depths && *value > before)
            refuse_domain(
                "row " + std::to_string(r + 1) +
                " of the rain table has more intensity than the shorter duration before: are these depths?");
        before = *value;
        const Quantity quantity = Quantity::of(*value, unit);
        const Speed intensity = depths ? Speed(as<Length>(quantity) / duration) : as<Speed>(quantity);
        rain.emplace_back(duration, number(factor) * intensity);
    }
    (void)RainCurve(rain);  // refuses what is no rain table
    return rain;
}

std::vector<Frequency> published_frequencies(const PublishedTable& published) {
    std::vector<Frequency> frequencies;
    for (const Column& column : columns_of(published, block_of(published)))
        frequencies.push_back(column.frequency);
    return frequencies;
}

}  // namespace undercroft::calc
