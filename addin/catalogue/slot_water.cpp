#include "addin/catalogue/slot_water.hpp"

namespace undercroft::addin {

namespace {

/// Where a value of an outlet stands, and its unit when that has a column of its own.
struct Spot {
    std::size_t value;
    std::size_t unit = 0;
};

/// The columns of an outlet table in one of its two shapes.
struct OutletShape {
    Spot level;
    Spot size;
    Spot coefficient;
    Spot count;
    Spot sides;
};
constexpr OutletShape plain = {{1}, {2}, {3}, {4}, {5}};
constexpr OutletShape paired = {{1, 2}, {3, 4}, {5, 6}, {7}, {8, 9}};

std::optional<Quantity> read_spot(const OpenTable& table, std::size_t row, Spot spot) {
    if (spot.value >= table.grid->columns()) return std::nullopt;
    const Scalar value = table.grid->at(row, spot.value);
    if (is_blank(value)) return std::nullopt;
    try {
        if (spot.unit != 0) return read_pair(value, table.grid->at(row, spot.unit));
        return read_quantity(value, table.units[spot.value]);
    } catch (const Refused& refused) {
        throw at_place(refused, row, spot.value);
    }
}

template <class Q>
Q as_column(const std::optional<Quantity>& value, const char* name, std::size_t row, Spot spot) {
    try {
        if (!value) refuse_value("the cell of the " + std::string(name) + " is blank");
        return as<Q>(*value);
    } catch (const Refused& refused) {
        throw at_place(refused, row, spot.value);
    }
}

calc::OutletKind read_kind(const OpenTable& table, std::size_t row) {
    try {
        return ColumnSlot<calc::OutletKind>::read(table, row, 0);
    } catch (const Refused& refused) {
        throw at_place(refused, row, 0);
    }
}

/// A row in which only units stand.
bool is_unused(const OpenTable& table, std::size_t row, const OutletShape& shape) {
    const auto blank = [&](std::size_t column) {
        return column >= table.grid->columns() || is_blank(table.grid->at(row, column));
    };
    return blank(0) && blank(shape.level.value) && blank(shape.size.value) &&
           blank(shape.coefficient.value) && blank(shape.count.value) && blank(shape.sides.value);
}

}  // namespace

calc::StorageTable Slot<calc::StorageTable>::read(const Cell& cell) {
    if (const Grid* const* grid = std::get_if<const Grid*>(&cell);
        grid != nullptr && (*grid)->columns() == 5) {
        calc::StorageTable table;
        for (const auto& [depth, chambers, stone, total, area] :
             Slot<calc::Table<Length, Volume, Volume, Volume, Area>>::read(cell))
            table.rows.emplace_back(depth, total);
        return table;
    }
    return {Slot<calc::Table<Length, Volume>>::read(cell)};
}

calc::OutletTable Slot<calc::OutletTable>::read(const Cell& cell) {
    const OpenTable table = open_table(cell, 3, 10);
    const std::size_t columns = table.grid->columns();
    if (columns > 6 && columns != 10)
        refuse_value("the table has " + std::to_string(columns) +
                     " columns; 3 to 6 are wanted, or 10 with a unit beside each of level, size, "
                     "coefficient and sides");
    const OutletShape& shape = columns == 10 ? paired : plain;
    calc::OutletTable outlets;
    for (std::size_t r = table.first_row; r < table.end_row; ++r) {
        if (is_unused(table, r, shape)) continue;
        const calc::OutletKind kind = read_kind(table, r);
        const auto level = as_column<Length>(read_spot(table, r, shape.level), "level", r, shape.level);
        const auto size = as_column<Quantity>(read_spot(table, r, shape.size), "size", r, shape.size);
        const std::optional<Quantity> count = read_spot(table, r, shape.count);
        outlets.emplace_back(
            kind, level, size, read_spot(table, r, shape.coefficient),
            count ? std::optional(as_column<Count>(count, "count", r, shape.count)) : std::nullopt,
            read_spot(table, r, shape.sides));
    }
    if (outlets.empty()) refuse_value("the table has no row of values");
    return outlets;
}

}  // namespace undercroft::addin
