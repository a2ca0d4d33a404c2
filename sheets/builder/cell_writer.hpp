/// \file cell_writer.hpp
/// Puts cells onto one sheet of a workbook: texts, numbers, formulas with their keys resolved, choices. Where
/// a mistake may be found, it is told the line of the sheet's text.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "sheets/builder/grid.hpp"
#include "sheets/builder/layout.hpp"

namespace undercroft::sheets {

inline constexpr double text_pt = 9;
inline constexpr double small_pt = 8;

/// Lines that a text takes in a width of that many sheet columns, broken between its words.
[[nodiscard]] int lines_of_text(const std::string& text, int columns, double size_pt = text_pt);

/// What words such as `@` stand for on the row that is being filled.
using RowWords = std::map<std::string, std::string>;

/// Whether a formula stands in each row of a list: what lies outside of the list then has its $, so that the
/// formula may be copied down, and a checker reads it once.
enum class Copied { no, down };

class CellWriter {
public:
    CellWriter(WorkbookGrid& workbook, SheetGrid& grid, const Layout& layout, const Sheet& sheet,
               System system);

    SheetCell& put(int row, int column, const std::string& style);
    SheetCell& put_text(int row, int column, const std::string& style, const std::string& text);
    SheetCell& put_number(int row, int column, const std::string& style, double number);
    /// A formula as files hold it, without the `of:=`.
    SheetCell& put_formula(int row, int column, const std::string& style, const std::string& stored);
    /// A unit with the list of its kind to pick from.
    SheetCell& put_unit(int line, int at, int column, const std::string& style, const std::string& unit);

    /// Reference, description, symbol, note, and the reason where a computed cell shows an error.
    void put_common(const Row& row, int at, bool has_reason);
    void put_reference(int at);
    void put_note(const std::string& note, int at);
    /// Beside the row, the reason of the first of these cells that shows an error; before it what is wrong or
    /// unusual with the row's entries, where those are watched.
    void put_reason(int at, const std::vector<int>& columns, bool with_state = false);
    /// Keeps on a row of a grid or list that rows may be added until there are so many; 0: they may not.
    void put_growth(int at, int most);
    /// So high that its lines at 9 pt have room, and those at 8 pt beside them.
    void set_height(int at, int lines, int small_lines = 1);

    /// How a cell of this workbook is written in a formula on this sheet.
    [[nodiscard]] std::string cell_reference(const std::string& sheet_name, int row, int column) const;
    /// A word of a formula as files hold it; empty when it means nothing.
    [[nodiscard]] std::string meaning(const std::string& word, const RowWords& of_row = {},
                                      Copied copied = Copied::no) const;
    /// A formula of the sheet text as files hold it.
    [[nodiscard]] std::string stored(int line, const std::string& formula, const RowWords& of_row = {},
                                     Copied copied = Copied::no) const;

    [[nodiscard]] std::string add_validation(const Validation& wanted);
    /// A style for numbers in this unit: counts whole, percentages with one decimal.
    [[nodiscard]] static std::string number_style(const std::string& base, const std::string& unit);
    [[nodiscard]] std::string link_style(const Place& source) const;
    /// A link to a pair: its number, and its unit beside it. \return the cell of the unit.
    SheetCell& put_link(const Place& source, int at, int column);
    /// The same where something computes with it: an entry that is blank shows an error, and so does 0 where
    /// that is no number, since a mere link would show a blank as 0.
    SheetCell& put_link_computed_with(const Place& source, const std::string& key, int at, int column);

    [[nodiscard]] const Place& place_of(int line, const std::string& key) const;
    [[noreturn]] void mistake(int line, const std::string& why) const { sheet_mistake(sheet_, line, why); }

    [[nodiscard]] const Sheet& sheet() const { return sheet_; }
    [[nodiscard]] const Layout& layout() const { return layout_; }
    [[nodiscard]] SheetGrid& grid() { return grid_; }
    [[nodiscard]] const SheetGrid& grid() const { return grid_; }
    [[nodiscard]] System system() const { return system_; }
    /// Columns that a note may take.
    [[nodiscard]] int note_columns() const { return last_column(sheet_) - note_column + 1; }

private:
    WorkbookGrid& workbook_;
    SheetGrid& grid_;
    const Layout& layout_;
    const Sheet& sheet_;
    System system_;
    int number_ = 0;  ///< of the last reference
};

}  // namespace undercroft::sheets
