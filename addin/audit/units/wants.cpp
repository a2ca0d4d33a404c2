#include "addin/audit/units/wants.hpp"

#include "addin/catalogue/catalogue.hpp"
#include "units/dimension.hpp"
#include "units/quantity.hpp"
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

/// Units of the columns of the function that a kind of table is named after.
std::vector<std::string> columns_written(const std::string& kind) {
    static constexpr std::string_view named = "columns of ";
    const std::size_t at = kind.find(named);
    const addin::Function* function =
        at == std::string::npos ? nullptr : addin::find_function(kind.substr(at + named.size()));
    std::vector<std::string> units;
    if (function != nullptr)
        for (const addin::Column& column : function->outcome.columns) units.push_back(column.unit);
    return units;
}

}  // namespace

std::vector<std::int32_t> Want::places_beside(std::int32_t width) const {
    std::vector<std::int32_t> places;
    std::int32_t place = 0;
    for (const bool with_unit : units_beside) {
        places.push_back(place);
        place += with_unit ? 2 : 1;
    }
    const bool beside = place == width && place > static_cast<std::int32_t>(units_beside.size());
    return beside ? places : std::vector<std::int32_t>{};
}

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
        for (std::string& column : want.columns)
            if (column == "-") column.clear();  // as good as none, though it reads as the unit of a number
        want.as_written = columns_written(kind);
        want.units_beside = parameter.units_beside;
    } else if (kind == name_of(dimension_of<Batter>()) || kind == name_of(dimension_of<Gradient>())) {
        want.kind = Kind::plain;
        want.unit_text = std::string("1");
        want.unit.dimension =
            kind == name_of(dimension_of<Batter>()) ? dimension_of<Batter>() : dimension_of<Gradient>();
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
