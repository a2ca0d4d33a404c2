#include "calc/ground/stone.hpp"

#include "calc/require.hpp"

namespace undercroft::calc {

Share stone_porosity(Density bulk_density, Density particle_density) {
    require_positive("bulk density", bulk_density);
    require_positive("particle density", particle_density);
    require(bulk_density < particle_density, shown("bulk density", bulk_density),
            " must be less than the particle density (", amount(particle_density), ")");
    return 1.0 - bulk_density / particle_density;
}

Mass stone_mass(Volume volume, Share porosity, Density particle_density) {
    require_not_negative("volume", volume);
    require_porosity("porosity", porosity);
    require_positive("particle density", particle_density);
    return volume * (1.0 - porosity) * particle_density;
}

Count lifts(Length thickness, Length greatest_lift) {
    require_positive("thickness", thickness);
    require_positive("greatest lift", greatest_lift);
    return count(whole_up(thickness / greatest_lift));
}

}  // namespace undercroft::calc
