// A workbook saved when this file format began opens with the same values for ever.
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/table/CellContentType.hpp>

#include <cstdlib>
#include <fstream>
#include <sstream>

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

TEST_CASE("a workbook of the first release opens with the same values") {
    const std::string folder = PROJECT_FOLDER "/tests/data/first-release/";
    const sheets::Document document = the_office().open_copy(folder + "whole-job.ods");
    document.recalculate();
    const std::string now = computed_cells(document);
    if (const char* output = std::getenv("UNDERCROFT_FIRST_RELEASE")) {  // once, when the release was made
        std::ofstream(output) << now;
        return;
    }
    std::istringstream expected(file_text("tests/data/first-release/whole-job.txt"));
    std::istringstream found(now);
    std::size_t lines = 0;
    for (std::string was, is; std::getline(expected, was); ++lines) {
        REQUIRE(std::getline(found, is));
        CHECK(is == was);
    }
    CHECK(lines > 150);
}

}  // namespace undercroft::tests
