// Brings a workbook of before bare numbers were refused beside quantities up to date: the result that one
// function of ours hands to another gets its unit written with it. The file itself is never changed:
//   write_units EXTENSIONS FILE OUT
#include <com/sun/star/sheet/CellFlags.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <iostream>

#include "sheets/office/result_units.hpp"
#include "sheets/office/tool.hpp"

int main(int argc, char** argv) {
    using namespace undercroft::sheets;
    return run_tool([&] {
        if (argc != 4) throw std::runtime_error("usage: write_units EXTENSIONS FILE OUT");
        const std::filesystem::path file = argv[2];
        const std::filesystem::path out = argv[3];
        if (std::filesystem::exists(out) && std::filesystem::equivalent(file, out))
            throw std::runtime_error("OUT must not be the file itself");
        const Office office(argv[1]);
        const Document document = office.open_copy(file);
        const int written = write_result_units(document);
        document.recalculate();
        document.store(out);
        std::cout << out.string() << ": " << written << " formulas hand over their results with a unit\n";
        return 0;
    });
}
