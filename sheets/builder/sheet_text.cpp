#include "sheets/builder/sheet_text.hpp"

#include <algorithm>
#include <charconv>
#include <map>
#include <sstream>

#include "sheets/builder/lines.hpp"

namespace undercroft::sheets {

Dual dual(const std::string& field) {
    bool quoted = false;
    for (std::size_t i = 0; i + 1 < field.size(); ++i) {
        if (field[i] == '"') quoted = !quoted;
        if (!quoted && field[i] == '/' && field[i + 1] == '/')
            return {trimmed(field.substr(0, i)), trimmed(field.substr(i + 2))};
    }
    return {field, field};
}

namespace {

/// The word at the start of a line, removed from it.
std::string take_word(std::string& text) {
    const std::size_t end = std::min(text.find_first_of(" \t"), text.size());
    const std::string word = text.substr(0, end);
    text = trimmed(std::string_view(text).substr(end));
    return word;
}

bool is_key(const std::string& text) {
    return text.find('_') != std::string::npos && std::all_of(text.begin(), text.end(), [](char c) {
               return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
           });
}

/// The fields of a row, asked for by place with the count checked.
class Fields {
public:
    Fields(const Line& line, const std::string& rest, std::size_t least, std::size_t most, const char* form)
        : line_(line), fields_(fields_of(rest)) {
        if (fields_.size() < least || fields_.size() > most)
            throw TextMistake(line.number, std::string("wanted: ") + form);
    }
    [[nodiscard]] std::string at(std::size_t i) const {
        return i < fields_.size() ? fields_[i] : std::string();
    }
    [[nodiscard]] std::string key(std::size_t i) const {
        if (!is_key(at(i)))
            throw TextMistake(
                line_.number,
                "'" + at(i) + "' is no key: small letters and digits with an underscore inside");
        return at(i);
    }

private:
    const Line& line_;
    std::vector<std::string> fields_;
};

/// `To order, span 2, unit t, as order, format text := UC.ORDER(@net; @waste; @pack; @)`
ListColumn column(const Line& line, const std::string& text) {
    ListColumn made;
    std::string rest = text;
    if (const std::size_t equals = rest.find(":="); equals != std::string::npos) {
        made.formula = trimmed(std::string_view(rest).substr(equals + 2));
        rest = trimmed(std::string_view(rest).substr(0, equals));
    }
    const std::vector<std::string> parts = fields_of(rest, ',');
    made.title = parts[0];
    for (std::size_t i = 1; i < parts.size(); ++i) {
        std::string part = parts[i];
        const std::string word = take_word(part);
        if (word == "span") {
            const auto [end, error] = std::from_chars(part.data(), part.data() + part.size(), made.span);
            if (error != std::errc{} || made.span < 1 || made.span > 12)
                throw TextMistake(line.number, "'" + part + "' is no span");
        } else if (word == "unit") {
            made.unit = dual(part);
        } else if (word == "as") {
            made.name = part;
        } else if (word == "format") {
            made.format = part;
        } else if (word == "pick") {
            made.options = fields_of(part, '/');
        } else {
            throw TextMistake(line.number, "'" + word + "' is not span, unit, as, format or pick");
        }
    }
    return made;
}

class Reader {
public:
    explicit Reader(std::string_view text) : lines_(lines_of(text)) {}

    Sheet read() {
        for (const Line& line : lines_) read_line(line);
        if (sheet_.name.empty()) throw TextMistake(1, "wanted first: sheet NAME | TITLE");
        return sheet_;
    }

private:
    void read_line(const Line& line) {
        std::string rest = line.text;
        const std::string word = take_word(rest);
        if (word == "sheet") {
            const Fields fields(line, rest, 2, 2, "sheet NAME | TITLE");
            sheet_.name = fields.at(0);
            sheet_.title = fields.at(1);
            return;
        }
        if (word == "when" || word == "always") {
            when_ = word == "when" ? rest : std::string();
            return;
        }
        if (word == "unprinted") {
            sheet_.unprinted = true;
            return;
        }
        if (word == "wide") {
            sheet_.wide = true;
            return;
        }
        if (word == ":") {
            read_item(line, rest);
            return;
        }
        static const std::map<std::string, void (Reader::*)(const Line&, const std::string&, Row&)> readers =
            {{"section", &Reader::read_section},     {"input", &Reader::read_input},
             {"text", &Reader::read_text},           {"choice", &Reader::read_choice},
             {"given", &Reader::read_given},         {"result", &Reader::read_result},
             {"words", &Reader::read_words},         {"check", &Reader::read_check},
             {"table", &Reader::read_table},         {"grid", &Reader::read_grid},
             {"list", &Reader::read_list},           {"chart", &Reader::read_chart},
             {"picture", &Reader::read_picture},     {"remark", &Reader::read_remark},
             {"caution", &Reader::read_caution},     {"summary", &Reader::read_summary},
             {"dashboard", &Reader::read_dashboard}, {"page", &Reader::read_page},
             {"beside", &Reader::read_beside}};
        const auto reader = readers.find(word);
        if (reader == readers.end()) throw TextMistake(line.number, "'" + word + "' is no kind of row");
        if (sheet_.name.empty()) throw TextMistake(line.number, "wanted first: sheet NAME | TITLE");
        Row row;
        row.line = line.number;
        row.when = when_;
        (this->*reader->second)(line, rest, row);
        sheet_.rows.push_back(row);
    }

    void read_section(const Line&, const std::string& rest, Row& row) { row.description = rest; }
    void read_remark(const Line&, const std::string& rest, Row& row) {
        row.kind = Row::Kind::remark;
        row.description = rest;
    }
    void read_summary(const Line&, const std::string&, Row& row) { row.kind = Row::Kind::summary; }
    void read_dashboard(const Line&, const std::string&, Row& row) { row.kind = Row::Kind::dashboard; }
    void read_page(const Line&, const std::string&, Row& row) { row.kind = Row::Kind::page; }
    void read_caution(const Line&, const std::string& rest, Row& row) {
        row.kind = Row::Kind::caution;
        row.description = rest;
    }
    void read_quantity_row(const Fields& fields, Row& row) {
        row.key = fields.key(0);
        row.description = fields.at(1);
        row.symbol = fields.at(2);
        row.value = dual(fields.at(3));
        row.note = fields.at(4);
    }
    void read_input(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::input;
        read_quantity_row({line, rest, 4, 5, "input KEY | DESCRIPTION | SYMBOL | VALUE UNIT >= LEAST | NOTE"},
                          row);
        if (const std::size_t sign = row.value.si.find(">="); sign != std::string::npos) {
            row.least = trimmed(row.value.si.substr(sign + 2));
            row.value = dual(trimmed(row.value.si.substr(0, sign)));
        }
    }
    void read_given(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::given;
        read_quantity_row({line, rest, 4, 5, "given KEY | DESCRIPTION | SYMBOL | VALUE UNIT | NOTE"}, row);
    }
    void read_text(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::text;
        read_quantity_row({line, rest, 4, 5, "text KEY | DESCRIPTION | SYMBOL | TEXT | NOTE"}, row);
    }
    void read_choice(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::choice;
        const Fields fields(line, rest, 5, 6,
                            "choice KEY | DESCRIPTION | SYMBOL | DEFAULT | OPTION, OPTION | NOTE");
        read_quantity_row(fields, row);
        row.options = fields_of(fields.at(4), ',');
        row.note = fields.at(5);
        if (std::find(row.options.begin(), row.options.end(), row.value.si) == row.options.end())
            throw TextMistake(line.number, "the default '" + row.value.si + "' is none of the options");
    }
    void read_result(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::result;
        const Fields fields(line, rest, 5, 6, "result KEY | DESCRIPTION | SYMBOL | UNIT | FORMULA | NOTE");
        read_quantity_row(fields, row);
        row.formula = dual(fields.at(4));
        row.note = fields.at(5);
    }
    void read_words(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::words;
        const Fields fields(line, rest, 4, 5, "words KEY | DESCRIPTION | SYMBOL | FORMULA | NOTE");
        row.key = fields.key(0);
        row.description = fields.at(1);
        row.symbol = fields.at(2);
        row.formula = dual(fields.at(3));
        row.note = fields.at(4);
    }
    void read_check(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::check;
        const Fields fields(line, rest, 3, 4,
                            "check KEY | DESCRIPTION | A >= B or A <= B or = FORMULA | NOTE");
        row.key = fields.key(0);
        row.description = fields.at(1);
        row.formula = dual(fields.at(2));
        row.note = fields.at(3);
    }
    void read_table(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::table;
        const Fields fields(line, rest, 5, 6,
                            "table KEY | DESCRIPTION | HEIGHT | COLUMN; COLUMN | FORMULA | NOTE");
        row.key = fields.key(0);
        row.description = fields.at(1);
        row.height = fields.at(2);
        for (const std::string& text : fields_of(fields.at(3), ';'))
            row.columns.push_back(column(line, text));
        row.formula = dual(fields.at(4));
        row.note = fields.at(5);
    }
    void read_columns_row(const Line& line, const Fields& fields, Row& row) {
        row.key = fields.key(0);
        row.description = fields.at(1);
        for (const std::string& text : fields_of(fields.at(2), ';'))
            row.columns.push_back(column(line, text));
        row.note = fields.at(3);
    }
    void read_grid(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::grid;
        read_columns_row(line, {line, rest, 3, 4, "grid KEY | DESCRIPTION | COLUMN, unit U; COLUMN | NOTE"},
                         row);
    }
    void read_list(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::list;
        read_columns_row(
            line, {line, rest, 3, 4, "list KEY | DESCRIPTION | COLUMN, span 2; COLUMN = FORMULA | NOTE"},
            row);
    }
    void read_chart(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::chart;
        const Fields fields(line, rest, 6, 7,
                            "chart KEY | TITLE | TABLE | X, Y, right Y | X TITLE | Y TITLE | RIGHT TITLE");
        row.key = fields.key(0);
        row.description = fields.at(1);
        row.source_table = fields.at(2);
        row.plot = fields_of(fields.at(3), ',');
        row.x_title = dual(fields.at(4));
        row.y_title = dual(fields.at(5));
        row.right_title = dual(fields.at(6));
        if (row.plot.size() < 2) throw TextMistake(line.number, "a chart needs an x column and a y column");
    }
    void read_picture(const Line& line, const std::string& rest, Row& row) {
        row.kind = Row::Kind::picture;
        const Fields fields(line, rest, 4, 4,
                            "picture KEY | TITLE | X FROM TO Y FROM TO in mm | LOOK TABLE, LOOK TABLE");
        row.key = fields.key(0);
        row.description = fields.at(1);
        std::istringstream paper(fields.at(2));
        for (double edge = 0; paper >> edge;) row.paper.push_back(edge);
        if (row.paper.size() != 4 || row.paper[0] >= row.paper[1] || row.paper[2] >= row.paper[3])
            throw TextMistake(line.number, "'" + fields.at(2) + "' are no four edges of a paper");
        row.plot = fields_of(fields.at(3), ',');
    }

    void read_beside(const Line& line, const std::string& rest, Row& row) {
        read_chart(line, rest, row);
        row.beside = true;
    }

    void read_item(const Line& line, const std::string& rest) {
        Row* row = sheet_.rows.empty() ? nullptr : &sheet_.rows.back();
        if (row == nullptr || (row->kind != Row::Kind::grid && row->kind != Row::Kind::list))
            throw TextMistake(line.number, "an item must stand under a grid or a list");
        std::vector<ListCell> item;
        for (const std::string& field : fields_of(rest, ';')) item.push_back({dual(field)});
        const auto typed = std::count_if(row->columns.begin(), row->columns.end(),
                                         [](const ListColumn& c) { return c.formula.empty(); });
        if (static_cast<std::ptrdiff_t>(item.size()) != typed)
            throw TextMistake(line.number, std::to_string(typed) + " fields parted by ';' are wanted");
        row->items.push_back(std::move(item));
    }

    std::vector<Line> lines_;
    Sheet sheet_;
    std::string when_;
};

}  // namespace

Sheet read_sheet(std::string_view text) {
    return Reader(text).read();
}

std::vector<WorkbookText> read_workbooks(std::string_view text) {
    std::vector<WorkbookText> workbooks;
    for (const Line& line : lines_of(text)) {
        const std::vector<std::string> fields = fields_of(line.text);
        if (fields.size() != 3) throw TextMistake(line.number, "wanted: NAME | TITLE | SHEET, SHEET");
        workbooks.push_back({fields[0], fields[1], fields_of(fields[2], ',')});
    }
    return workbooks;
}

}  // namespace undercroft::sheets
