#include "calc/water/frequency.hpp"

#include <boost/algorithm/string/trim.hpp>
#include <cmath>

#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::calc {

namespace {

/// The number at the start, which is taken off the text.
std::optional<double> leading_number(std::string& text) {
    boost::algorithm::trim(text);
    std::string_view left = text;
    const std::optional<double> number = take_number(left);
    text = std::string(left);
    boost::algorithm::trim(text);
    return number;
}

/// Takes the word off the text where it begins or ends with it.
bool take_word(std::string& text, const std::string& word) {
    if (text.starts_with(word))
        text.erase(0, word.size());
    else if (text.ends_with(word))
        text.erase(text.size() - word.size());
    else
        return false;
    boost::algorithm::trim(text);
    return true;
}

std::optional<Frequency> checked(Rarity rarity, double number) {
    const bool holds = rarity == Rarity::recurrence ? number > 0 : number > 0 && number < 1;
    return holds ? std::optional(Frequency{rarity, number}) : std::nullopt;
}

}  // namespace

double years_between(const Frequency& frequency) {
    return frequency.rarity == Rarity::recurrence ? frequency.number : -1 / std::log1p(-frequency.number);
}

std::optional<Frequency> frequency_in(std::string_view written) {
    std::string text = lower_case(written);
    boost::algorithm::trim(text);
    const bool exceedance = take_word(text, "aep");
    const bool recurrence = take_word(text, "ari");
    const std::optional<double> number = leading_number(text);
    if (!number || (exceedance && recurrence)) return std::nullopt;
    boost::algorithm::trim_left_if(text, [](char c) { return c == '-' || c == ' '; });
    if (text == "%" && !recurrence) return checked(Rarity::exceedance, *number / 100);
    if (text == "ey" && !exceedance && *number > 0) return checked(Rarity::recurrence, 1 / *number);
    for (const char* of : {"in", "/", ":"})
        if (*number == 1 && text.starts_with(of) && !recurrence) {
            text.erase(0, std::string_view(of).size());
            const std::optional<double> chances = leading_number(text);
            const bool bare = text.empty() || text == "y" || text == "year" || text == "years";
            return chances && bare && *chances > 1 ? checked(Rarity::exceedance, 1 / *chances) : std::nullopt;
        }
    for (const char* unit : {"y", "yr", "yrs", "year", "years", "a"})
        if (text == unit && !exceedance) return checked(Rarity::recurrence, *number);
    if (text.empty() && recurrence) return checked(Rarity::recurrence, *number);
    return std::nullopt;
}

Frequency frequency_of(std::string_view text) {
    if (const std::optional<Frequency> frequency = frequency_in(text)) return *frequency;
    refuse_value("'" + std::string(text) +
                 "' is no frequency: write it as 10 years, as 10 % (the chance in a year) or as 1 in 10");
}

std::string text_of(const Frequency& frequency) {
    if (frequency.rarity == Rarity::exceedance) return rounded_text(100 * frequency.number) + " % AEP";
    return rounded_text(frequency.number) + (frequency.number == 1 ? " year" : " years");
}

}  // namespace undercroft::calc
