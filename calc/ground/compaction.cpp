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

}  // namespace undercroft::calc
