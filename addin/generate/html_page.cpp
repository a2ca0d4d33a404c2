// The reference of all functions as one HTML page, with a search of its own; nothing is loaded from
// elsewhere.
#include <algorithm>

#include "addin/catalogue/catalogue.hpp"
#include "addin/generate/guide.hpp"
#include "addin/generate/html_style.hpp"
#include "addin/generate/preamble.hpp"
#include "addin/generate/signature.hpp"
#include "addin/generate/sketches.hpp"
#include "addin/generate/tasks.hpp"
#include "addin/generate/unit_list.hpp"
#include "addin/generate/writers.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

std::string element(const std::string& name, const std::string& text) {
    return "<" + name + ">" + xml_escaped(text) + "</" + name + ">";
}

std::string code(const std::string& text) {
    return element("code", text);
}

/// Text with code between backquotes.
std::string prose(std::string_view text) {
    std::string made;
    bool inside = false;
    std::string part;
    for (const char c : std::string(text) + '`') {
        if (c != '`') {
            part += c;
            continue;
        }
        made += inside ? code(part) : xml_escaped(part);
        inside = !inside;
        part.clear();
    }
    return made;
}

std::string link(const std::string& name) {
    const Function* function = find_function(name);
    if (function == nullptr) return xml_escaped(name);
    return "<a href=\"#" + function->identifier + "\">" + xml_escaped(name) + "</a>";
}

std::string links(const std::vector<std::string>& names) {
    std::vector<std::string> made;
    for (const std::string& name : names) made.push_back(link(name));
    return joined(made);
}

/// A row of cells that are HTML already.
std::string row(const std::vector<std::string>& cells, const char* cell = "td") {
    std::string text = "<tr>";
    for (const std::string& each : cells) text += std::string("<") + cell + ">" + each + "</" + cell + ">";
    return text + "</tr>\n";
}

std::string table(const std::string& rows, const std::string& kind = {}) {
    return "<div class=\"wide\"><table" + (kind.empty() ? "" : " class=\"" + kind + "\"") + ">\n" + rows +
           "</table></div>\n";
}

std::string cells(const TextRows& rows) {
    std::string text;
    for (const auto& each : rows) {
        std::vector<std::string> escaped;
        for (const std::string& cell : each) escaped.push_back(xml_escaped(cell));
        text += row(escaped);
    }
    return table(text, "cells");
}

std::string argument_table(const std::vector<ShownArgument>& arguments) {
    if (arguments.empty()) return {};
    std::string rows = row(
        {"argument", "symbol", "what it is", "usual without a unit", "possible", "left out, or blank"}, "th");
    for (const ShownArgument& argument : arguments)
        rows += row({xml_escaped(argument.label), xml_escaped(argument.symbol),
                     xml_escaped(argument.says + " (" + argument.kind + ")"), xml_escaped(argument.usual),
                     xml_escaped(argument.possible), xml_escaped(argument.blank)});
    return table(rows);
}

std::string results(const std::vector<ShownResult>& shown) {
    if (shown.empty()) return {};
    std::string text = "<h4>To paste</h4>\n<ul class=\"try\">\n";
    for (const ShownResult& result : shown) {
        text += "<li>";
        if (!result.cells.empty()) text += "at A1" + cells(result.cells);
        text += code(result.formula);
        if (result.table.empty()) {
            text += " <span class=\"gives\">" + xml_escaped(result.result) + "</span>";
        } else {
            text += cells(result.table);
            if (result.rows > result.table.size())
                text += "and so on, " + std::to_string(result.rows) + " rows";
        }
        text += "</li>\n";
    }
    return text + "</ul>\n";
}

std::string refusals(const std::vector<ShownRefusal>& shown) {
    if (shown.empty()) return {};
    std::string rows = row({"cause", "shows", "of", "formula", "reason"}, "th");
    for (const ShownRefusal& refusal : shown)
        rows +=
            row({xml_escaped(refusal.cause), xml_escaped(refusal.error),
                 xml_escaped(joined(refusal.arguments)), code(refusal.formula), xml_escaped(refusal.reason)});
    return "<h4>What is refused</h4>\n" + table(rows);
}

std::string worked(const Function& function) {
    constexpr std::size_t most = 3;
    if (function.examples.empty()) return {};
    std::string rows = row({"formula", "its source gives", "source"}, "th");
    for (const Example& example : first_examples(function, most)) {
        rows += row({code("=" + example.formula), xml_escaped(example.value),
                     xml_escaped(std::string(origin_text(example.origin)) + ": " + example.source)});
    }
    return "<h4>Held against</h4>\n" + table(rows);
}

std::string words_of(const Function& function) {
    std::string words = function.name + " " + function.says + " " + function.guidance.also_called;
    for (const Parameter& parameter : function.parameters) words += " " + parameter.name;
    return lower_case(words);
}

std::string section(const Function& function) {
    const Guide& guide = guide_of(function);
    std::string text = "<section class=\"function\" id=\"" + function.identifier + "\" data-words=\"" +
                       xml_escaped(words_of(function)) + "\">\n" + element("h3", function.name) + "\n<p>" +
                       code(signature(function)) + "</p>\n" + element("p", function.says + ".") + "\n";
    if (function.guidance.sketch != Sketch::none) text += sketch_svg(function.guidance.sketch);
    text += argument_table(guide.arguments);
    text += element("p", "Gives " + (function.outcome.symbol.empty() ? "" : function.outcome.symbol + ", ") +
                             outcome_text(function) + ".") +
            "\n";
    if (function.equation != "-") text += element("p", "Equation: " + function.equation) + "\n";
    text += results(guide.results) + refusals(guide.refusals) + worked(function);
    text += element("p", "Source: " + function.source) + "\n";
    if (!function.caution.empty())
        text += "<p class=\"caution\"><strong>Caution.</strong> " + xml_escaped(function.caution) + ".</p>\n";
    if (!function.guidance.related.empty())
        text += "<p class=\"other\">Related: " + links(function.guidance.related) + "</p>\n";
    if (!function.guidance.also_called.empty())
        text += "<p class=\"other\">Other words: " + xml_escaped(function.guidance.also_called) + "</p>\n";
    return text + "</section>\n";
}

std::string front() {
    std::string text = "<div class=\"front\">\n<h2>How things are typed</h2>\n";
    for (const Advice& each : advice)
        text += "<p><strong>" + xml_escaped(std::string(each.title)) + ".</strong> " + prose(each.text) +
                "</p>\n";
    text += "<h2>By task</h2>\n<dl class=\"tasks\">\n";
    for (const Task& task : tasks())
        text += element("dt", task.question) + "<dd>" + links(task.functions) + "</dd>\n";
    text += "</dl>\n<h2>By name</h2>\n<div class=\"names\">\n";
    std::vector<std::string> names;
    for (const Function& function : all_functions()) names.push_back(function.name);
    std::sort(names.begin(), names.end());
    for (const std::string& name : names) text += link(name) + "<br>\n";
    return text + "</div>\n</div>\n";
}

std::string units() {
    std::string defaults = row({"dimension", "default unit", "as typed"}, "th");
    for (const ListedDimension& dimension : listed_dimensions())
        defaults += row({xml_escaped(dimension.name), xml_escaped(dimension.default_unit),
                         xml_escaped(dimension.examples)});
    std::string rows = row({"unit", "also written", "dimension", "is"}, "th");
    for (const ListedUnit& unit : listed_units())
        rows += row({xml_escaped(unit.symbol), xml_escaped(unit.also), xml_escaped(unit.dimension),
                     xml_escaped(unit.size)});
    return "<div class=\"front\">\n<h2 id=\"default-units\">Default units</h2>\n<p>In which a number without "
           "a "
           "unit is read.</p>\n" +
           table(defaults) +
           "<h2 id=\"units\">Units</h2>\n<p>More are made of these: <code>kN/m3</code>, "
           "<code>oz/yd2</code>, <code>m^0.5/s</code>, <code>acre-ft</code>, <code>AUD/t</code>.</p>\n" +
           table(rows) + "</div>\n";
}

}  // namespace

std::string functions_page() {
    std::string text =
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        "<meta name=\"color-scheme\" content=\"light dark\">\n"
        "<title>Undercroft: functions and sources</title>\n<style>" +
        std::string(page_style) + sketch_style() + "</style>\n</head>\n<body>\n";
    text += "<h1>Functions and sources</h1>\n<p>Undercroft " + version() +
            "; <a href=\"#units\">all units</a>, <a href=\"#default-units\">default units</a>.</p>\n"
            "<div class=\"search\"><label>Search by any word of the trade: <input id=\"search\" "
            "type=\"search\" placeholder=\"frustum, live load, drawdown\"></label> <span id=\"found\"></span>"
            "</div>\n<p class=\"caution\"><strong>Local codes, the supplier's instructions and a licensed "
            "engineer govern.</strong></p>\n";
    text += front();
    for (const Group& group : catalogue()) {
        text += "<div class=\"group\">\n" + element("h2", group.title) + "\n";
        for (const Function& function : group.functions) text += section(function);
        text += "</div>\n";
    }
    return text + units() + "<script>" + page_script + "</script>\n</body>\n</html>\n";
}

}  // namespace undercroft::addin
