#include "addin/audit/units/calc_units.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <string_view>
#include <unordered_map>

#include "addin/audit/book/uses.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

using Rule = Term (*)(UnitReader&, const Node&);

const Node* argument(const Node& call, std::size_t i) {
    const bool there = i < call.children.size() && call.children[i].kind != NodeKind::missing;
    return there ? &call.children[i] : nullptr;
}

Term first_argument(UnitReader& reader, const Node& call) {
    const Node* first = argument(call, 0);
    return first == nullptr ? unknown_unit(call.text + " has no argument") : reader.of(*first);
}

/// The arguments from `from` on must be alike; texts stand for no result and are passed over.
Term alike_from(UnitReader& reader, const Node& call, std::size_t from, const std::string& verb) {
    std::optional<Term> all;
    for (std::size_t i = from; i < call.children.size(); ++i) {
        const Node* node = argument(call, i);
        if (node == nullptr) continue;
        Term next = reader.of(*node);
        if (next.kind == TermKind::text) continue;
        if (next.kind == TermKind::mixed) {
            reader.note(SlipKind::clash, "it " + verb + " " + next.why, next.cell);
            next.kind = TermKind::unknown;
        }
        all = all ? reader.alike_or_clash(*all, next, verb) : next;
    }
    return all ? *all : some_text();
}

Term summed(UnitReader& reader, const Node& call) {
    const Term sum = alike_from(reader, call, 0, "adds");
    if (sum.kind == TermKind::date && call.text == "SUM")
        reader.note(SlipKind::clash, "it adds dates: " + sum.what, sum.cell);
    return sum.kind == TermKind::text ? unknown_unit("it adds texts only") : sum;
}
Term picked(UnitReader& reader, const Node& call) {
    return alike_from(reader, call, 0, "compares");
}

Term if_rule(UnitReader& reader, const Node& call) {
    if (const Node* condition = argument(call, 0)) (void)reader.of(*condition);
    return alike_from(reader, call, 1, "gives one or the other of");
}
Term if_error(UnitReader& reader, const Node& call) {
    return alike_from(reader, call, 0, "gives one or the other of");
}
Term choose(UnitReader& reader, const Node& call) {
    return alike_from(reader, call, 1, "gives one or the other of");
}

Term rounded_to(UnitReader& reader, const Node& call) {
    const Term value = first_argument(reader, call);
    if (const Node* step = argument(call, 1)) return reader.alike_or_clash(value, reader.of(*step), "rounds");
    return value;
}

Term logic(UnitReader& reader, const Node& call) {
    bool from_units = false;
    for (const Node& child : call.children) {
        const Term part = reader.of(child);
        if (part.kind == TermKind::unknown || part.kind == TermKind::bare) return part;
        from_units = from_units || part.from_units;
    }
    return truth_of(from_units);
}

Term square_root(UnitReader& reader, const Node& call) {
    return power(first_argument(reader, call), 1, 2);
}

Term multiplied(UnitReader& reader, const Node& call) {
    Term all = literal_number(1);
    for (const Node& child : call.children)
        if (child.kind != NodeKind::missing) all = product(all, reader.of(child));
    return all;
}

Term sum_of_products(UnitReader& reader, const Node& call) {
    Term all = multiplied(reader, call);
    if (all.kind == TermKind::mixed) {
        reader.note(SlipKind::clash, "it adds " + all.why, all.cell);
        all.kind = TermKind::unknown;
    }
    return all;
}

bool is_angle(const Term& value) {
    return value.kind == TermKind::unit && value.unit.dimension == Dimension::of(Base::angle);
}

Term trigonometric(UnitReader& reader, const Node& call) {
    const Term angle = first_argument(reader, call);
    if (is_angle(angle)) {
        if (std::abs(angle.unit.scale.to_coherent(1) - 1) > 1e-12)
            reader.note(SlipKind::clash,
                        call.text + " takes radians, and is given " + angle.what + ": use RADIANS",
                        angle.cell);
        Term ratio = pure_number("a ratio");
        ratio.from_units = true;
        return ratio;
    }
    if (angle.kind == TermKind::unit) {
        reader.note(SlipKind::clash, call.text + " takes an angle, and is given " + angle.what, angle.cell);
        return pure_number("a ratio");
    }
    return angle.kind == TermKind::number ? pure_number("a ratio") : angle;
}

const Unit radian_unit{{1, 1}, Dimension::of(Base::angle), false};

Term arc(UnitReader& reader, const Node& call) {
    const Term ratio = first_argument(reader, call);
    const bool plain =
        ratio.kind == TermKind::number || (ratio.kind == TermKind::unit && is_plain(ratio.unit.dimension));
    if (plain) return in_unit(radian_unit, "rad", "an angle");
    return ratio.kind == TermKind::unit ? unknown_unit(call.text + " of a quantity", ratio.cell) : ratio;
}

Term to_radians(UnitReader& reader, const Node& call) {
    const Term angle = first_argument(reader, call);
    const bool in_degrees = is_angle(angle) && std::abs(angle.unit.scale.to_coherent(1) - 1) > 1e-12;
    if (angle.kind == TermKind::unit && !in_degrees)
        reader.note(SlipKind::clash, "RADIANS takes degrees, and is given " + angle.what, angle.cell);
    if (angle.kind == TermKind::bare || angle.kind == TermKind::unknown) return angle;
    return in_unit(radian_unit, "rad", "an angle");
}

Term to_degrees(UnitReader& reader, const Node& call) {
    const Term angle = first_argument(reader, call);
    if (angle.kind == TermKind::bare || angle.kind == TermKind::unknown) return angle;
    return in_unit(parse_unit("deg"), "deg", "an angle");
}

Term of_number(UnitReader& reader, const Node& call) {
    const Term value = first_argument(reader, call);
    if (value.kind == TermKind::number) return pure_number("a number");
    const bool plain = value.kind == TermKind::unit && is_plain(value.unit.dimension);
    if (plain) return pure_number("a number");
    return value.kind == TermKind::unit ? unknown_unit(call.text + " of a quantity", value.cell) : value;
}

Term a_number(UnitReader&, const Node& call) {
    return pure_number("what " + call.text + " gives");
}
Term a_truth(UnitReader&, const Node&) {
    return truth_of(false);
}
Term a_text(UnitReader&, const Node&) {
    return some_text();
}

Term looked_up_in(const Node& call, const Term& found) {
    if (found.kind != TermKind::mixed) return found;
    return unknown_unit(call.text + " may pick from different units: " + found.why, found.cell);
}

Term from_table(UnitReader& reader, const Node& call) {
    return looked_up_in(call, first_argument(reader, call));
}

/// VLOOKUP with a literal number of a column.
Term from_column(UnitReader& reader, const Node& call) {
    const Node* table = argument(call, 1);
    const Node* number = argument(call, 2);
    const std::optional<Area> area = table == nullptr ? std::nullopt : reader.area_of_node(*table);
    if (!area || number == nullptr || number->kind != NodeKind::number)
        return unknown_unit("which column VLOOKUP picks is computed");
    Area column = *area;
    column.first_column = column.last_column =
        area->first_column + static_cast<std::int32_t>(std::clamp(number->number, 1.0, 16384.0)) - 1;
    if (column.first_column > area->last_column) return unknown_unit("VLOOKUP picks beyond its table");
    return looked_up_in(call, reader.of_area(column));
}

Term from_last(UnitReader& reader, const Node& call) {
    const Node* last = argument(call, call.children.size() > 2 ? 2 : 1);
    return last == nullptr ? unknown_unit(call.text + " has no range") : looked_up_in(call, reader.of(*last));
}

Term sum_if(UnitReader& reader, const Node& call) {
    const Node* range = argument(call, 2) != nullptr ? argument(call, 2) : argument(call, 0);
    if (range == nullptr) return unknown_unit(call.text + " has no range");
    Term found = reader.of(*range);
    if (found.kind == TermKind::mixed) {
        reader.note(SlipKind::clash, "it adds " + found.why, found.cell);
        found.kind = TermKind::unknown;
    }
    return found;
}

/// A quantity where Calc wants a date, or days, or a plain number.
/// \param fits whether a quantity in a unit is one that is wanted
template <class Fits>
void hold_counted(UnitReader& reader, const Node& call, std::size_t i, const std::string& wants,
                  const Fits& fits) {
    const Node* node = argument(call, i);
    if (node == nullptr) return;
    const Term given = reader.of(*node);
    if (given.kind == TermKind::unit && !fits(given))
        reader.note(SlipKind::clash, call.text + " takes " + wants + ", and is given " + given.what,
                    given.cell);
}

Term date_of_numbers(UnitReader&, const Node& call) {
    return a_date("what " + call.text + " gives");
}

/// So many days on from a date.
Term date_counted_on(UnitReader& reader, const Node& call) {
    hold_counted(reader, call, 0, "a date", is_in_days);
    hold_counted(reader, call, 1, "a number of days", is_in_days);
    return a_date("what " + call.text + " gives");
}

/// So many months on from a date.
Term date_by_months(UnitReader& reader, const Node& call) {
    hold_counted(reader, call, 0, "a date", is_in_days);
    hold_counted(reader, call, 1, "a number of months",
                 [](const Term& given) { return is_plain(given.unit.dimension); });
    return a_date("what " + call.text + " gives");
}

Term days_between(UnitReader& reader, const Node& call) {
    hold_counted(reader, call, 0, "two dates", is_in_days);
    hold_counted(reader, call, 1, "two dates", is_in_days);
    return days("what " + call.text + " counts");
}

Term part_of_date(UnitReader& reader, const Node& call) {
    hold_counted(reader, call, 0, "a date", is_in_days);
    return pure_number("what " + call.text + " gives");
}

const std::unordered_map<std::string_view, Rule>& rules() {
    static const std::unordered_map<std::string_view, Rule> table = {
        {"SUM", summed},
        {"AVERAGE", summed},
        {"MIN", picked},
        {"MAX", picked},
        {"MEDIAN", picked},
        {"LARGE", from_table},
        {"SMALL", from_table},
        {"STDEV", summed},
        {"ABS", first_argument},
        {"ROUND", first_argument},
        {"ROUNDUP", first_argument},
        {"ROUNDDOWN", first_argument},
        {"TRUNC", first_argument},
        {"INT", first_argument},
        {"EVEN", first_argument},
        {"ODD", first_argument},
        {"N", first_argument},
        {"CEILING", rounded_to},
        {"FLOOR", rounded_to},
        {"MROUND", rounded_to},
        {"MOD", rounded_to},
        {"IF", if_rule},
        {"IFERROR", if_error},
        {"IFNA", if_error},
        {"CHOOSE", choose},
        {"AND", logic},
        {"OR", logic},
        {"NOT", logic},
        {"XOR", logic},
        {"SQRT", square_root},
        {"PRODUCT", multiplied},
        {"SUMPRODUCT", sum_of_products},
        {"SIN", trigonometric},
        {"COS", trigonometric},
        {"TAN", trigonometric},
        {"ASIN", arc},
        {"ACOS", arc},
        {"ATAN", arc},
        {"RADIANS", to_radians},
        {"DEGREES", to_degrees},
        {"EXP", of_number},
        {"LN", of_number},
        {"LOG", of_number},
        {"LOG10", of_number},
        {"FACT", of_number},
        {"PI", a_number},
        {"TRUE", a_truth},
        {"FALSE", a_truth},
        {"ISBLANK", a_truth},
        {"MATCH", a_number},
        {"COUNTIF", a_number},
        {"COUNTBLANK", a_number},
        {"RAND", a_number},
        {"SIGN", a_number},
        {"TEXT", a_text},
        {"CONCATENATE", a_text},
        {"CONCAT", a_text},
        {"T", a_text},
        {"UPPER", a_text},
        {"LOWER", a_text},
        {"TRIM", a_text},
        {"LEFT", a_text},
        {"RIGHT", a_text},
        {"MID", a_text},
        {"TEXTJOIN", a_text},
        {"HYPERLINK", a_text},
        {"REPT", a_text},
        {"DATE", date_of_numbers},
        {"DATEVALUE", date_of_numbers},
        {"TODAY", date_of_numbers},
        {"EASTERSUNDAY", date_of_numbers},
        {"WORKDAY", date_counted_on},
        {"WORKDAY.INTL", date_counted_on},
        {"EDATE", date_by_months},
        {"EOMONTH", date_by_months},
        {"DAYS", days_between},
        {"NETWORKDAYS", days_between},
        {"NETWORKDAYS.INTL", days_between},
        {"YEAR", part_of_date},
        {"MONTH", part_of_date},
        {"DAY", part_of_date},
        {"WEEKDAY", part_of_date},
        {"ISOWEEKNUM", part_of_date},
        {"INDEX", from_table},
        {"VLOOKUP", from_column},
        {"LOOKUP", from_last},
        {"SUMIF", sum_if},
        {"AVERAGEIF", sum_if},
        {"SUMIFS", from_table},
    };
    return table;
}

}  // namespace

Term unit_of_calc_call(UnitReader& reader, const Node& call) {
    if (only_observes(call)) return pure_number("what " + call.text + " gives");
    const auto rule = rules().find(call.text);
    if (rule == rules().end())
        return unknown_unit("what " + call.text + " does to units is not known to the audit");
    return rule->second(reader, call);
}

}  // namespace undercroft::audit
