#include <algorithm>
#include <array>
#include <iterator>

#include "addin/audit/report/report.hpp"
#include "units/one_line.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// Lines of a table stay lines of their field; what commands a terminal is shown as its number.
std::string shown_in_table(const std::string& text) {
    std::string made;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        made += (at > 0 ? "\n" : "") + on_one_line(std::string_view(text).substr(at, end - at));
        at = end + 1;
    }
    return made;
}

std::string quoted(const std::string& text) {
    std::string made = "\"";
    for (const char c : text) {
        if (c == '"') made += '"';
        made += c;
    }
    return made + '"';
}

/// What stands in a row of the table; blank where a part has nothing of it.
struct Row {
    std::string part, answer, title, cells, label, says, formula, value, unit, equation, source, inputs,
        reference, symbol, in_template, usual, note, demand, capacity, ratio, rests_on, was, accepted;
};

constexpr std::pair<const char*, std::string Row::*> fields[] = {{"part", &Row::part},
                                                                 {"answer", &Row::answer},
                                                                 {"title", &Row::title},
                                                                 {"cells", &Row::cells},
                                                                 {"label", &Row::label},
                                                                 {"says", &Row::says},
                                                                 {"formula", &Row::formula},
                                                                 {"value", &Row::value},
                                                                 {"unit", &Row::unit},
                                                                 {"equation", &Row::equation},
                                                                 {"source", &Row::source},
                                                                 {"inputs", &Row::inputs},
                                                                 {"reference", &Row::reference},
                                                                 {"symbol", &Row::symbol},
                                                                 {"template", &Row::in_template},
                                                                 {"usual", &Row::usual},
                                                                 {"note", &Row::note},
                                                                 {"demand", &Row::demand},
                                                                 {"capacity", &Row::capacity},
                                                                 {"ratio", &Row::ratio},
                                                                 {"rests on", &Row::rests_on},
                                                                 {"was", &Row::was},
                                                                 {"accepted", &Row::accepted}};

class Csv {
public:
    Csv() {
        for (const auto& [head, field] : fields) add(head, field == std::begin(fields)->second);
        text_ += "\r\n";
    }
    void row(const Row& row) {
        for (const auto& [head, field] : fields) add(row.*field, field == std::begin(fields)->second);
        text_ += "\r\n";
    }
    [[nodiscard]] std::string take() { return std::move(text_); }

private:
    void add(const std::string& field, bool is_first) {
        if (!is_first) text_ += ',';
        text_ += quoted(harmless_in_table(shown_in_table(field)));
    }
    std::string text_;
};

void add_summary(const Report& report, Csv& csv) {
    const auto line = [&](const std::string& title, const std::string& says) {
        Row row;
        row.part = "summary";
        row.title = title;
        row.says = says;
        csv.row(row);
    };
    const ReportCounts& counts = report.counts;
    line("verdict", report.verdict);
    line("formulas", std::to_string(counts.formulas));
    line("distinct formulas", std::to_string(counts.distinct));
    line("formulas with UC functions", std::to_string(counts.with_own));
    line("errors", std::to_string(counts.errors));
    line("warnings", std::to_string(counts.warnings));
    line("notes", std::to_string(counts.notes));
    if (counts.accepted > 0) line("accepted findings", std::to_string(counts.accepted));
    for (const UnitVerdict verdict : {UnitVerdict::consistent, UnitVerdict::inconsistent,
                                      UnitVerdict::cannot_tell, UnitVerdict::not_given})
        line("units " + text_of(verdict), std::to_string(counts.units_that_are(verdict)));
}

void add_findings(const Report& report, Csv& csv) {
    for (const ReportFinding& finding : report.findings) {
        Row row;
        row.part = "finding";
        row.answer = text_of(finding.severity);
        row.title = finding.title;
        row.cells = finding.cells;
        row.label = finding.label;
        row.says = finding.says;
        if (finding.accepted)
            row.accepted = finding.accepted->reason + " (" + finding.accepted->name + ", " +
                           finding.accepted->date + ")";
        csv.row(row);
    }
}

void add_inputs(const Report& report, Csv& csv) {
    for (const RegisterLine& input : report.inputs) {
        Row row;
        row.part = "input";
        row.answer = text_of(input.state);
        row.cells = input.cells;
        row.label = input.label;
        row.says = input.remark;
        row.value = input.value;
        row.unit = input.unit;
        row.reference = input.reference;
        row.symbol = input.symbol;
        row.in_template = input.in_template.value_or("");
        row.usual = input.usual;
        row.note = input.note;
        if (input.when_signed) row.was = input.when_signed->empty() ? "new" : *input.when_signed;
        csv.row(row);
    }
}

void add_checks(const Report& report, Csv& csv) {
    for (const CheckLine& check : report.checks) {
        Row row;
        row.part = "check";
        row.answer = text_of(check.verdict);
        row.cells = check.cells;
        row.label = check.label;
        row.says = check.shown;
        row.unit = check.unit;
        row.source = check.source;
        row.reference = check.reference;
        row.demand = check.demand_text;
        row.capacity = check.capacity_text;
        if (check.ratio) row.ratio = rounded_text(*check.ratio);
        row.rests_on = text_of(check.rests);
        csv.row(row);
    }
}

void add_revision(const Report& report, Csv& csv) {
    if (!report.revision) return;
    for (const RevisionLine& line : report.revision->lines) {
        Row row;
        row.part = "change";
        row.title = title_of(line.change);
        row.cells = line.cells;
        row.label = line.label;
        row.says = line.says;
        row.value = line.is;
        row.was = line.was;
        csv.row(row);
    }
}

void add_map(const Report& report, Csv& csv) {
    for (const SheetMap& sheet : report.map)
        for (const MapLine& one : sheet.lines) {
            Row row;
            row.part = "formula";
            row.answer = text_of(one.verdict);
            row.title = sheet.name;
            row.cells = one.cells;
            row.label = one.label;
            row.says = one.reason;
            row.formula = one.formula;
            row.value = one.value;
            row.unit = one.unit;
            row.equation = one.equation;
            row.source = one.source;
            row.inputs = one.inputs;
            csv.row(row);
        }
}

}  // namespace

std::string csv_text(const Report& report) {
    Csv csv;
    const auto line = [&](const std::string& part, const std::string& title, const std::string& says) {
        Row row;
        row.part = part;
        row.title = title;
        row.says = says;
        csv.row(row);
    };
    add_summary(report, csv);
    for (const std::string& what : report.not_checked) line("not checked", "", what);
    add_findings(report, csv);
    add_inputs(report, csv);
    add_checks(report, csv);
    add_revision(report, csv);
    for (const std::string& drift : report.drift) line("template", "", drift);
    for (const ReportSignature& signature : report.signatures)
        line("signature", signature.checker + ", " + signature.date, signature.state);
    if (!report.fingerprint.whole.empty()) line("fingerprint", "whole workbook", report.fingerprint.whole);
    for (const auto& [sheet, digest] : report.fingerprint.sheets) line("fingerprint", sheet, digest);
    add_map(report, csv);
    return csv.take();
}

}  // namespace undercroft::audit
