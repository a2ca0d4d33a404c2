/// \file fods_sheet.hpp
/// One sheet of a flat OpenDocument spreadsheet.
#pragma once

#include <functional>
#include <map>
#include <string>

#include "sheets/builder/grid.hpp"
#include "sheets/builder/xml.hpp"

namespace undercroft::sheets {

/// The styles of columns and rows: one for each size.
class Sizes {
public:
    explicit Sizes(xml_node automatic) : automatic_(automatic) {}

    /// \return the name of the style.
    [[nodiscard]] std::string column(double width_cm);
    [[nodiscard]] std::string row(double height_cm, bool page_begins);

private:
    std::string made(const std::string& key, const char* prefix, const char* family,
                     const std::function<void(xml_node)>& describe);

    xml_node automatic_;
    std::map<std::string, std::string> names_;
};

void write_sheet(xml_node spreadsheet, const SheetGrid& sheet, Sizes& sizes);

}  // namespace undercroft::sheets
