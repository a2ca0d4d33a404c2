#include "calc/ground/stone_sizes.hpp"

#include <map>
#include <optional>

#include "calc/customary.hpp"

namespace undercroft::calc {

namespace {

Envelope in_millimetres(std::initializer_list<std::tuple<double, double, double>> rows) {
    Envelope envelope;
    for (const auto& [sieve, least, most] : rows)
        envelope.emplace_back(sieve * millimetre, Percent{least}, Percent{most});
    return envelope;
}

/// What may pass a sieve, as far as the grading tells.
struct Passing {
    double least;
    double most;
};

Passing passing_at(const Grading& rows, Length sieve) {
    constexpr double same_sieve = 0.02;
    Passing passing{0, 100};
    for (const auto& [size, percent] : rows) {
        if (abs(size - sieve) <= same_sieve * sieve) return {percent.value, percent.value};
        if (size < sieve) passing.least = percent.value;
        if (size > sieve) {
            passing.most = percent.value;
            break;
        }
    }
    return passing;
}

void require_limits(Length sieve, Percent least, Percent most) {
    require_positive("sieve", sieve);
    const std::string at = " passing " + in_words(sieve);
    const std::string least_at = "least" + at;
    const std::string most_at = "most" + at;
    require_percentage(least_at.c_str(), least);
    require_percentage(most_at.c_str(), most);
    require(least.value <= most.value + same_percent, shown(least_at.c_str(), least), " must be at most the ",
            shown("most", most));
}

}  // namespace

const Envelope& stone_size_envelope(StoneSize size) {
    // AASHTO M 43 / ASTM D448, Table 1. Sizes 57 and 67 as printed in Iowa DOT IM 209, Appendix D; the others
    // from memory.
    static const std::map<StoneSize, Envelope> table = {
        {StoneSize::no_3,
         in_millimetres({{63, 100, 100}, {50, 90, 100}, {37.5, 35, 70}, {25, 0, 15}, {12.5, 0, 5}})},
        {StoneSize::no_357,
         in_millimetres({{63, 100, 100}, {50, 95, 100}, {25, 35, 70}, {12.5, 10, 30}, {4.75, 0, 5}})},
        {StoneSize::no_4,
         in_millimetres({{50, 100, 100}, {37.5, 90, 100}, {25, 20, 55}, {19, 0, 15}, {9.5, 0, 5}})},
        {StoneSize::no_467,
         in_millimetres({{50, 100, 100}, {37.5, 95, 100}, {19, 35, 70}, {9.5, 10, 30}, {4.75, 0, 5}})},
        {StoneSize::no_5,
         in_millimetres({{37.5, 100, 100}, {25, 90, 100}, {19, 20, 55}, {12.5, 0, 10}, {9.5, 0, 5}})},
        {StoneSize::no_56,
         in_millimetres(
             {{37.5, 100, 100}, {25, 90, 100}, {19, 40, 85}, {12.5, 10, 40}, {9.5, 0, 15}, {4.75, 0, 5}})},
        {StoneSize::no_57,
         in_millimetres({{37.5, 100, 100}, {25, 95, 100}, {12.5, 25, 60}, {4.75, 0, 10}, {2.36, 0, 5}})},
        {StoneSize::no_67,
         in_millimetres({{25, 100, 100}, {19, 90, 100}, {9.5, 20, 55}, {4.75, 0, 10}, {2.36, 0, 5}})},
    };
    return table.at(size);
}

bool grading_fits(const Grading& grading, const std::variant<StoneSize, Envelope>& envelope) {
    const Grading rows = from_finest(grading);
    const StoneSize* named = std::get_if<StoneSize>(&envelope);
    const Envelope& limits = named != nullptr ? stone_size_envelope(*named) : std::get<Envelope>(envelope);
    require(!limits.empty(), "the envelope has no rows");
    bool outside = false;
    std::optional<Length> undecided;
    for (const auto& [sieve, least, most] : limits) {
        require_limits(sieve, least, most);
        const Passing passing = passing_at(rows, sieve);
        if (passing.most < least.value - same_percent || passing.least > most.value + same_percent)
            outside = true;
        else if (passing.least < least.value - same_percent || passing.most > most.value + same_percent)
            undecided = sieve;
    }
    if (outside) return false;
    if (undecided)
        no_answer("the grading has no sieve of " + in_words(*undecided) +
                  ", and what passes its neighbours does not tell whether it fits");
    return true;
}

}  // namespace undercroft::calc
