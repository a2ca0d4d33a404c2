#include "addin/catalogue/limits.hpp"

#include <cmath>

#include "units/text.hpp"

namespace undercroft::addin {

namespace {

double coherent(const char* bound, const Dimension& dimension) {
    std::string_view rest = bound;
    const bool below_nothing = rest.starts_with("-");
    if (below_nothing) rest.remove_prefix(1);
    const std::optional<double> number = take_number(rest);
    if (number && rest.empty())
        return default_unit(dimension).scale.to_coherent(below_nothing ? -*number : *number);
    return in_dimension(parse_quantity(bound), dimension).value;
}

std::string between(const char* least, const char* most) {
    return std::string(least) + " to " + most;
}

bool is_ratio(const Dimension& dimension) {
    return dimension.is_number() || dimension == Dimension::of(Base::gradient);
}

/// A bare number as one that says what it is: "1200 m", "7 each", "2H:1V", "40 %".
std::string with_unit(double number, const Dimension& dimension, bool in_percent) {
    if (in_percent) return exact_text(number) + " %";
    if (is_ratio(dimension)) return exact_text(100 * number) + " %";
    if (dimension == Dimension::of(Base::batter)) return exact_text(number) + "H:1V";
    return exact_text(number) + " " + default_unit_text(dimension);
}

bool is_plain(const Dimension& dimension) {
    return is_ratio(dimension) || dimension == Dimension::of(Base::batter) ||
           dimension == Dimension::of(Base::count);
}

[[noreturn]] void refuse(const std::string& sentence, Refusal refusal) {
    throw Refused(Cause::domain, sentence, refusal);
}

}  // namespace

Limits::Limits(const Range& range, const Dimension& of, bool percent)
    : or_none(range.or_none), is_stated(true), dimension(of), in_percent(percent), why(range.why) {
    if (range.is_everything()) return;
    const double bare = in_percent ? 0.01 : default_unit(dimension).scale.to_coherent(1);
    // A bound is met by a number that differs in its last digits only.
    constexpr double near = 1e-9;
    const auto widened = [](double bound, double sign) { return bound + sign * near * std::abs(bound); };
    least = widened(coherent(range.least, dimension), -1);
    most = widened(coherent(range.most, dimension), 1);
    usual_least = widened(coherent(range.usual_least, dimension), -1) / bare;
    usual_most = widened(coherent(range.usual_most, dimension), 1) / bare;
    bare_none = or_none || (usual_least <= 0 && usual_most >= 0);
    const std::string none = or_none ? ", or 0 for none" : "";
    usual = between(range.usual_least, range.usual_most) + none;
    possible = between(range.least, range.most) + (least > 0 ? none : "");
    if (least > most || usual_least > usual_most || usual_least * bare < least - near ||
        usual_most * bare > most * (1 + 2 * near))
        refuse_value("what is usual, " + usual + ", is not within what is possible, " + possible);
    bare_least = usual_least;
    bare_most = usual_most;
    without_unit = usual;
    if (range.other_unit != nullptr) leave_out_what_is_usual_in(range.other_unit);
}

void Limits::leave_out_what_is_usual_in(const char* unit) {
    other_unit = unit;
    const double times = parse_unit(unit).scale.to_coherent(1) / default_unit(dimension).scale.to_coherent(1);
    // What is usual in the other unit, as typed without it: 3 m to 150 m are 9.8 ft to 492 ft.
    const double other_least = usual_least / times;
    const double other_most = usual_most / times;
    constexpr double near = 1e-6;
    if (times < 1)
        bare_most = std::min(usual_most, other_least * (1 - near));
    else
        bare_least = std::max(usual_least, other_most * (1 + near));
    const auto shown = [](double bound, double (*rounded)(double)) {
        const double parts = std::pow(10, 2 - std::floor(std::log10(bound)));  // three digits
        return rounded(bound * parts) / parts;
    };
    const std::string none = or_none ? ", or 0 for none" : "";
    const std::string from = with_unit(shown(bare_least, std::ceil), dimension, in_percent);
    const std::string to = with_unit(shown(bare_most, std::floor), dimension, in_percent);
    without_unit = between(from.c_str(), to.c_str()) + none;
}

double Limits::coherent_of(double bare) const {
    return in_percent ? bare / 100 : default_unit(dimension).scale.to_coherent(bare);
}

void Limits::refuse_ambiguous(double number) const {
    const std::string told = exact_text(number);
    refuse(told + " has no unit, and " + with_unit(number, dimension, in_percent) + " and " + told + " " +
               other_unit + " are both usual: write the unit",
           Refusal::unusual);
}

void Limits::refuse_bare(double number) const {
    if (number != 0 && number >= usual_least && number <= usual_most) refuse_ambiguous(number);
    const bool plain = is_plain(dimension) && !in_percent;
    const std::string told = with_unit(number, dimension, in_percent);
    const std::string read = plain ? exact_text(number) : told;
    if (number == 0 && !none_is_blank)
        refuse(told + " is not possible; usual is " + usual, Refusal::impossible);
    if (number == 0 && usual.empty())
        refuse("0 has no unit; a blank cell arrives as 0: where none is meant, write its unit",
               Refusal::blank);
    if (number == 0 && is_possible(0))
        refuse("0 has no unit; a blank cell arrives as 0: where none is meant, write " + told,
               Refusal::blank);
    if (number == 0)
        refuse("0 is not possible, and a blank cell arrives as 0; usual is " + usual, Refusal::blank);
    if (number < 0 && least >= 0) refuse(read + " is below 0; usual is " + usual, Refusal::impossible);
    std::string mended = ": if another unit is meant, write it";
    if (is_possible(coherent_of(number)))
        mended =
            plain ? ": if it is meant, write " + told : ": if it is meant, or another unit, write the unit";
    refuse(read + " is unusual; usual is " + usual + mended, Refusal::unusual);
}

void Limits::refuse_impossible(double coherent) const {
    throw Refused(
        Cause::domain,
        (coherent < 0 && least >= 0 ? "is below 0; possible is " : "is beyond what is possible, ") + possible,
        Refusal::impossible);
}

void Limits::refuse_percent_cell(double share) const {
    const std::string held = rounded_text(100 * share);
    refuse("is far below what is usual, " + usual + ": a cell that shows " + rounded_text(10000 * share) +
               " % holds " + held + ": give it alone, without % beside it; if " + held +
               " % is meant, write it as one text",
           Refusal::unusual);
}

}  // namespace undercroft::addin
