/// \file files.hpp
/// Files read and written whole, and the folder of the sheets' texts.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "sheets/builder/example_text.hpp"
#include "sheets/builder/sheet_text.hpp"

namespace undercroft::sheets {

/// \throws std::runtime_error when it cannot be read.
[[nodiscard]] std::string read_file(const std::filesystem::path& path);

/// \throws std::runtime_error when it cannot be written.
void write_file(const std::filesystem::path& path, const std::string& text);

/// The sheets of a folder, in the order of their file names.
/// \throws std::runtime_error for what cannot be read, with file and line.
[[nodiscard]] std::vector<Sheet> read_sheets(const std::filesystem::path& folder);

/// The workbooks of a folder, from its workbooks.txt.
/// \throws std::runtime_error for what cannot be read, with file and line.
[[nodiscard]] std::vector<WorkbookText> read_workbooks_of(const std::filesystem::path& folder);

/// The examples of a folder, in the order of their file names.
/// \throws std::runtime_error for what cannot be read, with file and line.
[[nodiscard]] std::vector<ExampleSheet> read_examples(const std::filesystem::path& folder);

}  // namespace undercroft::sheets
