#include "tests/support/open_document.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdio>
#include <map>
#include <memory>
#include <pugixml.hpp>
#include <set>
#include <stdexcept>

#include "addin/formula/formula.hpp"

namespace undercroft::tests {

using audit::Area;
using audit::Book;
using audit::BookCell;
using audit::BookSheet;
using audit::CellFormat;
using audit::Spot;

namespace {

std::string output_of(const std::string& command) {
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(command.c_str(), "r"), pclose);
    if (!pipe) throw std::runtime_error("cannot run " + command);
    std::string text;
    std::array<char, 65536> part{};
    for (std::size_t n = 0; (n = std::fread(part.data(), 1, part.size(), pipe.get())) > 0;)
        text.append(part.data(), n);
    return text;
}

/// A part of the file; a flat one is all its parts.
pugi::xml_document part_of(const std::string& path, const std::string& part) {
    pugi::xml_document document;
    const auto how = pugi::parse_default | pugi::parse_ws_pcdata;
    if (path.ends_with(".fods")) {
        if (!document.load_file(path.c_str(), how)) throw std::runtime_error("cannot read " + path);
        return document;
    }
    const std::string text = output_of("unzip -p '" + path + "' " + part);
    if (!document.load_buffer(text.data(), text.size(), how))
        throw std::runtime_error("cannot read " + part + " of " + path);
    return document;
}

std::string attribute(const pugi::xml_node& node, const char* name) {
    return node.attribute(name).as_string();
}

std::int32_t count(const pugi::xml_node& node, const char* name, std::int32_t otherwise = 1) {
    return node.attribute(name).as_int(otherwise);
}

int error_code(const std::string& shown) {
    static const std::map<std::string, int> codes = {{"#VALUE!", 519}, {"#DIV/0!", 532}, {"#NUM!", 503},
                                                     {"#N/A", 32767},  {"#REF!", 524},   {"#NAME?", 525},
                                                     {"#NULL!", 521}};
    const auto known = codes.find(shown);
    if (known != codes.end()) return known->second;
    return shown.starts_with("Err:") ? std::stoi(shown.substr(4)) : 519;
}

class Styles {
public:
    void add(const pugi::xml_node& styles, bool automatic) {
        std::set<std::string> dates;
        for (const pugi::xml_node& date : styles.children("number:date-style"))
            dates.insert(attribute(date, "style:name"));
        for (const pugi::xml_node& style : styles.children("style:style")) {
            Style made;
            made.parent = attribute(style, "style:parent-style-name");
            made.automatic = automatic;
            made.data = attribute(style, "style:data-style-name");
            made.is_date = dates.contains(made.data);
            made.protection = attribute(style.child("style:table-cell-properties"), "style:cell-protect");
            const std::string display = attribute(style, "style:display-name");
            made.shown_name = display.empty() ? attribute(style, "style:name") : display;
            made.visible = attribute(style.child("style:table-properties"), "table:display") != "false";
            styles_[attribute(style, "style:family") + "/" + attribute(style, "style:name")] = made;
        }
    }

    [[nodiscard]] CellFormat format(const std::string& name) const {
        CellFormat made;
        made.style = name.empty() ? "Default" : named(name);
        made.locked = locked(name.empty() ? "Default" : name);
        if (is_date(name)) made.number.shown_as = audit::ShownAs::date;
        return made;
    }
    [[nodiscard]] bool shows_sheet(const std::string& name) const {
        const auto found = styles_.find("table/" + name);
        return found == styles_.end() || found->second.visible;
    }

private:
    struct Style {
        std::string parent;
        std::string shown_name;
        std::string protection;
        std::string data;  ///< its number format
        bool is_date = false;
        bool automatic = false;
        bool visible = true;
    };
    [[nodiscard]] const Style* find(const std::string& name) const {
        const auto found = styles_.find("table-cell/" + name);
        return found == styles_.end() ? nullptr : &found->second;
    }
    [[nodiscard]] std::string named(const std::string& name) const {
        const Style* style = find(name);
        if (style == nullptr) return "Default";
        return style->automatic ? named(style->parent) : style->shown_name;
    }
    [[nodiscard]] bool locked(const std::string& name) const {
        const Style* style = find(name);
        if (style == nullptr) return true;
        if (!style->protection.empty())
            return style->protection != "none" && style->protection.find("protected") != std::string::npos;
        return style->parent.empty() || locked(style->parent);
    }

    [[nodiscard]] bool is_date(const std::string& name) const {
        const Style* style = find(name);
        if (style == nullptr) return false;
        return style->data.empty() ? is_date(style->parent) : style->is_date;
    }

    std::map<std::string, Style> styles_;
};

class SheetReader {
public:
    SheetReader(const Styles& styles, const std::map<std::string, bool>& lists, std::int32_t place)
        : styles_(styles), lists_(lists), place_(place) {}

    BookSheet read(const pugi::xml_node& table) {
        made_.name = attribute(table, "table:name");
        made_.is_protected = attribute(table, "table:protected") == "true";
        made_.hidden = !styles_.shows_sheet(attribute(table, "table:style-name"));
        read_columns(table);
        read_rows(table);
        fill_arrays();
        return std::move(made_);
    }

private:
    /// All cells of an array formula hold it, also those that show nothing.
    void fill_arrays() {
        std::map<std::pair<std::int32_t, std::int32_t>, std::size_t> places;
        for (std::size_t i = 0; i < made_.cells.size(); ++i)
            places[{made_.cells[i].row, made_.cells[i].column}] = i;
        for (std::size_t a = 0; a < made_.arrays.size(); ++a) {
            const Area& area = made_.arrays[a];
            for (std::int32_t row = area.first_row; row <= area.last_row; ++row)
                for (std::int32_t column = area.first_column; column <= area.last_column; ++column) {
                    const auto found = places.find({row, column});
                    BookCell& cell =
                        found != places.end() ? made_.cells[found->second] : made_.cells.emplace_back();
                    cell.row = row;
                    cell.column = column;
                    cell.array = static_cast<std::int32_t>(a);
                    cell.formula = array_formulas_[a];
                }
        }
    }

    static bool is_hidden(const pugi::xml_node& node) {
        const std::string visibility = attribute(node, "table:visibility");
        return visibility == "collapse" || visibility == "filter";
    }

    void read_columns(const pugi::xml_node& parent) {
        for (const pugi::xml_node& node : parent.children()) {
            const std::string name = node.name();
            if (name == "table:table-header-columns" || name == "table:table-column-group" ||
                name == "table:table-columns")
                read_columns(node);
            if (name != "table:table-column") continue;
            const std::int32_t columns = count(node, "table:number-columns-repeated");
            for (std::int32_t i = 0; i < std::min(columns, 1024); ++i) {
                if (is_hidden(node)) hidden_columns_.insert(column_styles_.size());
                column_styles_.push_back(attribute(node, "table:default-cell-style-name"));
            }
        }
    }

    void read_rows(const pugi::xml_node& parent) {
        for (const pugi::xml_node& node : parent.children()) {
            const std::string name = node.name();
            if (name == "table:table-header-rows" || name == "table:table-row-group" ||
                name == "table:table-rows")
                read_rows(node);
            if (name == "table:table-row") read_row(node);
        }
    }

    void read_row(const pugi::xml_node& row) {
        const std::int32_t rows = count(row, "table:number-rows-repeated");
        for (std::int32_t i = 0; i < rows; ++i, ++row_) {
            std::int32_t column = 0;
            bool any = false;
            for (const pugi::xml_node& cell : row.children()) {
                const std::int32_t columns = count(cell, "table:number-columns-repeated");
                const bool has_content =
                    cell.attribute("office:value-type") || cell.attribute("table:formula");
                for (std::int32_t c = 0; has_content && c < columns; ++c)
                    read_cell(cell, row, column + c, is_hidden(row));
                any = any || has_content;
                column += columns;
            }
            if (!any) {  // blank rows, however many
                row_ += rows - i;
                return;
            }
        }
    }

    void read_cell(const pugi::xml_node& node, const pugi::xml_node& row, std::int32_t column, bool hidden) {
        BookCell cell;
        cell.row = row_;
        cell.column = column;
        cell.formula = calc_formula(attribute(node, "table:formula"));
        read_value(node, cell);
        cell.format = format_of(node, row, column);
        if (hidden) made_.hidden_rows.insert(row_);
        if (hidden_columns_.contains(static_cast<std::size_t>(column))) made_.hidden_columns.insert(column);
        const std::int32_t rows = count(node, "table:number-matrix-rows-spanned", 0);
        const std::int32_t columns = count(node, "table:number-matrix-columns-spanned", 0);
        if (rows > 0 || columns > 0) {
            made_.arrays.push_back(
                {place_, row_, column, row_ + std::max(rows, 1) - 1, column + std::max(columns, 1) - 1});
            array_formulas_.push_back(cell.formula);
        }
        made_.cells.push_back(std::move(cell));
    }

    static std::string paragraphs(const pugi::xml_node& node) {
        std::string text;
        bool first = true;
        for (const pugi::xml_node& paragraph : node.children("text:p")) {
            if (!first) text += '\n';
            first = false;
            append_text(paragraph, text);
        }
        return text;
    }
    static void append_text(const pugi::xml_node& node, std::string& text) {
        for (const pugi::xml_node& part : node.children()) {
            if (part.type() == pugi::node_pcdata) text += part.value();
            if (std::string(part.name()) == "text:s")
                text.append(static_cast<std::size_t>(count(part, "text:c")), ' ');
            append_text(part, text);
        }
    }

    static void read_value(const pugi::xml_node& node, BookCell& cell) {
        const std::string type = attribute(node, "office:value-type");
        if (attribute(node, "calcext:value-type") == "error") {
            cell.error = error_code(paragraphs(node));
        } else if (type == "string") {
            const pugi::xml_attribute own = node.attribute("office:string-value");
            cell.value = own ? std::string(own.as_string()) : paragraphs(node);
        } else if (type == "boolean") {
            cell.value = attribute(node, "office:boolean-value") == "true" ? 1.0 : 0.0;
        } else if (!type.empty()) {
            const std::string text = attribute(node, "office:value");
            double value = 0;
            std::from_chars(text.data(), text.data() + text.size(), value);
            cell.value = value;
        }
    }

    std::uint32_t format_of(const pugi::xml_node& node, const pugi::xml_node& row, std::int32_t column) {
        std::string style = attribute(node, "table:style-name");
        if (style.empty()) style = attribute(row, "table:default-cell-style-name");
        if (style.empty() && static_cast<std::size_t>(column) < column_styles_.size())
            style = column_styles_[static_cast<std::size_t>(column)];
        const std::string list = attribute(node, "table:content-validation-name");
        const auto [known, is_new] =
            formats_.try_emplace(style + "|" + list, static_cast<std::uint32_t>(made_.formats.size()));
        if (is_new) {
            CellFormat format = styles_.format(style);
            const auto found = lists_.find(list);
            format.has_list = found != lists_.end() && found->second;
            made_.formats.push_back(format);
        }
        return known->second;
    }

    const Styles& styles_;
    const std::map<std::string, bool>& lists_;
    std::int32_t place_;
    std::int32_t row_ = 0;
    BookSheet made_;
    std::vector<std::string> column_styles_;
    std::set<std::size_t> hidden_columns_;
    std::vector<std::string> array_formulas_;
    std::map<std::string, std::uint32_t> formats_;
};

std::string calc_address(const std::string& address) {
    std::string text = address;
    for (std::size_t at = 0; (at = text.find(":.", at)) != std::string::npos;) text.erase(at + 1, 1);
    return text;
}

Spot spot_of_address(const Book& book, const std::string& address) {
    const addin::Node node = addin::parse_formula(calc_address(address));
    return {std::max(book.sheet_named(node.reference.sheet), 0), node.reference.first.row,
            node.reference.first.column};
}

void read_names(const pugi::xml_node& parent, std::int32_t sheet, Book& book) {
    const pugi::xml_node names = parent.child("table:named-expressions");
    for (const pugi::xml_node& node : names.children()) {
        const bool range = std::string(node.name()) == "table:named-range";
        std::string content = range ? calc_address(attribute(node, "table:cell-range-address"))
                                    : calc_formula("of:=" + attribute(node, "table:expression"));
        if (content.starts_with("=")) content.erase(0, 1);
        book.names.push_back({attribute(node, "table:name"), content, sheet,
                              spot_of_address(book, attribute(node, "table:base-cell-address"))});
    }
}

void read_charts(const pugi::xml_node& table, Book& book) {
    for (const pugi::xpath_node& found : table.select_nodes(".//draw:object")) {
        std::string ranges = attribute(found.node(), "draw:notify-on-update-of-ranges");
        // A flat file holds the chart itself.
        for (const pugi::xpath_node& part : found.node().select_nodes(".//@table:cell-range-address"
                                                                      "|.//@chart:values-cell-range-address"
                                                                      "|.//@chart:label-cell-address"))
            ranges += std::string(" ") + part.attribute().as_string();
        for (std::size_t at = 0; at < ranges.size();) {
            const std::size_t end = std::min(ranges.find(' ', at), ranges.size());
            std::string range = ranges.substr(at, end - at);
            at = end + 1;
            if (range.empty()) continue;
            const auto colon = range.find(':');
            const Spot first = spot_of_address(book, range.substr(0, colon));
            std::string last_text = colon == std::string::npos ? range : range.substr(colon + 1);
            if (last_text.starts_with(".")) last_text.erase(0, 1);
            const Spot last = spot_of_address(book, last_text);
            book.charted.push_back({first.sheet, first.row, first.column, last.row, last.column});
        }
    }
}

std::map<std::string, bool> lists_of(const pugi::xml_node& spreadsheet) {
    std::map<std::string, bool> lists;
    for (const pugi::xml_node& node :
         spreadsheet.child("table:content-validations").children("table:content-validation"))
        lists[attribute(node, "table:name")] =
            attribute(node, "table:condition").find("cell-content-is-in-list") != std::string::npos;
    return lists;
}

}  // namespace

std::string calc_formula(const std::string& open_formula) {
    const auto begin = open_formula.find('=');
    if (begin == std::string::npos) return {};
    std::string text;
    bool in_text = false;
    bool in_reference = false;
    bool corner_begins = false;
    for (const char c : open_formula.substr(begin)) {
        if (c == '"') in_text = !in_text;
        if (!in_text && c == '[') {
            in_reference = corner_begins = true;
            continue;
        }
        if (!in_text && c == ']') {
            in_reference = false;
            continue;
        }
        if (!in_text && in_reference && corner_begins && c == '.') {
            corner_begins = false;
            continue;
        }
        corner_begins = in_reference && c == ':';
        text += c;
    }
    return text;
}

Book read_open_document(const std::string& path) {
    const pugi::xml_document content = part_of(path, "content.xml");
    const pugi::xml_document looks = part_of(path, "styles.xml");
    const pugi::xml_document meta = part_of(path, "meta.xml");
    Styles styles;
    for (const pugi::xml_node& root : {looks.document_element(), content.document_element()}) {
        styles.add(root.child("office:styles"), false);
        styles.add(root.child("office:automatic-styles"), true);
    }
    const pugi::xml_node spreadsheet =
        content.document_element().child("office:body").child("office:spreadsheet");
    const std::map<std::string, bool> lists = lists_of(spreadsheet);
    Book book;
    for (const pugi::xml_node& table : spreadsheet.children("table:table"))
        book.sheets.push_back(
            SheetReader(styles, lists, static_cast<std::int32_t>(book.sheets.size())).read(table));
    book.index();
    std::int32_t sheet = 0;
    for (const pugi::xml_node& table : spreadsheet.children("table:table")) {
        read_names(table, sheet++, book);
        read_charts(table, book);
    }
    read_names(spreadsheet, -1, book);
    for (const pugi::xml_node& own :
         meta.document_element().child("office:meta").children("meta:user-defined"))
        book.properties[attribute(own, "meta:name")] = own.child_value();
    return book;
}

}  // namespace undercroft::tests
