// Whether a quantity keeps its limit.
#include "addin/catalogue/arithmetic.hpp"
#include "calc/arithmetic.hpp"

namespace undercroft::addin {

namespace {

constexpr const char* verdict_says = "1 when it holds, else 0";

}  // namespace

Function at_least_entry() {
    return function("UC.ATLEAST", [](Quantity value, Quantity limit) { return calc::at_least(value, limit); })
        .role(Role::compares)
        .says("Whether a value is at least a limit, whatever their units: 1 for TRUE, 0 for FALSE")
        .also_called("check a minimum, not less than, greater or equal, verdict")
        .related({"UC.ATMOST", "UC.WITHIN"})
        .to_try("UC.ATLEAST(\"305 mm\"; \"12 in\")")
        .to_try("UC.ATLEAST(\"250 m3\"; \"8000 ft3\")")
        .refuses("UC.ATLEAST(305; \"12 in\")")
        .equation("x >= limit, relative tolerance 1e-9")
        .source("common practice")
        .takes("value", "x", "The value to check")
        .within(any_dimension)
        .takes("limit", "limit", "The least that it may be")
        .within(any_dimension)
        .gives("", verdict_says)
        .example("UC.ATLEAST(\"12 in\"; \"304.8 mm\")", "1", "exact", Origin::published, yard);
}

Function at_most_entry() {
    return function("UC.ATMOST", [](Quantity value, Quantity limit) { return calc::at_most(value, limit); })
        .role(Role::compares)
        .says("Whether a value is at most a limit, whatever their units: 1 for TRUE, 0 for FALSE")
        .also_called("check a maximum, not more than, less or equal, verdict")
        .related({"UC.ATLEAST", "UC.WITHIN"})
        .to_try("UC.ATMOST(\"36 h\"; \"48 h\")")
        .to_try("UC.ATMOST(\"2600 psf\"; \"130 kPa\")")
        .refuses("UC.ATMOST(0; \"48 h\")")
        .equation("x <= limit, relative tolerance 1e-9")
        .source("common practice")
        .takes("value", "x", "The value to check")
        .within(any_dimension)
        .takes("limit", "limit", "The most that it may be")
        .within(any_dimension)
        .gives("", verdict_says)
        .example("UC.ATMOST(\"12 in\"; \"304.8 mm\")", "1", "exact", Origin::published, yard);
}

Function within_entry() {
    return function("UC.WITHIN", [](Quantity value, Quantity target,
                                    Quantity tolerance) { return calc::within(value, target, tolerance); })
        .role(Role::compares)
        .says("Whether a value is within a tolerance of its target: 1 for TRUE, 0 for FALSE")
        .also_called("tolerance, as built, plus or minus, acceptance")
        .related({"UC.ATLEAST", "UC.ATMOST"})
        .to_try("UC.WITHIN(\"98.012 m\"; \"98.000 m\"; \"15 mm\")")
        .to_try("UC.WITHIN(\"0.34 m\"; \"0.3 m\"; \"5 %\")")
        .refuses("UC.WITHIN(\"0.34 m\"; 0.3; \"5 %\")")
        .equation("|x - x0| <= t")
        .source("common practice")
        .takes("value", "x", "The value to check, such as an as-built level")
        .within(any_dimension)
        .takes("target", "x0", "The design value")
        .within(any_dimension)
        .takes("tolerance", "t",
               "Deviation allowed; in % it is a share of the target, or percentage points of a pure number")
        .within(any_dimension)
        .or_share()
        .gives("", verdict_says)
        .example("UC.WITHIN(\"100.013 m\"; \"100 m\"; \"15 mm\")", "1", "exact", Origin::mathematics,
                 "13 mm off, 15 mm allowed");
}

}  // namespace undercroft::addin
