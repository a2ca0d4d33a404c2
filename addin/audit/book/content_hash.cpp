#include "addin/audit/book/content_hash.hpp"

#include <algorithm>
#include <charconv>

namespace undercroft::audit {

namespace {

/// Fewer digits than a computer keeps: what another one computes is the same.
constexpr int digits = 10;

std::uint64_t mixed(
    std::uint64_t value) {  // last step of SplitMix64 (Steele, Lea and Flood, 2014; from memory)
    value ^= value >> 30U;
    value *= 0xbf58476d1ce4e5b9U;
    value ^= value >> 27U;
    value *= 0x94d049bb133111ebU;
    return value ^ (value >> 31U);
}

}  // namespace

std::uint64_t ContentHash::of(std::string_view text) {
    std::uint64_t hash = 0xcbf29ce484222325U;  // FNV-1a (from memory)
    for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3U;
    return mixed(hash);
}

std::uint64_t ContentHash::both(std::uint64_t a, std::uint64_t b) {
    return mixed(a * 3 + mixed(b));
}

std::uint64_t ContentHash::of_value(const BookCell& cell) {
    if (cell.error != 0) return mixed(static_cast<std::uint64_t>(cell.error));
    if (const double* number = cell.number()) {
        char text[40];
        const auto end = std::to_chars(text, text + sizeof text, *number, std::chars_format::general, digits);
        return of(std::string_view(text, static_cast<std::size_t>(end.ptr - text)));
    }
    return cell.text() != nullptr ? of(*cell.text() + '"') : of("");
}

std::uint64_t ContentHash::of(const BookCell& cell) {
    return both(of(cell.formula), of_value(cell));
}

std::string ContentHash::text(std::uint64_t hash) {
    constexpr int hexadecimal = 16;
    char text[20];
    const auto end = std::to_chars(text, text + sizeof text, hash, hexadecimal);
    return {text, end.ptr};
}

ContentHash::ContentHash(const Book& book) : columns_(book.sheets.size()) {
    for (std::size_t s = 0; s < columns_.size(); ++s) {
        columns_[s].resize(static_cast<std::size_t>(book.columns(static_cast<std::int32_t>(s))));
        for (const BookCell& cell : book.sheets[s].cells) {
            Column& column = columns_[s][static_cast<std::size_t>(cell.column)];
            const std::uint64_t before = column.sums.empty() ? 0 : column.sums.back();
            column.rows.push_back(cell.row);
            column.sums.push_back(before + of_value(cell));
        }
    }
}

std::uint64_t ContentHash::of(const Area& area) const {
    std::uint64_t hash = 0;
    const auto& columns = columns_[static_cast<std::size_t>(area.sheet)];
    const auto last = std::min(area.last_column, static_cast<std::int32_t>(columns.size()) - 1);
    for (std::int32_t c = area.first_column; c <= last; ++c) {
        const Column& column = columns[static_cast<std::size_t>(c)];
        const auto sum_before = [&](std::int32_t row) -> std::uint64_t {
            const auto at = std::lower_bound(column.rows.begin(), column.rows.end(), row);
            return at == column.rows.begin()
                       ? 0
                       : column.sums[static_cast<std::size_t>(at - column.rows.begin()) - 1];
        };
        hash = both(hash, sum_before(area.last_row + 1) - sum_before(area.first_row));
    }
    return hash;
}

}  // namespace undercroft::audit
