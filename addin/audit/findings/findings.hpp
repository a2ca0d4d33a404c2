/// \file findings.hpp
/// The checks of the audit, one file each.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "addin/audit/book/template_match.hpp"
#include "addin/audit/findings/audited_book.hpp"
#include "addin/audit/findings/drift.hpp"
#include "addin/audit/findings/finding.hpp"
#include "addin/audit/findings/subject.hpp"

namespace undercroft::audit {

/// Cells that show an error and rest on none that does: each with its reason and with how many others fail
/// because of it.
void find_errors(const AuditedBook& audited, Findings& findings);
/// Formulas that rest on their own result.
void find_circles(const AuditedBook& audited, Findings& findings);
/// Verdicts that are FALSE.
void find_failed_checks(const AuditedBook& audited, Findings& findings);
/// Numbers where a formula belongs: in a locked cell in the style of results, or in a run of formulas.
void find_typed_over(const AuditedBook& audited, Findings& findings);
/// Formulas that differ from those above and below, or left and right.
void find_neighbours(const AuditedBook& audited, Findings& findings);
/// Numbers hidden in formulas.
void find_bare_numbers(const AuditedBook& audited, Findings& findings);
/// Units that clash, are passed over, or are left out.
void find_unit_slips(const AuditedBook& audited, Findings& findings);
/// Texts in the place of a unit that are none.
void find_unit_texts(const AuditedBook& audited, Findings& findings);
/// Numbers shown otherwise than a function reads them: percent beside %, times, dates, units written by a
/// number format or a label.
void find_number_formats(const AuditedBook& audited, Findings& findings);
/// Tables of ours in a range that is too short for them.
void find_cut_tables(const AuditedBook& audited, Findings& findings);
/// References to blank cells and to texts.
void find_blank_references(const AuditedBook& audited, Findings& findings);
/// Sums whose range ends one row or column too early, or begins too late.
void find_short_sums(const AuditedBook& audited, Findings& findings);
/// Typed numbers and choices that nothing uses.
void find_unused(const AuditedBook& audited, Findings& findings);
/// Other files, and values that change by themselves.
void find_links(const AuditedBook& audited, Findings& findings);
/// Hidden sheets, rows and columns that hold formulas.
void find_hidden(const AuditedBook& audited, Findings& findings);
/// Checks that cannot fail, are turned round, or hold against a number in the formula alone.
void find_weak_checks(const AuditedBook& audited, Findings& findings);
/// Amounts added up with their own subtotals, or twice.
void find_counted_twice(const AuditedBook& audited, Findings& findings);
/// Lookups in unsorted or cut tables, and ranges that do not lie in the same rows.
void find_wrong_lookups(const AuditedBook& audited, Findings& findings);
/// Errors made numbers, digits rounded away, cells named by texts.
void find_swallowed(const AuditedBook& audited, Findings& findings);
/// References without a $ that they need, or with one too many, in formulas that were copied.
void find_sliding(const AuditedBook& audited, Findings& findings);
/// Arguments of ours in each other's places.
void find_swapped_arguments(const AuditedBook& audited, Findings& findings);
/// Links under another row's label.
void find_wrong_rows(const AuditedBook& audited, Findings& findings);
/// Numbers whose unit is missing, by what is computed of them.
void find_missing_units(const AuditedBook& audited, Findings& findings);
/// Comments that doubt.
void find_doubts(const AuditedBook& audited, Findings& findings);
/// Formulas on a protected sheet that are not protected.
void find_unlocked(const AuditedBook& audited, Findings& findings);
/// Names that shadow others, refer to nothing, or stand for another row than they say.
void find_misleading_names(const AuditedBook& audited, Findings& findings);
/// Number formats that divide, round away or write another unit.
void find_shown_otherwise(const AuditedBook& audited, Findings& findings);
/// Typed numbers off by a power of ten.
void find_outliers(const AuditedBook& audited, Findings& findings);
/// One input typed on two sheets.
void find_twins(const AuditedBook& audited, Findings& findings);
/// A workbook of ours that no longer names its template.
void find_lost_identity(const AuditedBook& audited, bool is_compared, Findings& findings);
/// Formulas that could not be read, and what was not followed to its end.
void find_not_followed(const AuditedBook& audited, Findings& findings);
/// What the kind of file loses, and settings of the document that change results.
void find_file_risks(const AuditedBook& audited, Findings& findings);
/// Links, scripts and controls that the file brings along.
void find_what_comes_along(const AuditedBook& audited, const FileRisks& risks, Findings& findings);

/// Results that are not those that the file held.
void find_stale_results(const AuditedBook& audited, const StoredValues& stored, Findings& findings);
/// Functions computed by another version than this one: by the result of UC.VERSION() in the file or, where
/// no cell holds it, by the document's properties.
void find_other_version(const AuditedBook& audited, const StoredValues& stored, const std::string& installed,
                        Findings& findings);

/// Another template than the one that the workbook was made from, or another version of it.
void find_other_template(const TemplateMatch& match, Findings& findings);
/// Sheets that the template has or has not, and those that are not protected any more.
void find_changed_sheets(const TemplateMatch& match, Findings& findings);
/// Rows that the template has or has not.
void find_changed_rows(const AuditedBook& audited, const TemplateMatch& match, Findings& findings,
                       Drift& drift);
/// Formulas, fixed numbers, labels and units that differ from the template's.
void find_changed_cells(const AuditedBook& audited, const TemplateMatch& match, Findings& findings,
                        Drift& drift);
/// Names that stand for other cells than the template's.
void find_changed_names(const AuditedBook& audited, const TemplateMatch& match, Findings& findings);

/// The last signature, when the workbook is no longer what was signed.
void find_broken_signature(const std::vector<Signature>& signatures, const Fingerprint& now,
                           Findings& findings);

/// All of them, gravest first.
/// \param audited is the subject's book
/// \param now is its fingerprint, where the subject has a digest
/// \return what became of the template; nothing where there is none to compare with
[[nodiscard]] std::optional<Drift> find_all(const AuditedBook& audited, const Subject& subject,
                                            const Fingerprint& now, Findings& findings);

}  // namespace undercroft::audit
