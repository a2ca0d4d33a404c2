/// \file unit_cells.hpp
/// The unit of each number of a workbook: the text in the cell to its right or, in a table, the text in the
/// table's row of units.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "addin/audit/book/book.hpp"
#include "units/unit.hpp"

namespace undercroft::audit {

/// A text read as a unit, or why it is none.
struct UnitText {
    std::string text;
    std::optional<Unit> unit;
    std::string refusal;
};

/// The unit of a cell and where it stands.
struct UnitCell {
    const UnitText* text = nullptr;
    Spot at;
    bool beside = false;  ///< in the cell to the right, and not at the head of a table
};

/// What the numbers of an area are in.
struct AreaUnits {
    bool has_numbers = false;
    std::optional<UnitCell> unit;   ///< of the first number that has one
    std::optional<Spot> without;    ///< the first number that has none
    std::optional<UnitCell> other;  ///< the first unit that differs from `unit` in size or kind
};

class UnitCells {
public:
    explicit UnitCells(const Book& book);

    /// The unit of a number or of a cell that shows an error; nothing where none is given.
    [[nodiscard]] std::optional<UnitCell> of(const Spot& spot) const;
    [[nodiscard]] AreaUnits of_area(const Area& area) const;

    /// A text read as a unit; remembered, so that each text is read once.
    [[nodiscard]] const UnitText& read(const std::string& text) const;

private:
    struct Place {
        const UnitText* text = nullptr;
        std::int32_t row = 0;
        std::int32_t column = 0;
    };
    /// Numbers of one column that follow each other and are in one unit.
    struct Run {
        std::int32_t first_row = 0;
        std::int32_t last_row = 0;
        std::uint32_t cell = 0;  ///< the first of them
    };

    void find_units(std::int32_t sheet, std::int32_t column);
    [[nodiscard]] const UnitText* as_unit(std::int32_t sheet, const BookCell* cell) const;
    [[nodiscard]] bool is_head(std::int32_t sheet, const BookCell& cell) const;
    void look_at_run(const Area& area, const Run& run, AreaUnits& found) const;

    const Book& book_;
    mutable std::unordered_map<std::string, UnitText> texts_;
    std::vector<std::vector<Place>> places_;           ///< by sheet, as its cells
    std::vector<std::vector<std::vector<Run>>> runs_;  ///< by sheet and column
};

/// Whether two units measure the same thing in the same size.
[[nodiscard]] bool same_unit(const Unit& a, const Unit& b);

}  // namespace undercroft::audit
