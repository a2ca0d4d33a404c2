// The one table of units. Each row is checked in the tests against GNU units and, where it knows the
// unit, against UDUNITS-2; a new row is checked without a new test.
#include <numbers>

#include "units/unit.hpp"

namespace undercroft {

namespace {

constexpr Dimension power(Base base, int exponent) {
    return Dimension::of(base, exponent);
}

const Dimension number_dimension{};
const Dimension length = power(Base::length, 1);
const Dimension area = power(Base::length, 2);
const Dimension volume = power(Base::length, 3);
const Dimension mass = power(Base::mass, 1);
const Dimension time_ = power(Base::time, 1);
const Dimension angle = power(Base::angle, 1);
const Dimension speed = dimension_of<Speed>();
const Dimension flow = dimension_of<Flow>();
const Dimension force = dimension_of<Force>();
const Dimension line_load = dimension_of<LineLoad>();
const Dimension pressure = dimension_of<Pressure>();
const Dimension mass_per_area = dimension_of<MassPerArea>();
const Dimension count_of_things = power(Base::count, 1);

constexpr bool si_symbol = true;  // case matters: mm is not Mm
constexpr bool any_case = false;  // FT, ft and Ft are the same
constexpr bool customary = true;

constexpr std::string_view si = "SI Brochure, 9th ed. (2019)";
constexpr std::string_view accepted = "SI Brochure, 9th ed. (2019), table 8";
constexpr std::string_view yard = "International yard and pound agreement (1959): 1 yd = 0.9144 m";
constexpr std::string_view pound = "International yard and pound agreement (1959): 1 lb = 0.45359237 kg";
constexpr std::string_view handbook = "NIST Handbook 44 (2023), appendix C";
constexpr std::string_view weights_act = "Weights and Measures Act 1985 (UK), schedule 1";
constexpr std::string_view pound_force = "NIST SP 811 (2008), appendix B: lb times 9.80665 m/s2";

// Exact numbers from which the customary units are built.
constexpr double lb = 45359237, lb_per = 1e8;                 // kg
constexpr double lbf = 45359237.0 * 980665, lbf_per = 1e13;   // N
constexpr double ft = 3048, ft_per = 1e4;                     // m
constexpr double in2 = 254.0 * 254, in2_per = 1e8;            // m2
constexpr double ft2 = 3048.0 * 3048, ft2_per = 1e8;          // m2
constexpr double ft3 = 3048.0 * 3048 * 3048, ft3_per = 1e12;  // m3
constexpr double acre = 40468564224, acre_per = 1e7;          // m2
constexpr double us_gal = 3785411784, us_gal_per = 1e12;      // m3
constexpr double imp_gal = 454609, imp_gal_per = 1e8;         // m3
constexpr double pi = std::numbers::pi;

}  // namespace

const std::vector<UnitRow>& unit_table() {
    // clang-format off
    static const std::vector<UnitRow> table = {
        // length
        {"m", "metre|metres|meter|meters", {1, 1}, length, si_symbol, "m", si},
        {"km", "kilometre|kilometres|kilometer|kilometers", {1e3, 1}, length, si_symbol, "km", si},
        {"dm", "decimetre|decimetres|decimeter|decimeters", {1, 10}, length, si_symbol, "dm", si},
        {"cm", "centimetre|centimetres|centimeter|centimeters", {1, 100}, length, si_symbol, "cm", si},
        {"mm", "millimetre|millimetres|millimeter|millimeters", {1, 1e3}, length, si_symbol, "mm", si},
        {"µm", "um|micrometre|micrometres|micrometer|micrometers|micron|microns", {1, 1e6}, length, si_symbol, "um", si},
        {"in", "inch|inches|″", {254, 1e4}, length, any_case, "in", yard, customary},
        {"ft", "foot|feet|′|lf|lin ft|linear ft|linear foot|linear feet", {ft, ft_per}, length, any_case, "ft", yard, customary},
        {"yd", "yard|yards", {9144, 1e4}, length, any_case, "yd", yard, customary},
        {"mi", "mile|miles", {1609344, 1e3}, length, any_case, "mile", yard, customary},
        {"mil", "mils|thou", {254, 1e7}, length, any_case, "mil", handbook, customary},
        {"US survey ft", "US survey foot|US survey feet|survey ft|survey foot|survey feet", {1200, 3937}, length, any_case, "surveyfoot", handbook, customary},
        // area
        {"ha", "hectare|hectares", {1e4, 1}, area, si_symbol, "hectare", accepted},
        {"acre", "acres|ac", {acre, acre_per}, area, any_case, "acre", "43560 international square feet", customary},
        {"sf", "sq ft|sqft", {ft2, ft2_per}, area, any_case, "ft^2", yard, customary},
        {"sy", "sq yd|sqyd", {9144.0 * 9144, 1e8}, area, any_case, "yd^2", yard, customary},
        // volume
        {"L", "l|litre|litres|liter|liters", {1, 1e3}, volume, si_symbol, "liter", accepted},
        {"mL", "ml|millilitre|millilitres|milliliter|milliliters", {1, 1e6}, volume, si_symbol, "milliliter", accepted},
        {"kL", "kl|kilolitre|kilolitres|kiloliter|kiloliters", {1, 1}, volume, si_symbol, "kiloliter", accepted},
        {"ML", "Ml|megalitre|megalitres|megaliter|megaliters", {1e3, 1}, volume, si_symbol, "megaliter", accepted},
        {"US gal", "US gallon|US gallons|gal US|usgal", {us_gal, us_gal_per}, volume, any_case, "usgallon", handbook, customary},
        {"imp gal", "imperial gal|imperial gallon|imperial gallons|UK gal|gal imp", {imp_gal, imp_gal_per}, volume, any_case, "brgallon", weights_act, customary},
        {"cf", "cu ft|cuft", {ft3, ft3_per}, volume, any_case, "ft^3", yard, customary},
        {"cy", "cu yd|cuyd", {27 * ft3, ft3_per}, volume, any_case, "yd^3", yard, customary},
        {"acre-ft", "acre ft|ac-ft|ac ft|acre-feet|acre feet|acre-foot|acft", {acre * ft, acre_per * ft_per}, volume, any_case, "acre ft", "acre times foot", customary},
        {"acre-in", "acre in|ac-in|acre-inch|acre-inches", {acre * 254, acre_per * 1e4}, volume, any_case, "acre in", "acre times inch", customary},
        // time
        {"s", "sec|secs|second|seconds", {1, 1}, time_, si_symbol, "s", si},
        {"ms", "millisecond|milliseconds", {1, 1e3}, time_, si_symbol, "ms", si},
        {"min", "mins|minute|minutes", {60, 1}, time_, si_symbol, "min", accepted},
        {"h", "hr|hrs|hour|hours", {3600, 1}, time_, si_symbol, "hr", accepted},
        {"d", "day|days", {86400, 1}, time_, si_symbol, "day", accepted},
        {"wk", "week|weeks", {604800, 1}, time_, any_case, "week", "7 d"},
        // speed
        {"mph", "", {1609344, 3600e3}, speed, any_case, "mile/hr", yard, customary},
        {"fps", "", {ft, ft_per}, speed, any_case, "ft/s", yard, customary},
        // flow
        {"cfs", "cusec|cusecs", {ft3, ft3_per}, flow, any_case, "ft^3/s", yard, customary},
        {"lps", "", {1, 1e3}, flow, any_case, "liter/s", accepted},
        {"cumecs", "cumec", {1, 1}, flow, any_case, "m^3/s", si},
        {"cfm", "", {ft3, ft3_per * 60}, flow, any_case, "ft^3/min", yard, customary},
        {"US gpm", "", {us_gal, us_gal_per * 60}, flow, any_case, "usgallon/min", handbook, customary},
        {"imp gpm", "", {imp_gal, imp_gal_per * 60}, flow, any_case, "brgallon/min", weights_act, customary},
        {"US mgd", "", {us_gal, us_gal_per * 86400 / 1e6}, flow, any_case, "1e6 usgallon/day", handbook, customary},
        // angle
        {"rad", "radian|radians", {1, 1}, angle, si_symbol, "radian", si},
        {"mrad", "", {1, 1e3}, angle, si_symbol, "milliradian", si},
        {"deg", "°|degree|degrees", {pi, 180}, angle, any_case, "degree", accepted},
        {"gon", "gons", {pi, 200}, angle, any_case, "gon", "ISO 80000-3:2019"},
        // mass
        {"kg", "kilogram|kilograms", {1, 1}, mass, si_symbol, "kg", si},
        {"g", "gram|grams", {1, 1e3}, mass, si_symbol, "g", si},
        {"mg", "milligram|milligrams", {1, 1e6}, mass, si_symbol, "mg", si},
        {"t", "tonne|tonnes", {1e3, 1}, mass, si_symbol, "tonne", accepted},
        {"lb", "lbs|lbm|pound|pounds", {lb, lb_per}, mass, any_case, "lb", pound, customary},
        {"oz", "ounce|ounces", {lb, 16 * lb_per}, mass, any_case, "oz", pound, customary},
        {"short ton", "short tons|US ton|US tons", {2000 * lb, lb_per}, mass, any_case, "uston", handbook, customary},
        {"long ton", "long tons|imp ton|imperial ton", {2240 * lb, lb_per}, mass, any_case, "brton", handbook, customary},
        // force
        {"N", "newton|newtons", {1, 1}, force, si_symbol, "N", si},
        {"kN", "kilonewton|kilonewtons", {1e3, 1}, force, si_symbol, "kN", si},
        {"MN", "meganewton|meganewtons", {1e6, 1}, force, si_symbol, "MN", si},
        {"lbf", "pound-force|pounds-force", {lbf, lbf_per}, force, any_case, "lbf", pound_force, customary},
        {"kip", "kips|klbf", {1e3 * lbf, lbf_per}, force, any_case, "kip", pound_force, customary},
        {"kgf", "kp", {980665, 1e5}, force, any_case, "kgf", "kg times 9.80665 m/s2"},
        {"tf", "tonne-force", {980665e3, 1e5}, force, any_case, "tonne gravity", "t times 9.80665 m/s2"},
        // line load
        {"plf", "", {lbf * ft_per, lbf_per * ft}, line_load, any_case, "lbf/ft", pound_force, customary},
        {"klf", "", {1e3 * lbf * ft_per, lbf_per * ft}, line_load, any_case, "kip/ft", pound_force, customary},
        // pressure
        {"Pa", "pascal|pascals", {1, 1}, pressure, si_symbol, "Pa", si},
        {"hPa", "", {100, 1}, pressure, si_symbol, "hPa", si},
        {"kPa", "kilopascal|kilopascals", {1e3, 1}, pressure, si_symbol, "kPa", si},
        {"MPa", "megapascal|megapascals", {1e6, 1}, pressure, si_symbol, "MPa", si},
        {"GPa", "gigapascal|gigapascals", {1e9, 1}, pressure, si_symbol, "GPa", si},
        {"bar", "bars", {1e5, 1}, pressure, any_case, "bar", accepted},
        {"mbar", "millibar|millibars", {100, 1}, pressure, any_case, "millibar", accepted},
        {"psi", "", {lbf * in2_per, lbf_per * in2}, pressure, any_case, "psi", pound_force, customary},
        {"psf", "", {lbf * ft2_per, lbf_per * ft2}, pressure, any_case, "lbf/ft^2", pound_force, customary},
        {"ksi", "", {1e3 * lbf * in2_per, lbf_per * in2}, pressure, any_case, "ksi", pound_force, customary},
        {"ksf", "", {1e3 * lbf * ft2_per, lbf_per * ft2}, pressure, any_case, "kip/ft^2", pound_force, customary},
        // mass per area
        {"gsm", "", {1, 1e3}, mass_per_area, any_case, "g/m^2", "g/m2"},
        // numbers and things
        {"1", "-|–|—", {1, 1}, number_dimension, any_case, "1", "a pure number"},
        {"%", "percent|pct", {1, 100}, number_dimension, any_case, "percent", "ISO 80000-1:2009, 7.3.3"},
        {"‰", "permille|per mille", {1, 1e3}, number_dimension, any_case, "1|1000", "ISO 80000-1:2009, 7.3.3"},
        {"each", "ea|no.|no|nr|pcs|piece|pieces", {1, 1}, count_of_things, any_case, "1", "one thing"},
    };
    // clang-format on
    return table;
}

const std::vector<AmbiguousUnit>& ambiguous_units() {
    static const std::vector<AmbiguousUnit> table = {
        {"gal", "US gal or imp gal"},
        {"gallon", "US gal or imp gal"},
        {"gallons", "US gal or imp gal"},
        {"gals", "US gal or imp gal"},
        {"gpm", "US gpm or imp gpm"},
        {"gph", "US gal/h or imp gal/h"},
        {"gpd", "US gal/d or imp gal/d"},
        {"mgd", "US mgd, or ML/d for megalitres"},
        {"ton", "t (tonne), short ton or long ton"},
        {"tons", "t (tonne), short ton or long ton"},
        {"tn", "t (tonne), short ton or long ton"},
        {"tonf", "tf (tonne-force), or kip (2 kip = 1 short ton-force)"},
        {"tsf", "kip/ft2 (2 kip/ft2 = 1 short ton-force per ft2) or kPa"},
        {"pcf", "lb/ft3 (a density) or lbf/ft3 (a unit weight)"},
        {"pci", "lb/in3 (a density) or lbf/in3 (a unit weight)"},
        {"kcf", "kip/ft3 (a unit weight)"},
        {"$", "the currency's ISO code, such as AUD, CAD, NZD or USD"},
        {"€", "the currency's ISO code: EUR"},
        {"£", "the currency's ISO code, such as GBP"},
        {"¥", "the currency's ISO code, such as JPY or CNY"},
    };
    return table;
}

// ISO 4217:2015 and its list one, active codes of national and supranational currencies (from memory).
const std::vector<std::string_view>& currency_codes() {
    static const std::vector<std::string_view> codes = {
        "AED", "AFN", "ALL", "AMD", "AOA", "ARS", "AUD", "AWG", "AZN", "BAM", "BBD", "BDT", "BGN", "BHD",
        "BIF", "BMD", "BND", "BOB", "BRL", "BSD", "BTN", "BWP", "BYN", "BZD", "CAD", "CDF", "CHF", "CLP",
        "CNY", "COP", "CRC", "CUP", "CVE", "CZK", "DJF", "DKK", "DOP", "DZD", "EGP", "ERN", "ETB", "EUR",
        "FJD", "FKP", "GBP", "GEL", "GHS", "GIP", "GMD", "GNF", "GTQ", "GYD", "HKD", "HNL", "HTG", "HUF",
        "IDR", "ILS", "INR", "IQD", "IRR", "ISK", "JMD", "JOD", "JPY", "KES", "KGS", "KHR", "KMF", "KPW",
        "KRW", "KWD", "KYD", "KZT", "LAK", "LBP", "LKR", "LRD", "LSL", "LYD", "MAD", "MDL", "MGA", "MKD",
        "MMK", "MNT", "MOP", "MRU", "MUR", "MVR", "MWK", "MXN", "MYR", "MZN", "NAD", "NGN", "NIO", "NOK",
        "NPR", "NZD", "OMR", "PAB", "PEN", "PGK", "PHP", "PKR", "PLN", "PYG", "QAR", "RON", "RSD", "RUB",
        "RWF", "SAR", "SBD", "SCR", "SDG", "SEK", "SGD", "SHP", "SLE", "SOS", "SRD", "SSP", "STN", "SVC",
        "SYP", "SZL", "THB", "TJS", "TMT", "TND", "TOP", "TRY", "TTD", "TWD", "TZS", "UAH", "UGX", "USD",
        "UYU", "UZS", "VED", "VES", "VND", "VUV", "WST", "XAF", "XCD", "XOF", "XPF", "YER", "ZAR", "ZMW",
    };
    return codes;
}

}  // namespace undercroft
