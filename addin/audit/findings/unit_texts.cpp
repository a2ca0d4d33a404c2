#include <algorithm>
#include <map>

#include "addin/audit/findings/findings.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// Beside a number there may be a remark as well as a unit: only a short text may be meant as a unit.
bool may_be_meant(const std::string& text) {
    return !text.empty() && text != "-" && text.size() <= longest_unit;
}

/// How many texts right of numbers in a column are units, and how many are none.
struct ColumnUse {
    std::size_t units = 0;
    std::vector<std::uint32_t> others;
};

class UnitTextSearch {
public:
    UnitTextSearch(const AuditedBook& audited, Findings& findings, std::int32_t sheet)
        : audited_(audited), findings_(findings), sheet_(sheet) {}

    void look() {
        const auto& cells = audited_.sheet(sheet_).cells;
        std::map<std::int32_t, ColumnUse> columns;
        for (std::uint32_t i = 0; i < cells.size(); ++i) {
            const BookCell& cell = cells[i];
            if (cell.text() == nullptr || !may_be_meant(*cell.text())) continue;
            const bool is_unit = audited_.units.read(*cell.text()).unit.has_value();
            const bool by_style = !cell.is_formula() && has_unit_style(cell);
            if (by_style && !is_unit) tell(cell);
            const bool beside = i > 0 && cells[i - 1].row == cell.row &&
                                cells[i - 1].column + 1 == cell.column &&
                                (cells[i - 1].number() != nullptr || cells[i - 1].error != 0);
            if (!beside || by_style) continue;
            if (is_unit)
                ++columns[cell.column].units;
            else
                columns[cell.column].others.push_back(i);
        }
        for (const auto& [column, use] : columns)
            for (const std::uint32_t i : use.others) judge(cells[i], use);
    }

private:
    [[nodiscard]] bool has_unit_style(const BookCell& cell) const {
        return audited_.sheet(sheet_).formats[cell.format].style.find("Unit") != std::string::npos;
    }

    /// A text is meant as a unit where its column is headed so, or holds units.
    void judge(const BookCell& cell, const ColumnUse& use) {
        const std::string head = lower_case(audited_.labels.of_column({sheet_, cell.row, cell.column}));
        const bool by_head = head == "unit" || head == "units";
        const bool by_column = use.units >= 3 && use.units > 3 * use.others.size();
        if (by_head || by_column) tell(cell);
    }

    void tell(const BookCell& cell) {
        findings_.add(FindingKind::unit_text, Severity::error, Spot{sheet_, cell.row, cell.column},
                      audited_.units.read(*cell.text()).refusal +
                          "; write a unit, so that the number beside it means something.");
    }

    const AuditedBook& audited_;
    Findings& findings_;
    std::int32_t sheet_;
};

}  // namespace

void find_unit_texts(const AuditedBook& audited, Findings& findings) {
    for (std::int32_t s = 0; s < static_cast<std::int32_t>(audited.book.sheets.size()); ++s)
        UnitTextSearch(audited, findings, s).look();
}

}  // namespace undercroft::audit
