/// \file book_values.hpp
/// Values of a formula's parts, read from the audited workbook: so a function of ours that shows an error can
/// be asked for its reason without an office.
#pragma once

#include <optional>
#include <string>

#include "addin/audit/book/formulas.hpp"
#include "addin/audit/book/names.hpp"
#include "addin/formula/evaluate.hpp"

namespace undercroft::audit {

class BookValues final : public addin::Evaluator {
public:
    /// Reads on behalf of the group's formula at `at`.
    BookValues(const Book& book, const Names& names, const Spot& base, const Spot& at)
        : book_(book), names_(names), base_(base), at_(at) {}

protected:
    [[nodiscard]] addin::FormulaValue value_of_reference(const addin::Node& node) const override;
    [[nodiscard]] addin::FormulaValue value_of_name(const addin::Node& node) const override;
    [[nodiscard]] std::optional<addin::CellReference> cells_of_name(const addin::Node& node) const override;

private:
    [[nodiscard]] addin::FormulaValue value_of_area(const Area& area, bool is_range) const;

    const Book& book_;
    const Names& names_;
    Spot base_;
    Spot at_;
};

}  // namespace undercroft::audit
