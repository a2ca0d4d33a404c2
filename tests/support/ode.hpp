/// \file ode.hpp
/// GSL's integrator of ordinary differential equations (Runge-Kutta Prince-Dormand 8-9), as an independent
/// reference for routing, emptying and soakage.
#pragma once

#include <gsl/gsl_errno.h>
#include <gsl/gsl_odeiv2.h>

#include "tests/support/catch.hpp"

namespace undercroft::tests {

/// One unknown that changes by `slope(t, y)`; it is followed from one time to the next, so that kinks of the
/// slope can be stepped on.
template <class F>
class Ode {
public:
    Ode(const F& slope, double start, double from, double relative = 1e-11)
        : slope_(slope),
          system_{call, nullptr, 1, this},
          driver_(gsl_odeiv2_driver_alloc_y_new(&system_, gsl_odeiv2_step_rk8pd, 1e-3, 1e-12, relative)),
          time_(from),
          value_(start) {}
    Ode(const Ode&) = delete;
    Ode& operator=(const Ode&) = delete;
    ~Ode() { gsl_odeiv2_driver_free(driver_); }

    double at(double time) {
        if (time > time_) {
            gsl_odeiv2_driver_reset(driver_);
            const int status = gsl_odeiv2_driver_apply(driver_, &time_, time, &value_);
            REQUIRE(status == GSL_SUCCESS);
        }
        return value_;
    }

private:
    static int call(double t, const double* y, double* slope, void* self) {
        slope[0] = static_cast<const Ode*>(self)->slope_(t, y[0]);
        return GSL_SUCCESS;
    }

    F slope_;
    gsl_odeiv2_system system_;
    gsl_odeiv2_driver* driver_;
    double time_;
    double value_;
};

}  // namespace undercroft::tests
