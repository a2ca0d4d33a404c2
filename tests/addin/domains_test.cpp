// What every argument says to less than nothing and to nothing, beside tests/data/refusals.txt: a bound that
// is moved or dropped shows. To renew the file: UNDERCROFT_RENEW=1 build/tests/addin_test "[domains]", and
// read what changed.
#include <cstdlib>
#include <fstream>

#include "tests/addin/sweep.hpp"

namespace undercroft::tests {

using namespace addin;

namespace {

const char* const head =
    "# function | argument | at -1 | at 0 (bare numbers, the other arguments as in the first worked "
    "example)\n"
    "# taken: a number comes; refused: by the argument's name; refused otherwise: for what it no longer goes "
    "with\n";

std::string reply(const Function& function, std::vector<Cell> cells, std::size_t i, double number) {
    cells[i] = number;
    const Outcome outcome = outcome_of(function, cells);
    if (outcome.answer) return "taken";
    const std::string& name = function.parameters[i].name;
    const std::string sentence = outcome.sentence();
    const bool named = sentence.starts_with(name + " (") || sentence.starts_with(name + ": ");
    return named ? "refused" : "refused otherwise";
}

std::string domains() {
    std::string text = head;
    for (const Function& function : all_functions()) {
        if (function.reads_cell()) continue;
        const std::vector<Cell> cells = cells_of(good_arguments().at(function.name).front());
        for (std::size_t i = 0; i < function.parameters.size(); ++i) {
            const Parameter& parameter = function.parameters[i];
            if (parameter.unit().empty() || takes_range(parameter)) continue;
            text += function.name + " | " + parameter.name + " | " + reply(function, cells, i, -1) + " | " +
                    reply(function, cells, i, 0) + "\n";
        }
    }
    return text;
}

}  // namespace

TEST_CASE("every argument takes and refuses numbers below 0 and 0 as stated", "[domains]") {
    const std::string now = domains();
    if (std::getenv("UNDERCROFT_RENEW") != nullptr)
        std::ofstream(std::string(PROJECT_FOLDER) + "/tests/data/refusals.txt", std::ios::binary) << now;
    CHECK(std::count(now.begin(), now.end(), '\n') > 250);
    CHECK(file_text("tests/data/refusals.txt") == now);
}

}  // namespace undercroft::tests
