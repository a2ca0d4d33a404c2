/// \file job_verdicts.hpp
/// What the checks of a job's workbooks say, and whether it is what the job says they must.
#pragma once

#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace undercroft::sheets {

/// A check may stand in several workbooks of a job: what it says in one never takes the place of what it says
/// in another.
class JobVerdicts {
public:
    /// \param verdict as the cell shows it: PASS, FAIL, open, not counted
    void add(const std::string& workbook, const std::string& check, const std::string& verdict);

    /// What is not as the job says, a sentence each: a check that fails in some workbook and must not, one
    /// that must fail and does not wherever it stands, one that must fail and stands nowhere.
    [[nodiscard]] std::vector<std::string> complaints(const std::set<std::string>& failing) const;

private:
    std::map<std::string, std::vector<std::pair<std::string, std::string>>> verdicts_;  ///< by check
};

}  // namespace undercroft::sheets
