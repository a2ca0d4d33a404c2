/// \file verdicts.hpp
/// Formulas whose result is a verdict: TRUE or FALSE, or a word such as OK and FAIL.
#pragma once

#include <optional>
#include <string>

#include "addin/formula/formula.hpp"

namespace undercroft::audit {

/// A check of ours, a comparison, several joined by AND and OR, one times 1, or one that counts under a
/// condition.
[[nodiscard]] bool gives_verdict(const addin::Node& node);

/// Whether a word passes or fails: "OK", "PASS", "adequate" - "FAIL", "NOT OK", "NG", "no"; nothing for
/// another text.
[[nodiscard]] std::optional<bool> verdict_in_words(const std::string& text);

/// An IF that shows one of two texts, one of which is a verdict.
struct WordedCheck {
    const addin::Node* condition = nullptr;
    std::string passes;
    std::string fails;
    bool passes_when_true = true;
};
/// The check that a formula is, or that one of its branches is; nothing where it shows no such words.
[[nodiscard]] std::optional<WordedCheck> worded_check(const addin::Node& tree);

}  // namespace undercroft::audit
