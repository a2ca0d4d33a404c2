#include "tests/support/book_maker.hpp"

#include "addin/formula/formula.hpp"

namespace undercroft::tests {

using audit::Area;
using audit::Book;
using audit::BookCell;
using audit::Spot;

namespace {

void set_shown(BookCell& cell, const Shown& shown) {
    cell.value = {};
    cell.error = 0;
    if (const double* number = std::get_if<double>(&shown)) cell.value = *number;
    if (const std::string* text = std::get_if<std::string>(&shown)) cell.value = *text;
    if (const Error* error = std::get_if<Error>(&shown)) cell.error = error->code;
}

Area area_of_text(const std::string& range) {
    const auto colon = range.find(':');
    const Spot first = spot_of(range.substr(0, colon));
    const Spot last = colon == std::string::npos ? first : spot_of(range.substr(colon + 1));
    return {0, first.row, first.column, last.row, last.column};
}

}  // namespace

Spot spot_of(const std::string& cell, std::int32_t sheet) {
    const addin::Node node = addin::parse_formula(cell);
    return {sheet, node.reference.first.row, node.reference.first.column};
}

BookMaker& BookMaker::sheet(const std::string& name) {
    for (current_ = 0; current_ < book_.sheets.size(); ++current_)
        if (book_.sheets[current_].name == name) return *this;
    book_.sheets.emplace_back().name = name;
    cells_.emplace_back();
    return *this;
}

BookCell& BookMaker::cell(const std::string& cell) {
    if (book_.sheets.empty()) sheet("Sheet1");
    const Spot at = spot_of(cell);
    BookCell& made = cells_[current_][{at.row, at.column}];
    made.row = at.row;
    made.column = at.column;
    return made;
}

BookMaker& BookMaker::put(const std::string& at, double number) {
    BookCell& made = cell(at);
    made.formula.clear();
    set_shown(made, number);
    return *this;
}

BookMaker& BookMaker::put(const std::string& at, const std::string& text) {
    BookCell& made = cell(at);
    made.formula.clear();
    set_shown(made, text);
    return *this;
}

BookMaker& BookMaker::formula(const std::string& at, const std::string& text, const Shown& shown) {
    BookCell& made = cell(at);
    made.formula = text;
    set_shown(made, shown);
    return *this;
}

BookMaker& BookMaker::array(const std::string& range, const std::string& text, const Shown& shown) {
    if (book_.sheets.empty()) sheet("Sheet1");
    const Area area = area_of_text(range);
    auto& arrays = raw().arrays;
    arrays.push_back(area);
    arrays.back().sheet = static_cast<std::int32_t>(current_);
    for (std::int32_t row = area.first_row; row <= area.last_row; ++row)
        for (std::int32_t column = area.first_column; column <= area.last_column; ++column) {
            formula(addin::cell_letters(column, row), text, shown);
            cells_[current_][{row, column}].array = static_cast<std::int32_t>(arrays.size()) - 1;
        }
    return *this;
}

BookMaker& BookMaker::show(const std::string& at, const Shown& shown) {
    set_shown(cell(at), shown);
    return *this;
}

BookMaker& BookMaker::row(int number, const std::string& description, double value, const std::string& unit) {
    const std::string at = std::to_string(number);
    put("A" + at, description).put("C" + at, value);
    if (!unit.empty()) put("D" + at, unit);
    return *this;
}

BookMaker& BookMaker::row(int number, const std::string& description, const std::string& text, double value,
                          const std::string& unit) {
    row(number, description, value, unit);
    return formula("C" + std::to_string(number), text, value);
}

BookMaker& BookMaker::name(const std::string& name, const std::string& content, std::int32_t sheet) {
    book_.names.push_back({name, content, sheet, {}});
    return *this;
}

BookMaker& BookMaker::style(const std::string& at, const std::string& style, bool locked, bool has_list) {
    auto& formats = raw().formats;
    formats.push_back({style, locked, has_list});
    cell(at).format = static_cast<std::uint32_t>(formats.size()) - 1;
    return *this;
}

BookMaker& BookMaker::shown_as(const std::string& at, const audit::NumberFormat& format) {
    auto& formats = raw().formats;
    audit::CellFormat made = formats[cell(at).format];
    made.number = format;
    formats.push_back(made);
    cell(at).format = static_cast<std::uint32_t>(formats.size()) - 1;
    return *this;
}

BookMaker& BookMaker::protect() {
    if (book_.sheets.empty()) sheet("Sheet1");
    raw().is_protected = true;
    return *this;
}

BookMaker& BookMaker::erase(const std::string& at) {
    const Spot spot = spot_of(at);
    cells_[current_].erase({spot.row, spot.column});
    return *this;
}

Book BookMaker::made() const {
    Book book = book_;
    for (std::size_t s = 0; s < book.sheets.size(); ++s)
        for (const auto& [place, cell] : cells_[s]) book.sheets[s].cells.push_back(cell);
    book.index();
    return book;
}

}  // namespace undercroft::tests
