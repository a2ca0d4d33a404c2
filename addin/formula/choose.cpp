// What IF, IFS, SWITCH, CHOOSE, IFERROR, IFNA, INDEX, OFFSET and INDIRECT take, as Calc does.
#include <algorithm>
#include <cmath>

#include "addin/formula/evaluate.hpp"
#include "addin/formula/read_reference.hpp"
#include "units/text.hpp"

namespace undercroft::addin {

namespace {

/// "1st", "2nd", "13th".
std::string ordinal(std::size_t number) {
    const std::size_t last = number % 10;
    const bool teen = number % 100 / 10 == 1;
    const char* ending = teen || last == 0 || last > 3 ? "th" : last == 1 ? "st" : last == 2 ? "nd" : "rd";
    return std::to_string(number) + ending;
}

/// "1 row", "2 rows".
std::string counted(std::int64_t number, const char* what) {
    return std::to_string(number) + " " + what + (number == 1 || number == -1 ? "" : "s");
}

Node number_node(double number) {
    Node node;
    node.kind = NodeKind::number;
    node.number = number;
    return node;
}

Node reference_node(CellReference reference) {
    Node node;
    node.kind = NodeKind::reference;
    node.text = reference.text();
    node.reference = std::move(reference);
    return node;
}

/// Places from 1, or 0 for all; a part of the sheet that is not there is refused.
std::int64_t whole(double number, const std::string& what) {
    if (!(std::abs(number) < 1e9)) refuse_domain(what + " " + exact_text(number) + " is not on any sheet");
    return static_cast<std::int64_t>(std::floor(number));
}

/// Corners from the upper left to the lower right.
CellReference in_order(CellReference reference) {
    if (reference.first.row > reference.last.row) std::swap(reference.first.row, reference.last.row);
    if (reference.first.column > reference.last.column)
        std::swap(reference.first.column, reference.last.column);
    return reference;
}

/// The cells of `from` that begin so many rows and columns behind its first and are so high and wide.
CellReference part_of(const CellReference& from, std::int64_t row, std::int64_t column, std::int64_t height,
                      std::int64_t width) {
    const std::int64_t first_row = from.first.row + row;
    const std::int64_t first_column = from.first.column + column;
    if (height < 1 || width < 1) refuse_domain("a range of no rows or no columns is asked for");
    if (first_row < 0 || first_column < 0 || first_row + height > most_rows ||
        first_column + width > most_columns)
        refuse_domain("it leaves the sheet");
    CellReference part = from;
    part.first.row = static_cast<std::int32_t>(first_row);
    part.first.column = static_cast<std::int32_t>(first_column);
    part.last = part.first;
    part.last.row = static_cast<std::int32_t>(first_row + height - 1);
    part.last.column = static_cast<std::int32_t>(first_column + width - 1);
    part.is_range = height > 1 || width > 1;
    part.whole_columns = part.whole_columns && height == most_rows;
    part.whole_rows = part.whole_rows && width == most_columns;
    return part;
}

const Node& child(const Node& node, std::size_t i) {
    static const Node missing;
    return i < node.children.size() ? node.children[i] : missing;
}

bool is_missing(const Node& node, std::size_t i) {
    return child(node, i).kind == NodeKind::missing;
}

}  // namespace

bool Evaluator::holds(const Node& condition) const {
    return number_of(condition) != 0;
}

Chosen Evaluator::chosen_by_if(const Node& node) const {
    if (holds(child(node, 0))) {
        const double left_out = node.children.size() < 2 ? 1 : 0;  // IF(A1) is TRUE, IF(A1;;2) is 0
        return {is_missing(node, 1) ? number_node(left_out) : child(node, 1), "its condition holds"};
    }
    const std::string says = "its condition does not hold";
    if (node.children.size() < 3) return {number_node(0), says};
    return {is_missing(node, 2) ? number_node(0) : child(node, 2), says};
}

Chosen Evaluator::chosen_by_ifs(const Node& node) const {
    for (std::size_t i = 0; i + 1 < node.children.size(); i += 2)
        if (holds(node.children[i]))
            return {node.children[i + 1], "its " + ordinal(i / 2 + 1) + " condition holds"};
    no_answer("none of the conditions of IFS holds");
}

Chosen Evaluator::chosen_by_switch(const Node& node) const {
    const FormulaValue value = value_of(child(node, 0));
    std::size_t i = 1;
    for (; i + 1 < node.children.size(); i += 2)
        if (compare(value, value_of(node.children[i])) == 0)
            return {node.children[i + 1], "it is equal to the " + ordinal(i / 2 + 1) + " value"};
    if (i < node.children.size()) return {node.children[i], "it is equal to no value, and this is the last"};
    no_answer("SWITCH finds none of its values equal");
}

Chosen Evaluator::chosen_by_place(const Node& node) const {
    const auto place = whole(number_of(child(node, 0)), "place");
    if (place < 1 || place >= static_cast<std::int64_t>(node.children.size()))
        refuse_value("CHOOSE is asked for value " + std::to_string(place) + " of " +
                     std::to_string(node.children.size() - 1));
    return {node.children[static_cast<std::size_t>(place)],
            "the " + ordinal(static_cast<std::size_t>(place)) + " value is asked for"};
}

std::optional<Refused> Evaluator::error_of(const Node& node, bool only_no_answer) const {
    try {
        (void)value_of(node);
        return std::nullopt;
    } catch (const Refused& refused) {
        if (refused.refusal() == Refusal::not_followed) throw;  // Calc may have computed it
        if (only_no_answer && refused.cause() != Cause::no_answer) throw;
        forget_blame();
        return refused;
    }
}

std::optional<CellReference> Evaluator::cells_or_nothing(const Node& node) const {
    try {
        return referred(node);
    } catch (const Refused&) {
        return std::nullopt;  // IFERROR passes over it
    }
}

Chosen Evaluator::chosen_by_error(const Node& node) const {
    const NodeKind kind = child(node, 0).kind;
    const bool may_be_range = kind == NodeKind::reference || kind == NodeKind::name;
    const auto cells = may_be_range ? cells_or_nothing(child(node, 0)) : std::nullopt;
    if (cells && cells->is_range)
        throw Refused(Cause::value,
                      "of the range " + cells->text() + " " + node.text +
                          " takes what stands in the formula's own row or column, which is not followed here",
                      Refusal::not_followed);
    const auto refused = error_of(child(node, 0), node.text == "IFNA");
    if (!refused) return {child(node, 0), "its first part is no error"};
    return {is_missing(node, 1) ? number_node(0) : child(node, 1),
            std::string("its first part is an error (") + refused->what() + ")"};
}

std::optional<CellReference> Evaluator::referred(const Node& node) const {
    if (node.kind == NodeKind::reference) return node.reference;
    if (node.kind == NodeKind::name) return cells_by_name(node);
    const std::optional<Chosen> choice = chosen(node);
    return choice ? referred(choice->node) : std::nullopt;
}

std::optional<Chosen> Evaluator::chosen_by_ends(const Node& node) const {
    const std::optional<CellReference> first = referred(node.children[0]);
    const std::optional<CellReference> last = referred(node.children[1]);
    if (!first || !last || !first->document.empty() || !last->document.empty()) return std::nullopt;
    if (first->sheet != last->sheet || !first->last_sheet.empty() || !last->last_sheet.empty())
        return std::nullopt;
    const CellReference a = in_order(*first);
    const CellReference b = in_order(*last);
    CellReference all = a;
    all.first.row = std::min(a.first.row, b.first.row);
    all.first.column = std::min(a.first.column, b.first.column);
    all.last.row = std::max(a.last.row, b.last.row);
    all.last.column = std::max(a.last.column, b.last.column);
    all.is_range = true;
    return Chosen{reference_node(std::move(all)), "from " + first->text() + " to " + last->text()};
}

double Evaluator::number_or(const Node& node, std::size_t argument, double otherwise) const {
    return is_missing(node, argument) ? otherwise : number_of(child(node, argument));
}

std::optional<Chosen> Evaluator::chosen_by_index(const Node& node) const {
    std::optional<CellReference> cells = referred(child(node, 0));
    if (!cells || number_or(node, 3, 1) != 1) return std::nullopt;
    *cells = in_order(*cells);
    const std::int64_t rows = cells->last.row - cells->first.row + 1;
    const std::int64_t columns = cells->last.column - cells->first.column + 1;
    auto row = whole(number_or(node, 1, 0), "row");
    auto column = whole(number_or(node, 2, 0), "column");
    if (rows == 1 && columns > 1 && node.children.size() == 2) std::swap(row, column);
    const std::string where = (row == 0 ? "" : "row " + std::to_string(row)) +
                              (row == 0 || column == 0 ? "" : ", ") +
                              (column == 0 ? "" : "column " + std::to_string(column));
    if (row < 0 || row > rows || column < 0 || column > columns)
        refuse_domain("INDEX asks for " + where + " of " + cells->text() + ", which has " +
                      counted(rows, "row") + " and " + counted(columns, "column"));
    return Chosen{reference_node(part_of(*cells, std::max<std::int64_t>(row - 1, 0),
                                         std::max<std::int64_t>(column - 1, 0), row == 0 ? rows : 1,
                                         column == 0 ? columns : 1)),
                  (where.empty() ? "all" : where) + " of " + cells->text()};
}

std::optional<Chosen> Evaluator::chosen_by_offset(const Node& node) const {
    std::optional<CellReference> cells = referred(child(node, 0));
    if (!cells) return std::nullopt;
    *cells = in_order(*cells);
    const auto row = whole(number_or(node, 1, 0), "row");
    const auto column = whole(number_or(node, 2, 0), "column");
    const double high = cells->last.row - cells->first.row + 1;
    const double wide = cells->last.column - cells->first.column + 1;
    return refused_behind(std::string("OFFSET: "), [&] {
        return Chosen{reference_node(part_of(*cells, row, column, whole(number_or(node, 3, high), "height"),
                                             whole(number_or(node, 4, wide), "width"))),
                      counted(row, "row") + " and " + counted(column, "column") + " from " + cells->text()};
    });
}

std::optional<Chosen> Evaluator::chosen_by_text(const Node& node) const {
    const FormulaValue value = value_of(child(node, 0));
    if (value.text() == nullptr) return std::nullopt;
    const std::string text = to_utf8(*value.text());
    const auto refuse = [&text](const char* why) {
        refuse_value("INDIRECT: \"" + text + "\" is no reference" + why);
    };
    Chosen choice{{}, "its text is \"" + text + '"'};
    if (number_or(node, 1, 1) == 0) {
        std::optional<CellReference> cells = numbered_reference(text, own_cell());
        if (!cells) refuse(" by numbers of row and column");
        choice.node = reference_node(std::move(*cells));
        return choice;
    }
    try {
        choice.node = parse_formula(text);
    } catch (const Refused&) {
        refuse("");
    }
    Node& named = choice.node;
    named.begin = named.end = 0;  // it does not stand in the formula
    if (named.kind == NodeKind::name && !cells_of_name(named)) refuse(", nor a name that stands for cells");
    if (named.kind != NodeKind::reference && named.kind != NodeKind::name) refuse("");
    for (CellAddress* corner : {&named.reference.first, &named.reference.last})
        corner->column_fixed = corner->row_fixed = true;  // wherever the formula stands
    return choice;
}

std::optional<Chosen> Evaluator::chosen(const Node& node) const {
    if (node.kind == NodeKind::operation && node.text == ":" && node.children.size() == 2)
        return chosen_by_ends(node);
    if (node.kind != NodeKind::call) return std::nullopt;
    if (node.text == "IF") return chosen_by_if(node);
    if (node.text == "IFS") return chosen_by_ifs(node);
    if (node.text == "SWITCH") return chosen_by_switch(node);
    if (node.text == "CHOOSE") return chosen_by_place(node);
    if (node.text == "IFERROR" || node.text == "IFNA") return chosen_by_error(node);
    if (node.text == "INDEX") return chosen_by_index(node);
    if (node.text == "OFFSET") return chosen_by_offset(node);
    if (node.text == "INDIRECT") return chosen_by_text(node);
    return std::nullopt;
}

Node Evaluator::followed(const Node& node, std::vector<Branch>& branches) const {
    if (std::optional<Chosen> choice = chosen(node)) {
        branches.push_back({node, choice->node, choice->says});
        return followed(choice->node, branches);
    }
    Node copy;  // without its parts, each of which would be copied once more for every level above it
    copy.kind = node.kind;
    copy.text = node.text;
    copy.number = node.number;
    copy.reference = node.reference;
    copy.begin = node.begin;
    copy.end = node.end;
    copy.children.reserve(node.children.size());
    for (const Node& part : node.children) copy.children.push_back(followed(part, branches));
    return copy;
}

FormulaValue Evaluator::value_of_choice(const Node& node) const {
    if (node.text == "IFERROR" || node.text == "IFNA") {  // computed once
        try {
            return value_of(child(node, 0));
        } catch (const Refused& refused) {
            const bool kept = refused.refusal() == Refusal::not_followed ||
                              (node.text == "IFNA" && refused.cause() != Cause::no_answer);
            if (kept) throw;
            forget_blame();
            return is_missing(node, 1) ? FormulaValue(0.0) : value_of(child(node, 1));
        }
    }
    if (const std::optional<Chosen> choice = chosen(node)) return value_of(choice->node);
    if (node.text == "INDEX") return value_in_grid(node);
    return value_of_foreign_call(node);
}

FormulaValue Evaluator::value_in_grid(const Node& node) const {
    const FormulaValue value = value_of(child(node, 0));
    if (!value.is_grid()) return value;
    const Cell cell = value.cell();
    const Grid& grid = *std::get<const Grid*>(cell);
    auto row = whole(number_or(node, 1, 0), "row");
    auto column = whole(number_or(node, 2, 0), "column");
    if (grid.rows() == 1 && node.children.size() == 2) std::swap(row, column);
    if (grid.rows() == 1 && row == 0) row = 1;
    if (grid.columns() == 1 && column == 0) column = 1;
    if (row < 1 || column < 1) return value_of_foreign_call(node);
    if (row > static_cast<std::int64_t>(grid.rows()) || column > static_cast<std::int64_t>(grid.columns()))
        refuse_domain("INDEX asks for row " + std::to_string(row) + ", column " + std::to_string(column) +
                      " of a table of " + std::to_string(grid.rows()) + " rows and " +
                      std::to_string(grid.columns()) + " columns");
    return FormulaValue(grid.at(static_cast<std::size_t>(row) - 1, static_cast<std::size_t>(column) - 1));
}

}  // namespace undercroft::addin
