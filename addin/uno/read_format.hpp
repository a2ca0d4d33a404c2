/// \file read_format.hpp
/// How a cell of a document shows its number.
#pragma once

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/uno/XInterface.hpp>
#include <com/sun/star/util/XNumberFormats.hpp>

#include "addin/audit/book/number_format.hpp"

namespace css = com::sun::star;

namespace undercroft::addin {

/// The number formats of a document; empty where it has none.
[[nodiscard]] css::uno::Reference<css::util::XNumberFormats> number_formats_of(
    const css::uno::Reference<css::uno::XInterface>& document);

/// That of cells of one format.
[[nodiscard]] audit::NumberFormat number_format_of(
    const css::uno::Reference<css::beans::XPropertySet>& cells,
    const css::uno::Reference<css::util::XNumberFormats>& formats);

/// The words that the number format of these cells writes, by words_of_format().
[[nodiscard]] std::string format_words_of(const css::uno::Reference<css::beans::XPropertySet>& cells,
                                          const css::uno::Reference<css::util::XNumberFormats>& formats);

}  // namespace undercroft::addin
