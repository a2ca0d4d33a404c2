// Fills a job's numbers into templates in a headless Calc, as a person would, and says what came out.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/table/CellContentType.hpp>

#include <cstdio>
#include <iostream>
#include <map>
#include <optional>
#include <set>

#include "sheets/builder/files.hpp"
#include "sheets/builder/job_text.hpp"
#include "sheets/builder/job_verdicts.hpp"
#include "sheets/builder/numbers.hpp"
#include "sheets/builder/typed_range.hpp"
#include "sheets/office/errors.hpp"
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
        return keys;
    }

    [[nodiscard]] const JobVerdicts& verdicts() const { return verdicts_; }

private:
    template <class Visit>
    void each_row(const std::string& workbook, const Visit& visit) const {
        for (const std::string& name : workbooks_.at(text_of(workbook)).sheets)
            for (const Row& row : sheets_.at(name).rows) visit(name, row);
    }

    static bool is_formula(const Reference<css::table::XCell>& cell) {
        return cell->getType() == css::table::CellContentType_FORMULA;
    }

    void fill(const Document& document, const std::string& workbook) {
        for (const auto& [key, value] : job_.values) {
            if (!document.has_name(key)) continue;
            used_.insert(key);
            if (!is_formula(document.named(key))) fill_value(document, key, value);
        }
        for (const auto& [key, rows] : job_.rows) {
            if (!document.has_name(key)) continue;
            used_.insert(key);
            fill_rows(document, workbook, key, rows);
        }
        // What an earlier workbook computed and this one is given.
        each_row(workbook, [&](const std::string&, const Row& row) {
            const auto known = computed_.find(row.key);
            if (!row.is<rows::Given>() || job_.values.contains(row.key) || known == computed_.end()) return;
            if (!document.has_name(row.key)) return;  // a row for workbooks with another sheet
            if (is_formula(document.named(row.key))) return;
            document.named(row.key)->setValue(known->second.number);
            document.named(row.key, 1)->setFormula(to_ustring(known->second.unit));
        });
    }

    static void fill_value(const Document& document, const std::string& key, const std::string& value) {
        const Reference<css::table::XCell> cell = document.named(key);
        const std::optional<NumberAndUnit> quantity = leading_number(value);
        if (cell->getType() == css::table::CellContentType_VALUE && quantity) {
            cell->setValue(quantity->number);
            document.named(key, 1)->setFormula(to_ustring(quantity->unit));
        } else {
            cell->setFormula(to_ustring("'" + value));  // as text, whatever it looks like
        }
    }

    [[nodiscard]] TypedRange range_of(const std::string& workbook, const std::string& key) const {
        TypedRange found;
        each_row(workbook, [&](const std::string&, const Row& row) {
            if (auto range = typed_range(row, key)) found = std::move(*range);
        });
        return found;
    }

    /// Types rows into a grid, a list or a column of one, from the first row down.
    void fill_rows(const Document& document, const std::string& workbook, const std::string& key,
                   const std::vector<std::vector<std::string>>& rows) {
        const Reference<css::beans::XPropertySet> properties(document.model(), css::uno::UNO_QUERY_THROW);
        const Reference<css::container::XNameAccess> names(properties->getPropertyValue("NamedRanges"),
                                                           css::uno::UNO_QUERY_THROW);
        const Reference<css::sheet::XCellRangeReferrer> referrer(names->getByName(to_ustring(key)),
                                                                 css::uno::UNO_QUERY_THROW);
        const Reference<css::table::XCellRange> range = referrer->getReferredCells();
        const TypedRange typed = range_of(workbook, key);
        for (std::size_t r = 0; r < rows.size(); ++r) {
            if (rows[r].size() > typed.fields.size())
                throw std::runtime_error("the job's " + key + " has " + std::to_string(rows[r].size()) +
                                         " fields in a row; there are " +
                                         std::to_string(typed.fields.size()));
            for (std::size_t i = 0; i < rows[r].size(); ++i)
                fill_cell(range, typed.first_row + static_cast<sal_Int32>(r), typed.fields[i], rows[r][i]);
        }
    }

    /// "-" makes a cell blank and leaves the unit beside it; "=" leaves both as they are.
    static void fill_cell(const Reference<css::table::XCellRange>& range, sal_Int32 row, TypedField field,
                          const std::string& text) {
        if (text == "=") return;
        const Reference<css::table::XCell> cell = range->getCellByPosition(field.column, row);
        const std::optional<NumberAndUnit> quantity = leading_number(text);
        if (text == "-") {
            cell->setFormula({});
        } else if (quantity && (field.is_pair || quantity->unit.empty())) {
            cell->setValue(quantity->number);
            if (!quantity->unit.empty())
                range->getCellByPosition(field.column + 1, row)->setFormula(to_ustring(quantity->unit));
        } else {
            cell->setFormula(to_ustring("'" + text));  // as text, whatever it looks like
        }
    }

    void collect(const Document& document, const std::string& workbook) {
        each_row(workbook, [&](const std::string&, const Row& row) {
            if (!row.is_pair() || !document.has_name(row.key) || document.named(row.key)->getError() != 0)
                return;
            computed_[row.key] = {document.named(row.key)->getValue(), shown(document.named(row.key, 1)),
                                  row.description};
        });
    }

    void print_checks(const Document& document, const std::string& workbook) {
        each_row(workbook, [&](const std::string& sheet, const Row& row) {
            if (!row.is<rows::Check>() || !document.has_name(row.key)) return;
            const std::string verdict = shown(document.named(row.key));
            std::printf("  %-11s %-11s %s\n", verdict.c_str(), sheet.c_str(), row.description.c_str());
            verdicts_.add(workbook, row.key, verdict);
        });
        std::fflush(stdout);
    }

    const JobText& job_;
    std::map<std::string, WorkbookText> workbooks_;
    std::map<std::string, Sheet> sheets_;
    std::map<std::string, Computed> computed_;
    JobVerdicts verdicts_;
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
            throw CLI::ValidationError("WORKBOOK", "there is no workbook " + workbook);
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
    for (const std::string& key : runner.unused())
        complaints.push_back("the job's key " + key + " is in none of these workbooks");
    for (const std::string& complaint : complaints) std::cout << "  " << complaint << "\n";
    return complaints.empty() && errors == 0 ? 0 : 1;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    using namespace undercroft::sheets;
    CLI::App app(
        "Fills a job's numbers into templates in a headless Calc, as a person would, and says what came out. "
        "What one workbook computes and a later one is given is handed on. Ends with 1 when a formula cell "
        "shows an error, or other checks fail than the job says must fail; with 2 when it could not be run.",
        "run_job");
    Wanted wanted;
    add_office(app, wanted.extensions, wanted.limits);
    app.add_option("TEXT_FOLDER", wanted.texts, "the sheets as text")
        ->required()
        ->check(CLI::ExistingDirectory);
    app.add_option("JOB", wanted.job, "the job's numbers, as sheets/demo/car-park.txt has them")
        ->required()
        ->check(CLI::ExistingFile);
    app.add_option("TEMPLATE_FOLDER", wanted.templates, "the templates, built from that text")
        ->required()
        ->check(CLI::ExistingDirectory);
    app.add_option("OUTPUT_FOLDER", wanted.output, "gets a folder of the job's name, with .ods and .pdf")
        ->required();
    app.add_option("WORKBOOK", wanted.workbooks, "such as storage or whole-job-us; several, in that order")
        ->required();
    app.callback([&wanted] { check_workbooks(wanted); });
    return run_tool(
        app, argc, argv, [&] { return run(wanted); }, not_run);
}
