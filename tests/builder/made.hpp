/// \file made.hpp
/// Small workbooks made of a few lines of sheet text, and their cells asked for by address.
#pragma once

#include <pugixml.hpp>
#include <string>
#include <vector>

#include "sheets/builder/compose.hpp"
#include "sheets/builder/helper_columns.hpp"
#include "sheets/builder/lines.hpp"
#include "sheets/builder/sheet_text.hpp"
#include "tests/support/catch.hpp"

namespace undercroft::tests {

using sheets::SheetCell;
using sheets::SheetGrid;
using sheets::System;
using sheets::WorkbookGrid;
using Type = SheetCell::Type;

/// The row that a line of a sheet reads as.
inline sheets::Row row_of(const std::string& line) {
    const sheets::Sheet sheet = sheets::read_sheet("sheet Pit | A pit\n" + line + "\n");
    REQUIRE(sheet.rows.size() == 1);
    return sheet.rows.front();
}

/// The same as a row of that kind.
template <class Kind>
Kind kind_of(const std::string& line) {
    const sheets::Row row = row_of(line);
    REQUIRE(row.is<Kind>());
    return *row.as<Kind>();
}

/// What is said of a sheet text that cannot be read; empty when it can. The lines stand behind `sheet`.
inline std::string mistake_in(const std::string& lines) {
    try {
        (void)sheets::read_sheet("sheet Pit | A pit\n" + lines + "\n");
    } catch (const sheets::TextMistake& mistake) {
        return mistake.what();
    }
    return {};
}

/// A workbook of these sheets, in their order.
inline WorkbookGrid workbook_of(const std::vector<std::string>& texts, System system = System::si) {
    std::vector<sheets::Sheet> sheets;
    sheets::WorkbookText workbook{"small", "A small job", {}};
    for (const std::string& text : texts) {
        sheets.push_back(sheets::read_sheet(text));
        workbook.sheets.push_back(sheets.back().name);
    }
    return sheets::compose(workbook, sheets, system);
}

/// What is said of a workbook that cannot be made; empty when it can.
inline std::string mistake_of(const std::vector<std::string>& texts, System system = System::si) {
    try {
        (void)workbook_of(texts, system);
    } catch (const std::runtime_error& error) {
        return error.what();
    }
    return {};
}

/// The sheet of a workbook of one, from lines behind `sheet Pit | A pit`.
inline SheetGrid sheet_of(const std::string& lines, System system = System::si) {
    return workbook_of({"sheet Pit | A pit\n" + lines + "\n"}, system).sheets.front();
}

inline const SheetGrid& sheet_named(const WorkbookGrid& workbook, std::string_view name) {
    for (const SheetGrid& sheet : workbook.sheets)
        if (sheet.name == name) return sheet;
    FAIL("there is no sheet " << name);
    throw std::logic_error("not reached");
}

/// Row and column of `G7`.
inline std::pair<int, int> place_of(const std::string& address) {
    int column = 0;
    std::size_t i = 0;
    for (; i < address.size() && address[i] >= 'A'; ++i) column = column * 26 + (address[i] - 'A' + 1);
    return {std::stoi(address.substr(i)) - 1, column - 1};
}

/// The cell at an address; a blank one without a style where there is none.
inline SheetCell cell_at(const SheetGrid& sheet, const std::string& address) {
    const auto found = sheet.cells.find(place_of(address));
    return found == sheet.cells.end() ? SheetCell{} : found->second;
}

inline std::string text_at(const SheetGrid& sheet, const std::string& address) {
    const SheetCell cell = cell_at(sheet, address);
    return cell.type == Type::text ? cell.text : std::string();
}

/// Without the `of:=`; empty for a cell that is no formula.
inline std::string formula_at(const SheetGrid& sheet, const std::string& address) {
    const SheetCell cell = cell_at(sheet, address);
    return cell.type == Type::formula && cell.text.starts_with("of:=") ? cell.text.substr(4) : std::string();
}

/// The address of a helper cell on a row of an upright sheet: `helper(7, Helper::demand)` for the row of G7.
inline std::string helper(int row, sheets::Helper which) {
    static const sheets::Sheet upright;
    return sheets::cell_text(row - 1, sheets::helper_column(upright, which));
}
/// The same as a formula refers to it.
inline std::string helper_cell(int row, sheets::Helper which) {
    return "[." + helper(row, which) + "]";
}
inline std::string helper_formula(const SheetGrid& sheet, int row, sheets::Helper which) {
    return formula_at(sheet, helper(row, which));
}

inline const sheets::Validation& validation_at(const WorkbookGrid& workbook, const SheetGrid& sheet,
                                               const std::string& address) {
    const std::string name = cell_at(sheet, address).validation;
    for (const sheets::Validation& validation : workbook.validations)
        if (validation.name == name) return validation;
    FAIL("no validation at " << address);
    throw std::logic_error("not reached");
}

/// Where a name of the workbook is; empty when there is no such name.
inline std::string address_of(const WorkbookGrid& workbook, const std::string& name) {
    for (const sheets::NamedRange& range : workbook.names)
        if (range.name == name) return range.address;
    return {};
}

/// A workbook's file, read again.
inline pugi::xml_document parsed(const WorkbookGrid& workbook) {
    pugi::xml_document document;
    const std::string text = sheets::flat_document(workbook);
    REQUIRE(document.load_buffer(text.data(), text.size(), pugi::parse_full | pugi::parse_ws_pcdata));
    return document;
}

}  // namespace undercroft::tests
