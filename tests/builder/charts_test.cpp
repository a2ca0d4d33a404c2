// Charts and pictures to scale: where they stand, what they draw, and their documents.
#include "sheets/builder/chart.hpp"

#include <regex>
#include <set>
#include <tuple>

#include "sheets/builder/layout.hpp"
#include "tests/builder/made.hpp"

namespace undercroft::tests {

using namespace sheets;

namespace {

const std::string table = "table t_t | Rain | 9 | time; depth; flow | UC.T(1; @)\n";  // A5 to D16

Chart chart_of(const std::string& lines, System system = System::si) {
    const SheetGrid sheet = sheet_of(lines, system);
    REQUIRE(sheet.charts.size() == 1);
    return sheet.charts.front();
}

/// The document of a chart, below an object of its own.
pugi::xml_document document_of(const Chart& chart) {
    pugi::xml_document document;
    add_chart_document(document.append_child("draw:object"), chart);
    return document;
}

std::string attribute(const pugi::xml_document& document, const std::string& path, const char* name) {
    const auto node = document.select_node(path.c_str()).node();
    CAPTURE(path);
    REQUIRE(node);
    return node.attribute(name).value();
}

std::string style(const pugi::xml_document& document, const std::string& name, const std::string& properties,
                  const char* attribute_name) {
    return attribute(document,
                     "//style:style[@style:name='" + name + "']/style:" + properties + "-properties",
                     attribute_name);
}

}  // namespace

TEST_CASE("a chart stands below its table and draws its columns") {
    const Chart chart =
        chart_of(table + "chart c_c | Storm | t_t | time, depth, right flow | t, min // minutes | d | Q");
    CHECK(chart.title == "Storm");
    CHECK(chart.x_title == "t, min");
    CHECK(chart.y_title == "d");
    CHECK(chart.right_title == "Q");
    CHECK_FALSE(chart.picture.has_value());
    // The table: title 5, heads 6, units 7, values 8 to 16, space 17.
    CHECK(chart.row == 17);
    CHECK(chart.column == 1);
    CHECK(chart.end_row == 17 + 18);
    CHECK(chart.end_column == 11);
    CHECK(chart.width_cm == Approx(11 * column_cm - 0.2));
    CHECK(chart.height_cm == Approx(18 * 0.40));
    REQUIRE(chart.series.size() == 2);
    CHECK(chart.series[0].x == "Pit.B8:Pit.B16");
    CHECK(chart.series[0].y == "Pit.C8:Pit.C16");
    CHECK(chart.series[0].label == "Pit.C6");
    CHECK_FALSE(chart.series[0].on_right);
    CHECK(chart.series[0].look.empty());
    CHECK(chart.series[1].y == "Pit.D8:Pit.D16");
    CHECK(chart.series[1].on_right);
    CHECK_FALSE(chart.log_x);
    CHECK_FALSE(chart.log_y);
    CHECK(chart_of(table + "chart c_c | S | t_t | time, depth | t // T | d // D", System::us).x_title == "T");
    CHECK(chart_of(table + "chart c_c | S | t_t | time, depth | t // T | d // D", System::us).y_title == "D");
}

TEST_CASE("a chart beside its table is as high as the table, within reason") {
    const std::string beside = "beside c_c | S | t_t | log time, depth, log flow | t | d";
    const Chart chart = chart_of(table + beside);
    CHECK(chart.row == 5);     // with the heads of the columns
    CHECK(chart.column == 4);  // right of the last
    CHECK(chart.end_row == 5 + 12);
    CHECK(chart.width_cm == Approx(8 * column_cm - 0.2));
    CHECK(chart.height_cm == Approx(12 * 0.40));
    CHECK(chart.log_x);
    CHECK(chart.log_y);
    const auto rows = [&](const char* height) {
        const Chart made = chart_of(std::string("table t_t | Rain | ") + height +
                                    " | time; depth; flow | UC.T(1; @)\n" + beside);
        return made.end_row - made.row;
    };
    CHECK(rows("3") == 12);
    CHECK(rows("15") == 17);  // heads, units and values
    CHECK(rows("100") == 20);
}

TEST_CASE("a chart of no table, or of a column that it has not, is refused with its line") {
    const auto mistake = [](const std::string& line) {
        return mistake_of({"sheet Pit | P\n" + table + "input a_b | A | | 1 m\n" + line + "\n"});
    };
    CHECK(mistake("chart c_c | S | no_key | x, y | X | Y") ==
          "sheet Pit, line 4: 'no_key' is no key of this workbook");
    CHECK(mistake("chart c_c | S | a_b | x, y | X | Y") == "sheet Pit, line 4: 'a_b' is no table");
    CHECK(mistake("chart c_c | S | pit_open | x, y | X | Y") == "sheet Pit, line 4: 'pit_open' is no table");
    CHECK(mistake("chart c_c | S | t_t | time, level | X | Y") ==
          "sheet Pit, line 4: the table has no column 'level'");
    CHECK(mistake("picture p_p | S | 0 9 0 9 | pit a_b") == "sheet Pit, line 4: 'a_b' is no table");
    CHECK_THROWS_WITH(flat_document(workbook_of(
                          {"sheet Pit | P\n" + table + "picture p_p | S | 0 9 0 9 | painting t_t\n"})),
                      "'painting' is no look of a line");
}

TEST_CASE("a column's place counts the spans of those before it") {
    const SheetGrid sheet = sheet_of(
        "list l_l | L | W, span 3; x, format number; y, format number\n: a ; 1 ; 2\nchart c_c | C | l_l | x, "
        "y | X | Y");
    // Its key stands for what is right of the wording.
    CHECK(sheet.charts.at(0).series.at(0).x.substr(4, 1) == "H");
}

TEST_CASE("a picture has the same scale both ways") {
    const Chart chart = chart_of(table + "picture p_p | Section | -88 88 -14 34 | surface t_t, port t_t");
    REQUIRE(chart.picture.has_value());
    CHECK(chart.row == 17);
    CHECK(chart.column == 1);
    CHECK(chart.end_row == 17 + 21 - 1);  // 48 mm and 28 mm more, in rows of 4 mm, and two
    CHECK(chart.end_column == 11);
    CHECK(chart.width_cm == Approx(11 * column_cm - 0.2));
    CHECK(chart.height_cm == Approx(4.8 + 2.6));
    REQUIRE(chart.series.size() == 2);
    CHECK(chart.series[0].x == "Pit.B8:Pit.B16");
    CHECK(chart.series[0].y == "Pit.C8:Pit.C16");
    CHECK(chart.series[0].label == "Pit.B5");  // the title of the table
    CHECK(chart.series[0].look == "surface");
    CHECK_FALSE(chart.series[0].on_right);

    const pugi::xml_document document = document_of(chart);
    const auto plot = [&](const char* name) {
        return std::stod(attribute(document, "//chart:plot-area", name));
    };
    CHECK(plot("svg:width") == Approx(17.6));
    CHECK(plot("svg:height") == Approx(4.8));
    CHECK(plot("svg:x") == Approx(0.4));
    CHECK(plot("svg:y") == Approx(1));
    const auto edge = [&](const char* axis, const char* which) {
        return std::stod(style(document, axis, "chart", which));
    };
    CHECK(edge("paperx", "chart:minimum") == -88);
    CHECK(edge("paperx", "chart:maximum") == 88);
    CHECK(edge("papery", "chart:minimum") == -14);
    CHECK(edge("papery", "chart:maximum") == 34);
    CHECK(style(document, "paperx", "chart", "chart:visible") == "false");
    CHECK(style(document, "papery", "chart", "chart:display-label") == "false");
    CHECK(attribute(document, "//chart:axis[@chart:dimension='x']", "chart:style-name") == "paperx");
    CHECK(attribute(document, "//chart:axis[@chart:dimension='y']", "chart:style-name") == "papery");
    CHECK_FALSE(document.select_node("//chart:axis/chart:grid"));
    CHECK_FALSE(document.select_node("//chart:axis/chart:title"));
    CHECK(style(document, "series1", "chart", "chart:symbol-name") == "circle");  // a port is a point
    CHECK(style(document, "series1", "graphic", "draw:stroke") == "none");
    CHECK(style(document, "series0", "chart", "chart:symbol-type") == "none");
}

TEST_CASE("the lines of a chart are told apart by colour and by dash") {
    Chart chart;
    for (int i = 0; i < 5; ++i)
        chart.series.push_back({"Pit.A1:Pit.A2", "Pit.B1:Pit.B2", "Pit.B1", {}, false});
    const pugi::xml_document document = document_of(chart);
    std::set<std::string> colours;
    std::set<std::string> dashes;
    for (int i = 0; i < 4; ++i) {
        const std::string name = "series" + std::to_string(i);
        colours.insert(style(document, name, "graphic", "svg:stroke-color"));
        const std::string dash = style(document, name, "graphic", "draw:stroke-dash");
        dashes.insert(dash);
        CHECK(style(document, name, "graphic", "draw:stroke") == (dash.empty() ? "solid" : "dash"));
        if (!dash.empty())
            CHECK(document.select_node(("//draw:stroke-dash[@draw:name='" + dash + "']").c_str()));
        CHECK(style(document, name, "graphic", "draw:fill-color") ==
              style(document, name, "graphic", "svg:stroke-color"));
        CHECK(style(document, name, "graphic", "svg:stroke-width") == "0.06cm");
        CHECK(attribute(document, "//chart:series[@chart:style-name='" + name + "']", "chart:class") ==
              "chart:scatter");
    }
    CHECK(colours.size() == 4);
    CHECK(dashes.size() == 4);
    CHECK(style(document, "series4", "graphic", "svg:stroke-color") ==
          style(document, "series0", "graphic", "svg:stroke-color"));
    for (const char* dash : {"Dash", "Dot", "DashDot"}) {
        const std::string path = std::string("//office:styles/draw:stroke-dash[@draw:name='") + dash + "']";
        CHECK(attribute(document, path, "draw:dots1") == "1");
        CHECK(attribute(document, path, "draw:dots2") == (std::string(dash) == "DashDot" ? "1" : ""));
    }
}

TEST_CASE("a chart's document has title, axes, series and a legend where there is more than one") {
    Chart chart = chart_of(table + "chart c_c | Storm | t_t | log time, depth, right flow | t | d | Q");
    pugi::xml_document document = document_of(chart);
    CHECK(std::string(document.select_node("//chart:chart/chart:title/text:p").node().text().get()) ==
          "Storm");
    CHECK(std::stod(attribute(document, "//chart:chart", "svg:width")) == Approx(chart.width_cm));
    CHECK(std::stod(attribute(document, "//chart:chart", "svg:height")) == Approx(chart.height_cm));
    CHECK(attribute(document, "//chart:chart", "chart:class") == "chart:scatter");
    CHECK(attribute(document, "//chart:legend", "chart:legend-position") == "bottom");
    const auto title = [&](const char* axis) {
        const std::string path = std::string("//chart:axis[@chart:name='") + axis + "']/chart:title/text:p";
        return std::string(document.select_node(path.c_str()).node().text().get());
    };
    CHECK(title("primary-x") == "t");
    CHECK(title("primary-y") == "d");
    CHECK(title("secondary-y") == "Q");
    CHECK(document.select_nodes("//chart:axis").size() == 3);
    for (const auto& [name, dimension, look] :
         {std::tuple{"primary-x", "x", "xaxis"}, std::tuple{"primary-y", "y", "yaxis"},
          std::tuple{"secondary-y", "y", "rightaxis"}}) {
        const std::string axis = std::string("//chart:axis[@chart:name='") + name + "']";
        CHECK(attribute(document, axis, "chart:dimension") == dimension);
        CHECK(attribute(document, axis, "chart:style-name") == look);
    }
    CHECK(attribute(document, "//chart:plot-area", "chart:data-source-has-labels") == "none");
    CHECK(document.select_nodes("//chart:axis/chart:grid").size() == 2);  // not of the axis to the right
    CHECK(style(document, "xaxis", "chart", "chart:logarithmic") == "true");
    CHECK(style(document, "yaxis", "chart", "chart:logarithmic") == "false");
    CHECK(style(document, "yaxis", "chart", "chart:axis-position") == "start");
    CHECK(style(document, "rightaxis", "chart", "chart:axis-position") == "end");
    const auto series = document.select_nodes("//chart:series");
    REQUIRE(series.size() == 2);
    CHECK(std::string(series[0].node().attribute("chart:values-cell-range-address").value()) ==
          "Pit.C8:Pit.C16");
    CHECK(std::string(series[0].node().attribute("chart:label-cell-address").value()) == "Pit.C6");
    CHECK(std::string(series[0].node().child("chart:domain").attribute("table:cell-range-address").value()) ==
          "Pit.B8:Pit.B16");
    CHECK_FALSE(series[0].node().attribute("chart:attached-axis"));
    CHECK(std::string(series[1].node().attribute("chart:attached-axis").value()) == "secondary-y");
    CHECK(std::string(series[1].node().attribute("chart:style-name").value()) == "series1");

    chart.series.pop_back();
    chart.right_title.clear();
    document = document_of(chart);
    CHECK_FALSE(document.select_node("//chart:legend"));
    CHECK_FALSE(document.select_node("//chart:axis[@chart:name='secondary-y']"));
    CHECK_FALSE(document.select_node("//chart:plot-area").node().attribute("svg:width"));
    chart.log_y = true;
    chart.log_x = false;
    document = document_of(chart);
    CHECK(style(document, "xaxis", "chart", "chart:logarithmic") == "false");
    CHECK(style(document, "yaxis", "chart", "chart:logarithmic") == "true");
}

TEST_CASE("a chart's names are those of OpenDocument, its colours and lengths can be read") {
    const std::regex name("(office|chart|style|draw|svg|fo|text|table|number):[a-z][a-z0-9-]*");
    const std::regex colour("#[0-9a-f]{6}");
    const std::regex length("-?[0-9]+(\\.[0-9]+)?(cm|mm|pt|%)");
    const std::set<std::string> lengths = {
        "svg:width",          "svg:height",         "svg:x", "svg:y", "svg:stroke-width", "fo:font-size",
        "chart:symbol-width", "chart:symbol-height"};
    Chart of_four;
    for (int i = 0; i < 4; ++i)
        of_four.series.push_back({"Pit.A1:Pit.A2", "Pit.B1:Pit.B2", "Pit.B1", {}, false});
    for (const Chart& chart :
         {of_four, chart_of(table + "chart c_c | Storm | t_t | time, depth, right flow | t | d | Q"),
          chart_of(table + "picture p_p | Section | 0 9 0 9 | surface t_t, ground t_t, layer t_t, pit t_t, "
                           "stone t_t, sheet t_t, chamber t_t, "
                           "water t_t, groundwater t_t, joint t_t, port t_t, bar t_t")}) {
        const pugi::xml_document document = document_of(chart);
        std::set<std::string> seen;
        for (const auto& node : document.select_nodes("//*")) {
            CHECK(std::regex_match(node.node().name(), name));
            for (const auto& attribute : node.node().attributes()) {
                const std::string called = attribute.name();
                CAPTURE(node.node().name(), called, attribute.value());
                CHECK(std::regex_match(called, name));
                seen.insert(called);
                if (called.ends_with("color")) CHECK(std::regex_match(attribute.value(), colour));
                if (lengths.contains(called)) CHECK(std::regex_match(attribute.value(), length));
            }
        }
        CHECK(seen.contains("svg:stroke-color"));
        CHECK(seen.contains("svg:stroke-width"));
    }
}

TEST_CASE("every style that a chart's document names is in it") {
    for (const char* line : {"chart c_c | Storm | t_t | time, depth, right flow | t | d | Q",
                             "picture p_p | Section | 0 9 0 9 | surface t_t, ground t_t, layer t_t, pit t_t, "
                             "stone t_t, sheet t_t, chamber t_t, "
                             "water t_t, groundwater t_t, joint t_t, port t_t, bar t_t"}) {
        const pugi::xml_document document = document_of(chart_of(table + line));
        std::set<std::string> known;
        for (const auto& node : document.select_nodes("//style:style")) {
            CHECK(std::string(node.node().attribute("style:family").value()) == "chart");
            CHECK(known.insert(node.node().attribute("style:name").value()).second);
        }
        const auto used = document.select_nodes("//@chart:style-name");
        CHECK(used.size() > 8);
        for (const auto& name : used) {
            CAPTURE(name.attribute().value());
            CHECK(known.contains(name.attribute().value()));
        }
    }
}

}  // namespace undercroft::tests
