#include "addin/catalogue/slot.hpp"

#include <algorithm>
#include <cmath>

#include "units/text.hpp"
#include "units/unit_memory.hpp"

namespace undercroft::addin {

bool is_blank(const Scalar& scalar) {
    const auto* text = std::get_if<std::u16string_view>(&scalar);
    return std::holds_alternative<std::monostate>(scalar) || (text != nullptr && text->empty());
}

bool holds_nothing(const Cell& cell) {
    if (const auto* text = std::get_if<std::u16string_view>(&cell)) return text->empty();
    if (const Grid* const* grid = std::get_if<const Grid*>(&cell))
        return (*grid)->rows() == 1 && (*grid)->columns() <= 2 && is_blank((*grid)->at(0, 0));
    return std::holds_alternative<std::monostate>(cell);
}

namespace {

double finite(double number) {
    if (!std::isfinite(number)) refuse_value("the number is not finite");
    return number;
}

}  // namespace

Quantity read_pair(const Scalar& number, const Scalar& unit) {
    if (is_blank(number)) refuse_blank("the cell of the number is blank");
    const double* value = std::get_if<double>(&number);
    if (value == nullptr) refuse_value("'" + shown_as_given(number) + "' is text where a number is wanted");
    if (is_blank(unit)) refuse_blank("the number " + exact_text(*value) + " has a blank unit cell");
    // The unit of a pure number: picked from a list, Calc makes a number of it.
    if (const double* one = std::get_if<double>(&unit); one != nullptr && *one == 1)
        return Quantity::of(finite(*value), Unit{});
    const auto* unit_text = std::get_if<std::u16string_view>(&unit);
    if (unit_text == nullptr)
        refuse_value("a unit is wanted beside the number " + exact_text(*value) +
                     ", but the cell holds the number " + shown_as_given(unit));
    const Quantity quantity = Quantity::of(finite(*value), remembered_unit(*unit_text));
    if (!std::isfinite(quantity.value))
        refuse_value(shown_as_given(number) + " " + shown_as_given(unit) + " is too large");
    return quantity;
}

Quantity read_quantity(const Scalar& scalar, const std::optional<Unit>& column_unit) {
    if (is_blank(scalar)) refuse_blank("the cell is blank");
    if (const double* number = std::get_if<double>(&scalar))
        return column_unit ? Quantity::of(finite(*number), *column_unit) : Quantity::bare(finite(*number));
    return remembered_quantity(std::get<std::u16string_view>(scalar));
}

namespace {

/// Cells that are neither a number nor a number and its unit: how that comes about, and what to do.
[[noreturn]] void refuse_range(const Grid& range, const Cell& cell) {
    const std::string what = "a " + shown_as_given(cell) + " is no quantity: ";
    const Scalar last = range.at(0, range.columns() - 1);
    const bool parted = range.rows() == 1 && range.columns() == 3 &&
                        std::holds_alternative<double>(range.at(0, 0)) &&
                        std::holds_alternative<std::u16string_view>(last);
    if (parted)
        refuse_value(what + "was a column inserted between the number and its unit, " + shown_as_given(last) +
                     "? They must stand side by side");
    if (range.rows() > 1 && range.columns() <= 2)
        refuse_value(what +
                     "one number is wanted, its unit side by side with it; for a column of them write the "
                     "formula in the first row, not as an array, and copy it down");
    refuse_value(what + "give one number, a text such as \"305 mm\", or a number and its unit side by side");
}

}  // namespace

Quantity read_quantity(const Cell& cell) {
    if (const double* number = std::get_if<double>(&cell)) return Quantity::bare(finite(*number));
    if (const Grid* const* grid = std::get_if<const Grid*>(&cell)) {
        const Grid& range = **grid;
        if (range.rows() == 1 && range.columns() == 2) return read_pair(range.at(0, 0), range.at(0, 1));
        if (range.rows() == 1 && range.columns() == 1) return read_quantity(range.at(0, 0), std::nullopt);
        refuse_range(range, cell);
    }
    if (const auto* text = std::get_if<std::u16string_view>(&cell)) return remembered_quantity(*text);
    refuse_blank("is left out");
}

Reading reading_of(const Quantity& quantity) {
    if (quantity.form == Quantity::Form::bare) return {quantity.value, {}};
    return {quantity.value, si_unit_text(quantity.dimension)};
}

namespace {

/// A range of one cell is as good as the cell.
Cell unwrapped(const Cell& cell) {
    const Grid* const* grid = std::get_if<const Grid*>(&cell);
    if (grid == nullptr || (*grid)->rows() != 1 || (*grid)->columns() != 1) return cell;
    return std::visit([](const auto& held) { return Cell(held); }, (*grid)->at(0, 0));
}

}  // namespace

std::string read_text(const Cell& cell, std::string (*wanted)()) {
    const Cell one = unwrapped(cell);
    if (const auto* text = std::get_if<std::u16string_view>(&one)) {
        const std::string folded = fold_spelling(to_utf8(text->substr(0, 1000)));
        if (!folded.empty()) return folded;
        refuse_value("the text is empty; " + wanted() + " is wanted");
    }
    if (std::holds_alternative<std::monostate>(cell)) refuse_blank("is left out; " + wanted() + " is wanted");
    if (const double* number = std::get_if<double>(&one); number == nullptr || *number == 0)
        refuse_blank(shown_as_given(one) + " is no text; " + wanted() +
                     " is wanted (a blank cell arrives as 0)");
    refuse_value(shown_as_given(one) + " is no text; " + wanted() + " is wanted");
}

Unit Slot<Unit>::read(const Cell& cell, const Terms&) {
    if (const auto* text = std::get_if<std::u16string_view>(&cell)) return remembered_unit(*text);
    return parse_unit(read_text(cell, [] { return std::string("a unit such as m3"); }));
}

void refuse_choice(const std::string& text, std::string_view kind, const std::string& choices) {
    refuse_value("'" + text.substr(0, 60) + "' is not " + std::string(kind) + ": write " + choices);
}

bool Slot<bool>::read(const Cell& cell, const Terms& terms) {
    const Cell one = unwrapped(cell);
    if (const double* number = std::get_if<double>(&one);
        number != nullptr && *number == 0 && terms.limits != nullptr && !terms.limits->bare_none)
        refuse_blank("FALSE arrives as a blank cell does, as 0: write \"no\" where it is meant");
    if (const double* number = std::get_if<double>(&one); number != nullptr && (*number == 0 || *number == 1))
        return *number == 1;
    if (const auto* text = std::get_if<std::u16string_view>(&one)) {
        const std::string word = lower_case(fold_spelling(to_utf8(text->substr(0, 100))));
        if (word == "true" || word == "yes") return true;
        if (word == "false" || word == "no") return false;
    }
    refuse_value(shown_as_given(cell) + " is neither TRUE nor FALSE");
}

bool holds_word(const Cell& cell) {
    const Cell one = unwrapped(cell);
    const auto* text = std::get_if<std::u16string_view>(&one);
    return text != nullptr && !text->empty() && !(text->front() >= u'0' && text->front() <= u'9') &&
           text->front() != u'.' && text->front() != u'-' && text->front() != u'+';
}

namespace {

bool row_is_blank(const Grid& grid, std::size_t row) {
    for (std::size_t c = 0; c < grid.columns(); ++c)
        if (!is_blank(grid.at(row, c))) return false;
    return true;
}

/// Text that starts a number: "150 mm" in a table is a value, "mm" is a unit.
bool starts_number(std::u16string_view text) {
    while (!text.empty() &&
           (text.front() == u' ' || text.front() == u'-' || text.front() == u'+' || text.front() == u'.'))
        text.remove_prefix(1);
    if (text.empty() || text.front() < u'0' || text.front() > u'9') return false;
    return text != u"1";  // the unit of a pure number
}

/// What stands in brackets at the end of a heading: "Duration (min)", "Flow [L/s]".
std::u16string_view bracketed(std::u16string_view head) {
    while (!head.empty() && head.back() == u' ') head.remove_suffix(1);
    const char16_t opening = head.ends_with(u']') ? u'[' : u'(';
    if (!head.ends_with(u']') && !head.ends_with(u')')) return {};
    const std::size_t begin = head.rfind(opening);
    if (begin == 0 || begin == std::u16string_view::npos || head[begin - 1] != u' ') return {};
    return head.substr(begin + 1, head.size() - begin - 2);
}

/// A unit that stands in the first row by itself or in brackets behind a heading. "t (min)" is a time in
/// minutes, and no tonnes times minutes.
Unit unit_of_head(std::u16string_view head) {
    const std::u16string_view inside = bracketed(head);
    if (inside.empty()) return remembered_unit(head);
    try {
        return remembered_unit(inside);
    } catch (const Refused& refused) {
        try {
            return remembered_unit(head);
        } catch (const Refused&) {
            throw refused;  // what stands in the brackets is meant as the unit
        }
    }
}

/// Units of the first row, when it is a row of unit texts. A row that has no number, and in which at least
/// one text is a unit, is a unit row: what is no unit in it is refused.
std::optional<std::vector<std::optional<Unit>>> unit_row(const Grid& grid) {
    std::vector<std::optional<Unit>> units(grid.columns());
    bool any_unit = false;
    std::optional<std::string> wrong;
    for (std::size_t c = 0; c < grid.columns(); ++c) {
        const Scalar scalar = grid.at(0, c);
        if (is_blank(scalar)) continue;
        const auto* text = std::get_if<std::u16string_view>(&scalar);
        if (text == nullptr || starts_number(*text)) return std::nullopt;
        try {
            units[c] = unit_of_head(*text);
            any_unit = true;
        } catch (const Refused& refused) {
            if (!wrong) wrong = "row 1, column " + std::to_string(c + 1) + ": " + refused.what();
        }
    }
    if (any_unit && wrong)
        refuse_value(*wrong +
                     " (the first row holds the units, by themselves or in brackets behind a heading)");
    if (!any_unit) return std::nullopt;
    return units;
}

}  // namespace

Quantity OpenTable::quantity(std::size_t row, std::size_t column) const {
    if (!paired.empty() && paired[column])
        return read_pair(at(row, column), grid->at(row, place(column) + 1));
    return read_quantity(at(row, column), units[column]);
}

bool OpenTable::is_unused(std::size_t row) const {
    if (places.empty()) return false;
    return std::all_of(places.begin(), places.end(),
                       [&](std::size_t place) { return is_blank(grid->at(row, place)); });
}

namespace {

[[noreturn]] void refuse_no_range(const Cell& cell, const std::string& wanted) {
    constexpr const char* range = "; a range of cells is wanted";
    if (std::holds_alternative<std::monostate>(cell)) refuse_blank(std::string("is left out") + range);
    refuse_value(shown_as_given(cell) + " is no " + wanted + range);
}

/// Columns of a table with a unit beside each quantity.
std::size_t paired_width(const std::vector<bool>& has_unit) {
    return has_unit.size() + static_cast<std::size_t>(std::count(has_unit.begin(), has_unit.end(), true));
}

OpenTable paired_table(const Grid& grid, const std::vector<bool>& has_unit) {
    OpenTable table{&grid, 0, grid.rows(), std::vector<std::optional<Unit>>(has_unit.size()), {}, has_unit};
    std::size_t place = 0;
    for (const bool with_unit : has_unit) {
        table.places.push_back(place);
        place += with_unit ? 2 : 1;
    }
    return table;
}

}  // namespace

OpenTable open_table(const Cell& cell, std::size_t least, std::size_t most,
                     const std::vector<bool>& has_unit) {
    const Grid* const* given = std::get_if<const Grid*>(&cell);
    if (given == nullptr) refuse_no_range(cell, "table");
    const Grid& grid = **given;
    const std::size_t wide = paired_width(has_unit);
    if (wide > most && grid.columns() == wide) {
        const OpenTable table = paired_table(grid, has_unit);
        for (std::size_t r = 0; r < grid.rows(); ++r)
            if (!table.is_unused(r)) return table;
        refuse_value("the table is blank");
    }
    if (grid.columns() < least || grid.columns() > most)
        refuse_value(
            "the table has " + std::to_string(grid.columns()) + " columns; " +
            (least == most ? std::to_string(most) : std::to_string(least) + " to " + std::to_string(most)) +
            " are wanted" +
            (wide > most ? ", or " + std::to_string(wide) + " with a unit beside each quantity" : ""));
    OpenTable table{&grid, 0, grid.rows(), std::vector<std::optional<Unit>>(grid.columns()), {}, {}};
    while (table.end_row > 0 && row_is_blank(grid, table.end_row - 1)) --table.end_row;
    if (table.end_row == 0) refuse_value("the table is blank");
    if (auto units = unit_row(grid)) {
        table.units = std::move(*units);
        table.first_row = 1;
    }
    table.units.resize(std::max(grid.columns(), std::min<std::size_t>(most, 64)));
    return table;
}

Refused at_place(const Refused& refused, std::size_t row, std::size_t column) {
    return refused.at("row " + std::to_string(row + 1) + ", column " + std::to_string(column + 1));
}

namespace {

/// Refuses a figure of another kind than the first, with what stands in the rows of both.
void require_alike(const Quantity& figure, const Quantity& first, std::size_t first_row) {
    if (figure.form == Quantity::Form::bare || first.form == Quantity::Form::bare) return;  // calc says more
    try {
        (void)in_dimension(figure, first.dimension);
    } catch (const Refused& refused) {
        throw refused.saying(text_of(figure) + " " + refused.what() + "; row " +
                             std::to_string(first_row + 1) + " holds " + text_of(first));
    }
}

/// The figures of a range; rows without a number add nothing, whatever stands in their unit cells.
std::vector<Quantity> read_figures(const Cell& cell, bool must_be_alike) {
    const Grid* const* given = std::get_if<const Grid*>(&cell);
    if (given == nullptr) refuse_no_range(cell, "range of figures");
    const bool with_units = (*given)->columns() == 2;
    const OpenTable table =
        with_units ? OpenTable{*given, 0, (*given)->rows(), {}, {}, {}} : open_table(cell, 1, 1);
    std::vector<Quantity> figures;
    std::size_t first_row = 0;
    for (std::size_t r = table.first_row; r < table.end_row; ++r) {
        const Scalar scalar = table.grid->at(r, 0);
        if (is_blank(scalar)) continue;
        try {
            figures.push_back(with_units ? read_pair(scalar, table.grid->at(r, 1))
                                         : read_quantity(scalar, table.units[0]));
            if (figures.size() == 1) first_row = r;
            if (must_be_alike) require_alike(figures.back(), figures.front(), first_row);
        } catch (const Refused& refused) {
            throw refused.at("row " + std::to_string(r + 1));
        }
    }
    return figures;
}

}  // namespace

Figures Slot<Figures>::read(const Cell& cell, const Terms&) {
    return {read_figures(cell, true)};
}

Factors Slot<Factors>::read(const Cell& cell, const Terms&) {
    return {read_figures(cell, false)};
}

}  // namespace undercroft::addin
