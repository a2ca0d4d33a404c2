#include "sheets/builder/columns.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <stdexcept>

#include "sheets/builder/numbers.hpp"

namespace undercroft::sheets {

int width_of(const std::vector<Column>& columns) {
    int width = 0;
    for (const Column& column : columns) width += column.span;
    return width;
}

std::size_t typed_columns(const std::vector<Column>& columns) {
    return static_cast<std::size_t>(std::count_if(columns.begin(), columns.end(),
                                                  [](const Column& column) { return column.is_typed(); }));
}

int columns_of_words(const std::vector<Column>& columns) {
    int width = 0;
    for (const Column& column : columns) {
        const bool named = width == 0 && column.format == Column::Format::entry;  // an item named by hand
        const bool words = column.unit.si.empty() && column.is_typed() && column.options.empty() &&
                           (named || column.format == Column::Format::standard);
        if (!words) break;
        width += column.span;
    }
    return width < width_of(columns) ? width : 0;
}

namespace {

int span_in(const Line& line, const std::string& text) {
    constexpr int widest = 12;
    const std::optional<double> span = number_in(text);
    for (int columns = 1; columns <= widest; ++columns)
        if (span == columns) return columns;
    throw TextMistake(line.number, "'" + text + "' is no span");
}

Column::Format format_in(const Line& line, const std::string& text) {
    using Format = Column::Format;
    static const std::map<std::string, Format> formats = {
        {"entry", Format::entry}, {"number", Format::number},   {"share", Format::share},
        {"text", Format::text},   {"verdict", Format::verdict}, {"shown", Format::shown},
        {"plain", Format::plain}, {"place", Format::place},     {"date", Format::date},
        {"bar", Format::bar}};
    const auto found = formats.find(text);
    if (found == formats.end())
        throw TextMistake(line.number, "'" + text +
                                           "' is no format: entry, number, share, text, verdict, shown, "
                                           "plain, place, date or bar");
    return found->second;
}

/// `usual 20..200 mm or 0`, and in the next part `possible 1..5000`.
void read_usual(const Line& line, const std::string& word, const std::string& text, Column& column) {
    try {
        if (word == "usual")
            column.usual = usual_in(text);
        else if (column.usual && !column.usual->any)
            column.usual->possible = range_in(text);
        else
            throw std::runtime_error("what is usual must stand before what is possible");
    } catch (const std::runtime_error& error) {
        throw TextMistake(line.number, error.what());
    }
}

/// One of the parts behind the title.
void read_part(const Line& line, std::string part, ColumnsOf kind, Column& column) {
    const std::string word = take_word(part);
    if (part.empty()) throw TextMistake(line.number, "nothing stands behind '" + word + "'");
    if (word == "as")
        column.name = part;
    else if ((word == "usual" || word == "possible") && kind != ColumnsOf::table)
        read_usual(line, word, part, column);
    else if (word == "unit" && kind != ColumnsOf::table)
        column.unit = dual(part);
    else if (word == "span" && kind == ColumnsOf::list)
        column.span = span_in(line, part);
    else if (word == "format" && (kind == ColumnsOf::list || (kind == ColumnsOf::table && part == "plain")))
        column.format = format_in(line, part);
    else if (word == "pick" && kind == ColumnsOf::list)
        column.options = fields_of(part, '/');
    else
        throw TextMistake(line.number,
                          "'" + word + "' is not " +
                              (kind == ColumnsOf::table  ? "as or format plain"
                               : kind == ColumnsOf::grid ? "unit, usual or as"
                                                         : "span, unit, usual, as, format or pick"));
}

Column read_column(const Line& line, const std::string& text, ColumnsOf kind) {
    Column column;
    std::string rest = text;
    if (const std::size_t equals = rest.find(":="); equals != std::string::npos) {
        if (kind != ColumnsOf::list)
            throw TextMistake(line.number, "only the columns of a list are computed");
        column.formula = trimmed(std::string_view(rest).substr(equals + 2));
        if (column.formula.empty()) throw TextMistake(line.number, "no formula stands behind ':='");
        rest = trimmed(std::string_view(rest).substr(0, equals));
    }
    const std::vector<std::string> parts = fields_of(rest, ',');
    column.title = parts[0];
    for (std::size_t i = 1; i < parts.size(); ++i) read_part(line, parts[i], kind, column);
    return column;
}

}  // namespace

std::vector<Column> read_columns(const Line& line, const std::string& text, ColumnsOf kind) {
    std::vector<Column> columns;
    for (const std::string& part : fields_of(text, ';')) columns.push_back(read_column(line, part, kind));
    return columns;
}

}  // namespace undercroft::sheets
