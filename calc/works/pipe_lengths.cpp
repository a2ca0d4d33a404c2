#include "calc/works/pipe_lengths.hpp"

#include "calc/require.hpp"

namespace undercroft::calc {

Length riser_length(Length surface_level, Length crown_level, Length recess, Length socket) {
    require_not_negative("recess", recess);
    require_not_negative("socket", socket);
    const Length length = surface_level - crown_level - recess + socket;
    require(length > zero, "the riser from the ", shown("crown level", crown_level), " to the ",
            shown("surface level", surface_level), " must be longer than 0, but is ", amount(length));
    return length;
}

Count stock_lengths(Count pieces, Length piece, Length stock) {
    const double n = require_whole("pieces", pieces);
    require_positive("piece", piece);
    require_positive("stock", stock);
    const double whole = whole_down(piece / stock);
    require(n * (whole + 1) <= 1e6, "more than a million lengths: check the units of piece and stock");
    const Length rest = piece - whole * stock;
    const bool has_rest = rest > stock * whole_tolerance;
    const double of_rests = has_rest ? whole_up(n / whole_down(stock / rest)) : 0;
    return count(n * whole + of_rests);
}

}  // namespace undercroft::calc
