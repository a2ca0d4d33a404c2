#include "calc/bed/drawing.hpp"

#include <cmath>
#include <numbers>

#include "calc/bed/bed.hpp"
#include "calc/require.hpp"
#include "calc/works/excavation.hpp"

namespace undercroft::calc {

namespace {

/// Draws in full size and hands out points on paper.
class Pen {
public:
    explicit Pen(Share scale) : scale_(number(scale)) { require_positive("scale", scale); }

    Pen& to(Length x, Length y) {
        outline_.emplace_back(x / scale_, y / scale_);
        return *this;
    }
    Pen& lift() {
        if (!outline_.empty()) outline_.emplace_back(std::nullopt, std::nullopt);
        return *this;
    }
    Pen& box(Length left, Length bottom, Length right, Length top) {
        return lift().to(left, bottom).to(right, bottom).to(right, top).to(left, top).to(left, bottom);
    }
    [[nodiscard]] Outline outline() const { return outline_; }

private:
    double scale_;
    Outline outline_;
};

/// Calls `draw(lower edge)` for each row, from one side of the plan to the other.
template <class Draw>
void for_rows(const RowPlan& plan, const Draw& draw) {
    const double rows = require_whole("rows", plan.rows, 1);
    require_positive("width", plan.width);
    require_not_negative("row gap", plan.row_gap);
    require(rows <= 1000, shown("rows", plan.rows), " must be at most 1000 to be drawn");
    Length edge = -bed_width(plan.rows, plan.width, plan.row_gap, zero) / 2.0;
    for (double row = 0; row < rows; ++row, edge += plan.width + plan.row_gap) draw(edge);
}

constexpr int points_of_arch = 16;

}  // namespace

Share drawing_scale(Length width, Length height, Length paper_width, Length paper_height) {
    require_positive("width", width);
    require_positive("height", height);
    require_positive("paper width", paper_width);
    require_positive("paper height", paper_height);
    const double least =
        std::max(static_cast<double>(width / paper_width), static_cast<double>(height / paper_height));
    const double decade = std::pow(10, std::floor(std::log10(least)));
    for (const double step : {1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 7.5, 10.0})
        if (step * decade >= least * (1 - whole_tolerance)) return share(step * decade);
    return share(10 * decade);
}

Outline drawn_pit(Length base_width, Length depth, Batter batter, bool closed, Share scale) {
    require_positive("base width", base_width);
    require_not_negative("depth", depth);
    const Length half = base_width / 2.0;
    const Length half_top = pit_side(base_width, depth, batter) / 2.0;
    Pen pen(scale);
    pen.to(-half_top, depth).to(-half, zero).to(half, zero).to(half_top, depth);
    if (closed) pen.to(-half_top, depth);
    return pen.outline();
}

Outline drawn_level(Length base_width, Batter batter, Length height, Length overhang, Share scale) {
    require_positive("base width", base_width);
    require_not_negative("overhang", overhang);
    const Length half = pit_side(base_width, std::max<Length>(height, zero), batter) / 2.0 + overhang;
    return Pen(scale).to(-half, height).to(half, height).outline();
}

Outline drawn_arches(const RowPlan& plan, const Arch& arch, Length base_height, Share scale) {
    require_arch(arch);
    require_not_negative("base height", base_height);
    Pen pen(scale);
    for_rows(plan, [&](Length edge) {
        const Length middle = edge + plan.width / 2.0;
        pen.lift();
        for (int i = 0; i <= points_of_arch; ++i) {
            // Up one side and down the other, closer together towards the crown, where the arch turns.
            const double up = std::sin(std::numbers::pi * i / points_of_arch);
            const Length half = arch_width(arch, up * arch.rise) / 2.0;
            pen.to(2 * i < points_of_arch ? middle - half : middle + half, base_height + up * arch.rise);
        }
    });
    return pen.outline();
}

Outline drawn_box(Length length, Length width, Share scale) {
    require_positive("length", length);
    require_positive("width", width);
    return Pen(scale).box(-length / 2.0, -width / 2.0, length / 2.0, width / 2.0).outline();
}

Outline drawn_rows(const RowPlan& plan, Length row_length, Share scale) {
    require_positive("row length", row_length);
    Pen pen(scale);
    for_rows(plan,
             [&](Length edge) { pen.box(-row_length / 2.0, edge, row_length / 2.0, edge + plan.width); });
    return pen.outline();
}

Outline drawn_ends(const RowPlan& plan, Length row_length, Length end_unit, Share scale) {
    require_positive("row length", row_length);
    require_positive("end unit", end_unit);
    require(is_at_most(2.0 * end_unit, row_length), shown("end unit", end_unit),
            " must be at most half of the row");
    Pen pen(scale);
    const Length x = row_length / 2.0 - end_unit;
    for_rows(plan, [&](Length edge) {
        pen.lift().to(-x, edge).to(-x, edge + plan.width);
        pen.lift().to(x, edge).to(x, edge + plan.width);
    });
    return pen.outline();
}

Outline drawn_ports(const RowPlan& plan, Count units, Count interval, Length end_unit, Length middle_unit,
                    Length joint_overlap, Share scale) {
    const double in_row = require_whole("units in row", units, 2);
    const Length length = row_length(units, end_unit, middle_unit, joint_overlap);
    const auto middle_of = [&](double unit) {  // units from 0
        if (unit == 0) return -length / 2.0 + end_unit / 2.0;
        if (unit == in_row - 1) return length / 2.0 - end_unit / 2.0;
        const Length start = end_unit - joint_overlap + (unit - 1) * (middle_unit - joint_overlap);
        return -length / 2.0 + start + middle_unit / 2.0;
    };
    const double spans = number(bed_ports(count(1), units, interval)) - 1;  // evenly spread
    Pen pen(scale);
    for_rows(plan, [&](Length edge) {
        const Length y = edge + plan.width / 2.0;
        for (double port = 0; port <= spans; ++port)
            pen.lift().to(middle_of(std::round(port * (in_row - 1) / spans)), y);
    });
    return pen.outline();
}

}  // namespace undercroft::calc
