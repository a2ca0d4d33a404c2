/// \file row.hpp
/// The rows of a sheet as text: what all have, and each kind with what it alone has.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "sheets/builder/columns.hpp"
#include "sheets/builder/dual.hpp"
#include "sheets/builder/numbers.hpp"
#include "sheets/builder/paper.hpp"
#include "sheets/builder/usual.hpp"

namespace undercroft::sheets {

namespace rows {

/// A heading.
struct Section {};
/// A paragraph.
struct Remark {};
struct Caution {};
/// A new page begins.
/// From here on the sheet is not printed: long tables that the rows above are computed from.
struct Unprinted {};
/// The open checks of every other sheet of the workbook.
struct Summary {};
/// Every check of every sheet with its verdict.
struct Dashboard {};

/// A number with its unit, typed in.
struct Input {
    Dual<NumberAndUnit> value;
    DualText least;  ///< a number in the unit of that system's value
};

/// A text typed in.
struct Text {
    DualText value;
};

/// A text picked from a list.
struct Choice {
    DualText value;
    std::vector<std::string> options;
};

/// What another sheet computes: shown as a link, or an input where that sheet is not there.
struct Given {
    Dual<NumberAndUnit> value;
};

/// A number with its unit, computed. In the formula `@` is the row's own unit cell.
struct Result {
    DualText unit;  ///< or `=key.unit`: that of another cell
    DualText formula;
};

/// A text or a day of the calendar, computed.
struct Words {
    DualText formula;
    bool is_day = false;
};

/// What must hold between two keys: the one at hand, and the limit on the right.
struct Comparison {
    enum class Sense { at_least, at_most, above, below };
    std::string left;
    Sense sense = Sense::at_least;
    std::string right;
    std::string condition;  ///< a key that is 1 where the check counts; empty: always
    bool waits = false;     ///< where it does not hold it is open, not failed
};

/// A formula that gives 1, 0 or a text such as "open", where two keys alone do not decide.
struct Ruling {
    std::string formula;
    std::optional<Comparison> numbers = {};  ///< shown beside the verdict, as far as both are numbers
    std::string words = {};                  ///< a formula: the sentence where they are not
};

using Demand = std::variant<Comparison, Ruling>;

/// Passes or fails.
struct Check {
    Dual<Demand> demand;
};

/// A table that a function returns. In the formula `@` is its number of rows.
struct Table {
    int height = 0;
    std::vector<Column> columns;
    DualText formula;
};

/// A row of a grid or list, for the columns that are typed in.
struct Item {
    int line = 0;
    std::vector<DualText> cells;
};

/// A table that is typed in.
struct Grid {
    std::vector<Column> columns;
    std::vector<Item> items;
    int most = 0;  ///< rows that it may have once rows are added; 0: none are
};

/// Items with columns of their own, typed in or computed.
struct List {
    std::vector<Column> columns;
    std::vector<Item> items;
    int most = 0;  ///< rows that it may have once rows are added; 0: none are
};

/// A column of a table as it is drawn.
struct Curve {
    std::string column;  ///< by its title
    bool logarithmic = false;
    bool on_right = false;  ///< read on the axis to the right
};

struct Chart {
    std::string table;
    Curve x;
    std::vector<Curve> curves;
    DualText x_title;
    DualText y_title;
    DualText right_title;
    bool beside = false;  ///< to the right of its table, not below
};

/// The points of a table as a line of a picture.
struct Outline {
    std::string look;
    std::string table;
};

/// Outlines to scale.
struct Picture {
    Paper paper;
    std::vector<Outline> outlines;
};

}  // namespace rows

using RowKind =
    std::variant<rows::Section, rows::Remark, rows::Caution, rows::Unprinted, rows::Summary, rows::Dashboard,
                 rows::Input, rows::Text, rows::Choice, rows::Given, rows::Result, rows::Words, rows::Check,
                 rows::Table, rows::Grid, rows::List, rows::Chart, rows::Picture>;

/// A row of a sheet; what it does not have is empty.
struct Row {
    int line = 0;      ///< in its file
    std::string when;  ///< stands only where the workbook has this sheet; empty: always
    std::string key;
    std::string description;  ///< or title, or the paragraph
    std::string symbol;
    std::string note;
    std::optional<Usual> usual;  ///< of what is typed in
    bool optional = false;       ///< a text that may stay blank
    RowKind kind;

    template <class Kind>
    [[nodiscard]] bool is() const {
        return std::holds_alternative<Kind>(kind);
    }
    /// \return nullptr for a row of another kind.
    template <class Kind>
    [[nodiscard]] const Kind* as() const {
        return std::get_if<Kind>(&kind);
    }
    /// Whether its value stands in two cells, a number and its unit.
    [[nodiscard]] bool is_pair() const {
        return is<rows::Input>() || is<rows::Given>() || is<rows::Result>();
    }
};

/// The columns of a table, grid or list. \return nullptr for a row of another kind.
[[nodiscard]] inline const std::vector<Column>* columns_of(const Row& row) {
    return std::visit(
        [](const auto& kind) -> const std::vector<Column>* {
            if constexpr (requires { kind.columns; })
                return &kind.columns;
            else
                return nullptr;
        },
        row.kind);
}

/// The column of a list that says whether each item passes. \return nullptr where there is none.
[[nodiscard]] inline const Column* verdict_column(const Row& row) {
    const auto* list = row.as<rows::List>();
    if (list == nullptr) return nullptr;
    for (const Column& column : list->columns)
        if (column.format == Column::Format::verdict) return &column;
    return nullptr;
}

/// A visitor of several functions, one a kind of row.
template <class... Functions>
struct Overloaded : Functions... {
    using Functions::operator()...;
};
template <class... Functions>
Overloaded(Functions...) -> Overloaded<Functions...>;

}  // namespace undercroft::sheets
