#include "addin/audit/wants.hpp"

#include "units/dimension.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

std::vector<std::string> parted(const std::string& text) {
    std::vector<std::string> parts(1);
    for (const char c : text) {
        if (c == ';')
            parts.emplace_back();
        else if (c != ' ' || !parts.back().empty())
            parts.back() += c;
    }
    return parts;
}

}  // namespace

Want want_of(const addin::Parameter& parameter) {
    Want want;
    using Kind = Want::Kind;
    const std::string& kind = parameter.kind;
    if (kind == "a unit" || kind == "units") {
        want.kind = Kind::unit;
    } else if (kind == "a quantity") {
        want.kind = Kind::any;
    } else if (kind.starts_with("a range of two columns")) {
        want.kind = Kind::amounts;
    } else if (kind.starts_with("a table") || kind.starts_with("a grid") || kind.starts_with("a column")) {
        want.kind = Kind::table;
        want.columns = parted(parameter.unit);
    } else if (parameter.unit == run_per_rise) {
        want.kind = Kind::plain;
        want.unit_text = std::string("1");
    } else if (!parameter.unit.empty()) {
        want.unit_text = parameter.unit;
        try {
            want.unit = parse_unit(parameter.unit);
            const bool plain =
                want.unit.dimension.is_number() || want.unit.dimension == Dimension::of(Base::count);
            want.kind = plain ? Kind::plain : Kind::dimension;
        } catch (const Refused&) {  // a default that is no unit wants nothing of one
            want.kind = Kind::nothing;
        }
    }
    return want;
}

bool multiplies(const addin::Function& function) {
    return function.name == "UC.PRODUCT" || function.name == "UC.QUOTIENT" || function.name == "UC.COST" ||
           function.name == "UC.CONVERT";
}

}  // namespace undercroft::audit
