#include "addin/audit/book/uses.hpp"

#include <algorithm>
#include <string_view>

#include "addin/catalogue/catalogue.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

constexpr std::string_view observers[] = {
    "ISERROR", "ISERR",  "ISNA",   "ISREF",   "ISFORMULA",  "ISTEXT",    "ISNUMBER", "ISLOGICAL",
    "ROW",     "ROWS",   "COLUMN", "COLUMNS", "CELL",       "FORMULA",   "COUNT",    "COUNTA",
    "SHEET",   "SHEETS", "AREAS",  "TYPE",    "ERROR.TYPE", "ERRORTYPE", "ADDRESS",  "INFO"};
constexpr std::string_view blank_askers[] = {"ISBLANK", "COUNTBLANK", "COUNTIF", "COUNTIFS"};
constexpr std::string_view text_makers[] = {"TEXT",  "CONCATENATE", "CONCAT",    "TEXTJOIN", "T",
                                            "LEN",   "UPPER",       "LOWER",     "TRIM",     "LEFT",
                                            "RIGHT", "MID",         "HYPERLINK", "FIND",     "SEARCH"};

class UseCollector {
public:
    UseCollector(const Book& book, const Names& names, const Spot& at)
        : book_(book), names_(names), at_(at) {}

    void collect(const Node& node, const Spot& base, Use use) {
        switch (node.kind) {
            case NodeKind::reference:
                return add(node, base, use);
            case NodeKind::name:
                return follow(node, use);
            case NodeKind::operation:
                return collect_operation(node, base, use);
            case NodeKind::call:
                return collect_call(node, base, use);
            default:
                for (const Node& child : node.children) collect(child, base, use);
        }
    }
    [[nodiscard]] std::vector<Use> take() { return std::move(uses_); }

private:
    struct Guard {
        Area area;
        bool closed;
    };

    void add(const Node& node, const Spot& base, Use use) {
        if (use.node == nullptr) use.node = &node;
        for (const Area& area : areas_of(book_, node.reference, base, at_)) {
            use.area = area;
            use.guarded = std::any_of(guards_.begin(), guards_.end(), [&](const Guard& guard) {
                return guard.closed || guard.area.holds(area.first());
            });
            uses_.push_back(use);
        }
    }

    void follow(const Node& node, Use use) {
        const NameMeaning* meaning = names_.find(node.text, at_.sheet);
        if (meaning == nullptr || !meaning->readable || depth_ > 20 || names_left_ <= 0)
            return;  // names may go round in a circle
        --names_left_;
        ++depth_;
        if (use.node == nullptr) use.node = &node;
        if (meaning->tree.kind != NodeKind::reference && use.role == UseRole::link)
            use.role = UseRole::operand;
        collect(meaning->tree, meaning->defined->base, use);
        --depth_;
    }

    void collect_operation(const Node& node, const Spot& base, const Use& outer) {
        if (node.text == "~" || node.text == "!" || node.text == ":") {  // these make references, not values
            for (const Node& child : node.children) collect(child, base, outer);
            return;
        }
        Use use;
        use.role = UseRole::operand;
        if (node.text == "&") use.role = UseRole::text;
        if (is_comparison(node) &&
            (node.children[0].kind == NodeKind::text || node.children[1].kind == NodeKind::text))
            use.role = UseRole::compared;
        if (outer.role == UseRole::observed) use.role = UseRole::observed;
        for (const Node& child : node.children) collect(child, base, use);
    }

    void collect_call(const Node& node, const Spot& base, const Use& outer) {
        Use use;
        use.call = &node;
        use.function = addin::find_function(node.text);
        use.role = use.function != nullptr ? UseRole::argument : UseRole::passed;
        if (calls_one_of(node, text_makers)) use.role = UseRole::text;
        if (calls_one_of(node, blank_askers)) use.role = UseRole::compared;
        const bool observes = only_observes(node) || (use.function != nullptr && use.function->reads_cell());
        if (observes || outer.role == UseRole::observed) use.role = UseRole::observed;
        const std::size_t uses_before = uses_.size();
        const std::size_t guards_before = guards_.size();
        for (std::size_t i = 0; i < node.children.size(); ++i) {
            use.place = i;
            collect(node.children[i], base, use);
            if (i == 0 && node.text == "IF") guard_by(uses_before);
        }
        guards_.resize(guards_before);
    }

    /// Cells that a condition asks about are no surprise to what follows. While one of them is blank, what
    /// follows is not computed.
    void guard_by(std::size_t first_use) {
        for (std::size_t i = first_use; i < uses_.size(); ++i) {
            if (uses_[i].role != UseRole::observed && uses_[i].role != UseRole::compared) continue;
            const BookCell* cell = book_.find(uses_[i].area.first());
            const bool blank = uses_[i].area.is_single() && (cell == nullptr || cell->shows_nothing());
            guards_.push_back({uses_[i].area, blank});
        }
    }

    const Book& book_;
    const Names& names_;
    Spot at_;
    int depth_ = 0;
    int names_left_ = 2000;  // that are followed for one formula
    std::vector<Use> uses_;
    std::vector<Guard> guards_;
};

}  // namespace

bool only_observes(const Node& call) {
    return calls_one_of(call, observers);
}

std::vector<Use> uses_of(const Book& book, const Names& names, const FormulaGroup& group, const Spot& at) {
    if (!group.unreadable().empty()) return {};
    UseCollector collector(book, names, at);
    Use top;
    top.role = UseRole::link;
    collector.collect(group.tree(), group.base, top);
    return collector.take();
}

}  // namespace undercroft::audit
