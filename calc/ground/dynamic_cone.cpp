#include "calc/ground/dynamic_cone.hpp"

#include <cmath>

#include "calc/customary.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

double cbr(double d, ConeSoil soil) {
    switch (soil) {
        case ConeSoil::general:
            return 292 / std::pow(d, 1.12);
        case ConeSoil::cl:
            return 1 / std::pow(0.017019 * d, 2);
        case ConeSoil::ch:
            return 1 / (0.002871 * d);
    }
    refuse_value("unknown soil");
}

}  // namespace

Percent cone_cbr(Length penetration_per_blow, ConeSoil soil) {
    require_positive("penetration per blow", penetration_per_blow);
    const double result = cbr(penetration_per_blow / millimetre, soil);
    if (soil == ConeSoil::cl && !(result < 10))
        no_answer(shown("penetration per blow", penetration_per_blow) +
                  " gives a CBR of 10 or more, where the equation for CL does not hold: use general");
    if (result > 100)
        no_answer(shown("penetration per blow", penetration_per_blow) +
                  " gives a CBR above 100: the cone met stone or rock, not soil");
    if (result < 0.5)
        no_answer(shown("penetration per blow", penetration_per_blow) +
                  " gives a CBR below 0.5: too soft for this test (is the penetration in mm?)");
    return {result};
}

}  // namespace undercroft::calc
