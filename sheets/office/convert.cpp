// Converts workbooks in a headless Calc with our extension, every cell computed anew:
//   sheet_office EXTENSIONS [--last SHEET]... FROM TO [FROM TO ...]
// Sheets named with --last go behind all others, in that order.
// Exit status 1 when a formula cell holds an error, with the cell and the reason.
#include <iostream>
#include <vector>

#include "sheets/office/errors.hpp"
#include "sheets/office/tool.hpp"

namespace undercroft::sheets {

namespace {

constexpr int heading_rows = 4;  // of our sheets, which each page repeats

int convert(int argc, char** argv) {
    std::vector<const char*> last;
    int first = 2;
    for (; first + 1 < argc && std::string(argv[first]) == "--last"; first += 2)
        last.push_back(argv[first + 1]);
    if (argc < first + 2 || (argc - first) % 2 != 0) {
        std::cerr << "usage: sheet_office EXTENSIONS [--last SHEET]... FROM TO [FROM TO ...]\n";
        return 2;
    }
    const Office office(argv[1]);
    bool good = true;
    for (int i = first; i + 1 < argc; i += 2) {
        const Document document = office.open(argv[i]);
        for (const char* sheet : last) document.move_to_end(sheet);
        document.recalculate();
        if (std::filesystem::path(argv[i + 1]).extension() == ".ots")
            document.keep_rows_in_sight(heading_rows);
        document.store(argv[i + 1]);
        const auto errors = errors_of(document);
        print_errors(errors, std::cerr, std::string(argv[i]) + ": ");
        good = good && errors.empty();
    }
    return good ? 0 : 1;
}

}  // namespace

}  // namespace undercroft::sheets

int main(int argc, char** argv) {
    return undercroft::sheets::run_tool([&] { return undercroft::sheets::convert(argc, argv); });
}
