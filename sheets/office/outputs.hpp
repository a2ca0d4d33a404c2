/// \file outputs.hpp
/// Files that are written whole or not at all.
#pragma once

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "sheets/office/office.hpp"

namespace undercroft::sheets {

/// The outputs of one run: written beside their places, and put there together once all of them are whole.
/// What was there before stays until then; of a run that fails nothing is left.
class Outputs {
public:
    explicit Outputs(const Office& office) : office_(office) {}
    Outputs(const Outputs&) = delete;
    Outputs& operator=(const Outputs&) = delete;
    ~Outputs();

    /// Where the file for this place is to be written.
    [[nodiscard]] std::filesystem::path beside(const std::filesystem::path& place);
    /// A file of this text. \throws std::runtime_error where it cannot be written.
    void write(const std::filesystem::path& place, const std::string& text);
    /// \throws std::runtime_error when one of them is not whole; then none is put.
    void put();

private:
    const Office& office_;
    std::vector<std::pair<std::filesystem::path, std::filesystem::path>> files_;
};

/// Another name of the same file, or the place of one that is yet to come.
[[nodiscard]] bool is_same_place(const std::filesystem::path& one, const std::filesystem::path& other);

/// What keeps a file from being written there; empty for nothing.
[[nodiscard]] std::string hindrance(const std::filesystem::path& output);

/// Whether a file of this ending ends as such a file does; true where that cannot be told.
[[nodiscard]] bool is_whole(const std::filesystem::path& file);

}  // namespace undercroft::sheets
