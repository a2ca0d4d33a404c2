/// \file grouped.hpp
/// Like formulas with the same mistake are one finding, so that a checker reads it once.
#pragma once

#include <map>
#include <string>
#include <tuple>

#include "addin/audit/findings/finding.hpp"

namespace undercroft::audit {

class Grouped {
public:
    explicit Grouped(Findings& findings) : findings_(findings) {}
    Grouped(const Grouped&) = delete;
    Grouped& operator=(const Grouped&) = delete;
    ~Grouped() {
        for (auto& [key, finding] : gathered_)
            findings_.add(finding.kind, finding.severity, std::move(finding.cells), std::move(finding.says));
    }

    /// `part` tells apart several mistakes in one formula; the first cell's sentence stands for all.
    void add(FindingKind kind, Severity severity, std::uint32_t group, std::size_t part, const Spot& cell,
             const std::string& says) {
        Finding& finding = gathered_[{kind, group, part}];
        if (finding.cells.empty()) finding = {kind, severity, {}, says};
        if (finding.cells.empty() || finding.cells.back() != cell) finding.cells.push_back(cell);
    }

private:
    Findings& findings_;
    std::map<std::tuple<FindingKind, std::uint32_t, std::size_t>, Finding> gathered_;
};

}  // namespace undercroft::audit
