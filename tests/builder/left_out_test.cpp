// Sheets that a job does not need, left out when its workbook is made: nothing refers to them.
#include <boost/algorithm/string/join.hpp>
#include <filesystem>
#include <set>

#include "sheets/builder/files.hpp"
#include "tests/builder/made.hpp"

namespace undercroft::tests {

namespace {

using Names = std::set<std::string>;

/// The whole job without these, or what is said where it cannot be made.
std::variant<WorkbookGrid, std::string> whole_job_without(const Names& out, System system) {
    static const std::filesystem::path folder = std::filesystem::path(PROJECT_FOLDER) / "sheets" / "text";
    static const std::vector<sheets::Sheet> all = sheets::read_sheets(folder);
    for (sheets::WorkbookText workbook : sheets::read_workbooks_of(folder)) {
        if (workbook.name != "whole-job") continue;
        std::erase_if(workbook.sheets, [&](const std::string& sheet) { return out.contains(sheet); });
        try {
            return sheets::compose(workbook, all, system);
        } catch (const std::runtime_error& error) {
            return std::string(error.what());
        }
    }
    throw std::logic_error("there is no whole job");
}

/// Everything in a workbook that could name a sheet.
std::vector<std::string> texts_of(const WorkbookGrid& workbook) {
    std::vector<std::string> texts;
    for (const sheets::NamedRange& name : workbook.names) texts.push_back(name.address);
    for (const sheets::Validation& validation : workbook.validations)
        texts.insert(texts.end(), {validation.least, validation.most, validation.base});
    for (const SheetGrid& sheet : workbook.sheets) {
        for (const auto& [at, cell] : sheet.cells)
            if (cell.type == Type::formula) texts.push_back(cell.text);
        for (const auto& [at, conditions] : sheet.conditions)
            for (const sheets::Condition& condition : conditions) texts.push_back(condition.when);
        for (const sheets::Chart& chart : sheet.charts)
            for (const sheets::Series& series : chart.series)
                texts.insert(texts.end(), {series.x, series.y, series.label});
    }
    return texts;
}

}  // namespace

TEST_CASE("sheets that a job does not need are left out, and nothing refers to them") {
    const std::vector<Names> left_out = {{"Sequence"},
                                         {"Lifts"},
                                         {"Points"},
                                         {"Drawing"},
                                         {"Bill", "Sequence"},
                                         {"Bill", "Sequence", "Record"},
                                         {"Bill", "Sequence", "Lifts", "Points", "Record", "Drawing"}};
    for (const Names& out : left_out)
        for (const System system : {System::si, System::us}) {
            CAPTURE(boost::algorithm::join(out, ", "));
            const auto made = whole_job_without(out, system);
            if (const auto* mistake = std::get_if<std::string>(&made)) FAIL(*mistake);
            const auto& workbook = std::get<WorkbookGrid>(made);
            CHECK(workbook.sheets.size() + out.size() ==
                  std::get<WorkbookGrid>(whole_job_without({}, system)).sheets.size());
            for (const std::string& text : texts_of(workbook))
                for (const std::string& name : out) {
                    INFO(text);
                    REQUIRE(text.find("$" + name + ".") == std::string::npos);
                    REQUIRE(text.find("[." + name + ".") == std::string::npos);
                    REQUIRE(!text.starts_with(name + "."));
                }
        }
}

TEST_CASE("a sheet that others need is not left out without a sentence") {
    for (const char* sheet : {"Rain", "Ground", "Record", "Takeoff", "Routing", "Planes"}) {
        CAPTURE(sheet);
        const auto made = whole_job_without({sheet}, System::si);
        REQUIRE(std::holds_alternative<std::string>(made));
        CHECK_THAT(std::get<std::string>(made), Catch::Contains("is no key of this workbook"));
    }
}

}  // namespace undercroft::tests
