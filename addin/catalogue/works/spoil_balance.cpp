#include "calc/works/spoil_balance.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_ground.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "addin/catalogue/works/spoil_soil.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::SoilState> {
    static constexpr std::string_view kind = "a state of soil";
    static constexpr Choice<calc::SoilState> list[] = {
        {"bank", calc::SoilState::bank},
        {"loose", calc::SoilState::loose},
        {"compacted", calc::SoilState::compacted},
    };
};

namespace {

constexpr const char* balance_source = "mass balance; factors of US Army FM 5-434 (2000), Table 1-1";
constexpr const char* loam_job = "1193 m3 of loam, 55 % fit, for 421 m3: 421/0.9 are needed, 656 are fit";

Entry& takes_balance(Entry& entry) {
    return entry.takes("bank volume", "V_b", "Volume dug, in the ground")
        .within(usual::dug_volume)
        .takes("fit share", "r", "Share of it that is fit for backfill")
        .within(usual::fit_share)
        .takes("fill needed", "V_f", "Fill needed, compacted")
        .within(usual::dug_volume)
        .takes("soil", "c",
               "sand, loam, clay, rock or coral; or compacted volume per bank volume, such as 0.9")
        .within(usual::bulking);
}

Function spoil_convert_entry() {
    return function("UC.SPOIL.CONVERT", &calc::spoil_converted)
        .says("Volume of a soil in one of its three states - bank, loose, compacted - from that in another")
        .related({"UC.SPOIL.VOLUME", "UC.SPOIL.LOADS", "UC.FILL.MASS"})
        .also_called("bulking, swell, shrinkage, bank cubic metres, loose cubic yards, LCY, BCY, CCY")
        .equation("V_2 = V_1 k_2/k_1; k = 1 in the bank")
        .source("US Army FM 5-434 (2000), Table 1-1")
        .example("UC.SPOIL.CONVERT(\"100 m3\"; \"loam\"; \"loose\"; \"bank\"; 1.25)", "80", "1e-12 rel",
                 Origin::mathematics, "100/1.25")
        .example("UC.SPOIL.CONVERT(\"143 yd3\"; \"clay\"; \"loose\"; \"compacted\"; ; ; \"yd3\")", "90",
                 "0.5", Origin::from_memory,
                 "US Army FM 5-434 (2000), Table 1-1: clay, 100 in the bank, 143 loose, 90 compacted")
        .example("UC.SPOIL.CONVERT(\"2049.946 yd3\"; \"loam\"; \"bank\"; \"loose\"; 1.220043573; ; \"yd3\")",
                 "2501.023", "5e-3", Origin::mathematics,
                 "inputs of an estimating textbook: 2800 lb/yd3 in the bank and 2295 loose")
        .takes("volume", "V_1", "Volume in the state that it is in")
        .within(usual::dug_volume)
        .takes("soil", "soil", "sand, loam, clay, rock or coral")
        .takes("from", "from", "bank, loose or compacted")
        .takes("to", "to", "bank, loose or compacted")
        .takes("loose factor", "k_l", "Loose volume per bank volume, in place of the table's")
        .within(usual::bulking)
        .takes("compacted factor", "k_c", "Compacted volume per bank volume, in place of the table's")
        .within(usual::bulking)
        .gives("V_2", "Volume in the state wanted");
}

Function kept_entry() {
    auto kept = function("UC.SPOIL.KEPT", &calc::spoil_kept);
    kept.says("Bank volume of spoil kept for backfill: what is fit for it, and no more than is needed")
        .related({"UC.SPOIL.CARTED", "UC.FILL.IMPORT", "UC.PIT.FILL", "UC.PIT.VOLUME"})
        .also_called("reuse of excavated soil, stockpile, suitable material, site-won fill")
        .equation("V_k = min(r V_b, V_f/c)")
        .source(balance_source)
        .example("UC.SPOIL.KEPT(\"1193 m3\"; \"55 %\"; \"421 m3\"; \"loam\")", "467.778", "5e-4",
                 Origin::from_memory, loam_job)
        .example("UC.SPOIL.KEPT(\"3000 yd3\"; 1; \"817 yd3\"; 0.85995086; \"yd3\")", "950.054", "5e-4",
                 Origin::mathematics,
                 "inputs of an estimating textbook: 2800 lb/yd3 in the bank and 3256 compacted");
    return takes_balance(kept).gives("V_k", "Bank volume kept");
}

Function import_entry() {
    auto imported = function("UC.FILL.IMPORT", &calc::fill_imported);
    imported.says("Compacted volume of fill that must be bought; 0 where the kept spoil does")
        .related({"UC.FILL.MASS", "UC.SPOIL.KEPT", "UC.COST"})
        .also_called("imported fill, borrow, shortfall of fill, engineered fill")
        .equation("V_i = V_f - c V_k, V_k as UC.SPOIL.KEPT")
        .source(balance_source)
        .example("UC.FILL.IMPORT(\"1193 m3\"; \"20 %\"; \"421 m3\"; \"loam\")", "206.26", "5e-3",
                 Origin::from_memory, "238.6 m3 that are fit make 214.74 m3 of fill")
        .example("UC.FILL.IMPORT(\"3000 yd3\"; 1; \"817 yd3\"; 0.85995086; \"yd3\")", "0", "1e-9",
                 Origin::mathematics, "the spoil does");
    return takes_balance(imported).gives("V_i", "Compacted volume to buy");
}

Function carted_entry() {
    auto carted = function("UC.SPOIL.CARTED", &calc::spoil_carted);
    carted.says("Bank volume of spoil that must be carted away")
        .related({"UC.SPOIL.VOLUME", "UC.SPOIL.LOADS", "UC.SPOIL.KEPT"})
        .also_called("surplus spoil, muck away, disposal, export, haul off")
        .equation("V_b - V_k, V_k as UC.SPOIL.KEPT")
        .source(balance_source)
        .example("UC.SPOIL.CARTED(\"1193 m3\"; \"55 %\"; \"421 m3\"; \"loam\")", "725.222", "5e-4",
                 Origin::from_memory, loam_job)
        .example("UC.SPOIL.CARTED(\"3000 yd3\"; 1; \"817 yd3\"; 0.85995086; \"yd3\")", "2049.946", "5e-4",
                 Origin::mathematics,
                 "inputs of an estimating textbook: 2800 lb/yd3 in the bank and 3256 compacted");
    return takes_balance(carted).gives("V", "Bank volume to cart away");
}

Function mass_entry() {
    return function("UC.FILL.MASS", &calc::fill_mass)
        .says("Mass of fill to buy for a compacted volume")
        .related({"UC.FILL.IMPORT", "UC.COMPACTION.DRY", "UC.ORDER", "UC.SPOIL.LOADS"})
        .also_called("tonnes of fill, weight of backfill, order of fill, imported tonnage")
        .equation("M = V D rho_max (1 + w)(1 + waste)")
        .source("mass balance")
        .example("UC.FILL.MASS(\"100 m3\"; \"95 %\"; \"1920 kg/m3\"; \"10 %\"; \"5 %\"; \"t\")", "210.672",
                 "1e-12 rel", Origin::mathematics, "100 x 0.95 x 1.92 x 1.1 x 1.05")
        .example("UC.FILL.MASS(\"100 yd3\"; 1; \"120 lb/ft3\"; ; ; \"short ton\")", "162", "1e-9 rel",
                 Origin::mathematics, "2700 ft3 of 120 lb/ft3")
        .takes("compacted volume", "V", "Volume to fill, compacted")
        .within(usual::dug_volume)
        .takes("degree", "D", "Relative compaction wanted, such as 95 %")
        .within(usual::compaction)
        .takes("greatest dry density", "rho_max", "Greatest dry density of the laboratory's compaction test")
        .within(usual::greatest_density)
        .takes("moisture", "w", "Mass of water per mass of dry soil as delivered", 0.0)
        .within(usual::moisture)
        .takes("waste", "waste", "Share added for spillage", 0.0)
        .within(usual::waste)
        .gives("M", "Mass to buy");
}

}  // namespace

std::vector<Function> spoil_balance_functions() {
    return {spoil_convert_entry(), kept_entry(), import_entry(), carted_entry(), mass_entry()};
}

}  // namespace undercroft::addin
