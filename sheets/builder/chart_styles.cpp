#include "sheets/builder/chart_styles.hpp"

#include <stdexcept>

namespace undercroft::sheets {

namespace {

struct SeriesLook {
    const char* name;
    const char* colour;
    const char* dash;
    const char* width;
    bool marks = false;  ///< points instead of a line
};

// Told apart by colour and by dash, so that grey prints still read. The first ones are those of graphs, in
// turn; the others are asked for by name in pictures.
constexpr SeriesLook looks[] = {
    {"line1", "#22424a", "", "0.06cm"},           {"line2", "#c2672b", "Dash", "0.06cm"},
    {"line3", "#2f8f9d", "Dot", "0.06cm"},        {"line4", "#7a6a2f", "DashDot", "0.06cm"},
    {"surface", "#1c2b30", "", "0.08cm"},         {"ground", "#7a6a2f", "DashDot", "0.05cm"},
    {"layer", "#8c979a", "", "0.025cm"},          {"pit", "#7a4a21", "", "0.06cm"},
    {"stone", "#5b6b70", "Dot", "0.06cm"},        {"sheet", "#c2672b", "Dash", "0.05cm"},
    {"chamber", "#22424a", "", "0.05cm"},         {"water", "#1f7fc4", "", "0.06cm"},
    {"groundwater", "#1f7fc4", "Dash", "0.05cm"}, {"joint", "#8c979a", "", "0.025cm"},
    {"port", "#c2672b", "", "0.03cm", true},      {"bar", "#1c2b30", "", "0.12cm"},
};
constexpr std::size_t graph_looks = 4;

const SeriesLook& look_of(const Series& series, std::size_t index) {
    if (series.look.empty()) return looks[index % graph_looks];
    for (const SeriesLook& look : looks)
        if (series.look == look.name) return look;
    throw std::runtime_error("'" + series.look + "' is no look of a line");
}

void add_text_style(xml_node styles, const char* name, const char* size, bool bold) {
    xml_node style = add_style(styles, name, "chart");
    xml_node text = style.append_child("style:text-properties");
    set(text, "fo:font-size", size);
    set(text, "fo:font-family", "Liberation Sans");
    if (bold) set(text, "fo:font-weight", "bold");
}

/// Axes in millimetres of paper: fixed, without figures.
void add_paper_axes(xml_node styles, const Paper& paper) {
    const std::pair<const char*, std::pair<double, double>> axes[] = {{"paperx", {paper.x_from, paper.x_to}},
                                                                      {"papery", {paper.y_from, paper.y_to}}};
    for (const auto& [name, range] : axes) {
        xml_node style = add_style(styles, name, "chart");
        xml_node properties = style.append_child("style:chart-properties");
        set(properties, "chart:display-label", "false");
        set(properties, "chart:minimum", std::to_string(range.first));
        set(properties, "chart:maximum", std::to_string(range.second));
        set(properties, "chart:interval-major", "10");
        set(properties, "chart:tick-marks-major-outer", "false");
        set(properties, "chart:visible", "false");
        xml_node line = style.append_child("style:graphic-properties");
        set(line, "draw:stroke", "none");
    }
}

void add_axis_style(xml_node styles, const char* name, bool logarithmic, const char* position) {
    xml_node axis = add_style(styles, name, "chart");
    xml_node properties = axis.append_child("style:chart-properties");
    set(properties, "chart:display-label", "true");
    set(properties, "chart:logarithmic", logarithmic ? "true" : "false");
    set(properties, "chart:link-data-style-to-source", "false");
    set(properties, "chart:axis-position", position);
    set(properties, "chart:tick-marks-major-outer", "true");
    set(axis.append_child("style:text-properties"), "fo:font-size", "8pt");
}

}  // namespace

void add_chart_styles(xml_node styles, const Chart& chart) {
    add_text_style(styles, "title", "10pt", true);
    add_text_style(styles, "axistitle", "8pt", false);
    add_text_style(styles, "legend", "8pt", false);
    for (const char* name : {"legend", "frame"}) {  // no lines around chart and legend
        xml_node style = styles.find_child_by_attribute("style:name", name);
        if (!style) {
            style = add_style(styles, name, "chart");
        }
        xml_node graphic = style.prepend_child("style:graphic-properties");
        set(graphic, "draw:stroke", "none");
        set(graphic, "draw:fill", "solid");
        set(graphic, "draw:fill-color", "#ffffff");
    }
    xml_node plot = add_style(styles, "plot", "chart");
    xml_node properties = plot.append_child("style:chart-properties");
    set(properties, "chart:symbol-type", "none");
    set(properties, "chart:lines", "true");
    set(properties, "chart:treat-empty-cells", "leave-gap");
    set(properties, "chart:auto-position", "true");
    add_axis_style(styles, "xaxis", chart.log_x, "start");
    add_axis_style(styles, "yaxis", chart.log_y, "start");
    add_axis_style(styles, "rightaxis", false, "end");
    xml_node grid = add_style(styles, "grid", "chart");
    xml_node grid_line = grid.append_child("style:graphic-properties");
    set(grid_line, "svg:stroke-color", "#d5dee0");
    xml_node wall = add_style(styles, "wall", "chart");
    xml_node wall_properties = wall.append_child("style:graphic-properties");
    set(wall_properties, "draw:stroke", "solid");
    set(wall_properties, "svg:stroke-color", "#9fb0b4");
    set(wall_properties, "draw:fill", "none");
    for (std::size_t i = 0; i < chart.series.size(); ++i) {
        const SeriesLook& look = look_of(chart.series[i], i);
        xml_node style = add_style(styles, "series" + std::to_string(i), "chart");
        xml_node chart_properties = style.append_child("style:chart-properties");
        if (look.marks) {
            set(chart_properties, "chart:symbol-type", "named-symbol");
            set(chart_properties, "chart:symbol-name", "circle");
            set(chart_properties, "chart:symbol-width", "0.16cm");
            set(chart_properties, "chart:symbol-height", "0.16cm");
        } else {
            set(chart_properties, "chart:symbol-type", "none");
        }
        xml_node graphic = style.append_child("style:graphic-properties");
        set(graphic, "draw:stroke", look.marks ? "none" : look.dash[0] == '\0' ? "solid" : "dash");
        if (look.dash[0] != '\0') set(graphic, "draw:stroke-dash", look.dash);
        set(graphic, "svg:stroke-width", look.width);
        set(graphic, "svg:stroke-color", look.colour);
        set(graphic, "draw:fill-color", look.colour);
    }
    if (chart.picture) add_paper_axes(styles, *chart.picture);
}

void add_dashes(xml_node styles) {
    struct Dash {
        const char* name;
        const char* dots1;
        const char* length1;
        const char* dots2;
        const char* length2;
    };
    const Dash dashes[] = {{"Dash", "1", "0.25cm", nullptr, nullptr},
                           {"Dot", "1", "0.06cm", nullptr, nullptr},
                           {"DashDot", "1", "0.3cm", "1", "0.06cm"}};
    for (const Dash& dash : dashes) {
        xml_node made = styles.append_child("draw:stroke-dash");
        set(made, "draw:name", dash.name);
        set(made, "draw:style", "rect");
        set(made, "draw:dots1", dash.dots1);
        set(made, "draw:dots1-length", dash.length1);
        if (dash.dots2 != nullptr) {
            set(made, "draw:dots2", dash.dots2);
            set(made, "draw:dots2-length", dash.length2);
        }
        set(made, "draw:distance", "0.12cm");
    }
}

}  // namespace undercroft::sheets
