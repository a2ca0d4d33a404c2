/// \file results.hpp
/// Results as they were before everything was computed anew, held against the workbook as it is now.
#pragma once

#include <string>

#include "addin/audit/book/stored_values.hpp"
#include "addin/audit/findings/finding.hpp"
#include "addin/audit/findings/workings.hpp"

namespace undercroft::audit {

/// Results that are no longer the same.
void find_stale(const Workings& workings, const StoredValues& stored, Findings& findings);

/// Functions computed by another version than this one: by the result of UC.VERSION() in the file or, where
/// no cell holds it, by the document's properties.
void find_other_version(const Workings& workings, const StoredValues& stored, const std::string& installed,
                        Findings& findings);

}  // namespace undercroft::audit
