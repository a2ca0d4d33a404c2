#include "addin/catalogue/bed/entries.hpp"
#include "addin/catalogue/bed/shape.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_bed.hpp"
#include "calc/bed/unit_storage.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* held_equation =
    "V = n (P - C) + C; P = L W d + (L + W) z d^2 + 4/3 z^2 d^3; C = l_t A(d - b), A the chamber's area "
    "below "
    "that depth, or sum N V_1(d - b) by the tested table; on a fall P is the polyhedron over the formation, "
    "C the "
    "mean along the bed";
constexpr const char* held_source = "geometry of the bed; common practice";

/// The arguments that describe a bed, said once for the functions that take them.
Entry& takes_storage_bed(Entry& entry) {
    return entry.takes("length", "L", "Length of the bed at its base")
        .within(usual::plan_length)
        .takes("width", "W", "Width of the bed at its base")
        .within(usual::plan_width)
        .takes("batter", "z", "Slope of the bed's walls; 0H:1V for vertical walls")
        .within(usual::batter)
        .takes("base stone", "b", "Stone under the chambers")
        .within(usual::stone_layer)
        .takes("cover stone", "c", "Stone over the crowns")
        .within(usual::stone_layer)
        .takes("porosity", "n", "Porosity of the stone")
        .within(usual::porosity)
        .takes("shape", "shape", shape_says)
        .takes("span", "B", span_says)
        .within(usual::chamber_span)
        .takes("rise", "H", rise_says)
        .within(usual::chamber_rise)
        .takes("chamber length", "l_t", "Length of all chambers together")
        .within(usual::chamber_length)
        .takes("fall", "s", "Fall of the formation along the length, layers and chambers with it; 0 is level",
               0.0)
        .within(usual::bed_fall)
        .added_later()
        .takes(
            "tested", "d, V_1",
            "The units' table in place of shape, span and chamber length: depth over their base, volume of "
            "one unit below it, a column a kind, up to three; left out, the section counts")
        .within({usual::unit_depth, usual::unit_volume, usual::unit_volume, usual::unit_volume})
        .in_order()
        .added_later()
        .takes("numbers", "N",
               "Units of each kind, below each other in the order of these columns; counts only with them")
        .within({usual::units_counted})
        .in_order()
        .added_later()
        .caution(
            "The units' table is of one unit alone: water inside its walls, without stone. What it ends "
            "short "
            "of the rise is stone");
}

calc::Bed bed(Length length, Length width, Batter batter, Length base_stone, Length cover_stone,
              Share porosity, calc::Shape shape, Length span, Length rise, Length chamber_length,
              Gradient fall) {
    return {length,         width, batter, base_stone, cover_stone, porosity, {shape, span, rise},
            chamber_length, fall};
}

/// Depth over the base of a unit, and what one unit of each kind holds below it; the column of a kind that is
/// not there may be blank.
using TestedRows = std::vector<std::tuple<Length, Volume, std::optional<Volume>, std::optional<Volume>>>;
/// How many units there are of each kind.
using TestedNumbers = std::vector<std::tuple<std::optional<Count>>>;

std::optional<Volume> volume_of(const TestedRows::value_type& row, std::size_t kind) {
    const auto& [depth, first, second, third] = row;
    return kind == 0 ? first : kind == 1 ? second : third;
}

/// The kinds of which there are units.
std::vector<calc::UnitKind> tested_kinds(const TestedRows& rows,
                                         const std::optional<TestedNumbers>& numbers) {
    constexpr std::size_t columns = std::tuple_size_v<TestedRows::value_type> - 1;
    if (!numbers) refuse_value("tested comes with numbers: say how many units there are of each kind");
    if (numbers->size() > columns) refuse_value("numbers are those of at most three kinds");
    std::vector<calc::UnitKind> kinds;
    for (std::size_t k = 0; k < numbers->size(); ++k) {
        const Count number = std::get<0>(numbers->at(k)).value_or(Count());
        if (number == Count()) continue;
        calc::UnitKind kind{number, {}};
        for (const auto& row : rows) {
            const std::optional<Volume> volume = volume_of(row, k);
            if (!volume)
                refuse_value("tested has no volume of kind " + std::to_string(k + 1) + " at the depth of " +
                             std::string(calc::amount(std::get<0>(row))));
            kind.table.emplace_back(std::get<0>(row), *volume);
        }
        kinds.push_back(std::move(kind));
    }
    if (kinds.empty()) refuse_value("numbers hold no unit of any kind");
    return kinds;
}

/// What one of two functions gives: `by_section` of a bed, or `by_table` of the bed with its tested units.
template <class BySection, class ByTable>
auto by_section_or_table(const calc::Bed& bed, const std::optional<TestedRows>& tested,
                         const std::optional<TestedNumbers>& numbers, const BySection& by_section,
                         const ByTable& by_table) {
    if (numbers)
        for (const auto& [number] : *numbers)
            if (number) calc::require_whole("number of units", *number);
    return tested ? by_table(calc::with_units(bed, tested_kinds(*tested, numbers))) : by_section(bed);
}

Function bed_volume_entry() {
    auto volume =
        function("UC.BED.VOLUME", [](Length depth, Length length, Length width, Batter batter,
                                     Length base_stone, Length cover_stone, Share porosity, calc::Shape shape,
                                     Length span, Length rise, Length chamber_length, Gradient fall,
                                     std::optional<TestedRows> tested, std::optional<TestedNumbers> numbers) {
            return by_section_or_table(
                bed(length, width, batter, base_stone, cover_stone, porosity, shape, span, rise,
                    chamber_length, fall),
                tested, numbers, [&](const calc::Bed& made) { return calc::bed_volume(depth, made); },
                [&](const calc::UnitBed& made) { return calc::unit_bed_volume(depth, made); });
        });
    volume.says("Water held by the bed below a depth above its base at the low end, in chambers and stone")
        .also_called("storage volume, capacity, water held, void volume, detention volume")
        .related({"UC.BED.DEPTH", "UC.STAGE.STORAGE", "UC.STORAGE.REQUIRED"})
        .to_try(
            "UC.BED.VOLUME(\"1.127 m\"; \"45 m\"; \"14 m\"; \"0H:1V\"; \"265 mm\"; \"152 mm\"; \"40 %\"; "
            "\"ellipse\"; \"1.07 m\"; \"710 mm\"; \"350 m\")")
        .to_try(
            "UC.BED.VOLUME(\"3.75 ft\"; \"150 ft\"; \"46 ft\"; \"0H:1V\"; \"12 in\"; \"6 in\"; \"40 %\"; "
            "\"ellipse\"; \"41 in\"; \"27 in\"; \"1150 ft\"; \"ft3\")")
        .refuses(
            "UC.BED.VOLUME(\"1.127 m\"; \"45 m\"; \"14 m\"; \"0H:1V\"; \"265 mm\"; \"152 mm\"; 40; "
            "\"ellipse\"; \"1.07 m\"; \"710 mm\"; \"350 m\")")
        .sketch(Sketch::bed_section)
        .equation(held_equation)
        .source(held_source)
        .takes("depth", "d", "Depth of water above the base of the bed")
        .within(usual::depth_in_bed);
    return takes_storage_bed(volume)
        .gives("V", "Volume held")
        .example(
            "UC.BED.VOLUME(\"1 m\"; \"20 m\"; \"10 m\"; \"2H:1V\"; \"200 mm\"; \"50 mm\"; \"40 %\"; "
            "\"ellipse\"; \"1.2 m\"; \"750 mm\"; \"0 m\")",
            "106.133333333333", "1e-11 rel", Origin::mathematics,
            "0.4 of the prismoid of 265.3333 m3, no chambers")
        .example(
            "UC.BED.VOLUME(\"1 m\"; \"20 m\"; \"10 m\"; \"0H:1V\"; \"200 mm\"; \"50 mm\"; \"40 %\"; "
            "\"ellipse\"; \"1.2 m\"; \"750 mm\"; \"100 m\")",
            "122.41150082346", "1e-11 rel", Origin::mathematics,
            "0.4 x 200 m3 + 0.6 x 100 m x half an ellipse of pi x 1.2 m x 0.75 m/4")
        .example(
            "UC.BED.VOLUME(\"1 m\"; \"20 m\"; \"10 m\"; \"0H:1V\"; \"250 mm\"; \"250 mm\"; \"40 %\"; "
            "\"rectangle\"; \"1 m\"; \"500 mm\"; \"200 m\")",
            "140", "1e-11 rel", Origin::mathematics, "stone 0.4 x 100 m3 over and under, crates 100 m3 full")
        .example(
            "UC.BED.VOLUME(\"1 m\"; \"20 m\"; \"10 m\"; \"0H:1V\"; \"200 mm\"; \"50 mm\"; \"40 %\"; "
            "\"ellipse\"; \"1.2 m\"; \"750 mm\"; \"0 m\"; \"m3\"; \"0.5 %\")",
            "76", "1e-11 rel", Origin::mathematics,
            "0.4 of 200 m3 less the wedge of 20^2 x 10 x 0.005/2 = 10 m3")
        .example(
            "UC.BED.VOLUME(UC.QUANTITY(UC.BED.DEPTH(\"90 m3\"; \"20 m\"; \"10 m\"; \"0H:1V\"; \"200 mm\"; "
            "\"50 mm\"; "
            "\"40 %\"; \"ellipse\"; \"1.2 m\"; \"750 mm\"; \"100 m\"; \"m\"); \"m\"); \"20 m\"; \"10 m\"; "
            "\"0H:1V\"; \"200 "
            "mm\"; \"50 mm\"; \"40 %\"; \"ellipse\"; \"1.2 m\"; \"750 mm\"; \"100 m\")",
            "90", "1e-11 rel", Origin::mathematics, "there and back")
        .example(
            "UC.BED.VOLUME(\"0.6 m\"; \"10 m\"; \"5 m\"; \"0H:1V\"; \"0.2 m\"; \"0.2 m\"; \"40 %\"; "
            "\"ellipse\"; \"1.2 m\"; \"0.8 m\"; \"10 m\"; \"m3\"; ; {0;0;0|0.4;0.3;0.2|0.8;0.5;0.3}; {10|2})",
            "14.04", "1e-9 rel", Origin::mathematics,
            "ten units of 0.3 m3 and two of 0.2 m3, and 0.4 x (30 - 3.4) m3");
}

Function bed_depth_entry() {
    auto depth =
        function("UC.BED.DEPTH", [](Volume held, Length length, Length width, Batter batter,
                                    Length base_stone, Length cover_stone, Share porosity, calc::Shape shape,
                                    Length span, Length rise, Length chamber_length, Gradient fall,
                                    std::optional<TestedRows> tested, std::optional<TestedNumbers> numbers) {
            return by_section_or_table(
                bed(length, width, batter, base_stone, cover_stone, porosity, shape, span, rise,
                    chamber_length, fall),
                tested, numbers, [&](const calc::Bed& made) { return calc::bed_depth(held, made); },
                [&](const calc::UnitBed& made) { return calc::unit_bed_depth(held, made); });
        });
    depth.says("Depth of water above the base of the bed for a volume held: the inverse of UC.BED.VOLUME")
        .also_called("stage, water level for a volume, depth of water, inverse of stage-storage")
        .related({"UC.BED.VOLUME", "UC.STAGE.STORAGE"})
        .to_try(
            "UC.BED.DEPTH(\"250 m3\"; \"45 m\"; \"14 m\"; \"0H:1V\"; \"265 mm\"; \"152 mm\"; \"40 %\"; "
            "\"ellipse\"; \"1.07 m\"; \"710 mm\"; \"350 m\")")
        .to_try(
            "UC.BED.DEPTH(\"8800 ft3\"; \"150 ft\"; \"46 ft\"; \"0H:1V\"; \"12 in\"; \"6 in\"; \"40 %\"; "
            "\"ellipse\"; \"41 in\"; \"27 in\"; \"1150 ft\"; \"ft\")")
        .refuses(
            "UC.BED.DEPTH(\"900 m3\"; \"45 m\"; \"14 m\"; \"0H:1V\"; \"265 mm\"; \"152 mm\"; \"40 %\"; "
            "\"ellipse\"; \"1.07 m\"; \"710 mm\"; \"350 m\")")
        .sketch(Sketch::bed_section)
        .equation("d where V(d) = V; root by TOMS 748 (Boost.Math)")
        .source(held_source)
        .takes("volume", "V", "Volume of water held")
        .within(usual::held_volume);
    return takes_storage_bed(depth)
        .gives("d", "Depth of water")
        .example(
            "UC.BED.DEPTH(\"106.133333333333333 m3\"; \"20 m\"; \"10 m\"; \"2H:1V\"; \"200 mm\"; \"50 mm\"; "
            "\"40 %\"; \"ellipse\"; \"1.2 m\"; \"750 mm\"; \"0 m\")",
            "1", "1e-11 rel", Origin::mathematics, "the inverse of the first example of UC.BED.VOLUME")
        .example(
            "UC.BED.DEPTH(\"14.04 m3\"; \"10 m\"; \"5 m\"; \"0H:1V\"; \"0.2 m\"; \"0.2 m\"; \"40 %\"; "
            "\"ellipse\"; \"1.2 m\"; \"0.8 m\"; \"10 m\"; \"m\"; ; {0;0;0|0.4;0.3;0.2|0.8;0.5;0.3}; {10|2})",
            "0.6", "1e-9 rel", Origin::mathematics, "the inverse of the last example of UC.BED.VOLUME");
}

Function stage_storage_entry() {
    auto table = function(
        "UC.STAGE.STORAGE",
        [](Count steps, Length length, Length width, Batter batter, Length base_stone, Length cover_stone,
           Share porosity, calc::Shape shape, Length span, Length rise, Length chamber_length, Gradient fall,
           std::optional<TestedRows> tested, std::optional<TestedNumbers> numbers) {
            return by_section_or_table(
                bed(length, width, batter, base_stone, cover_stone, porosity, shape, span, rise,
                    chamber_length, fall),
                tested, numbers, [&](const calc::Bed& made) { return calc::stage_storage(steps, made); },
                [&](const calc::UnitBed& made) { return calc::unit_stage_storage(steps, made); });
        });
    table
        .says(
            "Stage-storage table in equal steps from the base to the top of the stone, with rows added at "
            "the base and crown of the chambers where they fall between: steps + 1 to steps + 3 rows of "
            "values")
        .also_called("stage-storage curve, depth-volume table, storage table, elevation storage")
        .related({"UC.BED.VOLUME", "UC.BED.DEPTH", "UC.LOOKUP", "UC.ROUTE.POOL"})
        .to_try(
            "UC.STAGE.STORAGE(20; \"45 m\"; \"14 m\"; \"0H:1V\"; \"265 mm\"; \"152 mm\"; \"40 %\"; "
            "\"ellipse\"; \"1.07 m\"; \"710 mm\"; \"350 m\")")
        .to_try(
            "UC.STAGE.STORAGE(20; \"150 ft\"; \"46 ft\"; \"0H:1V\"; \"12 in\"; \"6 in\"; \"40 %\"; "
            "\"ellipse\"; \"41 in\"; \"27 in\"; \"1150 ft\"; \"ft;ft3;ft3;ft3;ft2\")")
        .sketch(Sketch::bed_section)
        .equation(held_equation)
        .source(held_source)
        .takes("steps", "N_s", "Number of equal steps")
        .within(usual::steps);
    return takes_storage_bed(table)
        .gives_columns("Stage-storage table", {{"depth", "d"},
                                               {"in chambers", "C"},
                                               {"in stone", "n (P - C)"},
                                               {"total", "V"},
                                               {"plan area", "A"}})
        .example(
            "INDEX(UC.STAGE.STORAGE(10; \"20 m\"; \"10 m\"; \"0H:1V\"; \"250 mm\"; \"250 mm\"; \"40 %\"; "
            "\"rectangle\"; \"1 m\"; \"500 mm\"; \"200 m\"); 14; 4)",
            "140", "1e-11 rel", Origin::mathematics, "last row, total: stone 0.4 x 100 m3, crates 100 m3")
        .example(
            "INDEX(UC.STAGE.STORAGE(6; \"10 m\"; \"5 m\"; \"0H:1V\"; \"0.2 m\"; \"0.2 m\"; \"40 %\"; "
            "\"ellipse\"; \"1.2 m\"; \"0.8 m\"; \"10 m\"; \"m;m3;m3;m3;m2\"; ; ; "
            "{0;0;0|0.4;0.3;0.2|0.8;0.5;0.3}; {10|2}); 5; 4)",
            "14.04", "1e-9 rel", Origin::mathematics, "row of 0.6 m: the last example of UC.BED.VOLUME");
}

}  // namespace

std::vector<Function> storage_functions() {
    return {bed_volume_entry(), bed_depth_entry(), stage_storage_entry()};
}

}  // namespace undercroft::addin
