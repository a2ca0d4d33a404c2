#include "sheets/builder/sheet_text.hpp"

#include <boost/algorithm/string/classification.hpp>
#include <boost/algorithm/string/predicate.hpp>
#include <locale>

#include "sheets/builder/lines.hpp"
#include "sheets/builder/read_row.hpp"

namespace undercroft::sheets {

namespace {

class Reader {
public:
    Sheet read(std::string_view text) {
        for (const Line& line : lines_of(text)) read_line(line);
        if (sheet_.name.empty()) throw TextMistake(1, "wanted first: sheet NAME | TITLE");
        return sheet_;
    }

private:
    void read_line(const Line& line) {
        std::string rest = line.text;
        const std::string word = take_word(rest);
        if (word == "sheet") return read_name(line, rest);
        if (sheet_.name.empty()) throw TextMistake(line.number, "wanted first: sheet NAME | TITLE");
        if (word == "when") {
            if (rest.empty()) throw TextMistake(line.number, "wanted: when SHEET");
            when_ = rest;
        } else if (word == "always") {
            when_.clear();
        } else if (word == "unprinted" && sheet_.rows.empty()) {
            sheet_.unprinted = true;
        } else if (word == "wide") {
            sheet_.wide = true;
        } else if (word == ":") {
            if (sheet_.rows.empty() || !add_item(sheet_.rows.back(), line, rest))
                throw TextMistake(line.number, "an item must stand under a grid or a list");
        } else if (word == "blank") {
            if (sheet_.rows.empty() || !add_blank_items(sheet_.rows.back(), line, rest))
                throw TextMistake(line.number, "blank rows must stand under a grid");
        } else if (word == "grows") {
            if (sheet_.rows.empty() || !let_grow(sheet_.rows.back(), line, rest))
                throw TextMistake(line.number, "what grows must stand under a grid or a list");
        } else {
            sheet_.rows.push_back(read_row(word, line, rest));
            sheet_.rows.back().when = when_;
        }
    }

    void read_name(const Line& line, const std::string& rest) {
        const std::vector<std::string> fields = fields_of(rest);
        if (fields.size() != 2 || fields[0].empty())
            throw TextMistake(line.number, "wanted: sheet NAME | TITLE");
        if (!boost::algorithm::all(fields[0], boost::algorithm::is_alnum(std::locale::classic())))
            throw TextMistake(line.number, "the name of a sheet is one word");
        if (!sheet_.name.empty()) throw TextMistake(line.number, "a file holds one sheet");
        sheet_.name = fields[0];
        sheet_.title = fields[1];
    }

    Sheet sheet_;
    std::string when_;
};

}  // namespace

Sheet read_sheet(std::string_view text) {
    return Reader().read(text);
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
