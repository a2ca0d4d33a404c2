#include "tests/support/loose_sheets.hpp"

#include <charconv>
#include <filesystem>
#include <functional>
#include <map>
#include <stdexcept>

#include "addin/formula/formula.hpp"
#include "tests/support/computed_book.hpp"
#include "tests/support/files.hpp"
#include "tests/support/mistakes.hpp"
#include "tests/support/parted.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

using audit::Book;
using audit::BookCell;
using audit::BookSheet;
using audit::CellFormat;
using audit::CellValue;
using audit::Spot;

namespace {

CellValue value_of(const std::string& text) {
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error == std::errc{} && end == text.data() + text.size()) return number;
    return text.starts_with("'") ? text.substr(1) : text;
}

BookSheet& sheet_of(Book& book, const Spot& at) {
    return book.sheets[static_cast<std::size_t>(at.sheet)];
}

BookCell& cell_at(Book& book, const Spot& at) {
    for (BookCell& cell : sheet_of(book, at).cells)
        if (cell.row == at.row && cell.column == at.column) return cell;
    throw std::runtime_error("nothing stands in " + book.text(at));
}

CellFormat& own_format(Book& book, const Spot& at) {
    BookSheet& sheet = sheet_of(book, at);
    BookCell& cell = cell_at(book, at);
    sheet.formats.push_back(sheet.formats[cell.format]);
    cell.format = static_cast<std::uint32_t>(sheet.formats.size()) - 1;
    return sheet.formats.back();
}

void set_format(Book& book, const Spot& at, const std::string& code) {
    CellFormat& format = own_format(book, at);
    format.number = {};
    if (code.find('%') != std::string::npos) format.number.shown_as = audit::ShownAs::percent;
    audit::read_format_code(code, format.number);
    if (code.find('"') != std::string::npos) format.number.unit = audit::text_behind(code);
}

void set_setting(Book& book, const std::string& name) {
    if (name == "iterations") return void(book.iterates = true);
    if (name == "precision as shown") return void(book.rounds_to_shown = true);
    if (name == "no automatic calculation") return void(book.computes_by_itself = false);
    if (name == "macros") return void(book.has_macros = true);
    throw std::runtime_error("no setting " + name);
}

audit::Area area_meant(const Book& book, const std::string& text) {
    const std::size_t colon = text.find(':');
    const Spot first = planted_cell(book, text.substr(0, colon));
    const Spot last = colon == std::string::npos ? first : planted_cell(book, text.substr(colon + 1));
    return {first.sheet, first.row, first.column, last.row, last.column};
}

using Verb = std::function<void(Book&, const std::string& what, const std::string& text)>;

const std::map<std::string, Verb>& verbs() {
    const auto at = [](const Book& book, const std::string& cell) { return planted_cell(book, cell); };
    static const std::map<std::string, Verb> all = {
        {"hide row",
         [=](Book& b, auto& what, auto&) { sheet_of(b, at(b, what)).hidden_rows.insert(at(b, what).row); }},
        {"flat row",
         [=](Book& b, auto& what, auto&) { sheet_of(b, at(b, what)).flat_rows.insert(at(b, what).row); }},
        {"hide column", [=](Book& b, auto& what,
                            auto&) { sheet_of(b, at(b, what)).hidden_columns.insert(at(b, what).column); }},
        {"hide sheet",
         [](Book& b, auto& what, auto&) {
             b.sheets.at(static_cast<std::size_t>(b.sheet_named(what))).hidden = true;
         }},
        {"protect",
         [](Book& b, auto& what, auto&) {
             b.sheets.at(static_cast<std::size_t>(b.sheet_named(what))).is_protected = true;
         }},
        {"white", [=](Book& b, auto& what, auto&) { own_format(b, at(b, what)).unseen = true; }},
        {"unlock", [=](Book& b, auto& what, auto&) { own_format(b, at(b, what)).locked = false; }},
        {"no list", [=](Book& b, auto& what, auto&) { own_format(b, at(b, what)).has_list = false; }},
        {"list", [=](Book& b, auto& what, auto&) { own_format(b, at(b, what)).has_list = true; }},
        {"format", [=](Book& b, auto& what, auto& text) { set_format(b, at(b, what), text); }},
        {"date",
         [=](Book& b, auto& what, auto& text) {
             type_into(b, at(b, what), text);
             own_format(b, at(b, what)).number = {audit::ShownAs::date};
         }},
        {"comment",
         [=](Book& b, auto& what, auto& text) {
             sheet_of(b, at(b, what)).comments.push_back({at(b, what).row, at(b, what).column, text});
         }},
        {"merge",
         [](Book& b, auto& what, auto&) {
             const audit::Area area = area_meant(b, what);
             b.sheets[static_cast<std::size_t>(area.sheet)].merged.push_back(area);
         }},
        {"name",
         [](Book& b, auto& what, auto& text) {
             std::erase_if(b.names,
                           [&](const audit::DefinedName& n) { return n.name == what && n.sheet < 0; });
             b.names.push_back({what, text, -1, {}});
         }},
        {"local name",
         [](Book& b, auto& what, auto& text) {
             b.names.push_back({what, text, 0, {}});
         }},
        {"setting", [](Book& b, auto& what, auto&) { set_setting(b, what); }},
        {"link", [](Book& b, auto& what, auto&) { b.links.push_back(what); }},
        {"property",
         [](Book& b, auto& what, auto& text) {
             if (text.empty())
                 b.properties.erase(what);
             else
                 b.properties[what] = text;
         }},
    };
    return all;
}

/// Does one thing to the workbook; false for what is done to results, once all is computed.
bool edit(Book& book, const std::string& text) {
    if (text.starts_with("stored ") || text.starts_with("shows ")) return false;
    const std::size_t equals = text.find('=');
    const std::string left = trimmed(text.substr(0, equals));
    const std::string right = equals == std::string::npos ? "" : trimmed(text.substr(equals + 1));
    for (const auto& [verb, does] : verbs()) {
        if (!left.starts_with(verb + " ")) continue;
        does(book, trimmed(left.substr(verb.size())), right);
        return true;
    }
    if (equals == std::string::npos) throw std::runtime_error("no '=' in '" + text + "'");
    type_into(book, planted_cell(book, left), right);
    return true;
}

void add_row(BookSheet& sheet, std::int32_t row, const std::string& line) {
    const std::vector<std::string> texts = parted(line.substr(1), "|");
    for (std::size_t c = 0; c < texts.size(); ++c) {
        if (texts[c].empty()) continue;
        BookCell cell;
        cell.row = row;
        cell.column = static_cast<std::int32_t>(c);
        if (texts[c].starts_with("="))
            cell.formula = texts[c];
        else
            cell.value = value_of(texts[c]);
        sheet.cells.push_back(std::move(cell));
    }
}

}  // namespace

PlantedMistake read_planted(const std::string& line, int number) {
    const std::vector<std::string> fields = parted(line, " | ");
    if (fields.size() != 4)
        throw std::runtime_error("line " + std::to_string(number) + ": four fields are wanted");
    return {number, fields[0], fields[1], parted(fields[2], ","), fields[3] == "-" ? "" : fields[3]};
}

LooseSheet read_loose_sheet(const std::string& path) {
    LooseSheet made;
    made.file = std::filesystem::path(path).filename().string();
    std::int32_t row = 0;
    int number = 0;
    std::vector<std::string> looks;
    for (const std::string& line : parted(file_text(path), "\n")) {
        ++number;
        if (line.empty() || line.starts_with("#")) continue;
        if (line.starts_with("style ")) {
            made.style = line.substr(6);
        } else if (line.starts_with("sheet ")) {
            made.book.sheets.emplace_back().name = line.substr(6);
            row = 0;
        } else if (line.starts_with("|")) {
            add_row(made.book.sheets.at(made.book.sheets.size() - 1), row++, line);
        } else if (line.starts_with("mistake ")) {
            made.mistakes.push_back(read_planted(line.substr(8), number));
        } else {
            looks.push_back(line);
        }
    }
    made.book.index();
    for (const std::string& look : looks) edit(made.book, look);
    made.book.index();
    compute(made.book);
    return made;
}

EditedBook with_edits(const Book& clean, const std::string& edits, bool computes) {
    EditedBook made{clean, {}};
    std::vector<std::string> of_results;
    for (const std::string& one : parted(edits, " ++ "))
        if (!one.empty() && !edit(made.book, one)) of_results.push_back(one);
    made.book.index();
    if (computes) compute(made.book);
    const auto result = [&](const std::string& one, const std::string& verb) {
        const std::size_t equals = one.find('=');
        return std::pair(planted_cell(made.book, trimmed(one.substr(verb.size(), equals - verb.size()))),
                         value_of(trimmed(one.substr(equals + 1))));
    };
    for (const std::string& one : of_results)
        if (one.starts_with("shows ")) {
            const auto [at, value] = result(one, "shows ");
            cell_at(made.book, at).value = value;
        }
    made.stored = results_of(made.book);
    for (const std::string& one : of_results)
        if (one.starts_with("stored ")) {
            const auto [at, value] = result(one, "stored ");
            made.stored.add(sheet_of(made.book, at).name, at.row, at.column, {value, false});
        }
    return made;
}

Spot planted_cell(const Book& book, const std::string& cell) {
    const bool on_first = cell.find('.') == std::string::npos &&
                          cell.find_first_of("0123456789") != std::string::npos &&
                          addin::parse_formula(cell).kind == addin::NodeKind::reference;
    return cell_meant(book, on_first ? addin::sheet_prefix(book.sheets.front().name) + cell : cell);
}

}  // namespace undercroft::tests
