#include "addin/audit/report/marks.hpp"

namespace undercroft::audit {

namespace {

std::uint64_t of_formula(const AuditedBook& audited, const ContentHash& contents,
                         const FormulaCell& formula) {
    std::uint64_t hash = ContentHash::both(ContentHash::of(audited.formulas.group_of(formula).key),
                                           ContentHash::of_value(*formula.cell));
    const auto add_unit = [&](const Spot& spot) {
        if (const auto unit = audited.units.of(spot))
            hash = ContentHash::both(hash, ContentHash::of(unit->text->text));
    };
    add_unit(formula.at);
    for (const Use& use : audited.uses(formula)) {
        hash = ContentHash::both(hash, contents.of(use.area));
        add_unit(use.area.first());
    }
    return hash;
}

}  // namespace

std::string mark_of(const AuditedBook& audited, const ContentHash& contents,
                    std::span<const std::uint32_t> formulas, const std::string& label) {
    const FormulaCell& first = audited.formulas.all()[formulas.front()];
    std::uint64_t hash =
        ContentHash::both(ContentHash::of(audited.sheet(first.at.sheet).name), ContentHash::of(label));
    for (const std::uint32_t formula : formulas)
        hash = ContentHash::both(hash, of_formula(audited, contents, audited.formulas.all()[formula]));
    return ContentHash::text(hash);
}

std::string mark_of(const AuditedBook& audited, const ContentHash& contents, const Finding& finding) {
    if (finding.kind == FindingKind::signature) return {};
    std::uint64_t hash =
        ContentHash::both(ContentHash::of(word_of(finding.kind)), ContentHash::of(finding.says));
    for (const Spot& spot : finding.cells) {
        hash = ContentHash::both(hash, ContentHash::of(audited.sheet(spot.sheet).name));
        const BookCell* cell = audited.book.find(spot);
        if (cell == nullptr) continue;
        const FormulaCell* formula = audited.formulas.find(spot);
        hash = ContentHash::both(
            hash, formula != nullptr ? of_formula(audited, contents, *formula) : ContentHash::of(*cell));
    }
    return ContentHash::text(hash);
}

}  // namespace undercroft::audit
