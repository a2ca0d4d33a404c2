#include "calc/grading.hpp"

#include <cmath>

#include "units/text.hpp"

namespace undercroft::calc {

namespace {

std::string shown_passing(Percent passing) {
    return rounded_text(passing.value) + " %";
}

}  // namespace

Grading from_finest(const Grading& grading) {
    require(!grading.empty(), "the grading has no rows");
    Grading rows = grading;
    std::sort(rows.begin(), rows.end(),
              [](const auto& a, const auto& b) { return std::get<0>(a) < std::get<0>(b); });
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& [sieve, passing] = rows[i];
        require_positive("sieve", sieve);
        require(sieve <= metre, shown("sieve", sieve) + " must be at most 1 m: is it in mm?");
        require(passing.value >= 0 && passing.value <= 100 * (1 + limit_tolerance),
                "passing (" + shown_passing(passing) + ") must be from 0 % to 100 %");
        if (i == 0) continue;
        const auto& [finer, passing_finer] = rows[i - 1];
        require(sieve > finer, shown("sieve", sieve) + " is in the table twice");
        require(passing.value >= passing_finer.value - whole_tolerance,
                shown("sieve", sieve) + " passes less (" + shown_passing(passing) + ") than the finer " +
                    text_of(as_quantity(finer)) + " (" + shown_passing(passing_finer) + ")");
    }
    return rows;
}

Length grading_size(const Grading& grading, Percent percent) {
    const Grading rows = from_finest(grading);
    require(percent.value >= 0 && percent.value <= 100 * (1 + limit_tolerance),
            "percent (" + shown_passing(percent) + ") must be from 0 % to 100 %");
    const double wanted = percent.value;
    const double close = 100 * limit_tolerance;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const auto& [sieve, passing] = rows[i];
        if (std::abs(passing.value - wanted) <= close) return sieve;
        if (passing.value < wanted) continue;
        if (i == 0) break;
        const auto& [finer, passing_finer] = rows[i - 1];
        const double t = (wanted - passing_finer.value) / (passing.value - passing_finer.value);
        return finer * std::pow(static_cast<double>(sieve / finer), t);
    }
    no_answer("the grading runs from " + shown_passing(std::get<1>(rows.front())) + " to " +
              shown_passing(std::get<1>(rows.back())) + " passing and does not reach " +
              shown_passing(percent));
}

Share grading_uniformity(const Grading& grading) {
    return grading_size(grading, {60}) / grading_size(grading, {10});
}

Share grading_curvature(const Grading& grading) {
    const Length d30 = grading_size(grading, {30});
    return d30 * d30 / (grading_size(grading, {10}) * grading_size(grading, {60}));
}

}  // namespace undercroft::calc
