/// \file fields.hpp
/// The fields of a row's line, parted by '|', asked for by place.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "sheets/builder/dual.hpp"
#include "sheets/builder/lines.hpp"
#include "sheets/builder/numbers.hpp"
#include "sheets/builder/usual.hpp"

namespace undercroft::sheets {

class Fields {
public:
    Fields(const Line& line, const std::string& rest) : line_(line), fields_(fields_of(rest)) {}

    /// Takes out the field that says what is usual of an entry, where there is one.
    [[nodiscard]] std::optional<Usual> take_usual();
    /// Takes out the field `optional`.
    [[nodiscard]] bool take_optional();

    [[nodiscard]] std::size_t count() const { return fields_.size(); }
    /// A field; empty where the line has ended.
    [[nodiscard]] std::string at(std::size_t i) const;
    [[nodiscard]] DualText dual_at(std::size_t i) const { return dual(at(i)); }
    /// \throws TextMistake for a field that is no key.
    [[nodiscard]] std::string key(std::size_t i) const;
    /// \throws TextMistake for a field that is empty in one of the systems.
    [[nodiscard]] DualText formula(std::size_t i) const;
    /// \throws TextMistake for a text that is no number with a unit.
    [[nodiscard]] NumberAndUnit quantity(const std::string& text) const;

    [[nodiscard]] const Line& line() const { return line_; }
    [[noreturn]] void mistake(const std::string& why) const { throw TextMistake(line_.number, why); }

private:
    const Line& line_;
    std::vector<std::string> fields_;
};

}  // namespace undercroft::sheets
