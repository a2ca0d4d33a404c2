// Every unit of the table against GNU units (the program) and, where it knows the spelling, UDUNITS-2 (the
// library). The tests walk the table: a new unit is checked without a new test.
#include <udunits2.h>

#include <array>
#include <cstdio>
#include <fstream>
#include <map>
#include <set>

#include "tests/support/near.hpp"
#include "units/text.hpp"
#include "units/unit.hpp"

namespace undercroft::tests {

namespace {

/// The coherent unit in the grammar of GNU units and UDUNITS-2.
std::string coherent_reference(const Dimension& dimension) {
    std::string text = "1";
    const std::pair<Base, const char*> bases[] = {
        {Base::length, "m"}, {Base::mass, "kg"}, {Base::time, "s"}, {Base::angle, "radian"}};
    for (const auto& [base, symbol] : bases)
        if (const int n = dimension.sixths(base) / Dimension::parts; n != 0)
            text += std::string(" ") + symbol + "^" + std::to_string(n);
    return text;
}

/// Asks the program `units` for many conversions in one run; one answer a line.
std::vector<double> ask_gnu_units(const std::vector<std::pair<std::string, std::string>>& questions) {
    const std::string path = "gnu_units_questions.txt";
    {
        std::ofstream file(path);
        for (const auto& [have, want] : questions) file << have << "\n" << want << "\n";
    }
    const std::string command =
        std::string(GNU_UNITS_PROGRAM) + " --terse --output-format %.17g --locale en_US < " + path + " 2>&1";
    std::FILE* pipe = popen(command.c_str(), "r");
    REQUIRE(pipe != nullptr);
    std::vector<double> answers;
    std::array<char, 256> line{};
    while (std::fgets(line.data(), static_cast<int>(line.size()), pipe) != nullptr) {
        INFO("GNU units answered: " << line.data());
        char* end = nullptr;
        const double value = std::strtod(line.data(), &end);
        REQUIRE(end != line.data());
        answers.push_back(value);
    }
    pclose(pipe);
    std::remove(path.c_str());
    return answers;
}

std::vector<std::string> spellings(const UnitRow& row) {
    std::vector<std::string> all = {std::string(row.symbol)};
    for (std::string_view rest = row.also; !rest.empty();) {
        const std::size_t bar = std::min(rest.find('|'), rest.size());
        all.emplace_back(rest.substr(0, bar));
        rest.remove_prefix(std::min(bar + 1, rest.size()));
    }
    return all;
}

}  // namespace

TEST_CASE("every unit agrees with GNU units") {
    std::vector<std::pair<std::string, std::string>> questions;
    for (const UnitRow& row : unit_table())
        questions.emplace_back(std::string(row.reference), coherent_reference(row.dimension));
    const std::vector<double> answers = ask_gnu_units(questions);
    REQUIRE(answers.size() == questions.size());
    for (std::size_t i = 0; i < answers.size(); ++i) {
        const UnitRow& row = unit_table()[i];
        CAPTURE(row.symbol, row.reference, questions[i].second);
        CHECK(row.scale.to_coherent(1) == Approx(answers[i]).epsilon(4e-16).margin(0));
    }
}

TEST_CASE("every unit that UDUNITS-2 knows agrees with it") {
    ut_set_error_message_handler(ut_ignore);
    ut_system* system = ut_read_xml(nullptr);
    REQUIRE(system != nullptr);
    // What UDUNITS-2 means something else by: minutes and seconds of arc (on a drawing feet and inches), the
    // cup, the milliphot, the fluid ounce.
    const std::set<std::string> homonyms = {"′", "″", "cu ft", "cu yd", "mph", "oz"};
    int checked = 0;
    for (const UnitRow& row : unit_table()) {
        const bool has_reference = row.dimension.sixths(Base::count) == 0;
        for (const std::string& spelling : spellings(row)) {
            ut_unit* theirs = ut_parse(system, spelling.c_str(), UT_UTF8);
            if (theirs == nullptr || !has_reference || homonyms.contains(spelling)) {
                ut_free(theirs);
                continue;
            }
            ut_unit* coherent = ut_parse(system, coherent_reference(row.dimension).c_str(), UT_UTF8);
            REQUIRE(coherent != nullptr);
            CAPTURE(spelling);
            CHECK(ut_are_convertible(theirs, coherent) != 0);
            if (ut_are_convertible(theirs, coherent) == 0) continue;
            cv_converter* converter = ut_get_converter(theirs, coherent);
            // Its acre is of US survey feet, ours of international feet (a decision of the design): 4e-6
            // apart.
            const double tolerance = spelling.starts_with("acre") ? 4.1e-6 : 2e-15;
            CHECK(row.scale.to_coherent(1) ==
                  Approx(cv_convert_double(converter, 1)).epsilon(tolerance).margin(0));
            ++checked;
            cv_free(converter);
            ut_free(coherent);
            ut_free(theirs);
        }
    }
    CHECK(checked > 100);
    ut_free_system(system);
}

TEST_CASE("every spelling of the table is read as its unit, and no spelling stands twice") {
    std::map<std::string, std::string_view> seen;
    for (const UnitRow& row : unit_table()) {
        for (const std::string& spelling : spellings(row)) {
            CAPTURE(spelling);
            const std::string folded =
                row.case_matters ? fold_spelling(spelling) : lower_case(fold_spelling(spelling));
            CHECK(seen.emplace(folded, row.symbol).second);
            const Unit unit = parse_unit(spelling);
            CHECK(unit.dimension == row.dimension);
            CHECK(unit.scale.to_coherent(1) == row.scale.to_coherent(1));
        }
        CHECK_FALSE(row.definition.empty());
    }
}

TEST_CASE("an ambiguous spelling is not in the table, and its choices are units") {
    for (const AmbiguousUnit& ambiguous : ambiguous_units()) {
        CAPTURE(ambiguous.spelling);
        CHECK_THROWS_MATCHES(parse_unit(ambiguous.spelling), Refused,
                             refuses_value(std::string(ambiguous.choices)));
    }
}

TEST_CASE("familiar figures of customary units", "[published]") {
    // NIST Special Publication 811 (2008), appendix B.8: factors printed to seven digits.
    struct Row {
        const char* unit;
        const char* in;
        double factor;
        double half_digit;
    };
    const Row rows[] = {
        {"ft", "m", 0.3048, 0},
        {"acre", "m2", 4046.856, 0.0005},  // international acre; SP 811 prints the survey acre 4046.873
        {"acre-ft", "m3", 1233.482, 0.0005},
        {"cfs", "m3/s", 0.02831685, 5e-9},
        {"US gal", "L", 3.785412, 5e-7},
        {"imp gal", "L", 4.54609, 0},
        {"lb", "kg", 0.45359237, 0},
        {"lbf", "N", 4.448222, 5e-7},
        {"kip", "kN", 4.448222, 5e-7},
        {"psi", "kPa", 6.894757, 5e-7},
        {"psf", "Pa", 47.88026, 5e-6},
        {"lb/ft3", "kg/m3", 16.01846, 5e-6},
        {"lbf/ft3", "N/m3", 157.0875, 5e-5},
        {"oz/yd2", "g/m2", 33.90575, 5e-6},
        {"short ton", "kg", 907.1847, 5e-5},
        {"long ton", "kg", 1016.047, 5e-4},
        {"in/h", "mm/h", 25.4, 0},
        {"US gpm", "L/s", 0.06309020, 5e-9},
        {"mil", "µm", 25.4, 1e-15},
    };
    for (const Row& row : rows) {
        CAPTURE(row.unit, row.in);
        const double ours = parse_unit(row.in).scale.from_coherent(parse_unit(row.unit).scale.to_coherent(1));
        CHECK(ours == Approx(row.factor).margin(row.half_digit + 1e-12).epsilon(0));
    }
}

}  // namespace undercroft::tests
