#include "tests/office/desk.hpp"

#include <com/sun/star/sheet/XArrayFormulaRange.hpp>

#include <unistd.h>

#include <memory>

namespace undercroft::tests {

namespace {
std::unique_ptr<sheets::Office> office;  // NOLINT: one for the whole run, ended below

/// Ends the office when all tests are done, before the program's own end.
struct Closer : Catch::TestEventListenerBase {
    using TestEventListenerBase::TestEventListenerBase;
    void testRunEnded(const Catch::TestRunStats&) override { office.reset(); }
};
CATCH_REGISTER_LISTENER(Closer)
}  // namespace

const sheets::Office& the_office() {
    if (!office) office = std::make_unique<sheets::Office>(EXTENSIONS_FOLDER);
    return *office;
}

std::filesystem::path scratch(const std::string& name) {
    const auto folder =
        std::filesystem::temp_directory_path() / ("undercroft-tests-" + std::to_string(getpid()));
    std::filesystem::create_directories(folder);
    return folder / name;
}

Desk& Desk::put_array(const std::string& range, const std::string& formula) {
    const css::uno::Reference<css::sheet::XArrayFormulaRange> cells(
        document_.sheet(sheet_)->getCellRangeByName(sheets::to_ustring(range)), css::uno::UNO_QUERY_THROW);
    cells->setArrayFormula(sheets::to_ustring(formula));
    return *this;
}

}  // namespace undercroft::tests
