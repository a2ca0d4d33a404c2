/// \file used_cells.hpp
/// Which cells some formula or chart takes a value from.
#pragma once

#include <vector>

#include "addin/audit/findings/audited_book.hpp"

namespace undercroft::audit {

class UsedCells {
public:
    /// With or without what is only joined to a text.
    UsedCells(const AuditedBook& audited, bool texts_count);

    [[nodiscard]] bool holds(const Spot& spot) const;
    /// Whether any cell of these rows is used.
    [[nodiscard]] bool any(const Spot& first, std::int32_t last_row) const;

private:
    struct RowSpan {
        std::int32_t first;
        std::int32_t last;
    };

    void add(const Area& area);
    static void merge(std::vector<RowSpan>& rows);

    std::vector<std::vector<std::vector<RowSpan>>> rows_;  ///< by sheet and column
};

}  // namespace undercroft::audit
