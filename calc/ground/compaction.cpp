#include "calc/ground/compaction.hpp"

#include "calc/require.hpp"

namespace undercroft::calc {

Density dry_density(Density wet_density, Share moisture) {
    require_positive("wet density", wet_density);
    require_share("moisture", moisture);
    return wet_density / (1.0 + moisture);
}

Share compaction_degree(Density dry_density, Density reference_density) {
    require_positive("dry density", dry_density);
    require_positive("reference density", reference_density);
    return dry_density / reference_density;
}

Density zero_air_density(Density particle_density, Share moisture, Share air, Density water_density) {
    require_positive("water density", water_density);
    require(particle_density > water_density && is_finite(particle_density),
            shown("particle density", particle_density), " must be above that of water (",
            amount(water_density), ")");
    require_share("moisture", moisture);
    require_share("air", air);
    return (1 - number(air)) * particle_density /
           (1 + number(moisture) * static_cast<double>(particle_density / water_density));
}

}  // namespace undercroft::calc
