#include "addin/generate/signature.hpp"

namespace undercroft::addin {

std::string label(const Parameter& parameter) {
    std::string text = parameter.name;
    if (!parameter.unit().empty()) text += " [" + (parameter.unit() == "1" ? "-" : parameter.unit()) + "]";
    return text;
}

namespace {

/// What is usual of a bare number, column by column of a table; a dash where every number is.
std::string usual_text(const Limits& limits) {
    if (limits.columns.empty()) return limits.without_unit;
    std::string text;
    bool any = false;
    for (const Limits& column : limits.columns) {
        any = any || !column.without_unit.empty();
        text += (text.empty() ? "" : "; ") + (column.without_unit.empty() ? "-" : column.without_unit);
    }
    return any ? text : std::string();
}

}  // namespace

std::string argument_help(const Parameter& parameter) {
    std::string text = parameter.says;
    // Calc calls every argument of ours optional, since each may be a number, a text or a pair of cells.
    if (!parameter.optional)
        text += " (required)";
    else
        text += parameter.fallback.empty() ? " (may be left out)" : " (default " + parameter.fallback + ")";
    const std::string usual = usual_text(parameter.limits);
    if (!usual.empty()) text += "; usual without a unit: " + usual;
    return text;
}

std::string signature(const Function& function) {
    std::string text;
    for (const Parameter& parameter : function.parameters) {
        if (!text.empty()) text += "; ";
        std::string name = label(parameter);
        if (parameter.optional)
            name = "[" + name + (parameter.fallback.empty() ? "" : " = " + parameter.fallback) + "]";
        text += name;
    }
    return function.name + "(" + text + ")";
}

}  // namespace undercroft::addin
