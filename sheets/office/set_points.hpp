/// \file set_points.hpp
/// The points of the sheet Points, named, for a total station.
#pragma once

#include <string>
#include <vector>

#include "sheets/office/office.hpp"

namespace undercroft::sheets {

/// A point to set out, in the unit of the workbook's tables.
struct NamedPoint {
    std::string name;
    double east = 0;
    double north = 0;
    double level = 0;
};

struct NamedPoints {
    std::string unit;  ///< of all numbers, m or ft
    std::vector<NamedPoint> points;
};

/// Corners of the pit, rows, ports and further points of a workbook of the whole job.
/// \throws std::runtime_error where the workbook has no such points, or one of them shows an error, which is
/// said with the point's name
[[nodiscard]] NamedPoints set_points(const Document& document);

/// `point,east m,north m,level m`, then one point a line, with a decimal point and to the millimetre (of feet
/// to a thousandth). Names hold neither comma nor quote: those of a person become spaces.
[[nodiscard]] std::string points_as_csv(const NamedPoints& points);

}  // namespace undercroft::sheets
