#include "calc/works/bed_cost.hpp"

#include "calc/require.hpp"
#include "calc/works/takeoff.hpp"

namespace undercroft::calc {

Quantity net_of(CostItem item, const BedQuantities& quantities, const CountedBed& counted) {
    switch (item) {
        case CostItem::pit:
            return as_quantity(quantities.pit);
        case CostItem::slopes:
            return as_quantity(quantities.slopes);
        case CostItem::formation:
            return as_quantity(quantities.formation);
        case CostItem::spoil_loads:
            return as_quantity(quantities.spoil_loads);
        case CostItem::spoil_away:
            return as_quantity(quantities.spoil_away);
        case CostItem::bedding_stone:
            return as_quantity(quantities.bedding_stone);
        case CostItem::embedment_stone:
            return as_quantity(quantities.embedment_stone);
        case CostItem::bedding_laid:
            return as_quantity(quantities.bedding);
        case CostItem::embedment_laid:
            return as_quantity(quantities.embedment);
        case CostItem::initial_bought:
            return as_quantity(quantities.initial_bought);
        case CostItem::general_bought:
            return as_quantity(quantities.general_bought);
        case CostItem::fill_laid:
            return as_quantity(quantities.fill_laid);
        case CostItem::subbase:
            return as_quantity(quantities.subbase);
        case CostItem::pavement:
            return as_quantity(quantities.pavement);
        case CostItem::fabric_rolls:
            return as_quantity(counted.fabric_rolls);
        case CostItem::fabric_laid:
            return as_quantity(quantities.fabric);
        case CostItem::units_set:
            return as_quantity(counted.units);
        case CostItem::ports:
            return as_quantity(counted.ports);
        case CostItem::rows:
            return as_quantity(counted.rows);
    }
    refuse_value("unknown item of cost");
}

Money cost_of(const std::vector<Rate>& rates, const BedQuantities& quantities, const CountedBed& counted) {
    Money sum = zero;
    for (const Rate& rate : rates) {
        const Quantity ordered = order(net_of(rate.item, quantities, counted), rate.waste, rate.pack);
        sum += money_of(cost(ordered, rate.rate));
    }
    return sum;
}

Money money_of(const Quantity& amount) {
    return Money::from_value(amount.value);
}

Dimension currency_of(const std::vector<Quantity>& rates) {
    require(!rates.empty(), "there is no rate");
    std::optional<Currency> found;
    for (const Quantity& rate : rates) {
        if (rate.form == Quantity::Form::bare || !rate.dimension.is_money())
            refuse_value(text_of(rate) + " is no rate: it needs a currency and a unit, such as 85 AUD/t");
        const Currency currency = rate.dimension.currency();
        if (found && *found != currency)
            refuse_value("two currencies, " + std::string(found->begin(), found->end()) + " and " +
                         std::string(currency.begin(), currency.end()) +
                         ": rates of one job are in one, there is no rate of exchange here");
        found = currency;
    }
    return Dimension::of_currency(*found);
}

}  // namespace undercroft::calc
