// Audits workbooks in a headless Calc with our extension; the files themselves are never changed.
#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/lang/DisposedException.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/task/XJob.hpp>

#include <algorithm>
#include <iostream>

#include "sheets/builder/files.hpp"
#include "sheets/office/tool.hpp"

namespace undercroft::sheets {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

struct Wanted {
    std::filesystem::path extensions;
    std::vector<std::filesystem::path> files;
    std::filesystem::path against;  ///< these are empty where they are not wanted
    std::filesystem::path table;
    std::filesystem::path copy;
    std::filesystem::path pages;
};

/// What each argument by itself does not say.
void check_together(const Wanted& wanted) {
    const std::pair<const char*, const std::filesystem::path*> outputs[] = {
        {"--csv", &wanted.table}, {"--out", &wanted.copy}, {"--print", &wanted.pages}};
    for (const auto& [name, path] : outputs) {
        if (path->empty()) continue;
        if (wanted.files.size() > 1) throw CLI::ValidationError(name, "goes with one file");
        if (std::filesystem::exists(*path) && std::filesystem::equivalent(*path, wanted.files[0]))
            throw CLI::ValidationError(name, "must not be the file under audit");
    }
}

int audit(const Office& office, const Wanted& wanted, const std::filesystem::path& file) {
    const Document document = office.open_copy(file);
    const Reference<css::task::XJob> job(office.context()->getServiceManager()->createInstanceWithContext(
                                             "undercroft.Audit", office.context()),
                                         UNO_QUERY_THROW);
    css::uno::Sequence<css::beans::NamedValue> arguments(4);
    arguments.getArray()[0] = {"Document", Any(document.model())};
    arguments.getArray()[1] = {"File", Any(file_url(file))};
    arguments.getArray()[2] = {"Against",
                               Any(wanted.against.empty() ? rtl::OUString() : file_url(wanted.against))};
    arguments.getArray()[3] = {"Writes", Any(!wanted.copy.empty())};
    css::uno::Sequence<css::beans::NamedValue> answer;
    job->execute(arguments) >>= answer;
    sal_Int32 findings = -1;
    rtl::OUString text;
    rtl::OUString table;
    for (const css::beans::NamedValue& part : answer) {
        if (part.Name == "Findings") part.Value >>= findings;
        if (part.Name == "Text") part.Value >>= text;
        if (part.Name == "Table") part.Value >>= table;
    }
    if (findings < 0) throw std::runtime_error("the audit gave no answer");
    std::cout << file.string() << "\n" << to_utf8(text);
    if (!wanted.table.empty()) write_file(wanted.table, to_utf8(table));
    if (!wanted.copy.empty()) {
        document.recalculate();
        document.store(wanted.copy);
        // The document that the audit wrote on has no pages to print; its copy has.
        if (!wanted.pages.empty()) office.open(wanted.copy).store(wanted.pages);
    }
    return findings == 0 ? 0 : 1;
}

constexpr int not_audited = 2;

int audit_all(const Wanted& wanted) {
    const Office office(wanted.extensions);
    int worst = 0;
    for (const std::filesystem::path& file : wanted.files) {
        try {
            worst = std::max(worst, audit(office, wanted, file));
        } catch (const std::exception& error) {
            std::cerr << error.what() << "\n";
            worst = not_audited;
        } catch (const css::lang::DisposedException&) {
            throw std::runtime_error("the office stopped while it audited " + file.string());
        } catch (const css::uno::Exception& error) {
            std::cerr << "the audit of " << file.string() << " could not be made: " << to_utf8(error.Message)
                      << "\n";
            worst = not_audited;
        }
    }
    return worst;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    using namespace undercroft::sheets;
    CLI::App app(
        "Audits workbooks in a headless Calc with our extension; the files themselves are never changed. "
        "Ends "
        "with 0 when nothing was found, 1 when something was, 2 when the audit of one could not be made.",
        "audit_file");
    Wanted wanted;
    add_extensions(app, wanted.extensions);
    app.add_option("FILE", wanted.files, "a workbook; several")->required();
    app.add_option("--against", wanted.against, "the template that they are compared with")
        ->check(CLI::ExistingFile);
    app.add_option("--csv", wanted.table, "gets the findings as a table; goes with one file");
    auto* copy = app.add_option("--out", wanted.copy,
                                "gets the workbook, every cell computed anew, with the sheet Audit (.ods)");
    app.add_option("--print", wanted.pages, "gets the pages of that copy (.pdf)")->needs(copy);
    app.callback([&wanted] { check_together(wanted); });
    return run_tool(
        app, argc, argv, [&] { return audit_all(wanted); }, not_audited);
}
