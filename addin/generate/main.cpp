// Writes what is generated from the catalogue into a folder, or one file of it to standard output:
//   generate_addin DIR
//   generate_addin --print reference|names
#include <cstdio>
#include <exception>
#include <fstream>
#include <iostream>
#include <string>

#include "addin/catalogue/catalogue.hpp"
#include "addin/generate/writers.hpp"

namespace {

void write(const std::string& path, const std::string& text) {
    std::ofstream file(path, std::ios::binary);
    file << text;
    if (!file.flush()) throw std::runtime_error("cannot write " + path);
}

}  // namespace

int main(int argc, char** argv) try {
    using namespace undercroft::addin;
    const std::string first = argc > 1 ? argv[1] : "";
    const std::string second = argc > 2 ? argv[2] : "";
    if (first == "--print" && second == "reference") {
        std::cout << functions_reference();
    } else if (first == "--print" && second == "names") {
        std::cout << stored_names();
    } else if (argc == 2 && !first.starts_with("-")) {
        write(first + "/XUC.idl", interface_idl());
        write(first + "/CalcAddIns.xcu", calc_registration());
        write(first + "/stubs.inc", component_stubs());
        write(first + "/FUNCTIONS.md", functions_reference());
        write(first + "/functions.html", functions_page());
        std::cout << all_functions().size() << " functions\n";
    } else {
        std::cerr << "usage: generate_addin DIR | generate_addin --print reference|names\n";
        return 2;
    }
    return 0;
} catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 1;
}
