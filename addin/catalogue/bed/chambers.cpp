#include "addin/catalogue/catalogue.hpp"
#include "addin/catalogue/choices.hpp"
#include "addin/catalogue/entry.hpp"
#include "calc/bed/arch.hpp"
#include "calc/bed/bed.hpp"

namespace undercroft::addin {

namespace {
constexpr const char* shape_says =
    "Cross-section: ellipse (half, flat side down), parabola, segment (of a circle), rectangle or circle";
constexpr const char* span_says = "Inside width of the chamber at its base; of a circle its diameter";
constexpr const char* rise_says = "Inside height of the chamber; of a circle its diameter";
constexpr const char* end_says = "Laid length of an end unit, with its end wall";
constexpr const char* middle_says = "Laid length of a middle unit";
constexpr const char* overlap_says = "Length by which joined units overlap";
}  // namespace

Group chamber_functions() {
    return {
        "Chamber, row and bed",
        {
            function("UC.ARCH.WIDTH",
                     [](calc::Shape shape, Length span, Length rise, Length depth) {
                         return calc::arch_width({shape, span, rise}, depth);
                     })
                .says("Inside width of a chamber at a depth above its base")
                .equation(
                    "ellipse w = B sqrt(1 - (y/H)^2); parabola w = B sqrt(1 - y/H); segment w = 2 sqrt(R^2 - "
                    "(y - c)^2), R = (B^2/4 + H^2)/(2 H), c = H - R; circle w = 2 sqrt(y (H - y))")
                .source("elementary geometry")
                .example("UC.ARCH.WIDTH(\"circle\"; 2; 2; 0.25)", "1.3228756555323", "1e-12",
                         Origin::mathematics, "shared checks, water 10a")
                .example("UC.ARCH.WIDTH(\"segment\"; \"1.2 m\"; \"450 mm\"; \"200 mm\")", "1", "1e-12",
                         Origin::mathematics, "shared checks, water 10d")
                .takes("shape", "shape", shape_says)
                .takes("span", "B", span_says)
                .takes("rise", "H", rise_says)
                .takes("depth", "y", "Depth above the base of the chamber")
                .gives("w", "Inside width"),
            function("UC.ARCH.AREA",
                     [](calc::Shape shape, Length span, Length rise, Length depth) {
                         return calc::arch_area({shape, span, rise}, depth);
                     })
                .says("Inside area of a chamber's cross-section below a depth")
                .equation("A = integral of w dy from 0 to y, in closed form")
                .source("elementary geometry")
                .example("UC.ARCH.AREA(\"circle\"; 2; 2; 0.5)", "0.61418484930438", "1e-12",
                         Origin::mathematics, "shared checks, water 10a: circular segment")
                .example("UC.ARCH.AREA(\"ellipse\"; \"1.2 m\"; \"750 mm\"; \"300 mm\")", "0.35015530574878",
                         "1e-12", Origin::mathematics, "shared checks, water 10b: upright half ellipse")
                .example("UC.ARCH.AREA(\"parabola\"; \"1.2 m\"; \"750 mm\"; \"450 mm\")", "0.44821067231192",
                         "1e-12", Origin::mathematics, "shared checks, water 10c")
                .example("UC.ARCH.AREA(\"segment\"; \"1.2 m\"; \"450 mm\"; \"300 mm\")", "0.31432052375355",
                         "1e-12", Origin::mathematics, "shared checks, water 10d")
                .takes("shape", "shape", shape_says)
                .takes("span", "B", span_says)
                .takes("rise", "H", rise_says)
                .takes("depth", "y", "Depth above the base of the chamber")
                .gives("A", "Inside area"),
            function("UC.ARCH.LENGTH",
                     [](calc::Shape shape, Length span, Length rise) {
                         return calc::arch_length({shape, span, rise});
                     })
                .says("Length along the arch from foot to foot; of a rectangle walls and top, of a circle "
                      "all round")
                .equation("ellipse s = 2 a E(e); parabola s = B/2 (sqrt(1 + k^2) + asinh(k)/k), k = 4 H/B; "
                          "segment s = 2 R theta")
                .source("elementary geometry; E is the complete elliptic integral of the second kind "
                        "(Boost.Math)")
                .example("UC.ARCH.LENGTH(\"circle\"; 2; 2)", "6.2831853071796", "1e-12", Origin::mathematics,
                         "shared checks, water 10a")
                .example("UC.ARCH.LENGTH(\"ellipse\"; \"1.2 m\"; \"750 mm\")", "2.1271250916731", "1e-11",
                         Origin::mathematics, "shared checks, water 10b: wall arc by quadrature")
                .takes("shape", "shape", shape_says)
                .takes("span", "B", span_says)
                .takes("rise", "H", rise_says)
                .gives("s", "Length along the arch"),
            function("UC.ROW.UNITS", &calc::row_units)
                .says(
                    "Units that fit in a row; the two end units carry the end walls; 0 when not even two fit")
                .equation("n = 2 + floor((A - 2 E + o)/(M - o))")
                .source("common practice")
                .example("UC.ROW.UNITS(\"30 m\"; \"2.4 m\"; \"2.3 m\"; \"100 mm\")", "13", "exact",
                         Origin::common_practice, "two ends of 2.4 m, then 25.3 m for units of 2.2 m net")
                .takes("available length", "A", "Length that the row may take")
                .takes("end unit", "E", end_says)
                .takes("middle unit", "M", middle_says)
                .takes("joint overlap", "o", overlap_says)
                .gives("n", "Units in the row, end units included"),
            function("UC.ROW.LENGTH", &calc::row_length)
                .says("Installed length of a row of units")
                .equation("l = 2 E + (n - 2) M - (n - 1) o")
                .source("common practice")
                .example("UC.ROW.LENGTH(13; \"2.4 m\"; \"2.3 m\"; \"100 mm\")", "28.9", "1e-12 rel",
                         Origin::common_practice, "4.8 m + 11 x 2.3 m - 12 x 0.1 m")
                .takes("units", "n", "Units in the row, end units included; at least 2")
                .takes("end unit", "E", end_says)
                .takes("middle unit", "M", middle_says)
                .takes("joint overlap", "o", overlap_says)
                .gives("l", "Length of the row"),
            function("UC.BED.ROWS", &calc::bed_rows)
                .says("Rows that fit side by side")
                .equation("r = floor((A - 2 m + g)/(B + g))")
                .source("common practice")
                .example("UC.BED.ROWS(\"12 m\"; \"1.3 m\"; \"150 mm\"; \"305 mm\")", "7", "exact",
                         Origin::common_practice,
                         "7 x 1.3 m + 6 x 0.15 m + 2 x 0.305 m = 10.61 m; an eighth row needs 12.06 m")
                .takes("available width", "A", "Width that the bed may take")
                .takes("span", "B", "Width of a chamber at its feet")
                .takes("row gap", "g", "Clear width of stone between rows")
                .takes("side margin", "m", "Stone beyond the outer rows, each side")
                .gives("r", "Rows"),
            function("UC.BED.WIDTH", &calc::bed_width)
                .says("Width of the bed for a number of rows")
                .equation("W = r B + (r - 1) g + 2 m")
                .source("common practice")
                .example("UC.BED.WIDTH(7; \"1.3 m\"; \"150 mm\"; \"305 mm\")", "10.61", "1e-12 rel",
                         Origin::common_practice, "as the row above")
                .takes("rows", "r", "Rows of chambers")
                .takes("span", "B", "Width of a chamber at its feet")
                .takes("row gap", "g", "Clear width of stone between rows")
                .takes("side margin", "m", "Stone beyond the outer rows, each side")
                .gives("W", "Width of the bed at its base"),
            function("UC.BED.LENGTH", &calc::bed_length)
                .says("Length of the bed for a length of row")
                .equation("L = l + 2 e")
                .source("common practice")
                .example("UC.BED.LENGTH(\"28.9 m\"; \"305 mm\")", "29.51", "1e-12 rel",
                         Origin::common_practice, "a margin at each end")
                .takes("row length", "l", "Installed length of a row")
                .takes("end margin", "e", "Stone beyond the ends of the rows, each end")
                .gives("L", "Length of the bed at its base"),
            function("UC.BED.PORTS", &calc::bed_ports)
                .says("Inspection ports: at both ends of each row and, with an interval, at most that many "
                      "units apart")
                .equation("p = r (ceil((n - 1)/k) + 1); k = 0: two a row")
                .source("common practice")
                .example("UC.BED.PORTS(7; 13)", "14", "exact", Origin::common_practice,
                         "one at each end of a row")
                .example("UC.BED.PORTS(7; 13; 4)", "28", "exact", Origin::common_practice,
                         "units 1, 5, 9 and 13 of each row")
                .takes("rows", "r", "Rows of chambers")
                .takes("units", "n", "Units in a row")
                .takes("interval", "k", "Units from port to port; 0 for one at each end of a row", 0.0)
                .gives("p", "Inspection ports"),
        }};
}

}  // namespace undercroft::addin
