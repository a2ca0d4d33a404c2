#include "addin/formula/read_reference.hpp"

#include <string>
#include <string_view>

namespace undercroft::addin {

namespace {

constexpr std::string_view lost = "#REF!";

/// A column's letters as a number from 1; 0 where none stand. Beyond the largest sheet it stops.
std::int32_t take_column(Cursor& cursor) {
    std::int32_t column = 0;
    while (is_letter(cursor.peek()) && column <= most_columns) {
        const char c = cursor.text[cursor.at++];
        column = column * 26 + (c >= 'a' ? c - 'a' : c - 'A') + 1;
    }
    return column;
}

/// The same for a row's digits.
std::int32_t take_row(Cursor& cursor) {
    std::int32_t row = 0;
    while (is_digit(cursor.peek()) && row <= most_rows) row = row * 10 + (cursor.text[cursor.at++] - '0');
    return row;
}

/// A letter, digit or '(' behind what looked like an address means it was a word.
bool goes_on_as_word(const Cursor& cursor) {
    return is_word_letter(cursor.peek()) || cursor.peek() == '(';
}

/// What stands between quotes, where a quote inside is doubled; nothing where the closing one is missing.
std::optional<std::string> take_quoted(Cursor& cursor) {
    std::string name;
    for (++cursor.at; !cursor.is_at_end(); ++cursor.at) {
        if (cursor.peek() == '\'') {
            if (cursor.peek(1) != '\'') {
                ++cursor.at;
                return name;
            }
            ++cursor.at;
        }
        name += cursor.peek();
    }
    return std::nullopt;
}

/// A quoted or plain sheet name followed by '.', or nothing.
std::optional<std::string> take_sheet(Cursor& cursor) {
    const std::size_t start = cursor.at;
    (void)cursor.take('$');
    std::optional<std::string> name;
    if (cursor.peek() == '\'') {
        name = take_quoted(cursor);
    } else {
        const std::size_t begin = cursor.at;
        while (is_sheet_letter(cursor.peek())) ++cursor.at;
        name = std::string(cursor.since(begin));
    }
    if (name && !name->empty() && cursor.take('.')) return name;
    cursor.at = start;
    return std::nullopt;
}

/// `'file:///a.ods'#`
std::optional<std::string> take_document(Cursor& cursor) {
    if (cursor.peek() != '\'') return std::nullopt;
    const std::size_t end = cursor.text.find('\'', cursor.at + 1);
    if (end == std::string_view::npos || !cursor.text.substr(end + 1).starts_with('#')) return std::nullopt;
    const std::string name(cursor.text.substr(cursor.at + 1, end - cursor.at - 1));
    cursor.at = end + 2;
    return name;
}

std::optional<CellAddress> take_address(Cursor& cursor) {
    const std::size_t start = cursor.at;
    CellAddress address;
    address.column_fixed = cursor.take('$');
    const std::int32_t column = take_column(cursor);
    address.row_fixed = cursor.take('$');
    const std::int32_t row = take_row(cursor);
    if (column == 0 || row == 0 || column > most_columns || row > most_rows || goes_on_as_word(cursor)) {
        cursor.at = start;
        return std::nullopt;
    }
    address.column = column - 1;
    address.row = row - 1;
    return address;
}

/// One end of `A:C` or `$1:$3`: the place that it does not name is -1.
std::optional<CellAddress> take_whole_end(Cursor& cursor) {
    const bool fixed = cursor.take('$');
    const std::int32_t column = take_column(cursor);
    const std::int32_t row = column == 0 ? take_row(cursor) : 0;
    if ((column == 0) == (row == 0) || column > most_columns || row > most_rows) return std::nullopt;
    return CellAddress{column - 1, row - 1, fixed && column > 0, fixed && row > 0};
}

/// `A:C`, `$1:$3`
bool take_whole(Cursor& cursor, CellReference& reference) {
    const std::size_t start = cursor.at;
    const std::optional<CellAddress> first = take_whole_end(cursor);
    if (first) cursor.skip_space();
    const bool spans = first && cursor.take(':');
    const std::optional<CellAddress> last = spans ? take_whole_end(cursor) : std::nullopt;
    if (!last || goes_on_as_word(cursor) || (first->column < 0) != (last->column < 0)) {
        cursor.at = start;
        return false;
    }
    reference.first = *first;
    reference.last = *last;
    reference.is_range = true;
    reference.whole_columns = first->row < 0;
    reference.whole_rows = first->column < 0;
    if (reference.whole_columns) {
        reference.first.row = 0;
        reference.last.row = most_rows - 1;
        reference.first.row_fixed = reference.last.row_fixed = true;
    } else {
        reference.first.column = 0;
        reference.last.column = most_columns - 1;
        reference.first.column_fixed = reference.last.column_fixed = true;
    }
    return true;
}

void take_cells_of_range(Cursor& cursor, CellReference& reference, const CellAddress& first) {
    reference.first = reference.last = first;
    const std::size_t colon = cursor.at;
    if (!cursor.take(':')) return;
    if (auto sheet = take_sheet(cursor)) reference.last_sheet = *sheet;
    if (const auto last = take_address(cursor)) {
        reference.last = *last;
        reference.is_range = true;
    } else {
        cursor.at = colon;
        reference.last_sheet.clear();
    }
}

/// Goes over a corner of a range. Whether its column or row is lost.
bool take_lost_corner(Cursor& cursor) {
    (void)cursor.take('$');
    const std::size_t letters = cursor.at;
    const bool lost_column = cursor.take(lost);
    while (!lost_column && is_letter(cursor.peek())) ++cursor.at;
    if (cursor.at == letters) return false;
    (void)cursor.take('$');
    const bool lost_row = cursor.take(lost);
    while (!lost_row && is_digit(cursor.peek())) ++cursor.at;
    return lost_column || lost_row;
}

/// `R2`, `R[-1]` or `R`, or the same of a column: its place from 0, where `own` is that of the formula.
std::optional<std::int32_t> take_numbered(Cursor& cursor, char letter, std::optional<std::int32_t> own,
                                          std::int32_t most) {
    if (!cursor.take(letter) && !cursor.take(static_cast<char>(letter + ('a' - 'A')))) return std::nullopt;
    const bool from_own = cursor.take('[');
    const bool back = from_own && cursor.take('-');
    const bool has_number = is_digit(cursor.peek());
    std::int32_t number = take_row(cursor);
    if (from_own && !(has_number && cursor.take(']'))) return std::nullopt;
    if (from_own || !has_number) {
        if (!own) return std::nullopt;
        number = *own + (back ? -number : number) + 1;
    }
    return number >= 1 && number <= most ? std::optional(number - 1) : std::nullopt;
}

std::optional<CellAddress> take_numbered_cell(Cursor& cursor, const std::optional<CellAddress>& from) {
    const auto row = take_numbered(cursor, 'R', from ? std::optional(from->row) : std::nullopt, most_rows);
    const auto column =
        row ? take_numbered(cursor, 'C', from ? std::optional(from->column) : std::nullopt, most_columns)
            : std::nullopt;
    return column ? std::optional(CellAddress{*column, *row, true, true}) : std::nullopt;
}

/// `Other!`, `'Site data'!`; empty where none stands.
std::string take_sheet_with_mark(Cursor& cursor) {
    const std::size_t start = cursor.at;
    std::optional<std::string> name;
    if (cursor.peek() == '\'') {
        name = take_quoted(cursor);
    } else {
        while (is_sheet_letter(cursor.peek())) ++cursor.at;
        name = std::string(cursor.since(start));
    }
    if (name && cursor.take('!')) return *name;
    cursor.at = start;
    return {};
}

}  // namespace

std::optional<CellReference> numbered_reference(std::string_view text,
                                                const std::optional<CellAddress>& from) {
    Cursor cursor{text};
    CellReference reference;
    reference.sheet = take_sheet_with_mark(cursor);
    const std::optional<CellAddress> first = take_numbered_cell(cursor, from);
    if (!first) return std::nullopt;
    reference.first = reference.last = *first;
    if (cursor.take(':')) {
        const std::optional<CellAddress> last = take_numbered_cell(cursor, from);
        if (!last) return std::nullopt;
        reference.last = *last;
        reference.is_range = true;
    }
    return cursor.is_at_end() ? std::optional(reference) : std::nullopt;
}

std::optional<CellReference> take_reference(Cursor& cursor) {
    const std::size_t start = cursor.at;
    CellReference reference;
    if (auto document = take_document(cursor)) reference.document = std::move(*document);
    if (auto sheet = take_sheet(cursor)) reference.sheet = std::move(*sheet);
    if (const auto first = take_address(cursor)) {
        take_cells_of_range(cursor, reference, *first);
    } else if (!take_whole(cursor, reference)) {
        cursor.at = start;
        return std::nullopt;
    }
    return reference;
}

bool take_lost_reference(Cursor& cursor) {
    const std::size_t start = cursor.at;
    bool is_lost = false;
    if (cursor.rest().starts_with("#REF!.")) {
        is_lost = cursor.take(lost);
        ++cursor.at;
    } else {
        (void)take_sheet(cursor);
    }
    is_lost = take_lost_corner(cursor) || is_lost;
    const std::size_t colon = cursor.at;
    if (cursor.take(':')) {
        is_lost = take_lost_corner(cursor) || is_lost;
        if (cursor.at == colon + 1) cursor.at = colon;
    }
    if (is_lost && !is_word_letter(cursor.peek())) return true;
    cursor.at = start;
    return false;
}

}  // namespace undercroft::addin
