// Functions of ours: each argument held against what its parameter wants.
#include "addin/audit/units/passed_argument.hpp"

#include "addin/audit/units/expected_columns.hpp"

#include <algorithm>

#include "addin/catalogue/catalogue.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Function;
using addin::Node;
using addin::NodeKind;
using addin::Outcome;
using addin::Shape;
using addin::ValueType;

namespace {

bool is_small_count(double value) {
    return value == 0 || value == 1 || value == 2;
}

bool is_plain_unit(const Unit& unit, double size) {
    return is_plain(unit.dimension) && unit.scale.to_coherent(1) == size;
}

/// A number without a unit is a factor to it.
bool multiplies(const Function& function) {
    return function.role == addin::Role::multiplies || function.role == addin::Role::converts;
}

class OwnCall {
public:
    OwnCall(UnitReader& reader, const Node& call, const Function& function)
        : reader_(reader), call_(call), function_(function) {}

    Term read() {
        if (function_.role == addin::Role::writes) return read_written();
        const std::size_t count = std::min(call_.children.size(), function_.parameters.size());
        for (std::size_t i = 0; i < count; ++i) hold(i);
        compare_quantities();
        return result();
    }

private:
    [[nodiscard]] const std::string& name(std::size_t i) const { return function_.parameters[i].name; }

    void slip(UnitSlip::Kind kind, std::size_t i, const std::string& says, const std::optional<Spot>& cell) {
        reader_.note(kind, name(i) + " of " + function_.name + ": " + says, cell);
    }

    /// A number that gets the unit beside it: not another one than it is in.
    Term read_written() {
        if (call_.children.size() < 2) return some_text();
        const PassedArgument number = passed_argument(reader_, call_.children[0]);
        hold_asked(call_.children[1]);
        const UnitText& written = reader_.sources().units.read(asked_);
        const bool has_unit = number.value.kind == Term::Kind::unit && !is_plain_unit(number.value.unit, 1);
        if (has_unit && written.unit && !same_unit(number.value.unit, *written.unit))
            slip(UnitSlip::Kind::passed_bare, 0,
                 number.what + " stands in " + number.value.unit_text + ", but is written as " + asked_,
                 cell_of(number));
        return some_text();
    }

    void hold(std::size_t i) {
        const ValueType& type = function_.parameters[i].type;
        const Node& node = call_.children[i];
        switch (type.shape) {
            case Shape::quantity:
            case Shape::percentage:
                if (type.is_plain() || type.shape == Shape::percentage)
                    return hold_plain(i, passed_argument(reader_, node));
                return hold_dimension(i, passed_argument(reader_, node));
            case Shape::any_quantity:
                return hold_any(i, passed_argument(reader_, node));
            case Shape::unit:
            case Shape::units:
                return hold_asked(node);
            case Shape::figures:
                if (multiplies(function_)) return;  // its rows need not be alike
                return hold_figures(i);
            case Shape::table:
            case Shape::grid:
                return hold_table(i);
            default:
                if (node.kind == NodeKind::call) (void)passed_argument(reader_, node);
        }
    }

    /// The unit in which a bare number of that argument is read.
    struct BareUnit {
        Unit unit;
        std::string text;
    };
    [[nodiscard]] BareUnit bare_unit(std::size_t i) const {
        const ValueType& type = function_.parameters[i].type;
        return {type.shape == Shape::percentage ? parse_unit("%") : default_unit(type.dimension),
                type.is_plain() ? std::string("1") : bare_unit_text(type)};
    }

    void hold_quantity(std::size_t i, const PassedArgument& passed) {
        try {
            (void)in_dimension(passed.quantity, function_.parameters[i].type.dimension);
        } catch (const Refused& refused) {
            slip(UnitSlip::Kind::clash, i, passed.what + " " + refused.what(), cell_of(passed));
        }
    }

    /// A number that is handed over without its unit: read in `wanted`, whatever stands beside it.
    void hold_bare(std::size_t i, const Unit& wanted, const std::string& wanted_text,
                   const PassedArgument& passed) {
        const Term& value = passed.value;
        if (value.kind == Term::Kind::unit) {
            if (same_unit(value.unit, wanted)) {
                if (passed.beside && !passed.beside->in_label)
                    slip(UnitSlip::Kind::left_out, i,
                         passed.what + " is handed over without its unit in " +
                             reader_.text(passed.beside->at) + ": " + with_unit(passed),
                         passed.beside->at);
                return;
            }
            slip(UnitSlip::Kind::passed_bare, i,
                 (passed.kind == PassedArgument::Kind::cell ? passed.what + " stands in " + value.unit_text
                                                            : passed.what + " is handed over") +
                     ", but its bare number is read in " + wanted_text + ": " + with_unit(passed),
                 cell_of(passed));
        } else if (value.kind == Term::Kind::bare) {
            reader_.lack(value.why + ", and it is read in " + wanted_text, value.cell);
        } else if (value.kind == Term::Kind::unknown || value.kind == Term::Kind::mixed) {
            reader_.doubt(value.why, value.cell);
        } else if (value.kind == Term::Kind::date) {
            reader_.lack(name(i) + " is a date, read in " + wanted_text, cell_of(passed));
        } else if (value.kind == Term::Kind::number) {
            reader_.lack(name(i) + " is a number without a unit, read in " + wanted_text, cell_of(passed));
        }
    }

    [[nodiscard]] std::string with_unit(const PassedArgument& passed) const {
        if (passed.beside && passed.beside->beside && passed.area)
            return "write " +
                   reader_.text(Area{passed.area->sheet, passed.area->first_row, passed.area->first_column,
                                     passed.area->last_row, passed.area->last_column + 1});
        if (passed.beside) return "hand over the unit with it";
        return "ask for it in the unit wanted";
    }

    static std::optional<Spot> cell_of(const PassedArgument& passed) {
        if (passed.area) return passed.area->first();
        return passed.value.cell;
    }

    void hold_dimension(std::size_t i, const PassedArgument& passed) {
        if (passed.kind == PassedArgument::Kind::quantity) return hold_quantity(i, passed);
        const auto [unit, unit_text] = bare_unit(i);
        if (passed.kind == PassedArgument::Kind::literal && passed.value.is_zero())
            return;  // the same in every unit
        if (passed.kind == PassedArgument::Kind::literal) {
            slip(UnitSlip::Kind::bare_number, i,
                 passed.what + " stands for " + function_.parameters[i].kind() + " in " + unit_text, {});
            return reader_.lack(name(i) + " is " + passed.what + " without a unit, read in " + unit_text, {});
        }
        if (passed.kind == PassedArgument::Kind::blank)
            return reader_.lack(passed.what + " is blank or has no unit that can be read", cell_of(passed));
        if (passed.kind == PassedArgument::Kind::cell || passed.kind == PassedArgument::Kind::computed)
            hold_bare(i, unit, unit_text, passed);
    }

    void hold_plain(std::size_t i, const PassedArgument& passed) {
        if (passed.kind == PassedArgument::Kind::quantity) return hold_quantity(i, passed);
        const auto [unit, unit_text] = bare_unit(i);
        const bool in_a_unit =
            (passed.kind == PassedArgument::Kind::cell || passed.kind == PassedArgument::Kind::computed) &&
            passed.value.kind == Term::Kind::unit;
        if (!in_a_unit || is_plain_unit(passed.value.unit, unit.scale.to_coherent(1))) return;
        slip(UnitSlip::Kind::passed_bare, i,
             passed.what + " stands in " + passed.value.unit_text + ", but its bare number is read as " +
                 (unit_text == "%" ? "a percentage" : "a plain number") + ": " + with_unit(passed),
             cell_of(passed));
    }

    void hold_any(std::size_t i, const PassedArgument& passed) {
        quantities_.push_back({i, passed});
        if (passed.kind == PassedArgument::Kind::literal) {
            const double value = passed.value.literal.value_or(0);
            if (!is_small_count(value))
                slip(UnitSlip::Kind::bare_number, i, passed.what + " stands in the formula", {});
            return;
        }
        if (passed.kind != PassedArgument::Kind::cell && passed.kind != PassedArgument::Kind::computed)
            return;
        if (passed.value.kind == Term::Kind::unknown)
            return reader_.doubt(passed.value.why, passed.value.cell);
        if (passed.value.kind != Term::Kind::unit || is_plain_unit(passed.value.unit, 1)) return;
        const Dimension& dimension = passed.value.unit.dimension;
        hold_bare(i, default_unit(dimension), default_unit_text(dimension), passed);
    }

    struct PassedQuantity {
        std::size_t place;
        PassedArgument passed;
    };

    [[nodiscard]] static std::optional<Dimension> dimension_of_passed(const PassedArgument& passed) {
        if (passed.kind == PassedArgument::Kind::quantity) return passed.quantity.dimension;
        if (passed.value.kind == Term::Kind::unit) return passed.value.unit.dimension;
        return std::nullopt;
    }

    void compare_quantities() {
        if (multiplies(function_) || quantities_.size() < 2) return;
        const PassedQuantity* measured = nullptr;
        for (const PassedQuantity& held : quantities_)
            if (const auto dimension = dimension_of_passed(held.passed); dimension && !is_plain(*dimension))
                measured = measured == nullptr ? &held : measured;
        if (measured == nullptr) return;
        const std::string unit = default_unit_text(*dimension_of_passed(measured->passed));
        for (const PassedQuantity& held : quantities_) {
            const PassedArgument& passed = held.passed;
            const bool bare =
                (passed.kind == PassedArgument::Kind::literal && !passed.value.is_zero()) ||
                (passed.kind == PassedArgument::Kind::cell && passed.value.kind == Term::Kind::bare);
            if (bare)
                reader_.lack(passed.what + " stands without a unit, and is read in " + unit, cell_of(passed));
            const auto dimension = dimension_of_passed(passed);
            const bool alike = function_.role == addin::Role::compares || function_.role == addin::Role::adds;
            if (!dimension || !alike || function_.parameters[held.place].may_be_share) continue;
            if (!(dimension->without_ratios() == dimension_of_passed(measured->passed)->without_ratios()))
                slip(UnitSlip::Kind::clash, held.place,
                     passed.what + " is " + name_of(*dimension) + ", and " + measured->passed.what + " is " +
                         name_of(*dimension_of_passed(measured->passed)),
                     cell_of(passed));
        }
    }

    /// Figures that are alike: one column as a table holds it, or rows of number and unit.
    void hold_figures(std::size_t i) {
        const std::optional<Area> area = reader_.area_of_node(call_.children[i]);
        if (!area || area->last_column != area->first_column + 1) return hold_table(i);
        const Area numbers{area->sheet, area->first_row, area->first_column, area->last_row,
                           area->first_column};
        const AreaUnits found = reader_.sources().units.of_area(numbers);
        hold_pairs(i, found.unit ? found.unit->text->text : std::string(), *area, 0);
    }

    void hold_table(std::size_t i) {
        const Node& node = call_.children[i];
        if (node.kind == NodeKind::missing) return;
        const std::optional<Area> area = reader_.area_of_node(node);
        if (!area) {
            const bool own_table = node.kind == NodeKind::call && addin::find_function(node.text) != nullptr;
            if (own_table)
                (void)reader_.of(node);  // its first row holds its units
            else if (node.kind != NodeKind::text)
                reader_.doubt("the table " + node.text + " cannot be followed", {});
            return;
        }
        const std::int32_t width = area->last_column - area->first_column + 1;
        const ExpectedColumns expected(function_.parameters[i].type);
        const std::vector<std::int32_t> places = expected.places_beside(width);
        for (std::size_t c = 0; c < places.size(); ++c)
            if (expected.unit_beside[c]) hold_pairs(i, expected.units[c], *area, places[c]);
        if (!places.empty()) return;
        for (std::int32_t c = 0; c < std::min<std::int32_t>(width, 64); ++c)
            hold_column(i, expected.unit(static_cast<std::size_t>(c), static_cast<std::size_t>(width)), *area,
                        c);
    }

    /// A column of numbers with a unit beside each.
    void hold_pairs(std::size_t i, const std::string& wanted, const Area& area, std::int32_t place) {
        const Book& book = reader_.sources().book;
        const std::int32_t column = area.first_column + place;
        const auto& cells = book.sheets[static_cast<std::size_t>(area.sheet)].cells;
        const UnitText* seen = nullptr;
        for (const std::uint32_t at : book.column(area.sheet, column, area.first_row, area.last_row)) {
            if (cells[at].number() == nullptr) continue;
            const Spot number{area.sheet, cells[at].row, column};
            const std::optional<UnitCell> unit = reader_.sources().units.of(number);
            if (!unit || !unit->beside) {
                reader_.lack("no unit stands beside " + reader_.text(number), number);
                continue;
            }
            if (unit->text == seen) continue;
            seen = unit->text;
            hold_head(i, reader_.sources().units.read(wanted), *seen, unit->at);
        }
    }

    void hold_column(std::size_t i, const std::string& wanted_text, const Area& area, std::int32_t c) {
        const Spot head{area.sheet, area.first_row, area.first_column + c};
        const UnitText& wanted = reader_.sources().units.read(wanted_text);
        const BookCell* first = reader_.sources().book.find(head);
        const std::string* text = first == nullptr ? nullptr : first->text();
        if (text != nullptr && reader_.sources().units.read(*text).unit) {
            hold_head(i, wanted, reader_.sources().units.read(*text), head);
            return;
        }
        const Area column{area.sheet, area.first_row, head.column, area.last_row, head.column};
        const AreaUnits found = reader_.sources().units.of_area(column);
        if (!found.has_numbers) return;
        if (found.unit && found.unit->beside && area.first_column + c < area.last_column) return;  // pairs
        if (found.unit && !is_plain_unit(*found.unit->text->unit, 1)) {
            const bool same = wanted.unit && same_unit(*wanted.unit, *found.unit->text->unit);
            slip(same ? UnitSlip::Kind::left_out : UnitSlip::Kind::passed_bare, i,
                 reader_.text(area) + " leaves out its unit in " + reader_.text(found.unit->at) +
                     (same ? "" : ", so that its numbers are not read in " + found.unit->text->text) +
                     ": begin the range with the row of units",
                 found.unit->at);
        } else if (wanted.unit && !is_plain(wanted.unit->dimension)) {
            reader_.lack("column " + std::to_string(c + 1) + " of " + reader_.text(area) +
                             " has no unit, and is read in " + wanted_text,
                         head);
        }
    }

    void hold_head(std::size_t i, const UnitText& wanted, const UnitText& passed, const Spot& head) {
        if (!wanted.unit) return;
        try {
            (void)in_dimension(Quantity::of(1, *passed.unit), wanted.unit->dimension);
        } catch (const Refused& refused) {
            slip(UnitSlip::Kind::clash, i, reader_.text(head) + " " + passed.text + " " + refused.what(),
                 head);
        }
    }

    void hold_asked(const Node& node) {
        const PassedUnit passed = passed_unit(reader_, node);
        if (passed.text.empty()) return;
        asked_ = passed.text;
        asked_at_ = passed.at;
    }

    Term result() {
        const Outcome& outcome = function_.outcome;
        if (outcome.type.shape == Shape::text) return some_text();
        if (outcome.type.shape == Shape::verdict) return truth_of(true);
        if (outcome.is_table()) {
            Term table = pure_number("the table of " + function_.name);
            table.from_units = true;
            return table;
        }
        std::string text = outcome.type.is_plain() ? std::string("1") : outcome.unit();
        if (!asked_.empty()) {
            text = asked_;
            reader_.ask_at(asked_at_);
        } else if (text.empty() && !multiplies(function_)) {
            for (const PassedQuantity& held : quantities_)
                if (const auto dimension = dimension_of_passed(held.passed); dimension && text.empty())
                    text = default_unit_text(*dimension);
        }
        if (text.empty())
            return unknown_unit("the unit of the result of " + function_.name + " is not asked for");
        const UnitText& unit = reader_.sources().units.read(text);
        if (!unit.unit) return unknown_unit(unit.refusal, asked_at_);
        return in_unit(*unit.unit, text, "the result of " + function_.name);
    }

    UnitReader& reader_;
    const Node& call_;
    const Function& function_;
    std::vector<PassedQuantity> quantities_;
    std::string asked_;
    std::optional<Spot> asked_at_;
};

}  // namespace

Term UnitReader::of_own_call(const Node& call, const Function& function) {
    if (function.reads_cell())
        return function.outcome.type.shape == Shape::verdict ? truth_of(true) : some_text();
    const std::optional<Spot> asked_outside = asked_at_;
    asked_at_.reset();
    Term result = OwnCall(*this, call, function).read();
    if (&call != root_) asked_at_ = asked_outside;
    return result;
}

}  // namespace undercroft::audit
