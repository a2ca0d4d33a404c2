#include "tests/support/large_book.hpp"

#include <algorithm>

namespace undercroft::tests {

using audit::Book;
using audit::BookCell;
using audit::BookSheet;

namespace {

class SheetRows {
public:
    explicit SheetRows(BookSheet& sheet) : sheet_(sheet) {}
    void text(std::int32_t row, std::int32_t column, const std::string& text) {
        put(row, column).value = text;
    }
    void number(std::int32_t row, std::int32_t column, double number) { put(row, column).value = number; }
    void formula(std::int32_t row, std::int32_t column, const std::string& formula, double shown) {
        BookCell& cell = put(row, column);
        cell.formula = formula;
        cell.value = shown;
    }

private:
    BookCell& put(std::int32_t row, std::int32_t column) {
        BookCell& cell = sheet_.cells.emplace_back();
        cell.row = row;
        cell.column = column;
        return cell;
    }
    BookSheet& sheet_;
};

constexpr std::int32_t formulas_of_a_row = 8;

void fill_row(SheetRows& rows, std::int32_t row) {
    const std::string at = std::to_string(row + 1);
    const std::string above = std::to_string(row);
    rows.text(row, 0, "Bed " + at);
    rows.number(row, 1, 10 + row % 17);
    rows.text(row, 2, "m");
    rows.number(row, 3, 4 + row % 5);
    rows.text(row, 4, "m");
    rows.formula(row, 5, "=UC.PRODUCT(B" + at + ":C" + at + ";D" + at + ":E" + at + ";G" + at + ")", 40);
    rows.text(row, 6, "m2");
    rows.formula(row, 7, "=B" + at + "*D" + at, 40);
    rows.text(row, 8, "m2");
    rows.formula(row, 9, "=2*(B" + at + "+D" + at + ")", 28);
    rows.text(row, 10, "m");
    rows.formula(row, 11, row == 0 ? "=H" + at + "+0" : "=L" + above + "+H" + at, 40);
    rows.text(row, 12, "m2");
    rows.formula(row, 13, "=UC.ATLEAST(F" + at + ":G" + at + ";H" + at + ":I" + at + ")", 1);
    rows.formula(row, 14, "=IF(ISERROR(F" + at + ");UC.WHY(F" + at + ");\"\")", 0);
    rows.formula(row, 15, "=SUM(H$1:H" + at + ")", 40);
    rows.text(row, 16, "m2");
    rows.formula(row, 17, "=MAX(Totals.$B$1;F" + at + ")", 40);
    rows.text(row, 18, "m2");
}

}  // namespace

Book large_book(std::int32_t formulas) {
    Book book;
    const std::int32_t rows_wanted = formulas / formulas_of_a_row;
    const std::int32_t rows_of_a_sheet = 5000;
    for (std::int32_t done = 0; done < rows_wanted; done += rows_of_a_sheet) {
        BookSheet& sheet = book.sheets.emplace_back();
        sheet.name = "Beds" + std::to_string(book.sheets.size());
        SheetRows rows(sheet);
        for (std::int32_t row = 0; row < std::min(rows_of_a_sheet, rows_wanted - done); ++row)
            fill_row(rows, row);
    }
    BookSheet& totals = book.sheets.emplace_back();
    totals.name = "Totals";
    SheetRows rows(totals);
    rows.number(0, 1, 1);
    rows.text(0, 2, "m2");
    std::int32_t row = 2;
    for (std::size_t s = 0; s + 1 < book.sheets.size(); ++s) {
        rows.text(row, 0, "Sum of " + book.sheets[s].name);
        rows.formula(row, 1, "=SUM(" + book.sheets[s].name + ".H1:H" + std::to_string(rows_of_a_sheet) + ")",
                     40);
        rows.text(row++, 2, "m2");
    }
    book.index();
    return book;
}

}  // namespace undercroft::tests
