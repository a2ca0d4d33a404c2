#include "calc/ground/presumptive_bearing.hpp"

#include "calc/customary.hpp"
#include "units/refused.hpp"

namespace undercroft::calc {

const std::vector<PresumptiveRow>& presumptive_table() {
    static const Pressure psf = pound_force / (foot * foot);
    static const std::vector<PresumptiveRow> table = {
        {PresumptiveClass::crystalline_bedrock, 12000.0 * psf},
        {PresumptiveClass::foliated_rock, 4000.0 * psf},
        {PresumptiveClass::gravel, 3000.0 * psf},
        {PresumptiveClass::sand, 2000.0 * psf},
        {PresumptiveClass::clay, 1500.0 * psf},
    };
    return table;
}

Pressure presumptive_bearing(PresumptiveClass material) {
    for (const PresumptiveRow& row : presumptive_table())
        if (row.material == material) return row.vertical;
    refuse_value("unknown class of material");
}

}  // namespace undercroft::calc
