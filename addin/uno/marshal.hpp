/// \file marshal.hpp
/// Between UNO's values and the catalogue's.
#pragma once

#include <com/sun/star/uno/Any.hxx>
#include <com/sun/star/uno/Sequence.hxx>

#include "addin/catalogue/cell.hpp"
#include "addin/formula/cell_error.hpp"
#include "units/refused.hpp"

namespace css = com::sun::star;

namespace undercroft::addin {

using AnyRows = css::uno::Sequence<css::uno::Sequence<css::uno::Any>>;

// Outside the office's own build its UTF-16 unit is an unsigned 16 bit number, not char16_t.
[[nodiscard]] inline std::u16string_view view(const rtl::OUString& text) {
    return {reinterpret_cast<const char16_t*>(text.getStr()), static_cast<std::size_t>(text.getLength())};
}
[[nodiscard]] inline rtl::OUString to_oustring(std::u16string_view text) {
    return {reinterpret_cast<const sal_Unicode*>(text.data()), static_cast<sal_Int32>(text.size())};
}
[[nodiscard]] rtl::OUString to_oustring(std::string_view text);
[[nodiscard]] std::string to_string(const rtl::OUString& text);

/// A range as UNO hands it over, seen without copying. The sequence must outlive the grid.
class SequenceGrid final : public Grid {
public:
    explicit SequenceGrid(const AnyRows& rows);

    [[nodiscard]] std::size_t rows() const override { return static_cast<std::size_t>(rows_.getLength()); }
    [[nodiscard]] std::size_t columns() const override { return columns_; }
    [[nodiscard]] Scalar at(std::size_t row, std::size_t column) const override;

private:
    const AnyRows& rows_;
    std::size_t columns_ = 0;  // of the widest row; asked for with every cell
};

/// One value of a range or of a cell; a number, text, or blank.
[[nodiscard]] Scalar to_scalar(const css::uno::Any& value);

/// A number that Calc shows as the real error of this code.
[[nodiscard]] double error_number(int code);
[[nodiscard]] int error_code(Cause cause);
[[nodiscard]] css::uno::Any error_value(Cause cause);

/// A result for the cell.
[[nodiscard]] css::uno::Any to_any(const Answer& answer);

}  // namespace undercroft::addin
