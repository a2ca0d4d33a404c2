/// \file subject.hpp
/// What is audited, and what it is held against.
#pragma once

#include <string>
#include <vector>

#include "addin/audit/book/acceptance.hpp"
#include "addin/audit/book/book.hpp"
#include "addin/audit/book/file_risks.hpp"
#include "addin/audit/book/fingerprint.hpp"
#include "addin/audit/book/signed_state.hpp"
#include "addin/audit/book/stored_values.hpp"

namespace undercroft::audit {

struct Subject {
    const Book& book;
    const StoredValues* stored = nullptr;       ///< results as the file held them, where it is known
    const Book* against = nullptr;              ///< the template, where there is one to compare with
    Digest digest = {};                         ///< without one there is no fingerprint
    std::string installed_version = {};         ///< of our functions
    std::vector<Signature> signatures = {};     ///< as they stand on the Audit sheet, oldest first
    const SignedState* at_signing = nullptr;    ///< what the last signature stands for, where it was kept
    std::vector<Acceptance> accepted = {};      ///< findings that somebody accepted in the sheet
    const Book* earlier = nullptr;              ///< a revision that it is compared with
    std::string earlier_name = {};              ///< what that is called
    const FileRisks* risks = nullptr;           ///< what the file brings along, where it was read
    std::vector<std::string> not_checked = {};  ///< what could not be, each with its reason
};

}  // namespace undercroft::audit
