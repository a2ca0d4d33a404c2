/// \file audit_page.hpp
/// The rows and looks of the sheet Audit, put together first and written at once.
#pragma once

#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "addin/uno/audit_paper.hpp"
#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

/// The columns of the page, the same six twice with a gap between; then three for the screen alone, and two
/// hidden ones.
enum PageColumn : sal_Int32 {
    cell_column,
    what_column,
    value_column,
    template_column,
    usual_column,
    state_column,
    gap_column,
    second_half,
    shown_columns = second_half + gap_column,
    why_column = shown_columns,
    rests_column,
    source_column,
    marks,       ///< what a later audit knows each line again by
    at_signing,  ///< what was signed last
    audit_columns,
};

namespace look {
inline constexpr sal_Int32 ink = 0x1C2B30;
inline constexpr sal_Int32 band = 0xE6EEF0;
inline constexpr sal_Int32 head = 0x22424A;
inline constexpr sal_Int32 hair = 0xC3D0D3;
inline constexpr sal_Int32 paper = 0xFFFFFF;
inline constexpr sal_Int32 bad = 0xF6CFC9;
inline constexpr sal_Int32 fair = 0xFFD990;
inline constexpr sal_Int32 good = 0xD8ECDC;
inline constexpr sal_Int32 entry = 0xFBF1D6;
inline constexpr float text_size = 8;
}  // namespace look

/// Parts the records of one row: a symbol that nobody types, since a cell cannot keep a control character.
inline constexpr std::string_view between_records = "\xE2\x90\x9E";

/// A text in its column.
using Placed = std::pair<sal_Int32, std::string>;

/// One line a row, each as high as the others but for titles: the whole of a text stays in its cell where the
/// column is too narrow to show it. So where pages end is known from the start, and a table that goes on has
/// its heads on each.
class AuditPage {
public:
    struct Link {
        sal_Int32 row;
        sal_Int32 column;
        std::string target;
        std::string shown;
    };
    struct Look {
        sal_Int32 row;
        sal_Int32 first_column;
        sal_Int32 last_column;
        sal_Int32 back;
        bool bold = false;
        sal_Int32 fore = look::ink;
        float size = 0;
        bool is_entry = false;
        /// Whatever its place.
        [[nodiscard]] bool is_like(const Look& other) const {
            return back == other.back && bold == other.bold && fore == other.fore && size == other.size &&
                   is_entry == other.is_entry;
        }
    };

    explicit AuditPage(const AuditPaper& paper) : paper_(paper) {}

    void line(const std::vector<Placed>& texts);
    void title(const std::string& text);
    /// In one sentence, on its colour.
    void verdict(const std::string& text, sal_Int32 colour);
    void section(const std::string& text);
    /// How many rows of a table of its own a section that comes next would have on the page on which it
    /// begins.
    [[nodiscard]] std::size_t rows_of_section() const;
    /// The heads of a table, which are said again at the top of each page on which it goes on.
    void heads(const std::vector<Placed>& texts);
    /// A line of the table whose heads stand above.
    void row(const std::vector<Placed>& texts);
    /// What follows is for the screen alone.
    void end_of_paper() { is_printed_ = false; }

    /// These belong to the last line.
    void link(sal_Int32 column, const std::string& target, const std::string& shown) {
        links_.push_back({last(), column, target, shown});
    }
    void dress(Look look) {
        look.row = last();
        looks_.push_back(look);
    }
    /// What a later audit reads in this row.
    void record(const std::string& text);

    /// What was signed last, from the first row on.
    void keep_signed(const std::vector<std::string>& records);
    [[nodiscard]] sal_Int32 last() const { return static_cast<sal_Int32>(rows_.size()) - 1; }

    void write(const css::uno::Reference<css::lang::XMultiServiceFactory>& document,
               const css::uno::Reference<css::sheet::XSpreadsheet>& sheet) const;

private:
    struct Span {
        sal_Int32 first;
        sal_Int32 last;
    };
    void start_page();
    [[nodiscard]] bool starts_page() const;
    [[nodiscard]] bool has_room(sal_Int32 height) const {
        return !is_printed_ || used_ + height <= paper_.height();
    }
    void add(const std::vector<Placed>& texts, sal_Int32 height);
    void add_heads();
    void put(sal_Int32 column, sal_Int32 row, const std::string& text);
    void write_looks(const css::uno::Reference<css::lang::XMultiServiceFactory>& document,
                     const css::uno::Reference<css::sheet::XSpreadsheet>& sheet) const;
    void write_links(const css::uno::Reference<css::sheet::XSpreadsheet>& sheet, sal_Int32 column) const;

    const AuditPaper& paper_;
    bool is_printed_ = true;
    sal_Int32 used_ = 0;  ///< of the height of the page
    std::vector<Placed> heads_;
    std::vector<css::uno::Sequence<css::uno::Any>> rows_;
    std::vector<Link> links_;
    std::vector<Look> looks_;
    std::vector<Span> tables_;
    std::vector<std::pair<sal_Int32, sal_Int32>> heights_;  ///< of rows that are higher
    std::vector<sal_Int32> new_pages_;
};

}  // namespace undercroft::addin
