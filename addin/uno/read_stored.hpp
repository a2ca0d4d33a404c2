/// \file read_stored.hpp
/// The results that an OpenDocument file holds beside its formulas, read from the file itself.
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>

#include "addin/audit/book/stored_values.hpp"
#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

/// \param url of an .ods, .ots or .fods file
/// \throws css::uno::Exception where it cannot be read
[[nodiscard]] audit::StoredValues read_stored(const css::uno::Reference<css::uno::XComponentContext>& context,
                                              const rtl::OUString& url);

}  // namespace undercroft::addin
