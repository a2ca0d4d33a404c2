/// \file binding.hpp
/// How a function of the catalogue is called: the C++ function, its types erased, and what reading its
/// arguments needs. Shared by every copy of the catalogue's Function.
#pragma once

#include <string>
#include <vector>

#include "addin/catalogue/function.hpp"
#include "addin/catalogue/result.hpp"

namespace undercroft::addin {

struct Binding {
    using AnyFunction = void (*)();

    AnyFunction function = nullptr;
    Answer (*call)(const Binding&, Cells) = nullptr;
    /// Steps with their readings only, and the result without its symbol.
    Derivation (*derive)(const Binding&, Cells) = nullptr;
    void (*check_fallback)(const Binding&, std::size_t argument) = nullptr;
    UnitArgument unit_argument = UnitArgument::none;

    std::vector<std::string> names;  ///< of all arguments
    std::vector<Cell> fallbacks;     ///< of the arguments of the C++ function
    std::vector<Limits> limits;      ///< the same
    bool unit_required = false;

    /// The cells beyond the arguments of the C++ function.
    /// \throws Refused where the unit is left out and must not be, or where a bare number stands beside units
    /// of the other system.
    [[nodiscard]] Asked asked(Cells cells, const Mixture& mixture) const;

private:
    void require_one_system(const Cell& units, const Mixture& mixture) const;
    [[noreturn]] void refuse(int argument, const char* sentence) const;
};

}  // namespace undercroft::addin
