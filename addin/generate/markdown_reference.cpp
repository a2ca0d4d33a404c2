// The reference of all functions as Markdown, committed so that its changes are read.
#include <algorithm>

#include "addin/catalogue/catalogue.hpp"
#include "addin/generate/guide.hpp"
#include "addin/generate/preamble.hpp"
#include "addin/generate/signature.hpp"
#include "addin/generate/sketches.hpp"
#include "addin/generate/tasks.hpp"
#include "addin/generate/unit_list.hpp"
#include "addin/generate/writers.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

std::string cell(const std::string& text) {
    std::string escaped;
    for (const char c : text) escaped += c == '|' ? std::string("\\|") : std::string(1, c);
    return escaped;
}

std::string row(const std::vector<std::string>& cells) {
    std::string text = "|";
    for (const std::string& each : cells) text += " " + cell(each) + " |";
    return text + "\n";
}

std::string head(const std::vector<std::string>& cells) {
    std::string rule = "|";
    for (std::size_t i = 0; i < cells.size(); ++i) rule += "---|";
    return row(cells) + rule + "\n";
}

/// The anchor that a heading of this name gets.
std::string link(const std::string& name) {
    std::string anchor;
    for (const char c : lower_case(name))
        if (c != '.') anchor += c;
    return "[" + name + "](#" + anchor + ")";
}

std::string code(const std::string& text) {
    return "`" + text + "`";
}

std::string argument_table(const std::vector<ShownArgument>& arguments) {
    if (arguments.empty()) return {};
    std::string text =
        head({"argument", "symbol", "what it is", "usual without a unit", "possible", "left out, or blank"});
    for (const ShownArgument& argument : arguments)
        text += row({argument.label, argument.symbol, argument.says + " (" + argument.kind + ")",
                     argument.usual, argument.possible, argument.blank});
    return text + "\n";
}

std::string padded(const TextRows& rows) {
    std::vector<std::size_t> widths;
    for (const auto& cells : rows)
        for (std::size_t c = 0; c < cells.size(); ++c) {
            if (widths.size() <= c) widths.push_back(0);
            widths[c] = std::max(widths[c], cells[c].size());
        }
    std::string text;
    for (const auto& cells : rows) {
        std::string line;
        for (std::size_t c = 0; c < cells.size(); ++c)
            line += cells[c] + std::string(widths[c] - cells[c].size() + 2, ' ');
        text += "    " + line.substr(0, line.find_last_not_of(' ') + 1) + "\n";
    }
    return text;
}

std::string results(const std::vector<ShownResult>& shown) {
    if (shown.empty()) return {};
    std::string text = "To paste:\n\n";
    for (const ShownResult& result : shown) {
        if (!result.cells.empty()) {
            text += "at A1, parted by tabs\n\n```\n";
            for (const auto& row : result.cells) text += joined(row, "\t") + "\n";
            text += "```\n\n";
        }
        text += "```\n" + result.formula + "\n";
        text += result.table.empty() ? "    " + result.result + "\n" : padded(result.table);
        if (result.rows > result.table.size()) text += "    ... " + std::to_string(result.rows) + " rows\n";
        text += "```\n\n";
    }
    return text;
}

std::string refusals(const std::vector<ShownRefusal>& shown) {
    if (shown.empty()) return {};
    std::string text = head({"refused: cause", "shows", "of", "formula", "reason"});
    for (const ShownRefusal& refusal : shown)
        text += row(
            {refusal.cause, refusal.error, joined(refusal.arguments), code(refusal.formula), refusal.reason});
    return text + "\n";
}

std::string worked(const Function& function) {
    constexpr std::size_t most = 3;
    if (function.examples.empty()) return {};
    std::string text = "Held against:\n\n";
    for (const Example& example : first_examples(function, most)) {
        text += "- " + code("=" + example.formula) + " " + example.value + " (" +
                std::string(origin_text(example.origin)) + ": " + example.source + ")\n";
    }
    return text + "\n";
}

std::string section(const Function& function) {
    const Guide& guide = guide_of(function);
    std::string text =
        "\n### " + function.name + "\n\n" + code(signature(function)) + "\n\n" + function.says + ".\n\n";
    if (function.guidance.sketch != Sketch::none)
        text += "![" + sketch_title(function.guidance.sketch) + "](sketches/" +
                sketch_name(function.guidance.sketch) + ".svg)\n\n";
    text += argument_table(guide.arguments);
    text += "Gives " + (function.outcome.symbol.empty() ? "" : "*" + function.outcome.symbol + "*, ") +
            outcome_text(function) + ".\n\n";
    if (function.equation != "-") text += "Equation: " + function.equation + "\n\n";
    text += results(guide.results) + refusals(guide.refusals) + worked(function);
    text += "Source: " + function.source + "\n";
    if (!function.caution.empty()) text += "\n**Caution:** " + function.caution + ".\n";
    std::vector<std::string> related;
    for (const std::string& name : function.guidance.related) related.push_back(link(name));
    if (!related.empty()) text += "\nRelated: " + joined(related) + "\n";
    if (!function.guidance.also_called.empty())
        text += "\nOther words: " + function.guidance.also_called + "\n";
    return text;
}

}  // namespace

std::string functions_reference() {
    std::string text =
        "# The functions\n\n"
        "Generated from the catalogue in `addin/catalogue/`; do not edit.\n\n"
        "`[argument = default]` may be left out. Formulas and what they give are computed by the functions "
        "themselves.\n\n";
    for (const Advice& each : advice)
        text += "- **" + std::string(each.title) + ".** " + std::string(each.text) + "\n";
    text += "\n## By task\n\n";
    for (const Task& task : tasks()) {
        std::vector<std::string> links;
        for (const std::string& name : task.functions) links.push_back(link(name));
        text += "- " + task.question + ": " + joined(links) + "\n";
    }
    for (const Group& group : catalogue()) {
        text += "\n## " + group.title + "\n";
        for (const Function& function : group.functions) text += section(function);
    }
    text += "\n## Default units\n\nIn which a number without a unit is read.\n\n" +
            head({"dimension", "default unit", "as typed"});
    for (const ListedDimension& dimension : listed_dimensions())
        text += row({dimension.name, dimension.default_unit, dimension.examples});
    text += "\n## Units\n\nMore are made of these: `kN/m3`, `oz/yd2`, `m^0.5/s`, `acre-ft`, `AUD/t`.\n\n" +
            head({"unit", "also written", "dimension", "is"});
    for (const ListedUnit& unit : listed_units())
        text += row({unit.symbol, unit.also, unit.dimension, unit.size});
    return text;
}

}  // namespace undercroft::addin
