#include "calc/water/published_rain.hpp"
#include "addin/catalogue/entry.hpp"
#include "addin/catalogue/usual_water.hpp"
#include "addin/catalogue/water/entries.hpp"
#include "addin/catalogue/water/local_rain.hpp"
#include "addin/catalogue/water/published_slot.hpp"
#include "calc/water/frequency_factor.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* atlas =
    "NOAA Atlas 14, Volume 9 Version 2, point precipitation frequency estimates, 26.6 -81.9 (read)";
constexpr const char* bureau =
    "Bureau of Meteorology (Australia), IFD design rainfall depths as downloaded (read)";
constexpr const char* frequency_says =
    "Frequency as text: 10 years, 10 % AEP, 1 in 10, 0.5EY; or a number and beside it years or %. A bare "
    "number says not "
    "what it counts";
constexpr const char* poisson =
    "T = -1/ln(1 - p), Poisson's law of independent storms; Australian Rainfall and Runoff (2019), Book 1, "
    "ch. 2 (from "
    "memory)";

Entry& takes_table(Entry& entry) {
    return entry.takes("rain table", "table",
                       "The agency's table as pasted: durations down (5-min, 2-hr, 24 h, 2-day), frequencies "
                       "across; what stands above and "
                       "below is passed over, of several blocks the first counts");
}
Entry& takes_frequency(Entry& entry) {
    return entry.takes("frequency", "T", frequency_says);
}

Function rain_pick_entry() {
    auto pick = function("UC.RAIN.PICK",
                         [](calc::PublishedTable rain, calc::Frequency frequency, Unit values, Share factor) {
                             return calc::published_rain(rain, frequency, values, factor);
                         });
    pick.says(
            "Duration and mean intensity of one frequency from a table of rain as its agency publishes it, "
            "times a climate "
            "factor")
        .related({"UC.RAIN.FREQUENCIES", "UC.RAIN.INTENSITY", "UC.RAIN.DEPTH", "UC.STORAGE.REQUIRED",
                  "UC.ROUTE.GOVERNING"})
        .also_called(
            "design rainfall table, intensity-duration-frequency table, IDF, climate change allowance, "
            "uplift for climate")
        .equation("i = f P/t_d of depths, f i of intensities")
        .source(
            "layouts of NOAA Atlas 14 point precipitation frequency estimates and of the Bureau of "
            "Meteorology "
            "(Australia) IFD design rainfall, both read as downloaded")
        .caution(
            "10 years is not 10 % in a year (9.49 years): a frequency is matched as what it is. Depths and "
            "intensities are "
            "told apart by the unit alone: check one row against the page");
    takes_frequency(takes_table(pick));
    return pick
        .takes("values", "unit",
               "Unit of the values: a length of depths (mm, in), a speed of intensities (mm/h, in/h)")
        .takes("factor", "f", "Climate factor on the rain of that frequency", 1.0)
        .within(usual::climate_factor)
        .gives_columns("Rain", {{"duration", "t_d"}, {"intensity", "i"}})
        .example("INDEX(UC.RAIN.PICK(atlas_14; \"100 years\"; \"in\"; 1; \"min;in/h\"); 6; 2)", "4.38",
                 "1e-9 rel", Origin::published, atlas)
        .example("INDEX(UC.RAIN.PICK(atlas_14; \"10 years\"; \"in\"; 1.2; \"h;in/h\"); 7; 2)", "2.34",
                 "1e-9 rel", Origin::published, "the same table: 3.90 in of 2 h, times 1.2")
        .example("INDEX(UC.RAIN.PICK(ifd; \"10 % AEP\"; \"mm\"; 1; \"min;mm/h\"); 3; 2)", "60.7333333333",
                 "1e-9 rel", Origin::published, bureau);
}

Function frequencies_entry() {
    auto list = function("UC.RAIN.FREQUENCIES", [](calc::PublishedTable rain) {
        ResultRows rows;
        for (const calc::Frequency& frequency : calc::published_frequencies(rain))
            rows.push_back({calc::text_of(frequency), calc::years_between(frequency)});
        return rows;
    });
    list.says(
            "The frequencies that such a table has, in the order of its columns, and how many years lie "
            "between two")
        .related({"UC.RAIN.PICK", "UC.FREQUENCY.YEARS", "UC.FREQUENCY.FACTOR"})
        .also_called(
            "return periods of a table, recurrence intervals, annual exceedance probabilities, AEP, EY")
        .equation("T, or -1/ln(1 - p)")
        .source(poisson);
    return takes_table(list)
        .example("INDEX(UC.RAIN.FREQUENCIES(ifd); 2; 2)", "1.44", "0.005", Origin::published,
                 "Bureau of Meteorology (Australia): 50 % AEP is 1.44 years (read)")
        .example("INDEX(UC.RAIN.FREQUENCIES(atlas_14); 4; 2)", "100", "1e-9 rel", Origin::published, atlas);
}

Function frequency_years_entry() {
    auto years = function("UC.FREQUENCY.YEARS",
                          [](calc::Frequency frequency) { return share(calc::years_between(frequency)); });
    years.says("Mean years between two storms of a frequency")
        .related({"UC.RAIN.FREQUENCIES", "UC.FREQUENCY.COEFFICIENT", "UC.RAIN.PICK"})
        .also_called(
            "return period, recurrence interval, average recurrence interval, ARI, annual exceedance "
            "probability, AEP, exceedances per year, EY")
        .equation("T = -1/ln(1 - p)")
        .source(poisson);
    return takes_frequency(years)
        .gives("T", "Years")
        .examples("UC.FREQUENCY.YEARS(\"{} AEP\")", "0.005", Origin::published,
                  "Bureau of Meteorology (Australia): 50 % AEP is 1.44, 20 % 4.48, 10 % 9.49 years (read)",
                  {{"50 %", "1.44"}, {"20 %", "4.48"}, {"10 %", "9.49"}})
        .example("UC.FREQUENCY.YEARS(\"10 years\")", "10", "exact", Origin::mathematics, "as it is written");
}

Function frequency_factor_entry() {
    auto factor = function("UC.FREQUENCY.FACTOR", &calc::frequency_factor);
    factor.says("Factor on the runoff coefficient for rare storms, which fall on a soaked catchment")
        .related({"UC.FREQUENCY.COEFFICIENT", "UC.FREQUENCY.YEARS", "UC.RUNOFF.COEFFICIENT"})
        .also_called(
            "frequency adjustment of the runoff coefficient, storm frequency factor, Cf, antecedent wetness")
        .equation("1.00 below 25 years, 1.10, 1.20, 1.25 at 25, 50, 100 years, straight between")
        .source("FHWA HEC-22, 3rd ed. (2009), sec. 3.2.2")
        .caution("The page itself adds that FHWA does not endorse it: the local authority says");
    return takes_frequency(factor)
        .gives("C_f", "Frequency factor")
        .examples("UC.FREQUENCY.FACTOR(\"{} years\")", "1e-9", Origin::published,
                  "FHWA HEC-22, 3rd ed. (2009), p. 3-8",
                  {{"10", "1"}, {"25", "1.1"}, {"50", "1.2"}, {"100", "1.25"}});
}

Function frequency_coefficient_entry() {
    auto coefficient = function("UC.FREQUENCY.COEFFICIENT", &calc::frequency_coefficient);
    coefficient.says("Runoff coefficient with that factor, at most 1")
        .related({"UC.FREQUENCY.FACTOR", "UC.RUNOFF.COEFFICIENT", "UC.RUNOFF.PEAK"})
        .also_called("adjusted runoff coefficient, C times Cf, coefficient for the 100-year storm")
        .equation("min(1, C C_f)")
        .source("FHWA HEC-22, 3rd ed. (2009), sec. 3.2.2; at most 1 from memory")
        .caution("The page itself adds that FHWA does not endorse it: the local authority says")
        .takes("coefficient", "C", "Runoff coefficient")
        .within(usual::runoff_coefficient);
    return takes_frequency(coefficient)
        .gives("C C_f", "Runoff coefficient")
        .example("UC.FREQUENCY.COEFFICIENT(0.6; \"50 years\")", "0.72", "1e-9", Origin::mathematics,
                 "0.6 x 1.2")
        .example("UC.FREQUENCY.COEFFICIENT(0.9; \"100 years\")", "1", "1e-9", Origin::mathematics,
                 "0.9 x 1.25, at most 1");
}

}  // namespace

std::vector<Function> published_rain_functions() {
    return {rain_pick_entry(), frequencies_entry(), frequency_years_entry(), frequency_factor_entry(),
            frequency_coefficient_entry()};
}

}  // namespace undercroft::addin
