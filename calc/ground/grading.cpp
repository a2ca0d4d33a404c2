#include "calc/ground/grading.hpp"

#include <cmath>

namespace undercroft::calc {

Grading from_finest(const Grading& grading) {
    require(!grading.empty(), "the grading has no rows");
    Grading rows = grading;
    std::sort(rows.begin(), rows.end(),
              [](const auto& a, const auto& b) { return std::get<0>(a) < std::get<0>(b); });
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& [sieve, passing] = rows[i];
        require_positive("sieve", sieve);
        require(sieve <= metre, shown("sieve", sieve), " must be at most 1 m: is it in mm?");
        require_percentage("passing", passing);
        if (i == 0) continue;
        const auto& [finer, passing_finer] = rows[i - 1];
        require(sieve > finer, shown("sieve", sieve), " is in the table twice");
        require(passing.value >= passing_finer.value - whole_tolerance, shown("sieve", sieve),
                " passes less (", amount(passing), ") than the finer ", amount(finer), " (",
                amount(passing_finer), ")");
    }
    return rows;
}

Length grading_size(const Grading& grading, Percent percent) {
    const Grading rows = from_finest(grading);
    require_percentage("percent", percent);
    const double wanted = percent.value;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& [sieve, passing] = rows[i];
        if (std::abs(passing.value - wanted) <= same_percent) return sieve;
        if (passing.value < wanted) continue;
        if (i == 0) break;
        const auto& [finer, passing_finer] = rows[i - 1];
        const double t = (wanted - passing_finer.value) / (passing.value - passing_finer.value);
        return finer * std::pow(static_cast<double>(sieve / finer), t);
    }
    no_answer("the grading runs from " + in_words(std::get<1>(rows.front())) + " to " +
              in_words(std::get<1>(rows.back())) + " passing and does not reach " + in_words(percent));
}

Percent grading_passing(const Grading& grading, Length size) {
    const Grading rows = from_finest(grading);
    require_positive("size", size);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& [sieve, passing] = rows[i];
        if (abs(sieve - size) <= sieve * limit_tolerance) return passing;
        if (sieve < size) continue;
        if (i == 0 && passing.value <= same_percent) return {0};
        if (i == 0) break;
        const auto& [finer, passing_finer] = rows[i - 1];
        const double t =
            std::log(static_cast<double>(size / finer)) / std::log(static_cast<double>(sieve / finer));
        return {passing_finer.value + t * (passing.value - passing_finer.value)};
    }
    if (size > std::get<0>(rows.back()) && std::get<1>(rows.back()).value >= 100 - same_percent) return {100};
    no_answer(shown("size", size) + " is beyond the sieves of the grading (" +
              in_words(std::get<0>(rows.front())) + " to " + in_words(std::get<0>(rows.back())) + ")");
}

Share grading_uniformity(const Grading& grading) {
    const Length d10 = grading_size(grading, {10});
    return grading_size(grading, {60}) / d10;
}

Share grading_curvature(const Grading& grading) {
    const Length d30 = grading_size(grading, {30});
    return d30 * d30 / (grading_size(grading, {10}) * grading_size(grading, {60}));
}

}  // namespace undercroft::calc
