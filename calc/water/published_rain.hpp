/// \file published_rain.hpp
/// Rain as an agency publishes it: durations down, frequencies across, pasted as it is.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "calc/water/frequency.hpp"
#include "calc/water/rain.hpp"
#include "units/unit.hpp"

namespace undercroft::calc {

/// A cell as it was pasted: blank, a number, or text such as "5-min:", "63.2%", "1 in 200".
using PublishedCell = std::variant<std::monostate, double, std::string>;
using PublishedTable = std::vector<std::vector<PublishedCell>>;

/// One column of an agency's table as duration and mean intensity, times a climate factor.
///
/// The data begin at the first row whose first cell is a duration (5-min:, 2-hr, 1.5 hour, 24 h, 2-day; a
/// bare number is in the unit that its heading names, else minutes) and end before the first row that has
/// none: what stands above or below is passed over, and of several blocks the first counts. Frequencies are
/// read in the row above the data: years, %, 1 in N; a bare number is what that row or a row above says,
/// years (ARI, return period) or the chance in a year (AEP), and a fraction there is what a spreadsheet makes
/// of a percentage. Columns that head no frequency are passed over.
///
/// A frequency matches a column of its own kind with the same number, and one of the other only where -1/ln(1
/// - p) is that many years as printed (0.3 %): 1.44 years is 50 %, but 10 years is not 10 %. Layouts: NOAA
/// Atlas 14 point precipitation frequency estimates; Bureau of Meteorology (Australia) IFD design rainfall.
/// \param unit of the values: a length for depths, a speed for intensities.
/// \throws Refused(value) for another unit, a table without durations or frequencies, bare frequencies of no
/// stated kind, a value that is no number; Refused(no_answer) when no column is of that frequency;
/// Refused(domain) for a factor not above 0, depths that fall or intensities that rise with the duration, and
/// as RainCurve.
[[nodiscard]] RainTable published_rain(const PublishedTable& published, const Frequency& frequency,
                                       const Unit& unit, Share factor);

/// The frequencies that the table has, in the order of its columns. \throws Refused(value) as published_rain.
[[nodiscard]] std::vector<Frequency> published_frequencies(const PublishedTable& published);

}  // namespace undercroft::calc
