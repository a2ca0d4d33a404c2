/// \file digest.hpp
/// SHA-256 by the library that the office brings.
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>

#include "addin/audit/book/fingerprint.hpp"

namespace undercroft::addin {

[[nodiscard]] audit::Digest office_digest(
    const com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext>& context);

}  // namespace undercroft::addin
