/// \file entry.hpp
/// One declaration a function: its name, what it says, and the typed C++ function behind it. Shapes and
/// dimensions are deduced from the C++ signature and stated nowhere else.
#pragma once

#include <functional>
#include <initializer_list>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>
#include <vector>

#include "addin/catalogue/binding.hpp"
#include "addin/catalogue/function.hpp"
#include "addin/catalogue/result.hpp"
#include "addin/catalogue/usual.hpp"

namespace undercroft::addin {

/// Where a summit lies is found to half of the digits only, since it is flat; how high it is, to all.
inline constexpr double half_of_the_digits = 1e-6;

/// A catalogue entry while it is being written; turns into a Function.
class Entry {
public:
    Entry(const char* name, Binding binding, std::vector<ValueType> arguments, std::vector<bool> optional,
          ValueType result);

    /// One sentence that says what the function gives.
    Entry& says(const char* text) { return made_.says = text, *this; }
    Entry& equation(const char* text) { return made_.equation = text, *this; }
    /// Author or body, title, year, and where in it; `common practice` where there is no publication.
    Entry& source(const char* text) { return made_.source = text, *this; }
    /// What must not be forgotten before the result is used.
    Entry& caution(const char* text) { return made_.caution = text, *this; }
    Entry& role(Role role) { return made_.role = role, *this; }

    /// The next argument; in the order of the C++ parameters.
    Entry& takes(const char* name, const char* symbol, const char* text);
    /// The next argument with its default, as a number or as the text of a quantity or choice.
    Entry& takes(const char* name, const char* symbol, const char* text, double fallback);
    Entry& takes(const char* name, const char* symbol, const char* text, const char16_t* fallback);
    /// The range of the argument above. \throws std::logic_error for an argument that is no number.
    Entry& within(const Range& range);
    /// The ranges of a table's columns.
    Entry& within(std::initializer_list<Range> columns);
    /// The argument above may also be a share of another one, written in %.
    Entry& or_share() { return last().may_be_share = true, *this; }
    /// The order of the rows of the table above says what none of its columns does: layers, days, faces.
    Entry& in_order() { return last().order_counts = true, *this; }
    /// The argument above came after a release: it stands behind the unit, where no formula changes its
    /// meaning. It is optional, and so is all that follows.
    Entry& added_later() { return ++binding_.added_later, *this; }

    Entry& gives(const char* symbol, const char* text);
    /// The names of a table's columns, in order.
    Entry& gives_columns(const char* text, std::vector<std::pair<const char*, const char*>> columns);
    /// The result is found by a search, to this share of it; of a table the columns of these names, or all.
    Entry& found_to(double share, std::initializer_list<std::string_view> columns = {});
    Entry& may_be_negative() { return made_.outcome.may_be_negative = true, *this; }
    /// Each row of the resulting table starts from the rounded one before.
    Entry& rows_carry_on() { return made_.outcome.rows_carry_on = true, *this; }
    /// The result's unit must be asked for.
    Entry& wants_unit(const char* name = "unit", const char* text = "Unit of the result");
    Entry& unit_named(const char* name, const char* text);

    /// A worked example: the value that `source` gives, how near ours must be, and where it comes from.
    Entry& example(const char* formula, const char* value, const char* tolerance, Origin origin,
                   const char* source);
    /// Examples that differ in their numbers only: each row fills the `{}` of `formula` in order; its last
    /// text is the value.
    Entry& examples(const char* formula, const char* tolerance, Origin origin, const char* source,
                    std::initializer_list<std::vector<const char*>> rows);

    /// What an engineer looks for next: what feeds an argument, what takes its result, what is used instead.
    Entry& related(std::initializer_list<const char*> names);
    /// Other words of the trade for it, parted by commas: the reference is searched by them.
    Entry& also_called(const char* words) { return made_.guidance.also_called = words, *this; }
    /// A formula to paste into a sheet; the reference shows what it gives.
    Entry& to_try(const char* formula) { return made_.guidance.to_try.emplace_back(formula), *this; }
    /// A formula that is refused; the reference shows why.
    Entry& refuses(const char* formula) { return made_.guidance.refused.emplace_back(formula), *this; }
    Entry& sketch(Sketch sketch) { return made_.guidance.sketch = sketch, *this; }

    /// \throws std::logic_error for an entry that does not fit its function.
    operator Function() const;  // NOLINT(google-explicit-constructor): an entry stands for a Function

private:
    Parameter& last();
    void insert_shaping(std::vector<Parameter>& parameters, const Binding& binding) const;

    Function made_;
    Binding binding_;
    std::vector<ValueType> arguments_;
    std::vector<bool> optional_;
    std::string unit_name_ = "unit";
    std::string unit_says_ = "Unit of the result; left out, the default unit of its dimension";
    bool unit_required_ = false;
};

template <class T>
inline constexpr bool is_optional = false;
template <class T>
inline constexpr bool is_optional<std::optional<T>> = true;

/// What calls a C++ function of this signature.
template <class R, class... A>
struct Caller {
    using Arguments = std::tuple<std::decay_t<A>...>;
    using Returned = Result<std::decay_t<R>>;
    static constexpr std::size_t arity = sizeof...(A);

    static Answer call(const Binding& binding, Cells cells) {
        Mixture mixture;
        const Arguments arguments = read(binding, cells, mixture, std::index_sequence_for<A...>{});
        const Asked asked = binding.asked(cells, mixture);
        return Returned::write(std::apply(reinterpret_cast<R (*)(A...)>(binding.function), arguments), asked);
    }
    static Derivation derive(const Binding& binding, Cells cells) {
        Mixture mixture;
        const Arguments arguments = read(binding, cells, mixture, std::index_sequence_for<A...>{});
        const Asked asked = binding.asked(cells, mixture);
        const auto result = std::apply(reinterpret_cast<R (*)(A...)>(binding.function), arguments);
        (void)Returned::write(result, asked);  // refuses what the call refuses
        return {steps(arguments, std::index_sequence_for<A...>{}), Returned::text(result, asked)};
    }
    static void check_fallback(const Binding& binding, std::size_t argument) {
        check(binding.fallbacks[argument], argument, std::index_sequence_for<A...>{});
    }

private:
    template <std::size_t I>
    static std::tuple_element_t<I, Arguments> read_one(const Binding& binding, Cells cells, Terms& terms) {
        terms.argument = I;
        const Cell& cell = cells[binding.place(I)];
        const bool left_out = binding.is_left_out(binding.place(I), cell);
        terms.limits = left_out ? nullptr : &binding.limits[I];
        return Slot<std::tuple_element_t<I, Arguments>>::read(left_out ? binding.fallbacks[I] : cell, terms);
    }
    template <std::size_t... I>
    static Arguments read([[maybe_unused]] const Binding& binding, [[maybe_unused]] Cells cells,
                          Mixture& mixture, std::index_sequence<I...>) {
        Terms terms{nullptr, &mixture, 0};
        try {
            return Arguments{read_one<I>(binding, cells, terms)...};  // the braces keep the order
        } catch (const Refused& refused) {
            throw refused.at(binding.names[binding.place(static_cast<std::size_t>(terms.argument))]);
        }
    }
    template <std::size_t... I>
    static std::vector<Step> steps(const Arguments& arguments, std::index_sequence<I...>) {
        return {Step{{}, {}, {}, Slot<std::decay_t<A>>::reading(std::get<I>(arguments))}...};
    }
    template <std::size_t... I>
    static void check(const Cell& cell, std::size_t argument, std::index_sequence<I...>) {
        (void)((I == argument && (void(Slot<std::decay_t<A>>::read(cell, Terms{})), true)) || ...);
    }
};

template <class R, class... A>
[[nodiscard]] Entry function(const char* name, R (*f)(A...)) {
    using Called = Caller<R, A...>;
    Binding binding;
    binding.function = reinterpret_cast<Binding::AnyFunction>(f);
    binding.call = &Called::call;
    binding.derive = &Called::derive;
    binding.check_fallback = &Called::check_fallback;
    binding.unit_argument = Called::Returned::unit_argument;
    return {name,
            std::move(binding),
            {Slot<std::decay_t<A>>::type()...},
            {is_optional<std::decay_t<A>>...},
            Called::Returned::type()};
}

/// The same from a lambda without captures, where the C++ function takes a struct.
template <class F>
requires requires(F f) {
    +f;
}
[[nodiscard]] Entry function(const char* name, F f) {
    return function(name, +f);
}

}  // namespace undercroft::addin
