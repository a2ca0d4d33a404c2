#include "addin/audit/book/unsteady.hpp"
#include "addin/audit/findings/findings.hpp"
#include "addin/properties.hpp"

namespace undercroft::audit {

void find_other_version(const AuditedBook& audited, const StoredValues& stored, const std::string& installed,
                        Findings& findings) {
    bool is_in_cell = false;
    for (const FormulaCell& formula : audited.formulas.all()) {
        const FormulaGroup& group = audited.formulas.group_of(formula);
        if (!group.unreadable().empty() || !tells_version(group.tree())) continue;
        const StoredValue* value =
            stored.find(audited.sheet(formula.at.sheet).name, formula.at.row, formula.at.column);
        const std::string* version = value == nullptr ? nullptr : std::get_if<std::string>(&value->value);
        if (version == nullptr || version->empty()) continue;
        is_in_cell = true;
        if (*version != installed)
            findings.add(FindingKind::version, Severity::warning, formula.at,
                         "the file was computed by version " + *version + " of the functions, and " +
                             installed + " is installed; compare the results, and save the workbook again.");
    }
    const auto property = audited.book.properties.find(std::string(functions_property));
    if (is_in_cell || property == audited.book.properties.end() || property->second == installed) return;
    findings.add(FindingKind::version, Severity::warning,
                 "the workbook was made for version " + property->second + " of the functions, and " +
                     installed + " is installed; compare the results.");
}

}  // namespace undercroft::audit
