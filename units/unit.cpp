#include "units/unit.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <map>
#include <optional>
#include <span>
#include <unordered_map>

#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft {

namespace {

double power_of(double base, int numerator, int denominator) {
    if (base == 1) return 1;
    if (denominator == 1 && numerator >= 0 && numerator <= 8) {
        double product = 1;  // by multiplication, so that whole powers of exact factors stay exact
        for (int i = 0; i < numerator; ++i) product *= base;
        return product;
    }
    return std::pow(base, static_cast<double>(numerator) / denominator);
}

}  // namespace

Scale Scale::to_the(int p, int q) const {
    if (p < 0) return Scale{denominator, numerator}.to_the(-p, q);
    return {power_of(numerator, p, q), power_of(denominator, p, q)};
}

namespace {

bool is_currency(std::string_view text) {
    const auto& codes = currency_codes();
    return std::find(codes.begin(), codes.end(), text) != codes.end();
}

/// All spellings, once as they are and once in lower case where case does not matter.
class Spellings {
public:
    Spellings() {
        for (const UnitRow& row : unit_table()) {
            add(row.symbol, row);
            for (std::string_view rest = row.also; !rest.empty();) {
                const std::size_t bar = std::min(rest.find('|'), rest.size());
                add(rest.substr(0, bar), row);
                rest.remove_prefix(std::min(bar + 1, rest.size()));
            }
        }
        for (const std::string_view code : currency_codes())
            all_.push_back({std::string(code), lower_case(code), true});
    }

    [[nodiscard]] const UnitRow* find(std::string_view text) const {
        if (const auto found = exact_.find(text); found != exact_.end()) return found->second;
        if (const auto found = lower_.find(lower_case(text)); found != lower_.end()) return found->second;
        return nullptr;
    }

    /// What somebody may have meant, nearest first; at most three.
    [[nodiscard]] std::vector<std::string> near(std::string_view text) const {
        const std::string wanted = lower_case(text);
        std::multimap<std::size_t, std::string> by_distance;
        const std::size_t allowed = wanted.size() < 3 ? 0 : wanted.size() < 6 ? 1 : 2;
        for (const Spelling& known : all_) {
            if (known.lower.size() > wanted.size() + allowed || wanted.size() > known.lower.size() + allowed)
                continue;
            if (known.is_money && known.lower != wanted) continue;  // nobody mistypes a unit of money
            const std::size_t distance = edit_distance(wanted, known.lower);
            if (distance <= allowed) by_distance.emplace(distance, known.text);
        }
        std::vector<std::string> nearest;
        const bool only_case_differs = by_distance.contains(0);
        for (const auto& [distance, spelling] : by_distance)
            if (nearest.size() < 3 && (distance == 0 || !only_case_differs) &&
                std::count(nearest.begin(), nearest.end(), spelling) == 0)
                nearest.push_back(spelling);
        return nearest;
    }

private:
    void add(std::string_view spelling, const UnitRow& row) {
        const std::string folded = fold_spelling(spelling);
        exact_.emplace(folded, &row);
        all_.push_back({std::string(spelling), lower_case(spelling), false});
        // A word such as Metre or HOURS is clear in any case; an SI symbol is not.
        const bool word = folded.size() >= 4 && std::all_of(folded.begin(), folded.end(),
                                                            [](char c) { return c >= 'a' && c <= 'z'; });
        if (!row.case_matters || word) lower_.emplace(lower_case(folded), &row);
    }

    struct Spelling {
        std::string text;
        std::string lower;
        bool is_money = false;
    };

    /// Found by a view of the text, without a copy of it.
    struct Hash : std::hash<std::string_view> {
        using is_transparent = void;
    };
    std::unordered_map<std::string, const UnitRow*, Hash, std::equal_to<>> exact_;
    std::unordered_map<std::string, const UnitRow*, Hash, std::equal_to<>> lower_;
    std::vector<Spelling> all_;
};

const Spellings& spellings() {
    static const Spellings table;
    return table;
}

std::optional<Currency> currency_of(std::string_view text) {
    if (!is_currency(text)) return std::nullopt;
    return Currency{text[0], text[1], text[2]};
}

[[noreturn]] void refuse_unknown(const std::string& name) {
    for (const AmbiguousUnit& ambiguous : ambiguous_units())
        if (lower_case(name) == ambiguous.spelling)
            refuse_value("the unit '" + name + "' can mean more than one thing: write " +
                         std::string(ambiguous.choices));
    const std::vector<std::string> meant = spellings().near(name);
    refuse_value("'" + name + "' is no unit known here" +
                 (meant.empty() ? std::string() : "; did you mean " + joined(meant, ", ", " or ") + "?"));
}

bool is_name_byte(char c) {
    return is_letter(c) || static_cast<unsigned char>(c) >= 0x80 || c == '%' || c == '$';
}

/// The grammar of units.
class UnitParser {
public:
    explicit UnitParser(std::string_view text) : whole_(text), rest_(text) {}

    Unit parse() {
        if (rest_.empty()) refuse_value("a unit is wanted, but the text is empty");
        Unit unit = product();
        if (take('/')) {
            skip_space();
            const Unit below = factor();
            unit = times(unit, to_the(below, -1, 1));
            skip_space();
            if (!rest_.empty()) refuse_second_division();
        }
        if (!rest_.empty())
            refuse_value("cannot read '" + std::string(rest_) + "' in the unit '" + std::string(whole_) +
                         "'");
        return unit;
    }

private:
    static Unit times(const Unit& a, const Unit& b) {
        return {a.scale.times(b.scale), a.dimension.times(b.dimension), false, a.customary || b.customary};
    }
    static Unit to_the(const Unit& a, int p, int q) {
        return {a.scale.to_the(p, q), a.dimension.to_the(p, q), false, a.customary};
    }

    [[noreturn]] void refuse_second_division() const {
        refuse_value("the unit '" + std::string(whole_) +
                     "' can be read in two ways: use one '/' and parentheses, as in kg/(m s)");
    }

    bool take(char c) {
        skip_space();
        if (rest_.empty() || rest_[0] != c) return false;
        rest_.remove_prefix(1);
        return true;
    }
    void skip_space() {
        while (!rest_.empty() && rest_[0] == ' ') rest_.remove_prefix(1);
    }

    Unit product() {
        Unit unit = factor();
        for (;;) {
            const bool spaced = !rest_.empty() && rest_[0] == ' ';
            skip_space();
            if (rest_.empty() || rest_[0] == '/' || rest_[0] == ')') return unit;
            const bool signed_product = rest_[0] == '*' || rest_[0] == '.' || rest_[0] == '-';
            if (signed_product)
                rest_.remove_prefix(1);
            else if (!spaced && rest_[0] != '(')
                return unit;
            skip_space();
            unit = times(unit, factor());
        }
    }

    Unit factor() {
        if (++depth_ > 16) refuse_value("the unit has too many parentheses");
        Unit unit;
        if (take('(')) {
            unit = product();
            if (rest_.starts_with("/")) refuse_second_division();
            if (!take(')')) refuse_value("a ')' is missing in the unit '" + std::string(whole_) + "'");
        } else if (!rest_.empty() && rest_[0] == '1' && (rest_.size() == 1 || !is_digit(rest_[1]))) {
            rest_.remove_prefix(1);
        } else {
            unit = name();
        }
        --depth_;
        int p = 1;
        int q = 1;
        return power(p, q) ? to_the(unit, p, q) : unit;
    }

    /// Reads the longest spelling of the table that starts here: `US survey ft` before `US`.
    Unit name() {
        std::array<std::size_t, 3> places{};  // ends of the runs of letters that may belong to one name
        std::size_t found = 0;
        for (std::size_t i = 0; i < rest_.size() && found < places.size();) {
            const std::size_t start = i;
            while (i < rest_.size() && is_name_byte(rest_[i])) ++i;
            if (i == start) break;
            places[found++] = i;
            if (i == rest_.size() || (rest_[i] != ' ' && rest_[i] != '-')) break;
            ++i;
        }
        const std::span<const std::size_t> ends(places.data(), found);
        if (ends.empty()) {
            if (rest_ == "-") {
                rest_ = {};
                return {};
            }
            refuse_value("a unit name is wanted in '" + std::string(whole_) + "'" +
                         (rest_.empty() ? "" : " where '" + std::string(rest_) + "' stands"));
        }
        for (auto end = ends.rbegin(); end != ends.rend(); ++end) {
            const std::string_view spelling = rest_.substr(0, *end);
            if (const UnitRow* row = spellings().find(spelling)) {
                rest_.remove_prefix(*end);
                if (!rest_.empty() && rest_[0] == '.' && (rest_.size() == 1 || rest_[1] == ' ') &&
                    lower_case(spelling) == "no")
                    rest_.remove_prefix(1);
                return {row->scale, row->dimension, row->symbol == "%" || row->symbol == "‰", row->customary};
            }
            if (const auto code = currency_of(spelling)) {
                rest_.remove_prefix(*end);
                return {{}, Dimension::of_currency(*code), false};
            }
        }
        const std::string_view first = rest_.substr(0, ends.front());
        if (const int exponent = power_word(lower_case(first)); exponent != 0 && ends.size() > 1) {
            rest_.remove_prefix(ends.front() + 1);
            return to_the(name(), exponent, 1);
        }
        // A spelling of several words may be the ambiguous one; else the first word is what is unknown.
        refuse_unknown(std::string(first));
    }

    static int power_word(const std::string& word) {
        if (word == "sq" || word == "square") return 2;
        if (word == "cu" || word == "cubic") return 3;
        return 0;
    }

    int whole_number() {
        int n = 0;
        if (rest_.empty() || !is_digit(rest_[0]))
            refuse_value("a power is wanted in '" + std::string(whole_) + "'");
        while (!rest_.empty() && is_digit(rest_[0])) {
            n = n * 10 + (rest_[0] - '0');
            if (n > 1000) refuse_value("the power in '" + std::string(whole_) + "' is too large");
            rest_.remove_prefix(1);
        }
        return n;
    }

    /// `m2`, `m^2`, `m**2`, `m-2`, `m^-2`, `m^0.5`, `m^(1/3)`. True when there is a power.
    bool power(int& p, int& q) {
        bool wanted = false;
        bool parenthesis = false;
        if (rest_.starts_with("^")) {
            rest_.remove_prefix(1);
            wanted = true;
        } else if (rest_.starts_with("**")) {
            rest_.remove_prefix(2);
            wanted = true;
        }
        if (wanted) parenthesis = take('(');
        int sign = 1;
        const bool signed_digit =
            rest_.size() > 1 && (rest_[0] == '-' || rest_[0] == '+') && is_digit(rest_[1]);
        if (signed_digit) {
            sign = rest_[0] == '-' ? -1 : 1;
            rest_.remove_prefix(1);
        }
        if (!wanted && !signed_digit && (rest_.empty() || !is_digit(rest_[0]))) return false;
        p = sign * whole_number();
        if (rest_.size() > 1 && rest_[0] == '.' && is_digit(rest_[1])) {
            rest_.remove_prefix(1);
            while (!rest_.empty() && is_digit(rest_[0]) && q < 1000) {
                p = p * 10 + sign * (rest_[0] - '0');
                q *= 10;
                rest_.remove_prefix(1);
            }
        } else if (parenthesis && take('/')) {
            q = whole_number();
            if (q == 0) refuse_value("a power over zero in '" + std::string(whole_) + "'");
        }
        if (parenthesis && !take(')'))
            refuse_value("a ')' is missing in the unit '" + std::string(whole_) + "'");
        return true;
    }

    std::string_view whole_;
    std::string_view rest_;
    int depth_ = 0;
};

std::string coherent_text(const Dimension& dimension) {
    static constexpr std::array<const char*, base_count> symbols = {"m",    "kg", "s", "rad",
                                                                    "each", "",   "",  ""};
    std::string text;
    for (std::size_t i = 0; i < base_count; ++i) {
        const int n = dimension.sixths(static_cast<Base>(i));
        if (n == 0) continue;
        if (!text.empty()) text += ' ';
        const bool money = static_cast<Base>(i) == Base::money;
        text += money ? std::string(dimension.currency().data(), 3) : std::string(symbols[i]);
        text += exponent_text(n);
    }
    return text.empty() ? "1" : text;
}

/// Without the dots of abbreviations: `in.`, `sq.ft`, `cu. yd.`; that of a product stands between two units.
std::string without_abbreviation_dots(std::string text) {
    if (text.find('.') == std::string::npos) return text;
    std::string kept;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool ends_word = i > 0 && text[i] == '.' && is_letter(text[i - 1]);
        if (!ends_word) {
            kept += text[i];
            continue;
        }
        const std::string before = lower_case(std::string_view(kept).substr(kept.find_last_of(" /.*(") + 1));
        const bool is_last = i + 1 == text.size() || text[i + 1] == ' ' || text[i + 1] == '/';
        if (before == "sq" || before == "cu" || before == "lin")
            kept += is_last ? "" : " ";
        else if (!is_last)
            kept += '.';
    }
    return kept;
}

}  // namespace

Unit parse_unit(std::string_view text) {
    const std::string folded = without_abbreviation_dots(fold_spelling(text));
    if (folded.size() > 64)
        refuse_value("a unit text of " + std::to_string(folded.size()) + " characters is too long");
    const std::string lower = lower_case(folded);
    for (const AmbiguousUnit& ambiguous : ambiguous_units())
        if (lower == ambiguous.spelling) refuse_unknown(folded);
    const Unit unit = UnitParser(folded).parse();
    const double size = unit.scale.to_coherent(1);
    const double inverse = unit.scale.from_coherent(1);
    if (!(size > 0 && std::isfinite(size) && inverse > 0 && std::isfinite(inverse)))
        refuse_value("the unit '" + folded + "' is too large or too small for any number");
    return unit;
}

Unit default_unit(const Dimension& dimension) {
    static const std::vector<Unit> units = [] {
        std::vector<Unit> parsed;
        for (const NamedDimension& named : named_dimensions()) {
            const bool has_text = named.default_unit != run_per_rise && !named.default_unit.empty();
            parsed.push_back(has_text ? parse_unit(named.default_unit) : Unit{{}, named.dimension});
        }
        return parsed;
    }();
    for (const Unit& unit : units)
        if (unit.dimension == dimension) return unit;
    return Unit{{}, dimension};
}

std::string si_unit_text(const Dimension& dimension) {
    const NamedDimension* named = find_named(dimension);
    return named == nullptr || named->si_unit.empty() ? coherent_text(dimension)
                                                      : std::string(named->si_unit);
}

std::string default_unit_text(const Dimension& dimension) {
    const NamedDimension* named = find_named(dimension);
    return named == nullptr || named->default_unit.empty() ? coherent_text(dimension)
                                                           : std::string(named->default_unit);
}

}  // namespace undercroft
