#include <algorithm>

#include "addin/audit/report/report.hpp"
#include "units/one_line.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

/// Columns that are as wide as what stands in them, the last one open.
class TextTable {
public:
    void row(std::vector<std::string> fields) {
        for (std::string& field : fields) field = on_one_line(field);
        rows_.push_back(std::move(fields));
    }
    [[nodiscard]] std::string text() const {
        std::vector<std::size_t> widths;
        for (const auto& row : rows_)
            for (std::size_t i = 0; i < row.size(); ++i) {
                if (i >= widths.size()) widths.push_back(0);
                widths[i] = std::max(widths[i], std::min(row[i].size(), widest));
            }
        std::string text;
        for (const auto& row : rows_) {
            std::string line = " ";
            for (std::size_t i = 0; i < row.size(); ++i) {
                line += ' ' + row[i];
                if (i + 1 < row.size() && row[i].size() < widths[i])
                    line.append(widths[i] - row[i].size(), ' ');
            }
            text += line.substr(0, line.find_last_not_of(' ') + 1) + '\n';
        }
        return text;
    }

private:
    static constexpr std::size_t widest = 48;
    std::vector<std::vector<std::string>> rows_;
};

std::string inputs_text(const Report& report) {
    if (report.inputs.empty()) return {};
    TextTable table;
    table.row({"cells", "input", "symbol", "value", "template", "usual", "state", "remark"});
    for (const RegisterLine& input : report.inputs) {
        std::string remark = input.remark;
        if (input.when_signed)
            remark += (remark.empty() ? "" : "; ") + (input.when_signed->empty()
                                                          ? "new since it was signed"
                                                          : "when signed " + *input.when_signed);
        table.row({input.cells, input.label, input.symbol, input.value_and_unit(),
                   input.in_template.value_or(""), input.usual, std::string(text_of(input.state)), remark});
    }
    return "\nregister of inputs\n" + table.text();
}

std::string checks_text(const Report& report) {
    if (report.checks.empty()) return {};
    TextTable table;
    table.row({"cells", "check", "verdict", "demand", "capacity", "unit", "ratio", "rests on"});
    for (const CheckLine& check : report.checks)
        table.row({check.cells, check.label, std::string(text_of(check.verdict)), check.demand_text,
                   check.capacity_text, check.unit, check.ratio ? rounded_text(*check.ratio) : std::string(),
                   std::string(text_of(check.rests))});
    return "\nchecks\n" + table.text();
}

std::string revision_text(const Report& report) {
    if (!report.revision) return {};
    std::string text =
        "\nsince " + on_one_line(report.earlier_name) + "\n  " + report.revision->summary() + '\n';
    std::optional<Change> last;
    TextTable table;
    const auto finish = [&] {
        text += table.text();
        table = {};
    };
    for (const RevisionLine& line : report.revision->lines) {
        if (line.change != last) {
            finish();
            text += "  " + std::string(title_of(line.change)) + '\n';
            last = line.change;
        }
        table.row({"", line.cells, line.label, line.was + " -> " + line.is, line.says});
    }
    finish();
    return text;
}

constexpr UnitVerdict verdicts[] = {UnitVerdict::consistent, UnitVerdict::inconsistent,
                                    UnitVerdict::cannot_tell, UnitVerdict::not_given};

}  // namespace

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
        if (finding.accepted)
            text += "  accepted by " +
                    on_one_line(finding.accepted->name + " " + finding.accepted->date + ": " +
                                finding.accepted->reason) +
                    '\n';
    }
    text += inputs_text(report) + checks_text(report) + revision_text(report);
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
