#include <algorithm>
#include <initializer_list>

#include "addin/audit/report/report.hpp"
#include "units/one_line.hpp"

namespace undercroft::audit {

namespace {

bool is_number(const std::string& text) {
    return text.find_first_not_of("0123456789.-+eE") == std::string::npos &&
           text.find_first_of("0123456789") != std::string::npos;
}

/// A program that opens the table must not compute what stands in it, even one that takes semicolons, tabs or
/// the ends of lines in it for the ends of fields.
std::string harmless(const std::string& text) {
    constexpr std::string_view separators = ";\t\n\r|";
    std::string made;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find_first_of(separators, at), text.size());
        const std::string piece = text.substr(at, end - at);
        const std::size_t first = std::min(piece.find_first_not_of(" \""), piece.size());
        const bool starts_formula =
            first < piece.size() && std::string_view("=+-@").find(piece[first]) != std::string_view::npos;
        const bool is_argument = is_number(piece.substr(0, piece.find_last_not_of(") ") + 1));
        if (starts_formula && !is_argument) made += '\'';
        made += piece;
        if (end < text.size()) made += text[end];
        at = end + 1;
    }
    return made;
}

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

class Csv {
public:
    void row(std::initializer_list<std::string> fields) {
        bool first = true;
        for (const std::string& field : fields) {
            if (!first) text_ += ',';
            first = false;
            text_ += quoted(harmless(shown_in_table(field)));
        }
        text_ += "\r\n";
    }
    [[nodiscard]] std::string take() { return std::move(text_); }

private:
    std::string text_;
};

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

constexpr UnitVerdict verdicts[] = {UnitVerdict::consistent, UnitVerdict::inconsistent,
                                    UnitVerdict::cannot_tell, UnitVerdict::not_given};

}  // namespace

std::string csv_text(const Report& report) {
    Csv csv;
    csv.row({"part", "answer", "title", "cells", "label", "says", "formula", "value", "unit", "equation",
             "source", "inputs"});
    const auto line = [&](const std::string& part, const std::string& title, const std::string& says) {
        csv.row({part, "", title, "", "", says, "", "", "", "", "", ""});
    };
    const ReportCounts& counts = report.counts;
    line("summary", "verdict", report.verdict);
    line("summary", "formulas", std::to_string(counts.formulas));
    line("summary", "distinct formulas", std::to_string(counts.distinct));
    line("summary", "formulas with UC functions", std::to_string(counts.with_own));
    line("summary", "errors", std::to_string(counts.errors));
    line("summary", "warnings", std::to_string(counts.warnings));
    line("summary", "notes", std::to_string(counts.notes));
    for (const UnitVerdict verdict : verdicts)
        line("summary", "units " + text_of(verdict), std::to_string(counts.units_that_are(verdict)));
    for (const std::string& what : report.not_checked) line("not checked", "", what);
    for (const ReportFinding& finding : report.findings)
        csv.row({"finding", std::string(text_of(finding.severity)), finding.title, finding.cells,
                 finding.label, finding.says, "", "", "", "", "", ""});
    for (const std::string& drift : report.drift) line("template", "", drift);
    for (const ReportSignature& signature : report.signatures)
        line("signature", signature.checker + ", " + signature.date, signature.state);
    if (!report.fingerprint.whole.empty()) line("fingerprint", "whole workbook", report.fingerprint.whole);
    for (const auto& [sheet, digest] : report.fingerprint.sheets) line("fingerprint", sheet, digest);
    for (const SheetMap& sheet : report.map)
        for (const MapLine& one : sheet.lines)
            csv.row({"formula", text_of(one.verdict), sheet.name, one.cells, one.label, one.reason,
                     one.formula, one.value, one.unit, one.equation, one.source, one.inputs});
    return csv.take();
}

std::string console_text(const Report& report) {
    const ReportCounts& counts = report.counts;
    std::string text = report.verdict + "\n" + std::to_string(counts.formulas) + " formulas, " +
                       std::to_string(counts.distinct) + " distinct, " + std::to_string(counts.with_own) +
                       " with UC functions\nunits:";
    for (const UnitVerdict verdict : verdicts)
        text += (verdict == UnitVerdict::consistent ? " " : ", ") +
                std::to_string(counts.units_that_are(verdict)) + " " + text_of(verdict);
    text += '\n';
    for (const std::string& what : report.not_checked) text += "not checked: " + on_one_line(what) + '\n';
    for (const ReportFinding& finding : report.findings) {
        text += '\n' + std::string(text_of(finding.severity)) + ": " + finding.title;
        if (!finding.cells.empty()) text += " in " + on_one_line(finding.cells);
        if (!finding.label.empty()) text += " (" + on_one_line(finding.label) + ")";
        text += "\n  " + on_one_line(capital(finding.says)) + '\n';
    }
    if (!report.drift.empty()) text += "\ntemplate\n";
    for (const std::string& drift : report.drift) text += "  " + on_one_line(drift) + '\n';
    for (const ReportSignature& signature : report.signatures)
        text += "\nsigned by " +
                on_one_line(signature.checker + (signature.date.empty() ? "" : " on " + signature.date) +
                            ": " + signature.state) +
                '\n';
    if (!report.fingerprint.whole.empty()) text += "\nfingerprint " + report.fingerprint.whole + '\n';
    return text;
}

}  // namespace undercroft::audit
