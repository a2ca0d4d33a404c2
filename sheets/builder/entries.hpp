/// \file entries.hpp
/// What is watched of a row that is typed in: whether something is still to give, cannot be, is unusual, or
/// is only assumed because it is what the template holds and nobody has confirmed it.
///
/// All of it only looks at the cells (ISERROR), so that an audit still finds an entry that nothing computes
/// with.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "sheets/builder/cell_writer.hpp"

namespace undercroft::sheets {

/// A cell that is typed in.
struct Entry {
    int column = 0;
    std::string title;           ///< of its column in a list or grid; empty for a row of one entry
    std::optional<Usual> usual;  ///< of a number; a text has none
    bool is_text = false;
    bool is_share = false;  ///< a cell that shows its number as a percentage
    std::optional<double> number;  ///< what the template holds
    std::string text;
    std::string unit;     ///< beside it; empty where there is none
    int unit_row = 0;     ///< where that stands
    int unit_column = 0;  ///< the same
};

/// Watches the entry of an input, a text or a choice, and writes its state before its note.
void watch_input(CellWriter& writer, const Row& row, const Entry& entry, int at);
void watch_text(CellWriter& writer, const Row& row, const std::string& text,
                const std::vector<std::string>& options, int at);

/// Watches the entries of one item of a list or grid; an item without any entry is passed over.
void watch_item(CellWriter& writer, const std::vector<Entry>& entries, int at);

}  // namespace undercroft::sheets
