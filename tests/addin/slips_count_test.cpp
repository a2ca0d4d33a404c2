// How many slips of units pass: each number of each worked example, typed without its unit as one in another
// unit would be. The table in tests/HARDENING.md says where, and its counts fall only:
//   UNDERCROFT_RENEW=1 build/tests/addin_test "[slips]"
#include "tests/addin/slip_factors.hpp"

namespace undercroft::tests {

using namespace addin;

namespace {

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

void try_place(const NumberPlace& place, Row& row) {
    const std::vector<double> numbers = place.numbers();
    if (numbers.empty() || is_nothing(numbers)) return;
    std::string passing;
    for (const Factor& factor : factors_of_slips) {
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
/// How many slips of each function pass, as a table says.
std::map<std::string, int> passed_in(const std::string& table) {
    std::map<std::string, int> passed;
    std::istringstream lines(table);
    for (std::string line; std::getline(lines, line);) {
        std::array<char, 64> name{};
        int count = 0;
        if (std::sscanf(line.c_str(), "| %63s | %d of", name.data(), &count) == 2)
            passed[name.data()] = count;
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
    const MarkedTable marked("slips");
    for (const auto& [name, passed] : passed_in(marked.committed())) {
        INFO(name);
        CHECK(rows[name].count.passed <= passed);
    }
    CHECK(all.share() <= 0.15);
    marked.renew_or_compare(table);
}

}  // namespace undercroft::tests
