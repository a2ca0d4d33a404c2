// Numbers that look other than they are: divided by a thousand, rounded to next to nothing, or with another
// unit written behind.
#include <cmath>

#include "addin/audit/findings/findings.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

constexpr double most_off = 0.1;  // of a number, by the digits that are not shown

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
    if (format.shown_as != ShownAs::number || format.decimals < 0 || number == 0) return {};
    const double scale = std::pow(10, format.decimals);
    const double shown = std::round(number * scale) / scale;
    if (std::abs(shown - number) <= most_off * std::abs(number)) return {};
    return "it is " + rounded_text(number) + ", and its number format shows " + exact_text(shown);
}

}  // namespace

void find_shown_otherwise(const AuditedBook& audited, Findings& findings) {
    for (std::size_t s = 0; s < audited.book.sheets.size(); ++s)
        for (const BookCell& cell : audited.book.sheets[s].cells) {
            if (cell.number() == nullptr) continue;
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            const std::string says = looks_otherwise(audited, at, *cell.number());
            if (!says.empty())
                findings.add(FindingKind::shown_otherwise, Severity::warning, at,
                             says + "; change the number format (Format > Cells > Numbers).");
        }
}

}  // namespace undercroft::audit
