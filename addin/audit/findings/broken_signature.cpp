#include <algorithm>

#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

void find_broken_signature(const std::vector<Signature>& signatures, const Fingerprint& now,
                           Findings& findings) {
    const auto last = std::find_if(signatures.rbegin(), signatures.rend(),
                                   [](const Signature& signature) { return !signature.checker.empty(); });
    if (last == signatures.rend() || still_holds(*last, now)) return;
    findings.add(FindingKind::signature, Severity::error,
                 "signed by " + last->checker + (last->date.empty() ? "" : " on " + last->date) + "; " +
                     state_of(*last, now) + "; check what changed, and sign again.");
}

}  // namespace undercroft::audit
