#include "addin/uno/list_rows.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XEnumerationAccess.hpp>
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeMovement.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/table/XTableRows.hpp>
#include <com/sun/star/text/XTextRange.hpp>

#include <algorithm>
#include <set>

#include "addin/uno/growing_list.hpp"
#include "addin/uno/marshal.hpp"
#include "addin/uno/one_change.hpp"

namespace undercroft::addin {

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr sal_Int32 least_rows = 2;  // between two rows the ranges over a list grow
constexpr const char* no_list =
    "The cursor is in no list that grows: put it on a row of a list such as surfaces, outlets, layers, "
    "orders or "
    "tests, in a workbook made from a template.";

using Cells = std::vector<PageCell>;

/// Where some row of the list is typed in.
std::vector<bool> typed_columns(const GrowingList& list) {
    std::vector<bool> typed;
    for (sal_Int32 row = list.first_row; row <= list.last_row; ++row) {
        const Cells cells = list.cells(row);
        typed.resize(std::max(typed.size(), cells.size()), false);
        for (std::size_t c = 0; c < cells.size(); ++c) typed[c] = typed[c] || cells[c].is_entry();
    }
    return typed;
}

/// A cell that repeats another, or computes what other rows type in.
bool is_given(const PageCell& cell, bool column_is_typed) {
    return cell.is_link() ||
           (cell.holds == PageCell::Holds::formula && cell.is_locked && column_is_typed && !cell.is_unit());
}

/// Whether the row is one of the template's own: it has wording or numbers that are not typed in.
bool is_fixed(const GrowingList& list, sal_Int32 row) {
    const Cells cells = list.cells(row);
    const std::vector<bool> typed = typed_columns(list);
    for (std::size_t c = 0; c < cells.size(); ++c)
        if (cells[c].is_wording() || is_given(cells[c], typed[c])) return true;
    return false;
}

/// The row to copy: that with most to type in, of those one that is blank, of those the nearest.
sal_Int32 pattern_row(const GrowingList& list, sal_Int32 near) {
    sal_Int32 best = near;
    std::vector<std::ptrdiff_t> most;
    for (sal_Int32 row = list.first_row; row <= list.last_row; ++row) {
        const Cells cells = list.cells(row);
        const auto entries =
            std::count_if(cells.begin(), cells.end(), [](const PageCell& cell) { return cell.is_entry(); });
        const auto filled = std::count_if(cells.begin(), cells.end(), [](const PageCell& cell) {
            return cell.is_entry() && cell.holds != PageCell::Holds::nothing;
        });
        const std::vector<std::ptrdiff_t> merits = {entries, -filled, -std::abs(row - near)};
        if (merits > most) {
            most = merits;
            best = row;
        }
    }
    return best;
}

/// The formulas of a row, each made unlike its neighbours while a row is put in above it or it is taken out.
///
/// Calc (seen in 7.4) may break down where that cuts a run of equal formulas: the set of cells that nobody
/// looks at any more keeps a place in memory that is gone when the set grows (sc::ColumnSpanSet). So there is
/// no run.
class Parted {
public:
    Parted(const Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 row, sal_Int32 last_column) {
        const auto cells = Reference<css::sheet::XCellRangesQuery>(
                               sheet->getCellRangeByPosition(0, row, last_column, row), UNO_QUERY_THROW)
                               ->queryContentCells(css::sheet::CellFlags::FORMULA)
                               ->getCells()
                               ->createEnumeration();
        while (cells->hasMoreElements()) {
            cells_.emplace_back(cells->nextElement(), UNO_QUERY_THROW);
            const rtl::OUString formula = cells_.back()->getFormula();
            cells_.back()->setFormula("=(" + formula.copy(1) + ")");
        }
    }
    /// Puts them back, with what they look at where it stands now.
    void join() const {
        for (const Reference<css::table::XCell>& cell : cells_) {
            const rtl::OUString formula = cell->getFormula();
            cell->setFormula("=" + formula.copy(2, formula.getLength() - 3));
        }
    }

private:
    std::vector<Reference<css::table::XCell>> cells_;
};

class RowMaker {
public:
    explicit RowMaker(const GrowingList& list)
        : list_(list),
          typed_(typed_columns(list)),
          moves_(list.sheet, UNO_QUERY_THROW),
          rows_(Reference<css::table::XColumnRowRange>(list.sheet, UNO_QUERY_THROW)->getRows()),
          sheets_last_column_(Reference<css::sheet::XCellRangeAddressable>(list.sheet, UNO_QUERY_THROW)
                                  ->getRangeAddress()
                                  .EndColumn) {}

    void insert_above(sal_Int32 row) {
        const Parted parted(list_.sheet, row, sheets_last_column_);
        rows_->insertByIndex(row, 1);
        parted.join();
        ++list_.last_row;
    }
    void remove(sal_Int32 row) {
        const Parted parted(list_.sheet, row, sheets_last_column_);
        rows_->removeByIndex(row, 1);
    }
    /// What looks at the row alone follows it.
    void move(sal_Int32 from, sal_Int32 to) {
        moves_->moveRange(address(to), whole(from));
        set_height(to, height(from));
    }
    /// What the row shows that will be copied: what is put in anew is not computed before all is done.
    void look_at(sal_Int32 row) {
        shown_.clear();
        for (sal_Int32 column = 0; column <= list_.last_column + 1; ++column)
            shown_.push_back(shown(row, column));
    }
    void copy(sal_Int32 from, sal_Int32 to) {
        moves_->copyRange(address(to), whole(from));
        set_height(to, height(from));
    }
    /// Leaves the formulas, and blank what is to be typed in. \return the first column of that
    sal_Int32 make_blank(sal_Int32 row) {
        const Cells cells = list_.cells(row);
        sal_Int32 first = -1;
        for (std::size_t c = 0; c < cells.size(); ++c) {
            const auto column = static_cast<sal_Int32>(c);
            const bool given = is_given(cells[c], typed_[c]);
            if (cells[c].style == "Ref") continue;
            if (cells[c].style == "ListText") {
                put(row, column, {}, "TextEntry");
            } else if (given) {
                put(row, column, {}, style_of_entry(column));
                if (c + 1 < cells.size() && cells[c + 1].style == "UnitLink")
                    put(row, column + 1, shown_.at(c + 1), "UnitEntry");
            } else if (cells[c].is_entry() || cells[c].is_mark()) {
                put(row, column, {});
            } else {
                continue;
            }
            if (first < 0) first = column;
        }
        forget_template(row, static_cast<sal_Int32>(cells.size()));
        return std::max<sal_Int32>(first, 0);
    }
    /// A reference of its own, behind that of the row above: Fl7a. Those of other rows stay as they are.
    void number(sal_Int32 row) {
        std::set<rtl::OUString> taken;
        for (sal_Int32 r = list_.first_row; r <= list_.last_row; ++r)
            if (r != row) taken.insert(shown(r, 0));
        rtl::OUString stem = shown(std::max(row - 1, list_.first_row), 0);
        if (stem.isEmpty()) return;
        while (stem.getLength() > 0 && stem[stem.getLength() - 1] >= 'a')
            stem = stem.copy(0, stem.getLength() - 1);
        for (int i = 0;; ++i) {
            rtl::OUString reference = stem;
            constexpr int letters = 26;
            if (i >= letters) reference += rtl::OUString(static_cast<sal_Unicode>('a' + i / letters - 1));
            reference += rtl::OUString(static_cast<sal_Unicode>('a' + i % letters));
            if (!taken.contains(reference)) return put(row, 0, reference);
        }
    }

private:
    [[nodiscard]] css::table::CellAddress address(sal_Int32 row) const {
        return {static_cast<sal_Int16>(list_.sheet_index), 0, row};
    }
    [[nodiscard]] css::table::CellRangeAddress whole(sal_Int32 row) const {
        return {static_cast<sal_Int16>(list_.sheet_index), 0, row, sheets_last_column_, row};
    }
    [[nodiscard]] Any height(sal_Int32 row) const {
        return properties_of_row(row)->getPropertyValue("Height");
    }
    void set_height(sal_Int32 row, const Any& height) const {
        properties_of_row(row)->setPropertyValue("Height", height);
    }
    [[nodiscard]] Reference<css::beans::XPropertySet> properties_of_row(sal_Int32 row) const {
        return {rows_->getByIndex(row), UNO_QUERY_THROW};
    }
    [[nodiscard]] rtl::OUString shown(sal_Int32 row, sal_Int32 column) const {
        return Reference<css::text::XTextRange>(list_.sheet->getCellByPosition(column, row), UNO_QUERY_THROW)
            ->getString();
    }
    void put(sal_Int32 row, sal_Int32 column, const rtl::OUString& content,
             const std::string& style = {}) const {
        const Reference<css::table::XCell> cell = list_.sheet->getCellByPosition(column, row);
        if (!content.isEmpty())
            Reference<css::text::XTextRange>(cell, UNO_QUERY_THROW)
                ->setString(content);  // the unit 1 is no number
        else if (cell->getType() != css::table::CellContentType_EMPTY)
            cell->setFormula({});
        if (!style.empty())
            Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)
                ->setPropertyValue("CellStyle", Any(to_oustring(style)));
    }
    /// The style in which other rows type in what this one is given.
    [[nodiscard]] std::string style_of_entry(sal_Int32 column) const {
        for (sal_Int32 row = list_.first_row; row <= list_.last_row; ++row) {
            const PageCell cell = list_.cells(row).at(static_cast<std::size_t>(column));
            if (cell.is_entry()) return cell.style;
        }
        return "Entry";
    }
    /// The numbers that the template had in the row that was copied are not those of this one.
    void forget_template(sal_Int32 row, sal_Int32 from_column) const {
        for (sal_Int32 column = from_column; column <= list_.last_column; ++column) {
            const Reference<css::table::XCell> cell = list_.sheet->getCellByPosition(column, row);
            if (cell->getType() == css::table::CellContentType_VALUE) cell->setFormula({});
        }
    }

    GrowingList list_;
    std::vector<bool> typed_;
    std::vector<rtl::OUString> shown_;
    Reference<css::sheet::XCellRangeMovement> moves_;
    Reference<css::table::XTableRows> rows_;
    sal_Int32
        sheets_last_column_;  // what moves takes along the cells that are still blank, and are looked at
};

GrowingList list_under(const Reference<css::frame::XModel>& document, const css::table::CellAddress& cursor) {
    const auto list = growing_list_at(document, cursor.Sheet, cursor.Row);
    if (!list) throw NotDone(no_list);
    return *list;
}

/// Formulas of the workbook that have lost a cell they looked at.
std::size_t lost_references(const Reference<css::frame::XModel>& document) {
    constexpr sal_Int32 no_reference = 524;
    const Reference<css::container::XEnumerationAccess> sheets(
        Reference<css::sheet::XSpreadsheetDocument>(document, UNO_QUERY_THROW)->getSheets(), UNO_QUERY_THROW);
    std::size_t lost = 0;
    for (const auto all = sheets->createEnumeration(); all->hasMoreElements();) {
        const Reference<css::sheet::XCellRangesQuery> sheet(all->nextElement(), UNO_QUERY_THROW);
        const auto cells =
            sheet->queryFormulaCells(css::sheet::FormulaResult::ERROR)->getCells()->createEnumeration();
        while (cells->hasMoreElements())
            if (Reference<css::table::XCell>(cells->nextElement(), UNO_QUERY_THROW)->getError() ==
                no_reference)
                ++lost;
    }
    return lost;
}

}  // namespace

css::table::CellAddress add_row(const Reference<css::frame::XModel>& document,
                                const css::table::CellAddress& cursor) {
    const GrowingList list = list_under(document, cursor);
    if (list.rows() >= list.most)
        throw NotDone("The list is full: the sheets read its " + std::to_string(list.rows()) +
                      " rows and no more. Use one that is blank.");
    if (list.rows() < least_rows) throw NotDone("The list has one row and takes no other.");
    const sal_Int32 at = std::clamp(cursor.Row, list.first_row, list.last_row);
    sal_Int32 pattern = pattern_row(list, at);
    const bool is_last = at == list.last_row;
    const bool stays_last = is_last && is_fixed(list, at);
    OneChange change(document, list.sheet, "Add a row");
    RowMaker rows(list);
    rows.look_at(pattern);
    // Always between two rows, so that all ranges over the list grow.
    const sal_Int32 inserted = is_last ? at : at + 1;
    rows.insert_above(inserted);
    if (pattern >= inserted) ++pattern;
    sal_Int32 made = inserted;
    if (is_last && !stays_last) {
        rows.move(inserted + 1, inserted);
        if (pattern == inserted + 1) pattern = inserted;
        made = inserted + 1;
    }
    rows.copy(pattern, made);
    const sal_Int32 column = rows.make_blank(made);
    rows.number(made);
    change.finish();
    return {cursor.Sheet, column, made};
}

void remove_row(const Reference<css::frame::XModel>& document, const css::table::CellAddress& cursor) {
    const GrowingList list = list_under(document, cursor);
    if (cursor.Row < list.first_row || cursor.Row > list.last_row)
        throw NotDone("The cursor is on no row of the list: put it on the row that is to go.");
    if (list.rows() <= least_rows)
        throw NotDone("The list has the fewest rows that it may have, " + std::to_string(list.rows()) +
                      ". Leave the row blank: it is passed over.");
    if (is_fixed(list, cursor.Row))
        throw NotDone(
            "The row is the template's own: wording or numbers in it are not typed in. Leave it, and blank "
            "what you may type in where it does not apply.");
    const std::size_t before = lost_references(document);
    OneChange change(document, list.sheet, "Remove a row");
    RowMaker(list).remove(cursor.Row);
    change.finish();
    if (lost_references(document) > before) {
        change.take_back();
        throw NotDone(
            "A formula outside of the list looks at this row alone, and would lose it: change that formula "
            "first, or leave the row blank.");
    }
}

}  // namespace undercroft::addin
