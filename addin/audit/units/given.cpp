#include "addin/audit/units/own_units.hpp"
#include "addin/catalogue/catalogue.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

namespace {

/// "305 mm" as a quantity; another text is a word.
void read_words(Given& given, const std::string& text) {
    given.kind = Given::Kind::word;
    try {
        given.quantity = parse_quantity(text);
        given.kind = Given::Kind::quantity;
    } catch (const Refused&) {  // a choice such as "ellipse"
    }
}

void read_pair(UnitReader& reader, Given& given) {
    const Area& area = *given.area;
    const Book& book = reader.sources().book;
    const BookCell* number = book.find(area.first());
    const BookCell* unit = book.find({area.sheet, area.last_row, area.last_column});
    given.what = reader.text(area);
    const bool is_one = unit != nullptr && unit->number() != nullptr && *unit->number() == 1;
    if (number == nullptr || unit == nullptr || (unit->text() == nullptr && !is_one)) {
        given.kind = Given::Kind::blank;
        return;
    }
    const UnitText& text = reader.sources().units.read(is_one ? "1" : *unit->text());
    if (!text.unit) {
        given.kind = Given::Kind::blank;
        return;
    }
    given.kind = Given::Kind::quantity;
    given.quantity = Quantity::of(1, *text.unit);
    given.what += " in " + text.text;
}

void read_cell(UnitReader& reader, Given& given) {
    const Spot spot = given.area->first();
    const BookCell* cell = reader.sources().book.find(spot);
    given.what = reader.text(spot);
    if (cell == nullptr || cell->shows_nothing()) {
        given.kind = Given::Kind::blank;
        return;
    }
    if (cell->text() != nullptr) return read_words(given, *cell->text());
    given.kind = Given::Kind::cell;
    given.value = reader.of_cell(spot);
    given.beside = reader.sources().units.of(spot);
}

}  // namespace

UnitGiven unit_given_by(const UnitReader& reader, const Node& node) {
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
    return reader.sources().units.read(unit_given_by(reader, node.children[1]).text).unit;
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

Given given_by(UnitReader& reader, const Node& node) {
    Given given;
    if (const std::optional<Area> pair = pair_in_list(reader, node)) {
        given.area = pair;
        read_pair(reader, given);
        return given;
    }
    switch (node.kind) {
        case NodeKind::missing:
            return given;
        case NodeKind::text:
            given.what = '"' + node.text + '"';
            read_words(given, node.text);
            return given;
        case NodeKind::reference:
        case NodeKind::name:
            given.area = reader.area_of_node(node);
            if (!given.area) break;
            if (given.area->is_pair())
                read_pair(reader, given);
            else if (given.area->is_single())
                read_cell(reader, given);
            else
                given.kind = Given::Kind::range;
            return given;
        default:
            break;
    }
    given.value = reader.of(node);
    if (const std::optional<Unit> written = written_unit(reader, node)) {
        given.kind = Given::Kind::quantity;
        given.quantity = Quantity::of(1, *written);
        given.what = "the quantity of " + node.text;
        return given;
    }
    given.kind = given.value.literal ? Given::Kind::literal : Given::Kind::computed;
    given.what = given.value.what.empty() ? node.text : given.value.what;
    return given;
}

}  // namespace undercroft::audit
