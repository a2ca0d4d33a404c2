#include "addin/audit/units/passed_argument.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

/// "305 mm" as a quantity; another text is a word.
void read_words(PassedArgument& passed, const std::string& text) {
    passed.kind = PassedArgument::Kind::word;
    try {
        passed.quantity = parse_quantity(text);
        passed.kind = PassedArgument::Kind::quantity;
    } catch (const Refused&) {  // a choice such as "ellipse"
    }
}

void read_pair(UnitReader& reader, PassedArgument& passed) {
    const Area& area = *passed.area;
    const Book& book = reader.sources().book;
    const BookCell* number = book.find(area.first());
    const BookCell* unit = book.find({area.sheet, area.last_row, area.last_column});
    passed.what = reader.text(area);
    const bool is_one = unit != nullptr && unit->number() != nullptr && *unit->number() == 1;
    if (number == nullptr || unit == nullptr || (unit->text() == nullptr && !is_one)) {
        passed.kind = PassedArgument::Kind::blank;
        return;
    }
    const UnitText& text = reader.sources().units.read(is_one ? "1" : *unit->text());
    if (!text.unit) {
        passed.kind = PassedArgument::Kind::blank;
        return;
    }
    passed.kind = PassedArgument::Kind::quantity;
    passed.quantity = Quantity::of(1, *text.unit);
    passed.what += " in " + text.text;
}

void read_cell(UnitReader& reader, PassedArgument& passed) {
    const Spot spot = passed.area->first();
    const BookCell* cell = reader.sources().book.find(spot);
    passed.what = reader.text(spot);
    if (cell == nullptr || cell->shows_nothing()) {
        passed.kind = PassedArgument::Kind::blank;
        return;
    }
    if (cell->text() != nullptr) return read_words(passed, *cell->text());
    passed.kind = PassedArgument::Kind::cell;
    passed.value = reader.of_cell(spot);
    passed.beside = reader.sources().units.of(spot);
}

}  // namespace

PassedUnit passed_unit(const UnitReader& reader, const Node& node) {
    if (node.kind == NodeKind::text) return {node.text, {}};
    const std::optional<Area> area = reader.area_of_node(node);
    if (!area || !area->is_single()) return {};
    const BookCell* cell = reader.sources().book.find(area->first());
    if (cell == nullptr || cell->text() == nullptr) return {};
    return {*cell->text(), area->first()};
}

namespace {

/// The unit that a call of a function writes beside its number, where it does.
std::optional<Unit> written_unit(UnitReader& reader, const Node& node) {
    const addin::Function* function = node.kind == NodeKind::call ? addin::find_function(node.text) : nullptr;
    const bool writes = function != nullptr && function->role == addin::Role::writes;
    if (!writes || node.children.size() < 2) return std::nullopt;
    return reader.sources().units.read(passed_unit(reader, node.children[1]).text).unit;
}

/// The number and the unit that `INDEX(list; 3; 0)` takes: a whole row of a list of two columns.
std::optional<Area> pair_in_list(const UnitReader& reader, const Node& node) {
    const bool whole_row = node.kind == NodeKind::call && node.text == "INDEX" && node.children.size() == 3 &&
                           node.children[1].kind == NodeKind::number &&
                           node.children[2].kind == NodeKind::number && node.children[2].number == 0;
    if (!whole_row) return std::nullopt;
    std::optional<Area> row = reader.area_of_node(node.children[0]);
    const double at = node.children[1].number;
    if (!row || row->last_column != row->first_column + 1 || at < 1 ||
        at > row->last_row - row->first_row + 1)
        return std::nullopt;
    row->first_row = row->last_row = row->first_row + static_cast<std::int32_t>(at) - 1;
    return row;
}

}  // namespace

PassedArgument passed_argument(UnitReader& reader, const Node& node) {
    PassedArgument passed;
    if (const std::optional<Area> pair = pair_in_list(reader, node)) {
        passed.area = pair;
        read_pair(reader, passed);
        return passed;
    }
    switch (node.kind) {
        case NodeKind::missing:
            return passed;
        case NodeKind::text:
            passed.what = '"' + node.text + '"';
            read_words(passed, node.text);
            return passed;
        case NodeKind::reference:
        case NodeKind::name:
            passed.area = reader.area_of_node(node);
            if (!passed.area) break;
            if (passed.area->is_pair())
                read_pair(reader, passed);
            else if (passed.area->is_single())
                read_cell(reader, passed);
            else
                passed.kind = PassedArgument::Kind::range;
            return passed;
        default:
            break;
    }
    passed.value = reader.of(node);
    if (const std::optional<Unit> written = written_unit(reader, node)) {
        passed.kind = PassedArgument::Kind::quantity;
        passed.quantity = Quantity::of(1, *written);
        passed.what = "the quantity of " + node.text;
        return passed;
    }
    passed.kind = passed.value.literal ? PassedArgument::Kind::literal : PassedArgument::Kind::computed;
    passed.what = passed.value.what.empty() ? node.text : passed.value.what;
    return passed;
}

}  // namespace undercroft::audit
