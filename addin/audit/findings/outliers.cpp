// A typed number that is unlike the others of its column or row by a power of ten or by the factor between
// two units.
#include <algorithm>
#include <cmath>

#include "addin/audit/book/shown_number.hpp"
#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/lines.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

constexpr double widest = 8;  // the largest of the others over the smallest: beyond that nothing is unlike

/// The factor that brings the number among the others; nothing where it is among them, or none does.
std::optional<double> slipped(double number, double smallest, double largest) {
    static constexpr double factors[] = {10, 100, 1000, 12, 25.4, 304.8};
    const auto is_among = [&](double x) { return x >= 0.8 * smallest && x <= 1.25 * largest; };
    if (number > 3 * largest)
        for (const double factor : factors)
            if (is_among(number / factor)) return factor;
    if (number < smallest / 3)
        for (const double factor : factors)
            if (is_among(number * factor)) return factor;
    return std::nullopt;
}

class OutlierSearch {
public:
    OutlierSearch(const AuditedBook& audited, Findings& findings) : audited_(audited), findings_(findings) {}

    void look(const Line& line) {
        std::vector<const BookCell*> run;
        std::vector<Spot> at;
        const auto end = [&] {
            if (run.size() >= 4) look_at(run, at);
            run.clear();
            at.clear();
        };
        for (const LineCell& cell : line) {
            if (cell.group != LineCell::typed || (!at.empty() && !same_table(at.back(), cell.at))) end();
            if (cell.group != LineCell::typed || !is_input(cell.at)) continue;
            run.push_back(audited_.book.find(cell.at));
            at.push_back(cell.at);
        }
        end();
    }

private:
    [[nodiscard]] bool is_input(const Spot& at) const {
        return !(audited_.sheet(at.sheet).is_protected && audited_.format(at).locked);
    }

    /// Numbers with a unit beside each are a list of different things.
    [[nodiscard]] bool same_table(const Spot& a, const Spot& b) const {
        if (a.column == b.column && unit_in_row(a) != unit_in_row(b)) return false;
        const auto one = audited_.units.of(a);
        const auto other = audited_.units.of(b);
        if (one.has_value() != other.has_value()) return false;
        return !one || (!one->beside && !other->beside && same_unit(*one->text->unit, *other->text->unit));
    }

    /// The first unit to the right in the row: what its numbers are in, though some stand between.
    [[nodiscard]] std::string unit_in_row(Spot at) const {
        for (++at.column; at.column < audited_.book.columns(at.sheet); ++at.column) {
            const BookCell* cell = audited_.book.find(at);
            if (cell != nullptr && cell->text() != nullptr && audited_.units.read(*cell->text()).unit)
                return *cell->text();
        }
        return {};
    }

    void look_at(const std::vector<const BookCell*>& run, const std::vector<Spot>& at) {
        const auto below = [](const BookCell* a, const BookCell* b) { return *a->number() < *b->number(); };
        // Sizes of sieves, durations of storms: what goes one way may go far.
        if (std::is_sorted(run.begin(), run.end(), below) || std::is_sorted(run.rbegin(), run.rend(), below))
            return;
        for (std::size_t i = 0; i < run.size(); ++i) {
            double smallest = INFINITY;
            double largest = 0;
            for (std::size_t j = 0; j < run.size(); ++j) {
                if (j == i) continue;
                smallest = std::min(smallest, *run[j]->number());
                largest = std::max(largest, *run[j]->number());
            }
            if (smallest <= 0 || *run[i]->number() <= 0 || largest > widest * smallest) continue;
            const std::optional<double> factor = slipped(*run[i]->number(), smallest, largest);
            if (!factor || !told_.insert(at[i]).second) continue;
            const bool is_day = std::all_of(at.begin(), at.end(),
                                            [&](const Spot& spot) { return shows_day(audited_.book, spot); });
            const auto text = [&](double number) {
                return is_day ? exact_at(audited_.book, at[i], number) : exact_text(number);
            };
            findings_.add(FindingKind::outlier, Severity::warning, at[i],
                          text(*run[i]->number()) + " stands among " + (is_day ? "days" : "numbers") +
                              " from " + text(smallest) + " to " + text(largest) +
                              (is_day ? ": is it the day that is meant?"
                                      : ": is it off by a factor of " + exact_text(*factor) + "?"));
        }
    }

    const AuditedBook& audited_;
    Findings& findings_;
    std::set<Spot> told_;
};

}  // namespace

void find_outliers(const AuditedBook& audited, Findings& findings) {
    OutlierSearch search(audited, findings);
    each_line(audited, [&](const Line& line) { search.look(line); });
}

}  // namespace undercroft::audit
