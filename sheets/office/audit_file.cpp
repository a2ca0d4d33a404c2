// Audits workbooks in a headless Calc with our extension; the files themselves are never changed.
#include <algorithm>
#include <iostream>
#include <optional>

#include "sheets/office/audit_answer.hpp"
#include "sheets/office/outputs.hpp"
#include "sheets/office/tool.hpp"
#include "sheets/office/without_links.hpp"

namespace undercroft::sheets {

namespace {

namespace fs = std::filesystem;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

struct Wanted {
    fs::path extensions;
    Limits limits;
    std::vector<fs::path> files;
    fs::path against;  ///< these are empty where they are not wanted
    fs::path since;
    fs::path table;
    fs::path json;
    fs::path copy;
    fs::path pages;
};

constexpr int not_audited = 2;

/// What each argument by itself does not say. No output is another file of the command line, whatever its
/// name.
void check_together(const Wanted& wanted) {
    const std::vector<std::pair<std::string, fs::path>> outputs = {
        {"--csv", wanted.table}, {"--json", wanted.json}, {"--out", wanted.copy}, {"--print", wanted.pages}};
    for (const auto& [name, path] : outputs) {
        if (path.empty()) continue;
        if (wanted.files.size() > 1) throw WrongCommandLine(name, "goes with one file");
        if (is_same_place(path, wanted.files[0]))
            throw WrongCommandLine(name, "must not be the file under audit");
        if (!wanted.against.empty() && is_same_place(path, wanted.against))
            throw WrongCommandLine(name, "must not be the template");
        if (!wanted.since.empty() && is_same_place(path, wanted.since))
            throw WrongCommandLine(name, "must not be the earlier revision");
        for (const auto& [other_name, other] : outputs)
            if (other_name != name && !other.empty() && is_same_place(path, other))
                throw WrongCommandLine(name, "must not be the file of " + other_name);
        if (const std::string why = hindrance(path); !why.empty()) throw WrongCommandLine(name, why);
    }
    if (!wanted.copy.empty() && !has_ending(wanted.copy, {".ods", ".fods"}))
        throw WrongCommandLine("--out", "must end in .ods or .fods");
    if (!wanted.pages.empty() && !has_ending(wanted.pages, {".pdf"}))
        throw WrongCommandLine("--print", "must end in .pdf");
}

/// A copy that somebody signed is kept: the signature is in no other file.
void keep_signed(const Office& office, const fs::path& copy) {
    if (!fs::exists(copy)) return;
    sal_Int32 signatures = 0;
    try {
        const Document old = office.open_copy(copy);
        signatures = AuditAnswer(office, {{"Document", Any(old.model())}, {"SignaturesOnly", Any(true)}})
                         .get<sal_Int32>("Signatures");
    } catch (const std::runtime_error&) {  // no workbook, or only a part of one
        return;
    }
    if (signatures > 0)
        throw std::runtime_error(
            copy.string() + " is signed, and was not touched: move it away, or give another name to --out");
}

int audit(const Office& office, const Wanted& wanted, const fs::path& file) {
    const Keeper::Watch watch(office.keeper());
    if (!wanted.copy.empty()) keep_signed(office, wanted.copy);
    Outputs outputs(office);
    const Document document = office.open_copy(file);
    const AuditAnswer answer(
        office, {{"Document", Any(document.model())},
                 {"File", Any(file_url(file))},
                 {"Against", Any(wanted.against.empty() ? rtl::OUString() : file_url(wanted.against))},
                 {"Since", Any(wanted.since.empty() ? rtl::OUString() : file_url(wanted.since))},
                 {"Table", Any(!wanted.table.empty())},
                 {"Json", Any(!wanted.json.empty())},
                 {"Writes", Any(!wanted.copy.empty())}});
    if (!wanted.table.empty()) outputs.write(wanted.table, to_utf8(answer.get<rtl::OUString>("Table")));
    if (!wanted.json.empty()) outputs.write(wanted.json, to_utf8(answer.get<rtl::OUString>("Json")));
    if (!wanted.copy.empty()) {
        document.recalculate();
        document.store(outputs.beside(wanted.copy));
        if (!wanted.pages.empty()) {
            // The document that the audit wrote on has no pages to print; its copy has.
            const fs::path pages = office.keeper().folder() / "pages.fods";
            document.store(pages);
            take_links_out(pages);
            office.open(pages).store(outputs.beside(wanted.pages));
        }
    }
    outputs.put();
    std::cout << on_one_line(file.string()) << "\n" << to_utf8(answer.get<rtl::OUString>("Text"));
    return answer.get<sal_Int32>("Findings") == 0 ? 0 : 1;
}

/// An office that was stopped at one file is started anew for the next.
int audit_all(const Wanted& wanted) {
    std::optional<Office> office;
    int worst = 0;
    for (const fs::path& file : wanted.files) {
        if (office && office->has_ended()) office.reset();
        if (!office) office.emplace(wanted.extensions, wanted.limits);
        worst = std::max(worst, done_in_office(*office, file.string(), not_audited,
                                               [&] { return audit(*office, wanted, file); }));
    }
    return worst;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    using namespace undercroft;
    using namespace undercroft::sheets;
    CommandLine line(
        "Audits workbooks in a headless Calc with our extension; the files themselves are never changed. "
        "Ends "
        "with 0 when nothing was found, 1 when something was, 2 when the audit of one could not be made.",
        "audit_file");
    Wanted wanted;
    add_office(line, wanted.extensions, wanted.limits);
    line.add_required("FILE", wanted.files, "a workbook; several");
    line.add_optional("--against", wanted.against, "the template that they are compared with",
                      Existing::file);
    line.add_optional("--since", wanted.since, "an earlier revision: what changed is told as a revision note",
                      Existing::file);
    line.add_optional("--json", wanted.json, "gets all of it for other programs; goes with one file");
    line.add_optional("--csv", wanted.table, "gets the findings as a table; goes with one file");
    line.add_optional("--out", wanted.copy,
                      "gets the workbook, every cell computed anew, with the sheet Audit (.ods)");
    line.add_optional("--print", wanted.pages, "gets the pages of that copy (.pdf)");
    line.need("--print", "--out");
    line.check_together([&wanted] { check_together(wanted); });
    return run_tool(
        line, argc, argv, [&] { return audit_all(wanted); }, not_audited);
}
