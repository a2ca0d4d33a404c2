#include "units/text.hpp"

#include <algorithm>
#include <array>
#include <boost/algorithm/string/classification.hpp>
#include <boost/algorithm/string/split.hpp>
#include <boost/algorithm/string/trim.hpp>
#include <boost/locale/encoding_utf.hpp>
#include <charconv>
#include <cmath>
#include <cstdio>
#include <numeric>
#include <vector>

#include "units/refused.hpp"

namespace undercroft {

std::string to_utf8(std::u16string_view text) {
    return boost::locale::conv::utf_to_utf<char>(text.data(), text.data() + text.size());
}

std::u16string to_utf16(std::string_view text) {
    return boost::locale::conv::utf_to_utf<char16_t>(text.data(), text.data() + text.size());
}

namespace {

// One entry for each character that is folded; the code points are ISO/IEC 10646.
struct Fold {
    char32_t from;
    const char* to;
};

constexpr Fold folds[] = {
    {U'\u00A0', " "}, {U'\u2007', " "}, {U'\u2009', " "}, {U'\u202F', " "}, {U'\t', " "},
    {U'\n', " "},     {U'\u03BC', "µ"}, {U'\u00B7', "*"}, {U'\u22C5', "*"}, {U'\u2219', "*"},
    {U'\u00D7', "*"}, {U'\u2212', "-"}, {U'\u2010', "-"}, {U'\u2011', "-"}, {U'\'', "′"},
    {U'\u2018', "′"}, {U'\u2019', "′"}, {U'"', "″"},      {U'\u201C', "″"}, {U'\u201D', "″"},
    {U'\u2236', ":"},
};

constexpr std::u32string_view superscripts = U"⁰¹²³⁴⁵⁶⁷⁸⁹";

bool invisible(char32_t c) {
    return c < 0x20 || (c >= 0x7F && c < 0xA0) || c == 0xAD || (c >= 0x200B && c <= 0x200F) ||
           (c >= 0x2028 && c <= 0x202E) || (c >= 0x2060 && c <= 0x206F) || c == 0xFEFF || c >= 0xE0000;
}

/// Plain letters, digits and signs that fold to themselves, and single spaces between them.
bool is_folded(std::string_view text) {
    if (text.starts_with(' ') || text.ends_with(' ')) return false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto c = static_cast<unsigned char>(text[i]);
        if (c < 0x20 || c >= 0x7F || c == '\'' || c == '"') return false;
        if (c == ' ' && text[i + 1] == ' ') return false;
    }
    return true;
}

void append(std::string& folded, const char* text) {
    const bool second_space = text[0] == ' ' && (folded.empty() || folded.back() == ' ');
    if (!second_space) folded += text;
}

}  // namespace

std::string fold_spelling(std::string_view text) {
    if (is_folded(text)) return std::string(text);
    const std::u32string points =
        boost::locale::conv::utf_to_utf<char32_t>(text.data(), text.data() + text.size());
    std::string folded;
    bool raised = false;  // inside a run of superscripts
    for (const char32_t c : points) {
        const std::size_t digit = superscripts.find(c);
        if (digit != std::u32string_view::npos || c == U'⁻') {
            if (!raised) folded += '^';
            raised = true;
            folded += c == U'⁻' ? '-' : static_cast<char>('0' + digit);
            continue;
        }
        raised = false;
        const auto* fold =
            std::find_if(std::begin(folds), std::end(folds), [c](const Fold& f) { return f.from == c; });
        if (c == U' ') {
            append(folded, " ");
        } else if (fold != std::end(folds)) {
            append(folded, fold->to);
        } else if (invisible(c)) {
            char code[16];
            std::snprintf(code, sizeof code, "U+%04X", static_cast<unsigned>(c));
            refuse_value(std::string("the text holds an invisible character (") + code + "): type it again");
        } else {
            folded += boost::locale::conv::utf_to_utf<char>(&c, &c + 1);
        }
    }
    while (!folded.empty() && folded.back() == ' ') folded.pop_back();
    return folded;
}

std::string lower_case(std::string_view text) {
    std::string lower(text);
    for (char& c : lower)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return lower;
}

std::string upper_case(std::string_view text) {
    std::string upper(text);
    for (char& c : upper)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    return upper;
}

std::string trimmed(std::string_view text) {
    return boost::algorithm::trim_copy_if(std::string(text), boost::algorithm::is_any_of(" \t\r\n"));
}

std::vector<std::string> split(std::string_view text, char separator) {
    std::vector<std::string> parts;
    boost::algorithm::split(parts, text, [separator](char c) { return c == separator; });
    for (std::string& part : parts) part = trimmed(part);
    return parts;
}

std::size_t edit_distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 0; i < a.size(); ++i) {
        std::size_t diagonal = row[0]++;
        for (std::size_t j = 0; j < b.size(); ++j) {
            const std::size_t substituted = diagonal + (a[i] == b[j] ? 0 : 1);
            diagonal = row[j + 1];
            row[j + 1] = std::min({row[j + 1] + 1, row[j] + 1, substituted});
        }
    }
    return row.back();
}

std::optional<double> take_number(std::string_view& text) {
    if (text.empty() || !(is_digit(text[0]) || text[0] == '.')) return std::nullopt;
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || !std::isfinite(value)) return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return value;
}

std::string exact_text(double value) {
    std::array<char, 32> buffer{};
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value);
    return error == std::errc{} ? std::string(buffer.data(), end) : std::string("?");
}

std::string rounded_text(double value) {
    std::array<char, 32> buffer{};
    const auto [end, error] =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::general, 6);
    return error == std::errc{} ? std::string(buffer.data(), end) : std::string("?");
}

}  // namespace undercroft
