/// \file committed.hpp
/// The files of the repository that are written from the catalogue, and kept in it so that a change is read.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace undercroft::addin {

struct CommittedFile {
    std::string path;  ///< from the project's folder
    std::string text;
};

/// \throws std::logic_error for a broken entry.
[[nodiscard]] std::vector<CommittedFile> committed_files();

/// Every worked example of every entry, as the tests and the workbook read it.
[[nodiscard]] std::string worked_examples();
/// What is possible and usual of every argument and column.
[[nodiscard]] std::string domains();

/// The equation of every function, for the notes of the sheets.
[[nodiscard]] std::string equations();

/// Lines of the committed list of names that `now` has no longer, and that no argument was appended to.
[[nodiscard]] std::vector<std::string> lost_names(std::string_view committed, std::string_view now);

/// What a person does about a stale one.
inline constexpr std::string_view how_to_renew = "cmake --build build --target renew";

}  // namespace undercroft::addin
