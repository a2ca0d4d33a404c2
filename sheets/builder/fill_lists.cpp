// Lists: items with columns of their own, typed in or computed.
#include <algorithm>

#include "sheets/builder/dates.hpp"
#include "sheets/builder/entries.hpp"
#include "sheets/builder/fill.hpp"
#include "sheets/builder/lines.hpp"

namespace undercroft::sheets {

namespace {

/// One cell of a list, or the two of a number and its unit.
struct Spot {
    const Column& column;
    int line;   ///< of the item in the sheet's text
    int at;     ///< row of the sheet
    int first;  ///< column of the sheet
    std::string unit;

    [[nodiscard]] bool is_pair() const { return !unit.empty(); }
    [[nodiscard]] int unit_at() const { return first + 1; }
    [[nodiscard]] int unit_columns() const { return std::max(1, column.span - 1); }
};

/// What `@net` and `@net.unit` stand for in the formulas of one item.
RowWords words_of_item(const CellWriter& writer, const rows::List& list, int at) {
    RowWords words;
    int column = description_column;
    for (const Column& c : list.columns) {
        const bool pair = c.is_pair(writer.system());
        const std::string first = "[." + cell_text(at, column);
        const std::string beside = cell_text(at, column + 1);
        if (!c.name.empty()) {
            words["@" + c.name] = first + (pair ? ":." + beside : std::string()) + "]";
            words["@" + c.name + ".value"] = first + "]";
            if (pair) words["@" + c.name + ".unit"] = "[." + beside + "]";
        }
        column += c.span;
    }
    return words;
}

const char* style_of_computed(Column::Format format) {
    switch (format) {
        case Column::Format::text:
            return "ListWords";
        case Column::Format::shown:
            return "Verdict";
        case Column::Format::plain:
            return "NumberPlain";
        case Column::Format::place:
            return "NumberPlace";
        case Column::Format::date:
            return "NumberDay";
        case Column::Format::bar:
            return "Bars";
        default:
            return "Number";
    }
}

/// The unit of a computed pair goes with the item, `=@net.unit`, or is the column's own.
void put_unit_of_computed(CellWriter& writer, const Spot& spot, const RowWords& words) {
    SheetCell& cell = spot.unit.starts_with("=")
                          ? writer.put_formula(spot.at, spot.unit_at(), "UnitLink",
                                               writer.stored(spot.line, spot.unit.substr(1), words))
                          : writer.put_unit(spot.line, spot.at, spot.unit_at(), "UnitResult", spot.unit);
    cell.columns = spot.unit_columns();
}

void fill_computed(CellWriter& writer, const Spot& spot, const std::string& formula, RowWords words) {
    if (spot.is_pair()) words["@"] = "[." + cell_text(spot.at, spot.unit_at()) + "]";
    const Place* linked = writer.layout().find(formula);
    if (spot.is_pair() && linked != nullptr && linked->is_pair) {  // a link to a pair brings its unit along
        writer.put_link_computed_with(*linked, formula, spot.at, spot.first).columns = spot.unit_columns();
        return;
    }
    if (const std::optional<double> number =
            number_in(formula)) {  // the number of an item, not to be typed over
        writer.put_number(spot.at, spot.first, style_of_computed(spot.column.format), *number).columns =
            spot.column.span;
        return;
    }
    const std::string stored = writer.stored(spot.line, formula, words, Copied::down);
    const bool verdict = spot.column.format == Column::Format::verdict;
    SheetCell& cell =
        verdict ? put_verdict(writer, spot.at, spot.first, stored)
                : writer.put_formula(spot.at, spot.first, style_of_computed(spot.column.format), stored);
    cell.columns = spot.is_pair() ? 1 : spot.column.span;
    if (spot.is_pair()) put_unit_of_computed(writer, spot, words);
}

NumberAndUnit read_quantity(const CellWriter& writer, const Spot& spot, const std::string& text) {
    try {
        return number_and_unit(text);
    } catch (const std::runtime_error& error) {
        writer.mistake(spot.line, error.what());
    }
}

/// What is typed there must be a number: `4 ft 3 in` is refused at once, not where something computes with
/// it.
void want_number(CellWriter& writer, SheetCell& cell) {
    Validation wanted;
    wanted.wants = Validation::Wants::number;
    wanted.least.clear();
    cell.validation = writer.add_validation(wanted);
}

/// `-` is to be filled in, `- each` too, in another unit than the column's.
void fill_typed_pair(CellWriter& writer, const Spot& spot, const std::string& text) {
    std::string unit = spot.unit;
    if (text == "-" || text.starts_with("- ")) {
        if (text != "-") unit = trimmed(text.substr(1));
        want_number(writer, writer.put(spot.at, spot.first, "Entry"));
    } else {
        const NumberAndUnit value = read_quantity(writer, spot, text);
        unit = value.unit;
        want_number(writer, writer.put_number(spot.at, spot.first, "Entry", value.number));
    }
    writer.put_unit(spot.line, spot.at, spot.unit_at(), "UnitEntry", unit).columns = spot.unit_columns();
}

void fill_typed_share(CellWriter& writer, const Spot& spot, const std::string& text) {
    const NumberAndUnit share = read_quantity(writer, spot, text);
    if (share.unit != "%") writer.mistake(spot.line, "'" + text + "' is no share in %");
    SheetCell& cell = writer.put_number(spot.at, spot.first, "ShareEntry", share.number / 100);
    cell.columns = spot.column.span;
    want_number(writer, cell);
}

void fill_typed_number(CellWriter& writer, const Spot& spot, const std::string& text) {
    const std::optional<double> number = number_in(text);
    if (!number && text != "-") writer.mistake(spot.line, "'" + text + "' is no number");
    SheetCell& cell = number ? writer.put_number(spot.at, spot.first, "Entry", *number)
                             : writer.put(spot.at, spot.first, "Entry");
    cell.columns = spot.column.span;
    want_number(writer, cell);
}

/// A text is no day to the functions that count days, and would be passed over.
void fill_typed_day(CellWriter& writer, const Spot& spot, const std::string& text) {
    const std::optional<double> day = day_in(text);
    if (!day && text != "-") writer.mistake(spot.line, "'" + text + "' is no day, such as 2026-11-25");
    SheetCell& cell = day ? writer.put_number(spot.at, spot.first, "DayEntry", *day)
                          : writer.put(spot.at, spot.first, "DayEntry");
    cell.columns = spot.column.span;
    cell.validation = writer.add_validation({.wants = Validation::Wants::day});
}

void fill_typed_text(CellWriter& writer, const Spot& spot, const std::string& text) {
    const bool picks = !spot.column.options.empty();
    const bool entry = picks || spot.column.format == Column::Format::entry;
    SheetCell& cell =
        writer.put_text(spot.at, spot.first, entry ? "TextEntry" : "ListText", text == "-" ? "" : text);
    cell.columns = spot.column.span;
    if (picks)
        cell.validation = writer.add_validation(
            {{}, spot.column.options, spot.column.title, {}, Validation::Wants::choice});
}

void fill_typed(CellWriter& writer, const Spot& spot, const std::string& text) {
    if (spot.is_pair()) return fill_typed_pair(writer, spot, text);
    if (spot.column.format == Column::Format::share) return fill_typed_share(writer, spot, text);
    if (spot.column.format == Column::Format::number) return fill_typed_number(writer, spot, text);
    if (spot.column.format == Column::Format::date) return fill_typed_day(writer, spot, text);
    fill_typed_text(writer, spot, text);
}

/// What is watched of a typed cell: a number of which the text says what is usual, and a word that is picked.
std::optional<Entry> entry_of(const CellWriter& writer, const Spot& spot, const std::string& text) {
    Entry entry;
    entry.column = spot.first;
    entry.title = spot.column.title;
    entry.usual = spot.column.usual;
    entry.is_text = !spot.column.options.empty();
    entry.is_share = spot.column.format == Column::Format::share;
    if (!entry.usual && !entry.is_text) return std::nullopt;
    if (spot.is_pair()) {
        const SheetCell& unit = writer.grid().cells.at({spot.at, spot.unit_at()});
        entry.unit = unit.text;
        entry.unit_row = spot.at;
        entry.unit_column = spot.unit_at();
    }
    const SheetCell& cell = writer.grid().cells.at({spot.at, spot.first});
    if (cell.type == SheetCell::Type::number) entry.number = cell.number;
    if (entry.is_text && text != "-") entry.text = text;
    return entry;
}

void fill_item(CellWriter& writer, const rows::List& list, const rows::Item& item, int at) {
    const RowWords words = words_of_item(writer, list, at);
    writer.put_reference(at);
    std::size_t typed = 0;
    int column = description_column;
    std::vector<int> computed;
    std::vector<int> words_computed;
    std::vector<Entry> entries;
    int lines = 1;
    for (const Column& c : list.columns) {
        const std::string text = c.is_typed() ? item.cells[typed++].in(writer.system()) : "=" + c.formula;
        const Spot spot{c, item.line, at, column, c.unit.in(writer.system())};
        if (text.starts_with("=")) {
            fill_computed(writer, spot, trimmed(std::string_view(text).substr(1)), words);
            if (!number_in(trimmed(std::string_view(text).substr(1)))) {
                computed.push_back(column);
                if (c.format == Column::Format::text || c.format == Column::Format::bar)
                    words_computed.push_back(column);
            }
        } else {
            fill_typed(writer, spot, text);
            if (auto entry = entry_of(writer, spot, text)) entries.push_back(std::move(*entry));
            lines = std::max(lines, lines_of_text(text, c.span));
        }
        column += c.span;
    }
    writer.set_height(at, lines);
    // A formula that a checker can read: where many cells are computed, words go without a reason of their
    // own.
    constexpr std::size_t most_reasons = 6;
    if (computed.size() > most_reasons)
        std::erase_if(computed, [&](int of) {
            return std::find(words_computed.begin(), words_computed.end(), of) != words_computed.end();
        });
    const bool has_number =
        std::any_of(entries.begin(), entries.end(), [](const Entry& e) { return !e.is_text; });
    if (has_number) watch_item(writer, entries, at);
    if (!computed.empty() || has_number) writer.put_reason(at, computed, has_number);
}

}  // namespace

void fill_list(CellWriter& writer, const Row& row, const rows::List& list, int at) {
    fill_table_head(writer, row, at);
    at += 2;
    for (const rows::Item& item : list.items) {
        fill_item(writer, list, item, at);
        writer.put_growth(at++, list.most);
    }
}

}  // namespace undercroft::sheets
