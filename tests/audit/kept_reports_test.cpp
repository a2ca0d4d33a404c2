// The whole report on each loose sheet, and what a report says of each mistake planted in it, kept as text in
// tests/data/reports: whoever changes the audit reads there, line by line, what a checker will read
// otherwise.
//   UNDERCROFT_RENEW=1 build/tests/audit_test "[reports]"
#include <boost/algorithm/string/replace.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <sstream>

#include "addin/audit/book/book_json.hpp"
#include "addin/audit/report/report.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/files.hpp"
#include "tests/support/loose_sheets.hpp"

namespace undercroft::tests {

using audit::Report;

namespace {

std::string digest(std::string_view text) {
    return std::to_string(std::hash<std::string_view>{}(text));
}

/// What a report says without its map: of a mistake only that is another one.
std::string in_short(const Report& report) {
    std::string text = report.verdict + "\n";
    for (const audit::ReportFinding& finding : report.findings)
        text += std::string(audit::text_of(finding.severity)) + " " +
                std::string(audit::word_of(finding.kind)) + " [" + finding.cells + "] " + finding.label +
                ": " + finding.says + "\n";
    for (const std::string& line : report.drift) text += "template: " + line + "\n";
    for (const audit::ReportSignature& signature : report.signatures)
        text += "signed: " + signature.state + "\n";
    if (report.revision) {
        text += report.revision->summary() + "\n";
        for (const audit::RevisionLine& line : report.revision->lines)
            text += std::string(audit::title_of(line.change)) + " [" + line.cells + "] " + line.label + ": " +
                    line.was + " -> " + line.is + (line.says.empty() ? "" : " (" + line.says + ")") + "\n";
    }
    for (const audit::RegisterLine& input : report.inputs)
        if (!input.remark.empty()) text += "register: " + input.cells + " " + input.remark + "\n";
    for (const audit::SheetMap& sheet : report.map)
        for (const audit::MapLine& line : sheet.lines)
            if (!line.ticked) text += "not as signed: " + line.cells + "\n";
    return text;
}

/// \param computes whether formulas are computed anew after an edit
std::string reports_of(const LooseSheet& sheet, bool computes = true) {
    const EditedBook clean = with_edits(sheet.book, "", false);
    const Report report = audit::audit_workbook({.book = clean.book, .stored = &clean.stored});
    std::string text = audit::json_text(report);
    boost::replace_all(text, "},{", "},\n{");
    boost::replace_all(text, "[{", "[\n{");
    text += "\n" + audit::csv_text(report) + "\n" + audit::console_text(report);
    const Report then =
        audit::audit_workbook({.book = clean.book, .stored = &clean.stored, .digest = digest});
    const audit::SignedState state = audit::signed_state(then);
    for (const PlantedMistake& mistake : sheet.mistakes) {
        const EditedBook edited = with_edits(sheet.book, mistake.edits, computes);
        const Report now =
            audit::audit_workbook({.book = edited.book,
                                   .stored = &edited.stored,
                                   .against = &clean.book,
                                   .digest = digest,
                                   .signatures = {{"A. Checker", "2026-11-25", then.fingerprint}},
                                   .at_signing = &state,
                                   .earlier = &clean.book,
                                   .earlier_name = "earlier.ods"});
        text += "\n== " + mistake.class_name + " | " + mistake.edits + "\n" + in_short(now);
    }
    return text;
}

/// One of our own, as it was in November 2026: what its sheets have become since changes nothing here.
LooseSheet workbook_of_ours() {
    LooseSheet ours;
    ours.book = audit::kept_book_of(file_text("tests/data/workbook-of-ours.json")).book;
    std::istringstream lines(file_text("tests/data/mistakes-in-workbook-of-ours.txt"));
    int number = 0;
    for (std::string line; std::getline(lines, line);)
        if (++number; !line.empty() && line[0] != '#') ours.mistakes.push_back(read_planted(line, number));
    return ours;
}

void renew_or_compare(const std::string& name, const std::string& text) {
    const std::string path = "tests/data/reports/" + name;
    if (std::getenv("UNDERCROFT_RENEW") != nullptr)
        std::ofstream(std::string(PROJECT_FOLDER) + "/" + path, std::ios::binary) << text;
    if (text != file_text(path))
        FAIL_CHECK(path << " is stale: UNDERCROFT_RENEW=1 build/tests/audit_test \"[reports]\"");
}

}  // namespace

TEST_CASE("reports on loose sheets and on the mistakes planted in them are those that are kept",
          "[reports]") {
    const std::string loose = std::string(PROJECT_FOLDER) + "/tests/data/loose";
    for (const auto& entry : std::filesystem::directory_iterator(loose)) {
        if (entry.path().extension() != ".txt") continue;
        const std::string name = entry.path().filename().string();
        renew_or_compare(name, reports_of(read_loose_sheet("tests/data/loose/" + name)));
    }
}

TEST_CASE("reports on a workbook of ours and on what was done to it are those that are kept", "[reports]") {
    renew_or_compare("workbook-of-ours.txt", reports_of(workbook_of_ours(), false));
}

}  // namespace undercroft::tests
