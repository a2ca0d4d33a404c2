/// \file grading.hpp
/// The grading curve of a soil or stone.
#pragma once

#include "calc/percent.hpp"
#include "calc/require.hpp"
#include "units/types.hpp"

namespace undercroft::calc {

/// Sieve size and percentage passing; the rows in any order.
using Grading = Table<Length, Percent>;

/// The rows from the finest sieve to the coarsest.
/// \throws Refused(domain) for no rows at all, a sieve not above 0, above 1 m or twice there, a percentage
/// outside 0 to 100, or one that falls towards a coarser sieve.
[[nodiscard]] Grading from_finest(const Grading& grading);

/// Size that a percentage passes: straight between two sieves in the percentage against the logarithm of the
/// size; on a level stretch its finer end. Common practice.
/// \throws Refused(no_answer) for a percentage that the grading does not reach; Refused(domain) for one
/// outside 0 to 100, and as from_finest.
[[nodiscard]] Length grading_size(const Grading& grading, Percent percent);

/// Percentage that passes a size: straight between two sieves in the percentage against the logarithm of the
/// size; all of it from the coarsest sieve on where that passes 100 %. Common practice; the inverse of
/// grading_size. \throws Refused(domain) for a size not above 0; Refused(no_answer) for a size beyond the
/// sieves of the test, but for one finer than a sieve that nothing passes.
[[nodiscard]] Percent grading_passing(const Grading& grading, Length size);

/// Coefficient of uniformity: Cu = D60/D10. ASTM D2487. \throws Refused as grading_size.
[[nodiscard]] Share grading_uniformity(const Grading& grading);

/// Coefficient of curvature: Cc = D30^2/(D10 D60). ASTM D2487. \throws Refused as grading_size.
[[nodiscard]] Share grading_curvature(const Grading& grading);

}  // namespace undercroft::calc
