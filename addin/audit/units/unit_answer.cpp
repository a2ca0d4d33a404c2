// What the parts of a formula come to, held against the unit beside its result.
#include "addin/audit/units/unit_answer.hpp"

#include <algorithm>
#include <cmath>

#include "addin/audit/book/book_values.hpp"
#include "addin/audit/units/unit_reader.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "addin/formula/cell_error.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;
using Verdict = UnitVerdict;

std::string text_of(UnitVerdict verdict) {
    switch (verdict) {
        case UnitVerdict::consistent:
            return "consistent";
        case UnitVerdict::inconsistent:
            return "inconsistent";
        case UnitVerdict::cannot_tell:
            return "cannot tell";
        case UnitVerdict::not_given:
            return "no unit given";
    }
    return "cannot tell";
}

namespace {

class Answer {
public:
    Answer(const UnitSources& sources, const FormulaGroup& group, const Spot& at, ErrorsToExplain& errors)
        : sources_(sources), group_(group), at_(at), errors_(errors), reader_(sources, group, at) {}

    UnitReading read() {
        if (!group_.unreadable().empty()) return {{Verdict::cannot_tell, group_.unreadable(), at_}, {}};
        const Term result = reader_.of(group_.tree());
        own_ = sources_.units.of(at_);
        note_unit_left_out(result);
        UnitReading reading;
        reading.answer = answer(result);
        reading.slips = std::move(reader_.slips());
        return reading;
    }

private:
    [[nodiscard]] const Book& book() const { return sources_.book; }
    [[nodiscard]] std::string text(const Spot& spot) const { return book().text_from(at_.sheet, spot); }

    [[nodiscard]] UnitAnswer answer(const Term& result) {
        for (const UnitSlip& slip : reader_.slips())
            if (slip.kind == SlipKind::clash || slip.kind == SlipKind::passed_bare)
                return {Verdict::inconsistent, slip.says, slip.cell};
        const BookCell* cell = book().find(at_);
        if (cell != nullptr && cell->error != 0) return of_error(cell->error);
        if (result.kind == TermKind::mixed) return {Verdict::cannot_tell, result.why, result.cell};
        if (result.kind == TermKind::unknown) return {Verdict::cannot_tell, result.why, result.cell};
        if (reader_.doubts()) return *reader_.doubts();
        if (reader_.lacks()) return *reader_.lacks();
        if (group_.is_array && result.from_units)
            return {Verdict::consistent,
                    "every argument has its unit; the first row of the table holds its units",
                    {}};
        switch (result.kind) {
            case TermKind::text:
                return of_text();
            case TermKind::truth:
                return result.from_units
                           ? UnitAnswer{Verdict::consistent, "what it compares has its units", {}}
                           : UnitAnswer{Verdict::not_given, "TRUE or FALSE, from numbers without a unit", {}};
            case TermKind::bare:
                return {Verdict::not_given, result.why, result.cell};
            case TermKind::date:
                return of_date();
            case TermKind::number:
                return of_number(result);
            default:
                return of_unit(result);
        }
    }

    /// The error of a function of ours that is about units is a clash; any other says nothing of units.
    [[nodiscard]] UnitAnswer of_error(int error) {
        const std::string shows = "it shows " + addin::error_text(error);
        const bool own =
            group_.tree().kind == NodeKind::call && addin::find_function(group_.tree().text) != nullptr;
        if (!own || errors_.left-- <= 0) return {Verdict::cannot_tell, shows, at_};
        try {
            (void)BookValues(book(), sources_.names, group_.base, at_).value_of(group_.tree());
        } catch (const Refused& refused) {
            const std::string why = refused.what();
            return {refused.refusal() == Refusal::dimension ? Verdict::inconsistent : Verdict::cannot_tell,
                    shows + ": " + why, at_};
        }
        return {Verdict::cannot_tell, shows, at_};
    }

    [[nodiscard]] UnitAnswer of_text() const {
        const BookCell* cell = book().find(at_);
        const bool is_unit = cell != nullptr && cell->text() != nullptr && !cell->text()->empty() &&
                             sources_.units.read(*cell->text()).unit && group_.is_link();
        if (is_unit) return {Verdict::consistent, "it repeats a unit", {}};
        return {Verdict::not_given, "the result is a text", {}};
    }

    [[nodiscard]] UnitAnswer of_date() const {
        if (!own_) return {Verdict::consistent, "a day of the calendar", {}};
        const std::string beside = own_->text->text + " stands in " + text(own_->at);
        if (same_unit(*own_->text->unit, parse_unit("d")))
            return {Verdict::consistent, "a day of the calendar, counted in days; " + beside, {}};
        return {Verdict::inconsistent, "the result is a date, but " + beside, own_->at};
    }

    [[nodiscard]] UnitAnswer of_number(const Term& result) const {
        if (!own_) {
            if (result.from_units) return {Verdict::consistent, "a ratio of quantities in the same unit", {}};
            return {Verdict::not_given, "its numbers have no unit, and none stands beside the result", at_};
        }
        const Unit& own = *own_->text->unit;
        const std::string beside = own_->text->text + " stands in " + text(own_->at);
        if (is_plain(own.dimension)) {
            const double size = own.scale.to_coherent(1);
            if (size == 1 || converts(result, 1 / size))
                return {Verdict::consistent, "a plain number; " + beside, {}};
            return {Verdict::inconsistent, "the result is a plain number, but " + beside, own_->at};
        }
        if (result.from_units)
            return {Verdict::inconsistent, "the result is a ratio, but " + beside, own_->at};
        return {Verdict::not_given, "its numbers have no unit; " + beside, at_};
    }

    /// A literal in the formula that turns one unit into another of the same kind.
    [[nodiscard]] static bool converts(const Term& result, double ratio) {
        return is_about(result.literal.value_or(0), ratio) || has_factor(result, ratio);
    }

    /// A number in the formula that no conversion explains: it may stand for a quantity, such as a density.
    [[nodiscard]] static std::optional<double> constant_in(const Term& result) {
        static constexpr double conversions[] = {10,  100,  1e3,   1e4,   1e6, 1e9, 12, 24, 27, 36, 60, 144,
                                                 360, 3600, 43560, 86400, 2,   3,   4,  5,  6,  8,  1.5};
        for (const double factor : result.factors) {
            const bool known =
                factor == 1 || std::any_of(std::begin(conversions), std::end(conversions), [&](double one) {
                    return is_about(factor, one) || is_about(1 / factor, one);
                });
            if (!known && factor != 0) return factor;
        }
        return std::nullopt;
    }

    [[nodiscard]] UnitAnswer of_unit(const Term& result) const {
        const bool plain = is_plain(result.unit.dimension);
        if (!own_) {
            if (plain && result.unit.scale.to_coherent(1) == 1)
                return {Verdict::consistent, "a plain number", {}};
            if (book().format_of(at_).number.shown_as == ShownAs::date)
                return {Verdict::inconsistent,
                        "the result is in " + result.unit_text + ", but is shown as a date", at_};
            const bool asked = group_.tree().kind == NodeKind::call && !reader_.asked_at() && asks_by_text();
            if (asked) return {Verdict::consistent, "the formula itself asks for " + result.unit_text, {}};
            return {Verdict::not_given,
                    "the result is in " + result.unit_text + ", but no unit stands beside it", at_};
        }
        const Unit& own = *own_->text->unit;
        const std::string beside = own_->text->text + " stands in " + text(own_->at);
        const bool of_kind = result.unit.dimension.without_ratios() == own.dimension.without_ratios();
        if (!of_kind && result.empirical)
            return {Verdict::cannot_tell,
                    "an empirical formula, whose coefficients have units that nobody writes", at_};
        if (const std::optional<double> constant = of_kind ? std::nullopt : constant_in(result))
            return {Verdict::cannot_tell,
                    "the number " + rounded_text(*constant) + " in the formula may have a unit", at_};
        if (!of_kind)
            return {Verdict::inconsistent,
                    "the result is " + name_of(result.unit.dimension) + " (in " + result.unit_text +
                        "), but " + beside,
                    own_->at};
        const double ratio = result.unit.scale.to_coherent(1) / own.scale.to_coherent(1);
        if (std::abs(ratio - 1) < 1e-9)
            return {Verdict::consistent, "in " + own_->text->text + ", as stands beside it", {}};
        if (converts(result, ratio))
            return {Verdict::consistent,
                    "a number in the formula turns " + result.unit_text + " into " + own_->text->text,
                    {}};
        return {Verdict::inconsistent, "the result is in " + result.unit_text + ", but " + beside, own_->at,
                true};
    }

    [[nodiscard]] bool asks_by_text() const {
        const addin::Function* function = addin::find_function(group_.tree().text);
        if (function == nullptr) return false;
        for (std::size_t i = 0; i < std::min(group_.tree().children.size(), function->parameters.size()); ++i)
            if (function->parameters[i].type.shape == addin::Shape::unit &&
                group_.tree().children[i].kind == NodeKind::text)
                return true;
        return false;
    }

    /// Whether a person may type another unit there.
    [[nodiscard]] bool can_be_changed(const Spot& spot) const {
        const BookCell* cell = book().find(spot);
        if (cell == nullptr || cell->is_formula()) return false;
        return !(book().format_of(spot).locked &&
                 book().sheets[static_cast<std::size_t>(spot.sheet)].is_protected);
    }

    void note_unit_left_out(const Term& result) {
        if (!own_ || !own_->beside || group_.is_array) return;
        if (group_.is_link()) return note_link(result);
        const addin::Function* function =
            group_.tree().kind == NodeKind::call ? addin::find_function(group_.tree().text) : nullptr;
        const bool in_a_unit = function != nullptr && function->outcome.has_unit();
        if (!in_a_unit || reader_.asked_at() == own_->at || !can_be_changed(own_->at)) return;
        reader_.note(SlipKind::left_out,
                     function->name + " does not take the unit of its result from " + text(own_->at) +
                         ": make that cell its last argument",
                     own_->at);
    }

    /// A link to a number and, beside it, a unit that is not the one of that number.
    void note_link(const Term& result) {
        if (!result.cell || result.kind != TermKind::unit) return;
        const std::optional<UnitCell> source = sources_.units.of(*result.cell);
        const BookCell* unit = book().find(own_->at);
        if (!source || !source->beside || unit == nullptr) return;
        const std::string should = ": link " + text(own_->at) + " to " + text(source->at);
        if (!unit->is_formula()) {
            if (!can_be_changed(own_->at) && !can_be_changed(source->at)) return;
            reader_.note(
                SlipKind::left_out,
                text(own_->at) + " is typed, while the number comes from " + text(*result.cell) + should,
                own_->at);
            // Where no sheet is protected, units are not there to be changed.
            const bool meant_to_change =
                book().sheets[static_cast<std::size_t>(own_->at.sheet)].is_protected ||
                book().sheets[static_cast<std::size_t>(source->at.sheet)].is_protected;
            reader_.slips().back().is_minor =
                !meant_to_change && same_unit(*own_->text->unit, *source->text->unit);
            return;
        }
        const std::optional<Area> from = linked_to(own_->at);
        if (!from || from->first() == source->at) return;
        // A unit that repeats the unit that the source repeats is as good.
        const BookCell* other = book().find(source->at);
        if (other != nullptr && other->is_formula() && linked_to(source->at) == from) return;
        reader_.note(
            SlipKind::left_out,
            "the number comes from " + text(*result.cell) + ", its unit from " + text(from->first()) + should,
            own_->at);
    }

    /// The cells that a formula is nothing but a reference to.
    [[nodiscard]] std::optional<Area> linked_to(const Spot& spot) const {
        const FormulaCell* formula = sources_.formulas.find(spot);
        if (formula == nullptr) return std::nullopt;
        const FormulaGroup& group = sources_.formulas.group_of(*formula);
        if (!group.unreadable().empty() || group.tree().kind != NodeKind::reference) return std::nullopt;
        return area_of(book(), group.tree().reference, group.base, formula->at);
    }

    const UnitSources& sources_;
    const FormulaGroup& group_;
    Spot at_;
    ErrorsToExplain& errors_;
    UnitReader reader_;
    std::optional<UnitCell> own_;
};

}  // namespace

UnitReading read_units(const UnitSources& sources, const FormulaGroup& group, const Spot& at,
                       ErrorsToExplain& errors) {
    return Answer(sources, group, at, errors).read();
}

}  // namespace undercroft::audit
