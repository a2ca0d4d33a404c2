#include "sheets/builder/styles.hpp"

#include <string>
#include <string_view>

namespace undercroft::sheets {

namespace {

using pugi::xml_node;

void set(xml_node node, const char* name, const std::string& value) {
    node.append_attribute(name) = value.c_str();
}

// The colours. Ink and slate for text, sand for what is typed in, and a light ground for headings.
constexpr const char* ink = "#1c2b30";
constexpr const char* slate = "#22424a";
constexpr const char* muted = "#5b6b70";
constexpr const char* sand = "#fbf1d6";
constexpr const char* sand_edge = "#b59a55";
constexpr const char* mist = "#e6eef0";
constexpr const char* line = "#c3d0d3";
constexpr const char* hair = "#e1e8ea";
constexpr const char* pass_ground = "#d8ecdc";
constexpr const char* pass_ink = "#17502a";
constexpr const char* fail_ground = "#f6cfc9";
constexpr const char* fail_ink = "#7d1410";

/// A number format with that many decimals.
xml_node number_format(xml_node styles, const char* name, int decimals, bool part) {
    xml_node style = styles.append_child("number:number-style");
    set(style, "style:name", name);
    if (part) set(style, "style:volatile", "true");
    xml_node number = style.append_child("number:number");
    set(number, "number:decimal-places", std::to_string(decimals));
    set(number, "number:min-decimal-places", std::to_string(decimals));
    set(number, "number:min-integer-digits", "1");
    return style;
}

/// A space before the last three digits: no comma, which could be read as a decimal sign.
void space_thousands(xml_node style) {
    xml_node space = style.child("number:number").append_child("number:embedded-text");
    set(space, "number:position", "3");
    space.text().set(" ");
}

void map_format(xml_node style, const std::string& condition, const char* to) {
    xml_node map = style.append_child("style:map");
    set(map, "style:condition", condition);
    set(map, "style:apply-style-name", to);
}

void word_format(xml_node styles, const char* name, const char* word) {
    xml_node style = styles.append_child("number:number-style");
    set(style, "style:name", name);
    set(style, "style:volatile", "true");
    style.append_child("number:text").text().set(word);
}

void add_number_formats(xml_node styles) {
    // Four or five digits whatever the size: 12 345, 123.45, 1.234. Of a format in parts Calc shows the sign
    // in the first only, so the first is the one that all numbers below 0 fall into.
    number_format(styles, "SensibleP0", 3, true);
    number_format(styles, "SensibleP1", 2, true);
    xml_node sensible = number_format(styles, "Sensible", 0, false);
    space_thousands(sensible);
    map_format(sensible, "value()<10", "SensibleP0");
    map_format(sensible, "value()<10000", "SensibleP1");
    number_format(styles, "OneDecimal", 1, false);
    number_format(styles, "Whole", 0, false);
    xml_node percent = styles.append_child("number:percentage-style");
    set(percent, "style:name", "Percent");
    xml_node number = percent.append_child("number:number");
    set(number, "number:decimal-places", "1");
    set(number, "number:min-integer-digits", "1");
    percent.append_child("number:text").text().set(" %");
    word_format(styles, "VerdictP0", "PASS");
    word_format(styles, "VerdictP1", "FAIL");
    xml_node verdict = number_format(styles, "VerdictFormat", 0, false);
    map_format(verdict, "value()=1", "VerdictP0");
    map_format(verdict, "value()=0", "VerdictP1");
    word_format(styles, "OpenP0", "none open");
    xml_node open = number_format(styles, "OpenFormat", 0, false);
    open.append_child("number:text").text().set(" open");
    map_format(open, "value()=0", "OpenP0");
}

struct Look {
    const char* name;
    const char* parent;
    const char* format = nullptr;
    std::string_view align = {};
    const char* ground = nullptr;
    const char* colour = nullptr;
    const char* size = nullptr;
    bool bold = false;
    bool italic = false;
    bool wrap = false;
    bool entry = false;  ///< may be changed while the sheet is protected
    const char* edge = nullptr;
    const char* bottom = nullptr;
};

void add_look(xml_node styles, const Look& look) {
    xml_node style = styles.append_child("style:style");
    set(style, "style:name", look.name);
    set(style, "style:family", "table-cell");
    if (look.parent != nullptr) set(style, "style:parent-style-name", look.parent);
    if (look.format != nullptr) set(style, "style:data-style-name", look.format);
    xml_node cell = style.append_child("style:table-cell-properties");
    if (look.ground != nullptr) set(cell, "fo:background-color", look.ground);
    set(cell, "style:vertical-align", "top");
    if (look.wrap) set(cell, "fo:wrap-option", "wrap");
    if (look.edge != nullptr) set(cell, "fo:border", std::string("0.5pt solid ") + look.edge);
    if (look.bottom != nullptr) set(cell, "fo:border-bottom", std::string("0.5pt solid ") + look.bottom);
    set(cell, "style:cell-protect", look.entry ? "none" : "protected");
    set(cell, "fo:padding", "0.05cm");
    if (look.align == "start") set(cell, "fo:padding-left", "0.12cm");
    if (!look.align.empty()) {
        xml_node paragraph = style.append_child("style:paragraph-properties");
        set(paragraph, "fo:text-align", std::string(look.align));
    }
    xml_node text = style.append_child("style:text-properties");
    if (look.colour != nullptr) set(text, "fo:color", look.colour);
    if (look.size != nullptr) set(text, "fo:font-size", look.size);
    if (look.bold) set(text, "fo:font-weight", "bold");
    if (look.italic) set(text, "fo:font-style", "italic");
}

/// An entry that cannot be right: the same in the colours of a failed check.
Look wrong(Look entry, const char* name) {
    entry.name = name;
    entry.ground = fail_ground;
    entry.colour = fail_ink;
    entry.bold = true;
    entry.edge = fail_ink;
    return entry;
}

void add_cell_styles(xml_node styles) {
    const Look entry = {.name = "Entry",
                        .parent = "Default",
                        .align = "end",
                        .ground = sand,
                        .entry = true,
                        .edge = sand_edge};
    const Look text_entry = {.name = "TextEntry",
                             .parent = "Default",
                             .align = "start",
                             .ground = sand,
                             .wrap = true,
                             .entry = true,
                             .edge = sand_edge};
    xml_node standard = styles.append_child("style:style");
    set(standard, "style:name", "Default");
    set(standard, "style:family", "table-cell");
    xml_node text = standard.append_child("style:text-properties");
    set(text, "style:font-name", "Liberation Sans");
    set(text, "fo:font-family", "'Liberation Sans', Arial, sans-serif");
    set(text, "fo:font-size", "9pt");
    set(text, "fo:color", ink);
    set(text, "fo:language", "en");
    set(text, "fo:country", "US");

    const Look looks[] = {
        {.name = "Title", .parent = "Default", .colour = slate, .size = "14pt", .bold = true},
        {.name = "JobLine", .parent = "Default", .colour = muted},
        {.name = "State", .parent = "Default", .bold = true},
        {.name = "OpenCount",
         .parent = "Default",
         .format = "Whole",
         .align = "start",
         .colour = muted,
         .size = "8pt"},
        {.name = "OpenLabel", .parent = "Default", .align = "end", .colour = muted, .size = "8pt"},
        {.name = "Heading", .parent = "Default", .ground = slate, .colour = "#ffffff", .bold = true},
        {.name = "HeadingRight",
         .parent = "Default",
         .align = "end",
         .ground = slate,
         .colour = "#ffffff",
         .bold = true},
        {.name = "Section",
         .parent = "Default",
         .ground = mist,
         .colour = slate,
         .size = "10pt",
         .bold = true},
        {.name = "Ref", .parent = "Default", .colour = muted, .size = "7pt", .wrap = true, .bottom = hair},
        {.name = "Description", .parent = "Default", .wrap = true, .bottom = hair},
        {.name = "Symbol", .parent = "Default", .italic = true, .wrap = true, .bottom = hair},
        {.name = "Note",
         .parent = "Default",
         .align = "start",
         .colour = muted,
         .size = "8pt",
         .wrap = true,
         .bottom = hair},
        {.name = "Reason", .parent = "Default", .colour = fail_ink, .size = "8pt"},
        {.name = "ReasonHead", .parent = "Default", .colour = muted, .size = "8pt", .italic = true},
        {.name = "Number", .parent = "Default", .format = "Sensible", .align = "end", .bottom = hair},
        {.name = "NumberCount", .parent = "Number", .format = "Whole", .align = "end", .bottom = hair},
        {.name = "NumberShare", .parent = "Number", .format = "OneDecimal", .align = "end", .bottom = hair},
        {.name = "NumberPlain", .parent = "Default", .align = "end", .bottom = hair},
        {.name = "Link",
         .parent = "Number",
         .format = "Sensible",
         .align = "end",
         .colour = muted,
         .bottom = hair},
        {.name = "LinkCount",
         .parent = "Link",
         .format = "Whole",
         .align = "end",
         .colour = muted,
         .bottom = hair},
        {.name = "LinkShare",
         .parent = "Link",
         .format = "OneDecimal",
         .align = "end",
         .colour = muted,
         .bottom = hair},
        {.name = "LinkTyped", .parent = "Default", .align = "end", .colour = muted, .bottom = hair},
        entry,
        wrong(entry, "EntryWrong"),
        {.name = "ShareEntry",
         .parent = "Entry",
         .format = "Percent",
         .align = "end",
         .ground = sand,
         .entry = true,
         .edge = sand_edge},
        text_entry,
        wrong(text_entry, "TextEntryWrong"),
        {.name = "UnitEntry",
         .parent = "Default",
         .align = "start",
         .ground = sand,
         .entry = true,
         .edge = sand_edge},
        {.name = "UnitResult", .parent = "Default", .align = "start", .entry = true, .bottom = sand_edge},
        {.name = "UnitFixed", .parent = "Default", .align = "start", .bottom = hair},
        {.name = "UnitLink", .parent = "Default", .align = "start", .colour = muted, .bottom = hair},
        {.name = "Words", .parent = "Default", .align = "start", .wrap = true, .bottom = hair},
        {.name = "Verdict",
         .parent = "Default",
         .format = "VerdictFormat",
         .align = "center",
         .bold = true,
         .edge = line},
        {.name = "Open",
         .parent = "Default",
         .format = "OpenFormat",
         .align = "center",
         .bold = true,
         .edge = line},
        {.name = "TableTitle", .parent = "Default", .bold = true},
        {.name = "TableHead",
         .parent = "Default",
         .align = "end",
         .ground = mist,
         .colour = slate,
         .size = "8pt",
         .bold = true,
         .wrap = true},
        {.name = "TableHeadLeft",
         .parent = "Default",
         .align = "start",
         .ground = mist,
         .colour = slate,
         .size = "8pt",
         .bold = true,
         .wrap = true},
        {.name = "TableUnit",
         .parent = "Default",
         .align = "end",
         .colour = muted,
         .size = "8pt",
         .italic = true,
         .bottom = line},
        {.name = "TableNumber",
         .parent = "Default",
         .format = "Sensible",
         .align = "end",
         .size = "8pt",
         .bottom = line},
        {.name = "GridUnit",
         .parent = "Default",
         .align = "end",
         .ground = sand,
         .size = "8pt",
         .italic = true,
         .entry = true,
         .edge = sand_edge},
        {.name = "GridEntry",
         .parent = "Default",
         .align = "end",
         .ground = sand,
         .size = "8pt",
         .entry = true,
         .edge = sand_edge},
        {.name = "GridText",
         .parent = "Default",
         .align = "start",
         .ground = sand,
         .size = "8pt",
         .entry = true,
         .edge = sand_edge},
        {.name = "ListText", .parent = "Default", .align = "start", .wrap = true, .bottom = line},
        {.name = "ListWords", .parent = "Default", .align = "start", .wrap = true, .bottom = line},
        {.name = "ListBlank", .parent = "Default", .bottom = line},
        {.name = "Remark", .parent = "Default", .colour = muted, .wrap = true},
        {.name = "Caution", .parent = "Default", .ground = "#fdf6f4", .bold = true, .wrap = true},
        {.name = "CautionMark",
         .parent = "Default",
         .align = "center",
         .ground = "#fdf6f4",
         .colour = fail_ink,
         .bold = true},
        {.name = "Passed", .parent = "Default", .ground = pass_ground, .colour = pass_ink, .bold = true},
        {.name = "Failed", .parent = "Default", .ground = fail_ground, .colour = fail_ink, .bold = true},
        {.name = "Alarm", .parent = "State", .ground = fail_ground, .colour = fail_ink, .bold = true},
    };
    for (const Look& look : looks) add_look(styles, look);
}

}  // namespace

void add_styles(xml_node styles) {
    add_number_formats(styles);
    add_cell_styles(styles);
}

void add_page_styles(xml_node automatic, xml_node master, bool letter) {
    const std::pair<const char*, bool> pages[] = {{"Upright", false}, {"Wide", true}};
    for (const auto& [name, wide] : pages) {
        const std::string layout = std::string("Layout") + name;
        xml_node page = automatic.append_child("style:page-layout");
        set(page, "style:name", layout);
        xml_node properties = page.append_child("style:page-layout-properties");
        const char* shorter = letter ? "21.59cm" : "21cm";
        const char* longer = letter ? "27.94cm" : "29.7cm";
        set(properties, "fo:page-width", wide ? longer : shorter);
        set(properties, "fo:page-height", wide ? shorter : longer);
        set(properties, "style:print-orientation", wide ? "landscape" : "portrait");
        set(properties, "fo:margin-top", "1.2cm");
        set(properties, "fo:margin-bottom", "1.2cm");
        set(properties, "fo:margin-left", "1.5cm");
        set(properties, "fo:margin-right", "1.2cm");
        set(properties, "style:first-page-number", "continue");
        set(properties, "style:scale-to-X", "1");
        set(properties, "style:scale-to-Y", "0");
        set(properties, "style:table-centering", "none");
        set(properties, "style:print", "objects charts drawings zero-values");
        for (const char* part : {"style:header-style", "style:footer-style"}) {
            xml_node band = page.append_child(part).append_child("style:header-footer-properties");
            set(band, "fo:min-height", "0.6cm");
            set(band, "fo:margin-left", "0cm");
            set(band, "fo:margin-right", "0cm");
            set(band, part == std::string("style:header-style") ? "fo:margin-bottom" : "fo:margin-top",
                "0.2cm");
        }
        xml_node made = master.append_child("style:master-page");
        set(made, "style:name", name);
        set(made, "style:page-layout-name", layout);
        const auto paragraph = [](xml_node region) { return region.append_child("text:p"); };
        xml_node header = made.append_child("style:header");
        xml_node file = paragraph(header.append_child("style:region-left")).append_child("text:file-name");
        set(file, "text:display", "name-and-extension");
        file.text().set("file");
        xml_node right = paragraph(header.append_child("style:region-right"));
        right.append_child("text:sheet-name").text().set("sheet");
        xml_node footer = made.append_child("style:footer");
        xml_node left = paragraph(footer.append_child("style:region-left"));
        left.append_child(pugi::node_pcdata).set_value("Local codes and a licensed engineer govern.");
        xml_node pages_of = paragraph(footer.append_child("style:region-right"));
        pages_of.append_child(pugi::node_pcdata).set_value("page ");
        pages_of.append_child("text:page-number").text().set("1");
        pages_of.append_child(pugi::node_pcdata).set_value(" of ");
        pages_of.append_child("text:page-count").text().set("1");
    }
}

}  // namespace undercroft::sheets
