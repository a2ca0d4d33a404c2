/// \file function.hpp
/// A function of the catalogue: what is declared of it, and how it is called, its C++ types erased.
#pragma once

#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "addin/catalogue/cell.hpp"
#include "addin/catalogue/example.hpp"
#include "addin/catalogue/guidance.hpp"
#include "addin/catalogue/limits.hpp"
#include "addin/catalogue/reading.hpp"
#include "addin/catalogue/value_type.hpp"

namespace undercroft::addin {

/// The arguments of one call, in order; as many as the function has parameters.
using Cells = std::span<const Cell>;

struct Parameter {
    std::string name;    ///< as in the sheet's help: "base length"
    std::string symbol;  ///< as in the equation: "L"
    std::string says;    ///< one sentence without a full stop
    ValueType type;
    Limits limits{};       ///< what is possible and what is usual
    std::string fallback;  ///< the default as text; empty where there is none
    bool optional = false;
    bool may_be_share = false;  ///< a quantity that may also be a share of another one, in %
    bool order_counts = false;  ///< the order of a table's rows says what none of its columns does

    [[nodiscard]] std::string kind() const { return kind_text(type); }
    [[nodiscard]] std::string unit() const { return bare_unit_text(type); }
};

/// How near a result is to the exact one, as a share of it, where nothing but digits is rounded.
inline constexpr double all_digits = 1e-12;

struct Column {
    std::string name;
    std::string symbol;
    ValueType type;
    double found_to = all_digits;

    [[nodiscard]] std::string unit() const { return bare_unit_text(type); }
};

/// What a function gives.
struct Outcome {
    ValueType type;
    std::string symbol;
    std::string says;
    std::vector<Column> columns{};  ///< of a table
    double found_to = all_digits;
    bool may_be_negative = false;  ///< a difference: less than nothing has a meaning
    bool rows_carry_on = false;    ///< each row of the table starts from the rounded one before

    [[nodiscard]] std::string kind() const { return kind_text(type); }
    /// The default unit of a quantity.
    [[nodiscard]] std::string unit() const {
        return type.shape == Shape::table ? std::string() : bare_unit_text(type);
    }
    [[nodiscard]] bool is_table() const { return type.shape == Shape::table || type.shape == Shape::rows; }
    /// A quantity in a unit that can be asked for.
    [[nodiscard]] bool has_unit() const {
        return type.shape == Shape::any_quantity || (type.shape == Shape::quantity && !type.is_plain());
    }
};

/// What a function does with the quantities that it takes; the audit judges by it.
enum class Role {
    computes,    ///< each argument is another thing
    compares,    ///< its quantities must be alike, and it says whether
    adds,        ///< its quantities must be alike, and so is its result
    multiplies,  ///< a number without a unit is a factor
    converts,    ///< one quantity in another unit
    writes,      ///< a number and its unit as the text of a quantity
    gathers,     ///< one figure of all those in a range
    picks,       ///< a figure found by another one
    explains,    ///< it tells of the functions or of a cell
    tells_version,
};

/// One argument as it was given and understood.
struct Step {
    std::string symbol;
    std::string argument;
    std::string given;
    Reading reading;
};

/// How a result came about.
struct Derivation {
    std::vector<Step> steps;
    std::string result;  ///< "Q = 22.9 L/s"
};

struct Binding;

/// A function of the catalogue, its types erased.
struct Function {
    std::string name;        ///< "UC.PIT.VOLUME"
    std::string identifier;  ///< "pitVolume": the method's name, and for ever the name in files
    std::string says;
    std::string equation;
    std::string source;
    std::string caution;
    Role role = Role::computes;
    std::vector<Parameter> parameters;
    Outcome outcome;
    std::vector<Example> examples;
    Guidance guidance{};
    std::shared_ptr<const Binding> binding{};  ///< none where the component answers

    /// Takes a cell of the sheet itself, and is answered by the component.
    [[nodiscard]] bool reads_cell() const { return binding == nullptr; }
    /// Computes. \throws Refused
    [[nodiscard]] Answer call(Cells cells) const;
    /// Computes once more and says how. \throws Refused
    [[nodiscard]] Derivation derive(Cells cells) const;
};

/// "available length" to "availableLength".
[[nodiscard]] std::string camel_case(std::string_view words);
/// "UC.PIT.VOLUME" to "pitVolume".
[[nodiscard]] std::string identifier_of(std::string_view function_name);

/// A mistake in the catalogue itself; stops the generator, so that nothing is packaged.
[[noreturn]] void broken_entry(const std::string& name, const std::string& why);

}  // namespace undercroft::addin
