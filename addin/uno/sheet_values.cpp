#include "addin/uno/sheet_values.hpp"

#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/table/CellContentType.hpp>
#include <com/sun/star/table/XCell.hpp>

#include <algorithm>

#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY;

namespace {

OwnedGrid::Item item_of(const Any& value) {
    const Scalar scalar = to_scalar(value);
    if (const double* number = std::get_if<double>(&scalar)) return *number;
    if (const auto* text = std::get_if<std::u16string_view>(&scalar)) return std::u16string(*text);
    return {};
}

FormulaValue value_of_item(const OwnedGrid::Item& item) {
    if (const double* number = std::get_if<double>(&item)) return FormulaValue(*number);
    if (const std::u16string* text = std::get_if<std::u16string>(&item)) return FormulaValue(*text);
    return FormulaValue(std::u16string());
}

FormulaValue value_of_cell(const Reference<css::table::XCellRange>& range) {
    const Reference<css::table::XCell> cell = range->getCellByPosition(0, 0);
    if (cell->getType() == css::table::CellContentType_EMPTY) return FormulaValue::blank_cell();
    const AnyRows rows = Reference<css::sheet::XCellRangeData>(range, UNO_QUERY)->getDataArray();
    return value_of_item(item_of(rows[0][0]));
}

std::string name_of_sheet(const Reference<css::uno::XInterface>& sheet) {
    return to_string(Reference<css::container::XNamed>(sheet, UNO_QUERY)->getName());
}

FormulaValue value_of_range(const Reference<css::table::XCellRange>& range) {
    const AnyRows rows = Reference<css::sheet::XCellRangeData>(range, UNO_QUERY)->getDataArray();
    std::vector<std::vector<OwnedGrid::Item>> cells;
    for (const auto& row : rows) {
        auto& made = cells.emplace_back();
        for (const Any& value : row) made.push_back(item_of(value));
    }
    return FormulaValue(std::move(cells));
}

}  // namespace

std::string sheet_prefix_of(const Reference<css::table::XCellRange>& range) {
    const Reference<css::sheet::XSheetCellRange> on_sheet(range, UNO_QUERY);
    const Reference<css::container::XNamed> sheet(on_sheet->getSpreadsheet(), UNO_QUERY);
    return sheet_prefix(to_string(sheet->getName()));
}

SheetValues::SheetValues(const Reference<css::uno::XComponentContext>& context,
                         const Reference<css::beans::XPropertySet>& document,
                         const Reference<css::sheet::XSpreadsheet>& own_sheet,
                         Reference<css::table::XCellRange>& blamed, Effort& effort,
                         const std::optional<CellAddress>& own_cell)
    : context_(context),
      document_(document),
      sheets_(document, UNO_QUERY),
      own_sheet_(own_sheet),
      blamed_(blamed),
      effort_(effort),
      own_cell_(own_cell) {}

void SheetValues::count_cells(const Reference<css::table::XCellRange>& range) const {
    const css::table::CellRangeAddress at =
        Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY)->getRangeAddress();
    const std::int64_t cells =
        (std::int64_t{at.EndRow} - at.StartRow + 1) * (at.EndColumn - at.StartColumn + 1);
    effort_.spend(Effort::of_range + Effort::of_cell * cells);
}

void SheetValues::before_call() const {
    effort_.spend(Effort::of_function);
}

void SheetValues::refuse_errors(const Reference<css::table::XCellRange>& range,
                                const std::string& prefix) const {
    const Reference<css::sheet::XCellRangesQuery> query(range, UNO_QUERY);
    if (!query.is()) return;
    const Reference<css::sheet::XSheetCellRanges> found =
        query->queryFormulaCells(css::sheet::FormulaResult::ERROR);
    const Sequence<css::table::CellRangeAddress> addresses = found->getRangeAddresses();
    if (!addresses.hasElements()) return;
    const css::table::CellRangeAddress& at = addresses[0];
    const Reference<css::sheet::XCellRangeAddressable> own(range, UNO_QUERY);
    const css::table::CellRangeAddress start = own->getRangeAddress();
    const sal_Int32 column = at.StartColumn - start.StartColumn;
    const sal_Int32 row = at.StartRow - start.StartRow;
    blamed_ = range->getCellRangeByPosition(column, row, column, row);
    const bool no_answer = blamed_->getCellByPosition(0, 0)->getError() == error_code(Cause::no_answer);
    throw Refused(no_answer ? Cause::no_answer : Cause::value,
                  "rests on " + prefix + cell_letters(at.StartColumn, at.StartRow));
}

std::string SheetValues::prefix_of(const Node& node, const Reference<css::table::XCellRange>& range) {
    if (node.kind == NodeKind::reference && node.reference.sheet.empty()) return {};
    return sheet_prefix_of(range);
}

Reference<css::sheet::XNamedRange> SheetValues::named(const std::string& name) const {
    const rtl::OUString wanted = to_oustring(name);
    for (const Reference<css::beans::XPropertySet>& owner :
         {Reference<css::beans::XPropertySet>(own_sheet_, UNO_QUERY), document_}) {
        if (!owner.is()) continue;
        const Reference<css::container::XNameAccess> names(owner->getPropertyValue("NamedRanges"), UNO_QUERY);
        if (names.is() && names->hasByName(wanted)) return {names->getByName(wanted), UNO_QUERY};
    }
    return {};
}

Reference<css::table::XCellRange> SheetValues::range_of(const Node& node) const {
    if (node.kind == NodeKind::name) {
        const Reference<css::sheet::XCellRangeReferrer> referrer(named(node.text), UNO_QUERY);
        return referrer.is() ? referrer->getReferredCells() : Reference<css::table::XCellRange>();
    }
    if (node.kind != NodeKind::reference || !node.reference.document.empty()) return {};
    Reference<css::table::XCellRange> sheet(own_sheet_, UNO_QUERY);
    if (!node.reference.sheet.empty()) {
        if (!sheets_.is()) return {};
        const rtl::OUString name = to_oustring(node.reference.sheet);
        const Reference<css::container::XNameAccess> all(sheets_->getSheets(), UNO_QUERY);
        if (!all->hasByName(name)) return {};
        sheet.set(all->getByName(name), UNO_QUERY);
    }
    const CellAddress& first = node.reference.first;
    const CellAddress& last = node.reference.last;
    return sheet->getCellRangeByPosition(std::min(first.column, last.column), std::min(first.row, last.row),
                                         std::max(first.column, last.column), std::max(first.row, last.row));
}

FormulaValue SheetValues::value_of_reference(const Node& node) const {
    const auto range = range_of(node);
    if (!range.is() && !node.reference.document.empty())
        throw Refused(Cause::value,
                      node.text + " is in another file, where this cannot look: write =" + node.text +
                          " into a cell of this workbook, its unit beside it, and refer to that cell",
                      Refusal::not_followed);
    if (!range.is())
        refuse_value("the cells " + node.text +
                     " are not in this workbook: move the value to a cell of its own");
    count_cells(range);
    refuse_errors(range, prefix_of(node, range));
    return stands_for_cell(node) ? value_of_cell(range) : value_of_range(range);
}

bool SheetValues::stands_for_cell(const Node& node) const {
    if (node.kind == NodeKind::reference) return !node.reference.is_range;
    const Node content = parse_formula(to_string(named(node.text)->getContent()));
    return content.kind == NodeKind::reference && !content.reference.is_range;
}

std::optional<CellReference> SheetValues::cells_of_name(const Node& node) const {
    const auto range = range_of(node);
    if (!range.is()) return std::nullopt;
    const css::table::CellRangeAddress at =
        Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY)->getRangeAddress();
    CellReference cells;
    cells.sheet = name_of_sheet(Reference<css::sheet::XSheetCellRange>(range, UNO_QUERY)->getSpreadsheet());
    if (own_sheet_.is() && cells.sheet == name_of_sheet(own_sheet_)) cells.sheet.clear();
    cells.first = {at.StartColumn, at.StartRow};
    cells.last = {at.EndColumn, at.EndRow};
    cells.is_range = !stands_for_cell(node);
    return cells;
}

std::u16string SheetValues::joined_text(double number) const {
    effort_.spend(Effort::of_foreign_call);
    Sequence<Any> parts(2);
    parts.getArray()[0] <<= number;
    parts.getArray()[1] <<= rtl::OUString();
    Any joined;
    try {
        joined = function_access()->callFunction("CONCATENATE", parts);
    } catch (const css::uno::Exception&) {
        return Evaluator::joined_text(number);
    }
    const Scalar scalar = to_scalar(joined);
    const auto* text = std::get_if<std::u16string_view>(&scalar);
    return text == nullptr ? Evaluator::joined_text(number) : std::u16string(*text);
}

bool SheetValues::ignores_case() const {
    bool ignores = false;
    if (document_.is()) document_->getPropertyValue("IgnoreCase") >>= ignores;
    return ignores;
}

std::optional<CellReference> SheetValues::cells_by_name(const Node& node) const {
    if (auto cells = cells_of_name(node)) return cells;
    const Reference<css::sheet::XNamedRange> defined = named(node.text);
    std::vector<std::string>& around = followed_->around;
    constexpr std::size_t deepest = 200;
    // Names that go in a circle, or too deep, are refused with the reason where their value is asked for.
    if (!defined.is() || around.size() >= deepest ||
        std::find(around.begin(), around.end(), node.text) != around.end())
        return std::nullopt;
    if (const auto known = followed_->cells_of_names.find(node.text);
        known != followed_->cells_of_names.end())
        return known->second;
    effort_.spend(Effort::of_name);
    around.push_back(node.text);
    const std::shared_ptr<void> leaves(nullptr, [&around](void*) { around.pop_back(); });
    std::optional<CellReference> cells = referred(parse_formula(to_string(defined->getContent())));
    if (cells && own_sheet_.is() && cells->sheet == name_of_sheet(own_sheet_)) cells->sheet.clear();
    followed_->cells_of_names.emplace(node.text, cells);
    return cells;
}

FormulaValue SheetValues::value_of_name(const Node& node) const {
    if (range_of(node).is()) return value_of_reference(node);
    const Reference<css::sheet::XNamedRange> defined = named(node.text);
    if (!defined.is()) refuse_value("the name '" + node.text + "' is not defined in this workbook");
    effort_.spend(Effort::of_name);
    auto known = followed_->names.find(node.text);
    if (known == followed_->names.end())
        known = followed_->names.emplace(node.text, outcome_of_name(node.text, defined)).first;
    if (const Refused* refused = std::get_if<Refused>(&known->second.outcome)) {
        blamed_ = known->second.blamed;
        throw Refused(*refused);
    }
    return std::get<FormulaValue>(known->second.outcome);
}

SheetValues::KnownName SheetValues::outcome_of_name(const std::string& name,
                                                    const Reference<css::sheet::XNamedRange>& defined) const {
    std::vector<std::string>& around = followed_->around;
    if (std::find(around.begin(), around.end(), name) != around.end())
        refuse_value("the name '" + name + "' goes round in a circle");
    constexpr std::size_t deepest = 200;
    if (around.size() >= deepest)
        throw Refused(Cause::value,
                      "the name '" + name + "' rests on names that rest on names, more than " +
                          std::to_string(deepest) + " deep: give one of them a cell of its own",
                      Refusal::not_followed);
    around.push_back(name);
    const std::shared_ptr<void> leaves(nullptr, [&around](void*) { around.pop_back(); });
    try {
        return {value_of(parse_formula(to_string(defined->getContent()))), {}};
    } catch (const Refused& refused) {
        // Remembered too: IFERROR would ask again, and so on for each name that rests on it.
        if (refused.refusal() == Refusal::not_followed) throw;
        return {refused, blamed_};
    }
}

const Reference<css::sheet::XFunctionAccess>& SheetValues::function_access() const {
    if (!followed_->calc.is())
        followed_->calc.set(context_->getServiceManager()->createInstanceWithContext(
                                "com.sun.star.sheet.FunctionAccess", context_),
                            UNO_QUERY);
    return followed_->calc;
}

FormulaValue SheetValues::value_of_foreign_call(const Node& node) const {
    effort_.spend(Effort::of_foreign_call);
    Sequence<Any> values(static_cast<sal_Int32>(node.children.size()));
    for (std::size_t i = 0; i < node.children.size(); ++i) {
        Any& slot = values.getArray()[i];
        const FormulaValue value = value_of(node.children[i]);  // says which cell holds an error, if one does
        if (const auto range = range_of(node.children[i]); range.is() && value.is_grid()) {
            slot <<= range;
            continue;
        }
        if (const double* number = value.number())
            slot <<= *number;
        else if (const std::u16string* text = value.text())
            slot <<= to_oustring(std::u16string_view(*text));
        else if (value.is_grid())
            return Evaluator::value_of_foreign_call(node);
    }
    Any result;
    try {
        result = function_access()->callFunction(to_oustring(node.text), values);
    } catch (const css::uno::Exception&) {
        throw Refused(Cause::value,
                      node.text +
                          " gives an error, or cannot be computed here: move the argument to a cell "
                          "of its own",
                      Refusal::not_followed);
    }
    if (!result.hasValue()) {  // an error, and not which
        constexpr std::string_view looking[] = {"HLOOKUP", "LOOKUP", "MATCH", "VLOOKUP"};
        if (std::find(std::begin(looking), std::end(looking), node.text) != std::end(looking))
            throw Refused(Cause::no_answer, node.text + " finds nothing, or gives another error");
        throw Refused(Cause::value, node.text + " gives an error", Refusal::not_followed);
    }
    if (result.getValueTypeClass() == css::uno::TypeClass_SEQUENCE)
        return Evaluator::value_of_foreign_call(node);
    return value_of_item(item_of(result));
}

}  // namespace undercroft::addin
