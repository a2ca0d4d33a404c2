#include "addin/audit/report/report.hpp"

#include <algorithm>
#include <map>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/formula_line.hpp"
#include "addin/audit/findings/results.hpp"
#include "addin/audit/findings/workings.hpp"
#include "addin/catalogue/catalogue.hpp"

namespace undercroft::audit {

namespace {

constexpr std::size_t most_ranges_of_a_line = 60;

bool calls_own(const FormulaGroup& group) {
    bool own = false;
    if (group.unreadable.empty())
        walk(group.tree, [&](const addin::Node& node) {
            own = own || (node.kind == addin::Node::Kind::call && addin::find_function(node.text) != nullptr);
        });
    return own;
}

ReportCounts counted(const Workings& workings, const Findings& findings) {
    ReportCounts counts;
    counts.formulas = workings.formulas.all().size();
    counts.distinct = workings.formulas.groups().size();
    for (const FormulaGroup& group : workings.formulas.groups())
        if (calls_own(group)) counts.with_own += group.members.size();
    counts.errors = findings.count(Severity::error);
    counts.warnings = findings.count(Severity::warning);
    counts.notes = findings.count(Severity::note);
    for (const UnitReading& reading : workings.readings)
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

std::vector<ReportFinding> told(const Workings& workings, const Findings& findings) {
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
            line.target = workings.book.text(finding.cells.front());
            line.cells = listed(workings.book, finding.cells);
            line.label = workings.labels.of(finding.cells.front());
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

MapLine map_line(const Workings& workings, const std::vector<std::uint32_t>& members) {
    const FormulaCell& first = workings.formulas.all()[members.front()];
    const FormulaLine shown = line_of(workings, first);
    const UnitAnswer& answer = workings.reading_of(first).answer;
    MapLine line;
    line.first = first.at;
    line.target = workings.book.text(first.at);
    line.count = members.size();
    std::vector<Spot> spots;
    spots.reserve(members.size());
    for (const std::uint32_t member : members) spots.push_back(workings.formulas.all()[member].at);
    const bool one_table = members.size() == 1 && !first.area.is_single();
    line.cells = one_table ? workings.book.text(first.area)
                           : listed(workings.book, std::move(spots), most_ranges_of_a_line);
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

std::vector<SheetMap> mapped(const Workings& workings) {
    std::map<std::int32_t, SheetMap> sheets;
    for (const FormulaGroup& group : workings.formulas.groups()) {
        std::map<UnitVerdict, std::vector<std::uint32_t>> by_answer;
        for (const std::uint32_t member : group.members)
            by_answer[workings.readings[member].answer.verdict].push_back(member);
        for (const auto& [verdict, members] : by_answer) {
            MapLine line = map_line(workings, members);
            sheets[line.first.sheet].lines.push_back(std::move(line));
        }
    }
    std::vector<SheetMap> map;
    for (auto& [place, sheet] : sheets) {
        sheet.sheet = place;
        sheet.name = workings.sheet(place).name;
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
    sheet.cells.clear();
    sheet.arrays.clear();
    std::erase_if(rest.names, [&](const DefinedName& name) { return name.sheet == place; });
    rest.index();
    return rest;
}

Report report_on(const Book& book, const Subject& subject) {
    const Workings workings(book);
    Findings findings;
    find_all(workings, findings);
    const StoredValues none;
    const StoredValues& stored = subject.stored != nullptr ? *subject.stored : none;
    find_stale(workings, stored, findings);
    if (!subject.installed_version.empty())
        find_other_version(workings, stored, subject.installed_version, findings);
    Report report;
    if (subject.against != nullptr) {
        report.drift = drift_lines(book, compare(workings, *subject.against, findings));
        findings.keep_last(Kind::typed_over);  // what the template says of it tells more
    }
    report.fingerprint = fingerprint(book, subject.digest);
    if (subject.digest) {
        find_broken_signature(subject.signatures, report.fingerprint, findings);
        for (const Signature& signature : subject.signatures)
            report.signatures.push_back(
                {signature.checker, signature.date, state_of(signature, report.fingerprint)});
    }
    findings.sort();
    report.counts = counted(workings, findings);
    report.verdict = verdict_of(report.counts);
    report.findings = told(workings, findings);
    report.map = mapped(workings);
    return report;
}

}  // namespace

Report audit_workbook(const Subject& subject) {
    const std::int32_t place = subject.book.sheet_named(audit_sheet_name);
    if (place < 0) return report_on(subject.book, subject);
    return report_on(without_audit_sheet(subject.book, place), subject);
}

}  // namespace undercroft::audit
