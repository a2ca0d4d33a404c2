/// \file bed_plans.hpp
/// Beds of one kind of unit in plan that fit a space: rows, and units in a row.
#pragma once

#include <vector>

#include "calc/require.hpp"
#include "calc/works/bed_stack.hpp"

namespace undercroft::calc {

/// A range in equal steps: from, from + step, ... up to at most `to`.
template <class Q>
struct Steps {
    Q from;
    Q to;
    Q step;
};

/// How many values a range has. \throws Refused(domain) for a start below 0, a range of nothing, or a step
/// not above 0.
template <class Q>
[[nodiscard]] double values_of(const char* name, const Steps<Q>& range) {
    require_not_negative(name, range.from);
    require(is_finite(range.to) && is_at_least(range.to, range.from), name, ": a range from ",
            amount(range.from), " to ", amount(range.to), " is a range of nothing");
    require(range.step > zero && is_finite(range.step), name, ": ", shown("step", range.step),
            " must be above 0; for one value give it as from and to, with any step");
    return whole_down((range.to - range.from) / range.step) + 1;
}

template <class Q>
[[nodiscard]] Q value_of(const Steps<Q>& range, std::size_t i) {
    return range.from + static_cast<double>(i) * range.step;
}

/// Where a bed is to lie, its margins, and its ports.
struct BedSpace {
    Length length;
    Length width;
    Length side_margin;
    Length end_margin;
    Count port_interval;
};

/// A bed in plan.
struct BedPlan {
    Count rows;
    Count units;  ///< in a row
    Length length;
    Length width;
    Length chamber_length;
    Count all_units;
    Count ports;
    bool fits_along;   ///< with its rows along the length of the space
    bool fits_across;  ///< with its rows across it
};

/// All beds in plan of a kind that fit one way or the other, rows by rows and units by units.
class BedPlans {
public:
    /// \throws Refused as bed_rows and row_units.
    BedPlans(const ChamberKind& kind, const BedSpace& space, const Steps<Count>& rows,
             const Steps<Count>& units);

    [[nodiscard]] double size() const { return size_; }

    /// Calls `use` with each.
    template <class Use>
    void for_each(const Use& use) const {
        for (const RowsThatFit& fit : fitting_)
            for (Count units = units_.from; units <= fit.most_units; units += units_.step)
                use(plan(fit.rows, units));
    }

private:
    struct RowsThatFit {
        Count rows;
        Count most_units;
    };

    [[nodiscard]] Count rows_in(Length space) const;
    [[nodiscard]] Count units_in(Length space) const;
    [[nodiscard]] Length width_of(Count rows) const;
    [[nodiscard]] BedPlan plan(Count rows, Count units) const;

    ChamberKind kind_;
    BedSpace space_;
    Steps<Count> units_;
    std::vector<RowsThatFit> fitting_;
    double size_ = 0;
};

}  // namespace undercroft::calc
