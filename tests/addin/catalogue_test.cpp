// The catalogue walked: every entry is complete and legal, whatever it computes.
#include <set>
#include <sstream>

#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/generate/committed.hpp"
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

TEST_CASE("what is committed of the catalogue is up to date") {
    for (const CommittedFile& file : committed_files())
        if (file_text(file.path) != file.text) FAIL_CHECK(file.path << " is stale: " << how_to_renew);
}

TEST_CASE("a stored name is for ever: the committed list only grows") {
    const std::string committed = file_text("addin/names.txt");
    CHECK(lost_names(committed, stored_names()).empty());
    CHECK(lost_names("undercroft.UC.gone\tUC.GONE\tdepth\n", stored_names()).size() == 1);
    // Of the first release not a line is missing, whatever was renewed since.
    CHECK(lost_names(file_text("tests/data/first-release/names.txt"), committed).empty());
    CHECK(lost_names(file_text("tests/data/first-release/names.txt"), "").size() >= 121);
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
    const auto required_later = [] {
        return Function(function("UC.X", [](Length a, Length b) { return a + b; })
                            .takes("a", "a", "A")
                            .takes("b", "b", "B")
                            .added_later());
    };
    CHECK_THROWS_AS(required_later(), std::logic_error);
}

}  // namespace undercroft::tests
