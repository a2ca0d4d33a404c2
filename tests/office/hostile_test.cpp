// Every function x every argument x hostile values in cells of a real Calc: each cell shows what the core
// answers to what Calc hands over - its number, its text, or the error of its refusal's cause.
#include "tests/addin/hostile.hpp"

#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/table/CellContentType.hpp>
#include <com/sun/star/table/XCellRange.hpp>

#include <algorithm>
#include <deque>
#include <span>

#include "addin/uno/marshal.hpp"
#include "tests/addin/numbers.hpp"
#include "tests/addin/sweep.hpp"
#include "tests/office/desk.hpp"

namespace undercroft::tests {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

namespace {

using Rows = addin::AnyRows;
using Item = addin::OwnedGrid::Item;

/// What stands in cells of the sheet, and what a function is handed when it refers to them.
struct Placed {
    std::string reference;  ///< empty for what is left out
    addin::FormulaValue value;
    bool has_error = false;
};

/// A sheet on which arguments are put one below the other.
class Shelf {
public:
    Shelf(const sheets::Document& document, const std::string& name)
        : sheet_(document.sheet(name)), name_(name) {}

    Placed place(const addin::Cell& cell) {
        if (std::holds_alternative<std::monostate>(cell)) return {};
        const auto* grid = std::get_if<const addin::Grid*>(&cell);
        const sal_Int32 rows = grid == nullptr ? 1 : static_cast<sal_Int32>((*grid)->rows());
        const sal_Int32 columns = grid == nullptr ? 1 : static_cast<sal_Int32>((*grid)->columns());
        Rows data(rows);
        for (sal_Int32 r = 0; r < rows; ++r) {
            Sequence<Any> line(columns);
            for (sal_Int32 c = 0; c < columns; ++c)
                line.getArray()[c] = any_of(
                    grid == nullptr ? scalar_of(cell)
                                    : (*grid)->at(static_cast<std::size_t>(r), static_cast<std::size_t>(c)));
            data.getArray()[r] = line;
        }
        const auto range = next(rows, columns);
        Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->setDataArray(data);
        return seen(range);
    }
    /// What a formula gives: errors, TRUE.
    Placed place_formula(const std::string& formula) {
        const auto range = next(1, 1);
        range->getCellByPosition(0, 0)->setFormula(sheets::to_ustring(formula));
        return seen(range);
    }

private:
    static addin::Scalar scalar_of(const addin::Cell& cell) {
        if (const double* number = std::get_if<double>(&cell)) return *number;
        return std::get<std::u16string_view>(cell);
    }
    static Any any_of(const addin::Scalar& scalar) {
        if (const double* number = std::get_if<double>(&scalar)) return Any(*number);
        if (const auto* text = std::get_if<std::u16string_view>(&scalar))
            return Any(addin::to_oustring(*text));
        return Any(rtl::OUString());  // a cell left blank; no value at all would be #N/A
    }
    Reference<css::table::XCellRange> next(sal_Int32 rows, sal_Int32 columns) {
        const sal_Int32 first = row_;
        row_ += rows + 1;
        return sheet_->getCellRangeByPosition(0, first, columns - 1, first + rows - 1);
    }
    [[nodiscard]] std::string reference_to(const Reference<css::table::XCellRange>& range) const {
        const auto at =
            Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY_THROW)->getRangeAddress();
        const std::string first = addin::cell_letters(at.StartColumn, at.StartRow);
        const std::string last = addin::cell_letters(at.EndColumn, at.EndRow);
        return "$" + name_ + "." + first + (first == last ? "" : ":" + last);
    }
    /// As Calc hands it over: it may keep a text otherwise than it was put, and a single blank cell is a 0.
    [[nodiscard]] Placed seen(const Reference<css::table::XCellRange>& range) const {
        std::vector<std::vector<Item>> items;
        for (const Sequence<Any>& line :
             Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->getDataArray()) {
            items.emplace_back();
            for (const Any& value : line) items.back().push_back(item_of(value));
        }
        const auto corner = range->getCellByPosition(0, 0);
        Placed placed{reference_to(range), {}, corner->getError() != 0};
        if (items.size() > 1 || items[0].size() > 1)
            placed.value = addin::FormulaValue(std::move(items));
        else if (const double* number = std::get_if<double>(&items[0][0]))
            placed.value = addin::FormulaValue(*number);
        else if (const auto* text = std::get_if<std::u16string>(&items[0][0]))
            placed.value = addin::FormulaValue(*text);
        else if (corner->getType() == css::table::CellContentType_EMPTY)
            placed.value = addin::FormulaValue(0.0);
        else
            placed.value = addin::FormulaValue(std::u16string());  // a formula that gives an empty text
        return placed;
    }
    static Item item_of(const Any& value) {
        rtl::OUString text;
        double number = 0;
        if (value >>= number) return number;
        if (!(value >>= text) || text.isEmpty()) return {};
        return std::u16string(addin::view(text));
    }

    Reference<css::sheet::XSpreadsheet> sheet_;
    std::string name_;
    sal_Int32 row_ = 0;
};

struct Call {
    const addin::Function* function = nullptr;
    std::vector<addin::Cell> cells;
    std::string formula;
    bool has_error = false;
    std::string what;
};

int error_of(Cause cause) {
    switch (cause) {
        case Cause::domain:
            return num_error;
        case Cause::no_answer:
            return not_available;
        case Cause::no_convergence:
            return no_convergence_error;
        case Cause::value:
            break;
    }
    return value_error;
}

/// What is wrong with what the cell shows; nothing when it is right.
std::string complaint(const Call& call, int error, const Any& shown) {
    if (call.has_error) return error != 0 ? "" : "an error in an argument was passed over";
    const Outcome outcome = outcome_of(*call.function, call.cells);
    if (outcome.refused) {
        const int wanted = error_of(outcome.refused->cause());
        return error == wanted ? "" : "error " + std::to_string(error) + " for: " + outcome.sentence();
    }
    if (!outcome.answer) return "no answer and no refusal";
    if (error != 0) return "error " + std::to_string(error) + " where the core answers";
    addin::ResultItem item;
    if (const auto* rows = std::get_if<addin::ResultRows>(&*outcome.answer))
        item = rows->front().front();
    else if (const double* number = outcome.number())
        item = *number;
    else
        item = std::get<std::string>(*outcome.answer);
    double number = 0;
    rtl::OUString text;
    if (const double* wanted = std::get_if<double>(&item))
        return (shown >>= number) && number == *wanted ? "" : "another number than the core's";
    const auto* wanted = std::get_if<std::string>(&item);
    return (shown >>= text) && sheets::to_utf8(text) == (wanted == nullptr ? "" : *wanted)
               ? ""
               : "another text than the core's";
}

struct Hard {
    std::string name;
    Placed placed;
    bool is_large = false;
};

/// Whether cells can hold it: no cell holds what is not finite, and no range is without cells.
bool fits_in_cells(const addin::Cell& cell) {
    const auto is_finite = [](const addin::Scalar& scalar) {
        const double* number = std::get_if<double>(&scalar);
        return number == nullptr || std::isfinite(*number);
    };
    const double* number = std::get_if<double>(&cell);
    if (number != nullptr) return is_finite(*number);
    const auto* held = std::get_if<const addin::Grid*>(&cell);
    if (held == nullptr) return true;
    const addin::Grid& grid = **held;
    for (std::size_t r = 0; r < grid.rows(); ++r)
        for (std::size_t c = 0; c < grid.columns(); ++c)
            if (!is_finite(grid.at(r, c))) return false;
    return grid.rows() > 0;
}

std::vector<Hard> hard_values(const Hostile& hostile, Shelf& shelf) {
    std::vector<Hard> values;
    for (const HostileValue& value : hostile.values()) {
        if (!fits_in_cells(value.cell)) continue;
        const auto* grid = std::get_if<const addin::Grid*>(&value.cell);
        values.push_back({value.name, shelf.place(value.cell), grid != nullptr && (*grid)->rows() > 100});
    }
    for (const char* formula : {"=TRUE()", "=NA()", "=1/0", "=\"\"", "=Err:504", "=SQRT(-1)"})
        values.push_back({formula, shelf.place_formula(formula)});
    return values;
}

/// A call with good arguments but for one.
Call call_with(const addin::Function& function, const std::vector<Placed>& good, std::size_t place,
               const Hard& value) {
    Call call{&function,
              {},
              "=" + function.name + "(",
              value.placed.has_error,
              function.parameters[place].name + " of " + function.name + " from " + value.name};
    for (std::size_t i = 0; i < function.parameters.size(); ++i) {
        const Placed none;
        const Placed& placed = i == place ? value.placed : i < good.size() ? good[i] : none;
        call.cells.push_back(placed.reference.empty() ? addin::Cell() : placed.value.cell());
        call.formula += (i == 0 ? "" : ";") + placed.reference;
    }
    // Calc hands over nothing for arguments that are missing at the end.
    while (call.formula.back() == ';') call.formula.pop_back();
    call.formula += ")";
    return call;
}

/// What is wrong in the sheet when these calls stand in its first column.
std::vector<std::string> complaints(const Reference<css::sheet::XSpreadsheet>& sheet,
                                    std::span<const Call> calls) {
    const auto rows = static_cast<sal_Int32>(calls.size());
    const auto range = sheet->getCellRangeByPosition(0, 0, 0, rows - 1);
    Sequence<Sequence<rtl::OUString>> formulas(rows);
    for (sal_Int32 r = 0; r < rows; ++r) {
        const rtl::OUString formula = sheets::to_ustring(calls[static_cast<std::size_t>(r)].formula);
        formulas.getArray()[r] = Sequence<rtl::OUString>(&formula, 1);
    }
    Reference<css::sheet::XCellRangeFormula>(range, UNO_QUERY_THROW)->setFormulaArray(formulas);
    const Rows shown = Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->getDataArray();
    std::vector<std::string> told;
    for (sal_Int32 r = 0; r < rows; ++r) {
        const Call& call = calls[static_cast<std::size_t>(r)];
        const int error = shown[r][0].hasValue() ? 0 : range->getCellByPosition(0, r)->getError();
        const std::string said = complaint(call, error, shown[r][0]);
        if (!said.empty()) told.push_back(call.what + ": " + said + "\n" + call.formula);
    }
    return told;
}

}  // namespace

TEST_CASE("a real Calc shows what the core answers to hostile cells, and the right error where it refuses",
          "[hostile]") {
    const sheets::Document document = the_office().blank();
    for (const char* name : {"Good", "Values", "Calls"})
        document.model()->getSheets()->insertNewByName(sheets::to_ustring(name), 0);
    Shelf good(document, "Good");
    Shelf shelf(document, "Values");
    const Hostile hostile;
    const std::vector<Hard> values = hard_values(hostile, shelf);
    CHECK(values.size() > 140);

    std::deque<std::vector<Placed>> bases;  // what the calls refer to
    std::vector<Call> calls;
    std::size_t arguments = 0;
    for (const addin::Function& function : addin::all_functions()) {
        if (function.reads_cell()) continue;
        std::vector<Placed>& base = bases.emplace_back();
        for (const addin::FormulaValue& value : good_arguments().at(function.name).front())
            base.push_back(good.place(value.cell()));
        for (std::size_t i = 0; i < function.parameters.size(); ++i) {
            const bool with_large = ++arguments % 20 == 0;  // 50,000 cells a call
            for (const Hard& value : values)
                if (!value.is_large || with_large) calls.push_back(call_with(function, base, i, value));
        }
    }

    const auto sheet = document.sheet("Calls");
    std::size_t wrong = 0;
    constexpr std::size_t most_rows = 5000;
    for (std::size_t start = 0; start < calls.size(); start += most_rows)
        for (const std::string& told :
             complaints(sheet, std::span(calls).subspan(start, std::min(most_rows, calls.size() - start))))
            if (++wrong <= 20) FAIL_CHECK(told);
    CHECK(wrong == 0);
    WARN(calls.size() << " calls in a real Calc");
    CHECK(calls.size() > 60000);
}

namespace {

/// A call whose arguments stand in cells, each by itself.
Call call_in_cells(const addin::Function& function, const std::vector<addin::Cell>& cells,
                   std::deque<std::vector<Placed>>& kept, Shelf& shelf, const std::string& what) {
    std::vector<Placed>& placed = kept.emplace_back();
    for (const addin::Cell& cell : cells) placed.push_back(shelf.place(cell));
    Call call = call_with(function, placed, 0, {what, placed.front()});
    if (!placed.front().reference.empty()) call.cells.front() = placed.front().value.cell();  // which is kept
    call.what = what;
    return call;
}

}  // namespace

TEST_CASE("slips of units in cells of a real Calc are refused as the core refuses them", "[hostile]") {
    const sheets::Document document = the_office().blank();
    for (const char* name : {"Values", "Calls"})
        document.model()->getSheets()->insertNewByName(sheets::to_ustring(name), 0);
    Shelf shelf(document, "Values");
    std::deque<std::vector<Placed>> kept;
    std::deque<OwnedCall> slips;  // whose texts the calls go by
    std::vector<Call> calls;
    std::size_t places = 0;
    constexpr std::size_t every = 4;  // a sample of the places; the core is asked about each
    for_each_number([&](const NumberPlace& place) {
        if (++places % every != 0) return;
        const std::vector<double> numbers = place.numbers();
        for (const double factor : {1000.0, 0.001, 12.0, 25.4, 1 / 0.3048, 60.0, 100.0, 0.01}) {
            std::vector<double> slipped = numbers;
            for (double& number : slipped) number *= factor;
            const OwnedCall& slip = slips.emplace_back(place.with_bare(slipped));
            if (numbers.empty() || slip.cells().empty()) return;
            calls.push_back(
                call_in_cells(place.function(), slip.cells(), kept, shelf,
                              place.function().name + ", " + place.name() + " x " + exact_text(factor)));
        }
    });
    REQUIRE(calls.size() > 500);
    const auto sheet = document.sheet("Calls");
    std::size_t wrong = 0;
    for (const std::string& told : complaints(sheet, calls))
        if (++wrong <= 20) FAIL_CHECK(told);
    CHECK(wrong == 0);
    std::size_t passed = 0;
    for (sal_Int32 row = 0; row < static_cast<sal_Int32>(calls.size()); ++row)
        passed += sheet->getCellByPosition(0, row)->getError() == 0 ? 1 : 0;
    WARN(passed << " of " << calls.size() << " slips pass in a real Calc");
    CHECK(static_cast<double>(passed) <= 0.2 * static_cast<double>(calls.size()));
}

}  // namespace undercroft::tests
