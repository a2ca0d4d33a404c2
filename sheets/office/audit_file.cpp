// Audits a workbook in a headless Calc with our extension; the file itself is never changed:
//   audit_file EXTENSIONS FILE... [--against TEMPLATE] [--csv TABLE.csv] [--out COPY.ods [--print COPY.pdf]]
// COPY.ods and COPY.pdf get the workbook, every cell computed anew, with the sheet Audit. Exit status 0 when
// nothing was found, 1 when something was, 2 when the audit of one could not be made.
#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/lang/DisposedException.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/task/XJob.hpp>

#include <algorithm>
#include <fstream>
#include <iostream>
#include <map>

#include "sheets/office/tool.hpp"

namespace undercroft::sheets {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

struct Wanted {
    std::vector<std::filesystem::path> files;
    std::map<std::string, std::filesystem::path> options;

    [[nodiscard]] std::filesystem::path option(const std::string& name) const {
        const auto found = options.find(name);
        return found == options.end() ? std::filesystem::path() : found->second;
    }
};

constexpr const char* usage =
    "usage: audit_file EXTENSIONS FILE... [--against TEMPLATE] [--csv TABLE.csv] [--out COPY.ods "
    "[--print COPY.pdf]]";

Wanted read_arguments(int argc, char** argv) {
    Wanted wanted;
    for (int i = 2; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "--against" || word == "--csv" || word == "--out" || word == "--print") {
            if (++i == argc) throw std::runtime_error(word + " needs a file\n" + usage);
            wanted.options[word] = argv[i];
        } else if (word.starts_with("--")) {
            throw std::runtime_error("what is '" + word + "'?\n" + usage);
        } else {
            wanted.files.emplace_back(word);
        }
    }
    if (wanted.files.empty()) throw std::runtime_error(usage);
    if (!wanted.option("--print").empty() && wanted.option("--out").empty())
        throw std::runtime_error("--print goes with --out");
    for (const char* output : {"--csv", "--out", "--print"}) {
        const auto path = wanted.option(output);
        if (path.empty()) continue;
        if (wanted.files.size() > 1) throw std::runtime_error(std::string(output) + " goes with one file");
        if (std::filesystem::exists(path) && std::filesystem::equivalent(path, wanted.files[0]))
            throw std::runtime_error(std::string(output) + " must not be the file under audit");
    }
    return wanted;
}

void write(const std::filesystem::path& path, const std::string& text) {
    std::ofstream file(path, std::ios::binary);
    file << text;
    if (!file.flush()) throw std::runtime_error("cannot write " + path.string());
}

int audit(const Office& office, const Wanted& wanted, const std::filesystem::path& file) {
    const std::filesystem::path against = wanted.option("--against");
    const Document document = office.open_copy(file);
    const Reference<css::task::XJob> job(office.context()->getServiceManager()->createInstanceWithContext(
                                             "undercroft.Audit", office.context()),
                                         UNO_QUERY_THROW);
    css::uno::Sequence<css::beans::NamedValue> arguments(4);
    arguments.getArray()[0] = {"Document", Any(document.model())};
    arguments.getArray()[1] = {"File", Any(file_url(file))};
    arguments.getArray()[2] = {"Against", Any(against.empty() ? rtl::OUString() : file_url(against))};
    arguments.getArray()[3] = {"Writes", Any(!wanted.option("--out").empty())};
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
    if (const auto path = wanted.option("--csv"); !path.empty()) write(path, to_utf8(table));
    if (const auto path = wanted.option("--out"); !path.empty()) {
        document.recalculate();
        document.store(path);
        // The document that the audit wrote on has no pages to print; its copy has.
        if (const auto pages = wanted.option("--print"); !pages.empty()) office.open(path).store(pages);
    }
    return findings == 0 ? 0 : 1;
}

int audit_all(const std::filesystem::path& extensions, const Wanted& wanted) {
    if (const auto against = wanted.option("--against");
        !against.empty() && !std::filesystem::exists(against))
        throw std::runtime_error("there is no file " + against.string());
    const Office office(extensions);
    int worst = 0;
    for (const std::filesystem::path& file : wanted.files) {
        try {
            worst = std::max(worst, audit(office, wanted, file));
        } catch (const std::exception& error) {
            std::cerr << error.what() << "\n";
            worst = 2;
        } catch (const css::lang::DisposedException&) {
            throw std::runtime_error("the office stopped while it audited " + file.string());
        } catch (const css::uno::Exception& error) {
            std::cerr << "the audit of " << file.string() << " could not be made: " << to_utf8(error.Message)
                      << "\n";
            worst = 2;
        }
    }
    return worst;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    using namespace undercroft::sheets;
    constexpr int not_audited = 2;
    const auto tool = [&] {
        if (argc < 2) throw std::runtime_error(usage);
        return audit_all(argv[1], read_arguments(argc, argv));
    };
    return run_tool(tool, not_audited);
}
