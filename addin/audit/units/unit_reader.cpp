#include "addin/audit/units/unit_reader.hpp"

#include <algorithm>
#include <cmath>

#include "addin/audit/units/calc_units.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/cell_error.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

UnitReader::UnitReader(const UnitSources& sources, const FormulaGroup& group, const Spot& at)
    : sources_(sources), root_(&group.tree()), base_(group.base), at_(at) {}

void UnitReader::note(SlipKind kind, const std::string& says, const std::optional<Spot>& cell) {
    slips_.push_back({kind, says, cell});
}

void UnitReader::lack(const std::string& what, const std::optional<Spot>& cell) {
    if (!lacks_) lacks_ = UnitAnswer{UnitVerdict::not_given, what, cell};
}

void UnitReader::doubt(const std::string& why, const std::optional<Spot>& cell) {
    if (!doubts_) doubts_ = UnitAnswer{UnitVerdict::cannot_tell, why, cell};
}

Term UnitReader::alike_or_clash(const Term& a, const Term& b, const std::string& verb) {
    Combined combined = alike(a, b, verb);
    if (!combined.clash.empty()) note(SlipKind::clash, combined.clash, b.cell ? b.cell : a.cell);
    return std::move(combined.value);
}

Term UnitReader::of(const Node& node) {
    switch (node.kind) {
        case NodeKind::number:
            return literal_number(node.number);
        case NodeKind::text:
            return some_text();
        case NodeKind::missing:
            return literal_number(0);
        case NodeKind::error:
            return unknown_unit("the formula holds " + node.text);
        case NodeKind::reference: {
            const std::optional<Area> area = area_of_node(node);
            if (!area) return unknown_unit(node.text + " is not in this workbook, or is more than one range");
            return area->is_single() ? of_cell(area->first()) : of_area(*area);
        }
        case NodeKind::name:
            return of_name(node);
        case NodeKind::operation:
            return of_operation(node);
        case NodeKind::call: {
            const addin::Function* function = addin::find_function(node.text);
            return function != nullptr ? of_own_call(node, *function) : unit_of_calc_call(*this, node);
        }
        case NodeKind::array: {
            bool numbers = true;
            walk(node, [&](const Node& item) { numbers = numbers && item.kind != NodeKind::text; });
            return numbers ? pure_number("an array of numbers") : some_text();
        }
    }
    return unknown_unit("a part of the formula cannot be followed");
}

std::optional<Area> UnitReader::area_of_node(const Node& node) const {
    if (node.kind == NodeKind::name) {
        const NameMeaning* meaning = sources_.names.find(node.text, at_.sheet);
        if (meaning == nullptr || !meaning->readable || meaning->tree.kind != NodeKind::reference)
            return std::nullopt;
        return area_of(sources_.book, meaning->tree.reference, meaning->defined->base, at_);
    }
    if (node.kind != NodeKind::reference || !node.reference.last_sheet.empty()) return std::nullopt;
    return area_of(sources_.book, node.reference, base_, at_);
}

Term UnitReader::of_name(const Node& node) {
    if (const std::optional<Area> area = area_of_node(node))
        return area->is_single() ? of_cell(area->first()) : of_area(*area);
    const NameMeaning* meaning = sources_.names.find(node.text, at_.sheet);
    if (meaning == nullptr || !meaning->readable)
        return unknown_unit("the name " + node.text + " is not defined in this workbook");
    if (depth_ > 20 || names_left_ <= 0)
        return unknown_unit("the name " + node.text + " goes round in a circle, or stands for too much");
    --names_left_;
    ++depth_;
    const Spot outside = base_;
    base_ = meaning->defined->base;
    Term value = of(meaning->tree);
    base_ = outside;
    --depth_;
    return value;
}

Term UnitReader::of_cell(const Spot& spot) {
    const BookCell* cell = sources_.book.find(spot);
    if (cell == nullptr || cell->shows_nothing()) return bare_number(text(spot) + " is blank", spot);
    if (cell->text() != nullptr) return some_text();
    const std::optional<UnitCell> unit = sources_.units.of(spot);
    if (!unit) {
        if (is_shown_as_date(spot)) return a_date("the date in " + text(spot), spot);
        if (cell->error != 0)
            return unknown_unit(text(spot) + " shows " + addin::error_text(cell->error), spot);
        if (sources_.bare_is_plain) {
            Term plain = pure_number("the plain number in " + text(spot));
            plain.from_units = true;  // so that adding it to a quantity is a clash
            return plain;
        }
        return bare_number("no unit stands beside " + text(spot), spot);
    }
    return in_unit(*unit->text->unit, unit->text->text, text(spot), spot);
}

bool UnitReader::is_shown_as_date(const Spot& spot) const {
    const BookCell* cell = sources_.book.find(spot);
    return cell != nullptr && cell->number() != nullptr && cell->error == 0 &&
           sources_.book.format_of(spot).number.shown_as == ShownAs::date;
}

bool UnitReader::holds_dates_only(const Area& area) const {
    const std::vector<BookCell>& cells = sources_.book.sheets[static_cast<std::size_t>(area.sheet)].cells;
    const std::int32_t last = std::min(area.last_column, sources_.book.columns(area.sheet) - 1);
    for (std::int32_t column = area.first_column; column <= last; ++column)
        for (const std::uint32_t i : sources_.book.column(area.sheet, column, area.first_row, area.last_row))
            if (cells[i].error != 0 ||
                (cells[i].number() != nullptr && !is_shown_as_date({area.sheet, cells[i].row, column})))
                return false;
    return true;
}

Term UnitReader::of_area(const Area& area) {
    const AreaUnits found = sources_.units.of_area(area);
    if (!found.has_numbers) return bare_number(text(area) + " holds no number", area.first());
    if (found.other && found.unit) {
        Term mixed;
        mixed.kind = TermKind::mixed;
        mixed.cell = found.other->at;
        mixed.why = text(area) + " holds numbers in " + found.unit->text->text + " (" + text(found.unit->at) +
                    ") and in " + found.other->text->text + " (" + text(found.other->at) + ")";
        return mixed;
    }
    if (found.without && !found.unit && holds_dates_only(area))
        return a_date("the dates in " + text(area), area.first());
    if (found.without)
        return bare_number("no unit stands beside " + text(*found.without) + " in " + text(area),
                           found.without);
    return in_unit(*found.unit->text->unit, found.unit->text->text, text(area), area.first());
}

Term UnitReader::of_power(const Node& node) {
    const Term base = of(node.children[0]);
    const Term exponent = of(node.children[1]);
    if (base.kind != TermKind::unit) {
        if (base.kind == TermKind::number && exponent.kind == TermKind::number) {
            if (base.literal && exponent.literal)
                return literal_number(std::pow(*base.literal, *exponent.literal));
            return pure_number("a power");
        }
        return base.kind == TermKind::number ? exponent : base;
    }
    if (!exponent.literal) return unknown_unit("a quantity to a power that is computed", base.cell);
    const double sixths = *exponent.literal * Dimension::parts;
    if (std::abs(sixths) > 60 || std::abs(sixths - std::round(sixths)) > 1e-9)
        return unknown_unit("a quantity to the power " + exact_text(*exponent.literal), base.cell);
    return power(base, static_cast<int>(std::round(sixths)), Dimension::parts);
}

Term UnitReader::of_operation(const Node& node) {
    const std::string& sign = node.text;
    if (node.children.size() == 1) {
        Term value = of(node.children[0]);
        if (sign == "%") return product(value, literal_number(0.01));
        if (sign == "-" && value.literal) value.literal = -*value.literal;
        return value;
    }
    if (sign == "^") return of_power(node);
    const Term left = of(node.children[0]);
    const Term right = of(node.children[1]);
    if (sign == "&") return some_text();
    if (sign == "*") return product(left, right);
    if (sign == "/") return quotient(left, right);
    if (sign == "+" || sign == "-") {
        if (left.kind == TermKind::text || right.kind == TermKind::text)
            return unknown_unit("it computes with a text");
        const bool two_dates = left.kind == TermKind::date && right.kind == TermKind::date;
        if (sign == "+" && two_dates) {
            note(SlipKind::clash, "it adds two dates, " + left.what + " and " + right.what, right.cell);
            return unknown_unit("it adds two dates");
        }
        if (sign == "-" && right.kind == TermKind::date) {
            Combined less = date_less(left, right);
            if (!less.clash.empty()) note(SlipKind::clash, less.clash, right.cell ? right.cell : left.cell);
            return std::move(less.value);
        }
        Term value = alike_or_clash(left, right, "adds");
        if (sign == "-" && left.literal && right.literal) value.literal = *left.literal - *right.literal;
        return value;
    }
    if (!is_comparison(node)) return unknown_unit("ranges that are joined or meet");
    if (left.kind == TermKind::text || right.kind == TermKind::text) return truth_of(false);
    const Term value = alike_or_clash(left, right, "compares");
    if (value.kind == TermKind::unknown || value.kind == TermKind::bare || value.kind == TermKind::mixed)
        return value;
    return truth_of(value.kind == TermKind::unit || value.kind == TermKind::date || value.from_units);
}

}  // namespace undercroft::audit
