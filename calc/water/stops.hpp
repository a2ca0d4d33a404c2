/// \file stops.hpp
/// Places along an axis at which a table gets a row: equal steps, and kinks with rows of their own.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <vector>

#include "calc/require.hpp"

namespace undercroft::calc {

/// Rows of values that fit on a sheet: its rows less the unit row.
inline constexpr std::size_t most_rows = 1048575;

inline void require_rows(double rows) {
    if (!(rows <= static_cast<double>(most_rows)))
        refuse_domain("the table would have more rows than a sheet (" + std::to_string(most_rows) +
                      "): the step is too short");
}

/// Steps of a table, a whole number from 1 to 10000.
inline double require_steps(Count steps) {
    const double n = require_whole("steps", steps, 1);
    require(n <= 10000, shown("steps", steps), " must be at most 10000");
    return n;
}

/// From 0 to `end` in `n` equal steps.
template <class Q>
[[nodiscard]] std::vector<Q> equal_steps(Q end, double n) {
    std::vector<Q> stops;
    for (double i = 0; i < n; ++i) stops.push_back(end * i / n);
    stops.push_back(end);  // to the last bit
    return stops;
}

/// From 0 by `step`, and the `end` itself.
template <class Q>
[[nodiscard]] std::vector<Q> multiples(Q step, Q end) {
    const double n = whole_up(end / step);
    require_rows(n + 1);
    std::vector<Q> stops;
    for (double i = 0; i < n; ++i) stops.push_back(step * i);
    stops.push_back(end);
    return stops;
}

/// Adds to rising stops the kinks between the first and the last that do not stand there yet.
template <class Q>
void add_kinks(std::vector<Q>& stops, const std::vector<Q>& kinks) {
    const Q first = stops.front();
    const Q last = stops.back();
    const Q hair = slack(first, last);
    for (const Q& kink : kinks) {
        if (kink < first || kink > last) continue;
        const auto next = std::lower_bound(stops.begin(), stops.end(), kink - hair);
        if (next == stops.end() || *next - kink > hair) stops.insert(next, kink);
    }
}

}  // namespace undercroft::calc
