/// \file loose_sheets.hpp
/// Small workbooks as text, of many styles, each correct as it stands, with the mistakes to be planted in it:
/// the files of tests/data/loose. Their grammar is in tests/data/loose/README.md.
#pragma once

#include <string>
#include <vector>

#include "addin/audit/book/book.hpp"
#include "addin/audit/book/stored_values.hpp"

namespace undercroft::tests {

struct PlantedMistake {
    int line = 0;
    std::string class_name;  ///< what people do wrong: `range one row short`
    std::string edits;
    std::vector<std::string> reasons;  ///< as audit::word_of writes them; any of them is right
    std::string cell;                  ///< `B6`, `Sheet.B6`, a name; empty for the whole workbook
};

struct LooseSheet {
    std::string file;
    std::string style;
    audit::Book book;
    std::vector<PlantedMistake> mistakes;
};

/// \throws std::runtime_error naming the line that cannot be read.
[[nodiscard]] LooseSheet read_loose_sheet(const std::string& path);

/// Lines of mistakes alone: `CLASS | EDITS | REASONS | CELL`.
[[nodiscard]] PlantedMistake read_planted(const std::string& line, int number);

/// A workbook after the edits, and what its file then holds.
struct EditedBook {
    audit::Book book;
    audit::StoredValues stored;
};
/// \param computes whether formulas are computed anew
[[nodiscard]] EditedBook with_edits(const audit::Book& clean, const std::string& edits, bool computes);

/// The cell that a mistake means: without a sheet's name it is on the first.
[[nodiscard]] audit::Spot planted_cell(const audit::Book& book, const std::string& cell);

}  // namespace undercroft::tests
