/// \file audit_page.hpp
/// The rows and looks of the sheet Audit, put together first and written at once.
#pragma once

#include <com/sun/star/sheet/XSpreadsheet.hpp>

#include <string>
#include <string_view>
#include <vector>

#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

/// Columns that are shown and printed.
inline constexpr sal_Int32 shown_columns = 7;
/// Hidden, behind those that are shown: what a later audit knows each line again by, and what was signed
/// last.
enum RecordColumn : sal_Int32 { marks = 7, at_signing = 8 };
inline constexpr sal_Int32 audit_columns = 9;

namespace look {
inline constexpr sal_Int32 ink = 0x263238;
inline constexpr sal_Int32 band = 0xCFD8DC;
inline constexpr sal_Int32 head = 0x37474F;
inline constexpr sal_Int32 paper = 0xFFFFFF;
inline constexpr sal_Int32 bad = 0xFBD5D0;
inline constexpr sal_Int32 fair = 0xFFF0C9;
inline constexpr sal_Int32 good = 0xDCEFDC;
inline constexpr sal_Int32 entry = 0xFFF8DC;
}  // namespace look

/// The page is put together as rows first, and written at once.
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
    };

    void line(const std::vector<std::string>& texts);
    void link(sal_Int32 column, const std::string& target, const std::string& shown) {
        links_.push_back({last(), column, target, shown});
    }
    void dress(Look look) {
        look.row = last();
        looks_.push_back(look);
    }
    /// What a later audit reads in this row.
    void record(const std::string& text) { put(marks, last(), text); }
    /// What was signed last, from the first row on.
    void keep_signed(const std::vector<std::string>& records) {
        while (rows_.size() < records.size()) line({});
        for (std::size_t i = 0; i < records.size(); ++i)
            put(at_signing, static_cast<sal_Int32>(i), records[i]);
    }
    void table_row() { table_rows_.push_back(last()); }
    void title(const std::string& text) {
        line({text});
        dress({0, 0, shown_columns - 1, -1, true, look::ink, 15});
    }
    void section(const std::string& text) {
        line({});
        line({text});
        dress({0, 0, shown_columns - 1, look::head, true, look::paper, 11});
    }
    void heads(const std::vector<std::string>& texts) {
        line(texts);
        dress({0, 0, shown_columns - 1, look::band, true});
    }
    [[nodiscard]] sal_Int32 last() const { return static_cast<sal_Int32>(rows_.size()) - 1; }

    void write(const css::uno::Reference<css::sheet::XSpreadsheet>& sheet) const;

private:
    void put(sal_Int32 column, sal_Int32 row, const std::string& text);

    std::vector<css::uno::Sequence<css::uno::Any>> rows_;
    std::vector<sal_Int32> table_rows_;
    std::vector<Link> links_;
    std::vector<Look> looks_;
};

}  // namespace undercroft::addin
