/// \file takeoff.hpp
/// From net quantities to an order: waste, whole packs, cost, time.
#pragma once

#include <optional>

#include "units/quantity.hpp"

namespace undercroft::calc {

/// Quantity to order: net plus waste, rounded up to whole packs where a pack is given.
///
/// q = ceil(net (1 + waste) / pack) pack. Common practice.
/// \throws Refused(domain) for a net or waste below 0 or a pack not above 0; Refused(value) when net and
/// pack are of two dimensions, or one of them is bare beside a quantity.
[[nodiscard]] Quantity order(const Quantity& net, Share waste, const std::optional<Quantity>& pack);

/// Cost of a quantity at a rate such as 85 AUD/t; the result is money of the rate's currency.
/// \throws Refused(value) for a rate that is not money per unit, or whose unit is not of the quantity's
/// dimension, and for a bare quantity where the rate is neither per piece nor per number; Refused(domain) for
/// a rate below 0.
[[nodiscard]] Quantity cost(const Quantity& quantity, const Quantity& rate);

/// Time for crews to do a quantity of work at an output rate of one crew: t = q / (r n). Common practice.
/// \throws Refused(value) for a rate without a unit, when quantity over rate is no time, or for a bare
/// quantity of other than things; Refused(domain) for a rate not above 0, a quantity below 0, or crews that
/// are no whole number of at least 1.
[[nodiscard]] Time crew_time(const Quantity& quantity, const Quantity& output_rate, Count crews);

}  // namespace undercroft::calc
