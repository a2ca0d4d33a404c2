#include "sheets/builder/layout.hpp"

#include <algorithm>
#include <charconv>

namespace undercroft::sheets {

int last_column(const Sheet& sheet) {
    return sheet.wide ? 17 : 11;
}
int reason_column(const Sheet& sheet) {
    return last_column(sheet) + 1;
}

Layout::Layout(const Selection& selection, System system) : selection_(selection), system_(system) {
    for (const Sheet& sheet : selection.sheets()) lay_out(sheet);
}

const Place* Layout::find(const std::string& key) const {
    const auto place = places_.find(key);
    return place == places_.end() ? nullptr : &place->second;
}

int Layout::table_height(const Sheet& sheet, const Row& row) {
    int height = 0;
    const auto [end, error] =
        std::from_chars(row.height.data(), row.height.data() + row.height.size(), height);
    if (error != std::errc{} || end != row.height.data() + row.height.size() || height < 1)
        sheet_mistake(sheet, row.line, "'" + row.height + "' is no height of a table");
    return height;
}

int Layout::width_of(const Row& row) {
    int columns = 0;
    for (const ListColumn& column : row.columns) columns += column.span;
    return columns;
}

std::string Layout::open_key(const Sheet& sheet) {
    std::string key;
    for (const char c : sheet.name)
        key += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c == ' ' ? '_' : c;
    return key + "_open";
}

int Layout::picture_rows(const Row& row) {
    constexpr double row_mm = 5;
    constexpr double title_and_legend_mm = 28;
    return static_cast<int>((row.paper[3] - row.paper[2] + title_and_legend_mm) / row_mm) + 2;
}

int Layout::rows_of(const Sheet& sheet, const Row& row) const {
    const int items = static_cast<int>(row.items.size());
    switch (row.kind) {
        case Row::Kind::table:
            return 2 + 1 + table_height(sheet, row) + 1;  // title, heads, units, values, space
        case Row::Kind::grid:
            return 2 + 1 + items + 1;
        case Row::Kind::list:
            return 2 + items + 1;
        case Row::Kind::chart:
            return row.beside ? 0 : 20;
        case Row::Kind::picture:
            return picture_rows(row);
        case Row::Kind::summary:
            return static_cast<int>(selection_.sheets().size()) - 1;
        case Row::Kind::dashboard: {
            int checks = 0;
            for (const Sheet& other : selection_.sheets())
                checks += static_cast<int>(
                    std::count_if(other.rows.begin(), other.rows.end(),
                                  [](const Row& each_row) { return each_row.kind == Row::Kind::check; }));
            return checks;
        }
        case Row::Kind::page:
            return 0;
        case Row::Kind::section:
            return 2;  // a line of space before
        default:
            return 1;
    }
}

int Layout::columns_of_words(const Row& row) {
    int columns = 0;
    for (const ListColumn& c : row.columns) {
        if (!c.unit.si.empty() || !c.formula.empty() || !c.format.empty() || !c.options.empty()) break;
        columns += c.span;
    }
    return columns < width_of(row) ? columns : 0;
}

void Layout::lay_out(const Sheet& sheet) {
    int at = first_row;
    for (const Row& row : sheet.rows) {
        starts_[{sheet.name, row.line}] = at;
        if (selection_.defines(sheet, row)) {
            Place place{sheet.name, at, value_column, at, value_column, false, false, row.symbol, &row};
            using Kind = Row::Kind;
            const bool is_table = row.kind == Kind::table || row.kind == Kind::grid || row.kind == Kind::list;
            if (row.kind == Kind::input || row.kind == Kind::result || row.kind == Kind::given) {
                place.last_column = unit_column;
                place.is_pair = true;
            }
            if (is_table) {
                place.row = at + 2;
                place.last_row = at + rows_of(sheet, row) - 2;
                place.column = description_column;
                place.last_column = description_column + width_of(row) - 1;
                add_columns(row, place);
                if (row.kind == Row::Kind::list) place.column += columns_of_words(row);
            }
            add(row.key, place);
        }
        at += rows_of(sheet, row);
    }
    const int last = last_column(sheet);
    add(open_key(sheet), {sheet.name, 2, last, 2, last, false, false, {}, nullptr});
    heights_[sheet.name] = at;
}

void Layout::add_columns(const Row& row, const Place& whole) {
    int column = whole.column;
    for (const ListColumn& c : row.columns) {
        if (!c.name.empty()) {
            Place place = whole;
            place.column = place.last_column = column;
            place.is_pair = row.kind == Row::Kind::list && !c.unit.in(system_).empty();
            place.unit_above = row.kind != Row::Kind::list;
            if (place.is_pair) place.last_column = column + 1;
            add(row.key + "_" + c.name, place);
        }
        column += c.span;
    }
}

void Layout::add(const std::string& key, const Place& place) {
    places_[key] = place;
    std::string address = "$" + place.sheet + "." + cell_text(place.row, place.column, true);
    if (place.sheet.find(' ') != std::string::npos)
        address = "$'" + place.sheet + "'." + cell_text(place.row, place.column, true);
    if (place.row != place.last_row || place.column != place.last_column)
        address += ":." + cell_text(place.last_row, place.last_column, true);
    names_.push_back({key, address});
}

}  // namespace undercroft::sheets
