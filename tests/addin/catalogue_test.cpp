// The catalogue walked: every entry is complete and legal, whatever it computes.
#include <set>
#include <sstream>

#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/generate/writers.hpp"
#include "tests/support/files.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace addin;

TEST_CASE("every function is described in full") {
    std::set<std::string> names;
    for (const Function& function : all_functions()) {
        CAPTURE(function.name);
        CHECK(names.insert(function.identifier).second);
        CHECK(function.name.starts_with("UC."));
        CHECK_FALSE(function.says.empty());
        CHECK(function.says.size() <= 255);
        CHECK_FALSE(function.equation.empty());
        CHECK_FALSE(function.source.empty());
        CHECK(function.parameters.size() <= 16);
        CHECK(function.outcome.columns.size() != 1);
        for (const Column& column : function.outcome.columns) CHECK_FALSE(column.name.empty());
        std::set<std::string> ids;
        for (const Parameter& parameter : function.parameters) {
            CAPTURE(parameter.name);
            CHECK(ids.insert(camel_case(parameter.name)).second);
            CHECK_FALSE(parameter.says.empty());
            CHECK_FALSE(parameter.says.ends_with("."));
            CHECK_FALSE(parameter.kind().empty());
            CHECK(parameter.says.size() <= 255);
        }
    }
}

TEST_CASE("the committed reference and list of names are up to date") {
    // To renew: build/addin/generate_addin --print reference > addin/FUNCTIONS.md (names > addin/names.txt)
    CHECK(file_text("addin/FUNCTIONS.md") == functions_reference());
}

TEST_CASE("a stored name is for ever: the committed list only grows") {
    std::istringstream committed(file_text("addin/names.txt"));
    const std::string now = stored_names();
    std::string line;
    int lines = 0;
    while (std::getline(committed, line)) {
        CAPTURE(line);
        // An optional argument may have been appended behind the last one.
        const bool stands = now.find(line + "\n") != std::string::npos ||
                            now.find(line + "; [") != std::string::npos ||
                            (line.ends_with("\t") && now.find(line + "[") != std::string::npos);
        CHECK(stands);
        ++lines;
    }
    CHECK(lines >= 121);  // raised with every function, so that a line taken out of the list shows here
    CHECK(std::count(now.begin(), now.end(), '\n') ==
          lines);  // a new function is added to the list with its commit
}

TEST_CASE("an entry that does not fit its function stops the catalogue") {
    const auto wrong_count = [] {
        return Function(
            function("UC.X", [](Length a, Length b) { return a + b; }).takes("a", "a", "A length"));
    };
    CHECK_THROWS_AS(wrong_count(), std::logic_error);
    const auto too_many = [] {
        return Function(
            function("UC.X", [](Length a) { return a; }).takes("a", "a", "A").takes("b", "b", "B"));
    };
    CHECK_THROWS_AS(too_many(), std::logic_error);
    const auto wrong_default = [] {
        return Function(function("UC.X", [](Length a) { return a; }).takes("a", "a", "A length", u"5 kg"));
    };
    CHECK_THROWS_AS(wrong_default(), std::logic_error);
    const auto gap = [] {
        return Function(function("UC.X", [](Length a, Length b) { return a + b; })
                            .takes("a", "a", "A", 1.0)
                            .takes("b", "b", "B"));
    };
    CHECK_THROWS_AS(gap(), std::logic_error);
}

}  // namespace undercroft::tests
