/// \file sheet_text.hpp
/// A sheet as text: what a checker can read on paper. See sheets/README.md for the grammar.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace undercroft::sheets {

/// The two systems of units in which every template is built from the same text.
enum class System { si, us };

/// A field with one reading for both systems, or `SI // US`.
struct Dual {
    std::string si;
    std::string us;
    [[nodiscard]] const std::string& in(System system) const { return system == System::si ? si : us; }
};
[[nodiscard]] Dual dual(const std::string& field);

/// A cell of a list or of a table that is typed in: number and unit, text, or a formula.
struct ListCell {
    Dual text;
};

/// A column of a table or list.
struct ListColumn {
    std::string title;
    int span = 1;  ///< columns of the sheet that it takes
    Dual unit;     ///< unit beside the number; empty where there is none
    std::string
        formula;  ///< the same for each row, with `@name` for other columns of the row; empty where typed in
    std::string name;                  ///< by which formulas of the row refer to it
    std::string format;                ///< number, share, text
    std::vector<std::string> options;  ///< words to pick from
};

struct Row {
    enum class Kind {
        section,  ///< a heading
        input,    ///< a number with its unit, typed in
        text,     ///< a text typed in
        choice,   ///< a text picked from a list
        given,    ///< what another sheet computes: shown as a link, or an input where that sheet is not there
        result,   ///< a number with its unit, computed
        words,    ///< a text, computed
        check,    ///< passes or fails
        table,    ///< a table that a function returns
        grid,     ///< a table that is typed in
        list,     ///< items with columns of their own
        chart,
        picture,    ///< outlines to scale
        summary,    ///< the open checks of every sheet of the workbook
        dashboard,  ///< every check of every sheet with its verdict
        remark,
        caution,
        page,  ///< a new page begins
    };
    Kind kind = Kind::section;
    int line = 0;
    std::string when;  ///< stands only where the workbook has this sheet; empty: always
    std::string key;
    std::string description;
    std::string symbol;
    Dual value;               ///< default, such as `152 mm`; of a result its unit
    std::string least = "0";  ///< of an input, in its default unit
    Dual formula;             ///< with the keys of other rows; `@` is this row's unit cell
    std::string note;
    std::vector<std::string> options;  ///< of a choice
    std::string height;                ///< rows of a table
    std::vector<ListColumn> columns;
    std::vector<std::vector<ListCell>> items;  ///< rows of a grid or list
    std::string source_table;                  ///< of a chart
    std::vector<std::string> plot;             ///< of a chart: x, then the y columns
    Dual x_title;
    Dual y_title;
    Dual right_title;           ///< of the axis to the right
    std::vector<double> paper;  ///< of a picture: x from, to, y from, to in millimetres
    bool beside = false;        ///< to the right of its table, not below
};

struct Sheet {
    std::string name;
    std::string title;
    bool wide = false;       ///< landscape, with more columns
    bool unprinted = false;  ///< only its head is printed
    std::vector<Row> rows;
};

/// Reads one sheet.
/// \throws TextMistake for what cannot be read, with its line.
[[nodiscard]] Sheet read_sheet(std::string_view text);

/// A workbook: the sheets it is made of.
struct WorkbookText {
    std::string name;  ///< of the file: `storage`
    std::string title;
    std::vector<std::string> sheets;
};

/// Reads the list of workbooks.
[[nodiscard]] std::vector<WorkbookText> read_workbooks(std::string_view text);

}  // namespace undercroft::sheets
