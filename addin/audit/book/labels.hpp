/// \file labels.hpp
/// What a cell is called on its sheet: the description of its row or, in a table, the head of its column.
#pragma once

#include <string>
#include <vector>

#include "addin/audit/book/book.hpp"
#include "addin/audit/book/unit_text.hpp"

namespace undercroft::audit {

class Labels {
public:
    /// \param texts is where texts are read, now and later; it must live as long.
    Labels(const Book& book, UnitTexts& texts);

    /// The description of the row: of the texts typed to the left of the cell the longest. Empty where none
    /// is.
    [[nodiscard]] std::string of_row(const Spot& spot) const;
    /// The text typed over the cell's column: the nearest one above that is no unit, and that the sheet does
    /// not leave open to be filled in.
    [[nodiscard]] std::string of_column(const Spot& spot) const;
    /// What a person calls the cell. Where a row computes several numbers, the head of the column is added.
    [[nodiscard]] std::string of(const Spot& spot) const;

private:
    [[nodiscard]] bool is_unit(const std::string& text) const;

    const Book& book_;
    UnitTexts& texts_;
    /// By sheet and column: the texts typed there, as places among the sheet's cells.
    std::vector<std::vector<std::vector<std::uint32_t>>> heads_;
};

}  // namespace undercroft::audit
