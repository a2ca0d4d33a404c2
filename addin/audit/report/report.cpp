#include "addin/audit/report/report.hpp"

#include <algorithm>
#include <map>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/report/formula_line.hpp"

namespace undercroft::audit {

namespace {

constexpr std::size_t most_ranges_of_a_line = 60;

ReportCounts counts_of(const AuditedBook& audited, const Findings& findings) {
    ReportCounts counts;
    counts.formulas = audited.formulas.all().size();
    counts.distinct = audited.formulas.groups().size();
    for (const FormulaGroup& group : audited.formulas.groups())
        if (calls_own(group)) counts.with_own += group.members.size();
    counts.errors = findings.count(Severity::error);
    counts.warnings = findings.count(Severity::warning);
    counts.notes = findings.count(Severity::note);
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
    return "Nothing was found in " + number_of(counts.formulas, "formula") +
           "; the map lists each distinct one to be read.";
}

std::vector<ReportFinding> finding_lines(const AuditedBook& audited, const Findings& findings) {
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
        lines.push_back(std::move(line));
    }
    return lines;
}

MapLine map_line(const AuditedBook& audited, const std::vector<std::uint32_t>& members) {
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
    line.value = shown_value(*first.cell);
    line.unit = shown.unit;
    line.verdict = answer.verdict;
    line.reason = answer.reason;
    line.reason_cell = answer.cell;
    line.equation = shown.equation;
    line.source = shown.source;
    line.inputs = shown.inputs;
    return line;
}

std::vector<SheetMap> formula_map(const AuditedBook& audited) {
    std::map<std::int32_t, SheetMap> sheets;
    for (const FormulaGroup& group : audited.formulas.groups()) {
        std::map<UnitVerdict, std::vector<std::uint32_t>> by_answer;
        for (const std::uint32_t member : group.members)
            by_answer[audited.readings[member].answer.verdict].push_back(member);
        for (const auto& [verdict, members] : by_answer) {
            MapLine line = map_line(audited, members);
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
    report.counts = counts_of(audited, findings);
    report.verdict = verdict_of(report.counts);
    report.findings = finding_lines(audited, findings);
    report.map = formula_map(audited);
    return report;
}

}  // namespace

Report audit_workbook(const Subject& subject) {
    const std::int32_t place = subject.book.sheet_named(audit_sheet_name);
    if (place < 0 || !is_audit_sheet(subject.book.sheets[static_cast<std::size_t>(place)])) return report_on(subject.book, subject);
    return report_on(without_audit_sheet(subject.book, place), subject);
}

}  // namespace undercroft::audit
