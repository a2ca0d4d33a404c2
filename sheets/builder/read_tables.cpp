#include "sheets/builder/read_tables.hpp"

#include <optional>

namespace undercroft::sheets {

RowKind read_table(const Fields& fields) {
    constexpr int highest = 10000;
    const double height = number_in(fields.at(2)).value_or(0);
    if (!(height >= 1 && height <= highest) || height != static_cast<int>(height))
        fields.mistake("'" + fields.at(2) + "' is no height of a table");
    return rows::Table{static_cast<int>(height), read_columns(fields.line(), fields.at(3), ColumnsOf::table),
                       fields.formula(4)};
}

RowKind read_grid(const Fields& fields) {
    return rows::Grid{read_columns(fields.line(), fields.at(2), ColumnsOf::grid), {}, 0};
}

RowKind read_list(const Fields& fields) {
    return rows::List{read_columns(fields.line(), fields.at(2), ColumnsOf::list), {}, 0};
}

namespace {

/// `log right Stored`
rows::Curve curve_in(std::string_view text) {
    const auto take = [&text](std::string_view word) {
        const bool stands = text.starts_with(word);
        if (stands) text.remove_prefix(word.size());
        return stands;
    };
    rows::Curve curve;
    curve.logarithmic = take("log ");
    curve.on_right = take("right ");
    curve.column = trimmed(text);
    return curve;
}

rows::Chart chart_in(const Fields& fields) {
    const std::vector<std::string> columns = fields_of(fields.at(3), ',');
    if (columns.size() < 2) fields.mistake("a chart needs an x column and a y column");
    rows::Chart chart;
    chart.table = fields.at(2);
    chart.x = curve_in(columns.front());
    for (std::size_t i = 1; i < columns.size(); ++i) chart.curves.push_back(curve_in(columns[i]));
    chart.x_title = fields.dual_at(4);
    chart.y_title = fields.dual_at(5);
    chart.right_title = fields.dual_at(6);
    return chart;
}

Paper paper_in(const Fields& fields, const std::string& text) {
    std::vector<std::optional<double>> edges;
    for (std::string rest = text; !rest.empty();) edges.push_back(number_in(take_word(rest)));
    const bool four = edges.size() == 4 && edges[0] && edges[1] && edges[2] && edges[3];
    if (!four || *edges[0] >= *edges[1] || *edges[2] >= *edges[3])
        fields.mistake("'" + text + "' are no four edges of a paper");
    return {*edges[0], *edges[1], *edges[2], *edges[3]};
}

}  // namespace

RowKind read_chart(const Fields& fields) {
    return chart_in(fields);
}

RowKind read_chart_beside(const Fields& fields) {
    rows::Chart chart = chart_in(fields);
    chart.beside = true;
    return chart;
}

RowKind read_picture(const Fields& fields) {
    rows::Picture picture{paper_in(fields, fields.at(2)), {}};
    for (const std::string& text : fields_of(fields.at(3), ',')) {
        std::string table = text;
        const std::string look = take_word(table);
        if (table.empty()) fields.mistake("wanted: LOOK TABLE, not '" + text + "'");
        picture.outlines.push_back({look, table});
    }
    return picture;
}

}  // namespace undercroft::sheets
