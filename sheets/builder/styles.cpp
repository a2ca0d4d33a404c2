#include "sheets/builder/styles.hpp"

#include <string_view>

#include "sheets/builder/number_formats.hpp"

namespace undercroft::sheets {

namespace {

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
constexpr const char* amber_ground = "#ffd990";
constexpr const char* amber_ink = "#6b4200";
constexpr const char* one_width = "Liberation Mono";

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
    const char* font = nullptr;
};

void add_look(xml_node styles, const Look& look) {
    xml_node style = add_style(styles, look.name, "table-cell");
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
    set(cell, "fo:padding-top", "0.01cm");
    set(cell, "fo:padding-bottom", "0cm");
    if (look.align == "start") set(cell, "fo:padding-left", "0.12cm");
    if (!look.align.empty()) {
        xml_node paragraph = style.append_child("style:paragraph-properties");
        set(paragraph, "fo:text-align", std::string(look.align));
    }
    xml_node text = style.append_child("style:text-properties");
    if (look.colour != nullptr) set(text, "fo:color", look.colour);
    if (look.size != nullptr) set(text, "fo:font-size", look.size);
    if (look.font != nullptr) {
        set(text, "style:font-name", look.font);
        set(text, "fo:font-family", std::string("'") + look.font + "', 'Courier New', monospace");
    }
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

/// An entry that is possible, yet outside what is usual.
Look unusual(Look entry, const char* name) {
    entry.name = name;
    entry.ground = amber_ground;
    entry.colour = amber_ink;
    entry.bold = true;
    entry.edge = amber_ink;
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
    const Look grid_entry = {.name = "GridEntry",
                             .parent = "Default",
                             .align = "end",
                             .ground = sand,
                             .size = "8pt",
                             .entry = true,
                             .edge = sand_edge};
    const Look share_entry = {.name = "ShareEntry",
                              .parent = "Entry",
                              .format = "Percent",
                              .align = "end",
                              .ground = sand,
                              .entry = true,
                              .edge = sand_edge};
    const Look day_entry = {.name = "DayEntry",
                            .parent = "Entry",
                            .format = "Day",
                            .align = "end",
                            .ground = sand,
                            .entry = true,
                            .edge = sand_edge};
    const Look mark = {.name = "Mark",
                       .parent = "Default",
                       .align = "center",
                       .colour = muted,
                       .size = "7pt",
                       .entry = true,
                       .edge = hair};
    xml_node standard = add_style(styles, "Default", "table-cell");
    // White also where the screen's documents are dark: the colours of the texts are made for paper.
    set(standard.append_child("style:table-cell-properties"), "fo:background-color", "#ffffff");
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
        {.name = "Ref", .parent = "Default", .colour = muted, .size = "8pt", .wrap = true, .bottom = hair},
        {.name = "Description", .parent = "Default", .wrap = true, .bottom = hair},
        {.name = "Symbol", .parent = "Default", .italic = true, .wrap = true, .bottom = hair},
        {.name = "Note",
         .parent = "Default",
         .align = "start",
         .colour = muted,
         .size = "8pt",
         .wrap = true,
         .bottom = hair},
        {.name = "FormulaText",
         .parent = "Default",
         .align = "start",
         .colour = muted,
         .size = "8pt",
         .wrap = true},
        {.name = "Reason", .parent = "Default", .colour = fail_ink, .size = "8pt"},
        {.name = "ReasonHead", .parent = "Default", .colour = muted, .size = "8pt", .italic = true},
        {.name = "Number", .parent = "Default", .format = "Sensible", .align = "end", .bottom = hair},
        {.name = "NumberCount", .parent = "Number", .format = "Whole", .align = "end", .bottom = hair},
        {.name = "NumberShare", .parent = "Number", .format = "OneDecimal", .align = "end", .bottom = hair},
        {.name = "NumberPlain", .parent = "Default", .align = "end", .bottom = hair},
        {.name = "NumberPlace", .parent = "Number", .format = "Thousandths", .align = "end", .bottom = hair},
        {.name = "NumberDay", .parent = "Default", .format = "Day", .align = "end", .bottom = hair},
        {.name = "Bars",
         .parent = "Default",
         .align = "start",
         .colour = slate,
         .size = "6.5pt",
         .bottom = hair,
         .font = one_width},
        {.name = "BarsHead",
         .parent = "Default",
         .align = "start",
         .ground = mist,
         .colour = slate,
         .size = "6.5pt",
         .bold = true,
         .font = one_width},
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
        unusual(entry, "EntryUnusual"),
        share_entry,
        wrong(share_entry, "ShareEntryWrong"),
        unusual(share_entry, "ShareEntryUnusual"),
        day_entry,
        text_entry,
        wrong(text_entry, "TextEntryWrong"),
        unusual(text_entry, "TextEntryUnusual"),
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
        {.name = "TableHeadMiddle",
         .parent = "Default",
         .align = "center",
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
        {.name = "TablePlain", .parent = "Default", .align = "end", .size = "8pt", .bottom = line},
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
        grid_entry,
        wrong(grid_entry, "GridEntryWrong"),
        unusual(grid_entry, "GridEntryUnusual"),
        mark,
        unusual(mark, "MarkWanted"),
        {.name = "Kept", .parent = "Default", .colour = muted, .size = "8pt"},
        {.name = "SummaryCount", .parent = "Default", .format = "Whole", .align = "end", .bottom = hair},
        {.name = "SummaryDash", .parent = "Default", .align = "end", .colour = muted, .bottom = hair},
        {.name = "Words8",
         .parent = "Default",
         .align = "start",
         .size = "8pt",
         .wrap = true,
         .bottom = hair},
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

}  // namespace undercroft::sheets
