/// \file book.hpp
/// A workbook as the audit sees it: plain data, read from Calc or made up by a test. No office is needed.
#pragma once

#include <compare>
#include <cstdint>
#include <map>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <variant>
#include <vector>

#include "addin/audit/book/number_format.hpp"

namespace undercroft::audit {

/// The sheet that an audit writes, and what stands first on it; an audit does not look at it.
inline constexpr const char* audit_sheet_name = "Audit";
inline constexpr const char* audit_sheet_title = "Audit of this workbook";
/// A name that only that sheet knows: by it an audit knows its own sheet, whatever it is called.
inline constexpr const char* audit_sheet_mark = "undercroft_audit";

/// One cell of the workbook: the place of its sheet, row and column, all from 0.
struct Spot {
    std::int32_t sheet = 0;
    std::int32_t row = 0;
    std::int32_t column = 0;
    friend auto operator<=>(const Spot&, const Spot&) = default;
};

/// A rectangle of cells on one sheet, corners included.
struct Area {
    std::int32_t sheet = 0;
    std::int32_t first_row = 0;
    std::int32_t first_column = 0;
    std::int32_t last_row = 0;
    std::int32_t last_column = 0;

    [[nodiscard]] static Area of(const Spot& spot) {
        return {spot.sheet, spot.row, spot.column, spot.row, spot.column};
    }
    [[nodiscard]] Spot first() const { return {sheet, first_row, first_column}; }
    [[nodiscard]] bool is_single() const { return first_row == last_row && first_column == last_column; }
    /// A number and its unit beside it.
    [[nodiscard]] bool is_pair() const { return first_row == last_row && first_column + 1 == last_column; }
    [[nodiscard]] bool holds(const Spot& spot) const {
        return spot.sheet == sheet && spot.row >= first_row && spot.row <= last_row &&
               spot.column >= first_column && spot.column <= last_column;
    }
    [[nodiscard]] bool overlaps(const Area& other) const {
        return sheet == other.sheet && first_row <= other.last_row && other.first_row <= last_row &&
               first_column <= other.last_column && other.first_column <= last_column;
    }
    friend auto operator<=>(const Area&, const Area&) = default;
};

/// What a cell shows: nothing, a number, or a text.
using CellValue = std::variant<std::monostate, double, std::string>;

struct BookCell {
    std::int32_t row = 0;
    std::int32_t column = 0;
    std::string formula;  ///< `=SUM(A1:A3)` in Calc's English file grammar; empty for a typed cell
    CellValue value;
    int error = 0;            ///< Calc's code; 0 for none
    std::int32_t array = -1;  ///< the array formula that it belongs to, as a place in BookSheet::arrays
    std::uint32_t format = 0;

    [[nodiscard]] bool is_formula() const { return !formula.empty(); }
    [[nodiscard]] const double* number() const { return error == 0 ? std::get_if<double>(&value) : nullptr; }
    [[nodiscard]] const std::string* text() const {
        return error == 0 ? std::get_if<std::string>(&value) : nullptr;
    }
    /// A blank cell, or a formula that shows nothing.
    [[nodiscard]] bool shows_nothing() const {
        return error == 0 && number() == nullptr && (text() == nullptr || text()->empty());
    }
};

struct CellFormat {
    std::string style;
    bool locked = true;
    bool has_list = false;  ///< its content is picked from a list
    NumberFormat number{};  ///< how its number is shown
    std::string words{};    ///< that its number format writes, by words_of_format()
    bool unseen = false;    ///< written in the colour of its background
    friend auto operator<=>(const CellFormat&, const CellFormat&) = default;
};

/// What a person wrote to a cell, shown beside it and not in it.
struct CellComment {
    std::int32_t row = 0;
    std::int32_t column = 0;
    std::string text;
};

struct BookSheet {
    std::string name;
    bool hidden = false;
    bool is_protected = false;
    bool was_audit = false;       ///< an audit wrote it, and its cells were left out
    bool has_audit_mark = false;  ///< it bears the mark of the sheets that an audit writes
    std::vector<BookCell> cells;  ///< what is not blank, row by row
    std::vector<Area> arrays;
    std::vector<CellFormat> formats = {{}};
    std::set<std::int32_t> hidden_rows;  ///< of those that hold something
    std::set<std::int32_t> hidden_columns;
    std::set<std::int32_t> flat_rows;  ///< of those that hold something: too low for anything to be read
    std::vector<Area> merged;          ///< cells shown as one, of which only the first is seen
    std::vector<CellComment> comments;
};

/// Whether an audit wrote this sheet: a sheet of that name which computes is audited like any other.
[[nodiscard]] bool is_audit_sheet(const BookSheet& sheet);

struct DefinedName {
    std::string name;
    std::string content;      ///< `$Site.$G$7:$H$7`
    std::int32_t sheet = -1;  ///< the only sheet that knows it; -1: all do
    Spot base;                ///< relative references in it are seen from here
};

/// Which kind of file the workbook came from; decides what a file can lose.
enum class FileKind { open_document, excel_2007, excel_97, other };

/// What it holds is kept with the package's templates too: book_json.cpp names each member.
struct Book {
    std::vector<BookSheet> sheets;
    std::vector<DefinedName> names;
    std::map<std::string, std::string> properties;  ///< the user-defined ones of the document
    std::vector<std::string> links;                 ///< to other files, as the document lists them
    std::vector<Area> charted;                      ///< what charts are drawn from
    FileKind kind = FileKind::open_document;
    bool iterates = false;           ///< circular references are computed by repetition
    bool rounds_to_shown = false;    ///< results are cut to the digits shown
    bool computes_by_itself = true;  ///< AutoCalculate is on
    bool has_macros = false;
    std::vector<std::string> macros;  ///< their sources, where they could be read
    std::string null_date;            ///< the day from which dates are counted: `1899-12-30`, `1904-1-1`

    /// Sorts the cells and makes them findable. To be called once they are all there.
    void index();

    [[nodiscard]] const BookCell* find(const Spot& spot) const;
    [[nodiscard]] const CellFormat& format_of(const Spot& spot) const;
    /// Cells of one column from top to bottom, as places in BookSheet::cells.
    [[nodiscard]] std::span<const std::uint32_t> column(std::int32_t sheet, std::int32_t column) const;
    /// Those of them in these rows.
    [[nodiscard]] std::span<const std::uint32_t> column(std::int32_t sheet, std::int32_t column,
                                                        std::int32_t first_row, std::int32_t last_row) const;
    /// Calls for every cell of the area that holds something, column by column.
    template <class Visit>
    void each_cell(const Area& area, const Visit& visit) const {
        const std::vector<BookCell>& cells = sheets[static_cast<std::size_t>(area.sheet)].cells;
        for (std::int32_t c = area.first_column; c <= area.last_column && c < columns(area.sheet); ++c)
            for (const std::uint32_t i : column(area.sheet, c, area.first_row, area.last_row))
                visit(cells[i]);
    }
    /// One more than the last column that holds anything.
    [[nodiscard]] std::int32_t columns(std::int32_t sheet) const;
    [[nodiscard]] std::int32_t sheet_named(std::string_view name) const;

    /// `Site.G7`, `'Site data'.B2`
    [[nodiscard]] std::string text(const Spot& spot) const;
    /// `Site.G7:H7`
    [[nodiscard]] std::string text(const Area& area) const;
    /// Without the sheet when it is this one.
    [[nodiscard]] std::string text_from(std::int32_t sheet, const Spot& spot) const;
    [[nodiscard]] std::string text_from(std::int32_t sheet, const Area& area) const;

private:
    std::vector<std::vector<std::vector<std::uint32_t>>> columns_;
    std::unordered_map<std::string, std::int32_t> sheet_names_;
};

/// "row 3", "rows 3 to 7", counted from 1.
[[nodiscard]] std::string rows_text(std::int32_t first, std::int32_t last);

/// `G6:G9, H7 and 40 more`: cells of one sheet gathered into ranges.
[[nodiscard]] std::string cells_text(const Book& book, std::vector<Spot> spots, std::size_t most_ranges = 6);

}  // namespace undercroft::audit
