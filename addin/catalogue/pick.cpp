// One figure of a table of things, such as a supplier's list: by the name of the thing and the heading of the
// column, with the unit that stands there.
#include <cmath>

#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/entry.hpp"
#include "units/text.hpp"
#include "units/unit_memory.hpp"

namespace undercroft::addin {

namespace {

/// Headings in the first row, units in the second row or in brackets behind the headings, names in the first
/// column. The cells are those of the call.
struct ThingTable {
    const Grid* grid = nullptr;
    std::size_t first_row = 0;  ///< of values
    std::vector<std::optional<Unit>> units;
};

/// A name or a number as it stands in a cell.
struct Name {
    std::string text;
};

}  // namespace

template <>
struct Slot<Name> {
    static Name read(const Cell& cell, const Terms&) {
        Scalar one;
        if (const double* number = std::get_if<double>(&cell)) one = *number;
        const Grid* const* grid = std::get_if<const Grid*>(&cell);
        if (grid != nullptr && (*grid)->rows() == 1 && (*grid)->columns() == 1) one = (*grid)->at(0, 0);
        if (const double* number = std::get_if<double>(&one); number != nullptr && *number != 0) {
            if (!std::isfinite(*number)) refuse_value("the number is not finite");
            return {exact_text(*number)};
        }
        return {read_text(cell, [] { return std::string("a name"); })};
    }
    static ValueType type() { return {.shape = Shape::text}; }
    static Reading reading(const Name& value) { return {value.text, {}}; }
};

namespace {

std::string text_in(const Grid& grid, std::size_t row, std::size_t column) {
    const Scalar scalar = grid.at(row, column);
    if (const double* number = std::get_if<double>(&scalar)) return exact_text(*number);
    const auto* text = std::get_if<std::u16string_view>(&scalar);
    return text == nullptr ? std::string() : fold_spelling(to_utf8(text->substr(0, 200)));
}

bool is_same(const std::string& a, const std::string& b) {
    return lower_case(a) == lower_case(b);
}

/// A heading without the unit in brackets behind it.
std::string without_bracket(const std::string& heading) {
    const std::size_t bracket = heading.find_last_of("([");
    const bool ends = heading.ends_with(")") || heading.ends_with("]");
    return ends && bracket != std::string::npos ? trimmed(heading.substr(0, bracket)) : heading;
}

std::optional<Unit> unit_in(const std::string& text) {
    try {
        return text.empty() ? std::nullopt : std::optional(parse_unit(text));
    } catch (const Refused&) {
        return std::nullopt;
    }
}

std::optional<Unit> unit_behind(const std::string& heading) {
    const std::size_t bracket = heading.find_last_of("([");
    if (bracket == std::string::npos || !(heading.ends_with(")") || heading.ends_with("]")))
        return std::nullopt;
    return unit_in(heading.substr(bracket + 1, heading.size() - bracket - 2));
}

/// Whether the row below the headings holds units and nothing else, but for its first cell.
bool is_unit_row(const Grid& grid) {
    bool any = false;
    for (std::size_t c = 1; c < grid.columns(); ++c) {
        const std::string text = text_in(grid, 1, c);
        if (text.empty()) continue;
        if (std::holds_alternative<double>(grid.at(1, c)) || !unit_in(text)) return false;
        any = true;
    }
    return any;
}

}  // namespace

template <>
struct Slot<ThingTable> {
    static ThingTable read(const Cell& cell, const Terms&) {
        const Grid* const* given = std::get_if<const Grid*>(&cell);
        if (std::holds_alternative<std::monostate>(cell)) refuse_blank("is left out; a table is wanted");
        if (given == nullptr || (*given)->rows() < 2 || (*given)->columns() < 2)
            refuse_value(shown_as_given(cell) +
                         " is no table: headings in the first row, names in the first column are wanted");
        const Grid& grid = **given;
        const bool has_units = is_unit_row(grid);
        ThingTable table{&grid, has_units ? 2U : 1U, {}};
        for (std::size_t c = 0; c < grid.columns(); ++c) {
            const std::optional<Unit> below = has_units ? unit_in(text_in(grid, 1, c)) : std::nullopt;
            table.units.push_back(below ? below : unit_behind(text_in(grid, 0, c)));
        }
        return table;
    }
    static ValueType type() { return {.shape = Shape::things}; }
    static Reading reading(const ThingTable& table) {
        return {"table of " + std::to_string(table.grid->rows() - table.first_row) + " rows", {}};
    }
};

namespace {

/// The only one of the places from `first` to `end` that fits.
template <class Fits, class Told>
std::size_t only_one(std::size_t first, std::size_t end, const Fits& fits, const std::string& what,
                     const Told& told) {
    std::optional<std::size_t> found;
    for (std::size_t i = first; i < end; ++i) {
        if (!fits(i)) continue;
        if (found)
            refuse_value(what + " stands in the table twice, as number " + std::to_string(*found + 1) +
                         " and " + std::to_string(i + 1));
        found = i;
    }
    if (found) return *found;
    std::vector<std::string> there;
    constexpr std::size_t most_told = 8;
    for (std::size_t i = first; i < end && there.size() < most_told; ++i)
        if (const std::string text = told(i); !text.empty()) there.push_back(text);
    if (there.empty()) no_answer(what + " is not in the table, which has none");
    no_answer(what + " is not in the table; there are " + joined(there) +
              (end - first > most_told ? " and more" : ""));
}

std::string quoted(const Name& name) {
    constexpr std::size_t longest = 60;
    return "'" + (name.text.size() > longest ? name.text.substr(0, longest) + "..." : name.text) + "'";
}

Quantity picked(const ThingTable& table, const Name& key, const Name& column) {
    const Grid& grid = *table.grid;
    const std::size_t row = only_one(
        table.first_row, grid.rows(), [&](std::size_t r) { return is_same(text_in(grid, r, 0), key.text); },
        "key: " + quoted(key), [&](std::size_t r) { return text_in(grid, r, 0); });
    const std::size_t place = only_one(
        1, grid.columns(),
        [&](std::size_t c) {
            const std::string heading = text_in(grid, 0, c);
            return is_same(heading, column.text) || is_same(without_bracket(heading), column.text);
        },
        "column: " + quoted(column), [&](std::size_t c) { return text_in(grid, 0, c); });
    try {
        return read_quantity(grid.at(row, place), table.units[place]);
    } catch (const Refused& refused) {
        throw at_place(refused, row, place).at("table");
    }
}

}  // namespace

Function pick_entry() {
    return function("UC.PICK",
                    [](ThingTable table, Name key, Name column) { return picked(table, key, column); })
        .role(Role::picks)
        .says(
            "One figure of a table of things, such as a supplier's list, with its unit: the row by the name "
            "in "
            "the first column, the column by its heading")
        .related({"UC.LOOKUP", "UC.QUANTITY", "UC.BED.UNITS"})
        .also_called("look up in a supplier's table, data sheet, property of an item, catalogue figure")
        .equation("x = table(key, column)")
        .source("common practice")
        .takes(
            "table", "T",
            "Headings in the first row, units in the row below or in brackets behind the headings, names in "
            "the first column")
        .takes("key", "key", "The name of the row, in any case; each name stands once")
        .takes("column", "column", "The heading of the column, with or without its unit")
        .gives("x", "The figure")
        .example(
            "UC.PICK({\"unit\";\"span\";\"length\"|\"\";\"mm\";\"m\"|\"A\";1200;2.4|\"B\";900;2.2}; \"B\"; "
            "\"span\"; \"m\")",
            "0.9", "1e-12 rel", Origin::mathematics, "900 mm")
        .example("UC.PICK({\"unit\";\"span (mm)\"|\"A\";1200|\"B\";900}; \"a\"; \"span\"; \"m\")", "1.2",
                 "1e-12 rel", Origin::mathematics, "1200 mm, its unit behind the heading");
}

}  // namespace undercroft::addin
