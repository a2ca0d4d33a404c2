#include "calc/works/spoil_balance.hpp"

#include "calc/require.hpp"

namespace undercroft::calc {

namespace {

const Volume bank_unit = cubic_metre;

/// Volume in that state of one bank volume.
double factor(SpoilSoil soil, SoilState state, const std::optional<Share>& loose,
              const std::optional<Share>& compacted) {
    const auto of = [&](const std::optional<Share>& given, SpoilState spoil_state) {
        const auto source = given ? std::variant<SpoilSoil, Share>(*given) : soil;
        return static_cast<double>(spoil_volume(bank_unit, source, spoil_state) / bank_unit);
    };
    switch (state) {
        case SoilState::bank:
            return 1;
        case SoilState::loose:
            return of(loose, SpoilState::loose);
        case SoilState::compacted:
            return of(compacted, SpoilState::compacted);
    }
    refuse_value("unknown state");
}

struct Balance {
    Volume kept;      ///< bank
    Volume imported;  ///< compacted
    Volume carted;    ///< bank
};

Balance balance(Volume bank_volume, Share fit_share, Volume fill_needed,
                const std::variant<SpoilSoil, Share>& soil) {
    require_not_negative("bank volume", bank_volume);
    require_share("fit share", fit_share);
    require_not_negative("fill needed", fill_needed);
    const double compacted = spoil_volume(bank_unit, soil, SpoilState::compacted) / bank_unit;
    const Volume fit = number(fit_share) * bank_volume;
    const Volume wanted = fill_needed / compacted;
    // What is short or left over is the difference, and 0 to the last digit where nothing is.
    if (fit >= wanted) return {wanted, zero, bank_volume - wanted};
    return {fit, fill_needed - compacted * fit, bank_volume - fit};
}

}  // namespace

Volume spoil_converted(Volume volume, SpoilSoil soil, SoilState from, SoilState to,
                       std::optional<Share> loose_factor, std::optional<Share> compacted_factor) {
    require_not_negative("volume", volume);
    (void)factor(soil, SoilState::loose, loose_factor, {});  // refused whether they are needed or not
    (void)factor(soil, SoilState::compacted, {}, compacted_factor);
    if (from == to) return volume;
    return factor(soil, to, loose_factor, compacted_factor) /
           factor(soil, from, loose_factor, compacted_factor) * volume;
}

Volume spoil_kept(Volume bank_volume, Share fit_share, Volume fill_needed,
                  const std::variant<SpoilSoil, Share>& soil) {
    return balance(bank_volume, fit_share, fill_needed, soil).kept;
}

Volume fill_imported(Volume bank_volume, Share fit_share, Volume fill_needed,
                     const std::variant<SpoilSoil, Share>& soil) {
    return balance(bank_volume, fit_share, fill_needed, soil).imported;
}

Volume spoil_carted(Volume bank_volume, Share fit_share, Volume fill_needed,
                    const std::variant<SpoilSoil, Share>& soil) {
    return balance(bank_volume, fit_share, fill_needed, soil).carted;
}

Mass fill_mass(Volume compacted_volume, Share degree, Density greatest_dry_density, Share moisture,
               Share waste) {
    require_not_negative("compacted volume", compacted_volume);
    require_positive("degree", degree);
    require(degree <= share(1.2 + limit_tolerance), shown("degree", degree),
            " must be at most 1.2: it is a share, so a degree of compaction of 95 % is 0.95");
    require_positive("greatest dry density", greatest_dry_density);
    require_share("moisture", moisture);
    require_not_negative("waste", waste);
    return compacted_volume * greatest_dry_density *
           (number(degree) * (1 + number(moisture)) * (1 + number(waste)));
}

}  // namespace undercroft::calc
