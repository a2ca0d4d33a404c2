/// \file unit_reader.hpp
/// The units of one formula, followed through its operators and functions: consistent, inconsistent, cannot
/// tell, or no unit given. Never a guess.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "addin/audit/book/formulas.hpp"
#include "addin/audit/book/names.hpp"
#include "addin/audit/units/measured.hpp"
#include "addin/audit/units/unit_cells.hpp"
#include "addin/catalogue/function.hpp"

namespace undercroft::audit {

enum class UnitVerdict { consistent, inconsistent, cannot_tell, not_given };

/// `consistent`, `inconsistent`, `cannot tell`, `no unit given`
[[nodiscard]] std::string text_of(UnitVerdict verdict);

struct UnitAnswer {
    UnitVerdict verdict = UnitVerdict::cannot_tell;
    std::string reason;
    std::optional<Spot> cell;
};

/// Something about units that a checker must see.
struct UnitSlip {
    enum class Kind {
        clash,        ///< different units are added, compared or handed over
        passed_bare,  ///< a number is handed over without its unit, and is read in another
        left_out,     ///< a unit stands beside a number, but the formula does not look at it
        bare_number,  ///< a literal stands for a quantity
    };
    Kind kind = Kind::clash;
    std::string says;
    std::optional<Spot> cell;
};

struct UnitReading {
    UnitAnswer answer;
    std::vector<UnitSlip> slips;
};

/// What the reader looks things up in.
struct UnitSources {
    const Book& book;
    const Names& names;
    const UnitCells& units;
    /// How many more formulas that show an error may be computed again for their reason.
    mutable int reasons_left = 500;
};

/// The units of the group's formula in the cell at `at`.
[[nodiscard]] UnitReading read_units(const UnitSources& sources, const FormulaGroup& group, const Spot& at);

// --- for the files that share the work --------------------------------------------------------------------

class UnitReader {
public:
    UnitReader(const UnitSources& sources, const FormulaGroup& group, const Spot& at);

    /// The unit of a part of the formula; slips are noted on the way.
    [[nodiscard]] Measured of(const addin::Node& node);

    /// A function of ours: each argument held against what its parameter wants.
    [[nodiscard]] Measured of_own_call(const addin::Node& call, const addin::Function& function);
    /// A function of Calc.
    [[nodiscard]] Measured of_calc_call(const addin::Node& call);

    /// The cells that a reference or name stands for, where that is one area.
    [[nodiscard]] std::optional<Area> area_of_node(const addin::Node& node) const;
    [[nodiscard]] Measured of_area(const Area& area);
    [[nodiscard]] Measured of_cell(const Spot& spot);

    void note(UnitSlip::Kind kind, const std::string& says, const std::optional<Spot>& cell = {});
    /// `a` and `b` must be alike; notes a clash when they are not.
    [[nodiscard]] Measured alike_or_clash(const Measured& a, const Measured& b, const std::string& verb);

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
    [[nodiscard]] Measured of_operation(const addin::Node& node);
    [[nodiscard]] Measured of_power(const addin::Node& node);
    [[nodiscard]] Measured of_name(const addin::Node& node);

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
