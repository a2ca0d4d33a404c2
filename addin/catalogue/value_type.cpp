#include "addin/catalogue/value_type.hpp"

#include "addin/catalogue/choice.hpp"
#include "units/unit.hpp"

namespace undercroft::addin {

bool ValueType::is_plain() const {
    if (shape != Shape::quantity) return false;
    for (const Base ratio : {Base::count, Base::batter, Base::gradient})
        if (dimension == Dimension::of(ratio)) return true;
    return dimension.is_number();
}

bool ValueType::is_range() const {
    return shape == Shape::table || shape == Shape::grid || shape == Shape::figures ||
           shape == Shape::things || shape == Shape::pasted;
}

ValueType quantity_type(const Dimension& dimension) {
    ValueType type;
    type.shape = Shape::quantity;
    type.dimension = dimension;
    return type;
}

namespace {

std::string list_text(const ValueType& type) {
    return std::string(type.list) + ": " + listed(type.words);
}

std::string table_text(const ValueType& table) {
    std::string text;
    for (const ValueType& column : table.columns) {
        text += text.empty() ? "a table of " : ", ";
        text += column.shape == Shape::choice ? std::string(column.list) : kind_text(column);
    }
    if (!table.also_from.empty()) text += ", or the columns of " + std::string(table.also_from);
    return text.empty() ? "a table" : text;
}

std::string column_units(const ValueType& table) {
    std::string text;
    for (const ValueType& column : table.columns) {
        const std::string unit = bare_unit_text(column);
        text += (text.empty() ? "" : "; ") + (unit.empty() ? std::string("-") : unit);
    }
    return text;
}

}  // namespace

std::string kind_text(const ValueType& type) {
    switch (type.shape) {
        case Shape::quantity:
            return name_of(type.dimension);
        case Shape::any_quantity:
            return "a quantity";
        case Shape::percentage:
            return "a percentage";
        case Shape::choice:
            return list_text(type) +
                   (type.otherwise.empty() ? "" : ", or " + kind_text(type.otherwise.front()));
        case Shape::words:
            return "one or more of " + std::string(type.list);
        case Shape::truth:
            return "TRUE or FALSE";
        case Shape::verdict:
            return "TRUE or FALSE (1 or 0)";
        case Shape::text:
            return "a text";
        case Shape::unit:
            return "a unit";
        case Shape::units:
            return "units";
        case Shape::height:
            return "a count";
        case Shape::table:
        case Shape::rows:
            return table_text(type);
        case Shape::grid:
            return "a grid of cells, each " + name_of(type.dimension);
        case Shape::things:
            return "a table with headings in its first row and names in its first column";
        case Shape::figures:
            return "a column of figures, its unit in the first row, or two columns, number and unit";
        case Shape::pasted:
            return "a range as it was pasted";
        case Shape::date:
            return "a date";
        case Shape::cell:
            return "a cell";
    }
    return {};
}

std::string bare_unit_text(const ValueType& type) {
    switch (type.shape) {
        case Shape::quantity:
        case Shape::grid:
            return default_unit_text(type.dimension);
        case Shape::percentage:
            return "%";
        case Shape::table:
            return column_units(type);
        default:
            return {};
    }
}

}  // namespace undercroft::addin
