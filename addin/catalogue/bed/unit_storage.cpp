#include "calc/bed/unit_storage.hpp"

#include "addin/catalogue/bed/entries.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_bed.hpp"

namespace undercroft::addin {

namespace {

/// Number of units of a kind in its first row, blank in those that follow; depth; volume of one unit.
using UnitRows = std::vector<std::tuple<std::optional<Count>, Length, Volume>>;

constexpr const char* units_held_equation =
    "V = C + H + n (P - C - H - X); C sum of number times table, straight between rows, H the header, X the "
    "plastic "
    "spread over the height of the units, P as UC.BED.VOLUME";
constexpr const char* units_held_source =
    "geometry of the bed; suppliers' tables of depth and volume; common practice";
constexpr const char* table_caution =
    "The table is the supplier's, of one unit alone without stone: a table that counts stone already is not "
    "for here";

std::vector<calc::UnitKind> kinds_of(const UnitRows& rows) {
    std::vector<calc::UnitKind> kinds;
    for (const auto& [number, depth, volume] : rows) {
        if (number) kinds.push_back({*number, {}});
        if (kinds.empty())
            refuse_value("the first row of the units says how many there are of the first kind");
        kinds.back().table.emplace_back(depth, volume);
    }
    return kinds;
}

/// Both or all, or none.
void require_together(const char* names, std::initializer_list<bool> given) {
    const auto there = std::count(given.begin(), given.end(), true);
    if (there != 0 && there != static_cast<std::ptrdiff_t>(given.size()))
        refuse_value(std::string(names) + " go together: give all of them or none");
}

calc::UnitBed bed(Length length, Length width, Batter batter, Length base_stone, Length cover_stone,
                  Share porosity, const UnitRows& units, Gradient fall, std::optional<Mass> plastic_mass,
                  std::optional<Density> plastic_density, std::optional<Volume> header_volume,
                  std::optional<Length> header_diameter, std::optional<Length> header_invert) {
    require_together("plastic mass and plastic density",
                     {plastic_mass.has_value(), plastic_density.has_value()});
    require_together("header volume, header diameter and header invert",
                     {header_volume.has_value(), header_diameter.has_value(), header_invert.has_value()});
    calc::UnitBed made{length,   width,           batter, base_stone, cover_stone,
                       porosity, kinds_of(units), {},     {},         fall};
    if (plastic_mass) made.plastic = calc::Plastic{*plastic_mass, *plastic_density};
    if (header_volume) made.header = calc::Header{*header_volume, *header_diameter, *header_invert};
    return made;
}

/// The arguments that describe a bed of units, said once for the functions that take them.
Entry& takes_unit_storage_bed(Entry& entry) {
    return entry.takes("length", "L", "Length of the bed at its base")
        .within(usual::plan_length)
        .takes("width", "W", "Width of the bed at its base")
        .within(usual::plan_width)
        .takes("batter", "z", "Slope of the bed's walls; 0H:1V for vertical walls")
        .within(usual::batter)
        .takes("base stone", "b", "Stone under the units")
        .within(usual::stone_layer)
        .takes("cover stone", "c", "Stone over the tallest units")
        .within(usual::stone_layer)
        .takes("porosity", "n", "Porosity of the stone")
        .within(usual::porosity)
        .takes("kinds", "N, d, V_1",
               "Three columns: units of a kind, in its first row only; depth over the unit's base; volume of "
               "one unit "
               "below it; up to four kinds below each other")
        .within({usual::units_of_kind, usual::unit_depth, usual::unit_volume})
        .takes("fall", "s", "Fall of the formation along the length; 0 is level", 0.0)
        .within(usual::bed_fall)
        .takes("plastic mass", "M_p", "Plastic of all units, which displaces stone; left out, not counted")
        .within(usual::plastic_mass)
        .takes("plastic density", "rho_p", "Density of the plastic")
        .within(usual::plastic_density)
        .takes("header volume", "H", "What header pipes in the stone hold; left out, none")
        .within(usual::header_volume)
        .takes("header diameter", "D_h", "Their inside diameter")
        .within(usual::header_diameter)
        .takes("header invert", "b_h", "Their invert over the base of the bed")
        .within(usual::header_invert);
}

Function bed_units_entry() {
    auto volume = function(
        "UC.BED.UNITS",
        [](Length depth, Length length, Length width, Batter batter, Length base_stone, Length cover_stone,
           Share porosity, UnitRows units, Gradient fall, std::optional<Mass> plastic_mass,
           std::optional<Density> plastic_density, std::optional<Volume> header_volume,
           std::optional<Length> header_diameter, std::optional<Length> header_invert) {
            return calc::unit_bed_volume(
                depth, bed(length, width, batter, base_stone, cover_stone, porosity, units, fall,
                           plastic_mass, plastic_density, header_volume, header_diameter, header_invert));
        });
    volume
        .says(
            "Water held by a bed of units below a depth above its base at the low end, by their suppliers' "
            "tables")
        .related({"UC.BED.UNITDEPTH", "UC.STAGE.UNITS", "UC.BED.VOLUME", "UC.STORAGE.REQUIRED"})
        .also_called(
            "volume of crates, supplier's stage-storage table, storage of a sloping bed, tank modules")
        .equation(units_held_equation)
        .source(units_held_source)
        .takes("depth", "d", "Depth of water above the base of the bed")
        .within(usual::depth_in_bed)
        .caution(table_caution);
    return takes_unit_storage_bed(volume)
        .gives("V", "Volume held")
        .example(
            "UC.BED.UNITS(\"0.6 m\"; \"10 m\"; \"5 m\"; \"0H:1V\"; \"0.2 m\"; \"0.2 m\"; \"40 %\"; "
            "{10;0;0|\"\";0.8;0.5})",
            "13.5", "1e-9 rel", Origin::mathematics, "ten units half full, 2.5 m3, and 0.4 x 27.5 m3")
        .example(
            "UC.BED.UNITS(\"1.2 m\"; \"10 m\"; \"5 m\"; \"0H:1V\"; \"0.2 m\"; \"0.2 m\"; \"40 %\"; "
            "{10;0;0|\"\";0.8;0.5|2;0.3;0.2|\"\";0.6;0.3}; ; \"95 kg\"; \"950 kg/m3\"; \"0.4 m3\"; \"0.4 "
            "m\"; \"0.3 m\")",
            "27.56", "1e-9 rel", Origin::mathematics, "5.6 + 0.4 + 0.4 (60 - 5.6 - 0.4 - 0.1)")
        .example(
            "UC.BED.UNITS(\"4 ft\"; \"100 ft\"; \"40 ft\"; \"0H:1V\"; \"1 ft\"; \"0.5 ft\"; \"40 %\"; "
            "{\"each\";\"ft\";\"ft3\"|100;0;0|\"\";2.5;50}; ; ; ; ; ; ; \"ft3\")",
            "9400", "1e-9 rel", Origin::mathematics, "5000 + 0.4 (16000 - 5000)");
}

Function bed_unitdepth_entry() {
    auto depth = function(
        "UC.BED.UNITDEPTH",
        [](Volume held, Length length, Length width, Batter batter, Length base_stone, Length cover_stone,
           Share porosity, UnitRows units, Gradient fall, std::optional<Mass> plastic_mass,
           std::optional<Density> plastic_density, std::optional<Volume> header_volume,
           std::optional<Length> header_diameter, std::optional<Length> header_invert) {
            return calc::unit_bed_depth(
                held, bed(length, width, batter, base_stone, cover_stone, porosity, units, fall, plastic_mass,
                          plastic_density, header_volume, header_diameter, header_invert));
        });
    depth
        .says(
            "Depth of water above the base of a bed of units for a volume held: the inverse of UC.BED.UNITS")
        .related({"UC.BED.UNITS", "UC.STAGE.UNITS", "UC.BED.DEPTH"})
        .also_called("depth from volume, water level in crates, stage for a storage")
        .equation("d where V(d) = V; root by TOMS 748 (Boost.Math)")
        .source(units_held_source)
        .takes("volume", "V", "Volume of water held")
        .within(usual::held_volume)
        .caution(table_caution);
    return takes_unit_storage_bed(depth)
        .gives("d", "Depth of water")
        .example(
            "UC.BED.UNITDEPTH(\"13.5 m3\"; \"10 m\"; \"5 m\"; \"0H:1V\"; \"0.2 m\"; \"0.2 m\"; \"40 %\"; "
            "{10;0;0|\"\";0.8;0.5})",
            "0.6", "1e-9 rel", Origin::mathematics, "the inverse of the first example of UC.BED.UNITS")
        .example(
            "UC.BED.UNITDEPTH(\"9400 ft3\"; \"100 ft\"; \"40 ft\"; \"0H:1V\"; \"1 ft\"; \"0.5 ft\"; \"40 "
            "%\"; "
            "{\"each\";\"ft\";\"ft3\"|100;0;0|\"\";2.5;50}; ; ; ; ; ; ; \"ft\")",
            "4", "1e-9 rel", Origin::mathematics, "the inverse of the last one");
}

Function stage_units_entry() {
    auto table = function(
        "UC.STAGE.UNITS",
        [](Count steps, Length length, Length width, Batter batter, Length base_stone, Length cover_stone,
           Share porosity, UnitRows units, Gradient fall, std::optional<Mass> plastic_mass,
           std::optional<Density> plastic_density, std::optional<Volume> header_volume,
           std::optional<Length> header_diameter, std::optional<Length> header_invert) {
            return calc::unit_stage_storage(
                steps, bed(length, width, batter, base_stone, cover_stone, porosity, units, fall,
                           plastic_mass, plastic_density, header_volume, header_diameter, header_invert));
        });
    table
        .says(
            "Stage-storage table of a bed of units by their suppliers' tables, in equal steps from the base "
            "to the "
            "top of the stone, with rows added at the base and crown of the units")
        .related({"UC.ROUTE.POOL", "UC.DRAIN.TIME", "UC.LOOKUP", "UC.BED.UNITS", "UC.STAGE.STORAGE"})
        .also_called(
            "stage-storage of crates, supplier's volume table, depth-volume curve, elevation-storage")
        .equation(units_held_equation)
        .source(units_held_source)
        .takes("steps", "N_s", "Number of equal steps")
        .within(usual::steps)
        .caution(table_caution);
    return takes_unit_storage_bed(table)
        .gives_columns("Stage-storage table", {{"depth", "d"},
                                               {"in units", "C + H"},
                                               {"in stone", "n (P - C - H - X)"},
                                               {"total", "V"},
                                               {"plan area", "A"}})
        .example(
            "INDEX(UC.STAGE.UNITS(6; \"10 m\"; \"5 m\"; \"0H:1V\"; \"0.2 m\"; \"0.2 m\"; \"40 %\"; "
            "{10;0;0|\"\";0.8;0.5}); 5; 4)",
            "13.5", "1e-9 rel", Origin::mathematics, "row of 0.6 m: the first example of UC.BED.UNITS")
        .example(
            "INDEX(UC.STAGE.UNITS(4; \"100 ft\"; \"40 ft\"; \"0H:1V\"; \"1 ft\"; \"0.5 ft\"; \"40 %\"; "
            "{\"each\";\"ft\";\"ft3\"|100;0;0|\"\";2.5;50}; ; ; ; ; ; ; \"ft;ft3;ft3;ft3;ft2\"); 7; 4)",
            "9400", "1e-9 rel", Origin::mathematics, "full: the last example of UC.BED.UNITS");
}

}  // namespace

std::vector<Function> unit_storage_functions() {
    return {bed_units_entry(), bed_unitdepth_entry(), stage_units_entry()};
}

}  // namespace undercroft::addin
