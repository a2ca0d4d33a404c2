#include "sheets/builder/layout.hpp"

#include <algorithm>
#include <stdexcept>

#include "units/text.hpp"

namespace undercroft::sheets {

int last_column(const Sheet& sheet) {
    return sheet.wide ? 17 : 11;
}
int mark_column(const Sheet& sheet) {
    return last_column(sheet) + 1;
}
int reason_column(const Sheet& sheet) {
    return mark_column(sheet) + 1;
}

Layout::Layout(const Selection& selection, System system) : selection_(selection), system_(system) {
    for (const Sheet& sheet : selection.sheets()) lay_out(sheet);
}

const Place* Layout::find(const std::string& key) const {
    const auto place = places_.find(key);
    return place == places_.end() ? nullptr : &place->second;
}

std::string Layout::open_key(const Sheet& sheet) {
    return lower_case(sheet.name) + "_open";
}

int Layout::picture_rows(const Paper& paper) {
    constexpr double row_mm = 10 * row_cm;
    constexpr double title_and_legend_mm = 28;
    return static_cast<int>((paper.y_to - paper.y_from + title_and_legend_mm) / row_mm) + 2;
}

namespace {

constexpr int title_and_heads = 2;
constexpr int units = 1;
constexpr int space = 1;

/// Checks, and lists of which each item is checked.
int checks_on(const Sheet& sheet) {
    return static_cast<int>(std::count_if(sheet.rows.begin(), sheet.rows.end(), [](const Row& row) {
        return row.is<rows::Check>() || verdict_column(row) != nullptr;
    }));
}

}  // namespace

int Layout::rows_of(const Row& row) const {
    const auto number_of = [](const auto& things) { return static_cast<int>(things.size()); };
    return std::visit(
        Overloaded{
            [](const rows::Table& table) { return title_and_heads + units + table.height + space; },
            [&](const rows::Grid& grid) { return title_and_heads + units + number_of(grid.items) + space; },
            [&](const rows::List& list) { return title_and_heads + number_of(list.items) + space; },
            [](const rows::Chart& chart) { return chart.beside ? 0 : 20; },
            [](const rows::Picture& picture) { return picture_rows(picture.paper); },
            // Heads, the sheets and their sum; then where it is, a line a sheet.
            [&](const rows::Summary&) { return 2 * number_of(selection_.sheets()) + 3; },
            [&](const rows::Dashboard&) {
                int checks = 0;
                for (const Sheet& sheet : selection_.sheets()) checks += checks_on(sheet);
                return checks + 1;
            },
            [](const rows::Unprinted&) { return 0; }, [](const rows::Section&) { return space + 1; },
            [](const auto&) { return 1; }},
        row.kind);
}

void Layout::lay_out(const Sheet& sheet) {
    int at = first_row;
    for (const Row& row : sheet.rows) {
        starts_[{sheet.name, row.line}] = at;
        if (selection_.defines(sheet, row)) add_place(sheet, row, at);
        at += rows_of(row);
    }
    const int last = last_column(sheet);
    add(open_key(sheet), {sheet.name, 2, last, 2, last, false, false, {}, nullptr});
    heights_[sheet.name] = at;
}

void Layout::add_place(const Sheet& sheet, const Row& row, int at) {
    Place place{sheet.name, at, value_column, at, value_column, false, false, row.symbol, &row};
    if (row.is_pair()) {
        place.last_column = unit_column;
        place.is_pair = true;
    }
    if (const std::vector<Column>* columns = columns_of(row)) {
        place.row = at + title_and_heads;
        place.last_row = at + rows_of(row) - space - 1;
        place.column = description_column;
        place.last_column = description_column + width_of(*columns) - 1;
        add_columns(row, place);
        if (row.is<rows::List>()) place.column += columns_of_words(*columns);
    }
    add(row.key, place);
}

void Layout::add_columns(const Row& row, const Place& whole) {
    const bool in_list = row.is<rows::List>();
    int at = whole.column;
    for (const Column& column : *columns_of(row)) {
        if (!column.name.empty()) {
            Place place = whole;
            place.column = place.last_column = at;
            place.is_pair = in_list && column.is_pair(system_);
            place.unit_above = !in_list;
            if (place.is_pair) place.last_column = at + 1;
            add(row.key + "_" + column.name, place);
        }
        at += column.span;
    }
}

void Layout::add(const std::string& key, const Place& place) {
    if (!places_.emplace(key, place).second)
        throw std::runtime_error("sheet " + place.sheet + ": the key " + key + " stands twice");
    std::string address = "$" + place.sheet + "." + cell_text(place.row, place.column, true);
    if (place.row != place.last_row || place.column != place.last_column)
        address += ":." + cell_text(place.last_row, place.last_column, true);
    names_.push_back({key, address});
}

}  // namespace undercroft::sheets
