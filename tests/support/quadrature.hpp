/// \file quadrature.hpp
/// GSL's adaptive quadrature (QAGS), as an independent reference for closed forms.
#pragma once

#include <gsl/gsl_integration.h>

#include "tests/support/catch.hpp"

namespace undercroft::tests {

template <class F>
double integral(const F& f, double from, double to, double relative = 1e-11) {
    gsl_integration_workspace* workspace = gsl_integration_workspace_alloc(1000);
    gsl_function function{[](double x, void* context) { return (*static_cast<const F*>(context))(x); },
                          const_cast<F*>(&f)};
    double result = 0;
    double error = 0;
    const int status =
        gsl_integration_qags(&function, from, to, 0, relative, 1000, workspace, &result, &error);
    gsl_integration_workspace_free(workspace);
    REQUIRE(status == 0);
    return result;
}

}  // namespace undercroft::tests
