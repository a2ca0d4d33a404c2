/// \file evaluate.hpp
/// Values of a formula's parts: literals, calls of ours, plain arithmetic. What only a sheet knows - cells,
/// names, functions of Calc - is asked of whoever derives from Evaluator.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "addin/catalogue/cell.hpp"
#include "addin/catalogue/function.hpp"
#include "addin/formula/formula.hpp"
#include "units/refused.hpp"

namespace undercroft::addin {

/// A value that owns what it shows.
class FormulaValue {
public:
    FormulaValue() = default;
    explicit FormulaValue(double number) : value_(number) {}
    explicit FormulaValue(std::u16string text) : value_(std::move(text)) {}
    explicit FormulaValue(std::vector<std::vector<OwnedGrid::Item>> cells)
        : value_(std::make_shared<OwnedGrid>(std::move(cells))) {}
    explicit FormulaValue(const Answer& answer);
    /// One cell of a range; nothing is an empty text.
    explicit FormulaValue(const Scalar& scalar);
    /// A blank cell referred to by itself: Calc hands it over as 0.
    [[nodiscard]] static FormulaValue blank_cell();

    /// As a function of the catalogue takes it; lives as long as this value.
    [[nodiscard]] Cell cell() const;
    [[nodiscard]] const double* number() const { return std::get_if<double>(&value_); }
    [[nodiscard]] const std::u16string* text() const { return std::get_if<std::u16string>(&value_); }
    [[nodiscard]] bool is_grid() const { return std::holds_alternative<std::shared_ptr<OwnedGrid>>(value_); }
    [[nodiscard]] bool is_blank_cell() const { return blank_; }

private:
    bool blank_ = false;
    std::variant<std::monostate, double, std::u16string, std::shared_ptr<OwnedGrid>> value_;
};

/// As the catalogue's functions take them.
[[nodiscard]] std::vector<Cell> cells_of(const std::vector<FormulaValue>& values);

/// A refusal of a call in the words of one who sees which argument is a blank cell: to the function Calc
/// hands it over as 0.
[[nodiscard]] Refused seen_blank(const Refused& refused, const Function& function, const Node& call,
                                 const std::vector<FormulaValue>& values);

/// What a function of Calc that chooses takes, and why.
struct Chosen {
    Node node;
    std::string says;  ///< "its condition holds"
};
/// The same, with the function that chose.
struct Branch {
    Node call;
    Node taken;
    std::string says;
};

class Evaluator {
public:
    Evaluator() = default;
    Evaluator(const Evaluator&) = delete;
    Evaluator& operator=(const Evaluator&) = delete;
    virtual ~Evaluator() = default;

    /// The value of a part of a formula.
    /// \throws Refused when it cannot be computed here, or a function of ours refuses its arguments.
    [[nodiscard]] FormulaValue value_of(const Node& node) const;

    /// The values of a call's arguments, one for each parameter of the function.
    [[nodiscard]] std::vector<FormulaValue> arguments(const Node& call, const Function& function) const;

    /// What IF, IFS, SWITCH, CHOOSE, IFERROR, IFNA, INDEX, OFFSET, INDIRECT or `A1:INDEX(...)` takes: a part
    /// of the formula, or cells. Nothing for another part, and where only Calc can tell. \throws Refused
    /// where none is taken, or the condition is refused.
    [[nodiscard]] std::optional<Chosen> chosen(const Node& node) const;

    /// The formula with all that is not taken left out, and each choice on the way.
    [[nodiscard]] Node followed(const Node& node, std::vector<Branch>& branches) const;

protected:
    /// The cells that a part of a formula stands for, where it stands for cells.
    [[nodiscard]] std::optional<CellReference> referred(const Node& node) const;
    [[nodiscard]] virtual FormulaValue value_of_reference(const Node& node) const;
    [[nodiscard]] virtual FormulaValue value_of_name(const Node& node) const;
    [[nodiscard]] virtual FormulaValue value_of_foreign_call(const Node& node) const;
    /// The cells that a name stands for, where it stands for cells and not for a formula.
    [[nodiscard]] virtual std::optional<CellReference> cells_of_name(const Node& node) const;
    /// The cells that the formula of a name leads to, as OFFSET in it does.
    [[nodiscard]] virtual std::optional<CellReference> cells_by_name(const Node& node) const {
        return cells_of_name(node);
    }
    /// A number as the text that Calc joins to another one; its decimal sign is that of the locale.
    [[nodiscard]] virtual std::u16string joined_text(double number) const;
    /// Whether texts that differ in case only are equal; a setting of the document.
    [[nodiscard]] virtual bool ignores_case() const { return false; }
    /// Where the formula stands, where that is known.
    [[nodiscard]] virtual std::optional<CellAddress> own_cell() const { return std::nullopt; }
    /// An error is passed over, as IFERROR does: whatever was noted about its cell is void.
    virtual void forget_blame() const {}
    /// A function of ours is about to be computed.
    virtual void before_call() const {}

private:
    [[nodiscard]] bool holds(const Node& condition) const;
    [[nodiscard]] double number_or(const Node& node, std::size_t argument, double otherwise) const;
    /// Below, equal or above: -1, 0 or 1.
    [[nodiscard]] int compare(const FormulaValue& left, const FormulaValue& right) const;
    [[nodiscard]] std::optional<Refused> error_of(const Node& node, bool only_no_answer) const;
    [[nodiscard]] std::optional<CellReference> cells_or_nothing(const Node& node) const;
    [[nodiscard]] Chosen chosen_by_if(const Node& node) const;
    [[nodiscard]] Chosen chosen_by_ifs(const Node& node) const;
    [[nodiscard]] Chosen chosen_by_switch(const Node& node) const;
    [[nodiscard]] Chosen chosen_by_place(const Node& node) const;
    [[nodiscard]] Chosen chosen_by_error(const Node& node) const;
    [[nodiscard]] std::optional<Chosen> chosen_by_index(const Node& node) const;
    [[nodiscard]] std::optional<Chosen> chosen_by_offset(const Node& node) const;
    [[nodiscard]] std::optional<Chosen> chosen_by_text(const Node& node) const;
    [[nodiscard]] std::optional<Chosen> chosen_by_ends(const Node& node) const;
    [[nodiscard]] FormulaValue value_of_choice(const Node& node) const;
    [[nodiscard]] FormulaValue value_in_grid(const Node& node) const;
    [[nodiscard]] FormulaValue value_of_operation(const Node& node) const;
    [[nodiscard]] FormulaValue value_of_array(const Node& node) const;
    [[nodiscard]] FormulaValue value_of_call(const Node& node) const;
    [[nodiscard]] double number_of(const Node& node) const;
};

}  // namespace undercroft::addin
