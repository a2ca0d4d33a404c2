/// \file signed_text.hpp
/// A workbook as texts, one for each kind of what is signed.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "addin/audit/book/book.hpp"

namespace undercroft::audit {

struct SignedText {
    std::string kind;
    std::string sheet;  ///< empty for the whole workbook
    std::string text;
};

/// In the order in which a change is told: for each kind all sheets that have something of it.
[[nodiscard]] std::vector<SignedText> signed_texts(const Book& book);

/// Appends a text on one line, so that no text can be taken for two.
void append_on_one_line(std::string& text, std::string_view part);

}  // namespace undercroft::audit
