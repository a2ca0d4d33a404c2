// Fills a job's numbers into templates in a headless Calc, as a person would, and says what came out:
//   run_job EXTENSIONS TEXT_FOLDER JOB TEMPLATE_FOLDER OUTPUT_FOLDER WORKBOOK [WORKBOOK ...]
// Each workbook is written as .ods and .pdf. What one workbook computes and a later one is given is handed
// on, under OUTPUT_FOLDER/JOB/. Exit status 1 when a formula cell holds an error, or other checks fail than
// the job says must fail.
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
#include "sheets/builder/layout.hpp"
#include "sheets/builder/lines.hpp"
#include "sheets/builder/sheet_text.hpp"
#include "sheets/office/errors.hpp"
#include "sheets/office/tool.hpp"

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

constexpr std::string_view us_ending = "-us";

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

    /// Whether the checks that fail are those that the job says, and no others; says which differ.
    [[nodiscard]] bool fails_as_it_must() const {
        bool good = true;
        const auto complain = [&good](const std::string& key, const char* why) {
            std::cout << "  the check " << key << why << "\n";
            good = false;
        };
        for (const auto& [key, verdict] : checks_)
            if (verdict == "FAIL" && !job_.failing.contains(key)) complain(key, " fails");
        for (const std::string& key : job_.failing)
            if (const auto check = checks_.find(key); check == checks_.end() || check->second != "FAIL")
                complain(key, " must fail in this job, and does not");
        return good;
    }

private:
    template <class Visit>
    void each_row(const std::string& workbook, const Visit& visit) const {
        // The text is the same for both systems of units.
        const bool us = workbook.ends_with(us_ending);
        const std::string text = workbook.substr(0, workbook.size() - (us ? us_ending.size() : 0));
        for (const std::string& name : workbooks_.at(text).sheets)
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
            if (row.kind != Row::Kind::given || job_.values.contains(row.key) || known == computed_.end())
                return;
            if (!document.has_name(row.key)) return;  // a row for workbooks with another sheet
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

    /// Where in a range each field of a typed row goes: the cell, and whether its unit stands beside it.
    struct FieldPlace {
        sal_Int32 column = 0;
        bool is_pair = false;
    };
    struct FieldPlaces {
        std::vector<FieldPlace> fields;
        sal_Int32 first_row = 0;  ///< 1 for a grid: its first row holds the units and stays
    };

    static void add_field(FieldPlaces& places, const Row& row, const ListColumn& column, sal_Int32 at) {
        if (column.formula.empty())
            places.fields.push_back({at, row.kind == Row::Kind::list && !column.unit.si.empty()});
    }

    [[nodiscard]] FieldPlaces places_of(const std::string& workbook, const std::string& key) const {
        FieldPlaces places;
        each_row(workbook, [&](const std::string&, const Row& row) {
            if (row.kind != Row::Kind::grid && row.kind != Row::Kind::list) return;
            const sal_Int32 units = row.kind == Row::Kind::grid ? 1 : 0;
            if (row.key == key) {
                places.first_row = units;
                sal_Int32 at = row.kind == Row::Kind::list ? -Layout::columns_of_words(row) : 0;
                for (const ListColumn& column : row.columns) {
                    if (at >= 0) add_field(places, row, column, at);
                    at += column.span;
                }
            }
            for (const ListColumn& column : row.columns)
                if (!column.name.empty() && row.key + "_" + column.name == key) {
                    places.first_row = units;
                    add_field(places, row, column, 0);
                }
        });
        return places;
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
        const FieldPlaces places = places_of(workbook, key);
        for (std::size_t r = 0; r < rows.size(); ++r) {
            if (rows[r].size() > places.fields.size())
                throw std::runtime_error("the job's " + key + " has " + std::to_string(rows[r].size()) +
                                         " fields in a row; there are " +
                                         std::to_string(places.fields.size()));
            for (std::size_t i = 0; i < rows[r].size(); ++i)
                fill_cell(range, places.first_row + static_cast<sal_Int32>(r), places.fields[i], rows[r][i]);
        }
    }

    /// "-" makes a cell blank and leaves the unit beside it; "=" leaves both as they are.
    static void fill_cell(const Reference<css::table::XCellRange>& range, sal_Int32 row, FieldPlace place,
                          const std::string& text) {
        if (text == "=") return;
        const Reference<css::table::XCell> cell = range->getCellByPosition(place.column, row);
        double number = 0;
        std::string unit;
        if (text == "-") {
            cell->setFormula({});
        } else if (split_number(text, number, unit) && (place.is_pair || unit.empty())) {
            cell->setValue(number);
            if (!unit.empty()) range->getCellByPosition(place.column + 1, row)->setFormula(to_ustring(unit));
        } else {
            cell->setFormula(to_ustring("'" + text));  // as text, whatever it looks like
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

    void print_checks(const Document& document, const std::string& workbook) {
        each_row(workbook, [&](const std::string& sheet, const Row& row) {
            if (row.kind != Row::Kind::check || !document.has_name(row.key)) return;
            const std::string verdict = shown(document.named(row.key));
            std::printf("  %-11s %-11s %s\n", verdict.c_str(), sheet.c_str(), row.description.c_str());
            checks_[row.key] = verdict;
        });
        std::fflush(stdout);
    }

    const JobText& job_;
    std::map<std::string, WorkbookText> workbooks_;
    std::map<std::string, Sheet> sheets_;
    std::map<std::string, Computed> computed_;
    std::map<std::string, std::string> checks_;
    std::set<std::string> used_;
};

int run(int argc, char** argv) {
    if (argc < 7) {
        std::cerr << "usage: run_job EXTENSIONS TEXT_FOLDER JOB TEMPLATE_FOLDER OUTPUT_FOLDER WORKBOOK "
                     "[WORKBOOK ...]\n";
        return 2;
    }
    const std::filesystem::path job_file(argv[3]);
    const JobText job = read_job(read(job_file), [&](const std::string& name) {
        return read(job_file.parent_path() / (name + ".txt"));
    });
    Runner runner(job, argv[2]);
    const std::filesystem::path output = std::filesystem::path(argv[5]) / job_file.stem();
    std::filesystem::create_directories(output);
    std::cout << "Starting a headless Calc with a profile of its own ..." << std::endl;
    const Office office(argv[1]);
    std::size_t errors = 0;
    for (int i = 6; i < argc; ++i) errors += runner.run(office, argv[i], argv[4], output);
    runner.print_main_results();
    const std::vector<std::string> unused = runner.unused();
    for (const std::string& key : unused)
        std::cout << "  the job's key " << key << " is in none of these workbooks\n";
    return runner.fails_as_it_must() && errors == 0 && unused.empty() ? 0 : 1;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    return undercroft::sheets::run_tool([&] { return undercroft::sheets::run(argc, argv); });
}
