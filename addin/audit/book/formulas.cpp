#include "addin/audit/book/formulas.hpp"

#include <algorithm>

#include "addin/catalogue/catalogue.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;

namespace {

void append_axis(std::string& text, char letter, std::int32_t place, bool fixed, std::int32_t from) {
    text += letter;
    if (fixed)
        text += std::to_string(place + 1);
    else if (place != from)
        text += "[" + std::to_string(place - from) + "]";
}

/// A function of ours by the name that a person types, whatever the file calls it.
std::string function_name(const std::string& name) {
    const addin::Function* function = addin::find_function(name);
    return function != nullptr ? function->name : name;
}

class Writer {
public:
    Writer(const WriteReference& write_reference, bool bare)
        : write_reference_(write_reference), bare_(bare) {}

    void write(const Node& node) {
        switch (node.kind) {
            case Node::Kind::missing:
                return;
            case Node::Kind::number:
                text_ += bare_ ? "n" : exact_text(node.number);
                return;
            case Node::Kind::text:
                text_ += bare_ ? "t" : '"' + node.text + '"';
                return;
            case Node::Kind::error:
                text_ += node.text;
                return;
            case Node::Kind::reference:
                text_ += bare_ ? (node.reference.is_range ? "R:R" : "R") : write_reference_(node.reference);
                return;
            case Node::Kind::name:
                text_ += bare_ ? "R" : lower_case(node.text);
                return;
            case Node::Kind::call:
                text_ += function_name(node.text) + "(";
                write_children(node, ";");
                text_ += ")";
                return;
            case Node::Kind::array:
                text_ += "{";
                write_children(node, ";");
                text_ += "}";
                return;
            case Node::Kind::operation:
                write_operation(node);
                return;
        }
    }
    [[nodiscard]] std::string take() { return std::move(text_); }

private:
    void write_children(const Node& node, const char* between) {
        for (std::size_t i = 0; i < node.children.size(); ++i) {
            if (i > 0) text_ += between;
            write(node.children[i]);
        }
    }
    // Brackets around every operation: the tree already knows which binds first.
    void write_operation(const Node& node) {
        text_ += "(";
        if (node.children.size() == 1) {
            if (node.text != "%") text_ += node.text;
            write(node.children[0]);
            if (node.text == "%") text_ += "%";
        } else {
            write(node.children[0]);
            text_ += node.text;
            write(node.children[1]);
        }
        text_ += ")";
    }

    const WriteReference& write_reference_;
    bool bare_;
    std::string text_;
};

}  // namespace

std::string written(const Node& node, const WriteReference& write_reference, bool bare) {
    Writer writer(write_reference, bare);
    writer.write(node);
    return writer.take();
}

std::string seen_from(const Spot& at, const addin::CellReference& reference) {
    std::string text;
    if (!reference.document.empty()) text += "'" + reference.document + "'#";
    if (!reference.sheet.empty()) text += addin::sheet_prefix(reference.sheet);
    const auto corner = [&](const addin::CellAddress& address) {
        append_axis(text, 'R', address.row, address.row_fixed, at.row);
        append_axis(text, 'C', address.column, address.column_fixed, at.column);
    };
    corner(reference.first);
    if (!reference.is_range) return text;
    text += ':';
    if (!reference.last_sheet.empty()) text += addin::sheet_prefix(reference.last_sheet);
    corner(reference.last);
    return text;
}

bool FormulaGroup::is_link() const {
    if (!unreadable.empty() || is_array) return false;
    return tree.kind == Node::Kind::name || (tree.kind == Node::Kind::reference && !tree.reference.is_range);
}

Formulas::Formulas(const Book& book)
    : book_(book),
      has_own_names_(std::any_of(book.names.begin(), book.names.end(),
                                 [](const DefinedName& name) { return name.sheet >= 0; })) {
    for (std::size_t s = 0; s < book.sheets.size(); ++s) {
        const BookSheet& sheet = book.sheets[s];
        by_cell_.emplace_back(sheet.cells.size(), -1);
        for (const BookCell& cell : sheet.cells) {
            if (!cell.is_formula()) continue;
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            if (cell.array < 0) {
                add(at, cell, Area::of(at));
                continue;
            }
            const Area& area = sheet.arrays[static_cast<std::size_t>(cell.array)];
            if (area.first() == at) add(at, cell, area);
        }
    }
}

void Formulas::add(const Spot& at, const BookCell& cell, const Area& area) {
    FormulaGroup made;
    made.base = at;
    made.is_array = cell.array >= 0;
    try {
        made.tree = addin::parse_formula(cell.formula);
        made.key = written(made.tree,
                           [&](const addin::CellReference& reference) { return seen_from(at, reference); });
        if (made.is_array)
            made.key = "{" + made.key + "}" + std::to_string(area.last_row - area.first_row + 1) + "x" +
                       std::to_string(area.last_column - area.first_column + 1);
        // Names of one sheet mean something else on another.
        if (has_own_names_) made.key += "@" + std::to_string(at.sheet);
    } catch (const Refused& refused) {
        made.unreadable = refused.what();
        made.key = cell.formula;
    }
    const auto [known, is_new] = by_key_.try_emplace(made.key, static_cast<std::uint32_t>(groups_.size()));
    if (is_new) {
        if (made.unreadable.empty()) made.skeleton = written(made.tree, {}, true);
        groups_.push_back(std::move(made));
    }
    if (cell.array < 0) {
        const BookCell* first = book_.sheets[static_cast<std::size_t>(at.sheet)].cells.data();
        by_cell_.back()[static_cast<std::size_t>(&cell - first)] = static_cast<std::int32_t>(known->second);
    }
    groups_[known->second].members.push_back(static_cast<std::uint32_t>(cells_.size()));
    cells_.push_back({at, area, known->second, &cell});
}

const FormulaCell* Formulas::find(const Spot& spot) const {
    const BookCell* cell = book_.find(spot);
    if (cell == nullptr || !cell->is_formula()) return nullptr;
    Spot at = spot;
    if (cell->array >= 0)
        at = book_.sheets[static_cast<std::size_t>(spot.sheet)]
                 .arrays[static_cast<std::size_t>(cell->array)]
                 .first();
    const auto found = std::lower_bound(cells_.begin(), cells_.end(), at,
                                        [](const FormulaCell& f, const Spot& s) { return f.at < s; });
    return found != cells_.end() && found->at == at ? &*found : nullptr;
}

}  // namespace undercroft::audit
