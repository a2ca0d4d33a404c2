/// \file bed_options.hpp
/// Every bed that fits a space, checked and priced: the cheapest that passes, and what the others fail by.
///
/// A search and no check of a design: each candidate is computed by the functions that the sheets call, on a
/// level formation; what governs beyond (uplift, factored loads, the batter of the walls, storms) is checked
/// in the whole job, where the chosen bed is entered.
#pragma once

#include <vector>

#include "calc/works/bed_cost.hpp"
#include "calc/works/bed_plans.hpp"

namespace undercroft::calc {

/// A kind of unit with its price.
struct PricedKind {
    ChamberKind unit;
    Quantity end_rate;     ///< money per each
    Quantity middle_rate;  ///< money per each
};

struct OptionsSite {
    Length length;  ///< at the base of the bed
    Length width;
    Length ground_length;  ///< free at ground level
    Length ground_width;
    Length edge_strip;  ///< kept clear along the edge of the pit
    Length side_margin;
    Length end_margin;
    Length not_counted;  ///< height under the top of the stone that does not count as storage
    Batter batter;
    Share porosity;
    Volume storage_wanted;
    Count port_interval;
    SiteGround ground;
    SiteTraffic traffic;
    SiteLayers over_stone;
    BoughtStone stone;
    Earthworks earth;
    SheetRoll roll;
};

struct OptionsJob {
    OptionsSite site;
    std::vector<PricedKind> kinds;
    std::vector<Rate> rates;
    Steps<Length> base_stone;
    Steps<Length> cover_stone;
    Steps<Count> rows;   ///< up to as many as fit
    Steps<Count> units;  ///< in a row, up to as many as fit
};

/// A bed of the search.
struct BedOption {
    Count kind;   ///< of the list of kinds, from 1
    bool across;  ///< its rows run across the length of the space
    Count rows;
    Count units;  ///< in a row
    Length base_stone;
    Length cover_stone;
    Length length;
    Length width;
    Length bed_depth;                   ///< finished surface to base
    Volume storage;                     ///< provided, less what the plastic of the units takes
    std::optional<Length> water_depth;  ///< at the storage wanted, where the bed holds it
    Volume pit;
    Mass stone;  ///< bedding and embedment
    Count all_units;
    Count fabric_rolls;
    Money cost;
    Worst worst;
    bool passes;
};

/// How many are kept.
struct Kept {
    std::size_t passing;  ///< the cheapest that pass
    std::size_t failing;  ///< of those that fail, the nearest to passing
};

/// Whether a bed that a bound shows to be no better than those kept is computed to its end all the same.
enum class Pruning { by_bounds, none };

struct Options {
    std::vector<BedOption> passing;  ///< the cheapest first
    std::vector<BedOption> failing;  ///< the nearest to passing first
    Dimension currency;
    Count candidates;
    Count passed;
};

/// The best of all beds that fit.
///
/// A candidate is a kind, rows, units in a row, a base and a cover stone whose bed fits the space with its
/// rows along it or, where its pit fits better so, across it. It passes where no check has a ratio above 1.
/// Beds of one cost, or of one ratio, stand in the order of kinds, rows, units, base and cover stone.
/// By bounds: the sum of the other costs and the least number of rolls is no more than a bed's cost, and what
/// a stack fails by is no more than what a bed on it fails by; a bed is left where the bound is no better
/// than the last one kept, so none of the best is lost.
/// \throws Refused(domain) for a range of nothing, a step not above 0, no bed that fits, more than a million
/// candidates, and as what computes them; Refused(value) for two currencies or a rate of another unit than
/// its item.
[[nodiscard]] Options bed_options(const OptionsJob& job, Kept kept, Pruning pruning = Pruning::by_bounds);

}  // namespace undercroft::calc
