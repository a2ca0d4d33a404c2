/// \file fingerprint.hpp
/// What was signed: a digest over every formula, input and unit of the workbook, and what a later audit says
/// of it.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "addin/audit/book/book.hpp"
#include "addin/audit/findings/finding.hpp"

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

/// The last signature, when the workbook is no longer what was signed.
void find_broken_signature(const std::vector<Signature>& signatures, const Fingerprint& now,
                           Findings& findings);

}  // namespace undercroft::audit
