/// \file book_json.hpp
/// A workbook as it was read, kept as JSON: the package's templates are read when it is made, not at each audit.
#pragma once

#include <string>
#include <string_view>

#include "addin/audit/book/book.hpp"

namespace undercroft::audit {

/// A template as an office read it, and what that hung on.
struct KeptBook {
    std::string office;  ///< in words of that office: its version, ours, its country's signs
    std::string digest;  ///< of the template's file
    Book book;
};

[[nodiscard]] std::string json_of(const KeptBook& kept);
/// The book is indexed.
/// \throws std::exception for a text that is not what json_of() wrote.
[[nodiscard]] KeptBook kept_book_of(std::string_view json);

}  // namespace undercroft::audit
