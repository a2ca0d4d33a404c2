#include "sheets/builder/lines.hpp"

#include <algorithm>
#include <boost/algorithm/string/trim.hpp>

namespace undercroft::sheets {

std::string trimmed(std::string_view text) {
    return boost::algorithm::trim_copy(std::string(text));
}

std::string take_word(std::string& text) {
    const std::size_t end = std::min(text.find_first_of(" \t"), text.size());
    const std::string word = text.substr(0, end);
    text = trimmed(std::string_view(text).substr(end));
    return word;
}

std::vector<std::string> fields_of(std::string_view text, char separator) {
    std::vector<std::string> fields(1);
    bool quoted = false;
    int braces = 0;
    for (const char c : text) {
        if (c == '"') quoted = !quoted;
        if (!quoted && (c == '{' || c == '(')) ++braces;
        if (!quoted && (c == '}' || c == ')')) --braces;
        if (c == separator && !quoted && braces <= 0)
            fields.emplace_back();
        else
            fields.back() += c;
    }
    for (std::string& field : fields) field = trimmed(field);
    return fields;
}

std::vector<Line> lines_of(std::string_view text) {
    std::vector<Line> lines;
    int number = 0;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::string_view raw = text.substr(0, end);
        text.remove_prefix(std::min(end + 1, text.size()));
        ++number;
        const std::string line = trimmed(raw);
        if (line.empty()) continue;
        const bool remark = line.front() == '#' && !line.starts_with("##");
        if (remark) continue;
        const bool goes_on = raw.front() == ' ' || raw.front() == '\t';
        if (goes_on) {
            if (lines.empty()) throw TextMistake(number, "the first line cannot go on with a line before it");
            lines.back().text += " " + line;
        } else {
            lines.push_back({number, line});
        }
    }
    return lines;
}

}  // namespace undercroft::sheets
