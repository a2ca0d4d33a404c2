/// \file binding.hpp
/// How a function of the catalogue is called: the C++ function, its types erased, and what reading its
/// arguments needs. Shared by every copy of the catalogue's Function.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "addin/catalogue/function.hpp"
#include "addin/catalogue/result.hpp"

namespace undercroft::addin {

/// What counts as an argument left out.
enum class Blank : std::uint8_t {
    never,            ///< it is asked for
    when_seen,        ///< what is seen to be blank; 0 is a number
    when_no_text,     ///< 0 too, which Calc makes of a blank cell: only a text can be meant
    when_empty_text,  ///< an empty text alone: a range that is blank is to be filled
};

struct Binding {
    using AnyFunction = void (*)();

    AnyFunction function = nullptr;
    Answer (*call)(const Binding&, Cells) = nullptr;
    /// Steps with their readings only, and the result without its symbol.
    Derivation (*derive)(const Binding&, Cells) = nullptr;
    void (*check_fallback)(const Binding&, std::size_t argument) = nullptr;
    UnitArgument unit_argument = UnitArgument::none;
    /// Arguments of the C++ function, the last of it, that stand behind those which shape the result.
    std::size_t added_later = 0;

    std::vector<std::string> names;  ///< of all arguments, as they stand in the sheet
    std::vector<Cell> fallbacks;     ///< of the arguments of the C++ function
    std::vector<Limits> limits;      ///< the same
    std::vector<Blank> blanks;       ///< of all arguments
    bool unit_required = false;

    /// Where an argument of the C++ function stands in the sheet.
    [[nodiscard]] std::size_t place(std::size_t argument) const {
        return argument < unit_place() ? argument : argument + shaping();
    }
    /// Where the arguments stand that shape the result.
    [[nodiscard]] std::size_t unit_place() const { return fallbacks.size() - added_later; }

    /// Whether the argument takes its default.
    [[nodiscard]] bool is_left_out(std::size_t argument, const Cell& cell) const {
        switch (blanks[argument]) {
            case Blank::never:
                break;
            case Blank::when_seen:
                if (!std::holds_alternative<double>(cell)) return holds_nothing(cell);
                break;
            case Blank::when_no_text:
                return holds_no_text(cell);
            case Blank::when_empty_text:
                if (std::holds_alternative<std::u16string_view>(cell)) return holds_nothing(cell);
                break;
        }
        return std::holds_alternative<std::monostate>(cell);
    }

    /// The cells beyond the arguments of the C++ function.
    /// \throws Refused where the unit is left out and must not be, or where a bare number stands beside units
    /// of the other system.
    [[nodiscard]] Asked asked(Cells cells, const Mixture& mixture) const;

private:
    /// How many arguments shape the result.
    [[nodiscard]] std::size_t shaping() const {
        return unit_argument == UnitArgument::none ? 0 : unit_argument == UnitArgument::unit ? 1 : 2;
    }
    void require_one_system(const Cell& units, const Mixture& mixture) const;
    [[noreturn]] void refuse(std::size_t place, const char* sentence) const;
};

}  // namespace undercroft::addin
