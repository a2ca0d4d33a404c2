#include "sheets/builder/formula_text.hpp"

#include <algorithm>
#include <boost/algorithm/string/replace.hpp>
#include <iterator>
#include <stdexcept>

namespace undercroft::sheets {

namespace {

bool is_word_start(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c == '_' || c == '@';
}
bool is_word(char c) {
    return is_word_start(c) || (c >= '0' && c <= '9') || c == '.';
}

/// Where a number that starts here ends, with its exponent: `4.1e-5`.
std::size_t end_of_number(std::string_view text, std::size_t from) {
    const auto digits = [&text](std::size_t at) {
        while (at < text.size() && ((text[at] >= '0' && text[at] <= '9') || text[at] == '.')) ++at;
        return at;
    };
    const std::size_t end = digits(from);
    if (end >= text.size() || (text[end] != 'e' && text[end] != 'E')) return end;
    const std::size_t sign = end + 1;
    const std::size_t power =
        sign < text.size() && (text[sign] == '-' || text[sign] == '+') ? sign + 1 : sign;
    return digits(power) > power ? digits(power) : end;
}

/// Calls for each part: strings in quotes, words, and everything else.
template <class OnOther, class OnWord>
void parts(std::string_view formula, const OnOther& on_other, const OnWord& on_word) {
    for (std::size_t i = 0; i < formula.size();) {
        if (formula[i] == '"') {
            std::size_t end = formula.find('"', i + 1);
            if (end == std::string_view::npos)
                throw std::runtime_error("a text is not closed in: " + std::string(formula));
            on_other(formula.substr(i, end + 1 - i));
            i = end + 1;
        } else if (formula[i] >= '0' && formula[i] <= '9') {
            const std::size_t end = end_of_number(formula, i);
            on_other(formula.substr(i, end - i));
            i = end;
        } else if (is_word_start(formula[i])) {
            std::size_t end = i + 1;
            while (end < formula.size() && is_word(formula[end])) ++end;
            std::size_t next = end;
            while (next < formula.size() && formula[next] == ' ') ++next;
            const bool call = next < formula.size() && formula[next] == '(';
            on_word(std::string(formula.substr(i, end - i)), call);
            i = end;
        } else {
            on_other(formula.substr(i, 1));
            ++i;
        }
    }
}

/// "UC.PIT.VOLUME" to "UNDERCROFT.UC.PITVOLUME", and a function of Calc that OpenFormula does not have to
/// "COM.MICROSOFT.WORKDAY.INTL": as files store it.
std::string stored_name(const std::string& word) {
    static constexpr std::string_view beside_open_formula[] = {"WORKDAY.INTL", "NETWORKDAYS.INTL", "CONCAT"};
    if (std::find(std::begin(beside_open_formula), std::end(beside_open_formula), word) !=
        std::end(beside_open_formula))
        return "COM.MICROSOFT." + word;
    if (!word.starts_with("UC.")) return word;
    std::string stored = "UNDERCROFT.UC.";
    for (const char c : word.substr(3))
        if (c != '.') stored += c;
    return stored;
}

}  // namespace

std::string stored_formula(std::string_view formula, const Meaning& meaning) {
    std::string stored;
    parts(
        formula, [&](std::string_view other) { stored += other; },
        [&](const std::string& word, bool call) {
            if (call) {
                stored += stored_name(word);
                return;
            }
            const std::string means = meaning(word);
            if (means.empty())
                throw std::runtime_error("'" + word +
                                         "' is no key of this workbook, in: " + std::string(formula));
            stored += means;
        });
    return stored;
}

std::string quoted(const std::string& text) {
    return "\"" + boost::algorithm::replace_all_copy(text, "\"", "\"\"") + "\"";
}

std::vector<std::string> keys_in(std::string_view formula) {
    std::vector<std::string> keys;
    parts(
        formula, [](std::string_view) {},
        [&](const std::string& word, bool call) {
            if (call || word.front() == '@') return;
            const std::size_t dot = word.find('.');
            keys.push_back(word.substr(0, dot));
        });
    return keys;
}

}  // namespace undercroft::sheets
