#include "sheets/office/errors.hpp"

#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>

#include "sheets/builder/cell_text.hpp"

namespace undercroft::sheets {

namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

struct Found {
    std::string sheet;
    std::string address;
    std::string shows;
};

/// Not a cell inside the range of an array formula that begins elsewhere.
bool begins_formula(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 column, sal_Int32 row) {
    const Reference<css::table::XCellRange> cell = sheet->getCellRangeByPosition(column, row, column, row);
    if (Reference<css::sheet::XArrayFormulaRange>(cell, UNO_QUERY_THROW)->getArrayFormula().isEmpty())
        return true;
    const Reference<css::sheet::XSheetCellRange> range(cell, UNO_QUERY_THROW);
    const Reference<css::sheet::XSheetCellCursor> cursor = sheet->createCursorByRange(range);
    cursor->collapseToCurrentArray();
    const Reference<css::sheet::XCellRangeAddressable> array(cursor, UNO_QUERY_THROW);
    const css::table::CellRangeAddress address = array->getRangeAddress();
    return address.StartColumn == column && address.StartRow == row;
}

std::vector<Found> find(const Document& document) {
    std::vector<Found> found;
    for (const std::string& name : document.sheet_names()) {
        const Reference<css::sheet::XSpreadsheet> sheet = document.sheet(name);
        const Reference<css::sheet::XCellRangesQuery> query(sheet, UNO_QUERY_THROW);
        const auto ranges = query->queryFormulaCells(css::sheet::FormulaResult::ERROR)->getRangeAddresses();
        for (const css::table::CellRangeAddress& range : ranges)
            for (sal_Int32 row = range.StartRow; row <= range.EndRow; ++row)
                for (sal_Int32 column = range.StartColumn; column <= range.EndColumn; ++column)
                    if (begins_formula(sheet, column, row))
                        found.push_back(
                            {name, cell_text(row, column), shown(sheet->getCellByPosition(column, row))});
    }
    return found;
}

}  // namespace

std::vector<CellError> errors_of(const Document& document) {
    const std::vector<Found> found = find(document);
    std::vector<CellError> errors;
    if (found.empty()) return errors;
    const rtl::OUString scratch = to_ustring("Reasons of errors");
    const Reference<css::sheet::XSpreadsheets> sheets = document.model()->getSheets();
    sheets->insertNewByName(scratch, static_cast<sal_Int16>(document.sheet_names().size()));
    const Reference<css::sheet::XSpreadsheet> sheet = document.sheet("Reasons of errors");
    for (const Found& error : found) {
        const Reference<css::table::XCell> cell = sheet->getCellByPosition(0, 0);
        cell->setFormula(to_ustring("=UC.WHY($'" + error.sheet + "'." + error.address + ")"));
        errors.push_back({error.sheet + "." + error.address, error.shows, shown(cell)});
    }
    sheets->removeByName(scratch);
    return errors;
}

void print_errors(const std::vector<CellError>& errors, std::ostream& out, const std::string& before) {
    constexpr int most = 20;
    int printed = 0;
    for (const CellError& error : errors)
        if (!error.comes_from_another() && ++printed <= most)
            out << before << "error in " << error.cell << ": " << error.shows << "  " << error.reason << "\n";
    if (!errors.empty()) out << before << errors.size() << " cells show an error\n";
}

}  // namespace undercroft::sheets
