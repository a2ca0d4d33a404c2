/// \file terms.hpp
/// On what terms the numbers of one call are taken: the limits of the argument that is read, and what the
/// other arguments came in.
#pragma once

#include "addin/catalogue/limits.hpp"

namespace undercroft::addin {

/// What the arguments of one call were given in, so far.
struct Mixture {
    bool customary = false;  ///< one of them in a unit of the US customary or imperial system
    int bare = -1;           ///< the first argument with a dimension that came without a unit, not 0
};

struct Terms {
    const Limits* limits = nullptr;
    Mixture* mixture = nullptr;
    int argument = 0;

    /// Before a quantity is read in `dimension`. \throws Refused for a bare number that is unusual.
    void meet(const Quantity& quantity, const Dimension& dimension) const;
    /// The same where any dimension is read. \throws Refused for a bare 0, which a blank cell gives.
    void meet_any(const Quantity& quantity) const;
    /// After it. \throws Refused for a quantity that is impossible.
    void meet_possible(const Quantity& quantity, double coherent) const {
        if (limits != nullptr && quantity.form != Quantity::Form::bare) limits->check(coherent);
    }
    /// Of a pair whose unit is `%`. \throws Refused where its cell is plainly one that Calc shows in percent.
    void meet_percent_pair(double coherent) const {
        if (limits != nullptr) limits->check_percent_pair(coherent);
    }
    [[nodiscard]] Terms of_column(std::size_t column) const {
        const bool stated = limits != nullptr && column < limits->columns.size();
        return {stated ? &limits->columns[column] : nullptr, mixture, argument};
    }
};

}  // namespace undercroft::addin
