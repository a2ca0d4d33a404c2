// What each entry says of its numbers, held against what calc refuses and against what the border does:
// derived from the entries, so that a bound that is moved or dropped on one side shows on the other.
#include "tests/addin/numbers.hpp"

namespace undercroft::tests {

using namespace addin;

namespace {

constexpr double hair = 1e-6;

/// A function without its limits: what calc alone says.
Outcome without_limits(const Function& function, const std::vector<Cell>& cells) {
    Binding unlimited = *function.binding;
    for (Limits& limits : unlimited.limits) limits = Limits();
    return outcome_of([&] { return unlimited.call(unlimited, cells); });
}

bool is_possible(const Limits& limits, double coherent) {
    return (coherent >= limits.least && coherent <= limits.most) || (limits.or_none && coherent == 0);
}

/// Whether the number was refused for its range, and by the argument's name.
bool is_refused_for_range(const NumberPlace& place, const Outcome& outcome) {
    return outcome.refused && outcome.sentence().starts_with(place.parameter().name + ": ") &&
           (outcome.refused->refusal() == Refusal::unusual ||
            outcome.refused->refusal() == Refusal::impossible ||
            outcome.refused->refusal() == Refusal::blank);
}
bool is_read(const Outcome& outcome) {
    return !outcome.refused || (outcome.refused->refusal() != Refusal::unusual &&
                                outcome.refused->refusal() != Refusal::impossible);
}

}  // namespace

TEST_CASE("calc itself refuses what an entry calls impossible, at -1 and at 0", "[domains]") {
    int held = 0;
    for_each_number([&](const NumberPlace& place) {
        const Limits& limits = place.limits();
        if (limits.usual.empty()) return;
        for (const double number : {-1.0, 0.0}) {
            if (is_possible(limits, place.coherent(number))) continue;
            const Outcome outcome = without_limits(place.function(), place.with_bare(number).cells());
            INFO(place.name() << " at " << number << ": " << outcome.sentence());
            CHECK(outcome.refused);
            ++held;
        }
    });
    CHECK(held > 250);
}

TEST_CASE("a bare number just outside what is usual is refused by its name, just inside it is read",
          "[domains]") {
    int held = 0;
    for_each_number([&](const NumberPlace& place) {
        const Limits& limits = place.limits();
        if (limits.usual.empty()) return;
        for (const auto& [bound, outwards] :
             {std::pair(limits.bare_least, -1.0), std::pair(limits.bare_most, 1.0)}) {
            const double outside = bound + outwards * hair * std::abs(bound);
            const double inside = bound - outwards * hair * std::abs(bound);
            const Outcome refused = outcome_of(place.function(), place.with_bare(outside).cells());
            const Outcome read = outcome_of(place.function(), place.with_bare(inside).cells());
            INFO(place.name() << " at " << bound << ": " << refused.sentence() << "; " << read.sentence());
            CHECK(is_refused_for_range(place, refused));
            CHECK(is_read(read));
            ++held;
        }
    });
    CHECK(held > 300);
}

TEST_CASE("a quantity just beyond what is possible is refused by its name, just within it is read",
          "[domains]") {
    int held = 0;
    for_each_number([&](const NumberPlace& place) {
        const Limits& limits = place.limits();
        if (limits.usual.empty()) return;
        for (const auto& [bound, outwards] : {std::pair(limits.least, -1.0), std::pair(limits.most, 1.0)}) {
            const double step = hair * (bound != 0 ? std::abs(bound) : limits.most);
            const Outcome refused =
                outcome_of(place.function(), place.with_unit(place.bare(bound + outwards * step)).cells());
            const Outcome read =
                outcome_of(place.function(), place.with_unit(place.bare(bound - outwards * step)).cells());
            INFO(place.name() << " at " << bound << ": " << refused.sentence() << "; " << read.sentence());
            CHECK(is_refused_for_range(place, refused));
            CHECK(is_read(read));
            ++held;
        }
    });
    CHECK(held > 300);
}

TEST_CASE("every number that a function takes says what is possible and usual of it", "[domains]") {
    for (const Function& function : all_functions())
        for (const Parameter& parameter : function.parameters) {
            CAPTURE(function.name, parameter.name);
            if (is_number(parameter.type) && parameter.type.shape != Shape::height)
                CHECK(parameter.limits.is_stated);
            const std::vector<ValueType>& columns = columns_of(parameter.type);
            for (std::size_t c = 0; c < columns.size(); ++c) {
                CAPTURE(c + 1);
                if (!is_number(columns[c])) continue;
                CHECK(c < parameter.limits.columns.size());
                if (c < parameter.limits.columns.size()) CHECK(parameter.limits.columns[c].is_stated);
            }
        }
}

TEST_CASE("an entry whose usual numbers are not all possible stops the catalogue") {
    const auto made = [](const Range& range) {
        return Function(
            function("UC.X", [](Length a) { return a; }).takes("a", "a", "A length").within(range));
    };
    CHECK_NOTHROW(made({"1 m", "2 m", "0 m", "3 m"}));
    CHECK_THROWS_AS(made({"1 m", "2 m", "1.5 m", "3 m"}), std::logic_error);
    CHECK_THROWS_AS(made({"1 m", "4 m", "0 m", "3 m"}), std::logic_error);
    CHECK_THROWS_AS(made({"2 m", "1 m", "0 m", "3 m"}), std::logic_error);
    CHECK_THROWS_AS(made({"1 kg", "2 m", "0 m", "3 m"}), std::logic_error);
    CHECK_THROWS_AS(Function(function("UC.X", [](std::string a) { return a; })
                                 .takes("a", "a", "A text")
                                 .within(Range{"1", "2", "0", "3"})),
                    std::logic_error);
}

}  // namespace undercroft::tests
