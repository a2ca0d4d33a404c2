#include "addin/audit/findings/workings.hpp"

namespace undercroft::audit {

Workings::Workings(const Book& audited)
    : book(audited), names(audited), formulas(audited), units(audited), labels(audited) {
    const UnitSources sources{book, names, units};
    readings.reserve(formulas.all().size());
    for (const FormulaCell& formula : formulas.all())
        readings.push_back(read_units(sources, formulas.group_of(formula), formula.at));
}

}  // namespace undercroft::audit
