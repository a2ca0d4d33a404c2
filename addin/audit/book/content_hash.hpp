/// \file content_hash.hpp
/// What cells hold as one number, to see later whether it is the same; the place of the cells is not in it.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "addin/audit/book/book.hpp"

namespace undercroft::audit {

class ContentHash {
public:
    explicit ContentHash(const Book& book);

    /// Of all values of an area, however large, in the time of a look-up for each of its columns.
    [[nodiscard]] std::uint64_t of(const Area& area) const;
    /// Of one cell: its formula where it has one, and its value.
    [[nodiscard]] static std::uint64_t of(const BookCell& cell);
    [[nodiscard]] static std::uint64_t of_value(const BookCell& cell);
    [[nodiscard]] static std::uint64_t of(std::string_view text);
    /// Two in this order as one.
    [[nodiscard]] static std::uint64_t both(std::uint64_t a, std::uint64_t b);
    [[nodiscard]] static std::string text(std::uint64_t hash);

private:
    struct Column {
        std::vector<std::int32_t> rows;
        std::vector<std::uint64_t> sums;  ///< of all cells up to each
    };
    std::vector<std::vector<Column>> columns_;
};

}  // namespace undercroft::audit
