#include "sheets/office/job_filler.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/table/CellContentType.hpp>

#include <algorithm>
#include <optional>
#include <stdexcept>

#include "sheets/builder/dates.hpp"
#include "sheets/builder/layout.hpp"
#include "sheets/builder/numbers.hpp"

namespace undercroft::sheets {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

/// Rows that are typed in are computed once, not after each of them.
class PausedCalculation {
public:
    explicit PausedCalculation(const Document& document)
        : calculated_(document.model(), UNO_QUERY_THROW),
          was_on_(calculated_->isAutomaticCalculationEnabled()) {
        calculated_->enableAutomaticCalculation(false);
    }
    ~PausedCalculation() { calculated_->enableAutomaticCalculation(was_on_); }
    PausedCalculation(const PausedCalculation&) = delete;
    PausedCalculation& operator=(const PausedCalculation&) = delete;

private:
    Reference<css::sheet::XCalculatable> calculated_;
    bool was_on_;
};

}  // namespace

JobFiller::JobFiller(const Document& document, const std::vector<Sheet>& sheets)
    : document_(document), sheets_(sheets) {}

void JobFiller::fill(const JobText& job) {
    for (const auto& [key, value] : job.values) {
        if (!document_.has_name(key)) continue;
        used_.insert(key);
        if (document_.named(key)->getType() != css::table::CellContentType_FORMULA) type(key, value);
    }
    for (const auto& [key, rows] : job.rows) {
        if (!document_.has_name(key)) continue;
        used_.insert(key);
        type_rows(key, rows);
    }
    for (const std::string& key : job.confirmed) {
        if (!document_.has_name(key)) continue;
        used_.insert(key);
        confirm(key);
    }
}

void JobFiller::type(const std::string& key, const std::string& value) {
    const Cell cell = document_.named(key);
    const std::optional<NumberAndUnit> quantity = leading_number(value);
    const bool number = cell->getType() == css::table::CellContentType_VALUE;
    if (number && quantity) {
        put_number(cell, quantity->number);
        put_text(document_.named(key, 1), quantity->unit);
    } else {
        put_text(cell, "'" + value);  // as text, whatever it looks like
    }
    confirm(key);
}

void JobFiller::type_rows(const std::string& key, const std::vector<std::vector<std::string>>& rows) {
    const Reference<css::table::XCellRange> range = range_of(key);
    const TypedRange typed = typed_range_of(key);
    const PausedCalculation paused(document_);
    for (std::size_t r = 0; r < rows.size(); ++r) {
        if (rows[r].size() > typed.fields.size())
            throw std::runtime_error("the job's " + key + " has " + std::to_string(rows[r].size()) +
                                     " fields in a row; there are " + std::to_string(typed.fields.size()));
        for (std::size_t i = 0; i < rows[r].size(); ++i)
            fill_cell(range, typed.first_row + static_cast<sal_Int32>(r), typed.fields[i], rows[r][i]);
    }
    css::table::CellRangeAddress address =
        Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY_THROW)->getRangeAddress();
    address.StartRow += typed.first_row;
    address.EndRow = address.StartRow + static_cast<sal_Int32>(rows.size()) - 1;
    mark(address);
}

void JobFiller::confirm(const std::string& key) {
    mark(Reference<css::sheet::XCellRangeAddressable>(range_of(key), UNO_QUERY_THROW)->getRangeAddress());
}

void JobFiller::clear(const std::string& key) {
    put_blank(document_.named(key));
}

void JobFiller::undo() {
    const PausedCalculation paused(document_);
    for (auto change = changes_.rbegin(); change != changes_.rend(); ++change)
        change->cell->setFormula(change->before);
    changes_.clear();
}

void JobFiller::remember(const Cell& cell) {
    changes_.push_back({cell, cell->getFormula()});
}
void JobFiller::put_text(const Cell& cell, const std::string& text) {
    remember(cell);
    cell->setFormula(to_ustring(text));
}
void JobFiller::put_number(const Cell& cell, double number) {
    remember(cell);
    cell->setValue(number);
}
void JobFiller::put_blank(const Cell& cell) {
    put_text(cell, {});
}

/// "-" makes a cell blank and leaves the unit beside it; "=" leaves both as they are.
void JobFiller::fill_cell(const Reference<css::table::XCellRange>& range, sal_Int32 row, TypedField field,
                          const std::string& text) {
    if (text == "=") return;
    const Cell cell = range->getCellByPosition(field.column, row);
    const std::optional<NumberAndUnit> quantity = leading_number(text);
    const std::optional<double> day = field.is_day ? day_in(text) : std::nullopt;
    if (text == "-") {
        put_blank(cell);
    } else if (day) {
        put_number(cell, *day);
    } else if (quantity && (field.is_pair || quantity->unit.empty())) {
        put_number(cell, quantity->number);
        if (!quantity->unit.empty())
            put_text(range->getCellByPosition(field.column + 1, row), quantity->unit);
    } else {
        put_text(cell, "'" + text);  // as text, whatever it looks like
    }
}

void JobFiller::mark(const css::table::CellRangeAddress& rows) {
    const std::string name = document_.sheet_names().at(static_cast<std::size_t>(rows.Sheet));
    const auto sheet =
        std::find_if(sheets_.begin(), sheets_.end(), [&](const Sheet& s) { return s.name == name; });
    if (sheet == sheets_.end()) return;
    const Reference<css::sheet::XSpreadsheet> cells = document_.sheet(name);
    for (sal_Int32 row = rows.StartRow; row <= rows.EndRow; ++row) {
        const Cell cell = cells->getCellByPosition(mark_column(*sheet), row);
        rtl::OUString style;
        Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)->getPropertyValue("CellStyle") >>= style;
        if (to_utf8(style) == mark_style) put_text(cell, "x");
    }
}

Reference<css::table::XCellRange> JobFiller::range_of(const std::string& key) const {
    const Reference<css::beans::XPropertySet> properties(document_.model(), UNO_QUERY_THROW);
    const Reference<css::container::XNameAccess> names(properties->getPropertyValue("NamedRanges"),
                                                       UNO_QUERY_THROW);
    return Reference<css::sheet::XCellRangeReferrer>(names->getByName(to_ustring(key)), UNO_QUERY_THROW)
        ->getReferredCells();
}

TypedRange JobFiller::typed_range_of(const std::string& key) const {
    for (const Sheet& sheet : sheets_)
        for (const Row& row : sheet.rows)
            if (auto range = typed_range(row, key)) return std::move(*range);
    return {};
}

}  // namespace undercroft::sheets
