// The reference: what it promises of every function, and that its ways lead somewhere.
#include <algorithm>
#include <set>

#include "addin/catalogue/catalogue.hpp"
#include "addin/generate/guide.hpp"
#include "addin/generate/sketches.hpp"
#include "addin/generate/tasks.hpp"
#include "addin/generate/unit_list.hpp"
#include "addin/generate/writers.hpp"
#include "tests/addin/numbers.hpp"
#include "tests/support/catch.hpp"
#include "units/unit.hpp"

namespace undercroft::tests {

using namespace addin;
using Catch::Contains;

namespace {

/// Whatever computes; what explains takes a cell or nothing.
template <class Visit>
void for_each_computing(const Visit& visit) {
    for (const Group& group : catalogue()) {
        if (group.title == "For the checker") continue;
        for (const Function& function : group.functions) visit(function, guide_of(function));
    }
}

std::set<std::string> refused_for(const Guide& guide, const std::string& cause) {
    std::set<std::string> arguments;
    for (const ShownRefusal& refusal : guide.refusals)
        if (refusal.cause == cause) arguments.insert(refusal.arguments.begin(), refusal.arguments.end());
    return arguments;
}

/// Whether a range stands there, of the argument or of a column of it.
bool has_range(const Limits& limits, const std::string Limits::*range) {
    return !(limits.*range).empty() ||
           std::any_of(limits.columns.begin(), limits.columns.end(),
                       [&](const Limits& column) { return !(column.*range).empty(); });
}

}  // namespace

TEST_CASE("every function has a formula to paste, a slip that is refused, and related ones") {
    for_each_computing([](const Function& function, const Guide& guide) {
        CAPTURE(function.name);
        REQUIRE_FALSE(guide.results.empty());
        for (const ShownResult& result : guide.results)
            CHECK((!result.result.empty() || !result.table.empty()));
        CHECK_FALSE(guide.refusals.empty());
        CHECK(guide.arguments.size() == function.parameters.size());
    });
    for (const Function& function : all_functions()) {
        CAPTURE(function.name);
        CHECK_FALSE(function.guidance.related.empty());
    }
}

TEST_CASE("what an entry declares of an argument is told among the errors, by its cause") {
    for_each_computing([](const Function& function, const Guide& guide) {
        const auto blank = refused_for(guide, "left out or blank");
        const auto dimension = refused_for(guide, "another dimension");
        const auto unreadable = refused_for(guide, "cannot be read");
        const auto unusual = refused_for(guide, "unusual without a unit");
        const auto impossible = refused_for(guide, "not possible");
        const ExampleCall call(function);
        for (std::size_t i = 0; i < function.parameters.size(); ++i) {
            const Parameter& parameter = function.parameters[i];
            CAPTURE(function.name, parameter.name);
            const Shape shape = number_type(parameter.type).shape;
            const bool is_number = shape == Shape::quantity || shape == Shape::percentage;
            // A table that comes from another function in the example cannot be changed cell by cell.
            const bool is_whole = number_type(parameter.type).is_range() && call.table(i).empty();
            if (!parameter.optional) CHECK(blank.contains(parameter.name));
            if (is_number) CHECK(dimension.contains(parameter.name));
            const bool is_one_thing = parameter.type.otherwise.empty() && shape != Shape::text;
            if (is_one_thing && shape != Shape::things)
                CHECK((unreadable.contains(parameter.name) || dimension.contains(parameter.name)));
            if (is_whole) continue;
            if (has_range(parameter.limits, &Limits::usual)) CHECK(unusual.contains(parameter.name));
            if (has_range(parameter.limits, &Limits::possible)) CHECK(impossible.contains(parameter.name));
        }
    });
}

TEST_CASE("every argument tells what is usual of it, or why every number is, and what a blank means") {
    for_each_computing([](const Function& function, const Guide& guide) {
        for (std::size_t i = 0; i < function.parameters.size(); ++i) {
            const Parameter& parameter = function.parameters[i];
            CAPTURE(function.name, parameter.name);
            CHECK_THAT(guide.arguments[i].blank, Contains("blank"));
            const ValueType& type = number_type(parameter.type);
            const bool is_number =
                type.shape == Shape::quantity || type.shape == Shape::percentage || type.shape == Shape::grid;
            if (is_number) CHECK((!parameter.limits.usual.empty() || !parameter.limits.why.empty()));
            for (std::size_t c = 0; c < type.columns.size(); ++c) {
                CAPTURE(c);
                if (number_type(type.columns[c]).shape != Shape::quantity) continue;
                REQUIRE(c < parameter.limits.columns.size());
                const Limits& column = parameter.limits.columns[c];
                CHECK((!column.usual.empty() || !column.why.empty()));
            }
        }
    });
}

TEST_CASE("a table that a function takes can be pasted, or comes from the function that is named") {
    for_each_computing([](const Function& function, const Guide& guide) {
        const ExampleCall call(function);
        for (std::size_t i = 0; i < function.parameters.size(); ++i) {
            if (call.table(i).empty()) continue;
            CAPTURE(function.name, function.parameters[i].name);
            CHECK(std::any_of(guide.results.begin(), guide.results.end(),
                              [](const ShownResult& result) { return !result.cells.empty(); }));
        }
    });
}

TEST_CASE("a related function is another one, and there is such a function") {
    for (const Function& function : all_functions())
        for (const std::string& name : function.guidance.related) {
            CAPTURE(function.name, name);
            CHECK(find_function(name) != nullptr);
            CHECK(name != function.name);
        }
}

TEST_CASE("a result of the reference has the unit that was asked for, or the default") {
    CHECK(shown_result("UC.PIT.VOLUME(\"20 m\"; \"10 m\"; \"3 m\"; \"2H:1V\")").result == "1284 m3");
    CHECK(shown_result("UC.PIT.VOLUME(\"20 m\"; \"10 m\"; \"3 m\"; \"2H:1V\"; \"L\")").result ==
          "1.284e+06 L");
    CHECK(shown_result("UC.ATLEAST(\"305 mm\"; \"12 in\")").result == "TRUE");
    CHECK(shown_result("UC.ATLEAST(\"304 mm\"; \"12 in\")").result == "FALSE");
    CHECK(shown_result("UC.DIMENSION(\"kN/m3\")").result == "L-2 M T-2");
    CHECK(shown_result("UC.LIFTS(\"450 mm\"; \"150 mm\")").result == "3 each");
    const ShownResult table = shown_result("UC.DRAW.BOX(\"40 m\"; \"20 m\")");
    CHECK(table.rows == 6);
    CHECK(table.table.front() == std::vector<std::string>{"m", "m"});
}

TEST_CASE("what is refused is listed by its cause, of every function that takes a quantity") {
    const auto causes = [](const char* name) {
        std::set<std::string> all;
        for (const ShownRefusal& refusal : guide_of(*find_function(name)).refusals) all.insert(refusal.cause);
        return all;
    };
    CHECK(causes("UC.PIT.VOLUME") == std::set<std::string>{"another dimension", "cannot be read",
                                                           "left out or blank", "not possible",
                                                           "outside the method", "unusual without a unit",
                                                           "without a unit beside others"});
    CHECK(causes("UC.TOTAL").contains("without a unit beside others"));
    CHECK(causes("UC.LOOKUP").contains("no answer"));
    const Guide& guide = guide_of(*find_function("UC.PIT.VOLUME"));
    for (std::size_t i = 1; i < guide.refusals.size(); ++i) {  // cause by cause
        const bool again = guide.refusals[i].cause == guide.refusals[i - 1].cause;
        const auto before = guide.refusals.begin() + static_cast<std::ptrdiff_t>(i);
        CHECK((again || std::none_of(guide.refusals.begin(), before, [&](const ShownRefusal& earlier) {
                   return earlier.cause == guide.refusals[i].cause;
               })));
    }
}

TEST_CASE("every function is found by other words of the trade than its own name") {
    for (const Function& function : all_functions()) {
        CAPTURE(function.name);
        CHECK(function.guidance.also_called.find(", ") != std::string::npos);
    }
}

TEST_CASE("a slip is told with the error that the cell shows and the reason, without the function's name") {
    const Guide& guide = guide_of(*find_function("UC.PIT.VOLUME"));
    const auto told = [&guide](const std::string& error, const std::string& reason) {
        return std::any_of(guide.refusals.begin(), guide.refusals.end(), [&](const ShownRefusal& refusal) {
            return refusal.error == error && refusal.reason.find(reason) != std::string::npos;
        });
    };
    CHECK(told("#VALUE!", "depth: \"2.2 kg\" is a mass; a length is wanted"));
    CHECK(told("#NUM!", "batter: 45 is unusual"));
    CHECK(told("#VALUE!", "base length: is left out"));
    for (const ShownRefusal& refusal : guide.refusals)
        CHECK(refusal.reason.find("in UC.PIT.VOLUME") == std::string::npos);
}

TEST_CASE("what a blank cell means is what the function does with it") {
    const Guide pit = guide_of(*find_function("UC.PIT.VOLUME"));
    CHECK(pit.arguments.front().blank == "required; a blank cell is refused");
    const Guide ports = guide_of(*find_function("UC.BED.PORTS"));
    CHECK(ports.arguments.back().blank == "left out: 0; a blank cell is 0");
    const Guide wheel = guide_of(*find_function("UC.LOAD.WHEEL"));
    CHECK(wheel.arguments[4].blank == "left out: 1.15; a blank cell is refused, a blank pair is as left out");
}

TEST_CASE("the cells to paste are those of the formula, its ranges where they land") {
    const ShownResult& routed = guide_of(*find_function("UC.ROUTE.DEPTH")).results.front();
    REQUIRE(routed.cells.size() == 7);
    CHECK(routed.cells[0] == std::vector<std::string>{"min", "L/s", "", "m", "m3", "", "m", "L/s"});
    CHECK(routed.cells[6] == std::vector<std::string>{"60", "0", "", "", "", "", "", ""});
    CHECK(routed.formula == "=UC.ROUTE.DEPTH(A1:B7; D1:E5; G1:H5; \"5 min\")");
    CHECK(guide_of(*find_function("UC.PIT.VOLUME")).results.front().cells.empty());
}

TEST_CASE("a formula to paste has no table within it, which each language writes in its own way") {
    for_each_computing([](const Function& function, const Guide& guide) {
        for (const ShownResult& result : guide.results) {
            CAPTURE(function.name, result.formula);
            CHECK(result.formula.find('{') == std::string::npos);
        }
    });
}

TEST_CASE("every function stands in the index by task, and all that stand there exist") {
    std::set<std::string> named;
    for (const Task& task : tasks()) {
        CAPTURE(task.question);
        CHECK_FALSE(task.functions.empty());
        for (const std::string& name : task.functions) {
            CHECK(find_function(name) != nullptr);
            named.insert(name);
        }
    }
    CHECK(named.size() == all_functions().size());
}

TEST_CASE("every sketch is drawn, within its paper, in light and in dark, and some function shows it") {
    std::set<Sketch> shown;
    for (const Function& function : all_functions()) shown.insert(function.guidance.sketch);
    for (const Sketch sketch : all_sketches()) {
        CAPTURE(sketch_name(sketch));
        CHECK(shown.contains(sketch));
        const std::string file = sketch_file(sketch);
        CHECK_THAT(file,
                   Contains("prefers-color-scheme: dark") && Contains("<title>" + sketch_title(sketch)));
        for (std::size_t at = file.find("points=\""); at != std::string::npos;
             at = file.find("points=\"", at + 1))
            CHECK(file.substr(at + 8, 1) != "-");
    }
    CHECK(all_sketches().size() + (shown.contains(Sketch::none) ? 1 : 0) == shown.size());
}

TEST_CASE("the page loads nothing from elsewhere, and is found by other words of the trade") {
    const std::string page = functions_page();
    for (const char* elsewhere : {"src=", "@import", "url(", "<link", "fetch("}) {
        CAPTURE(elsewhere);
        CHECK(page.find(elsewhere) == std::string::npos);
    }
    for (std::size_t at = page.find("http"); at != std::string::npos; at = page.find("http", at + 1))
        CHECK(page.substr(at, 26) == "http://www.w3.org/2000/svg");
    CHECK_THAT(page, Contains("id=\"pitVolume\" data-words=\"uc.pit.volume") && Contains("frustum"));
    for (const Function& function : all_functions()) {
        CAPTURE(function.name);
        CHECK_THAT(page, Contains("id=\"" + function.identifier + "\""));
    }
}

TEST_CASE("every unit and every dimension of the trade is listed") {
    CHECK(listed_units().size() == unit_table().size());
    CHECK(listed_dimensions().size() == named_dimensions().size());
    const auto units = listed_units();
    const auto foot =
        std::find_if(units.begin(), units.end(), [](const ListedUnit& unit) { return unit.symbol == "ft"; });
    REQUIRE(foot != units.end());
    CHECK(foot->dimension == "length");
    CHECK(foot->size == "0.3048 m");
}

}  // namespace undercroft::tests
