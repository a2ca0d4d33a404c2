#include "sheets/builder/numbers.hpp"

#include <charconv>
#include <cmath>
#include <stdexcept>

#include "sheets/builder/lines.hpp"

namespace undercroft::sheets {

std::optional<NumberAndUnit> leading_number(std::string_view text) {
    NumberAndUnit made;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), made.number);
    if (error != std::errc{} || !std::isfinite(made.number)) return std::nullopt;
    made.unit = trimmed(text.substr(static_cast<std::size_t>(end - text.data())));
    return made;
}

std::optional<double> number_in(std::string_view text) {
    const std::optional<NumberAndUnit> read = leading_number(text);
    if (!read || !read->unit.empty()) return std::nullopt;
    return read->number;
}

NumberAndUnit number_and_unit(const std::string& text) {
    const std::optional<NumberAndUnit> read = leading_number(text);
    if (!read) throw std::runtime_error("'" + text + "' is no number with a unit");
    if (read->unit.empty()) throw std::runtime_error("'" + text + "' has no unit");
    return *read;
}

}  // namespace undercroft::sheets
