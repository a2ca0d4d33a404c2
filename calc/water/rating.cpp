#include "calc/water/rating.hpp"

#include <algorithm>
#include <functional>
#include <string>

#include "calc/water/outlet.hpp"
#include "calc/water/stops.hpp"

namespace undercroft::calc {

namespace {

/// What one row of the outlet table passes, by the depth above its level.
struct Law {
    std::function<Flow(Length)> flow;
    std::vector<Length> kinks;
};

/// One row, ready to be asked.
struct Outlet {
    Length level;
    double number;
    Law law;

    [[nodiscard]] Flow flow_at(Length depth) const {
        return depth > level ? number * law.flow(depth - level) : zero;
    }
};

template <class Q>
Q column(const char* name, const Quantity& value) {
    try {
        return as<Q>(value);
    } catch (const Refused& refused) {
        throw refused.after(std::string(name) + " (" + text_of(value) + ") ");
    }
}

template <class Q>
Q column(const char* name, const std::optional<Quantity>& value, Q fallback) {
    return value ? column<Q>(name, *value) : fallback;
}

void refuse_column(const char* name, const std::optional<Quantity>& value) {
    if (value)
        refuse_value(std::string(name) + " (" + text_of(*value) + ") has no meaning here: leave it blank");
}

/// 0 at the level, 1 from the switching rise up.
double switched(Length above) {
    return std::clamp(static_cast<double>(above / switching_rise), 0.0, 1.0);
}

Law orifice(const Quantity& size, const std::optional<Quantity>& coefficient,
            const std::optional<Quantity>& sides) {
    const auto diameter = column<Length>("size", size);
    const auto c = column("coefficient", coefficient, share(0.6));
    refuse_column("sides", sides);
    return {[=](Length above) { return part_full_orifice_flow(diameter, above, c); }, {diameter}};
}

Law weir(const Quantity& size, const std::optional<Quantity>& coefficient,
         const std::optional<Quantity>& sides) {
    const auto crest_length = column<Length>("size", size);
    const auto c = column("coefficient", coefficient, sharp_crest);
    const auto contractions = column("sides", sides, count(0));
    return {[=](Length above) { return weir_flow(crest_length, above, c, contractions); }, {}};
}

Law notch(const Quantity& size, const std::optional<Quantity>& coefficient,
          const std::optional<Quantity>& sides) {
    const auto angle = column<Angle>("size", size);
    const auto c = column("coefficient", coefficient, sharp_notch);
    refuse_column("sides", sides);
    return {[=](Length above) { return notch_flow(angle, above, c); }, {}};
}

Law pump(const Quantity& size, const std::optional<Quantity>& coefficient,
         const std::optional<Quantity>& sides) {
    const auto flow = column<Flow>("size", size);
    require_positive("size", flow);
    refuse_column("coefficient", coefficient);
    refuse_column("sides", sides);
    return {[=](Length above) { return switched(above) * flow; }, {switching_rise}};
}

Law soakage(const Quantity& size, const std::optional<Quantity>& coefficient,
            const std::optional<Quantity>& sides) {
    const auto base = column<Area>("size", size);
    require_not_negative("size", base);
    if (!coefficient) refuse_value("coefficient: the soakage rate is missing, such as 36 mm/h");
    const auto rate = column<Speed>("coefficient", *coefficient);
    require_positive("coefficient", rate);
    const auto perimeter = column<Length>("sides", sides, zero);
    require_not_negative("sides", perimeter);
    return {[=](Length above) { return switched(above) * rate * (base + perimeter * above); },
            {switching_rise}};
}

Law law_of(OutletKind kind, const Quantity& size, const std::optional<Quantity>& coefficient,
           const std::optional<Quantity>& sides) {
    switch (kind) {
        case OutletKind::orifice:
            return orifice(size, coefficient, sides);
        case OutletKind::weir:
            return weir(size, coefficient, sides);
        case OutletKind::notch:
            return notch(size, coefficient, sides);
        case OutletKind::pump:
            return pump(size, coefficient, sides);
        case OutletKind::soakage:
            return soakage(size, coefficient, sides);
    }
    refuse_value("unknown kind of outlet");
}

Outlet outlet(const OutletTable::value_type& row, Length depth) {
    const auto& [kind, level, size, coefficient, equal_outlets, sides] = row;
    require_not_negative("level", level);
    const double n = require_whole("count", equal_outlets.value_or(count(1)));
    const Outlet made{level, n, law_of(kind, size, coefficient, sides)};
    (void)made.law.flow(std::max<Length>(depth - level, zero));  // refuses what no row would ask
    return made;
}

}  // namespace

RatingTable outlet_rating(const OutletTable& outlets, Length depth, Count steps) {
    require_positive("depth", depth);
    const double n = require_steps(steps);
    std::vector<Length> depths = equal_steps(depth, n);
    std::vector<Outlet> made;
    for (std::size_t i = 0; i < outlets.size(); ++i) {
        try {
            made.push_back(outlet(outlets[i], depth));
        } catch (const Refused& refused) {
            throw refused.at("outlet " + std::to_string(i + 1));
        }
        std::vector<Length> kinks = {made.back().level};
        for (const Length& kink : made.back().law.kinks) kinks.push_back(made.back().level + kink);
        add_kinks(depths, kinks);
    }

    RatingTable rating;
    for (const Length& d : depths) {
        Flow total = zero;
        for (const Outlet& each_outlet : made) total += each_outlet.flow_at(d);
        rating.emplace_back(d, total);
    }
    return rating;
}

}  // namespace undercroft::calc
