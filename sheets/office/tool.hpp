/// \file tool.hpp
/// What the tools that drive the office have in common.
#pragma once

#include <iostream>

#include "sheets/office/office.hpp"

namespace undercroft::sheets {

/// Runs a tool; what goes wrong is said, and ends with this exit status.
template <class Tool>
int run_tool(const Tool& tool, int failed = 1) {
    try {
        return tool();
    } catch (const std::exception& error) {
        std::cerr << error.what() << "\n";
    } catch (const css::uno::Exception& error) {
        std::cerr << to_utf8(error.Message) << "\n";
    }
    return failed;
}

}  // namespace undercroft::sheets
