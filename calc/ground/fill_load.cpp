#include "calc/ground/fill_load.hpp"

namespace undercroft::calc {

Pressure fill_load(const Table<Length, UnitWeight>& layers) {
    Pressure total = zero;
    for (const auto& [thickness, unit_weight] : layers) {
        require_not_negative("thickness", thickness);
        require_positive("unit weight", unit_weight);
        total += thickness * unit_weight;
    }
    return total;
}

}  // namespace undercroft::calc
