#include "sheets/office/outputs.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fstream>
#include <stdexcept>

namespace undercroft::sheets {

namespace fs = std::filesystem;

namespace {

[[noreturn]] void refuse(const fs::path& place, const std::string& why) {
    throw std::runtime_error("cannot write " + place.string() + ": " + why +
                             "; what was there before was not touched");
}

fs::path folder_of(const fs::path& place) {
    return fs::absolute(place).lexically_normal().parent_path();
}

/// Onto the disk, not only into its memory.
void settle(const fs::path& path, const fs::path& place, int how) {
    const int file = open(path.c_str(), how | O_CLOEXEC);
    if (file < 0) refuse(place, std::strerror(errno));
    const int failed = fsync(file) == 0 || errno == EINVAL ? 0 : errno;
    close(file);
    if (failed != 0) refuse(place, std::strerror(failed));
}

}  // namespace

bool is_same_place(const fs::path& one, const fs::path& other) {
    std::error_code none;
    if (fs::equivalent(one, other, none)) return true;
    return fs::weakly_canonical(fs::absolute(one), none) == fs::weakly_canonical(fs::absolute(other), none);
}

std::string hindrance(const fs::path& output) {
    const fs::path folder = folder_of(output);
    if (!fs::is_directory(folder)) return "there is no folder " + folder.string();
    if (fs::is_directory(output)) return "it is a folder";
    if (fs::exists(output) && !fs::is_regular_file(output)) return "it is no file";
    if (access(folder.c_str(), W_OK | X_OK) != 0) return std::strerror(errno);
    return {};
}

bool is_whole(const fs::path& file) {
    std::error_code none;
    const auto size = fs::file_size(file, none);
    if (none || size == 0) return false;
    constexpr std::uintmax_t longest_end = 1024;
    std::ifstream in(file, std::ios::binary);
    in.seekg(-static_cast<std::streamoff>(std::min(size, longest_end)), std::ios::end);
    const std::string end((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    const std::string ending = file.extension().string();
    const auto has = [&](std::string_view mark) { return end.find(mark) != std::string::npos; };
    if (ending == ".ods" || ending == ".ots" || ending == ".xlsx") return has({"PK\5\6", 4});
    if (ending == ".pdf") return has("%%EOF");
    return ending != ".fods" || has("</office:document>");
}

Outputs::~Outputs() {
    std::error_code ignored;
    for (const auto& [file, place] : files_) fs::remove(file, ignored);
}

fs::path Outputs::beside(const fs::path& place) {
    // In the same folder, so that what a workbook says of other files holds; told before it is there, so that
    // it goes whenever the tool ends.
    const std::string id =
        office_.keeper().folder().filename().string() + "-" + std::to_string(files_.size());
    const fs::path file = folder_of(place) / (".undercroft-" + id + "-" + place.filename().string());
    office_.keeper().clear_up(file);
    // The office's own, while it writes; one that is killed leaves it.
    office_.keeper().clear_up(folder_of(place) / (".~lock." + file.filename().string() + "#"));
    files_.emplace_back(file, place);
    return file;
}

void Outputs::write(const fs::path& place, const std::string& text) {
    std::ofstream file(beside(place), std::ios::binary);
    file << text;
    file.close();
    if (!file) refuse(place, "the disk may be full");
}

void Outputs::put() {
    for (const auto& [file, place] : files_) {
        if (!is_whole(file)) refuse(place, "it did not get whole, the disk may be full");
        settle(file, place, O_RDONLY);
    }
    for (const auto& [file, place] : files_) {
        std::error_code failed;
        fs::rename(file, place, failed);
        if (failed) refuse(place, failed.message());
        settle(folder_of(place), place, O_RDONLY | O_DIRECTORY);
    }
    files_.clear();
}

}  // namespace undercroft::sheets
