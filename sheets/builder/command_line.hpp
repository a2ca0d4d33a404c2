/// \file command_line.hpp
/// What the command lines of the tools have in common; for their mains only.
#pragma once

#include <CLI/CLI.hpp>
#include <optional>

namespace undercroft::sheets {

/// Reads the command line. \return the exit status where the program ends with it: 0 after --help, 2 after a
/// command line that cannot be read, which is said.
[[nodiscard]] inline std::optional<int> read_command_line(CLI::App& app, int argc, char** argv) {
    constexpr int not_understood = 2;
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& end) {
        return app.exit(end) == 0 ? 0 : not_understood;
    }
    return std::nullopt;
}

}  // namespace undercroft::sheets
