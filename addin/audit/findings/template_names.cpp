#include <algorithm>
#include <set>

#include "addin/audit/findings/findings.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

/// The cells that a name stands for; `?` where it stands for none.
std::string cells_of_name(const Book& book, const NameMeaning& name) {
    if (!name.readable || name.tree.kind != addin::NodeKind::reference) return "?";
    const std::optional<Area> area =
        area_of(book, name.tree.reference, name.defined->base, name.defined->base);
    return area ? book.text(*area) : "?";
}

/// Whether a range is the template's with rows inside or behind it that the template has not: a list that
/// grew.
bool has_grown(const TemplateMatch& match, const Area& is, const NameMeaning& was, const DefinedName& name) {
    const std::optional<Area> from = area_of(match.from(), was.tree.reference, name.base, name.base);
    if (!from || match.sheet(from->sheet) != is.sheet) return false;
    const Alignment& rows = match.rows(from->sheet);
    const std::int32_t first = rows.row(from->first_row);
    const std::int32_t last = rows.row(from->last_row);
    if (first < 0 || last < 0 || is.first_row != first || is.last_row <= last ||
        is.first_column != from->first_column || is.last_column != from->last_column)
        return false;
    for (std::int32_t row = last + 1; row <= is.last_row; ++row)
        if (std::find(rows.added.begin(), rows.added.end(), row) == rows.added.end()) return false;
    return true;
}

/// Names that the template has not: what they hide or lead to no comparison of cells tells.
void find_added_names(const AuditedBook& audited, const TemplateMatch& match, Findings& findings) {
    const auto scope = [](const Book& book, const DefinedName& name) {
        return name.sheet < 0 ? std::string() : book.sheets[static_cast<std::size_t>(name.sheet)].name;
    };
    std::set<std::pair<std::string, std::string>> known;
    for (const DefinedName& name : match.from().names)
        known.emplace(lower_case(name.name), scope(match.from(), name));
    for (const DefinedName& name : audited.book.names) {
        // Print ranges and filters are names in some kinds of file.
        if (name.name.starts_with("_xlnm.") ||
            known.contains({lower_case(name.name), scope(audited.book, name)}))
            continue;
        findings.add(FindingKind::names, Severity::error,
                     "the name " + name.name +
                         (name.sheet < 0 ? "" : " of the sheet " + scope(audited.book, name)) + " (" +
                         name.content +
                         ") is not in the template; see what uses it, and delete it if it hides another.");
    }
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
        if (now->readable && now->tree.kind == addin::NodeKind::reference)
            if (const auto is =
                    area_of(audited.book, now->tree.reference, now->defined->base, now->defined->base))
                if (has_grown(match, *is, *was, name)) continue;
        if (stands != should && should != "?")
            findings.add(FindingKind::template_changed, Severity::error,
                         "the name " + name.name + " stands for " + (stands == "?" ? "nothing" : stands) +
                             ", in the template for " + should +
                             "; correct it in Sheet > Named Ranges > Manage.");
    }
    find_added_names(audited, match, findings);
}

}  // namespace undercroft::audit
