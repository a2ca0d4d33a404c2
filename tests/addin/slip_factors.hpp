/// \file slip_factors.hpp
/// The slips that are tried on each number of each function, and the table of tests/HARDENING.md that tells
/// what came of them.
#pragma once

#include <array>
#include <cstdlib>
#include <fstream>
#include <string>

#include "tests/addin/numbers.hpp"

namespace undercroft::tests {

struct Factor {
    double by;
    const char* shown;
};

/// mm for m and back, inches for feet, inches for mm, feet for m, minutes for hours, percent for a share.
inline constexpr std::array<Factor, 12> factors_of_slips = {{{1000, "1000"},
                                                             {0.001, "1/1000"},
                                                             {12, "12"},
                                                             {1 / 12.0, "1/12"},
                                                             {25.4, "25.4"},
                                                             {1 / 25.4, "1/25.4"},
                                                             {1 / 0.3048, "3.28"},
                                                             {0.3048, "1/3.28"},
                                                             {60, "60"},
                                                             {1 / 60.0, "1/60"},
                                                             {100, "100"},
                                                             {0.01, "1/100"}}};

inline bool is_nothing(const std::vector<double>& numbers) {
    return std::all_of(numbers.begin(), numbers.end(), [](double number) { return number == 0; });
}

/// What stands between two marks of tests/HARDENING.md, written by the test that counts it.
class MarkedTable {
public:
    explicit MarkedTable(const std::string& name)
        : begin_("<!-- " + name + ": written by UNDERCROFT_RENEW=1 build/tests/addin_test \"[slips]\" -->\n"),
          end_("<!-- end of " + name + " -->\n") {
        const std::string page = file_text("tests/HARDENING.md");
        const std::size_t from = page.find(begin_);
        const std::size_t to = page.find(end_);
        REQUIRE((from != std::string::npos && to != std::string::npos));
        committed_ = page.substr(from + begin_.size(), to - from - begin_.size());
    }
    [[nodiscard]] const std::string& committed() const { return committed_; }

    void renew_or_compare(const std::string& table) const {
        if (std::getenv("UNDERCROFT_RENEW") != nullptr) {
            std::string page = file_text("tests/HARDENING.md");
            page.replace(page.find(begin_) + begin_.size(), committed_.size(), table);
            std::ofstream(std::string(PROJECT_FOLDER) + "/tests/HARDENING.md", std::ios::binary) << page;
        }
        if (committed_ != table)
            FAIL_CHECK("tests/HARDENING.md is stale: UNDERCROFT_RENEW=1 build/tests/addin_test \"[slips]\"");
    }

private:
    std::string begin_;
    std::string end_;
    std::string committed_;
};

}  // namespace undercroft::tests
