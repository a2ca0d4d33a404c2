#include "sheets/builder/fill.hpp"

namespace undercroft::sheets {

void fill_row(CellWriter& writer, const Selection& selection, const Row& row) {
    const int at = writer.layout().start_of(writer.sheet(), row);
    std::visit(Overloaded{
                   [&](const rows::Section&) { fill_section(writer, row, at); },
                   [&](const rows::Remark&) { fill_paragraph(writer, row, at, "Remark"); },
                   [&](const rows::Caution&) { fill_paragraph(writer, row, at, "Caution"); },
                   [&](const rows::Unprinted&) { writer.grid().printed_rows = at; },
                   [&](const rows::Summary&) { fill_summary(writer, selection, at); },
                   [&](const rows::Dashboard&) { fill_dashboard(writer, selection, at); },
                   [&](const rows::Input& input) { fill_input(writer, row, input, at); },
                   [&](const rows::Given& given) {
                       fill_given(writer, row, given, selection.is_link(writer.sheet(), row), at);
                   },
                   [&](const rows::Text& text) { fill_text(writer, row, text, at); },
                   [&](const rows::Choice& choice) { fill_choice(writer, row, choice, at); },
                   [&](const rows::Result& result) { fill_result(writer, row, result, at); },
                   [&](const rows::Words& words) { fill_words(writer, row, words, at); },
                   [&](const rows::Check& check) { fill_check(writer, row, check, at); },
                   [&](const rows::Table& table) { fill_table(writer, row, table, at); },
                   [&](const rows::Grid& grid) { fill_grid(writer, row, grid, at); },
                   [&](const rows::List& list) { fill_list(writer, row, list, at); },
                   [&](const rows::Chart& chart) { fill_chart(writer, row, chart, at); },
                   [&](const rows::Picture& picture) { fill_picture(writer, row, picture, at); },
               },
               row.kind);
}

}  // namespace undercroft::sheets
