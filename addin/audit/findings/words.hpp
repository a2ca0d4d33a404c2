/// \file words.hpp
/// Labels word by word: what a cell is called, compared with what another one is called.
#pragma once

#include <initializer_list>
#include <set>
#include <string>
#include <string_view>

#include "addin/audit/findings/audited_book.hpp"

namespace undercroft::audit {

using Words = std::set<std::string>;

/// The words of a label or name in lower case, without a plural's s; what stands in brackets and single
/// letters are left out.
[[nodiscard]] Words words_of(std::string_view text);
[[nodiscard]] bool any_of(const Words& words, std::initializer_list<std::string_view> sought);

/// What a cell is called: its row's label, or the head of its column where a row has several numbers, and the
/// defined name that the formula uses for it.
[[nodiscard]] Words words_of_cell(const AuditedBook& audited, const Spot& cell, const addin::Node& node);

}  // namespace undercroft::audit
