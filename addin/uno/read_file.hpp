/// \file read_file.hpp
/// What a workbook's file holds, read from the file itself by what it is, not by its name: results beside the
/// formulas, and what it brings along.
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>

#include "addin/audit/book/file_risks.hpp"
#include "addin/audit/book/stored_values.hpp"
#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

struct FileContents {
    audit::StoredValues stored;
    audit::FileRisks risks;
    std::string not_read;  ///< why its results could not be read; empty where they were
};

/// \throws css::uno::Exception where the file cannot be read
[[nodiscard]] FileContents read_file(const css::uno::Reference<css::uno::XComponentContext>& context,
                                     const rtl::OUString& url);

}  // namespace undercroft::addin
