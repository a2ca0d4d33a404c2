#include "sheets/builder/read_row.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "sheets/builder/fields.hpp"
#include "sheets/builder/read_tables.hpp"

namespace undercroft::sheets {

namespace {

RowKind input(const Fields& fields) {
    const auto value = [&](const std::string& text) {
        return fields.quantity(trimmed(text.substr(0, text.find(">="))));
    };
    const auto least = [&](const std::string& text) -> std::string {
        const std::size_t sign = text.find(">=");
        if (sign == std::string::npos) return "0";
        std::string number = trimmed(text.substr(sign + 2));
        if (!number_in(number)) fields.mistake("'" + number + "' is no number");
        return number;
    };
    const DualText both = fields.dual_at(3);
    return rows::Input{each_reading(both, value), each_reading(both, least)};
}

RowKind given(const Fields& fields) {
    return rows::Given{
        each_reading(fields.dual_at(3), [&](const std::string& text) { return fields.quantity(text); })};
}

RowKind text(const Fields& fields) {
    return rows::Text{fields.dual_at(3)};
}

RowKind choice(const Fields& fields) {
    rows::Choice made{fields.dual_at(3), fields_of(fields.at(4), ',')};
    for (const std::string& value : {made.value.si, made.value.us})
        if (std::find(made.options.begin(), made.options.end(), value) == made.options.end())
            fields.mistake("the default '" + value + "' is none of the options");
    return made;
}

RowKind result(const Fields& fields) {
    return rows::Result{fields.dual_at(3), fields.formula(4)};
}

RowKind words(const Fields& fields) {
    return rows::Words{fields.formula(3)};
}

RowKind day(const Fields& fields) {
    return rows::Words{fields.formula(3), true};
}

/// Takes off the end of a text from this word on. \return what stands behind the word.
std::string take_end(std::string& text, const std::string& word) {
    const std::size_t at = text.find(" " + word + " ");
    if (at == std::string::npos) return {};
    std::string end = trimmed(text.substr(at + word.size() + 2));
    text = trimmed(text.substr(0, at));
    return end;
}

rows::Comparison comparison_in(const Fields& fields, std::string text) {
    using Sense = rows::Comparison::Sense;
    rows::Comparison made;
    const std::string otherwise = take_end(text, "else");
    if (!otherwise.empty() && otherwise != "open")
        fields.mistake("a check is open or fails, not '" + otherwise + "'");
    made.waits = !otherwise.empty();
    made.condition = take_end(text, "if");
    const std::pair<std::string, Sense> signs[] = {
        {">=", Sense::at_least}, {"<=", Sense::at_most}, {">", Sense::above}, {"<", Sense::below}};
    for (const auto& [sign, sense] : signs) {
        const std::size_t middle = text.find(sign);
        if (middle == std::string::npos) continue;
        made.left = trimmed(text.substr(0, middle));
        made.sense = sense;
        made.right = trimmed(text.substr(middle + sign.size()));
        return made;
    }
    fields.mistake("a check is A >= B, A <= B, A > B, A < B or = FORMULA");
}

rows::Demand demand_in(const Fields& fields, std::string text) {
    if (!text.starts_with("=")) return comparison_in(fields, text);
    rows::Ruling made;
    made.words = take_end(text, "says");
    const std::string numbers = take_end(text, "shows");
    if (!numbers.empty()) made.numbers = comparison_in(fields, numbers);
    made.formula = text.substr(1);
    return made;
}

RowKind check(const Fields& fields) {
    return rows::Check{each_reading(
        fields.dual_at(2), [&](const std::string& demanded) { return demand_in(fields, demanded); })};
}

/// A row of fields, which begin with its key and its description.
struct Form {
    std::string_view form;  ///< begins with the word of the row
    std::size_t least;      ///< fields
    std::size_t most;
    bool has_symbol;  ///< its third field
    bool has_note;    ///< its last field, which may be left out
    RowKind (*read)(const Fields&);
    bool may_be_usual = false;  ///< a field before the note may say what is usual of it
};

constexpr Form forms[] = {
    {"input KEY | DESCRIPTION | SYMBOL | VALUE UNIT >= LEAST | usual LOW..HIGH UNIT | NOTE", 4, 5, true, true,
     input, true},
    {"text KEY | DESCRIPTION | SYMBOL | TEXT | NOTE", 4, 5, true, true, text, true},
    {"choice KEY | DESCRIPTION | SYMBOL | DEFAULT | OPTION, OPTION | NOTE", 5, 6, true, true, choice},
    {"given KEY | DESCRIPTION | SYMBOL | VALUE UNIT | usual LOW..HIGH UNIT | NOTE", 4, 5, true, true, given,
     true},
    {"result KEY | DESCRIPTION | SYMBOL | UNIT | FORMULA | NOTE", 5, 6, true, true, result},
    {"words KEY | DESCRIPTION | SYMBOL | FORMULA | NOTE", 4, 5, true, true, words},
    {"day KEY | DESCRIPTION | SYMBOL | FORMULA | NOTE", 4, 5, true, true, day},
    {"check KEY | DESCRIPTION | A >= B or A <= B or = FORMULA shows A >= B says WORDS | NOTE", 3, 4, false,
     true, check},
    {"table KEY | TITLE | ROWS | COLUMN; COLUMN | FORMULA | NOTE", 5, 6, false, true, read_table},
    {"grid KEY | TITLE | COLUMN, unit U; COLUMN | NOTE", 3, 4, false, true, read_grid},
    {"list KEY | TITLE | COLUMN, span 2; COLUMN := FORMULA | NOTE", 3, 4, false, true, read_list},
    {"chart KEY | TITLE | TABLE | X, Y, right Y | X TITLE | Y TITLE | RIGHT TITLE", 6, 7, false, false,
     read_chart},
    {"beside KEY | TITLE | TABLE | X, Y, right Y | X TITLE | Y TITLE | RIGHT TITLE", 6, 7, false, false,
     read_chart_beside},
    {"picture KEY | TITLE | X FROM TO Y FROM TO in mm | LOOK TABLE, LOOK TABLE", 4, 4, false, false,
     read_picture}};

Row row_of_fields(const Form& form, Fields fields) {
    Row row;
    if (form.may_be_usual) row.usual = fields.take_usual();
    if (form.may_be_usual) row.optional = fields.take_optional();
    if (fields.count() < form.least || fields.count() > form.most)
        fields.mistake("wanted: " + std::string(form.form));
    row.key = fields.key(0);
    row.description = fields.at(1);
    if (form.has_symbol) row.symbol = fields.at(2);
    if (form.has_note) row.note = fields.at(form.most - 1);
    row.kind = form.read(fields);
    return row;
}

}  // namespace

Row read_row(const std::string& word, const Line& line, const std::string& rest) {
    static const std::map<std::string, RowKind> paragraphs = {
        {"section", rows::Section{}}, {"remark", rows::Remark{}}, {"caution", rows::Caution{}}};
    static const std::map<std::string, RowKind> bare_words = {
        {"unprinted", rows::Unprinted{}}, {"summary", rows::Summary{}}, {"dashboard", rows::Dashboard{}}};
    Row row;
    if (const auto* form =
            std::find_if(std::begin(forms), std::end(forms),
                         [&word](const Form& known) { return known.form.starts_with(word + " "); });
        form != std::end(forms)) {
        row = row_of_fields(*form, Fields(line, rest));
    } else if (const auto paragraph = paragraphs.find(word); paragraph != paragraphs.end()) {
        if (rest.empty()) throw TextMistake(line.number, "a text is wanted behind '" + word + "'");
        row.description = rest;
        row.kind = paragraph->second;
    } else if (const auto bare = bare_words.find(word); bare != bare_words.end()) {
        if (!rest.empty()) throw TextMistake(line.number, "nothing may stand behind '" + word + "'");
        row.kind = bare->second;
    } else {
        throw TextMistake(line.number, "'" + word + "' is no kind of row");
    }
    row.line = line.number;
    return row;
}

bool add_item(Row& row, const Line& line, const std::string& rest) {
    return std::visit(
        [&](auto& kind) {
            if constexpr (requires { kind.items; }) {
                rows::Item item{line.number, {}};
                if (!rest.empty())
                    for (const std::string& field : fields_of(rest, ';')) item.cells.push_back(dual(field));
                const std::size_t wanted = typed_columns(kind.columns);
                if (item.cells.size() != wanted)
                    throw TextMistake(line.number,
                                      std::to_string(wanted) + " fields parted by ';' are wanted");
                kind.items.push_back(std::move(item));
                return true;
            } else {
                return false;
            }
        },
        row.kind);
}

bool add_blank_items(Row& row, const Line& line, const std::string& number) {
    constexpr int most = 100000;
    rows::Grid* grid = std::get_if<rows::Grid>(&row.kind);
    if (grid == nullptr) return false;
    const double wanted = number_in(number).value_or(0);
    if (!(wanted >= 1 && wanted <= most) || wanted != static_cast<int>(wanted))
        throw TextMistake(line.number, "'" + number + "' is no number of blank rows");
    const rows::Item blank{line.number, std::vector<DualText>(grid->columns.size(), dual("-"))};
    grid->items.insert(grid->items.end(), static_cast<std::size_t>(wanted), blank);
    return true;
}

bool let_grow(Row& row, const Line& line, const std::string& most) {
    return std::visit(
        [&](auto& kind) {
            if constexpr (requires { kind.most; }) {
                constexpr double highest = 1000;
                const double wanted = number_in(most).value_or(0);
                const auto least = static_cast<double>(kind.items.size());
                if (least < 2 || wanted < least || wanted > highest || wanted != std::trunc(wanted))
                    throw TextMistake(line.number,
                                      "'" + most + "' is no number of rows to which two or more grow");
                kind.most = static_cast<int>(wanted);
                return true;
            } else {
                return false;
            }
        },
        row.kind);
}

}  // namespace undercroft::sheets
