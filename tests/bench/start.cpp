// The start of an office with our extension and without it, in turn: until it answers, and until a sheet is
// open.
//   start_bench EXTENSIONS EMPTY_FOLDER
// Both have profiles of their own that were started before, as a person's has.
#include <unistd.h>

#include <filesystem>
#include <iostream>
#include <optional>

#include "sheets/office/office.hpp"
#include "tests/bench/paired.hpp"

namespace undercroft::bench {

namespace {

struct Times {
    Paired answers;
    Paired sheet;
};

void start(const std::filesystem::path& extensions, const std::filesystem::path& profile,
           std::vector<double>& answers, std::vector<double>& sheet) {
    std::optional<sheets::Office> office;
    const double answered =
        seconds([&] { office.emplace(extensions, sheets::Limits(), sheets::Office::Screen::none, profile); });
    const double opened = seconds([&] { (void)office->blank(); });
    answers.push_back(answered);
    sheet.push_back(answered + opened);
}

void report_pair(const std::string& key, const Paired& times) {
    report(key + ".with.s", median(times.a));
    report(key + ".without.s", median(times.b));
    report(key + ".ratio", times.ratio(), "%.3f");
    report(key + ".more.ms", times.difference() * 1e3, "%.0f");
}

int measure(const std::filesystem::path& extensions, const std::filesystem::path& empty) {
    const std::filesystem::path profiles =
        std::filesystem::temp_directory_path() / ("undercroft-bench-" + std::to_string(getpid()));
    Times times;
    constexpr int rounds = 15;
    for (int i = 0; i <= rounds; ++i) {
        if (i == 1) times = Times();  // the first start of a profile is not counted
        start(extensions, profiles / "with", times.answers.a, times.sheet.a);
        start(empty, profiles / "without", times.answers.b, times.sheet.b);
    }
    report_pair("start.answers", times.answers);
    report_pair("start.sheet", times.sheet);
    std::filesystem::remove_all(profiles);
    return 0;
}

}  // namespace

}  // namespace undercroft::bench

int main(int argc, char** argv) try {
    if (argc != 3) throw std::runtime_error("usage: start_bench EXTENSIONS EMPTY_FOLDER");
    return undercroft::bench::measure(argv[1], argv[2]);
} catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 1;
}
