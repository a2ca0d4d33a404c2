/// \file csv.hpp
/// Tables of published figures in tests/data: lines from # on that say where they come from, one header line,
/// then rows; cells may be quoted.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "tests/support/files.hpp"

namespace undercroft::tests {

class CsvRow {
public:
    explicit CsvRow(std::map<std::string, std::string> cells) : cells_(std::move(cells)) {}

    [[nodiscard]] const std::string& text(const std::string& column) const {
        INFO("column " << column);
        REQUIRE(cells_.contains(column));
        return cells_.at(column);
    }
    [[nodiscard]] bool has(const std::string& column) const { return !text(column).empty(); }
    /// The cell as a number, all of it.
    [[nodiscard]] double number(const std::string& column) const {
        const std::string& cell = text(column);
        std::size_t read = 0;
        const double value = std::stod(cell, &read);
        INFO("cell '" << cell << "'");
        REQUIRE(read == cell.size());
        return value;
    }

private:
    std::map<std::string, std::string> cells_;
};

inline std::vector<std::string> csv_cells(const std::string& line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            cells.emplace_back();
        else if (c != '\r')
            cells.back() += c;
    }
    return cells;
}

/// Rows of a table, as many as the test expects: a table that lost rows proves nothing.
inline std::vector<CsvRow> csv_rows(const std::string& path, std::size_t expected) {
    std::istringstream lines(file_text(path));
    std::string line;
    while (std::getline(lines, line) && line.starts_with('#')) continue;
    const std::vector<std::string> header = csv_cells(line);
    std::vector<CsvRow> rows;
    while (std::getline(lines, line)) {
        if (line.empty()) continue;
        const std::vector<std::string> cells = csv_cells(line);
        INFO(path << ": " << line);
        REQUIRE(cells.size() == header.size());
        std::map<std::string, std::string> row;
        for (std::size_t i = 0; i < cells.size(); ++i) row[header[i]] = cells[i];
        rows.emplace_back(std::move(row));
    }
    REQUIRE(rows.size() == expected);
    return rows;
}

}  // namespace undercroft::tests
