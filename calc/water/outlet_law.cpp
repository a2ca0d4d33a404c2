#include "calc/water/outlet_law.hpp"

#include <algorithm>
#include <cmath>
#include <string>

#include "calc/water/contracted_weir.hpp"
#include "calc/water/opening.hpp"
#include "calc/water/outlet.hpp"

namespace undercroft::calc {

namespace {

using OptionalQuantity = std::optional<Quantity>;

/// The columns of a row beside kind and level.
struct Columns {
    const Quantity& size;
    const OptionalQuantity& coefficient;
    const OptionalQuantity& sides;
};

struct Law {
    std::function<Flow(Length, Length)> flow;
    std::vector<Length> kinks;
    bool drowns = true;
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
Q column(const char* name, const OptionalQuantity& value, Q fallback) {
    return value ? column<Q>(name, *value) : fallback;
}

void refuse_column(const char* name, const OptionalQuantity& value) {
    if (value)
        refuse_value(std::string(name) + " (" + text_of(*value) + ") has no meaning here: leave it blank");
}

/// 0 at the level, 1 from the switching rise up.
double switched(Length above) {
    return std::clamp(static_cast<double>(above / switching_rise), 0.0, 1.0);
}

/// The free flow of a weir, drowned where the tailwater stands above its crest.
Flow drowned(Flow free_flow, Length above, Length tailwater, double exponent) {
    return drowned_weir_flow(free_flow, above, tailwater, share(exponent));
}

Law orifice(const Columns& row) {
    const auto diameter = column<Length>("size", row.size);
    const auto c = column("coefficient", row.coefficient, share(0.6));
    refuse_column("sides", row.sides);
    return {
        [=](Length above, Length tailwater) { return drowned_orifice_flow(diameter, above, c, tailwater); },
        {diameter}};
}

Law rectangle(const Columns& row) {
    const auto width = column<Length>("size", row.size);
    const auto c = column("coefficient", row.coefficient, share(0.6));
    if (!row.sides) refuse_value("sides: the height of the opening is missing, such as 100 mm");
    const auto height = column<Length>("sides", *row.sides);
    return {[=](Length above, Length tailwater) {
                return rectangular_orifice_flow(width, height, above, c, tailwater);
            },
            {height}};
}

Law weir(const Columns& row) {
    const auto crest_length = column<Length>("size", row.size);
    const auto c = column("coefficient", row.coefficient, sharp_crest);
    const auto contractions = column("sides", row.sides, count(0));
    return {[=](Length above, Length tailwater) {
                return drowned(weir_flow(crest_length, above, c, contractions), above, tailwater, 1.5);
            },
            {}};
}

/// Below its least head the flow goes with h^1.5 to nothing.
Law contracted(const Columns& row, Length level) {
    const auto crest_length = column<Length>("size", row.size);
    refuse_column("coefficient", row.coefficient);
    constexpr double wide = 1e6;  // of the crest: all contracted
    const auto channel_width = column("sides", row.sides, wide * crest_length);
    const auto free_flow = [=](Length above) {
        const Length head = std::max(above, least_weir_head);
        return contracted_weir_flow(crest_length, head, channel_width, level) * std::pow(above / head, 1.5);
    };
    return {[=](Length above, Length tailwater) { return drowned(free_flow(above), above, tailwater, 1.5); },
            {least_weir_head}};
}

Law notch(const Columns& row) {
    const auto angle = column<Angle>("size", row.size);
    const auto c = column("coefficient", row.coefficient, sharp_notch);
    refuse_column("sides", row.sides);
    return {[=](Length above, Length tailwater) {
                return drowned(notch_flow(angle, above, c), above, tailwater, 2.5);
            },
            {}};
}

Law riser(const Columns& row) {
    const auto diameter = column<Length>("size", row.size);
    const auto weir_c = column("coefficient", row.coefficient, sharp_crest);
    const auto orifice_c = column("sides", row.sides, share(0.6));
    const auto flow = [=](Length above, Length tailwater) {
        return riser_flow(diameter, above, weir_c, orifice_c, tailwater);
    };
    (void)flow(metre, zero);  // refuses coefficients that are none
    const Length meet = number(orifice_c) * diameter * (sqrt(2.0 * standard_gravity) / (4.0 * weir_c));
    return {flow, {meet}};
}

Law pump(const Columns& row) {
    const auto flow = column<Flow>("size", row.size);
    require_positive("size", flow);
    refuse_column("coefficient", row.coefficient);
    refuse_column("sides", row.sides);
    return {[=](Length above, Length) { return switched(above) * flow; }, {switching_rise}, false};
}

Law soakage(const Columns& row) {
    const auto base = column<Area>("size", row.size);
    require_not_negative("size", base);
    if (!row.coefficient) refuse_value("coefficient: the soakage rate is missing, such as 36 mm/h");
    const auto rate = column<Speed>("coefficient", *row.coefficient);
    require_positive("coefficient", rate);
    const auto perimeter = column<Length>("sides", row.sides, zero);
    require_not_negative("sides", perimeter);
    return {[=](Length above, Length) { return switched(above) * rate * (base + perimeter * above); },
            {switching_rise},
            false};
}

Law law_of(OutletKind kind, const Columns& row, Length level) {
    switch (kind) {
        case OutletKind::orifice:
            return orifice(row);
        case OutletKind::weir:
            return weir(row);
        case OutletKind::notch:
            return notch(row);
        case OutletKind::pump:
            return pump(row);
        case OutletKind::soakage:
            return soakage(row);
        case OutletKind::rectangle:
            return rectangle(row);
        case OutletKind::contracted:
            return contracted(row, level);
        case OutletKind::riser:
            return riser(row);
    }
    refuse_value("unknown kind of outlet");
}

}  // namespace

Flow OutletLaw::flow_at(Length depth, Length tailwater_level) const {
    const Length above = depth - level;
    if (above <= zero || (drowns && tailwater_level >= depth)) return zero;
    return number * flow(above, tailwater_level - level);
}

OutletLaw outlet_law(const OutletTable::value_type& row, Length depth) {
    const auto& [kind, level, size, coefficient, equal_outlets, sides] = row;
    require_not_negative("level", level);
    const double n = require_whole("count", equal_outlets.value_or(count(1)));
    Law law = law_of(kind, {size, coefficient, sides}, level);
    // Refuses what no row would ask: above the water nothing is asked of a law.
    const Length hair = 1e-6 * metre;
    (void)law.flow(std::max<Length>(depth - level, hair), zero);
    return {level, n, std::move(law.flow), std::move(law.kinks), law.drowns};
}

}  // namespace undercroft::calc
