/// \file unit_reader.hpp
/// The units of one formula, followed from part to part.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "addin/audit/book/formulas.hpp"
#include "addin/audit/book/names.hpp"
#include "addin/audit/units/term.hpp"
#include "addin/audit/units/unit_answer.hpp"
#include "addin/audit/units/unit_cells.hpp"
#include "addin/catalogue/function.hpp"

namespace undercroft::audit {

/// What the reader looks things up in.
struct UnitSources {
    const Book& book;
    const Names& names;
    const Formulas& formulas;
    const UnitCells& units;
    bool bare_is_plain = false;  ///< a number without a unit counts as one that needs none
};

/// Follows the units of one formula through its operators and functions.
class UnitReader {
public:
    UnitReader(const UnitSources& sources, const FormulaGroup& group, const Spot& at);

    /// The unit of a part of the formula; slips are noted on the way.
    [[nodiscard]] Term of(const addin::Node& node);

    /// A function of ours: each argument held against what its parameter wants.
    [[nodiscard]] Term of_own_call(const addin::Node& call, const addin::Function& function);

    /// The cells that a reference or name stands for, where that is one area.
    [[nodiscard]] std::optional<Area> area_of_node(const addin::Node& node) const;
    [[nodiscard]] Term of_area(const Area& area);
    [[nodiscard]] Term of_cell(const Spot& spot);

    void note(SlipKind kind, const std::string& says, const std::optional<Spot>& cell = {});
    /// `a` and `b` must be alike; notes a clash when they are not.
    [[nodiscard]] Term alike_or_clash(const Term& a, const Term& b, const std::string& verb);

    [[nodiscard]] const UnitSources& sources() const { return sources_; }
    [[nodiscard]] const Spot& at() const { return at_; }
    [[nodiscard]] std::string text(const Spot& spot) const {
        return sources_.book.text_from(at_.sheet, spot);
    }
    [[nodiscard]] std::string text(const Area& area) const {
        return sources_.book.text_from(at_.sheet, area);
    }
    [[nodiscard]] std::vector<UnitSlip>& slips() { return slips_; }
    /// Where the unit of the formula's result was asked for; set by the outermost call of ours.
    [[nodiscard]] const std::optional<Spot>& asked_at() const { return asked_at_; }
    void ask_at(const std::optional<Spot>& spot) { asked_at_ = spot; }
    /// What an argument lacks, for the answer `no unit given`.
    void lack(const std::string& what, const std::optional<Spot>& cell);
    [[nodiscard]] const std::optional<UnitAnswer>& lacks() const { return lacks_; }
    void doubt(const std::string& why, const std::optional<Spot>& cell);
    [[nodiscard]] const std::optional<UnitAnswer>& doubts() const { return doubts_; }

private:
    [[nodiscard]] Term of_operation(const addin::Node& node);
    [[nodiscard]] Term of_power(const addin::Node& node);
    [[nodiscard]] Term of_name(const addin::Node& node);
    /// A number without a unit that its format shows as a day of the calendar.
    [[nodiscard]] bool is_shown_as_date(const Spot& spot) const;
    [[nodiscard]] bool holds_dates_only(const Area& area) const;

    const UnitSources& sources_;
    const addin::Node* root_;  ///< the whole formula
    Spot base_;                ///< where the tree being read stands; inside a name, the name's own
    Spot at_;
    int depth_ = 0;
    int names_left_ = 2000;
    std::vector<UnitSlip> slips_;
    std::optional<Spot> asked_at_;
    std::optional<UnitAnswer> lacks_;
    std::optional<UnitAnswer> doubts_;
};

}  // namespace undercroft::audit
