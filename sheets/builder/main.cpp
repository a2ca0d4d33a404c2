// Builds the workbooks from their text:
//   build_sheets TEXT_FOLDER EXAMPLES OUTPUT_FOLDER
// writes OUTPUT_FOLDER/NAME.fods (SI) and NAME-us.fods for each workbook of TEXT_FOLDER/workbooks.txt, and
// worked-examples.fods from the file of worked examples.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>

#include "sheets/builder/compose.hpp"
#include "sheets/builder/worked_examples_book.hpp"

namespace {

std::string read(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) throw std::runtime_error("cannot read " + path.string());
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

void write(const std::filesystem::path& path, const std::string& text) {
    std::ofstream file(path, std::ios::binary);
    file << text;
    if (!file.flush()) throw std::runtime_error("cannot write " + path.string());
}

std::vector<undercroft::sheets::Sheet> read_sheets(const std::filesystem::path& folder) {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".txt" && entry.path().filename() != "workbooks.txt")
            paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<undercroft::sheets::Sheet> sheets;
    for (const auto& path : paths) {
        try {
            sheets.push_back(undercroft::sheets::read_sheet(read(path)));
        } catch (const std::exception& error) {
            throw std::runtime_error(path.string() + ": " + error.what());
        }
    }
    return sheets;
}

}  // namespace

int main(int argc, char** argv) try {
    using namespace undercroft::sheets;
    if (argc != 4) {
        std::cerr << "usage: build_sheets TEXT_FOLDER EXAMPLES OUTPUT_FOLDER\n";
        return 2;
    }
    const std::filesystem::path folder(argv[1]);
    const std::filesystem::path output(argv[3]);
    std::filesystem::create_directories(output);
    const std::vector<Sheet> sheets = read_sheets(folder);
    for (const WorkbookText& workbook : read_workbooks(read(folder / "workbooks.txt"))) {
        for (const System system : {System::si, System::us}) {
            const WorkbookGrid grid = compose(workbook, sheets, system);
            write(output / (grid.name + ".fods"), flat_document(grid));
        }
    }
    write(output / "worked-examples.fods",
          flat_document(worked_examples_book(read_worked_examples(read(argv[2])))));
    return 0;
} catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 1;
}
