/// \file reaches_inputs.hpp
/// Whether anything that is typed can change a cell.
#pragma once

#include <cstdint>
#include <vector>

#include "addin/audit/findings/audited_book.hpp"

namespace undercroft::audit {

class ReachesInputs {
public:
    explicit ReachesInputs(const AuditedBook& audited);

    /// Whether these cells hold a typed value, or a formula that rests on one.
    [[nodiscard]] bool operator()(const Area& area);
    /// Whether the formula does.
    [[nodiscard]] bool operator()(const FormulaCell& formula);

private:
    enum class Known : std::uint8_t { not_yet, on_the_way, no, yes };

    [[nodiscard]] std::size_t place_of(const FormulaCell& formula) const {
        return static_cast<std::size_t>(&formula - audited_.formulas.all().data());
    }
    /// What the cells tell so far; the first formula that is not known goes into `unknown`.
    [[nodiscard]] bool is_entry(std::int32_t sheet, const BookCell& cell) const;
    [[nodiscard]] Known look(const Area& area, std::size_t& unknown) const;
    [[nodiscard]] Known look(std::size_t formula, std::size_t& unknown) const;
    void find_out(std::size_t formula);

    const AuditedBook& audited_;
    std::vector<Known> known_;
};

}  // namespace undercroft::audit
