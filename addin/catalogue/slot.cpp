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

Quantity read_quantity(const Cell& cell) {
    if (const double* number = std::get_if<double>(&cell)) return Quantity::bare(finite(*number));
    if (const Grid* const* grid = std::get_if<const Grid*>(&cell)) {
        const Grid& range = **grid;
        if (range.rows() == 1 && range.columns() == 2) return read_pair(range.at(0, 0), range.at(0, 1));
        if (range.rows() == 1 && range.columns() == 1) return read_quantity(range.at(0, 0), std::nullopt);
        refuse_value("a " + shown_as_given(cell) +
                     " is no quantity: give one number, a text such as \"305 mm\", or a number and its unit "
                     "side by side");
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
    refuse_value(shown_as_given(cell) + " is no text; " + wanted() +
                 " is wanted (a blank cell arrives as 0)");
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
            units[c] = remembered_unit(*text);
            any_unit = true;
        } catch (const Refused& refused) {
            if (!wrong) wrong = "row 1, column " + std::to_string(c + 1) + ": " + refused.what();
        }
    }
    if (any_unit && wrong)
        refuse_value(*wrong + " (the first row holds the units; leave headings out of the range)");
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
    if (given == nullptr)
        refuse_value((std::holds_alternative<std::monostate>(cell) ? std::string("is left out")
                                                                   : shown_as_given(cell) + " is no table") +
                     "; a range of cells is wanted");
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

Amounts Slot<Amounts>::read(const Cell& cell, const Terms&) {
    const Grid* const* given = std::get_if<const Grid*>(&cell);
    if (given == nullptr || (*given)->columns() != 2)
        refuse_value(shown_as_given(cell) + " is no range of two columns, number and unit");
    const Grid& grid = **given;
    Amounts amounts;
    for (std::size_t r = 0; r < grid.rows(); ++r) {
        const Scalar number = grid.at(r, 0);
        if (is_blank(number)) {  // a row without a number adds nothing, whatever stands in its unit cell
            continue;
        }
        try {
            amounts.rows.push_back(read_pair(number, grid.at(r, 1)));
        } catch (const Refused& refused) {
            throw refused.at("row " + std::to_string(r + 1));
        }
    }
    return amounts;
}

Figures Slot<Figures>::read(const Cell& cell, const Terms& terms) {
    const Grid* const* given = std::get_if<const Grid*>(&cell);
    if (given == nullptr) refuse_value(shown_as_given(cell) + " is no range of figures");
    if ((*given)->columns() == 2) return {Slot<Amounts>::read(cell, terms).rows};
    const OpenTable table = open_table(cell, 1, 1);
    Figures figures;
    for (std::size_t r = table.first_row; r < table.end_row; ++r) {
        const Scalar scalar = table.grid->at(r, 0);
        if (is_blank(scalar)) continue;
        try {
            figures.rows.push_back(read_quantity(scalar, table.units[0]));
        } catch (const Refused& refused) {
            throw refused.at("row " + std::to_string(r + 1));
        }
    }
    return figures;
}

}  // namespace undercroft::addin
