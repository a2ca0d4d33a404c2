#include "calc/bed/arch.hpp"
#include "addin/catalogue/bed/entries.hpp"
#include "addin/catalogue/bed/shape.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_bed.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* depth_says = "Depth above the base of the chamber";
constexpr const char* quadrature = "closed form, recomputed by 30-digit quadrature";

Entry& takes_arch(Entry& entry) {
    return entry.takes("shape", "shape", shape_says)
        .takes("span", "B", span_says)
        .within(usual::chamber_span)
        .takes("rise", "H", rise_says)
        .within(usual::chamber_rise);
}

Function width_entry() {
    auto width = function("UC.ARCH.WIDTH", [](calc::Shape shape, Length span, Length rise, Length depth) {
        return calc::arch_width({shape, span, rise}, depth);
    });
    width.says("Inside width of a chamber at a depth above its base")
        .also_called("chord, width at a height, cross-section, chamber, arch")
        .related({"UC.ARCH.AREA", "UC.ARCH.LENGTH"})
        .to_try("UC.ARCH.WIDTH(\"ellipse\"; \"1.07 m\"; \"710 mm\"; \"300 mm\"; \"mm\")")
        .to_try("UC.ARCH.WIDTH(\"ellipse\"; \"41 in\"; \"27 in\"; \"12 in\"; \"in\")")
        .refuses("UC.ARCH.WIDTH(\"ellipse\"; \"1.07 m\"; \"710 mm\"; \"800 mm\")")
        .sketch(Sketch::chamber)
        .equation(
            "ellipse w = B sqrt(1 - (y/H)^2); parabola w = B sqrt(1 - y/H); segment w = 2 sqrt(R^2 - "
            "(y - c)^2), R = (B^2/4 + H^2)/(2 H), c = H - R; circle w = 2 sqrt(y (H - y))")
        .source("elementary geometry");
    return takes_arch(width)
        .takes("depth", "y", depth_says)
        .within(usual::depth_in_chamber)
        .gives("w", "Inside width")
        .example("UC.ARCH.WIDTH(\"circle\"; 2; 2; 0.25)", "1.3228756555323", "1e-12", Origin::mathematics,
                 "chord of a circle of radius 1, 0.25 above its lowest point: sqrt(1.75)")
        .example("UC.ARCH.WIDTH(\"segment\"; \"1.2 m\"; \"450 mm\"; \"200 mm\")", "1", "1e-12",
                 Origin::mathematics, "circle of 0.625 m: chord 0.375 m above its centre");
}

Function arch_area_entry() {
    auto area = function("UC.ARCH.AREA", [](calc::Shape shape, Length span, Length rise, Length depth) {
        return calc::arch_area({shape, span, rise}, depth);
    });
    area.says("Inside area of a chamber's cross-section below a depth")
        .also_called("flow area, section area, cross-sectional area, chamber volume per length")
        .related({"UC.ARCH.WIDTH", "UC.BED.VOLUME"})
        .to_try("UC.ARCH.AREA(\"ellipse\"; \"1.07 m\"; \"710 mm\"; \"710 mm\")")
        .to_try("UC.ARCH.AREA(\"parabola\"; \"41 in\"; \"27 in\"; \"27 in\"; \"ft2\")")
        .refuses("UC.ARCH.AREA(\"dome\"; \"1.07 m\"; \"710 mm\"; \"710 mm\")")
        .sketch(Sketch::chamber)
        .equation("A = integral of w dy from 0 to y, in closed form")
        .source("elementary geometry");
    return takes_arch(area)
        .takes("depth", "y", depth_says)
        .within(usual::depth_in_chamber)
        .gives("A", "Inside area")
        .example("UC.ARCH.AREA(\"circle\"; 2; 2; 0.5)", "0.61418484930438", "1e-12", Origin::mathematics,
                 "segment of a circle: acos(0.5) - 0.5 sqrt(0.75)")
        .example("UC.ARCH.AREA(\"ellipse\"; \"1.2 m\"; \"750 mm\"; \"300 mm\")", "0.35015530574878", "1e-12",
                 Origin::mathematics, quadrature)
        .example("UC.ARCH.AREA(\"parabola\"; \"1.2 m\"; \"750 mm\"; \"450 mm\")", "0.44821067231192", "1e-12",
                 Origin::mathematics, "2/3 B H (1 - (1 - y/H)^1.5)")
        .example("UC.ARCH.AREA(\"segment\"; \"1.2 m\"; \"450 mm\"; \"300 mm\")", "0.31432052375355", "1e-12",
                 Origin::mathematics, quadrature);
}

Function length_entry() {
    auto length = function("UC.ARCH.LENGTH", [](calc::Shape shape, Length span, Length rise) {
        return calc::arch_length({shape, span, rise});
    });
    length
        .says("Length along the arch from foot to foot; of a rectangle walls and top, of a circle all round")
        .also_called("perimeter, developed length, girth, arc length")
        .related({"UC.ARCH.WIDTH", "UC.ARCH.AREA", "UC.WRAP.AREA"})
        .to_try("UC.ARCH.LENGTH(\"ellipse\"; \"1.07 m\"; \"710 mm\")")
        .to_try("UC.ARCH.LENGTH(\"ellipse\"; \"41 in\"; \"27 in\"; \"in\")")
        .sketch(Sketch::chamber)
        .equation(
            "ellipse s = 2 a E(e); parabola s = B/2 (sqrt(1 + k^2) + asinh(k)/k), k = 4 H/B; "
            "segment s = 2 R theta")
        .source("elementary geometry; E is the complete elliptic integral of the second kind (Boost.Math)");
    return takes_arch(length)
        .gives("s", "Length along the arch")
        .example("UC.ARCH.LENGTH(\"circle\"; 2; 2)", "6.2831853071796", "1e-12", Origin::mathematics, "2 pi")
        .example("UC.ARCH.LENGTH(\"ellipse\"; \"1.2 m\"; \"750 mm\")", "2.1271250916731", "1e-11",
                 Origin::mathematics, "arc by 30-digit quadrature");
}

}  // namespace

std::vector<Function> arch_functions() {
    return {width_entry(), arch_area_entry(), length_entry()};
}

}  // namespace undercroft::addin
