/// \file finding.hpp
/// What the audit tells: one finding a mistake, with its cells, how grave it is, and what to do.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "addin/audit/book/book.hpp"

namespace undercroft::audit {

enum class Severity { error, warning, note };

enum class FindingKind {
    error,             ///< a cell shows an error
    circular,          ///< a formula rests on its own result
    check_failed,      ///< a check row that fails
    typed_over,        ///< a number where a formula belongs
    template_changed,  ///< a formula, unit or label differs from the template
    template_rows,     ///< rows or sheets added or missing
    neighbour,         ///< a formula differs from those around it
    bare_number,       ///< a number hidden in a formula
    unit_clash,        ///< units that do not fit
    passed_bare,       ///< a number handed over without its unit, and read in another
    unit_left_out,     ///< a unit cell that the formula does not look at
    unit_text,         ///< a unit cell that holds no unit
    number_format,     ///< a number shown otherwise than a function reads it
    cut_table,         ///< a table in a range that is too short for it
    blank_reference,   ///< a formula refers to a blank cell
    text_reference,    ///< a formula computes with a text
    sum_misses,        ///< a sum that leaves out the number beside its range
    unused,            ///< an input that nothing uses
    link,              ///< another file
    stale,             ///< a value in the file that is not what the formula gives
    unsteady,          ///< a value that changes by itself
    version,           ///< computed by other functions than the installed ones
    hidden,            ///< hidden formulas
    file,              ///< what this kind of file loses, and settings that change results
    macros,            ///< the file holds macros
    weak_check,        ///< a check that cannot fail, was turned round, or has its limit in the formula alone
    counted_twice,     ///< an amount added up with its own subtotal, or twice
    lookup,            ///< a lookup that takes the wrong row
    ranges,            ///< ranges of one function that are not in the same rows
    swallowed,         ///< an error or digits that a formula hides
    text_address,      ///< cells named by a text
    sliding,    ///< a reference that slides off as the formula is copied, or stays where it should go along
    swapped,    ///< arguments in each other's places
    wrong_row,  ///< a link that takes another row than it is called after
    missing_unit,     ///< a number without its unit among others that have one
    comment,          ///< a comment that doubts what stands there
    unlocked,         ///< a formula that anybody can type over
    names,            ///< a name that stands for something else than it says
    shown_otherwise,  ///< a number that looks other than it is
    outlier,          ///< a typed number unlike the others around it
    twin,             ///< one input typed in two places
    not_compared,     ///< no template where there must be one
    not_followed,     ///< what the audit could not read or follow to the end
    signature,        ///< changed since it was signed
};

[[nodiscard]] std::string_view title_of(FindingKind kind);
/// One word for programs and lists: `typed_over`.
[[nodiscard]] std::string_view word_of(FindingKind kind);
[[nodiscard]] std::string_view text_of(Severity severity);

struct Finding {
    FindingKind kind = FindingKind::error;
    Severity severity = Severity::error;
    std::vector<Spot> cells;  ///< the first is the one to look at; empty when it is about the whole workbook
    std::string says;         ///< what is wrong and what to do
};

class Findings {
public:
    void add(FindingKind kind, Severity severity, std::vector<Spot> cells, std::string says) {
        all_.push_back({kind, severity, std::move(cells), std::move(says)});
    }
    void add(FindingKind kind, Severity severity, const Spot& cell, std::string says) {
        add(kind, severity, std::vector<Spot>{cell}, std::move(says));
    }
    /// About the whole workbook.
    void add(FindingKind kind, Severity severity, std::string says) {
        add(kind, severity, std::vector<Spot>{}, std::move(says));
    }
    [[nodiscard]] const std::vector<Finding>& all() const { return all_; }
    [[nodiscard]] std::size_t count(Severity severity) const;
    [[nodiscard]] std::size_t count(FindingKind kind) const;
    [[nodiscard]] bool has(FindingKind kind, const Spot& cell) const;
    /// What makes all else uncertain first - settings, circles, other files -, then the gravest, then by
    /// cell.
    void sort();
    /// Findings of one kind in cells beside or below each other become one: they come of one paste.
    void fold_pastes(FindingKind kind);
    /// What comes of a setting or a circle is told with it, and not by itself.
    void fold_consequences();
    /// Takes away findings of a kind about one cell that is among these.
    void drop(FindingKind kind, const std::vector<Spot>& cells);
    /// Of findings of this kind about the same one cell the last stays.
    void keep_last(FindingKind kind);

private:
    std::vector<Finding> all_;
};

}  // namespace undercroft::audit
