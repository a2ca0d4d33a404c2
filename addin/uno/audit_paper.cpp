#include "addin/uno/audit_paper.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XHeaderFooterContent.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/text/XTextContent.hpp>

#include <algorithm>

#include "addin/audit/book/book.hpp"

namespace undercroft::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr sal_Int32 margin = 900;  // 0.01 mm
constexpr sal_Int32 foot_gap = 150;
constexpr sal_Int32 foot_text = 400;
constexpr sal_Int32 per_cent = 100;

/// The job at the foot of each page, and its number.
void number_pages(const Reference<css::lang::XMultiServiceFactory>& factory,
                  const Reference<css::beans::XPropertySet>& page, const std::string& job) {
    const Reference<css::sheet::XHeaderFooterContent> foot(page->getPropertyValue("RightPageFooterContent"),
                                                           UNO_QUERY);
    if (!foot.is()) return;
    foot->getLeftText()->setString(to_oustring(job));
    foot->getCenterText()->setString(to_oustring(audit::audit_sheet_title));
    const Reference<css::text::XText> right = foot->getRightText();
    right->setString("page ");
    const Reference<css::text::XTextContent> number(
        factory->createInstance("com.sun.star.text.TextField.PageNumber"), UNO_QUERY_THROW);
    right->insertTextContent(right->getEnd(), number, false);
    page->setPropertyValue("RightPageFooterContent", Any(foot));
}

sal_Int32 length(const Reference<css::beans::XPropertySet>& page, const char* name) {
    sal_Int32 value = 0;
    page->getPropertyValue(rtl::OUString::createFromAscii(name)) >>= value;
    return value;
}

}  // namespace

AuditPaper::AuditPaper(const Reference<css::sheet::XSpreadsheetDocument>& document, sal_Int32 sheet_width,
                       const std::string& job) {
    const Reference<css::lang::XMultiServiceFactory> factory(document, UNO_QUERY_THROW);
    const rtl::OUString name = to_oustring(audit::audit_sheet_name);
    const Reference<css::container::XNameContainer> pages(
        Reference<css::style::XStyleFamiliesSupplier>(document, UNO_QUERY_THROW)
            ->getStyleFamilies()
            ->getByName("PageStyles"),
        UNO_QUERY_THROW);
    if (!pages->hasByName(name))
        pages->insertByName(name, Any(factory->createInstance("com.sun.star.style.PageStyle")));
    const Reference<css::beans::XPropertySet> page(pages->getByName(name), UNO_QUERY_THROW);
    const sal_Int32 width = std::max(length(page, "Width"), length(page, "Height"));
    const sal_Int32 height = std::min(length(page, "Width"), length(page, "Height"));
    page->setPropertyValue("IsLandscape", Any(true));
    page->setPropertyValue("Width", Any(width));
    page->setPropertyValue("Height", Any(height));
    for (const char* side : {"LeftMargin", "RightMargin", "TopMargin", "BottomMargin"})
        page->setPropertyValue(rtl::OUString::createFromAscii(side), Any(margin));
    page->setPropertyValue("HeaderIsOn", Any(false));
    page->setPropertyValue("FooterIsOn", Any(true));
    page->setPropertyValue("FooterBodyDistance", Any(foot_gap));
    page->setPropertyValue("FooterIsDynamicHeight", Any(false));
    page->setPropertyValue("FooterHeight", Any(foot_gap + foot_text));
    const sal_Int32 scale = (width - 2 * margin) * per_cent / sheet_width;
    page->setPropertyValue("PageScale", Any(static_cast<sal_Int16>(scale)));
    // A little is kept back for what the office rounds.
    height_ = (height - 2 * margin - foot_gap - foot_text) * per_cent / scale - row_height / 2;
    number_pages(factory, page, job);
}

void AuditPaper::put_under(const Reference<css::sheet::XSpreadsheet>& sheet) const {
    Reference<css::beans::XPropertySet>(sheet, UNO_QUERY_THROW)
        ->setPropertyValue("PageStyle", Any(to_oustring(audit::audit_sheet_name)));
}

}  // namespace undercroft::addin
