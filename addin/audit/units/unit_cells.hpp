/// \file unit_cells.hpp
/// The unit of each number of a workbook: the text in the cell to its right or, in a table, the text in the
/// table's row of units or the unit in its head ("Area (m2)"); else the unit in the label of its row, or the
/// text to its left in a column of units.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "addin/audit/book/book.hpp"
#include "addin/audit/book/unit_text.hpp"

namespace undercroft::audit {

/// A text longer than this is never read as a unit.
inline constexpr std::size_t longest_unit = 24;

/// The unit of a cell and where it stands.
struct UnitCell {
    const UnitText* text = nullptr;
    Spot at;
    bool beside = false;    ///< in the cell to the right, and not at the head of a table
    bool in_label = false;  ///< as a part of a label: "Diameter (mm)"
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
    /// \param texts is where texts are read, now and later; it must live as long.
    UnitCells(const Book& book, UnitTexts& texts);

    /// The unit of a number or of a cell that shows an error; nothing where none is given.
    [[nodiscard]] std::optional<UnitCell> of(const Spot& spot) const;
    [[nodiscard]] AreaUnits of_area(const Area& area) const;

    /// A text read as a unit.
    [[nodiscard]] const UnitText& read(const std::string& text) const { return texts_.read(text); }

private:
    struct UnitPlace {
        const UnitText* text = nullptr;
        std::int32_t row = 0;
        std::int32_t column = 0;
    };
    /// Numbers of one column that follow each other and are in one unit.
    struct UnitRun {
        std::int32_t first_row = 0;
        std::int32_t last_row = 0;
        std::uint32_t cell = 0;  ///< the first of them
    };

    void find_units(std::int32_t sheet, std::int32_t column);
    void find_units_in_labels(std::int32_t sheet);
    void find_units_to_the_left(std::int32_t sheet, std::int32_t column);
    void gather_runs(std::int32_t sheet, std::int32_t column);
    /// The unit written in a label: "Diameter (mm)".
    [[nodiscard]] const UnitText* in_label(const BookCell& cell) const;
    [[nodiscard]] const UnitText* as_unit(std::int32_t sheet, const BookCell* cell) const;
    [[nodiscard]] bool is_head(std::int32_t sheet, const BookCell& cell) const;
    void look_at_run(const Area& area, const UnitRun& run, AreaUnits& found) const;

    const Book& book_;
    UnitTexts& texts_;
    std::vector<std::vector<UnitPlace>> places_;           ///< by sheet, as its cells
    std::vector<std::vector<std::vector<UnitRun>>> runs_;  ///< by sheet and column
};

}  // namespace undercroft::audit
