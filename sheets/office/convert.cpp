// Converts workbooks in a headless Calc with our extension, every cell computed anew:
//   sheet_office EXTENSIONS [--last SHEET] FROM TO [FROM TO ...]
// A sheet named with --last goes behind all others.
// Exit status 1 when a formula cell holds an error, with the cell and the reason.
#include <iostream>

#include "sheets/office/errors.hpp"
#include "sheets/office/office.hpp"

namespace {
constexpr int heading_rows = 4;  // of our sheets, which each page repeats
}

int main(int argc, char** argv) try {
    const bool names_last = argc > 3 && std::string(argv[2]) == "--last";
    const int first = names_last ? 4 : 2;
    if (argc < first + 2 || (argc - first) % 2 != 0) {
        std::cerr << "usage: sheet_office EXTENSIONS [--last SHEET] FROM TO [FROM TO ...]\n";
        return 2;
    }
    const undercroft::sheets::Office office(argv[1]);
    bool good = true;
    for (int i = first; i + 1 < argc; i += 2) {
        const undercroft::sheets::Document document = office.open(argv[i]);
        if (names_last) document.move_to_end(argv[3]);
        document.recalculate();
        if (std::filesystem::path(argv[i + 1]).extension() == ".ots") document.keep_rows_in_sight(heading_rows);
        document.store(argv[i + 1]);
        for (const undercroft::sheets::CellError& error : undercroft::sheets::errors_of(document)) {
            std::cerr << argv[i] << ": error in " << error.cell << ": " << error.shows << "  " << error.reason
                      << "\n";
            good = false;
        }
    }
    return good ? 0 : 1;
} catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 1;
} catch (const com::sun::star::uno::Exception& error) {
    std::cerr << undercroft::sheets::to_utf8(error.Message) << "\n";
    return 1;
}
