/// \file marks.hpp
/// By what a later audit knows a finding or a line of the map again: all that it rests on is in it, its place
/// is not.
#pragma once

#include <span>
#include <string>

#include "addin/audit/book/content_hash.hpp"
#include "addin/audit/findings/audited_book.hpp"
#include "addin/audit/findings/finding.hpp"

namespace undercroft::audit {

/// Of a line of the map: sheet, label, formula, values of its cells, and what each rests on.
[[nodiscard]] std::string mark_of(const AuditedBook& audited, const ContentHash& contents,
                                  std::span<const std::uint32_t> formulas, const std::string& label);

/// Of a finding: its kind and words, its cells, and what they rest on. Empty for one that cannot be accepted.
[[nodiscard]] std::string mark_of(const AuditedBook& audited, const ContentHash& contents,
                                  const Finding& finding);

}  // namespace undercroft::audit
