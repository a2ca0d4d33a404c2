/// \file audit_paper.hpp
/// The paper that the sheet Audit is printed on.
#pragma once

#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include <string>

#include "addin/uno/marshal.hpp"

namespace undercroft::addin {

/// In 0.01 mm.
inline constexpr sal_Int32 row_height = 325;
inline constexpr sal_Int32 section_height = 430;
inline constexpr sal_Int32 title_height = 800;

class AuditPaper {
public:
    /// The document's own size, landscape; the scale is such that a page is as wide as the sheet.
    AuditPaper(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document, sal_Int32 sheet_width,
               const std::string& job);

    /// Of what a page holds, in the sheet's own size.
    [[nodiscard]] sal_Int32 height() const { return height_; }
    void put_under(const css::uno::Reference<css::sheet::XSpreadsheet>& sheet) const;

private:
    sal_Int32 height_ = 0;
};

}  // namespace undercroft::addin
