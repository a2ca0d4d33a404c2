// Converts workbooks in a headless Calc with our extension, every cell computed anew.
#include <algorithm>
#include <iostream>
#include <vector>

#include "sheets/office/errors.hpp"
#include "sheets/office/tool.hpp"

namespace undercroft::sheets {

namespace {

namespace fs = std::filesystem;

constexpr int heading_rows = 4;  // of our sheets, which each page repeats

struct Wanted {
    fs::path extensions;
    std::vector<std::string> last;    ///< sheets
    std::vector<std::string> errors;  ///< sheets on which an error is meant
    std::vector<fs::path> files;      ///< from, to, from, to ...
};

/// \return whether no cell shows an error that is not meant.
bool convert(const Office& office, const Wanted& wanted, const fs::path& from, const fs::path& to) {
    const Document document = office.open(from);
    for (const std::string& sheet : wanted.last) document.move_to_end(sheet);
    document.recalculate();
    if (to.extension() == ".ots") document.keep_rows_in_sight(heading_rows);
    document.store(to);
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
    const Office office(wanted.extensions);
    bool good = true;
    for (std::size_t i = 0; i + 1 < wanted.files.size(); i += 2)
        good = convert(office, wanted, wanted.files[i], wanted.files[i + 1]) && good;
    return good ? 0 : 1;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    using namespace undercroft::sheets;
    CLI::App app(
        "Converts workbooks in a headless Calc with our extension, every cell computed anew. Ends with 1 "
        "when a "
        "formula cell shows an error, which is said with the cell and the reason.",
        "sheet_office");
    Wanted wanted;
    add_extensions(app, wanted.extensions);
    app.add_option("--last", wanted.last, "a sheet that goes behind all others; several in that order")
        ->allow_extra_args(false);
    app.add_option("--errors-meant", wanted.errors, "a sheet that shows errors to learn from; several")
        ->allow_extra_args(false);
    app.add_option("FROM TO", wanted.files, "a workbook and the file it becomes; several pairs")->required();
    app.callback([&wanted] {
        if (wanted.files.size() % 2 != 0)
            throw CLI::ValidationError("FROM TO", "each workbook wants the file that it becomes");
    });
    return run_tool(app, argc, argv, [&] { return convert_all(wanted); });
}
