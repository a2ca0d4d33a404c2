#include "sheets/builder/equations.hpp"

#include <optional>
#include <set>

#include "sheets/builder/lines.hpp"
#include "sheets/builder/selection.hpp"
#include "units/text.hpp"

namespace undercroft::sheets {

namespace {

bool in_symbol(char c) {
    return is_letter(c) || is_digit(c) || c == '_' || c == '\'';
}

/// Calls `put` for each symbol of an equation, and leaves all else as it is.
template <class Put>
std::string with_symbols(std::string_view equation, const Put& put) {
    std::string made;
    for (std::size_t i = 0; i < equation.size();) {
        std::size_t end = i;
        while (end < equation.size() && in_symbol(equation[end])) ++end;
        if (end == i) {
            made += equation[i++];
            continue;
        }
        made += put(std::string(equation.substr(i, end - i)));
        i = end;
    }
    return made;
}

struct Call {
    std::string function;
    std::vector<std::string> arguments;
};

/// The formula as one call that is all of it.
std::optional<Call> call_in(const std::string& formula) {
    const std::size_t open = formula.find('(');
    if (!formula.starts_with("UC.") || open == std::string::npos || !formula.ends_with(")"))
        return std::nullopt;
    int depth = 0;
    for (std::size_t i = open; i < formula.size(); ++i) {
        if (formula[i] == '(') ++depth;
        if (formula[i] == ')' && --depth == 0 && i + 1 < formula.size()) return std::nullopt;
    }
    return Call{formula.substr(0, open), fields_of(formula.substr(open + 1, formula.size() - open - 2), ';')};
}

}  // namespace

Equations read_equations(std::string_view text) {
    Equations equations;
    for (const Line& line : lines_of(text)) {
        const std::size_t first = line.text.find('|');
        const std::size_t second =
            first == std::string::npos ? first : line.text.find('|', first + 1);  // an equation may hold |x|
        if (second == std::string::npos)
            throw TextMistake(line.number, "wanted: FUNCTION | SYMBOL; SYMBOL | EQUATION");
        const std::string whole = trimmed(line.text.substr(second + 1));
        const std::size_t equals = whole.find(" = ");
        equations[trimmed(line.text.substr(0, first))] = {
            fields_of(trimmed(line.text.substr(first + 1, second - first - 1)), ';'),
            equals == std::string::npos ? whole : whole.substr(equals + 3)};
    }
    return equations;
}

std::map<std::string, std::string> symbols_of(const std::vector<Sheet>& sheets) {
    std::map<std::string, std::string> symbols;
    for (const Sheet& sheet : sheets)
        for (const Row& row : sheet.rows)
            if (!row.key.empty() && !row.symbol.empty()) symbols.emplace(row.key, row.symbol);
    return symbols;
}

std::string equation_of(const Row& row, const std::map<std::string, std::string>& symbols,
                        const Equations& equations) {
    const auto* result = row.as<rows::Result>();
    if (result == nullptr || result->formula.si != result->formula.us) return {};
    const std::optional<Call> call = call_in(result->formula.si);
    if (!call) return {};
    const auto equation = equations.find(call->function);
    if (equation == equations.end()) return {};
    std::map<std::string, std::string> meaning;
    std::set<std::string> unknown;
    const std::vector<std::string>& own = equation->second.symbols;
    for (std::size_t i = 0; i < own.size(); ++i) {
        const std::string argument = i < call->arguments.size() ? call->arguments[i] : std::string();
        const auto symbol = symbols.find(argument);
        if (symbol == symbols.end())
            unknown.insert(own[i]);
        else
            meaning[own[i]] = symbol->second;
    }
    bool told = true;
    const std::string made = with_symbols(equation->second.right_side, [&](const std::string& symbol) {
        told = told && !unknown.contains(symbol);
        const auto found = meaning.find(symbol);
        return found == meaning.end() ? symbol : found->second;
    });
    return told ? made : std::string();
}

void fill_equations(std::vector<Sheet>& sheets, const Equations& equations) {
    const std::map<std::string, std::string> symbols = symbols_of(sheets);
    for (Sheet& sheet : sheets)
        for (Row& row : sheet.rows) {
            const std::size_t at = row.note.find(equation_word);
            if (at == std::string::npos) continue;
            const std::string equation = equation_of(row, symbols, equations);
            if (equation.empty())
                sheet_mistake(sheet, row.line,
                              "no equation: the note of '" + row.key +
                                  "' wants that of one function whose arguments are rows with symbols");
            row.note.replace(at, equation_word.size(), equation);
        }
}

}  // namespace undercroft::sheets
