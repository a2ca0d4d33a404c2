/// \file command_line.hpp
/// The command line of a tool: its arguments, what --help says of them, and the sentences that refuse a wrong
/// one. The library behind it is slow to compile, so that one file alone includes it.
#pragma once

#include <chrono>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

namespace CLI {
class App;
}  // namespace CLI

namespace undercroft {

/// What the arguments say does not go together.
class WrongCommandLine : public std::runtime_error {
public:
    explicit WrongCommandLine(const std::string& sentence) : std::runtime_error(sentence) {}
    WrongCommandLine(const std::string& argument, const std::string& sentence)
        : std::runtime_error(argument + ": " + sentence) {}
};

/// What must be at the end of a path that is given.
enum class Existing { not_asked, file, folder };

/// A name in capitals is an argument by its place, in the order in which they are added; `--name` is an
/// option. What is not given keeps the value that it has. The variables must outlive the reading.
class CommandLine {
public:
    CommandLine(const std::string& purpose, const std::string& tool);
    CommandLine(const CommandLine&) = delete;
    CommandLine& operator=(const CommandLine&) = delete;
    ~CommandLine();

    void add_required(const std::string& name, std::filesystem::path& path, const std::string& help,
                      Existing existing = Existing::not_asked);
    /// One or more.
    void add_required(const std::string& name, std::vector<std::filesystem::path>& paths,
                      const std::string& help);
    /// One or more. \param hindrance what is wrong with one; empty: nothing
    void add_required(const std::string& name, std::vector<std::string>& texts, const std::string& help,
                      const std::function<std::string(const std::string&)>& hindrance = {});

    void add_optional(const std::string& name, std::filesystem::path& path, const std::string& help,
                      Existing existing = Existing::not_asked);
    /// One each time that the option is given.
    void add_optional(const std::string& name, std::vector<std::string>& texts, const std::string& help);
    void add_optional(const std::string& name, double& number, const std::string& help, double least,
                      double most);
    void add_optional(const std::string& name, std::chrono::seconds& time, const std::string& help,
                      std::chrono::seconds least, std::chrono::seconds most);

    /// Both have been added.
    void exclude(const std::string& name, const std::string& other);
    void need(const std::string& name, const std::string& needed);
    /// \param check what each argument by itself does not say; throws WrongCommandLine
    void check_together(std::function<void()> check);

    /// \return the exit status where the program ends with it: 0 after --help, 2 after a command line that is
    /// wrong, which is said. What else a check throws is passed on.
    [[nodiscard]] std::optional<int> read(int argc, const char* const* argv);

private:
    std::unique_ptr<CLI::App> app_;
    std::function<void()> check_;
};

}  // namespace undercroft
