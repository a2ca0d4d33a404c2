#include "calc/water/rain.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/local_rain.hpp"

namespace undercroft::addin {

std::vector<Function> rain_functions() {
    return {
        function("UC.RAIN.INTENSITY",
                 [](calc::RainTable rain, Time duration) { return calc::rain_intensity(rain, duration); })
            .says("Mean intensity of rain of a duration, read from a table of one frequency; never "
                  "extrapolated")
            .also_called("IDF curve, IFD, rainfall intensity, design rain, interpolation of rain")
            .related({"UC.RUNOFF.PEAK", "UC.STORAGE.REQUIRED"})
            .to_try("UC.RAIN.INTENSITY({\"min\";\"mm/h\"|10;120|30;70|60;45|120;28}; \"20 min\")")
            .to_try(
                "UC.RAIN.INTENSITY({\"min\";\"in/h\"|10;4.7|30;2.8|60;1.8|120;1.1}; \"20 min\"; \"in/h\")")
            .refuses("UC.RAIN.INTENSITY({\"min\";\"mm/h\"|10;120|30;70|60;45|120;28}; \"5 min\")")
            .equation("log i straight against log t_d between two rows")
            .source(
                "common practice (intensity-duration-frequency curves are plotted on two logarithmic axes)")
            .caution(local_rain)
            .takes("rain", "t_d, i", "Two columns: duration and mean intensity")
            .within({usual::table_duration, usual::table_intensity})
            .takes("duration", "t_d", "Duration of the rain")
            .within(usual::rain_duration)
            .gives("i", "Mean intensity")
            .example("UC.RAIN.INTENSITY({10;100|60;25}; \"30 min\")", "42.7413865179", "1e-10",
                     Origin::mathematics, "a power law is interpolated exactly: i = 100 (t_d/10)^-0.7737")
            .example("UC.RAIN.INTENSITY({\"min\";\"in/h\"|18;3.177114|22;2.845223}; \"20 min\"; \"in/h\")",
                     "3.00", "0.005", Origin::from_memory,
                     "Chow, Maidment and Mays, Applied Hydrology (1988), sec. 14.2: 10-year 20-minute rain "
                     "of Denver, 96.6/(t_d^0.97 + 13.90), between 18 and 22 min")
            .example("UC.RAIN.INTENSITY({\"min\";\"in/h\"|18;4.360317|22;3.917909}; \"20 min\"; \"in/h\")",
                     "4.126", "0.005", Origin::mathematics,
                     "94.9/(t_d^0.88 + 9.04) recomputed, its coefficients (Chicago) from memory of Chow, "
                     "Maidment and Mays, Applied Hydrology (1988), Table 14.2.3"),
    };
}

}  // namespace undercroft::addin
