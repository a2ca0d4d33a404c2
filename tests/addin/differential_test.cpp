// The same job in SI, in US customary and in mixed units, spelled in every way, gives the same answer: random
// arguments around those of the worked examples, over all functions.
//   UNDERCROFT_CALLS=30000 build/tests/addin_test "[differential]"     fewer, for a build that is slow
#include <cstdlib>

#include "tests/addin/rewrite.hpp"
#include "tests/addin/sweep.hpp"

namespace undercroft::tests {

using namespace addin;

namespace {

/// How near the answers must be, as a share of them: where a search finds a number, to what it finds.
double agreement_of(const Function& function, std::size_t column) {
    const std::vector<Column>& columns = function.outcome.columns;
    return column < columns.size() ? columns[column].found_to : function.outcome.found_to;
}

/// How many roundings of a column's largest number may stand where nearly nothing is left.
double nothing_left_of(const Function& function) {
    return function.outcome.rows_carry_on ? 100 : 1;
}

/// The worked calls of every function.
const std::map<std::string, std::vector<Arguments>>& worked_calls() {
    static const auto calls = [] {
        const FormulaDesk desk;
        std::map<std::string, std::vector<Arguments>> made;
        for (const auto& example : worked_examples().rows)
            walk(parse_formula(example.formula), [&](const Node& node) {
                const Function* function = node.kind == NodeKind::call ? find_function(node.text) : nullptr;
                if (function != nullptr) made[function->name].push_back(desk.arguments(node, *function));
            });
        return made;
    }();
    return calls;
}

/// Every number of an answer in coherent SI; texts as they are.
struct Plain {
    std::vector<double> numbers;
    std::vector<std::size_t> columns;  ///< of each number, in a table
    std::vector<std::string> texts;
    std::optional<Cause> refused;
    std::string sentence;
};

bool is_result_unit(const Function& function, std::size_t i) {
    const auto behind = function.parameters.begin() + static_cast<std::ptrdiff_t>(i) + 1;
    return function.parameters[i].type.shape == addin::Shape::unit && function.outcome.has_unit() &&
           std::all_of(behind, function.parameters.end(),
                       [](const Parameter& later) { return later.optional; });
}
bool is_result_units(const Function& function, std::size_t i) {
    return function.parameters[i].type.shape == addin::Shape::units;
}

/// One call: its arguments taken apart, and changed.
class Case {
public:
    Case(const Function& function, const Arguments& arguments, Random& random)
        : function_(function), random_(random) {
        for (std::size_t i = 0; i < function.parameters.size(); ++i)
            taken_.push_back(taken_apart(arguments[i], function.parameters[i]));
        const double reach = random.whole(0, 2) == 0 ? 0.3 : 0.02;
        for (Taken& taken : taken_)
            if (random.whole(0, 3) != 0) change(taken, random, reach);
    }

    Plain in(UnitSystem system) {
        Writer writer(system, random_);
        Arguments written;
        std::vector<Unit> units;
        for (std::size_t i = 0; i < taken_.size(); ++i) {
            if (is_result_unit(function_, i)) {
                written.push_back(result_unit(i, writer, units));
            } else if (is_result_units(function_, i)) {
                written.push_back(result_units(writer, units));
            } else {
                written.push_back(writer.written(taken_[i]));
            }
        }
        shown_.clear();
        for (const Cell& cell : cells_of(written)) shown_ += shown_as_given(cell) + "; ";
        return plain(cells_of(written), units);
    }

    /// By how much a rounding in the last digits, of the arguments or of a column's largest, changes each
    /// number.
    std::vector<double> condition(const Plain& plain) {
        std::vector<double> changes;
        for (const std::size_t column : plain.columns) {
            double largest = 0;
            for (std::size_t i = 0; i < plain.numbers.size(); ++i)
                if (plain.columns[i] == column) largest = std::max(largest, std::abs(plain.numbers[i]));
            changes.push_back(largest * 0x1p-50);
        }
        for (Taken& taken : taken_)
            for (auto& row : taken.rows)
                for (Piece& piece : row) {
                    if (!piece.quantity || piece.quantity->value == 0) continue;
                    const double kept = piece.quantity->value;
                    piece.quantity->value *= 1 + 0x1p-50;
                    const Plain nudged = in(UnitSystem::si);
                    piece.quantity->value = kept;
                    if (nudged.numbers.size() != changes.size()) continue;
                    for (std::size_t i = 0; i < changes.size(); ++i)
                        changes[i] += std::abs(nudged.numbers[i] - plain.numbers[i]);
                }
        return changes;
    }

    const std::string& shown() const { return shown_; }

private:
    FormulaValue result_unit(std::size_t i, Writer& writer, std::vector<Unit>& units) {
        const Piece& asked = taken_[i].rows.front().front();
        const auto* text = std::get_if<std::u16string>(&asked.as_it_is);
        const std::string standard = text != nullptr ? to_utf8(*text) : function_.outcome.unit();
        const auto unit = unit_in(standard);
        if (!unit) {  // the result's dimension is that of an argument
            units.emplace_back();
            return {};
        }
        const std::string chosen = unit->dimension.is_number() ? standard : writer.unit(unit->dimension);
        units.push_back(parse_unit(chosen));
        return FormulaValue(to_utf16(chosen));
    }

    FormulaValue result_units(Writer& writer, std::vector<Unit>& units) {
        std::string all;
        for (const Column& column : function_.outcome.columns) {
            const auto unit = unit_in(column.unit());
            const bool plain = !unit || unit->dimension.is_number();
            const std::string chosen = plain ? std::string() : writer.unit(unit->dimension);
            units.push_back(plain ? Unit{} : parse_unit(chosen));
            all += (units.size() > 1 ? ";" : "") + chosen;
        }
        return all.find_first_not_of(';') == std::string::npos ? FormulaValue() : FormulaValue(to_utf16(all));
    }

    Plain plain(const std::vector<Cell>& cells, const std::vector<Unit>& units) const {
        Plain plain;
        const Outcome outcome = outcome_of(function_, cells);
        if (outcome.refused) {
            plain.refused = outcome.refused->cause();
            plain.sentence = outcome.sentence();
            return plain;
        }
        const auto add = [&](double number, std::size_t column) {
            plain.columns.push_back(column);
            plain.numbers.push_back(column < units.size() ? units[column].scale.to_coherent(number) : number);
        };
        if (const double* number = outcome.number()) add(*number, 0);
        if (const auto* text = std::get_if<std::string>(&*outcome.answer)) plain.texts.push_back(*text);
        if (const auto* rows = std::get_if<ResultRows>(&*outcome.answer))
            for (const auto& row : *rows)
                for (std::size_t c = 0; c < row.size(); ++c)
                    if (const double* number = std::get_if<double>(&row[c])) add(*number, c);
        return plain;
    }

    const Function& function_;
    Random& random_;
    std::vector<Taken> taken_;
    std::string shown_;
};

/// How far two answers are apart, relative to the numbers; none when they are not of one kind.
std::optional<double> distance(const Plain& a, const Plain& b) {
    if (a.refused != b.refused || a.texts != b.texts || a.numbers.size() != b.numbers.size())
        return std::nullopt;
    double most = 0;
    for (std::size_t i = 0; i < a.numbers.size(); ++i) {
        const double size = std::max(std::abs(a.numbers[i]), std::abs(b.numbers[i]));
        if (size > 0) most = std::max(most, std::abs(a.numbers[i] - b.numbers[i]) / size);
    }
    return most;
}

struct Tally {
    long calls = 0;
    long answered = 0;
    long refused = 0;
    long rounded = 0;  ///< differ by what the rounding of the arguments explains
    double worst = 0;
};

}  // namespace

TEST_CASE("random jobs agree in SI, US customary and mixed units", "[differential]") {
    const char* wanted = std::getenv("UNDERCROFT_CALLS");
    const long calls = wanted == nullptr ? 1000000 : std::atol(wanted);
    Random random;
    std::map<std::string, Tally> tallies;
    std::map<std::string, double> seconds;
    Tally all;
    for (long turn = 0; all.calls < calls; ++turn)
        for (const auto& [name, examples] : worked_calls()) {
            const Function& function = *find_function(name);
            if (function.reads_cell() || function.parameters.empty() || function.role == Role::explains)
                continue;
            const std::clock_t start = std::clock();
            if (turn % 20 != 0 && seconds[name] > 0.02 * static_cast<double>(turn + 20) / 20) continue;
            Case job(
                function,
                examples[static_cast<std::size_t>(random.whole(0, static_cast<int>(examples.size()) - 1))],
                random);
            const Plain si = job.in(UnitSystem::si);
            const std::string in_si = job.shown();
            Tally& tally = tallies[name];
            for (const UnitSystem system : {UnitSystem::us, UnitSystem::mixed}) {
                const Plain other = job.in(system);
                const auto apart = distance(si, other);
                CAPTURE(name, in_si, job.shown(), si.sentence, other.sentence);
                if (!apart) {
                    FAIL_CHECK("one refuses, or gives another text or table");
                } else if (*apart > all_digits) {
                    ++tally.rounded;
                    const std::vector<double> changes = job.condition(si);
                    for (std::size_t i = 0; i < changes.size(); ++i)
                        if (std::abs(si.numbers[i] - other.numbers[i]) >
                            nothing_left_of(function) * changes[i] +
                                agreement_of(function, si.columns[i]) * std::abs(si.numbers[i]))
                            FAIL_CHECK(exact_text(si.numbers[i])
                                       << " is not " << exact_text(other.numbers[i]));
                } else {
                    tally.worst = std::max(tally.worst, *apart);
                }
            }
            tally.calls += 3;
            all.calls += 3;
            ++(si.refused ? tally.refused : tally.answered);
            seconds[name] += static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        }
    for (const auto& [name, tally] : tallies) {
        all.answered += tally.answered;
        all.refused += tally.refused;
        all.rounded += tally.rounded;
        all.worst = std::max(all.worst, tally.worst);
        CAPTURE(name, tally.answered, tally.refused, tally.rounded);
        CHECK(tally.answered > 0);
    }
    WARN(all.calls << " calls: " << all.answered << " jobs answered, " << all.refused << " refused alike, "
                   << all.rounded << " differ by the rounding of their arguments; worst of the rest "
                   << all.worst);
    CHECK(tallies.size() > 100);
    CHECK(all.answered > 2 * all.refused);
    CHECK(all.rounded * 100 < all.calls);
}

}  // namespace undercroft::tests
