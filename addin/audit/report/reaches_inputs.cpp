#include "addin/audit/report/reaches_inputs.hpp"

namespace undercroft::audit {

ReachesInputs::ReachesInputs(const AuditedBook& audited)
    : audited_(audited), known_(audited.formulas.all().size(), Known::not_yet) {}

bool ReachesInputs::operator()(const Area& area) {
    for (;;) {
        std::size_t unknown = 0;
        const Known now = look(area, unknown);
        if (now != Known::not_yet) return now == Known::yes;
        find_out(unknown);
    }
}

bool ReachesInputs::operator()(const FormulaCell& formula) {
    const std::size_t place = place_of(formula);
    if (known_[place] == Known::not_yet) find_out(place);
    return known_[place] == Known::yes;
}

/// Whether its sheet leaves it open to be filled in.
bool ReachesInputs::is_entry(std::int32_t sheet, const BookCell& cell) const {
    const BookSheet& holder = audited_.sheet(sheet);
    return holder.is_protected && !holder.formats[cell.format].locked;
}

ReachesInputs::Known ReachesInputs::look(const Area& area, std::size_t& unknown) const {
    const std::vector<BookCell>& cells = audited_.sheet(area.sheet).cells;
    if (area.is_single() && audited_.book.find(area.first()) == nullptr) return Known::yes;  // to be typed
    for (std::int32_t c = area.first_column; c <= area.last_column && c < audited_.book.columns(area.sheet);
         ++c) {
        for (const std::uint32_t i : audited_.book.column(area.sheet, c, area.first_row, area.last_row)) {
            if (!cells[i].is_formula()) {
                const bool entry = is_entry(area.sheet, cells[i]);
                if (cells[i].number() != nullptr || entry || area.is_single()) return Known::yes;
                continue;  // the units and labels in a range
            }
            const FormulaCell* formula = audited_.formulas.find({area.sheet, cells[i].row, c});
            if (formula == nullptr) continue;
            const std::size_t place = place_of(*formula);
            if (known_[place] == Known::yes) return Known::yes;
            if (known_[place] != Known::not_yet) continue;
            unknown = place;
            return Known::not_yet;
        }
    }
    return Known::no;
}

ReachesInputs::Known ReachesInputs::look(std::size_t formula, std::size_t& unknown) const {
    for (const Use& use : audited_.uses(audited_.formulas.all()[formula])) {
        const Known now = look(use.area, unknown);
        if (now != Known::no) return now;
    }
    return Known::no;
}

/// Formulas are followed one by one, since chains may be as long as a sheet.
void ReachesInputs::find_out(std::size_t formula) {
    std::vector<std::size_t> way = {formula};
    while (!way.empty()) {
        const std::size_t here = way.back();
        known_[here] = Known::on_the_way;
        std::size_t unknown = 0;
        const Known now = look(here, unknown);
        if (now == Known::not_yet) {
            way.push_back(unknown);
            continue;
        }
        known_[here] = now;
        way.pop_back();
    }
}

}  // namespace undercroft::audit
