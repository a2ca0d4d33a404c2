// Defined names that stand for something else than a reader takes them for.
#include <algorithm>
#include <map>
#include <optional>

#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/words.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

namespace {

class NameSearch {
public:
    NameSearch(const AuditedBook& audited, Findings& findings) : audited_(audited), findings_(findings) {}

    void look(const DefinedName& name) {
        if (name.sheet >= 0) look_for_shadow(name);
        const NameMeaning* meaning = audited_.names.find(name.name, name.sheet);
        if (meaning == nullptr || meaning->defined != &name) return;
        bool lost = !meaning->readable;
        if (!lost)
            walk(meaning->tree,
                 [&](const addin::Node& node) { lost = lost || node.kind == addin::NodeKind::error; });
        if (lost)
            return tell({}, "the name " + name.name + " refers to nothing (" + name.content +
                                "); delete it, or define it again");
        if (meaning->tree.kind != addin::NodeKind::reference) return;
        const std::optional<Area> area =
            area_of(audited_.book, meaning->tree.reference, name.base, name.base);
        if (area && (area->is_single() || area->is_pair())) look_at_cell(name, area->first());
    }

private:
    void tell(std::vector<Spot> cells, const std::string& says) {
        findings_.add(FindingKind::names, Severity::error, std::move(cells),
                      says + " in Sheet > Named Ranges > Manage.");
    }

    void look_for_shadow(const DefinedName& name) {
        for (const DefinedName& other : audited_.book.names)
            if (other.sheet < 0 && lower_case(other.name) == lower_case(name.name) &&
                other.content != name.content)
                tell({}, "the name " + name.name + " stands for " + name.content + " on the sheet " +
                             audited_.sheet(name.sheet).name + ", and for " + other.content +
                             " everywhere else; delete the one of "
                             "the sheet");
    }

    /// A label instead of the number beside it, or a number under another label.
    void look_at_cell(const DefinedName& name, const Spot& at) {
        const BookCell* cell = audited_.book.find(at);
        const BookCell* beside = audited_.book.find({at.sheet, at.row, at.column + 1});
        const bool is_label = cell != nullptr && !cell->is_formula() && cell->text() != nullptr &&
                              !audited_.format(at).has_list;
        if (is_label && beside != nullptr && beside->number() != nullptr && audited_.format(at).locked)
            return tell({at}, "the name " + name.name + " stands for the label in " + audited_.book.text(at) +
                                  ", and not for the number beside it; correct it");
        const Words words = words_of(name.name);
        const Words label = words_of(audited_.labels.of_row(at));
        if (cell == nullptr || cell->number() == nullptr || label.empty() || shares(words, label)) return;
        const std::optional<Spot> other = row_called(words, at.sheet, at.column);
        if (other && other->row != at.row)
            tell({at}, "the name " + name.name + " stands for " + audited_.book.text(at) + " (" +
                           audited_.labels.of_row(at) + "), and " + audited_.book.text(*other) +
                           " is called so; correct it");
    }
    [[nodiscard]] std::optional<Spot> row_called(const Words& words, std::int32_t sheet,
                                                 std::int32_t column) {
        const auto [known, is_new] = rows_.try_emplace({sheet, column});
        if (is_new)
            for (const std::uint32_t i : audited_.book.column(sheet, column)) {
                const Spot at{sheet, audited_.sheet(sheet).cells[i].row, column};
                known->second.emplace(words_of(audited_.labels.of_row(at)), at);
            }
        const auto row = known->second.find(words);
        return row == known->second.end() ? std::nullopt : std::optional(row->second);
    }
    static bool shares(const Words& a, const Words& b) {
        return std::any_of(a.begin(), a.end(), [&](const std::string& word) { return b.contains(word); });
    }

    const AuditedBook& audited_;
    Findings& findings_;
    std::map<std::pair<std::int32_t, std::int32_t>, std::map<Words, Spot>>
        rows_;  ///< by sheet and column, what they are called
};

}  // namespace

void find_misleading_names(const AuditedBook& audited, Findings& findings) {
    NameSearch search(audited, findings);
    for (const DefinedName& name : audited.book.names) search.look(name);
}

}  // namespace undercroft::audit
