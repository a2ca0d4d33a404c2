#include "sheets/office/result_units.hpp"

#include <com/sun/star/container/XEnumerationAccess.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <stdexcept>

#include "addin/formula/result_units.hpp"
#include "units/refused.hpp"

namespace undercroft::sheets {

namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

/// A sheet that may be written on while this is there.
class Opened {
public:
    explicit Opened(const Reference<css::sheet::XSpreadsheet>& sheet) : protection_(sheet, UNO_QUERY_THROW) {
        was_protected_ = protection_->isProtected();
        if (was_protected_) protection_->unprotect({});
        if (protection_->isProtected()) throw std::runtime_error("a sheet is protected with a password");
    }
    Opened(const Opened&) = delete;
    Opened& operator=(const Opened&) = delete;
    ~Opened() {
        if (was_protected_) protection_->protect({});
    }

private:
    Reference<css::util::XProtectable> protection_;
    bool was_protected_ = false;
};

/// The formula with its units, or as it is where it cannot be read.
std::string with_units(const std::string& formula) {
    try {
        return addin::with_result_units(formula);
    } catch (const Refused&) {
        return formula;
    }
}

bool write_units_of(const Reference<css::table::XCell>& cell) {
    const std::string formula = to_utf8(cell->getFormula());
    if (formula.starts_with("{")) return false;
    const std::string with = with_units(formula);
    if (with == formula) return false;
    cell->setFormula(to_ustring(with));
    return true;
}

}  // namespace

int write_result_units(const Document& document) {
    constexpr sal_Int32 any_result = css::sheet::FormulaResult::VALUE | css::sheet::FormulaResult::STRING |
                                     css::sheet::FormulaResult::ERROR;
    int written = 0;
    for (const std::string& name : document.sheet_names()) {
        const Reference<css::sheet::XSpreadsheet> sheet = document.sheet(name);
        const Opened opened(sheet);
        const Reference<css::sheet::XCellRangesQuery> query(sheet, UNO_QUERY_THROW);
        const Reference<css::container::XEnumeration> cells =
            query->queryFormulaCells(any_result)->getCells()->createEnumeration();
        while (cells->hasMoreElements()) {
            const Reference<css::table::XCell> cell(cells->nextElement(), UNO_QUERY_THROW);
            written += write_units_of(cell) ? 1 : 0;
        }
    }
    return written;
}

}  // namespace undercroft::sheets
