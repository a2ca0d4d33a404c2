#include "addin/catalogue/choice.hpp"

#include <algorithm>

#include "units/text.hpp"

namespace undercroft::addin {

std::string listed(const std::vector<std::string_view>& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i)
        text += std::string(i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + std::string(words[i]);
    return text;
}

bool is_spelling(std::string_view text, std::string_view words) {
    while (!words.empty()) {
        const std::size_t bar = std::min(words.find('|'), words.size());
        if (lower_case(text) == lower_case(words.substr(0, bar))) return true;
        words.remove_prefix(std::min(bar + 1, words.size()));
    }
    return false;
}

std::string_view first_spelling(std::string_view words) {
    return words.substr(0, words.find('|'));
}

}  // namespace undercroft::addin
