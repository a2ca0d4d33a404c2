/// \file limits.hpp
/// What a number may be: how far it is possible at all, and where a number without a unit is usual. A bare
/// number is read in the one default unit of its dimension, whatever the person meant; the usual range is
/// what stands between 305 typed for 305 mm and a bed 305 m deep.
#pragma once

#include <limits>
#include <string>
#include <vector>

#include "units/dimension.hpp"
#include "units/quantity.hpp"

namespace undercroft::addin {

/// A range as an entry declares it, each bound as a text with its unit.
struct Range {
    const char* usual_least;
    const char* usual_most;
    const char* least;  ///< possible at all
    const char* most;
    const char* why = "common practice";  ///< where it comes from, or why every number is usual
    bool or_none = false;                 ///< 0 is possible too: there is none of it
    const char* other_unit = nullptr;     ///< as common for it as the default unit

    /// The same, and 0 where there is none.
    [[nodiscard]] constexpr Range or_zero() const {
        Range range = *this;
        range.or_none = true;
        return range;
    }
    /// The same, and a bare number that would be as usual in that unit as in the default one is refused:
    /// 20 is a bed's length in metres and in feet, 5 in metres only.
    [[nodiscard]] constexpr Range or_in(const char* unit) const {
        Range range = *this;
        range.other_unit = unit;
        return range;
    }
    [[nodiscard]] constexpr bool is_everything() const { return usual_least == nullptr; }
};

/// Every number is usual; `why` says for what reason.
[[nodiscard]] constexpr Range any_number(const char* why) {
    return {nullptr, nullptr, nullptr, nullptr, why, false};
}

/// A range made ready for comparing, in one dimension.
struct Limits {
    static constexpr double infinity = std::numeric_limits<double>::infinity();

    double least = -infinity;  ///< possible, in the coherent SI unit
    double most = infinity;
    double usual_least = -infinity;  ///< of a bare number, in its default unit
    double usual_most = infinity;
    double bare_least = -infinity;  ///< usual, and in no other unit as well
    double bare_most = infinity;
    bool or_none = false;   ///< 0 is possible
    bool bare_none = true;  ///< a bare 0 is taken
    /// A bare 0 would stand for a blank cell: Calc hands a single one over as 0.
    bool none_is_blank = false;
    bool is_stated = false;
    Dimension dimension{};
    bool in_percent = false;   ///< a bare number is a percentage
    std::string usual;         ///< "0.2 m to 5 m"; empty where every number is usual
    std::string without_unit;  ///< the same but for what is as usual in another unit
    std::string possible;      ///< "0 m to 30 m"
    std::string why;
    std::string other_unit;       ///< in which a bare number may be meant as well; mostly empty
    std::vector<Limits> columns;  ///< of a table

    Limits() = default;
    /// \throws Refused where a bound cannot be read or is of another dimension.
    Limits(const Range& range, const Dimension& dimension, bool in_percent);

    /// \throws Refused(domain) with the sentence that mends it.
    void check_bare(double number) const {
        const bool fits = number == 0 ? bare_none : number >= bare_least && number <= bare_most;
        if (!fits) refuse_bare(number);
    }
    /// \throws Refused(domain) that says what is possible.
    void check(double coherent) const {
        const bool fits = (coherent >= least && coherent <= most) || (or_none && coherent == 0);
        if (!fits) refuse_impossible(coherent);
    }
    /// Of a number beside `%`: a cell that Calc shows as 0.5 % holds 0.005, and beside `%` would be read as
    /// 0.005 %. Far below what is usual, where a hundred times as much is usual, that was done.
    /// \throws Refused(domain)
    void check_percent_pair(double coherent) const {
        constexpr double far_below = 0.25;
        const double number = bare_of(coherent);
        if (number > 0 && number < far_below * usual_least && 100 * number >= usual_least &&
            100 * number <= usual_most)
            refuse_percent_cell(coherent);
    }

private:
    void leave_out_what_is_usual_in(const char* unit);
    [[noreturn]] void refuse_ambiguous(double number) const;
    [[nodiscard]] double bare_of(double share) const { return in_percent ? 100 * share : share; }
    [[noreturn]] void refuse_percent_cell(double share) const;
    [[noreturn]] void refuse_bare(double number) const;
    [[noreturn]] void refuse_impossible(double coherent) const;
    [[nodiscard]] double coherent_of(double bare) const;
    [[nodiscard]] bool is_possible(double coherent) const {
        return (coherent >= least && coherent <= most) || (or_none && coherent == 0);
    }
};

}  // namespace undercroft::addin
