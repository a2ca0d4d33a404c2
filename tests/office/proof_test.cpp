// Each check of the sheets fails in a job of its own and passes in the one beside it, and each required input
// that is blank is asked for on its own sheet. All in one document: what a job changes is typed, read, and
// put back.
#include <com/sun/star/sheet/XCellAddressable.hpp>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>

#include "sheets/builder/files.hpp"
#include "sheets/builder/job_text.hpp"
#include "sheets/builder/layout.hpp"
#include "sheets/office/job_filler.hpp"
#include "tests/office/desk.hpp"

namespace undercroft::tests {

namespace {

namespace fs = std::filesystem;
using Keys = std::set<std::string>;

const fs::path jobs_folder = fs::path(PROJECT_FOLDER) / "tests" / "jobs";
const fs::path texts_folder = fs::path(PROJECT_FOLDER) / "sheets" / "text";

sheets::JobText job_named(const std::string& name) {
    const auto text = [](const std::string& other) {
        return sheets::read_file(jobs_folder / (other + ".txt"));
    };
    return sheets::read_job(text(name), text);
}

/// The sheets of a workbook, as text.
std::vector<sheets::Sheet> sheets_of(const std::string& name) {
    const std::vector<sheets::Sheet> all = sheets::read_sheets(texts_folder);
    std::vector<sheets::Sheet> found;
    for (const sheets::WorkbookText& workbook : sheets::read_workbooks_of(texts_folder)) {
        if (workbook.name != name) continue;
        for (const std::string& wanted : workbook.sheets)
            found.push_back(*std::find_if(all.begin(), all.end(),
                                          [&](const sheets::Sheet& sheet) { return sheet.name == wanted; }));
    }
    return found;
}

/// A workbook filled with the base of its jobs, and others typed over it one after the other.
class Proof {
public:
    Proof(const std::string& workbook, std::string base)
        : base_(std::move(base)),
          sheets_(sheets_of(workbook)),
          document_(the_office().open(fs::path(TEMPLATES_FOLDER) / (workbook + ".ots"))),
          filler_(document_, sheets_) {
        sheets::JobFiller(document_, sheets_).fill(job_named(base_));
        document_.recalculate();
    }

    [[nodiscard]] const std::vector<sheets::Sheet>& texts() const { return sheets_; }
    [[nodiscard]] const sheets::Document& document() const { return document_; }
    sheets::JobFiller& filler() { return filler_; }

    /// Types what a job has beyond the base.
    void type(const std::string& name) {
        const sheets::JobText base = job_named(base_);
        const sheets::JobText job = job_named(name);
        for (const auto& [key, value] : job.values)
            if (!base.values.contains(key) || base.values.at(key) != value) filler_.type(key, value);
        for (const auto& [key, rows] : job.rows)
            if (!base.rows.contains(key) || base.rows.at(key) != rows) filler_.type_rows(key, rows);
    }

    /// The checks that fail or are open, and the lists of which an item is.
    [[nodiscard]] Keys failing() const {
        Keys keys;
        for (const sheets::Sheet& sheet : sheets_)
            for (const sheets::Row& row : sheet.rows)
                if (sheets::verdict_column(row) != nullptr || row.is<sheets::rows::Check>())
                    if (!passes(row)) keys.insert(row.key);
        return keys;
    }

private:
    [[nodiscard]] bool passes(const sheets::Row& row) const {
        const sheets::Column* column = sheets::verdict_column(row);
        const std::string key = column == nullptr ? row.key : row.key + "_" + column->name;
        const int items =
            column == nullptr ? 1 : static_cast<int>(row.as<sheets::rows::List>()->items.size());
        for (int item = 0; item < items; ++item) {
            const std::string verdict = sheets::shown(document_.named(key, 0, item));
            if (verdict != "PASS" && verdict != "not counted") return false;
        }
        return true;
    }

    std::string base_;
    std::vector<sheets::Sheet> sheets_;
    sheets::Document document_;
    sheets::JobFiller filler_;
};

/// Filled once for all tests here. They go with the office, before the end of the program.
Proof& proof() {
    static Proof* made = new Proof("whole-job", "base");  // NOLINT: closed by the office itself
    return *made;
}
Proof& reuse_proof() {
    static Proof* made = new Proof("reuse", "reuse-base");  // NOLINT: closed by the office itself
    return *made;
}
Proof& options_proof() {
    static Proof* made = new Proof("options", "options-base");  // NOLINT: closed by the office itself
    return *made;
}

Proof& release_proof() {
    static Proof* made = new Proof("release", "release-base");  // NOLINT: closed by the office itself
    return *made;
}

std::string listed(const Keys& keys) {
    std::string text;
    for (const std::string& key : keys) text += key + " ";
    return text;
}

}  // namespace

namespace {

void prove_each_check(Proof& job) {
    CHECK(listed(job.failing()).empty());
    for (const sheets::Sheet& sheet : job.texts())
        for (const sheets::Row& row : sheet.rows) {
            if (!row.is<sheets::rows::Check>() && sheets::verdict_column(row) == nullptr) continue;
            for (const bool fails : {true, false}) {
                const std::string name = row.key + (fails ? "-fails" : "-passes");
                INFO("the job " << name);
                REQUIRE(fs::exists(jobs_folder / (name + ".txt")));
                const Keys wanted = job_named(name).failing;
                CHECK(wanted.contains(row.key) == fails);
                job.type(name);
                CHECK(listed(job.failing()) == listed(wanted));
                const bool counts = sheets::verdict_column(row) != nullptr ||
                                    sheets::shown(job.document().named(row.key)) != "not counted";
                CHECK(counts);
                job.filler().undo();
            }
        }
    CHECK(listed(job.failing()).empty());
}

}  // namespace

TEST_CASE("each check fails in a job of its own, and passes in the one beside it", "[proof]") {
    prove_each_check(proof());
}

TEST_CASE("so does each check of the workbook of reuse", "[proof]") {
    prove_each_check(reuse_proof());
}

TEST_CASE("so does that of the workbook of options", "[proof]") {
    prove_each_check(options_proof());
}

TEST_CASE("so does each check of the workbook of release", "[proof]") {
    prove_each_check(release_proof());
}

TEST_CASE("there is no job of a check that is no more", "[proof]") {
    Keys keys = {"base", "soaking", "lined", "tested", "reuse-base", "options-base", "release-base"};
    for (const char* workbook : {"whole-job", "reuse", "options", "release"})
        for (const sheets::Sheet& sheet : sheets_of(workbook))
            for (const sheets::Row& row : sheet.rows)
                if (row.is<sheets::rows::Check>() || sheets::verdict_column(row) != nullptr)
                    for (const char* end : {"-fails", "-passes"}) keys.insert(row.key + end);
    for (const auto& file : fs::directory_iterator(jobs_folder))
        CHECK(keys.contains(file.path().stem().string()));
}

namespace {

/// \return how many inputs there are.
int clear_each_input(Proof& job) {
    int inputs = 0;
    for (const sheets::Sheet& sheet : job.texts()) {
        const auto state = [&] { return sheets::shown(job.document().cell(sheet.name, "A3")); };
        const auto note_beside = [&](const std::string& key) {
            const css::uno::Reference<css::sheet::XCellAddressable> cell(job.document().named(key),
                                                                         css::uno::UNO_QUERY_THROW);
            return sheets::shown(job.document()
                                     .sheet(sheet.name)
                                     ->getCellByPosition(sheets::note_column, cell->getCellAddress().Row));
        };
        for (const sheets::Row& row : sheet.rows) {
            const bool input = row.is<sheets::rows::Input>() || row.is<sheets::rows::Choice>() ||
                               (row.is<sheets::rows::Text>() && !row.optional);
            if (!input) continue;
            INFO(row.key);
            ++inputs;
            if (sheet.name != "Job") CHECK_THAT(state(), !Catch::Contains("to give"));
            job.filler().clear(row.key);
            CHECK_THAT(state(), Catch::Contains("to give: 1"));
            if (!row.note.empty()) CHECK(note_beside(row.key) == "to give");
            if (row.is<sheets::rows::Input>() && !row.usual->or_zero) {
                job.document().named(row.key)->setValue(0);
                CHECK_THAT(state(), Catch::Contains("to give: 1"));
            }
            job.filler().undo();
        }
    }
    return inputs;
}

}  // namespace

TEST_CASE("each required input that is blank is asked for on its own sheet", "[proof]") {
    CHECK(clear_each_input(proof()) > 100);
    CHECK(clear_each_input(reuse_proof()) > 10);
    CHECK(clear_each_input(release_proof()) > 20);
}

TEST_CASE("a row of a list that is filled in by half is asked for", "[proof]") {
    Proof& job = proof();
    const auto state = [&] { return sheets::shown(job.document().cell("Flow", "A3")); };
    const auto coefficient = job.document().named("surface_list_c");
    const double before = coefficient->getValue();
    coefficient->setFormula("");
    CHECK_THAT(state(), Catch::Contains("to give: 1"));
    CHECK(job.document().named("storage_required")->getError() != 0);  // never less with nothing said
    CHECK(job.document().named("storage_enough")->getError() != 0);
    const auto area = job.document().named("surface_list_area");
    const double all = area->getValue();
    area->setFormula("");
    CHECK_THAT(state(), !Catch::Contains("to give"));  // the row is passed over
    CHECK(job.document().named("storage_required")->getError() == 0);
    area->setValue(all);
    coefficient->setValue(before);
    const auto pavement = job.document().named("site_layer_height", 0, 8);  // of the list of layers
    const double thickness = pavement->getValue();
    pavement->setFormula("");
    CHECK(job.document().named("cover_deep")->getError() != 0);
    pavement->setValue(thickness);
    CHECK(job.document().named("cover_deep")->getValue() == 1);
}

TEST_CASE("a new workbook is not ready for checking, a finished one is", "[proof]") {
    const sheets::Document fresh = the_office().open(fs::path(TEMPLATES_FOLDER) / "whole-job.ots");
    fresh.recalculate();
    const std::string state = sheets::shown(fresh.cell("Job", "A3"));
    CHECK_THAT(state, Catch::StartsWith("Not ready for checking - "));
    CHECK_THAT(state, Catch::Contains("to give: "));
    CHECK_THAT(state, Catch::Contains("assumed: "));
    CHECK(sheets::shown(proof().document().cell("Job", "A3")) == "Ready for checking: no check fails");
    CHECK(sheets::shown(reuse_proof().document().cell("Job", "A3")) == "Ready for checking: no check fails");
    CHECK(sheets::shown(release_proof().document().cell("Job", "A3")) ==
          "Ready for checking: no check fails");
}

}  // namespace undercroft::tests
