#include "addin/audit/report/report.hpp"

#include <algorithm>
#include <map>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/report/comparison.hpp"
#include "addin/audit/report/formula_line.hpp"
#include "addin/audit/report/marks.hpp"

namespace undercroft::audit {

namespace {

constexpr std::size_t most_ranges_of_a_line = 60;

ReportCounts counts_of(const AuditedBook& audited, const std::vector<ReportFinding>& findings) {
    ReportCounts counts;
    counts.formulas = audited.formulas.all().size();
    counts.distinct = audited.formulas.groups().size();
    for (const FormulaGroup& group : audited.formulas.groups())
        if (calls_own(group)) counts.with_own += group.members.size();
    for (const ReportFinding& finding : findings)
        ++(finding.accepted                        ? counts.accepted
           : finding.severity == Severity::error   ? counts.errors
           : finding.severity == Severity::warning ? counts.warnings
                                                   : counts.notes);
    for (const UnitReading& reading : audited.readings)
        ++counts.units[static_cast<std::size_t>(reading.answer.verdict)];
    return counts;
}

std::string number_of(std::size_t count, const std::string& thing) {
    return std::to_string(count) + " " + thing + (count == 1 ? "" : "s");
}

std::string verdict_of(const ReportCounts& counts) {
    if (counts.formulas == 0 && counts.errors + counts.warnings + counts.notes == 0)
        return "The workbook holds no formula; there is nothing to audit.";
    if (counts.errors > 0)
        return "Not fit to be signed: " + number_of(counts.errors, "error") + ", " +
               number_of(counts.warnings, "warning") + ", " + number_of(counts.notes, "note") + ".";
    if (counts.warnings > 0)
        return "Look at each before signing: " + number_of(counts.warnings, "warning") + ", " +
               number_of(counts.notes, "note") + ", no error.";
    if (counts.notes > 0)
        return "No error and no warning; " + number_of(counts.notes, "note") + " to be read.";
    const std::string accepted =
        counts.accepted > 0 ? " beside " + number_of(counts.accepted, "accepted finding") : std::string();
    return "Nothing was found" + accepted + " in " + number_of(counts.formulas, "formula") +
           "; the map lists each distinct one to be read.";
}

std::vector<ReportFinding> finding_lines(const AuditedBook& audited, const ContentHash& contents,
                                         const Findings& findings, const std::vector<Acceptance>& accepted) {
    std::vector<ReportFinding> lines;
    for (const Finding& finding : findings.all()) {
        ReportFinding line;
        line.severity = finding.severity;
        line.kind = finding.kind;
        line.title = title_of(finding.kind);
        line.says = finding.says;
        line.all = finding.cells;
        if (!finding.cells.empty()) {
            line.first = finding.cells.front();
            line.target = audited.book.text(finding.cells.front());
            line.cells = cells_text(audited.book, finding.cells);
            line.label = audited.labels.of(finding.cells.front());
        }
        line.mark = mark_of(audited, contents, finding);
        for (const Acceptance& acceptance : accepted)
            if (acceptance.is_whole() && acceptance.mark == line.mark) line.accepted = acceptance;
        lines.push_back(std::move(line));
    }
    std::stable_partition(lines.begin(), lines.end(),
                          [](const ReportFinding& line) { return !line.accepted.has_value(); });
    return lines;
}

MapLine map_line(const AuditedBook& audited, const ContentHash& contents, const SheetHeads& heads,
                 const SignedState* at_signing, const std::vector<std::uint32_t>& members) {
    const FormulaCell& first = audited.formulas.all()[members.front()];
    const FormulaLine shown = line_of(audited, first);
    const UnitAnswer& answer = audited.reading_of(first).answer;
    MapLine line;
    line.first = first.at;
    line.target = audited.book.text(first.at);
    line.count = members.size();
    std::vector<Spot> spots;
    spots.reserve(members.size());
    for (const std::uint32_t member : members) spots.push_back(audited.formulas.all()[member].at);
    const bool one_table = members.size() == 1 && !first.area.is_single();
    line.cells = one_table ? audited.book.text(first.area)
                           : cells_text(audited.book, std::move(spots), most_ranges_of_a_line);
    line.label = shown.label;
    line.formula = shown.formula;
    line.value = shown_value(audited.book, first.at.sheet, *first.cell);
    line.unit = shown.unit;
    line.verdict = answer.verdict;
    line.reason = answer.reason;
    line.reason_cell = answer.cell;
    line.equation = shown.equation;
    line.source = shown.source;
    line.inputs = shown.inputs;
    line.is_link = audited.formulas.group_of(first).is_link();
    const bool is_ours = !identity_of(audited.book).name.empty();
    const std::int32_t notes = heads.column(first.at.sheet, {"note or source"});
    line.is_helper =
        heads.is_helper(first.at) || (is_ours && (heads.row(first.at.sheet) < 0 || first.at.column == notes));
    const FormulaGroup& group = audited.formulas.group_of(first);
    line.is_check = group.unreadable().empty() && !group.is_link() && comparison_in(group.tree()).has_value();
    line.mark = mark_of(audited, contents, members, line.label);
    line.ticked = at_signing != nullptr && at_signing->lines.contains(line.mark);
    return line;
}

std::vector<SheetMap> formula_map(const AuditedBook& audited, const ContentHash& contents,
                                  const SheetHeads& heads, const SignedState* at_signing) {
    std::map<std::int32_t, SheetMap> sheets;
    for (const FormulaGroup& group : audited.formulas.groups()) {
        std::map<UnitVerdict, std::vector<std::uint32_t>> by_answer;
        for (const std::uint32_t member : group.members)
            by_answer[audited.readings[member].answer.verdict].push_back(member);
        for (const auto& [verdict, members] : by_answer) {
            MapLine line = map_line(audited, contents, heads, at_signing, members);
            sheets[line.first.sheet].lines.push_back(std::move(line));
        }
    }
    std::vector<SheetMap> map;
    for (auto& [place, sheet] : sheets) {
        sheet.sheet = place;
        sheet.name = audited.sheet(place).name;
        std::sort(sheet.lines.begin(), sheet.lines.end(),
                  [](const MapLine& a, const MapLine& b) { return a.first < b.first; });
        map.push_back(std::move(sheet));
    }
    return map;
}

std::vector<std::string> drift_lines(const Book& book, const Drift& drift) {
    std::vector<std::string> lines = {"made from: " + drift.made_from.text(),
                                      "compared with: " + drift.compared.text()};
    const auto add = [&](std::size_t count, const std::string& what) {
        lines.push_back(std::to_string(count) + " " + what);
    };
    add(drift.formulas_same, "formulas as in the template");
    add(drift.formulas_changed, "formulas changed");
    add(drift.inputs_filled, "inputs filled in or changed");
    add(drift.inputs_same, "inputs as in the template");
    add(drift.rows_added, "rows added");
    add(drift.rows_missing, "rows missing");
    add(drift.units_changed.size(), "units changed to another of the same kind");
    for (const Drift::UnitChange& change : drift.units_changed)
        lines.push_back("unit in " + book.text(change.cell) + ": " + change.says);
    return lines;
}

/// `Harrow Lane car park, D-001, revision A` from the cells that a title block of ours names; empty without
/// one.
std::string job_of(const AuditedBook& audited) {
    std::string job;
    for (const auto& [name, before] : {std::pair("job_name", ""), std::pair("job_number", "No. "),
                                       std::pair("job_revision", "revision ")}) {
        const NameMeaning* meaning = audited.names.find(name, 0);
        if (meaning == nullptr || !meaning->readable || meaning->tree.kind != addin::NodeKind::reference)
            continue;
        const auto area =
            area_of(audited.book, meaning->tree.reference, meaning->defined->base, meaning->defined->base);
        const BookCell* cell = area ? audited.book.find(area->first()) : nullptr;
        if (cell == nullptr || cell->shows_nothing()) continue;
        job += (job.empty() ? "" : ", ") + (before + shown_value(audited.book, area->sheet, *cell));
    }
    return job;
}

/// The sheet that an audit writes is no part of what it looks at; its place stays, so that no cell moves.
Book without_audit_sheet(const Book& book, std::int32_t place) {
    Book rest = book;
    BookSheet& sheet = rest.sheets[static_cast<std::size_t>(place)];
    sheet.was_audit = true;
    sheet.cells.clear();
    sheet.arrays.clear();
    std::erase_if(rest.names, [&](const DefinedName& name) { return name.sheet == place; });
    rest.index();
    return rest;
}

Report report_on(const Book& book, const Subject& subject) {
    UnitTexts texts;
    const AuditedBook audited(book, texts);
    Report report;
    report.fingerprint = fingerprint(book, subject.digest);
    report.not_checked = subject.not_checked;
    Findings findings;
    const std::optional<Drift> drift = find_all(audited, subject, report.fingerprint, findings);
    if (drift) report.drift = drift_lines(book, *drift);
    if (subject.digest)
        for (const Signature& signature : subject.signatures)
            report.signatures.push_back(
                {signature.checker, signature.date, state_of(signature, report.fingerprint)});
    const ContentHash contents(book);
    report.findings = finding_lines(audited, contents, findings, subject.accepted);
    report.counts = counts_of(audited, report.findings);
    report.verdict = verdict_of(report.counts);
    const SheetHeads heads(book);
    std::optional<TemplateMatch> match;
    if (subject.against != nullptr) match.emplace(book, *subject.against);
    report.job = job_of(audited);
    report.inputs = register_of(audited, heads, match ? &*match : nullptr, subject.at_signing);
    report.checks = checks_of(audited, heads);
    report.map = formula_map(audited, contents, heads, subject.at_signing);
    if (subject.earlier != nullptr) report.revision = revision_of(audited, heads, *subject.earlier);
    report.earlier_name = subject.earlier_name;
    return report;
}

}  // namespace

Report audit_workbook(const Subject& subject) {
    const std::vector<BookSheet>& sheets = subject.book.sheets;
    const auto ours = std::find_if(sheets.begin(), sheets.end(), is_audit_sheet);
    if (ours == sheets.end()) return report_on(subject.book, subject);
    return report_on(without_audit_sheet(subject.book, static_cast<std::int32_t>(ours - sheets.begin())),
                     subject);
}

SignedState signed_state(const Report& report) {
    SignedState state;
    for (const RegisterLine& input : report.inputs) state.inputs[input.key] = input.kept();
    for (const SheetMap& sheet : report.map)
        for (const MapLine& line : sheet.lines) state.lines.insert(line.mark);
    return state;
}

}  // namespace undercroft::audit
