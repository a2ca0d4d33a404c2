#include "addin/audit/book/unsteady.hpp"
#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"

namespace undercroft::audit {

namespace {

using addin::Node;
using addin::NodeKind;

/// A text that INDIRECT takes for cells of another file.
bool names_file(const std::string& text) {
    return text.find("://") != std::string::npos || text.find("file:") != std::string::npos ||
           text.find("'#") != std::string::npos ||
           (text.find('[') != std::string::npos && text.find(']') != std::string::npos);
}

/// The text, in a cell that the formula looks at, by which INDIRECT asks for another file; empty for none.
std::string asked_indirectly(const AuditedBook& audited, const FormulaCell& formula) {
    for (const Use& use : audited.uses(formula)) {
        const BookCell* cell = use.area.is_single() ? audited.book.find(use.area.first()) : nullptr;
        if (cell != nullptr && cell->text() != nullptr && names_file(*cell->text())) return *cell->text();
    }
    return {};
}

bool calls_indirect(const Node& tree) {
    bool calls = false;
    walk(tree, [&](const Node& node) {
        calls = calls || (node.kind == NodeKind::call && node.text == "INDIRECT");
    });
    return calls;
}

/// What a formula asks of the world outside the workbook; empty for nothing.
std::string outside(const Node& tree) {
    std::string found;
    walk(tree, [&](const Node& node) {
        if (!found.empty()) return;
        if (node.kind == NodeKind::reference && !node.reference.document.empty())
            found = "the file " + node.reference.document;
        if (node.kind == NodeKind::call &&
            (node.text == "WEBSERVICE" || node.text == "DDE" || node.text == "FILTERXML"))
            found = "another program or server by " + node.text;
        if (node.kind == NodeKind::call && node.text == "INDIRECT")
            for (const Node& argument : node.children)
                walk(argument, [&](const Node& part) {
                    if (part.kind == NodeKind::text && names_file(part.text)) found = "the file " + part.text;
                });
    });
    return found;
}

}  // namespace

void find_links(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    for (std::uint32_t g = 0; g < audited.formulas.groups().size(); ++g) {
        const FormulaGroup& group = audited.formulas.groups()[g];
        if (!group.unreadable().empty()) continue;
        const std::string source = outside(group.tree());
        const bool unsteady = changes_by_itself(group.tree());
        const bool by_country = changes_with_country(group.tree());
        const bool indirect = source.empty() && calls_indirect(group.tree());
        for (const std::uint32_t member : group.members) {
            const FormulaCell& formula = audited.formulas.all()[member];
            const Spot& at = formula.at;
            const std::string asked = indirect ? asked_indirectly(audited, formula) : std::string();
            if (!source.empty() || !asked.empty())
                grouped.add(FindingKind::link, Severity::error, g, 0, at,
                            "the formula takes a value from " +
                                (asked.empty() ? source : "the file " + asked) +
                                ", which the audit did not open; bring the value into this workbook, with "
                                "its source.");
            if (unsteady)
                grouped.add(FindingKind::unsteady, Severity::warning, g, 1, at,
                            "the value changes by itself with the clock or by chance; type it, so that what "
                            "is signed stays.");
            if (by_country)
                grouped.add(
                    FindingKind::unsteady, Severity::warning, g, 2, at,
                    "the result is another one where a country writes its numbers and dates otherwise, so "
                    "the one "
                    "in the file was not checked; use the number itself, and the format of its cell.");
        }
    }
    for (const DefinedName& name : audited.book.names) {
        const NameMeaning* meaning = audited.names.find(name.name, name.sheet);
        if (meaning == nullptr || !meaning->readable) continue;
        const std::string source = outside(meaning->tree);
        if (!source.empty())
            findings.add(FindingKind::link, Severity::error,
                         "the name " + name.name + " stands for cells in " + source +
                             "; bring the values into this workbook.");
    }
    for (const std::string& link : audited.book.links)
        findings.add(
            FindingKind::link, Severity::warning,
            "the workbook has a link to " + link +
                ", which the audit did not open; break the link (Edit > Links) once its values are checked.");
}

}  // namespace undercroft::audit
