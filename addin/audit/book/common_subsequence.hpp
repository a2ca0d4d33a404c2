/// \file common_subsequence.hpp
/// What two lists have in common, in the same order.
#pragma once

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace undercroft::audit {

/// The longest common subsequence of two lists: pairs of places, in order. Of several that are equally long,
/// the one that passes over places of `a` as early as possible. Memory grows with the sum of the lengths.
/// Lists that differ in more than 16 million pairs of places (beyond what they begin and end with alike) are
/// paired place by place.
///
/// D. S. Hirschberg, A linear space algorithm for computing maximal common subsequences, Communications of
/// the ACM 18(6), 1975; with the middle of the path carried along instead of a second sweep, so that it is
/// the path of the whole table.
[[nodiscard]] std::vector<std::pair<std::size_t, std::size_t>> common_subsequence(
    const std::vector<std::string>& a, const std::vector<std::string>& b);

}  // namespace undercroft::audit
