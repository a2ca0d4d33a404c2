// How many slips of units pass: each number of each worked example, typed without its unit as one in another
// unit would be. The table in tests/HARDENING.md says where, and its counts fall only:
//   UNDERCROFT_RENEW=1 build/tests/addin_test "[slips]"
#include <array>
#include <cstdlib>
#include <fstream>
#include <numeric>

#include "tests/addin/numbers.hpp"

namespace undercroft::tests {

using namespace addin;

namespace {

struct Factor {
    double by;
    const char* shown;
};

/// mm for m and back, inches for feet, inches for mm, feet for m, minutes for hours, percent for a share.
constexpr std::array<Factor, 12> factors = {{{1000, "1000"},
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

struct Count {
    int tried = 0;
    int passed = 0;

    [[nodiscard]] double share() const { return tried == 0 ? 0 : static_cast<double>(passed) / tried; }
};

/// What passes of one function, in words, and the counts.
struct Row {
    Count count;
    std::string passing;
};

bool is_nothing(const std::vector<double>& numbers) {
    return std::all_of(numbers.begin(), numbers.end(), [](double number) { return number == 0; });
}

void try_place(const NumberPlace& place, Row& row) {
    const std::vector<double> numbers = place.numbers();
    if (numbers.empty() || is_nothing(numbers)) return;
    std::string passing;
    for (const Factor& factor : factors) {
        std::vector<double> slipped = numbers;
        for (double& number : slipped) number *= factor.by;
        ++row.count.tried;
        if (!outcome_of(place.function(), place.with_bare(slipped).cells()).answer) continue;
        ++row.count.passed;
        passing += std::string(passing.empty() ? "" : ", ") + factor.shown;
    }
    if (!passing.empty()) row.passing += (row.passing.empty() ? "" : "; ") + place.name() + " x " + passing;
}

std::string percent(const Count& count) {
    return std::to_string(static_cast<int>(std::round(100 * count.share()))) + " %";
}

constexpr const char* head =
    "| function | slips that pass | of them, argument by argument |\n"
    "|---|---|---|\n";
constexpr const char* begin =
    "<!-- slips: written by UNDERCROFT_RENEW=1 build/tests/addin_test \"[slips]\" -->\n";
constexpr const char* end = "<!-- end of slips -->\n";

/// The table between its two marks.
std::string committed(const std::string& page) {
    const std::size_t from = page.find(begin);
    const std::size_t to = page.find(end);
    REQUIRE((from != std::string::npos && to != std::string::npos));
    return page.substr(from + std::string(begin).size(), to - from - std::string(begin).size());
}

/// How many slips of each function pass, as a table says.
std::map<std::string, int> passed_in(const std::string& table) {
    std::map<std::string, int> passed;
    std::istringstream lines(table);
    for (std::string line; std::getline(lines, line);) {
        std::array<char, 64> name{};
        int count = 0;
        if (std::sscanf(line.c_str(), "| %63s | %d of", name.data(), &count) == 2) passed[name.data()] = count;
    }
    return passed;
}

}  // namespace

TEST_CASE("the slips of units that pass are as few as the table says, and grow no more", "[slips]") {
    std::map<std::string, Row> rows;
    for_each_number([&](const NumberPlace& place) { try_place(place, rows[place.function().name]); });
    Count all;
    std::string lines;
    for (const Function& function : all_functions()) {
        const auto row = rows.find(function.name);
        if (row == rows.end() || row->second.count.tried == 0) continue;
        all.tried += row->second.count.tried;
        all.passed += row->second.count.passed;
        const Count& count = row->second.count;
        lines += "| " + function.name + " | " + std::to_string(count.passed) + " of " +
                 std::to_string(count.tried) + " | " + row->second.passing + " |\n";
    }
    const std::string table = "In all " + std::to_string(all.passed) + " of " + std::to_string(all.tried) +
                              " slips pass, " + percent(all) + ".\n\n" + head + lines;
    const std::string path = std::string(PROJECT_FOLDER) + "/tests/HARDENING.md";
    std::string page = file_text("tests/HARDENING.md");
    const std::string before = committed(page);
    for (const auto& [name, passed] : passed_in(before)) {
        INFO(name);
        CHECK(rows[name].count.passed <= passed);
    }
    CHECK(all.share() <= 0.15);
    if (std::getenv("UNDERCROFT_RENEW") != nullptr) {
        page.replace(page.find(before), before.size(), table);
        std::ofstream(path, std::ios::binary) << page;
    }
    if (before != table)
        FAIL_CHECK("tests/HARDENING.md is stale: UNDERCROFT_RENEW=1 build/tests/addin_test \"[slips]\"");
}

}  // namespace undercroft::tests
