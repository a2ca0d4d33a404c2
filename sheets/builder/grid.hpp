/// \file grid.hpp
/// A workbook as cells, before it becomes a file.
#pragma once

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "sheets/builder/cell_text.hpp"
#include "sheets/builder/paper.hpp"

namespace undercroft::sheets {

struct SheetCell {
    enum class Type { blank, number, text, formula };
    Type type = Type::blank;
    double number = 0;
    std::string text;     ///< a text, or the formula as files hold it, with its `of:=`
    std::string style;    ///< a name of fods.cpp's styles
    int columns = 1;      ///< columns that it spans
    int matrix_rows = 0;  ///< of an array formula
    int matrix_columns = 0;
    std::string validation;  ///< name of a Validation
};

/// What may be picked or must be known when a cell is filled in.
struct Validation {
    std::string name = {};
    std::vector<std::string> choices = {};  ///< empty: anything
    std::string help_title = {};
    std::string help = {};
    enum class Wants { anything, unit, choice, number, day };
    Wants wants = Wants::anything;
    std::string least = "0";  ///< of a number, or a cell that holds it; empty: any number
    std::string most = {};    ///< the same; empty: there is none
    std::string base = {};    ///< cell from which those two are counted: `Site.G7`
    std::string wanted = {};  ///< what a number must be, in words

    [[nodiscard]] bool operator==(const Validation&) const = default;
};

/// A look that a cell takes while a formula is true.
struct Condition {
    std::string when;
    std::string style;
};

struct Series {
    std::string x;  ///< `Storage.B20:Storage.B43`
    std::string y;
    std::string label;      ///< cell of its name
    std::string look;       ///< a name of chart.cpp's looks; empty for the next of a graph's
    bool on_right = false;  ///< read on the axis to the right
};

struct Chart {
    std::string title;
    std::string x_title;
    std::string y_title;
    std::vector<Series> series;
    int row = 0;  ///< top left cell
    int column = 0;
    int end_row = 0;  ///< bottom right cell
    int end_column = 0;
    double width_cm = 16;
    double height_cm = 8;
    bool log_x = false;
    bool log_y = false;
    std::string right_title;       ///< of the axis to the right, when a series is read there
    std::optional<Paper> picture;  ///< a picture to scale instead of a graph
};

struct SheetGrid {
    std::string name;
    std::map<std::pair<int, int>, SheetCell> cells;  ///< by row and column, from 0
    double row_cm = 0.5;                             ///< height of a row
    std::map<int, double> row_heights_cm;            ///< where they differ from the standard
    std::vector<double> column_widths_cm;
    int hidden_from = 0;  ///< the first column that is hidden, with all behind it; 0: none
    std::vector<Chart> charts;
    std::vector<std::pair<int, int>> checks;  ///< the cells that pass or fail
    std::map<std::pair<int, int>, std::vector<Condition>> conditions;
    int whole_workbook_row = 0;    ///< where the summary of all sheets adds up; 0: there is none
    std::vector<int> page_breaks;  ///< rows that begin a page
    int rows = 0;
    int print_columns = 0;  ///< the columns that are printed
    bool printed = true;
    int printed_rows = 0;  ///< those above this one are; 0: all
    bool protect = true;   ///< but what is typed in
    int head_rows = 0;     ///< rows repeated on each page and frozen on the screen
    bool wide = false;
};

/// Height of a row; the title stands higher than the others.
[[nodiscard]] inline double row_height_cm(const SheetGrid& sheet, int row) {
    constexpr double title = 0.75;
    if (row == 0) return title;
    const auto own = sheet.row_heights_cm.find(row);
    return own == sheet.row_heights_cm.end() ? sheet.row_cm : std::max(own->second, sheet.row_cm);
}

struct NamedRange {
    std::string name;
    std::string address;  ///< `$Storage.$G$12:.$H$12`
};

struct WorkbookGrid {
    std::string name;
    std::string title;
    std::string paper;                                            ///< "a4" or "letter"
    std::vector<std::pair<std::string, std::string>> properties;  ///< what the document says of itself
    std::vector<SheetGrid> sheets;
    std::vector<NamedRange> names;
    std::vector<Validation> validations;
};

/// The workbook as a flat OpenDocument spreadsheet.
[[nodiscard]] std::string flat_document(const WorkbookGrid& workbook);

}  // namespace undercroft::sheets
