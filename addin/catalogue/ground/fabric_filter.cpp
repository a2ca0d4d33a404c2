#include "calc/ground/fabric_filter.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"
#include "addin/catalogue/usual_works.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::FabricKind> {
    static constexpr std::string_view kind = "a kind of fabric";
    static constexpr Choice<calc::FabricKind> list[] = {
        {"woven", calc::FabricKind::woven},
        {"non-woven|nonwoven|non woven", calc::FabricKind::non_woven},
    };
};

template <>
struct Choices<calc::FabricFlow> {
    static constexpr std::string_view kind = "a flow";
    static constexpr Choice<calc::FabricFlow> list[] = {
        {"steady", calc::FabricFlow::steady},
        {"reversing|dynamic", calc::FabricFlow::reversing},
    };
};

namespace {

constexpr const char* drainage = "AASHTO M 288, subsurface drainage, as quoted in UFGS 02373";

Function retention_entry() {
    return function("UC.FABRIC.RETENTION", &calc::retaining_opening)
        .says(
            "Largest opening O95 of a fabric that holds back the soil beside it, for sands, silts and clays, "
            "steady "
            "flow or flow to and fro")
        .related({"UC.FABRIC.OPENING", "UC.FABRIC.AOS", "UC.GRADING.SIZE", "UC.GRADING.UNIFORMITY"})
        .also_called("soil retention, apparent opening size, AOS, O95, filter criterion, geotextile filter")
        .equation(
            "O95 = B d85, at most 0.60 mm, of fine soils 0.30 mm; B as UC.FABRIC.FACTOR, of fine soils 1 "
            "woven, 1.8 "
            "non-woven, of reversing flow 0.5")
        .source("FHWA NHI-07-092 (2008), chapter 2; AASHTO M 288, separation: 0.60 mm (all from memory)")
        .example("UC.FABRIC.RETENTION(\"0.25 mm\"; \"8 %\"; 2.5; ; ; \"mm\")", "0.3125", "1e-9 rel",
                 Origin::from_memory, "FHWA NHI-07-092, chapter 2: B = 1.25 at Cu = 2.5")
        .example("UC.FABRIC.RETENTION(\"0.1 mm\"; \"80 %\"; ; \"non-woven\"; ; \"mm\")", "0.18", "1e-9 rel",
                 Origin::from_memory, "FHWA NHI-07-092, chapter 2: B = 1.8 for a fine soil")
        .example("UC.FABRIC.RETENTION(\"0.25 mm\"; \"8 %\"; ; ; \"reversing\"; \"mm\")", "0.125", "1e-9 rel",
                 Origin::from_memory, "FHWA NHI-07-092, chapter 2: B = 0.5 where the flow turns")
        .caution(
            "Beside a bed that fills and empties the flow turns. Permeability, clogging and strength are "
            "checks of "
            "their own. Local codes and a licensed engineer govern")
        .takes("d85", "d85", "Size that 85 % of the soil passes, from UC.GRADING.SIZE")
        .within(usual::soil_d85)
        .takes("passing 0.075 mm", "F", "Percentage passing 0.075 mm (No. 200)")
        .within(usual::passing)
        .takes("uniformity", "Cu", "Coefficient of uniformity; not needed of fine soils or reversing flow")
        .within(usual::uniformity)
        .takes("kind", "kind", "woven or non-woven", u"non-woven")
        .takes("flow", "flow", "steady or reversing", u"steady")
        .gives("O95", "Largest opening");
}

Function opening_entry() {
    return function("UC.FABRIC.AOS", &calc::drainage_opening)
        .says(
            "Largest opening of a fabric for drainage by what passes 0.075 mm alone, for soils too fine for "
            "a D85")
        .related({"UC.FABRIC.RETENTION", "UC.FABRIC.OPENING", "UC.GRADING.PASSING"})
        .also_called("apparent opening size, O95, AASHTO M 288, subsurface drainage fabric, filter fabric")
        .equation("0.43 mm below 15 %, 0.25 mm to 50 %, 0.22 mm above")
        .source(drainage)
        .examples("UC.FABRIC.AOS(\"{} %\"; \"mm\")", "1e-9 rel", Origin::published, drainage,
                  {{"8", "0.43"}, {"15", "0.25"}, {"50", "0.25"}, {"80", "0.22"}})
        .caution("Local codes and a licensed engineer govern")
        .takes("passing 0.075 mm", "F", "Percentage passing 0.075 mm (No. 200)")
        .within(usual::passing)
        .gives("AOS", "Largest opening");
}

Function fabric_permittivity_entry() {
    return function("UC.FABRIC.PERMITTIVITY", &calc::drainage_permittivity)
        .says("Least permittivity of a fabric for drainage by what passes 0.075 mm")
        .related({"UC.FABRIC.PSI", "UC.FABRIC.FLOW", "UC.FABRIC.PERMEABILITY", "UC.GRADING.PASSING"})
        .also_called("psi, AASHTO M 288, filter fabric flow, cross-plane flow")
        .equation("0.5 1/s below 15 %, 0.2 1/s to 50 %, 0.1 1/s above")
        .source(drainage)
        .examples("UC.FABRIC.PERMITTIVITY(\"{} %\")", "1e-9 rel", Origin::published, drainage,
                  {{"8", "0.5"}, {"15", "0.2"}, {"50", "0.2"}, {"80", "0.1"}})
        .caution("Local codes and a licensed engineer govern")
        .takes("passing 0.075 mm", "F", "Percentage passing 0.075 mm (No. 200)")
        .within(usual::passing)
        .gives("psi", "Least permittivity");
}

Function permittivity_entry() {
    return function("UC.FABRIC.PSI", &calc::fabric_permittivity)
        .says("Permittivity of a fabric from its permeability and thickness")
        .related({"UC.FABRIC.PERMITTIVITY", "UC.FABRIC.FLOW", "UC.FABRIC.PERMEABILITY"})
        .also_called("permittivity, permeability over thickness, cross-plane permeability, kn")
        .equation("psi = k/t")
        .source("ASTM D4491")
        .example("UC.FABRIC.PSI(\"7200 mm/h\"; \"0.002 m\")", "1", "1e-9 rel", Origin::mathematics,
                 "2 mm/s through 2 mm")
        .example("UC.FABRIC.PSI(\"0.3 cm/s\"; \"80 mil\")", "1.476378", "5e-7", Origin::mathematics,
                 "3 mm/s through 2.032 mm")
        .takes("permeability", "k", "Permeability of the fabric across")
        .within(usual::fabric_permeability)
        .takes("thickness", "t", "Thickness of the fabric")
        .within(usual::fabric_thickness)
        .gives("psi", "Permittivity");
}

Function fabric_flow_entry() {
    return function("UC.FABRIC.FLOW", &calc::fabric_flow)
        .says("Flow through a fabric")
        .related({"UC.FABRIC.PSI", "UC.FABRIC.PERMITTIVITY", "UC.SOAK.FLOW"})
        .also_called("flow rate of a geotextile, permittivity flow, cross-plane flow, filter capacity")
        .equation("Q = psi h A")
        .source("ASTM D4491; Darcy")
        .example("UC.FABRIC.FLOW(\"0.5 1/s\"; \"0.1 m\"; \"10 m2\")", "500", "1e-9 rel", Origin::mathematics,
                 "0.5 x 0.1 x 10 m3/s")
        .example("UC.FABRIC.FLOW(\"0.5 1/s\"; \"2 in\"; \"120 ft2\"; \"cfs\")", "10", "1e-9 rel",
                 Origin::mathematics, "0.5 x 1/6 x 120 ft3/s")
        .caution("Of a clean fabric: soil and silt on it let less through")
        .takes("permittivity", "psi", "Permittivity, as tested")
        .within(usual::permittivity)
        .takes("head", "h", "Difference of the water's height on its sides")
        .within(usual::fabric_head)
        .takes("area", "A", "Area of the fabric")
        .within(usual::sheet_area)
        .gives("Q", "Flow");
}

Function permeability_entry() {
    return function("UC.FABRIC.PERMEABILITY", &calc::fabric_permeability_needed)
        .says("Least permeability of a fabric beside a soil")
        .related({"UC.FABRIC.PSI", "UC.FABRIC.PERMITTIVITY", "UC.PERMEABILITY.FALLING"})
        .also_called(
            "permeability criterion, geotextile filter, kg over ks, clogging, cross-plane permeability")
        .equation("k_f = k_s, or 10 k_s where clogging would be critical")
        .source("FHWA NHI-07-092 (2008), chapter 2 (from memory)")
        .example("UC.FABRIC.PERMEABILITY(\"36 mm/h\")", "36", "1e-9 rel", Origin::from_memory,
                 "FHWA NHI-07-092, chapter 2: that of the soil")
        .example("UC.FABRIC.PERMEABILITY(\"2 in/h\"; \"yes\"; \"in/h\")", "20", "1e-9 rel",
                 Origin::from_memory, "FHWA NHI-07-092, chapter 2: ten times that of the soil")
        .caution("Local codes and a licensed engineer govern")
        .takes("soil permeability", "k_s", "Permeability of the soil")
        .within(usual::soil_permeability)
        .takes("critical", "critical", "TRUE where clogging would be critical", u"FALSE")
        .gives("k_f", "Least permeability");
}

}  // namespace

std::vector<Function> fabric_filter_functions() {
    return {retention_entry(),    opening_entry(),     fabric_permittivity_entry(),
            permittivity_entry(), fabric_flow_entry(), permeability_entry()};
}

}  // namespace undercroft::addin
