// Mistakes planted one by one in a filled workbook of the whole job: each is found where it is, and the
// untouched workbook has no finding.
#include <filesystem>
#include <set>

#include "addin/audit/report/report.hpp"
#include "tests/audit/audited.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/files.hpp"
#include "tests/support/mistakes.hpp"
#include "tests/support/open_document.hpp"

namespace undercroft::tests {

using audit::Book;
using audit::Report;
using audit::Spot;

namespace {

std::string job(const std::string& name, const std::string& workbook = "whole-job") {
    return std::string(JOBS_FOLDER) + "/" + name + "/" + workbook + ".ods";
}
std::string template_file(const std::string& name) {
    return std::string(TEMPLATES_FOLDER) + "/" + name;
}

std::string version_in(const Book& book) {
    const audit::BookCell* cell = book.find(cell_meant(book, "functions_version"));
    return cell == nullptr || cell->text() == nullptr ? "" : *cell->text();
}

struct Planted {
    Book book;
    audit::StoredValues stored;
};

audit::CellValue as_value(const std::string& text) {
    try {
        std::size_t end = 0;
        const double number = std::stod(text, &end);
        if (end == text.size()) return number;
    } catch (const std::exception&) {
    }
    return text;
}

Planted planted(const Book& clean, const Mistake& mistake) {
    Planted made{clean, {}};
    for (const Edit& edit : mistake.edits) {
        if (edit.what == Edit::What::hide_sheet) {
            made.book.sheets[static_cast<std::size_t>(clean.sheet_named(edit.cell))].hidden = true;
            continue;
        }
        const Spot at = cell_meant(clean, edit.cell);
        auto& sheet = made.book.sheets[static_cast<std::size_t>(at.sheet)];
        if (edit.what == Edit::What::type) type_into(made.book, at, edit.text);
        if (edit.what == Edit::What::hide_row) sheet.hidden_rows.insert(at.row);
        if (edit.what == Edit::What::hide_column) sheet.hidden_columns.insert(at.column);
    }
    made.stored = results_of(made.book);
    for (const Edit& edit : mistake.edits)
        if (edit.what == Edit::What::store) {
            const Spot at = cell_meant(clean, edit.cell);
            made.stored.add(clean.sheets[static_cast<std::size_t>(at.sheet)].name, at.row, at.column,
                            {as_value(edit.text), false});
        }
    return made;
}

bool is_found(const Report& report, const Mistake& mistake, const Book& book) {
    for (const audit::ReportFinding& finding : report.findings) {
        if (audit::word_of(finding.kind) != mistake.kind) continue;
        if (mistake.found_at.empty()) return true;
        const Spot at = cell_meant(book, mistake.found_at);
        if (std::find(finding.all.begin(), finding.all.end(), at) != finding.all.end()) return true;
    }
    return false;
}

}  // namespace

TEST_CASE("jobs without a mistake have no finding", "[workbooks]") {
    for (const char* name : {"car-park", "meadow-retention", "field-infiltration"}) {
        CAPTURE(name);
        const Book book = read_open_document(job(name));
        const audit::StoredValues stored = results_of(book);
        const Report report =
            audit::audit_workbook({.book = book, .stored = &stored, .installed_version = version_in(book)});
        INFO(audit::console_text(report));
        CHECK(report.findings.empty());
        CHECK(report.counts.formulas > 1000);
        CHECK(report.counts.units_that_are(audit::UnitVerdict::inconsistent) == 0);
    }
}

TEST_CASE("ten years of daily rain are inputs, and the store that was handed over is told", "[workbooks]") {
    const Book book = read_open_document(job("meadow-reuse", "reuse"));
    const audit::StoredValues stored = results_of(book);
    const Report report =
        audit::audit_workbook({.book = book, .stored = &stored, .installed_version = version_in(book)});
    CHECK(report.counts.units_that_are(audit::UnitVerdict::inconsistent) == 0);
    REQUIRE(report.findings.size() == 1);  // all digits of what the whole job computed
    CHECK(report.findings[0].kind == audit::FindingKind::typed_over);
    CHECK(report.findings[0].all == std::vector<Spot>{cell_meant(book, "storage_kept")});
}

TEST_CASE("the release of an undeveloped site has no finding", "[workbooks]") {
    const Book book = read_open_document(job("car-park-release", "release"));
    const audit::StoredValues stored = results_of(book);
    const Report report =
        audit::audit_workbook({.book = book, .stored = &stored, .installed_version = version_in(book)});
    INFO(audit::console_text(report));
    CHECK(report.findings.empty());
    CHECK(report.counts.units_that_are(audit::UnitVerdict::inconsistent) == 0);
}

TEST_CASE("a filled job held against its own template: only inputs were filled in", "[workbooks]") {
    const Book whole = read_open_document(template_file("whole-job.ots"));
    for (const char* name : {"car-park", "meadow-retention", "field-infiltration"}) {
        CAPTURE(name);
        const Book book = read_open_document(job(name));
        const Report report = audit::audit_workbook({.book = book, .against = &whole});
        INFO(audit::console_text(report));
        CHECK(report.findings.empty());
        CHECK(report.drift.size() >= 9);
    }
}

TEST_CASE("the job that must fail fails in its checks, and in nothing else", "[workbooks]") {
    const Book book = read_open_document(job("car-park-fails"));
    const Report report = audit::audit_workbook({.book = book});
    INFO(audit::console_text(report));
    CHECK(report.findings.size() >= 5);
    for (const audit::ReportFinding& finding : report.findings)
        CHECK(finding.kind == audit::FindingKind::check_failed);
}

TEST_CASE("an unfilled template has no finding but checks that its own figures fail", "[workbooks]") {
    for (const char* name :
         {"storage.ots", "storage-us.ots", "excavation.ots", "excavation-us.ots", "takeoff.ots",
          "takeoff-us.ots", "reuse.ots", "reuse-us.ots", "options.ots", "options-us.ots", "release.ots",
          "release-us.ots", "design.ots", "design-us.ots", "whole-job.ots", "whole-job-us.ots"}) {
        CAPTURE(name);
        const Report report = audit::audit_workbook({.book = read_open_document(template_file(name))});
        INFO(audit::console_text(report));
        for (const audit::ReportFinding& finding : report.findings)
            CHECK(finding.kind == audit::FindingKind::check_failed);
    }
}

TEST_CASE("every planted mistake is found in its cell", "[workbooks]") {
    const Book clean = read_open_document(job("car-park"));
    const Book whole = read_open_document(template_file("whole-job.ots"));
    const std::string version = version_in(clean);
    std::size_t planted_here = 0;
    for (const Mistake& mistake : read_mistakes(file_text("tests/data/seeded-mistakes.txt"))) {
        if (mistake.needs_calc) continue;
        CAPTURE(mistake.line, mistake.kind, mistake.found_at, mistake.edits.front().text);
        const Planted made = planted(clean, mistake);
        const Report report = audit::audit_workbook({.book = made.book,
                                                     .stored = &made.stored,
                                                     .against = mistake.against_template ? &whole : nullptr,
                                                     .installed_version = version});
        INFO(audit::console_text(report));
        CHECK(is_found(report, mistake, made.book));
        ++planted_here;
    }
    CHECK(planted_here >= 60);
}

TEST_CASE("the list of mistakes: many, of many kinds, each a kind that the audit knows", "[workbooks]") {
    const Book clean = read_open_document(job("car-park"));
    std::set<std::string> known;
    for (int kind = 0; kind <= static_cast<int>(audit::FindingKind::signature); ++kind)
        known.insert(std::string(audit::word_of(static_cast<audit::FindingKind>(kind))));
    std::set<std::string> kinds;
    std::size_t count = 0;
    for (const Mistake& mistake : read_mistakes(file_text("tests/data/seeded-mistakes.txt"))) {
        CAPTURE(mistake.line);
        CHECK(known.contains(mistake.kind));
        kinds.insert(mistake.kind);
        ++count;
        if (!mistake.found_at.empty()) CHECK_NOTHROW(cell_meant(clean, mistake.found_at));
        for (const Edit& edit : mistake.edits)
            if (edit.what != Edit::What::hide_sheet) CHECK_NOTHROW(cell_meant(clean, edit.cell));
    }
    CHECK(count >= 60);
    CHECK(kinds.size() >= 12);
}

}  // namespace undercroft::tests
