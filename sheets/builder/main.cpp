// Builds the workbooks from their text: NAME.fods (SI) and NAME-us.fods for each workbook of
// TEXT_FOLDER/workbooks.txt, examples of the small sheets of TEXT_FOLDER/examples, and worked-examples.fods
// from the file of worked examples.
#include <filesystem>
#include <iostream>

#include "addin/command_line.hpp"
#include "sheets/builder/compose.hpp"
#include "sheets/builder/equations.hpp"
#include "sheets/builder/examples_book.hpp"
#include "sheets/builder/files.hpp"
#include "sheets/builder/worked_examples_book.hpp"

int main(int argc, char** argv) try {
    using namespace undercroft;
    using namespace undercroft::sheets;
    CommandLine line("Builds the template workbooks from their text, as flat OpenDocument spreadsheets.",
                     "build_sheets");
    std::filesystem::path texts;
    std::filesystem::path equations;
    std::filesystem::path examples;
    std::filesystem::path output;
    line.add_required("TEXT_FOLDER", texts, "the sheets as text, and workbooks.txt", Existing::folder);
    line.add_required("EQUATIONS", equations, "the equations of the functions", Existing::file);
    line.add_required("EXAMPLES", examples, "the file of worked examples", Existing::file);
    line.add_required("OUTPUT_FOLDER", output, "where the workbooks go");
    if (const auto status = line.read(argc, argv)) return *status;

    std::filesystem::create_directories(output);
    std::vector<Sheet> sheets = read_sheets(texts);
    fill_equations(sheets, read_equations(read_file(equations)));
    for (const WorkbookText& workbook : read_workbooks_of(texts)) {
        for (const System system : {System::si, System::us}) {
            const WorkbookGrid grid = compose(workbook, sheets, system);
            write_file(output / (grid.name + ".fods"), flat_document(grid));
        }
    }
    const std::vector<ExampleSheet> small = read_examples(texts / "examples");
    for (const System system : {System::si, System::us}) {
        const WorkbookGrid grid = examples_book(small, system);
        write_file(output / (grid.name + ".fods"), flat_document(grid));
    }
    const WorkedExamples read = read_worked_examples(read_file(examples));
    write_file(output / "worked-examples.fods", flat_document(worked_examples_book(read)));
    return 0;
} catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 1;
}
