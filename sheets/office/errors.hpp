/// \file errors.hpp
/// Formula cells that show an error, with the reason that UC.WHY gives.
#pragma once

#include <ostream>
#include <string>
#include <vector>

#include "sheets/office/office.hpp"

namespace undercroft::sheets {

struct CellError {
    std::string cell;    ///< `Storage.G12`
    std::string shows;   ///< `#VALUE!`
    std::string reason;  ///< from UC.WHY

    /// Whether the error begins in another cell.
    [[nodiscard]] bool comes_from_another() const { return reason.find("rests on ") != std::string::npos; }
};

/// Every error of a document, that of an array formula once. The document gets a scratch sheet for the
/// reasons while it is read.
[[nodiscard]] std::vector<CellError> errors_of(const Document& document);

/// The cells that have a cause of their own, at most 20 of them, and how many there are in all.
void print_errors(const std::vector<CellError>& errors, std::ostream& out, const std::string& before);

}  // namespace undercroft::sheets
