/// \file job_filler.hpp
/// Types a job's numbers into a workbook, as a person would, and confirms what was typed.
#pragma once

#include <com/sun/star/table/CellRangeAddress.hpp>
#include <com/sun/star/table/XCellRange.hpp>

#include <set>
#include <string>
#include <vector>

#include "sheets/builder/job_text.hpp"
#include "sheets/builder/sheet_text.hpp"
#include "sheets/builder/typed_range.hpp"
#include "sheets/office/office.hpp"

namespace undercroft::sheets {

class JobFiller {
public:
    /// \param sheets as text, from which the workbook was made
    JobFiller(const Document& document, const std::vector<Sheet>& sheets);

    /// Types all that the job has and this workbook knows. A row that computes or links is left as it is.
    void fill(const JobText& job);
    /// Types a number with its unit, or a text, and confirms it.
    void type(const std::string& key, const std::string& value);
    /// Types rows into a grid, a list or a column of one, from the first row down, and confirms these.
    void type_rows(const std::string& key, const std::vector<std::vector<std::string>>& rows);
    /// Puts the mark of what is confirmed beside every row of a key.
    void confirm(const std::string& key);
    /// Makes the cell of an input blank, with no mark.
    void clear(const std::string& key);
    /// Puts back all that was typed since the last time.
    void undo();

    /// Keys that this workbook knows of those that it was asked for.
    [[nodiscard]] const std::set<std::string>& used() const { return used_; }

private:
    using Cell = css::uno::Reference<css::table::XCell>;
    struct Change {
        Cell cell;
        rtl::OUString before;
    };

    void remember(const Cell& cell);
    void put_text(const Cell& cell, const std::string& text);
    void put_number(const Cell& cell, double number);
    void put_blank(const Cell& cell);
    void fill_cell(const css::uno::Reference<css::table::XCellRange>& range, sal_Int32 row, TypedField field,
                   const std::string& text);
    void mark(const css::table::CellRangeAddress& rows);
    [[nodiscard]] css::uno::Reference<css::table::XCellRange> range_of(const std::string& key) const;
    [[nodiscard]] TypedRange typed_range_of(const std::string& key) const;

    const Document& document_;
    const std::vector<Sheet>& sheets_;
    std::set<std::string> used_;
    std::vector<Change> changes_;
};

}  // namespace undercroft::sheets
