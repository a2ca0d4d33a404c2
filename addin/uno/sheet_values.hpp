/// \file sheet_values.hpp
/// Values of a formula's parts, read from the sheet: references, names, and functions of Calc.
#pragma once

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/sheet/XFunctionAccess.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "addin/formula/evaluate.hpp"
#include "addin/uno/effort.hpp"

namespace css = com::sun::star;

namespace undercroft::addin {

/// "Site." for cells of the sheet Site.
[[nodiscard]] std::string sheet_prefix_of(const css::uno::Reference<css::table::XCellRange>& range);

/// Reads values on behalf of a formula that stands on one sheet of a document.
class SheetValues final : public Evaluator {
public:
    /// \param blamed becomes the cell for whose error a value was refused; a sentence has no room for it
    /// \param effort is spent on whatever is read
    SheetValues(const css::uno::Reference<css::uno::XComponentContext>& context,
                const css::uno::Reference<css::beans::XPropertySet>& document,
                const css::uno::Reference<css::sheet::XSpreadsheet>& own_sheet,
                css::uno::Reference<css::table::XCellRange>& blamed, Effort& effort,
                const std::optional<CellAddress>& own_cell = std::nullopt);

    /// The cells that a reference or a defined name stands for; empty when it stands for none.
    [[nodiscard]] css::uno::Reference<css::table::XCellRange> range_of(const Node& node) const;
    [[nodiscard]] const css::uno::Reference<css::uno::XComponentContext>& context() const { return context_; }
    [[nodiscard]] const css::uno::Reference<css::beans::XPropertySet>& document() const { return document_; }

protected:
    [[nodiscard]] FormulaValue value_of_reference(const Node& node) const override;
    [[nodiscard]] FormulaValue value_of_name(const Node& node) const override;
    [[nodiscard]] FormulaValue value_of_foreign_call(const Node& node) const override;
    [[nodiscard]] std::optional<CellReference> cells_of_name(const Node& node) const override;
    [[nodiscard]] std::optional<CellReference> cells_by_name(const Node& node) const override;
    [[nodiscard]] std::optional<CellAddress> own_cell() const override { return own_cell_; }
    [[nodiscard]] std::u16string joined_text(double number) const override;
    [[nodiscard]] bool ignores_case() const override;
    void forget_blame() const override { blamed_.clear(); }
    void before_call() const override;

private:
    [[nodiscard]] const css::uno::Reference<css::sheet::XFunctionAccess>& function_access() const;
    /// One cell, which Calc hands over by its value, and not a range of one.
    [[nodiscard]] bool stands_for_cell(const Node& node) const;
    /// What a name came to: a value, or a refusal and the cell that it blames.
    struct KnownName {
        std::variant<FormulaValue, Refused> outcome;
        css::uno::Reference<css::table::XCellRange> blamed;
    };
    /// What was looked at in one formula.
    struct Followed {
        std::map<std::string, KnownName> names;  ///< each is read once
        std::map<std::string, std::optional<CellReference>> cells_of_names;
        std::vector<std::string> around;  ///< names whose expressions stand around what is read
        css::uno::Reference<css::sheet::XFunctionAccess> calc;
    };

    [[nodiscard]] KnownName outcome_of_name(
        const std::string& name, const css::uno::Reference<css::sheet::XNamedRange>& defined) const;
    /// Spends on the cells of a range that is read.
    void count_cells(const css::uno::Reference<css::table::XCellRange>& range) const;
    /// Says which cell of a range holds an error. \throws Refused(value) when one does.
    void refuse_errors(const css::uno::Reference<css::table::XCellRange>& range,
                       const std::string& prefix) const;
    /// The name of this sheet or, where it has none of it, of the workbook; empty when there is none.
    [[nodiscard]] css::uno::Reference<css::sheet::XNamedRange> named(const std::string& name) const;
    /// "Site." for the cells of a name, or of a reference to another sheet.
    [[nodiscard]] static std::string prefix_of(const Node& node,
                                               const css::uno::Reference<css::table::XCellRange>& range);

    css::uno::Reference<css::uno::XComponentContext> context_;
    css::uno::Reference<css::beans::XPropertySet> document_;
    css::uno::Reference<css::sheet::XSpreadsheetDocument> sheets_;
    css::uno::Reference<css::sheet::XSpreadsheet> own_sheet_;
    css::uno::Reference<css::table::XCellRange>& blamed_;
    Effort& effort_;
    std::optional<CellAddress> own_cell_;
    std::unique_ptr<Followed> followed_ = std::make_unique<Followed>();
};

}  // namespace undercroft::addin
