#include "addin/catalogue/limits.hpp"

#include "units/text.hpp"

namespace undercroft::addin {

namespace {

double coherent(const char* bound, const Dimension& dimension) {
    std::string_view rest = bound;
    const std::optional<double> number = take_number(rest);
    if (number && rest.empty()) return default_unit(dimension).scale.to_coherent(*number);
    return in_dimension(parse_quantity(bound), dimension).value;
}

std::string between(const char* least, const char* most) {
    return std::string(least) + " to " + most;
}

}  // namespace

Limits::Limits(const Range& range, const Dimension& dimension, bool in_percent)
    : or_none(range.or_none), is_stated(true), why(range.why) {
    if (range.is_everything()) return;
    const double bare = in_percent ? 0.01 : default_unit(dimension).scale.to_coherent(1);
    // A bound is met by a number that differs in its last digits only.
    constexpr double near = 1e-9;
    const auto widened = [](double bound, double sign) { return bound + sign * near * std::abs(bound); };
    least = widened(coherent(range.least, dimension), -1);
    most = widened(coherent(range.most, dimension), 1);
    usual_least = widened(coherent(range.usual_least, dimension), -1) / bare;
    usual_most = widened(coherent(range.usual_most, dimension), 1) / bare;
    unit = in_percent ? "%" : default_unit_text(dimension);
    usual = between(range.usual_least, range.usual_most) + (or_none ? ", or 0 for none" : "");
    possible = between(range.least, range.most) + (or_none ? ", or 0 for none" : "");
    if (least > most || usual_least > usual_most || usual_least * bare < least - near ||
        usual_most * bare > most * (1 + 2 * near))
        refuse_value("what is usual, " + usual + ", is not within what is possible, " + possible);
}

void Limits::refuse_unusual(double number) const {
    const std::string shown = exact_text(number) + (unit.empty() || unit == "1" ? "" : " " + unit);
    throw Refused(
        Cause::domain,
        shown + " is unusual (usual is " + usual + "): if it is meant, or another unit, write the unit",
        Refusal::unusual);
}

void Limits::refuse_impossible() const {
    throw Refused(Cause::domain, "is beyond what is possible, " + possible, Refusal::impossible);
}

}  // namespace undercroft::addin
