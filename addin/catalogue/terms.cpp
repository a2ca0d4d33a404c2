#include "addin/catalogue/terms.hpp"

namespace undercroft::addin {

namespace {

/// Whether a unit of it belongs to one system of units: times, angles and plain numbers do not.
bool has_system(const Dimension& dimension) {
    return dimension.sixths(Base::length) != 0 || dimension.sixths(Base::mass) != 0;
}

}  // namespace

void Terms::meet(const Quantity& quantity, const Dimension& dimension) const {
    if (quantity.form != Quantity::Form::bare) {
        if (mixture != nullptr) mixture->customary = mixture->customary || quantity.customary;
        return;
    }
    if (mixture != nullptr && mixture->bare < 0 && quantity.value != 0 && has_system(dimension))
        mixture->bare = argument;
    if (limits != nullptr) limits->check_bare(quantity.value);
}

void Terms::meet_any(const Quantity& quantity) const {
    const bool is_bare = quantity.form == Quantity::Form::bare;
    if (is_bare && limits != nullptr) limits->check_bare(quantity.value);
    if (mixture != nullptr) mixture->customary = mixture->customary || quantity.customary;
}

}  // namespace undercroft::addin
