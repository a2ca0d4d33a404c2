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
