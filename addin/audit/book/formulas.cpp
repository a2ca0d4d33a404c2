#include "addin/audit/book/formulas.hpp"

#include <algorithm>
#include <string_view>

#include "addin/catalogue/catalogue.hpp"
#include "units/refused.hpp"
#include "units/text.hpp"

namespace undercroft::audit {

using addin::Node;
using addin::NodeKind;

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

class FormulaWriter {
public:
    FormulaWriter(const WriteReference& write_reference, bool bare)
        : write_reference_(write_reference), bare_(bare) {}

    void write(const Node& node) {
        switch (node.kind) {
            case NodeKind::missing:
                return;
            case NodeKind::number:
                text_ += bare_ ? "n" : exact_text(node.number);
                return;
            case NodeKind::text:
                text_ += bare_ ? "t" : '"' + node.text + '"';
                return;
            case NodeKind::error:
                text_ += node.text;
                return;
            case NodeKind::reference:
                text_ += bare_ ? (node.reference.is_range ? "R:R" : "R") : write_reference_(node.reference);
                return;
            case NodeKind::name:
                text_ += bare_ ? "R" : lower_case(node.text);
                return;
            case NodeKind::call:
                text_ += function_name(node.text) + "(";
                write_children(node, ";");
                text_ += ")";
                return;
            case NodeKind::array:
                text_ += "{";
                write_children(node, ";");
                text_ += "}";
                return;
            case NodeKind::operation:
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
    FormulaWriter writer(write_reference, bare);
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
    if (!unreadable().empty() || is_array) return false;
    return tree().kind == NodeKind::name ||
           (tree().kind == NodeKind::reference && !tree().reference.is_range);
}

namespace {

ParsedFormula parsed(const std::string& text) {
    try {
        return {std::make_shared<const Node>(addin::parse_formula(text)), {}};
    } catch (const Refused& refused) {
        return {std::make_shared<const Node>(), refused.what()};
    }
}

/// The texts of all formulas of a workbook. Each is read when it is first taken and forgotten when it is last
/// taken, so that an equal text is read once and trees that nobody asks for again are not kept.
class FormulaTexts {
public:
    explicit FormulaTexts(const Book& book) {
        for (const BookSheet& sheet : book.sheets)
            for (const BookCell& cell : sheet.cells)
                if (cell.is_formula()) ++texts_[cell.formula].to_come;
    }

    ParsedFormula take(const std::string& formula) {
        Text& text = texts_.at(formula);
        if (text.parsed.tree == nullptr) text.parsed = parsed(formula);
        if (--text.to_come == 0) return std::move(text.parsed);
        return text.parsed;
    }

private:
    struct Text {
        std::size_t to_come = 0;
        ParsedFormula parsed;
    };
    std::unordered_map<std::string_view, Text> texts_;
};

}  // namespace

bool calls_own(const FormulaGroup& group) {
    bool own = false;
    walk(group.tree(), [&](const Node& node) {
        own = own || (node.kind == NodeKind::call && addin::find_function(node.text) != nullptr);
    });
    return own;
}

Formulas::Formulas(const Book& book)
    : book_(book),
      has_own_names_(std::any_of(book.names.begin(), book.names.end(),
                                 [](const DefinedName& name) { return name.sheet >= 0; })) {
    FormulaTexts texts(book);
    for (std::size_t s = 0; s < book.sheets.size(); ++s) {
        const BookSheet& sheet = book.sheets[s];
        by_cell_.emplace_back(sheet.cells.size(), -1);
        for (const BookCell& cell : sheet.cells) {
            if (!cell.is_formula()) continue;
            const Spot at{static_cast<std::int32_t>(s), cell.row, cell.column};
            if (cell.array < 0) {
                add(at, cell, Area::of(at), texts.take(cell.formula));
                continue;
            }
            const Area& area = sheet.arrays[static_cast<std::size_t>(cell.array)];
            if (area.first() == at) add(at, cell, area, texts.take(cell.formula));
        }
    }
}

void Formulas::add(const Spot& at, const BookCell& cell, const Area& area, ParsedFormula parsed) {
    FormulaGroup made;
    made.base = at;
    made.is_array = cell.array >= 0;
    made.parsed = std::move(parsed);
    if (made.unreadable().empty()) {
        made.key = written(made.tree(),
                           [&](const addin::CellReference& reference) { return seen_from(at, reference); });
        if (made.is_array)
            made.key = "{" + made.key + "}" + std::to_string(area.last_row - area.first_row + 1) + "x" +
                       std::to_string(area.last_column - area.first_column + 1);
        // Names of one sheet mean something else on another.
        if (has_own_names_) made.key += "@" + std::to_string(at.sheet);
    } else {
        made.key = cell.formula;
    }
    const auto [known, is_new] = by_key_.try_emplace(made.key, static_cast<std::uint32_t>(groups_.size()));
    if (is_new) {
        if (made.unreadable().empty()) made.skeleton = written(made.tree(), {}, true);
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
