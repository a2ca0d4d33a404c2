// Mistakes that people make, planted one by one in the whole job and in loose sheets of other styles: the
// right cell stands among the first five findings, for the right reason. And correct sheets, in which next to
// nothing is found.
#include <filesystem>
#include <iomanip>
#include <map>
#include <set>
#include <sstream>

#include "addin/audit/report/report.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/files.hpp"
#include "tests/support/loose_sheets.hpp"
#include "tests/support/mistakes.hpp"
#include "tests/support/open_document.hpp"

namespace undercroft::tests {

using audit::Book;
using audit::Report;
using audit::ReportFinding;
using audit::Severity;
using audit::Spot;

namespace {

constexpr std::size_t looked_at = 5;  // of a report, by somebody in a hurry

struct Tally {
    int found = 0;
    int planted = 0;
    void count(bool is_found) {
        found += is_found ? 1 : 0;
        ++planted;
    }
    [[nodiscard]] std::string text() const {
        return planted == 0 ? "-" : std::to_string(found) + "/" + std::to_string(planted);
    }
    [[nodiscard]] double share() const { return planted == 0 ? 0 : 100.0 * found / planted; }
};

bool is_told(const Report& report, const Book& book, const PlantedMistake& mistake, bool with_template) {
    static const std::set<std::string> of_template = {"template_changed", "template_rows", "typed_over"};
    std::size_t place = 0;
    for (const ReportFinding& finding : report.findings) {
        if (++place > looked_at) return false;
        const std::string word(audit::word_of(finding.kind));
        const bool right =
            std::find(mistake.reasons.begin(), mistake.reasons.end(), word) != mistake.reasons.end();
        if (!right && !(with_template && of_template.contains(word))) continue;
        if (mistake.cell.empty() && right) return true;
        if (mistake.cell.empty()) continue;
        const Spot at = planted_cell(book, mistake.cell);
        if (std::find(finding.all.begin(), finding.all.end(), at) != finding.all.end()) return true;
    }
    return false;
}

std::vector<LooseSheet> loose_sheets() {
    const std::string folder = "tests/data/loose";
    std::set<std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(std::string(PROJECT_FOLDER) + "/" + folder))
        if (entry.path().extension() == ".txt") files.insert(entry.path().filename().string());
    std::vector<LooseSheet> sheets;
    for (const std::string& file : files) sheets.push_back(read_loose_sheet(folder + "/" + file));
    return sheets;
}

Report audit_of(const EditedBook& edited, const Book* against = nullptr) {
    return audit::audit_workbook({.book = edited.book, .stored = &edited.stored, .against = against});
}

}  // namespace

TEST_CASE("in correct sheets of many styles no error is found, and next to no warning") {
    std::size_t warnings = 0;
    const std::vector<LooseSheet> sheets = loose_sheets();
    for (const LooseSheet& sheet : sheets) {
        const Report report = audit_of(with_edits(sheet.book, "", false));
        for (const ReportFinding& finding : report.findings) {
            if (finding.severity == Severity::note) continue;
            CAPTURE(sheet.file, finding.cells, std::string(finding.title), finding.says);
            CHECK(finding.severity != Severity::error);
            if (finding.severity == Severity::warning) {
                ++warnings;
                WARN(sheet.file << ": " << finding.cells << ": " << finding.says);
            }
        }
    }
    CHECK(sheets.size() >= 40);
    CHECK(warnings <= 5);
}

namespace {

struct Counts {
    Tally with_template;
    Tally without;
    Tally loose;
};

/// Counts by kind of mistake, and what was missed.
class Proof {
public:
    void in_whole_job() {
        const Book clean = read_open_document(std::string(JOBS_FOLDER) + "/car-park/whole-job.ods");
        const Book whole = read_open_document(std::string(TEMPLATES_FOLDER) + "/whole-job.ots");
        int number = 0;
        std::istringstream lines(file_text("tests/data/planted-in-whole-job.txt"));
        for (std::string line; std::getline(lines, line);) {
            ++number;
            if (line.empty() || line.starts_with("#")) continue;
            const PlantedMistake mistake = checked(read_planted(line, number));
            CAPTURE(line);
            const EditedBook edited = with_edits(clean, mistake.edits, false);
            const Report with = audit_of(edited, &whole);
            const Report without = audit_of(edited);
            count(&Counts::with_template, "with template", mistake, with,
                  is_told(with, edited.book, mistake, true));
            count(&Counts::without, "without", mistake, without,
                  is_told(without, edited.book, mistake, false));
        }
    }
    void in_loose_sheets() {
        for (const LooseSheet& sheet : loose_sheets())
            for (const PlantedMistake& mistake : sheet.mistakes) {
                CAPTURE(sheet.file, mistake.line, mistake.edits);
                const EditedBook edited = with_edits(sheet.book, checked(mistake).edits, true);
                const Report report = audit_of(edited);
                count(&Counts::loose, sheet.file, mistake, report,
                      is_told(report, edited.book, mistake, false));
            }
    }
    [[nodiscard]] std::string text() const {
        std::ostringstream table;
        table << std::left << std::setw(55) << "kind of mistake"
              << "template without loose\n";
        const auto row = [&](const std::string& name, const Counts& counts) {
            table << std::left << std::setw(55) << name << std::setw(9) << counts.with_template.text()
                  << std::setw(8) << counts.without.text() << counts.loose.text() << "\n";
        };
        for (const auto& [name, counts] : by_class_) row(name, counts);
        row("all", all_);
        return table.str() + "missed:\n" + missed_.str();
    }
    [[nodiscard]] const Counts& all() const { return all_; }
    [[nodiscard]] std::size_t kinds() const { return by_class_.size(); }

private:
    /// Every reason is a word that the audit has.
    static PlantedMistake checked(const PlantedMistake& mistake) {
        static const std::set<std::string> known = [] {
            std::set<std::string> words;
            for (int kind = 0; kind <= static_cast<int>(audit::FindingKind::signature); ++kind)
                words.insert(std::string(audit::word_of(static_cast<audit::FindingKind>(kind))));
            return words;
        }();
        for (const std::string& reason : mistake.reasons) {
            CAPTURE(mistake.line, reason);
            CHECK(known.contains(reason));
        }
        return mistake;
    }
    void count(Tally Counts::*tally, const std::string& where, const PlantedMistake& mistake,
               const Report& report, bool found) {
        (by_class_[mistake.class_name].*tally).count(found);
        (all_.*tally).count(found);
        if (found) return;
        missed_ << "  " << where << ":" << mistake.line << " " << mistake.class_name << ": " << mistake.edits;
        for (std::size_t i = 0; i < std::min<std::size_t>(report.findings.size(), 3); ++i)
            missed_ << "\n      " << audit::word_of(report.findings[i].kind) << " "
                    << report.findings[i].cells.substr(0, 40);
        missed_ << "\n";
    }

    std::map<std::string, Counts> by_class_;
    Counts all_;
    std::ostringstream missed_;
};

}  // namespace

// The floors may only rise.

TEST_CASE("mistakes planted in loose sheets, by kind") {
    Proof proof;
    proof.in_loose_sheets();
    WARN(proof.text());
    CHECK(proof.kinds() >= 85);
    CHECK(proof.all().loose.planted >= 279);
    CHECK(proof.all().loose.share() >= 96);
}

TEST_CASE("mistakes planted in the whole job, by kind, with its template and without", "[workbooks]") {
    Proof proof;
    proof.in_whole_job();
    WARN(proof.text());
    CHECK(proof.kinds() >= 60);
    CHECK(proof.all().with_template.planted >= 128);
    CHECK(proof.all().with_template.share() >= 97);
    CHECK(proof.all().without.share() >= 86);
}

}  // namespace undercroft::tests
