#include "addin/audit/findings/words.hpp"

#include <algorithm>

#include "units/text.hpp"

namespace undercroft::audit {

Words words_of(std::string_view text) {
    Words words;
    std::string word;
    int brackets = 0;
    const auto end = [&] {
        if (word.size() > 3 && word.back() == 's' && word[word.size() - 2] != 's') word.pop_back();
        if (word.size() > 1) words.insert(word);
        word.clear();
    };
    for (const char c : lower_case(std::string(text))) {
        if (c == '(' || c == '[') ++brackets;
        if (is_letter(c) || is_digit(c) || static_cast<unsigned char>(c) >= 0x80) {
            if (brackets == 0) word += c;
        } else {
            end();
        }
        if ((c == ')' || c == ']') && brackets > 0) --brackets;
    }
    end();
    return words;
}

bool any_of(const Words& words, std::initializer_list<std::string_view> sought) {
    return std::any_of(sought.begin(), sought.end(),
                       [&](std::string_view word) { return words.contains(std::string(word)); });
}

Words words_of_cell(const AuditedBook& audited, const Spot& cell, const addin::Node& node) {
    Words words = words_of(audited.labels.of_row(cell));
    if (node.kind == addin::NodeKind::name) words.merge(words_of(node.text));
    return words;
}

}  // namespace undercroft::audit
