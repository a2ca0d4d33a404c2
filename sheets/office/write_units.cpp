// Brings a workbook of before bare numbers were refused beside quantities up to date: the result that one
// function of ours hands to another gets its unit written with it. The file itself is never changed.
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <iostream>

#include "sheets/office/result_units.hpp"
#include "sheets/office/tool.hpp"

int main(int argc, char** argv) {
    using namespace undercroft::sheets;
    CLI::App app(
        "Brings a workbook up to date that was made before bare numbers were refused beside quantities: the result "
        "that one function of ours hands to another gets its unit written with it. The file itself stays.",
        "write_units");
    std::filesystem::path extensions;
    std::filesystem::path file;
    std::filesystem::path out;
    add_extensions(app, extensions);
    app.add_option("FILE", file, "the workbook")->required();
    app.add_option("OUT", out, "the file that is written")->required();
    app.callback([&] {
        if (std::filesystem::exists(out) && std::filesystem::equivalent(file, out))
            throw CLI::ValidationError("OUT", "must not be the file itself");
    });
    return run_tool(app, argc, argv, [&] {
        const Office office(extensions);
        const Document document = office.open_copy(file);
        const int written = write_result_units(document);
        document.recalculate();
        document.store(out);
        std::cout << out.string() << ": " << written << " formulas hand over their results with a unit\n";
        return 0;
    });
}
