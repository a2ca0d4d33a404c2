#include "addin/formula/formula.hpp"

#include <optional>
#include <type_traits>

#include "addin/formula/cursor.hpp"
#include "addin/formula/read_reference.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

constexpr int most_operations = 2000;  // each may be one level of the tree

class Parser {
public:
    explicit Parser(std::string_view body, std::size_t offset) : cursor_{body}, offset_(offset) {}

    Node parse() {
        Node node = comparison();
        cursor_.skip_space();
        if (!cursor_.is_at_end()) refuse("cannot read '" + std::string(cursor_.rest().substr(0, 20)) + "'");
        return node;
    }

private:
    [[noreturn]] void refuse(const std::string& why) const {
        refuse_value("the formula cannot be read: " + why);
    }

    bool take(char c) {
        cursor_.skip_space();
        return cursor_.take(c);
    }

    Node made(NodeKind kind, std::size_t begin, std::string text = {}) const {
        Node node;
        node.kind = kind;
        node.text = std::move(text);
        node.begin = offset_ + begin;
        node.end = offset_ + cursor_.at;
        return node;
    }

    /// Takes the operands over: a chain of operators is read in a time that grows with its length only.
    template <class... Nodes>
    Node operation(std::string symbol, Nodes&&... operands) {
        static_assert((std::is_rvalue_reference_v<Nodes&&> && ...), "operands are moved, never copied");
        if (++operations_ > most_operations) refuse("it has too many operators");
        Node node;
        node.kind = NodeKind::operation;
        node.text = std::move(symbol);
        node.children.reserve(sizeof...(operands));
        (node.children.push_back(std::move(operands)), ...);
        node.begin = node.children.front().begin;
        node.end = offset_ + cursor_.at;
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
            cursor_.skip_space();
            std::string symbol;
            if (cursor_.peek() == '<' && (cursor_.peek(1) == '>' || cursor_.peek(1) == '='))
                symbol = std::string(cursor_.rest().substr(0, 2));
            else if (cursor_.peek() == '>' && cursor_.peek(1) == '=')
                symbol = ">=";
            else if (cursor_.peek() == '=' || cursor_.peek() == '<' || cursor_.peek() == '>')
                symbol = std::string(1, cursor_.peek());
            else
                return left;
            cursor_.at += symbol.size();
            Node right = concatenation();
            left = operation(symbol, std::move(left), std::move(right));
        }
    }
    Node concatenation() { return binary("&", &Parser::sum); }
    Node sum() { return binary("+-", &Parser::term); }
    Node term() { return binary("*/", &Parser::power); }
    Node power() { return binary("^", &Parser::signed_value); }

    Node binary(std::string_view symbols, Node (Parser::*next)()) {
        Node left = (this->*next)();
        for (;;) {
            cursor_.skip_space();
            const char c = cursor_.peek();
            if (c == '\0' || symbols.find(c) == std::string_view::npos) return left;
            ++cursor_.at;
            Node right = (this->*next)();
            left = operation(std::string(1, c), std::move(left), std::move(right));
        }
    }

    Node signed_value() {
        const Deeper deeper(*this);
        cursor_.skip_space();
        const std::size_t begin = cursor_.at;
        if (cursor_.peek() == '-' || cursor_.peek() == '+') {
            const std::string symbol(1, cursor_.text[cursor_.at++]);
            Node operand = signed_value();
            Node node = operation(symbol, std::move(operand));
            node.begin = offset_ + begin;
            return node;
        }
        return percentage();
    }

    Node percentage() {
        Node node = union_of_references();
        while (take('%')) node = operation("%", std::move(node));
        return node;
    }

    // `~` joins references, `!` is where they meet, `:` spans a range between two expressions.
    Node union_of_references() { return binary("~", &Parser::meeting_of_references); }
    Node meeting_of_references() { return binary("!", &Parser::range_of_expressions); }
    Node range_of_expressions() { return binary(":", &Parser::primary); }

    Node primary() {
        const Deeper deeper(*this);
        cursor_.skip_space();
        const std::size_t begin = cursor_.at;
        const char c = cursor_.peek();
        if (c == '\0') refuse("it ends where a value is wanted");
        if (c == '(') {
            ++cursor_.at;
            Node node = comparison();
            while (take(';')) {
                Node next = comparison();
                node = operation("~", std::move(node), std::move(next));
            }
            if (!take(')')) refuse("a ')' is missing");
            node.begin = offset_ + begin;
            node.end = offset_ + cursor_.at;
            return node;
        }
        if (c == '"') return quoted_text();
        if (c == '{') return array();
        if (take_lost_reference(cursor_))
            return made(NodeKind::error, begin, std::string(cursor_.since(begin)));
        if (c == '#') return error();
        if (auto reference = take_reference(cursor_)) {
            Node node = made(NodeKind::reference, begin, std::string(cursor_.since(begin)));
            node.reference = std::move(*reference);
            return node;
        }
        if (is_digit(c) || (c == '.' && is_digit(cursor_.peek(1)))) return number();
        if (is_word_letter(c)) return word();
        refuse("'" + std::string(1, c) + "' is not expected");
    }

    Node quoted_text() {
        const std::size_t begin = cursor_.at++;
        std::string text;
        for (;;) {
            if (cursor_.is_at_end()) refuse("a text is not closed");
            if (cursor_.peek() == '"') {
                if (cursor_.peek(1) != '"') break;
                ++cursor_.at;
            }
            text += cursor_.text[cursor_.at++];
        }
        ++cursor_.at;
        return made(NodeKind::text, begin, text);
    }

    Node number() {
        const std::size_t begin = cursor_.at;
        std::string_view rest = cursor_.rest();
        const std::size_t length = rest.size();
        const auto value = take_number(rest);
        if (!value) refuse("a number is out of range");
        cursor_.at += length - rest.size();
        Node node = made(NodeKind::number, begin);
        node.number = *value;
        return node;
    }

    Node error() {
        const std::size_t begin = cursor_.at++;
        while (is_letter(cursor_.peek()) || is_digit(cursor_.peek()) || cursor_.peek() == '/') ++cursor_.at;
        if (cursor_.peek() == '!' || cursor_.peek() == '?') ++cursor_.at;
        if (cursor_.at == begin + 1) refuse("'#' is not expected");
        return made(NodeKind::error, begin, std::string(cursor_.since(begin)));
    }

    Node array() {
        const std::size_t begin = cursor_.at++;
        std::vector<Node> rows;
        do {
            const std::size_t row_begin = cursor_.at;
            std::vector<Node> items;
            do {
                items.push_back(signed_value());
            } while (take(';'));
            rows.push_back(made(NodeKind::array, row_begin));
            rows.back().children = std::move(items);
        } while (take('|'));
        if (!take('}')) refuse("a '}' is missing");
        Node node = made(NodeKind::array, begin);
        node.children = std::move(rows);
        return node;
    }

    Node word() {
        const std::size_t begin = cursor_.at;
        while (is_word_letter(cursor_.peek())) ++cursor_.at;
        const std::string text(cursor_.since(begin));
        cursor_.skip_space();
        if (cursor_.peek() != '(') return made(NodeKind::name, begin, text);
        ++cursor_.at;
        std::vector<Node> arguments;
        cursor_.skip_space();
        if (!take(')')) {
            for (;;) {
                cursor_.skip_space();
                const bool empty = cursor_.peek() == ';' || cursor_.peek() == ')';
                arguments.push_back(empty ? made(NodeKind::missing, cursor_.at) : comparison());
                if (take(')')) break;
                if (!take(';')) refuse("a ')' is missing behind " + text);
            }
        }
        Node node = made(NodeKind::call, begin, upper_case(text));
        node.children = std::move(arguments);
        return node;
    }

    Cursor cursor_;
    std::size_t offset_;
    int depth_ = 0;
    int operations_ = 0;
};

}  // namespace

bool is_comparison(const Node& node) {
    static constexpr std::string_view signs[] = {"=", "<>", "<", ">", "<=", ">="};
    return node.kind == NodeKind::operation && node.children.size() == 2 &&
           std::find(std::begin(signs), std::end(signs), node.text) != std::end(signs);
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
