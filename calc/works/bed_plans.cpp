#include "calc/works/bed_plans.hpp"

#include "calc/bed/bed.hpp"

namespace undercroft::calc {

namespace {

constexpr double most_row_numbers = 1e5;

}  // namespace

BedPlans::BedPlans(const ChamberKind& kind, const BedSpace& space, const Steps<Count>& rows,
                   const Steps<Count>& units)
    : kind_(kind), space_(space), units_(units) {
    const Count most = std::min<Count>(rows.to, std::max(rows_in(space.width), rows_in(space.length)));
    require((most - rows.from) / rows.step <= most_row_numbers, "more than ", amount(share(most_row_numbers)),
            " numbers of rows: check the units of the space and of the width over the feet");
    for (Count in_bed = rows.from; in_bed <= most; in_bed += rows.step) {
        const Length width = width_of(in_bed);
        Count in_row = zero;
        if (is_at_most(width, space.width)) in_row = units_in(space.length);
        if (is_at_most(width, space.length)) in_row = std::max<Count>(in_row, units_in(space.width));
        in_row = std::min<Count>(in_row, units.to);
        if (in_row < units.from) continue;
        fitting_.push_back({in_bed, in_row});
        size_ += whole_down((in_row - units.from) / units.step) + 1;
    }
}

Count BedPlans::rows_in(Length space) const {
    return bed_rows(space, kind_.over_feet, kind_.row_gap, space_.side_margin);
}

Count BedPlans::units_in(Length space) const {
    const Length for_row = space - 2.0 * space_.end_margin;
    if (for_row <= zero) return zero;
    return row_units(for_row, kind_.end_unit, kind_.middle_unit, kind_.joint_overlap);
}

Length BedPlans::width_of(Count rows) const {
    return bed_width(rows, kind_.over_feet, kind_.row_gap, space_.side_margin);
}

BedPlan BedPlans::plan(Count rows, Count units) const {
    const Length row = row_length(units, kind_.end_unit, kind_.middle_unit, kind_.joint_overlap);
    const Length length = bed_length(row, space_.end_margin);
    const Length width = width_of(rows);
    return {rows,
            units,
            length,
            width,
            number(rows) * row,
            number(rows) * units,
            bed_ports(rows, units, space_.port_interval),
            is_at_most(length, space_.length) && is_at_most(width, space_.width),
            is_at_most(length, space_.width) && is_at_most(width, space_.length)};
}

}  // namespace undercroft::calc
