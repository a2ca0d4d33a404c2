#include "calc/bed/bed.hpp"

#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

void require_units(Length end_unit, Length middle_unit, Length joint_overlap) {
    require_positive("end unit", end_unit);
    require_positive("middle unit", middle_unit);
    require_not_negative("joint overlap", joint_overlap);
    require(joint_overlap < std::min(end_unit, middle_unit), shown("joint overlap", joint_overlap),
            " must be shorter than a unit");
}

}  // namespace

Count row_units(Length available_length, Length end_unit, Length middle_unit, Length joint_overlap) {
    require_positive("available length", available_length);
    require_units(end_unit, middle_unit, joint_overlap);
    const Length for_middle_units = available_length - 2.0 * end_unit + joint_overlap;
    const double middle_units = whole_down(for_middle_units / (middle_unit - joint_overlap));
    return count(middle_units < 0 ? 0 : 2 + middle_units);
}

Length row_length(Count units, Length end_unit, Length middle_unit, Length joint_overlap) {
    const double n = require_whole("units", units, 2);
    require_units(end_unit, middle_unit, joint_overlap);
    return 2.0 * end_unit + (n - 2) * middle_unit - (n - 1) * joint_overlap;
}

Count bed_rows(Length available_width, Length span, Length row_gap, Length side_margin) {
    require_positive("available width", available_width);
    require_positive("span", span);
    require_not_negative("row gap", row_gap);
    require_not_negative("side margin", side_margin);
    const double rows = whole_down((available_width - 2.0 * side_margin + row_gap) / (span + row_gap));
    return count(std::max(rows, 0.0));
}

Length bed_width(Count rows, Length span, Length row_gap, Length side_margin) {
    const double n = require_whole("rows", rows, 1);
    require_positive("span", span);
    require_not_negative("row gap", row_gap);
    require_not_negative("side margin", side_margin);
    return n * span + (n - 1) * row_gap + 2.0 * side_margin;
}

Length bed_length(Length row_length, Length end_margin) {
    require_positive("row length", row_length);
    require_not_negative("end margin", end_margin);
    return row_length + 2.0 * end_margin;
}

Count bed_ports(Count rows, Count units, Count interval) {
    const double row_count = require_whole("rows", rows, 1);
    const double units_in_row = require_whole("units", units, 1);
    const double every = require_whole("interval", interval);
    const double spaces = units_in_row - 1;
    const double spans = every == 0 ? std::min(spaces, 1.0) : whole_up(spaces / every);
    return count(row_count * (spans + 1));
}

}  // namespace undercroft::calc
