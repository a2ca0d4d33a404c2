/// \file effort.hpp
/// What one explanation may look at, so that none holds up the sheet. It is counted, not timed: the add-in
/// reads no clock, and an answer that depended on how busy a machine is could not be checked.
#pragma once

#include <cstdint>

#include "units/refused.hpp"

namespace undercroft::addin {

class Effort {
public:
    /// In tenths of a microsecond, as LibreOffice 7.4.7 takes; `tests/office/effort_test.cpp` measures that
    /// they hold. What a function of ours takes for its answer is not counted: its own cell takes as long.
    static constexpr std::int64_t of_cell = 5;
    static constexpr std::int64_t of_range = 100;
    static constexpr std::int64_t of_name = 700;
    static constexpr std::int64_t of_foreign_call = 3500;
    static constexpr std::int64_t of_formula = 300;
    static constexpr std::int64_t of_function = 500;
    static constexpr std::int64_t for_one_cell = 450000;  ///< somewhat below 50 ms

    explicit Effort(std::int64_t most = for_one_cell) : left_(most) {}

    /// \throws Refused when there is nothing left of it.
    void spend(std::int64_t steps) {
        left_ -= steps;
        if (left_ < 0)
            throw Refused(
                Cause::value,
                "this takes more than UC.WHY follows for one cell: give its parts cells of their own, "
                "and ask UC.WHY of those",
                Refusal::not_followed);
    }
    [[nodiscard]] bool is_spent() const { return left_ < 0; }

private:
    std::int64_t left_;
};

}  // namespace undercroft::addin
