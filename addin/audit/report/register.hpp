/// \file register.hpp
/// Every input of a workbook on one list: what was typed, what it was before, what is usual, and who has
/// confirmed it. A job goes wrong by its inputs more often than by its formulas.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "addin/audit/book/signed_state.hpp"
#include "addin/audit/book/template_match.hpp"
#include "addin/audit/findings/audited_book.hpp"
#include "addin/audit/report/sheet_heads.hpp"

namespace undercroft::audit {

/// Whether somebody stands behind an input.
enum class InputState {
    unknown,    ///< the sheet does not say
    given,      ///< it is not what the template holds
    assumed,    ///< it still is, and nobody has confirmed it
    confirmed,  ///< somebody put a mark on its row
};
[[nodiscard]] std::string_view text_of(InputState state);

/// One input, or the typed column of a table.
struct RegisterLine {
    Spot first;
    std::string target;     ///< `Site.G7`, the first cell
    std::string cells;      ///< `Site.G7`, `Flow.B12:B20`
    std::size_t count = 1;  ///< of cells
    std::string reference;  ///< the number of its row: `Si1`
    std::string label;
    std::string symbol;
    std::string value;  ///< as its cell shows it, days as days; of a column all its values
    std::string typed;  ///< the same in numbers alone
    std::string unit;
    std::optional<std::string> in_template;  ///< value and unit there; nothing where no template has it
    std::string usual;                       ///< `0.3 to 2 m`
    std::string note;
    InputState state = InputState::unknown;
    std::size_t confirmed = 0;  ///< of its cells
    std::string key;            ///< by which a later audit knows it again
    /// Value and unit when it was last signed, where they were others; empty for one that is new.
    std::optional<std::string> when_signed;
    std::string remark;  ///< why it is worth a look; empty for most
    int gravity = 0;     ///< of the remark, the greatest first

    [[nodiscard]] std::string value_and_unit() const { return with_unit(value); }
    /// What is kept of it for a later audit, which may find its cell in another format.
    [[nodiscard]] std::string kept() const { return with_unit(typed); }

private:
    [[nodiscard]] std::string with_unit(const std::string& text) const {
        return unit.empty() || unit == "1" ? text : text + " " + unit;
    }
};

/// \param match is the workbook over its template, where there is one
/// \param at_signing is what the last signature stands for, where there is one
/// \return those with a remark first, the gravest before the others, then in the order of the sheets
[[nodiscard]] std::vector<RegisterLine> register_of(const AuditedBook& audited, const SheetHeads& heads,
                                                    const TemplateMatch* match,
                                                    const SignedState* at_signing);

}  // namespace undercroft::audit
