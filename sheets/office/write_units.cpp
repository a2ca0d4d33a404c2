// Brings a workbook of before bare numbers were refused beside quantities up to date: the result that one
// function of ours hands to another gets its unit written with it. The file itself is never changed.
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <iostream>

#include "sheets/office/outputs.hpp"
#include "sheets/office/result_units.hpp"
#include "sheets/office/tool.hpp"

int main(int argc, char** argv) {
    using namespace undercroft;
    using namespace undercroft::sheets;
    CommandLine line(
        "Brings a workbook up to date that was made before bare numbers were refused beside quantities: the "
        "result "
        "that one function of ours hands to another gets its unit written with it. The file itself stays.",
        "write_units");
    std::filesystem::path extensions;
    std::filesystem::path file;
    std::filesystem::path out;
    Limits limits;
    add_office(line, extensions, limits);
    line.add_required("FILE", file, "the workbook");
    line.add_required("OUT", out, "the file that is written");
    line.check_together([&] {
        if (is_same_place(file, out)) throw WrongCommandLine("OUT", "must not be the file itself");
        if (const std::string why = hindrance(out); !why.empty()) throw WrongCommandLine("OUT", why);
        if (!can_be_saved(out))
            throw WrongCommandLine("OUT", "cannot save a file that ends in " + out.extension().string());
    });
    return run_tool(line, argc, argv, [&] {
        const Office office(extensions, limits);
        return done_in_office(office, file.string(), 1, [&] {
            const Keeper::Watch watch(office.keeper());
            Outputs outputs(office);
            const Document document = office.open_copy(file);
            const int written = write_result_units(document);
            document.recalculate();
            document.store(outputs.beside(out));
            outputs.put();
            std::cout << on_one_line(out.string()) << ": " << written
                      << " formulas hand over their results with a unit\n";
            return 0;
        });
    });
}
