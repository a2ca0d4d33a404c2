/// \file selection.hpp
/// Which rows of the sheets stand in a workbook, and which of them only link to another sheet.
#pragma once

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "sheets/builder/sheet_text.hpp"

namespace undercroft::sheets {

/// A mistake in a sheet, with its line.
[[noreturn]] void sheet_mistake(const Sheet& sheet, int line, const std::string& why);

class Selection {
public:
    /// \throws std::runtime_error for a sheet that is not there or a key that stands twice.
    Selection(const WorkbookText& workbook, const std::vector<Sheet>& all, System system);

    [[nodiscard]] const std::vector<Sheet>& sheets() const { return sheets_; }

    /// Of a key that no sheet computes, the first `given` row is its input and the others link to it.
    [[nodiscard]] bool is_link(const Sheet& sheet, const Row& row) const;

    /// Whether the row gives its key a place: everything but links and charts.
    [[nodiscard]] bool defines(const Sheet& sheet, const Row& row) const;

private:
    void find_definitions();
    void keep_what_is_used();

    System system_;
    std::vector<Sheet> sheets_;
    std::set<std::string> definitions_;
    std::map<std::string, std::pair<std::string, int>> first_given_;
};

}  // namespace undercroft::sheets
