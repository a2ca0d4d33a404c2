/// \file bed_cost.hpp
/// What a bed costs by a list of rates: the items of an order list and of a bill that depend on its size.
#pragma once

#include <optional>
#include <vector>

#include "calc/works/bed_quantities.hpp"
#include "units/quantity.hpp"

namespace undercroft::calc {

/// What is priced; how each is counted stands beside it.
enum class CostItem {
    pit,              ///< bank volume
    slopes,           ///< area of the pit's walls
    formation,        ///< area
    spoil_loads,      ///< truckloads away
    spoil_away,       ///< loose volume, such as tipping
    bedding_stone,    ///< mass as weighed
    embedment_stone,  ///< mass as weighed
    bedding_laid,     ///< volume
    embedment_laid,   ///< volume
    initial_bought,   ///< mass as weighed
    general_bought,   ///< mass as weighed
    fill_laid,        ///< volume compacted
    subbase,          ///< volume
    pavement,         ///< volume
    fabric_rolls,     ///< whole rolls
    fabric_laid,      ///< net area, with laps
    units_set,        ///< units in all
    ports,            ///< inspection ports
    rows,             ///< length of all rows, such as for the camera
};

/// One row of a list of rates. An item may stand in several rows: bought, then laid.
struct Rate {
    CostItem item;
    Share waste;
    std::optional<Quantity> pack;
    Quantity rate;
};

/// What of a bed is priced beyond its quantities.
struct CountedBed {
    Count units;
    Count ports;
    Count fabric_rolls;
    Length rows;
};

/// Net quantity of an item.
[[nodiscard]] Quantity net_of(CostItem item, const BedQuantities& quantities, const CountedBed& counted);

/// Cost by all rates, each `cost` of `order`, in their order. \throws Refused as these.
[[nodiscard]] Money cost_of(const std::vector<Rate>& rates, const BedQuantities& quantities,
                            const CountedBed& counted);

/// An amount of money by itself; its currency is that of the rates.
[[nodiscard]] Money money_of(const Quantity& amount);

/// The currency that all rates are in. \throws Refused(value) for a rate that is not money per unit, or two
/// currencies; Refused(domain) for no rate.
[[nodiscard]] Dimension currency_of(const std::vector<Quantity>& rates);

}  // namespace undercroft::calc
