// Numbers that look other than they are: divided by a thousand, rounded to next to nothing, or with another
// unit written behind.
#include <cmath>

#include "addin/audit/findings/findings.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

constexpr int fewest_safe_decimals = 1;  // with more a small number among large ones looks smaller still
constexpr double most_off = 0.1;         // of a number, by the digits that are not shown

std::string looks_otherwise(const AuditedBook& audited, const Spot& at, double number) {
    const NumberFormat& format = audited.format(at).number;
    if (format.thousands > 0)
        return "its number format shows it divided by " + exact_text(std::pow(1000, format.thousands));
    if (!format.unit.empty()) {
        const UnitText& shown = audited.texts.read(format.unit);
        const std::optional<UnitCell> given = audited.units.of(at);
        if (shown.unit && given && !same_unit(*shown.unit, *given->text->unit))
            return "its number format writes " + format.unit + " behind it, and its unit is " +
                   given->text->text;
    }
    const bool rounds = format.decimals >= 0 && format.decimals <= fewest_safe_decimals;
    if (format.shown_as != ShownAs::number || !rounds || number == 0) return {};
    // What a protected sheet keeps beside its rows, without a unit, is not for reading.
    const std::optional<UnitCell> unit = audited.units.of(at);
    if (audited.sheet(at.sheet).is_protected && !(unit && unit->beside)) return {};
    const double scale = std::pow(10, format.decimals);
    const double shown = std::round(number * scale) / scale;
    if (std::abs(shown - number) <= most_off * std::abs(number)) return {};
    return "it is " + rounded_text(number) + ", and its number format shows " + exact_text(shown);
}

}  // namespace

void find_shown_otherwise(const AuditedBook& audited, Findings& findings) {
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s)
        for (const BookCell& cell : audited.book.sheets[s].cells) {
            // Tables are shown as a whole, and what is locked and typed is no result.
            if (cell.number() == nullptr || cell.array >= 0) continue;
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            const bool is_fixed = audited.book.sheets[s].is_protected && audited.format(at).locked;
            if (!cell.is_formula() && is_fixed) continue;
            const std::string says = looks_otherwise(audited, at, *cell.number());
            if (!says.empty())
                findings.add(FindingKind::shown_otherwise, Severity::warning, at,
                             says + "; change the number format (Format > Cells > Numbers).");
        }
}

}  // namespace undercroft::audit
