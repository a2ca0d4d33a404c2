#include "addin/audit/book/as_typed.hpp"

#include "addin/catalogue/catalogue.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

bool is_word_letter(char c) {
    return is_letter(c) || is_digit(c) || c == '_' || c == '.';
}

}  // namespace

std::string as_typed(const std::string& formula) {
    std::string typed;
    for (std::size_t i = 0; i < formula.size();) {
        if (formula[i] == '"' || formula[i] == '\'') {
            const std::size_t end = formula.find(formula[i], i + 1);
            const std::size_t next = end == std::string::npos ? formula.size() : end + 1;
            typed += formula.substr(i, next - i);
            i = next;
            continue;
        }
        std::size_t end = i;
        while (end < formula.size() && is_word_letter(formula[end])) ++end;
        if (end == i) {
            typed += formula[i++];
            continue;
        }
        const std::string word = formula.substr(i, end - i);
        const bool call = end < formula.size() && formula[end] == '(';
        const addin::Function* function = call ? addin::find_function(word) : nullptr;
        typed += function != nullptr ? function->name : word;
        i = end;
    }
    return typed;
}

}  // namespace undercroft::audit
