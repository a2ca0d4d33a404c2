/// \file tool.hpp
/// What the tools that drive the office have in common.
#pragma once

#include <iostream>

#include "addin/command_line.hpp"
#include "sheets/office/office.hpp"
#include "units/one_line.hpp"

namespace undercroft::sheets {

/// Adds what all of them begin with: the folder of the extensions that go into the office, and its limits.
inline void add_office(CommandLine& line, std::filesystem::path& extensions, Limits& limits) {
    using std::chrono::seconds;
    line.add_required("EXTENSIONS", extensions,
                      "folder of the extensions that the office gets, build/extensions", Existing::folder);
    line.add_optional("--seconds", limits.time, "that the office may take for one workbook; 120", seconds(1),
                      seconds(1000000));
    line.add_optional("--memory", limits.memory, "GiB of memory that the office may take; 4", 0.1, 10000.0);
}

/// Where text of a file must not command the terminal that it is shown on.
inline void complain(const std::string& sentence) {
    std::cerr << on_one_line(sentence) << "\n";
}

/// Does something with the office; what goes wrong is said.
/// \return its exit status, or `failed`
template <class Work>
int done_in_office(const Office& office, const std::string& what, int failed, const Work& work) {
    try {
        return work();
    } catch (const std::exception& error) {
        const std::string end = office.why_it_ended();
        complain(what + ": " + (end.empty() ? error.what() : end));
    } catch (const css::uno::Exception& error) {
        const std::string end = office.why_it_ended();
        complain(what + ": " + (end.empty() ? to_utf8(error.Message) : end));
    }
    return failed;
}

/// Reads the command line and runs a tool; what goes wrong is said, and ends with this exit status.
template <class Tool>
int run_tool(CommandLine& line, int argc, char** argv, const Tool& tool, int failed = 1) {
    try {
        const auto status = line.read(argc, argv);
        if (status) return *status;
        const int ended = tool();
        std::cout.flush();
        if (std::cout) return ended;
        complain("what there is to say could not be written; the disk may be full");
    } catch (const std::exception& error) {
        complain(error.what());
    } catch (const css::uno::Exception& error) {
        complain(to_utf8(error.Message));
    }
    return failed;
}

}  // namespace undercroft::sheets
