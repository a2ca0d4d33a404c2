/// \file audited_book.hpp
/// A workbook with all that the audit works out about it once and every check then looks at.
#pragma once

#include <vector>

#include "addin/audit/book/book.hpp"
#include "addin/audit/book/formulas.hpp"
#include "addin/audit/book/labels.hpp"
#include "addin/audit/book/names.hpp"
#include "addin/audit/book/unit_text.hpp"
#include "addin/audit/book/uses.hpp"
#include "addin/audit/units/unit_answer.hpp"
#include "addin/audit/units/unit_cells.hpp"

namespace undercroft::audit {

struct AuditedBook {
    /// \param texts is where texts are read as units, now and by every check; it must live as long.
    AuditedBook(const Book& audited, UnitTexts& texts);
    AuditedBook(const AuditedBook&) = delete;
    AuditedBook& operator=(const AuditedBook&) = delete;

    [[nodiscard]] const std::vector<Use>& uses(const FormulaCell& formula) const {
        return uses_[static_cast<std::size_t>(&formula - formulas.all().data())];
    }
    [[nodiscard]] const UnitReading& reading_of(const FormulaCell& formula) const {
        return readings[static_cast<std::size_t>(&formula - formulas.all().data())];
    }
    /// The cell as a formula on `sheet` would write it.
    [[nodiscard]] std::string text(std::int32_t sheet, const Spot& spot) const {
        return book.text_from(sheet, spot);
    }
    [[nodiscard]] const BookSheet& sheet(std::int32_t place) const {
        return book.sheets[static_cast<std::size_t>(place)];
    }
    [[nodiscard]] const CellFormat& format(const Spot& spot) const { return book.format_of(spot); }

    const Book& book;
    UnitTexts& texts;
    Names names;
    Formulas formulas;
    UnitCells units;
    Labels labels;
    std::vector<UnitReading> readings;  ///< of each formula
    int errors_unexplained = 0;         ///< formulas of ours that show an error and were not computed again

private:
    std::vector<std::vector<Use>> uses_;  ///< of each formula
};

}  // namespace undercroft::audit
