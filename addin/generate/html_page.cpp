// The reference of all functions as one HTML page: no script, no outside resource.
#include "addin/catalogue/catalogue.hpp"
#include "addin/generate/signature.hpp"
#include "addin/generate/writers.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* head = R"(<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>Undercroft: functions and sources</title>
<style>
body { font: 15px/1.45 "Liberation Sans", Arial, sans-serif; color: #1c2b30; max-width: 62em; margin: 2em auto; padding: 0 1em; }
h1, h2 { color: #22424a; } h2 { border-bottom: 2px solid #22424a; margin-top: 2.2em; }
h3 { margin: 1.8em 0 .3em; font-size: 1.05em; }
code { background: #f3f6f6; padding: .1em .3em; }
table { border-collapse: collapse; width: 100%; margin: .5em 0; font-size: .93em; }
td, th { border: 1px solid #c3d0d3; padding: .25em .5em; text-align: left; vertical-align: top; }
th { background: #e6eef0; }
.caution { border-left: 4px solid #7d1410; padding: .2em .8em; background: #fdf6f4; }
nav { columns: 3; font-size: .93em; }
</style>
</head>
<body>
)";

std::string anchor(const Function& function) {
    return "<a href=\"#" + function.identifier + "\">" + xml_escaped(function.name) + "</a>";
}

std::string gives(const Function& function) {
    if (!function.outcome.columns.empty()) {
        std::string text = "a table of ";
        std::string separator;
        for (const Column& column : function.outcome.columns) {
            text += separator + column.name + (column.unit().empty() ? "" : " [" + column.unit() + "]");
            separator = ", ";
        }
        return text;
    }
    return function.outcome.kind() +
           (function.outcome.unit().empty() ? "" : " [" + function.outcome.unit() + "]") + ": " +
           function.outcome.says;
}

std::string section(const Function& function) {
    std::string text = "<h3 id=\"" + function.identifier + "\">" + xml_escaped(function.name) +
                       "</h3>\n<p><code>" + xml_escaped(signature(function)) + "</code></p>\n<p>" +
                       xml_escaped(function.says) + ".</p>\n";
    if (!function.parameters.empty()) {
        text += "<table>\n<tr><th>argument</th><th>symbol</th><th>kind</th><th></th></tr>\n";
        for (const Parameter& parameter : function.parameters)
            text += "<tr><td>" + xml_escaped(label(parameter)) + "</td><td>" + xml_escaped(parameter.symbol) +
                    "</td><td>" + xml_escaped(parameter.kind()) + "</td><td>" +
                    xml_escaped(argument_help(parameter)) + "</td></tr>\n";
        text += "</table>\n";
    }
    text += "<p>Gives " + xml_escaped(gives(function)) + ".</p>\n";
    if (function.equation != "-") text += "<p>Equation: " + xml_escaped(function.equation) + "</p>\n";
    text += "<p>Source: " + xml_escaped(function.source) + "</p>\n";
    if (!function.caution.empty())
        text += "<p class=\"caution\"><strong>Caution.</strong> " + xml_escaped(function.caution) + ".</p>\n";
    return text;
}

}  // namespace

std::string functions_page() {
    std::string text = head;
    text += "<h1>Functions and sources</h1>\n<p>Undercroft " + version() +
            ". A quantity is a pair of cells (a number and, to its right, its unit), a text such as "
            "<code>\"305 mm\"</code>, or a bare number in "
            "the default unit in brackets, where that number is usual. What stands in square brackets in a "
            "signature may be left out. A "
            "table is a range of columns whose "
            "first row may hold units. <code>=UC.WHY(cell)</code> gives the reason of an error, or the "
            "derivation of a good result.</p>\n"
            "<p class=\"caution\"><strong>Local codes, the supplier's instructions and a licensed engineer "
            "govern.</strong></p>\n";
    for (const Group& group : catalogue()) {
        text += "<p><strong>" + xml_escaped(group.title) + "</strong></p>\n<nav>\n";
        for (const Function& function : group.functions) text += anchor(function) + "<br>\n";
        text += "</nav>\n";
    }
    for (const Group& group : catalogue()) {
        text += "<h2>" + xml_escaped(group.title) + "</h2>\n";
        for (const Function& function : group.functions) text += section(function);
    }
    return text + "</body>\n</html>\n";
}

}  // namespace undercroft::addin
