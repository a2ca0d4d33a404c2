// Inputs that the fuzzer found, and others worth keeping, once more: one file each in tests/data/fuzz/.
#include <filesystem>

#include "tests/fuzz/targets.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/files.hpp"

namespace undercroft::tests {

namespace {

struct Target {
    const char* name;
    void (*read)(std::string_view);
};
constexpr Target targets[] = {{"units", fuzz::units},
                              {"tables", fuzz::tables},
                              {"sheet_text", fuzz::sheet_text},
                              {"formulas", fuzz::formulas},
                              {"stored_values", fuzz::stored_values}};

}  // namespace

TEST_CASE("what the fuzzer found is read, or refused with a sentence") {
    for (const Target& target : targets) {
        const std::string folder = std::string("tests/data/fuzz/") + target.name;
        int files = 0;
        for (const auto& entry :
             std::filesystem::directory_iterator(std::string(PROJECT_FOLDER) + "/" + folder)) {
            const std::string name = folder + "/" + entry.path().filename().string();
            const std::string bytes = file_text(name);
            CAPTURE(name);
            CHECK_NOTHROW(target.read(bytes));
            ++files;
        }
        CAPTURE(target.name);
        CHECK(files > 0);
    }
}

TEST_CASE("a target notices a promise that is broken") {
    CHECK_THROWS_AS(fuzz::promise(false, "kept"), fuzz::Broken);
    CHECK_THROWS_AS(fuzz::promise_sentence(""), fuzz::Broken);
    CHECK_NOTHROW(fuzz::promise_sentence("a sentence that says why"));
}

}  // namespace undercroft::tests
