#include "calc/water/water_quality.hpp"

#include <algorithm>

#include "calc/require.hpp"
#include "calc/water/runoff.hpp"

namespace undercroft::calc {

namespace {

/// Depth of silt that a year leaves.
Length yearly_silt(MassPerArea yearly_load, Area drained_area, Share kept, Density silt_density,
                   Area floor_area) {
    require_positive("yearly load", yearly_load);
    require_positive("drained area", drained_area);
    require_positive("share kept", kept);
    require_share("share kept", kept);
    require_positive("silt density", silt_density);
    require_positive("floor area", floor_area);
    return yearly_load * drained_area * number(kept) / (silt_density * floor_area);
}

}  // namespace

Volume water_quality_volume(Length rain_depth, Area area, Share impervious, Share intercept, Share slope,
                            Length least_depth) {
    require_positive("rain depth", rain_depth);
    require_storm_depth("rain depth", rain_depth);
    require_positive("area", area);
    require_share("impervious share", impervious);
    require_not_negative("least depth", least_depth);
    const Share runoff = intercept + slope * impervious;
    require_share("volumetric runoff coefficient", runoff);
    return std::max<Length>(rain_depth * number(runoff), least_depth) * area;
}

Length silt_depth(MassPerArea yearly_load, Area drained_area, Share kept, Density silt_density,
                  Area floor_area, Share years) {
    require_not_negative("years", years);
    return number(years) * yearly_silt(yearly_load, drained_area, kept, silt_density, floor_area);
}

Share silt_years(MassPerArea yearly_load, Area drained_area, Share kept, Density silt_density,
                 Area floor_area, Length depth) {
    require_not_negative("depth", depth);
    return depth / yearly_silt(yearly_load, drained_area, kept, silt_density, floor_area);
}

}  // namespace undercroft::calc
