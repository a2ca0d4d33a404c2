/// \file layout.hpp
/// Where each row of a workbook stands, and where the cells of each key are.
#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "sheets/builder/grid.hpp"
#include "sheets/builder/selection.hpp"
#include "sheets/builder/sheet_text.hpp"

namespace undercroft::sheets {

// The columns of every sheet; a wide one has more of them for notes and lists.
inline constexpr int ref_column = 0;
inline constexpr int description_column = 1;
inline constexpr int symbol_column = 5;
inline constexpr int value_column = 6;
inline constexpr int unit_column = 7;
inline constexpr int note_column = 8;
inline constexpr int first_row = 4;  ///< below the heading that each page repeats
inline constexpr double column_cm = 1.8;
inline constexpr double row_cm = 0.40;  ///< one line at 9 pt

[[nodiscard]] int last_column(const Sheet& sheet);
/// The narrow column at the right edge in which the entries of a row are confirmed.
[[nodiscard]] int mark_column(const Sheet& sheet);
/// The style of its cells where there is something to confirm.
inline constexpr const char* mark_style = "Mark";
/// Beside the printed page: why a cell shows an error.
[[nodiscard]] int reason_column(const Sheet& sheet);

/// Where a key's cells are.
struct Place {
    std::string sheet;
    int row = 0;
    int column = 0;
    int last_row = 0;
    int last_column = 0;
    bool is_pair = false;     ///< a number and its unit beside it
    bool unit_above = false;  ///< a column of a table, its unit in the first row
    std::string symbol;
    const Row* definition = nullptr;

    /// Whether its value is typed in.
    [[nodiscard]] bool is_typed() const {
        return definition != nullptr && (definition->is<rows::Input>() || definition->is<rows::Given>());
    }
    /// Whether 0 is a number there, not a blank.
    [[nodiscard]] bool takes_zero() const {
        return definition != nullptr && definition->usual && definition->usual->or_zero;
    }
};

class Layout {
public:
    Layout(const Selection& selection, System system);

    /// \return nullptr when the key has no place.
    [[nodiscard]] const Place* find(const std::string& key) const;
    [[nodiscard]] int start_of(const Sheet& sheet, const Row& row) const {
        return starts_.at({sheet.name, row.line});
    }
    [[nodiscard]] int height_of(const Sheet& sheet) const { return heights_.at(sheet.name); }
    [[nodiscard]] const std::vector<NamedRange>& names() const { return names_; }

    /// Rows of the sheet that a picture covers.
    [[nodiscard]] static int picture_rows(const Paper& paper);
    /// Name of the cell that counts the open checks of a sheet.
    [[nodiscard]] static std::string open_key(const Sheet& sheet);

private:
    void lay_out(const Sheet& sheet);
    void add_place(const Sheet& sheet, const Row& row, int at);
    void add_columns(const Row& row, const Place& whole);
    void add(const std::string& key, const Place& place);
    [[nodiscard]] int rows_of(const Row& row) const;

    const Selection& selection_;
    System system_;
    std::map<std::string, Place> places_;
    std::map<std::pair<std::string, int>, int> starts_;
    std::map<std::string, int> heights_;
    std::vector<NamedRange> names_;
};

}  // namespace undercroft::sheets
