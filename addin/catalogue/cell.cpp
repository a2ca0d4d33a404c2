#include "addin/catalogue/cell.hpp"

#include "units/text.hpp"

namespace undercroft::addin {

Scalar OwnedGrid::at(std::size_t row, std::size_t column) const {
    if (row >= cells_.size() || column >= cells_[row].size()) return std::monostate{};
    const Item& item = cells_[row][column];
    if (const double* number = std::get_if<double>(&item)) return *number;
    if (const std::u16string* text = std::get_if<std::u16string>(&item)) return std::u16string_view(*text);
    return std::monostate{};
}

namespace {

/// Long texts are cut so that a sentence stays a sentence.
std::string shortened(std::u16string_view text) {
    constexpr std::size_t longest = 40;
    std::string shown = to_utf8(text.substr(0, longest));
    for (char& c : shown)
        if (static_cast<unsigned char>(c) < 0x20) c = ' ';
    return text.size() > longest ? shown + "..." : shown;
}

}  // namespace

std::string shown_as_given(const Scalar& scalar) {
    if (const double* number = std::get_if<double>(&scalar)) return exact_text(*number);
    if (const auto* text = std::get_if<std::u16string_view>(&scalar)) return shortened(*text);
    return "blank";
}

std::string shown_as_given(const Cell& cell) {
    if (const double* number = std::get_if<double>(&cell)) return exact_text(*number);
    if (const auto* text = std::get_if<std::u16string_view>(&cell)) return '"' + shortened(*text) + '"';
    if (const Grid* const* grid = std::get_if<const Grid*>(&cell)) {
        const std::size_t rows = (*grid)->rows();
        const std::size_t columns = (*grid)->columns();
        if (rows == 1 && columns == 1) return shown_as_given((*grid)->at(0, 0));
        if (rows == 1 && columns == 2)
            return shown_as_given((*grid)->at(0, 0)) + " " + shown_as_given((*grid)->at(0, 1));
        return "range of " + std::to_string(rows) + " x " + std::to_string(columns) + " cells";
    }
    return "left out";
}

}  // namespace undercroft::addin
