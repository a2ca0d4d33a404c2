#include "addin/generate/sketches.hpp"

#include <stdexcept>

#include "addin/generate/drawing.hpp"
#include "addin/generate/writers.hpp"

namespace undercroft::addin {

namespace {

using Fill = Drawing::Fill;

Drawing chamber() {
    Drawing d;
    d.line({30, 170}, {330, 170}).arch(180, 170, 200, 120);
    d.box(64, 164, 96, 170, Fill::none).box(264, 164, 296, 170, Fill::none);
    d.dimension({80, 192}, {280, 192}, "span B").dimension({180, 170}, {180, 50}, "rise H");
    d.dashed({93, 110}, {330, 110}).dimension({310, 170}, {310, 110}, "depth d");
    return d.dimension({64, 30}, {296, 30}, "over the feet");
}

Drawing bed_section() {
    Drawing d;
    d.outline({{20, 40}, {340, 40}, {340, 180}, {20, 180}}, Fill::stone);
    for (const double middle : {92.0, 180.0, 268.0}) d.arch(middle, 150, 72, 70);
    d.water_level(306, 338, 100);
    d.dimension({180, 180}, {180, 150}, "base stone b").dimension({180, 80}, {180, 40}, "cover stone c");
    d.dimension({268, 150}, {268, 80}, "rise H");
    d.dimension({128, 132}, {144, 132}, "g").dimension({20, 132}, {56, 132}, "m");
    d.dimension({56, 164}, {128, 164}, "span B");
    return d.dimension({20, 200}, {340, 200}, "width W").dimension({320, 180}, {320, 100}, "d");
}

Drawing bed_plan() {
    Drawing d;
    d.box(20, 30, 340, 170, Fill::stone);
    for (const double y : {42.0, 86.0, 130.0})
        for (int unit = 0; unit < 5; ++unit)
            d.box(48 + unit * 53, y, 48 + unit * 53 + 53, y + 30, Fill::chamber);
    d.dimension({48, 64}, {101, 64}, "end E").dimension({154, 64}, {207, 64}, "unit M");
    d.dimension({48, 20}, {313, 20}, "row length l").dimension({20, 108}, {48, 108}, "e");
    d.dimension({313, 108}, {340, 108}, "e").dimension({180, 72}, {180, 86}, "gap g");
    return d.dimension({20, 192}, {340, 192}, "length L");
}

Drawing pit() {
    Drawing d;
    d.line({10, 40}, {50, 40}).line({310, 40}, {350, 40});
    d.outline({{50, 40}, {110, 160}, {250, 160}, {310, 40}}, Fill::ground);
    d.dimension({110, 182}, {250, 182}, "base L, W").dimension({180, 160}, {180, 40}, "depth d");
    d.dimension({50, 24}, {310, 24}, "at the top L_h");
    d.line({310, 160}, {250, 160}).line({310, 160}, {310, 40});
    d.dimension({256, 174}, {304, 174}, "")
        .label({280, 194}, "batter z: z d")
        .label({318, 104}, "d", "start");
    return d.label({66, 112}, "slant", "end");
}

Drawing outlet_head() {
    Drawing d;
    d.outline({{20, 60}, {150, 60}, {150, 180}, {20, 180}}, Fill::water).water_level(20, 150, 60);
    d.line({150, 30}, {150, 130}).line({150, 160}, {150, 180}).line({10, 180}, {350, 180});
    d.arrow({152, 145}, {186, 150}).dimension({100, 145}, {100, 60}, "head h").dashed({92, 145}, {150, 145});
    d.dimension({166, 130}, {166, 160}, "D").label({84, 200}, "orifice: to its centre");
    d.outline({{210, 60}, {290, 60}, {290, 180}, {210, 180}}, Fill::water).water_level(210, 296, 60);
    d.line({290, 96}, {290, 180}).arrow({292, 84}, {330, 104});
    return d.dashed({240, 96}, {290, 96})
        .dimension({250, 96}, {250, 60}, "h")
        .label({276, 200}, "weir: above its crest");
}

Drawing pipe() {
    Drawing d;
    d.circle({90, 100}, 62, Fill::none);
    d.outline({{30, 112}, {150, 112}, {141, 136}, {120, 155}, {90, 162}, {60, 155}, {39, 136}}, Fill::water);
    d.dimension({90, 162}, {90, 112}, "depth y").dimension({170, 162}, {170, 38}, "D");
    d.outline({{214, 70}, {346, 100}, {346, 140}, {214, 110}}, Fill::none);
    d.outline({{214, 96}, {346, 126}, {346, 140}, {214, 110}}, Fill::water).arrow({240, 108}, {320, 126});
    d.line({214, 150}, {346, 180}).line({214, 150}, {346, 150});
    return d.label({280, 144}, "1").label({350, 170}, "S", "start");
}

Drawing soakage() {
    Drawing d;
    d.line({10, 40}, {350, 40}).box(70, 70, 290, 130, Fill::stone).water_level(70, 290, 90);
    for (const double x : {110.0, 180.0, 250.0}) d.arrow({x, 132}, {x, 156});
    d.arrow({68, 112}, {44, 112}).arrow({292, 112}, {316, 112});
    d.dimension({220, 130}, {220, 90}, "depth").label({180, 64}, "rate over base and walls");
    return d.water_level(10, 350, 186).label({346, 180}, "groundwater", "end");
}

Drawing wheel() {
    Drawing d;
    d.line({10, 60}, {350, 60}).circle({120, 36}, 24, Fill::load).circle({240, 36}, 24, Fill::load);
    d.outline({{108, 60}, {132, 60}, {176, 150}, {64, 150}}, Fill::ground);
    d.outline({{228, 60}, {252, 60}, {296, 150}, {184, 150}}, Fill::ground);
    d.line({10, 150}, {350, 150}).dimension({334, 150}, {334, 60}, "H");
    d.dimension({120, 76}, {240, 76}, "s_w").dimension({64, 172}, {176, 172}, "w_t + f H");
    return d.label({96, 20}, "P", "end").label({180, 196}, "structure, or the top of the stone");
}

Drawing point() {
    Drawing d;
    d.line({10, 50}, {350, 50}).arrow({120, 10}, {120, 48}).label({130, 24}, "Q, or q over an area", "start");
    d.dashed({120, 50}, {120, 160}).dashed({240, 50}, {240, 160}).dashed({120, 150}, {240, 150});
    d.dimension({120, 176}, {240, 176}, "r").dimension({268, 150}, {268, 50}, "depth z");
    return d.circle({240, 150}, 4, Fill::load)
        .arrow({240, 112}, {240, 144})
        .label({232, 124}, "stress", "end");
}

Drawing foot() {
    Drawing d;
    d.box(20, 110, 340, 160, Fill::stone).arch(180, 104, 200, 84);
    d.box(64, 98, 104, 110, Fill::load).box(256, 98, 296, 110, Fill::load);
    d.dashed({64, 110}, {40, 160}).dashed({104, 110}, {128, 160}).dashed({256, 110}, {232, 160});
    d.dashed({296, 110}, {320, 160}).dimension({64, 90}, {104, 90}, "b_f");
    d.dimension({180, 160}, {180, 110}, "b").dimension({64, 14}, {296, 14}, "B_f");
    return d.dimension({40, 182}, {128, 182}, "w_b").label({244, 190}, "spread 2V:1H, on the subgrade");
}

Drawing wall() {
    Drawing d;
    d.outline({{90, 40}, {114, 40}, {130, 180}, {90, 180}}, Fill::none);
    d.outline({{114, 40}, {346, 40}, {346, 180}, {130, 180}}, Fill::ground).water_level(124, 346, 120);
    for (const double x : {150.0, 200.0, 250.0, 300.0}) d.arrow({x, 16}, {x, 38});
    d.label({330, 26}, "q", "start")
        .dimension({320, 180}, {320, 40}, "H")
        .dimension({240, 180}, {240, 120}, "h_w");
    d.arrow({184, 140}, {130, 132}).label({192, 146}, "thrust", "start");
    return d.line({10, 180}, {350, 180})
        .label({60, 200}, "delta: wall friction; alpha, beta: slopes", "start");
}

Drawing uplift() {
    Drawing d;
    d.line({10, 40}, {350, 40}).box(60, 40, 300, 84, Fill::ground).box(60, 84, 300, 160, Fill::stone);
    for (const double middle : {120.0, 180.0, 240.0}) d.arch(middle, 150, 48, 50);
    d.water_level(10, 60, 70).water_level(300, 350, 70);
    for (const double x : {90.0, 150.0, 210.0, 270.0}) d.arrow({x, 192}, {x, 164});
    d.label({180, 66}, "area A, thickness t, unit weight");
    return d.dimension({328, 160}, {328, 70}, "").label({340, 206}, "lined, empty", "end");
}

Drawing lap() {
    Drawing d;
    d.box(30, 50, 190, 120, Fill::load).box(160, 62, 330, 132, Fill::none);
    d.dimension({160, 40}, {190, 40}, "lap").dimension({330, 62}, {330, 132}, "");
    d.label({346, 100}, "W").dimension({30, 150}, {190, 150}, "roll length");
    return d.line({30, 184}, {190, 184}).line({160, 178}, {330, 178}).label({180, 200}, "side view");
}

Drawing lifting() {
    Drawing d;
    d.line({10, 180}, {350, 180}).circle({100, 40}, 14, Fill::none).line({100, 54}, {100, 110});
    d.line({100, 110}, {88, 180}).line({100, 110}, {112, 180}).line({100, 66}, {180, 130});
    d.box(164, 120, 204, 160, Fill::load).box(164, 46, 204, 76, Fill::none).dashed({184, 120}, {184, 76});
    d.dimension({100, 196}, {184, 196}, "H")
        .dimension({232, 180}, {232, 140}, "V")
        .dashed({204, 140}, {240, 140});
    return d.dimension({280, 140}, {280, 62}, "D")
        .dashed({204, 62}, {288, 62})
        .label({344, 100}, "A: turn", "end");
}

struct Named {
    Sketch sketch;
    const char* name;
    const char* title;
    Drawing (*draw)();
};

constexpr Named named[] = {
    {Sketch::chamber, "chamber", "Section of a chamber: span, rise, depth and width over the feet", &chamber},
    {Sketch::bed_section, "bed-section", "Section of a bed: stone, chambers, gaps and margins", &bed_section},
    {Sketch::bed_plan, "bed-plan", "Plan of a bed: rows, units, gaps and end margins", &bed_plan},
    {Sketch::pit, "pit", "Section of a pit: base, depth, batter and top", &pit},
    {Sketch::outlet_head, "outlet-head", "Head over the centre of an orifice and over the crest of a weir",
     &outlet_head},
    {Sketch::pipe, "pipe", "A pipe that is not full: diameter, depth and slope", &pipe},
    {Sketch::soakage, "soakage", "A bed that soaks away through base and walls, above the groundwater",
     &soakage},
    {Sketch::wheel, "wheel", "Wheel loads spread through the cover", &wheel},
    {Sketch::point, "point", "Stress at a depth below and beside a load", &point},
    {Sketch::foot, "foot", "The feet of a chamber on base stone", &foot},
    {Sketch::wall, "wall", "Earth, surcharge and water behind a wall", &wall},
    {Sketch::uplift, "uplift", "What lies on a lined bed and the water that lifts it", &uplift},
    {Sketch::lap, "lap", "The lap of two sheets", &lap},
    {Sketch::lifting, "lifting", "A lift by hand: reach, height, travel and turn", &lifting},
};

const Named& find(Sketch sketch) {
    for (const Named& each : named)
        if (each.sketch == sketch) return each;
    throw std::logic_error("a sketch that nobody draws");
}

std::string svg(Sketch sketch, const std::string& style) {
    const Named& each = find(sketch);
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"sketch\" viewBox=\"0 0 360 210\" width=\"360\" "
           "height=\"210\" role=\"img\">\n<title>" +
           xml_escaped(each.title) + "</title>\n" + style + each.draw().content() + "</svg>\n";
}

}  // namespace

const std::vector<Sketch>& all_sketches() {
    static const std::vector<Sketch> all = [] {
        std::vector<Sketch> sketches;
        for (const Named& each : named) sketches.push_back(each.sketch);
        return sketches;
    }();
    return all;
}

std::string sketch_name(Sketch sketch) {
    return find(sketch).name;
}

std::string sketch_title(Sketch sketch) {
    return find(sketch).title;
}

std::string sketch_svg(Sketch sketch) {
    return svg(sketch, {});
}

std::string sketch_file(Sketch sketch) {
    return svg(sketch, "<style>\n" + sketch_style() + "</style>\n");
}

std::string sketch_style() {
    return R"(.sketch { --ink: #2b2b2b; --stone: #dcd6c8; --ground: #ece7db; --water: #bcd7ea; --chamber: #ffffff; --load: #d9d9d9; --measure: #a33b12; --halo: #ffffff; }
@media (prefers-color-scheme: dark) {
.sketch { --ink: #dddddd; --stone: #4d483d; --ground: #37332b; --water: #24485f; --chamber: #1c1c1c; --load: #555555; --measure: #ee9a73; --halo: #16191a; }
}
.sketch .ink { stroke: var(--ink); stroke-width: 1.4; fill: none; }
.sketch .ground { fill: var(--ground); } .sketch .stone { fill: var(--stone); } .sketch .water { fill: var(--water); stroke: none; }
.sketch .chamber { fill: var(--chamber); } .sketch .load { fill: var(--load); }
.sketch .dashed { stroke-dasharray: 5 4; stroke-width: 1; }
.sketch .level { stroke: #2f78ad; stroke-width: 1.2; fill: #2f78ad; }
.sketch .measure { stroke: var(--measure); stroke-width: 1; fill: none; } .sketch .tip { fill: var(--measure); }
.sketch text { font: 13px "Liberation Sans", Arial, sans-serif; fill: var(--ink); paint-order: stroke; stroke: var(--halo); stroke-width: 3px; stroke-opacity: .75; }
)";
}

}  // namespace undercroft::addin
