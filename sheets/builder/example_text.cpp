#include "sheets/builder/example_text.hpp"

#include <map>

#include "sheets/builder/lines.hpp"
#include "sheets/builder/numbers.hpp"

namespace undercroft::sheets {

namespace {

using Kind = ExampleLine::Kind;

const std::map<std::string, Kind>& line_kinds() {
    static const std::map<std::string, Kind> known = {
        {"head", Kind::head}, {"units", Kind::units}, {"row", Kind::row},    {"fill", Kind::fill},
        {"note", Kind::note}, {"blank", Kind::blank}, {"chart", Kind::chart}};
    return known;
}

ExampleLine read_line(const Line& line) {
    std::string rest = line.text;
    const std::string word = take_word(rest);
    const auto kind = line_kinds().find(word);
    if (kind == line_kinds().end()) throw TextMistake(line.number, "'" + word + "' is no line of an example");
    ExampleLine made;
    made.line = line.number;
    made.kind = kind->second;
    if (made.kind == Kind::note) {
        made.cells = {dual(rest)};
        return made;
    }
    if (made.kind == Kind::fill) {
        const auto rows = number_in(rest);
        if (!rows || *rows < 1) throw TextMistake(line.number, "wanted: fill ROWS");
        made.rows = static_cast<int>(*rows);
        return made;
    }
    if (!rest.empty())
        for (const std::string& field : fields_of(rest)) made.cells.push_back(dual(field));
    constexpr std::size_t chart_fields = 5;
    if (made.kind == Kind::chart && made.cells.size() != chart_fields)
        throw TextMistake(line.number, "wanted: chart TITLE | X | Y | X TITLE | Y TITLE");
    return made;
}

}  // namespace

ExampleSheet read_example_sheet(std::string_view text) {
    ExampleSheet sheet;
    for (const Line& line : lines_of(text)) {
        if (!sheet.name.empty()) {
            sheet.lines.push_back(read_line(line));
            continue;
        }
        std::string rest = line.text;
        const std::string word = take_word(rest);
        const std::vector<std::string> fields = fields_of(rest);
        constexpr std::size_t wanted = 3;
        if (word != "sheet" || fields.size() != wanted)
            throw TextMistake(line.number, "wanted first: sheet NAME | TITLE | WHAT IT SHOWS");
        sheet.name = fields[0];
        sheet.title = fields[1];
        sheet.says = fields[2];
    }
    if (sheet.name.empty()) throw TextMistake(1, "wanted first: sheet NAME | TITLE | WHAT IT SHOWS");
    return sheet;
}

}  // namespace undercroft::sheets
