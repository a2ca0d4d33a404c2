/// \file read_reference.hpp
/// References at a place of a formula's text.
#pragma once

#include <optional>
#include <string_view>

#include "addin/formula/cursor.hpp"
#include "addin/formula/reference.hpp"

namespace undercroft::addin {

/// Reads `D4:E4`, `$Site.B3`, `'file:///a.ods'#$Site.A:C` and goes behind it. Nothing, and no step, where
/// none stands.
[[nodiscard]] std::optional<CellReference> take_reference(Cursor& cursor);

/// Goes behind `B#REF!`, `$#REF!$4`, `#REF!.B3:C4`: a reference whose row, column or sheet was deleted.
/// False, and no step, where none stands.
[[nodiscard]] bool take_lost_reference(Cursor& cursor);

/// Reads the whole of `R2C1`, `R[-1]C:R[4]C2`, `Other!R2C1`: rows and columns by their numbers, in brackets
/// from the cell `from`. Nothing where it is something else, or leaves the sheet.
[[nodiscard]] std::optional<CellReference> numbered_reference(std::string_view text,
                                                              const std::optional<CellAddress>& from);

}  // namespace undercroft::addin
