#include "calc/ground/grading.hpp"

#include "addin/catalogue/choice.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/ground/entries.hpp"
#include "addin/catalogue/usual_ground.hpp"
#include "calc/ground/stone_sizes.hpp"

namespace undercroft::addin {

template <>
struct Choices<calc::StoneSize> {
    static constexpr std::string_view kind = "a size number";
    static constexpr Choice<calc::StoneSize> list[] = {
        {"No. 3|No 3|#3", calc::StoneSize::no_3},     {"No. 357|No 357|#357", calc::StoneSize::no_357},
        {"No. 4|No 4|#4", calc::StoneSize::no_4},     {"No. 467|No 467|#467", calc::StoneSize::no_467},
        {"No. 5|No 5|#5", calc::StoneSize::no_5},     {"No. 56|No 56|#56", calc::StoneSize::no_56},
        {"No. 57|No 57|#57", calc::StoneSize::no_57}, {"No. 67|No 67|#67", calc::StoneSize::no_67},
    };
};

namespace {

using GradingRows = std::vector<std::tuple<Length, calc::Percent>>;
using EnvelopeRows = std::vector<std::tuple<Length, calc::Percent, calc::Percent>>;

Entry& takes_grading(Entry& entry) {
    return entry
        .takes("grading", "d, p", "Two columns: sieve size, percentage passing; the first row says mm and %")
        .within({usual::sieve, usual::passing});
}

Function grading_size_entry() {
    auto size = function("UC.GRADING.SIZE", [](GradingRows grading, calc::Percent percent) {
        return calc::grading_size(grading, percent);
    });
    size.says("Size that a percentage of a grading passes, such as D10 or D85")
        .also_called("sieve analysis, D10, D50, D60, D85, particle size distribution, PSD")
        .related({"UC.GRADING.UNIFORMITY", "UC.GRADING.FITS", "UC.FABRIC.OPENING"})
        .to_try("UC.GRADING.SIZE({\"mm\";\"%\"|63;100|50;95|37.5;52|25;8|12.5;2}; 60; \"mm\")")
        .to_try("UC.GRADING.SIZE({\"in\";\"%\"|2.5;100|2;95|1.5;52|1;8|0.5;2}; 10; \"in\")")
        .refuses("UC.GRADING.SIZE({63;100|50;95|25;8}; 60)")
        .equation("log d straight against p between two sieves")
        .source("common practice (grading plotted on a logarithmic axis of size)")
        .example("UC.GRADING.SIZE({\"mm\";\"%\"|1;0|100;100}; 50; \"mm\")", "10", "1e-12 rel",
                 Origin::mathematics, "half-way on a logarithmic axis")
        .example("UC.GRADING.SIZE({\"in\";\"%\"|2;95|1.5;52|1;8}; 60; \"in\")", "1.582471", "5e-7",
                 Origin::mathematics, "1.5 (2/1.5)^((60 - 52)/(95 - 52))");
    takes_grading(size)
        .takes("percent", "p", "Percentage passing, such as 85")
        .within(usual::passing_wanted)
        .gives("D", "Size");
    return size;
}

Function passing_entry() {
    auto passing = function("UC.GRADING.PASSING", [](GradingRows grading, Length size) {
        return calc::grading_passing(grading, size);
    });
    passing.says("Percentage of a grading that passes a size: the inverse of UC.GRADING.SIZE")
        .related({"UC.GRADING.SIZE", "UC.GRADING.FITS", "UC.SOIL.GROUP", "UC.FABRIC.AOS"})
        .also_called("sieve analysis, percent finer, particle size distribution, gradation, PSD")
        .equation("p straight against log d between two sieves")
        .source("common practice (grading plotted on a logarithmic axis of size)")
        .example("UC.GRADING.PASSING({\"mm\";\"%\"|1;0|100;100}; \"10 mm\")", "50", "1e-9 rel",
                 Origin::mathematics, "half-way on a logarithmic axis")
        .example("UC.GRADING.PASSING({\"in\";\"%\"|2;95|1.5;52|1;8}; \"1.582471 in\")", "60", "1e-4",
                 Origin::mathematics, "the inverse of the second example of UC.GRADING.SIZE")
        .caution("Beyond the sieves of the test nothing is known: refused");
    takes_grading(passing).takes("size", "d", "Size").within(usual::sieve).gives("p", "Percentage passing");
    return passing;
}

Function uniformity_entry() {
    auto uniformity = function("UC.GRADING.UNIFORMITY",
                               [](GradingRows grading) { return calc::grading_uniformity(grading); });
    uniformity.says("Coefficient of uniformity of a grading")
        .also_called("coefficient of uniformity, Cu, well graded, uniformly graded")
        .related({"UC.GRADING.CURVATURE", "UC.GRADING.SIZE", "UC.FABRIC.FACTOR"})
        .to_try("UC.GRADING.UNIFORMITY({\"mm\";\"%\"|63;100|50;95|37.5;52|25;8|12.5;2})")
        .to_try("UC.GRADING.UNIFORMITY({\"in\";\"%\"|2.5;100|2;95|1.5;52|1;8|0.5;2})")
        .equation("Cu = D60/D10")
        .source("ASTM D2487")
        .example("UC.GRADING.UNIFORMITY({\"mm\";\"%\"|0.11;10|0.25;30|0.48;60})", "4.36", "0.005",
                 Origin::published,
                 "Das and Sobhan, Principles of Geotechnical Engineering, 9th ed., Problem 2.1")
        .example("UC.GRADING.UNIFORMITY({\"mm\";\"%\"|0.3;10|0.41;30|0.77;60})", "2.57", "0.005",
                 Origin::published, "Das and Sobhan, Problem 2.2");
    takes_grading(uniformity).gives("Cu", "Coefficient of uniformity");
    return uniformity;
}

Function curvature_entry() {
    auto curvature = function("UC.GRADING.CURVATURE",
                              [](GradingRows grading) { return calc::grading_curvature(grading); });
    curvature.says("Coefficient of curvature of a grading")
        .also_called("coefficient of curvature, Cc, Cz, well graded")
        .related({"UC.GRADING.UNIFORMITY", "UC.GRADING.SIZE"})
        .to_try("UC.GRADING.CURVATURE({\"mm\";\"%\"|63;100|50;95|37.5;52|25;8|12.5;2})")
        .to_try("UC.GRADING.CURVATURE({\"in\";\"%\"|2.5;100|2;95|1.5;52|1;8|0.5;2})")
        .equation("Cc = D30^2/(D10 D60)")
        .source("ASTM D2487")
        .example("UC.GRADING.CURVATURE({\"mm\";\"%\"|0.11;10|0.25;30|0.48;60})", "1.18", "0.005",
                 Origin::published, "Das and Sobhan, Problem 2.1");
    takes_grading(curvature).gives("Cc", "Coefficient of curvature");
    return curvature;
}

Function fits_entry() {
    auto fits = function("UC.GRADING.FITS",
                         [](GradingRows grading, std::variant<calc::StoneSize, EnvelopeRows> envelope) {
                             return calc::grading_fits(grading, envelope);
                         });
    fits.says("Whether a grading lies within an envelope: a published size number, or a table of limits")
        .also_called("No. 57 stone, gradation band, spec limits, ASTM D448, M 43, grading envelope")
        .related({"UC.GRADING.SIZE", "UC.STONE.POROSITY"})
        .to_try("UC.GRADING.FITS({\"mm\";\"%\"|63;100|50;95|37.5;52|25;8|12.5;2}; \"No. 3\")")
        .to_try("UC.GRADING.FITS({\"in\";\"%\"|1.5;100|1;97|0.5;40|0.187;5|0.093;2}; \"No. 57\")")
        .refuses("UC.GRADING.FITS({\"mm\";\"%\"|63;100|50;95|37.5;52|25;8|12.5;2}; \"No. 99\")")
        .equation("least <= passing <= most at each sieve of the envelope")
        .source(
            "AASHTO M 43 / ASTM D448, Table 1 (sizes 57 and 67 as in Iowa DOT IM 209, Appendix D; 3, 357, 4, "
            "467, 5 and 56 from memory); sieves in inches by ASTM E11")
        .example("UC.GRADING.FITS({\"mm\";\"%\"|50;95|25;8}; {\"mm\";\"%\";\"%\"|50;90;100|25;0;15})", "1",
                 "exact", Origin::mathematics, "95 is from 90 to 100, and 8 from 0 to 15")
        .example("UC.GRADING.FITS({\"mm\";\"%\"|37.5;100|25;97|12.5;40|4.75;5|2.36;2}; \"No. 57\")", "1",
                 "exact", Origin::published, "AASHTO M 43, size 57, as in Iowa DOT IM 209, Appendix D")
        .example("UC.GRADING.FITS({\"mm\";\"%\"|37.5;100|25;94|12.5;40|4.75;5|2.36;2}; \"No. 57\")", "0",
                 "exact", Origin::published,
                 "AASHTO M 43, size 57, as in Iowa DOT IM 209, Appendix D: 94 % at 25 mm is less than 95 %")
        .caution(
            "Compare the size with the edition of the standard in the contract. Local codes and a licensed "
            "engineer govern");
    takes_grading(fits)
        .takes(
            "envelope", "envelope",
            "No. 3, No. 357, No. 4, No. 467, No. 5, No. 56, No. 57 or No. 67; or three columns: sieve size, "
            "least and most percentage passing")
        .within({usual::sieve, usual::passing, usual::passing})
        .gives("fits", "Whether it fits");
    return fits;
}

}  // namespace

std::vector<Function> grading_functions() {
    return {grading_size_entry(), passing_entry(), uniformity_entry(), curvature_entry(), fits_entry()};
}

}  // namespace undercroft::addin
