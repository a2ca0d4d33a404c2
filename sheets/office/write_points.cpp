// Writes the points to set a bed out by as a table for other programs.
#include <iostream>

#include "sheets/office/outputs.hpp"
#include "sheets/office/set_points.hpp"
#include "sheets/office/tool.hpp"

int main(int argc, char** argv) {
    using namespace undercroft;
    using namespace undercroft::sheets;
    CommandLine line(
        "Writes the points to set a bed out by, of a workbook of the whole job computed anew, as a table: "
        "name, "
        "east, north, level. The workbook itself is never changed. Ends with 1 when it has none, or one "
        "shows "
        "an error.",
        "write_points");
    std::filesystem::path extensions;
    std::filesystem::path file;
    std::filesystem::path out;
    Limits limits;
    add_office(line, extensions, limits);
    line.add_required("FILE", file, "the workbook");
    line.add_required("OUT", out, "the file that is written, .csv");
    line.check_together([&] {
        if (is_same_place(file, out)) throw WrongCommandLine("OUT", "must not be the file itself");
        if (!has_ending(out, {".csv"})) throw WrongCommandLine("OUT", "must end in .csv");
        if (const std::string why = hindrance(out); !why.empty()) throw WrongCommandLine("OUT", why);
    });
    return run_tool(line, argc, argv, [&] {
        const Office office(extensions, limits);
        return done_in_office(office, file.string(), 1, [&] {
            const Keeper::Watch watch(office.keeper());
            Outputs outputs(office);
            const Document document = office.open_copy(file);
            document.recalculate();
            const NamedPoints points = set_points(document);
            outputs.write(out, points_as_csv(points));
            outputs.put();
            std::cout << on_one_line(out.string()) << ": " << points.points.size() << " points\n";
            return 0;
        });
    });
}
