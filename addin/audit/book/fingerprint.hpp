/// \file fingerprint.hpp
/// What was signed: a digest over every formula and every number and text that is typed, and over the defined
/// names; and what became of it later.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "addin/audit/book/book.hpp"

namespace undercroft::audit {

/// SHA-256 as 64 hexadecimal digits; the office brings the library for it.
using Digest = std::function<std::string(std::string_view)>;

struct Fingerprint {
    std::string whole;
    std::vector<std::pair<std::string, std::string>>
        sheets;  ///< by name, so that a change can be told by sheet
};

/// One sheet as text: a line a cell with what was typed into it. Results and looks are not in it.
[[nodiscard]] std::string canonical_text(const BookSheet& sheet);
/// The defined names and all sheets in order.
[[nodiscard]] std::string canonical_text(const Book& book);

[[nodiscard]] Fingerprint fingerprint(const Book& book, const Digest& digest);

/// A signature as it stands on the Audit sheet.
struct Signature {
    std::string checker;
    std::string date;  ///< as typed
    Fingerprint of;
};

/// What became of a signature, as a sentence: the workbook is what was signed, or which sheets changed.
[[nodiscard]] std::string state_of(const Signature& signature, const Fingerprint& now);

}  // namespace undercroft::audit
