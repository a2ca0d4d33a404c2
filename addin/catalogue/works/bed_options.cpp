#include "calc/works/bed_options.hpp"

#include "addin/catalogue/bed/shape.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/layer_part.hpp"
#include "addin/catalogue/ground/load_class.hpp"
#include "addin/catalogue/ground/surfacing.hpp"
#include "addin/catalogue/usual_bed.hpp"
#include "addin/catalogue/usual_ground.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "addin/catalogue/works/spoil_soil.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::CostItem> {
    static constexpr std::string_view kind = "an item of cost";
    static constexpr Choice<calc::CostItem> list[] = {
        {"pit", calc::CostItem::pit},
        {"slopes", calc::CostItem::slopes},
        {"formation", calc::CostItem::formation},
        {"spoil loads|loads", calc::CostItem::spoil_loads},
        {"spoil away|tipping", calc::CostItem::spoil_away},
        {"bedding stone|bedding", calc::CostItem::bedding_stone},
        {"embedment stone|embedment", calc::CostItem::embedment_stone},
        {"bedding laid|bed laid", calc::CostItem::bedding_laid},
        {"embedment laid|side laid", calc::CostItem::embedment_laid},
        {"initial backfill|initial", calc::CostItem::initial_bought},
        {"general backfill|general", calc::CostItem::general_bought},
        {"fill laid|fill", calc::CostItem::fill_laid},
        {"subbase", calc::CostItem::subbase},
        {"pavement", calc::CostItem::pavement},
        {"fabric rolls|rolls", calc::CostItem::fabric_rolls},
        {"fabric laid|fabric", calc::CostItem::fabric_laid},
        {"units set|units", calc::CostItem::units_set},
        {"ports", calc::CostItem::ports},
        {"rows", calc::CostItem::rows},
    };
};

/// The beds of a search under their units; cost is in the currency of the rates.
template <>
struct Result<calc::Options> {
    static constexpr UnitArgument unit_argument = UnitArgument::units;

    static ValueType type() {
        ValueType table{.shape = Shape::table};
        for (const Dimension& dimension : dimensions({})) {
            const bool is_money = dimension == Dimension{} && table.columns.size() >= first_of_money &&
                                  table.columns.size() < first_of_money + 2;
            table.columns.push_back(is_money ? Slot<Quantity>::type() : quantity_type(dimension));
        }
        return table;
    }
    static Answer write(const calc::Options& options, const Asked& asked) {
        CoherentRows numbers;
        for (const auto* list : {&options.passing, &options.failing})
            for (const calc::BedOption& option : *list) put(numbers, option);
        return table_result(numbers, dimensions(options.currency), asked);
    }
    static std::string text(const calc::Options& options, const Asked&) {
        return whole_text(options.passed) + " of " + whole_text(options.candidates) + " beds pass";
    }

private:
    static constexpr std::size_t first_of_money = 13;

    static std::string whole_text(Count number_of) { return exact_text(number(number_of)); }
    static std::vector<Dimension> dimensions(const Dimension& money) {
        const Dimension number;
        const Dimension each = dimension_of<Count>();
        const Dimension length = dimension_of<Length>();
        const Dimension volume = dimension_of<Volume>();
        const Dimension per_volume = money.is_money() ? money.per(volume) : number;
        return {each,
                each,
                each,
                each,
                length,
                length,
                length,
                length,
                length,
                volume,
                length,
                volume,
                dimension_of<Mass>(),
                money,
                per_volume,
                each,
                number};
    }
    static void put(CoherentRows& row, const calc::BedOption& o) {
        const auto add = [&](const auto& value) { row.push_back(as_quantity(value).value); };
        add(o.kind);
        add(count(o.across ? 1 : 0));
        add(o.rows);
        add(o.units);
        add(o.base_stone);
        add(o.cover_stone);
        add(o.length);
        add(o.width);
        add(o.bed_depth);
        add(o.storage);
        row.push_back(o.water_depth ? std::optional(as_quantity(*o.water_depth).value) : std::nullopt);
        add(o.pit);
        add(o.stone);
        add(o.cost);
        add(o.cost / o.storage);
        add(count(o.passes ? 0 : static_cast<double>(o.worst.check)));
        row.push_back(o.worst.ratio);
    }
};

namespace {

using calc::Table;
/// At the base and at ground level, strip, margins beside and beyond the rows, height not counted.
using SpaceRow = Table<Length, Length, Length, Length, Length, Length, Length, Length>;
using ShapeRows = Table<calc::Shape>;
/// Span, rise, over feet, foot, end unit, middle unit, overlap.
using KindRows = Table<Length, Length, Length, Length, Length, Length, Length>;
/// Gap, mass, least and greatest cover, crown limit short and long, rates of both units.
using SupplyRows =
    Table<Length, Mass, Length, Length, Pressure, Pressure, std::optional<Quantity>, std::optional<Quantity>>;
using StoneSteps = Table<Length, Length, Length>;
using LayerRows = Table<calc::LayerPart, Length, UnitWeight>;
/// Ground, surface, its lowest, its highest, groundwater, dry margin.
using LevelRow = Table<Length, Length, Length, Length, Length, Length>;
using GroundRow =
    Table<Pressure, Angle, UnitWeight, Share, Pressure, std::optional<Share>, std::optional<Share>>;
using MaterialRow = Table<Share, Density, Share, Length, Length, Length, Density>;
using EarthRow = Table<Share, Volume, Density, Mass, Share, Density, Share>;
using RateRows = Table<calc::CostItem, std::optional<Share>, std::optional<Quantity>, Quantity>;
/// Traffic, pavement, soil, batter; ports, and how many are told.
using ChoiceRow = Table<calc::LoadClass, calc::Surfacing, calc::SpoilSoil, Batter, std::optional<Count>,
                        std::optional<Count>, std::optional<Count>>;
using CountSteps = Table<Count, Count, Count>;

template <class Rows>
void require_rows(const char* name, const Rows& rows, std::size_t wanted, const char* what) {
    if (rows.size() != wanted)
        refuse_value(std::string(name) + ": has " + std::to_string(rows.size()) + " rows of values; " + what);
}

Quantity rate_given(const std::optional<Quantity>& rate, std::size_t kind, const char* unit) {
    if (!rate)
        refuse_value("supplies: unit kind " + std::to_string(kind + 1) + " has no rate of its " + unit +
                     ", so no bed of it has a cost");
    return *rate;
}

std::vector<calc::PricedKind> priced_kinds(const ShapeRows& shapes, const KindRows& units,
                                           const SupplyRows& supplies, Density plastic) {
    require_rows("kinds", units, shapes.size(), "one is wanted for each row of the shapes");
    require_rows("supplies", supplies, shapes.size(), "one is wanted for each row of the shapes");
    std::vector<calc::PricedKind> kinds;
    for (std::size_t i = 0; i < units.size(); ++i) {
        const calc::Shape shape = std::get<0>(shapes[i]);
        const auto& [span, rise, over_feet, foot, end_unit, middle_unit, overlap] = units[i];
        const auto& [gap, mass, least, greatest, crown, lasting, end_rate, middle_rate] = supplies[i];
        kinds.push_back({{{shape, span, rise},
                          over_feet,
                          foot,
                          end_unit,
                          middle_unit,
                          overlap,
                          gap,
                          mass,
                          plastic,
                          least,
                          greatest,
                          crown,
                          lasting},
                         rate_given(end_rate, i, "end unit"),
                         rate_given(middle_rate, i, "middle unit")});
    }
    return kinds;
}

std::vector<calc::Rate> rates_of(const RateRows& rows) {
    std::vector<calc::Rate> rates;
    for (const auto& [item, waste, pack, rate] : rows) {
        const bool is_rounded = pack && pack->value != 0;
        rates.push_back({item, waste.value_or(share(0)), is_rounded ? pack : std::nullopt, rate});
    }
    return rates;
}

template <class Q>
calc::Steps<Q> steps_of(const std::tuple<Q, Q, Q>& row) {
    const auto& [from, to, step] = row;
    return {from, to, step};
}

template <class Row>
const Row& only_row(const char* name, const std::vector<Row>& rows) {
    require_rows(name, rows, 1, "one is wanted");
    return rows.front();
}

calc::SiteLayers layers_of(const LayerRows& rows) {
    calc::SiteLayers layers;
    for (const auto& [part, thickness, unit_weight] : rows)
        layers.emplace_back(part, thickness, unit_weight, std::nullopt);
    return layers;
}

calc::Options bed_options(SpaceRow space, ShapeRows shapes, KindRows kinds, SupplyRows supplies,
                          StoneSteps stone_steps, LayerRows layers, LevelRow levels, Volume storage_wanted,
                          GroundRow ground, MaterialRow materials, EarthRow earthworks, RateRows rates,
                          ChoiceRow choices, std::optional<CountSteps> counts) {
    require_rows("stone steps", stone_steps, 2, "two are wanted: base stone, and cover stone");
    if (counts) require_rows("counts", *counts, 2, "two are wanted: rows, and units in a row");
    const auto& [length, width, ground_length, ground_width, strip, side, end, not_counted] =
        only_row("space", space);
    const auto& [existing, surface, lowest, highest, groundwater, dry] = only_row("levels", levels);
    const auto& [cohesion, friction, weight, safety, presumptive, widening, presence] =
        only_row("ground", ground);
    const auto& [porosity, bulk, stone_moisture, roll_length, roll_width, lap, plastic] =
        only_row("materials", materials);
    const auto& [fit, truck, loose, payload, degree, densest, fill_moisture] =
        only_row("earthworks", earthworks);
    const auto& [vehicle, pavement, soil, batter, interval, best, nearest] = only_row("choices", choices);
    const Length least_piece = std::min<Length>(3.0 * metre, roll_length);

    calc::OptionsJob job;
    job.site = {length,
                width,
                ground_length,
                ground_width,
                strip,
                side,
                end,
                not_counted,
                batter,
                porosity,
                storage_wanted,
                interval.value_or(count(0)),
                {existing, surface, lowest, highest, groundwater, dry, cohesion, friction, weight, safety,
                 presumptive},
                {vehicle, widening.value_or(share(1.15)), presence.value_or(share(1.2)), pavement},
                layers_of(layers),
                {bulk, stone_moisture},
                {soil, fit, truck, loose, payload, degree, densest, fill_moisture},
                {roll_length, roll_width, lap, least_piece}};
    job.kinds = priced_kinds(shapes, kinds, supplies, plastic);
    job.rates = rates_of(rates);
    job.base_stone = steps_of(stone_steps[0]);
    job.cover_stone = steps_of(stone_steps[1]);
    job.rows = counts ? steps_of((*counts)[0]) : calc::Steps<Count>{count(1), count(1e6), count(1)};
    job.units = counts ? steps_of((*counts)[1]) : calc::Steps<Count>{count(2), count(1e6), count(1)};
    const auto kept = [](const char* name, Count number_of) {
        return static_cast<std::size_t>(calc::require_whole(name, number_of));
    };
    return calc::bed_options(job, {kept("number of those that pass", best.value_or(count(20))),
                                   kept("number of those that fail", nearest.value_or(count(10)))});
}

constexpr Range a_word = any_number("a word");
constexpr Range a_price = any_number("prices go with the currency and the goods");

Entry& takes_beds_tried(Entry& entry) {
    return entry
        .takes("space", "L_a, W_a, L_g, W_g, s, m, e, t_0",
               "One row: length and width at the base of the bed; the same free at ground level; strip along "
               "the "
               "edge of the pit; stone beyond the outer rows and beyond their ends; height under the top of "
               "the stone that is no storage")
        .within({usual::plan_length, usual::plan_width, usual::plan_length, usual::plan_width,
                 usual::edge_strip, usual::bed_margin, usual::bed_margin, usual::not_counted})
        .takes("shapes", "shape", "A row a kind of unit: shape of its cross-section")
        .within({a_word})
        .in_order()
        .takes("kinds", "B, H, B_f, b_f, E, M, o",
               "The same kinds: inside width and height, width over the feet, width of one foot, laid length "
               "of an end and of a middle unit, overlap at a joint")
        .within({usual::chamber_span, usual::chamber_rise, usual::width_over_feet, usual::foot_width,
                 usual::unit_length, usual::unit_length, usual::joint_overlap})
        .in_order()
        .takes("supplies", "g, m_u, H_min, H_max, q_max, q_lt, rates",
               "The same kinds: gap between rows, mass of a unit, least and greatest cover, pressure that it "
               "carries with traffic and for its life, rate of an end and of a middle unit")
        .within({usual::row_gap, usual::unit_mass, usual::cover_limit, usual::cover_limit,
                 usual::crown_pressure, usual::crown_pressure, a_price, a_price})
        .in_order()
        .takes("stone steps", "b, c", "Two rows of from, to and step: base stone, and cover stone")
        .within({usual::stone_layer, usual::stone_layer, usual::stone_step})
        .in_order();
}

Entry& takes_site_of_beds(Entry& entry) {
    return entry
        .takes("layers", "part, t, gamma",
               "Layers over the stone from the bottom up: part (initial, general, subbase, pavement), "
               "thickness, unit weight")
        .within({a_word, usual::layer_thickness.or_zero(), usual::unit_weight})
        .in_order()
        .takes("levels", "GL, FL, FL_1, FL_2, WL, d",
               "One row: existing ground, finished surface, where that is lowest, where it is highest, "
               "highest groundwater, and how far the formation must lie above it")
        .within({usual::level, usual::level, usual::level, usual::level, usual::level, usual::dry_margin})
        .takes("storage wanted", "V_r", "Storage that the bed must have")
        .within(usual::held_volume)
        .takes("ground", "c, phi, gamma, F, q_p, f, m_p",
               "One row: cohesion, angle of friction and unit weight of the ground, factor of safety on its "
               "capacity, presumptive pressure; widening of the traffic's load per depth, 1.15 where left "
               "out, and multiple presence factor, 1.2")
        .within({usual::cohesion, usual::friction_angle_or_none, usual::unit_weight, usual::bearing_safety,
                 usual::allowable_bearing, usual::distribution_factor, usual::presence})
        .takes("materials", "n, rho_b, w_s, L_f, W_f, lap, rho_p",
               "One row: porosity, bulk density and moisture as weighed of the stone; length and width of a "
               "roll of fabric, and its lap; density of the plastic of the units")
        .within({usual::porosity, usual::bulk_density, usual::stone_moisture, usual::roll_length,
                 usual::roll_width, usual::lap.or_zero(), usual::plastic_density})
        .takes("earthworks", "r, V_t, rho_sp, P_t, D, rho_max, w_f",
               "One row: share of the spoil that is fit for backfill, volume of a truck, loose density of "
               "the spoil, payload; compaction, greatest dry density and moisture of bought fill")
        .within({usual::fit_share, usual::truck_volume, usual::loose_density, usual::payload,
                 usual::compaction, usual::greatest_density, usual::moisture});
}

/// A bed of twenty crates behind vertical walls, by itself and without fabric.
const std::string& twenty_crates() {
    static const std::string formula =
        "UC.BED.OPTIONS({20;10;26;16;0.6;0.3;0.3;0.1}; {\"rectangle\"|\"ellipse\"}; {1;0.6;1;\"0.2 "
        "m\";2;2;0|1;0.6;1;\"0.2 m\";2;2;0}; "
        "{0.1;30;0.6;3;150;100;\"200 AUD/each\";\"200 AUD/each\"|0.1;30;0.6;3;150;100;\"250 AUD/each\";\"250 "
        "AUD/each\"}; {0.3;0.3;0.1|0.2;0.2;0.1}; "
        "{\"initial\";0.3;19|\"general\";0.5;19|\"pavement\";0.2;22}; {100;100;100;100;97;0.5}; \"30 m3\"; "
        "{5;\"33 deg\";18;3;200}; {0.4;1600;0.01;100;4.5;0.45;950}; {0.6;12;1300;20000;0.95;1950;0.08}; "
        "{\"pit\";0;\"\";\"10 AUD/m3\"}; "
        "{\"W80\";\"flexible\";\"loam\";\"0H:1V\"}; {4;4;1|5;5;1})";
    return formula;
}
const std::string& twenty_crates_in_feet() {
    static const std::string formula =
        "UC.BED.OPTIONS({\"60 ft\";\"30 ft\";\"80 ft\";\"50 ft\";\"2 ft\";\"1 ft\";\"1 ft\";\"6 in\"}; "
        "{\"rectangle\"|\"ellipse\"}; {\"3 ft\";\"2 ft\";\"3 ft\";\"0.5 ft\";\"6 ft\";\"6 ft\";\"0 ft\"|\"3 "
        "ft\";\"2 ft\";\"3 ft\";\"0.5 ft\";\"6 ft\";\"6 ft\";\"0 ft\"}; "
        "{\"6 in\";\"60 lb\";\"2 ft\";\"8 ft\";\"3000 psf\";\"2000 psf\";\"150 USD/each\";\"150 "
        "USD/each\"|\"6 in\";\"60 lb\";\"2 ft\";\"8 ft\";\"3000 psf\";\"2000 psf\";\"180 USD/each\";\"180 "
        "USD/each\"}; "
        "{\"1 ft\";\"1 ft\";\"1 ft\"|\"6 in\";\"6 in\";\"6 in\"}; {\"initial\";\"1 ft\";\"120 lbf/ft3\"|"
        "\"general\";\"18 in\";\"120 lbf/ft3\"|\"pavement\";\"1 ft\";\"140 lbf/ft3\"}; "
        "{\"330 ft\";\"330 ft\";\"330 ft\";\"330 ft\";\"315 ft\";\"1.5 ft\"}; \"1000 ft3\"; "
        "{\"100 psf\";\"35 deg\";\"115 lbf/ft3\";3;\"3000 psf\"}; "
        "{0.4;\"99 lb/ft3\";0.01;\"300 ft\";\"15 ft\";\"18 in\";\"60 lb/ft3\"}; "
        "{0.6;\"16 yd3\";\"81 lb/ft3\";\"22 short ton\";0.95;\"122 lb/ft3\";0.08}; "
        "{\"pit\";0;\"\";\"8 USD/yd3\"}; {\"HL-93\";\"flexible\";\"loam\";\"0H:1V\"}; {4;4;1|5;5;1}{})";
    return formula;
}
/// The same with what stands behind its last argument.
std::string in_feet(const std::string& units) {
    std::string formula = twenty_crates_in_feet();
    return formula.replace(formula.find("{})"), 3, units + ")");
}
/// A cell of that search, its arguments in the tables of the worked examples.
std::string told_of_crates(const std::string& place) {
    return "INDEX(UC.BED.OPTIONS(crates_space;{\"rectangle\"|\"ellipse\"};crates_sizes;crates_supplies;"
           "{0.3;0.3;1|0.2;0.2;1};{\"initial\";0.8;19};{9;9;9;9;6;1};30;{5;33;18;3;200};crates_materials;"
           "crates_earth;{\"pit\";0;0;\"9 AUD/m3\"};{\"W80\";\"none\";\"loam\";0});" +
           place + ")";
}

Function options_entry() {
    auto options = function("UC.BED.OPTIONS", &bed_options);
    options
        .says(
            "Every bed that fits a space, checked and priced: those that pass, the cheapest first, then "
            "those "
            "that fail, the nearest to passing first")
        .also_called("optimisation, optioneering, value engineering, cheapest layout, bed sizing, trade-off")
        .related({"UC.BED.ROWS", "UC.ROW.UNITS", "UC.BED.VOLUME", "UC.FOOT.SUBGRADE", "UC.PIT.VOLUME",
                  "UC.ORDER", "UC.COST"})
        .equation(
            "all of kinds, rows, units in a row, base and cover stone; worst of demand over capacity: 1 "
            "storage, 2 least cover, 3 greatest cover, 4 pressure on the crown, 5 the same for its life, 6 "
            "subgrade, 7 groundwater, 8 pit's length, 9 pit's width; K = sum of rates times quantities")
        .source("one by one, by the functions of the catalogue, each with its own source")
        .example(told_of_crates("2;14").c_str(), "4418.064", "1e-9 rel", Origin::mathematics,
                 "nine rows of two across the space: 4.6 x 10.4 x 1.9 m at 9 AUD/m3, 18 units at 200 AUD")
        .example(told_of_crates("2;10").c_str(), "31.868631578947368", "1e-9 rel", Origin::mathematics,
                 "0.4 (47.84 - 21.6) + 21.6 m3, less 0.4 x 540/950 m3 for the plastic")
        .example(told_of_crates("3;14").c_str(), "4888.174", "1e-9 rel", Origin::mathematics,
                 "behind it four rows of five: 10.6 x 4.9 x 1.9 m, twenty units")
        .to_try(twenty_crates().c_str())
        .to_try(in_feet("; \"1;1;1;1;ft;ft;ft;ft;ft;ft3;ft;yd3;short ton;USD;USD/ft3\"").c_str())
        .caution(
            "A search and no check: on a level formation, without storms, uplift, factored loads and the "
            "slope of the walls. The bed that is chosen is entered in the whole job, whose checks decide");
    takes_beds_tried(options);
    takes_site_of_beds(options)
        .takes(
            "rates", "item, w, pack, rate",
            "A row an item that costs: its name, waste, pack (0 or blank: nothing is rounded), rate; an item "
            "may stand in several rows, bought and laid")
        .within({a_word, usual::waste, any_number("tonnes, rolls or pieces"), a_price})
        .in_order()
        .takes("choices", "vehicle, pavement, soil, z, k, N_1, N_2",
               "One row: load class of the traffic; none, flexible or rigid pavement; soil, for the bulking "
               "of the spoil; slope of the pit's walls; units from port to port, how many beds that pass "
               "are told, and how many that fail: 0, 20 and 10 where left out")
        .within({a_word, a_word, a_word, usual::batter, usual::port_interval, usual::listed_beds,
                 usual::listed_beds})
        .takes("counts", "r, u",
               "Two rows of from, to and step: rows, and units in a row; left out, all that fit")
        .within({usual::tried_count, usual::tried_count, usual::tried_count})
        .in_order();
    return options
        .gives_columns("Beds, those that pass first", {{"kind", "kind"},
                                                       {"across", "1 across"},
                                                       {"rows", "r"},
                                                       {"units in row", "u"},
                                                       {"base stone", "b"},
                                                       {"cover stone", "c"},
                                                       {"length", "L"},
                                                       {"width", "W"},
                                                       {"depth", "D_b"},
                                                       {"storage", "V_p"},
                                                       {"water depth", "d_r"},
                                                       {"pit", "V_b"},
                                                       {"stone", "M"},
                                                       {"cost", "K"},
                                                       {"per volume", "K/V_p"},
                                                       {"fails by", "check"},
                                                       {"ratio", "demand/capacity"}})
        .found_to(1e-9, {"water depth"});
}

}  // namespace

std::vector<Function> bed_option_functions() {
    return {options_entry()};
}

}  // namespace undercroft::addin
