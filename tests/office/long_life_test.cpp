// A workbook saved when this file format began has the same values for ever, once its nested results are
// written with their units: bare numbers are refused beside quantities since.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/table/CellContentType.hpp>

#include <cstdlib>
#include <fstream>
#include <sstream>

#include "sheets/office/result_units.hpp"
#include "tests/office/desk.hpp"
#include "tests/support/files.hpp"

namespace undercroft::tests {

namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

/// "name<tab>what its first cell shows" of every named cell that is computed.
std::string computed_cells(const sheets::Document& document) {
    const Reference<css::beans::XPropertySet> properties(document.model(), UNO_QUERY_THROW);
    const Reference<css::container::XNameAccess> names(properties->getPropertyValue("NamedRanges"),
                                                       UNO_QUERY_THROW);
    std::string text;
    for (const rtl::OUString& name : names->getElementNames()) {
        const Reference<css::sheet::XCellRangeReferrer> range(names->getByName(name), UNO_QUERY_THROW);
        const Reference<css::table::XCell> cell = range->getReferredCells()->getCellByPosition(0, 0);
        if (cell->getType() != css::table::CellContentType_FORMULA || name == "functions_version") continue;
        char number[40];
        std::snprintf(number, sizeof number, "%.9g", cell->getValue());
        const std::string shows = cell->getValue() == 0 ? sheets::shown(cell) : number;
        text += sheets::to_utf8(name) + "\t" + shows + "\n";
    }
    return text;
}

}  // namespace

namespace {

const std::string first_release = PROJECT_FOLDER "/tests/data/first-release/";

/// The cells that differ from what they showed when the file was saved.
std::vector<std::string> differing_cells(const sheets::Document& document) {
    std::istringstream expected(file_text("tests/data/first-release/whole-job.txt"));
    std::istringstream found(computed_cells(document));
    std::vector<std::string> differing;
    std::size_t lines = 0;
    for (std::string was, is; std::getline(expected, was); ++lines) {
        REQUIRE(std::getline(found, is));
        if (is != was) differing.push_back(was + " is " + is);
    }
    CHECK(lines > 150);
    return differing;
}

}  // namespace

TEST_CASE("a workbook of the first release shows why a bare number beside a quantity is refused") {
    const sheets::Document document = the_office().open_copy(first_release + "whole-job.ods");
    document.recalculate();
    CHECK(sheets::shown(document.named("row_space")) == "#VALUE!");
    for (const std::string& cell : differing_cells(document)) {   // they rest on such a cell
        if (cell.find("_open\t") != std::string::npos) continue;  // counts them
        INFO(cell);
        CHECK((cell.ends_with("#VALUE!") || cell.ends_with("Err:504") || cell.ends_with("#NUM!") ||
               cell.ends_with("#N/A")));
    }
}

TEST_CASE("a workbook of the first release, its results handed on with their units, has the same values") {
    const sheets::Document document = the_office().open_copy(first_release + "whole-job.ods");
    CHECK(sheets::write_result_units(document) > 10);
    CHECK(sheets::write_result_units(document) == 0);
    document.recalculate();
    if (const char* output = std::getenv("UNDERCROFT_FIRST_RELEASE")) {  // once, when the release was made
        std::ofstream(output) << computed_cells(document);
        return;
    }
    // Put right since: a step of the routing so long that it left the greatest depth 0.3 % too low.
    const std::string put_right = "tried_storm_depth\t0.583123931 is tried_storm_depth\t0.584938336";
    for (const std::string& cell : differing_cells(document))
        if (cell != put_right) FAIL_CHECK(cell);
}

}  // namespace undercroft::tests
