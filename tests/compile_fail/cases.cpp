// Mistakes that must not compile. Each case is compiled twice: as the mistake, which must fail, and with GOOD
// defined, which must pass - so that a broken include cannot make a mistake "fail" for the wrong reason.
#include "addin/catalogue/entry.hpp"
#include "calc/works/excavation.hpp"

using namespace undercroft;

#if CASE == 1  // a length is not an area
#ifdef GOOD
Area wrong(Length a, Length b) {
    return a * b;
}
#else
Area wrong(Length a, Length b) {
    return a + b;
}
#endif

#elif CASE == 2  // a bare number is not a length
#ifdef GOOD
Volume wrong() {
    return calc::pit_volume(metre, metre, metre, batter(1));
}
#else
Volume wrong() {
    return calc::pit_volume(1.0, metre, metre, batter(1));
}
#endif

#elif CASE == 3  // a gradient is not a batter
#ifdef GOOD
Volume wrong() {
    return calc::pit_volume(metre, metre, metre, batter(0.5));
}
#else
Volume wrong() {
    return calc::pit_volume(metre, metre, metre, gradient(0.5));
}
#endif

#elif CASE == 4  // a density is not a unit weight
#ifdef GOOD
Pressure wrong(UnitWeight w, Length h) {
    return w * h;
}
#else
Pressure wrong(Density w, Length h) {
    return w * h;
}
#endif

#elif CASE == 5  // a count is not a number until it is asked for
#ifdef GOOD
Length wrong(Count n, Length each_one) {
    return number(n) * each_one;
}
#else
Length wrong(Count n, Length each_one) {
    return n * each_one;
}
#endif

#elif CASE == 6  // money is not a mass
#ifdef GOOD
Mass wrong(Mass a, Mass b) {
    return a + b;
}
#else
Mass wrong(Mass a, Money b) {
    return a + b;
}
#endif

#elif CASE == 7  // a type without a slot cannot cross the border
#ifdef GOOD
addin::Function wrong() {
    return addin::function("UC.X", [](Length a) { return a; }).takes("a", "a", "A length");
}
#else
addin::Function wrong() {
    return addin::function("UC.X", [](float a) { return metre * double(a); }).takes("a", "a", "A number");
}
#endif

#else
#error "no such case"
#endif
