/// \file worked_examples.hpp
/// The file of published worked examples, read for the workbook and for the tests.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sheets/builder/numbers.hpp"  // of the cells of a published table

namespace undercroft::sheets {

struct WorkedExample {
    std::string section;
    std::string formula;           ///< in the sheet's spelling: `UC.PIT.VOLUME("20 m"; ...)`
    std::optional<double> number;  ///< the published value, when it is a number
    std::string text;              ///< as it stands in the file
    double tolerance = 0;          ///< absolute, in the published value's unit
    std::string tag;               ///< published, from memory, math, common practice
    std::string source;
    int line = 0;

    /// Whether a computed number is the published one.
    [[nodiscard]] bool agrees(double computed) const;
};

/// A published table that several examples use by its name: `table NAME | TITLE | cell; cell | cell; cell`.
struct ExampleTable {
    std::string name;
    std::string title;
    std::vector<std::vector<std::string>> rows;
};

struct WorkedExamples {
    std::vector<ExampleTable> tables;
    std::vector<WorkedExample> rows;
};

/// \throws std::runtime_error that names the line.
[[nodiscard]] WorkedExamples read_worked_examples(std::string_view text);

}  // namespace undercroft::sheets
