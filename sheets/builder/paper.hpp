/// \file paper.hpp
/// The paper on which a picture is drawn to scale.
#pragma once

namespace undercroft::sheets {

/// Its edges in millimetres, the same scale both ways.
struct Paper {
    double x_from = 0;
    double x_to = 0;
    double y_from = 0;
    double y_to = 0;
};

}  // namespace undercroft::sheets
