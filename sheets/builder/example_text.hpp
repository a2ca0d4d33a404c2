/// \file example_text.hpp
/// A small sheet to copy from, as text: its cells as they are typed. See sheets/text/README.md.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sheets/builder/dual.hpp"

namespace undercroft::sheets {

struct ExampleLine {
    enum class Kind {
        head,   ///< the heads of columns
        units,  ///< the units of columns
        row,    ///< cells
        fill,   ///< rows that the table above fills
        note,   ///< a sentence
        blank,
        chart,
    };
    int line = 0;  ///< in the file
    Kind kind = Kind::row;
    std::vector<DualText> cells;  ///< of a chart: title, x, y, x title, y title
    int rows = 1;                 ///< of a fill
};

struct ExampleSheet {
    std::string name;
    std::string title;
    std::string says;
    std::vector<ExampleLine> lines;
};

/// \throws TextMistake for what cannot be read, with its line.
[[nodiscard]] ExampleSheet read_example_sheet(std::string_view text);

}  // namespace undercroft::sheets
