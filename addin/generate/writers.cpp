#include "addin/generate/writers.hpp"

#include "addin/catalogue/catalogue.hpp"
#include "addin/generate/signature.hpp"

namespace undercroft::addin {

namespace {

/// The argument's name in the interface; Calc matches help to arguments by it.
std::string argument_id(const Parameter& parameter) {
    return camel_case(parameter.name);
}

std::string description(const Function& function) {
    std::string text = function.says;
    if (!function.outcome.unit().empty() && function.outcome.unit() != "1")
        text += " [" + function.outcome.unit() + "]";
    return text;
}

std::string value_node(const char* name, const std::string& text, const std::string& indent) {
    return indent + "<prop oor:name=\"" + name + "\"><value xml:lang=\"en-US\">" + xml_escaped(text) +
           "</value></prop>\n";
}

std::string markdown_cell(const std::string& text) {
    std::string escaped;
    for (const char c : text) escaped += c == '|' ? std::string("\\|") : std::string(1, c);
    return escaped;
}

}  // namespace

std::string xml_escaped(const std::string& text) {
    std::string escaped;
    for (const char c : text) {
        switch (c) {
            case '&':
                escaped += "&amp;";
                break;
            case '<':
                escaped += "&lt;";
                break;
            case '>':
                escaped += "&gt;";
                break;
            case '"':
                escaped += "&quot;";
                break;
            default:
                escaped += c;
        }
    }
    return escaped;
}

std::string interface_idl() {
    std::string text =
        "// Generated from the catalogue of functions.\n"
        "module undercroft {\n"
        "interface XUC {\n";
    for (const Function& function : all_functions()) {
        text += "    any " + function.identifier + "(";
        if (function.reads_cell()) {
            text +=
                "[in] com::sun::star::beans::XPropertySet document, [in] com::sun::star::table::XCellRange " +
                argument_id(function.parameters.front());
        } else {
            bool first = true;
            for (const Parameter& parameter : function.parameters) {
                text += std::string(first ? "" : ", ") + "[in] any " + argument_id(parameter);
                first = false;
            }
        }
        text += ");\n";
    }
    return text + "};\nservice UC : XUC;\n};\n";
}

std::string calc_registration() {
    std::string text =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        "<!-- Generated from the catalogue of functions. -->\n"
        "<oor:component-data xmlns:oor=\"http://openoffice.org/2001/registry\" "
        "xmlns:xs=\"http://www.w3.org/2001/XMLSchema\""
        " oor:name=\"CalcAddIns\" oor:package=\"org.openoffice.Office\">\n"
        "<node oor:name=\"AddInInfo\">\n"
        "<node oor:name=\"" +
        std::string(service_name) +
        "\" oor:op=\"replace\">\n"
        "<node oor:name=\"AddInFunctions\">\n";
    for (const Function& function : all_functions()) {
        text += "  <node oor:name=\"" + function.identifier + "\" oor:op=\"replace\">\n";
        text += value_node("DisplayName", function.name, "    ");
        text += value_node("Description", description(function), "    ");
        text += "    <prop oor:name=\"Category\"><value>Add-In</value></prop>\n";
        text += value_node("CompatibilityName", function.name, "    ");
        text += "    <node oor:name=\"Parameters\">\n";
        for (const Parameter& parameter : function.parameters) {
            text += "      <node oor:name=\"" + argument_id(parameter) + "\" oor:op=\"replace\">\n";
            text += value_node("DisplayName", label(parameter), "        ");
            text += value_node("Description", argument_help(parameter), "        ");
            text += "      </node>\n";
        }
        text += "    </node>\n  </node>\n";
    }
    return text + "</node>\n</node>\n</node>\n</oor:component-data>\n";
}

std::string component_stubs() {
    std::string text = "// Generated from the catalogue of functions: one method each, all alike.\n";
    std::size_t index = 0;
    for (const Function& function : all_functions()) {
        text += "css::uno::Any SAL_CALL " + function.identifier + "(";
        std::string passed;
        if (function.reads_cell()) {
            text +=
                "const css::uno::Reference<css::beans::XPropertySet>& document, "
                "const css::uno::Reference<css::table::XCellRange>& cell";
            text += ") override { return read_cell(" + std::to_string(index) + ", document, cell); }\n";
        } else {
            for (const Parameter& parameter : function.parameters) {
                const std::string id = argument_id(parameter);
                if (!passed.empty()) {
                    text += ", ";
                    passed += ", ";
                }
                text += "const css::uno::Any& " + id;
                passed += "&" + id;
            }
            const std::string arguments = passed.empty() ? "" : ", {" + passed + "}";
            text += ") override { return run(" + std::to_string(index) + arguments + "); }\n";
        }
        ++index;
    }
    return text;
}

std::string functions_reference() {
    std::string text =
        "# The functions\n\n"
        "Generated from the catalogue in `addin/catalogue/`; do not edit.\n\n"
        "A quantity is given as a pair of cells (a number and, to its right, its unit), as text (`\"305 "
        "mm\"`), or as a\n"
        "bare number in the default unit shown in brackets, where that number is usual; the usual range "
        "stands "
        "with each\n"
        "argument. No bare number with a dimension stands beside feet and pounds, nor beside a quantity "
        "where two "
        "are\n"
        "compared, added or looked up. 0 without a unit is what Calc makes of a blank cell: where none is "
        "meant, "
        "write\n"
        "`\"0 m\"`. `[argument = default]` may be left out. A table is a range of columns whose first row "
        "may hold "
        "units;\n"
        "every table returned starts with its unit row. An error has its reason in `UC.WHY(cell)`, and so "
        "has a "
        "good\n"
        "result its derivation.\n";
    for (const Group& group : catalogue()) {
        text += "\n## " + group.title + "\n";
        for (const Function& function : group.functions) {
            text += "\n### " + function.name + "\n\n";
            text += "`" + signature(function) + "`\n\n";
            text += function.says + ".\n\n";
            if (!function.parameters.empty()) {
                text += "| argument | symbol | kind | |\n|---|---|---|---|\n";
                for (const Parameter& parameter : function.parameters)
                    text += "| " + label(parameter) + " | " + parameter.symbol + " | " +
                            markdown_cell(parameter.kind()) + " | " +
                            markdown_cell(argument_help(parameter)) + " |\n";
                text += "\n";
            }
            if (!function.outcome.columns.empty() && !function.outcome.columns.front().name.empty()) {
                text += "Gives a table of columns:";
                std::string separator = " ";
                for (const Column& column : function.outcome.columns) {
                    text +=
                        separator + column.name + (column.unit().empty() ? "" : " [" + column.unit() + "]");
                    separator = ", ";
                }
                text += ".\n\n";
            } else {
                text += "Gives " +
                        (function.outcome.symbol.empty() ? "" : "*" + function.outcome.symbol + "*, ") +
                        function.outcome.kind() +
                        (function.outcome.unit().empty() ? "" : " [" + function.outcome.unit() + "]") + ": " +
                        function.outcome.says + ".\n\n";
            }
            if (function.equation != "-") text += "Equation: " + function.equation + "\n\n";
            text += "Source: " + function.source + "\n";
            if (!function.caution.empty()) text += "\n**Caution:** " + function.caution + ".\n";
        }
    }
    return text;
}

std::string stored_names() {
    std::string text =
        "# Names and arguments as workbooks store them. They are part of people's files: a line is never "
        "changed\n"
        "# or removed, only added, or an optional argument appended. The tests hold the catalogue to this "
        "list.\n";
    for (const Function& function : all_functions()) {
        text += std::string(service_name) + "." + function.identifier + "\t" + function.name + "\t";
        bool first = true;
        for (const Parameter& parameter : function.parameters) {
            text += (first ? "" : "; ") + (parameter.optional ? "[" + parameter.name + "]" : parameter.name);
            first = false;
        }
        text += "\n";
    }
    return text;
}

}  // namespace undercroft::addin
