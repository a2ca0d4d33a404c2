/// \file helper_columns.hpp
/// Columns to the right of the printed page and of the reasons: what the state of a row is computed from.
#pragma once

#include "sheets/builder/layout.hpp"

namespace undercroft::sheets {

/// Entries of one row that are watched.
inline constexpr int most_entries = 8;

/// In their order from left to right.
enum class Helper {
    // Counted, 1 or 0 a row.
    fails,
    open,
    to_give,
    impossible,
    not_listed,
    unusual,
    assumed,
    // The state of an entry in words.
    state,
    // Of a check.
    demand,
    capacity,
    check_unit,
    ratio,
    decimals,
    check_words,  ///< its sentence where it has no two numbers
    // Of an entry, in the unit that stands beside it.
    least,
    most,
    usual_least,
    usual_most,
    entry_states,                                  ///< of an item, one an entry: "g" to give, "i" impossible
    entry_oddities = entry_states + most_entries,  ///< of an item, one an entry: "u" unusual
    // Constants; these columns are hidden. For a check the first two hold its decimals and its signs.
    kept_number = entry_oddities + most_entries,
    kept_note,  ///< of an item of a list that grows, to how many rows
    least_text,
    most_text,
    usual_least_text,
    usual_most_text,
    usual_words,
    possible_words,
    template_units,  ///< as many as a row has entries; behind them as many values
};

/// Those that are counted on every sheet.
inline constexpr int counted_helpers = 7;
inline constexpr Helper first_kept = Helper::kept_number;
inline constexpr int helper_columns = static_cast<int>(Helper::template_units) + 2 * most_entries;

[[nodiscard]] inline int helper_column(const Sheet& sheet, Helper helper) {
    return reason_column(sheet) + 1 + static_cast<int>(helper);
}
[[nodiscard]] inline int entry_state_column(const Sheet& sheet, int entry) {
    return helper_column(sheet, Helper::entry_states) + entry;
}
[[nodiscard]] inline int entry_oddity_column(const Sheet& sheet, int entry) {
    return helper_column(sheet, Helper::entry_oddities) + entry;
}
[[nodiscard]] inline int template_unit_column(const Sheet& sheet, int entry) {
    return helper_column(sheet, Helper::template_units) + entry;
}
[[nodiscard]] inline int template_value_column(const Sheet& sheet, int entry) {
    return template_unit_column(sheet, entry) + most_entries;
}

}  // namespace undercroft::sheets
