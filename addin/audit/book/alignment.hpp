/// \file alignment.hpp
/// Which row of a workbook is which row of its template, although rows were added, removed or renamed.
#pragma once

#include <cstdint>
#include <vector>

#include "addin/audit/book/book.hpp"

namespace undercroft::audit {

struct Alignment {
    std::vector<std::int32_t> to_workbook;  ///< by row of the template; -1: the row is missing
    std::vector<std::int32_t> added;        ///< rows of the workbook that the template has not
    std::vector<std::int32_t> moved;        ///< rows of the template that stand elsewhere now

    /// Rows beyond the template's last keep their distance to it.
    [[nodiscard]] std::int32_t row(std::int32_t template_row) const;
};

[[nodiscard]] Alignment align_rows(const BookSheet& in_template, const BookSheet& in_workbook);

}  // namespace undercroft::audit
