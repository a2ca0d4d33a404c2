#include "sheets/builder/typed_range.hpp"

namespace undercroft::sheets {

std::optional<TypedRange> typed_range(const Row& row, const std::string& key) {
    const bool in_list = row.is<rows::List>();
    if (!in_list && !row.is<rows::Grid>()) return std::nullopt;
    TypedRange range;
    range.first_row = in_list ? 0 : 1;
    const auto add = [&](const Column& column, int at) {
        if (column.is_typed())
            range.fields.push_back(
                {at, in_list && !column.unit.si.empty(), column.format == Column::Format::date});
    };
    const std::vector<Column>& columns = *columns_of(row);
    if (row.key == key) {
        int at = in_list ? -columns_of_words(columns) : 0;  // the key stands for what is right of the wording
        for (const Column& column : columns) {
            if (at >= 0) add(column, at);
            at += column.span;
        }
        return range;
    }
    for (const Column& column : columns)
        if (!column.name.empty() && row.key + "_" + column.name == key) {
            add(column, 0);
            return range;
        }
    return std::nullopt;
}

}  // namespace undercroft::sheets
