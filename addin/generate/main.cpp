// Writes what is generated from the catalogue into a folder of the build, or anew what is committed of it.
#include <exception>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <sstream>
#include <string>

#include "addin/catalogue/catalogue.hpp"
#include "addin/command_line.hpp"
#include "addin/generate/committed.hpp"
#include "addin/generate/writers.hpp"

namespace {

using namespace undercroft::addin;
namespace fs = std::filesystem;

std::string read(const fs::path& path) {
    std::ostringstream text;
    text << std::ifstream(path, std::ios::binary).rdbuf();
    return text.str();
}

/// A file that says so already keeps its time: nothing is built anew from it.
void write(const fs::path& path, const std::string& text) {
    fs::create_directories(path.parent_path());
    if (fs::exists(path) && read(path) == text) return;
    std::ofstream file(path, std::ios::binary);
    file << text;
    if (!file.flush()) throw std::runtime_error("cannot write " + path.string());
}

void write_interface(const fs::path& folder) {
    write(folder / "XUC.idl", interface_idl());
    write(folder / "CalcAddIns.xcu", calc_registration());
    write(folder / "stubs.inc", component_stubs());
    std::cout << all_functions().size() << " functions\n";
}

void write_reference(const fs::path& folder) {
    write(folder / "FUNCTIONS.md", functions_reference());
    write(folder / "functions.html", functions_page());
}

void renew(const fs::path& project) {
    const auto lost = lost_names(read(project / "addin/names.txt"), stored_names());
    if (!lost.empty())
        throw std::runtime_error("people's workbooks hold a name or an argument that would be lost: " +
                                 lost.front());
    for (const CommittedFile& file : committed_files()) {
        if (read(project / file.path) == file.text) continue;
        write(project / file.path, file.text);
        std::cout << "written anew: " << file.path << "\n";
    }
}

}  // namespace

int main(int argc, char** argv) try {
    undercroft::CommandLine line(
        "Writes what is generated from the catalogue: the interface, registration and stubs of the "
        "component, the "
        "reference, the worked examples.",
        "generate_addin");
    using undercroft::Existing;
    fs::path folder;
    fs::path reference;
    fs::path project;
    line.add_optional("DIR", folder, "a folder of the build that gets what the component is built from",
                      Existing::folder);
    line.add_optional("--reference", reference, "a folder that gets the reference, as a page and as text",
                      Existing::folder);
    line.add_optional("--renew", project, "the project's folder: writes anew what is committed",
                      Existing::folder);
    line.exclude("--renew", "DIR");
    line.check_together([&] {
        if (folder.empty() && reference.empty() && project.empty())
            throw undercroft::WrongCommandLine("wanted: DIR, --reference or --renew");
    });
    if (const auto status = line.read(argc, argv)) return *status;
    if (!folder.empty()) write_interface(folder);
    if (!reference.empty()) write_reference(reference);
    if (!project.empty()) renew(project);
    return 0;
} catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 1;
}
