#include "addin/audit/findings/findings.hpp"

namespace undercroft::audit {

namespace {

/// The cells that a name stands for; `?` where it stands for none.
std::string cells_of_name(const Book& book, const NameMeaning& name) {
    if (!name.readable || name.tree.kind != addin::NodeKind::reference) return "?";
    const std::optional<Area> area =
        area_of(book, name.tree.reference, name.defined->base, name.defined->base);
    return area ? book.text(*area) : "?";
}

}  // namespace

void find_changed_names(const AuditedBook& audited, const TemplateMatch& match, Findings& findings) {
    const Names names(match.from());
    for (const DefinedName& name : match.from().names) {
        const NameMeaning* was = names.find(name.name, name.sheet);
        const NameMeaning* now = audited.names.find(name.name, name.sheet);
        if (was == nullptr || !was->readable || was->tree.kind != addin::NodeKind::reference) continue;
        const std::string should = match.moved(was->tree.reference, name.base, name.base);
        if (now == nullptr) {
            findings.add(
                FindingKind::template_changed, Severity::error,
                "the name " + name.name + " of the template is gone; define it again for " + should + ".");
            continue;
        }
        const std::string stands = cells_of_name(audited.book, *now);
        if (stands != should && should != "?")
            findings.add(FindingKind::template_changed, Severity::error,
                         "the name " + name.name + " stands for " + (stands == "?" ? "nothing" : stands) +
                             ", in the template for " + should +
                             "; correct it in Sheet > Named Ranges > Manage.");
    }
}

}  // namespace undercroft::audit
