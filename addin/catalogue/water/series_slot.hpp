/// \file series_slot.hpp
/// One quantity after the other: days of rain, a demand, the sizes that there are.
#pragma once

#include <chrono>

#include "addin/catalogue/slot.hpp"

namespace undercroft::addin {

/// A column of quantities, its unit in the first row or beside each; or one quantity.
template <class Q>
struct Series {
    std::vector<Q> values;
};

template <class Q>
struct Slot<Series<Q>> {
    static Series<Q> read(const Cell& cell, const Terms& terms) {
        const Grid* const* grid = std::get_if<const Grid*>(&cell);
        const bool is_one = grid == nullptr || ((*grid)->rows() == 1 && (*grid)->columns() <= 2);
        if (is_one) {
            if (const double* number = std::get_if<double>(&cell); number != nullptr && *number == 0)
                throw Refused(Cause::domain,
                              "0 has no unit; a blank cell arrives as 0: where none is meant, write its unit",
                              Refusal::blank);
            return {{Slot<Q>::read(cell, terms)}};
        }
        const OpenTable table = open_table(cell, 1, 1, {true});
        Series<Q> series;
        series.values.reserve(table.end_row - table.first_row);
        for (std::size_t r = table.first_row; r < table.end_row; ++r) {
            if (table.is_unused(r)) continue;
            try {
                series.values.push_back(ColumnSlot<Q>::read(table, r, 0, terms));
            } catch (const Refused& refused) {
                throw at_place(refused, r, 0);
            }
        }
        if (series.values.empty()) refuse_value("the range has no row of values");
        return series;
    }
    static ValueType type() { return {.shape = Shape::grid, .dimension = Slot<Q>::dimension()}; }
    static Reading reading(const Series<Q>& series) {
        if (series.values.size() == 1) return Slot<Q>::reading(series.values.front());
        return {"column of " + std::to_string(series.values.size()), {}};
    }
};

}  // namespace undercroft::addin
