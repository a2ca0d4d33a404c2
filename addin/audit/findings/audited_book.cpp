#include "addin/audit/findings/audited_book.hpp"

#include <algorithm>

#include "addin/audit/units/unit_reader.hpp"

namespace undercroft::audit {

AuditedBook::AuditedBook(const Book& audited, UnitTexts& read)
    : book(audited),
      texts(read),
      names(audited),
      formulas(audited),
      units(audited, read),
      labels(audited, read) {
    const UnitSources sources{book, names, formulas, units};
    ErrorsToExplain errors;
    readings.reserve(formulas.all().size());
    uses_.reserve(formulas.all().size());
    for (const FormulaCell& formula : formulas.all())
        uses_.push_back(uses_of(book, names, formulas.group_of(formula), formula.at));
    for (const FormulaCell& formula : formulas.all())
        readings.push_back(read_units(sources, formulas.group_of(formula), formula.at, errors));
    errors_unexplained = std::max(0, -errors.left);
}

}  // namespace undercroft::audit
