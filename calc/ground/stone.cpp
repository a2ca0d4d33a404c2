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

Mass stone_order_mass(Volume volume, Density bulk_density, Share moisture, Share waste) {
    require_not_negative("volume", volume);
    require_positive("bulk density", bulk_density);
    require_share("moisture", moisture);
    require_not_negative("waste", waste);
    return volume * bulk_density * ((1 + number(moisture)) * (1 + number(waste)));
}

Share porosity_as_built(Mass mass, Volume volume, Density particle_density, Share moisture) {
    require_positive("mass", mass);
    require_positive("volume", volume);
    require_positive("particle density", particle_density);
    require_share("moisture", moisture);
    const Volume solids = mass / (1 + number(moisture)) / particle_density;
    require(solids < volume, shown("mass", mass), " is more stone than the ", shown("volume", volume),
            " holds without any voids");
    return 1.0 - solids / volume;
}

Count lifts(Length thickness, Length greatest_lift) {
    require_positive("thickness", thickness);
    require_positive("greatest lift", greatest_lift);
    return count(whole_up(thickness / greatest_lift));
}

}  // namespace undercroft::calc
