// A template as it was read, kept as JSON: nothing of it is lost.
#include "addin/audit/book/book_json.hpp"

#include "tests/audit/audited.hpp"

namespace undercroft::tests {

using namespace audit;

namespace {

/// Every member set to what it is not by itself.
Book unusual_book() {
    Book book;
    BookSheet sheet;
    sheet.name = "Sit\xC3\xA9 \"1\"";
    sheet.hidden = sheet.is_protected = sheet.was_audit = sheet.has_audit_mark = true;
    sheet.cells = {{1, 2, "=A1*\"x\"", 0.1 + 0.2, 0, 0, 1},
                   {1, 3, "", std::string("line\nof text"), 0, -1, 0},
                   {4, 0, "=1/0", std::monostate(), 532, -1, 0}};
    sheet.arrays = {{0, 1, 2, 3, 4}};
    sheet.formats = {
        {}, {"Entry", false, true, {ShownAs::percent, "mm", true, 2, 3, true}, "[=1]\"PASS\"", true}};
    sheet.hidden_rows = {1};
    sheet.hidden_columns = {2, 3};
    sheet.flat_rows = {4};
    sheet.merged = {{0, 5, 6, 7, 8}};
    sheet.comments = {{1, 2, "a remark"}};
    book.sheets = {sheet};
    book.names = {{"depth", "$Site.$B$2", 0, {0, 1, 2}}};
    book.properties = {{"template", "whole-job"}};
    book.links = {"file:///other.ods"};
    book.charted = {{0, 1, 1, 2, 2}};
    book.kind = FileKind::excel_97;
    book.iterates = book.rounds_to_shown = book.has_macros = true;
    book.computes_by_itself = false;
    book.macros = {"Standard.Module1 Sub Main"};
    book.null_date = "1904-1-1";
    return book;
}

}  // namespace

TEST_CASE("a book kept as JSON is the book that it was") {
    const Book book = unusual_book();
    const KeptBook back = kept_book_of(json_of({"office 7.4", "0123", book}));
    CHECK(back.office == "office 7.4");
    CHECK(back.digest == "0123");
    REQUIRE(back.book.sheets.size() == 1);
    // Each member by its place: one more in the structure does not compile here until it is kept and
    // compared.
    const auto& [name, hidden, is_protected, was_audit, has_audit_mark, cells, arrays, formats, hidden_rows,
                 hidden_columns, flat_rows, merged, comments] = back.book.sheets[0];
    const BookSheet& sheet = book.sheets[0];
    CHECK(name == sheet.name);
    CHECK((hidden && is_protected && was_audit && has_audit_mark));
    REQUIRE(cells.size() == 3);
    for (std::size_t i = 0; i < 3; ++i) {
        const auto& [row, column, formula, value, error, array, format] = cells[i];
        const BookCell& cell = sheet.cells[i];
        CHECK((row == cell.row && column == cell.column && formula == cell.formula && error == cell.error));
        CHECK((value == cell.value && array == cell.array && format == cell.format));
    }
    CHECK(arrays == sheet.arrays);
    REQUIRE(formats.size() == 2);
    const auto& [style, locked, has_list, number, words, unseen] = formats[1];
    const auto& [shown_as, unit, hides, thousands, decimals, shows_time] = number;
    CHECK((shown_as == ShownAs::percent && unit == "mm" && hides && thousands == 2 && decimals == 3));
    CHECK(shows_time);
    CHECK((style == "Entry" && !locked && has_list && words == "[=1]\"PASS\"" && unseen));
    CHECK(formats[0] == CellFormat());
    CHECK((hidden_rows == sheet.hidden_rows && hidden_columns == sheet.hidden_columns));
    CHECK((flat_rows == sheet.flat_rows && merged == sheet.merged));
    REQUIRE(comments.size() == 1);
    const auto& [comment_row, comment_column, comment_text] = comments[0];
    CHECK((comment_row == 1 && comment_column == 2 && comment_text == "a remark"));
    REQUIRE(back.book.names.size() == 1);
    const auto& [defined, content, known_on, base] = back.book.names[0];
    CHECK((defined == "depth" && content == "$Site.$B$2" && known_on == 0 && base == Spot{0, 1, 2}));
    CHECK((back.book.properties == book.properties && back.book.links == book.links));
    CHECK((back.book.charted == book.charted && back.book.kind == FileKind::excel_97));
    CHECK((back.book.iterates && back.book.rounds_to_shown && back.book.has_macros));
    CHECK_FALSE(back.book.computes_by_itself);
    CHECK((back.book.macros == book.macros && back.book.null_date == book.null_date));
    CHECK(back.book.find({0, 1, 3}) != nullptr);  // it is indexed
}

TEST_CASE("what is no kept book is refused") {
    for (const char* text :
         {"", "{}", "[1]", "{\"office\":1}", "{\"office\":\"a\",\"digest\":\"b\",\"book\":{}}"})
        CHECK_THROWS(kept_book_of(text));
}

}  // namespace undercroft::tests
