/// \file targets.hpp
/// What the fuzzer throws bytes at. Each reads them as one of our readers would, and throws Broken when the
/// reader breaks a promise; an exception that the reader may not throw comes through as it is.
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>

namespace undercroft::fuzz {

class Broken : public std::logic_error {
public:
    using std::logic_error::logic_error;
};

inline void promise(bool kept, const char* what) {
    if (!kept) throw Broken(what);
}

/// A refusal says something, and not a book.
inline void promise_sentence(const std::string& sentence) {
    promise(sentence.size() >= 10 && sentence.size() < 1000, "a refusal without a sentence");
    promise(sentence.find('\0') == std::string::npos, "a NUL in a sentence");
}

void units(std::string_view bytes);          ///< texts of units and quantities
void tables(std::string_view bytes);         ///< a range of cells as every kind of argument
void sheet_text(std::string_view bytes);     ///< sheets, jobs and worked examples as text
void formulas(std::string_view bytes);       ///< formulas of a file
void stored_values(std::string_view bytes);  ///< the XML of a workbook

}  // namespace undercroft::fuzz
