// The same job of drainage, asked in SI and in US customary units through the catalogue.
#include "tests/addin/desk.hpp"

namespace undercroft::tests {

namespace {

struct Twin {
    std::string si;
    std::string us;
};

// International yard and pound agreement (1959): 1 ft = 0.3048 m, so that each pair is the same to the last
// digit.
const std::string rain_si = R"({"min";"mm/h"|10;101.6|30;50.8|60;25.4|360;7.62})";
const std::string rain_us = R"({"h";"in/h"|0.16666666666666667;4|0.5;2|1;1|6;0.3})";
const std::string storm_si = R"({"min";"mm"|0;0|30;25.4|60;76.2|120;88.9})";
const std::string storm_us = R"({"h";"in"|0;0|0.5;1|1;3|2;3.5})";
const std::string storage_si = R"({"m";"m3"|0;0|0.6096;283.16846592|1.2192;849.50539776})";
const std::string storage_us = R"({"ft";"ft3"|0;0|2;10000|4;30000})";
const std::string rating_si = R"({"m";"m3/s"|0;0|0.3048;0.028316846592|1.2192;0.113267386368})";
const std::string rating_us = R"({"ft";"ft3/s"|0;0|1;1|4;4})";
const std::string inflow_si = R"({"min";"m3/s"|0;0|30;0.28316846592|90;0})";
const std::string inflow_us = R"({"h";"ft3/s"|0;0|0.5;10|1.5;0})";
const std::string outlets_si =
    R"({"orifice";"30.48 mm";"152.4 mm";0.6;1;""|"weir";"914.4 mm";"1.2192 m";"1.84 m^0.5/s";1;2|)"
    R"("notch";"0.762 m";"90 deg";"";2;""|"soakage";"0 m";"92.90304 m2";"25.4 mm/h";1;"12.192 m"})";
const std::string outlets_us =
    R"({"orifice";"0.1 ft";"6 in";0.6;1;""|"weir";"3 ft";"4 ft";"3.33280835761020475 ft^0.5/s";1;2|)"
    R"("notch";"2.5 ft";"100 gon";"";2;""|"soakage";"0 ft";"1000 ft2";"1 in/h";1;"40 ft"})";

const std::vector<Twin>& twins() {
    static const std::vector<Twin> list = {
        {"UC.RAIN.INTENSITY(" + rain_si + "; 45)", "UC.RAIN.INTENSITY(" + rain_us + R"(; "0.75 h"))"},
        {"UC.STORAGE.REQUIRED(" + rain_si + R"(; 0.8; "4046.8564224 m2"; "14.158423296 L/s"))",
         "UC.STORAGE.REQUIRED(" + rain_us + R"(; 0.8; "1 acre"; "0.5 cfs"))"},
        {"UC.STORAGE.REQUIRED(" + rain_si + R"(; 0.8; "4046.8564224 m2"; "14.158423296 L/s"; 12))",
         "UC.STORAGE.REQUIRED(" + rain_us + R"(; 0.8; "1 acre"; "0.5 cfs"; "0.2 h"))"},
        {"INDEX(UC.STORAGE.DURATIONS(" + rain_si + R"(; 0.8; "4046.8564224 m2"; "14.158423296 L/s"); 4; 5))",
         "INDEX(UC.STORAGE.DURATIONS(" + rain_us + R"(; 0.8; "1 acre"; "0.5 cfs"); 4; 5))"},
        {R"(UC.RUNOFF.PEAK(0.6; "50.8 mm/h"; "20234.282112 m2"))",
         R"(UC.RUNOFF.PEAK(0.6; "2 in/h"; "5 acre"))"},
        {R"(UC.RUNOFF.DEPTH(75; "152.4 mm"))", R"(UC.RUNOFF.DEPTH(75; "6 in"))"},
        {R"(UC.TIME.KIRPICH("304.8 m"; "1 %"))", R"(UC.TIME.KIRPICH("1000 ft"; "1V:100H"))"},
        {R"(UC.TIME.SHEET(0.24; "30.48 m"; "91.44 mm"; 0.01))",
         R"(UC.TIME.SHEET(0.24; "100 ft"; "3.6 in"; 0.01))"},
        {R"(INDEX(UC.HYDROGRAPH.RATIONAL(0.6; "4046.8564224 m2"; "50.8 mm/h"; 30; 12; 5); 4; 2))",
         R"(INDEX(UC.HYDROGRAPH.RATIONAL(0.6; "1 acre"; "2 in/h"; "0.5 h"; "0.2 h"; "300 s"); 4; 2))"},
        {"INDEX(UC.HYDROGRAPH.STORM(" + storm_si + R"(; "404685.64224 m2"; 80; 60; 6); 15; 2))",
         "INDEX(UC.HYDROGRAPH.STORM(" + storm_us + R"(; "100 acre"; 80; "1 h"; "0.1 h"); 15; 2))"},
        {R"(UC.ORIFICE.FLOW("152.4 mm"; "1.524 m"))", R"(UC.ORIFICE.FLOW("6 in"; "5 ft"))"},
        {R"(UC.ORIFICE.DIAMETER("28.316846592 L/s"; "1.524 m"))",
         R"(UC.ORIFICE.DIAMETER("1 ft3/s"; "5 ft"))"},
        {R"(UC.WEIR.FLOW("1.2192 m"; "152.4 mm"; ; 2))", R"(UC.WEIR.FLOW("4 ft"; "6 in"; ; 2))"},
        {R"(UC.WEIR.NOTCH("90 deg"; "152.4 mm"))", R"(UC.WEIR.NOTCH("100 gon"; "6 in"))"},
        {R"(UC.PIPE.FLOW("609.6 mm"; 0.01; 0.013; "0.2032 m"))",
         R"(UC.PIPE.FLOW("24 in"; "1 %"; 0.013; "8 in"))"},
        {R"(UC.PIPE.FLOW("609.6 mm"; 0.01; 0.013; "24 in"))", R"(UC.PIPE.FLOW("2 ft"; 0.01; 0.013))"},
        {R"(UC.PIPE.DEPTH("283.16846592 L/s"; "609.6 mm"; 0.01; 0.013))",
         R"(UC.PIPE.DEPTH("10 cfs"; "24 in"; 0.01; 0.013))"},
        {"INDEX(UC.OUTLET.RATING(" + outlets_si + R"(; "1.2192 m"; 8); 12; 2))",
         "INDEX(UC.OUTLET.RATING(" + outlets_us + R"(; "4 ft"; 8); 12; 2))"},
        {"INDEX(UC.ROUTE.POOL(" + inflow_si + "; " + storage_si + "; " + rating_si + "; 5); 10; 5)",
         "INDEX(UC.ROUTE.POOL(" + inflow_us + "; " + storage_us + "; " + rating_us + R"(; "300 s"); 10; 5))"},
        {"INDEX(UC.ROUTE.POOL(" + inflow_si + "; " + storage_si + "; " + rating_si + "); 10; 3)",
         "INDEX(UC.ROUTE.POOL(" + inflow_us + "; " + storage_us + "; " + rating_us + "); 10; 3)"},
        {"UC.DRAIN.TIME(" + storage_si + "; " + rating_si + "; 0.9144)",
         "UC.DRAIN.TIME(" + storage_us + "; " + rating_us + R"(; "3 ft"))"},
        {R"(UC.SOAK.RATE("0.566336931840 m3"; "2.787091200 m2"; 56))",
         R"(UC.SOAK.RATE("20 ft3"; "30 ft2"; "56 min"))"},
        {R"(UC.SOAK.FLOW("92.90304 m2"; "27.870912 m2"; "25.4 mm/h"; 2))",
         R"(UC.SOAK.FLOW("1000 ft2"; "300 ft2"; "1 in/h"; 2))"},
        {"UC.SOAK.DEPTH(" + rain_si + R"(; "929.0304 m2"; "12.192 m"; "6.096 m"; "40 %"; "25.4 mm/h"; 1.5))",
         "UC.SOAK.DEPTH(" + rain_us + R"(; "10000 ft2"; "40 ft"; "20 ft"; 0.4; "1 in/h"; 1.5))"},
        {R"(UC.SOAK.TIME("0.9144 m"; 0.4; "74.322432 m2"; "36.576 m"; "25.4 mm/h"; 1.5))",
         R"(UC.SOAK.TIME("3 ft"; 0.4; "800 ft2"; "120 ft"; "1 in/h"; 1.5))"},
        {R"(UC.SOAK.GREENAMPT("6.35 mm/h"; "165.1 mm"; 0.34; 90))",
         R"(UC.SOAK.GREENAMPT("0.25 in/h"; "6.5 in"; 0.34; "1.5 h"))"},
        {R"(UC.PERMEABILITY.FALLING("0.3870960 cm2"; "203.2 mm"; "10.322560 cm2"; 3; "508 mm"; "304.8 mm"))",
         R"(UC.PERMEABILITY.FALLING("0.06 in2"; "8 in"; "1.6 in2"; "180 s"; "20 in"; "1 ft"))"},
        {R"(UC.PIT.SEEPAGE("30.48 mm/h"; "6.096 m"; "3.048 m"; "60.96 m"; "9.144 m"))",
         R"(UC.PIT.SEEPAGE("0.1 ft/h"; "20 ft"; "10 ft"; "200 ft"; "30 ft"))"},
        {R"(UC.PUMP.TIME("283.16846592 m3"; "28.316846592 L/s"; "2.8316846592 L/s"))",
         R"(UC.PUMP.TIME("10000 ft3"; "1 cfs"; "0.1 cfs"))"},
    };
    return list;
}

}  // namespace

TEST_CASE("the same job in SI and in US customary units gives the same answer to 1e-12") {
    const FormulaDesk desk;
    for (const Twin& twin : twins()) {
        CAPTURE(twin.si, twin.us);
        const double si = desk.number(twin.si);
        CHECK(si != 0);
        CHECK(desk.number(twin.us) == Approx(si).epsilon(1e-12));
    }
}

TEST_CASE("a table of ours goes into the next function as it is, with its units") {
    const FormulaDesk desk;
    const std::string bed =
        R"("20 m"; "10 m"; "0H:1V"; "0.2 m"; "0.2 m"; 0.4; "ellipse"; "1.2 m"; "0.6 m"; "100 m")";
    const std::string outlets = R"({"orifice";"0 m";"100 mm"})";
    const auto routed = [&](const std::string& storage_units, const std::string& rating_units) {
        return "INDEX(UC.ROUTE.POOL(UC.HYDROGRAPH.RATIONAL(0.8; 2000; 60; 20; 10; 5); UC.STAGE.STORAGE(10; " +
               bed + "; " + storage_units + "); UC.OUTLET.RATING(" + outlets + "; \"1 m\"; 20; " +
               rating_units + "); 1); 7; 5)";
    };
    const double in_si = desk.number(routed("", ""));
    CHECK(in_si > 0);
    CHECK(desk.number(routed(R"("ft;ft3;ft3;acre-ft;ft2")", R"("in;cfs")")) == Approx(in_si).epsilon(1e-12));
    // Blank rows below a table of a given height are none of its rows.
    CHECK(desk.number("UC.DRAIN.TIME(UC.STAGE.STORAGE(10; " + bed + "; ; 30); UC.OUTLET.RATING(" + outlets +
                      "; 1; 20; ; 40); 1)") ==
          Approx(desk.number("UC.DRAIN.TIME(UC.STAGE.STORAGE(10; " + bed + "); UC.OUTLET.RATING(" + outlets +
                             "; 1; 20); 1)"))
              .epsilon(1e-14));
}

}  // namespace undercroft::tests
