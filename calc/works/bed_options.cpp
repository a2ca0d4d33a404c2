#include "calc/works/bed_options.hpp"

#include "calc/works/best.hpp"
#include "calc/works/excavation.hpp"
#include "calc/works/takeoff.hpp"

namespace undercroft::calc {

namespace {

constexpr double most_candidates = 1e6;

bool is_passed(double ratio) {
    return is_at_most(ratio, 1.0);
}

/// A candidate as far as it is looked at: what is told of those kept is computed at the end.
struct Candidate {
    std::size_t kind;
    const BedStack* stack;
    BedPlan plan;
    bool across;
    Volume storage;
    Worst worst;
};

class BedSearch {
public:
    BedSearch(const OptionsJob& job, Kept kept, Pruning pruning, double candidates)
        : job_(job),
          site_(job.site),
          is_pruned_(pruning == Pruning::by_bounds),
          passing_(kept.passing, candidates),
          failing_(kept.failing, candidates) {}

    void look_at(std::size_t kind, const BedPlan& plan, const std::vector<BedStack>& stacks) {
        const Money units = unit_cost(kind, plan);
        for (const BedStack& stack : stacks) look_at({kind, &stack, plan, false, zero, stack.worst}, units);
    }

    [[nodiscard]] std::vector<BedOption> passing() { return told(passing_.in_order()); }
    [[nodiscard]] std::vector<BedOption> failing() { return told(failing_.in_order()); }
    [[nodiscard]] double passed() const { return passed_; }

private:
    void look_at(Candidate candidate, Money units) {
        const double at_least = candidate.worst.ratio;
        if (is_pruned_ && !is_passed(at_least) && !failing_.takes(at_least)) return;
        const Bed bed = bed_of(candidate);
        candidate.storage = provided(candidate, bed);
        candidate.worst.take(OptionCheck::storage, demand_ratio(site_.storage_wanted, candidate.storage));
        place_pit(candidate);
        if (!is_passed(candidate.worst.ratio)) return failing_.offer(candidate.worst.ratio, candidate);

        ++passed_;
        if (is_pruned_ && !passing_.takes(units)) return;
        const BedQuantities quantities = quantities_of(candidate, bed);
        const Count least_rolls = least_fabric_rolls(quantities.fabric, site_.roll);
        const auto cost_with = [&](Count rolls) {
            return units + cost_of(job_.rates, quantities, counted(candidate.plan, rolls));
        };
        if (is_pruned_ && !passing_.takes(cost_with(least_rolls))) return;
        passing_.offer(cost_with(rolls_around(candidate, bed)), candidate);
    }

    [[nodiscard]] Money unit_cost(std::size_t kind, const BedPlan& plan) const {
        const Count ends = 2.0 * plan.rows;
        const Count middles = plan.all_units - ends;
        return money_of(cost(as_quantity(ends), job_.kinds[kind].end_rate)) +
               money_of(cost(as_quantity(middles), job_.kinds[kind].middle_rate));
    }
    [[nodiscard]] const ChamberKind& unit_of(const Candidate& candidate) const {
        return job_.kinds[candidate.kind].unit;
    }
    [[nodiscard]] Bed bed_of(const Candidate& candidate) const {
        const BedPlan& plan = candidate.plan;
        const BedStack& stack = *candidate.stack;
        return {plan.length,
                plan.width,
                site_.batter,
                stack.heights.base_stone,
                stack.cover_stone,
                site_.porosity,
                unit_of(candidate).arch,
                plan.chamber_length};
    }
    [[nodiscard]] BedQuantities quantities_of(const Candidate& candidate, const Bed& bed) const {
        return bed_quantities(bed, candidate.stack->heights, site_.stone, site_.earth, site_.roll.lap);
    }
    [[nodiscard]] Count rolls_around(const Candidate& candidate, const Bed& bed) const {
        return fabric_rolls(bed, candidate.stack->heights.bed_height, site_.roll);
    }
    static CountedBed counted(const BedPlan& plan, Count rolls) {
        return {plan.all_units, plan.ports, rolls, plan.chamber_length};
    }

    /// Up to the level that counts, less the pores that the plastic of the units takes.
    [[nodiscard]] Volume provided(const Candidate& candidate, const Bed& bed) const {
        const ChamberKind& unit = unit_of(candidate);
        const Mass plastic = number(candidate.plan.all_units) * unit.mass;
        return bed_volume(candidate.stack->storage_level, bed) -
               number(site_.porosity) * (plastic / unit.plastic);
    }

    /// Along the space, or across it where the bed fits so alone or its pit fits better.
    void place_pit(Candidate& candidate) const {
        const Length length = with_strips(candidate.plan.length, *candidate.stack);
        const Length width = with_strips(candidate.plan.width, *candidate.stack);
        Worst along;
        along.take(OptionCheck::pit_length, demand_ratio(length, site_.ground_length));
        along.take(OptionCheck::pit_width, demand_ratio(width, site_.ground_width));
        Worst across;
        across.take(OptionCheck::pit_length, demand_ratio(length, site_.ground_width));
        across.take(OptionCheck::pit_width, demand_ratio(width, site_.ground_length));
        const BedPlan& plan = candidate.plan;
        candidate.across = !plan.fits_along || (plan.fits_across && across.ratio < along.ratio);
        const Worst& placed = candidate.across ? across : along;
        candidate.worst.take(placed.check, placed.ratio);
    }
    [[nodiscard]] Length with_strips(Length side, const BedStack& stack) const {
        return pit_side(side, stack.heights.pit_depth, site_.batter) + 2.0 * site_.edge_strip;
    }

    [[nodiscard]] std::vector<BedOption> told(const std::vector<Candidate>& candidates) const {
        std::vector<BedOption> options;
        for (const Candidate& candidate : candidates) options.push_back(option_of(candidate));
        return options;
    }
    [[nodiscard]] BedOption option_of(const Candidate& candidate) const {
        const BedPlan& plan = candidate.plan;
        const BedStack& stack = *candidate.stack;
        const Bed bed = bed_of(candidate);
        const BedQuantities quantities = quantities_of(candidate, bed);
        const Count rolls = rolls_around(candidate, bed);
        const bool holds = is_at_most(site_.storage_wanted, bed_volume(stack.heights.bed_height, bed));
        return {count(static_cast<double>(candidate.kind + 1)),
                candidate.across,
                plan.rows,
                plan.units,
                stack.heights.base_stone,
                stack.cover_stone,
                plan.length,
                plan.width,
                stack.heights.bed_depth,
                candidate.storage,
                holds ? std::optional(bed_depth(site_.storage_wanted, bed)) : std::nullopt,
                quantities.pit,
                quantities.bedding_stone + quantities.embedment_stone,
                plan.all_units,
                rolls,
                unit_cost(candidate.kind, plan) + cost_of(job_.rates, quantities, counted(plan, rolls)),
                candidate.worst,
                is_passed(candidate.worst.ratio)};
    }

    const OptionsJob& job_;
    const OptionsSite& site_;
    bool is_pruned_;
    Best<Money, Candidate> passing_;
    Best<double, Candidate> failing_;
    double passed_ = 0;
};

// What is checked before anything is computed.

void require_site(const OptionsSite& site) {
    require_positive("space's length", site.length);
    require_positive("space's width", site.width);
    require_positive("length at ground level", site.ground_length);
    require_positive("width at ground level", site.ground_width);
    require_not_negative("edge strip", site.edge_strip);
    require_not_negative("not counted", site.not_counted);
    require_not_negative("dry margin", site.ground.dry_margin);
    require_positive("storage wanted", site.storage_wanted);
    require_positive("safety", site.ground.safety);
    require_positive("presumptive pressure", site.ground.presumptive);
    require(!is_above(site.ground.lowest_surface, site.ground.highest_surface),
            "the lowest level of the surface lies above its highest");
    require(site.ground.surface - site.ground.groundwater - site.ground.dry_margin > zero,
            "groundwater with its margin stands up to the finished surface: no bed stays dry");
}

void require_kind(const ChamberKind& kind) {
    require_positive("mass", kind.mass);
    require_positive("density of plastic", kind.plastic);
    require_positive("least cover", kind.least_cover);
    require_positive("greatest cover", kind.greatest_cover);
    require_positive("pressure on the crown", kind.crown_limit);
    require_positive("pressure for its life", kind.long_limit);
    require(is_at_most(kind.arch.span, kind.over_feet), shown("span", kind.arch.span),
            " must be no more than the width over the feet (", amount(kind.over_feet), ")");
}

std::string row_of_list(const char* list, std::size_t row) {
    return list + (" " + std::to_string(row + 1)) + ": ";
}

void require_whole_steps(const char* name, const Steps<Count>& range, double least) {
    (void)require_whole(name, range.from, least);
    (void)require_whole(name, range.step);
    (void)values_of(name, range);
}

Dimension require_prices(const OptionsJob& job) {
    std::vector<Quantity> rates;
    for (std::size_t i = 0; i < job.kinds.size(); ++i) {
        const PricedKind& kind = job.kinds[i];
        refused_behind([&] { return row_of_list("unit kind", i); },
                       [&] {
                           require_kind(kind.unit);
                           for (const Quantity& rate : {kind.end_rate, kind.middle_rate}) {
                               (void)cost(as_quantity(count(0)), rate);
                               rates.push_back(rate);
                           }
                       });
    }
    const CountedBed nothing{zero, zero, zero, zero};
    for (std::size_t i = 0; i < job.rates.size(); ++i)
        refused_behind([&] { return row_of_list("rate", i); },
                       [&] {
                           (void)cost_of({job.rates[i]}, BedQuantities{}, nothing);
                           rates.push_back(job.rates[i].rate);
                       });
    return currency_of(rates);
}

/// Of one kind, base by base and cover by cover.
std::vector<BedStack> stacks_of(const OptionsJob& job, const ChamberKind& kind, double bases, double covers) {
    const OptionsSite& site = job.site;
    const UnitWeight stone = site.stone.bulk_density * standard_gravity;
    std::vector<BedStack> stacks;
    stacks.reserve(static_cast<std::size_t>(bases * covers));
    for (std::size_t b = 0; b < static_cast<std::size_t>(bases); ++b)
        for (std::size_t c = 0; c < static_cast<std::size_t>(covers); ++c)
            stacks.push_back(bed_stack(kind, value_of(job.base_stone, b), value_of(job.cover_stone, c),
                                       site.over_stone, stone, site.ground, site.traffic, site.not_counted));
    return stacks;
}

void require_some(const OptionsJob& job, double candidates) {
    require(candidates > 0, "no bed fits: not even ", amount(job.rows.from), " rows of ",
            amount(job.units.from), " units find room, with their margins, in a space of ",
            amount(job.site.length), " by ", amount(job.site.width));
    require(candidates <= most_candidates, std::to_string(static_cast<long long>(candidates)),
            " beds fit, and at most ", std::to_string(static_cast<long long>(most_candidates)),
            " are searched: widen the steps of base and cover stone, give rows and units in a row a narrower "
            "range or a wider step, or leave a kind of unit out");
}

}  // namespace

Options bed_options(const OptionsJob& job, Kept kept, Pruning pruning) {
    require_site(job.site);
    require(!job.kinds.empty(), "there is no kind of unit");
    const double bases = values_of("base stone", job.base_stone);
    const double covers = values_of("cover stone", job.cover_stone);
    require_whole_steps("rows", job.rows, 1);
    require_whole_steps("units in a row", job.units, 2);
    const Dimension currency = require_prices(job);

    const BedSpace space{job.site.length, job.site.width, job.site.side_margin, job.site.end_margin,
                         job.site.port_interval};
    std::vector<BedPlans> plans;
    double candidates = 0;
    for (std::size_t i = 0; i < job.kinds.size(); ++i)
        refused_behind([&] { return row_of_list("unit kind", i); },
                       [&] {
                           plans.emplace_back(job.kinds[i].unit, space, job.rows, job.units);
                           candidates += plans.back().size() * bases * covers;
                       });
    require_some(job, candidates);

    std::vector<std::vector<BedStack>> stacks;
    for (std::size_t i = 0; i < job.kinds.size(); ++i)
        refused_behind([&] { return row_of_list("unit kind", i); },
                       [&] { stacks.push_back(stacks_of(job, job.kinds[i].unit, bases, covers)); });

    BedSearch search(job, kept, pruning, candidates);
    for (std::size_t i = 0; i < job.kinds.size(); ++i)
        plans[i].for_each([&](const BedPlan& plan) { search.look_at(i, plan, stacks[i]); });
    return {search.passing(), search.failing(), currency, count(candidates), count(search.passed())};
}

}  // namespace undercroft::calc
