/// \file fingerprint.hpp
/// What was signed: a digest over all that a checker looked at - formulas, what is typed, results as shown,
/// formats, what is hidden, names, settings, macros; and what became of it later.
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

/// One kind of what is signed, of one sheet or of the whole workbook, so that a change can be told by both.
struct FingerprintPart {
    std::string kind;   ///< `formulas`, `inputs`, `results` ...
    std::string sheet;  ///< empty for the whole workbook
    std::string digest;
    friend bool operator==(const FingerprintPart&, const FingerprintPart&) = default;
};

struct Fingerprint {
    std::string whole;
    /// By name: formulas and what is typed. A signature of our first release has only this and a whole that
    /// is the digest of it.
    std::vector<std::pair<std::string, std::string>> sheets;
    std::vector<FingerprintPart> parts{};
    std::string first_release{};  ///< the whole as our first release made it
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

/// Whether the workbook is what was signed.
[[nodiscard]] bool still_holds(const Signature& signature, const Fingerprint& now);

/// What became of a signature, as a sentence: the workbook is what was signed, or what changed, by kind and
/// sheet.
[[nodiscard]] std::string state_of(const Signature& signature, const Fingerprint& now);

/// Parts as the Audit sheet keeps them: a line each.
[[nodiscard]] std::string text_of_parts(const Fingerprint& fingerprint);
[[nodiscard]] std::vector<FingerprintPart> parts_of_text(std::string_view text);

}  // namespace undercroft::audit
