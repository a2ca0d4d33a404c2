#include "tests/office/desk.hpp"

#include <time.h>  // NOLINT(modernize-deprecated-headers): clock_getcpuclockid() is of POSIX
#include <unistd.h>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/configuration/theDefaultProvider.hpp>
#include <com/sun/star/container/XNameReplace.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <com/sun/star/util/XChangesBatch.hpp>

#include <fstream>
#include <iostream>
#include <memory>
#include <stdexcept>

namespace undercroft::tests {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {
std::unique_ptr<sheets::Office> office;  // NOLINT: one for the whole run, ended below

/// Ends the office when all tests are done, before the program's own end. The files of tests that failed
/// stay, to be looked at.
struct Closer : Catch::TestEventListenerBase {
    using Base = Catch::TestEventListenerBase;
    using Base::Base;
    /// A test that loses the office says why, and those after it have a new one.
    void testCaseEnded(const Catch::TestCaseStats& /*stats*/) override {
        if (!office || !office->has_ended()) return;
        std::cout << "  " << office->why_it_ended() << '\n';
        office.reset();
    }
    void testRunEnded(const Catch::TestRunStats& stats) override {
        office.reset();
        std::error_code ignored;
        if (stats.totals.assertions.allPassed()) std::filesystem::remove_all(scratch({}), ignored);
    }
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

void set_locale(const sheets::Office& office, const std::string& locale) {
    const Reference<css::lang::XMultiServiceFactory> provider(
        css::configuration::theDefaultProvider::get(office.context()), UNO_QUERY_THROW);
    css::uno::Sequence<Any> arguments(1);
    css::beans::PropertyValue path;
    path.Name = "nodepath";
    path.Value <<= rtl::OUString("/org.openoffice.Setup/L10N");
    arguments.getArray()[0] <<= path;
    const auto access = provider->createInstanceWithArguments(
        "com.sun.star.configuration.ConfigurationUpdateAccess", arguments);
    Reference<css::container::XNameReplace>(access, UNO_QUERY_THROW)
        ->replaceByName("ooSetupSystemLocale", Any(sheets::to_ustring(locale)));
    Reference<css::util::XChangesBatch>(access, UNO_QUERY_THROW)->commitChanges();
}

double memory_of(const sheets::Office& office) {
    double pages = 0;
    for (const auto& entry : std::filesystem::directory_iterator("/proc")) {
        const std::string process = entry.path().filename().string();
        if (process.find_first_not_of("0123456789") != std::string::npos) continue;
        if (getpgid(std::stoi(process)) != office.process()) continue;
        std::ifstream statm(entry.path() / "statm");
        double total = 0;
        double resident = 0;
        statm >> total >> resident;
        pages += resident;
    }
    return pages * static_cast<double>(sysconf(_SC_PAGESIZE)) / (1024.0 * 1024.0);
}

double processor_time_of(const sheets::Office& office) {
    clockid_t clock = 0;
    timespec spent{};
    if (clock_getcpuclockid(office.process(), &clock) != 0 || clock_gettime(clock, &spent) != 0)
        throw std::runtime_error("the office's processor time cannot be read");
    return static_cast<double>(spent.tv_sec) + 1e-9 * static_cast<double>(spent.tv_nsec);
}

Desk& Desk::put_array(const std::string& range, const std::string& formula) {
    const css::uno::Reference<css::sheet::XArrayFormulaRange> cells(
        document_.sheet(sheet_)->getCellRangeByName(sheets::to_ustring(range)), css::uno::UNO_QUERY_THROW);
    cells->setArrayFormula(sheets::to_ustring(formula));
    return *this;
}

}  // namespace undercroft::tests
