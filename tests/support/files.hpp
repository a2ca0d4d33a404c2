/// \file files.hpp
/// Files of the project, read whole.
#pragma once

#include <fstream>
#include <sstream>
#include <string>

#include "tests/support/catch.hpp"

namespace undercroft::tests {

inline std::string file_text(const std::string& path) {
    std::ifstream file(std::string(PROJECT_FOLDER) + "/" + path, std::ios::binary);
    INFO("reading " << path);
    REQUIRE(file.good());
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

}  // namespace undercroft::tests
