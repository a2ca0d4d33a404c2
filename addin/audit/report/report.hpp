/// \file report.hpp
/// A whole audit as plain data, for whoever writes it out: a sheet, a file, a console.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "addin/audit/book/fingerprint.hpp"
#include "addin/audit/findings/finding.hpp"
#include "addin/audit/findings/subject.hpp"
#include "addin/audit/report/checks.hpp"
#include "addin/audit/report/register.hpp"
#include "addin/audit/report/revision.hpp"
#include "addin/audit/units/unit_answer.hpp"

namespace undercroft::audit {

struct ReportCounts {
    std::size_t formulas = 0;
    std::size_t distinct = 0;  ///< formulas that are the same apart from their position count once
    std::size_t with_own = 0;  ///< formulas that call a function of ours
    std::size_t errors = 0;
    std::size_t warnings = 0;
    std::size_t notes = 0;
    std::size_t accepted = 0;            ///< findings, which count as none of those three
    std::array<std::size_t, 4> units{};  ///< formulas by UnitVerdict
    [[nodiscard]] std::size_t units_that_are(UnitVerdict verdict) const {
        return units[static_cast<std::size_t>(verdict)];
    }
};

struct ReportFinding {
    Severity severity = Severity::error;
    FindingKind kind = FindingKind::error;
    std::string title;          ///< of the kind
    std::optional<Spot> first;  ///< to look at; nothing when it is about the whole workbook
    std::vector<Spot> all;
    std::string target;  ///< `Site.G6`, the first cell
    std::string cells;   ///< `Site.G6:G9`; empty for the whole workbook
    std::string label;   ///< of the first cell
    std::string says;
    std::string mark;  ///< by which it is known again; empty where it cannot be accepted
    std::optional<Acceptance> accepted;
};

/// One distinct formula. Where its cells have different answers about units it has a line for each answer.
struct MapLine {
    Spot first;
    std::string target;     ///< `Site.G6`, the first cell
    std::size_t count = 0;  ///< of cells that hold it
    std::string cells;
    std::string label;
    std::string formula;
    std::string value;
    std::string unit;
    UnitVerdict verdict = UnitVerdict::cannot_tell;
    std::string reason;
    std::optional<Spot> reason_cell;
    std::string equation;
    std::string source;
    std::string inputs;
    bool is_link = false;    ///< it only shows another cell
    bool is_helper = false;  ///< it only keeps a count beyond the page, draws, or says a sentence
    bool is_check = false;   ///< it stands among the checks
    std::string mark;        ///< by which it is known again
    bool ticked = false;     ///< it is what it was when it was last signed
};

struct SheetMap {
    std::int32_t sheet = 0;
    std::string name;
    std::vector<MapLine> lines;
};

struct ReportSignature {
    std::string checker;
    std::string date;
    std::string state;
};

struct Report {
    std::string verdict;  ///< one sentence
    std::string job;      ///< the texts of the title block, where the workbook has one
    ReportCounts counts;
    std::vector<ReportFinding> findings;  ///< gravest first, those that were accepted last
    std::vector<RegisterLine> inputs;     ///< those worth a look first
    std::vector<CheckLine> checks;        ///< those that fail first
    std::vector<SheetMap> map;            ///< sheets with formulas, in order
    std::vector<std::string> drift;       ///< what became of the template; empty without one
    std::vector<ReportSignature> signatures;
    std::vector<std::string> not_checked;  ///< what could not be, each with its reason
    Fingerprint fingerprint;
    std::optional<Revision> revision;  ///< against an earlier one
    std::string earlier_name;

    /// Beside what was accepted.
    [[nodiscard]] bool found_something() const { return findings.size() > counts.accepted; }
};

[[nodiscard]] Report audit_workbook(const Subject& subject);

/// What a signature of this report stands for, to be kept until then.
[[nodiscard]] SignedState signed_state(const Report& report);

/// All of it for other programs.
[[nodiscard]] std::string json_text(const Report& report);

/// A table by RFC 4180. What a spreadsheet would take for a formula begins with an apostrophe.
[[nodiscard]] std::string csv_text(const Report& report);

/// Summary and findings for a console.
[[nodiscard]] std::string console_text(const Report& report);

}  // namespace undercroft::audit
