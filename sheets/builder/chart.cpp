#include "sheets/builder/chart.hpp"

#include "sheets/builder/chart_styles.hpp"

namespace undercroft::sheets {

namespace {

void add_axis(xml_node plot, const char* dimension, const char* name, const char* style,
              const std::string& title, bool grid_lines) {
    xml_node axis = plot.append_child("chart:axis");
    set(axis, "chart:dimension", dimension);
    set(axis, "chart:name", name);
    set(axis, "chart:style-name", style);
    if (!title.empty()) {
        xml_node words = axis.append_child("chart:title");
        set(words, "chart:style-name", "axistitle");
        words.append_child("text:p").text().set(title.c_str());
    }
    if (!grid_lines) return;
    xml_node grid = axis.append_child("chart:grid");
    set(grid, "chart:class", "major");
    set(grid, "chart:style-name", "grid");
}

void add_axes(xml_node plot, const Chart& chart) {
    if (chart.picture) {
        add_axis(plot, "x", "primary-x", "paperx", {}, false);
        add_axis(plot, "y", "primary-y", "papery", {}, false);
        return;
    }
    add_axis(plot, "x", "primary-x", "xaxis", chart.x_title, true);
    add_axis(plot, "y", "primary-y", "yaxis", chart.y_title, true);
    if (!chart.right_title.empty()) add_axis(plot, "y", "secondary-y", "rightaxis", chart.right_title, false);
}

}  // namespace

void add_chart_document(xml_node object, const Chart& chart) {
    xml_node document = object.append_child("office:document");
    set(document, "office:mimetype", "application/vnd.oasis.opendocument.chart");
    set(document, "office:version", "1.3");
    add_dashes(document.append_child("office:styles"));
    add_chart_styles(document.append_child("office:automatic-styles"), chart);
    xml_node body =
        document.append_child("office:body").append_child("office:chart").append_child("chart:chart");
    set(body, "svg:width", std::to_string(chart.width_cm) + "cm");
    set(body, "svg:height", std::to_string(chart.height_cm) + "cm");
    set(body, "chart:class", "chart:scatter");
    set(body, "chart:style-name", "frame");
    xml_node title = body.append_child("chart:title");
    set(title, "chart:style-name", "title");
    title.append_child("text:p").text().set(chart.title.c_str());
    if (chart.series.size() > 1) {
        xml_node legend = body.append_child("chart:legend");
        set(legend, "chart:legend-position", "bottom");
        set(legend, "chart:style-name", "legend");
    }
    xml_node plot = body.append_child("chart:plot-area");
    set(plot, "chart:style-name", "plot");
    set(plot, "chart:data-source-has-labels", "none");
    if (chart.picture) {  // the plot has the measures of its axes: the same scale both ways
        const Paper& paper = *chart.picture;
        set(plot, "svg:x", "0.4cm");
        set(plot, "svg:y", "1cm");
        set(plot, "svg:width", std::to_string((paper.x_to - paper.x_from) / 10) + "cm");
        set(plot, "svg:height", std::to_string((paper.y_to - paper.y_from) / 10) + "cm");
    }
    add_axes(plot, chart);
    std::size_t i = 0;
    for (const Series& series : chart.series) {
        xml_node made = plot.append_child("chart:series");
        set(made, "chart:style-name", "series" + std::to_string(i++));
        set(made, "chart:values-cell-range-address", series.y);
        set(made, "chart:label-cell-address", series.label);
        set(made, "chart:class", "chart:scatter");
        if (series.on_right) set(made, "chart:attached-axis", "secondary-y");
        xml_node domain = made.append_child("chart:domain");
        set(domain, "table:cell-range-address", series.x);
    }
    xml_node wall = plot.append_child("chart:wall");
    set(wall, "chart:style-name", "wall");
}

}  // namespace undercroft::sheets
