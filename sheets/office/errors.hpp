/// \file errors.hpp
/// Formula cells that show an error, with the reason that UC.WHY gives.
#pragma once

#include <string>
#include <vector>

#include "sheets/office/office.hpp"

namespace undercroft::sheets {

struct CellError {
    std::string cell;    ///< `Storage.G12`
    std::string shows;   ///< `#VALUE!`
    std::string reason;  ///< from UC.WHY
};

/// Every error of a document. The document gets a scratch sheet for the reasons while it is read.
[[nodiscard]] std::vector<CellError> errors_of(const Document& document);

}  // namespace undercroft::sheets
