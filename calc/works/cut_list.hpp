/// \file cut_list.hpp
/// One cut list of sheet for all faces of a bed: numbered panels, and the rolls that they are cut from.
#pragma once

#include "calc/works/wrap.hpp"

namespace undercroft::calc {

/// A roll of fabric or liner, and how it is laid.
struct SheetRoll {
    Length length;
    Length width;
    Length lap;          ///< between strips, and where pieces are joined within a strip
    Length least_piece;  ///< shortest rest of a roll that is worth joining on
};

/// A panel: a strip of a face, or a piece of one, and where it is cut from.
struct Panel {
    Count face;
    Count strip;     ///< of its face
    Length length;   ///< with the lap onto the piece before it in its strip
    Length width;    ///< with the lap onto the strip before it
    bool is_joined;  ///< onto the piece before it
    Count roll;
    Length along;   ///< from the start of its roll
    Length across;  ///< from the edge of its roll
};

/// Panels in the order in which they are cut.
///
/// Each face is covered by strips along its length, n = ceil((W - lap)/(roll width - lap)), the last one as
/// narrow as is left. Strips are cut in whole pieces, the longest first, from the shortest rest that is long
/// enough; narrow ones beside a panel that leaves enough of the roll's width. Where no opened roll is long
/// enough, rests of at least `least_piece` are joined, each join costing a lap, before a new roll is opened;
/// so a least piece as long as a roll makes no joins but those of strips longer than a roll. Common practice.
/// \throws Refused(domain) for no face, a length not above 0, a lap not shorter than a roll is wide and long,
/// a least piece not longer than the lap or longer than a roll, or more than 10000 panels.
[[nodiscard]] std::vector<Panel> cut_list(const SheetFaces& faces, const SheetRoll& roll);

/// Rolls that a cut list needs.
[[nodiscard]] Count rolls_of(const std::vector<Panel>& panels);

/// Length of the seams within the faces of a cut list: between strips, and where pieces are joined.
[[nodiscard]] Length seams_of(const std::vector<Panel>& panels, const SheetFaces& faces);

/// What is left at the end of each roll, uncut.
[[nodiscard]] Table<Count, Length> rests_of(const std::vector<Panel>& panels, const SheetRoll& roll);

}  // namespace undercroft::calc
