/// \file kept_template.hpp
/// A template that workbooks are held against, read once.
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>

#include <functional>
#include <memory>
#include <string>

#include "addin/audit/book/book.hpp"
#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

/// What the reading of a template hangs on besides its file: the versions of the office and of ours.
[[nodiscard]] std::string office_words(const css::uno::Reference<css::uno::XComponentContext>& context);

/// SHA-256 of a file's bytes.
[[nodiscard]] std::string digest_of_file(const css::uno::Reference<css::uno::XComponentContext>& context,
                                         const rtl::OUString& url);

/// The template at this address: as the package keeps it, where it holds these very bytes as this office
/// reads them; else as `read` reads it. Kept for as long as its file has the same name, size and time.
[[nodiscard]] std::shared_ptr<const audit::Book> kept_template(
    const css::uno::Reference<css::uno::XComponentContext>& context, const rtl::OUString& url,
    const std::function<audit::Book()>& read);

}  // namespace undercroft::addin
