#include "addin/uno/read_book.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XEnumerationAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/document/XEmbeddedScripts.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/ValidationType.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/sheet/XSheetAnnotation.hpp>
#include <com/sun/star/sheet/XSheetAnnotations.hpp>
#include <com/sun/star/sheet/XSheetAnnotationsSupplier.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XUniqueCellFormatRangesSupplier.hpp>
#include <com/sun/star/table/CellRangeAddress.hpp>
#include <com/sun/star/table/XCell.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/table/XTableChart.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>
#include <com/sun/star/text/XSimpleText.hpp>
#include <com/sun/star/util/CellProtection.hpp>
#include <com/sun/star/util/Date.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>

#include "addin/uno/read_format.hpp"

namespace undercroft::addin {

using audit::Book;
using audit::BookCell;
using audit::BookSheet;
using css::container::XNameAccess;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using Addresses = Sequence<css::table::CellRangeAddress>;

namespace {

constexpr sal_Int32 rows_at_once = 2000;
constexpr sal_Int32 most_rows_measured = 5000;
constexpr sal_Int32 lowest_row = 150;  // in hundredths of a millimetre
constexpr sal_Int32 white = 0xFFFFFF;
constexpr sal_Int16 content = css::sheet::CellFlags::VALUE | css::sheet::CellFlags::DATETIME |
                              css::sheet::CellFlags::STRING | css::sheet::CellFlags::FORMULA;

template <class T>
T property(const Reference<css::beans::XPropertySet>& properties, const char* name, T otherwise) {
    const rtl::OUString key = rtl::OUString::createFromAscii(name);
    if (properties.is() && properties->getPropertySetInfo()->hasPropertyByName(key))
        properties->getPropertyValue(key) >>= otherwise;
    return otherwise;
}

Reference<XNameAccess> collection(const Reference<css::uno::XInterface>& owner, const char* name) {
    return Reference<XNameAccess>(property(Reference<css::beans::XPropertySet>(owner, UNO_QUERY), name,
                                           Reference<css::uno::XInterface>()),
                                  UNO_QUERY);
}

Addresses content_of(const Reference<css::uno::XInterface>& range, sal_Int16 flags) {
    const Reference<css::sheet::XCellRangesQuery> query(range, UNO_QUERY_THROW);
    return query->queryContentCells(flags)->getRangeAddresses();
}

audit::CellValue value_of(const Any& value) {
    const Scalar scalar = to_scalar(value);
    if (const double* number = std::get_if<double>(&scalar)) return *number;
    if (std::holds_alternative<std::u16string_view>(scalar))
        return to_string(*static_cast<const rtl::OUString*>(value.getValue()));
    return {};
}

class SheetReader {
public:
    SheetReader(const Reference<css::sheet::XSpreadsheet>& sheet, std::int32_t place,
                const Reference<css::util::XNumberFormats>& formats)
        : sheet_(sheet), place_(place), formats_(formats) {}

    BookSheet read() {
        const Reference<css::beans::XPropertySet> properties(sheet_, UNO_QUERY_THROW);
        made_.name = to_string(Reference<css::container::XNamed>(sheet_, UNO_QUERY_THROW)->getName());
        made_.hidden = !property(properties, "IsVisible", true);
        made_.is_protected = Reference<css::util::XProtectable>(sheet_, UNO_QUERY_THROW)->isProtected();
        const Addresses filled = content_of(sheet_, content);
        for (const css::table::CellRangeAddress& area : filled) read_area(area);
        mark_formulas();
        read_formats();
        if (!filled.hasElements()) return std::move(made_);
        read_hidden(filled);
        read_low_rows();
        read_comments();
        return std::move(made_);
    }

private:
    void read_area(const css::table::CellRangeAddress& area) {
        for (sal_Int32 first = area.StartRow; first <= area.EndRow; first += rows_at_once) {
            const sal_Int32 last = std::min(first + rows_at_once - 1, area.EndRow);
            const Reference<css::table::XCellRange> range =
                sheet_->getCellRangeByPosition(area.StartColumn, first, area.EndColumn, last);
            const auto values = Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->getDataArray();
            const auto typed =
                Reference<css::sheet::XCellRangeFormula>(range, UNO_QUERY_THROW)->getFormulaArray();
            for (sal_Int32 r = 0; r < values.getLength(); ++r)
                for (sal_Int32 c = 0; c < values[r].getLength(); ++c)
                    add(first + r, area.StartColumn + c, values[r][c], typed[r][c]);
        }
    }

    void add(sal_Int32 row, sal_Int32 column, const Any& value, const rtl::OUString& typed) {
        BookCell cell;
        cell.row = row;
        cell.column = column;
        cell.value = value_of(value);
        // Whether it is a formula, or a text that looks like one, is found out afterwards.
        if (typed.startsWith("=") || typed.startsWith("{=")) cell.formula = to_string(typed);
        made_.cells.push_back(std::move(cell));
    }

    /// Cells by place, once they are all there.
    BookCell* find(sal_Int32 row, sal_Int32 column) {
        const auto found =
            std::lower_bound(made_.cells.begin(), made_.cells.end(), std::pair(row, column),
                             [](const BookCell& cell, const std::pair<sal_Int32, sal_Int32>& at) {
                                 return std::pair(cell.row, cell.column) < at;
                             });
        const bool there = found != made_.cells.end() && found->row == row && found->column == column;
        return there ? &*found : nullptr;
    }

    template <class Visit>
    void each_cell(const css::table::CellRangeAddress& area, const Visit& visit) {
        auto at = std::lower_bound(made_.cells.begin(), made_.cells.end(), area.StartRow,
                                   [](const BookCell& cell, sal_Int32 row) { return cell.row < row; });
        for (; at != made_.cells.end() && at->row <= area.EndRow; ++at)
            if (at->column >= area.StartColumn && at->column <= area.EndColumn) visit(*at);
    }

    void mark_formulas() {
        std::sort(made_.cells.begin(), made_.cells.end(), [](const BookCell& a, const BookCell& b) {
            return std::pair(a.row, a.column) < std::pair(b.row, b.column);
        });
        std::vector<bool> is_formula(made_.cells.size());
        for (const css::table::CellRangeAddress& area : content_of(sheet_, css::sheet::CellFlags::FORMULA))
            each_cell(area, [&](BookCell& cell) {
                is_formula[static_cast<std::size_t>(&cell - made_.cells.data())] = true;
            });
        for (std::size_t i = 0; i < made_.cells.size(); ++i) {
            BookCell& cell = made_.cells[i];
            if (!is_formula[i]) {
                cell.formula.clear();
                continue;
            }
            if (std::holds_alternative<std::monostate>(cell.value))
                cell.error = sheet_->getCellByPosition(cell.column, cell.row)->getError();
            if (cell.formula.starts_with("{=")) read_array(cell);
        }
    }

    /// `{=...}` stands in every cell of an array formula.
    void read_array(BookCell& cell) {
        cell.formula = cell.formula.substr(1, cell.formula.size() - 2);
        if (cell.array >= 0) return;  // seen from its first cell
        const Reference<css::sheet::XSheetCellRange> range(
            sheet_->getCellRangeByPosition(cell.column, cell.row, cell.column, cell.row), UNO_QUERY_THROW);
        const Reference<css::sheet::XSheetCellCursor> cursor = sheet_->createCursorByRange(range);
        cursor->collapseToCurrentArray();
        const css::table::CellRangeAddress area =
            Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
        made_.arrays.push_back({place_, area.StartRow, area.StartColumn, area.EndRow, area.EndColumn});
        const auto array = static_cast<std::int32_t>(made_.arrays.size()) - 1;
        each_cell(area, [&](BookCell& member) { member.array = array; });
    }

    void read_formats() {
        const Reference<css::sheet::XUniqueCellFormatRangesSupplier> supplier(sheet_, UNO_QUERY);
        if (!supplier.is()) return;
        const Reference<css::container::XIndexAccess> formats = supplier->getUniqueCellFormatRanges();
        for (sal_Int32 i = 0; i < formats->getCount(); ++i) {
            const Reference<css::sheet::XSheetCellRanges> ranges(formats->getByIndex(i), UNO_QUERY_THROW);
            const auto place = static_cast<std::uint32_t>(made_.formats.size());
            const Reference<css::beans::XPropertySet> properties(ranges, UNO_QUERY_THROW);
            made_.formats.push_back(format_of(properties));
            const bool merged = property(properties, "IsMerged", false);
            for (const css::table::CellRangeAddress& area : ranges->getRangeAddresses()) {
                if (merged) read_merged(area);
                each_cell(area, [&](BookCell& cell) { cell.format = place; });
            }
        }
    }

    audit::CellFormat format_of(const Reference<css::beans::XPropertySet>& properties) {
        audit::CellFormat format;
        format.style = to_string(property(properties, "CellStyle", rtl::OUString()));
        format.locked =
            property(properties, "CellProtection", css::util::CellProtection(true, false, false, false))
                .IsLocked;
        format.number = number_format_of(properties, formats_);
        format.words = format_words_of(properties, formats_);
        const auto background = property(properties, "CellBackColor", sal_Int32{-1});
        format.unseen =
            property(properties, "CharColor", sal_Int32{-1}) == (background < 0 ? white : background);
        const auto validation = property(properties, "Validation", Reference<css::beans::XPropertySet>());
        format.has_list =
            property(validation, "Type", css::sheet::ValidationType_ANY) == css::sheet::ValidationType_LIST;
        return format;
    }

    /// Cells shown as one: a format of their own marks where they begin.
    void read_merged(const css::table::CellRangeAddress& area) {
        for (sal_Int32 row = area.StartRow; row <= area.EndRow; ++row)
            for (sal_Int32 column = area.StartColumn; column <= area.EndColumn; ++column) {
                const Reference<css::sheet::XSheetCellRange> cell(
                    sheet_->getCellRangeByPosition(column, row, column, row), UNO_QUERY_THROW);
                const Reference<css::sheet::XSheetCellCursor> cursor = sheet_->createCursorByRange(cell);
                cursor->collapseToMergedArea();
                const css::table::CellRangeAddress all =
                    Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
                made_.merged.push_back({place_, all.StartRow, all.StartColumn, all.EndRow, all.EndColumn});
            }
    }

    /// Rows that hold something and are too low for it to be read; in a sheet of many rows there is no
    /// looking at each.
    void read_low_rows() {
        const Reference<css::container::XIndexAccess> rows(
            Reference<css::table::XColumnRowRange>(sheet_, UNO_QUERY_THROW)->getRows(), UNO_QUERY_THROW);
        std::int32_t last = -1;
        sal_Int32 looked_at = 0;
        for (const BookCell& cell : made_.cells) {
            if (cell.row == last || made_.hidden_rows.contains(cell.row)) continue;
            last = cell.row;
            if (++looked_at > most_rows_measured) return;
            const Reference<css::beans::XPropertySet> row(rows->getByIndex(cell.row), UNO_QUERY_THROW);
            if (property(row, "Height", sal_Int32{1000}) < lowest_row) made_.flat_rows.insert(cell.row);
        }
    }

    void read_comments() {
        const Reference<css::sheet::XSheetAnnotationsSupplier> supplier(sheet_, UNO_QUERY);
        if (!supplier.is()) return;
        const Reference<css::sheet::XSheetAnnotations> comments = supplier->getAnnotations();
        for (sal_Int32 i = 0; i < comments->getCount(); ++i) {
            const Reference<css::sheet::XSheetAnnotation> comment(comments->getByIndex(i), UNO_QUERY_THROW);
            const css::table::CellAddress at = comment->getPosition();
            made_.comments.push_back(
                {at.Row, at.Column,
                 to_string(Reference<css::text::XSimpleText>(comment, UNO_QUERY_THROW)->getString())});
        }
    }

    void read_hidden(const Addresses& filled) {
        css::table::CellRangeAddress all = filled[0];
        for (const css::table::CellRangeAddress& area : filled) {
            all.StartColumn = std::min(all.StartColumn, area.StartColumn);
            all.StartRow = std::min(all.StartRow, area.StartRow);
            all.EndColumn = std::max(all.EndColumn, area.EndColumn);
            all.EndRow = std::max(all.EndRow, area.EndRow);
        }
        const Reference<css::sheet::XCellRangesQuery> query(
            sheet_->getCellRangeByPosition(all.StartColumn, all.StartRow, all.EndColumn, all.EndRow),
            UNO_QUERY_THROW);
        std::vector<bool> rows(static_cast<std::size_t>(all.EndRow) + 1);
        std::vector<bool> columns(static_cast<std::size_t>(all.EndColumn) + 1);
        for (const css::table::CellRangeAddress& area : query->queryVisibleCells()->getRangeAddresses()) {
            std::fill(rows.begin() + area.StartRow, rows.begin() + area.EndRow + 1, true);
            std::fill(columns.begin() + area.StartColumn, columns.begin() + area.EndColumn + 1, true);
        }
        for (const BookCell& cell : made_.cells) {
            if (!rows[static_cast<std::size_t>(cell.row)]) made_.hidden_rows.insert(cell.row);
            if (!columns[static_cast<std::size_t>(cell.column)]) made_.hidden_columns.insert(cell.column);
        }
    }

    Reference<css::sheet::XSpreadsheet> sheet_;
    std::int32_t place_;
    Reference<css::util::XNumberFormats> formats_;
    BookSheet made_;
};

void read_names(const Reference<css::uno::XInterface>& owner, std::int32_t sheet, Book& book) {
    const Reference<XNameAccess> names = collection(owner, "NamedRanges");
    if (!names.is()) return;
    for (const rtl::OUString& name : names->getElementNames()) {
        const Reference<css::sheet::XNamedRange> range(names->getByName(name), UNO_QUERY);
        if (!range.is()) continue;
        const css::table::CellAddress base = range->getReferencePosition();
        book.names.push_back(
            {to_string(name), to_string(range->getContent()), sheet, {base.Sheet, base.Row, base.Column}});
    }
}

/// The name by which an audit knows its own sheet says nothing else.
void take_audit_mark(std::int32_t sheet, Book& book) {
    const auto marks = std::erase_if(book.names, [&](const audit::DefinedName& name) {
        return name.sheet == sheet && name.name == audit::audit_sheet_mark;
    });
    book.sheets[static_cast<std::size_t>(sheet)].has_audit_mark = marks > 0;
}

void read_links(const Reference<css::sheet::XSpreadsheetDocument>& document, Book& book) {
    for (const char* kind : {"SheetLinks", "ExternalDocLinks", "DDELinks"}) {
        const Reference<XNameAccess> links = collection(document, kind);
        if (!links.is()) continue;
        for (const rtl::OUString& name : links->getElementNames()) book.links.push_back(to_string(name));
    }
    const Reference<css::beans::XPropertySet> properties(document, UNO_QUERY_THROW);
    const Reference<css::container::XIndexAccess> areas(
        property(properties, "AreaLinks", Reference<css::uno::XInterface>()), UNO_QUERY);
    for (sal_Int32 i = 0; areas.is() && i < areas->getCount(); ++i)
        book.links.push_back(to_string(property(
            Reference<css::beans::XPropertySet>(areas->getByIndex(i), UNO_QUERY), "Url", rtl::OUString())));
}

void read_properties(const Reference<css::sheet::XSpreadsheetDocument>& document, Book& book) {
    const Reference<css::document::XDocumentPropertiesSupplier> supplier(document, UNO_QUERY);
    if (!supplier.is()) return;
    const Reference<css::beans::XPropertySet> own(
        supplier->getDocumentProperties()->getUserDefinedProperties(), UNO_QUERY_THROW);
    for (const css::beans::Property& one : own->getPropertySetInfo()->getProperties()) {
        rtl::OUString text;
        if (own->getPropertyValue(one.Name) >>= text) book.properties[to_string(one.Name)] = to_string(text);
    }
}

void read_charts(const Reference<css::sheet::XSpreadsheet>& sheet, Book& book) {
    const Reference<css::table::XTableChartsSupplier> supplier(sheet, UNO_QUERY);
    if (!supplier.is()) return;
    const Reference<css::container::XIndexAccess> charts(supplier->getCharts(), UNO_QUERY);
    for (sal_Int32 i = 0; charts.is() && i < charts->getCount(); ++i) {
        const Reference<css::table::XTableChart> chart(charts->getByIndex(i), UNO_QUERY);
        if (!chart.is()) continue;
        for (const css::table::CellRangeAddress& area : chart->getRanges())
            book.charted.push_back(
                {area.Sheet, area.StartRow, area.StartColumn, area.EndRow, area.EndColumn});
    }
}

audit::FileKind kind_of(const Reference<css::sheet::XSpreadsheetDocument>& document) {
    const Reference<css::frame::XModel> model(document, UNO_QUERY_THROW);
    rtl::OUString filter;
    for (const css::beans::PropertyValue& argument : model->getArgs())
        if (argument.Name == "FilterName") argument.Value >>= filter;
    const std::string name = to_string(filter);
    if (name.find("2007") != std::string::npos || name.find("Office Open XML") != std::string::npos)
        return audit::FileKind::excel_2007;
    if (name.find("97") != std::string::npos || name.find("Excel 5") != std::string::npos)
        return audit::FileKind::excel_97;
    const bool open =
        name.empty() || name.starts_with("calc8") || name.find("OpenDocument") != std::string::npos;
    return open ? audit::FileKind::open_document : audit::FileKind::other;
}

bool holds_macros(const Reference<css::sheet::XSpreadsheetDocument>& document) {
    const Reference<css::document::XEmbeddedScripts> scripts(document, UNO_QUERY);
    const Reference<XNameAccess> libraries =
        scripts.is() ? Reference<XNameAccess>(scripts->getBasicLibraries(), UNO_QUERY)
                     : Reference<XNameAccess>();
    if (!libraries.is()) return false;
    for (const rtl::OUString& name : libraries->getElementNames()) {
        const Reference<XNameAccess> modules(libraries->getByName(name), UNO_QUERY);
        if (modules.is() && modules->hasElements()) return true;
    }
    return false;
}

void read_macros(const Reference<css::sheet::XSpreadsheetDocument>& document, Book& book) {
    const Reference<css::document::XEmbeddedScripts> scripts(document, UNO_QUERY);
    const Reference<XNameAccess> libraries =
        scripts.is() ? Reference<XNameAccess>(scripts->getBasicLibraries(), UNO_QUERY)
                     : Reference<XNameAccess>();
    if (!libraries.is()) return;
    for (const rtl::OUString& library : libraries->getElementNames()) {
        const Reference<XNameAccess> modules(libraries->getByName(library), UNO_QUERY);
        if (!modules.is()) continue;
        for (const rtl::OUString& module : modules->getElementNames()) {
            rtl::OUString source;
            modules->getByName(module) >>= source;
            book.macros.push_back(to_string(library + "." + module + " " + source));
        }
    }
    std::sort(book.macros.begin(), book.macros.end());
}

void add_results(const Reference<css::sheet::XSpreadsheet>& sheet, audit::StoredValues& results) {
    const std::string name = to_string(Reference<css::container::XNamed>(sheet, UNO_QUERY_THROW)->getName());
    for (const css::table::CellRangeAddress& area : content_of(sheet, css::sheet::CellFlags::FORMULA)) {
        const Reference<css::sheet::XCellRangeData> cells(
            sheet->getCellRangeByPosition(area.StartColumn, area.StartRow, area.EndColumn, area.EndRow),
            UNO_QUERY_THROW);
        const Sequence<Sequence<Any>> values = cells->getDataArray();
        for (sal_Int32 r = 0; r < values.getLength(); ++r)
            for (sal_Int32 c = 0; c < values[r].getLength(); ++c) {
                const sal_Int32 row = area.StartRow + r;
                const sal_Int32 column = area.StartColumn + c;
                audit::StoredValue result{value_of(values[r][c])};
                result.is_error = std::holds_alternative<std::monostate>(result.value) &&
                                  sheet->getCellByPosition(column, row)->getError() != 0;
                results.add(name, row, column, std::move(result));
            }
    }
}

}  // namespace

audit::StoredValues read_results(const Reference<css::sheet::XSpreadsheetDocument>& document) {
    audit::StoredValues results;
    const Reference<css::container::XIndexAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
    for (sal_Int32 i = 0; i < sheets->getCount(); ++i)
        add_results(Reference<css::sheet::XSpreadsheet>(sheets->getByIndex(i), UNO_QUERY_THROW), results);
    return results;
}

Book read_book(const Reference<css::sheet::XSpreadsheetDocument>& document) {
    Book book;
    const Reference<css::util::XNumberFormats> formats = number_formats_of(document);
    const Reference<css::container::XIndexAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
    for (sal_Int32 i = 0; i < sheets->getCount(); ++i) {
        const Reference<css::sheet::XSpreadsheet> sheet(sheets->getByIndex(i), UNO_QUERY_THROW);
        book.sheets.push_back(SheetReader(sheet, i, formats).read());
        read_names(sheet, i, book);
        take_audit_mark(i, book);
        read_charts(sheet, book);
    }
    read_names(document, -1, book);
    read_links(document, book);
    read_properties(document, book);
    const Reference<css::beans::XPropertySet> properties(document, UNO_QUERY_THROW);
    book.kind = kind_of(document);
    book.iterates = property(properties, "IsIterationEnabled", false);
    book.rounds_to_shown = property(properties, "CalcAsShown", false);
    book.computes_by_itself =
        Reference<css::sheet::XCalculatable>(document, UNO_QUERY_THROW)->isAutomaticCalculationEnabled();
    book.has_macros = holds_macros(document);
    const auto null_date = property(properties, "NullDate", css::util::Date());
    book.null_date = std::to_string(null_date.Year) + "-" + std::to_string(null_date.Month) + "-" +
                     std::to_string(null_date.Day);
    read_macros(document, book);
    book.index();
    return book;
}

}  // namespace undercroft::addin
