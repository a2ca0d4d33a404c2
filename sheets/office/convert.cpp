// Converts workbooks in a headless Calc with our extension, every cell computed anew.
#include <algorithm>
#include <iostream>
#include <vector>

#include "sheets/office/audit_answer.hpp"
#include "sheets/office/errors.hpp"
#include "sheets/office/outputs.hpp"
#include "sheets/office/tool.hpp"
#include "sheets/office/undated.hpp"

namespace undercroft::sheets {

namespace {

namespace fs = std::filesystem;

constexpr int not_converted = 2;
constexpr int heading_rows = 4;  // of our sheets, which each page repeats

struct Wanted {
    fs::path extensions;
    Limits limits;
    std::vector<std::string> last;    ///< sheets
    std::vector<std::string> errors;  ///< sheets on which an error is meant
    fs::path read;                    ///< where templates go as they are read; empty: nowhere
    std::vector<fs::path> files;      ///< from, to, from, to ...
};

/// No file is read after it was written, nor written twice: the same workbook may become several files.
void check_pairs(const Wanted& wanted) {
    for (std::size_t to = 1; to < wanted.files.size(); to += 2) {
        const fs::path& output = wanted.files[to];
        for (std::size_t other = 0; other < wanted.files.size(); ++other)
            if (other != to && is_same_place(output, wanted.files[other]))
                throw WrongCommandLine("FILE", output.string() + " must not be another of the files");
        if (const std::string why = hindrance(output); !why.empty())
            throw WrongCommandLine("FILE", output.string() + " cannot be written: " + why);
        if (!can_be_saved(output))
            throw WrongCommandLine("FILE", "cannot save a file that ends in " + output.extension().string());
    }
}

/// The template as the audit reads it, so that an audit need not open it.
void keep_as_read(const Office& office, const fs::path& file, const fs::path& folder) {
    const auto text =
        AuditAnswer(office, {{"Template", css::uno::Any(file_url(file))}}).get<rtl::OUString>("AsRead");
    Outputs outputs(office);
    outputs.write(folder / (file.filename().string() + ".json"), to_utf8(text));
    outputs.put();
}

/// \return whether no cell shows an error that is not meant.
bool convert(const Office& office, const Wanted& wanted, const fs::path& from, const fs::path& to) {
    const Keeper::Watch watch(office.keeper());
    Outputs outputs(office);
    const Document document =
        office.open_copy(from);  // a lock beside the file would outlive a tool that is killed
    for (const std::string& sheet : wanted.last) document.move_to_end(sheet);
    document.recalculate();
    if (to.extension() == ".ots") {
        document.keep_rows_in_sight(heading_rows);
        store_undated(document, outputs.beside(to));
    } else {
        document.store(outputs.beside(to));
    }
    outputs.put();
    if (!wanted.read.empty()) keep_as_read(office, to, wanted.read);
    auto errors = errors_of(document);
    std::erase_if(errors, [&wanted](const CellError& error) {
        return std::any_of(wanted.errors.begin(), wanted.errors.end(), [&error](const std::string& sheet) {
            return error.cell.starts_with(sheet + ".");
        });
    });
    print_errors(errors, std::cerr, from.string() + ": ");
    return errors.empty();
}

int convert_all(const Wanted& wanted) {
    const Office office(wanted.extensions, wanted.limits);
    int worst = 0;
    for (std::size_t i = 0; i + 1 < wanted.files.size(); i += 2) {
        const fs::path& from = wanted.files[i];
        worst = std::max(worst, done_in_office(office, from.string(), not_converted, [&] {
                             return convert(office, wanted, from, wanted.files[i + 1]) ? 0 : 1;
                         }));
    }
    return worst;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    using namespace undercroft;
    using namespace undercroft::sheets;
    CommandLine line(
        "Converts workbooks in a headless Calc with our extension, every cell computed anew. Ends with 1 "
        "when a formula cell shows an error, which is said with the cell and the reason, with 2 when one "
        "could not be "
        "converted.",
        "sheet_office");
    Wanted wanted;
    add_office(line, wanted.extensions, wanted.limits);
    line.add_optional("--last", wanted.last, "a sheet that goes behind all others; several in that order");
    line.add_optional("--errors-meant", wanted.errors, "a sheet that shows errors to learn from; several");
    line.add_optional("--keep-read", wanted.read, "a folder for each template as the audit reads it",
                      Existing::folder);
    line.add_required("FILE", wanted.files, "a workbook, then the file it becomes; several pairs");
    line.check_together([&wanted] {
        if (wanted.files.size() % 2 != 0)
            throw WrongCommandLine("FILE", "each workbook wants the file that it becomes");
        check_pairs(wanted);
    });
    return run_tool(
        line, argc, argv, [&] { return convert_all(wanted); }, not_converted);
}
