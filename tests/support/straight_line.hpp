/// \file straight_line.hpp
/// GSL's linear interpolation, as an independent reference for tables.
#pragma once

#include <gsl/gsl_interp.h>

#include <vector>

namespace undercroft::tests {

/// The line through the points, x strictly rising.
class StraightLine {
public:
    StraightLine(std::vector<double> x, std::vector<double> y)
        : x_(std::move(x)), y_(std::move(y)), line_(gsl_interp_alloc(gsl_interp_linear, x_.size())) {
        gsl_interp_init(line_, x_.data(), y_.data(), x_.size());
    }
    ~StraightLine() { gsl_interp_free(line_); }
    StraightLine(const StraightLine&) = delete;
    StraightLine& operator=(const StraightLine&) = delete;

    double operator()(double at) const { return gsl_interp_eval(line_, x_.data(), y_.data(), at, nullptr); }

private:
    std::vector<double> x_;
    std::vector<double> y_;
    gsl_interp* line_;
};

}  // namespace undercroft::tests
