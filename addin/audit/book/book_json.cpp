#include "addin/audit/book/book_json.hpp"

#include <boost/describe.hpp>
#include <boost/json.hpp>

namespace undercroft::audit {

BOOST_DESCRIBE_ENUM(ShownAs, number, percent, time, date)
BOOST_DESCRIBE_ENUM(FileKind, open_document, excel_2007, excel_97, other)
BOOST_DESCRIBE_STRUCT(NumberFormat, (), (shown_as, unit, hides, thousands, decimals, shows_time))
BOOST_DESCRIBE_STRUCT(Spot, (), (sheet, row, column))
BOOST_DESCRIBE_STRUCT(Area, (), (sheet, first_row, first_column, last_row, last_column))
BOOST_DESCRIBE_STRUCT(BookCell, (), (row, column, formula, value, error, array, format))
BOOST_DESCRIBE_STRUCT(CellFormat, (), (style, locked, has_list, number, words, unseen))
BOOST_DESCRIBE_STRUCT(CellComment, (), (row, column, text))
BOOST_DESCRIBE_STRUCT(BookSheet, (),
                      (name, hidden, is_protected, was_audit, has_audit_mark, cells, arrays, formats,
                       hidden_rows, hidden_columns, flat_rows, merged, comments))
BOOST_DESCRIBE_STRUCT(DefinedName, (), (name, content, sheet, base))
BOOST_DESCRIBE_STRUCT(Book, (),
                      (sheets, names, properties, links, charted, kind, iterates, rounds_to_shown,
                       computes_by_itself, has_macros, macros, null_date))
BOOST_DESCRIBE_STRUCT(KeptBook, (), (office, digest, book))

std::string json_of(const KeptBook& kept) {
    return boost::json::serialize(boost::json::value_from(kept));
}

KeptBook kept_book_of(std::string_view json) {
    auto kept = boost::json::value_to<KeptBook>(boost::json::parse(boost::json::string_view(json)));
    kept.book.index();
    return kept;
}

}  // namespace undercroft::audit
