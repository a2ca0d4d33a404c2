#include "calc/works/cut_list.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"

namespace undercroft::addin {

namespace {

using calc::SheetFaces;
/// Number of the panel, face, strip, length, width, 1 where it is joined on, roll, place along and across it.
using PanelRows = calc::Table<Count, Count, Count, Length, Length, Count, Count, Length, Length>;

constexpr const char* list_source =
    "common practice: whole pieces, the longest first, from the shortest rest that is long enough; narrow "
    "strips "
    "beside others; rests joined before a roll is opened";

calc::SheetRoll roll(Length length, Length width, Length lap, Length least_piece) {
    return {length, width, lap, least_piece};
}

PanelRows rows_of(const std::vector<calc::Panel>& panels) {
    PanelRows rows;
    rows.reserve(panels.size());
    for (const calc::Panel& panel : panels)
        rows.emplace_back(count(static_cast<double>(rows.size() + 1)), panel.face, panel.strip, panel.length,
                          panel.width, count(panel.is_joined ? 1 : 0), panel.roll, panel.along, panel.across);
    return rows;
}

Entry& takes_faces(Entry& entry) {
    return entry
        .takes("faces", "L, W",
               "Two columns: length along the strips, width across; the table of UC.WRAP.FACES")
        .within({usual::face_length, usual::face_width});
}
Entry& takes_roll(Entry& entry) {
    return entry.takes("roll length", "L_r", "Length of a roll")
        .within(usual::roll_length)
        .takes("roll width", "W_r", "Width of a roll")
        .within(usual::roll_width)
        .takes("lap", "lap", "Overlap between strips, and where pieces are joined")
        .within(usual::lap.or_zero())
        .takes("least piece", "l_p",
               "Shortest rest of a roll worth joining on; the roll's length for no joins", u"3 m")
        .within(usual::least_piece);
}

Function list_entry() {
    auto list = function("UC.PANELS", [](SheetFaces faces, Length roll_length, Length roll_width, Length lap,
                                         Length least_piece) {
        return rows_of(calc::cut_list(faces, roll(roll_length, roll_width, lap, least_piece)));
    });
    list.says(
            "Cut list of sheet for all faces of a bed: numbered panels in the order in which they are cut, "
            "and "
            "where on which roll")
        .related({"UC.PANELS.ROLLS", "UC.PANELS.SEAMS", "UC.PANELS.RESTS", "UC.WRAP.FACES"})
        .also_called("panel layout, cutting plan, roll layout, geomembrane panels, nesting")
        .equation("strips n = ceil((W - lap)/(W_r - lap)), the last as narrow as is left")
        .source(list_source)
        .example("INDEX(UC.PANELS({46;16.4}; \"50 m\"; \"5 m\"; \"0.5 m\"; \"50 m\"); 5; 5)", "2.9",
                 "1e-9 rel", Origin::mathematics, "the last of four strips: 16.4 m less three times 4.5 m")
        .example(
            "INDEX(UC.PANELS({\"ft\";\"ft\"|150;52|90;12}; \"300 ft\"; \"15 ft\"; \"1 ft\"; \"10 ft\"; ; ); "
            "2; 7)",
            "1", "exact", Origin::mathematics, "the longest is cut first, from the first roll")
        .caution(
            "Corners of sloping walls are offcuts. Mark each panel with its number before it leaves the "
            "roll");
    return takes_roll(takes_faces(list).in_order())
        .gives_columns("Panels", {{"panel", "no."},
                                  {"face", "face"},
                                  {"strip", "strip"},
                                  {"length", "l"},
                                  {"width", "w"},
                                  {"joined", "1 where it is joined on"},
                                  {"roll", "roll"},
                                  {"along", "from the start of the roll"},
                                  {"across", "from the edge of the roll"}});
}

Function rolls_entry() {
    auto rolls = function("UC.PANELS.ROLLS", [](SheetFaces faces, Length roll_length, Length roll_width,
                                                Length lap, Length least_piece) {
        return calc::rolls_of(calc::cut_list(faces, roll(roll_length, roll_width, lap, least_piece)));
    });
    rolls.says("Rolls that the cut list of UC.PANELS needs")
        .related({"UC.PANELS", "UC.WRAP.FACES", "UC.ROLLS", "UC.ORDER"})
        .also_called("number of rolls, roll count, geotextile order, sheet order")
        .equation("N = rolls opened")
        .source(list_source)
        .example("UC.PANELS.ROLLS({46;16.4}; \"50 m\"; \"5 m\"; \"0.5 m\"; \"50 m\")", "4", "exact",
                 Origin::mathematics, "four strips of 46 m, none joined")
        .example(
            "UC.PANELS.ROLLS(UC.WRAP.FACES(\"39.99 m\"; \"12.17 m\"; \"1.14 m\"; \"1H:1V\"; ; \"0.45 m\"); "
            "\"100 m\"; \"4.5 m\"; \"0.45 m\")",
            "4", "exact", Origin::mathematics, "a car park's bed, its panels laid out by hand");
    return takes_roll(takes_faces(rolls)).gives("N", "Rolls");
}

Function panels_seams_entry() {
    auto seams = function("UC.PANELS.SEAMS", [](SheetFaces faces, Length roll_length, Length roll_width,
                                                Length lap, Length least_piece) {
        return calc::seams_of(calc::cut_list(faces, roll(roll_length, roll_width, lap, least_piece)), faces);
    });
    seams
        .says(
            "Length of the seams within the faces of the cut list of UC.PANELS: between strips, and where "
            "pieces "
            "are joined")
        .related({"UC.PANELS", "UC.LINER.SEAMS", "UC.WRAP.SEAMS", "UC.CREW.TIME"})
        .also_called("weld length, field seams, seam length between panels, joints")
        .equation("l = sum of (n - 1) L and of the widths of joined pieces")
        .source(list_source)
        .example("UC.PANELS.SEAMS({46;16.4}; \"50 m\"; \"5 m\"; \"0.5 m\"; \"50 m\")", "138", "1e-9 rel",
                 Origin::mathematics, "three seams of 46 m")
        .example("UC.PANELS.SEAMS({46;16.4}; \"30 m\"; \"5 m\"; \"0.5 m\"; \"30 m\")", "155.9", "1e-9 rel",
                 Origin::mathematics, "and four joins across: 3 x 5 m + 2.9 m");
    return takes_roll(takes_faces(seams)).gives("l", "Length of seam");
}

Function rests_entry() {
    auto rests = function("UC.PANELS.RESTS", [](SheetFaces faces, Length roll_length, Length roll_width,
                                                Length lap, Length least_piece) {
        const calc::SheetRoll of = roll(roll_length, roll_width, lap, least_piece);
        return calc::rests_of(calc::cut_list(faces, of), of);
    });
    rests.says("What the cut list of UC.PANELS leaves at the end of each roll, uncut")
        .related({"UC.PANELS", "UC.PANELS.ROLLS", "UC.WRAP.FACES"})
        .also_called("offcuts, remnants, waste of rolls, leftover lengths")
        .equation("L_r less the panels cut along the roll")
        .source(list_source)
        .example("INDEX(UC.PANELS.RESTS({46;16.4}; \"50 m\"; \"5 m\"; \"0.5 m\"; \"50 m\"); 2; 2)", "4",
                 "1e-9 rel", Origin::mathematics, "50 m less 46 m")
        .example(
            "INDEX(UC.PANELS.RESTS({\"ft\";\"ft\"|150;28}; \"300 ft\"; \"15 ft\"; \"1 ft\"; \"10 ft\"; "
            "\"1;ft\"); "
            "2; 2)",
            "0", "1e-9", Origin::mathematics, "two strips of half a roll");
    return takes_roll(takes_faces(rests))
        .gives_columns("Rests, one roll a row", {{"roll", "roll"}, {"rest", "l"}});
}

}  // namespace

std::vector<Function> cut_list_functions() {
    return {list_entry(), rolls_entry(), panels_seams_entry(), rests_entry()};
}

}  // namespace undercroft::addin
