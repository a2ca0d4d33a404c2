#include "calc/works/takeoff.hpp"

#include "calc/bare.hpp"
#include "calc/require.hpp"

namespace undercroft::calc {

Quantity order(const Quantity& net, Share waste, const std::optional<Quantity>& pack) {
    require(net.value >= 0, "net (", amount(net), ") must be 0 or more");
    require_not_negative("waste", waste);
    Quantity ordered = net;
    ordered.value *= 1 + number(waste);
    if (!pack) return ordered;
    require(pack->value > 0, "pack (", amount(*pack), ") must be above 0");
    require_unit_beside({net, "net"}, {*pack, "pack"});
    require_unit_beside({*pack, "pack"}, {net, "net"});
    const bool both_bare = net.form == Quantity::Form::bare && pack->form == Quantity::Form::bare;
    if (net.form == Quantity::Form::bare && !both_bare)
        ordered = in_dimension_of("net", ordered, pack->dimension);
    const double size = both_bare ? pack->value : in_dimension_of("pack", *pack, ordered.dimension).value;
    ordered.value = whole_up(ordered.value / size) * size;
    return ordered;
}

Quantity cost(const Quantity& quantity, const Quantity& rate) {
    if (rate.form == Quantity::Form::bare || !rate.dimension.is_money())
        refuse_value("the rate needs a currency and a unit, such as 85 AUD/t");
    require(rate.value >= 0, "rate (", amount(rate), ") must be 0 or more");
    const Dimension money = Dimension::of_currency(rate.dimension.currency());
    if (rate.dimension.sixths(Base::money) != Dimension::parts)
        refuse_value("the rate must be money per unit, such as 85 AUD/t");
    const Dimension priced_by = money.per(rate.dimension);
    require_unit_beside({quantity, "quantity"}, {{1, priced_by}, "unit of the rate"});
    return {in_dimension_of("quantity", quantity, priced_by).value * rate.value, money};
}

Time crew_time(const Quantity& quantity, const Quantity& output_rate, Count crews) {
    const double n = require_whole("crews", crews, 1);
    if (output_rate.form == Quantity::Form::bare)
        refuse_value("the output rate needs a unit, such as 12 each/h or 40 m3/d");
    require(output_rate.value > 0, "output rate (", amount(output_rate), ") must be above 0");
    const Dimension work = output_rate.dimension.times(Dimension::of(Base::time));
    require_unit_beside({quantity, "units"}, {{1, work}, "output rate"});
    const Quantity done = in_dimension_of("units", quantity, work);
    require(done.value >= 0, "units (", amount(quantity), ") must be 0 or more");
    return Time::from_value(done.value / (output_rate.value * n));
}

}  // namespace undercroft::calc
