/// \file findings.hpp
/// The checks of the audit, one file each.
#pragma once

#include "addin/audit/findings/finding.hpp"
#include "addin/audit/findings/workings.hpp"

namespace undercroft::audit {

/// Cells that show an error and rest on none that does: each with its reason and with how many others fail
/// because of it.
void find_errors(const Workings& workings, Findings& findings);
/// Formulas that rest on their own result.
void find_circles(const Workings& workings, Findings& findings);
/// Verdicts that are FALSE.
void find_failed_checks(const Workings& workings, Findings& findings);
/// Numbers where a formula belongs: in a locked cell, in the style of a result, or in a run of formulas.
void find_typed_over(const Workings& workings, Findings& findings);
/// Formulas that differ from those above and below, or left and right.
void find_neighbours(const Workings& workings, Findings& findings);
/// Numbers hidden in formulas.
void find_bare_numbers(const Workings& workings, Findings& findings);
/// Units that clash, are passed over, or are left out.
void find_unit_slips(const Workings& workings, Findings& findings);
/// Texts in the place of a unit that are none.
void find_unit_texts(const Workings& workings, Findings& findings);
/// References to blank cells and to texts.
void find_blank_references(const Workings& workings, Findings& findings);
/// Sums whose range ends one row or column too early.
void find_short_sums(const Workings& workings, Findings& findings);
/// Typed numbers and choices that nothing uses.
void find_unused(const Workings& workings, Findings& findings);
/// Other files.
void find_links(const Workings& workings, Findings& findings);
/// Hidden sheets, rows and columns that hold formulas.
void find_hidden(const Workings& workings, Findings& findings);
/// What the kind of file loses, and settings of the document that change results.
void find_file_risks(const Workings& workings, Findings& findings);

/// All of them.
void find_all(const Workings& workings, Findings& findings);

}  // namespace undercroft::audit
