/// \file shape.hpp
/// How the cross-section of a chamber is spelled in a cell.
#pragma once

#include "addin/catalogue/choice.hpp"
#include "calc/bed/arch.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::Shape> {
    static constexpr std::string_view kind = "a shape";
    static constexpr Choice<calc::Shape> list[] = {
        {"ellipse", calc::Shape::ellipse}, {"parabola", calc::Shape::parabola},
        {"segment", calc::Shape::segment}, {"rectangle", calc::Shape::rectangle},
        {"circle", calc::Shape::circle},
    };
};

inline constexpr const char* shape_says =
    "Cross-section: ellipse (half, flat side down), parabola, segment (of a circle), rectangle or circle";
inline constexpr const char* span_says = "Inside width of the chamber at its base; of a circle its diameter";
inline constexpr const char* rise_says = "Inside height of the chamber; of a circle its diameter";

}  // namespace undercroft::addin
