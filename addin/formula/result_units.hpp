/// \file result_units.hpp
/// Formulas of before bare numbers were refused beside quantities: the result that one function of ours hands
/// to another gets its unit written with it.
#pragma once

#include <string>
#include <string_view>

namespace undercroft::addin {

/// `UC.TOTAL(UC.PRODUCT(2; A1:B1; "m"); C1:D1; "m")` to
/// `UC.TOTAL(UC.QUANTITY(UC.PRODUCT(2; A1:B1; "m"); "m"); C1:D1; "m")`.
///
/// The unit is the one that the inner function is asked for, or its default one; of MIN, MAX, IF and sums of
/// such results the one they share. Counts, shares and slopes stay as they are, and so does a formula that
/// needs nothing. \throws Refused(value) for what is no formula.
[[nodiscard]] std::string with_result_units(std::string_view formula);

}  // namespace undercroft::addin
