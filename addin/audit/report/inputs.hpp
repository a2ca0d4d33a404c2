/// \file inputs.hpp
/// Which cells of a workbook are its inputs, and which of them are the column of a table.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <vector>

#include "addin/audit/findings/audited_book.hpp"
#include "addin/audit/report/sheet_heads.hpp"

namespace undercroft::audit {

/// An argument of a function of ours that takes an input.
struct ArgumentUse {
    const addin::Function* function = nullptr;
    std::size_t place = 0;
};

class Inputs {
public:
    Inputs(const AuditedBook& audited, const SheetHeads& heads);

    /// One input each, or the typed cells of a table's column from top to bottom; in the order of the sheets.
    [[nodiscard]] const std::vector<std::vector<Spot>>& runs() const { return runs_; }
    /// The function that takes this cell as an argument, the first of several.
    [[nodiscard]] std::optional<ArgumentUse> argument(const Spot& spot) const;
    /// Whether the cell is the one input of its row, in the column of values.
    [[nodiscard]] bool has_own_line(const Spot& spot) const { return own_lines_.contains(spot); }
    /// Whether the sheet leaves the cell open to be filled in.
    [[nodiscard]] bool is_entry(const Spot& spot) const;

private:
    class Sheet;
    void find_uses();

    const AuditedBook& audited_;
    const SheetHeads& heads_;
    std::vector<std::vector<Spot>> runs_;
    std::set<Spot> own_lines_;
    std::map<Spot, ArgumentUse> arguments_;
};

}  // namespace undercroft::audit
