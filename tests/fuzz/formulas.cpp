#include "addin/formula/formula.hpp"
#include "tests/fuzz/targets.hpp"
#include "units/refused.hpp"

namespace undercroft::fuzz {

namespace {

/// Every part stands inside the part that holds it.
void check_places(const addin::Node& node) {
    promise(node.begin <= node.end, "a part ends before it begins");
    for (const addin::Node& child : node.children) {
        promise(child.begin >= node.begin && child.end <= node.end, "a part stands outside of its whole");
        check_places(child);
    }
}

void check_references(const addin::Node& node) {
    if (node.kind != addin::NodeKind::reference) return;
    const addin::CellReference& reference = node.reference;
    for (const addin::CellAddress& corner : {reference.first, reference.last})
        promise(corner.row >= 0 && corner.row < addin::most_rows && corner.column >= 0 &&
                    corner.column < addin::most_columns,
                "a cell outside of the largest sheet");
    promise(!reference.text().empty(), "a reference without a text");
}

}  // namespace

void formulas(std::string_view bytes) {
    addin::Node node;
    try {
        node = addin::parse_formula(bytes);
    } catch (const Refused& refused) {
        promise_sentence(refused.what());
        return;
    }
    check_places(node);
    addin::walk(node, check_references);
    promise(addin::text_of_node(bytes, node).size() <= bytes.size(), "a part beyond the formula");
}

}  // namespace undercroft::fuzz
