#include "tests/office/asked_audit.hpp"

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/task/XJob.hpp>

#include "tests/office/desk.hpp"
#include "tests/office/main_thread.hpp"

namespace undercroft::tests {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

std::string asked_audit(const sheets::Office& office, const sheets::Document& document,
                        const std::string& file, bool writes) {
    const Reference<css::task::XJob> job(office.context()->getServiceManager()->createInstanceWithContext(
                                             "undercroft.Audit", office.context()),
                                         UNO_QUERY_THROW);
    css::uno::Sequence<css::beans::NamedValue> arguments(3);
    arguments.getArray()[0] = {"Document", Any(document.model())};
    arguments.getArray()[1] = {"File", Any(file.empty() ? rtl::OUString() : sheets::file_url(file))};
    arguments.getArray()[2] = {"Writes", Any(writes)};
    css::uno::Sequence<css::beans::NamedValue> answer;
    in_main_thread(office, [&] { job->execute(arguments) >>= answer; });
    rtl::OUString text;
    for (const css::beans::NamedValue& part : answer)
        if (part.Name == "Text") part.Value >>= text;
    REQUIRE(!text.isEmpty());
    return sheets::to_utf8(text);
}

void sign(const sheets::Document& document, const std::string& checker) {
    const Reference<css::sheet::XSpreadsheet> page = document.sheet("Audit");
    sal_Int32 row = 0;
    while (sheets::shown(page->getCellByPosition(1, row)) != "Checker") REQUIRE(++row < 100);
    page->getCellByPosition(1, row + 1)->setFormula(sheets::to_ustring(checker));
}

}  // namespace undercroft::tests
