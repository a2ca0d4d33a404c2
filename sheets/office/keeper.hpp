/// \file keeper.hpp
/// A process between a tool and its office, so that nothing stays behind however either of them ends: it
/// makes the office's folder, starts the office, ends it when the tool is gone or a limit is passed, and
/// clears up.
#pragma once

#include <sys/types.h>

#include <chrono>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace undercroft::sheets {

/// What the office may take.
struct Limits {
    std::chrono::seconds time{120};  ///< for one workbook; it counts while a Keeper::Watch is there
    double memory = 4;               ///< GiB
};

struct Start {
    std::vector<std::string> command;          ///< `{}` stands for the folder that is made for the office
    std::map<std::string, std::string> files;  ///< written into that folder first
    Limits limits;
};

/// Why the office is no longer there.
enum class Ending { by_itself, out_of_time, out_of_memory };

class Keeper {
public:
    /// Starts the office. \throws std::runtime_error when there is no folder or no process for it.
    explicit Keeper(const Start& start);
    Keeper(const Keeper&) = delete;
    Keeper& operator=(const Keeper&) = delete;
    /// Ends the office where it still runs.
    ~Keeper();

    /// A folder for profile, pipes and scratch files; it goes with the office.
    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
    /// The office's process, and its group. With a new profile the office asks to be started once more, so
    /// this is the one that was started last.
    [[nodiscard]] pid_t office() const;
    /// How the office ended, once all of it is cleared up; nothing while it runs.
    [[nodiscard]] std::optional<Ending> ending_within(std::chrono::milliseconds wait) const;
    /// A file or folder that must not outlive the tool.
    void clear_up(const std::filesystem::path& path) const;

    /// While it is there, the time of the limit runs.
    class Watch {
    public:
        explicit Watch(const Keeper& keeper);
        Watch(const Watch&) = delete;
        Watch& operator=(const Watch&) = delete;
        ~Watch();

    private:
        const Keeper& keeper_;
    };

private:
    [[nodiscard]] std::string received(int milliseconds) const;
    /// Takes what the keeper says next. \return whether it said something, or is gone
    bool hear(std::chrono::milliseconds wait) const;
    void tell(const std::string& message) const;
    /// Waits for the keeper's end; of one that was killed it does what was left to do.
    void bury() const;

    std::filesystem::path folder_;
    mutable pid_t keeper_ = 0;  ///< 0 once it has ended
    int link_ = -1;
    mutable pid_t office_ = 0;
    mutable std::optional<Ending> ending_;
    mutable std::vector<std::filesystem::path> clear_up_;  ///< should the keeper be killed
};

}  // namespace undercroft::sheets
