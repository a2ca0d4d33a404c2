/// \file read_reference.hpp
/// References at a place of a formula's text.
#pragma once

#include <optional>

#include "addin/formula/cursor.hpp"
#include "addin/formula/reference.hpp"

namespace undercroft::addin {

/// Reads `D4:E4`, `$Site.B3`, `'file:///a.ods'#$Site.A:C` and goes behind it. Nothing, and no step, where
/// none stands.
[[nodiscard]] std::optional<CellReference> take_reference(Cursor& cursor);

/// Goes behind `B#REF!`, `$#REF!$4`, `#REF!.B3:C4`: a reference whose row, column or sheet was deleted.
/// False, and no step, where none stands.
[[nodiscard]] bool take_lost_reference(Cursor& cursor);

}  // namespace undercroft::addin
