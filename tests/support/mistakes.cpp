#include "tests/support/mistakes.hpp"

#include <algorithm>
#include <charconv>
#include <stdexcept>

#include "addin/audit/book/names.hpp"
#include "addin/formula/formula.hpp"
#include "tests/support/parted.hpp"
#include "units/text.hpp"

namespace undercroft::tests {

using audit::Book;
using audit::BookCell;
using audit::Spot;

namespace {

Edit read_edit(const std::string& text) {
    static const std::pair<const char*, Edit::What> verbs[] = {{"hide row ", Edit::What::hide_row},
                                                               {"hide column ", Edit::What::hide_column},
                                                               {"hide sheet ", Edit::What::hide_sheet},
                                                               {"insert row ", Edit::What::insert_row},
                                                               {"delete row ", Edit::What::delete_row}};
    for (const auto& [verb, what] : verbs)
        if (text.starts_with(verb)) return {what, trimmed(text.substr(std::string(verb).size())), {}};
    const bool stored = text.starts_with("stored ");
    const std::string rest = stored ? text.substr(7) : text;
    const auto equals = rest.find('=');
    if (equals == std::string::npos) throw std::runtime_error("no '=' in '" + text + "'");
    return {stored ? Edit::What::store : Edit::What::type, trimmed(rest.substr(0, equals)),
            trimmed(rest.substr(equals + 1))};
}

}  // namespace

bool Mistake::edits_only_cells() const {
    return std::all_of(edits.begin(), edits.end(),
                       [](const Edit& edit) { return edit.what == Edit::What::type; });
}

std::vector<Mistake> read_mistakes(const std::string& text) {
    std::vector<Mistake> mistakes;
    int number = 0;
    for (const std::string& line : parted(text, "\n")) {
        ++number;
        if (line.empty() || line.starts_with("#")) continue;
        const std::vector<std::string> fields = parted(line, " | ");
        if (fields.size() < 3 || fields.size() > 4)
            throw std::runtime_error("line " + std::to_string(number) + ": three or four fields are wanted");
        Mistake mistake;
        mistake.line = number;
        for (const std::string& edit : parted(fields[0], " ++ ")) mistake.edits.push_back(read_edit(edit));
        mistake.kind = fields[1];
        mistake.found_at = fields[2] == "-" ? "" : fields[2];
        if (fields.size() == 4) {
            mistake.needs_calc = fields[3].find("calc") != std::string::npos;
            mistake.against_template = fields[3].find("template") != std::string::npos;
            if (!mistake.needs_calc && !mistake.against_template)
                throw std::runtime_error("line " + std::to_string(number) + ": '" + fields[3] +
                                         "' is neither calc nor template");
        }
        mistakes.push_back(std::move(mistake));
    }
    return mistakes;
}

Spot cell_meant(const Book& book, const std::string& cell) {
    const bool unit = cell.ends_with(".unit");
    const std::string name = unit ? cell.substr(0, cell.size() - 5) : cell;
    const audit::Names names(book);
    const audit::NameMeaning* meaning = names.find(name, -1);
    std::optional<audit::Area> area;
    if (meaning != nullptr && meaning->readable) {
        area = audit::area_of(book, meaning->tree.reference, {}, {});
    } else {
        const addin::Node node = addin::parse_formula(name);
        if (node.kind == addin::NodeKind::reference && book.sheet_named(node.reference.sheet) >= 0)
            area = audit::area_of(book, node.reference, {}, {});
    }
    if (!area) throw std::runtime_error("the workbook has no cell " + cell);
    Spot spot = area->first();
    if (unit) ++spot.column;
    return spot;
}

void type_into(Book& book, const Spot& at, const std::string& text) {
    auto& cells = book.sheets.at(static_cast<std::size_t>(at.sheet)).cells;
    const auto found = std::find_if(cells.begin(), cells.end(), [&](const BookCell& cell) {
        return cell.row == at.row && cell.column == at.column;
    });
    if (text.empty()) {
        if (found != cells.end()) cells.erase(found);
        book.index();
        return;
    }
    BookCell typed;
    if (found != cells.end()) typed = *found;
    typed.row = at.row;
    typed.column = at.column;
    typed.formula.clear();
    double number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (text.starts_with("="))
        typed.formula = text;
    else if (error == std::errc{} && end == text.data() + text.size())
        typed.value = number;
    else
        typed.value = text.starts_with("'") ? text.substr(1) : text;
    if (text.starts_with("=") && std::holds_alternative<std::monostate>(typed.value)) typed.value = 1.0;
    if (found != cells.end())
        *found = typed;
    else
        cells.push_back(typed);
    book.index();
}

}  // namespace undercroft::tests
