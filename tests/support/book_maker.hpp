/// \file book_maker.hpp
/// Workbooks made up by tests: cells put one by one, with the values that their formulas would show.
#pragma once

#include <map>
#include <string>
#include <utility>
#include <variant>

#include "addin/audit/book/book.hpp"

namespace undercroft::tests {

/// What a formula shows, where it is an error.
struct Error {
    int code = 0;
};
using Shown = std::variant<std::monostate, double, std::string, Error>;

/// `C7` as row and column from 0.
[[nodiscard]] audit::Spot spot_of(const std::string& cell, std::int32_t sheet = 0);

class BookMaker {
public:
    /// Begins a sheet, or goes back to it; cells that follow are put there.
    BookMaker& sheet(const std::string& name);
    BookMaker& put(const std::string& cell, double number);
    BookMaker& put(const std::string& cell, const std::string& text);
    /// A formula and what it shows.
    BookMaker& formula(const std::string& cell, const std::string& text, const Shown& shown = 1.0);
    /// An array formula that fills a range; every cell shows the same unless it is put again.
    BookMaker& array(const std::string& range, const std::string& text, const Shown& shown = 1.0);
    /// What a cell of an array formula shows.
    BookMaker& show(const std::string& cell, const Shown& shown);
    /// A row of a calc sheet: description in A, symbol in B, value in C, unit in D.
    BookMaker& row(int number, const std::string& description, double value, const std::string& unit);
    BookMaker& row(int number, const std::string& description, const std::string& formula, double value,
                   const std::string& unit);
    BookMaker& name(const std::string& name, const std::string& content, std::int32_t sheet = -1);
    BookMaker& style(const std::string& cell, const std::string& style, bool locked = true,
                     bool has_list = false);
    /// How a cell shows its number.
    BookMaker& shown_as(const std::string& cell, const audit::NumberFormat& format);
    BookMaker& protect();
    BookMaker& erase(const std::string& cell);
    audit::BookSheet& raw() { return book_.sheets[current_]; }
    audit::Book& book() { return book_; }

    /// The workbook as it is so far.
    [[nodiscard]] audit::Book made() const;

private:
    audit::BookCell& cell(const std::string& cell);

    audit::Book book_;
    std::size_t current_ = 0;
    std::vector<std::map<std::pair<std::int32_t, std::int32_t>, audit::BookCell>> cells_;
};

}  // namespace undercroft::tests
