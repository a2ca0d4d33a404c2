#include "addin/catalogue/function.hpp"

#include "units/text.hpp"

namespace undercroft::addin {

namespace {

bool is_alphanumeric(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
}
char upper(char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

}  // namespace

std::string camel_case(std::string_view words) {
    std::string identifier;
    bool new_word = false;
    for (const char c : words) {
        if (c == ' ' || c == '-') new_word = true;
        if (!is_alphanumeric(c)) continue;
        identifier += new_word ? upper(c) : c;
        new_word = false;
    }
    return identifier;
}

std::string identifier_of(std::string_view function_name) {
    std::string words = lower_case(function_name.substr(function_name.find('.') + 1));
    for (char& c : words)
        if (c == '.') c = ' ';
    return camel_case(words);
}

}  // namespace undercroft::addin
