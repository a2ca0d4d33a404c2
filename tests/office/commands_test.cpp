// The commands of the menu open the templates of the package, and no other file.
#include <com/sun/star/container/XEnumerationAccess.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XDispatch.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>

#include "tests/office/desk.hpp"

namespace undercroft::tests {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

std::vector<Reference<css::lang::XComponent>> open_documents() {
    const auto all =
        css::frame::Desktop::create(the_office().context())->getComponents()->createEnumeration();
    std::vector<Reference<css::lang::XComponent>> open;
    while (all->hasMoreElements()) open.emplace_back(all->nextElement(), UNO_QUERY_THROW);
    return open;
}

/// What a command opens; it is closed again.
std::size_t opened_by(const std::string& command) {
    const auto context = the_office().context();
    const Reference<css::frame::XDispatch> commands(
        context->getServiceManager()->createInstanceWithContext("undercroft.addin.Commands", context),
        UNO_QUERY_THROW);
    const auto before = open_documents();
    css::util::URL url;
    url.Complete = sheets::to_ustring("undercroft:" + command);
    commands->dispatch(url, {});
    std::size_t opened = 0;
    for (const auto& document : open_documents()) {
        if (std::find(before.begin(), before.end(), document) != before.end()) continue;
        ++opened;
        const sheets::Document closes(Reference<css::sheet::XSpreadsheetDocument>(document, UNO_QUERY_THROW));
    }
    return opened;
}

}  // namespace

TEST_CASE("a command opens a template of the package, and nothing beside it by any way round") {
    CHECK(opened_by("new/storage") == 1);
    for (const char* name : {"../Undercroft/storage", "../../template/Undercroft/storage", "./storage",
                             "none", "", "%2E%2E/Undercroft/storage", "storage.ots", "/etc/passwd"}) {
        CAPTURE(name);
        CHECK(opened_by(std::string("new/") + name) == 0);
    }
}

}  // namespace undercroft::tests
