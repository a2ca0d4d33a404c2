// Every function x every argument x hostile values, at the border and without an office: the answer is a
// number that its domain allows, a text or table, or a refusal of the right cause that names the argument.
#include "tests/addin/sweep.hpp"
#include "tests/addin/hostile.hpp"
#include "tests/support/near.hpp"

namespace undercroft::tests {

using namespace addin;
using Wanted = HostileValue::Wanted;

namespace {

/// What is wrong with an outcome; nothing when it may stand.
using Complaint = std::string;

/// Levels, differences, and what only compares or converts.
bool may_be_negative(const Limits& limits) {
    if (!limits.columns.empty())
        return std::any_of(limits.columns.begin(), limits.columns.end(), may_be_negative);
    return limits.is_stated && limits.least < 0;
}
bool may_give_negative(const Function& function) {
    return function.outcome.type.shape == Shape::any_quantity || function.outcome.may_be_negative;
}

bool is_below_nothing(const Cell& cell) {
    if (const double* number = std::get_if<double>(&cell))
        return *number < -1e-300;  // less comes to nothing in another unit
    const auto* text = std::get_if<std::u16string_view>(&cell);
    return text != nullptr && (text->starts_with(u"-") || text->starts_with(u"\u2212"));
}

/// The sentence names an argument: the hostile one, or another that it no longer goes with.
bool names_an_argument(const Function& function, const Parameter& hostile, const std::string& sentence) {
    const auto holds = [&](const std::string& part) { return sentence.find(part) != std::string::npos; };
    for (const Parameter& parameter : function.parameters)
        if (holds(parameter.name)) return true;
    if (holds("the result is not a finite number") || holds("the bed overflows at time")) return true;
    // Of a table, what its columns hold.
    static const char* columns[] = {"sieve (",
                                    "time (",
                                    "intensity (",
                                    "duration (",
                                    "coefficient (",
                                    "chainages must rise",
                                    "the first column must rise"};
    return takes_range(hostile) && std::any_of(std::begin(columns), std::end(columns), holds);
}

/// An empty text shows nothing: where the argument may be left out, it is.
bool takes_default(const Parameter& parameter, const Cell& cell) {
    const auto* text = std::get_if<std::u16string_view>(&cell);
    return parameter.optional && text != nullptr && text->empty();
}

Complaint complaint_about_answer(const Function& function, const Parameter& parameter,
                                 const HostileValue& value, const Outcome& outcome) {
    if (!is_sound(*outcome.answer)) return "a number that is not finite, or minus nothing";
    if (value.wanted == Wanted::unreadable && !takes_default(parameter, value.cell)) return "was read";
    if (is_below_nothing(value.cell) && !may_be_negative(parameter.limits)) return "was taken below 0";
    const double* number = outcome.number();
    if (number != nullptr && *number < 0 && !may_give_negative(function)) return "gives less than nothing";
    if (number != nullptr && function.outcome.type.shape == Shape::verdict && *number != 0 && *number != 1)
        return "a verdict that is neither";
    return {};
}

bool is_for_its_number(const Refused& refused) {
    return refused.refusal() == Refusal::unusual || refused.refusal() == Refusal::impossible;
}

Complaint complaint_about_refusal(const Function& function, const Parameter& parameter,
                                  const HostileValue& value, const Outcome& outcome) {
    const std::string sentence = outcome.sentence();
    if (sentence.size() < 14 || sentence.size() > 600) return "no sentence";
    if (sentence.find('\0') != std::string::npos) return "a sentence with a NUL in it";
    if (sentence.find("nan ") != std::string::npos && value.wanted != Wanted::unreadable)
        return "what is no number was computed with";
    // Of a list of things only the figure asked for is read: own_sheets_test.cpp.
    if (parameter.type.shape == Shape::things) return {};
    const bool any_text = parameter.type.shape == Shape::text;
    if (value.wanted == Wanted::unreadable && !takes_default(parameter, value.cell)) {
        // A range may be refused for a number that stands before what cannot be read.
        const bool for_number = takes_range(parameter) && is_for_its_number(*outcome.refused);
        if (outcome.refused->cause() != Cause::value && !any_text && !for_number)
            return "another cause than value";
        if (!sentence.starts_with(parameter.name + ": ")) return "the argument is not named";
    }
    return names_an_argument(function, parameter, sentence) ? "" : "no argument is named";
}

Complaint complaint_about(const Function& function, const Parameter& parameter, const HostileValue& value,
                          const Outcome& outcome) {
    if (!outcome.other.empty()) return "an exception that is no refusal: " + outcome.other;
    return outcome.answer ? complaint_about_answer(function, parameter, value, outcome)
                          : complaint_about_refusal(function, parameter, value, outcome);
}

/// Functions without a table answer in less than 50 ms; on a busy machine the second try counts.
bool is_slow(const Function& function, const std::vector<Cell>& cells, double seconds) {
    const bool has_table = function.outcome.is_table() ||
                           std::any_of(function.parameters.begin(), function.parameters.end(), takes_range);
    const double most = patience * (has_table ? 2 : 0.05);
    return seconds > most && outcome_of(function, cells).seconds > most;
}

bool is_same(const Outcome& a, const Outcome& b) {
    if (a.answer && b.answer) return *a.answer == *b.answer;
    return a.refused && b.refused && a.refused->cause() == b.refused->cause();
}

/// Tries one value in each argument in turn.
template <class Try>
void for_each_argument(const Try& attempt) {
    for (const Function& function : all_functions()) {
        if (function.reads_cell()) continue;  // the component answers these
        for (const Arguments& good : good_arguments().at(function.name)) {
            const std::vector<Cell> base = cells_of(good);
            CAPTURE(function.name);
            REQUIRE(outcome_of(function, base).answer);
            for (std::size_t i = 0; i < function.parameters.size(); ++i) attempt(function, base, i);
        }
    }
}

}  // namespace

TEST_CASE("hostile values end in a sound answer or a refusal that names the argument", "[sweep]") {
    const Hostile hostile;
    CHECK(hostile.values().size() > 150);
    long tried = 0;
    for_each_argument([&](const Function& function, const std::vector<Cell>& base, std::size_t i) {
        const Parameter& parameter = function.parameters[i];
        for (const HostileValue& value : hostile.values()) {
            std::vector<Cell> cells = base;
            cells[i] = value.cell;
            const Outcome outcome = outcome_of(function, cells);
            const Complaint complaint = complaint_about(function, parameter, value, outcome);
            CAPTURE(function.name, parameter.name, value.name, outcome.sentence());
            if (!complaint.empty()) FAIL_CHECK(complaint);
            if (is_slow(function, cells, outcome.seconds)) FAIL_CHECK("slow: " << outcome.seconds << " s");
            if (value.wanted == Wanted::as_twin && !takes_range(parameter)) {
                cells[i] = value.twin;
                if (!is_same(outcome, outcome_of(function, cells))) FAIL_CHECK("its twin reads otherwise");
            }
            const bool missing = std::holds_alternative<std::monostate>(value.cell);
            if (missing && !parameter.optional && !outcome.refused) FAIL_CHECK("may not be left out");
            ++tried;
        }
    });
    WARN(tried << " calls with hostile values");
    CHECK(tried > 130000);
}

TEST_CASE("the derivation refuses what the call refuses, with the same sentence", "[sweep]") {
    const Hostile hostile;
    for_each_argument([&](const Function& function, const std::vector<Cell>& base, std::size_t i) {
        for (const HostileValue& value : hostile.values()) {
            std::vector<Cell> cells = base;
            cells[i] = value.cell;
            const Outcome called = outcome_of(function, cells);
            const Outcome derived = outcome_of([&] { return function.derive(cells).result; });
            CAPTURE(function.name, function.parameters[i].name, value.name);
            if (called.sentence() != derived.sentence() || !derived.other.empty())
                FAIL_CHECK("'" << called.sentence() << "' but '" << derived.sentence() << derived.other
                               << "'");
        }
    });
}

TEST_CASE("a quantity of the wrong dimension in any argument is refused as such, with the argument's name") {
    const Cell wrong = std::u16string_view(u"5 AUD");  // no function of the trade takes money there
    for_each_argument([&](const Function& function, const std::vector<Cell>& base, std::size_t i) {
        const Parameter& parameter = function.parameters[i];
        if (parameter.unit().empty() || parameter.type.is_range()) return;
        std::vector<Cell> cells = base;
        cells[i] = wrong;
        CAPTURE(function.name, parameter.name);
        CHECK_THROWS_MATCHES(function.call(cells), Refused, refuses_value(parameter.name + ": "));
    });
}

}  // namespace undercroft::tests
