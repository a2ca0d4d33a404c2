// Rows end with a line, cells with a tab. A cell that starts with '#' holds a number, an empty one is blank,
// all else is text.
#include <cmath>
#include <cstdlib>
#include <limits>

#include "addin/catalogue/bed/shape.hpp"
#include "addin/catalogue/water/outlets_slot.hpp"
#include "addin/catalogue/water/storage_slot.hpp"
#include "addin/catalogue/works/spoil_soil.hpp"
#include "tests/fuzz/targets.hpp"
#include "units/text.hpp"

namespace undercroft::fuzz {

using namespace addin;

namespace {

OwnedGrid::Item item_of(std::string_view text) {
    if (text.empty()) return {};
    if (text.front() != '#') return to_utf16(text);
    return std::strtod(std::string(text.substr(1, 40)).c_str(), nullptr);
}

std::vector<std::vector<OwnedGrid::Item>> cells_of_text(std::string_view bytes) {
    std::vector<std::vector<OwnedGrid::Item>> rows(1);
    std::string cell;
    const auto end_cell = [&] {
        rows.back().push_back(item_of(cell));
        cell.clear();
    };
    for (const char c : bytes) {
        if (c == '\t' || c == '\n')
            end_cell();
        else
            cell += c;
        if (c == '\n') rows.emplace_back();
    }
    end_cell();
    return rows;
}

bool is_finite(double value) {
    return std::isfinite(value);
}
bool is_finite(const Quantity& quantity) {
    return std::isfinite(quantity.value);
}
bool is_finite(const calc::Percent& percent) {
    return std::isfinite(percent.value);
}
template <class E>
requires std::is_enum_v<E>
bool is_finite(E) {
    return true;
}
template <class T>
bool is_finite(const std::optional<T>& value) {
    return !value || is_finite(*value);
}
template <class... C>
bool is_finite(const std::tuple<C...>& row) {
    return std::apply([](const C&... cells) { return (is_finite(cells) && ...); }, row);
}
template <class T>
bool is_finite(const std::vector<T>& rows) {
    for (const T& row : rows)
        if (!is_finite(row)) return false;
    return true;
}

template <class T, class Check>
void try_as(const Cell& cell, const Check& check) {
    try {
        const T value = Slot<T>::read(cell, Terms{});
        promise(check(value), "a number that is not finite was read");
    } catch (const Refused& refused) {
        promise_sentence(refused.what());
    }
}
template <class T>
void try_as(const Cell& cell) {
    try_as<T>(cell, [](const T& value) { return is_finite(value); });
}

void read_range(const Cell& cell) {
    try_as<calc::Table<Length, Flow>>(cell);
    try_as<calc::Table<Time, Speed>>(cell);
    try_as<calc::Table<Length, calc::Percent, std::optional<calc::Percent>>>(cell);
    try_as<calc::Table<calc::OutletKind, Length, std::optional<Quantity>, std::optional<Count>>>(cell);
    try_as<calc::Table<Count, Share>>(cell);
    try_as<std::vector<std::vector<Length>>>(cell);
    const auto all_rows = [](const auto& value) { return is_finite(value.rows); };
    try_as<calc::StorageTable>(cell, all_rows);
    try_as<Figures>(cell, all_rows);
}

void read_single(const Cell& cell) {
    try_as<Length>(cell);
    try_as<Batter>(cell);
    try_as<Gradient>(cell);
    try_as<Count>(cell);
    try_as<calc::Percent>(cell);
    try_as<Quantity>(cell);
    try_as<calc::Shape>(cell);
    try_as<std::variant<calc::SpoilSoil, Share>>(cell, [](const auto&) { return true; });
    try_as<bool>(cell, [](bool) { return true; });
    try_as<Unit>(cell, [](const Unit& unit) { return is_finite(unit.scale.to_coherent(1)); });
    try_as<std::string>(cell, [](const std::string& text) { return text.size() < 10000; });
}

}  // namespace

void tables(std::string_view bytes) {
    const OwnedGrid grid(cells_of_text(bytes));
    const Cell cell = static_cast<const Grid*>(&grid);
    read_range(cell);
    read_single(cell);
    const Scalar first = grid.at(0, 0);
    if (const double* number = std::get_if<double>(&first)) read_single(*number);
    if (const auto* text = std::get_if<std::u16string_view>(&first)) read_single(*text);
}

}  // namespace undercroft::fuzz
