#include "sheets/builder/job_verdicts.hpp"

namespace undercroft::sheets {

void JobVerdicts::add(const std::string& workbook, const std::string& check, const std::string& verdict) {
    verdicts_[check].emplace_back(workbook, verdict);
}

std::vector<std::string> JobVerdicts::complaints(const std::set<std::string>& failing) const {
    std::vector<std::string> made;
    for (const auto& [check, verdicts] : verdicts_) {
        const bool must_fail = failing.contains(check);
        for (const auto& [workbook, verdict] : verdicts)
            if ((verdict == "FAIL") != must_fail)
                made.push_back("the check " + check +
                               (must_fail ? " must fail in this job, and does not in " : " fails in ") +
                               workbook);
    }
    for (const std::string& check : failing)
        if (!verdicts_.contains(check))
            made.push_back("the check " + check +
                           " must fail in this job, and is in none of these workbooks");
    return made;
}

}  // namespace undercroft::sheets
