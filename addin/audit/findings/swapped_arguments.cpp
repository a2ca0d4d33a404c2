// Arguments of our functions that stand in each other's places, by what their cells and names are called.
#include "addin/audit/findings/findings.hpp"
#include "addin/audit/findings/grouped.hpp"
#include "addin/audit/findings/words.hpp"
#include "addin/catalogue/catalogue.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

class SwapSearch {
public:
    SwapSearch(const AuditedBook& audited, Grouped& grouped) : audited_(audited), grouped_(grouped) {
        for (const DefinedName& name : audited.book.names) names_[words_of(name.name)] = name.name;
    }

    void look(const FormulaCell& formula) {
        formula_ = &formula;
        walk(audited_.formulas.group_of(formula).tree(), [&](const Node& node) {
            const addin::Function* function =
                node.kind == NodeKind::call ? addin::find_function(node.text) : nullptr;
            if (function != nullptr) look_at(node, *function);
        });
    }

private:
    struct Argument {
        std::string text;
        Words words;
        Words parameter;
        addin::ValueType type;
    };

    [[nodiscard]] std::optional<Spot> cell_of(const Node& node) const {
        const Spot base = audited_.formulas.group_of(*formula_).base;
        std::optional<Area> area;
        if (node.kind == NodeKind::reference)
            area = area_of(audited_.book, node.reference, base, formula_->at);
        const NameMeaning* meaning =
            node.kind == NodeKind::name ? audited_.names.find(node.text, formula_->at.sheet) : nullptr;
        if (meaning != nullptr && meaning->readable && meaning->tree.kind == NodeKind::reference)
            area = area_of(audited_.book, meaning->tree.reference, meaning->defined->base, formula_->at);
        if (!area || !(area->is_single() || area->is_pair())) return std::nullopt;
        return area->first();
    }

    static std::size_t in_common(const Words& a, const Words& b) {
        return static_cast<std::size_t>(
            std::count_if(a.begin(), a.end(), [&](const std::string& word) { return b.contains(word); }));
    }

    void look_at(const Node& call, const addin::Function& function) {
        std::vector<std::optional<Argument>> given(
            std::min(call.children.size(), function.parameters.size()));
        for (std::size_t i = 0; i < given.size(); ++i) {
            const Node& node = call.children[i];
            const std::optional<Spot> cell = cell_of(node);
            if (!cell || function.parameters[i].type.shape != addin::Shape::quantity) continue;
            // What is named is known by its name; what is not, by the label of its row.
            Words words =
                node.kind == NodeKind::name ? words_of(node.text) : words_of(audited_.labels.of_row(*cell));
            given[i] = Argument{
                node.kind == NodeKind::name ? node.text : audited_.text(formula_->at.sheet, *cell),
                std::move(words), words_of(function.parameters[i].name), function.parameters[i].type};
        }
        for (std::size_t i = 0; i < given.size(); ++i)
            for (std::size_t j = i + 1; given[i] && j < given.size(); ++j)
                if (given[j] && given[i]->type.dimension == given[j]->type.dimension &&
                    swapped(*given[i], *given[j]))
                    return tell(given[i]->text + " stands as " + function.parameters[i].name + " of " +
                                function.name + ", and " + given[j]->text + " as " +
                                function.parameters[j].name + "; let them change places.");
        for (std::size_t i = 0; i < given.size(); ++i)
            if (given[i] && call.children[i].kind == NodeKind::name)
                look_for_better(*given[i], function.parameters[i].name, function);
    }

    static bool swapped(const Argument& a, const Argument& b) {
        return in_common(a.words, b.parameter) > in_common(a.words, a.parameter) &&
               in_common(b.words, a.parameter) > in_common(b.words, b.parameter);
    }

    /// Another name is called just as the argument is, and the one that is given is not.
    void look_for_better(const Argument& argument, const std::string& parameter,
                         const addin::Function& function) {
        if (argument.parameter.size() < 2) return;
        const auto better = names_.find(argument.parameter);
        const std::size_t common = in_common(argument.words, argument.parameter);
        if (better == names_.end() || better->second == argument.text ||
            common == argument.parameter.size() || common == 0)
            return;
        tell(argument.text + " stands as " + parameter + " of " + function.name +
             ", while the workbook has " + better->second + "; is that meant?");
    }

    void tell(const std::string& says) {
        grouped_.add(FindingKind::swapped, Severity::error, formula_->group, 0, formula_->at, says);
    }

    const AuditedBook& audited_;
    Grouped& grouped_;
    const FormulaCell* formula_ = nullptr;
    std::map<Words, std::string> names_;
};

}  // namespace

void find_swapped_arguments(const AuditedBook& audited, Findings& findings) {
    Grouped grouped(findings);
    SwapSearch search(audited, grouped);
    for (const FormulaCell& formula : audited.formulas.all())
        if (audited.formulas.group_of(formula).unreadable().empty()) search.look(formula);
}

}  // namespace undercroft::audit
