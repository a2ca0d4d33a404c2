#include "addin/catalogue/water/published_slot.hpp"

#include <cmath>

#include "units/text.hpp"

namespace undercroft::addin {

namespace {

calc::PublishedCell published_cell(const Scalar& scalar) {
    if (const double* number = std::get_if<double>(&scalar)) {
        if (!std::isfinite(*number)) refuse_value("the cell holds an error or no number");
        return *number;
    }
    if (const auto* text = std::get_if<std::u16string_view>(&scalar); text != nullptr && !text->empty())
        return to_utf8(*text);
    return {};
}

std::string text_of(const Scalar& scalar) {
    if (const double* number = std::get_if<double>(&scalar)) return exact_text(*number);
    if (const auto* text = std::get_if<std::u16string_view>(&scalar)) return to_utf8(*text);
    return {};
}

}  // namespace

calc::PublishedTable Slot<calc::PublishedTable>::read(const Cell& cell, const Terms&) {
    const Grid* const* given = std::get_if<const Grid*>(&cell);
    if (std::holds_alternative<std::monostate>(cell)) refuse_blank("is left out; a range of cells is wanted");
    if (given == nullptr) refuse_value(shown_as_given(cell) + " is no table; a range of cells is wanted");
    const Grid& grid = **given;
    calc::PublishedTable table(grid.rows());
    for (std::size_t r = 0; r < grid.rows(); ++r)
        for (std::size_t c = 0; c < grid.columns(); ++c) {
            try {
                table[r].push_back(published_cell(grid.at(r, c)));
            } catch (const Refused& refused) {
                throw at_place(refused, r, c);
            }
        }
    (void)calc::published_frequencies(table);  // refuses what is no such table
    return table;
}

calc::Frequency Slot<calc::Frequency>::read(const Cell& cell, const Terms&) {
    const auto frequency_of = [&](const std::string& text) {
        // 1:2 is a slope; what is so long is no frequency.
        const bool is_none = text.size() > 40 || text.find(':') != std::string::npos;
        if (is_none)
            refuse_value(shown_as_given(cell) +
                         " is no frequency: write it as 10 years, as 10 % or as 1 in 10");
        return calc::frequency_of(text);
    };
    const Grid* const* grid = std::get_if<const Grid*>(&cell);
    if (grid != nullptr && (*grid)->rows() == 1 && (*grid)->columns() == 2)
        return frequency_of(text_of((*grid)->at(0, 0)) + " " + text_of((*grid)->at(0, 1)));
    if (const double* number = std::get_if<double>(&cell)) return frequency_of(exact_text(*number));
    return frequency_of(read_text(cell, [] { return std::string("a frequency such as 10 years or 10 %"); }));
}

}  // namespace undercroft::addin
