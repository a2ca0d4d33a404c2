#include "calc/works/spoil.hpp"

#include "calc/require.hpp"

namespace undercroft::calc {

// US Army FM 5-434 (15 June 2000), Table 1-1, Soil conversion factors (from memory;
// tests/data/spoil-factors.csv has the whole table, whose columns agree to their rounding). "Coral" stands
// for coral comparable to lime rock.
const std::vector<SpoilFactors>& spoil_table() {
    static const std::vector<SpoilFactors> table = {
        {SpoilSoil::sand, share(1.11), share(0.95)},  {SpoilSoil::loam, share(1.25), share(0.90)},
        {SpoilSoil::clay, share(1.43), share(0.90)},  {SpoilSoil::rock, share(1.50), share(1.30)},
        {SpoilSoil::coral, share(1.50), share(1.30)},
    };
    return table;
}

namespace {

Share factor_of(const std::variant<SpoilSoil, Share>& soil, SpoilState state) {
    if (const Share* given = std::get_if<Share>(&soil)) {
        require_positive("soil factor", *given);
        if (state == SpoilState::loose && *given < share(1))
            refuse_domain(
                shown("soil factor", *given) +
                " must be at least 1: it is loose volume per bank volume, so a swell of 25 % is 1.25");
        return *given;
    }
    for (const SpoilFactors& row : spoil_table())
        if (row.soil == std::get<SpoilSoil>(soil))
            return state == SpoilState::loose ? row.bank_to_loose : row.bank_to_compacted;
    refuse_value("unknown soil");
}

}  // namespace

Volume spoil_volume(Volume bank_volume, const std::variant<SpoilSoil, Share>& soil, SpoilState state) {
    require_not_negative("bank volume", bank_volume);
    return number(factor_of(soil, state)) * bank_volume;
}

Count spoil_loads(Volume loose_volume, Volume truck_volume, std::optional<Density> density,
                  std::optional<Mass> payload) {
    require_not_negative("loose volume", loose_volume);
    require_positive("truck volume", truck_volume);
    if (density.has_value() != payload.has_value())
        refuse_value("density and payload go together: give both or neither");
    double loads = whole_up(loose_volume / truck_volume);
    if (density) {
        require_positive("density", *density);
        require_positive("payload", *payload);
        loads = std::max(loads, whole_up(loose_volume * *density / *payload));
    }
    return count(loads);
}

}  // namespace undercroft::calc
