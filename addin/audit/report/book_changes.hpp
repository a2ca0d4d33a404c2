/// \file book_changes.hpp
/// What changed of a workbook beside its cells: sheets, rows, names and settings.
#pragma once

#include <vector>

#include "addin/audit/book/template_match.hpp"
#include "addin/audit/findings/audited_book.hpp"
#include "addin/audit/report/revision.hpp"

namespace undercroft::audit {

/// \param match is the workbook over the earlier one
void add_book_changes(const AuditedBook& now, const TemplateMatch& match, std::vector<RevisionLine>& lines);

}  // namespace undercroft::audit
