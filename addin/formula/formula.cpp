#include "addin/formula/formula.hpp"

#include <algorithm>
#include <optional>

#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}
bool is_letter(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}
bool is_word(char c) {
    return is_letter(c) || is_digit(c) || c == '_' || c == '.' || static_cast<unsigned char>(c) >= 0x80;
}

std::string upper_case(std::string_view text) {
    std::string upper(text);
    for (char& c : upper)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    return upper;
}

constexpr std::string_view lost = "#REF!";
constexpr int most_operations = 2000;  // each may be one level of the tree

class Parser {
public:
    explicit Parser(std::string_view body, std::size_t offset) : body_(body), offset_(offset) {}

    Node parse() {
        Node node = comparison();
        skip_space();
        if (at_ < body_.size()) refuse("cannot read '" + std::string(body_.substr(at_, 20)) + "'");
        return node;
    }

private:
    [[noreturn]] void refuse(const std::string& why) const {
        refuse_value("the formula cannot be read: " + why);
    }

    void skip_space() {
        while (at_ < body_.size() && (body_[at_] == ' ' || body_[at_] == '\n' || body_[at_] == '\t')) ++at_;
    }
    [[nodiscard]] char peek() const { return at_ < body_.size() ? body_[at_] : '\0'; }
    [[nodiscard]] char peek(std::size_t ahead) const {
        return at_ + ahead < body_.size() ? body_[at_ + ahead] : '\0';
    }
    bool take(char c) {
        skip_space();
        if (peek() != c) return false;
        ++at_;
        return true;
    }

    Node made(Node::Kind kind, std::size_t begin, std::string text = {}) const {
        Node node;
        node.kind = kind;
        node.text = std::move(text);
        node.begin = offset_ + begin;
        node.end = offset_ + at_;
        return node;
    }

    Node operation(std::string symbol, std::vector<Node> children) {
        if (++operations_ > most_operations) refuse("it has too many operators");
        Node node;
        node.kind = Node::Kind::operation;
        node.text = std::move(symbol);
        node.begin = children.front().begin;
        node.end = offset_ + at_;
        node.children = std::move(children);
        return node;
    }

    struct Deeper {
        explicit Deeper(Parser& parser) : parser_(parser) {
            if (++parser_.depth_ > 200) parser_.refuse("it is nested too deep");
        }
        Deeper(const Deeper&) = delete;
        Deeper& operator=(const Deeper&) = delete;
        ~Deeper() { --parser_.depth_; }
        Parser& parser_;
    };

    // From the loosest operator to the tightest.
    Node comparison() {
        const Deeper deeper(*this);
        Node left = concatenation();
        for (;;) {
            skip_space();
            std::string symbol;
            if (peek() == '<' && (peek(1) == '>' || peek(1) == '='))
                symbol = std::string(body_.substr(at_, 2));
            else if (peek() == '>' && peek(1) == '=')
                symbol = ">=";
            else if (peek() == '=' || peek() == '<' || peek() == '>')
                symbol = std::string(1, peek());
            else
                return left;
            at_ += symbol.size();
            Node right = concatenation();
            left = operation(symbol, {std::move(left), std::move(right)});
        }
    }
    Node concatenation() { return binary("&", &Parser::sum); }
    Node sum() { return binary("+-", &Parser::term); }
    Node term() { return binary("*/", &Parser::power); }
    Node power() { return binary("^", &Parser::signed_value); }

    Node binary(std::string_view symbols, Node (Parser::*next)()) {
        Node left = (this->*next)();
        for (;;) {
            skip_space();
            const char c = peek();
            if (c == '\0' || symbols.find(c) == std::string_view::npos) return left;
            ++at_;
            Node right = (this->*next)();
            left = operation(std::string(1, c), {std::move(left), std::move(right)});
        }
    }

    Node signed_value() {
        const Deeper deeper(*this);
        skip_space();
        const std::size_t begin = at_;
        if (peek() == '-' || peek() == '+') {
            const std::string symbol(1, body_[at_++]);
            Node operand = signed_value();
            Node node = operation(symbol, {std::move(operand)});
            node.begin = offset_ + begin;
            return node;
        }
        return percentage();
    }

    Node percentage() {
        Node node = union_of_references();
        while (take('%')) node = operation("%", {std::move(node)});
        return node;
    }

    // `~` joins references, `!` is where they meet, `:` spans a range between two expressions.
    Node union_of_references() { return binary("~", &Parser::meeting_of_references); }
    Node meeting_of_references() { return binary("!", &Parser::range_of_expressions); }
    Node range_of_expressions() { return binary(":", &Parser::primary); }

    Node primary() {
        const Deeper deeper(*this);
        skip_space();
        const std::size_t begin = at_;
        const char c = peek();
        if (c == '\0') refuse("it ends where a value is wanted");
        if (c == '(') {
            ++at_;
            Node node = comparison();
            while (take(';')) node = operation("~", {std::move(node), comparison()});
            if (!take(')')) refuse("a ')' is missing");
            node.begin = offset_ + begin;
            node.end = offset_ + at_;
            return node;
        }
        if (c == '"') return quoted_text();
        if (c == '{') return array();
        if (auto lost_reference = take_lost_reference()) return *lost_reference;
        if (c == '#') return error();
        if (auto reference = take_reference()) return *reference;
        if (is_digit(c) || (c == '.' && is_digit(peek(1)))) return number();
        if (is_word(c)) return word();
        refuse("'" + std::string(1, c) + "' is not expected");
    }

    Node quoted_text() {
        const std::size_t begin = at_++;
        std::string text;
        for (;;) {
            if (at_ >= body_.size()) refuse("a text is not closed");
            if (body_[at_] == '"') {
                if (peek(1) != '"') break;
                ++at_;
            }
            text += body_[at_++];
        }
        ++at_;
        return made(Node::Kind::text, begin, text);
    }

    Node number() {
        const std::size_t begin = at_;
        std::string_view rest = body_.substr(at_);
        const std::size_t length = rest.size();
        const auto value = take_number(rest);
        if (!value) refuse("a number is out of range");
        at_ += length - rest.size();
        Node node = made(Node::Kind::number, begin);
        node.number = *value;
        return node;
    }

    Node error() {
        const std::size_t begin = at_++;
        while (at_ < body_.size() && (is_letter(body_[at_]) || is_digit(body_[at_]) || body_[at_] == '/'))
            ++at_;
        if (peek() == '!' || peek() == '?') ++at_;
        if (at_ == begin + 1) refuse("'#' is not expected");
        return made(Node::Kind::error, begin, std::string(body_.substr(begin, at_ - begin)));
    }

    Node array() {
        const std::size_t begin = at_++;
        std::vector<Node> rows;
        do {
            const std::size_t row_begin = at_;
            std::vector<Node> items;
            do {
                items.push_back(signed_value());
            } while (take(';'));
            rows.push_back(made(Node::Kind::array, row_begin));
            rows.back().children = std::move(items);
        } while (take('|'));
        if (!take('}')) refuse("a '}' is missing");
        Node node = made(Node::Kind::array, begin);
        node.children = std::move(rows);
        return node;
    }

    Node word() {
        const std::size_t begin = at_;
        while (at_ < body_.size() && is_word(body_[at_])) ++at_;
        const std::string text(body_.substr(begin, at_ - begin));
        skip_space();
        if (peek() != '(') return made(Node::Kind::name, begin, text);
        ++at_;
        std::vector<Node> arguments;
        skip_space();
        if (!take(')')) {
            for (;;) {
                skip_space();
                const bool empty = peek() == ';' || peek() == ')';
                arguments.push_back(empty ? made(Node::Kind::missing, at_) : comparison());
                if (take(')')) break;
                if (!take(';')) refuse("a ')' is missing behind " + text);
            }
        }
        Node node = made(Node::Kind::call, begin, upper_case(text));
        node.children = std::move(arguments);
        return node;
    }

    // --- references -------------------------------------------------------------------------------

    /// A quoted or plain sheet name followed by '.', or nothing.
    std::optional<std::string> take_sheet() {
        const std::size_t start = at_;
        if (peek() == '$') ++at_;
        std::string name;
        if (peek() == '\'') {
            ++at_;
            for (;;) {
                if (at_ >= body_.size()) return at_ = start, std::nullopt;
                if (body_[at_] == '\'') {
                    if (peek(1) != '\'') break;
                    ++at_;
                }
                name += body_[at_++];
            }
            ++at_;
        } else {
            while (at_ < body_.size() &&
                   (is_letter(body_[at_]) || is_digit(body_[at_]) || body_[at_] == '_' ||
                    static_cast<unsigned char>(body_[at_]) >= 0x80))
                name += body_[at_++];
        }
        if (!name.empty() && peek() == '.') {
            ++at_;
            return name;
        }
        at_ = start;
        return std::nullopt;
    }

    /// `'file:///a.ods'#`
    std::optional<std::string> take_document() {
        if (peek() != '\'') return std::nullopt;
        const std::size_t start = at_++;
        std::string name;
        while (at_ < body_.size() && body_[at_] != '\'') name += body_[at_++];
        if (at_ + 1 < body_.size() && body_[at_ + 1] == '#') {
            at_ += 2;
            return name;
        }
        at_ = start;
        return std::nullopt;
    }

    std::optional<CellAddress> take_address() {
        const std::size_t start = at_;
        CellAddress address;
        if (peek() == '$') {
            address.column_fixed = true;
            ++at_;
        }
        std::int32_t column = 0;
        while (is_letter(peek()) && column <= most_columns) {
            column = column * 26 + (lower_case(std::string_view(&body_[at_], 1))[0] - 'a' + 1);
            ++at_;
        }
        if (peek() == '$') {
            address.row_fixed = true;
            ++at_;
        }
        std::int32_t row = 0;
        while (is_digit(peek()) && row <= most_rows) row = row * 10 + (body_[at_++] - '0');
        if (column == 0 || row == 0 || column > most_columns || row > most_rows || is_word_end()) {
            at_ = start;
            return std::nullopt;
        }
        address.column = column - 1;
        address.row = row - 1;
        return address;
    }
    /// A letter, digit or '(' behind what looked like an address means it was a word.
    [[nodiscard]] bool is_word_end() const { return is_word(peek()) || peek() == '('; }

    bool take_lost() {
        if (!body_.substr(at_).starts_with(lost)) return false;
        at_ += lost.size();
        return true;
    }

    /// `B#REF!`, `$#REF!$4`, `#REF!.B3:C4`: a reference whose row, column or sheet was deleted.
    std::optional<Node> take_lost_reference() {
        const std::size_t start = at_;
        bool is_lost = false;
        const auto take_corner = [&] {
            if (peek() == '$') ++at_;
            const std::size_t letters = at_;
            const bool lost_column = take_lost();
            while (!lost_column && is_letter(peek())) ++at_;
            if (at_ == letters) return;
            if (peek() == '$') ++at_;
            const bool lost_row = take_lost();
            while (!lost_row && is_digit(peek())) ++at_;
            is_lost = is_lost || lost_column || lost_row;
        };
        if (body_.substr(at_).starts_with("#REF!.")) {
            is_lost = take_lost();
            ++at_;
        } else {
            (void)take_sheet();
        }
        take_corner();
        if (peek() == ':') {
            const std::size_t colon = at_++;
            take_corner();
            if (at_ == colon + 1) at_ = colon;
        }
        if (is_lost && !is_word(peek()))
            return made(Node::Kind::error, start, std::string(body_.substr(start, at_ - start)));
        at_ = start;
        return std::nullopt;
    }

    /// `A:C`, `$1:$3`
    bool take_whole(CellReference& reference) {
        const std::size_t start = at_;
        const auto take_end = [&](CellAddress& end) {
            const bool fixed = peek() == '$';
            if (fixed) ++at_;
            std::int32_t column = 0;
            std::int32_t row = 0;
            while (is_letter(peek()) && column <= most_columns)
                column = column * 26 + (lower_case(std::string_view(&body_[at_++], 1))[0] - 'a' + 1);
            while (column == 0 && is_digit(peek()) && row <= most_rows) row = row * 10 + (body_[at_++] - '0');
            if ((column == 0) == (row == 0) || column > most_columns || row > most_rows) return false;
            end = {column - 1, row - 1, fixed && column > 0, fixed && row > 0};
            return true;
        };
        CellAddress first;
        CellAddress last;
        const bool two = take_end(first) && take(':') && take_end(last) && !is_word_end();
        if (!two || (first.column < 0) != (last.column < 0)) {
            at_ = start;
            return false;
        }
        reference.whole_columns = first.row < 0;
        reference.whole_rows = first.column < 0;
        if (reference.whole_columns) {
            first.row = 0;
            last.row = most_rows - 1;
            first.row_fixed = last.row_fixed = true;
        } else {
            first.column = 0;
            last.column = most_columns - 1;
            first.column_fixed = last.column_fixed = true;
        }
        reference.first = first;
        reference.last = last;
        reference.is_range = true;
        return true;
    }

    void take_cells_of_range(CellReference& reference, const CellAddress& first) {
        reference.first = reference.last = first;
        if (peek() != ':') return;
        const std::size_t colon = at_++;
        if (auto sheet = take_sheet()) reference.last_sheet = *sheet;
        if (const auto last = take_address()) {
            reference.last = *last;
            reference.is_range = true;
        } else {
            at_ = colon;
            reference.last_sheet.clear();
        }
    }

    std::optional<Node> take_reference() {
        const std::size_t start = at_;
        CellReference reference;
        if (auto document = take_document()) reference.document = *document;
        if (auto sheet = take_sheet()) reference.sheet = *sheet;
        if (const auto first = take_address()) {
            take_cells_of_range(reference, *first);
        } else if (!take_whole(reference)) {
            at_ = start;
            return std::nullopt;
        }
        Node node = made(Node::Kind::reference, start, std::string(body_.substr(start, at_ - start)));
        node.reference = reference;
        return node;
    }

    std::string_view body_;
    std::size_t offset_;
    std::size_t at_ = 0;
    int depth_ = 0;
    int operations_ = 0;
};

}  // namespace

std::string column_letters(std::int32_t column) {
    std::string letters;
    for (std::int32_t n = column + 1; n > 0; n = (n - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
    return letters;
}

std::string cell_letters(std::int32_t column, std::int32_t row) {
    return column_letters(column) + std::to_string(row + 1);
}

std::string sheet_prefix(std::string_view sheet) {
    const bool plain = std::all_of(sheet.begin(), sheet.end(), [](char c) {
        return is_letter(c) || is_digit(c) || c == '_' || static_cast<unsigned char>(c) >= 0x80;
    });
    if (plain && !sheet.empty() && !is_digit(sheet.front())) return std::string(sheet) + ".";
    std::string quoted = "'";
    for (const char c : sheet) quoted += c == '\'' ? std::string("''") : std::string(1, c);
    return quoted + "'.";
}

std::string CellReference::text() const {
    const auto corner = [this](const CellAddress& address) {
        if (whole_columns) return column_letters(address.column);
        if (whole_rows) return std::to_string(address.row + 1);
        return cell_letters(address.column, address.row);
    };
    const std::string file = document.empty() ? std::string() : "'" + document + "'#";
    const std::string where = sheet.empty() ? std::string() : sheet_prefix(sheet);
    const std::string to = last_sheet.empty() ? std::string() : sheet_prefix(last_sheet);
    return file + where + corner(first) + (is_range ? ":" + to + corner(last) : std::string());
}

std::string_view formula_body(std::string_view formula) {
    if (formula.starts_with("{") && formula.ends_with("}")) {
        formula.remove_prefix(1);
        formula.remove_suffix(1);
    }
    if (formula.starts_with("=")) formula.remove_prefix(1);
    return formula;
}

Node parse_formula(std::string_view formula) {
    const std::string_view body = formula_body(formula);
    return Parser(body, static_cast<std::size_t>(body.data() - formula.data())).parse();
}

std::string_view text_of_node(std::string_view formula, const Node& node) {
    return formula.substr(node.begin, node.end - node.begin);
}

}  // namespace undercroft::addin
