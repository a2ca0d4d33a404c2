/// \file tool.hpp
/// What the tools that drive the office have in common.
#pragma once

#include <iostream>

#include "sheets/builder/command_line.hpp"
#include "sheets/office/office.hpp"

namespace undercroft::sheets {

/// Adds the argument that all of them begin with: the folder of the extensions that go into the office.
inline void add_extensions(CLI::App& app, std::filesystem::path& extensions) {
    app.add_option("EXTENSIONS", extensions,
                   "folder of the extensions that the office gets, build/extensions")
        ->required()
        ->check(CLI::ExistingDirectory);
}

/// Reads the command line and runs a tool; what goes wrong is said, and ends with this exit status.
template <class Tool>
int run_tool(CLI::App& app, int argc, char** argv, const Tool& tool, int failed = 1) {
    try {
        const auto status = read_command_line(app, argc, argv);
        return status ? *status : tool();
    } catch (const std::exception& error) {
        std::cerr << error.what() << "\n";
    } catch (const css::uno::Exception& error) {
        std::cerr << to_utf8(error.Message) << "\n";
    }
    return failed;
}

}  // namespace undercroft::sheets
