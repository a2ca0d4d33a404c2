#include "sheets/builder/files.hpp"

#include <algorithm>
#include <fstream>
#include <sstream>

namespace undercroft::sheets {

std::string read_file(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) throw std::runtime_error("cannot read " + path.string());
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

void write_file(const std::filesystem::path& path, const std::string& text) {
    std::ofstream file(path, std::ios::binary);
    file << text;
    if (!file.flush()) throw std::runtime_error("cannot write " + path.string());
}

namespace {

constexpr const char* workbooks_file = "workbooks.txt";

/// Reads a file, and names it where what stands in it is a mistake.
template <class Read>
auto read_named(const std::filesystem::path& path, const Read& read) {
    const std::string text = read_file(path);
    try {
        return read(text);
    } catch (const std::exception& error) {
        throw std::runtime_error(path.string() + ": " + error.what());
    }
}

/// Each text of a folder but the list of workbooks, in the order of the names.
template <class Read>
auto read_all(const std::filesystem::path& folder, const Read& read) {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".txt" && entry.path().filename() != workbooks_file)
            paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<decltype(read(std::string_view()))> all;
    all.reserve(paths.size());
    for (const auto& path : paths) all.push_back(read_named(path, read));
    return all;
}

}  // namespace

std::vector<Sheet> read_sheets(const std::filesystem::path& folder) {
    return read_all(folder, read_sheet);
}

std::vector<ExampleSheet> read_examples(const std::filesystem::path& folder) {
    return read_all(folder, read_example_sheet);
}

std::vector<WorkbookText> read_workbooks_of(const std::filesystem::path& folder) {
    return read_named(folder / workbooks_file, read_workbooks);
}

}  // namespace undercroft::sheets
