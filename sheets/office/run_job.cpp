// Fills a job's numbers into templates in a headless Calc, as a person would, and says what came out.
#include <com/sun/star/sheet/XCellAddressable.hpp>
#include <com/sun/star/table/CellContentType.hpp>

#include <algorithm>
#include <cstdio>
#include <iostream>
#include <map>
#include <set>

#include "sheets/builder/files.hpp"
#include "sheets/builder/job_text.hpp"
#include "sheets/builder/job_verdicts.hpp"
#include "sheets/builder/layout.hpp"
#include "sheets/office/errors.hpp"
#include "sheets/office/job_filler.hpp"
#include "sheets/office/outputs.hpp"
#include "sheets/office/tool.hpp"

namespace undercroft::sheets {

namespace {

using css::uno::Reference;

/// The name of a workbook's text, which is the same for both systems of units.
std::string text_of(const std::string& workbook) {
    constexpr std::string_view us_ending = "-us";
    const bool us = workbook.ends_with(us_ending);
    return workbook.substr(0, workbook.size() - (us ? us_ending.size() : 0));
}

/// A quantity that one workbook computed.
struct Computed {
    double number = 0;
    std::string unit;
    std::string description;
};

class Runner {
public:
    Runner(const JobText& job, const std::filesystem::path& texts) : job_(job) {
        for (WorkbookText& workbook : read_workbooks_of(texts)) {
            std::string name = workbook.name;
            workbooks_.emplace(std::move(name), std::move(workbook));
        }
        for (Sheet& sheet : read_sheets(texts)) {
            std::string name = sheet.name;
            sheets_.emplace(std::move(name), std::move(sheet));
        }
    }

    /// \return the number of cells with an error.
    std::size_t run(const Office& office, const std::string& name, const std::filesystem::path& templates,
                    const std::filesystem::path& output) {
        std::cout << "\n" << name << ": filling in and computing ..." << std::endl;
        const Keeper::Watch watch(office.keeper());
        Outputs outputs(office);
        const Document document = office.open(templates / (name + ".ots"));
        fill(document, name);
        document.recalculate();
        collect(document, name);
        document.store(outputs.beside(output / (name + ".ods")));
        document.store(outputs.beside(output / (name + ".pdf")));
        outputs.put();
        print_checks(document, name);
        print_lists(document, name);
        print_state(document);
        const std::vector<CellError> errors = errors_of(document);
        print_errors(errors, std::cout, "  ");
        std::cout << "  written: " << (output / (name + ".ods")).string() << " and .pdf\n";
        return errors.size();
    }

    void print_main_results() const {
        std::cout << "\nMain results\n";
        for (const std::string& key : job_.main_results) {
            const auto result = computed_.find(key);
            if (result == computed_.end()) continue;
            std::printf("  %-48s %12.6g %s\n", result->second.description.substr(0, 48).c_str(),
                        result->second.number, result->second.unit.c_str());
        }
        std::fflush(stdout);
    }

    /// Keys of the job that no workbook had: a misspelt key must not pass in silence.
    [[nodiscard]] std::vector<std::string> unused() const {
        std::vector<std::string> keys;
        for (const auto& [key, value] : job_.values)
            if (!used_.contains(key)) keys.push_back(key);
        for (const auto& [key, value] : job_.rows)
            if (!used_.contains(key)) keys.push_back(key);
        for (const std::string& key : job_.confirmed)
            if (!used_.contains(key)) keys.push_back(key);
        return keys;
    }

    [[nodiscard]] const JobVerdicts& verdicts() const { return verdicts_; }
    /// Inputs that the job left to give, impossible or assumed.
    [[nodiscard]] const std::vector<std::string>& complaints() const { return complaints_; }

private:
    template <class Visit>
    void each_row(const std::string& workbook, const Visit& visit) const {
        for (const std::string& name : workbooks_.at(text_of(workbook)).sheets)
            for (const Row& row : sheets_.at(name).rows) visit(name, row);
    }

    static bool is_formula(const Reference<css::table::XCell>& cell) {
        return cell->getType() == css::table::CellContentType_FORMULA;
    }

    [[nodiscard]] std::vector<Sheet> sheets_of(const std::string& workbook) const {
        std::vector<Sheet> sheets;
        for (const std::string& name : workbooks_.at(text_of(workbook)).sheets)
            sheets.push_back(sheets_.at(name));
        return sheets;
    }

    void fill(const Document& document, const std::string& workbook) {
        const std::vector<Sheet> sheets = sheets_of(workbook);
        JobFiller filler(document, sheets);
        filler.fill(job_);
        used_.insert(filler.used().begin(), filler.used().end());
        // What an earlier workbook computed and this one is given.
        each_row(workbook, [&](const std::string&, const Row& row) {
            const auto known = computed_.find(row.key);
            if (!row.is<rows::Given>() || job_.values.contains(row.key) || known == computed_.end()) return;
            if (!document.has_name(row.key)) return;  // a row for workbooks with another sheet
            if (is_formula(document.named(row.key))) return;
            document.named(row.key)->setValue(known->second.number);
            document.named(row.key, 1)->setFormula(to_ustring(known->second.unit));
            filler.confirm(row.key);
        });
    }

    void collect(const Document& document, const std::string& workbook) {
        each_row(workbook, [&](const std::string&, const Row& row) {
            if (!row.is_pair() || !document.has_name(row.key) || document.named(row.key)->getError() != 0)
                return;
            computed_[row.key] = {document.named(row.key)->getValue(), shown(document.named(row.key, 1)),
                                  row.description};
        });
    }

    /// Of a list of which each item is checked: FAIL where one fails, open where one is.
    static std::string verdict_of_items(const Document& document, const Row& row, const Column& column) {
        const std::string key = row.key + "_" + column.name;
        std::set<std::string> verdicts;
        const int items = static_cast<int>(row.as<rows::List>()->items.size());
        for (int item = 0; item < items; ++item) verdicts.insert(shown(document.named(key, 0, item)));
        for (const char* worst : {"FAIL", "open"})
            if (verdicts.contains(worst)) return worst;
        return "PASS";
    }

    /// Its numbers, as they stand beside it, and whether the job is there to show it.
    [[nodiscard]] std::string why_it_fails(const Document& document, const std::string& sheet,
                                           const Row& row) const {
        const std::string meant = job_.failing.contains(row.key) ? " (as meant)" : "";
        if (!row.is<rows::Check>()) return meant;
        constexpr int to_the_note = 2;
        const Reference<css::sheet::XCellAddressable> verdict(document.named(row.key),
                                                              css::uno::UNO_QUERY_THROW);
        const css::table::CellAddress at = verdict->getCellAddress();
        const std::string note =
            shown(document.sheet(sheet)->getCellByPosition(at.Column + to_the_note, at.Row));
        return (note.empty() ? "" : ": " + note) + meant;
    }

    void print_checks(const Document& document, const std::string& workbook) {
        each_row(workbook, [&](const std::string& sheet, const Row& row) {
            if (!document.has_name(row.key)) return;
            const Column* column = verdict_column(row);
            if (!row.is<rows::Check>() && column == nullptr) return;
            const std::string verdict =
                column == nullptr ? shown(document.named(row.key)) : verdict_of_items(document, row, *column);
            std::printf("  %-11s %-11s %s%s\n", verdict.c_str(), sheet.c_str(), row.description.c_str(),
                        verdict == "FAIL" ? why_it_fails(document, sheet, row).c_str() : "");
            verdicts_.add(workbook, row.key, verdict);
        });
        std::fflush(stdout);
    }

    /// The lists among the job's main results: their named columns, items that say nothing left out.
    void print_lists(const Document& document, const std::string& workbook) const {
        constexpr int width = 16;
        each_row(workbook, [&](const std::string&, const Row& row) {
            const auto* list = row.as<rows::List>();
            if (list == nullptr || !document.has_name(row.key)) return;
            if (std::count(job_.main_results.begin(), job_.main_results.end(), row.key) == 0) return;
            std::printf("\n  %s\n  %-*s", row.description.c_str(), width,
                        list->columns.front().title.c_str());
            for (const Column& column : list->columns)
                if (!column.name.empty())
                    std::printf("%*s", width, column.title.substr(0, width - 1).c_str());
            std::printf("\n");
            for (std::size_t i = 0; i < list->items.size(); ++i) {
                std::string line;
                bool says = false;
                for (const Column& column : list->columns) {
                    if (column.name.empty()) continue;
                    const std::string key = row.key + "_" + column.name;
                    const int item = static_cast<int>(i);
                    std::string text = shown(document.named(key, 0, item));
                    says = says || (!text.empty() && text != "not counted");
                    if (!text.empty() && !column.unit.si.empty())
                        text += " " + shown(document.named(key, 1, item));
                    line += std::string(text.size() < width ? width - text.size() : 1, ' ') + text;
                }
                if (says)
                    std::printf("  %-*s%s\n", width, list->items[i].cells.front().si.c_str(), line.c_str());
            }
        });
        std::fflush(stdout);
    }

    /// What the head of the first sheet says of the whole workbook: the job must have given and confirmed
    /// every input.
    void print_state(const Document& document) {
        const std::string state = shown(document.cell(document.sheet_names().front(), "A3"));
        std::cout << "  " << state << std::endl;
        for (const char* word : {"to give", "impossible", "assumed"})
            if (state.find(std::string(word) + ": ") != std::string::npos)
                complaints_.push_back("the workbook says: " + state + where_text(document));
    }
    /// The rows that the summary names.
    static std::string where_text(const Document& document) {
        std::string text;
        const auto sheet = document.sheet(document.sheet_names().front());
        bool below = false;
        for (sal_Int32 row = first_row; row < most_rows_of_summary; ++row) {
            const std::string name = shown(sheet->getCellByPosition(description_column, row));
            const std::string where = shown(sheet->getCellByPosition(symbol_column, row));
            below = below || name == "Where";
            if (below && where.find("Rows, by") != 0 && !where.empty())
                text += "\n    " + name + ": " + where;
            if (below && name.empty()) break;
        }
        return text;
    }
    static constexpr sal_Int32 most_rows_of_summary = 60;

    const JobText& job_;
    std::map<std::string, WorkbookText> workbooks_;
    std::map<std::string, Sheet> sheets_;
    std::map<std::string, Computed> computed_;
    JobVerdicts verdicts_;
    std::vector<std::string> complaints_;
    std::set<std::string> used_;
};

constexpr int not_run = 2;

struct Wanted {
    std::filesystem::path extensions;
    Limits limits;
    std::filesystem::path texts;
    std::filesystem::path job;
    std::filesystem::path templates;
    std::filesystem::path output;
    std::vector<std::string> workbooks;
};

void check_workbooks(const Wanted& wanted) {
    std::set<std::string> known;
    for (const WorkbookText& workbook : read_workbooks_of(wanted.texts)) known.insert(workbook.name);
    for (const std::string& workbook : wanted.workbooks)
        if (!known.contains(text_of(workbook)))
            throw WrongCommandLine("WORKBOOK", "there is no workbook " + workbook);
}

int run(const Wanted& wanted) {
    const JobText job = read_job(read_file(wanted.job), [&](const std::string& name) {
        return read_file(wanted.job.parent_path() / (name + ".txt"));
    });
    Runner runner(job, wanted.texts);
    const std::filesystem::path output = wanted.output / wanted.job.stem();
    std::filesystem::create_directories(output);
    std::cout << "Starting a headless Calc with a profile of its own ..." << std::endl;
    const Office office(wanted.extensions, wanted.limits);
    std::size_t errors = 0;
    for (const std::string& workbook : wanted.workbooks) {
        const int failed = done_in_office(office, workbook, not_run, [&] {
            errors += runner.run(office, workbook, wanted.templates, output);
            return 0;
        });
        if (failed != 0) return failed;
    }
    runner.print_main_results();
    std::vector<std::string> complaints = runner.verdicts().complaints(job.failing);
    complaints.insert(complaints.end(), runner.complaints().begin(), runner.complaints().end());
    for (const std::string& key : runner.unused())
        complaints.push_back("the job's key " + key + " is in none of these workbooks");
    for (const std::string& complaint : complaints) std::cout << "  " << complaint << "\n";
    return complaints.empty() && errors == 0 ? 0 : 1;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    using namespace undercroft;
    using namespace undercroft::sheets;
    CommandLine line(
        "Fills a job's numbers into templates in a headless Calc, as a person would, and says what came out. "
        "What one workbook computes and a later one is given is handed on. Ends with 1 when a formula cell "
        "shows an error, other checks fail than the job says must fail, or an input is not given or not "
        "confirmed; with 2 when it could not be run.",
        "run_job");
    Wanted wanted;
    add_office(line, wanted.extensions, wanted.limits);
    line.add_required("TEXT_FOLDER", wanted.texts, "the sheets as text", Existing::folder);
    line.add_required("JOB", wanted.job, "the job's numbers, as sheets/demo/car-park.txt has them",
                      Existing::file);
    line.add_required("TEMPLATE_FOLDER", wanted.templates, "the templates, built from that text",
                      Existing::folder);
    line.add_required("OUTPUT_FOLDER", wanted.output, "gets a folder of the job's name, with .ods and .pdf");
    line.add_required("WORKBOOK", wanted.workbooks,
                      "such as storage or whole-job-us; several, in that order");
    line.check_together([&wanted] { check_workbooks(wanted); });
    return run_tool(
        line, argc, argv, [&] { return run(wanted); }, not_run);
}
