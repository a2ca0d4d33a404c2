/// \file formulas.hpp
/// Every formula of a workbook, read, and gathered into groups of those that are the same apart from their
/// position: a checker reads each distinct formula once.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <unordered_map>
#include <vector>

#include "addin/audit/book/book.hpp"
#include "addin/formula/formula.hpp"

namespace undercroft::audit {

/// A formula's text, read.
struct ParsedFormula {
    std::shared_ptr<const addin::Node> tree;
    std::string refusal;  ///< why it could not be read; then `tree` is an empty part
};

/// Formulas that are the same apart from their position. One tree serves them all, and every other group
/// whose first formula has the same text.
struct FormulaGroup {
    std::string key;       ///< the formula with its references seen from the cell: `UC.SUM(R[-3]C:R[-1]C[1])`
    std::string skeleton;  ///< the key without the cells and numbers: what kind of formula it is
    ParsedFormula parsed;
    Spot base;
    bool is_array = false;
    std::vector<std::uint32_t> members;

    /// The formula as it stands at `base`.
    [[nodiscard]] const addin::Node& tree() const { return *parsed.tree; }
    /// Why it could not be read, and then the tree means nothing; empty for all others.
    [[nodiscard]] const std::string& unreadable() const { return parsed.refusal; }

    /// The formula is nothing but a reference to one cell, or a defined name.
    [[nodiscard]] bool is_link() const;
};

/// Whether a function of ours is called anywhere in the formulas.
[[nodiscard]] bool calls_own(const FormulaGroup& group);

struct FormulaCell {
    Spot at;
    Area area;  ///< more than one cell for an array formula
    std::uint32_t group = 0;
    const BookCell* cell = nullptr;
};

class Formulas {
public:
    explicit Formulas(const Book& book);

    [[nodiscard]] const std::vector<FormulaCell>& all() const { return cells_; }
    [[nodiscard]] const std::vector<FormulaGroup>& groups() const { return groups_; }
    [[nodiscard]] const FormulaGroup& group_of(const FormulaCell& formula) const {
        return groups_[formula.group];
    }
    /// The formula of a cell, also of one inside an array formula; nullptr for a typed cell.
    [[nodiscard]] const FormulaCell* find(const Spot& spot) const;
    /// The group of a cell by its place among the sheet's cells; -1 for what is typed or part of an array.
    [[nodiscard]] std::int32_t group_at(std::int32_t sheet, std::size_t cell) const {
        return by_cell_[static_cast<std::size_t>(sheet)][cell];
    }

private:
    void add(const Spot& at, const BookCell& cell, const Area& area, ParsedFormula parsed);

    const Book& book_;
    bool has_own_names_;
    std::vector<FormulaCell> cells_;  ///< by sheet, row, column
    std::vector<FormulaGroup> groups_;
    std::unordered_map<std::string, std::uint32_t> by_key_;
    std::vector<std::vector<std::int32_t>> by_cell_;
};

/// Writes a formula anew, each reference by `write_reference`; literals and the cells of references are left
/// out where `bare` is true.
using WriteReference = std::function<std::string(const addin::CellReference&)>;
[[nodiscard]] std::string written(const addin::Node& node, const WriteReference& write_reference,
                                  bool bare = false);

/// A reference as seen from a cell: `R[-3]C`, `$Site.R7C7`.
[[nodiscard]] std::string seen_from(const Spot& at, const addin::CellReference& reference);

}  // namespace undercroft::audit
