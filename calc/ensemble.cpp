#include "calc/ensemble.hpp"

#include "calc/arithmetic.hpp"

namespace undercroft::calc {

Quantity mean(const std::vector<Quantity>& amounts) {
    Quantity mean = sum(amounts);
    mean.value /= static_cast<double>(amounts.size());
    return mean;
}

Quantity next_above_mean(const std::vector<Quantity>& amounts) {
    const Quantity at_least_this = mean(amounts);
    std::vector<Quantity> above;
    for (const Quantity& amount : amounts)
        if (at_least(amount, at_least_this)) above.push_back(amount);
    return smallest(above);
}

}  // namespace undercroft::calc
