#include "addin/catalogue/result.hpp"

#include <algorithm>
#include <cmath>

#include "units/text.hpp"

namespace undercroft::addin {

std::size_t table_height(const Cell& wanted, std::size_t rows) {
    if (std::holds_alternative<std::monostate>(wanted)) return rows;
    const Count height = Slot<Count>::read(wanted, Terms{});
    const double most = calc::require_whole("height", height, 1);
    if (static_cast<double>(rows) > most)
        refuse_domain("the table has " + std::to_string(rows) + " rows of values; " + exact_text(most) +
                      " are asked for");
    constexpr double highest = 40'000;  // a century of days; beyond it Calc itself fills ever more slowly
    if (most > highest) refuse_domain("a table is at most " + exact_text(highest) + " rows high");
    return static_cast<std::size_t>(most);
}

double finite_result(double number) {
    if (!std::isfinite(number))
        refuse_domain("the result is not a finite number: an argument is too large or too small");
    return number == 0 ? 0 : number;  // never minus nothing
}

namespace {

/// The texts between ';'.
std::vector<std::string> parted(const std::string& text) {
    std::vector<std::string> parts(1);
    for (const char c : text) {
        if (c == ';')
            parts.emplace_back();
        else
            parts.back() += c;
    }
    for (std::string& part : parts) part = fold_spelling(part);
    return parts;
}

std::vector<std::string> unit_texts(const Cell& cell, const std::vector<Dimension>& columns) {
    std::vector<std::string> texts;
    for (const Dimension& dimension : columns) texts.push_back(default_unit_text(dimension));
    if (std::holds_alternative<std::monostate>(cell)) return texts;
    if (const double* rows = std::get_if<double>(&cell); rows != nullptr && *rows >= 1)
        refuse_value("the number " + exact_text(*rows) +
                     " is no unit: for rows leave this argument empty and give them as height, ;;" +
                     exact_text(*rows));
    const std::vector<std::string> asked =
        parted(read_text(cell, [] { return std::string("units parted by ';', such as \"m; m3\""); }));
    if (asked.size() > columns.size())
        refuse_value(std::to_string(asked.size()) + " units are asked for a table of " +
                     std::to_string(columns.size()) + " columns");
    for (std::size_t i = 0; i < asked.size(); ++i)
        if (!asked[i].empty()) texts[i] = asked[i];
    return texts;
}

}  // namespace

bool asks_customary(const Cell& units, UnitArgument kind) {
    if (std::holds_alternative<std::monostate>(units)) return false;
    try {
        const std::string text = read_text(units, [] { return std::string("a unit"); });
        const std::vector<std::string> parts = kind == UnitArgument::units ? parted(text) : std::vector{text};
        const auto is_customary = [](const std::string& part) {
            return !part.empty() && parse_unit(part).customary;
        };
        return std::count_if(parts.begin(), parts.end(), is_customary) > 0;  // all are read
    } catch (const Refused&) {
        return false;  // it is refused where it is read
    }
}

std::vector<Unit> read_units(const Cell& cell, const std::vector<Dimension>& columns) {
    const std::vector<std::string> texts = unit_texts(cell, columns);
    std::vector<Unit> units;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const bool spelled = texts[i] != run_per_rise && !texts[i].empty();
        const Unit unit = spelled && !(columns[i].is_number() && texts[i] == "1") ? parse_unit(texts[i])
                                                                                  : default_unit(columns[i]);
        const bool same = unit.dimension == columns[i] ||
                          (columns[i] == Dimension::of(Base::count) && unit.dimension.is_number()) ||
                          (columns[i] == Dimension::of(Base::gradient) && unit.dimension.is_number());
        if (!same)
            refuse_dimension("'" + texts[i] + "' is a unit of " + name_of(unit.dimension) + "; column " +
                             std::to_string(i + 1) + " is " + name_of(columns[i]));
        units.push_back({unit.scale, columns[i], unit.percent, unit.customary});
    }
    return units;
}

std::vector<ResultItem> unit_row_texts(const Cell& cell, const std::vector<Dimension>& columns) {
    std::vector<ResultItem> row;
    for (const std::string& text : unit_texts(cell, columns)) row.emplace_back(text);
    return row;
}

Unit unit_asked(const Cell& unit, const Unit& standard) {
    if (std::holds_alternative<std::monostate>(unit)) return standard;
    const Unit asked = Slot<Unit>::read(unit);
    if (!(asked.dimension == standard.dimension))
        refuse_dimension("'" + read_text(unit, [] { return std::string("a unit"); }) + "' is a unit of " +
                         name_of(asked.dimension) + "; the result is " + name_of(standard.dimension));
    return asked;
}

ResultRows table_result(const CoherentRows& numbers, const std::vector<Dimension>& columns,
                        const Asked& asked) {
    const std::size_t rows = numbers.size() / columns.size();
    const std::size_t height = asked.read(1, [&](const Cell& cell) { return table_height(cell, rows); });
    const std::vector<Unit> units =
        asked.read(0, [&](const Cell& cell) { return read_units(cell, columns); });
    ResultRows result;
    result.reserve(height + 1);
    result.push_back(unit_row_texts(asked.cell(0), columns));
    for (std::size_t r = 0; r < rows; ++r) {
        std::vector<ResultItem>& row = result.emplace_back();
        row.reserve(columns.size());
        for (std::size_t c = 0; c < columns.size(); ++c) {
            const std::optional<double>& number = numbers[r * columns.size() + c];
            row.push_back(number ? ResultItem(finite_result(units[c].scale.from_coherent(*number)))
                                 : ResultItem(std::string()));
        }
    }
    result.resize(height + 1, std::vector<ResultItem>(columns.size(), std::string()));
    return result;
}

std::string amount_text(double number, const Cell& unit, const std::string& standard) {
    const std::string text = std::holds_alternative<std::monostate>(unit)
                                 ? standard
                                 : read_text(unit, [] { return std::string("a unit"); });
    return rounded_text(number) + (text == "1" || text.empty() ? "" : " " + text);
}

namespace {

/// A number that came without a unit gets none by asking for one: it may be in any.
double bare_number_in(double number, const Unit& unit) {
    if (!unit.dimension.is_number() && !(unit.dimension == Dimension::of(Base::count)))
        refuse_value("the result " + rounded_text(number) + " has no unit, and " + name_of(unit.dimension) +
                     " is asked for: write the unit of what it is made of");
    return number_in(Quantity::bare(number), unit);
}

double number_of(const Quantity& value, const Cell& unit_cell) {
    if (std::holds_alternative<std::monostate>(unit_cell)) {
        if (value.form == Quantity::Form::bare) return value.value;
        return default_unit(value.dimension).scale.from_coherent(value.value);
    }
    const Unit unit = Slot<Unit>::read(unit_cell);
    if (value.form == Quantity::Form::bare) return bare_number_in(value.value, unit);
    // A slope in % is its rise per run, however it was written.
    const bool is_batter = value.dimension == Dimension::of(Base::batter);
    Quantity result = is_batter && unit.percent ? in_dimension(value, Dimension::of(Base::gradient)) : value;
    // A product of a count and a length is a length to the trade: 12 units of 2.5 m are 30 m.
    const bool differs_by_ratio = !(result.dimension == unit.dimension) &&
                                  result.dimension.without_ratios() == unit.dimension.without_ratios();
    if (differs_by_ratio) result.dimension = unit.dimension;
    try {
        return number_in(result, unit);
    } catch (const Refused& refused) {
        throw refused.saying("the result " + std::string(refused.what()));
    }
}

}  // namespace

Answer Result<Quantity>::write(const Quantity& value, const Asked& asked) {
    return finite_result(asked.read(0, [&](const Cell& unit) { return number_of(value, unit); }));
}

std::string Result<Quantity>::text(const Quantity& value, const Asked& asked) {
    const std::string standard =
        value.form == Quantity::Form::bare ? std::string() : default_unit_text(value.dimension);
    const double number = asked.read(0, [&](const Cell& unit) { return number_of(value, unit); });
    return amount_text(number, asked.cell(0), standard);
}

std::string Result<calc::Percent>::text(const calc::Percent& value, const Asked&) {
    return rounded_text(value.value) + " %";
}

}  // namespace undercroft::addin
