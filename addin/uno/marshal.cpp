#include "addin/uno/marshal.hpp"

#include <bit>
#include <cstdint>

#include "units/text.hpp"

namespace undercroft::addin {

rtl::OUString to_oustring(std::string_view text) {
    return to_oustring(std::u16string_view(to_utf16(text)));
}

std::string to_string(const rtl::OUString& text) {
    return to_utf8(view(text));
}

SequenceGrid::SequenceGrid(const AnyRows& rows) : rows_(rows) {
    sal_Int32 widest = 0;
    for (const auto& row : rows_) widest = std::max(widest, row.getLength());
    columns_ = static_cast<std::size_t>(widest);
}

Scalar SequenceGrid::at(std::size_t row, std::size_t column) const {
    if (row >= rows()) return std::monostate{};
    const css::uno::Sequence<css::uno::Any>& cells = rows_[static_cast<sal_Int32>(row)];
    if (column >= static_cast<std::size_t>(cells.getLength())) return std::monostate{};
    return to_scalar(cells[static_cast<sal_Int32>(column)]);
}

Scalar to_scalar(const css::uno::Any& value) {
    switch (value.getValueTypeClass()) {
        case css::uno::TypeClass_DOUBLE:
            return *static_cast<const double*>(value.getValue());
        case css::uno::TypeClass_STRING: {
            const std::u16string_view text = view(*static_cast<const rtl::OUString*>(value.getValue()));
            if (text.empty()) return std::monostate{};  // a blank cell in a range arrives as empty text
            return text;
        }
        default:
            break;
    }
    double number = 0;
    if (value >>= number) return number;  // the whole number types
    bool truth = false;
    if (value >>= truth) return truth ? 1.0 : 0.0;
    return std::monostate{};
}

// Calc takes the low bits of a quiet NaN as an error code (tried on LibreOffice 7.4).
double error_number(int code) {
    return std::bit_cast<double>(0x7ff8000000000000ULL | static_cast<std::uint64_t>(code));
}

int error_code(Cause cause) {
    switch (cause) {
        case Cause::value:
            return 519;
        case Cause::domain:
            return 503;
        case Cause::no_answer:
            return 32767;
        case Cause::no_convergence:
            return 523;
    }
    return 519;
}

css::uno::Any error_value(Cause cause) {
    return css::uno::Any(error_number(error_code(cause)));
}

css::uno::Any to_any(const Answer& answer) {
    if (const double* number = std::get_if<double>(&answer)) return css::uno::Any(*number);
    if (const std::string* text = std::get_if<std::string>(&answer)) return css::uno::Any(to_oustring(*text));
    const auto& rows = std::get<ResultRows>(answer);
    AnyRows sequence(static_cast<sal_Int32>(rows.size()));
    css::uno::Sequence<css::uno::Any>* to_row = sequence.getArray();
    for (const auto& row : rows) {
        css::uno::Sequence<css::uno::Any> cells(static_cast<sal_Int32>(row.size()));
        css::uno::Any* to_cell = cells.getArray();
        for (const ResultItem& item : row) {
            if (const double* number = std::get_if<double>(&item))
                *to_cell <<= *number;
            else if (const std::string* text = std::get_if<std::string>(&item))
                *to_cell <<= to_oustring(*text);
            ++to_cell;
        }
        *to_row++ = cells;
    }
    return css::uno::Any(sequence);
}

}  // namespace undercroft::addin
