#include "tests/support/computed_book.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <numeric>
#include <set>

#include "addin/audit/book/book_values.hpp"
#include "addin/audit/book/formulas.hpp"
#include "addin/formula/cell_error.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

using addin::FormulaValue;
using addin::Node;
using addin::NodeKind;
using audit::Book;
using audit::BookCell;
using audit::Spot;

namespace {

/// An error as Calc numbers it.
struct Shows : Refused {
    explicit Shows(int code)
        : Refused(code == 32767 ? Cause::no_answer : Cause::value, "shows " + std::to_string(code)),
          error(code) {}
    int error;
};

using Numbers = std::vector<double>;
using Rows = std::vector<std::vector<std::variant<std::monostate, double, std::u16string>>>;

Rows rows_of(const FormulaValue& value) {
    const addin::Cell cell = value.cell();
    if (const double* number = std::get_if<double>(&cell)) return {{*number}};
    if (const auto* text = std::get_if<std::u16string_view>(&cell)) return {{std::u16string(*text)}};
    Rows rows;
    if (const auto* grid = std::get_if<const addin::Grid*>(&cell))
        for (std::size_t r = 0; r < (*grid)->rows(); ++r) {
            auto& row = rows.emplace_back();
            for (std::size_t c = 0; c < (*grid)->columns(); ++c) {
                const addin::Scalar scalar = (*grid)->at(r, c);
                if (const double* number = std::get_if<double>(&scalar))
                    row.emplace_back(*number);
                else if (const auto* text = std::get_if<std::u16string_view>(&scalar))
                    row.emplace_back(std::u16string(*text));
                else
                    row.emplace_back();
            }
        }
    return rows;
}

class BookComputer;

/// The values of one formula.
class SheetValues final : public addin::Evaluator {
public:
    SheetValues(BookComputer& computer, const Spot& at) : computer_(computer), at_(at) {}

protected:
    [[nodiscard]] FormulaValue value_of_reference(const Node& node) const override;
    [[nodiscard]] FormulaValue value_of_name(const Node& node) const override;
    [[nodiscard]] FormulaValue value_of_foreign_call(const Node& node) const override;

private:
    [[nodiscard]] Numbers numbers(const Node& call, std::size_t from = 0) const {
        Numbers all;
        for (std::size_t i = from; i < call.children.size(); ++i)
            for (const auto& row : rows_of(value_of(call.children[i])))
                for (const auto& item : row)
                    if (const double* number = std::get_if<double>(&item)) all.push_back(*number);
        return all;
    }
    [[nodiscard]] double number(const Node& call, std::size_t i, double otherwise = 0) const {
        if (i >= call.children.size() || call.children[i].kind == NodeKind::missing) return otherwise;
        const FormulaValue value = value_of(call.children[i]);
        if (value.number() != nullptr) return *value.number();
        if (value.is_blank_cell()) return 0;
        throw Shows{519};
    }
    [[nodiscard]] FormulaValue looked_up(const Node& call) const;
    [[nodiscard]] double place_in(const Node& call) const;

    BookComputer& computer_;
    Spot at_;
};

class BookComputer {
public:
    explicit BookComputer(Book& book) : book_(book), names_(book) {}

    void run() {
        for (std::size_t s = 0; s < book_.sheets.size(); ++s)
            for (BookCell& cell : book_.sheets[s].cells) give(static_cast<std::int32_t>(s), cell);
    }
    /// The value of the cells behind a reference, each computed before.
    FormulaValue value(const Node& node, const Spot& at) {
        if (const auto area = audit::area_of(book_, node.reference, at, at))
            for (BookCell& cell : book_.sheets[static_cast<std::size_t>(area->sheet)].cells)
                if (area->holds({area->sheet, cell.row, cell.column})) {
                    give(area->sheet, cell);
                    if (cell.error != 0) throw Shows{cell.error};
                }
        return audit::BookValues(book_, names_, at, at).value_of(node);
    }
    FormulaValue value_of_name(const Node& node, const Spot& at) {
        const audit::NameMeaning* meaning = names_.find(node.text, at.sheet);
        if (meaning == nullptr || !meaning->readable) throw Shows{525};
        if (meaning->tree.kind == NodeKind::reference) return value(meaning->tree, at);
        return SheetValues(*this, at).value_of(meaning->tree);
    }

private:
    void give(std::int32_t sheet, BookCell& cell) {
        if (!cell.is_formula() || done_.contains(&cell)) return;
        if (!open_.insert(&cell).second) {
            cell.error = addin::circular_error;
            return;
        }
        const Spot at{sheet, cell.row, cell.column};
        cell.error = 0;
        cell.value = {};
        int error = 0;
        try {
            const FormulaValue value = SheetValues(*this, at).value_of(addin::parse_formula(cell.formula));
            show(cell, value);
        } catch (const Shows& shows) {
            error = shows.error;
        } catch (const Refused& refused) {
            const bool divides = std::string(refused.what()).find("divides by zero") != std::string::npos;
            error = divides                               ? 532
                    : refused.cause() == Cause::domain    ? 503
                    : refused.cause() == Cause::no_answer ? 32767
                                                          : 519;
        }
        if (error != 0) cell.error = error;
        open_.erase(&cell);
        done_.insert(&cell);
    }
    static void show(BookCell& cell, const FormulaValue& value) {
        const Rows rows = rows_of(value);
        if (rows.empty() || rows[0].empty()) return void(cell.value = 0.0);
        const auto& first = rows[0][0];
        if (const double* number = std::get_if<double>(&first)) {
            if (!std::isfinite(*number)) cell.error = 532;
            cell.value = *number;
        } else if (const auto* text = std::get_if<std::u16string>(&first)) {
            cell.value = to_utf8(*text);
        } else {
            cell.value = 0.0;
        }
    }

    Book& book_;
    audit::Names names_;
    std::set<const BookCell*> open_;
    std::set<const BookCell*> done_;
};

FormulaValue SheetValues::value_of_reference(const Node& node) const {
    return computer_.value(node, at_);
}
FormulaValue SheetValues::value_of_name(const Node& node) const {
    return computer_.value_of_name(node, at_);
}

/// VLOOKUP, HLOOKUP and LOOKUP: the last that is not above what is sought, or the same.
FormulaValue SheetValues::looked_up(const Node& call) const {
    const Rows sought = rows_of(value_of(call.children[0]));
    Rows table = rows_of(value_of(call.children[1]));
    std::size_t column = call.text == "LOOKUP" ? 0 : static_cast<std::size_t>(number(call, 2)) - 1;
    if (call.text == "HLOOKUP") {
        Rows turned(table[0].size());
        for (const auto& row : table)
            for (std::size_t c = 0; c < row.size(); ++c) turned[c].push_back(row[c]);
        table = turned;
    }
    if (call.text == "LOOKUP") {
        const Rows results = rows_of(value_of(call.children[2]));
        for (std::size_t r = 0; r < table.size(); ++r) table[r].push_back(results[r][0]);
        column = table[0].size() - 1;
    }
    const bool exact = call.text != "LOOKUP" && number(call, 3, 1) == 0;
    std::ptrdiff_t found = -1;
    for (std::size_t r = 0; r < table.size(); ++r) {
        if (table[r][0] == sought[0][0]) found = static_cast<std::ptrdiff_t>(r);
        if (table[r][0] == sought[0][0] && exact) break;
        if (!exact && table[r][0].index() == sought[0][0].index() && table[r][0] <= sought[0][0])
            found = static_cast<std::ptrdiff_t>(r);
    }
    if (found < 0) throw Shows{32767};
    const auto& item = table[static_cast<std::size_t>(found)].at(column);
    if (const auto* text = std::get_if<std::u16string>(&item)) return FormulaValue(*text);
    const double* value = std::get_if<double>(&item);
    return FormulaValue(value == nullptr ? 0 : *value);
}

double SheetValues::place_in(const Node& call) const {
    const Rows sought = rows_of(value_of(call.children[0]));
    const Rows in = rows_of(value_of(call.children[1]));
    const double type = number(call, 2, 1);
    double found = 0;
    double place = 0;
    for (const auto& row : in)
        for (const auto& item : row) {
            ++place;
            if (item == sought[0][0] && type == 0) return place;
            if (type != 0 && item.index() == sought[0][0].index() && item <= sought[0][0]) found = place;
        }
    if (found == 0) throw Shows{32767};
    return found;
}

double rounded(double value, double digits, double (*round)(double)) {
    const double scale = std::pow(10, digits);
    return round(value * scale) / scale;
}

FormulaValue SheetValues::value_of_foreign_call(const Node& node) const {
    using Numbers1 = std::function<double(const Numbers&)>;
    static const std::map<std::string, Numbers1> of_all = {
        {"SUM", [](const Numbers& n) { return std::accumulate(n.begin(), n.end(), 0.0); }},
        {"AVERAGE",
         [](const Numbers& n) {
             return std::accumulate(n.begin(), n.end(), 0.0) / static_cast<double>(n.size());
         }},
        {"MAX", [](const Numbers& n) { return n.empty() ? 0 : *std::max_element(n.begin(), n.end()); }},
        {"MIN", [](const Numbers& n) { return n.empty() ? 0 : *std::min_element(n.begin(), n.end()); }},
        {"COUNT", [](const Numbers& n) { return static_cast<double>(n.size()); }},
        {"PRODUCT",
         [](const Numbers& n) { return std::accumulate(n.begin(), n.end(), 1.0, std::multiplies<>()); }},
        {"AND", [](const Numbers& n) { return std::count(n.begin(), n.end(), 0.0) == 0 ? 1.0 : 0.0; }},
        {"OR",
         [](const Numbers& n) {
             return std::all_of(n.begin(), n.end(), [](double x) { return x == 0; }) ? 0.0 : 1.0;
         }},
    };
    static const std::map<std::string, double (*)(double)> of_one = {
        {"ABS", [](double x) { return std::abs(x); }},
        {"SQRT", [](double x) { return std::sqrt(x); }},
        {"EXP", [](double x) { return std::exp(x); }},
        {"LN", [](double x) { return std::log(x); }},
        {"LOG10", [](double x) { return std::log10(x); }},
        {"INT", [](double x) { return std::floor(x); }},
        {"SIN", [](double x) { return std::sin(x); }},
        {"COS", [](double x) { return std::cos(x); }},
        {"TAN", [](double x) { return std::tan(x); }},
        {"ATAN", [](double x) { return std::atan(x); }},
        {"RADIANS", [](double x) { return x * std::acos(-1.0) / 180; }},
        {"NOT", [](double x) { return x == 0 ? 1.0 : 0.0; }},
    };
    if (const auto all = of_all.find(node.text); all != of_all.end())
        return FormulaValue(all->second(numbers(node)));
    if (const auto one = of_one.find(node.text); one != of_one.end()) {
        const double value = one->second(number(node, 0));
        if (std::isnan(value)) throw Shows{502};
        return FormulaValue(value);
    }
    if (node.text == "PI") return FormulaValue(std::acos(-1.0));
    if (node.text == "TRUE") return FormulaValue(1);
    if (node.text == "FALSE") return FormulaValue(0);
    if (node.text == "TODAY" || node.text == "NOW") return FormulaValue(45000);
    if (node.text == "RAND") return FormulaValue(0.5);
    if (node.text == "MOD") return FormulaValue(std::fmod(number(node, 0), number(node, 1)));
    if (node.text == "ROUND") return FormulaValue(rounded(number(node, 0), number(node, 1), std::round));
    if (node.text == "ROUNDUP") return FormulaValue(rounded(number(node, 0), number(node, 1), std::ceil));
    if (node.text == "ROUNDDOWN") return FormulaValue(rounded(number(node, 0), number(node, 1), std::floor));
    if (node.text == "CEILING")
        return FormulaValue(std::ceil(number(node, 0) / number(node, 1, 1)) * number(node, 1, 1));
    if (node.text == "POWER") return FormulaValue(std::pow(number(node, 0), number(node, 1)));
    if (node.text == "VLOOKUP" || node.text == "HLOOKUP" || node.text == "LOOKUP") return looked_up(node);
    if (node.text == "MATCH") return FormulaValue(place_in(node));
    if (node.text == "ISNUMBER") return FormulaValue(value_of(node.children[0]).number() != nullptr ? 1 : 0);
    if (node.text == "ISBLANK") return FormulaValue(value_of(node.children[0]).is_blank_cell() ? 1 : 0);
    if (node.text == "SUMPRODUCT") {
        const Rows first = rows_of(value_of(node.children[0]));
        double sum = 0;
        for (std::size_t r = 0; r < first.size(); ++r)
            for (std::size_t c = 0; c < first[r].size(); ++c) {
                double product = 1;
                for (const Node& argument : node.children) {
                    const Rows rows = rows_of(value_of(argument));
                    if (rows.size() != first.size() || rows[0].size() != first[0].size()) throw Shows{519};
                    const double* item = std::get_if<double>(&rows[r][c]);
                    product *= item == nullptr ? 0 : *item;
                }
                sum += product;
            }
        return FormulaValue(sum);
    }
    if (node.text == "SUMIF" || node.text == "COUNTIF") {
        const Rows keys = rows_of(value_of(node.children[0]));
        const Rows sought = rows_of(value_of(node.children[1]));
        const Rows values = node.text == "SUMIF" ? rows_of(value_of(node.children.back())) : keys;
        double sum = 0;
        for (std::size_t r = 0; r < keys.size() && r < values.size(); ++r)
            if (keys[r][0] == sought[0][0]) {
                const double* item = std::get_if<double>(&values[r][0]);
                sum += node.text == "COUNTIF" ? 1 : item == nullptr ? 0 : *item;
            }
        return FormulaValue(sum);
    }
    throw Shows{525};
}

}  // namespace

void compute(Book& book) {
    BookComputer(book).run();
}

}  // namespace undercroft::tests
