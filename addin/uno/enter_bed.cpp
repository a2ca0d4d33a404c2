#include "addin/uno/enter_bed.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XEnumerationAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XTitle.hpp>
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XSheetAnnotationAnchor.hpp>
#include <com/sun/star/sheet/XSheetAnnotationsSupplier.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/text/XSimpleText.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/CellProtection.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <cmath>
#include <optional>
#include <sstream>
#include <string>
#include <variant>
#include <vector>

#include "addin/formula/reference.hpp"
#include "addin/uno/marshal.hpp"
#include "addin/uno/one_change.hpp"
#include "units/quantity.hpp"

namespace undercroft::addin {

namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using TypedCell = Reference<css::table::XCell>;
using NamedRange = Reference<css::table::XCellRange>;

std::string shown_in(const TypedCell& cell) {
    return to_string(Reference<css::text::XText>(cell, UNO_QUERY_THROW)->getString());
}

/// What a workbook calls by a name.
class NamedCells {
public:
    explicit NamedCells(const Reference<css::frame::XModel>& document)
        : names_(
              Reference<css::beans::XPropertySet>(document, UNO_QUERY_THROW)->getPropertyValue("NamedRanges"),
              UNO_QUERY_THROW) {}

    [[nodiscard]] NamedRange find(const std::string& name) const {
        const rtl::OUString wanted = to_oustring(name);
        if (!names_->hasByName(wanted)) return {};
        return Reference<css::sheet::XCellRangeReferrer>(names_->getByName(wanted), UNO_QUERY_THROW)
            ->getReferredCells();
    }
    [[nodiscard]] NamedRange at(const std::string& name) const {
        NamedRange range = find(name);
        if (!range.is()) throw NotDone("There is no name " + name + " in the workbook.");
        return range;
    }
    [[nodiscard]] TypedCell cell(const std::string& name, sal_Int32 row = 0, sal_Int32 column = 0) const {
        return at(name)->getCellByPosition(column, row);
    }

private:
    Reference<css::container::XNameAccess> names_;
};

css::table::CellRangeAddress area_of(const NamedRange& range) {
    return Reference<css::sheet::XCellRangeAddressable>(range, UNO_QUERY_THROW)->getRangeAddress();
}

sal_Int32 height_of(const NamedRange& range) {
    const css::table::CellRangeAddress at = area_of(range);
    return at.EndRow - at.StartRow + 1;
}

/// A number of a table whose first row names the units.
Quantity quantity_of(const NamedRange& table, sal_Int32 row, sal_Int32 column = 0) {
    return Quantity::of(table->getCellByPosition(column, row)->getValue(),
                        parse_unit(shown_in(table->getCellByPosition(column, 0))));
}

/// What every comment of ours says, and so tells it from one of a person.
constexpr const char* of_the_options = " of the options of ";

struct Bed {
    std::string origin;
    std::string layout;  ///< `6 rows of 21 units`
    int rows = 0;
    int units = 0;
    bool is_across = false;
    bool passes = false;
    Quantity height;  ///< of its stone
    std::vector<std::pair<std::string, std::variant<Quantity, std::string>>> inputs;
    Quantity base;
    Quantity cover;
    Quantity not_counted;
};

/// The place of the bed among those of the table, from 1 on, that the row of the cursor is about.
std::optional<sal_Int32> place_at(const NamedCells& options, const css::table::CellAddress& cursor) {
    const auto row_in = [&](const NamedRange& range) -> std::optional<sal_Int32> {
        const css::table::CellRangeAddress at = area_of(range);
        if (at.Sheet != cursor.Sheet || cursor.Row < at.StartRow || cursor.Row > at.EndRow)
            return std::nullopt;
        return cursor.Row - at.StartRow;
    };
    if (const auto row = row_in(options.at("try_bed_kind")); row && *row > 0) return row;
    if (const auto row = row_in(options.at("try_pick_place")))
        return static_cast<sal_Int32>(std::lround(options.cell("try_pick_place", *row)->getValue()));
    return std::nullopt;
}

Bed bed_at(const NamedCells& options, const css::table::CellAddress& cursor) {
    const auto place = place_at(options, cursor);
    if (!place)
        throw NotDone(
            "Put the cursor on a bed first: in a row of the table of beds, or of the three beside each "
            "other.");
    const NamedRange kinds = options.at("try_bed_kind");
    if (*place < 1 || *place >= height_of(kinds) ||
        kinds->getCellByPosition(0, *place)->getType() == css::table::CellContentType_EMPTY ||
        kinds->getCellByPosition(0, *place)->getError() != 0 ||
        shown_in(kinds->getCellByPosition(0, *place)).empty())
        throw NotDone("There is no bed at place " + std::to_string(*place) + " of the table of beds.");
    const auto whole = [&](const char* column) {
        return static_cast<int>(
            std::lround(options.cell(std::string("try_bed_") + column, *place)->getValue()));
    };
    const auto of_bed = [&](const char* column) {
        return quantity_of(options.at(std::string("try_bed_") + column), *place);
    };
    const sal_Int32 kind = whole("kind");
    const auto of_kind = [&](sal_Int32 column) { return quantity_of(options.at("try_kind"), kind, column); };
    const auto of_supply = [&](sal_Int32 column) {
        return quantity_of(options.at("try_supply"), kind, column);
    };
    const auto of_space = [&](sal_Int32 column) { return quantity_of(options.at("try_space"), 1, column); };

    Bed bed;
    bed.rows = whole("rows");
    bed.units = whole("units");
    bed.is_across = whole("across") == 1;
    bed.passes = whole("check") == 0;
    bed.layout = std::to_string(bed.rows) + " rows of " + std::to_string(bed.units) + " units";
    bed.base = of_bed("base");
    bed.cover = of_bed("cover");
    bed.not_counted = of_space(7);
    bed.height = bed.base;
    bed.height.value += of_kind(1).value + bed.cover.value;
    bed.inputs = {{"chamber_shape", shown_in(options.cell("try_shape_shape", kind - 1))},
                  {"chamber_span", of_kind(0)},
                  {"chamber_rise", of_kind(1)},
                  {"chamber_foot", of_kind(2)},
                  {"foot_width", of_kind(3)},
                  {"end_unit", of_kind(4)},
                  {"middle_unit", of_kind(5)},
                  {"joint_overlap", of_kind(6)},
                  {"row_gap", of_supply(0)},
                  {"unit_mass", of_supply(1)},
                  {"least_cover", of_supply(2)},
                  {"greatest_cover", of_supply(3)},
                  {"crown_limit", of_supply(4)},
                  {"long_limit", of_supply(5)},
                  {"side_margin", of_space(5)},
                  {"end_margin", of_space(6)},
                  {"site_length", of_bed("length")},
                  {"site_width", of_bed("width")}};
    bed.origin = "Bed " + std::to_string(*place) + of_the_options + shown_in(options.cell("job_name")) +
                 ", No. " + shown_in(options.cell("job_number")) + ", revision " +
                 shown_in(options.cell("job_revision"));
    return bed;
}

std::string title_of(const Reference<css::frame::XModel>& document) {
    return to_string(Reference<css::frame::XTitle>(document, UNO_QUERY_THROW)->getTitle());
}

/// The one open workbook beside the options that has all inputs of a bed.
Reference<css::frame::XModel> job_for(const Reference<css::uno::XComponentContext>& context,
                                      const Reference<css::frame::XModel>& options, const Bed& bed) {
    Reference<css::frame::XModel> found;
    const auto open = css::frame::Desktop::create(context)->getComponents()->createEnumeration();
    while (open->hasMoreElements()) {
        const Reference<css::frame::XModel> document(open->nextElement(), UNO_QUERY);
        if (document == options || !Reference<css::sheet::XSpreadsheetDocument>(document, UNO_QUERY).is())
            continue;
        const NamedCells names(document);
        bool takes_it = names.find("site_layer_part").is();
        for (const auto& [key, value] : bed.inputs) takes_it = takes_it && names.find(key).is();
        if (!takes_it) continue;
        if (found.is())
            throw NotDone("Both " + title_of(found) + " and " + title_of(document) +
                          " could take the bed: close the one that it is not for.");
        found = document;
    }
    if (!found.is())
        throw NotDone(
            "Open the whole job that the bed is for, beside this workbook: no other that is open has its "
            "inputs.");
    return found;
}

/// The inputs of a whole job, as they will be typed.
class Entries {
public:
    Entries(const Reference<css::frame::XModel>& document, const std::string& origin)
        : document_(document), names_(document), origin_(origin) {}

    void plan(const std::string& key, const std::variant<Quantity, std::string>& value, sal_Int32 row = 0) {
        const NamedRange range = names_.at(key);
        const TypedCell cell = range->getCellByPosition(0, row);
        require_typed(cell);
        Entry entry{cell, 0, {}};
        if (const auto* text = std::get_if<std::string>(&value))
            entry.text = *text;
        else
            entry.number =
                number_in(std::get<Quantity>(value), parse_unit(shown_in(range->getCellByPosition(1, row))));
        entries_.push_back(entry);
    }

    [[nodiscard]] const NamedCells& names() const { return names_; }
    [[nodiscard]] std::size_t size() const { return entries_.size(); }

    void type() const {
        OneChange change(document_, {}, "Enter a bed");
        for (const Entry& entry : entries_) {
            if (entry.text.empty())
                entry.cell->setValue(entry.number);
            else
                entry.cell->setFormula(to_oustring(entry.text));
            say_origin(entry.cell);
        }
        change.finish();
    }

private:
    struct Entry {
        TypedCell cell;
        double number;
        std::string text;  ///< instead, if there is one
    };

    [[nodiscard]] static css::table::CellAddress address(const TypedCell& cell) {
        return Reference<css::sheet::XCellAddressable>(cell, UNO_QUERY_THROW)->getCellAddress();
    }
    [[nodiscard]] static Reference<css::sheet::XSpreadsheet> sheet_of(const TypedCell& cell) {
        return Reference<css::sheet::XSheetCellRange>(cell, UNO_QUERY_THROW)->getSpreadsheet();
    }

    /// Whoever computes an input, or has locked it, is not written over.
    static void require_typed(const TypedCell& cell) {
        css::util::CellProtection protection;
        Reference<css::beans::XPropertySet>(cell, UNO_QUERY_THROW)->getPropertyValue("CellProtection") >>=
            protection;
        const bool is_shut =
            protection.IsLocked &&
            Reference<css::util::XProtectable>(sheet_of(cell), UNO_QUERY_THROW)->isProtected();
        const bool is_formula = cell->getType() == css::table::CellContentType_FORMULA;
        if (!is_shut && !is_formula) return;
        const css::table::CellAddress at = address(cell);
        throw NotDone(
            to_string(Reference<css::container::XNamed>(sheet_of(cell), UNO_QUERY_THROW)->getName()) + "." +
            cell_letters(at.Column, at.Row) + (is_formula ? " holds a formula" : " is locked") +
            ", and an input of the bed belongs there: nothing was entered.");
    }

    void say_origin(const TypedCell& cell) const {
        const Reference<css::sheet::XSheetAnnotationAnchor> anchor(cell, UNO_QUERY_THROW);
        const Reference<css::text::XSimpleText> text(anchor->getAnnotation(), UNO_QUERY);
        std::string said;  // by others
        std::istringstream lines(text.is() ? to_string(text->getString()) : std::string());
        for (std::string line; std::getline(lines, line);)
            if (line.find(of_the_options) == std::string::npos) said += line + '\n';
        Reference<css::sheet::XSheetAnnotationsSupplier>(sheet_of(cell), UNO_QUERY_THROW)
            ->getAnnotations()
            ->insertNew(address(cell), to_oustring(said + origin_));
    }

    Reference<css::frame::XModel> document_;
    NamedCells names_;
    std::string origin_;
    std::vector<Entry> entries_;
};

/// The row of the list of layers that is this part alone.
sal_Int32 layer_row(const NamedCells& job, const std::string& part) {
    const NamedRange parts = job.at("site_layer_part");
    std::optional<sal_Int32> found;
    for (sal_Int32 row = 0; row < height_of(parts); ++row) {
        if (shown_in(parts->getCellByPosition(0, row)) != part) continue;
        if (found)
            throw NotDone("The layers of the whole job have more than one row of " + part +
                          ": nothing was entered, since the bed says only the sum of their heights.");
        found = row;
    }
    if (!found)
        throw NotDone("The layers of the whole job have no row of " + part + ": nothing was entered.");
    return *found;
}

/// The row of the one overflow, if there is only one.
std::optional<sal_Int32> only_overflow(const NamedCells& job) {
    const NamedRange levels = job.find("overflow_list_level");
    if (!levels.is() || !job.find("least_freeboard").is()) return std::nullopt;
    std::optional<sal_Int32> found;
    for (sal_Int32 row = 0; row < height_of(levels); ++row) {
        if (levels->getCellByPosition(0, row)->getType() == css::table::CellContentType_EMPTY) continue;
        if (found) return std::nullopt;
        found = row;
    }
    return found;
}

}  // namespace

std::string enter_bed(const Reference<css::uno::XComponentContext>& context,
                      const Reference<css::frame::XModel>& options, const css::table::CellAddress& cursor) {
    const NamedCells names(options);
    if (!names.find("try_bed_kind").is() || !names.find("try_pick_place").is())
        throw NotDone(
            "Beds are entered from the workbook of options: New workbook from a template > Options.");
    const Bed bed = bed_at(names, cursor);
    const Reference<css::frame::XModel> job = job_for(context, options, bed);

    Entries entries(job, bed.origin);
    for (const auto& [key, value] : bed.inputs) entries.plan(key, value);
    if (entries.names().find("unit_volume_by").is())  // the options know units by their section alone
        entries.plan("unit_volume_by", std::string("by its section"));
    entries.plan("site_layer_height", bed.base, layer_row(entries.names(), "base"));
    entries.plan("site_layer_height", bed.cover, layer_row(entries.names(), "cover"));
    const std::optional<sal_Int32> overflow = only_overflow(entries.names());
    if (overflow) {
        const NamedRange freeboard = entries.names().at("least_freeboard");
        Quantity level = bed.height;
        level.value += Quantity::of(freeboard->getCellByPosition(0, 0)->getValue(),
                                    parse_unit(shown_in(freeboard->getCellByPosition(1, 0))))
                           .value -
                       bed.not_counted.value;
        entries.plan("overflow_list_level", level, *overflow);
    }
    entries.type();

    std::string words = bed.layout + (bed.passes ? "" : ", which by the options do not pass,") +
                        " are entered in " + title_of(job) + ": " + std::to_string(entries.size()) +
                        " inputs, each with a comment that says from where; one step there takes them back.";
    const auto laid = [&](const char* key) {
        return static_cast<int>(std::lround(entries.names().cell(key)->getValue()));
    };
    if (laid("bed_rows") != bed.rows || laid("row_units") != bed.units)
        words += "\n\nThe whole job lays " + std::to_string(laid("bed_rows")) + " rows of " +
                 std::to_string(laid("row_units")) + " units there: look at the gap and the margins.";
    if (!overflow) words += "\n\nIts overflows are left as they are: set their levels.";
    if (bed.is_across)
        words += "\n\nThe rows run across the space: the bearing of the bed for setting out changes with it.";
    return words +
           "\n\nLayers above the stone, levels, ground, traffic, outlets and rates are the whole job's own. "
           "Its "
           "checks decide.";
}

}  // namespace undercroft::addin
