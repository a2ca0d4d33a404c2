#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

namespace {

void find_in_workbook(const AuditedBook& audited, Findings& findings) {
    find_errors(audited, findings);
    find_circles(audited, findings);
    find_failed_checks(audited, findings);
    find_typed_over(audited, findings);
    find_neighbours(audited, findings);
    find_bare_numbers(audited, findings);
    find_unit_slips(audited, findings);
    find_unit_texts(audited, findings);
    find_number_formats(audited, findings);
    find_cut_tables(audited, findings);
    find_blank_references(audited, findings);
    find_short_sums(audited, findings);
    find_unused(audited, findings);
    find_links(audited, findings);
    find_hidden(audited, findings);
    find_weak_checks(audited, findings);
    find_counted_twice(audited, findings);
    find_wrong_lookups(audited, findings);
    find_swallowed(audited, findings);
    find_sliding(audited, findings);
    find_swapped_arguments(audited, findings);
    find_wrong_rows(audited, findings);
    find_missing_units(audited, findings);
    find_doubts(audited, findings);
    find_unlocked(audited, findings);
    find_misleading_names(audited, findings);
    find_shown_otherwise(audited, findings);
    find_outliers(audited, findings);
    find_twins(audited, findings);
    find_not_followed(audited, findings);
    find_file_risks(audited, findings);
}

void find_in_file(const AuditedBook& audited, const Subject& subject, Findings& findings) {
    const FileRisks no_risks;
    find_what_comes_along(audited, subject.risks != nullptr ? *subject.risks : no_risks, findings);
    const StoredValues none;
    const StoredValues& stored = subject.stored != nullptr ? *subject.stored : none;
    find_stale_results(audited, stored, findings);
    if (!subject.installed_version.empty())
        find_other_version(audited, stored, subject.installed_version, findings);
}

std::vector<Spot> cells_of_added_rows(const AuditedBook& audited, const TemplateMatch& match) {
    std::vector<Spot> cells;
    for (std::size_t s = 0; s < match.from().sheets.size(); ++s) {
        const std::int32_t place = match.sheet(static_cast<std::int32_t>(s));
        if (place < 0) continue;
        for (const std::int32_t row : match.rows(static_cast<std::int32_t>(s)).added)
            for (std::int32_t column = 0; column < audited.book.columns(place); ++column)
                cells.push_back({place, row, column});
    }
    return cells;
}

Drift find_against_template(const AuditedBook& audited, const Book& from, Findings& findings) {
    const TemplateMatch match(audited.book, from);
    Drift drift;
    drift.made_from = identity_of(audited.book);
    drift.compared = identity_of(from);
    find_other_template(match, findings);
    find_changed_sheets(match, findings);
    find_changed_rows(audited, match, findings, drift);
    findings.drop(FindingKind::typed_over,
                  cells_of_added_rows(audited, match));  // rows of one's own have numbers of one's own
    find_changed_cells(audited, match, findings, drift);
    find_changed_names(audited, match, findings);
    findings.keep_last(FindingKind::typed_over);  // what the template says of it tells more
    return drift;
}

}  // namespace

std::optional<Drift> find_all(const AuditedBook& audited, const Subject& subject, const Fingerprint& now,
                              Findings& findings) {
    std::optional<Drift> drift;
    find_in_workbook(audited, findings);
    find_in_file(audited, subject, findings);
    if (subject.against != nullptr) drift = find_against_template(audited, *subject.against, findings);
    if (subject.digest) find_broken_signature(subject.signatures, now, findings);
    find_lost_identity(audited, subject.against != nullptr, findings);
    findings.fold_pastes(FindingKind::typed_over);
    findings.fold_consequences();
    findings.sort();
    return drift;
}

}  // namespace undercroft::audit
