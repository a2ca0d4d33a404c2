#include "calc/ground/fabric.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"

namespace undercroft::addin {

std::vector<Function> fabric_functions() {
    return {
        function("UC.FABRIC.OPENING", &calc::fabric_opening)
            .says("Largest opening O95 of a separation fabric beside soil of size d85; at most 0.60 mm")
            .also_called("AOS, apparent opening size, O95, EOS, filter, retention criterion, geotextile")
            .related({"UC.FABRIC.FACTOR", "UC.GRADING.SIZE"})
            .to_try("UC.FABRIC.OPENING(\"0.25 mm\"; 1.6; \"mm\")")
            .to_try("UC.FABRIC.OPENING(\"0.01 in\"; 1; \"in\")")
            .refuses("UC.FABRIC.OPENING(0.25; 1.6)")
            .equation("O95 = min(B d85, 0.60 mm)")
            .source("FHWA NHI-07-092 (2008), chapter 2, filter criterion for steady flow; AASHTO M 288, "
                    "separation: 0.60 mm (both from memory)")
            .example("UC.FABRIC.OPENING(\"0.30 mm\"; UC.FABRIC.FACTOR(5); \"mm\")", "0.48", "1e-9 rel",
                     Origin::from_memory, "FHWA NHI-07-092, chapter 2: d85 = 0.30 mm, Cu = 5, B = 1.6")
            .caution(
                "Where more than half of the soil passes 0.075 mm, B is 1 (woven) or 1.8 (non-woven) and the "
                "opening at most 0.3 mm. The flow is steady: where it turns, as in a bed that fills and "
                "empties, 0.5 is usual (from memory). Permeability and strength are checks of their own. "
                "Local codes and a licensed engineer govern")
            .takes("d85", "d85", "Size that 85 % of the soil passes, from UC.GRADING.SIZE")
            .within(usual::soil_d85)
            .takes("factor", "B", "Factor of the criterion, from UC.FABRIC.FACTOR; at most 2", 1.0)
            .within(usual::fabric_factor)
            .gives("O95", "Largest opening"),
        function("UC.FABRIC.FACTOR", &calc::fabric_factor)
            .says("Factor B of the filter criterion, for soils of which half or less passes 0.075 mm")
            .also_called("B factor, retention criterion, filter")
            .related({"UC.FABRIC.OPENING", "UC.GRADING.UNIFORMITY"})
            .to_try("UC.FABRIC.FACTOR(5)")
            .equation("B = 1 for Cu <= 2 and Cu >= 8; 0.5 Cu from 2 to 4; 8/Cu from 4 to 8")
            .source("FHWA NHI-07-092 (2008), chapter 2 (from memory)")
            .examples("UC.FABRIC.FACTOR({})", "5e-5", Origin::from_memory,
                      "FHWA NHI-07-092, chapter 2: B of Cu",
                      {{"1.5", "1"},
                       {"2", "1"},
                       {"3", "1.5"},
                       {"4", "2"},
                       {"5", "1.6"},
                       {"6", "1.3333"},
                       {"8", "1"},
                       {"10", "1"}})
            .caution("For finer soils B is 1 (woven) or 1.8 (non-woven) whatever the uniformity. Local codes "
                     "and a licensed engineer govern")
            .takes("uniformity", "Cu", "Coefficient of uniformity of the soil, from UC.GRADING.UNIFORMITY")
            .within(usual::uniformity)
            .gives("B", "Factor of the criterion"),
    };
}

}  // namespace undercroft::addin
