/// \file kept_template.hpp
/// A template that workbooks are held against, read once.
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>

#include <functional>
#include <memory>

#include "addin/audit/book/book.hpp"
#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

/// The last template, for as long as its file has the same name, size and time; else it is read anew. The
/// office's own thread asks for it.
[[nodiscard]] std::shared_ptr<const audit::Book> kept_template(
    const css::uno::Reference<css::uno::XComponentContext>& context, const rtl::OUString& url,
    const std::function<audit::Book()>& read);

}  // namespace undercroft::addin
