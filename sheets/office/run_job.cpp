// Fills a job's numbers into templates in a headless Calc, as a person would, and says what came out:
//   run_job EXTENSIONS TEXT_FOLDER JOB TEMPLATE_FOLDER OUTPUT_FOLDER WORKBOOK [WORKBOOK ...]
// Each workbook is written as .ods and .pdf. What one workbook computes and a later one is given is handed
// on. Exit status 1 when a formula cell holds an error.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/table/CellContentType.hpp>

#include <algorithm>
#include <charconv>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <map>
#include <set>
#include <sstream>

#include "sheets/builder/job_text.hpp"
#include "sheets/builder/lines.hpp"
#include "sheets/builder/sheet_text.hpp"
#include "sheets/office/errors.hpp"
#include "sheets/office/office.hpp"

namespace undercroft::sheets {

namespace {

using css::uno::Reference;

std::string read(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) throw std::runtime_error("cannot read " + path.string());
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

/// A number at the start of a text, and what stands behind it.
bool split_number(const std::string& text, double& number, std::string& unit) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{}) return false;
    unit = trimmed(std::string(end, static_cast<std::size_t>(text.data() + text.size() - end)));
    return true;
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
        for (const WorkbookText& workbook : read_workbooks(read(texts / "workbooks.txt")))
            workbooks_[workbook.name] = workbook;
        for (const auto& entry : std::filesystem::directory_iterator(texts)) {
            if (entry.path().extension() != ".txt" || entry.path().filename() == "workbooks.txt") continue;
            Sheet sheet = read_sheet(read(entry.path()));
            const std::string name = sheet.name;
            sheets_.emplace(name, std::move(sheet));
        }
    }

    /// \return the number of cells with an error.
    std::size_t run(const Office& office, const std::string& name, const std::filesystem::path& templates,
                    const std::filesystem::path& output) {
        std::cout << "\n" << name << ": filling in and computing ..." << std::endl;
        const Document document = office.open(templates / (name + ".ots"));
        fill(document, name);
        document.recalculate();
        collect(document, name);
        document.store(output / (name + ".ods"));
        document.store(output / (name + ".pdf"));
        print_checks(document, name);
        const std::vector<CellError> errors = errors_of(document);
        for (const CellError& error : errors)
            std::cout << "  error in " << error.cell << ": " << error.shows << "  " << error.reason << "\n";
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

private:
    template <class Visit>
    void each_row(const std::string& workbook, const Visit& visit) const {
        for (const std::string& name : workbooks_.at(workbook).sheets)
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
            fill_rows(document, key, rows);
        }
        // What an earlier workbook computed and this one is given.
        each_row(workbook, [&](const std::string&, const Row& row) {
            const auto known = computed_.find(row.key);
            if (row.kind != Row::Kind::given || job_.values.contains(row.key) || known == computed_.end())
                return;
            if (is_formula(document.named(row.key))) return;
            document.named(row.key)->setValue(known->second.number);
            document.named(row.key, 1)->setFormula(to_ustring(known->second.unit));
        });
    }

    static void fill_value(const Document& document, const std::string& key, const std::string& value) {
        double number = 0;
        std::string unit;
        const Reference<css::table::XCell> cell = document.named(key);
        if (cell->getType() == css::table::CellContentType_VALUE && split_number(value, number, unit)) {
            cell->setValue(number);
            document.named(key, 1)->setFormula(to_ustring(unit));
        } else {
            cell->setFormula(to_ustring("'" + value));  // as text, whatever it looks like
        }
    }

    static void fill_rows(const Document& document, const std::string& key,
                          const std::vector<std::vector<std::string>>& rows) {
        const Reference<css::beans::XPropertySet> properties(document.model(), css::uno::UNO_QUERY_THROW);
        const Reference<css::container::XNameAccess> names(properties->getPropertyValue("NamedRanges"),
                                                           css::uno::UNO_QUERY_THROW);
        const Reference<css::sheet::XCellRangeReferrer> referrer(names->getByName(to_ustring(key)),
                                                                 css::uno::UNO_QUERY_THROW);
        const Reference<css::table::XCellRange> range = referrer->getReferredCells();
        // The first row of a grid holds its units and stays.
        const bool units_first =
            range->getCellByPosition(0, 0)->getType() == css::table::CellContentType_TEXT;
        for (std::size_t r = 0; r < rows.size(); ++r) {
            const auto at = static_cast<sal_Int32>(r + (units_first ? 1 : 0));
            sal_Int32 column = 0;
            for (const std::string& text : rows[r]) {
                double number = 0;
                std::string unit;
                if (split_number(text, number, unit)) {
                    range->getCellByPosition(column++, at)->setValue(number);
                    if (!unit.empty()) range->getCellByPosition(column++, at)->setFormula(to_ustring(unit));
                } else {
                    range->getCellByPosition(column++, at)->setFormula(to_ustring("'" + text));
                }
            }
        }
    }

    void collect(const Document& document, const std::string& workbook) {
        each_row(workbook, [&](const std::string&, const Row& row) {
            const bool pair =
                row.kind == Row::Kind::result || row.kind == Row::Kind::given || row.kind == Row::Kind::input;
            if (!pair || !document.has_name(row.key) || document.named(row.key)->getError() != 0) return;
            computed_[row.key] = {document.named(row.key)->getValue(), shown(document.named(row.key, 1)),
                                  row.description};
        });
    }

    void print_checks(const Document& document, const std::string& workbook) const {
        each_row(workbook, [&](const std::string& sheet, const Row& row) {
            if (row.kind != Row::Kind::check || !document.has_name(row.key)) return;
            const Reference<css::table::XCell> cell = document.named(row.key);
            const std::string verdict = cell->getError() != 0   ? shown(cell)
                                        : cell->getValue() == 1 ? "PASS"
                                                                : "FAIL";
            std::printf("  %-5s %-11s %s\n", verdict.c_str(), sheet.c_str(), row.description.c_str());
        });
        std::fflush(stdout);
    }

    const JobText& job_;
    std::map<std::string, WorkbookText> workbooks_;
    std::map<std::string, Sheet> sheets_;
    std::map<std::string, Computed> computed_;
    std::set<std::string> used_;
};

int run(int argc, char** argv) {
    if (argc < 7) {
        std::cerr << "usage: run_job EXTENSIONS TEXT_FOLDER JOB TEMPLATE_FOLDER OUTPUT_FOLDER WORKBOOK "
                     "[WORKBOOK ...]\n";
        return 2;
    }
    const JobText job = read_job(read(argv[3]));
    Runner runner(job, argv[2]);
    const std::filesystem::path output(argv[5]);
    std::filesystem::create_directories(output);
    std::cout << "Starting a headless Calc with a profile of its own ..." << std::endl;
    const Office office(argv[1]);
    std::size_t errors = 0;
    for (int i = 6; i < argc; ++i) errors += runner.run(office, argv[i], argv[4], output);
    runner.print_main_results();
    const std::vector<std::string> unused = runner.unused();
    for (const std::string& key : unused)
        std::cout << "  the job's key " << key << " is in none of these workbooks\n";
    return errors == 0 && unused.empty() ? 0 : 1;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) try {
    return undercroft::sheets::run(argc, argv);
} catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 1;
} catch (const com::sun::star::uno::Exception& error) {
    std::cerr << undercroft::sheets::to_utf8(error.Message) << "\n";
    return 1;
}
