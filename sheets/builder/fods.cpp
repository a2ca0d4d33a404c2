// A workbook of cells as a flat OpenDocument spreadsheet (OASIS OpenDocument 1.3), by pugixml.
#include <algorithm>
#include <charconv>
#include <pugixml.hpp>
#include <sstream>
#include <stdexcept>

#include "sheets/builder/chart.hpp"
#include "sheets/builder/grid.hpp"
#include "sheets/builder/styles.hpp"

namespace undercroft::sheets {

namespace {

using pugi::xml_node;

void set(xml_node node, const char* name, const std::string& value) {
    node.append_attribute(name) = value.c_str();
}

std::string exact(double value) {
    char buffer[32];
    const auto [end, error] = std::to_chars(buffer, buffer + sizeof buffer, value);
    if (error != std::errc{}) throw std::runtime_error("a number cannot be written");
    return {buffer, end};
}

std::string centimetres(double value) {
    char buffer[32];
    const auto [end, error] =
        std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::fixed, 3);
    if (error != std::errc{}) throw std::runtime_error("a length cannot be written");
    return std::string(buffer, end) + "cm";
}

xml_node document_node(pugi::xml_document& file) {
    xml_node document = file.append_child("office:document");
    const std::pair<const char*, const char*> spaces[] = {
        {"office", "urn:oasis:names:tc:opendocument:xmlns:office:1.0"},
        {"style", "urn:oasis:names:tc:opendocument:xmlns:style:1.0"},
        {"text", "urn:oasis:names:tc:opendocument:xmlns:text:1.0"},
        {"table", "urn:oasis:names:tc:opendocument:xmlns:table:1.0"},
        {"draw", "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0"},
        {"fo", "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"},
        {"svg", "urn:oasis:names:tc:opendocument:xmlns:svg-compatible:1.0"},
        {"chart", "urn:oasis:names:tc:opendocument:xmlns:chart:1.0"},
        {"number", "urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0"},
        {"meta", "urn:oasis:names:tc:opendocument:xmlns:meta:1.0"},
        {"config", "urn:oasis:names:tc:opendocument:xmlns:config:1.0"},
        {"of", "urn:oasis:names:tc:opendocument:xmlns:of:1.2"},
        {"xlink", "http://www.w3.org/1999/xlink"},
        {"dc", "http://purl.org/dc/elements/1.1/"},
        {"calcext", "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"},
    };
    for (const auto& [prefix, name] : spaces) set(document, (std::string("xmlns:") + prefix).c_str(), name);
    set(document, "office:version", "1.3");
    set(document, "office:mimetype", "application/vnd.oasis.opendocument.spreadsheet");
    return document;
}

// --- styles of columns, rows and sheets ---------------------------------------------------------------

class Sizes {
public:
    explicit Sizes(xml_node automatic) : automatic_(automatic) {}

    std::string column(double width_cm) {
        return made("co", centimetres(width_cm), false, [&](xml_node style) {
            set(style, "style:family", "table-column");
            set(style.append_child("style:table-column-properties"), "style:column-width",
                centimetres(width_cm));
        });
    }
    std::string row(double height_cm, bool page_begins) {
        return made("ro", centimetres(height_cm), page_begins, [&](xml_node style) {
            set(style, "style:family", "table-row");
            xml_node properties = style.append_child("style:table-row-properties");
            set(properties, "style:row-height", centimetres(height_cm));
            set(properties, "style:use-optimal-row-height", "false");
            if (page_begins) set(properties, "fo:break-before", "page");
        });
    }

private:
    template <class Make>
    std::string made(const char* prefix, const std::string& size, bool page_begins, const Make& make) {
        const std::string key = prefix + size + (page_begins ? "p" : "");
        const auto known = names_.find(key);
        if (known != names_.end()) return known->second;
        const std::string name = prefix + std::to_string(names_.size() + 1);
        xml_node style = automatic_.append_child("style:style");
        set(style, "style:name", name);
        make(style);
        names_[key] = name;
        return name;
    }

    xml_node automatic_;
    std::map<std::string, std::string> names_;
};

void add_sheet_styles(xml_node automatic) {
    xml_node frame = automatic.append_child("style:style");
    set(frame, "style:name", "plainframe");
    set(frame, "style:family", "graphic");
    xml_node lines = frame.append_child("style:graphic-properties");
    set(lines, "draw:stroke", "none");
    set(lines, "draw:fill", "none");
    xml_node lowered = automatic.append_child("style:style");
    set(lowered, "style:name", "Lowered");
    set(lowered, "style:family", "text");
    set(lowered.append_child("style:text-properties"), "style:text-position", "sub 70%");
    for (const char* page : {"Upright", "Wide"}) {
        xml_node style = automatic.append_child("style:style");
        set(style, "style:name", std::string("ta") + page);
        set(style, "style:family", "table");
        set(style, "style:master-page-name", page);
        set(style.append_child("style:table-properties"), "table:display", "true");
    }
}

// --- cells ----------------------------------------------------------------------------------------------

void add_paragraphs(xml_node cell, const std::string& text) {
    std::istringstream lines(text);
    std::string line;
    while (std::getline(lines, line)) cell.append_child("text:p").text().set(line.c_str());
}

/// A symbol as it is written by hand: `rho_s` as a Greek letter with its index lowered.
void add_symbol(xml_node cell, const std::string& text) {
    static const std::map<std::string, const char*> greek = {{"rho", "ρ"},   {"mu", "μ"},    {"phi", "φ"},
                                                             {"gamma", "γ"}, {"sigma", "σ"}, {"delta", "δ"}};
    xml_node paragraph = cell.append_child("text:p");
    std::string word;
    bool lowered = false;
    const auto flush = [&] {
        if (word.empty()) return;
        const auto letter = greek.find(word);
        const std::string shown = letter == greek.end() ? word : letter->second;
        if (lowered) {
            xml_node span = paragraph.append_child("text:span");
            set(span, "text:style-name", "Lowered");
            span.text().set(shown.c_str());
        } else {
            paragraph.append_child(pugi::node_pcdata).set_value(shown.c_str());
        }
        word.clear();
    };
    for (const char c : text) {
        const bool in_word = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') ||
                             static_cast<unsigned char>(c) >= 0x80;
        if (in_word) {
            word += c;
            continue;
        }
        const bool index_follows = c == '_' && !word.empty();
        flush();
        lowered = index_follows;
        if (c == ' ')
            paragraph.append_child("text:s");
        else if (!index_follows)
            paragraph.append_child(pugi::node_pcdata).set_value(std::string(1, c).c_str());
    }
    flush();
}

void write_cell(xml_node row, const SheetCell& cell) {
    xml_node made = row.append_child("table:table-cell");
    if (!cell.style.empty()) set(made, "table:style-name", cell.style);
    if (!cell.validation.empty()) set(made, "table:content-validation-name", cell.validation);
    if (cell.columns > 1) {
        set(made, "table:number-columns-spanned", std::to_string(cell.columns));
        set(made, "table:number-rows-spanned", "1");
    }
    switch (cell.type) {
        case SheetCell::Type::blank:
            break;
        case SheetCell::Type::number:
            set(made, "office:value-type", "float");
            set(made, "office:value", exact(cell.number));
            break;
        case SheetCell::Type::text:
            set(made, "office:value-type", "string");
            if (cell.style == "Symbol" || cell.style == "Note")
                add_symbol(made, cell.text);
            else
                add_paragraphs(made, cell.text);
            break;
        case SheetCell::Type::formula:
            if (cell.matrix_rows > 0) {
                set(made, "table:number-matrix-rows-spanned", std::to_string(cell.matrix_rows));
                set(made, "table:number-matrix-columns-spanned", std::to_string(cell.matrix_columns));
            }
            set(made, "table:formula", cell.text);
            break;
    }
}

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
    std::string ranges;
    for (const Series& series : chart.series)
        ranges += (ranges.empty() ? "" : " ") + series.x + " " + series.y;
    set(object, "draw:notify-on-update-of-ranges", ranges);
    add_chart_document(object, chart);
}

void write_rows(xml_node table, const SheetGrid& sheet, Sizes& sizes) {
    constexpr double standard_height_cm = 0.5;
    xml_node head = table.append_child("table:table-header-rows");
    const int columns = static_cast<int>(sheet.column_widths_cm.size());
    for (int r = 0; r < sheet.rows; ++r) {
        xml_node row = (r < sheet.head_rows ? head : table).append_child("table:table-row");
        const auto height = sheet.row_heights_cm.find(r);
        const bool page_begins = std::count(sheet.page_breaks.begin(), sheet.page_breaks.end(), r) > 0;
        const double height_cm = r == 0 ? 0.75
                                 : height == sheet.row_heights_cm.end()
                                     ? standard_height_cm
                                     : std::max(height->second, standard_height_cm);
        set(row, "table:style-name", sizes.row(height_cm, page_begins));
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
    using Condition = std::pair<std::string, std::string>;
    const auto add = [&](const std::string& cell, const std::vector<Condition>& conditions) {
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
        if (cell.style == "Open") add(address, {{"=0", "Passed"}, {">0", "Failed"}});
        if (cell.style == "State") add(address, {{"formula-is(ISERROR(UNDERCROFT.UC.VERSION()))", "Alarm"}});
        if (const auto slip = sheet.slips.find(at); slip != sheet.slips.end())
            add(address, {{"formula-is(" + slip->second + ")", cell.style + "Wrong"}});
    }
}

void write_sheet(xml_node spreadsheet, const SheetGrid& sheet, Sizes& sizes) {
    xml_node table = spreadsheet.append_child("table:table");
    set(table, "table:name", sheet.name);
    set(table, "table:style-name", sheet.wide ? "taWide" : "taUpright");
    set(table, "table:protected", "true");
    if (sheet.printed) {
        const std::string last = cell_text(std::max(sheet.rows - 1, 0), sheet.print_columns - 1);
        set(table, "table:print-ranges", sheet.name + ".A1:" + sheet.name + "." + last);
    } else {
        set(table, "table:print", "false");
    }
    xml_node allowed = table.append_child("loext:table-protection");
    set(allowed, "loext:select-protected-cells", "true");
    set(allowed, "loext:select-unprotected-cells", "true");
    for (const double width : sheet.column_widths_cm)
        set(table.append_child("table:table-column"), "table:style-name", sizes.column(width));
    write_rows(table, sheet, sizes);
    add_conditions(table, sheet);
}

void write_validations(xml_node spreadsheet, const WorkbookGrid& workbook) {
    xml_node validations = spreadsheet.append_child("table:content-validations");
    for (const Validation& validation : workbook.validations) {
        xml_node made = validations.append_child("table:content-validation");
        set(made, "table:name", validation.name);
        if (!validation.choices.empty()) {
            std::string list;
            for (const std::string& choice : validation.choices)
                list += (list.empty() ? "\"" : ";\"") + choice + "\"";
            set(made, "table:condition", "of:cell-content-is-in-list(" + list + ")");
            set(made, "table:allow-empty-cell", "true");
            set(made, "table:display-list", "unsorted");
        }
        if (validation.wants == Validation::Wants::number) {
            set(made, "table:condition",
                "of:cell-content-is-decimal-number() and cell-content()>=" + validation.least);
            set(made, "table:allow-empty-cell", "true");
        }
        set(made, "table:base-cell-address", workbook.sheets.front().name + ".A1");
        if (!validation.help.empty()) {
            xml_node help = made.append_child("table:help-message");
            set(help, "table:title", validation.help_title);
            set(help, "table:display", "true");
            help.append_child("text:p").text().set(validation.help.c_str());
        }
        if (validation.wants != Validation::Wants::anything) {
            const bool unit = validation.wants == Validation::Wants::unit;
            const bool choice = validation.wants == Validation::Wants::choice;
            xml_node error = made.append_child("table:error-message");
            set(error, "table:message-type", unit ? "warning" : "stop");
            set(error, "table:display", "true");
            const std::string text =
                unit ? "This is not in the list. Another unit of the same kind is fine; anything else gives "
                       "an error."
                : choice ? "One of the list is wanted."
                         : "A number of " + validation.least +
                               " or more is wanted; its unit stands in the cell to the right.";
            error.append_child("text:p").text().set(text.c_str());
        }
    }
}

}  // namespace

std::string cell_text(int row, int column, bool fixed) {
    std::string letters;
    for (int n = column + 1; n > 0; n = (n - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
    return (fixed ? "$" : "") + letters + (fixed ? "$" : "") + std::to_string(row + 1);
}

std::string flat_document(const WorkbookGrid& workbook) {
    pugi::xml_document file;
    xml_node document = document_node(file);
    set(document, "xmlns:loext", "urn:org:documentfoundation:names:experimental:office:xmlns:loext:1.0");
    xml_node meta = document.append_child("office:meta");
    meta.append_child("dc:title").text().set(workbook.title.c_str());
    for (const auto& [name, value] : workbook.properties) {
        xml_node property = meta.append_child("meta:user-defined");
        set(property, "meta:name", name);
        set(property, "meta:value-type", "string");
        property.text().set(value.c_str());
    }
    add_styles(document.append_child("office:styles"));
    xml_node automatic = document.append_child("office:automatic-styles");
    xml_node master = document.append_child("office:master-styles");
    add_page_styles(automatic, master, workbook.paper == "letter");
    add_sheet_styles(automatic);
    Sizes sizes(automatic);
    xml_node spreadsheet = document.append_child("office:body").append_child("office:spreadsheet");
    write_validations(spreadsheet, workbook);
    // In a flat file a chart is read at once: the sheet that it takes its points from must stand before it.
    // The office then moves these sheets to the end (sheet_office --last).
    for (const bool printed : {false, true})
        for (const SheetGrid& sheet : workbook.sheets)
            if (sheet.printed == printed) write_sheet(spreadsheet, sheet, sizes);
    xml_node names = spreadsheet.append_child("table:named-expressions");
    for (const NamedRange& name : workbook.names) {
        xml_node made = names.append_child("table:named-range");
        set(made, "table:name", name.name);
        set(made, "table:base-cell-address", "$" + workbook.sheets.front().name + ".$A$1");
        set(made, "table:cell-range-address", name.address);
    }
    std::ostringstream text;
    file.save(text, " ", pugi::format_raw, pugi::encoding_utf8);
    return text.str();
}

}  // namespace undercroft::sheets
