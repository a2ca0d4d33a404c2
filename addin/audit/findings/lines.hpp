/// \file lines.hpp
/// The cells of a sheet as they follow each other without a gap, down its columns and along its rows.
#pragma once

#include <functional>
#include <vector>

#include "addin/audit/findings/audited_book.hpp"

namespace undercroft::audit {

/// One cell of a line.
struct LineCell {
    Spot at;
    std::int32_t group = none;                 ///< of its formula
    static constexpr std::int32_t none = -2;   ///< a text, or a cell of an array formula
    static constexpr std::int32_t typed = -1;  ///< a typed number
};
using Line = std::vector<LineCell>;

/// Calls for every run of cells without a gap, first by columns, then by rows.
void each_line(const AuditedBook& audited, const std::function<void(const Line&)>& visit);

/// Whether the four cells around hold the same formula as this one, seen from each.
[[nodiscard]] bool has_like_neighbour(const AuditedBook& audited, const LineCell& cell);

}  // namespace undercroft::audit
