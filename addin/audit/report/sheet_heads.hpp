/// \file sheet_heads.hpp
/// What a calc sheet calls its columns: the row of heads at its top, and the columns that only keep count.
#pragma once

#include <initializer_list>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "addin/audit/book/book.hpp"

namespace undercroft::audit {

class SheetHeads {
public:
    explicit SheetHeads(const Book& book);

    /// The column under one of these heads, which are in lower case; -1 where the sheet has none.
    [[nodiscard]] std::int32_t column(std::int32_t sheet,
                                      std::initializer_list<std::string_view> heads) const;
    /// The cell of a row under one of these heads; nullptr where there is none.
    [[nodiscard]] const BookCell* cell(const Spot& in_row,
                                       std::initializer_list<std::string_view> heads) const;
    /// Whether the cell only keeps the count or the constants of a sheet made by us, beyond its page.
    [[nodiscard]] bool is_helper(const Spot& spot) const {
        const std::int32_t first = sheets_[static_cast<std::size_t>(spot.sheet)].first_helper;
        return first >= 0 && spot.column >= first;
    }
    /// The row of heads; -1 where the sheet has none.
    [[nodiscard]] std::int32_t row(std::int32_t sheet) const {
        return sheets_[static_cast<std::size_t>(sheet)].row;
    }

private:
    struct Heads {
        std::int32_t row = -1;
        std::int32_t first_helper = -1;
        std::map<std::string, std::int32_t, std::less<>> columns;
    };

    const Book& book_;
    std::vector<Heads> sheets_;
};

}  // namespace undercroft::audit
