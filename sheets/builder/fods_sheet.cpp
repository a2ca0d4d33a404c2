#include "sheets/builder/fods_sheet.hpp"

#include <algorithm>
#include <boost/algorithm/string/join.hpp>
#include <charconv>
#include <stdexcept>

#include "sheets/builder/chart.hpp"
#include "sheets/builder/fods_cell.hpp"

namespace undercroft::sheets {

namespace {

std::string centimetres(double value) {
    char buffer[32];
    const auto [end, error] =
        std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::fixed, 3);
    if (error != std::errc{}) throw std::runtime_error("a length cannot be written");
    return std::string(buffer, end) + "cm";
}

}  // namespace

std::string Sizes::column(double width_cm) {
    const std::string width = centimetres(width_cm);
    return made("co" + width, "co", "table-column", [&](xml_node style) {
        set(style.append_child("style:table-column-properties"), "style:column-width", width);
    });
}

std::string Sizes::row(double height_cm, bool page_begins) {
    const std::string height = centimetres(height_cm);
    return made("ro" + height + (page_begins ? "p" : ""), "ro", "table-row", [&](xml_node style) {
        xml_node properties = style.append_child("style:table-row-properties");
        set(properties, "style:row-height", height);
        set(properties, "style:use-optimal-row-height", "false");
        if (page_begins) set(properties, "fo:break-before", "page");
    });
}

std::string Sizes::made(const std::string& key, const char* prefix, const char* family,
                        const std::function<void(xml_node)>& describe) {
    const auto known = names_.find(key);
    if (known != names_.end()) return known->second;
    const std::string name = prefix + std::to_string(names_.size() + 1);
    describe(add_style(automatic_, name, family));
    names_[key] = name;
    return name;
}

namespace {

void write_chart(xml_node cell, const SheetGrid& sheet, const Chart& chart, int index) {
    xml_node frame = cell.append_child("draw:frame");
    set(frame, "draw:style-name", "plainframe");
    set(frame, "draw:name", "Chart" + std::to_string(index + 1));
    set(frame, "table:end-cell-address", sheet.name + "." + cell_text(chart.end_row, chart.end_column));
    set(frame, "svg:width", centimetres(chart.width_cm));
    set(frame, "svg:height", centimetres(chart.height_cm));
    set(frame, "svg:x", "0.1cm");
    set(frame, "svg:y", "0.1cm");
    xml_node object = frame.append_child("draw:object");
    std::vector<std::string> ranges;
    for (const Series& series : chart.series) ranges.insert(ranges.end(), {series.x, series.y});
    set(object, "draw:notify-on-update-of-ranges", boost::algorithm::join(ranges, " "));
    add_chart_document(object, chart);
}

/// Whether a row shows nothing but the looks of its cells, and the row below it the same.
bool is_like_next(const SheetGrid& sheet, int r) {
    const auto matters = [&](int row) {
        return sheet.row_heights_cm.contains(row) ||
               std::count(sheet.page_breaks.begin(), sheet.page_breaks.end(), row) > 0 ||
               std::any_of(sheet.charts.begin(), sheet.charts.end(),
                           [row](const Chart& chart) { return chart.row == row; });
    };
    if (r < std::max(sheet.head_rows, 1) || r + 1 >= sheet.rows || matters(r) || matters(r + 1)) return false;
    const auto is_blank = [](const auto& cell) { return cell.second.type == SheetCell::Type::blank; };
    const auto looks_the_same = [](const auto& one, const auto& other) {
        return one.first.second == other.first.second && one.second.style == other.second.style &&
               one.second.columns == other.second.columns && one.second.validation == other.second.validation;
    };
    const auto first = sheet.cells.lower_bound({r, 0});
    const auto next = sheet.cells.lower_bound({r + 1, 0});
    const auto end = sheet.cells.lower_bound({r + 2, 0});
    return std::all_of(first, end, is_blank) && std::equal(first, next, next, end, looks_the_same);
}

void write_rows(xml_node table, const SheetGrid& sheet, Sizes& sizes) {
    xml_node head = table.append_child("table:table-header-rows");
    const int columns = static_cast<int>(sheet.column_widths_cm.size());
    for (int r = 0; r < sheet.rows; ++r) {
        const int begin = r;
        while (is_like_next(sheet, r)) ++r;
        xml_node row = (r < sheet.head_rows ? head : table).append_child("table:table-row");
        const bool page_begins = std::count(sheet.page_breaks.begin(), sheet.page_breaks.end(), r) > 0;
        set(row, "table:style-name", sizes.row(row_height_cm(sheet, r), page_begins));
        if (r > begin) set(row, "table:number-rows-repeated", std::to_string(r - begin + 1));
        for (int c = 0; c < columns;) {
            const auto found = sheet.cells.find({r, c});
            const int span = found == sheet.cells.end() ? 1 : found->second.columns;
            if (found == sheet.cells.end())
                row.append_child("table:table-cell");
            else
                write_cell(row, found->second);
            for (std::size_t i = 0; i < sheet.charts.size(); ++i)
                if (sheet.charts[i].row == r && sheet.charts[i].column == c)
                    write_chart(row.last_child(), sheet, sheet.charts[i], static_cast<int>(i));
            for (int covered = 1; covered < span; ++covered) {
                xml_node cell = row.append_child("table:covered-table-cell");
                if (!found->second.style.empty()) set(cell, "table:style-name", found->second.style);
            }
            c += span;
        }
    }
}

void add_conditions(xml_node table, const SheetGrid& sheet) {
    xml_node formats = table.append_child("calcext:conditional-formats");
    using Wanted = std::pair<std::string, std::string>;
    const auto add = [&](const std::string& cell, const std::vector<Wanted>& conditions) {
        const std::string address = sheet.name + "." + cell;
        xml_node format = formats.append_child("calcext:conditional-format");
        set(format, "calcext:target-range-address", address + ":" + address);
        for (const auto& [value, style] : conditions) {
            xml_node condition = format.append_child("calcext:condition");
            set(condition, "calcext:apply-style-name", style);
            set(condition, "calcext:value", value);
            set(condition, "calcext:base-cell-address", address);
        }
    };
    for (const auto& [at, cell] : sheet.cells) {
        const std::string address = cell_text(at.first, at.second);
        if (cell.style == "Verdict") add(address, {{"=1", "Passed"}, {"=0", "Failed"}});
        if (cell.style == "SummaryCount") add(address, {{">0", "Failed"}});
        if (cell.style == "State") add(address, {{"formula-is(ISERROR(UNDERCROFT.UC.VERSION()))", "Alarm"}});
        const auto found = sheet.conditions.find(at);
        if (found == sheet.conditions.end()) continue;
        std::vector<Wanted> conditions;
        for (const auto& [when, style] : found->second)
            conditions.push_back({"formula-is(" + when + ")", style});
        add(address, conditions);
    }
}

}  // namespace

void write_sheet(xml_node spreadsheet, const SheetGrid& sheet, Sizes& sizes) {
    xml_node table = spreadsheet.append_child("table:table");
    set(table, "table:name", sheet.name);
    set(table, "table:style-name", sheet.wide ? "taWide" : "taUpright");
    if (sheet.protect) set(table, "table:protected", "true");
    if (sheet.printed) {
        const int printed = sheet.printed_rows > 0 ? sheet.printed_rows : sheet.rows;
        const std::string last = cell_text(std::max(printed - 1, 0), sheet.print_columns - 1);
        set(table, "table:print-ranges", sheet.name + ".A1:" + sheet.name + "." + last);
    } else {
        set(table, "table:print", "false");
    }
    if (sheet.protect) {
        xml_node allowed = table.append_child("loext:table-protection");
        set(allowed, "loext:select-protected-cells", "true");
        set(allowed, "loext:select-unprotected-cells", "true");
    }
    int column = 0;
    for (const double width : sheet.column_widths_cm) {
        xml_node made = table.append_child("table:table-column");
        set(made, "table:style-name", sizes.column(width));
        if (sheet.hidden_from > 0 && column++ >= sheet.hidden_from) set(made, "table:visibility", "collapse");
    }
    write_rows(table, sheet, sizes);
    add_conditions(table, sheet);
}

}  // namespace undercroft::sheets
