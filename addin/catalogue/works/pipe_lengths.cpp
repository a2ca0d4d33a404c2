#include "calc/works/pipe_lengths.hpp"

#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_works.hpp"
#include "addin/catalogue/works/entries.hpp"
#include "calc/require.hpp"

namespace undercroft::addin {

std::vector<Function> pipe_length_functions() {
    return {
        function("UC.RISER.LENGTH",
                 [](Length surface_level, Length crown_level, Length recess, Length socket) {
                     const Length length = calc::riser_length(surface_level, crown_level, recess, socket);
                     calc::require(length <= 30.0 * metre, "a riser of ", calc::amount(length), " from the ",
                                   calc::shown("crown level", crown_level), " to the ",
                                   calc::shown("surface level", surface_level),
                                   " is longer than any: are both levels in one unit?");
                     return length;
                 })
            .says("Length of the riser of a port: from the crown that it stands on to the finished surface, "
                  "less "
                  "what cover and frame take, with what it enters the socket below")
            .related({"UC.PIPE.LENGTHS", "UC.BED.PORTS", "UC.COVER.LEAST"})
            .also_called(
                "inspection pipe length, extension pipe, port riser, standpipe height, cover and frame")
            .equation("l = FL - crown - recess + socket")
            .source("geometry")
            .example("UC.RISER.LENGTH(\"101.25 m\"; \"99.8 m\"; \"0.15 m\"; \"0.05 m\")", "1.35", "1e-9 rel",
                     Origin::mathematics, "1.45 m less 0.15 m and 0.05 m more")
            .example("UC.RISER.LENGTH(\"335 ft\"; \"331.5 ft\"; \"6 in\"; ; \"ft\")", "3", "1e-9 rel",
                     Origin::mathematics, "3 ft 6 in less 6 in")
            .takes("surface level", "FL", "Level of the finished surface")
            .within(usual::level)
            .takes("crown level", "crown", "Level that the riser stands on")
            .within(usual::level)
            .takes("recess", "recess", "What cover and frame take below the surface", 0.0)
            .within(usual::recess)
            .takes("socket", "socket", "Length inside the socket below", 0.0)
            .within(usual::recess)
            .gives("l", "Length of the riser"),
        function("UC.PIPE.LENGTHS", &calc::stock_lengths)
            .says("Whole stock lengths of pipe to buy for pieces of one length; pieces longer than the stock "
                  "are "
                  "joined")
            .related({"UC.RISER.LENGTH", "UC.ORDER", "UC.BED.PORTS"})
            .also_called("stock lengths, cutting list of pipe, number of pipes, sticks of pipe")
            .equation("N = ceil(n/floor(L/l))")
            .source("common practice; the saw's cut is neglected")
            .example("UC.PIPE.LENGTHS(32; \"1.07 m\"; \"6 m\")", "7", "exact", Origin::mathematics,
                     "five from each length")
            .example("UC.PIPE.LENGTHS(28; \"4 ft\"; \"20 ft\")", "6", "exact", Origin::mathematics,
                     "five from each length, to the last inch")
            .takes("pieces", "n", "Pieces of that length")
            .within(usual::pieces)
            .takes("piece", "l", "Length of a piece")
            .within(usual::piece_length)
            .takes("stock", "L", "Length in which the pipe is sold")
            .within(usual::stock_length)
            .gives("N", "Lengths to buy"),
    };
}

}  // namespace undercroft::addin
