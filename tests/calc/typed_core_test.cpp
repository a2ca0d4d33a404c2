// Quantities stay quantities: how often calc/ makes one of a number, or takes the number out of one.
#include <filesystem>
#include <map>
#include <string>
#include <string_view>

#include "tests/support/files.hpp"

namespace undercroft::tests {

namespace {

struct Bare {
    std::size_t made;   ///< from_value(
    std::size_t taken;  ///< .value()
};

/// What a file may hold, and why. The numbers only fall: a file that is not named here has neither.
const std::map<std::string, Bare> most = {
    {"calc/solve.hpp", {1, 1}},                // Boost.Math searches among numbers
    {"calc/water/concentration.cpp", {0, 2}},  // empirical powers of a gradient
    {"calc/water/outlet.hpp", {3, 0}},         // empirical coefficients, in m^0.5/s
    {"calc/works/bed_cost.cpp", {1, 0}},       // money at rates known at run time only
    {"calc/works/takeoff.cpp", {1, 0}},        // a time from quantities known at run time only
};

std::size_t times(std::string_view wanted, const std::string& text) {
    std::size_t count = 0;
    for (std::size_t at = text.find(wanted); at != std::string::npos; at = text.find(wanted, at + 1)) ++count;
    return count;
}

void check(const std::string& file, const char* what, std::size_t found, std::size_t limit) {
    INFO(file << " has " << found << " times " << what << "; its limit in tests/calc/typed_core_test.cpp is "
              << limit
              << (found > limit ? ": keep the quantity (zero, 0.3 * metre, is_finite, is_above, linear, "
                                  "root_between take it as it is), and raise the limit only where a "
                                  "formula with an empirical constant or a library needs the number"
                                : ": lower it, it only falls"));
    CHECK(found == limit);
}

}  // namespace

TEST_CASE("calc leaves the types only where an empirical formula or a library needs the number") {
    const std::filesystem::path project = PROJECT_FOLDER;
    std::size_t listed = 0;
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(project / "calc")) {
        const std::string extension = entry.path().extension().string();
        if (extension != ".cpp" && extension != ".hpp") continue;
        const std::string file = entry.path().lexically_relative(project).generic_string();
        const std::string text = file_text(file);
        const bool known = most.contains(file);
        const Bare limit = known ? most.at(file) : Bare{0, 0};
        check(file, "from_value(", times("from_value(", text), limit.made);
        check(file, ".value()", times(".value()", text) + times("->value()", text), limit.taken);
        listed += known ? 1 : 0;
        ++files;
    }
    CHECK(listed == most.size());  // else a file of the list is gone: take it off
    CHECK(files > 90);
}

}  // namespace undercroft::tests
