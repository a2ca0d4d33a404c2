/// \file unit_text.hpp
/// Texts of a workbook read as units.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>

#include "units/unit.hpp"

namespace undercroft::audit {

/// A text read as a unit, or why it is none.
struct UnitText {
    std::string text;
    std::optional<Unit> unit;
    std::string refusal;
};

/// Every text that was asked about, read once.
class UnitTexts {
public:
    UnitTexts() = default;
    UnitTexts(const UnitTexts&) = delete;
    UnitTexts& operator=(const UnitTexts&) = delete;

    /// What is given back stays where it is.
    const UnitText& read(const std::string& text);

private:
    std::unordered_map<std::string, UnitText> texts_;
};

/// Whether two units measure the same thing in the same size.
[[nodiscard]] bool same_unit(const Unit& a, const Unit& b);

}  // namespace undercroft::audit
