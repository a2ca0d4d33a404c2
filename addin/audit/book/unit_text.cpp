#include "addin/audit/book/unit_text.hpp"

#include <cmath>

#include "units/refused.hpp"

namespace undercroft::audit {

const UnitText& UnitTexts::read(const std::string& text) {
    const auto [known, is_new] = texts_.try_emplace(text);
    if (is_new) {
        known->second.text = text;
        try {
            known->second.unit = parse_unit(text);
        } catch (const Refused& refused) {
            known->second.refusal = refused.what();
        }
    }
    return known->second;
}

bool same_unit(const Unit& a, const Unit& b) {
    const double ratio = a.scale.to_coherent(1) / b.scale.to_coherent(1);
    return a.dimension == b.dimension && std::abs(ratio - 1) < 1e-12;
}

}  // namespace undercroft::audit
