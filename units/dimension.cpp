#include "units/dimension.hpp"

#include <cstdlib>
#include <numeric>

#include "units/refused.hpp"

namespace undercroft {

namespace {

constexpr std::array<const char*, base_count> letters = {"L", "M",      "T",        "A",
                                                         "N", "batter", "gradient", "money"};

std::string code_text(const Currency& code) {
    return {code.data(), code.size()};
}

Currency common_currency(const Dimension& a, const Dimension& b) {
    if (a.is_money() && b.is_money() && a.currency() != b.currency())
        refuse_value("two currencies do not mix: " + code_text(a.currency()) + " and " +
                     code_text(b.currency()));
    return a.is_money() ? a.currency() : b.currency();
}

[[noreturn]] void refuse_power() {
    refuse_value("the power of a unit must be a whole number, a half or a third, and small");
}

/// An exponent as it is kept; one that is too large to be kept would come back as another.
std::int8_t kept(int sixths) {
    if (std::abs(sixths) > 120) refuse_power();
    return static_cast<std::int8_t>(sixths);
}

}  // namespace

Dimension Dimension::of_currency(Currency code) {
    Dimension d = of(Base::money);
    d.currency_ = code;
    return d;
}

Dimension Dimension::times(const Dimension& other) const {
    Dimension product;
    const Currency code = common_currency(*this, other);
    for (std::size_t i = 0; i < base_count; ++i) product.sixths_[i] = kept(sixths_[i] + other.sixths_[i]);
    if (product.is_money()) product.currency_ = code;
    return product;
}

Dimension Dimension::per(const Dimension& other) const {
    return times(other.to_the(-1));
}

Dimension Dimension::to_the(int numerator, int denominator) const {
    Dimension power;
    for (std::size_t i = 0; i < base_count; ++i) {
        const int scaled = sixths_[i] * numerator;
        if (scaled % denominator != 0) refuse_power();
        power.sixths_[i] = kept(scaled / denominator);
    }
    if (power.is_money()) power.currency_ = currency_;
    return power;
}

Dimension Dimension::without_ratios() const {
    Dimension left = *this;
    for (const Base ratio : {Base::count, Base::batter, Base::gradient})
        left.sixths_[static_cast<std::size_t>(ratio)] = 0;
    return left;
}

std::string exponent_text(int sixths) {
    if (sixths == Dimension::parts) return {};
    const int divisor = std::gcd(sixths, Dimension::parts);
    const std::string numerator = std::to_string(sixths / divisor);
    if (divisor == Dimension::parts) return numerator;
    return "^(" + numerator + "/" + std::to_string(Dimension::parts / divisor) + ")";
}

std::string Dimension::text() const {
    std::string text;
    for (std::size_t i = 0; i < base_count; ++i) {
        const int n = sixths_[i];
        if (n == 0) continue;
        if (!text.empty()) text += ' ';
        const bool named_currency = static_cast<Base>(i) == Base::money && currency_ != Currency{};
        text += named_currency ? code_text(currency_) : std::string(letters[i]);
        text += exponent_text(n);
    }
    return text.empty() ? "1" : text;
}

// One default unit a dimension, the same in every function; addin/FUNCTIONS.md shows it beside each argument.
const std::vector<NamedDimension>& named_dimensions() {
    static const std::vector<NamedDimension> table = {
        {dimension_of<Length>(), "a length", "m", "m", "12 m, 305 mm or 12 ft 6 in"},
        {dimension_of<Area>(), "an area", "m2", "m2", "360 m2, 0.5 ha or 2 acre"},
        {dimension_of<Volume>(), "a volume", "m3", "m3", "250 m3 or 1.5 acre-ft"},
        {dimension_of<Time>(), "a time", "min", "s", "30 min or 24 h"},
        {dimension_of<Flow>(), "a flow", "L/s", "m3/s", "12 L/s, 0.5 m3/s or 3 cfs"},
        {dimension_of<Speed>(), "a speed", "mm/h", "m/s", "25 mm/h, 0.3 m/s or 2 in/h"},
        {dimension_of<Acceleration>(), "an acceleration", "m/s2", "m/s2", "9.81 m/s2"},
        {dimension_of<Angle>(), "an angle", "deg", "rad", "34 deg"},
        {dimension_of<Mass>(), "a mass", "kg", "kg", "38 kg, 2.5 t or 84 lb"},
        {dimension_of<Force>(), "a force", "kN", "N", "80 kN or 16 kip"},
        {dimension_of<LineLoad>(), "a line load", "kN/m", "N/m", "75 kN/m"},
        {dimension_of<Pressure>(), "a pressure", "kPa", "Pa", "150 kPa or 3000 psf"},
        {dimension_of<Density>(), "a density", "kg/m3", "kg/m3", "1600 kg/m3 or 100 lb/ft3"},
        {dimension_of<UnitWeight>(), "a unit weight", "kN/m3", "N/m3", "18 kN/m3 or 120 lbf/ft3"},
        {dimension_of<MassPerArea>(), "a mass per area", "g/m2", "kg/m2", "270 g/m2 or 8 oz/yd2"},
        {dimension_of<WeirCoefficient>(), "a weir coefficient", "m^0.5/s", "m^0.5/s",
         "1.84 m^0.5/s or 3.33 ft^0.5/s"},
        {dimension_of<decltype(Share() / Time())>(), "a permittivity", "1/s", "1/s", "0.5 1/s"},
        {dimension_of<decltype(Area() / Time())>(), "a coefficient of consolidation", "m2/d", "m2/s",
         "0.01 m2/d or 0.1 ft2/d"},
        {dimension_of<Share>(), "a number or share", "1", "1", "0.4 or 40 %"},
        {dimension_of<Count>(), "a count", "each", "each", "12 or 12 each"},
        {dimension_of<Batter>(), "a batter", run_per_rise, "1", "1.5H:1V or 34 deg"},
        {dimension_of<Gradient>(), "a gradient", "1", "1", "0.01, 1 % or 1V:100H"},
        {dimension_of<Money>(), "an amount of money", "", "", "85 AUD"},
    };
    return table;
}

const NamedDimension* find_named(const Dimension& dimension) {
    for (const NamedDimension& named : named_dimensions())
        if (named.dimension.same_kind(dimension)) return &named;
    return nullptr;
}

std::string name_of(const Dimension& dimension) {
    if (const NamedDimension* named = find_named(dimension)) return std::string(named->name);
    if (dimension.is_money()) return "a rate of money (" + dimension.text() + ")";
    return "a quantity of dimension " + dimension.text();
}

}  // namespace undercroft
